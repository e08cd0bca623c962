-- What was put aside is back after a week at the latest, unless the coach said when; and at once where it has gone further than it had.
UPDATE people.aside SET until = at + 7 * 86400000 WHERE until IS NULL;
ALTER TABLE people.aside
    ALTER COLUMN until SET NOT NULL,
    -- How far the need had gone, as the desk writes it; empty where that was not kept.
    ADD COLUMN extent text NOT NULL DEFAULT '';
