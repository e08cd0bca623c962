//! When an animal first pressed a word by itself, and how often it had been shown by then.

use super::tally::{TakesIn, Tally, no_state, typed};
use crate::schema;
use crate::vocabulary::{By, Kind, Outcome, Vocabulary, words};
use datafusion::arrow::array::{ArrayRef, Int32Array, StringArray, StructArray, UInt32Array};
use datafusion::arrow::datatypes::{DataType, Field, Fields, Int32Type};
use datafusion::common::Result;
use sayso_norms::WordKind;
use std::sync::Arc;

/// Showings of one word, up to the first press, and that press.
#[derive(Debug, Default)]
pub(super) struct FirstPress {
    /// Times of showings; none after the first press.
    shown: Vec<i32>,
    /// The first showing.
    begin: Option<i32>,
    /// The first press by the animal: of its own accord, or the invited word at an invitation.
    first: Option<i32>,
    kind: Option<u8>,
}

impl FirstPress {
    fn shown(&mut self, at: i32) {
        self.begin = Some(self.begin.map_or(at, |begin| begin.min(at)));
        if self.first.is_none_or(|first| at < first) {
            self.shown.push(at);
        }
    }

    fn pressed(&mut self, at: i32) {
        if self.first.is_none_or(|first| at < first) {
            self.first = Some(at);
            self.shown.retain(|shown| *shown < at);
        }
    }
}

fn fields() -> Fields {
    Fields::from(vec![
        Field::new("word_kind", DataType::Utf8, true),
        Field::new("exposures", DataType::UInt32, false),
        Field::new("begin_s", DataType::Int32, true),
        Field::new("first_s", DataType::Int32, true),
    ])
}

/// Stands in a state for what was not.
const NONE: i64 = i64::MIN;

impl Tally for FirstPress {
    const NAME: &'static str = "first_press";
    const ROW_BYTES: usize = 4;

    fn inputs() -> Vec<DataType> {
        std::iter::once(DataType::Int32).chain(std::iter::repeat_n(schema::words(), 4)).collect()
    }

    fn result() -> DataType {
        DataType::Struct(fields())
    }

    fn reader(columns: &[ArrayRef]) -> Result<TakesIn<'_, Self>> {
        let at = typed::<Int32Type>(&columns[0])?.values();
        let kind = words::<Kind>(&columns[1])?;
        let by = words::<By>(&columns[2])?;
        let outcome = words::<Outcome>(&columns[3])?;
        let word_kind = words::<WordKind>(&columns[4])?;
        Ok(Box::new(move |tally, row| {
            match kind(row) {
                Some(Kind::Showing) => tally.shown(at[row]),
                Some(Kind::Press) if by(row) == Some(By::Animal) => tally.pressed(at[row]),
                Some(Kind::Invitation) if outcome(row) == Some(Outcome::Right) => tally.pressed(at[row]),
                _ => {}
            }
            if tally.kind.is_none() {
                tally.kind = word_kind(row).map(Vocabulary::number);
            }
        }))
    }

    fn state(&self, to: &mut Vec<i64>) {
        let number = |value: Option<i32>| value.map_or(NONE, i64::from);
        to.extend([number(self.begin), number(self.first), self.kind.map_or(NONE, i64::from)]);
        to.extend(self.shown.iter().map(|at| i64::from(*at)));
    }

    fn absorb(&mut self, state: &[i64]) -> Result<()> {
        let read = |number: i64| i32::try_from(number).ok();
        let [begin, first, kind, shown @ ..] = state else { return no_state(Self::NAME, state) };
        if let Some(first) = read(*first) {
            self.pressed(first);
        }
        for at in shown {
            match read(*at) {
                Some(at) => self.shown(at),
                None => return no_state(Self::NAME, state),
            }
        }
        // The first showing may have come after the press.
        self.begin = [self.begin, read(*begin)].into_iter().flatten().min();
        self.kind = self.kind.or_else(|| u8::try_from(*kind).ok());
        Ok(())
    }

    fn results(all: Vec<Self>) -> Result<ArrayRef> {
        let kind = |tally: &Self| tally.kind.and_then(|n| WordKind::ALL.get(usize::from(n))).map(|kind| kind.name());
        let exposures = all.iter().map(|tally| u32::try_from(tally.shown.len()).unwrap_or(u32::MAX));
        let columns: Vec<ArrayRef> = vec![
            Arc::new(all.iter().map(kind).collect::<StringArray>()),
            Arc::new(UInt32Array::from_iter_values(exposures)),
            Arc::new(all.iter().map(|tally| tally.begin).collect::<Int32Array>()),
            Arc::new(all.iter().map(|tally| tally.first).collect::<Int32Array>()),
        ];
        Ok(Arc::new(StructArray::try_new(fields(), columns, None)?))
    }

    fn heap(&self) -> usize {
        self.shown.capacity() * size_of::<i32>()
    }
}
