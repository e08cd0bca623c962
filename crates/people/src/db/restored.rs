//! A backup was brought back: what was closed since is closed again before anybody is let in, and what cannot be known opens nothing.

use super::{People, Tx, erasing, leaving, moment};
use crate::closing::{Closed, Closings};
use crate::error::Error;
use sayso_model::{HomeId, Moment};
use sqlx::Row;
use uuid::Uuid;

/// Whether these tables are those on which a server was last opened.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Standing {
    /// They are.
    Same,
    /// They stand in another place: a backup that was brought back, or a database that moved.
    Elsewhere,
}

/// What was closed after a backup was brought back.
#[derive(Clone, Copy, PartialEq, Eq, Default, Debug)]
pub struct Restored {
    /// Homes that had left.
    pub homes: u64,
    /// Accounts that had been erased.
    pub accounts: u64,
    /// Roles that had ended.
    pub roles: u64,
    /// Passkeys that had been removed.
    pub passkeys: u64,
    /// Sessions.
    pub sessions: u64,
    /// Invitations that nobody had taken.
    pub invitations: u64,
    /// Addresses of calendars.
    pub calendars: u64,
    /// Links of notebooks at home, and codes for them.
    pub notebooks: u64,
    /// Givings of consent: none opens anything until a keeper gives it anew.
    pub consents: u64,
    /// Homes that have no keeper now: whoever was to be one came after the backup.
    pub without_keeper: i64,
}

impl People {
    /// Whether the tables are where a server was last opened on them, which is noted where nobody noted it yet. A dump that is brought
    /// back makes tables anew; a base backup that is brought back begins another timeline.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn standing(&self) -> Result<Standing, Error> {
        let here = self.here().await?;
        sqlx::query("INSERT INTO people.place (stands) VALUES ($1) ON CONFLICT DO NOTHING")
            .bind(&here)
            .execute(&self.pool)
            .await?;
        let noted: String = sqlx::query_scalar("SELECT stands FROM people.place").fetch_one(&self.pool).await?;
        Ok(if noted == here { Standing::Same } else { Standing::Elsewhere })
    }

    /// Which database this is, as far as its server tells those who serve: its cluster, its timeline, the table.
    async fn here(&self) -> Result<String, Error> {
        let table: i64 =
            sqlx::query_scalar("SELECT 'people.witness'::regclass::oid::int8").fetch_one(&self.pool).await?;
        let told: bool = sqlx::query_scalar(
            "SELECT has_function_privilege('pg_control_system()', 'execute')
                 AND has_function_privilege('pg_current_wal_lsn()', 'execute')
                 AND has_function_privilege('pg_walfile_name(pg_lsn)', 'execute')",
        )
        .fetch_one(&self.pool)
        .await?;
        if !told {
            return Ok(table.to_string());
        }
        let cluster: String = sqlx::query_scalar(
            "SELECT system_identifier || '/' || substr(pg_walfile_name(pg_current_wal_lsn()), 1, 8) FROM pg_control_system()",
        )
        .fetch_one(&self.pool)
        .await?;
        Ok(format!("{cluster}/{table}"))
    }

    /// Notes that the tables stand where they do and lack nothing: the database moved.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn nothing_lost(&self) -> Result<(), Error> {
        let here = self.here().await?;
        let mut tx = self.begin().await?;
        stands(&mut tx, &here, None).await?;
        tx.commit().await?;
        Ok(())
    }

    /// What was closed here, ever: homes, accounts, roles, passkeys.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn closings(&self, now: Moment) -> Result<Closings, Error> {
        let rows = sqlx::query(
            "SELECT 'home' AS what, id::text, left_at AS at FROM people.home WHERE left_at IS NOT NULL
             UNION ALL SELECT 'role', id::text, ended_at FROM people.membership WHERE ended_at IS NOT NULL
             UNION ALL SELECT what, id, at FROM people.closed",
        )
        .fetch_all(&self.pool)
        .await?;
        let of = |row: &sqlx::postgres::PgRow| {
            let closed = Closed::read(row.try_get("what")?, row.try_get("id")?).ok_or(Error::Stored("closed"))?;
            Ok((closed, moment(row.try_get("at")?)))
        };
        Ok(Closings { at: now, all: rows.iter().map(of).collect::<Result<_, Error>>()? })
    }

    /// Closes after a backup was brought back: what the list holds; and, for nobody knows what became of them, all sessions, links,
    /// invitations, notebooks at home, addresses of calendars and givings of consent. In one step: where it fails, nothing is done. Logs of homes that
    /// left are erased by who keeps those, after this.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn restored(&self, closings: &Closings, now: Moment) -> Result<Restored, Error> {
        let here = self.here().await?;
        let mut done = Restored::default();
        let mut tx = self.begin().await?;
        // Before accounts go, and what they belonged to with them.
        let peopled: Vec<Uuid> =
            sqlx::query_scalar("SELECT DISTINCT home FROM people.membership WHERE home IS NOT NULL")
                .fetch_all(&mut *tx)
                .await?;
        for (closed, at) in &closings.all {
            match closed {
                Closed::Home(home) => done.homes += left(&mut tx, *home, *at).await?,
                Closed::Role(role) => {
                    let end = "UPDATE people.membership SET ended_at = $2 WHERE id = $1 AND ended_at IS NULL";
                    done.roles += changed(&mut tx, end, role.0, *at).await?;
                }
                Closed::Account(account) => {
                    done.accounts += u64::from(erasing::erase_row(&mut tx, *account).await?);
                    note(&mut tx, closed, *at).await?;
                }
                Closed::Passkey(hash) => {
                    let forget = "DELETE FROM people.passkey WHERE encode(sha256(credential), 'hex') = $1";
                    done.passkeys += sqlx::query(forget).bind(hash).execute(&mut *tx).await?.rows_affected();
                    note(&mut tx, closed, *at).await?;
                }
            }
        }
        // Who stopped letters since is not written to again: whoever wants them chooses them anew.
        for link in [
            "DELETE FROM people.link",
            "DELETE FROM people.ceremony",
            "DELETE FROM people.errand",
            "DELETE FROM people.tidings",
        ] {
            sqlx::query(link).execute(&mut *tx).await?;
        }
        for calendars in ["DELETE FROM people.feed", "DELETE FROM people.caseload"] {
            done.calendars += sqlx::query(calendars).execute(&mut *tx).await?.rows_affected();
        }
        for (count, sql) in [
            (&mut done.sessions, "UPDATE people.session SET ended_at = $1 WHERE ended_at IS NULL"),
            (
                &mut done.invitations,
                "UPDATE people.invitation SET ended_at = $1 WHERE ended_at IS NULL AND used_at IS NULL",
            ),
            (&mut done.notebooks, "UPDATE people.notebook SET ended_at = $1, code = NULL WHERE ended_at IS NULL"),
            // A row without a coach is a proposal, or a giving to norms and studies: that one is of who belongs, or belonged, to the home.
            (
                &mut done.consents,
                "UPDATE people.witness w SET ended_at = $1, restored_at = $1 WHERE ended_at IS NULL
                 AND (coach IS NOT NULL OR club IS NOT NULL OR account IS NULL
                      OR EXISTS (SELECT 1 FROM people.membership m WHERE m.account = w.account AND m.home = w.home))",
            ),
        ] {
            *count = sqlx::query(sql).bind(now.millis()).execute(&mut *tx).await?.rows_affected();
        }
        done.without_keeper = sqlx::query_scalar(
            "SELECT count(*) FROM people.home h WHERE left_at IS NULL AND h.id = ANY($1)
             AND NOT EXISTS (SELECT 1 FROM people.membership m
                 WHERE m.home = h.id AND m.ended_at IS NULL AND m.role = 'keeper')",
        )
        .bind(&peopled)
        .fetch_one(&mut *tx)
        .await?;
        stands(&mut tx, &here, Some(now)).await?;
        tx.commit().await?;
        Ok(done)
    }

    /// When a backup was last brought back here; none where that never was.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn restored_at(&self) -> Result<Option<Moment>, Error> {
        let at: Option<Option<i64>> =
            sqlx::query_scalar("SELECT restored_at FROM people.place").fetch_optional(&self.pool).await?;
        Ok(at.flatten().map(moment))
    }

    /// Givings of a home that ended because a backup was brought back.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn ended_by_restore(&self, home: HomeId) -> Result<Vec<sayso_model::EventId>, Error> {
        let ids: Vec<Uuid> =
            sqlx::query_scalar("SELECT event FROM people.witness WHERE home = $1 AND restored_at IS NOT NULL")
                .bind(home.0)
                .fetch_all(&self.pool)
                .await?;
        Ok(ids.into_iter().map(sayso_model::EventId).collect())
    }
}

/// Notes what was closed and leaves no row of its own.
pub(super) async fn note(tx: &mut Tx, closed: &Closed, at: Moment) -> Result<(), Error> {
    let (what, id) = closed.named();
    sqlx::query("INSERT INTO people.closed (what, id, at) VALUES ($1, $2, $3) ON CONFLICT DO NOTHING")
        .bind(what)
        .bind(id)
        .bind(at.millis())
        .execute(&mut **tx)
        .await?;
    Ok(())
}

async fn changed(tx: &mut Tx, sql: &'static str, id: Uuid, at: Moment) -> Result<u64, Error> {
    Ok(sqlx::query(sql).bind(id).bind(at.millis()).execute(&mut **tx).await?.rows_affected())
}

/// Marks a home as left; one that the backup does not know gets the mark, too. Rows of people are erased whether it was marked or not.
async fn left(tx: &mut Tx, home: HomeId, at: Moment) -> Result<u64, Error> {
    let mark = "UPDATE people.home SET left_at = $2 WHERE id = $1 AND left_at IS NULL";
    let marked = changed(tx, mark, home.0, at).await?;
    let unknown = "INSERT INTO people.home (id, opened_at, left_at) VALUES ($1, $2, $2) ON CONFLICT DO NOTHING";
    changed(tx, unknown, home.0, at).await?;
    leaving::erase_rows(tx, home, at).await?;
    Ok(marked)
}

async fn stands(tx: &mut Tx, here: &str, restored_at: Option<Moment>) -> Result<(), Error> {
    sqlx::query(
        "INSERT INTO people.place (stands, restored_at) VALUES ($1, $2)
         ON CONFLICT (one) DO UPDATE SET stands = $1, restored_at = COALESCE($2, people.place.restored_at)",
    )
    .bind(here)
    .bind(restored_at.map(|at| at.millis()))
    .execute(&mut **tx)
    .await?;
    Ok(())
}
