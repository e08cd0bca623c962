//! How long a word stood in each stage.

use super::tally::{TakesIn, Tally, no_state, typed};
use crate::vocabulary::{Outcome, Vocabulary, words};
use datafusion::arrow::array::{ArrayRef, Int32Builder, ListBuilder, StringBuilder, StructBuilder};
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
        vec![DataType::Int32, DataType::Dictionary(Box::new(DataType::UInt8), Box::new(DataType::Utf8))]
    }

    fn result() -> DataType {
        DataType::new_list(DataType::Struct(fields()), true)
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
        to.extend(self.0.iter().flat_map(|(at, stage)| [i64::from(*at), i64::from(*stage)]));
    }

    fn absorb(&mut self, state: &[i64]) -> Result<()> {
        for pair in state.chunks(2) {
            let [at, stage] = pair else { return no_state(Self::NAME, state) };
            let (Ok(at), Ok(stage)) = (i32::try_from(*at), u8::try_from(*stage)) else {
                return no_state(Self::NAME, state);
            };
            self.0.push((at, stage));
        }
        Ok(())
    }

    fn results(all: Vec<Self>) -> Result<ArrayRef> {
        let row = StructBuilder::new(
            fields(),
            vec![Box::new(StringBuilder::new()), Box::new(Int32Builder::new()), Box::new(Int32Builder::new())],
        );
        let mut list = ListBuilder::new(row);
        for tally in all {
            for (stage, begin, end) in tally.spells() {
                let row = list.values();
                if let Some(column) = row.field_builder::<StringBuilder>(0) {
                    column.append_value(stage.name());
                }
                if let Some(column) = row.field_builder::<Int32Builder>(1) {
                    column.append_value(begin);
                }
                if let Some(column) = row.field_builder::<Int32Builder>(2) {
                    column.append_option(end);
                }
                row.append(true);
            }
            list.append(true);
        }
        Ok(Arc::new(list.finish()))
    }

    fn heap(&self) -> usize {
        self.0.capacity() * size_of::<(i32, u8)>()
    }
}
