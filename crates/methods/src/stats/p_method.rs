//! How a p-value was made.

/// How a p-value was made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PMethod {
    /// Counted over all orderings.
    Exact,
    /// Large-sample approximation; rough for a handful of items.
    Approximate,
}
