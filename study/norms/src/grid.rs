//! The grids on which waits and shares are counted. They are the same for every release and follow from no data.

/// Places between which waits are told apart. The last is the end: what is longer was watched so far and no further.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Grid(&'static [u32]);

/// Showings before a first press. 0: pressed before it was shown.
pub const SHOWINGS: Grid = Grid(&[0, 1, 2, 4, 7, 11, 16, 24, 36, 54, 80, 120, 180, 270, 400]);

/// Days to a first press. 0: on the day of the first showing.
pub const DAYS: Grid = Grid(&[0, 1, 2, 4, 7, 11, 16, 24, 36, 54, 80, 120, 180, 270, 400]);

/// Days in a stage. Fewer places than of first presses: each bin has noise of its own, and of a household one stage is told.
pub const STAGE_DAYS: Grid = Grid(&[0, 3, 7, 14, 28, 56, 112, 224]);

/// Equal steps of a share from 0 to 1.
pub const SHARE_STEPS: usize = 10;

impl Grid {
    /// Its places, rising.
    #[must_use]
    pub const fn places(self) -> &'static [u32] {
        self.0
    }

    /// Into how many bins a wait may fall: a press by each place, an end of watching before each place but the first, and beyond.
    #[must_use]
    pub const fn bins(self) -> usize {
        2 * self.0.len()
    }

    /// The bin of a wait: presses by place, then ends of watching by the next place, then what goes on beyond the last.
    #[must_use]
    pub fn bin(self, wait: u32, pressed: bool) -> usize {
        let many = self.0.len();
        if pressed {
            let at = self.0.partition_point(|place| *place < wait);
            return if at < many { at } else { 2 * many - 1 };
        }
        // Watched for all of `wait`: not pressed by any place up to it.
        let next = self.0.partition_point(|place| *place <= wait);
        // The first place is 0, so the next is never the first.
        many + next.saturating_sub(1)
    }

    /// For each place: which part of the time since the place before was watched, on average, of waits whose watching ended in between.
    #[must_use]
    pub fn watched_part(self, place: usize) -> f64 {
        let Some(before) = place.checked_sub(1) else { return 0.0 };
        let steps = f64::from(self.0[place] - self.0[before]);
        (steps - 1.0) / (2.0 * steps)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_wait_has_its_bin() {
        let bin = |wait, pressed| SHOWINGS.bin(wait, pressed);
        assert_eq!([bin(0, true), bin(1, true), bin(3, true), bin(4, true), bin(400, true)], [0, 1, 3, 3, 14]);
        assert_eq!([bin(401, true), bin(u32::MAX, true), bin(400, false), bin(u32::MAX, false)], [29; 4]);
        assert_eq!([bin(0, false), bin(1, false), bin(2, false), bin(3, false), bin(4, false)], [15, 16, 17, 17, 18]);
        for grid in [SHOWINGS, DAYS, STAGE_DAYS] {
            assert_eq!(grid.places()[0], 0);
            assert!(grid.places().is_sorted_by(|a, b| a < b));
            let all: std::collections::BTreeSet<usize> =
                (0..500).flat_map(|wait| [grid.bin(wait, true), grid.bin(wait, false)]).collect();
            assert_eq!(all, (0..grid.bins()).collect());
        }
    }
}
