-- Who stands in for whom among coaches of a club, on which days. It opens no home: whether one may be seen, its own consent says.
CREATE TABLE people.cover (
    id         uuid   PRIMARY KEY,
    club       uuid   NOT NULL REFERENCES people.club ON DELETE CASCADE,
    away       uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE,
    covers     uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE CHECK (covers <> away),
    days_first text   NOT NULL,
    days_last  text   NOT NULL,
    made_at    bigint NOT NULL
);

CREATE INDEX cover_of ON people.cover (away);
CREATE INDEX cover_by ON people.cover (covers);
