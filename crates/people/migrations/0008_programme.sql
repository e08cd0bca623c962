-- A course of weeks that a coach laid out for the club's homes. What a home joined stands in its own log, as it was then.
CREATE TABLE people.programme (
    id        uuid   PRIMARY KEY,
    club      uuid   NOT NULL REFERENCES people.club ON DELETE CASCADE,
    account   uuid   REFERENCES people.account ON DELETE SET NULL,
    -- As it is proposed to a home, as JSON.
    course    text   NOT NULL,
    made_at   bigint NOT NULL,
    closed_at bigint
);

CREATE INDEX programme_of ON people.programme (club);
