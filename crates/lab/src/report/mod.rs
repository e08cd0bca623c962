//! What is written: figures with their intervals, tables, charts.

pub(crate) mod chart;
pub(crate) mod figure;
