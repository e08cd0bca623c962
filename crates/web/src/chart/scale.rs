//! Axes with round ticks.

use super::{WIDTH, escaped, short};
use sayso_wording::Locale;
use sayso_wording::figures::interval;
use std::fmt::Write;

/// One axis: its ends, its ticks and what it counts.
#[derive(Clone, PartialEq, Debug)]
pub struct Axis {
    /// What it counts, with the unit.
    pub label: String,
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
    /// Places of ticks and what is written there.
    pub ticks: Vec<(f64, String)>,
    /// Whether its values are shares, written in per cent.
    pub shares: bool,
}

impl Axis {
    /// An axis of shares, 0 to 100 %.
    #[must_use]
    pub fn share(locale: &Locale, label: &str) -> Self {
        let ticks = [0.0, 0.25, 0.5, 0.75, 1.0].map(|x| (x, locale.percent(x)));
        Self { label: label.to_owned(), low: 0.0, high: 1.0, ticks: ticks.to_vec(), shares: true }
    }

    /// A value of this axis as its table writes it.
    pub(super) fn value(&self, locale: &Locale, x: f64) -> String {
        if self.shares { locale.percent(x) } else { short(locale, x) }
    }

    /// The two ends of an interval as the table writes them.
    pub(super) fn ends(&self, locale: &Locale, (low, high): (f64, f64)) -> String {
        interval(locale, &self.value(locale, low), &self.value(locale, high))
    }

    /// Where a value lies, 0 at the lower end and 1 at the upper, held inside.
    pub(super) fn part(&self, x: f64) -> f64 {
        let span = self.high - self.low;
        if span > 0.0 && x.is_finite() { ((x - self.low) / span).clamp(0.0, 1.0) } else { 0.0 }
    }
}

/// An axis from `low` to at least `high` with about four round steps (1, 2 or 5 times a power of ten).
/// Ends that are no numbers, or equal, give an axis one wide.
#[must_use]
pub fn nice_axis(locale: &Locale, label: &str, low: f64, high: f64) -> Axis {
    let (low, high) = if low.is_finite() && high.is_finite() && high > low { (low, high) } else { (0.0, 1.0) };
    let raw = (high - low) / 4.0;
    let power = 10_f64.powf(raw.log10().floor());
    let step = [1.0, 2.0, 5.0, 10.0].iter().map(|m| m * power).find(|s| *s >= raw * 0.999).unwrap_or(raw);
    let first = (low / step).floor() * step;
    let last = (high / step - 1e-9).ceil() * step;
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let count = ((last - first) / step).round().clamp(1.0, 20.0) as u32;
    let ticks = (0..=count).map(|i| first + f64::from(i) * step).map(|x| (x, short(locale, x))).collect();
    Axis { label: label.to_owned(), low: first, high: last, ticks, shares: false }
}

/// The room for drawing inside the frame.
pub(super) struct Plot {
    pub(super) left: f64,
    pub(super) top: f64,
    pub(super) right: f64,
    pub(super) bottom: f64,
}

impl Plot {
    /// The usual room in a chart of this height.
    pub(super) fn usual(height: f64) -> Self {
        Self { left: 40.0, top: 22.0, right: WIDTH - 10.0, bottom: height - 36.0 }
    }

    pub(super) fn x(&self, axis: &Axis, x: f64) -> f64 {
        self.left + axis.part(x) * (self.right - self.left)
    }

    pub(super) fn y(&self, axis: &Axis, y: f64) -> f64 {
        self.bottom - axis.part(y) * (self.bottom - self.top)
    }

    /// Horizontal lines and numbers of the y axis, its label on top.
    pub(super) fn y_axis(&self, out: &mut String, axis: &Axis) {
        for (at, text) in &axis.ticks {
            let y = self.y(axis, *at);
            // Writing to a string cannot fail.
            let _ = write!(
                out,
                r#"<line class="rule" x1="{:.1}" x2="{:.1}" y1="{y:.1}" y2="{y:.1}"/><text class="tick" x="{:.1}" y="{:.1}" text-anchor="end">{}</text>"#,
                self.left,
                self.right,
                self.left - 5.0,
                y + 4.0,
                escaped(text)
            );
        }
        let _ = write!(out, r#"<text class="name" x="2" y="11">{}</text>"#, escaped(&axis.label));
    }

    /// Numbers and label of the x axis.
    pub(super) fn x_axis(&self, out: &mut String, axis: &Axis) {
        for (at, text) in &axis.ticks {
            let x = self.x(axis, *at);
            let anchor = if x > self.right - 12.0 { "end" } else { "middle" };
            let _ = write!(
                out,
                r#"<text class="tick" x="{x:.1}" y="{:.1}" text-anchor="{anchor}">{}</text>"#,
                self.bottom + 15.0,
                escaped(text)
            );
        }
        let _ = write!(
            out,
            r#"<text class="name" x="{:.1}" y="{:.1}" text-anchor="end">{}</text>"#,
            self.right,
            self.bottom + 31.0,
            escaped(&axis.label)
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ticks_are_round_and_hold_the_data() {
        let axis = nice_axis(&Locale::ENGLISH, "", 0.0, 7.3);
        assert_eq!(axis.ticks.iter().map(|t| t.1.as_str()).collect::<Vec<_>>(), ["0", "2", "4", "6", "8"]);
        assert!(axis.high >= 7.3);
    }

    #[test]
    fn a_table_writes_in_the_unit_of_its_axis() {
        let (l, share) = (&Locale::ENGLISH, Axis::share(&Locale::ENGLISH, ""));
        assert_eq!((share.value(l, 0.46), share.ends(l, (0.18, 0.76))), ("46%".to_owned(), "18% to 76%".to_owned()));
        let count = nice_axis(l, "", 0.0, 2.0);
        assert_eq!((count.value(l, 0.46), count.ends(l, (0.18, 2.0))), ("0.46".to_owned(), "0.18 to 2".to_owned()));
    }

    #[test]
    fn an_axis_without_extent_is_still_an_axis() {
        for (low, high) in [(0.0, 0.0), (f64::NAN, 1.0), (3.0, 1.0), (0.0, f64::INFINITY)] {
            let axis = nice_axis(&Locale::ENGLISH, "", low, high);
            assert!(axis.high > axis.low && axis.ticks.len() >= 2);
        }
    }
}
