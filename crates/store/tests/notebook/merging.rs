//! Whatever the order of arrival and whatever comes twice, a set of events tells one story.

use crate::common::*;
use proptest::prelude::*;
use sayso_model::*;
use sayso_store::{Appended, Format, ImportOptions, Others, Store};

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
                3 => home_card(zone).into(),
                4 => Withdrawal { of: target, because: None }.into(),
                5 => Correction { of: target, happened_at: None, animal: None, body: Box::new(home_card(zone).into()) }
                    .into(),
                _ => Correction {
                    of: target,
                    happened_at: Some(base.plus_seconds(-7200.0)),
                    animal: foreign.then(|| AnimalId(id(0xB1))),
                    body: Box::new(press(9).into()),
                }
                .into(),
            };
            let mut event = event(i as u128, "2026-03-28T00:00:00Z", body);
            event.happened_at = base;
            // Equal times of recording on purpose: then the id decides.
            event.recorded_at = at("2026-04-10T00:00:00Z").plus_seconds(f64::from(of % 3));
            if foreign && what == 4 {
                event.home = HomeId(id(0xA1));
            }
            log.push(event);
        }
        log
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]
    #[test]
    fn any_order_of_arrival_and_any_duplicates_give_the_same_story(
        (log, order, cuts) in logs().prop_flat_map(|log| {
            let twice: Vec<Event> = log.iter().chain(log.iter().step_by(3)).cloned().collect();
            (Just(log), Just(twice).prop_shuffle(), prop::collection::vec(1_usize..6, 1..8))
        })
    ) {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
        runtime.block_on(async {
            let (a, b) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
            let (one, two) = (Store::open(a.path()).await.unwrap(), Store::open(b.path()).await.unwrap());
            // Both hold both households from the start, so that who comes first makes no difference.
            for store in [&one, &two] {
                store.append(vec![event(900, "2026-01-01T00:00:00Z", press(1))]).await.unwrap();
                let foreign = event(901, "2026-01-01T00:00:00Z", press(1));
                let line = serde_json::to_vec(&Event { home: HomeId(id(0xA1)), ..foreign }).unwrap();
                let options = ImportOptions { format: Format::JsonLines, home: None };
                let preview = store.preview(&line, &options).await.unwrap();
                store.commit(preview, Others::TakeIn).await.unwrap();
            }
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
            for home in [home(), HomeId(id(0xA1))] {
                let (x, y) = (one.story(home).await.unwrap(), two.story(home).await.unwrap());
                let standing = |s: &Story| s.ledger().all().filter_map(|e| s.ledger().standing(e.id)).collect::<Vec<_>>();
                assert_eq!(standing(&x), standing(&y));
                let seen = |s: &Story| s.everyones::<Press>().map(|f| f.event.clone()).collect::<Vec<_>>();
                assert_eq!(seen(&x), seen(&y));
            }
            for store in [one, two] {
                assert_eq!(store.check().await.unwrap().fault_count, 0);
                store.close().await.unwrap();
            }
        });
    }
}
