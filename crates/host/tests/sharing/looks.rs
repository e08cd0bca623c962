//! Who looked: once for a while that somebody looks, told to the home's keepers, also of somebody who has erased the account since.

use crate::house::{Has, House};
use axum::http::StatusCode;

#[tokio::test(flavor = "multi_thread")]
async fn looks_of_somebody_who_erased_the_account_stay_without_a_name() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let sitter = house.joined(Has::Sitter, "Wren").await;
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(house.get(&coach, &house.about("evidence")).await.status, StatusCode::OK);
    assert_eq!(house.get(&sitter, &house.about("today")).await.status, StatusCode::OK);
    let before = house.get(&house.keeper, "/sharing").await;
    assert!(before.marked("look").iter().any(|look| look.contains("Brook, Evidence, 1 time")), "{}", before.body);
    for who in [&coach, &sitter] {
        // It is said before.
        let page = house.get(who, "/account/erase").await;
        assert!(page.holds("that somebody looked") && page.holds("400 days"), "{}", page.body);
        assert_eq!(house.post(who, "/account/erase", "").await.status, StatusCode::OK);
    }
    let after = house.get(&house.keeper, "/sharing").await;
    let looks = after.marked("look");
    assert!(!after.holds("Brook") && !after.holds("Wren, "), "no name: {looks:?}");
    for left in ["somebody who has left (coach): Evidence, 1 time", "somebody who has left (sitter): Today, 1 time"] {
        assert!(looks.contains(&left), "{left}: {looks:?}");
    }
    assert_eq!(house.count("SELECT count(*) FROM people.look WHERE home = $1").await, 0, "nor an account");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_board_that_lies_open_is_one_look() {
    let house = House::new().await;
    let sitter = house.joined(Has::Sitter, "Wren").await;
    assert_eq!(house.get(&sitter, &house.about("board")).await.status, StatusCode::OK);
    // What its page asks by itself, and its worker once more.
    for _ in 0..4 {
        let asked = house.get(&sitter, &format!("/api/board/{}", house.animal)).await;
        assert_eq!(asked.status, StatusCode::OK, "{}", asked.body);
    }
    assert_eq!(house.get(&sitter, &house.about("board")).await.status, StatusCode::OK);
    let told = house.get(&house.keeper, "/sharing").await;
    let looks = told.marked("look");
    assert!(looks.iter().any(|look| look.contains("Wren, the Board, 1 time")), "{looks:?}");
    assert_eq!(looks.len(), 1, "{looks:?}");
}
