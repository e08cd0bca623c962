//! What is asked, and how answers are compared.

/// Every question by name.
pub const QUESTIONS: [&str; 5] = ["first-press", "hours", "sessions", "stuck", "curve"];

/// Cells of a table. Sums of numbers with a point may differ in their last digits by the order in which they were added.
pub fn cells(text: &str) -> Vec<String> {
    let rounded = |cell: &str| cell.parse::<f64>().map_or_else(|_| cell.to_owned(), |x| format!("{x:.9}"));
    text.split([',', '\n']).map(rounded).collect()
}
