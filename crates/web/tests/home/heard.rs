//! Heard presses, judged one tap each.

use crate::at_home::Home;
use sayso_model::{Body, Event, EventId, Press, PressedBy, Source, WordCard};

/// Heard presses of one word with these certainties, seconds apart.
async fn heard(home: &Home, certainties: &[f64]) -> Vec<EventId> {
    home.post(&format!("/a/{}/words/new", home.animal), &[("says", "ball")]).await.kept();
    let story = home.story().await;
    let card: Event = story.unassigned::<WordCard>().next().unwrap().event.clone();
    let word = *story.words().keys().next().unwrap();
    let mut ids = Vec::new();
    for (i, certainty) in certainties.iter().enumerate() {
        let body: Body = serde_json::from_value(serde_json::json!({
            "kind": "press", "word": word, "by": "unknown", "certainty": certainty
        }))
        .unwrap();
        let id = EventId(uuid::Uuid::now_v7());
        let happened_at = card.happened_at.plus_seconds(-60.0 * (i as f64 + 1.0));
        let event = Event { id, happened_at, source: Source::Heard, body, ..card.clone() };
        home.state.store.append(vec![event]).await.unwrap();
        ids.push(id);
    }
    ids
}

async fn presses(home: &Home) -> Vec<Press> {
    home.story().await.everyones::<Press>().map(|f| f.part.clone()).collect()
}

#[tokio::test]
async fn each_answer_is_kept_and_the_press_waits_no_longer() {
    let home = Home::new().await;
    let ids = heard(&home, &[0.5, 0.6, 0.7, 0.95]).await;
    let page = format!("/a/{}/heard", home.animal);
    home.page(&page)
        .await
        .says("Did it sound? (<span data-n>3</span>)")
        .says("Who pressed? (<span data-n>1</span>)")
        .says("50%");
    for (id, was) in ids.iter().zip(["no", "yes", "animal", "person"]) {
        home.post(&format!("{page}/{id}"), &[("was", was)]).await.kept();
    }
    home.page(&page).await.says("Nothing waits here.");
    let all = presses(&home).await;
    assert_eq!(all.len(), 3, "one was taken back");
    assert!(all.iter().all(|p| p.certainty.get() == 1.0));
    for by in [PressedBy::Unknown, PressedBy::Animal, PressedBy::Person] {
        assert_eq!(all.iter().filter(|p| p.by == by).count(), 1);
    }
    let story = home.story().await;
    assert_eq!(story.of::<Press>(home.animal).count(), 2, "pressed or shown at this animal's board");
}

#[tokio::test]
async fn odd_answers_change_nothing() {
    let home = Home::new().await;
    let ids = heard(&home, &[0.5]).await;
    let page = format!("/a/{}/heard", home.animal);
    home.post(&format!("{page}/{}", ids[0]), &[("was", "cat")]).await.refused();
    home.post(&format!("{page}/{}", uuid::Uuid::now_v7()), &[("was", "yes")]).await.says("No such press");
    home.post(&format!("{page}/{}", ids[0]), &[("was", "yes")]).await.kept();
    home.post(&format!("{page}/{}", ids[0]), &[("was", "no")]).await.says("No such press");
    assert_eq!(presses(&home).await.len(), 1);
}

#[tokio::test]
async fn a_press_of_a_word_taught_to_another_animal_is_not_offered_to_this_one() {
    let home = Home::new().await;
    let ids = heard(&home, &[0.95]).await;
    let page = format!("/a/{}/heard", home.animal);
    home.page(&page).await.says("Who pressed?");
    home.post("/people/animal/new", &[("name", "Moss"), ("species", "cat")]).await.kept();
    let story = home.story().await;
    let (word, other) =
        (*story.words().keys().next().unwrap(), *story.animals().keys().find(|a| **a != home.animal).unwrap());
    let card = [("says", "ball"), ("active", "yes"), ("animals", &other.to_string())];
    home.post(&format!("/a/{}/words/card/{word}", home.animal), &card).await.kept();
    home.page(&page).await.says("Nothing waits here.");
    home.post(&format!("{page}/{}", ids[0]), &[("was", "animal")]).await.says("No such press");
    home.page(&format!("/a/{other}/heard")).await.says("Who pressed?");
}
