//! Answers given, counted by class.

use axum::http::StatusCode;
use std::sync::atomic::{AtomicU64, Ordering};

/// Classes of answers, by their first digit less one.
pub const CLASSES: [&str; 5] = ["1xx", "2xx", "3xx", "4xx", "5xx"];

/// Answers given since the start, by the class of their status.
#[derive(Debug, Default)]
pub struct Answers(pub [AtomicU64; 5]);

impl Answers {
    pub fn count(&self, status: StatusCode) {
        let class = usize::from(status.as_u16() / 100).saturating_sub(1);
        if let Some(count) = self.0.get(class) {
            count.fetch_add(1, Ordering::Relaxed);
        }
    }
}
