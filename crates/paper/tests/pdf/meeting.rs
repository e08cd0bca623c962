//! The page before a meeting.

use crate::{DEMO, TALKED, animals, before_meeting, now, read, texts};
use sayso_advisor::Case;
use sayso_model::talks::talks;
use sayso_model::{
    Body, Event, EventId, Label, Language, OwnPlan, PlanLine, PlanWay, Stage, StageChoice, Story, WordCard, WordId,
};
use sayso_paper::{Paper, meeting};
use sayso_wording::Locale;

#[test]
fn the_page_before_a_meeting_is_one_page_however_much_was_said() {
    let mut longer = Vec::new();
    for (language, animal) in Language::ALL.into_iter().flat_map(|l| animals().into_iter().map(move |a| (l, a))) {
        let pages = read(&before_meeting(animal, Locale::of(language)), Paper::A4).get_pages().len();
        if pages != 1 {
            longer.push(format!("{language:?}, {animal}: {pages} pages"));
        }
    }
    assert!(longer.is_empty(), "{longer:?}");
}

#[test]
fn the_page_before_a_meeting_tells_what_was_agreed_to_those_who_may_know() {
    let animal = animals()[0];
    let told = texts(&before_meeting(animal, Locale::ENGLISH).blocks).join("\n");
    for said in
        ["What was agreed", "From Brook, agreed on", "own plan of", "was shown on", "Open questions", "Does it roll"]
    {
        assert!(told.contains(said), "{said} is not in\n{told}");
    }
    // What the home said stands there, newest first: a "no" with its words, and its question.
    let (no, asked) = (told.find("Not this week: we are away"), told.find("Shall we close it for a week"));
    assert!(no.is_some() && no < asked && told.contains("The home said no on"), "{told}");
    assert_eq!(told.matches("agreed on").count() + told.matches("own plan of").count(), 3, "the rest is counted");
    assert!(told.contains("1 more, not on this page.") && !told.contains("0 more"), "{told}");
    let case = Case::new(&TALKED, animal, now());
    let untold = texts(&meeting(&case, Locale::ENGLISH, None, None).unwrap().blocks).join("\n");
    assert!(!untold.contains("Brook") && !untold.contains("What was agreed"), "{untold}");
    // Since a chosen day, if it is one of the last twelve weeks.
    let today = now().day(case.zone());
    let since = |day| texts(&meeting(&case, Locale::ENGLISH, Some(day), None).unwrap().blocks).join("\n");
    assert!(since(today.plus(-30)).contains("The 31 days before"));
    assert_eq!(since(today.plus(1)), untold);
    assert_eq!(since(today.plus(-84)), untold);
}

#[test]
fn beside_a_line_that_waits_for_its_words_step_the_page_says_what_comes_first() {
    let (animal, word) = (animals()[0], WordId(uuid::Uuid::from_u128(7)));
    // A word that is to be invited and was never shown: its step goes back to showing.
    let known = DEMO.words_of(animal).into_iter().find(|card| !card.closing).unwrap();
    let told = |way: PlanWay| {
        let mut story = Story::clone(&DEMO);
        let pattern = DEMO.ledger().all().next().unwrap().clone();
        let last_day = now().day(&DEMO.zone()).plus(2);
        let line = PlanLine { word, way: Some(way), minutes: 3, times: 3 };
        let bodies: [Body; 3] = [
            WordCard { word, says: Label::new("hammock").unwrap(), ..known.clone() }.into(),
            StageChoice { word, stage: Stage::Invite, because: None }.into(),
            OwnPlan { lines: vec![line], last_day }.into(),
        ];
        for (n, body) in (1..).zip(bodies) {
            let (id, at) = (EventId(uuid::Uuid::from_u128(n)), now().plus_seconds(-86_400.0 + n as f64));
            story.add(Event { id, animal: Some(animal), happened_at: at, recorded_at: at, body, ..pattern.clone() });
        }
        let case = Case::new(&story, animal, now());
        texts(&meeting(&case, Locale::ENGLISH, None, Some(&talks(&story, now()))).unwrap().blocks).join("\n")
    };
    let (waits, goes) = (told(PlanWay::AskAndPoint), told(PlanWay::Show));
    assert!(waits.contains("“hammock”: Today says:") && waits.contains("the plan waits for it"), "{waits}");
    assert!(goes.contains("hammock") && !goes.contains("the plan waits for it"), "{goes}");
}
