//! A home that lost its way in: a keeper of the server invites a new keeper, slowly, seen by the home, and sees nothing of it.

use crate::house::{Has, House, Signed, asked, label, secret_of};
use axum::http::StatusCode;
use sayso_model::{Language, Moment};
use sayso_people::db::Taker;
use sayso_people::{Error, OsSecrets, Secret};
use sayso_web::state::machine_clock;

const DAY: f64 = 86_400.0;

fn three_days_later() -> Moment {
    machine_clock().plus_seconds(3.0 * DAY)
}

fn ten_days_later() -> Moment {
    machine_clock().plus_seconds(10.0 * DAY)
}

async fn invited(house: &House, whose: &str) -> Secret {
    let made = house.post(&house.server, "/server/homes/anew", &format!("whose={whose}")).await;
    assert_eq!(made.status, StatusCode::OK, "{}", made.body);
    assert!(!made.holds("Birch House") && !made.holds("Ilda") && !made.holds("Tarn"), "nothing of the home");
    let secret = secret_of(made.marked("link")[0]);
    // Nor behind the link, which whoever made it has in hand.
    let page = house.get(&house.server, &format!("/join/{}", secret.reveal())).await;
    assert_eq!(page.status, StatusCode::OK);
    assert!(page.holds(&house.home.to_string()) && !page.holds("Birch House"), "{}", page.body);
    secret
}

async fn comes(house: &House, secret: &Secret, at: Moment) -> Result<Signed, Error> {
    let taker = Taker::New { name: &label("Ilda again"), language: Language::En };
    let joined = house.host.people.take_invitation(secret, taker, "192.0.2.9", "test", at, &mut OsSecrets).await?;
    let (session, token) = joined.session.unwrap();
    Ok(Signed { token, account: session.account })
}

#[tokio::test(flavor = "multi_thread")]
async fn a_new_keeper_comes_in_after_some_days_and_the_home_sees_who_let_them_in() {
    let house = House::new().await;
    let secret = invited(&house, &house.home.to_string()).await;
    // The home is told at once: who, and from when.
    let told = house.get(&house.keeper, "/sharing").await;
    assert!(told.marked("anew").len() == 1 && told.holds("Server keeper, who keeps the server"), "{}", told.body);
    assert_eq!((told.marked("refuse-anew").len(), told.marked("invited").len()), (1, 0), "no invitation among others");
    // Where its people look first, each with the way to where it is refused.
    let member = house.joined(Has::Member, "Mora").await;
    for who in [&house.keeper, &member] {
        for path in [house.about("today"), house.about("board"), "/homes".to_owned()] {
            let page = house.get(who, &path).await;
            assert_eq!((page.marked("news").len(), page.marked("see-to").len()), (1, 1), "{path}: {}", page.body);
        }
        let way = house.post(who, "/homes", &format!("to=/sharing&home={}", house.home)).await;
        assert_eq!(way.to(), "/sharing");
    }
    let observer = house.joined(Has::Observer, "Observer").await;
    for path in [house.about("board"), "/homes".to_owned()] {
        assert_eq!(house.get(&observer, &path).await.marked("news").len(), 0, "who may not refuse it is not told");
    }
    let elsewhere = house.post(&house.keeper, "/homes", &format!("to=//example.org&home={}", house.home)).await;
    assert_eq!(elsewhere.to(), house.about("today"));
    // Too early: the page says from when, and nothing is used up.
    let link = format!("/join/{}", secret.reveal());
    let early = asked(&house.app, None, "GET", &link, None).await;
    assert_eq!((early.status, early.marked("not-yet").len(), early.marked("join").len()), (StatusCode::OK, 1, 0));
    let tried = asked(&house.app, None, "POST", &link, Some((crate::house::FORM, "name=Ilda"))).await;
    assert_eq!((tried.status, tried.marked("not-yet").len()), (StatusCode::CONFLICT, 1));
    assert!(matches!(comes(&house, &secret, machine_clock()).await, Err(Error::NotYet)));
    // A second one is not made while the first holds.
    let again = house.post(&house.server, "/server/homes/anew", &format!("whose={}", house.home)).await;
    assert_eq!(again.status, StatusCode::UNPROCESSABLE_ENTITY);
    // Who keeps the server does not get in by it.
    let people = &house.host.people;
    let session = people.session(&house.server.token, machine_clock()).await.unwrap().unwrap();
    let own = people
        .take_invitation(&secret, Taker::Known(&session), "192.0.2.9", "t", three_days_later(), &mut OsSecrets)
        .await;
    assert!(matches!(own, Err(Error::Denied(_))), "{own:?}");
    assert_eq!(house.get(&house.server, "/sharing").await.marked("sees").len(), 0);
    let new = comes(&house, &secret, three_days_later()).await.unwrap();
    let later = house.later(three_days_later).await;
    let sees = asked(&later, Some(&new), "GET", "/sharing", None).await;
    assert!(sees.holds("Ilda again came by it on"), "{}", sees.body);
    assert!(matches!(comes(&house, &secret, three_days_later()).await, Err(Error::NotValid)), "once");
    // The one of before is still a keeper, until the new one ends that.
    let who = people.who(house.keeper.account).await.unwrap();
    let role = who.memberships[0].id;
    let form = format!("home={}", house.home);
    let kind = Some((crate::house::FORM, form.as_str()));
    let ended = asked(&later, Some(&new), "POST", &format!("/sharing/people/{role}/end"), kind).await;
    assert_eq!(ended.to(), "/sharing#people", "{}", ended.body);
}

#[tokio::test(flavor = "multi_thread")]
async fn whoever_is_still_in_refuses_it() {
    let house = House::new().await;
    let member = house.joined(Has::Member, "Mora").await;
    let secret = invited(&house, &house.keeper.account.to_string()).await;
    let page = house.get(&member, "/sharing").await;
    let path = page.body.split("action=\"/sharing/anew/").nth(1).unwrap().split('"').next().unwrap();
    let path = format!("/sharing/anew/{path}");
    let form = format!("home={}", house.home);
    for other in [&house.server, &house.joined(Has::Observer, "Observer").await] {
        let told = house.post(other, &path, &form).await.status;
        assert!(told == StatusCode::NOT_FOUND || told == StatusCode::FORBIDDEN, "{told}");
    }
    assert_eq!(house.post(&member, &path, &form).await.to(), "/sharing");
    assert!(matches!(comes(&house, &secret, three_days_later()).await, Err(Error::NotValid)));
    let told = house.get(&house.keeper, "/sharing").await;
    for path in [house.about("today"), house.about("board"), "/homes".to_owned()] {
        assert_eq!(house.get(&house.keeper, &path).await.marked("news").len(), 0, "it is settled: {path}");
    }
    assert!(told.holds("Mora refused it on") && told.marked("refuse-anew").is_empty(), "{}", told.body);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_member_who_takes_it_keeps_the_home_from_then_on_and_a_late_one_does_not() {
    let house = House::new().await;
    let member = house.joined(Has::Member, "Mora").await;
    let secret = invited(&house, &house.home.to_string()).await;
    let people = &house.host.people;
    let session = people.session(&member.token, machine_clock()).await.unwrap().unwrap();
    let late = comes(&house, &secret, ten_days_later()).await;
    assert!(matches!(late, Err(Error::NotValid)), "{:?}", late.map(drop));
    people
        .take_invitation(&secret, Taker::Known(&session), "192.0.2.9", "t", three_days_later(), &mut OsSecrets)
        .await
        .unwrap();
    let who = people.who(member.account).await.unwrap();
    assert_eq!(who.memberships.len(), 1);
    assert_eq!(who.memberships[0].part.role(), Has::Keeper);
}

#[tokio::test(flavor = "multi_thread")]
async fn only_a_home_that_had_a_keeper_and_only_by_who_hosts() {
    let house = House::new().await;
    let made = house.post(&house.server, "/server/homes", "count=1").await;
    assert_eq!(made.marked("link").len(), 1);
    let page = house.get(&house.server, "/server").await;
    let waiting = page.body.split("name=\"home\" value=\"").nth(1).unwrap().split('"').next().unwrap().to_owned();
    let nobody = uuid::Uuid::now_v7().to_string();
    for whose in [waiting.as_str(), nobody.as_str(), "Birch House", "nobody@home.example", ""] {
        let told = house.post(&house.server, "/server/homes/anew", &format!("whose={whose}")).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{whose}");
    }
    let form = format!("whose={}", house.home);
    assert_eq!(house.post(&house.keeper, "/server/homes/anew", &form).await.status, StatusCode::NOT_FOUND);
    // Its ids stand where the household finds them.
    let account = house.get(&house.keeper, "/account").await;
    assert!(account.holds(&house.home.to_string()) && account.holds(&house.keeper.account.to_string()));
    let codes = house.post(&house.keeper, "/account/codes", "").await;
    assert!(codes.holds(&house.home.to_string()), "on paper, too");
    // Gone with the home.
    invited(&house, &house.home.to_string()).await;
    let left = house.post(&house.keeper, "/sharing/leave", &format!("home={}&name=Birch+House", house.home)).await;
    assert_eq!(left.status, StatusCode::OK, "{}", left.body);
    assert_eq!(house.count("SELECT count(*) FROM people.rescue WHERE home = $1").await, 0);
}
