//! What a rehearsal assumes stands in `docs/methods/rehearsal.md` as it is computed with.
#![allow(clippy::unwrap_used, clippy::panic, missing_docs)]

use sayso_sim::rehearsal::{Came, Character, Traits};

/// Cells of the row of the page that begins so.
fn row(page: &str, begins: &str) -> Vec<String> {
    let row = page.lines().find(|line| line.starts_with(&format!("| {begins} |")));
    let row = row.unwrap_or_else(|| panic!("no row of {begins:?}"));
    row.split('|').skip(2).map(|cell| cell.trim().replace('\u{2212}', "-")).filter(|cell| !cell.is_empty()).collect()
}

fn page() -> String {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../../docs/methods/rehearsal.md");
    std::fs::read_to_string(path).unwrap()
}

fn numbers(cell: &str) -> Vec<f64> {
    cell.split(',').map(|number| number.trim().parse().unwrap()).collect()
}

#[test]
fn the_page_has_the_weights_of_what_comes_of_a_press() {
    let page = page();
    for (begins, all) in [
        ("shown, and the thing taken", vec![Came::Shown]),
        ("shown, and the thing not taken", vec![Came::Missed]),
        ("shown while it was elsewhere, on its way out, or had something to do still", vec![Came::Unseen]),
        ("shown at the strain of a mild sign, or more", vec![Came::Strained]),
        ("its own press, answered and taken", vec![Came::Own]),
        ("its own press, answered and not taken", vec![Came::OwnNotTaken]),
        ("its own press: \"not now\", and something else", vec![Came::Instead]),
        ("its own press: \"not now\" alone; or no answer", vec![Came::NotNow, Came::Unanswered]),
        ("something else than was pressed, as if it were that", vec![Came::Wrong]),
    ] {
        for came in all {
            assert_eq!(numbers(&row(&page, begins)[0]), [came.weight()], "{came:?}");
        }
    }
}

#[test]
fn the_page_has_what_makes_each_character() {
    let page = page();
    let of = |begins: &str, figure: fn(&Traits) -> Vec<f64>| {
        let cells = row(&page, begins);
        assert_eq!(cells.len(), Character::ALL.len(), "{begins}");
        for (cell, character) in cells.iter().zip(Character::ALL) {
            assert_eq!(numbers(cell), figure(&character.traits()), "{begins}: {character:?}");
        }
    };
    of("log-odds of wanting treat, ball, out, company", |t| t.likes.to_vec());
    of("steps, units of the room a second (it is 360 wide)", |t| vec![t.speed]);
    of("comes, a second, at ease", |t| vec![t.comes]);
    of("leaves, a second, at ease and fresh", |t| vec![t.leaves]);
    of("a session grows long after, s", |t| vec![t.stays_s]);
    of("strain falls to 1/e in, s", |t| vec![t.calms_s]);
    of("strain of what pushes, times", |t| vec![t.minds]);
    of("logits a showing", |t| vec![t.rate]);
    of("middle seconds from invitation to press", |t| vec![t.latency_s]);
    of("asks, a second, if it knew the word", |t| vec![t.asks]);
    of("presses that mean nothing, a second", |t| vec![t.plays]);
    of("touches without a sound, a second", |t| vec![t.brushes]);
}
