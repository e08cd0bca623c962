//! How to record real buttons, so that the hearing can be measured on them.

use super::sheet;
use crate::sheet::{Block, Cell, Look, Paragraph, Row, Sheet, Table};
use sayso_model::{Moment, Story};
use sayso_wording::{Locale, say};

/// Distances from the button to the device, metres; our own choice: an arm's length, and doubled to a room's.
pub const KIT_DISTANCES_M: [f64; 4] = [0.5, 1.0, 2.0, 4.0];

/// The sheet for recording real buttons.
#[must_use]
pub fn kit(story: &Story, now: Moment, locale: Locale) -> Sheet {
    let l = &locale;
    let metres = |m: f64| l.number(m, usize::from(m.fract() != 0.0));
    let [near, further @ ..] = KIT_DISTANCES_M.map(metres);
    let further: Vec<&str> = further.iter().map(String::as_str).collect();
    let steps = [
        say!(l, kit::step_open, page = say!(l, kit::title)),
        say!(l, kit::step_agree),
        say!(l, kit::step_say),
        say!(l, kit::step_close),
        say!(l, kit::step_presses, metres = near),
        say!(l, kit::step_further, distances = l.and(&further)),
        say!(l, kit::step_without),
        say!(l, kit::step_again),
        say!(l, kit::step_save),
    ];
    let step = |(i, text): (usize, String)| Row {
        word: None,
        cells: vec![Cell::from(l.number((i + 1) as f64, 0)), Cell::from(text)],
    };
    let blank = |first: String, last: String| Row {
        word: None,
        cells: vec![first.into(), Cell::default(), Cell::default(), Cell::default(), last.into()],
    };
    let distances = KIT_DISTANCES_M.map(|m| blank(say!(l, kit::metres, metres = metres(m)), String::new()));
    let without = blank(say!(l, kit::metres, metres = metres(1.0)), say!(l, kit::without));
    let blocks = vec![
        Paragraph::block("", say!(l, kit::why), Look::Plain),
        Paragraph::block("", say!(l, kit::stays), Look::Plain),
        Paragraph::block(say!(l, kit::before), say!(l, kit::away), Look::Boxed),
        Block::List { items: vec![say!(l, kit::loud), say!(l, sheets::batteries), say!(l, kit::people)], big: false },
        Paragraph::block(say!(l, kit::need), say!(l, kit::need_things), Look::Plain),
        Block::Heading(say!(l, kit::steps)),
        Block::Table(Table {
            caption: String::new(),
            head: vec![say!(l, kit::step), say!(l, kit::what_to_do)],
            rows: steps.into_iter().enumerate().map(step).collect(),
            whole: false,
        }),
        Block::Heading(say!(l, kit::to_fill_in)),
        Block::Table(Table {
            caption: String::new(),
            head: vec![
                say!(l, kit::distance),
                say!(l, kit::room),
                say!(l, kit::noise),
                say!(l, kit::phone),
                say!(l, kit::presses),
            ],
            rows: distances.into_iter().chain([without]).collect(),
            whole: false,
        }),
    ];
    sheet(story, now, locale, say!(l, kit::title), blocks)
}
