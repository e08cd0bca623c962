//! The coach's desk: only homes whose consent is open, brought up to date by what they write, put aside and brought back, and what
//! changed since coach and home spoke.

use crate::house::{Answer, FORM, Has, House, Signed, asked, event, label};
use axum::http::StatusCode;
use sayso_model::*;
use sayso_people::{OsSecrets, Part, Scope, Secret};
use serde_json::json;
use uuid::Uuid;

const BALL: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001));
const ROPE: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0002));

async fn writes(house: &House, days_ago: f64, body: impl Into<sayso_model::Body>) -> Event {
    let at = house.host.now().plus_seconds(-86_400.0 * days_ago - 60.0);
    let event = Event { animal: Some(house.animal), happened_at: at, recorded_at: at, ..event(house.home, body) };
    house.host.server.home(house.home).append(vec![event.clone()]).await.unwrap();
    event
}

fn sign(what: &str) -> Sign {
    Sign { sign: Note::new(what).unwrap(), level: SignLevel::Strong, when: When::After, session: None }
}

async fn consent(house: &House, club: ClubId, back: bool) {
    let path = if back { "/sharing/consent/back" } else { "/sharing/consent" };
    let done = house.post(&house.keeper, path, &house.consent("coach_figures", club)).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
}

/// A home with an animal of which nothing was written for twenty days; it shares nothing yet.
async fn quiet() -> House {
    let mut house = House::new().await;
    house.animal = AnimalId(Uuid::now_v7());
    writes(&house, 22.0, AnimalCard::new(house.animal, label("Moss"), Species::Cat)).await;
    writes(&house, 21.0, WordCard::new(BALL, label("ball"))).await;
    writes(&house, 20.0, Remark { text: Note::new("It looked at the button.").unwrap() }).await;
    house
}

/// The same, sharing figures with a club, and the club's coach.
async fn silent() -> (House, ClubId, Signed) {
    let house = quiet().await;
    let (club, _, coach) = house.club().await;
    consent(&house, club, false).await;
    (house, club, coach)
}

/// What stands in the hidden fields of a row's form to put something aside.
fn form_of(page: &Answer) -> String {
    let form = page.body.split("action=\"/desk/aside\"").nth(1).unwrap().split("</form>").next().unwrap();
    let field = |part: &str| {
        let of = |name: &str| part.split(&format!("{name}=\"")).nth(1).map(|v| v.split('"').next().unwrap().to_owned());
        let value = of("value")?.replace("&quot;", "\"");
        Some(url::form_urlencoded::Serializer::new(String::new()).append_pair(&of("name")?, &value).finish())
    };
    form.split("<input").skip(1).filter_map(|part| field(part.split('>').next().unwrap())).collect::<Vec<_>>().join("&")
}

#[tokio::test(flavor = "multi_thread")]
async fn a_home_stands_on_the_desk_while_its_consent_is_open_and_not_a_tap_longer() {
    let house = quiet().await;
    let (club, club_keeper, coach) = house.club().await;
    let desk = house.get(&coach, "/desk").await;
    assert_eq!((desk.status, desk.marked("row").len(), desk.marked("none").len()), (StatusCode::OK, 0, 1));
    assert_eq!(house.get(&coach, "/").await.to(), "/homes", "nothing is shared yet");
    consent(&house, club, false).await;
    let desk = house.get(&coach, "/desk").await;
    assert_eq!(desk.marked("row").len(), 1, "{}", desk.body);
    assert!(
        desk.holds("Moss") && desk.holds("Birch House") && desk.holds("for 19 days") && desk.holds("diagnoses nothing")
    );
    // What one tap opens: the home's own pages, said by the address.
    let (home, animal) = (house.home, house.animal);
    for path in [
        format!("/a/{animal}/today?home={home}"),
        format!("/a/{animal}/evidence?home={home}"),
        format!("/talk?home={home}"),
    ] {
        assert!(desk.holds(&format!("href=\"{path}\"")), "{path}: {}", desk.body);
        assert_eq!(house.get(&coach, &path).await.status, StatusCode::OK, "{path}");
    }
    // Its keepers read that it was looked at: once, however often the desk is opened.
    for _ in 0..3 {
        assert_eq!(house.get(&coach, "/desk").await.status, StatusCode::OK);
        house.get(&coach, "/desk/week").await;
    }
    let looked = house.get(&house.keeper, "/sharing").await;
    assert_eq!(looked.body.matches("the desk, beside other homes").count(), 1, "{}", looked.body);
    // Nobody else has a desk, and a coach of another club has an empty one.
    for who in [&house.keeper, &house.server, &club_keeper] {
        assert_eq!(house.get(who, "/desk").await.status, StatusCode::NOT_FOUND);
        assert_eq!(house.get(who, "/desk/week").await.status, StatusCode::NOT_FOUND);
    }
    let (_, _, stranger) = house.club_of_name("Hill+Club").await;
    let of_another = house.get(&stranger, "/desk").await;
    assert!(of_another.status == StatusCode::OK && !of_another.holds("Moss") && !of_another.holds("Birch"));
    // Taken back while the coach looks: gone at the next tap, whatever that is, and nothing is kept.
    let form = form_of(&desk);
    let foreign = house.post(&stranger, "/desk/aside", &format!("{form}&days=7")).await;
    assert!(foreign.to().starts_with("/desk?gone=yes"), "{}", foreign.to());
    consent(&house, club, true).await;
    for (path, form) in [
        ("/desk/aside", format!("{form}&days=7")),
        ("/desk/mark", format!("home={home}&mark=Tuesday")),
        ("/desk/spoken", format!("home={home}&from=week")),
    ] {
        let done = house.post(&coach, path, &form).await;
        assert!(done.status == StatusCode::SEE_OTHER && done.to().starts_with("/desk?"), "{path}: {}", done.body);
        let told = house.get(&coach, done.to()).await;
        assert_eq!((told.marked("gone").len(), told.holds("Moss")), (1, false), "{path}");
    }
    assert!(!house.get(&coach, "/desk/week").await.holds("Moss"));
    for table in [
        "SELECT count(*) FROM people.aside WHERE home = $1",
        "SELECT count(*) FROM people.mark WHERE home = $1",
        "SELECT count(*) FROM people.spoken WHERE home = $1",
    ] {
        assert_eq!(house.count(table).await, 0, "{table}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn consent_that_the_server_did_not_see_or_that_was_amended_opens_no_desk() {
    let (house, club, coach) = silent().await;
    let row = async |app: &axum::Router| asked(app, Some(&coach), "GET", "/desk", None).await.marked("row").len();
    let another = house.another().await;
    assert_eq!((row(&house.app).await, row(&another).await), (1, 1));
    // A withdrawal of the giving that came in by another way: any amendment closes.
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let given = story.as_recorded(Kind::ConsentGiven).next().unwrap().id;
    house
        .host
        .server
        .home(house.home)
        .append(vec![event(house.home, Withdrawal { of: given, because: None })])
        .await
        .unwrap();
    assert_eq!((row(&house.app).await, row(&another).await), (0, 0), "in every process");
    // A giving in the log of which nobody saw who wrote it.
    let to = Coach::Club { club };
    let forged = ConsentGiven { consent: Consent::CoachFigures { to }, words_version: Consent::WORDS, holds: None };
    house.host.server.home(house.home).append(vec![event(house.home, forged)]).await.unwrap();
    assert_eq!((row(&house.app).await, row(&another).await), (0, 0));
}

#[tokio::test(flavor = "multi_thread")]
async fn what_a_home_writes_is_on_the_desk_at_the_next_opening_in_every_process() {
    let (house, _, coach) = silent().await;
    let another = house.another().await;
    let of = async |app: &axum::Router| asked(app, Some(&coach), "GET", "/desk", None).await;
    let first = |answer: &Answer| answer.marked("need").first().map(|need| (*need).to_owned()).unwrap_or_default();
    assert!(first(&of(&house.app).await).contains("Nothing has been written down about Moss for 19 days"));
    assert!(first(&of(&another).await).contains("19 days"));
    let kept = "SELECT at FROM sayso.digest WHERE home = $1";
    let before = house.count(kept).await;
    let growl = writes(&house, 0.0, sign("growl")).await;
    let told = of(&another).await;
    assert!(first(&told).contains("Moss growled, snapped or bit"), "{}", told.body);
    assert!(told.holds("behaviour"), "whom to ask: {}", told.body);
    assert_eq!(house.count(kept).await, before + 1);
    assert_eq!(first(&of(&house.app).await), first(&told), "the first process reads what the second kept");
    // Kept, and read by one that has just begun.
    assert_eq!(first(&of(&house.another().await).await), first(&told));
    // One of another form is worked out anew, and so are bytes that say nothing.
    for damage in [
        "UPDATE sayso.digest SET form = 1 WHERE home = $1 RETURNING at",
        "UPDATE sayso.digest SET bytes = 'x' WHERE home = $1 RETURNING at",
    ] {
        house.count(damage).await;
        assert_eq!(first(&of(&house.another().await).await), first(&told), "{damage}");
        assert_eq!(
            house.count("SELECT count(*) FROM sayso.digest WHERE home = $1 AND form > 1 AND length(bytes) > 9").await,
            1
        );
    }
    // Taken back, it is no safety any more, but still told.
    house
        .host
        .server
        .home(house.home)
        .append(vec![event(house.home, Withdrawal { of: growl.id, because: None })])
        .await
        .unwrap();
    assert!(first(&of(&house.app).await).contains("was taken back"));
    // It goes with the home.
    house.host.server.erase(house.home).await.unwrap();
    assert_eq!(house.count("SELECT count(*) FROM sayso.digest WHERE home = $1").await, 0);
    assert_eq!(of(&house.app).await.marked("row").len(), 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn what_is_put_aside_comes_back_by_hand_by_its_day_or_by_something_new_and_safety_never_goes() {
    let (house, _, coach) = silent().await;
    let desk = house.get(&coach, "/desk").await;
    let form = form_of(&desk);
    assert!(desk.marked("aside")[0].contains("Put aside for 7 days"), "{}", desk.body);
    let put = house.post(&coach, "/desk/aside", &format!("{form}&days=7")).await;
    assert_eq!(put.status, StatusCode::SEE_OTHER, "{}", put.body);
    let told = house.get(&coach, put.to()).await;
    assert_eq!((told.marked("row").len(), told.marked("put").len()), (0, 1), "{}", told.body);
    assert!(house.get(&coach, "/desk").await.marked("row").is_empty());
    let aside = house.get(&coach, "/desk?kind=aside").await;
    assert_eq!((aside.marked("row").len(), aside.marked("aside-since").len(), aside.marked("back").len()), (1, 1, 1));
    let since = aside.marked("aside-since")[0];
    assert!(since.starts_with("Put aside less than a day ago; back within 7 days"), "{since}");
    // It is the account's own: another coach of the club sees it where it was.
    let second = another(&house, &coach).await;
    assert_eq!(house.get(&second, "/desk").await.marked("row").len(), 1);
    let back =
        aside.body.split("action=\"/desk/back\"").nth(1).unwrap().split("name=\"need\" value=\"").nth(1).unwrap();
    let need = back.split('"').next().unwrap().replace("&quot;", "\"");
    let mut back = url::form_urlencoded::Serializer::new(String::new());
    back.append_pair("animal", &house.animal.to_string()).append_pair("need", &need);
    let back = house.post(&coach, "/desk/back", &back.finish()).await;
    assert_eq!(back.status, StatusCode::SEE_OTHER);
    assert_eq!(house.get(&coach, "/desk").await.marked("row").len(), 1);
    // For three days: there again on the fourth, by the clock of another process.
    let put = house.post(&coach, "/desk/aside", &format!("{form}&days=3")).await;
    assert_eq!(put.status, StatusCode::SEE_OTHER, "{}", put.body);
    let at = async |clock: fn() -> Moment| {
        asked(&house.later(clock).await, Some(&coach), "GET", "/desk", None).await.marked("row").len()
    };
    assert_eq!(at(|| sayso_web::state::machine_clock().plus_seconds(86_400.0)).await, 0);
    assert_eq!(at(|| sayso_web::state::machine_clock().plus_seconds(4.0 * 86_400.0)).await, 1);
    // What is swept by the hour does not take what the desk remembers.
    house.host.people.sweep(house.host.now().plus_seconds(4.0 * 86_400.0)).await.unwrap();
    let later = house.later(|| sayso_web::state::machine_clock().plus_seconds(4.0 * 86_400.0)).await;
    let told = asked(&later, Some(&coach), "GET", "/desk", None).await;
    assert_eq!(told.marked("was-aside"), ["You put this aside 4 days ago. Its days are over."], "{}", told.body);
    // Put aside when it was silent for nine days: twice as long brings it back at once, and says so.
    let short = form.replace("%22size%22%3A19", "%22size%22%3A9");
    assert_ne!(short, form);
    house.post(&coach, "/desk/aside", &format!("{short}&days=28")).await;
    let told = house.get(&coach, "/desk").await;
    let was = told.marked("was-aside").join(" ");
    assert_eq!(was, "You put this aside less than a day ago. It has got worse since.", "{}", told.body);
    for days in ["&days=400", "&days=", ""] {
        let refused = house.post(&coach, "/desk/aside", &format!("{form}{days}")).await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY, "{days}");
    }
    // What is about safety has no button, and a form that asks for it is refused.
    writes(&house, 0.0, sign("guards food, a thing or the button")).await;
    let desk = house.get(&coach, "/desk").await;
    assert!(desk.marked("need")[0].contains("guarded") && desk.marked("aside").is_empty(), "{}", desk.body);
    let form = format!("{form}&days=7");
    let made = form.replace("%22silent%22", "%22safety%22").replace("%22kind%22%3Anull", "%22kind%22%3A%22guarding%22");
    assert_ne!(made, form);
    let refused = house.post(&coach, "/desk/aside", &made).await;
    assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", refused.body);
    // Even a row that says so, from wherever it came, moves it nowhere.
    let need = r#"{"about":"safety","word":null,"kind":"guarding"}"#;
    let row = format!(
        "INSERT INTO people.aside (account, home, animal, need, at, until) SELECT account, home, animal, '{need}', at, until FROM people.aside WHERE home = $1 RETURNING at"
    );
    house.count(Box::leak(row.into_boxed_str())).await;
    assert!(house.get(&coach, "/desk").await.marked("need")[0].contains("guarded"));
    // A word that is not the home's, and text that is no need.
    let foreign = form.replace("%22word%22%3Anull", &format!("%22word%22%3A%22{ROPE}%22"));
    assert_ne!(foreign, form);
    for wrong in [foreign, form.replace("%22silent%22", "%22hungry%22")] {
        assert_eq!(house.post(&coach, "/desk/aside", &wrong).await.status, StatusCode::UNPROCESSABLE_ENTITY);
    }
}

/// One more coach of the club of a coach.
async fn another(house: &House, coach: &Signed) -> Signed {
    let who = house.host.people.who(coach.account).await.unwrap();
    let club = who.memberships[0].part.scope().club().unwrap();
    let part = Part::new(Scope::Club(club), Has::Coach, None, None).unwrap();
    let members = house.host.people.members(Scope::Club(club)).await.unwrap();
    let keeper = members.iter().find(|m| m.membership.part.role() == Has::ClubKeeper).unwrap();
    let by = sayso_people::Allowed {
        capability: sayso_people::Capability::ManageClub,
        account: keeper.membership.account,
        scope: Scope::Club(club),
        role: Has::ClubKeeper,
        person: None,
    };
    let (_, secret): (_, Secret) =
        house.host.people.invite(&by, &part, house.host.now(), &mut OsSecrets).await.unwrap();
    let (session, token) = crate::house::take(&house.host, &secret, "Ash").await.unwrap().session.unwrap();
    Signed { token, account: session.account }
}

#[tokio::test(flavor = "multi_thread")]
async fn the_weeks_view_tells_what_is_new_since_they_spoke() {
    let (house, _, coach) = silent().await;
    let changed = async |path: &str| {
        let page = house.get(&coach, path).await;
        assert_eq!(page.status, StatusCode::OK);
        (page.marked("changed").iter().map(|c| (*c).to_owned()).collect::<Vec<_>>(), page.marked("since").join(" "))
    };
    writes(&house, 2.0, sign("guards food, a thing or the button")).await;
    let (since_a_week, when) = changed("/desk/week").await;
    assert!(since_a_week.iter().any(|c| c.contains("Moss guarded something")), "{since_a_week:?}");
    assert!(when.contains("Since ") && !when.contains("spoke"), "{when}");
    let form = format!("home={}&from=week", house.home);
    let done = house.post(&coach, "/desk/spoken", &form).await;
    assert_eq!((done.status, done.to()), (StatusCode::SEE_OTHER, "/desk/week"));
    let page = house.get(&coach, "/desk/week").await;
    assert_eq!((page.marked("no-news").len(), page.marked("same").len()), (1, 1), "{}", page.body);
    writes(&house, 0.0, sign("growl")).await;
    let (since_then, when) = changed("/desk/week").await;
    assert!(since_then.len() == 1 && since_then[0].contains("growled"), "{since_then:?}");
    assert!(when.starts_with("Since you spoke on "), "{when}");
    // The same in every process, and for this coach alone.
    let other = asked(&house.another().await, Some(&coach), "GET", "/desk/week", None).await;
    assert_eq!(other.marked("changed").len(), 1);
    let second = another(&house, &coach).await;
    let theirs = house.get(&second, "/desk/week").await;
    assert!(theirs.holds("Moss guarded something") && theirs.holds("Moss growled"), "{}", theirs.body);
    assert_eq!(house.post(&house.keeper, "/desk/spoken", &form).await.status, StatusCode::NOT_FOUND);
}

#[tokio::test(flavor = "multi_thread")]
async fn it_is_filtered_by_kind_by_own_marks_and_by_text() {
    let (house, _, coach) = silent().await;
    let rows = async |query: &str| house.get(&coach, &format!("/desk{query}")).await.marked("row").len();
    assert_eq!((rows("?kind=silent").await, rows("?kind=safety").await, rows("?kind=none").await), (1, 0, 1));
    for (text, found) in [("birch", 1), ("MOSS", 1), ("ball", 1), ("oak", 0), ("%3Cb%3E", 0)] {
        assert_eq!(rows(&format!("?find={text}")).await, found, "{text}");
    }
    assert!(house.get(&coach, "/desk?find=%3Cb%3Eoak").await.holds("&lt;b&gt;oak"));
    let form = format!("home={}&mark=Tuesday+%3Cb%3E&kind=silent&mark_shown=&find=&page=1", house.home);
    let marked = house.post(&coach, "/desk/mark", &form).await;
    assert_eq!((marked.status, marked.to()), (StatusCode::SEE_OTHER, "/desk?kind=silent"), "{}", marked.body);
    let page = house.get(&coach, "/desk?mark=Tuesday+%3Cb%3E").await;
    assert_eq!(page.marked("row").len(), 1);
    assert!(page.holds("Tuesday &lt;b&gt;") && !page.holds("Tuesday <b>"));
    assert_eq!(rows("?mark=Friday").await, 0);
    let too_long = format!("home={}&mark={}", house.home, "a".repeat(500));
    assert_eq!(house.post(&coach, "/desk/mark", &too_long).await.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert_eq!(
        house.post(&coach, "/desk/mark", &format!("home={}&mark=", house.home)).await.status,
        StatusCode::SEE_OTHER
    );
    assert_eq!(rows("?mark=Tuesday+%3Cb%3E").await, 0);
    // Pages beyond the last one are the last one.
    assert_eq!(rows("?page=99").await, 1);
    let strange = asked(&house.app, Some(&coach), "POST", "/desk/mark", Some((FORM, "home=x&mark=y"))).await;
    assert_eq!(strange.status, StatusCode::NOT_FOUND);
}

/// The latest proposal of a home.
async fn last_proposal(house: &House) -> EventId {
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    story.as_recorded(Kind::Proposal).last().unwrap().id
}

#[tokio::test(flavor = "multi_thread")]
async fn what_a_home_answered_is_told_until_the_coach_looks_or_they_spoke_and_never_above_safety() {
    let (house, _, coach) = silent().await;
    let last = house.host.now().day(&Zone::utc()).plus(5);
    let plan = format!(
        "home={}&what=plan&animal={}&word_1={BALL}&way_1=show&minutes_1=3&times_1=3&last_day={last}&text=",
        house.home, house.animal
    );
    let sent = house.post(&coach, "/talk/write", &plan).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    let of = last_proposal(&house).await;
    assert!(house.get(&coach, "/desk").await.marked("answer").is_empty(), "nobody answered yet");
    let reply = async |reply: &str, text: &str| {
        let form = format!("to={of}&reply={reply}&text={text}");
        let done = house.post(&house.keeper, "/talk/answer", &form).await;
        assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    };
    reply("accepted", "").await;
    // Whether it is done stands there too: no day of it has passed; then one on which it was.
    assert!(house.get(&coach, "/desk").await.holds("Agreed: 1 word. No day has passed yet."));
    // Days that pass in silence are counted although nothing is written.
    let later = house.later(|| sayso_web::state::machine_clock().plus_seconds(3.0 * 86_400.0)).await;
    let told = asked(&later, Some(&coach), "GET", "/desk", None).await;
    assert!(!told.holds("No day has passed yet."), "{}", told.body);
    assert!(told.holds("Agreed: 1 word. Kept, so many of the days so far: 0 of 3"), "{}", told.body);
    let body = |value| serde_json::from_value::<Body>(value).unwrap();
    let (at_once, person) = (-60.0 / 86_400.0, body(json!({ "kind": "press", "word": BALL, "by": "person" })));
    let press = writes(&house, at_once, person).await;
    let given = json!({ "kind": "delivery", "answers": press.id, "word": BALL, "answer": "given", "then": "took" });
    writes(&house, at_once, body(given)).await;
    let desk = house.get(&coach, "/desk").await;
    assert!(desk.holds("Agreed: 1 word. Kept, so many of the days so far: 1 of 1."), "{}", desk.body);
    for path in ["/desk", "/desk/week", "/desk?kind=answers"] {
        let page = house.get(&coach, path).await;
        let told = page.marked("answer");
        assert_eq!(told.len(), 1, "{path}: {}", page.body);
        assert!(told[0].contains("Accepted: plan for “ball”, "), "{path}: {}", told[0]);
        assert!(page.holds(&format!("/talk?home={}#t-{of}", house.home)), "{path}: {}", page.body);
    }
    assert!(house.get(&coach, "/desk").await.marked("answered")[0].contains("1 home answered"));
    // Of another coach of the club it is no news: they did not write it.
    let second = another(&house, &coach).await;
    assert!(house.get(&second, "/desk").await.marked("answer").is_empty());
    // Told again by a process that has just begun, and gone in each once it was looked at.
    let process = house.another().await;
    let told = async |path: &str| asked(&process, Some(&coach), "GET", path, None).await.marked("answer").len();
    assert_eq!(told("/desk").await, 1);
    let looked = house.get(&coach, &format!("/talk?home={}", house.home)).await;
    assert_eq!(looked.status, StatusCode::OK);
    assert_eq!((told("/desk").await, told("/desk/week").await), (0, 0));
    // Words and a "no" are told as such; what is about safety stands first, and keeps the order.
    reply("said", "It+rolls+off.").await;
    reply("declined", "").await;
    writes(&house, 0.0, sign("growl")).await;
    let desk = house.get(&coach, "/desk").await;
    let all = desk.marked("answer").join(" / ");
    assert!(all.contains("Declined: plan for “ball”") && all.contains("Answered: plan for “ball”"), "{all}");
    let (need, answer) = (desk.body.find("data-test=\"need\""), desk.body.find("data-test=\"answer\""));
    assert!(need < answer && desk.marked("need")[0].contains("growled"), "{}", desk.body);
    assert!(!desk.holds("rolls off"), "words stay on their page");
    let done = house.post(&coach, "/desk/spoken", &format!("home={}&from=desk", house.home)).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER);
    assert!(house.get(&coach, "/desk").await.marked("answer").is_empty(), "they spoke");
    // The home reads that it was looked at.
    assert!(house.get(&house.keeper, "/sharing").await.holds("what was agreed"));
}
