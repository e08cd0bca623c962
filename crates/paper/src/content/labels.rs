//! Labels for the buttons: plain rectangles with the word.

use super::{sheet, words};
use crate::sheet::{Block, LabelSize, LabelText, Look, Paragraph, Sheet};
use sayso_model::{Moment, Story};
use sayso_wording::{Locale, say};

/// Labels of all words in use.
#[must_use]
pub fn labels(story: &Story, now: Moment, locale: Locale, size: LabelSize) -> Sheet {
    let l = &locale;
    let labels: Vec<LabelText> =
        words(story).iter().map(|w| LabelText { word: w.word, says: w.says.to_string() }).collect();
    let mut blocks = vec![Paragraph::block("", say!(l, sheets::glue), Look::Quiet)];
    if labels.is_empty() {
        blocks.push(Paragraph::block("", say!(l, sheets::none_on_board), Look::Plain));
    } else {
        blocks.push(Block::Labels { size, labels });
    }
    sheet(story, now, locale, say!(l, sheets::labels), blocks)
}
