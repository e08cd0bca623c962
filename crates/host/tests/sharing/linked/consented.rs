//! A notebook is linked to a home in which somebody consented first.

use super::book::{Book, Served, code};
use crate::house::House;
use axum::http::StatusCode;
use sayso_linked::{LinkError, Turned};
use sayso_model::Consent;

#[tokio::test(flavor = "multi_thread")]
async fn a_home_that_holds_consents_alone_is_empty_and_they_stay_in_force() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let (served, here) = (Served::start(&house, 0).await, house.newcomer().await);
    let (home, keeper) = here.clone();
    let form = format!("home={home}&purpose=coach_figures&club={club}&words={}", Consent::WORDS);
    let given = house.post(&keeper, "/sharing/consent", &form).await;
    assert_eq!(given.status, StatusCode::SEE_OTHER, "{}", given.body);
    // A coach's first words to the home are no record of an animal.
    let asks = format!("home={home}&what=question&text=Shall+we+begin%3F");
    let written = house.post(&coach, "/talk/write", &asks).await;
    assert_eq!(written.status, StatusCode::SEE_OTHER, "{}", written.body);
    let ask = house.get(&keeper, "/sharing/notebooks/new").await;
    assert!(ask.status == StatusCode::OK && !ask.holds("holds-records"), "{}", ask.body);
    let book = Book::lived(1, 23).await;
    book.linked(&house, &served, &here).await;
    // Before it has sent anything, the home is no other notebook's either.
    let third = Book::lived(1, 31).await;
    let refused = third.link(&served, code(&house, &keeper, home).await).await;
    assert!(matches!(refused, Err(LinkError::OtherHome)), "{refused:?}");
    assert_eq!(book.turn().await.unwrap(), Turned::Agreed);
    let desk = house.get(&coach, "/desk?kind=none").await;
    assert!(desk.marked("not-begun-home").is_empty() && !desk.holds("of 0 animals"), "{}", desk.body);
    // Taken back on the server, it ends there as ever.
    house.post(&keeper, "/sharing/consent/back", &form).await;
    assert!(house.get(&coach, "/desk").await.holds("No home shares anything with you"));
    // A home that holds more says so before a code is made, and takes no other notebook.
    let ask = house.get(&keeper, "/sharing/notebooks/new").await;
    assert!(ask.holds("data-test=\"holds-records\""), "{}", ask.body);
    let other = Book::lived(1, 29).await;
    let refused = other.link(&served, code(&house, &keeper, home).await).await;
    assert!(matches!(refused, Err(LinkError::OtherHome)), "{refused:?}");
}
