//! A change is proposed, agreed and drawn by lot; what came of it is told beside it and over all homes, to its coach alone.

use crate::house::{Has, House, Signed, event, label};
use axum::http::StatusCode;
use sayso_model::*;
use uuid::Uuid;

const BALL: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001));

async fn put(house: &House, days: f64, body: impl Into<sayso_model::Body>) {
    let at = house.host.now().plus_seconds(-86_400.0 * days);
    let event = Event { animal: Some(house.animal), happened_at: at, recorded_at: at, ..event(house.home, body) };
    house.host.server.home(house.home).append(vec![event]).await.unwrap();
}

async fn shared() -> (House, ClubId, Signed) {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    put(&house, 60.0, WordCard::new(BALL, label("ball"))).await;
    let done = house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    (house, club, coach)
}

fn change(house: &House, more: &str) -> String {
    format!(
        "home={}&what=change&animal={}&question=quieter_button&label=&words={BALL}&measure=own_presses&expected=more&text={more}",
        house.home, house.animal
    )
}

async fn proposals(house: &House) -> Vec<EventId> {
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    story.as_recorded(Kind::Proposal).map(|e| e.id).collect()
}

async fn plans(house: &House) -> Vec<DesignPlan> {
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    story.of::<DesignPlan>(house.animal).map(|p| p.part.clone()).collect()
}

#[tokio::test(flavor = "multi_thread")]
async fn a_change_becomes_a_trial_by_two_taps_of_the_home() {
    let (house, club, coach) = shared().await;
    let form = house.get(&coach, &format!("/talk/write?what=change&animal={}", house.animal)).await;
    assert!(form.holds("value=\"quieter_button\" required") && form.holds("28 days"), "{}", form.body);
    assert!(!form.holds("value=\"quieter_button\" required checked"), "nothing is chosen beforehand: {}", form.body);
    let none = house.post(&coach, "/talk/write", &change(&house, "").replace("quieter_button", "")).await;
    assert_eq!(none.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(none.holds("href=\"#question\""), "{}", none.body);
    let unsaid = change(&house, "").replace("quieter_button", "other");
    let told = house.post(&coach, "/talk/write", &unsaid).await;
    assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(told.holds("href=\"#label\""), "{}", told.body);
    let sent = house.post(&coach, "/talk/write", &change(&house, "Turn+it+down.")).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    let of = proposals(&house).await[0];
    let draw = format!("of={of}");
    // What it would be stands there before anything is agreed, and cannot be drawn yet.
    let card = house.get(&house.keeper, "/talk").await;
    assert!(card.holds("To try for “ball”: A quieter button") && card.holds("Own presses"), "{}", card.body);
    assert!(!card.holds("data-test=\"draw\""));
    let early = house.post(&house.keeper, "/talk/try", &draw).await;
    assert_eq!(early.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", early.body);
    // First tap.
    house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=accepted&text=")).await;
    let card = house.get(&house.keeper, "/talk").await;
    assert!(card.holds("data-test=\"draw\"") && card.holds(&format!("designs/new?proposal={of}")), "{}", card.body);
    let form = house.get(&house.keeper, &house.about(&format!("designs/new?proposal={of}"))).await;
    assert!(form.holds(&format!("name=\"proposal\" value=\"{of}\"")), "{}", form.body);
    assert!(form.holds("value=\"quieter_button\" required checked"), "{}", form.body);
    // It is the home's to draw: a coach, who only scores and a sitter cannot, and are not asked.
    let (sitter, observer) = (house.joined(Has::Sitter, "Wren").await, house.joined(Has::Observer, "Finch").await);
    for who in [&coach, &sitter, &observer] {
        assert_eq!(house.post(who, "/talk/try", &draw).await.status, StatusCode::FORBIDDEN);
    }
    assert!(!house.get(&coach, "/talk").await.holds("data-test=\"draw\""));
    assert!(plans(&house).await.is_empty());
    // Second tap; a third makes no second trial.
    let drawn = house.post(&house.keeper, "/talk/try", &draw).await;
    let [plan] = plans(&house).await.try_into().unwrap();
    assert_eq!(drawn.to(), house.about(&format!("designs/{}", plan.trial)));
    assert_eq!(house.post(&house.keeper, "/talk/try", &draw).await.to(), drawn.to());
    assert_eq!(plans(&house).await.len(), 1);
    let tomorrow = house.host.now().day(&Zone::utc()).plus(1);
    assert_eq!((plan.proposal, plan.first, plan.points), (Some(of), tomorrow, 28));
    assert_eq!((plan.question, plan.words.as_slice()), (CaseQuestion::QuieterButton, [BALL].as_slice()));
    // Beside the agreement, for both; the order stays unseen.
    for who in [&house.keeper, &coach] {
        let card = house.get(who, "/talk").await;
        assert!(card.holds("Tried by lot:") && card.holds(&format!("designs/{}", plan.trial)), "{}", card.body);
        assert_eq!(house.get(who, drawn.to()).await.status, StatusCode::OK);
    }
    // A second one on the same days: its coach is told before writing it.
    let form = house.get(&coach, &format!("/talk/write?what=change&animal={}", house.animal)).await;
    assert_eq!(form.marked("beside").len(), 1, "{}", form.body);
    assert!(form.holds("neither can be told apart") && form.holds(drawn.to()), "{}", form.body);
    // Over all homes: one trial, going on, and the agreement that was drawn is not counted among those that were not.
    let over = house.get(&coach, "/desk/changes").await;
    assert_eq!(over.status, StatusCode::OK, "{}", over.body);
    assert_eq!((over.marked("nobody-drew").len(), over.marked("none").len(), over.marked("kind").len()), (1, 1, 0));
    assert!(over.holds("A quieter button") && over.holds("going on: 1"), "{}", over.body);
    assert!(over.marked("beside").is_empty(), "{}", over.body);
    // A second one of the home's own on the same days that measures the same: both stand apart, in both places.
    let beside = DesignPlan { trial: DesignId(Uuid::now_v7()), proposal: None, ..plan.clone() };
    put(&house, 0.0, beside).await;
    let over = house.get(&coach, "/desk/changes").await;
    assert!(over.holds("none alone yet") && over.holds("2 trials (going on: 2)"), "{}", over.body);
    assert_eq!(
        (over.marked("beside").len(), over.body.matches("beside another trial").count()),
        (1, 2),
        "{}",
        over.body
    );
    // A plan for the same days: its coach is told before writing it, the home before it says yes; and the other way round.
    let writes = |what: &str| format!("/talk/write?what={what}&animal={}", house.animal);
    let form = house.get(&coach, &writes("plan")).await;
    assert_eq!(form.marked("beside").len(), 1, "{}", form.body);
    assert!(house.get(&coach, &writes("change")).await.marked("beside-plan").is_empty(), "no plan holds");
    let sent = format!(
        "home={}&what=plan&animal={}&word_1={BALL}&way_1=show&minutes_1=3&times_1=3&last_day={}&text=",
        house.home,
        house.animal,
        tomorrow.plus(5)
    );
    let sent = house.post(&coach, "/talk/write", &sent).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    let card = house.get(&house.keeper, "/talk").await;
    assert_eq!(card.body.matches("goes on on the same days as this plan").count(), 1, "{}", card.body);
    let of = proposals(&house).await[1];
    house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=accepted&text=")).await;
    assert_eq!(house.get(&coach, &writes("change")).await.marked("beside-plan").len(), 1);
    // Taken back: gone at the next tap.
    let back = house.consent("coach_figures", club);
    house.post(&house.keeper, "/sharing/consent/back", &back).await;
    let over = house.get(&coach, "/desk/changes").await;
    assert!(!over.holds("going on") && over.marked("drawn").is_empty(), "{}", over.body);
}

#[tokio::test(flavor = "multi_thread")]
async fn while_sessions_rest_no_change_is_proposed_and_none_is_drawn() {
    let (house, _, coach) = shared().await;
    house.post(&coach, "/talk/write", &change(&house, "")).await;
    let of = proposals(&house).await[0];
    house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=accepted&text=")).await;
    let strong =
        Sign { sign: Note::new("growl").unwrap(), level: SignLevel::Strong, when: When::During, session: None };
    put(&house, 0.01, strong).await;
    assert!(!house.get(&house.keeper, "/talk").await.holds("data-test=\"draw\""));
    for (who, path, form) in
        [(&house.keeper, "/talk/try", format!("of={of}")), (&coach, "/talk/write", change(&house, ""))]
    {
        let told = house.post(who, path, &form).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{path}: {}", told.body);
    }
    assert!(plans(&house).await.is_empty());
    assert_eq!(proposals(&house).await.len(), 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn what_followed_is_told_to_whose_advice_it_was_and_a_forged_one_to_nobody() {
    let (house, _, coach) = shared().await;
    // A change that a file says this account proposed, agreed six weeks ago, and much pressing since.
    let from = Author { account: coach.account, name: label("Brook") };
    let plan = Proposed::Stage { word: BALL, stage: Stage::Show };
    put(&house, 43.0, Proposal { from, proposes: plan, text: None, takes_up: None, club: None }).await;
    let of = proposals(&house).await[0];
    put(&house, 42.0, ProposalAnswer { to: of, reply: Reply::Accepted, text: None, by: None, rehearsed: None }).await;
    for day in 0..58 {
        let day = f64::from(day);
        let session = SessionId(Uuid::now_v7());
        put(&house, day + 0.2, SessionStart { session, purpose: Purpose::Showing, words: vec![], room: None }).await;
        let press = serde_json::json!({ "kind": "press", "word": BALL, "by": "animal" });
        let presses = if day < 42.0 { 3 } else { 1 };
        for n in 0..presses {
            put(
                &house,
                day + 0.1 - 0.001 * f64::from(n),
                serde_json::from_value::<sayso_model::Body>(press.clone()).unwrap(),
            )
            .await;
        }
    }
    let over = house.get(&coach, "/desk/changes").await;
    assert!(over.marked("kind").is_empty(), "nobody here saw it written: {}", over.body);
    // Seen by the server as if it had been written here then.
    let sql = "INSERT INTO people.witness (home, event, account, at) SELECT $1, $2, $3, 0";
    let mut db = <sqlx::PgConnection as sqlx::Connection>::connect(&house.address).await.unwrap();
    sqlx::query(sql).bind(house.home.0).bind(of.0).bind(coach.account.0).execute(&mut db).await.unwrap();
    let over = house.get(&coach, "/desk/changes").await;
    assert!(over.holds("Stage: show") && over.holds("Too early to say: 1 of 1 home"), "{}", over.body);
    // A coach of another club, with whom the home shares figures as well, is not told of that advice.
    let (other, _, stranger) = house.club_of_name("Hill+Club").await;
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", other)).await;
    let told = house.get(&stranger, "/desk/changes").await;
    assert!(told.status == StatusCode::OK && !told.holds("Stage: show"), "{}", told.body);
    assert_eq!(house.get(&house.keeper, "/desk/changes").await.status, StatusCode::NOT_FOUND);
}
