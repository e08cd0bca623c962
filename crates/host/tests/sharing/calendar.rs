//! A calendar by secret address: it gives what its owner may see at that moment, and nothing else to anyone.

use crate::house::{Answer, Has, House, Signed, asked, event};
use axum::http::{StatusCode, header};
use sayso_model::*;
use uuid::Uuid;

const BALL: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001));

/// A home that shares figures with a club, with a word; its coach.
async fn shared() -> (House, ClubId, Signed) {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    // Nothing is lacking on it, so that the word is taught.
    let (answer, not_now) = (Note::new("Throw it.").ok(), Note::new("Later.").ok());
    let reward = Some(RewardId(Uuid::now_v7()));
    let card = WordCard { reward, answer, not_now, ..WordCard::new(BALL, label("ball")) };
    let card = Event { animal: Some(house.animal), ..event(house.home, card) };
    house.host.server.home(house.home).append(vec![card]).await.unwrap();
    let done = house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    (house, club, coach)
}

fn label(text: &str) -> Label {
    Label::new(text).unwrap()
}

/// The address of a calendar, made by the page.
async fn made(house: &House, who: &Signed) -> String {
    let made = house.post(who, "/calendar/new", &format!("home={}", house.home)).await;
    assert_eq!(made.status, StatusCode::OK, "{}", made.body);
    let link = made.marked("address")[0].to_owned();
    assert!(link.starts_with("http://localhost/calendar/") && link.ends_with(".ics"), "{link}");
    link.strip_prefix("http://localhost").unwrap().to_owned()
}

/// As a program reads it, which is signed in nowhere.
async fn read(house: &House, address: &str) -> Answer {
    asked(&house.app, None, "GET", address, None).await
}

/// The lines of a calendar, unfolded.
fn unfolded(answer: &Answer) -> String {
    assert_eq!(answer.status, StatusCode::OK, "{}", answer.body);
    assert_eq!(answer.headers[header::CONTENT_TYPE], "text/calendar; charset=utf-8");
    answer.body.replace("\r\n ", "")
}

/// A coach proposes a meeting and a plan.
async fn proposes(house: &House, coach: &Signed) {
    let today = house.host.now().day(&Zone::utc());
    let (home, animal) = (house.home, house.animal);
    let meeting = format!(
        "home={home}&what=meeting&animal={animal}&day={}&time=18:30&minutes=45&text=By+telephone%3B+bring+the+log.",
        today.plus(2)
    );
    let plan = format!(
        "home={home}&what=plan&animal={animal}&word_1={BALL}&way_1=show&minutes_1=3&times_1=3&word_2=&minutes_2=3&times_2=3&last_day={}&text=",
        today.plus(6)
    );
    for form in [meeting, plan] {
        let sent = house.post(coach, "/talk/write", &form).await;
        assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    }
}

async fn accepts_all(house: &House) {
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let all: Vec<EventId> = story.as_recorded(Kind::Proposal).map(|e| e.id).collect();
    for id in all {
        let done = house.post(&house.keeper, "/talk/answer", &format!("to={id}&reply=accepted&text=")).await;
        assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn it_holds_meetings_and_days_of_plans_as_they_stand_and_needs_no_sign_in() {
    let (house, _, coach) = shared().await;
    assert!(house.get(&coach, "/talk").await.holds("href=\"/calendar\""));
    assert!(house.get(&coach, "/calendar").await.holds("There is no address yet"));
    let address = made(&house, &coach).await;
    assert!(!unfolded(&read(&house, &address).await).contains("VEVENT"), "nothing was proposed");
    proposes(&house, &coach).await;
    let day = |days: i32| house.host.now().day(&Zone::utc()).plus(days).to_string().replace('-', "");
    let told = unfolded(&read(&house, &address).await);
    let at = format!("DTSTART:{}T183000Z\r\nDTSTAMP", day(2));
    assert!(told.contains(&at) || told.contains(&format!("DTSTART:{}T183000Z\r\n", day(2))), "{told}");
    assert!(told.contains(&format!("DTEND:{}T191500Z\r\n", day(2))), "{told}");
    assert!(
        told.contains("STATUS:TENTATIVE\r\n") && told.contains("Not answered yet.\\nBy telephone\\; bring the log.")
    );
    assert!(!told.contains("RRULE"), "a plan nobody accepted is no plan: {told}");
    accepts_all(&house).await;
    let told = unfolded(&read(&house, &address).await);
    assert!(told.contains("STATUS:CONFIRMED\r\n") && !told.contains("TENTATIVE"), "{told}");
    assert!(told.contains(&format!("DTSTART;VALUE=DATE:{}\r\n", day(0))), "{told}");
    assert!(told.contains(&format!("RRULE:FREQ=DAILY;UNTIL={}\r\n", day(6))), "{told}");
    assert!(told.contains("SUMMARY:Tarn: “ball”: show it\\, 3 minutes\\, 3 times a day\r\n"), "{told}");
    assert!(told.contains("Only while Tarn joins gladly."), "the caution stands where one acts: {told}");
    // The home's own, and the same for who keeps it.
    let own = format!(
        "home={}&animal={}&word_1={BALL}&way_1=&minutes_1=5&times_1=1&word_2=&minutes_2=3&times_2=3&last_day={}",
        house.home,
        house.animal,
        house.host.now().day(&Zone::utc()).plus(3)
    );
    assert_eq!(house.post(&house.keeper, "/talk/own", &own).await.status, StatusCode::SEE_OTHER);
    assert_eq!(house.post(&coach, "/talk/own", &own).await.status, StatusCode::FORBIDDEN);
    let keepers = made(&house, &house.keeper).await;
    for address in [&address, &keepers] {
        let told = unfolded(&read(&house, address).await);
        assert!(told.contains("5 minutes\\, once a day") && !told.contains("3 times a day"), "{told}");
    }
    assert_ne!(address, keepers);
}

#[tokio::test(flavor = "multi_thread")]
async fn it_gives_nothing_from_the_moment_its_owner_may_not_see_it() {
    let (house, club, coach) = shared().await;
    proposes(&house, &coach).await;
    let member = house.joined(Has::Member, "Mora").await;
    let (of_coach, of_member) = (made(&house, &coach).await, made(&house, &member).await);
    for address in [&of_coach, &of_member] {
        assert!(unfolded(&read(&house, address).await).contains("VEVENT"));
    }
    // A coach's reading is a look, whichever program read; a member's is none.
    let told = house.get(&house.keeper, "/sharing").await;
    let looks = told.marked("look");
    assert!(looks.iter().any(|look| look.contains("Brook, the calendar, read by its address, ")), "{looks:?}");
    assert!(!looks.iter().any(|look| look.contains("Mora")), "{looks:?}");
    let unknown = read(&house, &format!("/calendar/{}.ics", "0".repeat(64))).await;
    assert_eq!(unknown.status, StatusCode::NOT_FOUND);
    // Consent taken back; a membership ended.
    house.post(&house.keeper, "/sharing/consent/back", &house.consent("coach_figures", club)).await;
    let who = house.host.people.who(member.account).await.unwrap();
    let gone = format!("membership={}", who.memberships[0].id);
    assert_eq!(house.post(&member, "/homes/end", &gone).await.status, StatusCode::SEE_OTHER);
    for address in [&of_coach, &of_member] {
        let closed = read(&house, address).await;
        assert_eq!((closed.status, &closed.body), (StatusCode::NOT_FOUND, &unknown.body));
        let names = |answer: &Answer| answer.headers.keys().map(ToString::to_string).collect::<Vec<_>>();
        assert_eq!(names(&closed), names(&unknown), "no header tells it from an address that never was");
    }
    // And with consent given anew it is there again, without another address.
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert!(unfolded(&read(&house, &of_coach).await).contains("VEVENT"));
    assert_eq!(read(&house, &of_member).await.status, StatusCode::NOT_FOUND);
}

#[tokio::test(flavor = "multi_thread")]
async fn its_address_is_shown_once_changed_and_ended_by_its_owner_alone() {
    let (house, _, coach) = shared().await;
    let (first, keepers) = (made(&house, &coach).await, made(&house, &house.keeper).await);
    let page = house.get(&coach, "/calendar").await;
    let secret = first.strip_prefix("/calendar/").unwrap();
    assert!(page.holds("There is an address since") && page.holds("Nothing has read it yet"), "{}", page.body);
    assert!(!page.holds(secret) && !house.get(&coach, "/calendar/new").await.holds(secret), "never again");
    read(&house, &first).await;
    assert!(house.get(&coach, "/calendar").await.holds("Last read:"));
    let second = made(&house, &coach).await;
    assert_ne!(first, second);
    assert_eq!(read(&house, &first).await.status, StatusCode::NOT_FOUND, "the one before ends");
    assert_eq!(read(&house, &second).await.status, StatusCode::OK);
    let wrong = house.post(&coach, "/calendar/end", &format!("home={}", Uuid::nil())).await;
    assert_eq!(wrong.status, StatusCode::UNPROCESSABLE_ENTITY);
    let done = house.post(&coach, "/calendar/end", &format!("home={}", house.home)).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER);
    assert_eq!(read(&house, &second).await.status, StatusCode::NOT_FOUND);
    assert_eq!(read(&house, &keepers).await.status, StatusCode::OK, "everyone's own");
    // Those to whom what was agreed is not told have none.
    for (role, name) in [(Has::Sitter, "Wren"), (Has::Observer, "Finch")] {
        let who = house.joined(role, name).await;
        let form = format!("home={}", house.home);
        assert_eq!(house.get(&who, "/calendar").await.status, StatusCode::FORBIDDEN, "{name}");
        assert_eq!(house.post(&who, "/calendar/new", &form).await.status, StatusCode::FORBIDDEN, "{name}");
    }
    let nobody = asked(&house.app, None, "GET", "/calendar", None).await;
    assert!(nobody.to().starts_with("/sign-in"), "{:?}", nobody.headers);
    // What stands in the database opens nothing.
    let kept = house.count("SELECT count(*) FROM people.feed WHERE home = $1 AND length(secret) = 32").await;
    assert_eq!(kept, 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_coach_reads_their_own_words_alone_and_nobody_finds_the_address() {
    let (house, club, coach) = shared().await;
    proposes(&house, &coach).await;
    let (hill, _, other) = house.club_of_name("Hill+Club").await;
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", hill)).await;
    let others = made(&house, &other).await;
    assert!(!unfolded(&read(&house, &others).await).contains("VEVENT"), "not what another coach wrote");
    let answer = read(&house, &made(&house, &coach).await).await;
    let header = |name: &str| answer.headers.get(name).map_or("", |v| v.to_str().unwrap()).to_owned();
    assert_eq!(header("x-robots-tag"), "noindex, nofollow, noarchive");
    assert_eq!(
        (header("referrer-policy"), header("cache-control")),
        ("no-referrer".into(), "private, no-store".into())
    );
    assert!(answer.headers.get(header::SET_COOKIE).is_none());
    // What was only read from a file is not told as from a coach.
    let from = Author { account: coach.account, name: label("Brook") };
    let starts_at = house.host.now().plus_seconds(86_400.0);
    let forged = Proposal {
        from,
        proposes: Proposed::Meeting { starts_at, minutes: 7 },
        text: None,
        takes_up: None,
        club: None,
    };
    house.host.server.home(house.home).append(vec![event(house.home, forged)]).await.unwrap();
    let keepers = made(&house, &house.keeper).await;
    assert_eq!(unfolded(&read(&house, &keepers).await).matches("BEGIN:VEVENT").count(), 1);
    // A home that leaves takes the addresses along.
    let _ = club;
    assert_eq!(house.count("SELECT count(*) FROM people.feed WHERE home = $1").await, 3);
}
