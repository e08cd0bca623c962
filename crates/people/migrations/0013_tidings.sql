-- That something is new, told by e-mail to whoever chose that. Who has no row is not written to.
CREATE TABLE people.tidings (
    account   uuid     PRIMARY KEY REFERENCES people.account ON DELETE CASCADE,
    every     text     NOT NULL CHECK (every IN ('day', 'week')),
    hour      smallint NOT NULL CHECK (hour BETWEEN 0 AND 23),
    zone      text     NOT NULL,
    -- What is older is not told.
    chosen_at bigint   NOT NULL,
    -- Whoever moves this on sends the letter: one process of several, once a period.
    due_at    bigint   NOT NULL,
    -- Letters of this period that could not be handed over.
    tries     smallint NOT NULL DEFAULT 0
);

CREATE INDEX tidings_due ON people.tidings (due_at);

-- What was told of already: ids, no words.
CREATE TABLE people.tiding (
    account uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE,
    home    uuid   NOT NULL REFERENCES people.home ON DELETE CASCADE,
    what    uuid   NOT NULL,
    at      bigint NOT NULL,
    PRIMARY KEY (account, what)
);

CREATE INDEX tiding_of ON people.tiding (home);

-- By what a letter's reader stops them without signing in: a secret of each letter, which does nothing else.
CREATE TABLE people.tidings_stop (
    secret  bytea  PRIMARY KEY,
    account uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE,
    at      bigint NOT NULL
);

CREATE INDEX tidings_stop_of ON people.tidings_stop (account);
