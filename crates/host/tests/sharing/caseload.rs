//! One calendar of all of a coach's homes by secret address: meetings and checks of those that are open at the moment of reading; and
//! whom a meeting names after a home was handed over.

use crate::colleagues::{agrees, club, last_proposal, shares_with};
use crate::house::{Answer, House, Signed, asked, event, label};
use axum::http::StatusCode;
use sayso_model::*;
use uuid::Uuid;

const BALL: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001));

async fn made(house: &House, who: &Signed) -> String {
    let made = house.post(who, "/desk/calendar/new", "").await;
    assert_eq!(made.status, StatusCode::OK, "{}", made.body);
    made.marked("address")[0].strip_prefix("http://localhost").unwrap().to_owned()
}

async fn read(house: &House, address: &str) -> Answer {
    asked(&house.app, None, "GET", address, None).await
}

async fn unfolded(house: &House, address: &str) -> String {
    let answer = read(house, address).await;
    assert_eq!(answer.status, StatusCode::OK, "{}", answer.body);
    answer.body.replace("\r\n ", "")
}

async fn writes(house: &House, who: &Signed, (home, animal): (HomeId, AnimalId), form: &str) -> EventId {
    let sent =
        house.post(who, &format!("/talk/write?home={home}"), &format!("home={home}&animal={animal}&{form}")).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    let store = house.host.server.home(home);
    let story = store.story(home).await.unwrap();
    story.as_recorded(Kind::Proposal).max_by_key(|e| (e.recorded_at, e.id)).unwrap().id
}

async fn accepts(house: &House, of: EventId) {
    let done = house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=accepted&text=")).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
}

fn meeting(house: &House, days: i32) -> String {
    let day = house.host.now().day(&Zone::utc()).plus(days);
    format!("what=meeting&day={day}&time=18:30&minutes=45&text=By+telephone.")
}

/// Another home of the server that shares figures with a coach: with an animal, a word and nothing else.
async fn another_home(house: &House, club: ClubId, coach: &Signed) -> (HomeId, AnimalId, Signed) {
    let (home, keeper) = house.newcomer().await;
    let animal = AnimalId(Uuid::now_v7());
    let about = |body: Body| Event { animal: Some(animal), ..event(home, body) };
    let cards = vec![
        event(home, HomeCard { name: label("Fern House"), zone: Zone::utc() }),
        about(AnimalCard::new(animal, label("Pip"), Species::Cat).into()),
        about(WordCard::new(BALL, label("ball")).into()),
    ];
    house.host.server.home(home).append(cards).await.unwrap();
    let form =
        format!("home={home}&purpose=coach_figures&club={club}&coach={}&words={}", coach.account, Consent::WORDS);
    let done = house.post(&keeper, "/sharing/consent", &form).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    (home, animal, keeper)
}

#[tokio::test(flavor = "multi_thread")]
async fn it_holds_meetings_and_checks_of_all_homes_that_are_open_now() {
    let (house, club, brook, _) = club().await;
    let card = Event { animal: Some(house.animal), ..event(house.home, WordCard::new(BALL, label("ball"))) };
    house.host.server.home(house.home).append(vec![card]).await.unwrap();
    shares_with(&house, "coach_figures", club, &brook).await;
    assert!(house.get(&brook, "/desk").await.holds("href=\"/desk/calendar\""));
    assert!(house.get(&brook, "/desk/calendar").await.holds("There is no address yet"));
    let address = made(&house, &brook).await;
    assert!(!unfolded(&house, &address).await.contains("VEVENT"));
    assert!(house.get(&brook, "/desk/calendar").await.holds("Last read:"));

    let here = (house.home, house.animal);
    let met = writes(&house, &brook, here, &meeting(&house, 2)).await;
    accepts(&house, met).await;
    let check = writes(&house, &brook, here, &format!("what=check&word={BALL}&text=")).await;
    accepts(&house, check).await;
    let last = house.host.now().day(&Zone::utc()).plus(6);
    let plan = format!(
        "what=plan&word_1={BALL}&way_1=show&minutes_1=3&times_1=3&word_2=&minutes_2=3&times_2=3&last_day={last}&text="
    );
    let plan = writes(&house, &brook, here, &plan).await;
    accepts(&house, plan).await;
    let (fern, pip, fern_keeper) = another_home(&house, club, &brook).await;
    writes(&house, &brook, (fern, pip), &meeting(&house, 3)).await;

    let told = unfolded(&house, &address).await;
    assert_eq!(told.matches("BEGIN:VEVENT").count(), 3, "two meetings and a check, no days of plans: {told}");
    assert!(told.contains("SUMMARY:Meeting: Brook and Birch House\r\n") && told.contains("STATUS:CONFIRMED"), "{told}");
    assert!(told.contains("SUMMARY:Meeting: Brook and Fern House\r\n") && told.contains("STATUS:TENTATIVE"), "{told}");
    assert!(told.contains("SUMMARY:Tarn: the check of “ball” that was agreed\r\n"), "{told}");
    assert!(told.contains("DESCRIPTION:For Birch House\\n") && told.contains(&format!("?home={fern}\r\n")), "{told}");
    let looks = house.get(&house.keeper, "/sharing").await;
    assert!(looks.marked("look").iter().any(|l| l.contains("Brook, the calendar")), "{:?}", looks.marked("look"));

    // A home whose consent ended is gone at the next reading; the other stays.
    let back =
        format!("home={fern}&purpose=coach_figures&club={club}&coach={}&words={}", brook.account, Consent::WORDS);
    assert_eq!(house.post(&fern_keeper, "/sharing/consent/back", &back).await.status, StatusCode::SEE_OTHER);
    let told = unfolded(&house, &address).await;
    assert!(!told.contains("Fern") && told.matches("BEGIN:VEVENT").count() == 2, "{told}");
    // A meeting that was declined goes, too.
    let no = house.post(&house.keeper, "/talk/answer", &format!("to={met}&reply=declined&text=")).await;
    assert_eq!(no.status, StatusCode::SEE_OTHER);
    assert!(!unfolded(&house, &address).await.contains("Meeting:"));
}

#[tokio::test(flavor = "multi_thread")]
async fn its_address_is_a_coachs_alone_is_changed_and_ends_with_the_role() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    for who in [&house.keeper, &house.server] {
        assert_eq!(house.get(who, "/desk/calendar").await.status, StatusCode::NOT_FOUND);
        assert_eq!(house.post(who, "/desk/calendar/new", "").await.status, StatusCode::NOT_FOUND);
    }
    let first = made(&house, &brook).await;
    writes(&house, &brook, (house.home, house.animal), &meeting(&house, 2)).await;
    assert!(unfolded(&house, &first).await.contains("VEVENT"));
    let others = made(&house, &ash).await;
    assert!(!unfolded(&house, &others).await.contains("VEVENT"), "no home shares with that coach");
    let second = made(&house, &brook).await;
    let unknown = read(&house, &format!("/calendar/{}.ics", "0".repeat(64))).await;
    assert_eq!(read(&house, &first).await.body, unknown.body, "the one before ends");
    assert_eq!(house.post(&brook, "/desk/calendar/end", "").await.status, StatusCode::SEE_OTHER);
    assert_eq!(read(&house, &second).await.status, StatusCode::NOT_FOUND);
    let third = made(&house, &brook).await;
    let role = house.role_of(&brook).await;
    house.host.people.end_own_membership(brook.account, role, house.host.now()).await.unwrap();
    let closed = read(&house, &third).await;
    assert_eq!((closed.status, &closed.body), (StatusCode::NOT_FOUND, &unknown.body));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_meeting_names_the_coach_who_has_it_now() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    let here = (house.home, house.animal);
    let met = writes(&house, &brook, here, &meeting(&house, 2)).await;
    accepts(&house, met).await;
    let (of_brook, of_ash) = (made(&house, &brook).await, made(&house, &ash).await);
    let keepers = house.post(&house.keeper, "/calendar/new", &format!("home={}", house.home)).await;
    let keepers = keepers.marked("address")[0].strip_prefix("http://localhost").unwrap().to_owned();
    assert!(unfolded(&house, &keepers).await.contains("SUMMARY:Meeting: Brook and Birch House"));
    let form = format!("home={}&colleague={}&text=", house.home, ash.account);
    assert_eq!(house.post(&brook, "/desk/hand-over", &form).await.status, StatusCode::SEE_OTHER);
    let of = last_proposal(&house).await;
    // Until the home agrees nothing is anybody else's.
    assert!(unfolded(&house, &keepers).await.contains("Brook") && !unfolded(&house, &of_ash).await.contains("VEVENT"));
    assert_eq!(agrees(&house, of).await.status, StatusCode::SEE_OTHER);
    for address in [&keepers, &of_ash] {
        let told = unfolded(&house, address).await;
        assert!(told.contains("SUMMARY:Meeting: Ash and Birch House\r\n") && !told.contains("Brook"), "{told}");
    }
    assert!(!unfolded(&house, &of_brook).await.contains("VEVENT"));
}

#[tokio::test(flavor = "multi_thread")]
async fn the_calendar_of_a_covered_coach_keeps_their_meetings_and_has_those_of_the_stand_in() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    let here = (house.home, house.animal);
    let own = writes(&house, &brook, here, &meeting(&house, 9)).await;
    accepts(&house, own).await;
    let (of_brook, of_ash) = (made(&house, &brook).await, made(&house, &ash).await);
    let today = house.host.now().day(&Zone::utc());
    let days = format!("colleague={}&first={today}&last={}", ash.account, today.plus(3));
    house.post(&brook, "/desk/cover", &days).await;
    assert_eq!(agrees(&house, last_proposal(&house).await).await.status, StatusCode::SEE_OTHER);
    // One within the days of the cover, one after them: both proposed by who stands in.
    for days in [2, 8] {
        let of = writes(&house, &ash, here, &meeting(&house, days)).await;
        accepts(&house, of).await;
    }
    let told = unfolded(&house, &of_brook).await;
    let of = |told: &str, name: &str| told.matches(&format!("SUMMARY:Meeting: {name} and Birch House")).count();
    assert_eq!((of(&told, "Brook"), of(&told, "Ash")), (2, 1), "{told}");
    let told = unfolded(&house, &of_ash).await;
    assert_eq!(of(&told, "Ash"), 1, "while standing in: {told}");
    // When the days are over it is Brook's alone.
    let after = house.later(|| sayso_web::state::machine_clock().plus_seconds(5.0 * 86_400.0)).await;
    let told = asked(&after, None, "GET", &of_brook, None).await.body.replace("\r\n ", "");
    assert_eq!(of(&told, "Brook"), 2, "{told}");
    let told = asked(&after, None, "GET", &of_ash, None).await.body;
    assert!(!told.contains("VEVENT"), "{told}");
}

/// What was handed over, and is still open to the coach by what the home shares with the club.
#[tokio::test(flavor = "multi_thread")]
async fn a_home_that_was_handed_over_and_is_still_to_be_seen_is_told_by_name_and_proposed_nothing() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    let course = house.post(&brook, "/desk/programmes/new", crate::programmes::COURSE).await.to().to_owned();
    let today = house.host.now().day(&Zone::utc());
    let propose = format!("animal={}&first={today}", house.animal);
    house.post(&brook, &format!("{course}/propose"), &propose).await;
    accepts(&house, last_proposal(&house).await).await;
    let form = format!("home={}&colleague={}&text=", house.home, ash.account);
    assert_eq!(house.post(&brook, "/desk/hand-over", &form).await.status, StatusCode::SEE_OTHER);
    assert_eq!(agrees(&house, last_proposal(&house).await).await.status, StatusCode::SEE_OTHER);
    assert!(house.get(&brook, "/desk").await.body.matches("data-test=\"row\"").count() == 0, "closed by the hand-over");
    // Then the home shares with the whole club: Brook sees it again, and it stays Ash's.
    let done = house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    let list = house.get(&brook, "/desk/programmes").await;
    let handed = list.marked("handed-on");
    assert!(handed.len() == 1 && handed[0].contains("handed over to Ash on"), "{}", list.body);
    let before = last_proposal(&house).await;
    house.post(&brook, &format!("{course}/propose"), &propose).await;
    assert_eq!(last_proposal(&house).await, before, "somebody else goes on there");
}
