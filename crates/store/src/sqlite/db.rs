//! A connection together with the database file it is of, so that what goes wrong names the file.

use crate::damage::Damage;
use crate::error::StoreError;
use sqlx::pool::PoolConnection;
use sqlx::sqlite::{SqliteConnectOptions, SqlitePoolOptions};
use sqlx::{ConnectOptions, Connection, Sqlite, SqliteConnection, SqlitePool};
use std::ops::{Deref, DerefMut};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Connections that read at the same time.
const READERS: u32 = 4;

/// A connection and its file.
pub(crate) struct Db {
    to: To,
    path: Arc<Path>,
}

enum To {
    /// Closed when it is dropped.
    Own(Box<SqliteConnection>),
    /// Given back when it is dropped.
    Lent(PoolConnection<Sqlite>),
}

impl Deref for Db {
    type Target = SqliteConnection;
    fn deref(&self) -> &SqliteConnection {
        match &self.to {
            To::Own(own) => own,
            To::Lent(lent) => lent,
        }
    }
}

impl DerefMut for Db {
    fn deref_mut(&mut self) -> &mut SqliteConnection {
        match &mut self.to {
            To::Own(own) => own,
            To::Lent(lent) => lent,
        }
    }
}

impl Db {
    /// An error of this connection, told by its file.
    pub fn sql(&self) -> impl Fn(sqlx::Error) -> StoreError + Send + use<> {
        let path = Arc::clone(&self.path);
        move |error| StoreError::sql(&path)(error)
    }

    /// What is wrong with what the file holds.
    pub fn corrupt(&self, what: impl Into<Damage>) -> StoreError {
        StoreError::Corrupt { path: self.path.to_path_buf(), what: what.into() }
    }

    /// Reads all that follows as it is at one moment, until the connection is closed. For a connection of one's own.
    pub async fn hold_still(&mut self) -> Result<(), StoreError> {
        let sql = self.sql();
        sqlx::query("BEGIN").execute(&mut **self).await.map(drop).map_err(sql)
    }

    /// The file.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Closes a connection of one's own, or gives a lent one back.
    pub async fn close(self) -> Result<(), StoreError> {
        let sql = self.sql();
        match self.to {
            To::Own(own) => own.close().await.map_err(sql),
            To::Lent(_) => Ok(()),
        }
    }

    /// Closes a connection that an error has left in an unknown state, whatever that answers.
    pub async fn give_up(self) {
        let _ = match self.to {
            To::Own(own) => own.close_hard().await,
            To::Lent(lent) => lent.detach().close_hard().await,
        };
    }
}

/// How a connection of one's own is opened, and what its file is called where something goes wrong.
#[derive(Clone)]
pub(crate) struct Opening {
    options: Arc<SqliteConnectOptions>,
    path: Arc<Path>,
}

impl Opening {
    /// Of the file `path`, in the way `options` do, which may read a copy of it.
    pub fn new(path: &Path, options: SqliteConnectOptions) -> Self {
        Self { options: options.into(), path: path.into() }
    }

    /// A connection of one's own.
    pub async fn connect(&self) -> Result<Db, StoreError> {
        let to = self.options.connect().await.map_err(StoreError::sql(&self.path))?;
        Ok(Db { to: To::Own(Box::new(to)), path: Arc::clone(&self.path) })
    }
}

/// A notebook's folder and its database, open to be read.
#[derive(Clone)]
pub(crate) struct Files {
    /// The folder.
    pub dir: PathBuf,
    /// To copy from, or to be long at, without holding up those who read.
    pub alone: Opening,
    readers: SqlitePool,
}

impl Files {
    /// # Errors
    /// Where the file cannot be opened.
    pub async fn open(dir: &Path, alone: Opening) -> Result<Self, StoreError> {
        let reading = alone.options.as_ref().clone().pragma("query_only", "ON");
        let pool = SqlitePoolOptions::new().max_connections(READERS);
        let readers = pool.connect_with(reading).await.map_err(StoreError::sql(&alone.path))?;
        Ok(Self { dir: dir.to_owned(), alone, readers })
    }

    /// The database file.
    pub fn path(&self) -> &Path {
        &self.alone.path
    }

    /// A connection to read by.
    pub async fn reader(&self) -> Result<Db, StoreError> {
        let lent = self.readers.acquire().await.map_err(StoreError::sql(self.path()))?;
        Ok(Db { to: To::Lent(lent), path: Arc::clone(&self.alone.path) })
    }

    /// Lets no more connections be had.
    pub async fn close(&self) {
        self.readers.close().await;
    }
}
