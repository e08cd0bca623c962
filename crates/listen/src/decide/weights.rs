//! The learned numbers: read from `weights.json`, which the laboratory writes (`lab hearing fit`).

use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::sync::LazyLock;

/// Names of the classifier's figures, in its order.
pub const FIGURE_NAMES: [&str; 23] = [
    "coherence",
    "first_look",
    "quick_lead",
    "other_speeds_mean",
    "scan_lead",
    "other_speeds_spread",
    "windows",
    "front_weaker",
    "front_stronger",
    "short_window_coherence",
    "short_window_per_bin",
    "short_window_halves",
    "middle_window_coherence",
    "middle_window_per_bin",
    "middle_window_halves",
    "long_window_coherence",
    "long_window_per_bin",
    "long_window_halves",
    "middle_window_trimmed",
    "long_window_trimmed",
    "middle_window_before",
    "cut_short",
    "shortness",
];

/// Place of the last of them, for which `lab hearing fit` may lower the learned weight on purpose.
pub const SHORTNESS: usize = FIGURE_NAMES.len() - 1;

/// Seconds of effective sound from which a clip is not short.
const LONG_S: f64 = 0.45;

/// How short a clip of so many seconds of effective sound is: 0 from [`LONG_S`] on, the logarithm of how often it goes into that
/// below. The less there is of a clip, the sooner something else fits it by chance.
pub(crate) fn shortness(sounding_s: f64) -> f64 {
    (LONG_S / sounding_s.clamp(0.02, LONG_S)).ln()
}

/// Figures of each stage of the cascade: of the six `first_look quick quick_mean scan other_mean other_high`
/// (logarithms), so many.
pub const STAGE_FIGURES: [usize; 3] = [2, 4, 6];

/// Where weights come from.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Provenance {
    /// The command that learned them, or what is known of it.
    pub made_by: String,
    /// SHA-256 over the corpora learned from; none where it is not known.
    pub corpus_sha256: Option<String>,
    /// Seeds of those corpora.
    pub seeds: Vec<u64>,
    /// The day, as YYYY-MM-DD; none where it is not known.
    pub date: Option<String>,
}

/// The logistic model of one candidate.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Classifier {
    /// Log odds where all figures are 0.
    pub constant: f64,
    /// Weight of each figure.
    #[serde(with = "by_name")]
    pub figures: [f64; FIGURE_NAMES.len()],
    /// Weight of a rival's lead: how far the log coherence of another word over the same stretch is ahead.
    pub rival_lead: f64,
    /// Further weight of the lead beyond 0.3.
    pub rival_lead_beyond: f64,
}

/// One stage of the cascade: a candidate goes on where the weighted sum of its figures is above a bound.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StageBound {
    /// Weight of each figure.
    pub figures: Vec<f64>,
    /// The bound.
    pub least: f64,
}

impl StageBound {
    /// Whether a candidate of these figures goes on.
    pub fn passes(&self, figures: &[f64]) -> bool {
        self.figures.iter().zip(figures).map(|(w, x)| w * x).sum::<f64>() > self.least
    }
}

/// The rejection cascade.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Cascade {
    /// After the lower bins at all speeds.
    pub quick: StageBound,
    /// After all bins at the speeds liked best.
    pub liked: StageBound,
    /// After all bins at all speeds.
    pub scanned: StageBound,
}

/// All learned numbers of the detector.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Weights {
    /// Where they come from.
    pub provenance: Provenance,
    /// The classifier.
    pub classifier: Classifier,
    /// The cascade before it.
    pub cascade: Cascade,
    /// Prior odds of a press in a quiet home, against those on a board in use.
    pub idle_prior: f64,
}

impl Weights {
    /// The weights this program is built with.
    pub fn shipped() -> &'static Self {
        static SHIPPED: LazyLock<Weights> = LazyLock::new(|| match Weights::from_json(include_str!("weights.json")) {
            Ok(weights) => weights,
            // The file is part of the program; a test reads it.
            Err(why) => unreachable!("weights.json: {why}"),
        });
        &SHIPPED
    }

    /// Reads weights, in the form of `weights.json`.
    ///
    /// # Errors
    /// What is wrong, in words: a figure that is missing, unknown or not a number, a stage with too few figures, a prior
    /// outside 0 to 1.
    pub fn from_json(text: &str) -> Result<Self, String> {
        let weights: Self = serde_json::from_str(text).map_err(|e| e.to_string())?;
        let stages = [&weights.cascade.quick, &weights.cascade.liked, &weights.cascade.scanned];
        for ((stage, n), name) in stages.iter().zip(STAGE_FIGURES).zip(["quick", "liked", "scanned"]) {
            if stage.figures.len() != n {
                return Err(format!("cascade.{name}.figures holds {} numbers, not {n}", stage.figures.len()));
            }
        }
        if !(weights.idle_prior > 0.0 && weights.idle_prior <= 1.0) {
            return Err(format!("idle_prior is {}, not above 0 and at most 1", weights.idle_prior));
        }
        Ok(weights)
    }
}

/// Figures as an object of names and weights.
mod by_name {
    use super::{BTreeMap, FIGURE_NAMES};
    use serde::de::Error;
    use serde::ser::SerializeMap;
    use serde::{Deserialize, Deserializer, Serializer};

    pub(super) fn serialize<S: Serializer>(figures: &[f64; FIGURE_NAMES.len()], to: S) -> Result<S::Ok, S::Error> {
        let mut map = to.serialize_map(Some(figures.len()))?;
        for (name, weight) in FIGURE_NAMES.iter().zip(figures) {
            map.serialize_entry(name, weight)?;
        }
        map.end()
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<[f64; FIGURE_NAMES.len()], D::Error> {
        let mut given = BTreeMap::<String, f64>::deserialize(from)?;
        let mut figures = [0.0; FIGURE_NAMES.len()];
        for (name, weight) in FIGURE_NAMES.iter().zip(&mut figures) {
            *weight = given.remove(*name).ok_or_else(|| D::Error::custom(format!("figure \"{name}\" is missing")))?;
        }
        match given.keys().next() {
            Some(name) => Err(D::Error::custom(format!("there is no figure \"{name}\""))),
            None => Ok(figures),
        }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn the_shipped_weights_are_read_and_written_alike() {
        let shipped = Weights::shipped();
        let text = serde_json::to_string(shipped).unwrap();
        assert_eq!(&Weights::from_json(&text).unwrap(), shipped);
        assert!(!shipped.provenance.made_by.is_empty());
    }

    #[test]
    fn what_is_wrong_with_weights_is_said_in_words() {
        let text = serde_json::to_string(Weights::shipped()).unwrap();
        let wrong = |from: &str, to: &str| Weights::from_json(&text.replace(from, to)).unwrap_err();
        assert!(wrong("\"windows\"", "\"doors\"").contains("figure \"windows\" is missing"));
        assert!(wrong("\"idle_prior\":", "\"idle_prior\":-").contains("not above 0"));
        assert!(wrong("\"least\"", "\"most\"").contains("most"));
    }
}
