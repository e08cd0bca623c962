//! Projections follow the log whatever the order of arrival, and a wrong one is found out.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod common;
use common::*;
use proptest::prelude::*;
use sayso_model::*;
use sayso_store::{Appended, Store};
use sqlx::sqlite::SqliteConnectOptions;
use sqlx::{ConnectOptions, Row};
use std::path::Path;

/// Every row of a projection as text, sorted.
async fn dump(dir: &Path, table: &'static str) -> Vec<String> {
    let mut db = SqliteConnectOptions::new().filename(dir.join("sayso.db")).connect().await.unwrap();
    let columns: Vec<String> =
        sqlx::query_scalar("SELECT name FROM pragma_table_info($1)").bind(table).fetch_all(&mut db).await.unwrap();
    let quoted: Vec<String> = columns.iter().map(|c| format!("quote({c})")).collect();
    let statement = format!("SELECT {} AS row FROM {table} ORDER BY row", quoted.join(" || ' ' || "));
    let rows = sqlx::query(sqlx::AssertSqlSafe(statement)).fetch_all(&mut db).await.unwrap();
    rows.into_iter().map(|row| row.get(0)).collect()
}

async fn dumps(dir: &Path) -> [Vec<String>; 3] {
    [dump(dir, "fact").await, dump(dir, "day_tally").await, dump(dir, "household_zone").await]
}

async fn one(dir: &Path, statement: &'static str) -> i64 {
    let mut db = SqliteConnectOptions::new().filename(dir.join("sayso.db")).connect().await.unwrap();
    sqlx::query_scalar(statement).fetch_one(&mut db).await.unwrap()
}

#[tokio::test]
async fn a_change_of_zone_moves_days_and_hours_and_a_withdrawn_card_moves_them_back() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    // 23:30 on the first of March in Berlin, the second of March in Tokyo, 17:30 in New York.
    let late = event(1, "2026-03-01T22:30:00Z", press(7));
    let card = event(2, "2026-01-01T10:00:00Z", household_card("Europe/Berlin"));
    store.append(vec![late, card]).await.unwrap();
    let at = |day: &'static str| one(dir.path(), day);
    assert_eq!(at("SELECT hour FROM fact WHERE kind = 'press' AND day = '2026-03-01'").await, 23);
    let moved = event(3, "2026-02-01T10:00:00Z", household_card("Asia/Tokyo"));
    store.append(vec![moved.clone()]).await.unwrap();
    assert_eq!(at("SELECT hour FROM fact WHERE kind = 'press' AND day = '2026-03-02'").await, 7);
    assert_eq!(at("SELECT n FROM day_tally WHERE kind = 'press' AND day = '2026-03-02'").await, 1);
    assert_eq!(at("SELECT count(*) FROM day_tally WHERE kind = 'press'").await, 1);
    let day = |s: &str| s.parse::<Day>().unwrap();
    let counts = store.day_counts(home(), day("2026-03-02"), day("2026-03-02")).await.unwrap();
    assert_eq!(counts.len(), 1);
    assert_eq!((counts[0].kind, counts[0].word, counts[0].n), (Kind::Press, Some(WordId(id(7))), 1));
    assert_eq!(
        (counts[0].learner, counts[0].pressed_by, counts[0].answer),
        (Some(rex()), Some(PressedBy::Learner), None)
    );
    assert!(store.day_counts(home(), day("2026-03-01"), day("2026-03-01")).await.unwrap().is_empty());
    // An earlier card that arrives late changes nothing; the latest by time counts.
    store.append(vec![event(4, "2026-01-15T10:00:00Z", household_card("America/New_York"))]).await.unwrap();
    assert_eq!(at("SELECT hour FROM fact WHERE kind = 'press'").await, 7);
    store.append(vec![event(5, "2026-03-01T10:00:00Z", withdrawal(&moved))]).await.unwrap();
    assert_eq!(at("SELECT hour FROM fact WHERE kind = 'press'").await, 17);
    assert!(store.rebuild_projections().await.unwrap().all_equal());
}

#[tokio::test]
async fn a_projection_broken_on_purpose_is_found_out_and_mended() {
    let breakages = [
        "UPDATE fact SET hour = (hour + 1) % 24 WHERE kind = 'press'",
        "DELETE FROM fact WHERE kind = 'press'",
        "UPDATE day_tally SET n = n + 1 WHERE kind = 'press'",
        "DELETE FROM day_tally WHERE kind = 'press'",
        "INSERT INTO day_tally VALUES (x'00', '2026-01-01', x'00', 'press', x'00', '', '', 1)",
        "UPDATE household_zone SET zone = 'UTC'",
    ];
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let mut log = sayso_sim::samples();
    log.push(event(1, "2026-03-01T22:30:00Z", press(7)));
    log.push(event(2, "2026-01-01T10:00:00Z", household_card("Europe/Berlin")));
    store.append(log).await.unwrap();
    let right = dumps(dir.path()).await;
    assert!(store.rebuild_projections().await.unwrap().all_equal());
    for breakage in breakages {
        let mut db = SqliteConnectOptions::new().filename(dir.path().join("sayso.db")).connect().await.unwrap();
        let hit = sqlx::query(breakage).execute(&mut db).await.unwrap().rows_affected();
        assert!(hit > 0, "{breakage}");
        let rebuilt = store.rebuild_projections().await.unwrap();
        let wrong: Vec<_> = rebuilt.tables.iter().filter(|d| !d.none()).map(|d| d.table).collect();
        assert_eq!(wrong.len(), 1, "{breakage}: {rebuilt:?}");
        assert!(breakage.contains(wrong[0]));
        assert!(store.rebuild_projections().await.unwrap().all_equal(), "mended after {breakage}");
        assert_eq!(dumps(dir.path()).await, right);
    }
}

/// A log of presses, cards and amendments that refer to each other, some in another household's name.
fn logs() -> impl Strategy<Value = Vec<Event>> {
    let one = (0_u8..8, 0_u8..14, 0_i64..200, 0_u8..4, any::<bool>());
    prop::collection::vec(one, 1..24).prop_map(|seeds| {
        let mut log: Vec<Event> = Vec::new();
        for (i, (what, of, hours, zone, foreign)) in seeds.into_iter().enumerate() {
            let base = at("2026-03-28T00:00:00Z").plus_seconds(hours as f64 * 3600.0);
            let zone = ["Europe/Berlin", "Asia/Tokyo", "America/New_York", "UTC"][usize::from(zone)];
            let target = log.get(usize::from(of)).map_or(EventId(id(0x1_0000_0000 + u128::from(of))), |e| e.id);
            let body: Body = match what {
                0..=2 => press(u128::from(of % 3) + 1).into(),
                3 => household_card(zone).into(),
                4 => Withdrawal { of: target, because: None }.into(),
                5 => Correction {
                    of: target,
                    happened_at: None,
                    learner: None,
                    body: Box::new(household_card(zone).into()),
                }
                .into(),
                _ => Correction {
                    of: target,
                    happened_at: Some(base.plus_seconds(-7200.0)),
                    learner: foreign.then(|| LearnerId(id(0xB1))),
                    body: Box::new(press(9).into()),
                }
                .into(),
            };
            let mut event = event(i as u128, "2026-03-28T00:00:00Z", body);
            event.happened_at = base;
            // Equal times of recording on purpose: then the id decides.
            event.recorded_at = at("2026-04-10T00:00:00Z").plus_seconds(f64::from(of % 3));
            if foreign && what == 4 {
                event.household = HouseholdId(id(0xA1));
            }
            log.push(event);
        }
        log
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]
    #[test]
    fn any_order_of_arrival_and_any_duplicates_give_the_same_story_and_projections(
        (log, order, cuts) in logs().prop_flat_map(|log| {
            let twice: Vec<Event> = log.iter().chain(log.iter().step_by(3)).cloned().collect();
            (Just(log), Just(twice).prop_shuffle(), prop::collection::vec(1_usize..6, 1..8))
        })
    ) {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
        runtime.block_on(async {
            let (a, b) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
            let (one, two) = (Store::open(a.path()).await.unwrap(), Store::open(b.path()).await.unwrap());
            one.append(log.clone()).await.unwrap();
            let mut rest = order.as_slice();
            for cut in cuts.iter().cycle() {
                if rest.is_empty() {
                    break;
                }
                let (now, later) = rest.split_at((*cut).min(rest.len()));
                let out = two.append(now.to_vec()).await.unwrap();
                assert!(out.iter().all(|o| matches!(o, Appended::New | Appended::Duplicate)), "{out:?}");
                // Asked in between, so that the story is brought up to date step by step.
                two.story(home()).await.unwrap();
                rest = later;
            }
            for household in [home(), HouseholdId(id(0xA1))] {
                let (x, y) = (one.story(household).await.unwrap(), two.story(household).await.unwrap());
                assert_eq!(x.ledger().all_standing(), y.ledger().all_standing());
                let seen = |s: &Story| s.everyones::<Press>().map(|f| f.event.clone()).collect::<Vec<_>>();
                assert_eq!(seen(&x), seen(&y));
            }
            assert_eq!(dumps(a.path()).await, dumps(b.path()).await);
            for store in [one, two] {
                let rebuilt = store.rebuild_projections().await.unwrap();
                assert!(rebuilt.all_equal(), "{rebuilt:?}");
                store.close().await.unwrap();
            }
        });
    }
}
