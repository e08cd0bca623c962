//! The words in which a home is asked for consent, by their version.

use crate::locale::Locale;
use crate::say;
use sayso_model::ConsentPurpose;

/// What a home is asked, and how it ends; none where there is no such version. `who` is the coach's or club's name.
#[must_use]
pub fn asked(locale: &Locale, purpose: ConsentPurpose, version: u16, who: &str) -> Option<[String; 2]> {
    let asked = match (purpose, version) {
        (ConsentPurpose::CoachFigures, 1) => say!(locale, consent::coach_figures_1, who = who),
        // Made more exact: cards, pictures, recordings, and who began a test, could be seen and were not named.
        (ConsentPurpose::CoachFigures, 2) => say!(locale, consent::coach_figures_2, who = who),
        // Coaches of one club read what the others wrote.
        (ConsentPurpose::CoachFigures, 3) => say!(locale, consent::coach_figures_3, who = who),
        (ConsentPurpose::CoachLog, 1..=3) => say!(locale, consent::coach_log_1, who = who),
        (ConsentPurpose::CoachSnippets, 1..=3) => say!(locale, consent::coach_snippets_1, who = who),
        (ConsentPurpose::Norms, 1..=3) => say!(locale, consent::norms_1),
        (ConsentPurpose::Research, 1..=3) => say!(locale, consent::research_1),
        (_, _) => return None,
    };
    Some([asked, say!(locale, consent::ends_1)])
}
