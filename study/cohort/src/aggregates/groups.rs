//! Tallies as the engine wants them: one for a whole column, and many by group.

use super::tally::Tally;
use datafusion::arrow::array::{Array, ArrayRef, AsArray, BooleanArray, Int64Builder, ListArray, ListBuilder};
use datafusion::arrow::datatypes::{DataType, Field, FieldRef, Int64Type};
use datafusion::common::{Result, ScalarValue, exec_err};
use datafusion::logical_expr::function::{AccumulatorArgs, StateFieldsArgs};
use datafusion::logical_expr::utils::format_state_name;
use datafusion::logical_expr::{
    Accumulator, AggregateUDF, AggregateUDFImpl, EmitTo, GroupsAccumulator, Signature, Volatility,
};
use std::hash::{Hash, Hasher};
use std::marker::PhantomData;
use std::sync::Arc;

/// The aggregate of a tally.
pub(super) fn made<T: Tally>() -> Arc<AggregateUDF> {
    let signature = Signature::exact(T::inputs(), Volatility::Immutable);
    Arc::new(AggregateUDF::new_from_impl(Aggregate::<T> { signature, of: PhantomData }))
}

#[derive(Debug)]
struct Aggregate<T> {
    signature: Signature,
    of: PhantomData<fn() -> T>,
}

impl<T: Tally> PartialEq for Aggregate<T> {
    fn eq(&self, other: &Self) -> bool {
        self.signature == other.signature
    }
}
impl<T: Tally> Eq for Aggregate<T> {}
impl<T: Tally> Hash for Aggregate<T> {
    fn hash<H: Hasher>(&self, state: &mut H) {
        T::NAME.hash(state);
    }
}

fn state_type() -> DataType {
    DataType::new_list(DataType::Int64, true)
}

impl<T: Tally> AggregateUDFImpl for Aggregate<T> {
    fn name(&self) -> &str {
        T::NAME
    }
    fn signature(&self) -> &Signature {
        &self.signature
    }
    fn return_type(&self, _: &[DataType]) -> Result<DataType> {
        Ok(T::result())
    }
    fn state_fields(&self, args: StateFieldsArgs<'_>) -> Result<Vec<FieldRef>> {
        Ok(vec![Arc::new(Field::new(format_state_name(args.name, "state"), state_type(), true))])
    }
    fn accumulator(&self, _: AccumulatorArgs<'_>) -> Result<Box<dyn Accumulator>> {
        Ok(Box::new(One(T::default())))
    }
    fn groups_accumulator_supported(&self, _: AccumulatorArgs<'_>) -> bool {
        true
    }
    fn create_groups_accumulator(&self, _: AccumulatorArgs<'_>) -> Result<Box<dyn GroupsAccumulator>> {
        Ok(Box::new(Groups::<T> { all: Vec::new(), heap: 0 }))
    }
}

/// States as a column, a list of numbers each.
fn states<'a, T: Tally>(all: impl Iterator<Item = &'a T>) -> ListArray {
    let mut list = ListBuilder::new(Int64Builder::new());
    let mut numbers = Vec::new();
    for tally in all {
        numbers.clear();
        tally.state(&mut numbers);
        list.values().append_slice(&numbers);
        list.append(true);
    }
    list.finish()
}

/// Hands the states of a column on, each with its row.
fn each_state(columns: &[ArrayRef], mut to: impl FnMut(usize, &[i64]) -> Result<()>) -> Result<()> {
    let [column] = columns else { return exec_err!("a state is one column, not {}", columns.len()) };
    let Some(list) = column.as_list_opt::<i32>() else {
        return exec_err!("a state is a list of numbers, not {}", column.data_type());
    };
    let Some(numbers) = list.values().as_primitive_opt::<Int64Type>() else {
        return exec_err!("a state is a list of whole numbers, not {}", list.values().data_type());
    };
    for (row, ends) in list.value_offsets().windows(2).enumerate() {
        // Offsets of a list are not negative and in order.
        to(row, &numbers.values()[ends[0] as usize..ends[1] as usize])?;
    }
    Ok(())
}

#[derive(Debug)]
struct One<T>(T);

impl<T: Tally> Accumulator for One<T> {
    fn update_batch(&mut self, values: &[ArrayRef]) -> Result<()> {
        let take_in = T::reader(values)?;
        let rows = values.first().map_or(0, |column| column.len());
        (0..rows).for_each(|row| take_in(&mut self.0, row));
        Ok(())
    }
    fn evaluate(&mut self) -> Result<ScalarValue> {
        let result = T::results(vec![std::mem::take(&mut self.0)])?;
        ScalarValue::try_from_array(&result, 0)
    }
    fn size(&self) -> usize {
        size_of::<Self>() + self.0.heap()
    }
    fn state(&mut self) -> Result<Vec<ScalarValue>> {
        let state = states(std::iter::once(&std::mem::take(&mut self.0)));
        Ok(vec![ScalarValue::try_from_array(&state, 0)?])
    }
    fn merge_batch(&mut self, states: &[ArrayRef]) -> Result<()> {
        each_state(states, |_, state| self.0.absorb(state))
    }
}

struct Groups<T> {
    all: Vec<T>,
    /// Bytes held by the tallies besides themselves, about.
    heap: usize,
}

impl<T: Tally> Groups<T> {
    fn take(&mut self, emit: EmitTo) -> Vec<T> {
        let taken = emit.take_needed(&mut self.all);
        self.heap = self.all.iter().map(Tally::heap).sum();
        taken
    }
}

fn passes(filter: Option<&BooleanArray>, row: usize) -> bool {
    filter.is_none_or(|filter| filter.is_valid(row) && filter.value(row))
}

impl<T: Tally> GroupsAccumulator for Groups<T> {
    fn update_batch(
        &mut self,
        values: &[ArrayRef],
        groups: &[usize],
        filter: Option<&BooleanArray>,
        total: usize,
    ) -> Result<()> {
        self.all.resize_with(total, T::default);
        let take_in = T::reader(values)?;
        for (row, group) in groups.iter().enumerate() {
            if passes(filter, row) {
                take_in(&mut self.all[*group], row);
            }
        }
        self.heap += groups.len() * T::ROW_BYTES;
        Ok(())
    }
    fn evaluate(&mut self, emit: EmitTo) -> Result<ArrayRef> {
        T::results(self.take(emit))
    }
    fn state(&mut self, emit: EmitTo) -> Result<Vec<ArrayRef>> {
        Ok(vec![Arc::new(states(self.take(emit).iter()))])
    }
    fn merge_batch(&mut self, values: &[ArrayRef], groups: &[usize], total: usize) -> Result<()> {
        self.all.resize_with(total, T::default);
        let (all, heap) = (&mut self.all, &mut self.heap);
        each_state(values, |row, state| {
            *heap += state.len() * T::ROW_BYTES;
            all[groups[row]].absorb(state)
        })
    }
    fn convert_to_state(&self, values: &[ArrayRef], filter: Option<&BooleanArray>) -> Result<Vec<ArrayRef>> {
        let take_in = T::reader(values)?;
        let rows = values.first().map_or(0, |column| column.len());
        let each: Vec<T> = (0..rows)
            .map(|row| {
                let mut one = T::default();
                if passes(filter, row) {
                    take_in(&mut one, row);
                }
                one
            })
            .collect();
        Ok(vec![Arc::new(states(each.iter()))])
    }
    fn size(&self) -> usize {
        self.all.capacity() * size_of::<T>() + self.heap
    }
}
