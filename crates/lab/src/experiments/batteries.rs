//! Is the button whose battery runs down named, and no other? Detections of made stretches, without any sound.

use super::Section;
use crate::error::LabError;
use crate::report::figure::{Finding, Wanted};
use crate::work::Work;
use sayso_listen::{Detection, tired_batteries};
use sayso_sim::Chance;

/// How a home's buttons are.
#[derive(Clone, Copy)]
struct Kind {
    name: &'static str,
    /// How presses scatter about their button's line, as a share of the speed.
    spread: f64,
    /// By Student's t of four degrees of freedom instead of the normal distribution.
    heavy: bool,
    /// Share of presses whose speed is found quite wrong.
    wrong: f64,
    /// Drift of a healthy button over the stretch, as a share of the speed.
    drift: f64,
}

const SPREADS: [f64; 5] = [0.001, 0.002, 0.003, 0.004, 0.005];
/// How much a tired button slows over the stretch.
const SLOWS: f64 = 0.035;
/// Length of a stretch in seconds.
const STRETCH_S: f64 = 180.0;

/// Student's t of four degrees of freedom, scaled to unit variance.
fn heavy(c: &mut Chance) -> f64 {
    let chi: f64 = (0..4).map(|_| c.normal().powi(2)).sum();
    c.normal() / (chi / 4.0).sqrt() / 2f64.sqrt()
}

/// Three minutes of 3 to 20 buttons, each pressed 1 to 8 times on average; button 0 slows if `tired`. Answers how often
/// that one was pressed too.
fn stretch(c: &mut Chance, kind: Kind, tired: bool) -> (Vec<Detection>, usize) {
    let words = 3 + c.below(18);
    let rate = c.between(1.0, 8.0);
    let (mut heard, mut of_tired) = (Vec::new(), 0);
    for w in 0..words {
        let (base, drift) = (c.between(0.97, 1.03), kind.drift * c.normal());
        let mut t = 2.0 * STRETCH_S / rate * c.unit();
        while t < STRETCH_S {
            let noise = if kind.heavy { heavy(c) } else { c.normal() };
            let slowing = if tired && w == 0 { SLOWS } else { drift };
            let usual = base - slowing * t / STRETCH_S + kind.spread * noise;
            let speed = if c.coin(kind.wrong) { c.between(0.94, 1.06) } else { usual };
            let confidence = 1.0 - 0.05 * c.unit().powi(4);
            let word = format!("word {w}");
            heard.push(Detection { word, clip: 0, onset_s: t, confidence, speed, level_db: -20.0, share: 1.0 });
            of_tired += usize::from(w == 0);
            t += c.exponential(STRETCH_S / rate);
        }
    }
    (heard, of_tired)
}

/// What came of two stretches, one of healthy buttons and one with a tired one.
struct Named {
    /// Any of the healthy ones.
    of_healthy: bool,
    /// A healthy one where one is tired.
    other: bool,
    /// The tired one; none where it was pressed less than twice.
    tired: Option<bool>,
}

fn one(kind: Kind, seed: u64) -> Named {
    let mut c = Chance::new(seed, 50);
    let of_healthy = !tired_batteries(&stretch(&mut c, kind, false).0).is_empty();
    let (heard, presses) = stretch(&mut c, kind, true);
    let named = tired_batteries(&heard);
    let is_tired = |word: &str| word == "word 0";
    Named {
        of_healthy,
        other: named.iter().any(|t| !is_tired(&t.word)),
        tired: (presses >= 2).then(|| named.iter().any(|t| is_tired(&t.word))),
    }
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Tired batteries");
    let reps = work.size(4_000, 100);
    for spread in SPREADS {
        let usual = Kind { name: "normal noise", spread, heavy: false, wrong: 0.0, drift: 0.0 };
        let rough = Kind { name: "heavy tails", heavy: true, wrong: 0.001, drift: 0.0015, ..usual };
        for kind in [usual, rough] {
            let what = format!("{}, spread {:.1} %", kind.name, 100.0 * spread);
            let found = work.each(&what, reps, |seed| Ok(one(kind, seed)))?;
            let count = |of: fn(&Named) -> bool| found.iter().filter(|n| of(n)).count();
            let mut share = |figure: &str, wanted, hits, n| {
                section.add(Finding::share(format!("{figure}: {what}"), wanted, hits, n));
            };
            share("any button named where all are healthy", Wanted::AtMost(0.01), count(|n| n.of_healthy), reps);
            share("a healthy button named beside a tired one", Wanted::AtMost(0.01), count(|n| n.other), reps);
            let pressed = count(|n| n.tired.is_some());
            share(
                "the tired one named, pressed twice or more",
                Wanted::Known,
                count(|n| n.tired == Some(true)),
                pressed,
            );
        }
    }
    section.text("Stretches of three minutes with 3 to 20 buttons, each pressed 1 to 8 times on average. Presses scatter about their button's own speed with the spread named; a tired button slows by 3.5 % over the stretch. With heavy tails (Student's t, 4 degrees of freedom) one speed in a thousand is quite wrong and healthy buttons drift by 0.15 %.");
    Ok(section)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn healthy_buttons_stay_unnamed_and_most_tired_ones_are_named() {
        let n = 600;
        let all = |kind| Work { seed: 1, quick: false }.each("test", n, |seed| Ok(one(kind, seed))).unwrap();
        let count = |all: &[Named], of: fn(&Named) -> bool| all.iter().filter(|n| of(n)).count();
        let usual = Kind { name: "", spread: 0.002, heavy: false, wrong: 0.0, drift: 0.0 };
        let found = all(usual);
        let (none, other) = (count(&found, |n| n.of_healthy), count(&found, |n| n.other));
        assert!(none <= 2 && other <= 2, "normal noise: {none} and {other} of {n}");
        let found = all(Kind { heavy: true, wrong: 0.001, drift: 0.0015, ..usual });
        let (none, other) = (count(&found, |n| n.of_healthy), count(&found, |n| n.other));
        assert!(none <= 10 && other <= 10, "heavy tails: {none} and {other} of {n}");
        let found = all(Kind { spread: 0.0015, wrong: 0.001, drift: 0.0005, ..usual });
        let (named, twice) = (count(&found, |n| n.tired == Some(true)), count(&found, |n| n.tired.is_some()));
        assert!(named as f64 >= 0.75 * twice as f64, "{named} of {twice}");
    }
}
