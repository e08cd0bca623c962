//! Quantiles of waits that may not be over: `sayso_methods::learning::latency`, on counts that merge.

use super::tally::{TakesIn, Tally, no_state, typed};
use datafusion::arrow::array::{Array, ArrayRef, AsArray, Float64Array, Int64Array, StructArray, UInt64Array};
use datafusion::arrow::datatypes::{DataType, Field, Fields, Float64Type};
use datafusion::common::{DataFusionError, Result, exec_err};
use sayso_methods::learning::latency::{SurvivalCurve, Wait, kaplan_meier};
use sayso_methods::stats::Level;
use std::collections::BTreeMap;
use std::sync::Arc;

/// How many waits of which length ended how. Keys are the bits of the length: no rounding, whatever the unit.
#[derive(Debug, Default)]
pub(super) struct Survival(BTreeMap<(u64, bool), u64>);

/// Names of the times by which the event has come for these shares.
const QUANTILES: [(&str, f64); 4] =
    [("quarter", 0.25), ("half", 0.5), ("three_quarters", 0.75), ("nine_tenths", NINE_TENTHS)];

/// The share beyond whose time a wait that is not over counts as longer than usual.
const NINE_TENTHS: f64 = 0.9;

fn fields() -> Fields {
    let counts = ["n", "events"].map(|name| Field::new(name, DataType::UInt64, false));
    let times = QUANTILES.map(|(name, _)| name).into_iter().chain(["half_low", "half_high"]);
    let times = times.map(|name| Field::new(name, DataType::Float64, true));
    counts.into_iter().chain(times).chain([Field::new("longer", DataType::Int64, true)]).collect()
}

impl Survival {
    fn curve(&self) -> Result<Option<SurvivalCurve>> {
        let waits: Vec<Wait> = self
            .0
            .iter()
            .flat_map(|((time, event), count)| {
                let wait = Wait { time: f64::from_bits(*time), event: *event };
                std::iter::repeat_n(wait, usize::try_from(*count).unwrap_or(usize::MAX))
            })
            .collect();
        if waits.is_empty() {
            return Ok(None);
        }
        let curve = kaplan_meier(&waits, Level::P95);
        curve.map(Some).map_err(|why| DataFusionError::Execution(why.to_string()))
    }

    /// Waits not over yet and longer than that.
    fn open_beyond(&self, time: f64) -> i64 {
        let longer = self.0.iter().filter(|((wait, event), _)| !event && f64::from_bits(*wait) > time);
        i64::try_from(longer.map(|(_, count)| count).sum::<u64>()).unwrap_or(i64::MAX)
    }
}

impl Tally for Survival {
    const NAME: &'static str = "survival";
    const ROW_BYTES: usize = 8;

    fn inputs() -> Vec<DataType> {
        vec![DataType::Float64, DataType::Boolean]
    }

    fn result() -> DataType {
        DataType::Struct(fields())
    }

    fn reader(columns: &[ArrayRef]) -> Result<TakesIn<'_, Self>> {
        let times = typed::<Float64Type>(&columns[0])?;
        let Some(events) = columns[1].as_boolean_opt() else {
            return exec_err!("whether the event came must be yes or no, not {}", columns[1].data_type());
        };
        Ok(Box::new(move |tally, row| {
            if times.is_valid(row) && events.is_valid(row) {
                // Adding zero turns -0 into 0.
                *tally.0.entry(((times.value(row) + 0.0).to_bits(), events.value(row))).or_default() += 1;
            }
        }))
    }

    fn state(&self, to: &mut Vec<i64>) {
        for ((time, event), count) in &self.0 {
            to.extend([time.cast_signed(), i64::from(*event), i64::try_from(*count).unwrap_or(i64::MAX)]);
        }
    }

    fn absorb(&mut self, state: &[i64]) -> Result<()> {
        for part in state.chunks(3) {
            let [time, event, count] = part else { return no_state(Self::NAME, state) };
            let Ok(count) = u64::try_from(*count) else { return no_state(Self::NAME, state) };
            *self.0.entry((time.cast_unsigned(), *event != 0)).or_default() += count;
        }
        Ok(())
    }

    fn results(all: Vec<Self>) -> Result<ArrayRef> {
        let curves = all.iter().map(Self::curve).collect::<Result<Vec<_>>>()?;
        let counts = |of: fn(&SurvivalCurve) -> usize| -> ArrayRef {
            let counted = curves.iter().map(|curve| curve.as_ref().map_or(0, of) as u64);
            Arc::new(UInt64Array::from_iter_values(counted))
        };
        let times = |of: &dyn Fn(&SurvivalCurve) -> Option<f64>| -> ArrayRef {
            Arc::new(curves.iter().map(|curve| curve.as_ref().and_then(of)).collect::<Float64Array>())
        };
        let mut columns = vec![counts(|curve| curve.n), counts(|curve| curve.events)];
        columns.extend(QUANTILES.map(|(_, share)| times(&|curve| curve.quantile(share))));
        columns.push(times(&|curve| curve.median_interval().low));
        columns.push(times(&|curve| curve.median_interval().high));
        let longer = all.iter().zip(&curves).map(|(waits, curve)| {
            curve.as_ref().and_then(|curve| curve.quantile(NINE_TENTHS)).map(|usual| waits.open_beyond(usual))
        });
        columns.push(Arc::new(longer.collect::<Int64Array>()));
        Ok(Arc::new(StructArray::try_new(fields(), columns, None)?))
    }

    fn heap(&self) -> usize {
        self.0.len() * 48
    }
}
