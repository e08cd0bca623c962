-- A coach's own hand on the desk: what was put aside, own marks of homes, and what was known of a home when coach and home last spoke.

CREATE TABLE people.aside (
    account uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE,
    home    uuid   NOT NULL REFERENCES people.home ON DELETE CASCADE,
    animal  uuid   NOT NULL,
    -- By what the need is known from one day to the next, as the desk writes it.
    need    text   NOT NULL,
    at      bigint NOT NULL,
    -- It is back then at the latest; none where only something new brings it back.
    until   bigint,
    PRIMARY KEY (account, home, animal, need)
);

CREATE TABLE people.mark (
    account uuid NOT NULL REFERENCES people.account ON DELETE CASCADE,
    home    uuid NOT NULL REFERENCES people.home ON DELETE CASCADE,
    mark    text NOT NULL CHECK (mark <> ''),
    PRIMARY KEY (account, home)
);

CREATE TABLE people.spoken (
    account uuid    NOT NULL REFERENCES people.account ON DELETE CASCADE,
    home    uuid    NOT NULL REFERENCES people.home ON DELETE CASCADE,
    at      bigint  NOT NULL,
    -- What was known then, in the desk's own form.
    form    integer NOT NULL,
    bytes   bytea   NOT NULL,
    PRIMARY KEY (account, home)
);
