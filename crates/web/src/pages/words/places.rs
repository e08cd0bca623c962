//! Places proposed for words that are not on the board yet; those on it stay.

use crate::page::AnimalPage;
use sayso_advisor::stages::standings;
use sayso_methods::board::{BoardWord, Effort, Grid, Wishes, plan};
use sayso_model::{Language, Place, Placed, WordCard};

/// Presses a day expected of a word where none was pressed yet, so that first places are apart too (ours, no source).
const EXPECTED: f64 = 1.0;

/// Days of own presses that count for how much a word is used.
const DAYS: f64 = 28.0;

/// Where the words without a place would stand best: apart from those that sound alike, away from busy neighbours.
pub fn proposed(
    page: &AnimalPage,
    (rows, columns): (u8, u8),
    on_board: &[Placed],
    words: &[&WordCard],
    language: Language,
) -> Result<Vec<Placed>, String> {
    let case = page.case();
    let standings = standings(&case);
    #[allow(clippy::cast_precision_loss)]
    let presses =
        |w: &WordCard| standings.iter().find(|s| s.word == w.word).map_or(0.0, |s| s.own_presses as f64 / DAYS);
    // A word not pressed yet is expected to be used as the others are.
    let used: Vec<f64> = words.iter().map(|w| presses(w)).filter(|n| *n > 0.0).collect();
    #[allow(clippy::cast_precision_loss)]
    let expected = if used.is_empty() { EXPECTED } else { used.iter().sum::<f64>() / used.len() as f64 };
    let presses = |w: &WordCard| Some(presses(w)).filter(|n| *n > 0.0).unwrap_or(expected);
    let wanted: Vec<BoardWord> = words
        .iter()
        .map(|w| {
            let at = on_board.iter().find(|p| p.word == w.word).map(|p| Place { row: p.row, column: p.column });
            BoardWord {
                says: w.says.to_string(),
                presses: presses(w),
                known: if at.is_some() { 1.0 } else { 0.0 },
                at,
                stays: at.is_some(),
            }
        })
        .collect();
    let grid = Grid { rows, columns, closed: Vec::new() };
    let wishes = Wishes { language, ..Wishes::default() };
    let found = plan(&wanted, &grid, &wishes, &Effort::default()).map_err(|e| e.to_string())?;
    let placed = words.iter().zip(found.places);
    Ok(placed.map(|(w, at)| Placed { word: w.word, row: at.row, column: at.column }).collect())
}
