-- A calendar that is read by a secret address, without signing in: one for an account and a home. What it gives is asked for at each
-- reading.
CREATE TABLE people.feed (
    account uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE,
    home    uuid   NOT NULL REFERENCES people.home ON DELETE CASCADE,
    secret  bytea  NOT NULL UNIQUE,
    made_at bigint NOT NULL,
    -- When it was read last, to the hour.
    read_at bigint,
    PRIMARY KEY (account, home)
);
