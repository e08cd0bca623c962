//! What an aggregate is here.

use datafusion::arrow::array::{Array, ArrayRef, ListArray, PrimitiveArray, StructArray};
use datafusion::arrow::buffer::OffsetBuffer;
use datafusion::arrow::datatypes::{ArrowPrimitiveType, DataType, Field, Fields};
use datafusion::common::{Result, exec_err};
use std::fmt::Debug;
use std::sync::Arc;

/// Takes in one row of a batch.
pub(super) type TakesIn<'a, T> = Box<dyn Fn(&mut T, usize) + 'a>;

/// A tally of rows whose states merge: taking in all rows gives the same result as taking them in by parts, in any order, and
/// absorbing the parts' states.
pub(super) trait Tally: Default + Debug + Send + Sync + 'static {
    /// Its name in plans.
    const NAME: &'static str;
    /// Bytes that one row adds, about.
    const ROW_BYTES: usize;

    /// Types of the columns it takes.
    fn inputs() -> Vec<DataType>;

    /// Type of its result.
    fn result() -> DataType;

    /// What takes in the rows of this batch.
    ///
    /// # Errors
    /// Where a column is not of its type.
    fn reader(columns: &[ArrayRef]) -> Result<TakesIn<'_, Self>>;

    /// Writes what it has seen as numbers.
    fn state(&self, to: &mut Vec<i64>);

    /// Adds what another has seen.
    ///
    /// # Errors
    /// Where the numbers are no state.
    fn absorb(&mut self, state: &[i64]) -> Result<()>;

    /// The results of several, one row each.
    ///
    /// # Errors
    /// Where the method behind refuses what was seen.
    fn results(all: Vec<Self>) -> Result<ArrayRef>;

    /// Bytes it holds besides itself.
    fn heap(&self) -> usize;
}

/// A column as the type it must have.
pub(super) fn typed<T: ArrowPrimitiveType>(column: &ArrayRef) -> Result<&PrimitiveArray<T>> {
    match column.as_any().downcast_ref() {
        Some(typed) => Ok(typed),
        None => exec_err!("expected a column of {}, not of {}", T::DATA_TYPE, column.data_type()),
    }
}

/// The error of a state that is none.
pub(super) fn no_state<T>(of: &str, state: &[i64]) -> Result<T> {
    exec_err!("{} numbers are no state of {of}", state.len())
}

/// Times of one word, each with what it was, as numbers of a state.
pub(super) fn write_times(times: &[(i32, u8)], to: &mut Vec<i64>) {
    to.extend(times.iter().flat_map(|(at, what)| [i64::from(*at), i64::from(*what)]));
}

/// Reads what [`write_times`] wrote; none where the numbers are no such times.
pub(super) fn read_times(state: &[i64], to: &mut Vec<(i32, u8)>) -> Option<()> {
    for pair in state.chunks(2) {
        let [at, what] = pair else { return None };
        to.push((i32::try_from(*at).ok()?, u8::try_from(*what).ok()?));
    }
    Some(())
}

/// The type of a list of rows of these fields.
pub(super) fn lists_of(fields: Fields) -> DataType {
    DataType::new_list(DataType::Struct(fields), true)
}

/// Rows of several tallies, a list each: `columns` makes the columns of all rows together.
pub(super) fn lists<R>(
    fields: Fields,
    rows: Vec<Vec<R>>,
    columns: impl FnOnce(&[R]) -> Vec<ArrayRef>,
) -> Result<ArrayRef> {
    let ends = OffsetBuffer::from_lengths(rows.iter().map(Vec::len));
    let rows: Vec<R> = rows.into_iter().flatten().collect();
    let row = Arc::new(Field::new_list_field(DataType::Struct(fields.clone()), true));
    let rows = StructArray::try_new(fields, columns(&rows), None)?;
    Ok(Arc::new(ListArray::try_new(row, ends, Arc::new(rows), None)?))
}
