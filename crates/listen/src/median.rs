//! The middle of some numbers.

/// The middle value, or the mean of the two middle ones; not a number where there are none.
pub(crate) fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    let n = values.len();
    if n == 0 { f64::NAN } else { 0.5 * (values[(n - 1) / 2] + values[n / 2]) }
}
