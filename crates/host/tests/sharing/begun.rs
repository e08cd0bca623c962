//! A home that joined and consented before anything else was written in it: its coach reads that nothing is begun.

use crate::house::{House, event, label};
use axum::http::StatusCode;
use sayso_model::{AnimalCard, Consent, Event, EventId, Kind, Species, WordCard, WordId, Zone};

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

#[tokio::test(flavor = "multi_thread")]
async fn what_a_home_with_nothing_begun_answers_is_told_on_the_desk() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let (home, keeper) = house.newcomer_who_shares(club).await;
    let asks = format!("home={home}&what=question&animal=&about=&text=When+do+you+begin%3F");
    assert_eq!(house.post(&coach, "/talk/write", &asks).await.status, StatusCode::SEE_OTHER);
    assert!(!house.get(&coach, "/desk").await.holds("data-test=\"answered\""), "nobody answered yet");
    let story = house.host.server.home(home).story(home).await.unwrap();
    let question = story.as_recorded(Kind::Proposal).next().unwrap().id;
    let no = format!("to={question}&reply=declined&text=Not+before+January.");
    let told = house.post(&keeper, "/talk/answer", &no).await;
    assert_eq!(told.status, StatusCode::SEE_OTHER, "{}", told.body);
    let desk = house.get(&coach, "/desk").await;
    assert!(desk.marked("answered")[0].contains("1 home answered"), "{}", desk.body);
    let answers = house.get(&coach, "/desk?kind=answers").await;
    assert_eq!(answers.marked("not-begun-home").len(), 1, "{}", answers.body);
    assert!(answers.holds(&format!("/talk?home={home}#t-{question}")) && !answers.holds("data-test=\"none\""));
    let week = house.get(&coach, "/desk/week").await;
    assert_eq!((week.marked("news-of-home").len(), week.marked("no-news").len()), (1, 0), "{}", week.body);
    assert!(week.holds(&format!("/talk?home={home}#t-{question}")), "{}", week.body);
    // Once the coach has looked at it, it is not told again.
    house.get(&coach, &format!("/talk?home={home}")).await;
    assert!(!house.get(&coach, "/desk").await.holds("data-test=\"answered\""));
    assert!(house.get(&coach, "/desk/week").await.marked("news-of-home").is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn what_a_home_whose_animals_are_put_away_answers_is_told_without_a_word_of_nothing_begun() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    house.shares_figures(club).await;
    let asks = format!("home={}&what=question&animal=&about=&text=How+is+Tarn%3F", house.home);
    assert_eq!(house.post(&coach, "/talk/write", &asks).await.status, StatusCode::SEE_OTHER);
    let (now, home) = (house.host.now(), house.host.server.home(house.home));
    let word = WordId(uuid::Uuid::now_v7());
    let ball = Event { animal: Some(house.animal), ..event(house.home, WordCard::new(word, label("ball"))) };
    home.append(vec![ball]).await.unwrap();
    let last = now.day(&Zone::utc()).plus(6);
    let plan = format!(
        "home={}&what=plan&animal={}&word_1={word}&way_1=show&minutes_1=3&times_1=3&last_day={last}&text=",
        house.home, house.animal
    );
    let planned = house.post(&coach, "/talk/write", &plan).await;
    assert_eq!(planned.status, StatusCode::SEE_OTHER, "{}", planned.body);
    let away = AnimalCard { active: false, ..AnimalCard::new(house.animal, label("Tarn"), Species::Dog) };
    let away = Event { animal: Some(house.animal), happened_at: now, recorded_at: now, ..event(house.home, away) };
    home.append(vec![away]).await.unwrap();
    let shown = async |query: &str| house.get(&coach, &format!("/desk{query}")).await.marked("put-away-home").len();
    assert_eq!((shown("").await, shown("?find=birch").await), (0, 1), "it needs nobody, and is found");
    assert_eq!((shown("?find=oak").await, shown("?kind=safety&find=birch").await), (0, 0));
    let story = home.story(house.home).await.unwrap();
    let written: Vec<EventId> = story.as_recorded(Kind::Proposal).map(|event| event.id).collect();
    for of in &written {
        let no = format!("to={of}&reply=declined&text=Tarn+lives+elsewhere+now.");
        assert_eq!(house.post(&house.keeper, "/talk/answer", &no).await.status, StatusCode::SEE_OTHER);
    }
    let question = written[0];
    let desk = house.get(&coach, "/desk").await;
    assert!(desk.marked("answered")[0].contains("1 home answered"), "{}", desk.body);
    let week = house.get(&coach, "/desk/week").await;
    let answers = house.get(&coach, "/desk?kind=answers").await;
    for (page, card) in [(&desk, "put-away-home"), (&answers, "put-away-home"), (&week, "news-of-home")] {
        assert_eq!(page.marked(card).len(), 1, "{}", page.body);
        assert!(page.holds(&format!("/talk?home={}#t-{question}", house.home)), "{}", page.body);
        assert!(!page.holds("Nothing begun") && !page.holds("data-test=\"none-found\""), "{}", page.body);
        assert!(page.holds("“ball”") && !page.holds("a word without a card"), "{}", page.body);
    }
    house.get(&coach, &format!("/talk?home={}", house.home)).await;
    assert_eq!((shown("").await, shown("?find=birch").await), (0, 1), "once looked at it is not told again");
    assert!(house.get(&coach, "/desk/week").await.marked("news-of-home").is_empty());
}
