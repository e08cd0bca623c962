-- A calendar of all homes that a coach may see, read by a secret address: one for an account. What it gives is asked for at each reading.
CREATE TABLE people.caseload (
    account uuid   PRIMARY KEY REFERENCES people.account ON DELETE CASCADE,
    secret  bytea  NOT NULL UNIQUE,
    made_at bigint NOT NULL,
    -- When it was read last, to the hour.
    read_at bigint
);
