//! What every log answers, asked of one in a folder and of one on a server.

use crate::common;

use crate::cluster::Cluster;
use crate::common::{event, home_card, press, told, withdrawal};
use sayso_model::{Body, Event, HomeId, Story};
use sayso_store::{
    Appended, ClipHash, Database, Format, ImportOptions, MOST_CLIP_BYTES, Others, Revision, Server, Store, StoreError,
};
use std::collections::BTreeSet;
use std::sync::{Arc, LazyLock};
use uuid::Uuid;

static CLUSTER: LazyLock<Cluster> = LazyLock::new(|| Cluster::start(false));

/// A home's notebook, open twice as by two programs.
struct Place {
    store: Store,
    another: Store,
    home: HomeId,
    of: Of,
}

enum Of {
    Folder(tempfile::TempDir),
    Server,
}

impl Place {
    async fn folder() -> Self {
        let dir = tempfile::tempdir().unwrap();
        let (store, another) = (Store::open(dir.path()).await.unwrap(), Store::open(dir.path()).await.unwrap());
        Self { store, another, home: HomeId(Uuid::now_v7()), of: Of::Folder(dir) }
    }

    async fn server() -> Self {
        let (one, other) = (open_server().await, open_server().await);
        let home = HomeId(Uuid::now_v7());
        Self { store: one.found(home).await.unwrap(), another: other.home(home), home, of: Of::Server }
    }

    /// Another program's handle, begun anew.
    async fn anew(&self) -> Store {
        match &self.of {
            Of::Folder(dir) => Store::open(dir.path()).await.unwrap(),
            Of::Server => open_server().await.home(self.home),
        }
    }

    fn event(&self, n: u128, body: impl Into<Body>) -> Event {
        Event { home: self.home, ..event(n, "2026-03-01T10:00:00Z", body) }
    }
}

async fn open_server() -> Server {
    let database = Database { connections: 4, ..Database::at(CLUSTER.address("postgres", "postgres")) };
    Server::open(&database).await.unwrap()
}

macro_rules! on_both {
    ($($name:ident),* $(,)?) => {
        mod in_a_folder { $(
            #[tokio::test(flavor = "multi_thread", worker_threads = 2)]
            async fn $name() { super::$name(super::Place::folder().await).await }
        )* }
        mod on_a_server { $(
            #[tokio::test(flavor = "multi_thread", worker_threads = 2)]
            async fn $name() { super::$name(super::Place::server().await).await }
        )* }
    };
}

on_both!(
    each_event_has_its_outcome,
    an_import_is_stored_whole_or_not_at_all,
    what_came_since_is_read_in_order,
    a_follower_misses_nothing_and_reads_nothing_twice,
    another_program_sees_what_was_stored,
    recordings_are_kept_by_the_hash_of_their_bytes,
    a_story_from_a_snapshot_is_the_story,
    an_archive_brings_all_of_it_to_another_log,
);

async fn each_event_has_its_outcome(place: Place) {
    let (store, other_home) = (&place.store, HomeId(Uuid::now_v7()));
    let first = place.event(1, press(1));
    assert_eq!(store.append(vec![first.clone()]).await.unwrap(), [Appended::New]);
    let changed = Event { body: press(2).into(), ..first.clone() };
    let stranger = Event { home: other_home, ..place.event(3, press(3)) };
    let second = place.event(2, press(2));
    let brought = vec![first, changed, second.clone(), second, stranger.clone(), place.event(4, press(4))];
    let out = store.append(brought).await.unwrap();
    assert_eq!(out[..4], [Appended::Duplicate, Appended::Conflict, Appended::New, Appended::Duplicate]);
    assert!(matches!(&out[4], Appended::Refused(why) if why.to_string().contains(&other_home.to_string())), "{out:?}");
    assert_eq!(out[5], Appended::New);
    assert_eq!(store.append(vec![stranger]).await.unwrap(), [out[4].clone()], "not by itself either");
    assert_eq!(store.append(Vec::new()).await.unwrap(), []);
    assert_eq!(store.events(Revision(0), usize::MAX).await.unwrap().len(), 3);
    assert_eq!((store.home().await.unwrap(), store.homes().await.unwrap()), (Some(place.home), vec![place.home]));
}

async fn an_import_is_stored_whole_or_not_at_all(place: Place) {
    let store = &place.store;
    let lines = |events: &[Event]| {
        events.iter().map(|e| serde_json::to_string(e).unwrap() + "\n").collect::<String>().into_bytes()
    };
    let options = ImportOptions { format: Format::JsonLines, home: None };
    let events: Vec<Event> = (0..200).map(|n| place.event(n, press(n % 5))).collect();
    let preview = store.preview(&lines(&events), &options).await.unwrap();
    assert_eq!((preview.new, preview.problem_count), (200, 0));
    // Somebody takes one of the ids between the look and the deed.
    let taken = Event { body: press(99).into(), ..events[150].clone() };
    assert_eq!(place.another.append(vec![taken]).await.unwrap(), [Appended::New]);
    let refused = store.commit(preview, Others::Refuse).await.unwrap_err();
    assert!(matches!(refused, StoreError::NotImported(_)), "{refused}");
    assert_eq!(store.events(Revision(0), usize::MAX).await.unwrap().len(), 1);
    let rest: Vec<Event> = events.iter().filter(|e| e.id != events[150].id).cloned().collect();
    let preview = store.preview(&lines(&rest), &options).await.unwrap();
    assert_eq!(store.commit(preview, Others::Refuse).await.unwrap().new, 199);
    let again = store.preview(&lines(&rest), &options).await.unwrap();
    assert_eq!((again.new, again.duplicates), (0, 199));
}

async fn what_came_since_is_read_in_order(place: Place) {
    let store = &place.store;
    assert_eq!(store.revision().await.unwrap(), Revision(0));
    let events: Vec<Event> = (0..150).map(|n| place.event(n, press(n % 5))).collect();
    for part in events.chunks(40) {
        store.append(part.to_vec()).await.unwrap();
    }
    let all = store.events(Revision(0), usize::MAX).await.unwrap();
    assert!(all.iter().map(|l| &l.event).eq(&events), "as they came");
    assert!(all.windows(2).all(|w| w[0].at < w[1].at));
    assert_eq!(store.revision().await.unwrap(), all[149].at);
    let since = store.events(all[99].at, 10).await.unwrap();
    assert_eq!(since, all[100..110]);
    assert!(store.events(all[149].at, 10).await.unwrap().is_empty());
}

async fn a_follower_misses_nothing_and_reads_nothing_twice(place: Place) {
    const CALLERS: u128 = 16;
    const EACH: u128 = 30;
    // The home's first event, so that a notebook in a folder knows whose it is.
    place.store.append(vec![place.event(0, home_card("Europe/Berlin"))]).await.unwrap();
    let place = Arc::new(place);
    let mut callers = Vec::new();
    for caller in 0..CALLERS {
        let place = Arc::clone(&place);
        callers.push(tokio::spawn(async move {
            let store = if caller % 2 == 0 { &place.store } else { &place.another };
            for n in 0..EACH {
                // Each number is given by two callers.
                let n = 1 + (caller / 2) * EACH + n;
                let out = store.append(vec![place.event(n, press(n % 7))]).await.unwrap();
                assert!(matches!(out[0], Appended::New | Appended::Duplicate), "{out:?}");
            }
        }));
    }
    let follower = {
        let place = Arc::clone(&place);
        tokio::spawn(async move {
            let (mut seen, mut last) = (Vec::new(), Revision(0));
            while seen.len() < usize::try_from(1 + CALLERS / 2 * EACH).unwrap() {
                for logged in place.another.events(last, 7).await.unwrap() {
                    last = logged.at;
                    seen.push(logged.event.id);
                }
            }
            seen
        })
    };
    for caller in callers {
        caller.await.unwrap();
    }
    let seen =
        tokio::time::timeout(std::time::Duration::from_secs(60), follower).await.expect("one was missed").unwrap();
    assert_eq!(seen.iter().collect::<BTreeSet<_>>().len(), seen.len());
    assert_eq!(place.store.events(Revision(0), usize::MAX).await.unwrap().len(), seen.len());
}

async fn another_program_sees_what_was_stored(place: Place) {
    let first = place.event(1, press(1));
    place.store.append(vec![place.event(0, home_card("Europe/Berlin")), first.clone()]).await.unwrap();
    let before = place.another.story(place.home).await.unwrap();
    place.store.append(vec![place.event(2, withdrawal(&first)), place.event(3, press(3))]).await.unwrap();
    let after = place.another.story(place.home).await.unwrap();
    assert_eq!((before.ledger().len(), after.ledger().len()), (2, 4), "what was answered before stays as it was");
    assert_eq!(told(&after), told(&place.store.story(place.home).await.unwrap()));
}

async fn recordings_are_kept_by_the_hash_of_their_bytes(place: Place) {
    let store = &place.store;
    // On a server the home is here already; in a folder it begins with its first event, which recordings do not need.
    let bytes: Vec<u8> = (0..100_000_u32).map(|n| (n % 251) as u8).collect();
    let hash = store.put_clip(bytes.clone()).await.unwrap();
    assert_eq!(store.put_clip(bytes.clone()).await.unwrap(), hash, "twice is once");
    assert_eq!(hash, ClipHash::of(&bytes));
    assert_eq!(place.another.clip(&hash).await.unwrap(), Some(bytes));
    assert_eq!(store.clip(&ClipHash::of(b"other")).await.unwrap(), None);
    let small = store.put_clip(vec![1]).await.unwrap();
    assert_eq!(store.clips().await.unwrap().into_iter().collect::<BTreeSet<_>>(), [hash, small].into());
    for wrong in [Vec::new(), vec![0; MOST_CLIP_BYTES + 1]] {
        assert!(matches!(store.put_clip(wrong).await, Err(StoreError::BadClip { .. })));
    }
}

async fn a_story_from_a_snapshot_is_the_story(place: Place) {
    let mut events = sayso_sim::scale(1, 400, common::at("2026-11-01T00:00:00Z")).events;
    events.iter_mut().for_each(|e| e.home = place.home);
    events.extend((0..5_200).map(|n| place.event(n, press(n % 5))));
    for part in events.chunks(2_000) {
        place.store.append(part.to_vec()).await.unwrap();
    }
    let whole = told(&Story::from_events(events.iter().cloned()));
    assert!(told(&place.store.story(place.home).await.unwrap()) == whole, "read from the log");
    // Leaves a snapshot, and more behind it.
    place.store.close().await.unwrap();
    let more = place.event(9_000, press(1));
    place.another.append(vec![more.clone()]).await.unwrap();
    let story = place.anew().await.story(place.home).await.unwrap();
    events.push(more);
    assert!(told(&story) == told(&Story::from_events(events)), "begun with the snapshot");
}

async fn an_archive_brings_all_of_it_to_another_log(place: Place) {
    let events: Vec<Event> = (0..50).map(|n| place.event(n, press(n % 5))).collect();
    place.store.append(events).await.unwrap();
    place.store.put_clip(b"a sound".to_vec()).await.unwrap();
    let (held, archived) = place.store.held_archive().await.unwrap();
    assert_eq!((archived.events, archived.clips), (50, 1));
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let look = store.look_at(held.path(), sayso_store::FileKind::Archive).await.unwrap();
    store.take_in(held.path(), look, Others::Refuse).await.unwrap();
    let ours = place.store.events(Revision(0), usize::MAX).await.unwrap();
    let theirs = store.events(Revision(0), usize::MAX).await.unwrap();
    assert!(ours.iter().map(|l| &l.event).eq(theirs.iter().map(|l| &l.event)));
    assert_eq!(store.clips().await.unwrap(), place.store.clips().await.unwrap());
}
