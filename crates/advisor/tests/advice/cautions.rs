//! What is said where it can hurt someone, and what to check first when nothing moves.

use sayso_advisor::Case;
use sayso_advisor::steps::steps;
use sayso_advisor::stuck::{Bearing, Cause, differential};
use sayso_advisor::{Act, Because};
use sayso_model::{ClipCard, ClipId, Event, EventId, Moment, Seconds, Story, WordId};
use sayso_sim::{Cause as Trouble, simulate, stuck_home};
use uuid::Uuid;

fn now() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

fn home() -> (Story, sayso_model::AnimalId, WordId) {
    let run = simulate(&stuck_home(Trouble::DelayTooLong, 7), 7, now()).unwrap();
    let story = Story::from_events(run.events);
    (story, run.truth.ids.animals[0], run.truth.ids.words[2])
}

fn clip(story: &Story, word: WordId, number: u128, seconds: f64, lufs: f64) -> Event {
    let pattern = story.ledger().all().next().unwrap().clone();
    let card = ClipCard {
        clip: ClipId(Uuid::from_u128(number)),
        word,
        sha256: format!("{number:064x}"),
        seconds: Seconds::clamped(seconds),
        lufs: Some(lufs),
        active: true,
    };
    Event {
        id: EventId(Uuid::from_u128(1000 + number)),
        animal: None,
        happened_at: now(),
        body: card.into(),
        ..pattern
    }
}

#[test]
fn whether_a_stuck_word_can_be_made_out_is_told_first_or_next_to_the_best_supported_cause() {
    let (story, animal, word) = home();
    let steps = steps(&Case::new(&story, animal, now()));
    let stuck: Vec<_> = steps.iter().filter(|s| s.stuck).collect();
    assert!(!stuck.is_empty());
    for one in stuck {
        let causes = std::iter::once(&one.advice).chain(&one.also).filter_map(|a| match a.act {
            Act::Mend { cause, .. } => Some(cause),
            _ => None,
        });
        assert!(causes.take(2).any(|c| c == Cause::HardToMakeOut), "{one:#?}");
    }
    let unknown = |story: &Story| {
        let all = differential(&Case::new(story, animal, now()), word);
        all.into_iter().find(|w| w.bearing == Bearing::Unknown).unwrap()
    };
    let without = unknown(&story);
    assert_eq!(without.cause, Cause::HardToMakeOut, "first of those the records say nothing of");
    assert_eq!(without.evidence, [Because::NoRecordingChecked]);
    let mut checked = story.clone();
    checked.add(clip(&story, word, 1, 0.8, -23.0));
    let with = unknown(&checked);
    assert_eq!(with.cause, Cause::HardToMakeOut, "a checked recording is no proof that an animal makes it out");
    assert_eq!(with.evidence, [Because::Recording { seconds: 0.8, short: false, quiet: false }]);
}

#[test]
fn a_recording_plainly_too_short_or_too_quiet_points_to_it() {
    let (story, animal, word) = home();
    let other = story.words_of(animal).iter().map(|w| w.word).find(|w| *w != word).unwrap();
    for (seconds, lufs, bearing) in
        [(0.8, -25.0, Bearing::Unknown), (0.2, -23.0, Bearing::Perhaps), (0.8, -40.0, Bearing::Perhaps)]
    {
        let mut story = story.clone();
        story.add(clip(&story, other, 1, 0.8, -23.0));
        story.add(clip(&story, word, 2, seconds, lufs));
        let all = differential(&Case::new(&story, animal, now()), word);
        let found = all.iter().find(|w| w.cause == Cause::HardToMakeOut).unwrap();
        assert_eq!(found.bearing, bearing, "{seconds} s, {lufs} LUFS: {:?}", found.evidence);
    }
}

#[test]
fn a_child_is_named_on_every_page_that_names_a_battery() {
    for page in [include_str!("../../../../README.md"), include_str!("../../../../docs/hearing.md")] {
        assert!(page.contains("emergency") && page.contains("child"), "a page names batteries and no child");
    }
}

#[test]
fn the_front_page_tells_hearing_by_species() {
    let page = include_str!("../../../../README.md");
    assert!(!page.contains("animals hear more than we do"), "parrots hear less than people");
    assert!(page.contains("Parrots hear less"));
}
