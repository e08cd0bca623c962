//! The words in which a home is asked for consent, by their version.

use crate::locale::Locale;
use crate::say;
use sayso_model::ConsentPurpose;

/// What a home is asked, and how it ends, a paragraph each; none where there is no such version. `who` is the coach's or club's name.
#[must_use]
pub fn asked(locale: &Locale, purpose: ConsentPurpose, version: u16, who: &str) -> Option<Vec<String>> {
    let mut asked = match (purpose, version) {
        (ConsentPurpose::CoachFigures, 1) => vec![say!(locale, consent::coach_figures_1, who = who)],
        // Made more exact: cards, pictures, recordings, and who began a test, could be seen and were not named.
        (ConsentPurpose::CoachFigures, 2) => vec![say!(locale, consent::coach_figures_2, who = who)],
        // Coaches of one club read what the others wrote.
        (ConsentPurpose::CoachFigures, 3..=7) => vec![say!(locale, consent::coach_figures_3, who = who)],
        (ConsentPurpose::CoachLog, 1..=7) => vec![say!(locale, consent::coach_log_1, who = who)],
        (ConsentPurpose::CoachSnippets, 1..=7) => vec![say!(locale, consent::coach_snippets_1, who = who)],
        (ConsentPurpose::Norms, 1..=3) => vec![say!(locale, consent::norms_1)],
        (ConsentPurpose::Research, 1..=3) => vec![say!(locale, consent::research_1)],
        // Made more exact: field by field what leaves.
        (ConsentPurpose::Norms, 4) => vec![
            say!(locale, consent::norms_4),
            say!(locale, consent::norms_fields_4),
            say!(locale, consent::norms_not_4),
        ],
        // A field more: the hours of one press.
        (ConsentPurpose::Norms, 5) => vec![
            say!(locale, consent::norms_4),
            say!(locale, consent::norms_fields_5),
            say!(locale, consent::norms_not_5),
        ],
        // And how long the word stood in one stage.
        (ConsentPurpose::Norms, 6) => vec![
            say!(locale, consent::norms_4),
            say!(locale, consent::norms_fields_6),
            say!(locale, consent::norms_not_5),
        ],
        // And how often it was pressed in one week.
        (ConsentPurpose::Norms, 7) => vec![
            say!(locale, consent::norms_4),
            say!(locale, consent::norms_fields_7),
            say!(locale, consent::norms_not_5),
        ],
        (ConsentPurpose::Research, 4..=7) => vec![
            say!(locale, consent::research_4),
            say!(locale, consent::research_fields_4),
            say!(locale, consent::research_not_4),
        ],
        (_, _) => return None,
    };
    asked.push(say!(locale, consent::ends_1));
    Some(asked)
}
