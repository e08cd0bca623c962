//! A programme is laid out, joined by accepting, counted and ticked; its coach sees where each stands, and nobody else does.

use crate::house::{Has, House, Signed, event, label, secret_of, take};
use axum::http::StatusCode;
use sayso_model::*;
use uuid::Uuid;

const BALL: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001));

async fn shared() -> (House, ClubId, Signed, Signed) {
    let house = House::new().await;
    let (club, club_keeper, coach) = house.club().await;
    let card = Event { animal: Some(house.animal), ..event(house.home, WordCard::new(BALL, label("ball"))) };
    house.host.server.home(house.home).append(vec![card]).await.unwrap();
    let done = house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    (house, club, club_keeper, coach)
}

/// The form of two weeks.
pub const COURSE: &str = "weeks=2&name=First+words&showings_1=20&invitations_1=&a_day_1=2&days_1=5&lessons_1=showing\
&own_1_1=Put+the+board+by+the+door&own_1_2=&exercise_1=Watch+the+ears.&showings_2=30&exercise_2=";

#[tokio::test(flavor = "multi_thread")]
async fn a_course_does_not_begin_while_a_strong_sign_rests_the_sessions() {
    let (house, _, _, coach) = shared().await;
    let laid = house.post(&coach, "/desk/programmes/new", COURSE).await;
    let to = format!("{}/propose", laid.to());
    let sign = Sign { sign: Note::new("growl").unwrap(), level: SignLevel::Strong, when: When::During, session: None };
    let growl = Event { animal: Some(house.animal), ..event(house.home, sign) };
    house.host.server.home(house.home).append(vec![growl]).await.unwrap();
    let today = house.host.now().day(&Zone::utc());
    let first = |day: Day| format!("animal={}&first={day}", house.animal);
    let told = house.post(&coach, &to, &first(today)).await;
    assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", told.body);
    assert!(told.holds("href=\"#first\"") && told.holds("a strong sign rests the sessions until"), "{}", told.body);
    let sent = house.post(&coach, &to, &first(today.plus(3))).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
}

/// Lays the course out and proposes it from today on: its page, and the proposal.
async fn proposed(house: &House, coach: &Signed) -> (String, EventId) {
    let laid = house.post(coach, "/desk/programmes/new", COURSE).await;
    assert_eq!(laid.status, StatusCode::SEE_OTHER, "{}", laid.body);
    let page = laid.to().to_owned();
    let today = house.host.now().day(&Zone::utc());
    let sent = house.post(coach, &format!("{page}/propose"), &format!("animal={}&first={today}", house.animal)).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    (page, story.as_recorded(Kind::Proposal).next().unwrap().id)
}

#[tokio::test(flavor = "multi_thread")]
async fn a_home_joins_by_accepting_and_stands_against_its_own_aims() {
    let (house, club, club_keeper, coach) = shared().await;
    let form = house.get(&coach, "/desk/programmes/new?weeks=2").await;
    assert!(form.holds("name=\"showings_2\"") && !form.holds("name=\"showings_3\""), "{}", form.body);
    // Of more weeks, with what was typed; nothing is laid out yet.
    let more = house
        .post(&coach, "/desk/programmes/new", &format!("{}&step=show", COURSE.replace("weeks=2", "weeks=3")))
        .await;
    assert_eq!(more.status, StatusCode::OK, "{}", more.body);
    for holds in
        ["name=\"showings_3\"", "value=\"First words\"", "Watch the ears.", "value=\"Put the board by the door\""]
    {
        assert!(more.holds(holds), "{holds}: {}", more.body);
    }
    assert_eq!(house.get(&coach, "/desk/programmes").await.marked("none").len(), 1);
    for (wrong, field) in [
        (COURSE.replace("name=First+words", "name="), "name"),
        (COURSE.replace("days_1=5", "days_1="), "days_1"),
        (COURSE.replace("showings_1=20", "showings_1=900"), "showings_1"),
        ("weeks=1&name=x&showings_1=&exercise_1=".to_owned(), "showings_1"),
    ] {
        let told = house.post(&coach, "/desk/programmes/new", &wrong).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
        assert!(told.holds(&format!("href=\"#{field}\"")), "{field}: {}", told.body);
    }
    let (page, of) = proposed(&house, &coach).await;
    assert_eq!(house.get(&coach, &page).await.marked("nobody").len(), 1, "proposed is not joined");
    let card = house.get(&house.keeper, "/talk").await;
    assert!(card.holds("Programme “First words”, 2 weeks from") && card.holds("20 showings"), "{}", card.body);
    assert!(card.marked("tick").is_empty(), "nothing to tick before it is joined");
    house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=accepted&text=")).await;
    // A showing and a tick.
    let shown = serde_json::json!({ "kind": "press", "word": BALL, "by": "person" });
    let press = Event {
        animal: Some(house.animal),
        ..event(house.home, serde_json::from_value::<sayso_model::Body>(shown).unwrap())
    };
    let given = serde_json::json!({ "kind": "delivery", "answers": press.id, "word": BALL, "answer": "given" });
    let given = Event {
        animal: Some(house.animal),
        ..event(house.home, serde_json::from_value::<sayso_model::Body>(given).unwrap())
    };
    house.host.server.home(house.home).append(vec![press, given]).await.unwrap();
    let tick = |done: &str| format!("of={of}&week=1&aim=4&done={done}");
    let ticked = house.post(&house.keeper, "/talk/aim", &tick("yes")).await;
    assert_eq!(ticked.status, StatusCode::SEE_OTHER, "{}", ticked.body);
    house.post(&house.keeper, "/talk/aim", &tick("yes")).await;
    let card = house.get(&house.keeper, "/talk").await;
    assert!(card.holds("20 showings: 1 of 20 so far"), "{}", card.body);
    assert!(card.holds("Put the board by the door: done"), "{}", card.body);
    // The coach reads the same, by name; what the log can tell nobody ticks, and a coach ticks nothing.
    let told = house.get(&coach, &page).await;
    assert_eq!(told.marked("stands").len(), 1, "{}", told.body);
    for says in
        ["Tarn", "Week 1 of 2", "20 showings: 1 of 20 so far", "Put the board by the door: done", "not compared"]
    {
        assert!(told.holds(says), "{says}: {}", told.body);
    }
    let by_hand = house.post(&house.keeper, "/talk/aim", &format!("of={of}&week=1&aim=1&done=yes")).await;
    assert_eq!(by_hand.status, StatusCode::NOT_FOUND, "showings are counted");
    for (who, status) in [
        (&coach, StatusCode::FORBIDDEN),
        (&house.joined(Has::Sitter, "Wren").await, StatusCode::FORBIDDEN),
        (&house.joined(Has::Observer, "Finch").await, StatusCode::FORBIDDEN),
    ] {
        assert_eq!(house.post(who, "/talk/aim", &tick("no")).await.status, status);
    }
    house.post(&house.keeper, "/talk/aim", &tick("no")).await;
    assert!(house.get(&coach, &page).await.holds("Put the board by the door: not yet"));
    // A colleague sees the course, and not where the other's homes stand; another club neither.
    let made = house.post(&club_keeper, &format!("/club/{club}/invite"), "role=coach").await;
    let (session, token) = take(&house.host, &secret_of(made.marked("link")[0]), "Ash").await.unwrap().session.unwrap();
    let ash = Signed { token, account: session.account };
    let told = house.get(&ash, &page).await;
    assert!(told.status == StatusCode::OK && told.marked("stands").is_empty(), "{}", told.body);
    let (_, _, stranger) = house.club_of_name("Hill+Club").await;
    assert_eq!(house.get(&stranger, &page).await.status, StatusCode::NOT_FOUND);
    assert!(!house.get(&stranger, "/desk/programmes").await.holds("First words"));
    let today = house.host.now().day(&Zone::utc());
    for form in [format!("animal={}&first={today}", house.animal), "closed=yes".to_owned()] {
        let path = if form.starts_with("closed") { format!("{page}/close") } else { format!("{page}/propose") };
        assert_eq!(house.post(&stranger, &path, &form).await.status, StatusCode::NOT_FOUND);
    }
    // Closed it is proposed to nobody more; who joined keeps it.
    house.post(&coach, &format!("{page}/close"), "closed=yes").await;
    let late = house.post(&coach, &format!("{page}/propose"), &format!("animal={}&first={today}", house.animal)).await;
    assert_eq!(late.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert_eq!(house.get(&coach, &page).await.marked("stands").len(), 1);
    // Consent taken back: nobody stands there at the next tap, and the home keeps what it joined.
    house.post(&house.keeper, "/sharing/consent/back", &house.consent("coach_figures", club)).await;
    assert_eq!(house.get(&coach, &page).await.marked("nobody").len(), 1);
    assert!(house.get(&house.keeper, "/talk").await.holds("First words"));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_course_goes_to_several_at_once_and_who_rests_is_left_out_by_name() {
    let (house, _, _, coach) = shared().await;
    let more = [("Moss", false), ("Fern", true)].map(|(name, rests)| (AnimalId(Uuid::now_v7()), name, rests));
    for (animal, name, rests) in more {
        let of = |body: Body| Event { animal: Some(animal), ..event(house.home, body) };
        let sign =
            Sign { sign: Note::new("growl").unwrap(), level: SignLevel::Strong, when: When::During, session: None };
        let card = of(AnimalCard::new(animal, label(name), Species::Dog).into());
        let all = if rests { vec![card, of(sign.into())] } else { vec![card] };
        house.host.server.home(house.home).append(all).await.unwrap();
    }
    let laid = house.post(&coach, "/desk/programmes/new", COURSE).await;
    let page = laid.to().to_owned();
    let proposed = async || {
        let story = house.host.server.home(house.home).story(house.home).await.unwrap();
        story.as_recorded(Kind::Proposal).filter_map(|event| event.animal).collect::<Vec<_>>()
    };
    let today = house.host.now().day(&Zone::utc());
    // Nobody is ticked.
    let none = house.post(&coach, &format!("{page}/propose"), &format!("first={today}")).await;
    assert!(none.status == StatusCode::UNPROCESSABLE_ENTITY && none.holds("href=\"#animal\""), "{}", none.body);
    let sent = house.post(&coach, &format!("{page}/propose"), &format!("all=yes&first={today}")).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    let mut to = proposed().await;
    to.sort();
    let mut meant = vec![house.animal, more[0].0];
    meant.sort();
    assert_eq!(to, meant, "each by a proposal of its own");
    let told = house.get(&coach, sent.to()).await;
    assert!(told.marked("sent")[0].contains("Moss") && !told.marked("sent")[0].contains("Fern"), "{}", told.body);
    assert!(told.marked("left-out")[0].contains("a strong sign rests the sessions: Fern"), "{}", told.body);
    // Who is in it is not asked twice.
    let of = house.host.server.home(house.home).story(house.home).await.unwrap();
    let of = of.as_recorded(Kind::Proposal).find(|event| event.animal == Some(more[0].0)).unwrap().id;
    house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=accepted&text=")).await;
    let again = format!("animal={}&animal={}&first={today}", more[0].0, house.animal);
    let sent = house.post(&coach, &format!("{page}/propose"), &again).await;
    let told = house.get(&coach, sent.to()).await;
    assert!(told.marked("left-out")[0].contains("they are in it: Moss"), "{}", told.body);
    assert_eq!(proposed().await.len(), 3);
}
