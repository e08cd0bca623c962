//! All buttons recorded in one go: pressed in order with pauses, cut, named, kept and proved.

use super::proof::Judged;
use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use crate::pages::listen::recorded;
use maud::{Markup, html};
use sayso_model::{BoardLayout, WordCard, WordId};
use sayso_wording::say;
use serde::Serialize;

/// A word as the script knows it.
#[derive(Serialize)]
struct Word<'a> {
    word: WordId,
    says: &'a str,
    /// Whether it has a recording in use.
    recorded: bool,
}

/// In the order in which they are pressed: by place on the board, words off the board last, then by what they say.
fn in_order(page: &AnimalPage) -> Vec<&WordCard> {
    let places = page.story.board().map(BoardLayout::places).unwrap_or_default();
    let mut words = page.story.words_of(page.id);
    words.sort_by_key(|w| (places.get(&w.word).copied().unwrap_or((u8::MAX, u8::MAX)), w.says.to_string()));
    words
}

/// The page.
pub async fn show(page: AnimalPage) -> Markup {
    let (l, judged, words) = (&page.locale, Judged::by(&page), in_order(&page));
    let recorded = recorded(&page);
    let known: Vec<Word> = words
        .iter()
        .map(|w| Word { word: w.word, says: w.says.as_str(), recorded: recorded.contains(&w.word) })
        .collect();
    let json = serde_json::to_string(&known).unwrap_or_default();
    layout_with(
        &page,
        Tab::Words,
        &say!(l, enrol::all_title),
        &["client/buttons.js"],
        html! {
            @if words.is_empty() {
                p { (say!(l, enrol::all_no_words)) }
                p { a.button.primary.wide href=(Tab::Words.href(Some(page.id))) { (say!(l, listen::add_words)) } }
            } @else {
                p { (say!(l, enrol::all_intro, words = words.len())) }
                p { (say!(l, enrol::only_the_button)) }
                div.caution { (say!(l, enrol::all_care, name = &page.card.name)) " " (say!(l, hazards::battery)) }
                noscript { p.caution { (say!(l, enrol::no_script)) } }
                section.card #buttons data-buttons=(json) data-name=(page.card.name) data-test="buttons" data-step="begin" data-card=(format!("/a/{}/words/card", page.id))
                    data-module=[judged.module] data-vocabulary=(judged.vocabulary) data-notebook=[judged.notebook] {
                    h2.first { (say!(l, enrol::all_order)) }
                    ol { @for w in &words { li { (w.says) @if recorded.contains(&w.word) { " " span.quiet { (say!(l, enrol::all_recorded)) } } } } }
                }
            }
            p { a.link href=(Tab::Words.href(Some(page.id))) { (say!(l, words::back)) } }
        },
    )
}
