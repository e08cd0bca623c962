//! Answers given: counted by class, and how long they took.

use axum::http::{Method, StatusCode};
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Duration;

/// Classes of answers, by their first digit less one.
pub const CLASSES: [&str; 5] = ["1xx", "2xx", "3xx", "4xx", "5xx"];

/// What is asked for.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Asked {
    /// Taps that are sent.
    Taps,
    /// Anything else of a person's: pages, and what is sent by them.
    Pages,
}

impl Asked {
    /// Both, by their names.
    pub const ALL: [(Self, &str); 2] = [(Self::Taps, "taps"), (Self::Pages, "pages")];

    /// What a request asks for; none for files that all have in common, and for programs that watch.
    #[must_use]
    pub fn of(method: &Method, path: &str) -> Option<Self> {
        match path {
            "/api/events" if method == Method::POST => Some(Self::Taps),
            "/healthz" | "/readyz" | "/metrics" | "/sw.js" => None,
            path if path.starts_with("/assets/") => None,
            _ => Some(Self::Pages),
        }
    }
}

/// Upper ends of the classes of times, in seconds, as the text format writes them, and in microseconds; longer ones have no end.
pub const ENDS: [(&str, u64); 11] = [
    ("0.005", 5_000),
    ("0.01", 10_000),
    ("0.02", 20_000),
    ("0.04", 40_000),
    ("0.1", 100_000),
    ("0.2", 200_000),
    ("0.4", 400_000),
    ("1.0", 1_000_000),
    ("2.0", 2_000_000),
    ("5.0", 5_000_000),
    ("10.0", 10_000_000),
];

/// Times of answers, by class.
#[derive(Debug, Default)]
pub struct Times {
    classes: [AtomicU64; ENDS.len() + 1],
    micros: AtomicU64,
}

impl Times {
    fn took(&self, time: Duration) {
        let micros = u64::try_from(time.as_micros()).unwrap_or(u64::MAX);
        let class = ENDS.iter().position(|(_, end)| micros <= *end).unwrap_or(ENDS.len());
        if let Some(count) = self.classes.get(class) {
            count.fetch_add(1, Ordering::Relaxed);
        }
        self.micros.fetch_add(micros, Ordering::Relaxed);
    }

    /// How many took at most so long, class by class; the last is of all.
    pub fn at_most(&self) -> impl Iterator<Item = (&'static str, u64)> {
        let ends = ENDS.iter().map(|(end, _)| *end).chain(["+Inf"]);
        ends.zip(&self.classes).scan(0, |sum, (end, count)| {
            *sum += count.load(Ordering::Relaxed);
            Some((end, *sum))
        })
    }

    /// How long all took together, seconds.
    #[must_use]
    pub fn seconds(&self) -> f64 {
        Duration::from_micros(self.micros.load(Ordering::Relaxed)).as_secs_f64()
    }
}

/// Answers given since the start.
#[derive(Debug, Default)]
pub struct Answers {
    /// By the class of their status.
    pub by_class: [AtomicU64; 5],
    times: [Times; 2],
}

impl Answers {
    /// Counts one.
    pub fn count(&self, status: StatusCode, asked: Option<Asked>, time: Duration) {
        let class = usize::from(status.as_u16() / 100).saturating_sub(1);
        if let Some(count) = self.by_class.get(class) {
            count.fetch_add(1, Ordering::Relaxed);
        }
        if let Some(asked) = asked {
            self.times(asked).took(time);
        }
    }

    /// How long answers to it took.
    #[must_use]
    pub const fn times(&self, asked: Asked) -> &Times {
        match asked {
            Asked::Taps => &self.times[0],
            Asked::Pages => &self.times[1],
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_are_counted_up_to_each_end_and_over_all() {
        let answers = Answers::default();
        for micros in [5_000, 5_001, 300_000, 60_000_000] {
            answers.count(StatusCode::OK, Some(Asked::Pages), Duration::from_micros(micros));
        }
        let pages: Vec<(&str, u64)> = answers.times(Asked::Pages).at_most().collect();
        assert_eq!(pages.len(), ENDS.len() + 1);
        for told in [("0.005", 1), ("0.01", 2), ("0.2", 2), ("0.4", 3), ("10.0", 3), ("+Inf", 4)] {
            assert!(pages.contains(&told), "{told:?}: {pages:?}");
        }
        assert!((answers.times(Asked::Pages).seconds() - 60.310_001).abs() < 1e-9);
        assert_eq!(answers.times(Asked::Taps).at_most().last(), Some(("+Inf", 0)));
        for (end, micros) in ENDS {
            assert_eq!(end.parse().map(Duration::from_secs_f64), Ok(Duration::from_micros(micros)), "{end}");
        }
    }

    #[test]
    fn files_and_programs_that_watch_are_timed_by_nobody() {
        assert_eq!(Asked::of(&Method::POST, "/api/events"), Some(Asked::Taps));
        assert_eq!(Asked::of(&Method::GET, "/api/events"), Some(Asked::Pages));
        assert_eq!((Asked::of(&Method::GET, "/assets/x/base.css"), Asked::of(&Method::GET, "/readyz")), (None, None));
        assert_eq!(Asked::of(&Method::GET, "/sw.js"), None);
    }
}
