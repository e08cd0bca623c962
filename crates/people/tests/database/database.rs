//! A database for each test, in one cluster for them all.

use crate::cluster::Cluster;
use sayso_people::{Lifetimes, People};
use sqlx::postgres::{PgConnectOptions, PgConnection};
use sqlx::{AssertSqlSafe, ConnectOptions, Connection};
use std::sync::LazyLock;
use std::sync::atomic::{AtomicU32, Ordering};

static CLUSTER: LazyLock<Cluster> = LazyLock::new(|| Cluster::start(false));
static NEXT: AtomicU32 = AtomicU32::new(0);

fn options(database: &str) -> PgConnectOptions {
    CLUSTER.address("postgres", database).parse::<PgConnectOptions>().unwrap().disable_statement_logging()
}

/// A database of one test.
pub struct Database {
    /// One process of the server.
    pub people: People,
    pub options: PgConnectOptions,
}

impl Database {
    pub async fn new() -> Self {
        Self::with(Lifetimes::default()).await
    }

    pub async fn with(lifetimes: Lifetimes) -> Self {
        let name = format!("test{}", NEXT.fetch_add(1, Ordering::Relaxed));
        let mut first = options("postgres").connect().await.unwrap();
        sqlx::query(AssertSqlSafe(format!("CREATE DATABASE {name}"))).execute(&mut first).await.unwrap();
        first.close().await.unwrap();
        let options = options(&name);
        let people = People::open(options.clone(), lifetimes, 4).await.unwrap();
        Self { people, options }
    }

    /// Another process of the same server.
    pub async fn another(&self) -> People {
        People::open(self.options.clone(), *self.people.lifetimes(), 4).await.unwrap()
    }

    /// A connection past the crate, to look at what is stored.
    pub async fn look(&self) -> PgConnection {
        self.options.connect().await.unwrap()
    }
}
