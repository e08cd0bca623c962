//! Labels for the buttons: plain rectangles with the word.

use super::sheet;
use crate::page::Page;
use crate::picture;
use axum::extract::Query;
use maud::{Markup, html};
use sayso_model::{PictureOf, WordCard};
use serde::Deserialize;

const SIZES: [(&str, &str); 3] =
    [("small", "small, 40 × 25 mm"), ("middle", "middle, 60 × 40 mm"), ("large", "large, 90 × 60 mm")];

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    size: String,
}

pub async fn show(page: Page, Query(asked): Query<Asked>) -> Markup {
    let mut words: Vec<&WordCard> = page.story.words().into_values().filter(|w| w.active).collect();
    words.sort_by(|a, b| a.says.cmp(&b.says).then(a.word.cmp(&b.word)));
    let size = SIZES.iter().find(|(name, _)| *name == asked.size).map_or("middle", |(name, _)| name);
    sheet(
        &page,
        "Labels",
        html! {
            div.row.noprint role="group" aria-label="Size" {
                @for (name, text) in SIZES { a.button href=(format!("?size={name}")) aria-current=[(name == size).then_some("true")] { (text) } }
            }
            @if words.is_empty() { p { "No word is on the board yet." } }
            ul class={ "labels " (size) } { @for w in &words { li class=[(w.says.as_str().chars().count() > 12).then_some("long")] { (picture::of(&page.story, PictureOf::Word { word: w.word })) span { (w.says.as_str()) } } } }
            p.noprint.quiet { "Labels help people. Small torn-off parts can be swallowed: glue them flat, and use none where the animal chews." }
        },
    )
}
