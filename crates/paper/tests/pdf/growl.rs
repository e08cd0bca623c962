//! Room on paper for what concerns an animal's wellbeing.

use super::{DEMO, animals, now, read};
use sayso_advisor::Case;
use sayso_model::{Event, EventId, Language, Note, Sign, SignLevel, Story, When};
use sayso_paper::{Paper, progress};
use sayso_wording::Locale;

/// What stands in the open for weeks after a growl takes room on paper too.
#[test]
fn the_progress_fits_one_page_after_a_growl_in_every_language() {
    let mut story = Story::clone(&DEMO);
    let pattern = DEMO.ledger().all().next().unwrap().clone();
    for (n, animal) in (1_u128..).zip(animals()) {
        let growl =
            Sign { sign: Note::new("growl").unwrap(), level: SignLevel::Strong, when: When::During, session: None };
        let (id, at) = (EventId(uuid::Uuid::from_u128(n)), now().plus_seconds(-3.0 * 86_400.0));
        let event =
            Event { id, animal: Some(animal), happened_at: at, recorded_at: at, body: growl.into(), ..pattern.clone() };
        story.add(event);
    }
    let mut longer = Vec::new();
    for (language, animal) in Language::ALL.into_iter().flat_map(|l| animals().into_iter().map(move |a| (l, a))) {
        let sheet = progress(&Case::new(&story, animal, now()), Locale::of(language), 28, None).unwrap();
        for paper in Paper::ALL {
            let pages = read(&sheet, paper).get_pages().len();
            if pages != 1 {
                longer.push(format!("{language:?}, {paper:?}, {}: {pages} pages", sheet.title));
            }
        }
    }
    assert!(longer.is_empty(), "{longer:?}");
}
