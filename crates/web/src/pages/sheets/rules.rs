//! The sheet for the fridge: word by word, and the rules of the house.

use super::sheet;
use crate::page::Page;
use crate::picture;
use maud::{Markup, html};
use sayso_model::facts::BATTERY_EMERGENCY;
use sayso_model::{HouseRule, PictureOf, WordCard, WordId};
use sayso_wording::say;

pub async fn show(page: Page) -> Markup {
    let mut words: Vec<&WordCard> = page.story.words().into_values().filter(|w| w.active).collect();
    words.sort_by(|a, b| a.says.cmp(&b.says).then(a.word.cmp(&b.word)));
    let rules: Vec<&HouseRule> = page.story.rules().into_values().filter(|r| r.active).collect();
    let of = |word: Option<WordId>| rules.iter().filter(move |r| r.word == word);
    let animals = page.animals();
    let several = animals.len() > 1;
    let l = &page.locale;
    let blank = || html! { span.write {} };
    sheet(
        &page,
        &say!(l, sheets::rules),
        html! {
            @if of(None).next().is_some() {
                ul.big { @for r in of(None) { li { (r.text.as_str()) } } }
            }
            @if words.is_empty() { p { (say!(l, sheets::no_word)) } }
            @else {
                table.rules.stacks {
                    thead { tr { th scope="col" { (say!(l, sheets::button)) } th scope="col" { (say!(l, sheets::means)) } th scope="col" { (say!(l, sheets::everyone_answers)) } th scope="col" { (say!(l, sheets::not_now)) } } }
                    tbody { @for w in &words {
                        tr {
                            th scope="row" { (picture::of(&page.story, PictureOf::Word { word: w.word })) (w.says.as_str()) @if several { span.hint { (whose(&page, w)) } } @if w.closing { span.hint { (say!(l, sheets::ends_session)) } } }
                            td data-label=(say!(l, sheets::means)) { @match &w.means { Some(t) => (t.as_str()), None => (blank()) } }
                            td data-label=(say!(l, sheets::everyone_answers)) { @match &w.answer { Some(t) => (t.as_str()), None => (blank()) }
                                @for r in of(Some(w.word)) { p.own { (r.text.as_str()) } } }
                            td data-label=(say!(l, sheets::not_now)) { @match &w.not_now { Some(t) => (t.as_str()), None => (blank()) } }
                        }
                    } }
                }
            }
            ul {
                li { (say!(l, sheets::answer_every_press)) }
                li { @match animals.as_slice() {
                    [only] => (say!(l, sheets::may_come_and_go, name = &only.name)),
                    _ => (say!(l, sheets::any_may_come_and_go)),
                } }
                li { (say!(l, sheets::batteries, emergency = BATTERY_EMERGENCY)) }
            }
            @for a in &animals { @if let Some(text) = &a.cautions { p { strong { (say!(l, sheets::of_animal, name = &a.name)) } " " (text.as_str()) } } }
        },
    )
}

fn whose(page: &Page, word: &WordCard) -> String {
    if word.animals.is_empty() {
        return say!(&page.locale, sheets::for_all);
    }
    page.animals().iter().filter(|l| word.is_for(l.animal)).map(|l| l.name.to_string()).collect::<Vec<_>>().join(", ")
}
