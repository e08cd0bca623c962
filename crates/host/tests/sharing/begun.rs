//! A home that joined and consented before anything else was written in it: its coach reads that nothing is begun.

use crate::house::House;
use axum::http::StatusCode;
use sayso_model::Consent;

#[tokio::test(flavor = "multi_thread")]
async fn a_home_that_shares_and_has_no_animal_stands_on_the_desk_with_since_when() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let (home, keeper) = house.newcomer().await;
    assert!(house.get(&coach, "/desk").await.marked("not-begun-home").is_empty(), "it shares nothing");
    let form = format!("home={home}&purpose=coach_figures&club={club}&words={}", Consent::WORDS);
    let given = house.post(&keeper, "/sharing/consent", &form).await;
    assert_eq!(given.status, StatusCode::SEE_OTHER, "{}", given.body);
    let desk = house.get(&coach, "/desk").await;
    assert_eq!(desk.marked("not-begun-home").len(), 1, "{}", desk.body);
    assert!(desk.holds("Nothing begun since ") && desk.holds(&format!("/talk?home={home}")), "{}", desk.body);
    // It has no name: the coach's own mark is how it is found.
    let mark = format!("home={home}&mark=Lane+7&kind=&mark_shown=&find=&page=1");
    assert_eq!(house.post(&coach, "/desk/mark", &mark).await.status, StatusCode::SEE_OTHER);
    let shown = async |query: &str| house.get(&coach, &format!("/desk{query}")).await.marked("not-begun-home").len();
    assert_eq!((shown("?find=lane").await, shown("?kind=none").await), (1, 1));
    assert_eq!((shown("?find=oak").await, shown("?kind=safety").await), (0, 0));
    assert!(house.get(&coach, "/desk?find=oak").await.holds("data-test=\"none-found\""));
    // Another club's coach reads nothing of it, and neither does this one once it is taken back.
    let (_, _, stranger) = house.club_of_name("Hill+Club").await;
    assert!(house.get(&stranger, "/desk").await.marked("not-begun-home").is_empty());
    house.post(&keeper, "/sharing/consent/back", &form).await;
    assert_eq!(shown("").await, 0);
}
