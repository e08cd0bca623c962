//! What a rehearsal says of an animal that was not there, was not well, or guards food, and of a word that fell.

use crate::at_home::Home;
use sayso_sim::rehearsal::{Act, Character, Does, Exercise, Thing, written};

/// A press of one word after the other every nine seconds, each thing soon after its press.
fn teaching(most_ms: u32) -> String {
    let one = |i: u32| {
        let (at_ms, thing) = (i * 9_000, Thing::ALL[i as usize % 3]);
        [Act { at_ms, does: Does::Show(thing) }, Act { at_ms: at_ms + 900, does: Does::Give(thing) }]
    };
    written(&(1..most_ms / 9_000).flat_map(one).collect::<Vec<_>>())
}

fn went(exercise: Exercise, character: Character, seed: u32, acts: &str) -> String {
    format!("/rehearse/{}/went?character={}&seed={seed}&acts={acts}", exercise.name(), character.name())
}

fn change(text: &str) -> &str {
    let (_, after) = text.split_once("data-change=\"").unwrap();
    after.split_once('"').unwrap().0
}

#[tokio::test]
async fn an_invitation_in_vain_and_a_word_that_fell_are_never_told_to_carry_on() {
    let home = Home::new().await;
    // A dog that came at last, invited five times, each time in vain; a parrot whose every press got something else.
    let absent = "/rehearse/inviting/went?character=old&seed=5&acts=o0.500_o0.6100_o0.11700_o0.17300_o0.22900";
    let absent = home.page(absent).await;
    assert_eq!(change(&absent.text), "after-wait");
    absent.says("The wait never ends in nothing.").does_not_say("Carry on");
    let instead = "/rehearse/evening/went?character=quick&seed=3&acts=i2.9100_i2.17100_i3.20100_i1.28700_i1.32600_i1.39400_i1.47500_i1.60700_i1.62400_i2.71700_i2.81600_i2.85500_i2.99400";
    let instead = home.page(instead).await;
    assert_ne!(change(&instead.text), "carry-on");
    instead.does_not_say("stood in the way of learning");
}

/// What would be done otherwise in life stands where one begins, and what a figure of answering means beside it.
#[tokio::test]
async fn cautions_stand_before_it_begins_and_a_gain_of_answering_says_what_it_means() {
    let home = Home::new().await;
    for exercise in Exercise::ALL {
        let of = |who| format!("/rehearse/{}?character={who}&seed=5", exercise.name());
        let guards = home.page(&of("guards")).await.text;
        let (before, _) = guards.split_once("data-test=\"start\"").unwrap();
        assert!(
            before.contains("data-test=\"care-guards\"") && before.contains("behaviour professional"),
            "{exercise:?}"
        );
        assert_eq!(before.contains("do not test likes with food"), exercise == Exercise::Likes);
        home.page(&of("eager")).await.does_not_say("care-guards");
    }
    let mut seen = 0;
    for seed in 0..30 {
        let page = home.page(&went(Exercise::Free, Character::Quick, seed, &teaching(60_000))).await;
        let Some((_, gain)) = page.text.split_once("data-test=\"gain\">") else { continue };
        let answers = page.text.contains("data-change=\"answer\"");
        assert_eq!(
            gain.trim_start().starts_with("Had the thing been given after each of the presses left without an answer"),
            answers,
            "{seed}"
        );
        seen += usize::from(answers);
    }
    assert!(seen > 0, "a parrot asks, and nobody answered");
    home.page("/rehearse").await.says("nobody has measured it");
}

/// Where nothing at the board can mend it, no figure says what teaching otherwise would have brought.
#[tokio::test]
async fn with_an_animal_that_is_not_well_the_one_thing_is_a_veterinarian() {
    let home = Home::new().await;
    let page = went(Exercise::Stuck, Character::Eager, 0, &teaching(170_000)) + "&named=health";
    let page = home.page(&page).await;
    page.says("data-cause=\"health\"").says("data-change=\"vet\"").says("ask a veterinarian. Lessons can wait.");
    page.does_not_say("data-test=\"gain\"");
}

/// Before the buttons arrive: what holds nothing of a home opens in an empty notebook, at the very address that was handed on.
#[tokio::test]
async fn in_an_empty_notebook_lessons_and_rehearsals_open_and_nothing_is_begun_by_it() {
    let home = Home::empty().await;
    home.page("/start").await.says("href=\"/learn\"").says("href=\"/rehearse\"");
    for path in ["/learn", "/learn/booklet", "/learn/showing", "/rehearse", "/methods/rehearsal", "/glossary"] {
        let page = home.page(path).await;
        page.says("href=\"/start\"").does_not_say("class=\"thumb\"").does_not_say("href=\"/who");
    }
    let handed = home.page("/rehearse/evening?character=quick&seed=8").await;
    handed.says("seed=8").says("character=quick").says("data-state=\"ready\"");
    home.page(&went(Exercise::Showing, Character::Eager, 7, &teaching(120_000))).await.says("data-test=\"truth\"");
    assert_eq!(home.state.store.home().await.unwrap(), None, "nothing is written by it");
    // What is of a home leads to where one begins.
    for path in ["/people", "/who", "/sheets"] {
        assert_eq!(home.get(path).await.kept().to, "/start", "{path}");
    }
}

/// What it likes is found out without a board, and nothing is taught by it.
#[tokio::test]
async fn a_likes_test_speaks_of_no_board_and_of_no_learning() {
    let home = Home::new().await;
    let at = "character=eager&seed=6";
    let acts: Vec<Act> = (0..12).map(|i| Act { at_ms: 5_000 + i * 12_000, does: Does::Two }).collect();
    let moments = home.page(&format!("/rehearse/likes/moments?{at}&acts={}", written(&acts))).await;
    moments.says("is in front of you").says("chooses and has it").does_not_say("board");
    let page = home.page(&went(Exercise::Likes, Character::Eager, 6, &written(&acts))).await;
    assert_eq!(change(&page.text), "carry-on");
    page.says("Each choice was left to ").does_not_say("in the way of learning");
    home.page(&format!("/rehearse/showing/moments?{at}&acts=")).await.says("is at the board");
}
