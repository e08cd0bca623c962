//! The sheet for the fridge: word by word, and the rules of the house.

use super::sheet;
use crate::page::Page;
use crate::picture;
use maud::{Markup, html};
use sayso_model::facts::BATTERY_EMERGENCY;
use sayso_model::{HouseRule, PictureOf, WordCard, WordId};

pub async fn show(page: Page) -> Markup {
    let mut words: Vec<&WordCard> = page.story.words().into_values().filter(|w| w.active).collect();
    words.sort_by(|a, b| a.says.cmp(&b.says).then(a.word.cmp(&b.word)));
    let rules: Vec<&HouseRule> = page.story.rules().into_values().filter(|r| r.active).collect();
    let of = |word: Option<WordId>| rules.iter().filter(move |r| r.word == word);
    let several = page.animals().len() > 1;
    let blank = || html! { span.write {} };
    sheet(
        &page,
        "House rules",
        html! {
            @if of(None).next().is_some() {
                ul.big { @for r in of(None) { li { (r.text.as_str()) } } }
            }
            @if words.is_empty() { p { "No word is on the board yet." } }
            @else {
                table.rules.stacks {
                    thead { tr { th scope="col" { "Button" } th scope="col" { "Means" } th scope="col" { "Everyone answers" } th scope="col" { "Not now" } } }
                    tbody { @for w in &words {
                        tr {
                            th scope="row" { (picture::of(&page.story, PictureOf::Word { word: w.word })) (w.says.as_str()) @if several { span.hint { (whose(&page, w)) } } @if w.closing { span.hint { "ends a session" } } }
                            td data-label="Means" { @match &w.means { Some(t) => (t.as_str()), None => (blank()) } }
                            td data-label="Everyone answers" { @match &w.answer { Some(t) => (t.as_str()), None => (blank()) }
                                @for r in of(Some(w.word)) { p.own { (r.text.as_str()) } } }
                            td data-label="Not now" { @match &w.not_now { Some(t) => (t.as_str()), None => (blank()) } }
                        }
                    } }
                }
            }
            ul {
                li { "Answer every press, also one that looks like a stumble." }
                li { "It may come and go; never call or lure it to the board." }
                li { "Close battery covers with their screws. " (BATTERY_EMERGENCY) }
            }
            @for l in page.animals() { @if let Some(text) = &l.cautions { p { strong { (l.name.as_str()) ": " } (text.as_str()) } } }
        },
    )
}

fn whose(page: &Page, word: &WordCard) -> String {
    if word.animals.is_empty() {
        return "all".to_owned();
    }
    page.animals().iter().filter(|l| word.is_for(l.animal)).map(|l| l.name.to_string()).collect::<Vec<_>>().join(", ")
}
