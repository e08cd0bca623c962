//! What was agreed, as it is in force; and a "no" that the coach has not read yet.

use crate::house::{House, Signed, event, label};
use axum::http::StatusCode;
use sayso_model::*;
use uuid::Uuid;

const BALL: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001));

async fn append(house: &House, body: impl Into<sayso_model::Body>) {
    let event = Event { animal: Some(house.animal), ..event(house.home, body) };
    house.host.server.home(house.home).append(vec![event]).await.unwrap();
}

async fn shared() -> (House, Signed) {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    append(&house, WordCard::new(BALL, label("ball"))).await;
    let given = house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(given.status, StatusCode::SEE_OTHER, "{}", given.body);
    (house, coach)
}

/// A coach sends a plan that shows the word so many minutes; which proposal it is.
async fn planned(house: &House, coach: &Signed, minutes: u8) -> EventId {
    let last = house.host.now().day(&Zone::utc()).plus(6);
    let (home, animal) = (house.home, house.animal);
    let form = format!(
        "home={home}&what=plan&animal={animal}&word_1={BALL}&way_1=show&minutes_1={minutes}&times_1=3&last_day={last}&text="
    );
    assert_eq!(house.post(coach, "/talk/write", &form).await.status, StatusCode::SEE_OTHER);
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    story.as_recorded(Kind::Proposal).max_by_key(|event| (event.happened_at, event.id)).unwrap().id
}

async fn answers(house: &House, to: EventId, reply: &str, text: &str) {
    let form = format!("to={to}&reply={reply}&text={text}");
    assert_eq!(house.post(&house.keeper, "/talk/answer", &form).await.status, StatusCode::SEE_OTHER);
}

#[tokio::test(flavor = "multi_thread")]
async fn of_two_plans_for_a_word_the_later_stands_on_today_and_on_the_desk_and_none_while_sessions_rest() {
    let (house, coach) = shared().await;
    for minutes in [3, 5] {
        let of = planned(&house, &coach, minutes).await;
        answers(&house, of, "accepted", "").await;
    }
    let today = house.about("today");
    let page = house.get(&house.keeper, &today).await;
    assert_eq!(page.marked("holds").len(), 1, "{}", page.body);
    assert!(page.holds("5 minutes") && !page.holds("3 minutes"), "{}", page.body);
    let desk = house.get(&coach, "/desk").await;
    assert_eq!(desk.marked("kept").len(), 1, "{}", desk.body);
    append(
        &house,
        Sign { sign: Note::new("growl").unwrap(), level: SignLevel::Strong, when: When::During, session: None },
    )
    .await;
    let page = house.get(&house.keeper, &today).await;
    assert!(page.marked("holds").is_empty() && !page.holds("Agreed with Brook"), "{}", page.body);
}

#[tokio::test(flavor = "multi_thread")]
async fn an_answer_that_ends_something_is_unfolded_until_its_coach_has_read_it() {
    let (house, coach) = shared().await;
    let open = "data-test=\"before\" open";
    let first = planned(&house, &coach, 3).await;
    answers(&house, first, "declined", "Who+shall+show+it+at+noon%3F").await;
    let page = house.get(&coach, "/talk").await;
    assert!(page.holds(open) && page.holds("Who shall show it at noon?"), "{}", page.body);
    let again = house.get(&coach, "/talk").await;
    assert!(again.holds("data-test=\"before\"") && !again.holds(open), "it was looked at");
    let asks = format!("home={}&what=question&animal={}&about=&text=Does+it+roll%3F", house.home, house.animal);
    assert_eq!(house.post(&coach, "/talk/write", &asks).await.status, StatusCode::SEE_OTHER);
    assert!(!house.get(&coach, "/talk").await.holds(open));
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let question = story.as_recorded(Kind::Proposal).max_by_key(|e| (e.happened_at, e.id)).unwrap().id;
    answers(&house, question, "said", "It+does.").await;
    assert!(house.get(&coach, "/talk").await.holds(open), "an answered question is no less new");
    assert!(!house.get(&house.keeper, "/talk").await.holds(open), "whoever answered knows");
}

#[tokio::test(flavor = "multi_thread")]
async fn what_is_written_for_a_club_says_to_each_side_whose_answers_are_read() {
    let (house, coach) = shared().await;
    planned(&house, &coach, 3).await;
    let (own, home) = (house.get(&coach, "/talk").await, house.get(&house.keeper, "/talk").await);
    assert!(own.marked("for-club")[0].contains("what the home answers"), "{}", own.body);
    assert!(home.marked("for-club")[0].contains("your answers"), "{}", home.body);
}
