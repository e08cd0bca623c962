//! The server's page: homes and clubs are opened, nothing of any home is shown.

use crate::house::{House, secret_of, take};
use axum::http::StatusCode;
use sayso_people::Error;

#[tokio::test(flavor = "multi_thread")]
async fn several_homes_are_opened_each_with_a_link_that_leads_into_it() {
    let house = House::new().await;
    let made = house.post(&house.server, "/server/homes", "count=3").await;
    let links = made.marked("link");
    assert_eq!((made.status, links.len(), made.marked("link-row").len()), (StatusCode::OK, 3, 3));
    let joined = take(&house.host, &secret_of(links[0]), "Ana").await.unwrap();
    let home = joined.part.scope().home().unwrap();
    let (session, token) = joined.session.unwrap();
    let ana = crate::house::Signed { token, account: session.account };
    // A whole home is behind it: its log takes the first card.
    assert_eq!(house.get(&ana, "/").await.to(), "/start");
    assert!(house.host.server.home(home).story(home).await.unwrap().ledger().is_empty());
    // The others wait; a lost link is replaced, and what is taken first counts.
    let page = house.get(&house.server, "/server").await;
    assert_eq!(page.marked("waiting").len(), 2);
    assert!(!page.holds("Birch House") && !page.holds("Tarn"), "no content");
    let waiting = page.body.split("name=\"home\" value=\"").nth(1).unwrap().split('"').next().unwrap();
    let again = house.post(&house.server, "/server/homes/link", &format!("home={waiting}")).await;
    let again = secret_of(again.marked("link")[0]);
    let of = take(&house.host, &again, "Bea").await.unwrap().part.scope().home().unwrap();
    assert_eq!(of.to_string(), waiting);
    let mut refused = 0;
    for link in &links[1..] {
        refused += usize::from(matches!(take(&house.host, &secret_of(link), "Cem").await, Err(Error::Taken)));
    }
    assert_eq!(refused, 1, "the one that was replaced");
    // A home that has a keeper gets no other from here.
    let told = house.post(&house.server, "/server/homes/link", &format!("home={}", house.home)).await;
    assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY);
    let made = house.post(&house.server, "/server/clubs", "name=Meadow+Club").await;
    assert_eq!(made.status, StatusCode::OK);
    let long = format!("name={}", "x".repeat(200));
    for (wrong, told) in [
        ("name=", "is missing"),
        ("name=meadow+CLUB", "is the name of a club here already"),
        (long.as_str(), "characters"),
        ("name=a%0Ab", ""),
    ] {
        let answer = house.post(&house.server, "/server/clubs", wrong).await;
        assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
        assert!(
            answer.holds(told) && (told == "is missing" || !answer.holds("is missing")),
            "{wrong}: {}",
            answer.body
        );
    }
    for wrong in ["count=0", "count=51", "count=x", "count="] {
        let told = house.post(&house.server, "/server/homes", wrong).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
        assert!(
            told.holds("id=\"count\"") && told.holds("action=\"/server/homes\""),
            "the form is there: {}",
            told.body
        );
    }
    let typed = house.post(&house.server, "/server/homes/anew", "whose=nobody%40home.example").await;
    assert_eq!(typed.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(typed.holds("value=\"nobody@home.example\"") && typed.holds("id=\"whose\""), "{}", typed.body);
}

#[tokio::test(flavor = "multi_thread")]
async fn only_keepers_of_the_server_come_in_and_the_last_of_them_stays() {
    let house = House::new().await;
    let (club, club_keeper, coach) = house.club().await;
    for other in [&house.keeper, &club_keeper, &coach] {
        assert_eq!(house.get(other, "/server").await.status, StatusCode::NOT_FOUND);
        assert_eq!(house.post(other, "/server/homes", "count=1").await.status, StatusCode::NOT_FOUND);
    }
    assert_eq!(house.get(&house.keeper, &format!("/club/{club}")).await.status, StatusCode::NOT_FOUND);
    let told = house.post(&coach, &format!("/club/{club}/invite"), "role=coach").await;
    assert_eq!(told.status, StatusCode::FORBIDDEN);
    assert!(told.holds("keeper of the club") && !told.holds("keeper of the home"), "{}", told.body);
    // A club that cannot be read, one that is not there and one of others answer alike.
    let nowhere = house.get(&coach, &format!("/club/{}", uuid::Uuid::now_v7())).await;
    assert!(nowhere.holds("href=\"/sharing\""), "who can see this is one tap away: {}", nowhere.body);
    for path in ["/club/abc", "/nothing/here"] {
        let told = house.get(&coach, path).await;
        let led = told.status == StatusCode::SEE_OTHER && path == "/nothing/here";
        assert!(led || (told.status == StatusCode::NOT_FOUND && told.body == nowhere.body), "{path}: {}", told.body);
    }
    let counts = house.get(&house.server, "/server").await;
    assert_eq!(counts.marked("club").len(), 1);
    let role = house.host.people.who(house.server.account).await.unwrap().memberships[0].id;
    let form = format!("membership={role}");
    let gone = house.post(&house.server, "/server/keepers/end", &form).await;
    assert_eq!(gone.status, StatusCode::UNPROCESSABLE_ENTITY);
    let made = house.post(&house.server, "/server/keepers", "").await;
    take(&house.host, &secret_of(made.marked("link")[0]), "Second").await.unwrap();
    assert_eq!(house.post(&house.server, "/server/keepers/end", &form).await.to(), "/server");
    assert_eq!(house.get(&house.server, "/server").await.status, StatusCode::NOT_FOUND);
}

#[tokio::test(flavor = "multi_thread")]
async fn all_sessions_of_an_account_end_at_once() {
    let house = House::new().await;
    let form = format!("account={}", house.keeper.account);
    let told = house.post(&house.server, "/server/sessions", &form).await;
    assert!(told.marked("ended")[0].starts_with("1 session"), "{}", told.body);
    assert!(house.get(&house.keeper, "/sharing").await.to().starts_with("/sign-in"));
    let told = house.post(&house.server, "/server/sessions", "account=somebody").await;
    assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY);
}
