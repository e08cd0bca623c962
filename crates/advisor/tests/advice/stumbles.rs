//! A press that looked like a stumble is answered as any other and says nothing of understanding.

use sayso_advisor::Case;
use sayso_advisor::days::days;
use sayso_advisor::evidence::evidence;
use sayso_advisor::lately::{Lately, lately};
use sayso_advisor::meeting::{New, meeting};
use sayso_advisor::stages::standings;
use sayso_advisor::summary::summaries;
use sayso_model::{Accident, AnimalId, Body, Day, Event, Kind, Moment, Press, PressedBy, Story, WordId};
use std::collections::BTreeMap;

fn now() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

/// The demo without corrections, with what own presses looked like written over what was noted.
fn demo(looked: impl Fn(&Event, &Press) -> Accident) -> Story {
    let noted = sayso_sim::demo(7, now()).events.into_iter().filter(|e| e.body.kind() != Kind::Correction);
    let rewritten = noted.map(|mut event| {
        if let Body::Press(press) = &event.body
            && press.by == PressedBy::Animal
        {
            let accident = looked(&event, press);
            event.body = Press { accident, ..press.clone() }.into();
        }
        event
    });
    Story::from_events(rewritten)
}

fn most_words(story: &Story) -> AnimalId {
    *story.animals().keys().max_by_key(|l| story.words_of(**l).len()).unwrap()
}

/// The words whose first press is told on Today, and in a meeting.
fn firsts(story: &Story, animal: AnimalId) -> (Vec<WordId>, Vec<WordId>) {
    let case = Case::new(story, animal, now());
    let of_today = |fact| match fact {
        Lately::FirstPress { word, .. } => Some(word.word),
        _ => None,
    };
    let of_meeting = |new| match new {
        New::FirstPress { word, .. } => Some(word.word),
        _ => None,
    };
    let told = lately(&case).into_iter().filter_map(of_today).collect();
    let met = meeting(&case, now().day(case.zone()).plus(-6)).news.into_iter().filter_map(of_meeting).collect();
    (told, met)
}

#[test]
fn where_every_own_press_was_a_stumble_nothing_is_said_of_pressing_alone() {
    let week: Moment = "2026-11-20T00:00:00Z".parse().unwrap();
    // The home as it would be had the animal begun to press this week.
    let young = |accident| {
        let story =
            demo(|event, press| if event.happened_at < week { Accident::Likely } else { accident_of(accident, press) });
        let animal = most_words(&story);
        (story, animal)
    };
    let (meant, animal) = young(None);
    assert!(!firsts(&meant, animal).0.is_empty(), "nothing to tell would make this pass");
    assert_eq!(firsts(&meant, animal).0, firsts(&meant, animal).1);
    let (stumbled, animal) = young(Some(Accident::Likely));
    assert_eq!(firsts(&stumbled, animal), (Vec::new(), Vec::new()));
    let case = Case::new(&stumbled, animal, now());
    let mut left_out = 0;
    for standing in standings(&case) {
        let found = evidence(&case, standing.word).unwrap();
        assert_eq!((standing.own_presses, found.presses_by_day.len()), (0, 0), "{standing:?}");
        assert!(found.left_out >= standing.stumbles);
        left_out += standing.stumbles;
    }
    assert!(left_out > 10, "{left_out}");
    assert!(days(&case, 28).days.iter().all(|d| d.all_presses() == 0));
    let answers = days(&case, 28).answers;
    assert!(answers.given + answers.partly + answers.declined > 10, "each was answered all the same");
}

fn accident_of(over: Option<Accident>, press: &Press) -> Accident {
    over.unwrap_or(press.accident)
}

#[test]
fn every_figure_of_own_presses_counts_those_that_are_meant_and_tells_the_rest() {
    let story = Story::from_events(sayso_sim::demo(7, now()).events);
    let (mut meant, mut out) = (0, 0);
    for animal in story.animals().into_keys() {
        let case = Case::new(&story, animal, now());
        let from = case.since(28);
        // Counted here by hand, not by the function that the figures share.
        let mut by_hand: BTreeMap<(WordId, bool), usize> = BTreeMap::new();
        let mut by_day: BTreeMap<Day, usize> = BTreeMap::new();
        for press in story.between::<Press>(animal, from, now()).filter(|p| p.part.by == PressedBy::Animal) {
            let stumbled = press.part.accident == Accident::Likely;
            *by_hand.entry((press.part.word, stumbled)).or_default() += 1;
            if !stumbled {
                *by_day.entry(press.at().day(case.zone())).or_default() += 1;
            }
        }
        for standing in standings(&case) {
            let of = |stumbled| by_hand.get(&(standing.word, stumbled)).copied().unwrap_or(0);
            assert_eq!((standing.own_presses, standing.stumbles), (of(false), of(true)), "{}", standing.says);
            meant += of(false);
            out += of(true);
            let first = day_of_first(&story, animal, standing.word, &case);
            assert_eq!(evidence(&case, standing.word).unwrap().presses_by_day.keys().next().copied(), first);
        }
        for row in days(&case, 28).days {
            assert_eq!(row.all_presses(), by_day.get(&row.day).copied().unwrap_or(0), "{:?}", row.day);
        }
        assert!(!summaries(&story, animal, now()).is_empty() || standings(&case).is_empty());
    }
    assert!(meant > 50 && out > 3, "{meant} {out}");
}

fn day_of_first(story: &Story, animal: AnimalId, word: WordId, case: &Case<'_>) -> Option<Day> {
    let ever = Moment::clamped(0);
    let mut own = story
        .between::<Press>(animal, ever, now())
        .filter(|p| p.part.word == word && p.part.by == PressedBy::Animal && p.part.accident != Accident::Likely);
    own.next().map(|p| p.at().day(case.zone()))
}
