-- People of a server of many homes. Moments are milliseconds since 1970-01-01 UTC, days ISO 8601 texts, secrets SHA-256 hashes.

CREATE TABLE people.account (
    id         uuid   PRIMARY KEY,
    name       text   NOT NULL CHECK (name <> ''),
    -- As it was proved to be the account's, in lower case.
    email      text   UNIQUE,
    language   text   NOT NULL,
    made_at    bigint NOT NULL
);

CREATE TABLE people.passkey (
    credential   bytea  PRIMARY KEY,
    account      uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE,
    label        text   NOT NULL,
    -- The public key with its counter, as the WebAuthn library writes it.
    content      text   NOT NULL,
    made_at      bigint NOT NULL,
    used_at      bigint
);
CREATE INDEX passkey_account ON people.passkey (account);

-- A passkey being registered or asked for: the challenge and what belongs to it.
CREATE TABLE people.ceremony (
    id         uuid   PRIMARY KEY,
    -- Whose, while registering; none while signing in.
    account    uuid   REFERENCES people.account ON DELETE CASCADE,
    content    text   NOT NULL,
    expires_at bigint NOT NULL,
    used_at    bigint
);

CREATE TABLE people.session (
    id           uuid    PRIMARY KEY,
    account      uuid    NOT NULL REFERENCES people.account ON DELETE CASCADE,
    token        bytea   NOT NULL UNIQUE,
    -- What the browser said it is, for the list of sessions.
    device       text    NOT NULL,
    made_at      bigint  NOT NULL,
    -- When the person last proved who they are.
    proved_at    bigint  NOT NULL,
    seen_at      bigint  NOT NULL,
    expires_at   bigint  NOT NULL,
    ended_at     bigint,
    -- A role changed: the next answer carries a new token.
    renew        boolean NOT NULL DEFAULT false
);
CREATE INDEX session_account ON people.session (account) WHERE ended_at IS NULL;

-- Links sent by e-mail. One without an account was asked for an address that nobody has; it leads nowhere.
CREATE TABLE people.link (
    secret     bytea  PRIMARY KEY,
    account    uuid   REFERENCES people.account ON DELETE CASCADE,
    -- The address to be proved; none for signing in.
    proves     text,
    expires_at bigint NOT NULL,
    used_at    bigint
);

CREATE TABLE people.recovery (
    secret  bytea  PRIMARY KEY,
    account uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE,
    made_at bigint NOT NULL,
    used_at bigint
);
CREATE INDEX recovery_account ON people.recovery (account);

-- Homes this server has had. One that left stays as a mark alone.
CREATE TABLE people.home (
    id        uuid   PRIMARY KEY,
    opened_at bigint NOT NULL,
    left_at   bigint
);

CREATE TABLE people.club (
    id      uuid   PRIMARY KEY,
    name    text   NOT NULL CHECK (name <> ''),
    made_at bigint NOT NULL
);

CREATE TABLE people.invitation (
    id         uuid   PRIMARY KEY,
    secret     bytea  NOT NULL UNIQUE,
    home       uuid   REFERENCES people.home ON DELETE CASCADE,
    club       uuid   REFERENCES people.club ON DELETE CASCADE,
    role       text   NOT NULL,
    person     uuid,
    days_first text,
    days_last  text,
    weekdays   smallint,
    -- None where the server's machine itself invited.
    made_by    uuid   REFERENCES people.account ON DELETE CASCADE,
    made_at    bigint NOT NULL,
    expires_at bigint NOT NULL,
    used_at    bigint,
    ended_at   bigint,
    CHECK (home IS NULL OR club IS NULL)
);
CREATE INDEX invitation_home ON people.invitation (home);

CREATE TABLE people.membership (
    id         uuid   PRIMARY KEY,
    account    uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE,
    home       uuid   REFERENCES people.home ON DELETE CASCADE,
    club       uuid   REFERENCES people.club ON DELETE CASCADE,
    role       text   NOT NULL,
    person     uuid,
    days_first text,
    days_last  text,
    weekdays   smallint,
    since      bigint NOT NULL,
    ended_at   bigint,
    CHECK (home IS NULL OR club IS NULL)
);
-- One role at a time in each home; in a club or on the server each role once.
CREATE UNIQUE INDEX membership_home ON people.membership (account, home) WHERE ended_at IS NULL AND home IS NOT NULL;
CREATE UNIQUE INDEX membership_club ON people.membership (account, club, role) WHERE ended_at IS NULL AND club IS NOT NULL;
CREATE UNIQUE INDEX membership_server ON people.membership (account, role)
    WHERE ended_at IS NULL AND home IS NULL AND club IS NULL;
CREATE INDEX membership_of_home ON people.membership (home) WHERE ended_at IS NULL;
CREATE INDEX membership_of_club ON people.membership (club) WHERE ended_at IS NULL;

-- Givings of consent that a keeper of the home wrote under the eyes of this server. The home's log says what they are; without
-- a row here a giving opens nothing.
CREATE TABLE people.witness (
    home       uuid   NOT NULL REFERENCES people.home ON DELETE CASCADE,
    event      uuid   NOT NULL,
    account    uuid   REFERENCES people.account ON DELETE SET NULL,
    -- To whom, where it is a coach's: so that a coach's homes are found without reading every log.
    coach      uuid,
    club       uuid,
    at         bigint NOT NULL,
    ended_at   bigint,
    PRIMARY KEY (home, event)
);
CREATE INDEX witness_coach ON people.witness (coach) WHERE ended_at IS NULL;
CREATE INDEX witness_club ON people.witness (club) WHERE ended_at IS NULL;

-- Who looked at what of a home, an hour a row.
CREATE TABLE people.look (
    home       uuid   NOT NULL REFERENCES people.home ON DELETE CASCADE,
    account    uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE,
    capability text   NOT NULL,
    hour       bigint NOT NULL,
    first_at   bigint NOT NULL,
    last_at    bigint NOT NULL,
    times      bigint NOT NULL,
    PRIMARY KEY (home, account, capability, hour)
);

-- Attempts to sign in, counted by what was tried and from where, both hashed.
CREATE TABLE people.attempt (
    what       bytea  NOT NULL,
    begins     bigint NOT NULL,
    times      bigint NOT NULL,
    expires_at bigint NOT NULL,
    PRIMARY KEY (what, begins)
);
