-- What was closed for good and leaves no row of its own, so that a backup that is brought back does not open it again: random ids and
-- hashes, no names.
CREATE TABLE people.closed (
    what text   NOT NULL,
    id   text   NOT NULL,
    at   bigint NOT NULL,
    PRIMARY KEY (what, id)
);

-- Where these tables were when a server was last opened on them: copied elsewhere, they are a backup. One row.
CREATE TABLE people.place (
    one         boolean PRIMARY KEY DEFAULT true CHECK (one),
    stands      text    NOT NULL,
    -- When a backup was last brought back here.
    restored_at bigint
);

-- Where a giving ended because a backup was brought back.
ALTER TABLE people.witness ADD COLUMN restored_at bigint;
