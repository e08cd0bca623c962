//! Homes put in by bulk are homes like any other.
#![allow(clippy::unwrap_used)]

use sayso_cluster::Cluster;
use sayso_lab::host::fill::{Order, fill};
use sayso_model::*;
use sayso_store::{Appended, Database, Revision, Server};
use std::collections::BTreeSet;
use uuid::Uuid;

#[tokio::test(flavor = "multi_thread")]
async fn each_home_tells_its_story_counts_its_records_and_takes_more() {
    let cluster = Cluster::start(false).unwrap();
    let order = Order {
        database: cluster.address("postgres", "postgres"),
        homes: 20,
        events: 200,
        seed: 7,
        end: Some("2026-06-01T19:00:00Z".parse().unwrap()),
    };
    let homes = fill(&order, &|_| {}).await.unwrap();
    let server = Server::open(&Database::at(&order.database)).await.unwrap();
    assert_eq!(server.homes().await.unwrap().into_iter().collect::<BTreeSet<_>>(), homes.iter().copied().collect());
    let mut animals = BTreeSet::new();
    for home in &homes {
        let store = server.home(*home);
        let story = store.story(*home).await.unwrap();
        assert_eq!(store.revision().await.unwrap(), Revision(200));
        assert!(store.not_understood(*home).await.unwrap().is_empty());
        animals.extend(story.animals().into_keys());
        let more = Event {
            id: EventId(Uuid::now_v7()),
            home: *home,
            animal: None,
            person: None,
            happened_at: "2026-06-02T10:00:00Z".parse().unwrap(),
            zone: story.zone(),
            recorded_at: "2026-06-02T10:00:00Z".parse().unwrap(),
            source: Source::Tap,
            body: Remark { text: Note::new("One more").unwrap() }.into(),
        };
        assert_eq!(store.append(vec![more]).await.unwrap(), [Appended::New]);
        assert_eq!(store.revision().await.unwrap(), Revision(201));
    }
    assert_eq!(animals.len(), 20, "no two homes have an animal in common");
    server.close().await;
    // The same ones again are refused, whole.
    assert!(fill(&order, &|_| {}).await.is_err());
}
