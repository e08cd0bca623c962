-- A passkey that its owner gave no name is told by the kind of device that made it, in the language of whoever reads: no made-up name
-- is kept. Names that were made up before stay as they are.
ALTER TABLE people.passkey
    ALTER COLUMN label DROP NOT NULL,
    ADD COLUMN device text,
    ADD CHECK ((label IS NULL) <> (device IS NULL));
