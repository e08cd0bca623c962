//! The page before a meeting.

use crate::{TALKED, animals, before_meeting, now, read, texts};
use sayso_advisor::Case;
use sayso_model::Language;
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
