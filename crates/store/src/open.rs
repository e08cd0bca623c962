//! Opening the file: is it ours, is it whole, is its schema one we know?

use crate::error::StoreError;
use sqlx::migrate::{MigrateError, Migrator};
use sqlx::sqlite::{SqliteConnectOptions, SqliteJournalMode, SqlitePoolOptions, SqliteSynchronous};
use sqlx::{ConnectOptions, Connection, SqliteConnection};
use std::path::{Path, PathBuf};
use std::time::Duration;

/// Every change to the schema, compiled in.
static MIGRATIONS: Migrator = sqlx::migrate!("./migrations");

/// "Say1", as the first migration sets it.
pub(crate) const APPLICATION_ID: i64 = 1_398_896_945;

/// How long to wait for another process that is writing.
const PATIENCE: Duration = Duration::from_secs(20);

/// The database file in the notebook's folder.
pub(crate) fn database_in(dir: &Path) -> PathBuf {
    dir.join("sayso.db")
}

/// How every connection to a notebook is set up.
pub(crate) fn options(path: &Path) -> SqliteConnectOptions {
    SqliteConnectOptions::new()
        .filename(path)
        .create_if_missing(false)
        .busy_timeout(PATIENCE)
        .page_size(PAGE_BYTES)
        // Rows come from a thread of their own; handing over few at a time costs a change of threads for each hand.
        .row_buffer_size(2_048)
        .foreign_keys(true)
        .journal_mode(SqliteJournalMode::Wal)
        // An acknowledged event survives a power cut.
        .synchronous(SqliteSynchronous::Full)
        // So that a REPLACE wakes the triggers that refuse it.
        .pragma("recursive_triggers", "ON")
        .pragma("temp_store", "MEMORY")
}

/// Bytes in a page of the database; SQLite's own default.
const PAGE_BYTES: u32 = 4_096;

/// Pages in so many bytes, at most what SQLite can number.
pub(crate) fn pages(bytes: u64) -> u64 {
    (bytes / u64::from(PAGE_BYTES)).clamp(1, 4_294_967_294)
}

/// Creates the folder and the file where missing, checks the file, and brings its schema up to date.
pub(crate) async fn prepare(dir: &Path) -> Result<(), StoreError> {
    let unwritable = |path: &Path| {
        let path = path.to_owned();
        move |e: std::io::Error| StoreError::Unwritable { path, what: e.to_string() }
    };
    std::fs::create_dir_all(dir).map_err(unwritable(dir))?;
    // Two processes that open a new notebook at once take turns; the lock goes with the file handle.
    let lock_path = dir.join("sayso.lock");
    let lock = std::fs::File::create(&lock_path).map_err(unwritable(&lock_path))?;
    let lock = tokio::task::spawn_blocking(move || lock.lock().map(|()| lock)).await;
    let _lock = lock.map_err(|_| StoreError::Closed)?.map_err(unwritable(&lock_path))?;

    let path = database_in(dir);
    if !path.exists() {
        std::fs::File::create_new(&path).map_err(unwritable(&path))?;
    }
    // Opened to append without adding anything: may it be written at all?
    std::fs::OpenOptions::new().append(true).open(&path).map_err(unwritable(&path))?;
    inspect(&path).await?;
    migrate(&path).await
}

/// Refuses a file that is not ours or not whole before anything is written to it.
async fn inspect(path: &Path) -> Result<(), StoreError> {
    let sql = StoreError::sql(path);
    // Not `options`: setting the journal mode would already write.
    let plain = SqliteConnectOptions::new().filename(path).busy_timeout(PATIENCE);
    let mut db = plain.connect().await.map_err(&sql)?;
    let application: i64 = sqlx::query_scalar("PRAGMA application_id").fetch_one(&mut db).await.map_err(&sql)?;
    let tables: i64 =
        sqlx::query_scalar("SELECT count(*) FROM sqlite_schema").fetch_one(&mut db).await.map_err(&sql)?;
    if application != APPLICATION_ID && (application != 0 || tables > 0) {
        return Err(StoreError::NotOurs(path.to_owned()));
    }
    whole(&mut db, path).await?;
    db.close().await.map_err(&sql)
}

/// Checks the structure of the file, indexes aside.
pub(crate) async fn whole(db: &mut SqliteConnection, path: &Path) -> Result<(), StoreError> {
    let found: String =
        sqlx::query_scalar("PRAGMA quick_check(1)").fetch_one(db).await.map_err(StoreError::sql(path))?;
    if found == "ok" { Ok(()) } else { Err(StoreError::Corrupt { path: path.to_owned(), what: found }) }
}

/// The newest schema this version knows.
pub(crate) fn newest_schema() -> i64 {
    MIGRATIONS.iter().map(|m| m.version).max().unwrap_or(0)
}

async fn migrate(path: &Path) -> Result<(), StoreError> {
    let sql = StoreError::sql(path);
    // A pool of one: through a plain connection, the future could not be sent between threads.
    let pool = SqlitePoolOptions::new().max_connections(1).connect_with(options(path)).await.map_err(&sql)?;
    let known = newest_schema();
    let done = MIGRATIONS.run(&pool).await;
    pool.close().await;
    done.map_err(|error| match error {
        MigrateError::VersionMissing(found) => StoreError::Newer { path: path.to_owned(), found, known },
        MigrateError::VersionMismatch(n) => StoreError::Corrupt {
            path: path.to_owned(),
            what: format!("its schema {n} is not the one this program made"),
        },
        MigrateError::Execute(e) | MigrateError::ExecuteMigration(e, _) => sql(e),
        other => StoreError::Database(std::sync::Arc::new(sqlx::Error::Migrate(Box::new(other)))),
    })
}
