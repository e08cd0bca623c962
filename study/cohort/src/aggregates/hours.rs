//! The shape of an animal's day: its presses over the 24 hours.

use super::tally::{TakesIn, Tally, lists, lists_of, no_state, typed};
use datafusion::arrow::array::{ArrayRef, Float64Array, UInt8Array, UInt64Array};
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

impl Hours {
    /// Hour, presses and their share, for every hour of the day; none where nothing was pressed.
    fn rows(self) -> Vec<(u8, u64, f64)> {
        let sum = self.0.iter().sum::<u64>();
        let each = (0_u8..).zip(self.0).filter(|_| sum > 0);
        each.map(|(hour, presses)| (hour, presses, presses as f64 / sum as f64)).collect()
    }
}

impl Tally for Hours {
    const NAME: &'static str = "hours";
    const ROW_BYTES: usize = 0;

    fn inputs() -> Vec<DataType> {
        vec![DataType::UInt8]
    }

    fn result() -> DataType {
        lists_of(fields())
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
        lists(fields(), all.into_iter().map(Self::rows).collect(), |rows| {
            vec![
                Arc::new(UInt8Array::from_iter_values(rows.iter().map(|row| row.0))),
                Arc::new(UInt64Array::from_iter_values(rows.iter().map(|row| row.1))),
                Arc::new(Float64Array::from_iter_values(rows.iter().map(|row| row.2))),
            ]
        })
    }

    fn heap(&self) -> usize {
        0
    }
}
