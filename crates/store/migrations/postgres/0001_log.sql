-- Many homes in one database, each one's rows its own. The schema `sayso`, the roles `sayso_server` (the rights of a
-- program that serves) and `sayso_eraser` (owns the one function that removes) are there already.
GRANT USAGE ON SCHEMA sayso TO sayso_server, sayso_eraser;
GRANT SELECT ON sayso._sqlx_migrations TO sayso_server;

CREATE TABLE sayso.home (
    id   uuid    PRIMARY KEY,
    -- The place of its last event. Given under this row's lock in the transaction that inserts, so that places are
    -- committed in their order: whoever follows by place misses none.
    last bigint  NOT NULL DEFAULT 0,
    -- Erased: nothing of it is stored any more, nor ever again.
    gone boolean NOT NULL DEFAULT false
);

CREATE TABLE sayso.event (
    home    uuid   NOT NULL REFERENCES sayso.home (id),
    -- Order of arrival in this home, from 1, without gaps.
    seq     bigint NOT NULL CHECK (seq > 0),
    -- Of one home alone: what stands under an id in another home, nobody here can find out.
    id      uuid   NOT NULL,
    kind    text   NOT NULL,
    -- The event a correction or withdrawal is about. It may arrive later, hence no foreign key.
    amends  uuid,
    -- The whole event as JSON: the truth, letter for letter. The other columns only help to find it.
    content text   NOT NULL,
    PRIMARY KEY (home, id),
    UNIQUE (home, seq)
);

CREATE TABLE sayso.blob (
    home  uuid  NOT NULL REFERENCES sayso.home (id),
    -- SHA-256 of the bytes; the database holds it true.
    hash  bytea NOT NULL CHECK (hash = sha256(bytes)),
    bytes bytea NOT NULL CHECK (length(bytes) BETWEEN 1 AND 16777216),
    PRIMARY KEY (home, hash)
);

-- A home's events once more, in a form that is read quickly: arrival scatters them over pages of the table. Made anew
-- from the log whenever it is missing.
CREATE TABLE sayso.snapshot (
    home  uuid   PRIMARY KEY REFERENCES sayso.home (id),
    at    bigint NOT NULL,
    bytes bytea  NOT NULL
);

-- Sound, pictures and snapshots are dense already.
ALTER TABLE sayso.blob ALTER COLUMN bytes SET STORAGE EXTERNAL;
ALTER TABLE sayso.snapshot ALTER COLUMN bytes SET STORAGE EXTERNAL;

-- The second lock: a transaction sees and writes the rows of the home it has set, and fails where it has set none.
ALTER TABLE sayso.home ENABLE ROW LEVEL SECURITY;
ALTER TABLE sayso.event ENABLE ROW LEVEL SECURITY;
ALTER TABLE sayso.blob ENABLE ROW LEVEL SECURITY;
ALTER TABLE sayso.snapshot ENABLE ROW LEVEL SECURITY;
CREATE POLICY one_home ON sayso.home USING (id = current_setting('sayso.home')::uuid);
CREATE POLICY one_home ON sayso.event USING (home = current_setting('sayso.home')::uuid);
CREATE POLICY one_home ON sayso.blob USING (home = current_setting('sayso.home')::uuid);
CREATE POLICY one_home ON sayso.snapshot USING (home = current_setting('sayso.home')::uuid);

-- The log only grows.
GRANT SELECT, INSERT (id), UPDATE (last) ON sayso.home TO sayso_server;
GRANT SELECT, INSERT ON sayso.event TO sayso_server;
-- Other bytes under a hash fail its check: what this lets be updated is a recording that is damaged, by the same one whole.
GRANT SELECT, INSERT, UPDATE (bytes) ON sayso.blob TO sayso_server;
GRANT SELECT, INSERT, UPDATE, DELETE ON sayso.snapshot TO sayso_server;

GRANT SELECT, UPDATE (last, gone) ON sayso.home TO sayso_eraser;
GRANT SELECT, DELETE ON sayso.event, sayso.blob, sayso.snapshot TO sayso_eraser;

-- Every home, for whoever keeps the server. Its owner owns the tables, whom their policies do not bind.
CREATE FUNCTION sayso.homes() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
AS $$ SELECT id FROM sayso.home WHERE NOT gone ORDER BY id $$;
REVOKE ALL ON FUNCTION sayso.homes() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION sayso.homes() TO sayso_server;

-- Removes all of the home that is set, and leaves the mark that it is gone.
CREATE FUNCTION sayso.erase(of uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp
AS $$
BEGIN
    IF of IS DISTINCT FROM current_setting('sayso.home')::uuid THEN
        RAISE EXCEPTION 'another home is set' USING ERRCODE = 'insufficient_privilege';
    END IF;
    -- Waits for whatever is being written of it; what comes later finds the mark.
    PERFORM 1 FROM sayso.home WHERE id = of FOR UPDATE;
    IF NOT FOUND THEN
        RAISE EXCEPTION 'there is no such home' USING ERRCODE = 'no_data_found';
    END IF;
    UPDATE sayso.home SET gone = true, last = 0 WHERE id = of;
    DELETE FROM sayso.event WHERE home = of;
    DELETE FROM sayso.blob WHERE home = of;
    DELETE FROM sayso.snapshot WHERE home = of;
    -- For programs that have its story in memory.
    PERFORM pg_notify('sayso_erased', of::text);
END
$$;
REVOKE ALL ON FUNCTION sayso.erase(uuid) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION sayso.erase(uuid) TO sayso_server;
GRANT CREATE ON SCHEMA sayso TO sayso_eraser;
ALTER FUNCTION sayso.erase(uuid) OWNER TO sayso_eraser;
REVOKE CREATE ON SCHEMA sayso FROM sayso_eraser;
