//! Many callers, and several processes' worth of handles, on one file.

use crate::common::*;
use sayso_store::{Appended, Format, ImportOptions, Others, Revision, Store};
use std::collections::BTreeSet;

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn many_callers_on_two_handles_store_each_event_once() {
    let dir = tempfile::tempdir().unwrap();
    let stores = [Store::open(dir.path()).await.unwrap(), Store::open(dir.path()).await.unwrap()];
    // Each number is appended by two callers, most often through different handles.
    let mut callers = Vec::new();
    for caller in 0_u128..40 {
        let store = stores[(caller % 2) as usize].clone();
        callers.push(tokio::spawn(async move {
            let mut new = 0;
            for n in 0..50 {
                let n = (caller % 20) * 50 + n;
                let at = format!("2026-03-{:02}T10:00:00Z", 1 + n % 28);
                let out = store.append(vec![event(n, &at, press(n % 7))]).await.unwrap();
                match out[0] {
                    Appended::New => new += 1,
                    Appended::Duplicate => {}
                    ref other => panic!("{other:?}"),
                }
            }
            new
        }));
    }
    let mut new = 0;
    for caller in callers {
        new += caller.await.unwrap();
    }
    assert_eq!(new, 1_000, "each event was new to exactly one caller");
    for store in &stores {
        let events = store.events(Revision(0), usize::MAX).await.unwrap();
        assert_eq!(events.len(), 1_000);
        assert_eq!(events.iter().map(|l| l.event.id).collect::<BTreeSet<_>>().len(), 1_000);
        assert!(events.windows(2).all(|w| w[0].at < w[1].at));
        assert_eq!(store.story(home()).await.unwrap().ledger().len(), 1_000);
    }
    assert_eq!(stores[0].check().await.unwrap().fault_count, 0);
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_new_notebook_may_be_opened_by_several_at_once() {
    let dir = tempfile::tempdir().unwrap();
    let opening: Vec<_> = (0..6)
        .map(|_| {
            let path = dir.path().to_owned();
            tokio::spawn(async move { Store::open(&path).await })
        })
        .collect();
    for (n, store) in opening.into_iter().enumerate() {
        let store = store.await.unwrap().unwrap();
        let out = store.append(vec![event(n as u128, "2026-03-01T10:00:00Z", press(1))]).await.unwrap();
        assert_eq!(out, [Appended::New]);
    }
}

#[tokio::test]
async fn every_question_can_be_asked_from_any_thread() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    // Compiles only while all these futures can be sent between threads, as a server needs.
    let asked = tokio::spawn(async move {
        let options = ImportOptions { format: Format::JsonLines, home: None };
        let preview = store.preview(b"", &options).await.unwrap();
        let imported = store.commit(preview, Others::Refuse).await.unwrap();
        store.export(Format::Csv, &mut Vec::new()).await.unwrap();
        let file = store.dir().join("b.sayso-backup");
        let made = store.backup(&file).await.unwrap();
        let restored = store.restore(&file, Others::Refuse).await.unwrap();
        store.story(home()).await.unwrap();
        store.close().await.unwrap();
        (imported.new, made.events, restored.new)
    });
    assert_eq!(asked.await.unwrap(), (0, 0, 0));
}
