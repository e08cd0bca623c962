use super::{first, layout_form, sounds};
use crate::cautions::for_animal;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::pages::people::{StepName, along};
use crate::picture;
use maud::{Markup, html};
use sayso_advisor::stages::{Standing, standings};
use sayso_model::{PictureOf, WordCard};
use sayso_people::Capability;
use sayso_wording::evidence::left_out;
use sayso_wording::on_card;
use sayso_wording::say;
use sayso_wording::sounds::likeness as likeness_said;
use std::collections::BTreeSet;

pub fn view(page: &AnimalPage) -> Markup {
    let (words, l) = (page.story.words_of(page.id), &page.locale);
    let (case, changes) = (page.case(), page.may(Capability::ChangeCards));
    let all = standings(&case);
    layout(
        page,
        Tab::Words,
        &say!(l, words::page_title, name = &page.card.name),
        html! {
            @if words.is_empty() { (along(page, &page.card, StepName::Words)) p { (say!(l, words::none_yet)) } }
            div.grid { @for w in &words { (word(page, w, all.iter().find(|s| s.word == w.word))) } }
            (alike(page, &words))
            @if changes { (first::section(page, !words.is_empty())) }
            p.row { @if changes { a.button href=(format!("/a/{}/words/new", page.id)) { (say!(l, words::add)) } }
                @if !words.is_empty() { @if changes { a.button href=(format!("/a/{}/words/record", page.id)) { (say!(l, enrol::all_title)) } } @if page.may(Capability::SeeRules) { a.button href="/sheets/rules" { (say!(l, card::fridge)) } } a.button href="/sheets/labels" { (say!(l, words::labels)) } } }
            section #where {
                h2 { (say!(l, words::where_they_are)) }
                @match page.story.board() {
                    Some(board) => (layout_form::drawn(l, &page.story, board)),
                    None => p { (say!(l, words::not_drawn)) }
                }
                @if changes { p { a.button href=(format!("/a/{}/words/board", page.id)) { (say!(l, words::edit_board)) } } }
            }
            (off(page))
        },
    )
}

fn word(page: &AnimalPage, w: &WordCard, s: Option<&Standing>) -> Markup {
    let (rewards, l) = (page.story.rewards(), &page.locale);
    let reward = w.reward.and_then(|r| rewards.get(&r));
    let on_card = on_card::read(l, &page.story, w);
    html! {
        section.card {
            h2.pictured { (picture::of(&page.story, PictureOf::Word { word: w.word })) span { (say!(l, words::quoted, says = &w.says)) @if w.closing { " " span.quiet { (say!(l, words::closing_word)) } } } }
            @if let Some(s) = s {
                p { strong { (say!(l, words::stage, stage = s.stage.name())) }
                    span.hint { (say!(l, words::shown, shown = s.showings, own = s.own_presses))
                        @if let Some(out) = left_out(l, s.stumbles) { ". " (out) } } }
            }
            dl.facts {
                @if let Some(t) = &on_card.means { dt { (say!(l, words::means)) } dd { (t) } }
                dt { (say!(l, words::answer)) } dd { @match &on_card.answer { Some(t) => (t), None => span.quiet { (say!(l, words::not_written)) } } }
                dt { (say!(l, words::not_now_title)) } dd { @match &on_card.not_now { Some(t) => (t), None => span.quiet { (say!(l, words::not_written)) } } }
                @if let Some(r) = reward { dt { (say!(l, words::given)) } dd { (r.name.as_str()) } }
            }
            @if let Some(r) = reward { (for_animal(&page.locale, &page.card, r)) }
            p { a.button href=(format!("/a/{}/words/card/{}", page.id, w.word)) { (say!(l, words::card_and_stage)) span.unseen { " " (say!(l, words::of, says = &w.says)) } } }
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
                said.push(likeness_said(&page.locale, &likeness));
            }
        }
    }
    let l = &page.locale;
    html! {
        @if !said.is_empty() {
            div.caution { strong { (say!(l, words::these_alike)) } ul { @for s in said { li { (s) "." } } }
                (say!(l, words::different)) }
        }
    }
}

fn off(page: &AnimalPage) -> Markup {
    let words: Vec<_> = page.story.words().into_values().filter(|w| !(w.active && w.is_for(page.id))).collect();
    let l = &page.locale;
    html! {
        @if !words.is_empty() {
            details {
                summary { (say!(l, words::off, words = words.len())) }
                ul.plain { @for w in words { li { a href=(format!("/a/{}/words/card/{}", page.id, w.word)) { (w.says.as_str()) } @if w.active { " " span.quiet { (say!(l, words::to_others)) } } } } }
            }
        }
    }
}
