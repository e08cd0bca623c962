//! Presses at invitations by how often the word had been shown before: what pooled learning curves are made of.

use super::tally::{TakesIn, Tally, lists, lists_of, no_state, read_times, typed, write_times};
use crate::schema;
use crate::vocabulary::{Kind, Outcome, words};
use datafusion::arrow::array::{Array, ArrayRef, AsArray, UInt32Array};
use datafusion::arrow::datatypes::{DataType, Field, Fields, Int32Type};
use datafusion::common::{Result, exec_err};
use std::sync::Arc;

/// Showings from which the next stretch of the curve counts: each twice as wide as the one before, as learning slows.
pub(crate) const STRETCHES: [u32; 8] = [0, 10, 20, 40, 80, 160, 320, 640];

const WANTED: u8 = 1;
const PRESSED: u8 = 2;
const RIGHT: u8 = 4;

/// Showings and invitations of one word.
#[derive(Debug, Default)]
pub(super) struct Dose {
    shown: Vec<i32>,
    /// When, and whether it was wanted, a button pressed, the right one.
    invited: Vec<(i32, u8)>,
}

const COUNTS: [&str; 5] = ["shown", "wanted", "pressed", "presses", "right"];

fn fields() -> Fields {
    COUNTS.map(|name| Field::new(name, DataType::UInt32, false)).to_vec().into()
}

impl Dose {
    /// Counts by stretch: wanted, pressed of these; presses, right of these.
    fn counts(mut self) -> [[u32; 4]; STRETCHES.len()] {
        self.shown.sort_unstable();
        let mut counts = [[0; 4]; STRETCHES.len()];
        for (at, what) in self.invited {
            let before = u32::try_from(self.shown.partition_point(|shown| *shown < at)).unwrap_or(u32::MAX);
            let stretch = STRETCHES.partition_point(|from| *from <= before).saturating_sub(1);
            let is = |of: u8| u32::from(what & of == of);
            let add = [is(WANTED), is(WANTED | PRESSED), is(PRESSED), is(PRESSED | RIGHT)];
            for (count, add) in counts[stretch].iter_mut().zip(add) {
                *count += add;
            }
        }
        counts
    }

    /// Where each stretch begins that has something to count, and its counts.
    fn rows(self) -> Vec<[u32; COUNTS.len()]> {
        let stretches = STRETCHES.into_iter().zip(self.counts()).filter(|(_, counts)| counts[0] + counts[2] > 0);
        stretches.map(|(from, [wanted, pressed, presses, right])| [from, wanted, pressed, presses, right]).collect()
    }
}

impl Tally for Dose {
    const NAME: &'static str = "dose";
    const ROW_BYTES: usize = 8;

    fn inputs() -> Vec<DataType> {
        vec![DataType::Int32, schema::words(), schema::words(), DataType::Boolean]
    }

    fn result() -> DataType {
        lists_of(fields())
    }

    fn reader(columns: &[ArrayRef]) -> Result<TakesIn<'_, Self>> {
        let at = typed::<Int32Type>(&columns[0])?.values();
        let kind = words::<Kind>(&columns[1])?;
        let outcome = words::<Outcome>(&columns[2])?;
        let Some(joined) = columns[3].as_boolean_opt() else {
            return exec_err!("whether it joined must be yes or no, not {}", columns[3].data_type());
        };
        Ok(Box::new(move |tally, row| match kind(row) {
            Some(Kind::Showing) => tally.shown.push(at[row]),
            Some(Kind::Invitation) => {
                let pressed = match outcome(row) {
                    Some(Outcome::Right) => PRESSED | RIGHT,
                    Some(Outcome::Wrong) => PRESSED,
                    _ => 0,
                };
                let wanted = if joined.is_valid(row) && joined.value(row) { WANTED } else { 0 };
                // Not pressing what was not wanted says nothing.
                if pressed | wanted != 0 {
                    tally.invited.push((at[row], pressed | wanted));
                }
            }
            _ => {}
        }))
    }

    fn state(&self, to: &mut Vec<i64>) {
        to.push(i64::try_from(self.shown.len()).unwrap_or(i64::MAX));
        to.extend(self.shown.iter().map(|at| i64::from(*at)));
        write_times(&self.invited, to);
    }

    fn absorb(&mut self, state: &[i64]) -> Result<()> {
        let Some((showings, rest)) = state.split_first() else { return no_state(Self::NAME, state) };
        let split = usize::try_from(*showings).ok().and_then(|showings| rest.split_at_checked(showings));
        let Some((shown, invited)) = split else { return no_state(Self::NAME, state) };
        for at in shown {
            let Ok(at) = i32::try_from(*at) else { return no_state(Self::NAME, state) };
            self.shown.push(at);
        }
        let Some(()) = read_times(invited, &mut self.invited) else { return no_state(Self::NAME, state) };
        Ok(())
    }

    fn results(all: Vec<Self>) -> Result<ArrayRef> {
        lists(fields(), all.into_iter().map(Self::rows).collect(), |rows| {
            let column =
                |at: usize| -> ArrayRef { Arc::new(UInt32Array::from_iter_values(rows.iter().map(|row| row[at]))) };
            (0..COUNTS.len()).map(column).collect()
        })
    }

    fn heap(&self) -> usize {
        self.shown.capacity() * size_of::<i32>() + self.invited.capacity() * size_of::<(i32, u8)>()
    }
}
