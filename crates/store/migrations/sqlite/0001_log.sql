-- The log: one row an event, in order of arrival. Rows are only ever added.
-- Marks the file as ours, so that another program's database is never written to ("Say1").
PRAGMA application_id = 1398896945;

CREATE TABLE event (
    -- Order of arrival in this file. Says nothing about when things happened. Never used twice.
    seq       INTEGER PRIMARY KEY AUTOINCREMENT,
    -- UUID, 16 bytes. A second event of the same id is not stored.
    id        BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
    household BLOB NOT NULL CHECK (length(household) = 16),
    kind      TEXT NOT NULL,
    -- The event a correction or withdrawal is about. It may arrive later, hence no foreign key.
    amends    BLOB CHECK (amends IS NULL OR length(amends) = 16),
    -- The whole event as JSON: the truth. The other columns only help to find it.
    content   TEXT NOT NULL
) STRICT;

CREATE INDEX event_by_household ON event (household, seq);
CREATE INDEX event_by_amended ON event (amends) WHERE amends IS NOT NULL;

-- Against mistakes, not against an owner who means it: whoever can write the file can drop a trigger.
CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event
BEGIN
    SELECT RAISE(ABORT, 'the log is append-only: write a correction instead');
END;

CREATE TRIGGER event_is_never_removed BEFORE DELETE ON event
BEGIN
    SELECT RAISE(ABORT, 'the log is append-only: write a withdrawal instead');
END;

-- "INSERT OR REPLACE" would remove a row without waking the trigger above. A known id is passed over instead.
CREATE TRIGGER event_is_never_replaced BEFORE INSERT ON event
WHEN EXISTS (SELECT 1 FROM event WHERE id = NEW.id OR seq = NEW.seq)
BEGIN
    SELECT RAISE(IGNORE);
END;
