//! Homes of a server's database: only those whose keeper agreed to research there, asked again before anything is published.

use crate::cluster::Cluster;
use crate::fresh;
use sayso_model::{
    Body, Consent, ConsentGiven, ConsentTakenBack, Event, EventId, HomeId, Label, Language, Moment, Story,
};
use sayso_people::db::{Homes, Taker};
use sayso_people::{Capability, Lifetimes, OsSecrets, Part, People, Role, Scope, Session};
use sayso_sim::{any_home, simulate};
use sayso_store::{Database, Server};
use std::error::Error;
use std::path::PathBuf;
use std::sync::{Arc, LazyLock};
use std::time::{SystemTime, UNIX_EPOCH};
use study_export::{Bucket, Entry, ExportError, Key, Manifest, OnServer, Source, check, write};
use tempfile::TempDir;
use tokio::runtime::Runtime;
use uuid::Uuid;

static CLUSTER: LazyLock<Cluster> = LazyLock::new(|| Cluster::start(false));

fn now() -> Moment {
    let since = SystemTime::now().duration_since(UNIX_EPOCH).unwrap();
    Moment::clamped(i64::try_from(since.as_millis()).unwrap())
}

struct Stories<'a>(&'a Server);

impl Homes for Stories<'_> {
    async fn opens(&self, home: HomeId) -> Result<Option<Arc<Story>>, Box<dyn Error + Send + Sync>> {
        Ok(self.0.opens(&[home]).await?.remove(&home).map(|events| Arc::new(Story::from_events(events))))
    }
}

/// A home of the server and its keeper.
struct Home {
    id: HomeId,
    keeper: Session,
    /// An event of its log, of whose kind others are made.
    last: Event,
}

/// A server with homes, and where their tables go.
struct Place {
    runtime: Runtime,
    address: String,
    server: Server,
    people: People,
    homes: Vec<Home>,
    dir: TempDir,
}

impl Place {
    fn new(homes: u64) -> Self {
        let runtime = Runtime::new().unwrap();
        let (address, server, people, homes) = runtime.block_on(async {
            let address = fresh::database(&CLUSTER).await;
            let server = Server::open(&Database::at(&address)).await.unwrap();
            let people = People::at(&address, Lifetimes::default(), 2).await.unwrap();
            let (_, secret) = people.invite_first_keeper(now(), &mut OsSecrets).await.unwrap();
            let first = take(&people, &secret).await;
            let hosts = people.may_on_server(&first, Capability::Host, now()).await.unwrap();
            let mut all = Vec::new();
            for seed in 1..=homes {
                let mut home = any_home(seed);
                home.days = 15;
                let events = simulate(&home, seed, "2026-06-01T19:00:00Z".parse().unwrap()).unwrap().events;
                let (id, last) = (events[0].home, events.last().unwrap().clone());
                server.found(id).await.unwrap().append(events).await.unwrap();
                people.open_home(&hosts, id, now()).await.unwrap();
                let part = Part::new(Scope::Home(id), Role::Keeper, None, None).unwrap();
                let (_, secret) = people.invite(&hosts, &part, now(), &mut OsSecrets).await.unwrap();
                all.push(Home { id, keeper: take(&people, &secret).await, last });
            }
            (address, server, people, all)
        });
        Self { runtime, address, server, people, homes, dir: tempfile::tempdir().unwrap() }
    }

    fn tables(&self) -> PathBuf {
        self.dir.path().join("tables")
    }

    fn list(&self) -> PathBuf {
        self.dir.path().join("homes.txt")
    }

    fn opened(&self, key: u8) -> Result<OnServer, ExportError> {
        let key = Key::new(&[key; 32]).unwrap();
        OnServer::open((&self.address, None), &key, (&self.list(), &self.tables()), now)
    }

    fn export(&self) -> Result<Manifest, ExportError> {
        write(&self.tables(), &self.opened(9)?, Bucket(1), 2, &|_| {})
    }

    fn check(&self) -> Result<Manifest, ExportError> {
        check(&self.tables(), &self.opened(9)?, Bucket(1))
    }

    /// What a home's log takes in, by whatever way.
    fn append(&self, home: usize, body: impl Into<Body>) -> Event {
        let (home, at) = (&self.homes[home], now());
        let id = EventId(Uuid::now_v7());
        let event =
            Event { id, animal: None, happened_at: at, recorded_at: at, body: body.into(), ..home.last.clone() };
        let log = self.server.home(home.id);
        self.runtime.block_on(log.append(vec![event.clone()])).unwrap();
        event
    }

    /// What its keeper writes under the server's eyes.
    fn says(&self, home: usize, capability: Capability, body: impl Into<Body>) -> EventId {
        let event = self.append(home, body);
        let (home, stories) = (&self.homes[home], Stories(&self.server));
        self.runtime.block_on(async {
            let leave = self.people.may(&home.keeper, capability, home.id, &stories, now()).await.unwrap();
            self.people.witness(&leave, &event, now()).await.unwrap();
        });
        event.id
    }

    fn agrees(&self, home: usize) -> EventId {
        self.says(home, Capability::Consent, given(Consent::Research))
    }

    fn all_agree(&self) {
        for home in 0..self.homes.len() {
            self.agrees(home);
        }
    }

    fn takes_back(&self, home: usize, given: EventId) {
        self.says(home, Capability::TakeBack, ConsentTakenBack { consent: Consent::Research, given });
    }
}

async fn take(people: &People, secret: &sayso_people::Secret) -> Session {
    let name = Label::new("Ilda").unwrap();
    let taker = Taker::New { name: &name, language: Language::En };
    let joined = people.take_invitation(secret, taker, "192.0.2.1", "test", now(), &mut OsSecrets).await.unwrap();
    joined.session.unwrap().0
}

fn given(consent: Consent) -> ConsentGiven {
    ConsentGiven { consent, words_version: Consent::WORDS, holds: None }
}

fn households(manifest: &Manifest) -> Vec<u32> {
    let mut each: Vec<u32> = manifest.whole.iter().map(|entry| entry.households).collect();
    each.sort_unstable();
    each
}

#[test]
fn only_what_a_keeper_gave_to_research_under_the_server_s_eyes_counts() {
    let place = Place::new(4);
    // One gave nothing; one to norms alone; one by a log that came from elsewhere, as a linked notebook's does.
    place.says(1, Capability::Consent, given(Consent::Norms));
    place.append(2, given(Consent::Research));
    assert_eq!(households(&place.export().unwrap()), [0, 0, 0, 0]);
    assert!(place.check().is_ok());
    place.agrees(3);
    assert!(matches!(place.check(), Err(ExportError::Agreement { changed: 1, all: 4, .. })));
    let manifest = place.export().unwrap();
    assert_eq!(households(&manifest), [0, 0, 0, 1]);
    assert!(manifest.events() > 20);
}

#[test]
fn what_is_taken_back_after_the_export_is_found_before_anything_is_published_and_is_gone_by_the_next() {
    let place = Place::new(3);
    let gave: Vec<EventId> = (0..3).map(|home| place.agrees(home)).collect();
    let before = place.export().unwrap();
    assert_eq!((households(&before), place.check().unwrap()), (vec![1, 1, 1], before.clone()));
    place.takes_back(1, gave[1]);
    let told = place.check().unwrap_err().to_string();
    assert!(told.contains("in 1 of 3 buckets") && told.contains("publish nothing"), "{told}");
    assert_eq!(Manifest::read(&place.tables()).unwrap().unwrap(), before, "the check wrote");
    let after = place.export().unwrap();
    assert_eq!(households(&after), [0, 1, 1]);
    assert!(place.check().is_ok());
    // Those of the others are as they were.
    assert_eq!(after.whole.iter().filter(|entry| before.whole.contains(entry)).count(), 2);
}

#[test]
fn a_home_that_was_erased_is_gone_and_one_that_comes_moves_no_number() {
    let mut place = Place::new(3);
    place.all_agree();
    let before = place.export().unwrap();
    let erased = place.homes.remove(0).id;
    place.runtime.block_on(place.server.erase(erased)).unwrap();
    place.runtime.block_on(place.server.found(HomeId(Uuid::now_v7()))).unwrap();
    assert!(matches!(place.check(), Err(ExportError::Agreement { changed: 1, all: 3, .. })));
    let after = place.export().unwrap();
    assert_eq!((households(&after), &after.of), (vec![0, 1, 1], &before.of));
    assert!(after.whole.iter().filter(|entry| entry.households > 0).all(|entry| before.whole.contains(entry)));
}

/// A server that stops answering after so many households.
struct Stops<'a>(&'a OnServer, std::sync::atomic::AtomicU32);

impl Source for Stops<'_> {
    fn of(&self) -> String {
        self.0.of()
    }

    fn households(&self) -> u32 {
        self.0.households()
    }

    fn agreeing(&self, numbers: std::ops::Range<u32>) -> Result<Vec<u32>, ExportError> {
        self.0.agreeing(numbers)
    }

    fn household(&self, number: u32) -> Result<Option<study_export::Household>, ExportError> {
        if self.1.fetch_add(1, std::sync::atomic::Ordering::Relaxed) == 2 {
            return Err(ExportError::Threads(std::io::Error::other("the machine is down")));
        }
        self.0.household(number)
    }
}

#[test]
fn a_stop_in_the_middle_costs_nothing_twice_and_the_tables_are_those_of_one_go() {
    let place = Place::new(4);
    place.all_agree();
    let server = place.opened(9).unwrap();
    let told = std::sync::Mutex::new(Vec::new());
    let keep = |entry: &Entry| told.lock().unwrap().push(entry.bucket);
    let stopped = write(&place.tables(), &Stops(&server, 0.into()), Bucket(1), 1, &keep);
    assert!(stopped.is_err());
    assert!(matches!(place.check(), Err(ExportError::NotWhole { there: 2, all: 4, .. })));
    let whole = write(&place.tables(), &server, Bucket(1), 1, &keep).unwrap();
    assert_eq!(*told.lock().unwrap(), [0, 1, 2, 3], "a bucket was written twice");
    let (one_go, of) = (tempfile::tempdir().unwrap(), |dir: &std::path::Path| {
        (0..4).map(|n| std::fs::read(dir.join(format!("events/bucket-0000{n}.parquet"))).unwrap()).collect::<Vec<_>>()
    });
    assert_eq!(write(one_go.path(), &server, Bucket(1), 1, &|_| {}).unwrap(), whole);
    assert_eq!(of(one_go.path()), of(&place.tables()));
}

#[test]
fn neither_tables_nor_list_tell_which_home_it_is() {
    let place = Place::new(2);
    place.all_agree();
    place.export().unwrap();
    let mut files = vec![place.list(), place.tables().join("manifest.json")];
    for folder in ["events", "animals"] {
        let entries = std::fs::read_dir(place.tables().join(folder)).unwrap();
        files.extend(entries.map(|entry| entry.unwrap().path()));
    }
    assert_eq!(files.len(), 6);
    for file in files {
        let bytes = std::fs::read(&file).unwrap();
        let text = String::from_utf8_lossy(&bytes);
        for home in &place.homes {
            let known = [home.id.to_string(), home.id.0.simple().to_string()];
            let raw = bytes.windows(16).any(|part| part == home.id.0.as_bytes());
            assert!(!raw && known.iter().all(|known| !text.contains(known)), "{}", file.display());
        }
    }
}

#[test]
fn a_list_that_cannot_be_right_is_refused_before_anything_is_written() {
    let place = Place::new(2);
    place.agrees(0);
    place.export().unwrap();
    let manifest = Manifest::read(&place.tables()).unwrap();
    let told = |key| place.opened(key).map(drop).unwrap_err().to_string();
    assert!(told(8).contains("names no home of this server under this key"));
    let good = std::fs::read_to_string(place.list()).unwrap();
    let first = good.lines().next().unwrap();
    std::fs::write(place.list(), format!("{good}{first}\n")).unwrap();
    assert!(told(9).contains("line 3"), "a household twice");
    std::fs::write(place.list(), format!("somebody\n{good}")).unwrap();
    assert!(told(9).contains("homes.txt, line 1"));
    let key = Key::new(&[9; 32]).unwrap();
    let inside = place.tables().join("homes.txt");
    let opened = OnServer::open((&place.address, None), &key, (&inside, &place.tables()), now);
    assert!(matches!(opened.map(drop), Err(ExportError::ListWithTheTables(_))));
    assert!(!inside.exists());
    assert_eq!(Manifest::read(&place.tables()).unwrap(), manifest);
}
