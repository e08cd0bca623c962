//! Many homes on one database server: kept apart, erased, let go from memory; and a server that goes away.

use crate::cluster::Cluster;
use crate::common::{at, correction, event, home_card, press, withdrawal};
use sayso_model::consents::consents;
use sayso_model::{
    Body, ClubId, Coach, Consent, ConsentGiven, ConsentTakenBack, Event, HomeId, Kind, Sign, Story, Withdrawal,
};
use sayso_store::{Appended, ClipHash, Database, Digest, Format, ImportOptions, Others, Revision, Server, StoreError};
use sqlx::{AssertSqlSafe, Connection, PgConnection};
use std::collections::BTreeSet;
use std::sync::LazyLock;
use std::time::Duration;
use uuid::Uuid;

pub static CLUSTER: LazyLock<Cluster> = LazyLock::new(|| Cluster::start(false));

fn here() -> Database {
    Database { connections: 4, ..Database::at(CLUSTER.address("postgres", "postgres")) }
}

pub async fn open() -> Server {
    Server::open(&here()).await.unwrap()
}

pub fn some_home() -> HomeId {
    HomeId(Uuid::now_v7())
}

pub fn of(home: HomeId, n: u128, body: impl Into<Body>) -> Event {
    Event { home, ..event(n, "2026-03-01T10:00:00Z", body) }
}

pub async fn raw(user: &str, database: &str) -> PgConnection {
    PgConnection::connect(&CLUSTER.address(user, database)).await.unwrap()
}

pub async fn say(db: &mut PgConnection, sql: &str) -> Result<(), String> {
    let done = sqlx::raw_sql(AssertSqlSafe(sql)).execute(db).await;
    done.map(drop).map_err(|e| e.as_database_error().unwrap().code().unwrap().into_owned())
}

pub async fn count(db: &mut PgConnection, sql: &str) -> i64 {
    sqlx::query_scalar(AssertSqlSafe(sql)).fetch_one(db).await.unwrap()
}

#[tokio::test]
async fn a_home_finds_out_nothing_of_another() {
    let server = open().await;
    let (a, b, nowhere) = (some_home(), some_home(), some_home());
    let (of_a, of_b) = (server.found(a).await.unwrap(), server.found(b).await.unwrap());
    assert_eq!(of_a.append(vec![of(a, 1, press(1))]).await.unwrap(), [Appended::New]);
    // Neither a duplicate nor a conflict: an id of one home says nothing about another.
    assert_eq!(of_b.append(vec![of(b, 1, press(2))]).await.unwrap(), [Appended::New]);
    let hash = of_a.put_clip(b"woof".to_vec()).await.unwrap();
    assert_eq!((of_b.clip(&hash).await.unwrap(), of_b.clips().await.unwrap()), (None, Vec::<ClipHash>::new()));
    of_b.put_clip(b"woof".to_vec()).await.unwrap();
    assert_eq!(of_b.home().await.unwrap(), Some(b));
    assert_eq!(of_b.homes().await.unwrap(), [b]);
    assert_eq!(of_b.events(Revision(0), usize::MAX).await.unwrap().len(), 1);
    assert_eq!(of_b.revision().await.unwrap(), Revision(1), "counted by home");
    // A home that is here and one that is not are refused in the same words.
    let told = |home: HomeId, why: &StoreError| why.to_string().replace(&home.to_string(), "");
    let (here, away) = (of_b.story(a).await.unwrap_err(), of_b.story(nowhere).await.unwrap_err());
    assert!(matches!(here, StoreError::NoSuchHome(_)), "{here}");
    assert_eq!(told(a, &here), told(nowhere, &away));
    assert!(of_b.not_understood(a).await.is_err());
    let refused = of_b.append(vec![of(a, 5, press(1)), of(nowhere, 6, press(1))]).await.unwrap();
    assert!(refused.iter().all(|o| matches!(o, Appended::Refused(_))), "{refused:?}");
    // Nor does a file bring another home in, even where somebody says so.
    let line = serde_json::to_vec(&of(a, 7, press(1))).unwrap();
    let options = ImportOptions { format: Format::JsonLines, home: None };
    assert!(matches!(of_b.preview(&line, &options).await, Err(StoreError::NotImported(_))));
    assert_eq!(of_b.homes().await.unwrap(), [b]);
    assert!(matches!(server.home(nowhere).story(nowhere).await, Err(StoreError::NoSuchHome(_))));
    assert!(matches!(
        server.home(nowhere).append(vec![of(nowhere, 1, press(1))]).await,
        Err(StoreError::NoSuchHome(_))
    ));
    let homes = server.homes().await.unwrap();
    assert!(homes.contains(&a) && homes.contains(&b) && !homes.contains(&nowhere));
}

#[tokio::test]
async fn the_database_itself_keeps_homes_apart_and_the_log_as_it_is() {
    let server = open().await;
    let (a, b) = (some_home(), some_home());
    for home in [a, b] {
        let store = server.found(home).await.unwrap();
        store.append(vec![of(home, 1, press(1)), of(home, 2, press(2))]).await.unwrap();
        store.put_clip(b"woof".to_vec()).await.unwrap();
    }
    let mut root = raw("postgres", "postgres").await;
    say(&mut root, "CREATE ROLE serving LOGIN; GRANT sayso_server TO serving").await.unwrap();
    let mut db = raw("serving", "postgres").await;
    // Inherited rights, and no home set: an error, not an empty answer.
    for table in ["home", "event", "blob"] {
        assert_eq!(say(&mut db, &format!("SELECT * FROM sayso.{table}")).await.unwrap_err(), "42704", "{table}");
    }
    let set = |home: HomeId| format!("BEGIN; SELECT set_config('sayso.home', '{home}', true)");
    say(&mut db, &set(a)).await.unwrap();
    for table in ["event", "blob"] {
        let all = count(&mut db, &format!("SELECT count(*) FROM sayso.{table}")).await;
        let own = count(&mut db, &format!("SELECT count(*) FROM sayso.{table} WHERE home = '{a}'")).await;
        assert!(all == own && own > 0, "{table}: {own} of {all}");
    }
    assert_eq!(count(&mut db, "SELECT count(*) FROM sayso.home").await, 1);
    say(&mut db, "COMMIT").await.unwrap();
    // The setting ends with its transaction.
    assert!(say(&mut db, "SELECT * FROM sayso.event").await.is_err());
    let another =
        format!("INSERT INTO sayso.event (home, seq, id, kind, content) VALUES ('{b}', 9, '{}', '', '')", b.0);
    for refused in [
        "UPDATE sayso.event SET content = '{}'",
        "DELETE FROM sayso.event",
        "TRUNCATE sayso.event",
        "UPDATE sayso.home SET gone = true",
        "DELETE FROM sayso.home",
        "DELETE FROM sayso.blob",
        "UPDATE sayso.blob SET hash = ''",
        &another,
        &format!("SELECT sayso.erase('{b}')"),
    ] {
        say(&mut db, &set(a)).await.unwrap();
        assert_eq!(say(&mut db, refused).await.unwrap_err(), "42501", "{refused}");
        say(&mut db, "ROLLBACK").await.unwrap();
    }
    // Other bytes under a hash: refused by the table, as is an event twice.
    say(&mut db, &set(a)).await.unwrap();
    assert_eq!(say(&mut db, "UPDATE sayso.blob SET bytes = '\\x00'").await.unwrap_err(), "23514");
    say(&mut db, "ROLLBACK").await.unwrap();
    // A program that connects as such a user serves like any other.
    let plain = Database::at(CLUSTER.address("serving", "postgres"));
    let store = Server::open(&plain).await.unwrap().home(a);
    assert_eq!(store.append(vec![of(a, 3, press(3))]).await.unwrap(), [Appended::New]);
}

fn digest(home: HomeId, form: i32, at: i64) -> Digest {
    Digest { home, form, at: Revision(at), bytes: format!("{form} {at}").into_bytes() }
}

#[tokio::test]
async fn what_is_kept_of_homes_is_told_with_how_far_each_has_grown() {
    let (server, other) = (open().await, open().await);
    let (a, b, nowhere) = (some_home(), some_home(), some_home());
    let store = server.found(a).await.unwrap();
    store.append(vec![of(a, 1, press(1)), of(a, 2, press(2))]).await.unwrap();
    server.found(b).await.unwrap();
    let both = [a, b, nowhere];
    let told = async || {
        let all = other.grown(&both).await.unwrap().into_iter();
        all.map(|g| (g.home, g.last.0, g.kept, g.signs)).collect::<Vec<_>>()
    };
    assert_eq!(told().await, [(a, 2, None, false), (b, 0, None, false)]);
    server.keep(&digest(a, 1, 2)).await.unwrap();
    // Whoever read less puts nothing in its place; another form, and as much or more, does.
    other.keep(&digest(a, 1, 1)).await.unwrap();
    assert_eq!(other.digests(&both).await.unwrap(), [digest(a, 1, 2)]);
    other.keep(&digest(a, 2, 1)).await.unwrap();
    assert_eq!(told().await, [(a, 2, Some((2, Revision(1))), false), (b, 0, None, false)]);
    let sign: Sign =
        serde_json::from_value(serde_json::json!({"sign": "growl", "level": "strong", "when": "after"})).unwrap();
    store.append(vec![of(a, 3, sign)]).await.unwrap();
    assert_eq!(told().await[0], (a, 3, Some((2, Revision(1))), true), "a sign is among what came since");
    server.keep(&digest(a, 2, 3)).await.unwrap();
    assert_eq!(told().await[0], (a, 3, Some((2, Revision(3))), false));
    assert!(matches!(server.keep(&digest(nowhere, 1, 1)).await, Err(StoreError::NoSuchHome(_))));
}

#[tokio::test]
async fn to_whom_many_homes_are_open_is_told_as_each_story_tells_it() {
    let server = open().await;
    let (a, b) = (some_home(), some_home());
    let to = Coach::Club { club: ClubId(Uuid::now_v7()) };
    let given = |home, n, consent| of(home, n, ConsentGiven { consent, words_version: Consent::WORDS, holds: None });
    let figures = given(a, 11, Consent::CoachFigures { to });
    let log = given(a, 12, Consent::CoachLog { to });
    let norms = given(a, 13, Consent::Norms);
    let back = ConsentTakenBack { consent: Consent::CoachLog { to }, given: log.id };
    let amended = of(a, 15, Withdrawal { of: norms.id, because: None });
    let all = vec![of(a, 1, press(1)), figures.clone(), log, norms, of(a, 14, back), amended];
    server.found(a).await.unwrap().append(all).await.unwrap();
    let card = of(b, 3, home_card("Europe/Berlin"));
    let moved = of(b, 4, correction(&card, home_card("Europe/Lisbon")));
    let back_again = of(b, 5, withdrawal(&moved));
    let of_b = vec![of(b, 1, press(1)), of(b, 2, press(2)), card, moved, back_again];
    server.found(b).await.unwrap().append(of_b).await.unwrap();
    let now = at("2027-01-01T00:00:00Z");
    let mut found = server.opens(&[a, b, some_home()]).await.unwrap();
    assert_eq!(found.keys().collect::<BTreeSet<_>>(), BTreeSet::from([&a, &b]), "the third is nowhere");
    let card = Story::from_events(found.remove(&b).unwrap());
    assert_eq!((card.ledger().len(), card.zone()), (3, server.home(b).story(b).await.unwrap().zone()));
    let events = found.remove(&a).unwrap();
    assert_eq!(events.len(), 5, "all that decides, and nothing else");
    let told = consents(&Story::from_events(events), now);
    assert_eq!(told, consents(&server.home(a).story(a).await.unwrap(), now));
    assert_eq!(told.open().map(|(c, _)| c).collect::<Vec<_>>(), [Consent::CoachFigures { to }]);
    assert_eq!((Kind::ConsentGiven.name(), Kind::ConsentTakenBack.name()), ("consent_given", "consent_taken_back"));
    assert_eq!(Kind::Sign.name(), "sign");
}

#[tokio::test]
async fn an_erased_home_is_gone_and_nothing_of_it_comes_back() {
    let (server, other) = (open().await, open().await);
    let (leaves, stays) = (some_home(), some_home());
    let mut events: Vec<Event> = (0..400).map(|n| of(leaves, n, press(n % 5))).collect();
    events.insert(0, of(leaves, 9_999, home_card("Europe/Berlin")));
    let store = server.found(leaves).await.unwrap();
    store.append(events.clone()).await.unwrap();
    store.put_clip(b"woof".to_vec()).await.unwrap();
    store.story(leaves).await.unwrap();
    store.close().await.unwrap();
    // Another program has it in memory.
    assert_eq!(other.home(leaves).story(leaves).await.unwrap().ledger().len(), 401);
    let kept = server.found(stays).await.unwrap();
    kept.append(vec![of(stays, 1, press(1))]).await.unwrap();
    server.keep(&digest(leaves, 1, 401)).await.unwrap();
    let mut root = raw("postgres", "postgres").await;
    let rows = |table: &str| format!("SELECT count(*) FROM sayso.{table} WHERE home = '{leaves}'");
    assert_eq!(count(&mut root, &rows("snapshot")).await, 1);
    let before = other.story_bytes();

    server.erase(leaves).await.unwrap();
    for table in ["event", "blob", "snapshot", "digest"] {
        assert_eq!(count(&mut root, &rows(table)).await, 0, "{table}");
    }
    assert!(!server.homes().await.unwrap().contains(&leaves));
    assert!(matches!(other.keep(&digest(leaves, 1, 401)).await, Err(StoreError::HomeLeft(_))), "not even by another");
    assert_eq!(server.grown(&[leaves]).await.unwrap(), []);
    // The other program is told, and lets the story go without being asked.
    while other.story_bytes() >= before {
        tokio::time::sleep(Duration::from_millis(5)).await;
    }
    for program in [&server, &other] {
        let store = program.home(leaves);
        assert!(matches!(store.append(events.clone()).await, Err(StoreError::HomeLeft(h)) if h == leaves));
        assert!(matches!(store.story(leaves).await, Err(StoreError::HomeLeft(_))));
        assert!(matches!(store.put_clip(b"woof".to_vec()).await, Err(StoreError::HomeLeft(_))));
        assert!(matches!(program.found(leaves).await, Err(StoreError::HomeLeft(_))));
        program.erase(leaves).await.unwrap();
    }
    assert!(matches!(server.erase(some_home()).await, Err(StoreError::NoSuchHome(_))));
    assert_eq!(kept.events(Revision(0), 9).await.unwrap().len(), 1);
}

#[tokio::test]
async fn appends_and_an_erasure_at_once_leave_nothing_behind() {
    let server = open().await;
    let home = some_home();
    server.found(home).await.unwrap();
    let callers: Vec<_> = (0..8_u128)
        .map(|caller| {
            let store = server.home(home);
            tokio::spawn(async move {
                for n in 0..1_000 {
                    match store.append(vec![of(home, caller * 1_000 + n, press(1))]).await {
                        Ok(_) => {}
                        Err(StoreError::HomeLeft(_)) => return,
                        Err(other) => panic!("{other}"),
                    }
                }
                panic!("was not refused");
            })
        })
        .collect();
    tokio::time::sleep(Duration::from_millis(100)).await;
    let (one, two) = tokio::join!(server.erase(home), server.erase(home));
    assert!(one.is_ok() && two.is_ok(), "{one:?} {two:?}");
    for caller in callers {
        caller.await.unwrap();
    }
    let mut root = raw("postgres", "postgres").await;
    assert_eq!(count(&mut root, &format!("SELECT count(*) FROM sayso.event WHERE home = '{home}'")).await, 0);
}

#[tokio::test]
async fn stories_are_let_go_by_their_size_the_one_asked_for_longest_ago_first() {
    // Room for about three stories of 200 events.
    let most = 3 * 201 * 1_100;
    let server = Server::open(&Database { most_story_bytes: most, ..here() }).await.unwrap();
    let homes: Vec<HomeId> = (0..6).map(|_| some_home()).collect();
    for home in &homes {
        let events = (0..200).map(|n| of(*home, n, press(n % 5))).collect();
        server.found(*home).await.unwrap().append(events).await.unwrap();
    }
    let story = |home: HomeId| {
        let store = server.home(home);
        async move { store.story(home).await.unwrap() }
    };
    // Held by a reader all along, and so it stays the same one.
    let held = story(homes[0]).await;
    for round in 0..2 {
        for home in &homes {
            assert_eq!(story(*home).await.ledger().len(), 200, "round {round}");
            assert!(server.story_bytes() <= most, "{} bytes", server.story_bytes());
        }
    }
    assert!(std::sync::Arc::ptr_eq(&held, &story(homes[0]).await));
    let last = story(homes[5]).await;
    drop(story(homes[1]).await);
    assert!(std::sync::Arc::ptr_eq(&last, &story(homes[5]).await), "asked for a moment ago");
}

#[tokio::test]
async fn what_only_a_folder_has_says_what_to_do_instead() {
    let server = open().await;
    let home = some_home();
    let store = server.found(home).await.unwrap();
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("a.sayso");
    let refused = [
        store.backup(&file).await.map(drop),
        store.held_backup().await.map(drop),
        store.restore(&file, Others::Refuse).await.map(drop),
        store.look_at_backup(&file).await.map(drop),
        store.check().await.map(drop),
        store.look_through().await,
        store.put_snippet(event(1, "2026-03-01T10:00:00Z", press(1)).id, vec![1], at("2026-03-01T10:00:00Z")).await,
    ];
    for why in refused {
        assert!(matches!(why, Err(StoreError::OnlyInAFolder(_))), "{why:?}");
    }
    assert!(!store.is_read_only() && !file.exists());
    assert!(store.snippets(at("2026-03-01T10:00:00Z")).await.unwrap().is_empty());
}
