//! All buttons recorded in one go: pressed in order with pauses, cut, named, kept and proved.

use super::proof::Judged;
use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use crate::pages::listen::recorded;
use crate::pages::people::steps::on_the_way;
use crate::pages::people::{StepName, onward};
use maud::{Markup, html};
use sayso_model::WordId;
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

/// The page.
pub async fn show(page: AnimalPage) -> Markup {
    let (l, judged, words) = (&page.locale, Judged::by(&page), page.story.words_by_place(page.id));
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
            // On the way to the first session it can wait; once all are recorded that way goes on.
            @if on_the_way(&page, &page.card) && !words.is_empty() {
                @let done = words.iter().all(|w| recorded.contains(&w.word));
                p { a.link href=(onward(&page, &page.card, StepName::Record)) data-test="later" { @if done { (say!(l, setup::next)) } @else { (say!(l, setup::later)) } }
                    @if !done { " " span.quiet { (say!(l, setup::record_later)) } } }
            }
            p { a.link href=(Tab::Words.href(Some(page.id))) { (say!(l, words::back)) } }
        },
    )
}
