//! Do intervals hold the truth as often as they say? Shares, rates, middle values, waits.

use super::Section;
use crate::error::{LabError, told};
use crate::light::{Chooser, latencies};
use crate::report::figure::{Finding, Wanted};
use crate::work::Work;
use sayso_advisor::Unit;
use sayso_advisor::estimate::{mean, median};
use sayso_methods::learning::latency::{Wait, kaplan_meier};
use sayso_methods::likes::side_bias;
use sayso_methods::stats::{Count, Level, Proportion, normal_cdf};
use sayso_sim::{Chance, logistic};

/// Wanted of an interval said to be 95 %.
pub const WANTED: Wanted = Wanted::Within(0.93, 0.97);
/// Wanted of an exact interval: it may hold the truth more often.
pub const EXACT: Wanted = Wanted::AtLeast(0.93);
/// Median seconds, spread of the logarithm, share that never presses.
const LATENCY: (f64, f64, f64) = (2.5, 0.6, 0.15);
/// The wait of an invitation, in seconds.
const WAIT_S: f64 = 5.0;

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Coverage: counts and waits");
    let reps = work.size(4000, 200);
    for (p, n) in [(0.05, 12), (0.3, 12), (0.5, 5), (0.5, 40), (0.8, 40), (0.95, 12)] {
        let what = format!("share {p} of {n}");
        let found = work.each(&what, reps, |seed| {
            let mut c = Chance::new(seed, 40);
            let k = (0..n).filter(|_| c.coin(p)).count() as u64;
            let seen = Proportion::new(k, n).map_err(told)?;
            Ok(seen.clopper_pearson(Level::P95).contains(p))
        })?;
        let hits = found.iter().filter(|held| **held).count();
        section.add(Finding::share(format!("exact share, truth {p}, n = {n}"), EXACT, hits, reps));
    }
    for mean in [0.5, 4.0, 30.0] {
        let what = format!("rate {mean}");
        let found = work.each(&what, reps, |seed| {
            let mut c = Chance::new(seed, 41);
            // Events of a Poisson process within one unit of time.
            let (mut at, mut events) = (c.exponential(1.0 / mean), 0);
            while at < 1.0 {
                events += 1;
                at += c.exponential(1.0 / mean);
            }
            Ok(Count::new(events, 1.0).map_err(told)?.interval(Level::P95).contains(mean))
        })?;
        section.add(Finding::share(format!("exact rate, truth {mean} events"), EXACT, count(&found), reps));
    }
    for n in [8, 20, 60] {
        let found = work.each(&format!("middle of {n}"), reps, |seed| {
            let mut c = Chance::new(seed, 42);
            let values: Vec<f64> = (0..n).map(|_| c.lognormal(2.0, 0.6)).collect();
            let (m, a) = (median(&values, Unit::Seconds), mean(&values, Unit::Seconds));
            let truth = 2.0 * (0.6_f64.powi(2) / 2.0).exp();
            Ok((holds(m.low, m.high, 2.0), holds(a.low, a.high, truth)))
        })?;
        let hits = found.iter().filter(|f| f.0).count();
        section.add(Finding::share(format!("middle delay (order statistics), n = {n}"), EXACT, hits, reps));
        let hits = found.iter().filter(|f| f.1).count();
        section.add(Finding::share(format!("mean delay (Student's t, skewed), n = {n}"), Wanted::Known, hits, reps));
    }
    super::coverage_rates::add(work, &mut section)?;
    side(work, &mut section)?;
    waits(work, &mut section)?;
    section.text("Every row draws new data from a known truth and asks whether the interval holds it. Exact intervals may hold it more often than 95 %, as counts are whole numbers. Times to a press are log-normal with a wait of 5 s; 15 % never press. Presses in bouts: a minute from press to press, over a day of 15 hours; sizes fixed, or geometric with that mean. Where nobody, or everybody, has pressed yet, the survival curve's own interval has no width; the exact one of a share stands in for it.");
    Ok(section)
}

fn count(found: &[bool]) -> usize {
    found.iter().filter(|f| **f).count()
}

fn holds(low: Option<f64>, high: Option<f64>, truth: f64) -> bool {
    low.is_none_or(|low| low <= truth) && high.is_none_or(|high| truth <= high)
}

/// A pull to one side in counterbalanced pairs of four items.
fn side(work: &Work, section: &mut Section) -> Result<(), LabError> {
    let reps = work.size(2000, 100);
    for bias in [0.0, 1.0] {
        let found = work.each(&format!("side {bias}"), reps, |seed| {
            let mut c = Chance::new(seed, 43);
            let strengths: Vec<f64> = (0..4).map(|_| c.normal()).collect();
            let chooser = Chooser { strengths, side_bias: bias, none: f64::NEG_INFINITY };
            // Two rounds: every pair once with each item on the left.
            let trials = chooser.paired(2, seed);
            let left = trials.iter().filter(|t| t.2 == Some(t.0)).count() as u64;
            let chance = |t: &(usize, usize, Option<usize>)| {
                logistic(chooser.strengths[t.0] - chooser.strengths[t.1] + chooser.side_bias)
            };
            let truth = trials.iter().map(chance).sum::<f64>() / trials.len() as f64;
            let seen = side_bias(left, trials.len() as u64 - left, Level::P95).map_err(told)?;
            Ok((seen.interval.contains(truth), seen.p <= 0.05))
        })?;
        let hits = found.iter().filter(|f| f.0).count();
        section.add(Finding::share(
            format!("share to the left of 12 pairs, true pull {bias} logits"),
            EXACT,
            hits,
            reps,
        ));
        if bias == 0.0 {
            let alarms = found.iter().filter(|f| f.1).count();
            section.add(Finding::share("side bias claimed where there is none", Wanted::AtMost(0.05), alarms, reps));
        }
    }
    Ok(())
}

/// Time to a press under a fixed wait.
fn waits(work: &Work, section: &mut Section) -> Result<(), LabError> {
    let reps = work.size(2000, 100);
    let (middle, spread, never) = LATENCY;
    let survival = |t: f64| never + (1.0 - never) * (1.0 - normal_cdf((t / middle).ln() / spread));
    // Half have pressed where the pressers' own share is a half of everyone.
    let half = {
        let (mut low, mut high) = (0.01, 100.0);
        for _ in 0..80 {
            let at = f64::midpoint(low, high);
            if survival(at) > 0.5 { low = at } else { high = at }
        }
        f64::midpoint(low, high)
    };
    for n in [12, 30, 80] {
        let found = work.each(&format!("waits {n}"), reps, |seed| {
            let waits: Vec<Wait> = latencies(middle, spread, never, WAIT_S, n, seed)
                .into_iter()
                .map(|(time, event)| Wait { time, event })
                .collect();
            let curve = kaplan_meier(&waits, Level::P95).map_err(told)?;
            let m = curve.median_interval();
            Ok(holds(m.low, m.high, half) && (m.low.is_some() || half >= WAIT_S))
        })?;
        let hits = found.iter().filter(|held| **held).count();
        section.add(Finding::share(format!("middle time to a press (Kaplan-Meier), n = {n}"), WANTED, hits, reps));
    }
    Ok(())
}
