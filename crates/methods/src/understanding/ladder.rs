//! The ladder: what may be said about a word, from "nothing can be said yet" to "stands up to a blind check".
//!
//! Source of the correction: Benjamini & Hochberg 1995; that cues must be ruled out before understanding is claimed:
//! Pfungst 1911. The rungs and their conditions are ours. Page: `docs/methods/understanding.md`.
//!
//! All p-values of a household go through one correction, so that many words and many kinds of evidence do not add up to
//! a false claim. No rung says that an animal does not understand: that cannot be shown by what it did not do.

use super::UnderstandingError;
use crate::stats::{BetaPrior, Direction, Proportion, Tail, benjamini_hochberg, binomial_bayes_factor};

/// How a probe was carried out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Conduct {
    /// The order of the words was drawn at random beforehand.
    pub random_order: bool,
    /// The places of the choices were drawn at random beforehand.
    pub random_places: bool,
    /// The person with the learner did not know the answer.
    pub presenter_blind: bool,
    /// The choice was scored by somebody who did not know the answer, or by a device.
    pub scorer_blind: bool,
}

impl Conduct {
    /// Everything a blind check needs.
    #[must_use]
    pub fn fully_blind(self) -> bool {
        self.random_order && self.random_places && self.presenter_blind && self.scorer_blind
    }
}

/// A probe of one word.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProbeEvidence {
    /// Right, of choices made.
    pub seen: Proportion,
    /// Share right by chance.
    pub chance: f64,
    /// Trials planned for this word beforehand, counting those declined.
    pub planned: u64,
    /// Trials carried out, counting those declined.
    pub carried_out: u64,
    /// How it was carried out.
    pub conduct: Conduct,
}

/// Everything known about one word. p-values are raw: they are adjusted here, over the household.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct WordEvidence {
    /// Word.
    pub word: usize,
    /// Everyday presses behind the figures.
    pub presses: u64,
    /// Goes with situations ([`super::association`]).
    pub association_p: Option<f64>,
    /// The same thing is taken more when asked for ([`super::uptake::WordUptake::fitting`]).
    pub fitting_p: Option<f64>,
    /// Wrong deliveries are corrected ([`super::corrections::Corrections::same_of_pressed`]).
    pub correction_p: Option<f64>,
    /// Probes of this word.
    pub probes: Vec<ProbeEvidence>,
}

/// Thresholds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LadderRule {
    /// Everyday presses below which everyday evidence is not looked at.
    pub min_presses: u64,
    /// False discovery rate over all evidence of the household.
    pub everyday_q: f64,
    /// False discovery rate over blind probes, for the top rung.
    pub blind_q: f64,
    /// Bayes factor the blind probe must reach for the top rung.
    pub blind_bayes_factor: f64,
}

impl Default for LadderRule {
    fn default() -> Self {
        Self { min_presses: 12, everyday_q: 0.05, blind_q: 0.01, blind_bayes_factor: 10.0 }
    }
}

/// What may be said, lowest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rung {
    /// Fewer presses than the rule asks for and no finished probe, or no test could be made.
    NothingYet,
    /// Tests were made; none stands after the correction.
    FitsChance,
    /// The word goes with situations more than chance allows.
    DiffersByWord,
    /// The same thing is taken more when asked for, or wrong deliveries are corrected: not explained by liking,
    /// frequency or habits of place.
    HoldsAgainstHabit,
    /// A finished probe, in random order and places, beats chance, but somebody knew the answer.
    PassesOpenProbe,
    /// A finished blind probe beats chance at the stricter level with the Bayes factor asked for.
    StandsUpToBlindCheck,
}

/// Verdict on one word.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Verdict {
    /// Word.
    pub word: usize,
    /// What may be said.
    pub rung: Rung,
    /// Observations behind the rung: everyday presses, or choices made in the probe that decided.
    pub n: u64,
    /// Smallest adjusted p of the word's evidence; `None` if nothing was tested.
    pub adjusted_p: Option<f64>,
}

impl Verdict {
    /// The wording for people.
    #[must_use]
    pub fn words(&self) -> String {
        let n = self.n;
        match self.rung {
            Rung::NothingYet => format!("nothing can be said yet (n = {n})"),
            Rung::FitsChance => {
                format!("what was seen so far would also come by chance (n = {n}); that speaks for nothing either way")
            }
            Rung::DiffersByWord => {
                format!("differs by word more than chance allows (n = {n}); habit, liking or cues may still explain it")
            }
            Rung::HoldsAgainstHabit => {
                format!("holds against liking, frequency and habits of place (n = {n}); cues may still explain it")
            }
            Rung::PassesOpenProbe => format!(
                "beats chance in a planned, random probe (n = {n}); somebody knew the answer, so cues may still explain it"
            ),
            Rung::StandsUpToBlindCheck => format!("stands up to a blind check (n = {n})"),
        }
    }
}

/// Kind of evidence behind a p-value in the pool.
#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Association,
    Fitting,
    Correction,
    OpenProbe,
    BlindProbe,
}

/// Judges all words of a household together.
///
/// Probes count only when finished as planned, so that stopping while ahead wins nothing. A probe without random order and
/// random places is no probe and is left out.
///
/// # Errors
/// [`UnderstandingError::Stats`] for a p-value or a rate outside 0 to 1, or a chance that is not strictly between.
///
/// ```
/// use sayso_methods::understanding::ladder::{LadderRule, Rung, WordEvidence, climb};
/// let shy = WordEvidence { word: 2, presses: 7, association_p: Some(0.001), ..Default::default() };
/// let verdict = climb(&[shy], &LadderRule::default())?[0];
/// assert_eq!(verdict.rung, Rung::NothingYet);
/// assert_eq!(verdict.words(), "nothing can be said yet (n = 7)");
/// # Ok::<(), sayso_methods::understanding::UnderstandingError>(())
/// ```
pub fn climb(words: &[WordEvidence], rule: &LadderRule) -> Result<Vec<Verdict>, UnderstandingError> {
    // (word's place in the list, kind, p, choices made)
    let mut pool: Vec<(usize, Kind, f64, u64)> = Vec::new();
    let mut blind: Vec<(usize, f64, u64, bool)> = Vec::new();
    for (at, word) in words.iter().enumerate() {
        if word.presses >= rule.min_presses {
            let everyday = [
                (Kind::Association, word.association_p),
                (Kind::Fitting, word.fitting_p),
                (Kind::Correction, word.correction_p),
            ];
            pool.extend(everyday.into_iter().filter_map(|(kind, p)| Some((at, kind, p?, word.presses))));
        }
        for probe in &word.probes {
            let Conduct { random_order, random_places, .. } = probe.conduct;
            let finished = probe.planned > 0 && probe.carried_out >= probe.planned && probe.seen.n() > 0;
            if !(random_order && random_places && finished) {
                continue;
            }
            let p = probe.seen.test(probe.chance, Tail::Greater)?;
            let factor = binomial_bayes_factor(probe.seen, probe.chance, BetaPrior::EVEN, Direction::Above)?;
            let n = probe.seen.n();
            if probe.conduct.fully_blind() {
                pool.push((at, Kind::BlindProbe, p, n));
                blind.push((at, p, n, factor.factor() >= rule.blind_bayes_factor));
            } else {
                pool.push((at, Kind::OpenProbe, p, n));
            }
        }
    }
    let raw: Vec<f64> = pool.iter().map(|entry| entry.2).collect();
    let stands = benjamini_hochberg(&raw, rule.everyday_q)?;
    let strict = benjamini_hochberg(&blind.iter().map(|entry| entry.1).collect::<Vec<_>>(), rule.blind_q)?;

    Ok(words
        .iter()
        .enumerate()
        .map(|(at, word)| {
            let mut rung = Rung::NothingYet;
            let mut n = word.presses;
            let mut least: Option<f64> = None;
            let mut seen_blind = false;
            for ((entry, stands), adjusted) in pool.iter().zip(&stands.is_rejected).zip(&stands.adjusted) {
                if entry.0 != at {
                    continue;
                }
                least = Some(least.map_or(*adjusted, |p| p.min(*adjusted)));
                seen_blind |= entry.1 == Kind::BlindProbe && *stands;
                let reached = match (stands, entry.1) {
                    (false, _) => Rung::FitsChance,
                    (true, Kind::Association) => Rung::DiffersByWord,
                    (true, Kind::Fitting | Kind::Correction) => Rung::HoldsAgainstHabit,
                    // A blind probe that misses the stricter level still passed as a probe.
                    (true, Kind::OpenProbe | Kind::BlindProbe) => Rung::PassesOpenProbe,
                };
                if reached > rung {
                    (rung, n) = (reached, entry.3);
                }
            }
            let top =
                blind.iter().zip(&strict.is_rejected).find(|(entry, stands)| entry.0 == at && **stands && entry.3);
            if let Some((entry, _)) = top.filter(|_| seen_blind) {
                (rung, n) = (Rung::StandsUpToBlindCheck, entry.2);
            }
            Verdict { word: word.word, rung, n, adjusted_p: least }
        })
        .collect())
}
