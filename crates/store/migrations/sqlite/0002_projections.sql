-- Tables that follow from the log and can be built anew from it at any time. Written in the same
-- transaction as the log.

-- The zone each household's days and hours follow.
CREATE TABLE household_zone (
    household BLOB PRIMARY KEY,
    zone      TEXT NOT NULL
) STRICT;

-- Every event as it stands after corrections and withdrawals.
CREATE TABLE fact (
    event       BLOB PRIMARY KEY REFERENCES event (id),
    household   BLOB NOT NULL,
    kind        TEXT NOT NULL,
    learner     BLOB,
    teacher     BLOB,
    session     BLOB,
    word        BLOB,
    pressed_by  TEXT,
    answer      TEXT,
    outcome     TEXT,
    source      TEXT NOT NULL,
    happened_ms INTEGER NOT NULL,
    -- The household's own day (ISO 8601) and hour (0 to 23).
    day         TEXT NOT NULL,
    hour        INTEGER NOT NULL CHECK (hour BETWEEN 0 AND 23),
    -- 1 where a correction made it what it is.
    amended     INTEGER NOT NULL CHECK (amended IN (0, 1))
) STRICT;

CREATE INDEX fact_by_kind ON fact (household, kind, happened_ms);

-- How many a day. What an event does not name is the nil UUID or an empty text here, so that it can be a key.
CREATE TABLE day_tally (
    household  BLOB NOT NULL,
    day        TEXT NOT NULL,
    learner    BLOB NOT NULL,
    kind       TEXT NOT NULL,
    word       BLOB NOT NULL,
    pressed_by TEXT NOT NULL,
    answer     TEXT NOT NULL,
    n          INTEGER NOT NULL,
    PRIMARY KEY (household, day, learner, kind, word, pressed_by, answer)
) STRICT;
