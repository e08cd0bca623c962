//! Whoever has no home begins at what they keep, or is told why there is none; pages that hold nothing of a home are open.

use crate::house::{Has, House, Signed, asked};
use axum::http::StatusCode;

#[tokio::test(flavor = "multi_thread")]
async fn who_keeps_a_server_or_a_club_begins_at_it() {
    let house = House::new().await;
    let (club, club_keeper, coach) = house.club().await;
    for (who, test, href, title) in [
        (&house.server, "to-server", "/server".to_owned(), "You keep this server"),
        (&club_keeper, "to-club", format!("/club/{club}"), "Your clubs"),
    ] {
        assert_eq!(house.get(who, "/").await.to(), "/homes");
        let page = house.get(who, "/homes").await;
        assert_eq!(page.marked(test).len(), 1, "{}", page.body);
        assert!(page.holds(&format!("href=\"{href}\"")) && page.holds(title) && !page.holds("No home yet"));
    }
    // A coach whose homes have all gone reads why that may be.
    for path in ["/homes", "/desk"] {
        let page = house.get(&coach, path).await;
        assert!(page.holds("No home shares anything with you at this moment"), "{path}: {}", page.body);
        assert_eq!(page.marked("restored").len(), 0);
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn lessons_glossary_and_methods_are_open_to_whoever_has_no_home() {
    let house = House::new().await;
    let (_, club_keeper, _) = house.club().await;
    let all = [
        "/glossary",
        "/methods",
        "/methods/likes",
        "/learn",
        "/learn/booklet",
        "/learn/booklet.pdf",
        "/learn/showing",
        "/rehearse",
    ];
    for who in [&house.server, &club_keeper] {
        for path in all {
            let page = house.get(who, path).await;
            assert_eq!(page.status, StatusCode::OK, "{path}: {}", page.body);
            for of_home in ["Birch House", "Tarn", "Mora"] {
                assert!(!page.holds(of_home), "{path}: {of_home}");
            }
        }
        // Nothing is written by it, and what is of a home stays closed.
        let mark = house.post(who, "/learn/showing", "read=yes").await;
        assert_eq!(mark.to(), "/homes", "{}", mark.body);
        for path in ["/people", "/a/x/today", "/start", "/who"] {
            assert_eq!(house.get(who, path).await.to(), "/homes", "{path}");
        }
    }
    let nobody = asked(&house.app, None, "GET", "/learn", None).await;
    assert_eq!(nobody.to(), "/sign-in?to=/learn");
}

#[tokio::test(flavor = "multi_thread")]
async fn programs_are_told_that_there_is_no_home() {
    let house = House::new().await;
    for path in ["/api/events", "/api/export.csv"] {
        let told = house.get(&house.server, path).await;
        assert_eq!(told.status, StatusCode::FORBIDDEN);
        let json: serde_json::Value = serde_json::from_str(&told.body).unwrap();
        assert!(json["error"].as_str().unwrap().contains("no home"), "{}", told.body);
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn who_helps_out_is_not_asked_to_fill_in_cards() {
    let house = House::new().await;
    let sitter = house.joined(Has::Sitter, "Wren").await;
    let today = async |who: &Signed| house.get(who, &house.about("today")).await;
    let page = today(&sitter).await;
    assert_eq!((page.status, page.marked("ask-keeper").len()), (StatusCode::OK, 1), "{}", page.body);
    let main = page.body.split("<main").nth(1).unwrap();
    for theirs in ["/people/animal/", "/ideas", "/words", "Weigh", "weigh"] {
        assert!(!main.contains(theirs), "{theirs}: {main}");
    }
    assert_eq!(page.marked("ask-food").len(), 1, "food is not given by guess");
    let page = today(&house.keeper).await;
    assert!(page.holds("/people/animal/") && page.marked("ask-keeper").is_empty(), "{}", page.body);
}
