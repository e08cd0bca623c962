//! The mean of a share over units (animals or households) with its interval, each unit counting once however much it pressed.
//!
//! Sources: states merge by T. F. Chan, G. H. Golub & R. J. LeVeque (1983), Am Stat 37:242; interval by Student's t, the units
//! being what varies. Where none does: C. J. Clopper & E. S. Pearson (1934), Biometrika 26:404, of units.

use super::tally::{TakesIn, Tally, no_state, typed};
use datafusion::arrow::array::{Array, ArrayRef, Float64Array, StructArray, UInt64Array};
use datafusion::arrow::datatypes::{DataType, Field, Fields, Float64Type};
use datafusion::common::{DataFusionError, Result};
use sayso_methods::stats::{Level, Proportion, StatsError, student_t_quantile};
use std::sync::Arc;

/// Differences that are none.
const ROUNDING: f64 = 1e-12;

/// Units, their mean and their squared differences from it.
#[derive(Debug, Default, Clone, Copy)]
pub(super) struct Mean {
    n: u64,
    mean: f64,
    squares: f64,
}

fn fields() -> Fields {
    let count = Field::new("n", DataType::UInt64, false);
    let rest = ["mean", "low", "high"].map(|name| Field::new(name, DataType::Float64, true));
    std::iter::once(count).chain(rest).collect()
}

impl Mean {
    fn add(&mut self, other: Self) {
        let n = self.n + other.n;
        if other.n == 0 {
            return;
        }
        let apart = other.mean - self.mean;
        let share = other.n as f64 / n as f64;
        self.squares += other.squares + apart * apart * self.n as f64 * share;
        self.mean += apart * share;
        self.n = n;
    }

    /// Its 95 % interval; none of fewer than two units. Where all are equal their spread says nothing: of all none, or all,
    /// the mean lies no further off than the share of units that are otherwise may.
    fn interval(&self) -> Result<Option<(f64, f64)>> {
        let failed = |why: StatsError| DataFusionError::Execution(why.to_string());
        if self.n < 2 {
            return Ok(None);
        }
        if self.squares <= ROUNDING * self.n as f64 {
            let whole = [0.0, 1.0].into_iter().find(|end| (self.mean - end).abs() <= ROUNDING);
            let Some(whole) = whole else { return Ok(None) };
            let units = Proportion::new(if whole > 0.5 { self.n } else { 0 }, self.n).map_err(failed)?;
            let interval = units.clopper_pearson(Level::P95);
            return Ok(Some((interval.low, interval.high)));
        }
        let free = (self.n - 1) as f64;
        let t = student_t_quantile(1.0 - Level::P95.tail(), free).map_err(failed)?;
        let half = t * (self.squares / free / self.n as f64).sqrt();
        Ok(Some(((self.mean - half).max(0.0), (self.mean + half).min(1.0))))
    }
}

impl Tally for Mean {
    const NAME: &'static str = "mean_share";
    const ROW_BYTES: usize = 0;

    fn inputs() -> Vec<DataType> {
        vec![DataType::Float64]
    }

    fn result() -> DataType {
        DataType::Struct(fields())
    }

    fn reader(columns: &[ArrayRef]) -> Result<TakesIn<'_, Self>> {
        let shares = typed::<Float64Type>(&columns[0])?;
        Ok(Box::new(move |tally, row| {
            if shares.is_valid(row) {
                tally.add(Self { n: 1, mean: shares.value(row), squares: 0.0 });
            }
        }))
    }

    fn state(&self, to: &mut Vec<i64>) {
        let bits = |value: f64| value.to_bits().cast_signed();
        to.extend([i64::try_from(self.n).unwrap_or(i64::MAX), bits(self.mean), bits(self.squares)]);
    }

    fn absorb(&mut self, state: &[i64]) -> Result<()> {
        let [n, mean, squares] = state else { return no_state(Self::NAME, state) };
        let Ok(n) = u64::try_from(*n) else { return no_state(Self::NAME, state) };
        let value = |bits: i64| f64::from_bits(bits.cast_unsigned());
        self.add(Self { n, mean: value(*mean), squares: value(*squares) });
        Ok(())
    }

    fn results(all: Vec<Self>) -> Result<ArrayRef> {
        let intervals = all.iter().map(Self::interval).collect::<Result<Vec<_>>>()?;
        let end = |of: fn((f64, f64)) -> f64| -> ArrayRef {
            Arc::new(intervals.iter().map(|interval| interval.map(of)).collect::<Float64Array>())
        };
        let columns: Vec<ArrayRef> = vec![
            Arc::new(UInt64Array::from_iter_values(all.iter().map(|of| of.n))),
            Arc::new(all.iter().map(|of| (of.n > 0).then_some(of.mean)).collect::<Float64Array>()),
            end(|interval| interval.0),
            end(|interval| interval.1),
        ];
        Ok(Arc::new(StructArray::try_new(fields(), columns, None)?))
    }

    fn heap(&self) -> usize {
        0
    }
}
