//! Making a database ready: is the server new enough, is the schema one we know, and are the roles there?

use crate::error::StoreError;
use crate::postgres::faults::told;
use sqlx::migrate::{MigrateError, Migrator};
use sqlx::postgres::{PgConnectOptions, PgConnection};
use sqlx::{AssertSqlSafe, ConnectOptions, Connection};
use std::sync::Arc;

/// The oldest server that is looked after by its makers, by its own number (14.0). Tested with 15.
const LEAST_SERVER: i32 = 140_000;

/// One lock for all programs that make this database ready ("Sayso" as a number).
const READYING: i64 = 0x53_61_79_73_6f;

/// Every change to the schema, compiled in.
static MIGRATIONS: Migrator = sqlx::migrate!("./migrations/postgres");

fn migrations() -> Migrator {
    let mut own = Migrator::with_migrations(MIGRATIONS.iter().cloned().collect());
    own.dangerous_set_table_name("sayso._sqlx_migrations");
    // Ours is taken around more than they do.
    own.set_locking(false);
    own
}

/// Refuses a server that is too old and a schema of a later version; makes roles and schema, or brings them up to date,
/// where that is needed. `by` connects as the owner of the schema, or, where nothing is to be done, as anybody who may
/// read its number.
pub(crate) async fn ready(by: &PgConnectOptions) -> Result<(), StoreError> {
    let mut db = by.connect().await.map_err(told)?;
    let version: i32 = sqlx::query_scalar("SELECT current_setting('server_version_num')::int")
        .fetch_one(&mut db)
        .await
        .map_err(told)?;
    new_enough(version)?;
    if known(&mut db).await? < newest() {
        sqlx::query("SELECT pg_advisory_lock($1)").bind(READYING).execute(&mut db).await.map_err(told)?;
        // Another process may have done it while this one waited.
        if known(&mut db).await? < newest() {
            make(&mut db).await.map_err(by_whom)?;
        }
    }
    // The lock goes with the connection.
    db.close().await.map_err(told)
}

fn new_enough(version: i32) -> Result<(), StoreError> {
    if version < LEAST_SERVER {
        return Err(StoreError::OldDatabase { found: version / 10_000, least: LEAST_SERVER / 10_000 });
    }
    Ok(())
}

fn newest() -> i64 {
    MIGRATIONS.iter().map(|m| m.version).max().unwrap_or(0)
}

/// The number of the schema, 0 where there is none yet.
async fn known(db: &mut PgConnection) -> Result<i64, StoreError> {
    let there: bool = sqlx::query_scalar("SELECT to_regclass('sayso._sqlx_migrations') IS NOT NULL")
        .fetch_one(&mut *db)
        .await
        .map_err(told)?;
    if !there {
        return Ok(0);
    }
    let found: i64 = sqlx::query_scalar("SELECT coalesce(max(version), 0) FROM sayso._sqlx_migrations WHERE success")
        .fetch_one(&mut *db)
        .await
        .map_err(told)?;
    if found > newest() {
        return Err(StoreError::NewerDatabase { found, known: newest() });
    }
    Ok(found)
}

/// Whom it takes to make tables is told, in place of the one right that was missed first.
fn by_whom(error: StoreError) -> StoreError {
    match error {
        StoreError::NoRights { what } => StoreError::NeedsOwner { what },
        other => other,
    }
}

async fn make(db: &mut PgConnection) -> Result<(), StoreError> {
    for step in [include_str!("../../migrations/postgres/roles.sql"), "CREATE SCHEMA IF NOT EXISTS sayso"] {
        sqlx::raw_sql(AssertSqlSafe(step)).execute(&mut *db).await.map_err(told)?;
    }
    migrations().run_direct(None, db, false).await.map_err(|error| match error {
        MigrateError::Execute(e) | MigrateError::ExecuteMigration(e, _) => told(e),
        MigrateError::VersionMissing(found) => StoreError::NewerDatabase { found, known: newest() },
        MigrateError::VersionMismatch(n) => StoreError::DatabaseDamaged(crate::damage::Damage::OtherSchema(n)),
        other => StoreError::Database(Arc::new(sqlx::Error::Migrate(Box::new(other)))),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_server_that_is_too_old_is_told_with_its_version() {
        assert!(new_enough(150_018).is_ok() && new_enough(140_000).is_ok());
        assert!(matches!(new_enough(130_023), Err(StoreError::OldDatabase { found: 13, least: 14 })));
    }
}
