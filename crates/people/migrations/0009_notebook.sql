-- Notebooks at home that are linked to a home here: a code that a keeper makes, the key it was exchanged for, and the end of it. Of a
-- home that left the hash of the key stays for a while, so that the notebook is told.
CREATE TABLE people.notebook (
    id         uuid   PRIMARY KEY,
    home       uuid   NOT NULL REFERENCES people.home ON DELETE CASCADE,
    -- The keeper who made the code; the key holds while they keep the home.
    account    uuid   REFERENCES people.account ON DELETE CASCADE,
    code       bytea  UNIQUE,
    key        bytea  UNIQUE,
    -- What it calls itself, for the list.
    name       text   NOT NULL DEFAULT '',
    made_at    bigint NOT NULL,
    expires_at bigint NOT NULL,
    linked_at  bigint,
    seen_at    bigint,
    ended_at   bigint
);
CREATE INDEX notebook_of_home ON people.notebook (home);
