//! A database for each test, in a cluster for them all.

use crate::cluster::Cluster;
use sqlx::postgres::PgConnectOptions;
use sqlx::{AssertSqlSafe, ConnectOptions, Connection};
use std::sync::atomic::{AtomicU32, Ordering};

static NEXT: AtomicU32 = AtomicU32::new(0);

/// Makes one; how its owner connects to it.
pub async fn database(cluster: &Cluster) -> String {
    let name = format!("test{}", NEXT.fetch_add(1, Ordering::Relaxed));
    let first = cluster.address("postgres", "postgres").parse::<PgConnectOptions>().unwrap();
    let mut first = first.disable_statement_logging().connect().await.unwrap();
    sqlx::query(AssertSqlSafe(format!("CREATE DATABASE {name}"))).execute(&mut first).await.unwrap();
    first.close().await.unwrap();
    cluster.address("postgres", &name)
}
