-- A keeper of the server invited a new keeper to a home that had lost its way in. It stays, for the home to see.
CREATE TABLE people.rescue (
    invitation uuid   PRIMARY KEY,
    home       uuid   NOT NULL REFERENCES people.home ON DELETE CASCADE,
    -- Who invited, by the name of that day: it stays when the account is erased.
    made_by    text   NOT NULL,
    made_at    bigint NOT NULL,
    -- Nobody gets in by it before this, so that whoever is still in can refuse it.
    opens_at   bigint NOT NULL,
    taken_by   text,
    taken_at   bigint,
    refused_by text,
    refused_at bigint
);
CREATE INDEX rescue_home ON people.rescue (home);
