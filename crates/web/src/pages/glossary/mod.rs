//! What the words on the pages mean.

use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::state::AppState;
use axum::Router;
use axum::routing::get;
use maud::{Markup, html};
use sayso_model::facts::practice;
use sayso_wording::practice::habit;
use sayso_wording::{Locale, say};

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/glossary", get(show))
}

/// Every term with its meaning, in the order of the work; `docs/glossary.md` says where the code has them.
#[must_use]
pub fn terms(l: &Locale) -> Vec<(String, String)> {
    vec![
        (say!(l, glossary::animal), say!(l, glossary::animal_means)),
        (say!(l, glossary::person), say!(l, glossary::person_means)),
        (say!(l, glossary::home), say!(l, glossary::home_means)),
        (say!(l, glossary::word), say!(l, glossary::word_means)),
        (say!(l, glossary::recording), say!(l, glossary::recording_means)),
        (say!(l, glossary::board), say!(l, glossary::board_means)),
        (say!(l, glossary::press), say!(l, glossary::press_means)),
        (say!(l, glossary::brush), say!(l, glossary::brush_means)),
        (say!(l, glossary::showing), say!(l, glossary::showing_means)),
        (say!(l, glossary::delivery), say!(l, glossary::delivery_means)),
        (say!(l, glossary::delay), say!(l, glossary::delay_means)),
        (say!(l, glossary::invitation), say!(l, glossary::invitation_means)),
        (say!(l, glossary::asked_own_way), say!(l, glossary::asked_own_way_means)),
        (say!(l, glossary::joined), say!(l, glossary::joined_means)),
        (say!(l, glossary::sign), say!(l, glossary::sign_means)),
        (say!(l, glossary::closing_word), say!(l, glossary::closing_word_means)),
        (say!(l, glossary::ration), say!(l, glossary::ration_means)),
        (say!(l, glossary::likes_test), say!(l, glossary::likes_test_means)),
        (say!(l, glossary::stage), say!(l, glossary::stage_means)),
        (say!(l, glossary::check), say!(l, glossary::check_means)),
        (say!(l, glossary::chance), say!(l, glossary::chance_means)),
        (say!(l, glossary::interval), say!(l, glossary::interval_means)),
        (say!(l, glossary::rival), say!(l, glossary::rival_means)),
        (say!(l, glossary::edit_undo), say!(l, glossary::edit_undo_means)),
    ]
}

async fn show(page: Page) -> Markup {
    let l = &page.locale;
    layout(
        &page,
        Tab::None,
        &say!(l, glossary::title),
        html! {
            p { (say!(l, glossary::intro)) }
            dl.facts { @for (term, means) in terms(l) { dt { (term) } dd { (means) } } }
            details.fold {
                summary { (say!(l, practice::title)) }
                dl.facts { @for [what, value, source] in practice().iter().map(|p| habit(l, p)) {
                    dt { (what) } dd { (value) " " span.quiet { "(" (source) ")" } }
                } }
            }
        },
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_repository_explains_every_term_of_the_page() {
        let pages = include_str!("../../../../../docs/glossary.md").to_lowercase();
        for (term, _) in terms(&Locale::ENGLISH) {
            for word in term.split(", ") {
                assert!(pages.contains(&word.to_lowercase()), "docs/glossary.md does not know \u{201c}{word}\u{201d}");
            }
        }
    }
}
