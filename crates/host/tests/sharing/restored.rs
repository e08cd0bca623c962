//! A dump is brought back: what was closed since stays closed.

use crate::house::{CLUSTER, Has, House, Signed, asked, open, take};
use axum::http::StatusCode;
use sayso_host::{Host, HostConfig, HostError};
use sayso_model::Label;
use sayso_people::db::{KeyName, Keyed, Standing};
use sayso_people::{Closed, Closings, Lifetimes, People, Secret};
use sayso_store::Database;
use sqlx::Connection;
use sqlx::postgres::PgConnection;
use std::collections::BTreeMap;
use std::sync::Arc;

/// The database of a house as a dump, brought back beside it under another name.
async fn brought_back(house: &House, dump: &std::path::Path) -> String {
    let (address, _) = house.address.split_once('?').unwrap();
    let name = format!("{}_back", address.rsplit('/').next().unwrap());
    CLUSTER.run("psql", &[&CLUSTER.address("postgres", "postgres"), "-qc", &format!("CREATE DATABASE {name}")]);
    let to = CLUSTER.address("postgres", &name);
    CLUSTER.run("pg_restore", &["--exit-on-error", "--dbname", &to, dump.to_str().unwrap()]);
    to
}

fn dumped(house: &House, dump: &std::path::Path) {
    let file = format!("--file={}", dump.display());
    CLUSTER.run("pg_dump", &["--format=custom", &file, &house.address]);
}

async fn refused(address: &str) -> HostError {
    let config = HostConfig::here(Database::at(address), "http://localhost/".parse().unwrap());
    Host::open(&config).await.unwrap_err()
}

async fn count(address: &str, sql: &'static str) -> i64 {
    let mut db = PgConnection::connect(address).await.unwrap();
    sqlx::query_scalar(sql).fetch_one(&mut db).await.unwrap()
}

async fn holds(people: &People, key: &str, host: &Host) -> Keyed {
    people.notebook(&Secret::typed(key), host.now()).await.unwrap()
}

/// Who had a session comes back by a new one, as by a passkey.
async fn signs_in(address: &str, host: &Host, who: &Signed) -> Signed {
    let secret = sayso_people::Secret::long(&mut sayso_people::OsSecrets);
    let mut db = PgConnection::connect(address).await.unwrap();
    let (now, hash) = (host.now().millis(), secret.hash());
    sqlx::query(
        "INSERT INTO people.session (id, account, token, device, made_at, proved_at, seen_at, expires_at)
         VALUES ($1, $2, $3, 'test', $4, $4, $4, $5)",
    )
    .bind(uuid::Uuid::now_v7())
    .bind(who.account.0)
    .bind(hash.bytes().as_slice())
    .bind(now)
    .bind(now + 3_600_000)
    .execute(&mut db)
    .await
    .unwrap();
    Signed { token: secret, account: who.account }
}

#[tokio::test(flavor = "multi_thread")]
async fn what_was_closed_after_a_dump_stays_closed_when_it_is_brought_back() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let member = house.joined(Has::Member, "Mora").await;
    let goes = house.joined(Has::Member, "Sorrel").await;
    let (left, other_keeper) = house.newcomer().await;
    let invited = house.invited(Has::Member, None).await;
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    let calendar = house.post(&house.keeper, "/calendar/new", &format!("home={}", house.home)).await;
    assert_eq!(calendar.status, StatusCode::OK, "{}", calendar.body);
    let linked = crate::linked::key(&house).await;
    assert!(matches!(holds(&house.host.people, &linked, &house.host).await, Keyed::Holds(_)));
    let evidence = house.about("evidence");
    assert_eq!(house.get(&coach, &evidence).await.status, StatusCode::OK);
    let dir = tempfile::tempdir().unwrap();
    let dump = dir.path().join("dump");
    dumped(&house, &dump);

    // Closed after it.
    house.post(&house.keeper, "/sharing/consent/back", &house.consent("coach_figures", club)).await;
    let role = house.role_of(&member).await;
    let ended =
        house.post(&house.keeper, &format!("/sharing/people/{role}/end"), &format!("home={}", house.home)).await;
    assert_eq!(ended.to(), "/sharing#people");
    assert_eq!(house.post(&goes, "/account/erase", "").await.status, StatusCode::OK);
    let leave = asked(
        &house.app,
        Some(&other_keeper),
        "POST",
        "/sharing/leave",
        Some((crate::house::FORM, &format!("home={left}"))),
    )
    .await;
    assert_eq!(leave.marked("erased").len(), 1, "{}", leave.body);
    let list = house.host.people.closings(house.host.now()).await.unwrap();
    for closed in [Closed::Home(left), Closed::Account(goes.account), Closed::Role(role)] {
        assert!(list.all.contains_key(&closed), "{closed:?} in {list:?}");
    }

    // Brought back, the server sees that by itself and lets nobody in; nor is the list written anew.
    let address = brought_back(&house, &dump).await;
    assert_eq!(
        count(&address, "SELECT count(*) FROM people.membership WHERE ended_at IS NOT NULL").await,
        0,
        "all are back"
    );
    assert!(matches!(refused(&address).await, HostError::Elsewhere));
    assert!(matches!(refused(&address).await, HostError::Elsewhere), "each time");
    let people = People::at(&address, Lifetimes::default(), 2).await.unwrap();
    let kept: Closings = list.write().parse().unwrap();
    let done = people.restored(&kept, house.host.now()).await.unwrap();
    assert_eq!((done.homes, done.accounts, done.roles), (1, 1, 1), "{done:?}");
    assert_eq!((done.consents, done.calendars, done.without_keeper), (1, 1, 0), "{done:?}");
    assert!(done.invitations >= 1 && done.sessions >= 5, "{done:?}");
    assert_eq!(people.standing().await.unwrap(), Standing::Same);
    // The next list holds it as well.
    assert!(people.closings(house.host.now()).await.unwrap().all.contains_key(&Closed::Account(goes.account)));

    let host = Arc::new(open(&address).await);
    let app = sayso_host::app(Arc::clone(&host));
    let get = async |who: &Signed, path: &str| asked(&app, Some(who), "GET", path, None).await;
    assert!(get(&house.keeper, "/sharing").await.to().starts_with("/sign-in"), "signed out");
    assert!(take(&host, &invited, "Someone").await.is_err(), "an invitation of before");
    assert_eq!(holds(&host.people, &linked, &host).await, Keyed::Ended, "a notebook that may have been unlinked since");
    let feed = calendar.marked("address")[0].strip_prefix("http://localhost").unwrap();
    assert_eq!(asked(&house.app, None, "GET", feed, None).await.status, StatusCode::OK);
    assert_eq!(asked(&app, None, "GET", feed, None).await.status, StatusCode::NOT_FOUND);
    let (keeper, coach, member) = (
        signs_in(&address, &host, &house.keeper).await,
        signs_in(&address, &host, &coach).await,
        signs_in(&address, &host, &member).await,
    );
    assert_eq!(get(&coach, &evidence).await.to(), "/homes", "what was taken back opens nothing");
    assert_eq!(get(&member, &house.about("today")).await.to(), "/homes", "a role that ended");
    assert!(host.people.account(goes.account).await.unwrap().is_none(), "an account that was erased");
    assert_eq!(host.people.home_state(left).await.unwrap(), sayso_people::db::HomeState::Left);
    // The keeper reads why, and gives anew.
    let page = get(&keeper, "/sharing").await;
    assert_eq!((page.marked("restored").len(), page.marked("nothing-open").len()), (1, 1), "{}", page.body);
    assert!(page.marked("before").iter().any(|b| b.contains("brought back")), "{:?}", page.marked("before"));
    // So do the coach, wherever they look for their homes, and the keeper on Today, until it is given anew.
    for path in ["/homes".to_owned(), "/desk".to_owned(), format!("/club/{club}")] {
        let told = get(&coach, &path).await;
        assert!(told.marked("restored").len() == 1 && told.holds("brought back"), "{path}: {}", told.body);
    }
    let today = house.about("today");
    let told = get(&keeper, &today).await;
    assert!(told.marked("news").len() == 1 && told.holds("every consent ended"), "{}", told.body);
    let form = house.consent("coach_figures", club);
    let given = asked(&app, Some(&keeper), "POST", "/sharing/consent", Some((crate::house::FORM, &form))).await;
    assert_eq!(given.status, StatusCode::SEE_OTHER);
    assert_eq!(get(&coach, &evidence).await.status, StatusCode::OK);
    assert_eq!(get(&keeper, &today).await.marked("news").len(), 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_passkey_that_was_removed_is_not_brought_back() {
    let house = House::new().await;
    let keep =
        "INSERT INTO people.passkey (credential, account, label, content, made_at) VALUES ($1, $2, 'Phone', '{}', 1)";
    let mut db = PgConnection::connect(&house.address).await.unwrap();
    for credential in [[1_u8; 16], [2; 16]] {
        sqlx::query(keep).bind(credential.as_slice()).bind(house.keeper.account.0).execute(&mut db).await.unwrap();
    }
    let dir = tempfile::tempdir().unwrap();
    dumped(&house, &dir.path().join("dump"));
    let session = house.host.people.session(&house.keeper.token, house.host.now()).await.unwrap().unwrap();
    assert!(house.host.people.forget_passkey(&session, &[1; 16], house.host.now()).await.unwrap());
    let list = house.host.people.closings(house.host.now()).await.unwrap();
    let address = brought_back(&house, &dir.path().join("dump")).await;
    let people = People::at(&address, Lifetimes::default(), 2).await.unwrap();
    assert_eq!(people.passkeys(house.keeper.account).await.unwrap().len(), 2);
    assert_eq!(people.restored(&list, house.host.now()).await.unwrap().passkeys, 1);
    let left = people.passkeys(house.keeper.account).await.unwrap();
    assert_eq!(left.iter().map(|key| key.credential.as_slice()).collect::<Vec<_>>(), [[2_u8; 16].as_slice()]);
    assert_eq!(left[0].name, KeyName::Own(Label::new("Phone").unwrap()));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_database_that_moved_and_lacks_nothing_ends_nothing() {
    let house = House::new().await;
    let dir = tempfile::tempdir().unwrap();
    dumped(&house, &dir.path().join("dump"));
    let address = brought_back(&house, &dir.path().join("dump")).await;
    assert!(matches!(refused(&address).await, HostError::Elsewhere));
    let people = People::at(&address, Lifetimes::default(), 2).await.unwrap();
    people.nothing_lost().await.unwrap();
    let app = sayso_host::app(Arc::new(open(&address).await));
    let page = asked(&app, Some(&house.keeper), "GET", "/sharing", None).await;
    assert_eq!((page.status, page.marked("restored").len()), (StatusCode::OK, 0), "{}", page.body);
    let nothing = Closings { at: house.host.now(), all: BTreeMap::new() };
    let done = people.restored(&nothing, house.host.now()).await.unwrap();
    assert_eq!((done.homes, done.accounts, done.roles, done.passkeys), (0, 0, 0, 0));
}
