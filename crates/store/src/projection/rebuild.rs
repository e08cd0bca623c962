//! Builds the projections anew beside the live ones, compares, and swaps.

use super::row::{FACT_COLUMNS, FactRow, TALLY_COLUMNS, Tally, add_tally, insert_facts};
use crate::error::StoreError;
use crate::log;
use sayso_model::{HouseholdId, Story, Zone};
use sqlx::{AssertSqlSafe, Connection, SqliteConnection};
use std::path::Path;

/// How one live table differs from the table built anew.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Difference {
    /// The table.
    pub table: &'static str,
    /// Rows that the live one lacked.
    pub missing: i64,
    /// Rows that the live one had and should not have.
    pub extra: i64,
    /// Rows the live one had in all.
    pub live: i64,
    /// Rows the new one has.
    pub anew: i64,
}

impl Difference {
    /// Whether the two were the same.
    #[must_use]
    pub const fn none(&self) -> bool {
        self.missing == 0 && self.extra == 0 && self.live == self.anew
    }
}

/// What building the projections anew found.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Rebuilt {
    /// Events read from the log.
    pub events: usize,
    /// Facts that stand.
    pub facts: usize,
    /// The comparison, one a table.
    pub tables: Vec<Difference>,
}

impl Rebuilt {
    /// Whether the live projections were right.
    #[must_use]
    pub fn all_equal(&self) -> bool {
        self.tables.iter().all(Difference::none)
    }
}

const TABLES: [(&str, &str, &str); 3] = [
    ("fact", "anew_fact", FACT_COLUMNS),
    ("day_tally", "anew_day_tally", TALLY_COLUMNS),
    ("household_zone", "anew_household_zone", "household, zone"),
];

/// Builds anew, compares both ways, and puts the new rows in place where they differ; all in one transaction.
pub(crate) async fn rebuild(db: &mut SqliteConnection, path: &Path) -> Result<Rebuilt, StoreError> {
    let sql = StoreError::sql(path);
    let mut tx = db.begin_with("BEGIN IMMEDIATE").await.map_err(&sql)?;
    for (table, anew, _) in TABLES {
        run(&mut tx, format!("DROP TABLE IF EXISTS temp.{anew}")).await.map_err(&sql)?;
        run(&mut tx, format!("CREATE TEMPORARY TABLE {anew} AS SELECT * FROM {table} WHERE 1 = 0"))
            .await
            .map_err(&sql)?;
    }
    run(
        &mut tx,
        "CREATE UNIQUE INDEX temp.anew_key ON anew_day_tally (household, day, learner, kind, word, pressed_by, answer)"
            .to_owned(),
    )
    .await
    .map_err(&sql)?;
    let (events, facts) = fill(&mut tx, path).await?;
    let mut tables = Vec::new();
    for (table, anew, columns) in TABLES {
        let found = Difference {
            table,
            missing: one(
                &mut tx,
                format!(
                    "SELECT count(*) FROM (SELECT {columns} FROM {anew} EXCEPT SELECT {columns} FROM {table}) AS d"
                ),
            )
            .await
            .map_err(&sql)?,
            extra: one(
                &mut tx,
                format!(
                    "SELECT count(*) FROM (SELECT {columns} FROM {table} EXCEPT SELECT {columns} FROM {anew}) AS d"
                ),
            )
            .await
            .map_err(&sql)?,
            live: one(&mut tx, format!("SELECT count(*) FROM {table}")).await.map_err(&sql)?,
            anew: one(&mut tx, format!("SELECT count(*) FROM {anew}")).await.map_err(&sql)?,
        };
        if !found.none() {
            run(&mut tx, format!("DELETE FROM {table}")).await.map_err(&sql)?;
            run(&mut tx, format!("INSERT INTO {table} ({columns}) SELECT {columns} FROM {anew}"))
                .await
                .map_err(&sql)?;
        }
        run(&mut tx, format!("DROP TABLE temp.{anew}")).await.map_err(&sql)?;
        tables.push(found);
    }
    tx.commit().await.map_err(&sql)?;
    Ok(Rebuilt { events, facts, tables })
}

/// Fills the new tables from the log through the model's story, one household at a time.
async fn fill(db: &mut SqliteConnection, path: &Path) -> Result<(usize, usize), StoreError> {
    let sql = StoreError::sql(path);
    let households: Vec<uuid::Uuid> =
        sqlx::query_scalar("SELECT DISTINCT household FROM event").fetch_all(&mut *db).await.map_err(&sql)?;
    let (mut events, mut facts) = (0, 0);
    for household in households {
        let logged = log::after(db, path, Some(HouseholdId(household)), log::Revision(0), i64::MAX).await?;
        events += logged.len();
        let story = Story::from_events(logged.into_iter().map(|l| l.event));
        let (zone, ledger) = (story.zone(), story.ledger());
        let standing = ledger.all_standing();
        let rows: Vec<FactRow> =
            standing.iter().map(|e| FactRow::of(e, &zone, ledger.first(e.id) != Some(e))).collect();
        facts += rows.len();
        let mut tally = Tally::new();
        for row in &rows {
            *tally.entry(row.tally()).or_default() += 1;
        }
        insert_facts(db, "anew_fact", &rows).await.map_err(&sql)?;
        add_tally(db, "anew_day_tally", &tally).await.map_err(&sql)?;
        if story.household().is_some() {
            insert_zone(db, household, &zone).await.map_err(&sql)?;
        }
    }
    Ok((events, facts))
}

async fn insert_zone(db: &mut SqliteConnection, household: uuid::Uuid, zone: &Zone) -> Result<(), sqlx::Error> {
    sqlx::query("INSERT INTO anew_household_zone (household, zone) VALUES ($1, $2)")
        .bind(household)
        .bind(zone.name())
        .execute(db)
        .await
        .map(|_| ())
}

// The names in these statements are the constants above.
async fn run(db: &mut SqliteConnection, statement: String) -> Result<(), sqlx::Error> {
    sqlx::query(AssertSqlSafe(statement)).execute(db).await.map(|_| ())
}

async fn one(db: &mut SqliteConnection, statement: String) -> Result<i64, sqlx::Error> {
    sqlx::query_scalar(AssertSqlSafe(statement)).fetch_one(db).await
}
