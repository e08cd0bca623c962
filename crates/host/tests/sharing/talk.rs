//! A coach proposes, the home answers: by the pages, by taps, by a file; and it ends with the consent.

use crate::house::{Has, House, JSON, Signed, asked, event, label, secret_of, take};
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use http_body_util::BodyExt;
use sayso_host::SESSION_COOKIE;
use sayso_model::*;
use serde_json::Value;
use tower::ServiceExt;
use uuid::Uuid;

const BALL: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001));

/// A home that shares figures with a club, with a word.
async fn shared() -> (House, ClubId, Signed) {
    let (house, club, _, coach) = shared_by_a_club().await;
    (house, club, coach)
}

/// The same with the club's keeper.
async fn shared_by_a_club() -> (House, ClubId, Signed, Signed) {
    let house = House::new().await;
    let (club, club_keeper, coach) = house.club().await;
    append(&house, WordCard::new(BALL, label("ball"))).await;
    consents(&house, club, "/sharing/consent").await;
    (house, club, club_keeper, coach)
}

async fn append(house: &House, body: impl Into<sayso_model::Body>) {
    let event = Event { animal: Some(house.animal), ..event(house.home, body) };
    house.host.server.home(house.home).append(vec![event]).await.unwrap();
}

async fn consents(house: &House, club: ClubId, path: &str) {
    let done = house.post(&house.keeper, path, &house.consent("coach_figures", club)).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
}

/// A plan as the form sends it.
fn plan(house: &House) -> String {
    let last = house.host.now().day(&Zone::utc()).plus(6);
    let (home, animal) = (house.home, house.animal);
    format!(
        "home={home}&what=plan&animal={animal}&word_1={BALL}&way_1=show&minutes_1=3&times_1=3&word_2=&minutes_2=3&times_2=3&last_day={last}&text=Keep+it+at+the+board."
    )
}

fn question(house: &House) -> String {
    format!(
        "home={}&what=question&animal={}&about=word:{BALL}&text=Does+the+ball+roll+off%3F",
        house.home, house.animal
    )
}

async fn proposals(house: &House) -> Vec<Event> {
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    story.as_recorded(Kind::Proposal).cloned().collect()
}

async fn in_german(house: &House, who: &Signed, path: &str) -> String {
    with_cookie(house, who, path, "; sayso_language=de").await
}

/// A page as a German browser asks for it, with something more in its cookies.
async fn with_cookie(house: &House, who: &Signed, path: &str, cookie: &str) -> String {
    let request = Request::get(path)
        .header(header::HOST, "localhost")
        .header(header::ACCEPT_LANGUAGE, "de")
        .header(header::COOKIE, format!("{SESSION_COOKIE}={}{cookie}", who.token.reveal()));
    let answer = house.app.clone().oneshot(request.body(Body::empty()).unwrap()).await.unwrap();
    String::from_utf8(answer.into_body().collect().await.unwrap().to_bytes().to_vec()).unwrap()
}

#[tokio::test(flavor = "multi_thread")]
async fn a_plan_is_proposed_accepted_and_told_and_it_ends_with_the_consent() {
    let (house, club, coach) = shared().await;
    let (talk, today) = ("/talk", house.about("today"));
    let member = house.joined(Has::Member, "Mora").await;
    let sitter = house.joined(Has::Sitter, "Wren").await;
    let observer = house.joined(Has::Observer, "Finch").await;
    // From where the coach looks, by one tap; prefilled from a word's figures.
    assert!(house.get(&coach, &today).await.holds("href=\"/talk/write?animal="));
    let figures = house.get(&coach, &house.about(&format!("evidence/{BALL}"))).await;
    assert!(figures.holds(&format!("/talk/write?animal={}&amp;word={BALL}", house.animal)), "{}", figures.body);
    let form = house.get(&coach, &format!("/talk/write?animal={}&word={BALL}&what=plan", house.animal)).await;
    assert!(form.holds(&format!("<option value=\"{BALL}\" selected")) && form.holds("not a vet"), "{}", form.body);
    let sent = house.post(&coach, "/talk/write", &plan(&house)).await;
    assert_eq!((sent.status, sent.to()), (StatusCode::SEE_OTHER, talk), "{}", sent.body);
    let [written] = proposals(&house).await.try_into().unwrap();
    let sayso_model::Body::Proposal(proposal) = &written.body else { panic!("{written:?}") };
    assert_eq!((proposal.from.account, proposal.from.name.as_str()), (coach.account, "Brook"));
    assert_eq!((written.person, written.animal, written.source), (None, Some(house.animal), Source::Tap));
    // On the home's Today, as from the coach; those who may not answer are not asked.
    let told = house.get(&house.keeper, &today).await;
    assert_eq!(told.body.matches("data-test=\"from-coach\"").count(), 1, "{}", told.body);
    assert!(
        told.holds("From Brook: Plan up to")
            && in_german(&house, &house.keeper, &today).await.contains("Von Brook: Plan bis")
    );
    assert!(!house.get(&sitter, &today).await.holds("from-coach"));
    for who in [&sitter, &observer] {
        assert_eq!(house.get(who, talk).await.status, StatusCode::FORBIDDEN);
        let answer = format!("to={}&reply=accepted&text=", written.id);
        assert_eq!(house.post(who, "/talk/answer", &answer).await.status, StatusCode::FORBIDDEN);
    }
    for who in [&house.keeper, &member, &sitter] {
        assert_eq!(house.post(who, "/talk/write", &plan(&house)).await.status, StatusCode::FORBIDDEN);
    }
    let page = house.get(&member, talk).await;
    assert!(
        page.holds("Keep it at the board.") && page.holds("not a vet") && !page.holds("from-file"),
        "{}",
        page.body
    );
    assert!(in_german(&house, &house.keeper, talk).await.contains("Zu beantworten"));
    // A coach does not answer; the form without an answer is not lost.
    let answer = |reply: &str, text: &str| format!("to={}&reply={reply}&text={text}", written.id);
    assert_eq!(house.post(&coach, "/talk/answer", &answer("accepted", "")).await.status, StatusCode::FORBIDDEN);
    let empty = house.post(&member, "/talk/answer", &answer("said", "")).await;
    assert_eq!(empty.status, StatusCode::UNPROCESSABLE_ENTITY);
    let long = house.post(&member, "/talk/answer", &answer("accepted", &"x".repeat(501))).await;
    assert_eq!(long.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(long.holds(&"x".repeat(501)) && long.holds("at most 500"), "what was typed is still there");
    // Accepted: beside the word's step, and with what the log has of it.
    let yes = house.post(&member, "/talk/answer", &answer("accepted", "From+tomorrow.")).await;
    assert_eq!(yes.to(), format!("/talk#t-{}", written.id));
    let told = house.get(&house.keeper, &today).await;
    assert!(!told.holds("from-coach") && told.holds("Agreed: show it, 3 minutes, 3 times a day"), "{}", told.body);
    assert!(
        house.get(&sitter, &today).await.holds("Agreed: show it, 3 minutes, 3 times a day"),
        "whoever does it sees it"
    );
    let seen = house.get(&coach, talk).await;
    assert!(
        seen.holds("data-standing=\"accepted\"") && seen.holds("From tomorrow.") && seen.holds("no day has passed")
    );
    assert_eq!(house.post(&member, "/talk/answer", &answer("declined", "")).await.status, StatusCode::SEE_OTHER);
    assert!(house.get(&coach, talk).await.holds("data-standing=\"declined\""));
    assert!(!house.get(&house.keeper, &today).await.holds("Agreed: show it"));
    // The consent is taken back while the coach looks: gone at the next tap, and what is sent is not written.
    consents(&house, club, "/sharing/consent/back").await;
    for path in [talk, "/talk/write"] {
        assert_eq!(house.get(&coach, path).await.to(), "/homes", "{path}");
    }
    for (path, form) in [("/talk/write", plan(&house)), ("/talk/back", format!("of={}", written.id))] {
        assert_eq!(house.post(&coach, path, &form).await.to(), "/homes", "{path}");
    }
    assert_eq!(proposals(&house).await.len(), 1);
    // What was said stays with the home.
    assert!(house.get(&house.keeper, talk).await.holds("From tomorrow."));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_form_that_is_wrong_says_where_and_keeps_what_was_typed() {
    let (house, _, coach) = shared().await;
    let good = plan(&house);
    for (wrong, field) in [
        (good.replace("minutes_1=3", "minutes_1=40"), "minutes_1"),
        (good.replace("times_1=3", "times_1="), "times_1"),
        (good.replace(&format!("word_1={BALL}"), "word_1="), "word_1"),
        (good.replace(&format!("word_1={BALL}"), &format!("word_1={}", Uuid::nil())), "word_1"),
        (good.replace("last_day=", "last_day=1"), "last_day"),
        (good.replace("what=plan", "what=word&says=BALL"), "says"),
        (good.replace("what=plan", "what=everything"), "what"),
        (good.replace(&format!("home={}", house.home), &format!("home={}", Uuid::nil())), "home"),
        (question(&house).replace("Does+the+ball+roll+off%3F", ""), "text"),
    ] {
        let told = house.post(&coach, "/talk/write", &wrong).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
        assert!(told.holds(&format!("href=\"#{field}\"")), "{field}: {}", told.body);
        assert!(!wrong.contains("Keep+it") || field == "what" || told.holds("Keep it at the board."), "{wrong}");
    }
    let unknown = house.post(&coach, "/talk/write", &format!("{good}&person={}", house.person)).await;
    assert_eq!(unknown.status, StatusCode::UNPROCESSABLE_ENTITY, "nobody's name can be sent along");
    assert!(proposals(&house).await.is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn no_session_is_proposed_while_a_strong_sign_rests_it() {
    let (house, _, coach) = shared().await;
    let sent = house.post(&coach, "/talk/write", &plan(&house)).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER);
    let of = proposals(&house).await[0].id;
    house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=accepted&text=")).await;
    assert!(house.get(&house.keeper, &house.about("today")).await.holds("data-test=\"agreed\""));
    let sign = Note::new("growl").unwrap();
    append(&house, Sign { sign, level: SignLevel::Strong, when: When::During, session: None }).await;
    for kind in ["plan", "likes", "check"] {
        let form = house.get(&coach, &format!("/talk/write?what={kind}")).await;
        assert!(form.holds("data-test=\"rests\"") && !form.holds("data-test=\"send\""), "{kind}: {}", form.body);
        let form = plan(&house).replace("what=plan", &format!("what={kind}&word={BALL}"));
        let told = house.post(&coach, "/talk/write", &form).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{kind}");
    }
    assert_eq!(house.post(&coach, "/talk/write", &question(&house)).await.status, StatusCode::SEE_OTHER);
    // And what was agreed before is not to be done.
    assert!(!house.get(&house.keeper, &house.about("today")).await.holds("data-test=\"agreed\""));
    assert!(house.get(&house.keeper, "/talk").await.holds("data-test=\"rest\""));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_coach_takes_back_only_what_they_wrote_and_reads_what_was_written_for_their_club() {
    let (house, club, club_keeper, coach) = shared_by_a_club().await;
    house.post(&coach, "/talk/write", &question(&house)).await;
    let of = proposals(&house).await[0].id;
    // Another coach of the club with which the home shares reads it, and can do nothing about it.
    let second = another(&house, club, &club_keeper).await;
    let read = house.get(&second, "/talk").await;
    assert!(read.holds("Does the ball roll off?") && !read.holds("data-test=\"take-back\""), "{}", read.body);
    let back = format!("of={of}");
    assert_eq!(house.post(&second, "/talk/back", &back).await.status, StatusCode::NOT_FOUND);
    assert_eq!(house.post(&house.keeper, "/talk/back", &back).await.status, StatusCode::FORBIDDEN);
    // A coach of another club has nothing to do with the home.
    let (_, _, stranger) = house.club_of_name("Hill+Club").await;
    assert_eq!(house.get(&stranger, "/talk").await.to(), "/homes");
    assert_eq!(house.post(&stranger, "/talk/write", &question(&house)).await.to(), "/homes");
    assert_eq!(house.post(&coach, "/talk/back", &back).await.status, StatusCode::SEE_OTHER);
    let told = house.get(&house.keeper, "/talk").await;
    assert!(told.holds("data-standing=\"withdrawn\""), "{}", told.body);
    let late = house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=accepted&text=")).await;
    assert_eq!(late.status, StatusCode::UNPROCESSABLE_ENTITY, "there is nothing left to accept");
}

/// One more coach of a club, invited by its keeper's page.
async fn another(house: &House, club: ClubId, club_keeper: &Signed) -> Signed {
    let made = house.post(club_keeper, &format!("/club/{club}/invite"), "role=coach").await;
    let secret = secret_of(made.marked("link")[0]);
    let (session, token) = take(&house.host, &secret, "Ash").await.unwrap().session.unwrap();
    Signed { token, account: session.account }
}

fn written(house: &House, account: AccountId, name: &str) -> Event {
    let from = Author { account, name: label(name) };
    let text = ShortNote::new("How was the week?").ok();
    let body = Proposal { from, proposes: Proposed::Question { about: None }, text, takes_up: None, club: None };
    Event { zone: Zone::utc(), ..event(house.home, body) }
}

#[tokio::test(flavor = "multi_thread")]
async fn by_a_tap_in_the_own_name_alone_and_by_a_file_as_from_a_file() {
    let (house, _, coach) = shared().await;
    let sent = async |who: &Signed, event: &Event| {
        let body = serde_json::to_string(&[event]).unwrap();
        let told = asked(&house.app, Some(who), "POST", "/api/events", Some((JSON, &body))).await;
        let told: Value = serde_json::from_str(&told.body).unwrap();
        (told[0]["result"].as_str().unwrap().to_owned(), told[0]["problems"][0]["field"].as_str().map(str::to_owned))
    };
    let from = Some("body.from".to_owned());
    let forged = written(&house, house.keeper.account, "Brook");
    assert_eq!(sent(&coach, &forged).await, ("refused".into(), from.clone()), "another account");
    let renamed = written(&house, coach.account, "Doctor Vet");
    assert_eq!(sent(&coach, &renamed).await, ("refused".into(), from), "another name");
    let in_the_home = Event { person: Some(house.person), ..written(&house, coach.account, "Brook") };
    assert_eq!(sent(&coach, &in_the_home).await.0, "refused");
    assert_eq!(sent(&house.keeper, &written(&house, house.keeper.account, "Ilda")).await.0, "refused");
    assert_eq!(sent(&coach, &written(&house, coach.account, "Brook")).await.0, "new");
    assert!(!house.get(&house.keeper, "/talk").await.holds("from-file"), "the server saw who wrote it");
    // In a file anyone can have written anything: it is told as read from one, and Today does not bring it.
    let told = house.get(&house.keeper, &house.about("today")).await;
    assert!(told.holds("From Brook: A question"));
    let file = serde_json::to_string(&forged).unwrap() + "\n";
    let import = Some(("text/plain", file.as_str()));
    let path = "/api/import/commit?format=jsonl";
    let done = asked(&house.app, Some(&house.keeper), "POST", path, import).await;
    assert_eq!(done.status, StatusCode::OK, "{}", done.body);
    assert_eq!(proposals(&house).await.len(), 2);
    let page = house.get(&house.keeper, "/talk").await;
    assert_eq!(page.body.matches("data-test=\"from-file\"").count(), 1, "{}", page.body);
    assert!(house.get(&house.keeper, &house.about("today")).await.holds("From Brook: A question"), "one alone is told");
    // In the log and in the exported file it stands as any other event.
    let out = house.get(&house.keeper, "/api/export.jsonl").await;
    assert_eq!(out.body.matches("\"kind\":\"proposal\"").count(), 2);
    let log = house.get(&house.keeper, &house.about("log")).await;
    assert!(log.holds("From Brook: A question: How was the week?"), "{}", log.body);
}

#[tokio::test(flavor = "multi_thread")]
async fn after_a_meeting_the_next_plan_is_written_from_the_last_and_the_next_meeting_proposed() {
    let (house, _, coach) = shared().await;
    let sheet = format!("/sheets/{}/meeting", house.animal);
    let page = house.get(&coach, &sheet).await;
    let next = format!("/talk/write?animal={}&amp;begin=next", house.animal);
    assert!(page.holds(&next) && !page.holds("/talk/own"), "{}", page.body);
    let next = next.replace("&amp;", "&");
    // Without a plan before: the steps that Today chose, if any; else an empty form.
    let form = house.get(&coach, &next).await;
    assert!(form.holds("name=\"word_1\"") && form.holds("name=\"last_day\""), "{}", form.body);
    house.post(&coach, "/talk/write", &plan(&house).replace("minutes_1=3", "minutes_1=4")).await;
    let of = proposals(&house).await[0].id;
    let form = house.get(&coach, &next).await;
    assert!(
        form.holds("Filled in from the last plan") && form.holds("name=\"minutes_1\" value=\"4\""),
        "{}",
        form.body
    );
    assert!(form.holds(&format!("name=\"takes_up\" value=\"{of}\"")), "it says what it takes up again");
    assert!(!form.holds("Keep it at the board."), "words of that day are not said again");
    // Both sides read the page; what was only proposed is an open question, and who has no part in the talk reads none of it.
    for who in [&coach, &house.keeper] {
        let page = house.get(who, &sheet).await;
        assert!(page.holds("From Brook: Plan up to") && page.holds("Nothing was agreed"), "{}", page.body);
    }
    assert!(house.get(&house.keeper, &sheet).await.holds("/talk/own?animal="), "a home plans on its own");
    for (role, name) in [(Has::Sitter, "Wren"), (Has::Observer, "Finch")] {
        let who = house.joined(role, name).await;
        assert_eq!(house.get(&who, &sheet).await.status, StatusCode::FORBIDDEN, "{name}");
        assert_eq!(house.get(&who, "/talk/own").await.status, StatusCode::FORBIDDEN, "{name}");
    }
    let today = house.host.now().day(&Zone::utc());
    let meeting = |day: Day, time: &str, minutes: &str| {
        let (home, animal) = (house.home, house.animal);
        format!("home={home}&what=meeting&animal={animal}&day={day}&time={time}&minutes={minutes}&text=")
    };
    for (wrong, field) in [
        (meeting(today.plus(-1), "18:30", "30"), "day"),
        (meeting(today.plus(57), "18:30", "30"), "day"),
        (meeting(today, "00:00", "30"), "time"),
        (meeting(today.plus(1), "24:10", "30"), "time"),
        (meeting(today.plus(1), "", "30"), "time"),
        (meeting(today.plus(1), "18:30", "4"), "minutes"),
        (meeting(today.plus(1), "18:30", ""), "minutes"),
    ] {
        let told = house.post(&coach, "/talk/write", &wrong).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
        assert!(told.holds(&format!("href=\"#{field}\"")), "{wrong}: {}", told.body);
    }
    let sent = house.post(&coach, "/talk/write", &meeting(today.plus(1), "18:30", "30")).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    let talk = house.get(&house.keeper, "/talk").await;
    assert!(talk.holds("A meeting on") && talk.holds("18:30") && talk.holds("30 minutes"), "{}", talk.body);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_coach_reads_a_homes_pages_in_the_language_of_the_account_and_not_the_browsers() {
    let (house, _, coach) = shared().await;
    for path in ["/desk".to_owned(), house.about("today"), "/talk".to_owned()] {
        let page = with_cookie(&house, &coach, &path, "").await;
        assert!(page.contains("<html lang=\"en\""), "{path}: {page}");
        let told = with_cookie(&house, &coach, &path, "; sayso_language=fr").await;
        assert!(told.contains("<html lang=\"fr\""), "what the device was told comes first, {path}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_note_about_a_chart_is_written_from_it_and_leads_back_to_it() {
    let (house, _, coach) = shared().await;
    let evidence = house.about(&format!("evidence/{BALL}"));
    let page = house.get(&coach, &evidence).await;
    assert!(page.holds("id=\"chart-showings\"") && page.holds("id=\"chart-presses\""), "{}", page.body);
    assert!(page.marked("write-about-chart").len() >= 2, "{}", page.body);
    let at_home = house.get(&house.keeper, &evidence).await;
    assert!(at_home.marked("write-about-chart").is_empty(), "a home writes to nobody about it");
    let about = format!("word_chart:showings:{BALL}");
    let form = format!("/talk/write?animal={}&what=note&about={about}&word={BALL}", house.animal);
    let form = house.get(&coach, &form).await;
    assert!(form.holds(&format!("value=\"{about}\" selected")), "{}", form.body);
    for (about, text) in [
        (about.as_str(), "Rest on Sunday."),
        ("days_chart:hours", "Mostly at eight."),
        (&format!("word_chart:colours:{BALL}"), "No such chart."),
        (&format!("word_chart:curve:{}", Uuid::nil()), "No such word."),
    ] {
        let (home, animal, text) = (house.home, house.animal, text.replace(' ', "+"));
        let sent = format!("home={home}&animal={animal}&what=note&about={about}&text={text}");
        let done = house.post(&coach, "/talk/write", &sent).await;
        let known = !text.starts_with("No");
        assert_eq!(done.status == StatusCode::SEE_OTHER, known, "{about}: {}", done.body);
        assert!(known || done.holds("href=\"#about\""), "{}", done.body);
    }
    let talk = house.get(&house.keeper, "/talk").await;
    assert!(talk.holds("A note on the chart “Showings a day” of “ball”"), "{}", talk.body);
    assert!(talk.holds(&format!("href=\"{evidence}#chart-showings\"")), "{}", talk.body);
    assert!(talk.holds(&format!("href=\"{}#chart-hours\"", house.about("days"))), "{}", talk.body);
}
