//! How a figure lies across households: a curve with its band, and quantiles with their intervals.

use crate::fault::{At, ReleaseFault};
use serde::{Deserialize, Serialize};

/// Most points of a curve.
const MOST_POINTS: usize = 400;
/// Largest place on a grid: more showings or days than anybody has.
const FARTHEST: f64 = 100_000.0;

/// One point of a curve: the share that had pressed by then.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Point {
    /// Showings or days, from 0.
    pub at: f64,
    /// Share of words pressed by then, from 0 to 1; by Kaplan and Meier's estimate, words not pressed yet counted as such.
    pub share: f64,
    /// Lower end of its interval.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// Where a share of the words had been pressed. `null` is "not reached": it lies beyond what was watched, farther than any number.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Quantile {
    /// The estimate.
    pub value: Option<f64>,
    /// Lower end of its interval.
    pub low: Option<f64>,
    /// Upper end.
    pub high: Option<f64>,
}

/// The five quantiles of a cell.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Quantiles {
    /// One in twenty lies below.
    pub p05: Quantile,
    /// A quarter lies below.
    pub p25: Quantile,
    /// Half lies below.
    pub p50: Quantile,
    /// Three quarters lie below.
    pub p75: Quantile,
    /// Nineteen in twenty lie below.
    pub p95: Quantile,
}

/// How waits lie until what is waited for, such as a first press: come by then, along a grid.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Curve {
    /// Points by rising place; the share never falls.
    pub points: Vec<Point>,
    /// Places by which given shares had pressed; "not reached" where the curve ends below.
    pub quantiles: Quantiles,
}

/// How a share of each household lies across households. All its quantiles are reached.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Spread {
    /// Shares, from 0 to 1.
    pub quantiles: Quantiles,
}

/// Outside the middle nine tenths. Which side says nothing of worth.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Outside {
    /// Below the twentieth part.
    Below,
    /// Above nineteen twentieths.
    Above,
}

impl Quantiles {
    /// All, lowest first, with their names.
    #[must_use]
    pub const fn each(&self) -> [(&'static str, Quantile); 5] {
        [("p05", self.p05), ("p25", self.p25), ("p50", self.p50), ("p75", self.p75), ("p95", self.p95)]
    }

    /// Whether a wait lies outside the middle nine tenths, and on which side: one that `ended` (pressed) there, or one that goes on.
    /// The whole interval of the quantile must lie on the other side, so that what is doubtful is not said.
    #[must_use]
    pub fn outside(&self, wait: f64, ended: bool) -> Option<Outside> {
        if self.p95.high.is_some_and(|high| wait > high) {
            return Some(Outside::Above);
        }
        let below = |low: f64| ended && wait < low;
        self.p05.low.is_some_and(below).then_some(Outside::Below)
    }

    fn check(&self, at: &At<'_>, farthest: f64) -> Result<(), ReleaseFault> {
        let mut last = Quantile { value: Some(0.0), low: Some(0.0), high: Some(0.0) };
        for (name, one) in self.each() {
            let at = at.field(name);
            for (field, value) in [("value", one.value), ("low", one.low), ("high", one.high)] {
                let fits = value.is_none_or(|v| (0.0..=farthest).contains(&v));
                at.field(field).must(
                    fits,
                    shown(value),
                    format!("from 0 to {farthest}, or null for \"not reached\""),
                )?;
            }
            at.field("value").must(
                reach(one.low) <= reach(one.value) && reach(one.value) <= reach(one.high),
                shown(one.value),
                format!("within its interval, {} to {}", shown(one.low), shown(one.high)),
            )?;
            at.field("value").must(
                reach(last.value) <= reach(one.value),
                shown(one.value),
                format!("no less than the quantile before, {}", shown(last.value)),
            )?;
            last = one;
        }
        Ok(())
    }
}

/// "Not reached" is farther than any number.
fn reach(value: Option<f64>) -> f64 {
    value.unwrap_or(f64::INFINITY)
}

fn shown(value: Option<f64>) -> String {
    value.map_or_else(|| "null".to_owned(), |v| v.to_string())
}

impl Curve {
    pub(crate) fn check(&self, at: &At<'_>) -> Result<(), ReleaseFault> {
        let points = at.field("points");
        let many = self.points.len();
        points.must((1..=MOST_POINTS).contains(&many), format!("{many} points long"), format!("1 to {MOST_POINTS}"))?;
        let mut last: Option<Point> = None;
        for (number, point) in self.points.iter().enumerate() {
            let at = points.item(number);
            let far = (0.0..=FARTHEST).contains(&point.at);
            at.field("at").must(far, point.at, format!("from 0 to {FARTHEST}"))?;
            at.interval(point.share, point.low, point.high)?;
            if let Some(last) = last {
                let on = point.at > last.at;
                at.field("at").must(on, point.at, format!("beyond the point before, {}", last.at))?;
                let rises = point.share >= last.share;
                at.field("share").must(
                    rises,
                    point.share,
                    format!("no less than at the point before, {}", last.share),
                )?;
            }
            last = Some(*point);
        }
        self.quantiles.check(&at.field("quantiles"), last.map_or(0.0, |last| last.at))
    }
}

impl Spread {
    pub(crate) fn check(&self, at: &At<'_>) -> Result<(), ReleaseFault> {
        let at = at.field("quantiles");
        for (name, one) in self.quantiles.each() {
            let reached = one.value.is_some() && one.low.is_some() && one.high.is_some();
            at.field(name).must(reached, "not reached", "a share with both ends of its interval")?;
        }
        self.quantiles.check(&at, 1.0)
    }
}
