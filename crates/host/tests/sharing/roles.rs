//! Each role is offered what it may open, and led there.

use crate::house::{Has, House, Signed};
use axum::http::StatusCode;
use sayso_host::asked;
use sayso_model::{AnimalId, Zone};
use sayso_people::Days;
use sayso_web::Tab;
use std::collections::BTreeSet;
use uuid::Uuid;

#[test]
fn a_tab_is_offered_to_whom_the_table_opens_its_page() {
    let animal = AnimalId(Uuid::from_u128(7));
    for tab in Tab::ALL {
        let path = tab.href(Some(animal)).replace(&animal.to_string(), "{animal}");
        let opens: BTreeSet<_> = asked::of(&axum::http::Method::GET, &path).unwrap().iter().collect();
        assert_eq!(opens, tab.opened_by().iter().collect(), "{path}");
    }
}

/// Tabs that a page offers, by the end of their address.
fn tabs(body: &str) -> BTreeSet<String> {
    let side = body.split("<nav class=\"side\"").nth(1).unwrap().split("</nav>").next().unwrap();
    side.split("href=\"").skip(1).map(|h| h.split('"').next().unwrap().rsplit('/').next().unwrap().to_owned()).collect()
}

async fn offered(house: &House, who: &Signed, first: &str, expected: &[&str]) {
    let led = house.get(who, "/").await;
    assert_eq!(led.to(), house.about(first));
    let page = house.get(who, led.to()).await;
    assert_eq!(page.status, StatusCode::OK);
    assert_eq!(tabs(&page.body), expected.iter().map(|t| (*t).to_owned()).collect(), "{first}");
    assert!(page.holds("action=\"/sign-out\"") && page.holds("href=\"/account\""));
    assert!(!page.holds("/devices"));
    // What is offered is open, and what is not offered is closed.
    for tab in Tab::ALL {
        let path = tab.href(Some(house.animal));
        let open = house.get(who, &path).await.status == StatusCode::OK;
        assert_eq!(open, expected.contains(&path.rsplit('/').next().unwrap()), "{path}");
    }
    let talks = house.get(who, "/talk").await.status == StatusCode::OK;
    assert_eq!(talks, expected.contains(&"talk"), "{first}");
}

#[tokio::test(flavor = "multi_thread")]
async fn each_role_sees_its_own_pages_and_no_door_that_is_closed_to_it() {
    let house = House::new().await;
    let all =
        ["today", "board", "likes", "words", "evidence", "days", "log", "people", "sheets", "learn", "sharing", "talk"];
    offered(&house, &house.keeper, "today", &all).await;
    let member = house.joined(Has::Member, "Mora").await;
    offered(&house, &member, "today", &all).await;
    let sitter = house.joined(Has::Sitter, "Sitter").await;
    offered(&house, &sitter, "today", &["today", "board", "sheets", "learn", "sharing"]).await;
    let observer = house.joined(Has::Observer, "Observer").await;
    offered(&house, &observer, "board", &["board", "learn", "sharing"]).await;
    let (club, _, coach) = house.club().await;
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    let coachs = ["today", "likes", "words", "evidence", "days", "sheets", "learn", "talk", "desk", "sharing"];
    offered(&house, &coach, "today", &coachs).await;
    for closed in [&sitter, &observer, &coach] {
        // What is theirs to know, and nobody's name.
        let told = house.get(closed, "/sharing").await;
        assert_eq!((told.status, told.marked("seen-here").len(), told.marked("sees").len()), (StatusCode::OK, 1, 0));
        assert!(!told.holds("Mora") && !told.holds("Ilda"), "{}", told.body);
        assert!(house.get(closed, "/homes").await.holds("href=\"/sharing\""));
    }
    // Who one is, the membership says: there is nothing to choose.
    assert!(!house.get(&sitter, &house.about("today")).await.holds("/who?back="));
    assert!(house.get(&house.keeper, &house.about("today")).await.holds("/who?back="));
}

#[tokio::test(flavor = "multi_thread")]
async fn who_has_no_home_or_no_day_is_told_so() {
    let house = House::new().await;
    let led = house.get(&house.server, "/").await;
    assert_eq!(led.to(), "/homes");
    let told = house.get(&house.server, "/homes").await;
    assert_eq!((told.status, told.marked("no-home").len()), (StatusCode::OK, 1));
    assert!(told.holds("href=\"/server\"") && !told.holds("Birch House"));
    let today = house.host.now().day(&Zone::utc());
    let days = Days::every(today.plus(4), today.plus(9));
    let sitter = house.joined_on(Has::Sitter, Some(days), "Early").await;
    let homes = house.get(&sitter, "/homes").await;
    assert!(homes.holds("Birch House") && homes.holds("closed to you today"), "{}", homes.body);
    // Outside the days agreed every page tells them, and the ways out.
    for path in ["/", &house.about("today"), &house.about("board")] {
        let told = house.get(&sitter, path).await;
        assert_eq!((told.status, told.marked("not-today").len()), (StatusCode::FORBIDDEN, 1), "{path}");
        let page = sayso_wording::Locale::ENGLISH;
        assert!(told.holds(&page.date(days.first)) && told.holds(&page.date(days.last)), "{}", told.body);
        assert!(told.holds("href=\"/account\"") && told.holds("action=\"/sign-out\"") && told.holds("/sharing"));
    }
    let chosen = house.post(&sitter, "/homes", &format!("home={}", house.home)).await;
    assert_eq!(chosen.to(), "/homes");
}

#[tokio::test(flavor = "multi_thread")]
async fn the_last_keeper_cannot_go_and_everyone_else_can() {
    let house = House::new().await;
    let role = async |who: &Signed| house.host.people.who(who.account).await.unwrap().memberships[0].id;
    let own = role(&house.keeper).await;
    let gone = house.post(&house.keeper, "/homes/end", &format!("membership={own}")).await;
    assert_eq!(gone.status, StatusCode::UNPROCESSABLE_ENTITY);
    let form = format!("home={}", house.home);
    let gone = house.post(&house.keeper, &format!("/sharing/people/{own}/end"), &form).await;
    assert_eq!(gone.status, StatusCode::UNPROCESSABLE_ENTITY);
    let form = format!("home={}&role=member&person=", house.home);
    let changed = house.post(&house.keeper, &format!("/sharing/people/{own}"), &form).await;
    assert_eq!(changed.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert_eq!(house.get(&house.keeper, "/sharing").await.status, StatusCode::OK, "refused as a whole");
    let mora = house.joined(Has::Member, "Mora").await;
    let told = house.get(&house.keeper, "/sharing").await;
    assert!(told.holds("Mora") && told.marked("member").len() == 2);
    // A member changes no roles.
    let path = format!("/sharing/people/{}", role(&mora).await);
    let form = format!("home={}&role=keeper&person=", house.home);
    assert_eq!(house.post(&mora, &path, &form).await.status, StatusCode::FORBIDDEN);
    assert_eq!(house.post(&house.keeper, &path, &form).await.to(), "/sharing#people");
    assert_eq!(house.post(&house.keeper, "/homes/end", &format!("membership={own}")).await.to(), "/homes");
    assert_eq!(house.get(&house.keeper, &house.about("today")).await.status, StatusCode::SEE_OTHER, "led to its homes");
    assert!(!house.get(&house.keeper, "/homes").await.holds("Birch House"));
    assert_eq!(house.get(&mora, "/sharing").await.status, StatusCode::OK);
}

#[tokio::test(flavor = "multi_thread")]
async fn many_homes_are_sorted_searched_and_say_what_they_share() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let people = &house.host.people;
    let session = people.session(&coach.token, house.host.now()).await.unwrap().unwrap();
    let made = house.post(&house.server, "/server/homes", "count=8").await;
    for (n, link) in made.marked("link").into_iter().enumerate() {
        let (secret, now) = (crate::house::secret_of(link), house.host.now());
        let taker = sayso_people::db::Taker::Known(&session);
        let taken =
            people.take_invitation(&secret, taker, "192.0.2.1", "t", now, &mut sayso_people::OsSecrets).await.unwrap();
        let home = taken.part.scope().home().unwrap();
        let name = crate::house::label(["Zelkova", "acacia", "Maple", "Rowan", "Linden", "Hazel", "Larch", "Elm"][n]);
        let card = crate::house::event(home, sayso_model::HomeCard { name, zone: Zone::utc() });
        house.host.server.home(home).append(vec![card]).await.unwrap();
    }
    for purpose in ["coach_figures", "coach_log"] {
        house.post(&house.keeper, "/sharing/consent", &house.consent(purpose, club)).await;
    }
    let all = house.get(&coach, "/homes").await;
    let names: Vec<&str> = all.marked("home").iter().map(|name| name.trim()).collect();
    let own = ["acacia", "Elm", "Hazel", "Larch", "Linden", "Maple", "Rowan", "Zelkova"];
    assert_eq!(
        names,
        own.into_iter().chain(["Birch House"]).collect::<Vec<_>>(),
        "own ones by name, then coached ones"
    );
    assert!(all.holds("coach; shares figures and the log"), "{}", all.body);
    let found = house.get(&coach, "/homes?find=L").await;
    assert_eq!(found.marked("home").len(), 6, "{:?}", found.marked("home"));
    let none = house.get(&coach, "/homes?find=%3Cb%3Eoak").await;
    assert_eq!((none.marked("home").len(), none.marked("found-none").len()), (0, 1));
    assert!(none.holds("&lt;b&gt;oak") && !none.holds("<b>oak"));
    // Few are not searched.
    assert!(!house.get(&house.keeper, "/homes").await.holds("role=\"search\""));
}
