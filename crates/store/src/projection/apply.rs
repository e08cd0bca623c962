//! Keeps the projections up to date with what a transaction adds to the log.

use super::row::{FACT_COLUMNS, FactRow, Tally, add_tally, insert_facts};
use crate::error::StoreError;
use crate::log::{self, pieces};
use sayso_model::{Body, Event, EventId, HouseholdId, Kind, Ledger, Zone};
use sqlx::{QueryBuilder, Sqlite, SqliteConnection};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// Takes the consequences of events that were just added to the log, in the same transaction.
pub(crate) async fn apply(db: &mut SqliteConnection, path: &Path, new: &[&Event]) -> Result<(), StoreError> {
    if new.is_empty() {
        return Ok(());
    }
    let sql = StoreError::sql(path);
    // Events to look at again: those amended just now, and new ones whose amendment arrived before them.
    let mut again: BTreeSet<EventId> = new.iter().filter_map(|e| e.body.amends()).collect();
    let plain: Vec<&Event> = new.iter().copied().filter(|e| e.body.amends().is_none()).collect();
    let ids: Vec<EventId> = plain.iter().map(|e| e.id).collect();
    again.extend(amended_already(db, &ids).await.map_err(&sql)?);
    let again: Vec<EventId> = again.into_iter().collect();

    let before = take_facts(db, &again).await.map_err(&sql)?;
    let standing = stand(db, path, &again).await?;
    let retold: BTreeSet<EventId> = again.into_iter().collect();
    let amended: BTreeSet<EventId> =
        standing.iter().map(|(e, amended)| (e.id, *amended)).filter(|x| x.1).map(|x| x.0).collect();
    let now: Vec<&Event> =
        plain.into_iter().filter(|e| !retold.contains(&e.id)).chain(standing.iter().map(|(e, _)| e)).collect();

    let card = Kind::HouseholdCard.name();
    let mut moved: BTreeSet<HouseholdId> =
        before.iter().filter(|r| r.kind == card).map(|r| HouseholdId(r.household)).collect();
    moved.extend(now.iter().filter(|e| e.body.kind() == Kind::HouseholdCard).map(|e| e.household));

    let mut zones = zones(db, path, now.iter().map(|e| e.household)).await?;
    let rows: Vec<FactRow> = now
        .iter()
        .map(|e| FactRow::of(e, zones.entry(e.household).or_insert_with(Zone::utc), amended.contains(&e.id)))
        .collect();
    let mut changes = Tally::new();
    for row in &before {
        *changes.entry(row.tally()).or_default() -= 1;
    }
    for row in &rows {
        *changes.entry(row.tally()).or_default() += 1;
    }
    insert_facts(db, "fact", &rows).await.map_err(&sql)?;
    add_tally(db, "day_tally", &changes).await.map_err(&sql)?;
    for household in moved {
        settle_zone(db, path, household, zones.get(&household)).await?;
    }
    Ok(())
}

/// Those of the events that have an amendment in the log.
async fn amended_already(db: &mut SqliteConnection, ids: &[EventId]) -> Result<Vec<EventId>, sqlx::Error> {
    let mut found = Vec::new();
    for piece in pieces(ids) {
        let mut query = QueryBuilder::<Sqlite>::new("SELECT DISTINCT amends FROM event WHERE amends IN (");
        let mut list = query.separated(", ");
        for id in piece {
            list.push_bind(id.0);
        }
        query.push(")");
        found.extend(query.build_query_scalar::<uuid::Uuid>().fetch_all(&mut *db).await?.into_iter().map(EventId));
    }
    Ok(found)
}

/// Takes the rows of events out of `fact`.
async fn take_facts(db: &mut SqliteConnection, ids: &[EventId]) -> Result<Vec<FactRow>, sqlx::Error> {
    let mut taken = Vec::new();
    for piece in pieces(ids) {
        let mut query = QueryBuilder::<Sqlite>::new("DELETE FROM fact WHERE event IN (");
        let mut list = query.separated(", ");
        for id in piece {
            list.push_bind(id.0);
        }
        query.push(format!(") RETURNING {FACT_COLUMNS}"));
        taken.extend(query.build_query_as::<FactRow>().fetch_all(&mut *db).await?);
    }
    Ok(taken)
}

/// How events stand after all amendments in the log, and whether one made them so; those that do not stand are left out.
async fn stand(db: &mut SqliteConnection, path: &Path, ids: &[EventId]) -> Result<Vec<(Event, bool)>, StoreError> {
    let mut ledger = Ledger::default();
    let sql = StoreError::sql(path);
    for json in log::contents(db, ids).await.map_err(&sql)?.values() {
        ledger.insert(log::read(json, path)?);
    }
    for json in log::amendments_of(db, ids).await.map_err(&sql)? {
        ledger.insert(log::read(&json, path)?);
    }
    Ok(ids
        .iter()
        .filter_map(|id| {
            ledger.standing(*id).map(|e| {
                let amended = ledger.first(*id) != Some(&e);
                (e, amended)
            })
        })
        .collect())
}

/// The zones the projections follow now; a household without a card is left out.
async fn zones(
    db: &mut SqliteConnection,
    path: &Path,
    households: impl Iterator<Item = HouseholdId>,
) -> Result<BTreeMap<HouseholdId, Zone>, StoreError> {
    let wanted: BTreeSet<HouseholdId> = households.collect();
    let mut found = BTreeMap::new();
    for household in wanted {
        let name: Option<String> = sqlx::query_scalar("SELECT zone FROM household_zone WHERE household = $1")
            .bind(household.0)
            .fetch_optional(&mut *db)
            .await
            .map_err(StoreError::sql(path))?;
        if let Some(name) = name {
            found.insert(household, zone(&name, path)?);
        }
    }
    Ok(found)
}

fn zone(name: &str, path: &Path) -> Result<Zone, StoreError> {
    Zone::new(name).map_err(|e| StoreError::Corrupt { path: path.to_owned(), what: e.to_string() })
}

/// Finds the zone of a household from its card, and where it changed gives every fact its new day and hour.
async fn settle_zone(
    db: &mut SqliteConnection,
    path: &Path,
    household: HouseholdId,
    followed: Option<&Zone>,
) -> Result<(), StoreError> {
    let sql = StoreError::sql(path);
    let card: Option<uuid::Uuid> = sqlx::query_scalar(
        "SELECT event FROM fact WHERE household = $1 AND kind = $2 ORDER BY happened_ms DESC, event DESC LIMIT 1",
    )
    .bind(household.0)
    .bind(Kind::HouseholdCard.name())
    .fetch_optional(&mut *db)
    .await
    .map_err(&sql)?;
    let standing = match card {
        Some(id) => stand(db, path, &[EventId(id)]).await?,
        None => Vec::new(),
    };
    let now =
        standing.iter().find_map(|(e, _)| if let Body::HouseholdCard(c) = &e.body { Some(&c.zone) } else { None });
    match now {
        Some(zone) => {
            sqlx::query(
                "INSERT INTO household_zone (household, zone) VALUES ($1, $2) \
                 ON CONFLICT (household) DO UPDATE SET zone = excluded.zone",
            )
            .bind(household.0)
            .bind(zone.name())
            .execute(&mut *db)
            .await
            .map_err(&sql)?;
        }
        None => {
            sqlx::query("DELETE FROM household_zone WHERE household = $1")
                .bind(household.0)
                .execute(&mut *db)
                .await
                .map_err(&sql)?;
        }
    }
    let (utc, now) = (Zone::utc(), now.cloned().unwrap_or_else(Zone::utc));
    if *followed.unwrap_or(&utc) == now { Ok(()) } else { move_days(db, path, household, &now).await }
}

/// Gives every fact of a household the day and hour of another zone, and counts its days anew.
async fn move_days(
    db: &mut SqliteConnection,
    path: &Path,
    household: HouseholdId,
    zone: &Zone,
) -> Result<(), StoreError> {
    let sql = StoreError::sql(path);
    let select = format!("DELETE FROM fact WHERE household = $1 RETURNING {FACT_COLUMNS}");
    let mut rows: Vec<FactRow> =
        sqlx::query_as(sqlx::AssertSqlSafe(select)).bind(household.0).fetch_all(&mut *db).await.map_err(&sql)?;
    let mut tally = Tally::new();
    for row in &mut rows {
        let at = sayso_model::Moment::clamped(row.happened_ms);
        row.day = at.day(zone).to_string();
        row.hour = i64::from(at.hour(zone));
        *tally.entry(row.tally()).or_default() += 1;
    }
    sqlx::query("DELETE FROM day_tally WHERE household = $1")
        .bind(household.0)
        .execute(&mut *db)
        .await
        .map_err(&sql)?;
    insert_facts(db, "fact", &rows).await.map_err(&sql)?;
    add_tally(db, "day_tally", &tally).await.map_err(&sql)
}
