//! Does the band of the learning curve hold the true probability?

use super::Section;
use super::learning::{Animal, BAND_ANIMALS, CHANCE, Fit};
use crate::error::LabError;
use crate::report::chart::{Chart, Line};
use crate::report::figure::{Finding, In, Wanted};
use crate::work::Work;

const TRIALS: usize = 40;
/// Wanted of a band said to be 90 %.
const BAND: Wanted = Wanted::Within(0.87, 0.95);

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Coverage: the band of the learning curve");
    let reps = work.size(400, 4);
    let mut lines = Vec::new();
    for animal in BAND_ANIMALS {
        for fit in Fit::ALL {
            let what = format!("{}, {}", fit.name(), animal.name());
            let held = work.each(&format!("band: {what}"), reps, |seed| held(animal, fit, seed))?;
            let means: Vec<f64> = held.iter().map(|h| share(h)).collect();
            section.add(Finding::mean(format!("90 % band, {what}"), BAND, &means, In::Percent));
            if fit == Fit::Shown {
                let points = (0..TRIALS)
                    .map(|k| ((k + 1) as f64, held.iter().filter(|h| h[k]).count() as f64 / reps as f64))
                    .collect();
                lines.push(Line { name: animal.name().to_owned(), points });
            }
        }
    }
    section.charts.push(Chart {
        file: "curve-coverage.svg".into(),
        title: "Share of animals whose 90 % band holds the truth".into(),
        x: "trial".into(),
        y: "share".into(),
        range: (0.0, 1.0),
        lines,
        wanted: Some(0.9),
    });
    section.text(format!("{TRIALS} trials with a chance level of {CHANCE:.2}; the figure is the mean over animals of the share of trials in which the band holds the true probability."));
    Ok(section)
}

fn share(held: &[bool]) -> f64 {
    held.iter().filter(|h| **h).count() as f64 / held.len() as f64
}

fn held(animal: Animal, fit: Fit, seed: u64) -> Result<Vec<bool>, LabError> {
    let (truth, pressed) = animal.live(TRIALS, seed);
    let curve = fit.curve(&pressed)?;
    Ok(curve.points.iter().zip(truth).map(|(p, t)| p.lower <= t && t <= p.upper).collect())
}
