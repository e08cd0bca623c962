//! Leaving erases, for good: rows, log, and whatever an old phone brings.

use crate::house::{Has, House, JSON, asked, event};
use axum::http::StatusCode;
use sayso_model::{Note, Remark};
use sayso_people::Capability;
use sayso_store::StoreError;

/// Rows of a home, in both schemas.
const ROWS: [&str; 8] = [
    "SELECT count(*) FROM sayso.event WHERE home = $1",
    "SELECT count(*) FROM sayso.blob WHERE home = $1",
    "SELECT count(*) FROM sayso.snapshot WHERE home = $1",
    "SELECT count(*) FROM people.membership WHERE home = $1",
    "SELECT count(*) FROM people.invitation WHERE home = $1",
    "SELECT count(*) FROM people.witness WHERE home = $1",
    "SELECT count(*) FROM people.look WHERE home = $1",
    "SELECT count(*) FROM people.home WHERE id = $1 AND left_at IS NULL",
];

async fn rows(house: &House) -> Vec<i64> {
    let mut counts = Vec::new();
    for sql in ROWS {
        counts.push(house.count(sql).await);
    }
    counts
}

#[tokio::test(flavor = "multi_thread")]
async fn a_home_that_leaves_is_erased_and_no_old_phone_brings_it_back() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(house.get(&coach, &house.about("evidence")).await.status, StatusCode::OK, "a look");
    house.invited(Has::Member, None).await;
    house.host.server.home(house.home).put_clip(vec![1, 2, 3]).await.unwrap();
    let before = rows(&house).await;
    assert!(before.iter().enumerate().all(|(n, count)| *count > 0 || n == 2), "{before:?}");
    let page = house.get(&house.keeper, "/sharing/leave").await;
    assert!(page.holds("/exchange/archive.tar") && page.holds("30 days"), "{}", page.body);
    assert!(page.holds("which accounts belonged to it") && page.holds("Stays for 400 days"), "{}", page.body);
    let archive = house.get(&house.keeper, "/exchange/archive.tar").await;
    assert_eq!(archive.status, StatusCode::OK);
    // Not by a wrong name, and not by a member.
    let wrong = house.post(&house.keeper, "/sharing/leave", &format!("home={}&name=Oak+House", house.home)).await;
    assert_eq!(wrong.status, StatusCode::UNPROCESSABLE_ENTITY);
    let form = format!("home={}&name=birch+house", house.home);
    let member = house.joined(Has::Member, "Mora").await;
    assert_eq!(house.post(&member, "/sharing/leave", &form).await.status, StatusCode::FORBIDDEN);
    assert!(rows(&house).await[0] > 0);
    let other = house.another().await;
    assert_eq!(asked(&other, Some(&house.keeper), "GET", &house.about("today"), None).await.status, StatusCode::OK);

    let gone = house.post(&house.keeper, "/sharing/leave", &form).await;
    assert_eq!((gone.status, gone.marked("erased").len()), (StatusCode::OK, 1), "{}", gone.body);
    assert_eq!(rows(&house).await, [0; 8]);
    assert_eq!(house.count("SELECT count(*) FROM people.home WHERE id = $1 AND left_at IS NOT NULL").await, 1);
    // Gone for everyone in every process.
    for who in [&house.keeper, &member, &coach] {
        for app in [&house.app, &other] {
            let told = asked(app, Some(who), "GET", &house.about("today"), None).await;
            assert_eq!(told.to(), "/homes");
        }
        assert!(!house.get(who, "/homes").await.holds("Birch House"));
    }
    // A phone that was offline.
    let late = serde_json::to_string(&[event(house.home, remark())]).unwrap();
    for app in [&house.app, &other] {
        let told = asked(app, Some(&house.keeper), "POST", "/api/events", Some((JSON, &late))).await;
        assert_eq!(told.status, StatusCode::OK, "{}", told.body);
        assert!(told.holds("\"result\":\"refused\""), "{}", told.body);
    }
    let told = house.host.server.home(house.home).append(vec![event(house.home, remark())]).await;
    assert!(matches!(told, Err(StoreError::HomeLeft(_))), "{told:?}");
    assert_eq!(rows(&house).await, [0; 8]);
}

fn remark() -> Remark {
    Remark { text: Note::new("Later").unwrap() }
}

#[tokio::test(flavor = "multi_thread")]
async fn leaving_that_was_cut_off_is_finished_by_the_servers_keeper() {
    let house = House::new().await;
    let session = house.host.people.session(&house.keeper.token, house.host.now()).await.unwrap().unwrap();
    let by = sayso_people::Allowed {
        capability: Capability::Leave,
        account: session.account,
        scope: sayso_people::Scope::Home(house.home),
        role: Has::Keeper,
        person: None,
    };
    // The process ends after the rows and before the log.
    house.host.people.leave(&by, house.host.now()).await.unwrap();
    assert!(rows(&house).await[0] > 0, "the log is still here");
    assert_eq!(house.get(&house.keeper, &house.about("today")).await.to(), "/homes", "and nobody reaches it");
    assert_eq!(house.get(&house.server, "/server").await.marked("unfinished").len(), 1);
    assert_eq!(house.post(&house.keeper, "/server/finish", "").await.status, StatusCode::NOT_FOUND);
    assert_eq!(house.post(&house.server, "/server/finish", "").await.to(), "/server");
    assert_eq!(rows(&house).await, [0; 8]);
    assert_eq!(house.get(&house.server, "/server").await.marked("unfinished").len(), 0);
    assert_eq!(house.post(&house.server, "/server/finish", "").await.to(), "/server", "twice changes nothing");
}
