//! A database for each test, in one cluster for them all.

use crate::cluster::Cluster;
use crate::fresh;
use sayso_people::{Lifetimes, People};
use sqlx::ConnectOptions;
use sqlx::postgres::{PgConnectOptions, PgConnection};
use std::sync::LazyLock;

static CLUSTER: LazyLock<Cluster> = LazyLock::new(|| Cluster::start(false));

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
        let address = fresh::database(&CLUSTER).await;
        let options = address.parse::<PgConnectOptions>().unwrap().disable_statement_logging();
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
