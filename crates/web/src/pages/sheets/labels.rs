//! Labels for the buttons: plain rectangles with the word.

use super::sheet;
use crate::page::Page;
use crate::picture;
use axum::extract::Query;
use maud::{Markup, html};
use sayso_model::{PictureOf, WordCard};
use sayso_wording::say;
use serde::Deserialize;

const SIZES: [&str; 3] = ["small", "middle", "large"];

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    size: String,
}

pub async fn show(page: Page, Query(asked): Query<Asked>) -> Markup {
    let mut words: Vec<&WordCard> = page.story.words().into_values().filter(|w| w.active).collect();
    words.sort_by(|a, b| a.says.cmp(&b.says).then(a.word.cmp(&b.word)));
    let size = SIZES.into_iter().find(|name| *name == asked.size).unwrap_or("middle");
    let l = &page.locale;
    sheet(
        &page,
        &say!(l, sheets::labels),
        html! {
            div.row.noprint role="group" aria-label=(say!(l, sheets::size)) {
                @for name in SIZES { a.button href=(format!("?size={name}")) aria-current=[(name == size).then_some("true")] { (say!(l, sheets::size_of, size = name)) } }
            }
            @if words.is_empty() { p { (say!(l, sheets::no_word)) } }
            ul class={ "labels " (size) } { @for w in &words { li class=[(w.says.as_str().chars().count() > 12).then_some("long")] { (picture::of(&page.story, PictureOf::Word { word: w.word })) span { (w.says.as_str()) } } } }
            p.noprint.quiet { (say!(l, sheets::labels_note)) }
        },
    )
}
