-- Looks of people whose account was erased: as what they came, at what, on which day. No name, no account, and those of several such
-- people are one row, so that nobody can be followed through them.
CREATE TABLE people.look_left (
    home       uuid   NOT NULL REFERENCES people.home ON DELETE CASCADE,
    role       text   NOT NULL,
    capability text   NOT NULL,
    page       text   NOT NULL,
    -- Noon of the day, of UTC.
    at         bigint NOT NULL,
    times      bigint NOT NULL,
    PRIMARY KEY (home, role, capability, page, at)
);
