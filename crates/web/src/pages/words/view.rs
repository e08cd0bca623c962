use super::{first, layout_form, sounds};
use crate::cautions::for_animal;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::picture;
use maud::{Markup, html};
use sayso_advisor::stages::{Standing, standings};
use sayso_model::{PictureOf, WordCard};
use std::collections::BTreeSet;

pub fn view(page: &AnimalPage) -> Markup {
    let words = page.story.words_of(page.id);
    let case = page.case();
    let all = standings(&case);
    layout(
        page,
        Tab::Words,
        &format!("Words of {}", page.card.name),
        html! {
            @if words.is_empty() { p { "No word yet. Two or three are enough to begin with (common practice, no source)." } }
            @for w in &words { (word(page, w, all.iter().find(|s| s.word == w.word))) }
            (alike(page, &words))
            (first::section(page, !words.is_empty()))
            p.row { a.button href=(format!("/l/{}/words/new", page.id)) { "Add a word" }
                @if !words.is_empty() { a.button href="/sheets/rules" { "Sheet for the fridge" } a.button href="/sheets/labels" { "Labels" } } }
            section #where {
                h2 { "Where they are" }
                @match page.story.board() {
                    Some(board) => (layout_form::drawn(&page.story, board)),
                    None => p { "The board is not drawn yet. With it, presses can be read by place." }
                }
                p { a.button href=(format!("/l/{}/words/board", page.id)) { "Change the board" } }
            }
            (off(page))
        },
    )
}

fn word(page: &AnimalPage, w: &WordCard, s: Option<&Standing>) -> Markup {
    let rewards = page.story.rewards();
    let reward = w.reward.and_then(|r| rewards.get(&r));
    html! {
        section.card {
            h2.pictured { (picture::of(&page.story, PictureOf::Word { word: w.word })) span { "\u{201c}" (w.says.as_str()) "\u{201d}" @if w.closing { " " span.quiet { "closing word" } } } }
            @if let Some(s) = s {
                p { strong { (s.stage.name()) }
                    @if s.stage != s.figures_say { span.quiet { " \u{2013} the figures point to " (s.figures_say.name()) } }
                    span.hint { "shown n = " (s.showings) " · own presses in 28 days n = " (s.own_presses) } }
            }
            dl.facts {
                @if let Some(t) = &w.means { dt { "Means" } dd { (t.as_str()) } }
                dt { "Answer" } dd { @match &w.answer { Some(t) => (t.as_str()), None => span.quiet { "not written yet" } } }
                dt { "Not now" } dd { @match &w.not_now { Some(t) => (t.as_str()), None => span.quiet { "not written yet" } } }
                @if let Some(r) = reward { dt { "Given" } dd { (r.name.as_str()) } }
            }
            @if let Some(r) = reward { (for_animal(&page.card, r)) }
            p { a.button href=(format!("/l/{}/words/card/{}", page.id, w.word)) { "Card and stage" span.unseen { " of " (w.says.as_str()) } } }
        }
    }
}

/// Pairs of this animal's words that sound too much alike, each pair once.
fn alike(page: &AnimalPage, words: &[&WordCard]) -> Markup {
    let mut pairs = BTreeSet::new();
    let mut said = Vec::new();
    for w in words {
        for (other, likeness) in sounds::too_alike(&page.story, w.says.as_str(), Some(w.word)) {
            if words.iter().any(|o| o.word == other.word)
                && pairs.insert((w.word.min(other.word), w.word.max(other.word)))
            {
                said.push(likeness.reason);
            }
        }
    }
    html! {
        @if !said.is_empty() {
            div.caution { strong { "These sound much alike:" } ul { @for s in said { li { (s) "." } } }
                "A different word for one of them is easier to tell apart." }
        }
    }
}

fn off(page: &AnimalPage) -> Markup {
    let words: Vec<_> = page.story.words().into_values().filter(|w| !(w.active && w.is_for(page.id))).collect();
    html! {
        @if !words.is_empty() {
            details {
                summary { "Taken off, or taught to others (" (words.len()) ")" }
                ul.plain { @for w in words { li { a href=(format!("/l/{}/words/card/{}", page.id, w.word)) { (w.says.as_str()) } @if w.active { " " span.quiet { "taught to others" } } } } }
            }
        }
    }
}
