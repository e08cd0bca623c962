//! Opening the file: is it ours, is it whole, is its schema one we know?

use crate::aside::{self, Aside};
use crate::damage::Damage;
use crate::error::StoreError;
use crate::snapshot;
use crate::sqlite::db::{Db, Opening};
use sqlx::migrate::{MigrateError, Migrator};
use sqlx::sqlite::{SqliteConnectOptions, SqliteJournalMode, SqlitePoolOptions, SqliteSynchronous};
use std::fs::TryLockError;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};
use std::time::Duration;

/// Every change to the schema, compiled in.
static MIGRATIONS: Migrator = sqlx::migrate!("./migrations/sqlite");

/// "Say1", as the first migration sets it.
const APPLICATION_ID: i64 = 1_398_896_945;

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

/// How a notebook can be opened.
pub(crate) enum Found {
    /// It may be written.
    Writable,
    /// It may only be read, in this way; from a copy of it, where one had to be made.
    ReadOnly { opening: Opening, copy: Option<tempfile::TempDir> },
}

/// When the structure of the file is looked through.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum Look {
    /// Before anything else.
    First,
    /// The same, but of a large file later, by [`crate::Store::look_through`].
    LaterIfLarge,
}

/// A file of more bytes takes long to look through.
const LARGE: u64 = 32 << 20;

/// Creates the folder and the file where missing, checks the file, and brings its schema up to date. What is waited for
/// is said by `say`. A notebook that may not be written is only looked at.
pub(crate) async fn prepare(dir: &Path, look: Look, say: &(dyn Fn(&str) + Sync)) -> Result<Found, StoreError> {
    let path = database_in(dir);
    let now = look == Look::First || std::fs::metadata(&path).is_ok_and(|m| m.len() <= LARGE);
    aside::private_folder(dir).map_err(unwritable(dir))?;
    let lock = match lock_file(dir) {
        // Asked of the mode alone: opening the file to try would, closed again, take away locks of this process.
        Ok(_) if std::fs::metadata(&path).is_ok_and(|m| m.permissions().readonly()) => {
            return look_at(&path, now).await;
        }
        Ok(lock) => lock,
        Err(e) if matches!(e.kind(), ErrorKind::ReadOnlyFilesystem | ErrorKind::PermissionDenied) && path.exists() => {
            return look_at(&path, now).await;
        }
        Err(e) => return Err(unwritable(&dir.join("sayso.lock"))(e)),
    };
    let _lock = take_turns(lock, dir, say).await?;
    // Under the lock, so that a file being made by another process is no leftover, and not made twice.
    for folder in [dir.to_owned(), dir.join("clips"), dir.join("snippets"), snapshot::folder_in(dir)] {
        aside::tidy(&folder);
    }
    if !path.exists() {
        begin(&path).await?;
    }
    for ours in [&path, &dir.join("clips"), &dir.join("snippets")] {
        aside::only_for_owner(ours);
    }
    if aside::holds_nothing_for_others(
        dir,
        &["sayso.db", "sayso.db-wal", "sayso.db-shm", "sayso.lock", "clips", "snippets", "snapshots"],
    ) {
        aside::only_for_owner(dir);
    }
    inspect(&path, now).await?;
    migrate(&path, options(&path)).await?;
    Ok(Found::Writable)
}

/// Prepares to read a notebook that may not be written.
async fn look_at(path: &Path, through: bool) -> Result<Found, StoreError> {
    let wal = path.with_extension("db-wal");
    let reading = |path: &Path| {
        let options = SqliteConnectOptions::new().filename(path).row_buffer_size(2_048).foreign_keys(true);
        options.pragma("temp_store", "MEMORY")
    };
    let (options, copy) = if std::fs::metadata(&wal).is_ok_and(|m| m.len() > 0) {
        // What was written last stands in the write-ahead log, which cannot be read without writing beside it.
        let copy = tempfile::tempdir().map_err(StoreError::io(path))?;
        for from in [path, wal.as_path()] {
            let to = copy.path().join(from.file_name().unwrap_or_default());
            std::fs::copy(from, &to).map_err(StoreError::io(from))?;
            let mut rights = std::fs::metadata(&to).map_err(StoreError::io(&to))?.permissions();
            #[cfg(unix)]
            std::os::unix::fs::PermissionsExt::set_mode(&mut rights, 0o600);
            #[cfg(not(unix))]
            rights.set_readonly(false);
            std::fs::set_permissions(&to, rights).map_err(StoreError::io(&to))?;
        }
        (reading(&database_in(copy.path())), Some(copy))
    } else {
        (reading(path).read_only(true).immutable(true), None)
    };
    let opening = Opening::new(path, options);
    let mut db = opening.connect().await?;
    known(&mut db).await?;
    if through {
        whole(&mut db).await?;
    }
    db.close().await?;
    Ok(Found::ReadOnly { opening, copy })
}

/// The mark of whoever made a database file.
async fn mark(db: &mut Db) -> Result<i64, StoreError> {
    sqlx::query_scalar("PRAGMA application_id").fetch_one(&mut **db).await.map_err(db.sql())
}

/// Refuses a file that is not ours, or of a later version; answers its schema.
pub(crate) async fn known(db: &mut Db) -> Result<i64, StoreError> {
    if mark(db).await? != APPLICATION_ID {
        return Err(StoreError::NotOurs(db.path().to_owned()));
    }
    let newest = "SELECT max(version) FROM _sqlx_migrations";
    let found: i64 = sqlx::query_scalar(newest).fetch_one(&mut **db).await.map_err(db.sql())?;
    if found > newest_schema() {
        return Err(StoreError::Newer { path: db.path().to_owned(), found, known: newest_schema() });
    }
    Ok(found)
}

fn unwritable(path: &Path) -> impl FnOnce(std::io::Error) -> StoreError {
    let path = path.to_owned();
    move |e| match StoreError::io(&path)(e) {
        StoreError::Io { path, source } => StoreError::Unwritable { path, what: source.to_string() },
        other => other,
    }
}

fn lock_file(dir: &Path) -> std::io::Result<std::fs::File> {
    aside::private().create(true).truncate(false).write(true).open(dir.join("sayso.lock"))
}

/// Processes that open a notebook at once take turns; the lock goes with the file handle.
async fn take_turns(lock: std::fs::File, dir: &Path, say: &(dyn Fn(&str) + Sync)) -> Result<std::fs::File, StoreError> {
    let path = dir.join("sayso.lock");
    match lock.try_lock() {
        Ok(()) => return Ok(lock),
        Err(TryLockError::Error(e)) => return Err(unwritable(&path)(e)),
        Err(TryLockError::WouldBlock) => {}
    }
    say(&format!("Waiting for another program that holds the notebook in {} ...", dir.display()));
    let locked = tokio::task::spawn_blocking(move || lock.lock().map(|()| lock)).await;
    locked.map_err(|_| StoreError::Closed)?.map_err(unwritable(&path))
}

/// Makes a new, empty notebook aside and gives it its name once it is whole, so that a kill leaves all of it or nothing.
async fn begin(path: &Path) -> Result<(), StoreError> {
    let wal = path.with_extension("db-wal");
    if std::fs::metadata(&wal).is_ok_and(|m| m.len() > 0) {
        return Err(StoreError::Corrupt { path: path.to_owned(), what: Damage::LogLeft(wal) });
    }
    let aside = Aside::beside(path)?;
    // One file: no write-ahead log of its own that would have to be renamed with it.
    migrate(aside.path(), options(aside.path()).journal_mode(SqliteJournalMode::Delete)).await?;
    aside.place().map(|_| ())
}

/// Refuses a file that is not ours or not whole before anything is written to it.
async fn inspect(path: &Path, through: bool) -> Result<(), StoreError> {
    // Not `options`: setting the journal mode would already write.
    let plain = SqliteConnectOptions::new().filename(path).busy_timeout(PATIENCE);
    let mut db = Opening::new(path, plain).connect().await?;
    let mark = mark(&mut db).await?;
    if mark != APPLICATION_ID && (mark != 0 || !just_begun(&mut db).await?) {
        return Err(StoreError::NotOurs(path.to_owned()));
    }
    if through {
        whole(&mut db).await?;
    }
    db.close().await
}

/// Whether a file without our mark is one whose first start an earlier version was killed in: empty, or with nothing in
/// it but an empty list of the changes made to its schema. No event can be in it.
async fn just_begun(db: &mut Db) -> Result<bool, StoreError> {
    let sql = db.sql();
    let others: i64 = sqlx::query_scalar("SELECT count(*) FROM sqlite_schema WHERE tbl_name <> '_sqlx_migrations'")
        .fetch_one(&mut **db)
        .await
        .map_err(&sql)?;
    let lists: i64 = sqlx::query_scalar("SELECT count(*) FROM sqlite_schema WHERE type = 'table'")
        .fetch_one(&mut **db)
        .await
        .map_err(&sql)?;
    if others > 0 || lists == 0 {
        return Ok(others == 0);
    }
    let made: i64 =
        sqlx::query_scalar("SELECT count(*) FROM _sqlx_migrations").fetch_one(&mut **db).await.map_err(&sql)?;
    Ok(made == 0)
}

/// Checks the structure of the file, indexes aside.
pub(crate) async fn whole(db: &mut Db) -> Result<(), StoreError> {
    let found: String = sqlx::query_scalar("PRAGMA quick_check(1)").fetch_one(&mut **db).await.map_err(db.sql())?;
    if found == "ok" { Ok(()) } else { Err(db.corrupt(found)) }
}

/// The newest schema this version knows.
fn newest_schema() -> i64 {
    MIGRATIONS.iter().map(|m| m.version).max().unwrap_or(0)
}

async fn migrate(path: &Path, options: SqliteConnectOptions) -> Result<(), StoreError> {
    let sql = StoreError::sql(path);
    // A pool of one: through a plain connection, the future could not be sent between threads.
    let pool = SqlitePoolOptions::new().max_connections(1).connect_with(options).await.map_err(&sql)?;
    let known = newest_schema();
    let done = MIGRATIONS.run(&pool).await;
    pool.close().await;
    done.map_err(|error| match error {
        MigrateError::VersionMissing(found) => StoreError::Newer { path: path.to_owned(), found, known },
        MigrateError::VersionMismatch(n) => StoreError::Corrupt { path: path.to_owned(), what: Damage::OtherSchema(n) },
        MigrateError::Execute(e) | MigrateError::ExecuteMigration(e, _) => sql(e),
        other => StoreError::Database(std::sync::Arc::new(sqlx::Error::Migrate(Box::new(other)))),
    })
}
