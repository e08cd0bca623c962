//! How long a word stood in each stage.

use super::tally::{TakesIn, Tally, lists, lists_of, no_state, read_times, typed, write_times};
use crate::schema;
use crate::vocabulary::{Outcome, Vocabulary, words};
use datafusion::arrow::array::{ArrayRef, Int32Array, StringArray};
use datafusion::arrow::datatypes::{DataType, Field, Fields, Int32Type};
use datafusion::common::Result;
use std::sync::Arc;

/// Stages one word came to, and when.
#[derive(Debug, Default)]
pub(super) struct Spells(Vec<(i32, u8)>);

fn fields() -> Fields {
    Fields::from(vec![
        Field::new("stage", DataType::Utf8, false),
        Field::new("begin_s", DataType::Int32, false),
        Field::new("end_s", DataType::Int32, true),
    ])
}

fn is_stage(outcome: Outcome) -> bool {
    matches!(outcome, Outcome::Prepare | Outcome::Show | Outcome::Invite | Outcome::Converse)
}

impl Spells {
    /// The stages in order of time, each until the next other one. Of several of one second the furthest counts.
    fn spells(mut self) -> Vec<(Outcome, i32, Option<i32>)> {
        self.0.sort_unstable();
        let mut begun: Vec<(Outcome, i32)> = Vec::new();
        for (at, number) in self.0 {
            let Some(stage) = Outcome::ALL.get(usize::from(number)) else { continue };
            if begun.last().is_some_and(|(_, begin)| *begin == at) {
                begun.pop();
            }
            if begun.last().is_none_or(|(last, _)| last != stage) {
                begun.push((*stage, at));
            }
        }
        let ends = begun.iter().skip(1).map(|(_, begin)| Some(*begin)).chain([None]);
        begun.iter().zip(ends).map(|((stage, begin), end)| (*stage, *begin, end)).collect()
    }
}

impl Tally for Spells {
    const NAME: &'static str = "spells";
    const ROW_BYTES: usize = 8;

    fn inputs() -> Vec<DataType> {
        vec![DataType::Int32, schema::words()]
    }

    fn result() -> DataType {
        lists_of(fields())
    }

    fn reader(columns: &[ArrayRef]) -> Result<TakesIn<'_, Self>> {
        let at = typed::<Int32Type>(&columns[0])?.values();
        let stage = words::<Outcome>(&columns[1])?;
        Ok(Box::new(move |tally, row| {
            if let Some(stage) = stage(row).filter(|outcome| is_stage(*outcome)) {
                tally.0.push((at[row], stage.number()));
            }
        }))
    }

    fn state(&self, to: &mut Vec<i64>) {
        write_times(&self.0, to);
    }

    fn absorb(&mut self, state: &[i64]) -> Result<()> {
        let Some(()) = read_times(state, &mut self.0) else { return no_state(Self::NAME, state) };
        Ok(())
    }

    fn results(all: Vec<Self>) -> Result<ArrayRef> {
        lists(fields(), all.into_iter().map(Self::spells).collect(), |rows| {
            vec![
                Arc::new(StringArray::from_iter_values(rows.iter().map(|(stage, ..)| stage.name()))),
                Arc::new(Int32Array::from_iter_values(rows.iter().map(|(_, begin, _)| *begin))),
                Arc::new(rows.iter().map(|(.., end)| *end).collect::<Int32Array>()),
            ]
        })
    }

    fn heap(&self) -> usize {
        self.0.capacity() * size_of::<(i32, u8)>()
    }
}
