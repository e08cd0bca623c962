//! A plan makes no invitation of a word that ends sessions, and goes before no step back: said where it is written, where it is accepted
//! and on Today.

use crate::house::{House, JSON, Signed, asked, event, label};
use axum::http::StatusCode;
use sayso_model::*;
use serde_json::Value;
use uuid::Uuid;

const DONE: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0002));
const BALL: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001));

async fn append(house: &House, body: impl Into<sayso_model::Body>) -> EventId {
    let event = Event { animal: Some(house.animal), ..event(house.home, body) };
    let id = event.id;
    house.host.server.home(house.home).append(vec![event]).await.unwrap();
    id
}

/// A home that shares figures with a club's coach: with a word that ends sessions, and one that is invited and was never shown.
async fn shared() -> (House, Signed) {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let reward = RewardCard::new(RewardId(Uuid::now_v7()), label("ball"), RewardKind::Play);
    let (answer, not_now) = (Note::new("Throw it.").ok(), Note::new("Later.").ok());
    let ball = WordCard { reward: Some(reward.reward), answer, not_now, ..WordCard::new(BALL, label("ball")) };
    append(&house, reward).await;
    append(&house, ball).await;
    append(&house, StageChoice { word: BALL, stage: Stage::Invite, because: None }).await;
    let done =
        WordCard { closing: true, answer: Note::new("Put it away.").ok(), ..WordCard::new(DONE, label("all done")) };
    append(&house, done).await;
    house.shares_figures(club).await;
    (house, coach)
}

fn plan(house: &House, word: WordId, way: &str) -> String {
    let last = house.host.now().day(&Zone::utc()).plus(6);
    let (home, animal) = (house.home, house.animal);
    format!(
        "home={home}&what=plan&animal={animal}&word_1={word}&way_1={way}&minutes_1=3&times_1=3&last_day={last}&text="
    )
}

fn line(word: WordId, way: PlanWay) -> PlanLine {
    PlanLine { word, way: Some(way), minutes: 3, times: 3 }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_word_that_ends_sessions_is_planned_by_nobody_to_be_invited() {
    let (house, coach) = shared().await;
    let form = house.get(&coach, &format!("/talk/write?what=plan&animal={}", house.animal)).await;
    assert!(form.holds("all done (ends sessions)") && form.holds("nobody waits for it"), "{}", form.body);
    let (ball, done) = (form.body.find(&format!("value=\"{BALL}\"")), form.body.find(&format!("value=\"{DONE}\"")));
    assert!(ball.unwrap() < done.unwrap(), "those that end sessions come last");
    for way in ["offer_in_view", "ask_and_point", "ask_between_two"] {
        let told = house.post(&coach, "/talk/write", &plan(&house, DONE, way)).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{way}");
        assert!(told.holds("href=\"#way_1\"") && told.holds("nobody waits"), "{way}: {}", told.body);
    }
    for way in ["show", ""] {
        assert_eq!(
            house.post(&coach, "/talk/write", &plan(&house, DONE, way)).await.status,
            StatusCode::SEE_OTHER,
            "{way}"
        );
    }
    // Nor is the stage of inviting proposed for it.
    let stage = |word: WordId, stage: &str| {
        format!("home={}&what=stage&animal={}&word={word}&stage={stage}&text=", house.home, house.animal)
    };
    let told = house.post(&coach, "/talk/write", &stage(DONE, "invite")).await;
    assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(told.holds("href=\"#stage\"") && told.holds("nobody waits"), "{}", told.body);
    for (word, name) in [(DONE, "show"), (DONE, "converse"), (BALL, "invite")] {
        let told = house.post(&coach, "/talk/write", &stage(word, name)).await;
        assert_eq!(told.status, StatusCode::SEE_OTHER, "{name}: {}", told.body);
    }
    // A program that writes events is told the same, of the coach's plan, of one of the home's own, and of one it is put right into.
    let sent = async |who: &Signed, event: &Event| {
        let body = serde_json::to_string(&[event]).unwrap();
        let told = asked(&house.app, Some(who), "POST", "/api/events", Some((JSON, &body))).await;
        let told: Value = serde_json::from_str(&told.body).unwrap();
        (told[0]["result"].as_str().unwrap().to_owned(), told[0]["problems"][0]["field"].as_str().map(str::to_owned))
    };
    let last_day = house.host.now().day(&Zone::utc()).plus(6);
    let of =
        |body: sayso_model::Body| Event { animal: Some(house.animal), zone: Zone::utc(), ..event(house.home, body) };
    let proposed = |way| {
        let from = Author { account: coach.account, name: label("Brook") };
        let proposes = Proposed::Plan { lines: vec![line(BALL, PlanWay::Show), line(DONE, way)], last_day };
        of(Proposal { from, proposes, text: None, takes_up: None, club: None }.into())
    };
    let own = |way| OwnPlan { lines: vec![line(DONE, way)], last_day };
    let second = ("refused".to_owned(), Some("body.lines.2.way".to_owned()));
    assert_eq!(sent(&coach, &proposed(PlanWay::AskAndPoint)).await, second);
    assert_eq!(sent(&coach, &proposed(PlanWay::Show)).await.0, "new");
    let first = ("refused".to_owned(), Some("body.lines.1.way".to_owned()));
    assert_eq!(sent(&house.keeper, &of(own(PlanWay::OfferInView).into())).await, first);
    let kept = of(own(PlanWay::Show).into());
    assert_eq!(sent(&house.keeper, &kept).await.0, "new");
    let body = Box::new(own(PlanWay::OfferInView).into());
    assert_eq!(
        sent(&house.keeper, &of(Correction { of: kept.id, animal: None, happened_at: None, body }.into())).await,
        first
    );
    // What stood before its word came to end sessions is answered as what stands, whoever sends it again.
    let invites = of(OwnPlan { lines: vec![line(BALL, PlanWay::AskAndPoint)], last_day }.into());
    assert_eq!(sent(&house.keeper, &invites).await.0, "new");
    let card = WordCard {
        closing: true,
        ..house.host.server.home(house.home).story(house.home).await.unwrap().words()[&BALL].clone()
    };
    assert_eq!(sent(&house.keeper, &event(house.home, card)).await.0, "new");
    assert_eq!(sent(&house.keeper, &invites).await.0, "duplicate");
    assert_eq!(sent(&house.keeper, &Event { id: EventId(Uuid::now_v7()), ..invites }).await, first);
}

#[tokio::test(flavor = "multi_thread")]
async fn today_stays_by_a_closing_word_and_a_step_back_whatever_was_agreed() {
    let (house, coach) = shared().await;
    let form = house.get(&coach, &format!("/talk/write?what=plan&animal={}&word={BALL}", house.animal)).await;
    assert!(form.holds("Today says: Back to showing, no loss."), "{}", form.body);
    assert_eq!(
        house.post(&coach, "/talk/write", &plan(&house, BALL, "ask_and_point")).await.status,
        StatusCode::SEE_OTHER
    );
    // Where the home accepts, it reads what comes first.
    let card = house.get(&house.keeper, "/talk").await;
    assert!(card.holds("data-test=\"first\"") && card.holds("the plan waits for it"), "{}", card.body);
    // From a time before, or a file: a plan that invites the closing word.
    let last_day = house.host.now().day(&Zone::utc()).plus(6);
    append(&house, OwnPlan { lines: vec![line(DONE, PlanWay::AskAndPoint)], last_day }).await;
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let of = story.as_recorded(Kind::Proposal).next().unwrap().id;
    let yes = house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=accepted&text=")).await;
    assert_eq!(yes.status, StatusCode::SEE_OTHER, "{}", yes.body);
    let today = house.get(&house.keeper, &house.about("today")).await;
    let steps = today.marked("step");
    assert!(steps.iter().any(|step| step.contains("Back to showing")), "{steps:?}");
    assert!(steps.iter().all(|step| !step.contains("ask and point")), "{steps:?}");
    let agreed = today.marked("agreed");
    assert!(
        agreed.iter().any(|one| one.contains("It waits")) && agreed.iter().any(|one| one.contains("It is not done")),
        "{agreed:?}"
    );
}

#[tokio::test(flavor = "multi_thread")]
async fn an_agreed_stage_of_inviting_is_done_no_more_once_its_word_ends_sessions() {
    let (house, coach) = shared().await;
    let stage = format!("home={}&what=stage&animal={}&word={BALL}&stage=invite&text=", house.home, house.animal);
    assert_eq!(house.post(&coach, "/talk/write", &stage).await.status, StatusCode::SEE_OTHER);
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let of = story.as_recorded(Kind::Proposal).next().unwrap().id;
    let yes = house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=accepted&text=")).await;
    assert_eq!(yes.status, StatusCode::SEE_OTHER, "{}", yes.body);
    let agreed = house.get(&house.keeper, "/talk").await;
    assert_eq!((agreed.marked("do").len(), agreed.marked("first").len()), (1, 0), "{}", agreed.body);
    assert_eq!(house.get(&house.keeper, &house.about("today")).await.marked("holds").len(), 1);
    let ends = event(house.home, WordCard { closing: true, ..story.words()[&BALL].clone() });
    let now = house.host.now();
    let ends = Event { animal: Some(house.animal), happened_at: now, recorded_at: now, ..ends };
    house.host.server.home(house.home).append(vec![ends]).await.unwrap();
    let agreed = house.get(&house.keeper, "/talk").await;
    assert!(agreed.marked("do").is_empty(), "{}", agreed.body);
    assert!(agreed.marked("first")[0].contains("nobody waits for it"), "{}", agreed.body);
    assert!(house.get(&house.keeper, &house.about("today")).await.marked("holds").is_empty());
}
