-- What a desk keeps of each home, worked out from its events by a program that knows how: here only bytes. A derivative like the
-- snapshot, made anew whenever it is behind or of another form.
CREATE TABLE sayso.digest (
    home  uuid    PRIMARY KEY REFERENCES sayso.home (id),
    -- The form of the bytes; what another form means, nobody guesses.
    form  integer NOT NULL,
    -- The place up to which events are in it, at least.
    at    bigint  NOT NULL,
    bytes bytea   NOT NULL
);
ALTER TABLE sayso.digest ENABLE ROW LEVEL SECURITY;
CREATE POLICY one_home ON sayso.digest USING (home = current_setting('sayso.home')::uuid);
GRANT SELECT, INSERT, UPDATE, DELETE ON sayso.digest TO sayso_server;
GRANT SELECT, DELETE ON sayso.digest TO sayso_eraser;

-- Givings and takings back of consent, and what amends them, are found without the rest of a log.
CREATE INDEX event_consent ON sayso.event (home) WHERE kind IN ('consent_given', 'consent_taken_back');
CREATE INDEX event_amends ON sayso.event (home, amends) WHERE amends IS NOT NULL;

-- Many homes at once, each of them named. These three are all that reaches over more than one home: how far each has grown and what
-- is kept of it, the kept bytes, and the events of consent. Whoever calls them has to know that the homes are theirs.
CREATE FUNCTION sayso.grown(of uuid[]) RETURNS TABLE (home uuid, last bigint, form integer, at bigint, signs boolean)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
AS $$
    SELECT h.id, h.last, d.form, d.at,
        d.at IS NOT NULL AND d.at < h.last
            AND EXISTS (SELECT 1 FROM sayso.event e WHERE e.home = h.id AND e.seq > d.at AND e.kind IN ('sign', 'correction'))
    FROM sayso.home h LEFT JOIN sayso.digest d ON d.home = h.id
    WHERE h.id = ANY (of) AND NOT h.gone ORDER BY h.id
$$;
CREATE FUNCTION sayso.digests(of uuid[]) RETURNS TABLE (home uuid, form integer, at bigint, bytes bytea)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
AS $$ SELECT d.home, d.form, d.at, d.bytes FROM sayso.digest d WHERE d.home = ANY (of) $$;
CREATE FUNCTION sayso.consents(of uuid[])
RETURNS TABLE (seq bigint, id uuid, household uuid, kind text, amends uuid, content text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
AS $$
    WITH about AS (
        SELECT e.* FROM sayso.event e WHERE e.home = ANY (of) AND e.kind IN ('consent_given', 'consent_taken_back')
    )
    SELECT a.seq, a.id, a.home, a.kind, a.amends, a.content FROM about a
    UNION ALL
    SELECT e.seq, e.id, e.home, e.kind, e.amends, e.content FROM about a
    JOIN sayso.event e ON e.home = a.home AND e.amends = a.id
$$;
REVOKE ALL ON FUNCTION sayso.grown(uuid[]), sayso.digests(uuid[]), sayso.consents(uuid[]) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION sayso.grown(uuid[]), sayso.digests(uuid[]), sayso.consents(uuid[]) TO sayso_server;

CREATE OR REPLACE FUNCTION sayso.erase(of uuid) RETURNS void
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
    DELETE FROM sayso.digest WHERE home = of;
    -- For programs that have its story in memory.
    PERFORM pg_notify('sayso_erased', of::text);
END
$$;
