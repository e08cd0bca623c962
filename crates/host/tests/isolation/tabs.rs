//! Two homes of one account in two tabs of one browser.

use crate::house::House;
use axum::body::Body;
use axum::http::{Request, StatusCode, header};

#[tokio::test(flavor = "multi_thread")]
async fn a_form_goes_to_the_home_it_was_shown_for_whichever_was_chosen_since() {
    let mut house = House::new().await;
    let people = house.people().await;
    let by = |name: &str| people.iter().find(|p| p.name == name).unwrap();
    let keeper = by("keeper");
    house.joins_the_other(by("keeper of another home"), keeper).await;
    // Shown for the other home, while the browser is about the first.
    let (_, page) = house.get(keeper, &format!("/people/rule/new?home={}", house.other)).await;
    let to = page.split("action=\"/people/rule/new").nth(1).unwrap().split('"').next().unwrap();
    assert_eq!(to, format!("?home={}", house.other));
    let before = [house.rules(house.home).await, house.rules(house.other).await];
    let kind = "application/x-www-form-urlencoded";
    let request = Request::post(format!("/people/rule/new{to}"))
        .header(header::CONTENT_TYPE, kind)
        .body(Body::from("text=Lids+stay+screwed+shut.&active=yes"))
        .unwrap();
    let answer = house.ask(keeper, request).await;
    assert_eq!(answer.status(), StatusCode::SEE_OTHER);
    let after = [house.rules(house.home).await, house.rules(house.other).await];
    assert_eq!(after, [before[0], before[1] + 1]);
    // And where it leads is of that home.
    let cookies: Vec<_> = answer.headers().get_all(header::SET_COOKIE).iter().map(|c| c.to_str().unwrap()).collect();
    assert!(cookies.iter().any(|c| c.starts_with(&format!("sayso_home={}", house.other))), "{cookies:?}");
    // A home that is not one's own is not named into.
    let nowhere = uuid::Uuid::now_v7();
    let (status, page) = house.get(keeper, &format!("/people/rule/new?home={nowhere}")).await;
    assert!(status == StatusCode::OK && page.contains(&format!("?home={}", house.home)));
}
