-- All that decides to whom a home is open is found without the rest of its log: its card, for its zone, beside its consents, and
-- whatever amends one of them, or an amendment.
DROP FUNCTION sayso.consents(uuid[]);
DROP INDEX sayso.event_consent;
CREATE INDEX event_opens ON sayso.event (home)
    WHERE kind IN ('consent_given', 'consent_taken_back', 'home_card', 'household_card');

-- Many homes at once, each of them named. Whoever calls it has to know that the homes are theirs.
CREATE FUNCTION sayso.opens(of uuid[])
RETURNS TABLE (seq bigint, id uuid, household uuid, kind text, amends uuid, content text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
AS $$
    WITH RECURSIVE about AS (
        SELECT e.seq, e.id, e.home, e.kind, e.amends, e.content FROM sayso.event e
        WHERE e.home = ANY (of) AND e.kind IN ('consent_given', 'consent_taken_back', 'home_card', 'household_card')
        UNION
        SELECT e.seq, e.id, e.home, e.kind, e.amends, e.content FROM about a
        JOIN sayso.event e ON e.home = a.home AND e.amends = a.id
    )
    SELECT * FROM about
$$;
REVOKE ALL ON FUNCTION sayso.opens(uuid[]) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION sayso.opens(uuid[]) TO sayso_server;
