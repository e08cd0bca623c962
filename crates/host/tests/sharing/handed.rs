//! What is open goes on with the coach to whom a home was handed over, and with who covers on their days: plans, questions, something
//! to practise, a course of weeks. Who coached before is told that it was handed over, and no more.

use crate::colleagues::{agrees, another, club, last_proposal, shares_with};
use crate::house::{Answer, Has, House, JSON, Signed, asked, event, label};
use crate::programmes::COURSE;
use axum::http::StatusCode;
use sayso_model::*;
use sayso_web::state::machine_clock;
use uuid::Uuid;

const BALL: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001));

/// What the first coach left open: a course that was joined, a plan that was agreed, something to practise, a question.
struct Left {
    course: String,
    joined: EventId,
    plan: EventId,
    question: EventId,
}

async fn writes(house: &House, who: &Signed, form: &str) -> EventId {
    let (home, animal) = (house.home, house.animal);
    let sent = house.post(who, "/talk/write", &format!("home={home}&animal={animal}&{form}")).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    last_proposal(house).await
}

async fn accepts(house: &House, of: EventId) {
    let done = house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=accepted&text=")).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
}

async fn leaves(house: &House, coach: &Signed) -> Left {
    let card = Event { animal: Some(house.animal), ..event(house.home, WordCard::new(BALL, label("ball"))) };
    house.host.server.home(house.home).append(vec![card]).await.unwrap();
    let course = house.post(coach, "/desk/programmes/new", COURSE).await.to().to_owned();
    let today = house.host.now().day(&Zone::utc());
    house.post(coach, &format!("{course}/propose"), &format!("animal={}&first={today}", house.animal)).await;
    let joined = last_proposal(house).await;
    accepts(house, joined).await;
    let plan = format!(
        "what=plan&word_1={BALL}&way_1=show&minutes_1=3&times_1=3&word_2=&minutes_2=3&times_2=3&last_day={}&text=",
        today.plus(6)
    );
    let plan = writes(house, coach, &plan).await;
    accepts(house, plan).await;
    writes(house, coach, "what=practice&exercise=showing&character=wary&lessons=brushed&text=").await;
    let question = writes(house, coach, "what=question&about=&text=Does+the+ball+roll+off%3F").await;
    Left { course, joined, plan, question }
}

async fn hands_over(house: &House, from: &Signed, to: &Signed) {
    let form = format!("home={}&colleague={}&text=", house.home, to.account);
    assert_eq!(house.post(from, "/desk/hand-over", &form).await.status, StatusCode::SEE_OTHER);
    let of = last_proposal(house).await;
    assert_eq!(agrees(house, of).await.status, StatusCode::SEE_OTHER);
}

async fn ends(house: &House, who: &Signed, of: EventId) -> Answer {
    house.post(who, "/talk/end", &format!("of={of}")).await
}

fn answers(house: &House, of: EventId, reply: Reply, who: &Signed, name: &str) -> String {
    let by = Some(Author { account: who.account, name: label(name) });
    let answer = ProposalAnswer { to: of, reply, text: None, by, rehearsed: None };
    // The later of two answers counts.
    let now = machine_clock();
    serde_json::to_string(&[Event { happened_at: now, recorded_at: now, ..event(house.home, answer) }]).unwrap()
}

async fn taps(house: &House, who: &Signed, events: &str) -> Answer {
    asked(&house.another().await, Some(who), "POST", "/api/events", Some((JSON, events))).await
}

#[tokio::test(flavor = "multi_thread")]
async fn what_was_open_goes_on_with_the_new_coach_who_can_answer_and_end_it() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    let left = leaves(&house, &brook).await;
    // Until it is handed over nothing of it is the other's, though the home shares with both.
    shares_with(&house, "coach_figures", club, &ash).await;
    assert!(!house.get(&ash, "/talk").await.holds("roll off"));
    assert_eq!(house.get(&ash, &left.course).await.marked("stands").len(), 0);
    for of in [left.question, left.plan] {
        assert_eq!(ends(&house, &ash, of).await.status, StatusCode::NOT_FOUND);
        let told = taps(&house, &ash, &answers(&house, of, Reply::Declined, &ash, "Ash")).await;
        assert!(told.holds("\"result\":\"refused\""), "{}", told.body);
    }
    hands_over(&house, &brook, &ash).await;
    // What was agreed, by whom, and who goes on with it.
    let talk = house.get(&ash, "/talk").await;
    for says in ["From Brook", "Does the ball roll off?", "Plan up to", "Programme “First words”", "Ilda accepted"]
    {
        assert!(talk.holds(says), "{says}: {}", talk.body);
    }
    assert!(talk.marked("goes-on").iter().all(|says| says.contains("Ash goes on with this")), "{}", talk.body);
    assert_eq!((talk.marked("goes-on").len(), talk.marked("end").len()), (4, 4), "{}", talk.body);
    // The place in the course stays the home's; the coach of before is told that it was handed over, and no more.
    let course = house.get(&ash, &left.course).await;
    assert_eq!(course.marked("stands").len(), 1, "{}", course.body);
    assert!(course.holds("Week 1 of 2") && course.holds("20 showings: 0 of 20 so far"), "{}", course.body);
    assert!(course.marked("handed-on").is_empty());
    let before = house.get(&brook, &left.course).await;
    assert!(before.marked("handed-on")[0].contains("Handed over to Ash on"), "{}", before.body);
    assert_eq!((before.marked("stands").len(), before.marked("handed-on").len()), (0, 1));
    assert!(!before.holds("Tarn") && !before.holds("Birch House"), "{}", before.body);
    let desk = house.get(&ash, "/desk?kind=none").await.body + &house.get(&ash, "/desk").await.body;
    assert!(desk.contains("To practise: 0 of 1 lessons shown as read"), "{desk}");
    // At home Today says who it is from now on; what was agreed stands there as before.
    let today = house.get(&house.keeper, &house.about("today")).await;
    assert_eq!(today.marked("whose-now"), ["Ash is your coach now, in place of Brook. What was agreed goes on."]);
    assert_eq!(today.marked("agreed").len(), 1, "{}", today.body);
    assert!(today.holds("From Brook"), "the question waits: {}", today.body);
    let later = house.later(|| machine_clock().plus_seconds(8.0 * 86_400.0)).await;
    let today = asked(&later, Some(&house.keeper), "GET", &house.about("today"), None).await;
    assert!(today.status == StatusCode::OK && today.marked("whose-now").is_empty(), "{}", today.body);
    // The home answers; the new coach reads it, takes it up, and ends the plan.
    house.post(&house.keeper, "/talk/answer", &format!("to={}&reply=said&text=Off+it+rolls.", left.question)).await;
    assert!(house.get(&ash, "/talk").await.holds("Off it rolls."));
    let again = house.get(&ash, &format!("/talk/write?takes_up={}", left.question)).await;
    assert!(again.holds("Does the ball roll off?"), "{}", again.body);
    writes(&house, &ash, &format!("what=note&about=&text=A+rim+helps.&takes_up={}", left.question)).await;
    assert!(house.get(&house.keeper, "/talk").await.holds("A rim helps."));
    let ended = ends(&house, &ash, left.plan).await;
    assert_eq!(ended.status, StatusCode::SEE_OTHER, "{}", ended.body);
    let talk = house.get(&house.keeper, "/talk").await;
    assert!(talk.marked("reply").iter().any(|says| says.contains("Ash ended this")), "{}", talk.body);
    assert!(house.get(&house.keeper, &house.about("today")).await.marked("agreed").is_empty());
    // Nobody else ends it, nobody agrees for the home, and what decides who sees the home is not ended so.
    assert_eq!(house.get(&brook, "/talk").await.to(), "/homes");
    let refused = ends(&house, &brook, left.joined).await;
    assert!(refused.status.is_client_error() || refused.to() == "/homes", "{}", refused.status);
    assert_eq!(ends(&house, &house.joined(Has::Member, "Mora").await, left.joined).await.status, StatusCode::FORBIDDEN);
    let course_joined = || async { house.get(&ash, &left.course).await.marked("stands").len() };
    assert_eq!(course_joined().await, 1);
    for (reply, as_whom, name) in
        [(Reply::Accepted, &ash, "Ash"), (Reply::Said, &ash, "Ash"), (Reply::Declined, &brook, "Brook")]
    {
        let told = taps(&house, &ash, &answers(&house, left.joined, reply, as_whom, name)).await;
        assert!(told.holds("\"result\":\"refused\""), "{reply:?}: {}", told.body);
    }
    let handed = {
        let story = house.host.server.home(house.home).story(house.home).await.unwrap();
        let all = sayso_model::talks::talks(&story, house.host.now());
        all.iter().find(|t| t.part.proposes.opens_to().is_some()).unwrap().id()
    };
    assert!(ends(&house, &ash, handed).await.status.is_client_error());
    assert!(house.get(&ash, "/talk").await.status == StatusCode::OK, "still Ash's");
    let told = taps(&house, &ash, &answers(&house, left.joined, Reply::Declined, &ash, "Ash")).await;
    assert!(told.holds("\"result\":\"new\""), "by a tap as by the page: {}", told.body);
    assert_eq!(course_joined().await, 0, "ended");
}

#[tokio::test(flavor = "multi_thread")]
async fn it_goes_on_from_hand_to_hand() {
    let house = House::new().await;
    let (club, club_keeper, brook) = house.club().await;
    let ash = another(&house, club, &club_keeper, "Ash").await;
    let dale = another(&house, club, &club_keeper, "Dale").await;
    shares_with(&house, "coach_figures", club, &brook).await;
    let left = leaves(&house, &brook).await;
    hands_over(&house, &brook, &ash).await;
    hands_over(&house, &ash, &dale).await;
    let talk = house.get(&dale, "/talk").await;
    assert!(talk.holds("roll off") && talk.holds("Dale goes on with this"), "{}", talk.body);
    assert_eq!(house.get(&dale, &left.course).await.marked("stands").len(), 1);
    for (who, to) in [(&brook, "Ash"), (&ash, "Dale")] {
        let told = house.get(who, &left.course).await;
        assert_eq!(told.marked("stands").len(), 0);
        assert!(told.marked("handed-on")[0].contains(&format!("Handed over to {to}")), "{}", told.body);
        let list = house.get(who, "/desk/programmes").await;
        assert!(list.marked("handed-on")[0].contains(&format!("Handed over to {to}")), "{}", list.body);
    }
    assert_eq!(ends(&house, &dale, left.question).await.status, StatusCode::SEE_OTHER);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_cover_goes_on_with_it_for_its_days_and_ends_with_the_last() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    let left = leaves(&house, &brook).await;
    let today = house.host.now().day(&Zone::utc());
    let days = format!("colleague={}&first={}&last={}", ash.account, today.plus(-1), today.plus(2));
    house.post(&brook, "/desk/cover", &days).await;
    let of = last_proposal(&house).await;
    assert_eq!(house.get(&ash, &left.course).await.marked("stands").len(), 0, "not before the home agrees");
    assert_eq!(agrees(&house, of).await.status, StatusCode::SEE_OTHER);
    let talk = house.get(&ash, "/talk").await;
    assert!(talk.holds("roll off") && talk.holds("Ash stands in for this"), "{}", talk.body);
    assert_eq!(house.get(&ash, &left.course).await.marked("stands").len(), 1);
    let own = house.get(&brook, &left.course).await;
    assert_eq!((own.marked("stands").len(), own.marked("handed-on").len()), (1, 0), "it stays Brook's");
    let at_home = house.get(&house.keeper, &house.about("today")).await;
    assert!(at_home.marked("whose-now")[0].starts_with("Ash stands in for Brook up to"), "{}", at_home.body);
    assert_eq!(ends(&house, &ash, left.question).await.status, StatusCode::SEE_OTHER);
    // After the last day nothing of it is Ash's at the next tap, though nobody did anything.
    let after = house.later(|| machine_clock().plus_seconds(3.5 * 86_400.0)).await;
    let course = asked(&after, Some(&ash), "GET", &left.course, None).await;
    assert_eq!((course.marked("stands").len(), course.marked("handed-on").len()), (0, 0), "{}", course.body);
    let ending =
        asked(&after, Some(&ash), "POST", "/talk/end", Some((crate::house::FORM, &format!("of={}", left.plan)))).await;
    assert_ne!(ending.status, StatusCode::SEE_OTHER, "{}", ending.body);
    let told = asked(
        &after,
        Some(&ash),
        "POST",
        "/api/events",
        Some((JSON, &answers(&house, left.plan, Reply::Declined, &ash, "Ash"))),
    )
    .await;
    assert!(told.holds("\"result\":\"refused\""), "{}", told.body);
    let at_home = asked(&after, Some(&house.keeper), "GET", &house.about("today"), None).await;
    assert!(at_home.marked("whose-now").is_empty() && at_home.marked("agreed").len() == 1, "{}", at_home.body);
    assert_eq!(asked(&after, Some(&brook), "GET", &left.course, None).await.marked("stands").len(), 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn what_was_handed_over_goes_on_when_who_handed_it_over_is_gone() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    let left = leaves(&house, &brook).await;
    hands_over(&house, &brook, &ash).await;
    assert_eq!(house.get(&ash, &left.course).await.marked("stands").len(), 1);
    house.host.people.erase_account(brook.account, house.host.now()).await.unwrap();
    for page in ["/desk", "/desk/week", "/desk/programmes", &left.course] {
        let told = house.get(&ash, page).await;
        assert_eq!(told.status, StatusCode::OK, "{page}: {}", told.body);
    }
    assert_eq!(house.get(&ash, &left.course).await.marked("stands").len(), 1);
    assert!(house.get(&ash, "/talk").await.holds("roll off"));
}

#[tokio::test(flavor = "multi_thread")]
async fn what_a_stand_in_wrote_is_news_to_the_coach_who_comes_back_and_theirs_to_go_on_with() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    let left = leaves(&house, &brook).await;
    let today = house.host.now().day(&Zone::utc());
    house.post(&brook, "/desk/cover", &format!("colleague={}&first={today}&last={}", ash.account, today.plus(2))).await;
    let of = last_proposal(&house).await;
    let asked_first = house.get(&house.keeper, &format!("/sharing/handed/{of}")).await;
    assert!(asked_first.holds("Back again, Brook reads what Ash and you wrote to each other"), "{}", asked_first.body);
    assert_eq!(agrees(&house, of).await.status, StatusCode::SEE_OTHER);
    let form = house.get(&ash, "/talk/write").await;
    assert_eq!(form.marked("cover-reads").len(), 1, "{}", form.body);
    assert!(house.get(&brook, "/talk/write").await.marked("cover-reads").is_empty());
    let note = writes(&house, &ash, "what=note&about=&text=A+rim+helps.").await;
    let question = writes(&house, &ash, "what=question&about=&text=Which+mat%3F").await;
    // Brook comes back after the last day.
    let after = house.later(|| machine_clock().plus_seconds(3.5 * 86_400.0)).await;
    let gets = |who, path: &str| {
        let (after, path) = (after.clone(), path.to_owned());
        async move { asked(&after, Some(who), "GET", &path, None).await }
    };
    let desk = gets(&brook, "/desk").await;
    let news = desk.marked("stood-in");
    assert_eq!(news.len(), 2, "{}", desk.body);
    assert!(news.iter().all(|n| n.contains("Ash in your place:")), "{news:?}");
    assert!(news.iter().any(|n| n.contains("a note")) && news.iter().any(|n| n.contains("a question")), "{news:?}");
    assert!(gets(&brook, "/desk/week").await.marked("stood-in").len() == 2);
    assert!(gets(&ash, "/desk").await.marked("stood-in").is_empty());
    let talk = gets(&brook, "/talk").await;
    for says in ["A rim helps.", "Which mat?", "From Ash", "Ash wrote this in the place of Brook"] {
        assert!(talk.holds(says), "{says}: {}", talk.body);
    }
    assert!(talk.holds(&format!("t-{note}")), "{}", talk.body);
    assert_eq!(talk.marked("in-place").len(), 2, "{}", talk.body);
    // Looked at, it is news no more; it is theirs to end.
    assert!(gets(&brook, "/desk").await.marked("stood-in").is_empty());
    let form = Some((crate::house::FORM, format!("of={question}")));
    let ending = asked(&after, Some(&brook), "POST", "/talk/end", form.as_ref().map(|(k, f)| (*k, f.as_str()))).await;
    assert_eq!(ending.status, StatusCode::SEE_OTHER, "{}", ending.body);
    assert!(gets(&brook, "/talk").await.holds("Brook ended this"));
    // What was Brook's own stayed so all along.
    assert!(talk.holds(&format!("t-{}", left.question)));
}

#[tokio::test(flavor = "multi_thread")]
async fn answers_from_before_a_hand_over_are_no_news_to_who_takes_over() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    let left = leaves(&house, &brook).await;
    house.post(&house.keeper, "/talk/answer", &format!("to={}&reply=said&text=Off+it+rolls.", left.question)).await;
    assert!(!house.get(&brook, "/desk").await.marked("answer").is_empty());
    hands_over(&house, &brook, &ash).await;
    let desk = house.get(&ash, "/desk").await;
    assert!(desk.status == StatusCode::OK && desk.marked("answer").is_empty(), "{}", desk.body);
    house.post(&house.keeper, "/talk/answer", &format!("to={}&reply=said&text=It+still+does.", left.question)).await;
    assert_eq!(house.get(&ash, "/desk").await.marked("answer").len(), 1);
}
