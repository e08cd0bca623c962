//! The mat: the pads as the real board lies, seen from before it, blank places kept. What does not fit a phone is cut into
//! zones; which one is open is the page's own business.

use sayso_model::{BoardLayout, WordId};
use std::collections::BTreeSet;

/// More places a row than this are too narrow for a thumb on a phone.
const WIDE: usize = 6;
/// More places a row than this are beside each other on no phone in large letters.
const LARGE: usize = 3;
/// More rows than this are too low for a thumb on a phone.
const HIGH: usize = 7;
/// More rows than this are too low for a thumb on a low phone, where what is asked takes most of the screen.
const LOW: usize = 3;
/// Places of a zone in a row or column at most: one that is opened fits a low phone, its words in letters that can be read.
const ZONE: usize = 3;

/// A place of the mat, in reading order.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Place {
    /// The word there; none on a blank place.
    pub word: Option<WordId>,
    /// Its zone, from 0 in reading order.
    pub zone: usize,
}

/// All places with how they lie.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Mat {
    /// Places in a row.
    pub columns: usize,
    /// Rows, with those of words that stand nowhere.
    pub rows: usize,
    /// Row by row.
    pub places: Vec<Place>,
    /// Zones in a row.
    pub zone_columns: usize,
    /// Rows of zones.
    pub zone_rows: usize,
    /// Places of a zone in a row.
    pub zone_width: usize,
}

impl Mat {
    /// Whether a low phone shows it by zones, though others show it whole.
    #[must_use]
    pub const fn by_zones_if_low(&self) -> bool {
        !self.by_zones() && self.rows > LOW
    }

    /// Whether a phone shows it by zones.
    #[must_use]
    pub const fn by_zones(&self) -> bool {
        self.columns > WIDE || self.rows > HIGH
    }

    /// Whether it is wider than a phone in large letters, where three places and the begin of a fourth are seen.
    #[must_use]
    pub const fn goes_on_in_large_letters(&self) -> bool {
        self.columns > LARGE
    }

    /// Lays `words` (in the order for those without a place) as `layout` says. Rows and columns beyond the last word are
    /// kept: the mat has them too.
    #[must_use]
    pub fn new(layout: Option<&BoardLayout>, words: &[WordId]) -> Self {
        let on = layout.map(|l| (usize::from(l.columns.max(1)), usize::from(l.rows), l.places()));
        let (columns, drawn, places) = on.unwrap_or_else(|| (loose(words.len()), 0, std::collections::BTreeMap::new()));
        let at = |row: usize, column: usize| {
            words
                .iter()
                .find(|w| places.get(w).is_some_and(|(r, c)| (usize::from(*r), usize::from(*c)) == (row, column)))
        };
        let mut cells: Vec<Option<WordId>> =
            (0..drawn).flat_map(|r| (0..columns).map(move |c| (r, c))).map(|(r, c)| at(r, c).copied()).collect();
        let placed: BTreeSet<WordId> = cells.iter().flatten().copied().collect();
        cells.extend(words.iter().filter(|w| !placed.contains(w)).map(|w| Some(*w)));
        let rows = cells.len().div_ceil(columns).max(1);
        cells.resize(rows * columns, None);
        let part = |n: usize| n.div_ceil(n.div_ceil(ZONE));
        let (zone_width, zone_height) = (part(columns), part(rows));
        let (zone_columns, zone_rows) = (columns.div_ceil(zone_width), rows.div_ceil(zone_height));
        let zone = |i: usize| i / columns / zone_height * zone_columns + i % columns / zone_width;
        let places = cells.into_iter().enumerate().map(|(i, word)| Place { word, zone: zone(i) }).collect();
        Self { columns, rows, places, zone_columns, zone_rows, zone_width }
    }
}

/// Places a row where no board is drawn yet.
const fn loose(words: usize) -> usize {
    match words {
        0 | 1 => 1,
        2..=4 => 2,
        5..=12 => 3,
        13..=20 => 4,
        21..=28 => 5,
        _ => WIDE,
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use sayso_model::Placed;
    use uuid::Uuid;

    fn words(n: u128) -> Vec<WordId> {
        (1..=n).map(|i| WordId(Uuid::from_u128(i))).collect()
    }

    #[test]
    fn words_lie_as_on_the_board_and_blank_places_are_kept() {
        let w = words(3);
        let placed = |word, row, column| Placed { word, row, column };
        let layout =
            BoardLayout { rows: 2, columns: 3, words: vec![placed(w[0], 1, 2), placed(w[1], 0, 0)], language: None };
        let mat = Mat::new(Some(&layout), &w);
        assert_eq!((mat.rows, mat.columns), (3, 3), "a word on no place comes after the board");
        let found: Vec<_> = mat.places.iter().map(|p| p.word).collect();
        assert_eq!(found[..7], [Some(w[1]), None, None, None, None, Some(w[0]), Some(w[2])]);
        assert!(!mat.by_zones());
    }

    #[test]
    fn every_word_stands_once_whatever_the_board() {
        for n in [0, 1, 2, 7, 12, 15, 60] {
            let w = words(n);
            let mat = Mat::new(None, &w);
            let found: Vec<_> = mat.places.iter().filter_map(|p| p.word).collect();
            assert_eq!(found, w, "{n} words");
            assert_eq!(mat.places.len(), mat.rows * mat.columns);
        }
    }

    #[test]
    fn zones_hold_nine_places_at_most_and_cover_all() {
        let layout = BoardLayout { rows: 6, columns: 10, words: Vec::new(), language: None };
        let mat = Mat::new(Some(&layout), &words(60));
        assert!(mat.by_zones());
        let zones = mat.zone_columns * mat.zone_rows;
        let of = |z| mat.places.iter().filter(|p| p.zone == z).count();
        assert_eq!((0..zones).map(of).sum::<usize>(), mat.places.len());
        assert!((0..zones).all(|z| (1..=9).contains(&of(z))));
    }

    #[test]
    fn four_rows_are_whole_on_a_phone_and_in_zones_on_a_low_one() {
        for (count, many, low) in [(9, false, false), (12, false, true), (30, false, true), (60, true, false)] {
            let mat = Mat::new(None, &words(count));
            assert_eq!((mat.by_zones(), mat.by_zones_if_low()), (many, low), "{count} words");
        }
    }
}
