//! Two servers on one database under load: one is killed again and again, and now and then the database. What phones were
//! told is kept must be there, once. A few kills; `SAYSO_KILLS=1000` for so many, and so many figures.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod phone;
mod server;

use phone::{Phone, Sent};
use sayso_cluster::Cluster;
use sayso_model::{HomeId, Label, Language};
use sayso_people::db::Taker;
use sayso_people::{Capability, Lifetimes, OsSecrets, Part, People, Role, Scope, Secret};
use sayso_store::{Database, Revision, Server as Homes};
use sayso_web::state::machine_clock;
use server::Server;
use std::collections::BTreeMap;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

const HOMES: usize = 4;
/// Every so many kills it is the database that goes.
const DATABASE_EVERY: u32 = 10;
/// Phones that get an answer from either server, at least, before the next kill.
const BETWEEN: u64 = 10;

fn label(text: &str) -> Label {
    Label::new(text).unwrap()
}

/// Homes, each with a signed-in keeper's token.
async fn homes(address: &str) -> Vec<(HomeId, Secret)> {
    let homes = Homes::open(&Database::at(address)).await.unwrap();
    let people = People::at(address, Lifetimes::default(), 2).await.unwrap();
    let now = machine_clock();
    let (_, secret) = people.invite_first_keeper(now, &mut OsSecrets).await.unwrap();
    let take = |name: &'static str, secret: Secret| {
        let people = people.clone();
        async move {
            let taker = Taker::New { name: &label(name), language: Language::En };
            let joined = people.take_invitation(&secret, taker, "192.0.2.1", "test", now, &mut OsSecrets).await;
            joined.unwrap().session.unwrap()
        }
    };
    let (server, _) = take("Server", secret).await;
    let hosts = people.may_on_server(&server, Capability::Host, now).await.unwrap();
    let mut all = Vec::new();
    for _ in 0..HOMES {
        let home = HomeId(uuid::Uuid::now_v7());
        people.open_home(&hosts, home, now).await.unwrap();
        homes.found(home).await.unwrap();
        let part = Part::new(Scope::Home(home), Role::Keeper, None, None).unwrap();
        let (_, secret) = people.invite(&hosts, &part, now, &mut OsSecrets).await.unwrap();
        all.push((home, take("Keeper", secret).await.1));
    }
    people.close().await;
    homes.close().await;
    all
}

#[test]
fn what_phones_were_told_is_kept_is_there_once_whatever_is_killed() {
    let kills: u32 = std::env::var("SAYSO_KILLS").map_or(6, |n| n.parse().unwrap());
    let cluster = Cluster::start(true).unwrap();
    let runtime = tokio::runtime::Runtime::new().unwrap();
    let address = cluster.address("postgres", "postgres");
    let homes = runtime.block_on(homes(&address));
    let mut servers = [Server::start(&address), Server::start(&address)];
    let ports = [servers[0].port(), servers[1].port()];
    let (stop, sent) = (Arc::new(AtomicBool::new(false)), Arc::new(Sent::default()));
    let phones: Vec<_> = homes
        .iter()
        .flat_map(|home| [home, home])
        .enumerate()
        .map(|(n, (home, token))| {
            let (stop, sent) = (Arc::clone(&stop), Arc::clone(&sent));
            let mut phone = Phone::new(*home, token.clone(), ports, n);
            std::thread::spawn(move || {
                while !stop.load(Ordering::Relaxed) {
                    phone.tap(&sent);
                }
                phone.finish(&sent);
                phone.told()
            })
        })
        .collect();
    let begun = Instant::now();
    let mut databases = 0;
    for kill in 1..=kills {
        let until = sent.answered() + BETWEEN;
        let patience = Instant::now();
        while sent.answered() < until {
            assert!(patience.elapsed() < Duration::from_secs(60), "nothing is answered any more");
            std::thread::sleep(Duration::from_millis(5));
        }
        if kill % DATABASE_EVERY == 0 {
            cluster.crash().unwrap();
            cluster.up().unwrap();
            databases += 1;
        } else {
            servers[kill as usize % 2].kill();
        }
    }
    let took = begun.elapsed();
    stop.store(true, Ordering::Relaxed);
    let mut told: BTreeMap<HomeId, Vec<String>> = BTreeMap::new();
    for phone in phones {
        let (home, ids) = phone.join().unwrap();
        told.entry(home).or_default().extend(ids);
    }
    let acknowledged: usize = told.values().map(Vec::len).sum();
    // In order, as when the machine is shut down.
    servers.iter_mut().for_each(Server::stop);
    let stored = runtime.block_on(stored(&address, &homes));
    for (home, mut ids) in told {
        let there = &stored[&home];
        ids.sort();
        let mut once = there.clone();
        once.dedup();
        assert_eq!(once.len(), there.len(), "an event stands twice");
        let lost: Vec<_> = ids.iter().filter(|id| there.binary_search(id).is_err()).collect();
        assert!(lost.is_empty(), "{} of {} acknowledged events are lost: {lost:?}", lost.len(), ids.len());
        assert_eq!(there.len(), ids.len(), "every tap was acknowledged in the end, and nothing else is there");
    }
    println!(
        "{kills} kills, {databases} of them of the database, in {:.0} s: {acknowledged} events acknowledged, none lost or doubled; {}",
        took.as_secs_f64(),
        sent.figures()
    );
    assert!(acknowledged > kills as usize);
}

/// Ids of the events of each home, in order.
async fn stored(address: &str, homes: &[(HomeId, Secret)]) -> BTreeMap<HomeId, Vec<String>> {
    let server = Homes::open(&Database::at(address)).await.unwrap();
    let mut all = BTreeMap::new();
    for (home, _) in homes {
        let events = server.home(*home).events(Revision(0), usize::MAX).await.unwrap();
        let mut ids: Vec<String> = events.iter().map(|logged| logged.event.id.to_string()).collect();
        ids.sort();
        all.insert(*home, ids);
    }
    server.close().await;
    all
}
