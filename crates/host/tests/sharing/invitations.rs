//! Invitations: their link is shown once, holds once, and can be taken back.

use crate::house::{Has, House, Signed, secret_of, take};
use axum::http::StatusCode;
use sayso_people::Error;

#[tokio::test(flavor = "multi_thread")]
async fn a_link_is_shown_once_taken_once_and_taken_back() {
    let house = House::new().await;
    let form = format!("home={}&role=member&person=", house.home);
    let made = house.post(&house.keeper, "/sharing/invite", &form).await;
    let link = made.marked("link")[0].to_owned();
    assert!(link.starts_with("http://localhost/join/") && made.marked("qr").len() == 1, "{link}");
    let secret = secret_of(&link);
    let list = house.get(&house.keeper, "/sharing").await;
    assert_eq!(list.marked("invited").len(), 1);
    assert!(!list.holds(secret.reveal()), "never again");
    assert!(take(&house.host, &secret, "Mora").await.is_ok());
    assert!(matches!(take(&house.host, &secret, "Late").await, Err(Error::NotValid)));
    assert_eq!(house.get(&house.keeper, "/sharing").await.marked("invited").len(), 0);
    let again = house.invited(Has::Observer, None).await;
    let list = house.get(&house.keeper, "/sharing").await;
    let end = list.body.split("action=\"/sharing/invitations/").nth(1).unwrap().split('"').next().unwrap();
    let path = format!("/sharing/invitations/{end}");
    assert_eq!(house.post(&house.keeper, &path, &format!("home={}", house.home)).await.to(), "/sharing#people");
    assert!(matches!(take(&house.host, &again, "Late").await, Err(Error::NotValid)));
}

#[tokio::test(flavor = "multi_thread")]
async fn who_sits_needs_days_and_a_person_who_observes_a_person() {
    let house = House::new().await;
    let base = format!("home={}", house.home);
    let today = house.host.now().day(&sayso_model::Zone::utc());
    for (wrong, field) in [
        ("&role=observer&person=".to_owned(), "person"),
        (format!("&role=sitter&person={}&weekdays=1", house.person), "first"),
        (format!("&role=sitter&person={}&first={today}&last={}&weekdays=1", house.person, today.plus(-1)), "last"),
        (format!("&role=sitter&person={}&first={today}&last={today}", house.person), "weekdays"),
        ("&role=observer&person=0191e2a0-0000-7000-8000-000000000000".to_owned(), "person"),
        ("&role=coach&person=".to_owned(), "role"),
    ] {
        let told = house.post(&house.keeper, "/sharing/invite", &format!("{base}{wrong}")).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
        assert!(told.holds(&format!("href=\"#{field}\"")), "{field}: {}", told.body);
    }
    // Days that hold none of the weekdays, and a period that nobody agrees on in earnest.
    let sits = format!("{base}&role=sitter&person={}&first={today}", house.person);
    let other = (today.weekday() + 3) % 7;
    for (wrong, field) in [
        (format!("&last={}&weekdays={other}", today.plus(1)), "weekdays"),
        (format!("&last={}&weekdays={other}", today.plus(366)), "last"),
        ("&last=9999-12-31&weekdays=1".to_owned(), "last"),
    ] {
        let told = house.post(&house.keeper, "/sharing/invite", &format!("{sits}{wrong}")).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
        assert!(told.holds(&format!("href=\"#{field}\"")), "{field}: {}", told.body);
    }
    let longest = format!("{sits}&last={}&weekdays={other}", today.plus(365));
    assert_eq!(house.post(&house.keeper, "/sharing/invite", &longest).await.status, StatusCode::OK);
    // A name typed beside a person chosen is not dropped.
    let both = format!("{base}&role=member&person={}&new_person=Robin", house.person);
    let told = house.post(&house.keeper, "/sharing/invite", &both).await;
    assert!(told.status == StatusCode::UNPROCESSABLE_ENTITY && told.holds("href=\"#new_person\""), "{}", told.body);
    let member = house.joined(Has::Member, "Mora").await;
    let asked = async |who: &Signed| house.get(who, "/sharing/invite").await.status;
    assert_eq!((asked(&member).await, asked(&house.keeper).await), (StatusCode::FORBIDDEN, StatusCode::OK));
}

#[tokio::test(flavor = "multi_thread")]
async fn whoever_has_no_card_yet_is_named_in_the_invitation() {
    let house = House::new().await;
    let today = house.host.now().day(&sayso_model::Zone::utc());
    let form =
        format!("home={}&role=sitter&person=&first={today}&last={today}&weekdays={}", house.home, today.weekday());
    // What was chosen stands there again where a name is missing, and the name is all that is asked for.
    let told = house.post(&house.keeper, "/sharing/invite", &form).await;
    assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(told.holds("name=\"new_person\"") && told.holds(&today.to_string()), "{}", told.body);
    let people = async || house.host.server.home(house.home).story(house.home).await.unwrap().people().len();
    let before = people().await;
    let made = house.post(&house.keeper, "/sharing/invite", &format!("{form}&new_person=Robin")).await;
    assert_eq!((made.status, people().await), (StatusCode::OK, before + 1), "{}", made.body);
    let secret = secret_of(made.marked("link")[0]);
    let page = house.get(&house.server, &format!("/join/{}", secret.reveal())).await;
    assert!(page.marked("as-whom")[0].contains("Robin"), "{}", page.body);
    let joined = take(&house.host, &secret, "Robin").await.unwrap();
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    assert_eq!(story.people()[&joined.part.person().unwrap()].name.as_str(), "Robin");
    // Once more by that name: which of the two is meant is asked, and no card is made.
    let again = house.post(&house.keeper, "/sharing/invite", &format!("{form}&new_person=robin")).await;
    assert_eq!((again.status, people().await), (StatusCode::UNPROCESSABLE_ENTITY, before + 1));
    assert!(again.holds("href=\"#new_person\"") && again.holds("has a card here"), "{}", again.body);
}

#[tokio::test(flavor = "multi_thread")]
async fn nobody_is_invited_to_write_as_someone_who_has_an_account_or_keeps_the_home() {
    let house = House::new().await;
    house.joined(Has::Sitter, "Wren").await;
    let keeper = sayso_model::PersonId(uuid::Uuid::now_v7());
    let card = sayso_model::PersonCard::new(keeper, crate::house::label("Ilda"), sayso_model::Role::Home);
    house.host.server.home(house.home).append(vec![crate::house::event(house.home, card)]).await.unwrap();
    for person in [house.person, keeper] {
        let form = format!("home={}&role=observer&person={person}", house.home);
        let told = house.post(&house.keeper, "/sharing/invite", &form).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", told.body);
        assert!(told.holds("href=\"#person\"") && told.holds("already"), "{}", told.body);
    }
    // Whose card it is keeps it when the role is changed; another one does not get it.
    let (wren, finch) = (house.joined(Has::Sitter, "Wren").await, house.joined(Has::Observer, "Finch").await);
    let change = async |who: &Signed, person: String| {
        let form = format!("home={}&role=observer&person={person}", house.home);
        house.post(&house.keeper, &format!("/sharing/people/{}", house.role_of(who).await), &form).await
    };
    let own = house.host.people.who(wren.account).await.unwrap().memberships[0].part.person().unwrap();
    assert_eq!(change(&wren, own.to_string()).await.to(), "/sharing#people");
    assert_eq!(change(&finch, own.to_string()).await.status, StatusCode::UNPROCESSABLE_ENTITY);
}

fn twenty_minutes_later() -> sayso_model::Moment {
    sayso_web::state::machine_clock().plus_seconds(1_200.0)
}

#[tokio::test(flavor = "multi_thread")]
async fn who_sends_it_too_late_is_told_that_nothing_was_kept_and_gets_the_form_with_what_it_held() {
    let house = House::new().await;
    assert_eq!(house.post(&house.keeper, "/account/codes", "").await.status, StatusCode::OK, "a way in");
    let later = house.later(twenty_minutes_later).await;
    let form = format!("home={}&role=member&person=", house.home);
    let kind = Some((crate::house::FORM, form.as_str()));
    let led = crate::house::asked(&later, Some(&house.keeper), "POST", "/sharing/invite", kind).await;
    assert!(led.to().starts_with("/sign-in?again=yes&sent=yes&to="), "{}", led.to());
    let page = crate::house::asked(&later, Some(&house.keeper), "GET", led.to(), None).await;
    assert_eq!((page.status, page.marked("not-kept").len()), (StatusCode::OK, 1), "{}", page.body);
    // Whoever only opened a page sent nothing.
    let led = crate::house::asked(&later, Some(&house.keeper), "GET", "/sharing/invite", None).await;
    assert_eq!(led.to(), "/sign-in?again=yes&to=/sharing/invite");
    let page = crate::house::asked(&later, Some(&house.keeper), "GET", led.to(), None).await;
    assert_eq!(page.marked("not-kept").len(), 0);
    let form = house.get(&house.keeper, "/sharing/invite").await;
    assert!(form.holds("client/again") && form.holds("data-again"), "{}", form.body);
}

#[tokio::test(flavor = "multi_thread")]
async fn days_that_are_over_are_no_days_to_sit() {
    let house = House::new().await;
    let today = house.host.now().day(&sayso_model::Zone::utc());
    let (first, last) = (today.plus(-9), today.plus(-1));
    let form = format!(
        "home={}&role=sitter&person={}&first={first}&last={last}&weekdays=0&weekdays=1&weekdays=2",
        house.home, house.person
    );
    let told = house.post(&house.keeper, "/sharing/invite", &form).await;
    assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(told.holds("href=\"#last\"") && told.holds("is over already"), "{}", told.body);
    // Days of another year say it.
    let (first, last) = (today.plus(500), today.plus(510));
    let days = Some(sayso_people::Days::every(first, last));
    let secret = house.invited(Has::Sitter, days).await;
    let page = house.get(&house.server, &format!("/join/{}", secret.reveal())).await;
    assert!(page.holds(&last.parts().0.to_string()), "{}", page.body);
}
