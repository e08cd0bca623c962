-- The roles belong to all databases of a server; two that are made ready at once may both try.
DO $$
DECLARE
    role text;
BEGIN
    FOREACH role IN ARRAY ARRAY['sayso_server', 'sayso_eraser'] LOOP
        IF NOT EXISTS (SELECT 1 FROM pg_roles WHERE rolname = role) THEN
            BEGIN
                EXECUTE format('CREATE ROLE %I NOLOGIN', role);
            EXCEPTION WHEN duplicate_object OR unique_violation THEN
                NULL;
            END;
        END IF;
        -- To hand one its function, and to serve with the rights of the other.
        -- Since 16 whoever makes a role is a member of it who may not take it on.
        IF NOT pg_has_role(current_user, role,
            CASE WHEN current_setting('server_version_num')::int >= 160000 THEN 'SET' ELSE 'MEMBER' END) THEN
            EXECUTE format('GRANT %I TO CURRENT_USER', role);
        END IF;
    END LOOP;
END
$$;
