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
    // What was meant for a home that is not, or no longer, one's own goes to no other.
    let nowhere = uuid::Uuid::now_v7();
    for named in [nowhere.to_string(), "x".to_owned(), String::new()] {
        let (status, page) = house.get(keeper, &format!("/people/rule/new?home={named}")).await;
        assert!(status == StatusCode::NOT_FOUND && page.contains("one of your homes"), "{named}: {page}");
        let request = Request::post(format!("/people/rule/new?home={named}"))
            .header(header::CONTENT_TYPE, kind)
            .body(Body::from("text=Lids+stay+screwed+shut.&active=yes"))
            .unwrap();
        assert_eq!(house.ask(keeper, request).await.status(), StatusCode::NOT_FOUND, "{named}");
    }
    assert_eq!([house.rules(house.home).await, house.rules(house.other).await], after);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_file_goes_to_the_home_it_was_brought_for_from_the_first_form_to_the_last() {
    let mut house = House::new().await;
    let people = house.people().await;
    let by = |name: &str| people.iter().find(|p| p.name == name).unwrap();
    // Keeps two homes; the browser is about the first.
    let keeper = by("keeper");
    house.keeps_the_other(by("keeper of another home"), keeper).await;
    let named = format!("?home={}", house.other);
    let of_other = house.other_story.ledger().all().find(|event| event.animal.is_some()).unwrap();
    let fresh = sayso_model::Event { id: sayso_model::EventId(uuid::Uuid::now_v7()), ..of_other.clone() };
    let (_, page) = house.get(keeper, &format!("/exchange{named}")).await;
    assert!(
        page.contains(&format!("action=\"/exchange{named}\"")) && page.contains(&format!("/api/export.csv{named}"))
    );
    let line = serde_json::to_string(&fresh).unwrap();
    let body = format!(
        "--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"one.jsonl\"\r\nContent-Type: application/x-ndjson\r\n\r\n{line}\n\r\n--x--\r\n"
    );
    let request = Request::post(format!("/exchange{named}"))
        .header(header::CONTENT_TYPE, "multipart/form-data; boundary=x")
        .body(Body::from(body))
        .unwrap();
    let answer = house.ask(keeper, request).await;
    assert_eq!(answer.status(), StatusCode::SEE_OTHER);
    let look = answer.headers()[header::LOCATION].to_str().unwrap().to_owned();
    assert!(look.ends_with(&named), "{look}");
    let (status, page) = house.get(keeper, &look).await;
    assert!(status == StatusCode::OK, "{page}");
    let actions: Vec<&str> = page.split("action=\"/exchange/").skip(1).map(|a| a.split('"').next().unwrap()).collect();
    assert!(actions.len() == 2 && actions.iter().all(|to| to.ends_with(&named)), "{actions:?}");
    let before = house.host.server.home(house.other).story(house.other).await.unwrap().ledger().len();
    let kind = "application/x-www-form-urlencoded";
    let (status, told) = house.post(keeper, &format!("/exchange/{}", actions[0]), "", kind).await;
    assert_eq!(status, StatusCode::SEE_OTHER, "{told}");
    let after = house.host.server.home(house.other).story(house.other).await.unwrap().ledger().len();
    assert_eq!(after, before + 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn who_can_see_this_is_told_of_the_home_on_the_screen_whichever_was_chosen() {
    let mut house = House::new().await;
    let people = house.people().await;
    let by = |name: &str| people.iter().find(|p| p.name == name).unwrap();
    let keeper = by("keeper");
    house.joins_the_other(by("keeper of another home"), keeper).await;
    // A page of the other home, while the browser is about the first.
    let (status, page) = house.get(keeper, &format!("/people?home={}", house.other)).await;
    assert_eq!(status, StatusCode::OK);
    let to = format!("/sharing?home={}", house.other);
    assert!(page.contains(&format!("href=\"{to}\"")) && !page.contains("href=\"/sharing\""), "{page}");
    let answer = house.ask(keeper, Request::get(&to).body(Body::empty()).unwrap()).await;
    assert_eq!(
        (answer.status(), &answer.headers()[header::LOCATION]),
        (StatusCode::SEE_OTHER, &"/sharing".parse().unwrap())
    );
    let cookie = answer.headers()[header::SET_COOKIE].to_str().unwrap().to_owned();
    assert!(cookie.starts_with(&format!("sayso_home={}", house.other)), "{cookie}");
    // A home of others is none, and nothing is chosen.
    let nowhere = uuid::Uuid::now_v7();
    for named in [nowhere.to_string(), "x".to_owned(), String::new()] {
        let answer =
            house.ask(keeper, Request::get(format!("/sharing?home={named}")).body(Body::empty()).unwrap()).await;
        assert!(
            answer.status() == StatusCode::NOT_FOUND && !answer.headers().contains_key(header::SET_COOKIE),
            "{named}"
        );
    }
}
