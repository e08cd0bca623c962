//! The board as a table: to look at, and as a form with one list of words for every place.

use crate::typed::Typed;
use maud::{Markup, html};
use sayso_model::{BoardLayout, Placed, Story, WordCard, WordId};
use sayso_wording::{Locale, say};

/// Name of the field of a place.
pub fn field(row: u8, column: u8) -> String {
    format!("place-{row}-{column}")
}

/// The board as it is.
#[must_use]
pub fn drawn(l: &Locale, story: &Story, board: &BoardLayout) -> Markup {
    let words = story.words();
    let at = |row, column| board.words.iter().find(|p| p.row == row && p.column == column);
    html! {
        p.quiet { (say!(l, words::as_you_stand)) }
        div.scroll tabindex="0" role="region" aria-label=(say!(l, words::board_title)) {
            table.board.map {
                tbody { @for row in 0..board.rows { tr { @for column in 0..board.columns {
                    td { @match at(row, column).and_then(|p| words.get(&p.word)) {
                        Some(w) => { strong { (w.says.as_str()) } @if !w.active { span.hint { (say!(l, words::taken_off)) } } }
                        None => span.quiet { "\u{2013}" }
                    } }
                } } } }
            }
        }
    }
}

/// One list for every place.
pub fn lists(l: &Locale, typed: &Typed, rows: u8, columns: u8, words: &[&WordCard]) -> Markup {
    html! {
        p { strong { (say!(l, words::which_where)) } }
        div.scroll tabindex="0" role="region" aria-label=(say!(l, words::places)) {
            table.board.edited #board {
                tbody { @for row in 0..rows { tr { @for column in 0..columns {
                    @let name = field(row, column);
                    @let chosen = typed.text(&name);
                    td {
                        label.unseen for=(name) { (say!(l, words::place, row = row + 1, place = column + 1)) }
                        select id=(name) name=(name) aria-invalid=[typed.problem(&name).map(|_| "true")] {
                            option value="" { "\u{2013}" }
                            @for w in words { option value=(w.word) selected[chosen == w.word.to_string()] { (w.says.as_str()) } }
                        }
                        @if let Some(what) = typed.problem(&name) { span.wrong { (what) } }
                    }
                } } } }
            }
        }
    }
}

/// Words at their places, as typed. A word in two places is refused.
pub fn read(l: &Locale, typed: &mut Typed, rows: u8, columns: u8, words: &[&WordCard]) -> Vec<Placed> {
    let mut placed: Vec<Placed> = Vec::new();
    for row in 0..rows {
        for column in 0..columns {
            let name = field(row, column);
            let Some(word) = typed.id(&name, |w: &WordId| words.iter().any(|k| k.word == *w)) else { continue };
            if let Some(first) = placed.iter().find(|p| p.word == word) {
                let (row, column) = (first.row + 1, first.column + 1);
                typed.wrong(&name, say!(l, words::place_taken, row = row, place = column));
            } else {
                placed.push(Placed { word, row, column });
            }
        }
    }
    placed
}
