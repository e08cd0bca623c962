//! Figures of the laboratory: each with what was wanted, its Monte Carlo interval and its number of learners.

use sayso_methods::stats::{Level, Proportion};

/// What was wanted of a figure.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Wanted {
    /// Between these.
    Within(f64, f64),
    /// At most this.
    AtMost(f64),
    /// At least this.
    AtLeast(f64),
    /// Nothing: a difference, and whether there is one.
    Difference,
    /// Nothing was set beforehand: a figure to know.
    Known,
}

/// What a figure counts in.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum In {
    /// A share, written in per cent.
    Percent,
    /// A bare number, with the word for it.
    Number(&'static str),
}

/// One figure.
#[derive(Clone, PartialEq, Debug)]
pub struct Finding {
    /// Of what.
    pub what: String,
    /// What was wanted.
    pub wanted: Wanted,
    /// What was found; not a number where there was nothing to count.
    pub value: f64,
    /// Ends of its 95 % interval over simulated learners.
    pub interval: (f64, f64),
    /// Learners (or words, trials: see `what`) behind it.
    pub n: usize,
    /// What it counts in.
    pub unit: In,
}

impl Finding {
    /// `k` of `n`, with the exact interval.
    pub fn share(what: impl Into<String>, wanted: Wanted, k: usize, n: usize) -> Self {
        let (value, interval) = match Proportion::new(k as u64, n as u64) {
            Ok(p) => {
                let i = p.clopper_pearson(Level::P95);
                (p.share().unwrap_or(f64::NAN), (i.low, i.high))
            }
            Err(_) => (f64::NAN, (f64::NAN, f64::NAN)),
        };
        Self { what: what.into(), wanted, value, interval, n, unit: In::Percent }
    }

    /// The mean over learners, with its normal interval. For shares within learners: what one learner adds hangs together.
    pub fn mean(what: impl Into<String>, wanted: Wanted, values: &[f64], unit: In) -> Self {
        let n = values.len();
        let count = n as f64;
        let mean = values.iter().sum::<f64>() / count;
        let variance = values.iter().map(|v| (v - mean).powi(2)).sum::<f64>() / (count - 1.0).max(1.0);
        let half = Level::P95.z() * (variance / count).sqrt();
        Self { what: what.into(), wanted, value: mean, interval: (mean - half, mean + half), n, unit }
    }

    /// The middle value, with the interval from order statistics (none below six values).
    pub fn middle(what: impl Into<String>, wanted: Wanted, values: &[f64], unit: In) -> Self {
        let m = sayso_advisor::estimate::median(values, sayso_advisor::Unit::Number);
        let interval = (m.low.unwrap_or(f64::NAN), m.high.unwrap_or(f64::NAN));
        Self { what: what.into(), wanted, value: m.value.unwrap_or(f64::NAN), interval, n: m.n, unit }
    }

    /// Whether it is as wanted; within its Monte Carlo interval counts as "about".
    pub fn verdict(&self) -> &'static str {
        if self.n == 0 || self.value.is_nan() {
            return "nothing to count";
        }
        let (low, high) = self.interval;
        let (from, to) = match self.wanted {
            Wanted::Within(from, to) => (from, to),
            Wanted::AtMost(to) => (f64::NEG_INFINITY, to),
            Wanted::AtLeast(from) => (from, f64::INFINITY),
            Wanted::Difference if low <= 0.0 && high >= 0.0 => return "no difference",
            Wanted::Difference => return if self.value > 0.0 { "more" } else { "less" },
            Wanted::Known => return "",
        };
        if (from..=to).contains(&self.value) {
            "yes"
        } else if high >= from && low <= to {
            "about: the wanted lies within its interval"
        } else {
            match self.wanted {
                Wanted::Within(..) if self.value > to => "higher than wanted",
                _ => "falls short",
            }
        }
    }

    /// A row of the table of figures.
    pub fn row(&self) -> Vec<String> {
        let show = |x: f64| match self.unit {
            _ if x.is_nan() => "-".to_owned(),
            In::Percent => format!("{:.1} %", 100.0 * x),
            In::Number(of) => format!("{x:.2} {of}"),
        };
        let wanted = match self.wanted {
            Wanted::Within(from, to) => format!("{} to {}", show(from), show(to)),
            Wanted::AtMost(to) => format!("at most {}", show(to)),
            Wanted::AtLeast(from) => format!("at least {}", show(from)),
            Wanted::Difference | Wanted::Known => String::new(),
        };
        let found = format!("{} ({} to {})", show(self.value), show(self.interval.0), show(self.interval.1));
        vec![self.what.clone(), wanted, found, self.n.to_string(), self.verdict().to_owned()]
    }
}

/// A table in Markdown.
pub fn table(head: &[&str], rows: &[Vec<String>]) -> String {
    let line = |cells: Vec<String>| format!("| {} |\n", cells.join(" | "));
    let mut out = line(head.iter().map(|h| (*h).to_owned()).collect());
    out += &line(head.iter().map(|_| "---".to_owned()).collect());
    rows.iter().for_each(|row| out += &line(row.iter().map(|c| c.replace('|', "/")).collect()));
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_verdict_tells_short_from_chance() {
        let cover = |k, n| Finding::share("x", Wanted::Within(0.93, 0.97), k, n).verdict();
        assert_eq!(cover(950, 1000), "yes");
        assert_eq!(cover(920, 1000), "about: the wanted lies within its interval");
        assert_eq!(cover(800, 1000), "falls short");
        assert_eq!(cover(1000, 1000), "higher than wanted");
        assert_eq!(cover(0, 0), "nothing to count");
        assert_eq!(Finding::share("x", Wanted::AtMost(0.05), 30, 100).verdict(), "falls short");
    }

    #[test]
    fn a_difference_that_may_be_none_is_told_as_none() {
        let of = |values: &[f64]| Finding::mean("x", Wanted::Difference, values, In::Number("")).verdict();
        assert_eq!(of(&[-1.0, 0.5, 1.0, -0.4]), "no difference");
        assert_eq!(of(&[1.0, 1.1, 0.9, 1.0]), "more");
        assert_eq!(of(&[-1.0, -1.1, -0.9, -1.0]), "less");
        assert_eq!(of(&[]), "nothing to count");
    }

    #[test]
    fn the_mean_has_its_interval() {
        let m = Finding::mean("x", Wanted::Known, &[1.0, 2.0, 3.0, 4.0], In::Number(""));
        assert!((m.value - 2.5).abs() < 1e-12 && m.interval.0 < 1.3 && m.interval.1 > 3.7);
    }
}
