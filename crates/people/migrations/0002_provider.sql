-- Who someone is to an identity provider (OpenID Connect): found by issuer and subject, never by an e-mail address.
CREATE TABLE people.identity (
    issuer  text   NOT NULL CHECK (issuer <> ''),
    subject text   NOT NULL CHECK (subject <> ''),
    account uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE,
    made_at bigint NOT NULL,
    used_at bigint,
    PRIMARY KEY (issuer, subject)
);
CREATE UNIQUE INDEX identity_account ON people.identity (account, issuer);

-- Someone's way to the provider and back: once, by the browser that set out alone.
CREATE TABLE people.errand (
    state      bytea  PRIMARY KEY,
    -- Hash of what stands in that browser's cookie.
    browser    bytea  NOT NULL,
    nonce      text   NOT NULL,
    -- Of PKCE; worth nothing without the code that the browser brings back.
    verifier   text   NOT NULL,
    -- Whose account is to be linked; none where someone signs in.
    session    uuid   REFERENCES people.session ON DELETE CASCADE,
    expires_at bigint NOT NULL,
    used_at    bigint
);
