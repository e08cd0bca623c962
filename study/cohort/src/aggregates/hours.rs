//! The shape of an animal's day: its presses over the 24 hours.

use super::tally::{TakesIn, Tally, no_state, typed};
use datafusion::arrow::array::{ArrayRef, Float64Builder, ListBuilder, StructBuilder, UInt8Builder, UInt64Builder};
use datafusion::arrow::datatypes::{DataType, Field, Fields, UInt8Type};
use datafusion::common::Result;
use std::sync::Arc;

/// Presses by local hour.
#[derive(Debug, Default)]
pub(super) struct Hours([u64; 24]);

fn fields() -> Fields {
    Fields::from(vec![
        Field::new("hour", DataType::UInt8, false),
        Field::new("presses", DataType::UInt64, false),
        Field::new("share", DataType::Float64, false),
    ])
}

impl Tally for Hours {
    const NAME: &'static str = "hours";
    const ROW_BYTES: usize = 0;

    fn inputs() -> Vec<DataType> {
        vec![DataType::UInt8]
    }

    fn result() -> DataType {
        DataType::new_list(DataType::Struct(fields()), true)
    }

    fn reader(columns: &[ArrayRef]) -> Result<TakesIn<'_, Self>> {
        let hours = typed::<UInt8Type>(&columns[0])?.values();
        Ok(Box::new(move |tally, row| tally.0[usize::from(hours[row]).min(23)] += 1))
    }

    fn state(&self, to: &mut Vec<i64>) {
        to.extend(self.0.iter().map(|presses| i64::try_from(*presses).unwrap_or(i64::MAX)));
    }

    fn absorb(&mut self, state: &[i64]) -> Result<()> {
        if state.len() != self.0.len() {
            return no_state(Self::NAME, state);
        }
        for (mine, more) in self.0.iter_mut().zip(state) {
            let Ok(more) = u64::try_from(*more) else { return no_state(Self::NAME, state) };
            *mine += more;
        }
        Ok(())
    }

    fn results(all: Vec<Self>) -> Result<ArrayRef> {
        let row = StructBuilder::new(
            fields(),
            vec![Box::new(UInt8Builder::new()), Box::new(UInt64Builder::new()), Box::new(Float64Builder::new())],
        );
        let mut list = ListBuilder::new(row);
        for Self(presses) in all {
            let sum = presses.iter().sum::<u64>();
            for (hour, presses) in (0_u8..).zip(presses).filter(|_| sum > 0) {
                let row = list.values();
                if let Some(column) = row.field_builder::<UInt8Builder>(0) {
                    column.append_value(hour);
                }
                if let Some(column) = row.field_builder::<UInt64Builder>(1) {
                    column.append_value(presses);
                }
                if let Some(column) = row.field_builder::<Float64Builder>(2) {
                    column.append_value(presses as f64 / sum as f64);
                }
                row.append(true);
            }
            list.append(true);
        }
        Ok(Arc::new(list.finish()))
    }

    fn heap(&self) -> usize {
        0
    }
}
