//! A coach hands a home an exercise and lessons; the home shares the figures of a rehearsal by a tap of its own, and nothing of it
//! otherwise.

use crate::house::{Has, House, Signed, event, label};
use axum::http::StatusCode;
use sayso_model::*;

/// Showings of a rehearsal, each thing nine tenths of a second after its press.
const ACTS: &str = "s0.9000_g0.9900_s1.30000_g1.30900_s2.50000_g2.50900_s0.70000_g0.70900_e.90000";

async fn shared() -> (House, Signed) {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    (house, coach)
}

fn practice(house: &House, more: &str) -> String {
    format!("home={}&what=practice&animal={}&text={more}", house.home, house.animal)
}

async fn answers(house: &House) -> Vec<ProposalAnswer> {
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let given = story.as_recorded(Kind::ProposalAnswer).map(|e| e.body.clone());
    given.filter_map(|body| if let Body::ProposalAnswer(answer) = body { Some(answer) } else { None }).collect()
}

fn went() -> String {
    format!("/rehearse/showing/went?character=eager&seed=2&acts={ACTS}")
}

#[tokio::test(flavor = "multi_thread")]
async fn an_exercise_and_lessons_are_handed_over_and_a_home_shares_figures_by_its_own_tap() {
    let (house, coach) = shared().await;
    // Before anything was handed over there is nobody to share with.
    assert!(house.get(&house.keeper, &went()).await.marked("share").is_empty());
    let form = house.get(&coach, "/talk/write?what=practice").await;
    assert!(form.holds("name=\"exercise\"") && form.holds("value=\"stuck\"") && form.holds("name=\"lessons\""));
    let empty = house.post(&coach, "/talk/write", &practice(&house, "&exercise=&character=eager")).await;
    assert_eq!(empty.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(empty.holds("Choose an exercise or a lesson."), "{}", empty.body);
    let sent = practice(&house, "&exercise=showing&character=wary&lessons=showing&lessons=brushed");
    let sent = house.post(&coach, "/talk/write", &sent).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    let card = house.get(&house.keeper, "/talk").await;
    assert!(card.holds("/rehearse/showing?") && card.holds("character=wary"), "{}", card.body);
    assert!(
        card.holds("/learn/brushed") && card.holds("Lessons read by somebody of the home: 0 of 2"),
        "{}",
        card.body
    );
    // Rehearsing writes nothing, and what is not shared is seen by nobody.
    let told = house.get(&house.keeper, &went()).await;
    assert_eq!(told.marked("share").len(), 1, "{}", told.body);
    // Who else reads it, and what goes and does not, stands at the button.
    for said in ["and the club", "The other coaches of the club read it, too", "your name", "What does not:"] {
        assert!(told.holds(said), "{said}: {}", told.body);
    }
    assert!(answers(&house).await.is_empty());
    assert!(!house.get(&coach, "/talk").await.holds("simulated animal:"));
    assert!(house.get(&coach, &went()).await.marked("share").is_empty(), "a coach shares nothing for a home");
    // One tap.
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let of = story.as_recorded(Kind::Proposal).next().unwrap().id;
    let form = format!("to={of}&exercise=showing&character=eager&seed=2&acts={ACTS}");
    assert_ne!(house.post(&coach, "/talk/rehearsed", &form).await.status, StatusCode::SEE_OTHER);
    for wrong in [
        form.replace("seed=2", "seed=x"),
        form.replace("exercise=showing", "exercise=juggling"),
        form.replace("s0.9000", "z9"),
        form.replace(&of.to_string(), &EventId(house.home.0).to_string()),
    ] {
        assert_ne!(house.post(&house.keeper, "/talk/rehearsed", &wrong).await.status, StatusCode::SEE_OTHER, "{wrong}");
    }
    assert!(answers(&house).await.is_empty());
    let done = house.post(&house.keeper, "/talk/rehearsed", &form).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    let kept = answers(&house).await;
    let rehearsed = kept.first().and_then(|answer| answer.rehearsed.clone()).unwrap();
    assert_eq!((rehearsed.exercise.as_str(), rehearsed.character.as_str(), kept.len()), ("showing", "eager", 1));
    assert!(rehearsed.figures.iter().any(|figure| figure.of() == RehearsalMeasure::Delay), "{rehearsed:?}");
    // The measures and nothing more: no act, no seed, nothing of what was true.
    let written = serde_json::to_string(&rehearsed).unwrap();
    assert!(!written.contains("9000") && !written.contains("seed"), "{written}");
    // A lesson that somebody of the home reads, and does not show.
    let read = event(house.home, LessonRead { lesson: label("brushed"), shown: false });
    house.host.server.home(house.home).append(vec![read]).await.unwrap();
    let told = house.get(&coach, "/talk").await;
    assert!(told.holds("with Zip, a simulated animal:") && told.holds("From your press to the thing"), "{}", told.body);
    assert!(told.holds("Lessons that the home shows as read: 0 of 2") && told.holds("Rehearsals shared: 1"));
    assert!(house.get(&house.keeper, "/talk").await.holds("Lessons read by somebody of the home: 1 of 2"));
    // What was shared settles nothing: it stays open, with yes and no, until the home says so.
    assert!(!told.marked("open").is_empty() && told.marked("before").is_empty(), "{}", told.body);
    let mine = house.get(&house.keeper, "/talk").await;
    for still in ["open", "accepted", "declined", "lessons-seen"] {
        assert!(!mine.marked(still).is_empty(), "{still}: {}", mine.body);
    }
    assert_eq!(house.get(&house.keeper, &went()).await.marked("share").len(), 1);
    let member = house.joined(Has::Member, "Wren").await;
    assert_eq!(house.post(&member, "/who", "person=new").await.status, StatusCode::SEE_OTHER);
    let lesson = house.get(&member, "/learn/brushed").await;
    assert_eq!(lesson.marked("show-coach").len(), 1, "{}", lesson.body);
    let (before, after) = lesson.body.split_once("data-test=\"show-coach\"").unwrap();
    let tick = [before.rsplit('<').next().unwrap(), after.split('>').next().unwrap()];
    assert!(
        tick[0].contains("checkbox") && tick.iter().all(|part| !part.contains("checked")),
        "off at first: {tick:?}"
    );
    assert!(house.get(&member, "/learn/stuck").await.marked("show-coach").is_empty());
    assert!(house.get(&coach, "/learn/brushed").await.marked("show-coach").is_empty());
    // Shown by whoever read it, and taken back at once; the day on which it was read stays.
    for (form, shown) in [("read=yes", 0), ("show=yes", 1), ("show=no", 0), ("read=no", 0), ("read=yes&show=yes", 1)] {
        let done = house.post(&member, "/learn/brushed", form).await;
        assert_eq!(done.status, StatusCode::SEE_OTHER, "{form}: {}", done.body);
        let talk = house.get(&coach, "/talk").await;
        assert!(talk.holds(&format!("Lessons that the home shows as read: {shown} of 2")), "{form}: {}", talk.body);
        // It needs nothing else.
        let desk = house.get(&coach, "/desk?kind=none").await;
        let line = format!("To practise: {shown} of 2 lessons shown as read, rehearsals shared: 1");
        assert!(desk.holds(&line), "{form}: {}", desk.body);
    }
    // Taken back by the coach it is over: nothing more can be shared with it.
    house.post(&coach, "/talk/back", &format!("of={of}")).await;
    assert!(house.get(&house.keeper, &went()).await.marked("share").is_empty());
    assert_ne!(house.post(&house.keeper, "/talk/rehearsed", &form).await.status, StatusCode::SEE_OTHER);
    assert_eq!(answers(&house).await.len(), 1);
}

/// What is handed to somebody else names no home, and opens for whoever has none or another.
#[tokio::test(flavor = "multi_thread")]
async fn an_address_that_is_handed_on_names_no_home_and_opens_for_anybody() {
    let house = House::new().await;
    let (_, elsewhere, coach) = house.club().await;
    for path in [went(), "/rehearse/showing?character=eager&seed=2".to_owned()] {
        let page = house.get(&house.keeper, &path).await;
        let (_, link) = page.body.split_once("data-link=\"").unwrap();
        let link = link.split_once('"').unwrap().0.replace("&amp;", "&");
        assert!(link.starts_with("/rehearse/showing") && !link.contains("home"), "{link}");
        assert!(!link.contains(&house.home.to_string()));
        for who in [&elsewhere, &coach, &house.server, &house.keeper] {
            let opened = house.get(who, &link).await;
            assert_eq!(opened.status, StatusCode::OK, "{link}: {}", opened.body);
        }
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn of_an_empty_rehearsal_nothing_is_shared_and_what_was_shared_is_taken_back() {
    let (house, coach) = shared().await;
    house.post(&coach, "/talk/write", &practice(&house, "&exercise=showing&character=eager")).await;
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let of = story.as_recorded(Kind::Proposal).next().unwrap().id;
    // Nothing done, and an evening in which nobody answered.
    for (exercise, acts) in [("showing", "e.15000"), ("evening", "e.60000")] {
        let path = format!("/rehearse/{exercise}/went?character=eager&seed=2&acts={acts}");
        assert!(house.get(&house.keeper, &path).await.marked("share").is_empty(), "{path}");
        let form = format!("to={of}&exercise={exercise}&character=eager&seed=2&acts={acts}");
        let sent = house.post(&house.keeper, "/talk/rehearsed", &form).await;
        assert_eq!(sent.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", sent.body);
    }
    assert!(answers(&house).await.is_empty());
    let form = format!("to={of}&exercise=showing&character=eager&seed=2&acts={ACTS}");
    house.post(&house.keeper, "/talk/rehearsed", &form).await;
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let shared = story.as_recorded(Kind::ProposalAnswer).next().unwrap().id;
    assert_eq!(house.get(&coach, "/talk").await.marked("rehearsed").len(), 1);
    assert!(house.get(&coach, "/talk").await.marked("unshare").is_empty(), "that is the home's");
    assert_ne!(house.post(&coach, "/talk/unshared", &format!("of={shared}")).await.status, StatusCode::SEE_OTHER);
    assert_eq!(house.get(&house.keeper, "/talk").await.marked("unshare").len(), 1);
    let done = house.post(&house.keeper, "/talk/unshared", &format!("of={shared}")).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    let told = house.get(&coach, "/talk").await;
    assert!(told.marked("rehearsed").is_empty() && !told.marked("open").is_empty(), "{}", told.body);
}

#[tokio::test(flavor = "multi_thread")]
async fn once_sharing_ended_nothing_says_that_a_coach_reads_and_it_is_said_since_when_nobody_does() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let consent = house.consent("coach_figures", club);
    house.post(&house.keeper, "/sharing/consent", &consent).await;
    let sent = practice(&house, "&exercise=showing&character=wary&lessons=brushed");
    house.post(&coach, "/talk/write", &sent).await;
    let member = house.joined(Has::Member, "Wren").await;
    house.post(&member, "/who", "person=new").await;
    house.post(&member, "/learn/brushed", "read=yes").await;
    let today = house.about("today");
    let says = async |path: &str, test: &str| house.get(&member, path).await.marked(test).len();
    let all = async || {
        let (talk, lesson) = (says("/talk", "lessons-seen").await, says("/learn/brushed", "show-coach").await);
        (talk, lesson, says(&went(), "share").await, says("/talk", "not-read").await, says(&today, "not-read").await)
    };
    assert_eq!(all().await, (1, 1, 1, 0, 0));
    assert!(house.get(&member, "/talk").await.holds("you may share its figures with Brook"));
    house.post(&house.keeper, "/sharing/consent/back", &consent).await;
    assert_eq!(all().await, (0, 0, 0, 1, 1));
    let day = sayso_wording::Locale::ENGLISH.weekday_date(house.host.now().day(&Zone::utc()));
    let talk = house.get(&member, "/talk").await;
    let told = talk.marked("not-read")[0];
    assert!(told.contains("no longer read by Brook") && told.contains(&day), "{told}");
    assert!(!talk.holds("you may share") && !talk.holds("other coaches read it"), "{}", talk.body);
    let told = house.get(&member, &today).await;
    assert!(told.marked("not-read")[0].contains(&day), "{}", told.body);
    // The coach reads nothing at all; given anew, it is as before.
    assert_ne!(house.get(&coach, "/talk").await.status, StatusCode::OK);
    house.post(&house.keeper, "/sharing/consent", &consent).await;
    assert_eq!(all().await, (1, 1, 1, 0, 0));
}
