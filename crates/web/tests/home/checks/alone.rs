//! A check by one person, and the signs to stop at.

use super::{next, planned, tap, three};
use crate::at_home::Home;

#[tokio::test]
async fn who_is_alone_has_one_page_and_one_next_thing_at_a_time() {
    let home = Home::new().await;
    let words = three(&home).await;
    for design in ["pick_for_word", "press_under_covers", "press_for_thing"] {
        let check = planned(&home, &words, &[("design", design), ("who", "one")]).await;
        home.page(&check)
            .await
            .says("You know the answer, so cues stay a possible explanation")
            .says(&format!("href=\"{check}/alone\""))
            .does_not_say("I set up")
            .does_not_say("I am with")
            .does_not_say("Two phones");
        let lay = home.page(&format!("{check}/alone")).await;
        let says = home.story().await.words()[&next(&home).await.unwrap().word].says.to_string();
        lay.says(&format!("the {says} thing")).says("Done. What did Pip do?").does_not_say("name=\"answer\"");
        assert_eq!(lay.text.matches("button primary").count(), 1, "{}", lay.text);
        // Then the answer, and the next one is laid out.
        let note = home.page(&format!("{check}/alone?laid=1")).await;
        note.says("name=\"answer\" value=\"1\"").says("Timed it? Say so first").does_not_say("Done. What did");
        let wrong = tap(&home, &check, 1, "1", &[("after_s", "soon")]).await;
        wrong.refused().says("soon").says("name=\"answer\"");
        let kept = tap(&home, &check, 1, "1", &[]).await;
        assert_eq!(kept.kept().to, format!("{check}/alone"));
        home.page(&kept.to).await.says("Trial 2 of").says("Undo").does_not_say("name=\"answer\"");
    }
    let two = planned(&home, &words, &[]).await;
    home.page(&two).await.says("I set up").says("I am with Pip").does_not_say("/alone\"");
    home.page(&format!("{two}/presenter")).await.says("Knew the answer?");
}

#[tokio::test]
async fn the_signs_to_stop_at_are_those_of_the_species() {
    let home = Home::new().await;
    let words = three(&home).await;
    let pages = [format!("/a/{}/checks/new", home.animal), format!("/a/{}/swaps", home.animal)];
    for (species, signs, others) in
        [("dog", "growl", "thumps"), ("cat", "tail tip flicks", "growl"), ("rabbit", "thumps", "paw")]
    {
        let card = [("name", "Pip"), ("species", species), ("active", "yes")];
        home.post(&format!("/people/animal/{}", home.animal), &card).await.kept();
        for page in &pages {
            home.page(page).await.says(signs).does_not_say(others);
        }
        let check = planned(&home, &words, &[]).await;
        for page in ["", "/sheet", "/scorer"] {
            home.page(&format!("{check}{page}")).await.says(signs).does_not_say(others);
        }
    }
}
