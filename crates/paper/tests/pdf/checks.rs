//! The sheets of a check.

use crate::sizes::frames;
use crate::{DEMO, animals, now, of_cell, read, texts, words};
use sayso_advisor::Case;
use sayso_model::{AnimalId, Event, EventId, Language, ProbeDesign, ProbeId, ProbePlan, Story, WordId};
use sayso_paper::{Block, Paper, Sheet, check_scorer, check_setter};
use sayso_wording::Locale;
use std::sync::LazyLock;

/// The demo, in which each animal has a check of two sittings planned.
static CHECKED: LazyLock<Story> = LazyLock::new(|| {
    let mut story = Story::clone(&DEMO);
    let pattern = DEMO.ledger().all().next().unwrap().clone();
    for (animal, design) in
        animals().into_iter().zip([ProbeDesign::PickForWord, ProbeDesign::PressUnderCovers].into_iter().cycle())
    {
        let n = uuid::Uuid::from_u128(animal.0.as_u128() ^ 1);
        let words: Vec<WordId> =
            DEMO.words_of(animal).into_iter().filter(|w| w.reward.is_some()).take(3).map(|w| w.word).collect();
        let choices = u16::try_from(words.len()).unwrap();
        let plan = ProbePlan { probe: ProbeId(n), design, words, choices, trials: 20, seed: 7, blind: true };
        story.add(Event {
            id: EventId(n),
            animal: Some(animal),
            happened_at: now(),
            recorded_at: now(),
            body: plan.into(),
            ..pattern.clone()
        });
    }
    story
});

/// The sheets of an animal's check.
pub fn of_check(animal: AnimalId, locale: Locale) -> [Sheet; 2] {
    let case = Case::new(&CHECKED, animal, now());
    [check_setter(&case, None, locale).unwrap(), check_scorer(&case, None, locale).unwrap()]
}

#[test]
fn a_check_of_two_sittings_fits_one_page_and_a_sitting_is_never_parted() {
    let mut longer = Vec::new();
    for (language, animal) in Language::ALL.into_iter().flat_map(|l| animals().into_iter().map(move |a| (l, a))) {
        for sheet in of_check(animal, Locale::of(language)) {
            for paper in Paper::ALL {
                let pages = read(&sheet, paper).get_pages().len();
                if pages != 1 {
                    longer.push(format!("{language:?}, {paper:?}, {}: {pages} pages", sheet.title));
                }
            }
        }
    }
    assert!(longer.is_empty(), "{longer:?}");
    // A long one begins a new page rather than a sitting's table on two.
    let [mut sheet, _] = of_check(animals()[0], Locale::ENGLISH);
    let sitting: Vec<Block> =
        sheet.blocks.iter().skip_while(|b| !matches!(b, Block::Heading(_))).take(3).cloned().collect();
    let [Block::Heading(title), Block::ToWrite(_), Block::Table(table)] = &sitting[..] else { panic!("{sitting:?}") };
    assert_eq!(table.rows.len(), 10);
    sheet.blocks = std::iter::repeat_n(sitting.clone(), 7).flatten().collect();
    let document = read(&sheet, Paper::A4);
    let pages: Vec<String> =
        document.get_pages().keys().map(|p| words(&document.extract_text(&[*p]).unwrap())).collect();
    assert!(pages.len() > 1, "{pages:?}");
    for page in &pages {
        let heads = page.matches(&words(title)).count();
        assert!(heads > 0 && page.matches(&words(&table.head[1])).count() == heads, "{page}");
        let last = of_cell(&table.rows[9].cells[2]).concat();
        assert!(page.matches(&words(&last)).count() >= heads, "{page}");
    }
}

#[test]
fn the_scorers_sheet_names_no_word_and_the_setters_marks_one_place_a_trial() {
    for animal in animals() {
        let [setters, scorers] = of_check(animal, Locale::ENGLISH);
        let told = texts(&scorers.blocks).join("\n");
        let case = Case::new(&CHECKED, animal, now());
        for word in case.story().words_of(animal).iter().filter(|w| w.reward.is_some()) {
            let says = word.says.as_str();
            assert!(!told.split(|c: char| !c.is_alphanumeric()).any(|part| part == says), "{says} is in\n{told}");
        }
        let rows =
            setters.blocks.iter().filter_map(|b| if let Block::Table(t) = b { Some(&t.rows) } else { None }).flatten();
        let marked: Vec<usize> = rows.map(|r| r.cells[2..].iter().filter(|c| c.strong).count()).collect();
        assert_eq!(marked, [1; 20]);
        let boxes = frames(&read(&scorers, Paper::A4)).iter().filter(|(w, h)| w < &6.0 && h < &6.0).count();
        let places = case.story().of::<ProbePlan>(animal).next().unwrap().part.choices;
        assert_eq!(boxes, 20 * (usize::from(places) + 2), "a place each, nothing, went away");
    }
    let unknown = Some(ProbeId(uuid::Uuid::nil()));
    assert!(
        check_setter(&Case::new(&CHECKED, animals()[0], now()), unknown, Locale::ENGLISH).is_none(),
        "no such check"
    );
}
