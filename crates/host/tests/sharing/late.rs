//! What a home answered without a network and comes later than it happened: told once, though its coach looked in between.

use crate::house::{House, Signed, event};
use axum::http::StatusCode;
use sayso_model::*;
use std::time::Duration;

/// The desk is opened, the home answers where nothing reaches the server, its coach looks at what was agreed, and then it comes.
async fn comes_late(house: &House, coach: &Signed, home: HomeId) {
    let question = format!("home={home}&what=question&animal=&about=&text=When+do+you+begin%3F");
    assert_eq!(house.post(coach, "/talk/write", &question).await.status, StatusCode::SEE_OTHER);
    let log = house.host.server.home(home);
    let to = log.story(home).await.unwrap().as_recorded(Kind::Proposal).next().unwrap().id;
    let a_moment = || tokio::time::sleep(Duration::from_millis(20));
    let answered = async || house.get(coach, "/desk").await.holds("data-test=\"answered\"");
    assert!(!answered().await, "nobody answered yet");
    a_moment().await;
    let at = house.host.now();
    a_moment().await;
    let talk = format!("/talk?home={home}");
    house.get(coach, &talk).await;
    a_moment().await;
    let answer =
        ProposalAnswer { to, reply: Reply::Said, text: ShortNote::new("In May.").ok(), by: None, rehearsed: None };
    let answer = Event { happened_at: at, recorded_at: at, ..event(home, answer) };
    log.append(vec![answer]).await.unwrap();
    let way = format!("/talk?home={home}#t-{to}");
    for _ in 0..2 {
        assert!(answered().await, "told until it is looked at");
        assert!(house.get(coach, "/desk/week").await.holds(&way));
    }
    let unfolded = "data-test=\"before\" open";
    assert!(house.get(coach, &talk).await.holds(unfolded), "and stands open at that look");
    assert!(!answered().await && !house.get(coach, "/desk/week").await.holds(&way), "once");
    assert!(!house.get(coach, &talk).await.holds(unfolded));
}

#[tokio::test(flavor = "multi_thread")]
async fn an_answer_that_comes_after_its_coach_looked_is_told_once() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    house.shares_figures(club).await;
    comes_late(&house, &coach, house.home).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn also_in_a_home_without_an_animal() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let (home, _) = house.newcomer_who_shares(club).await;
    comes_late(&house, &coach, home).await;
}
