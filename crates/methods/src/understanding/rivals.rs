//! Rival explanations of what a word seems to show, and which of them are ruled out.
//!
//! Sources: cueing: Pfungst 1911, Clever Hans; wishful scoring: observer expectancy, Rosenthal & Fode 1963, Behav Sci
//! 8:183; the conditions are ours. Page: `docs/methods/understanding.md`.

use super::ladder::Rung;

/// Another explanation than understanding.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rival {
    /// A person who knows the answer gives it away without wanting to.
    Cueing,
    /// The learner goes to a place, not to a word.
    PlaceHabit,
    /// Some words are simply pressed more.
    Frequency,
    /// Some things are simply liked more.
    Liking,
    /// What people give, or ask for, follows the clock or the bout, and so do presses.
    ClockOrBout,
    /// The person who scores sees what they hope for.
    WishfulScoring,
}

impl Rival {
    /// Every rival, in the order shown.
    pub const ALL: [Self; 6] =
        [Self::Cueing, Self::PlaceHabit, Self::Frequency, Self::Liking, Self::ClockOrBout, Self::WishfulScoring];
}

/// Who scored the everyday records.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Scoring {
    /// One person, who knew what was pressed.
    OnePerson,
    /// Two people apart; the lower end of the interval of their kappa.
    TwoPeople {
        /// Lower end of the kappa interval.
        kappa_low: f64,
    },
    /// A device, or somebody who could not know.
    Blind,
}

/// Where a rival stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// Nothing has been claimed, so there is nothing to explain.
    NothingToExplain,
    /// Ruled out, by what.
    RuledOut(Why),
    /// Still open, and what would rule it out.
    Open(Remedy),
}

/// What ruled a rival out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Why {
    /// A finished blind probe.
    BlindProbe,
    /// Order and places were drawn at random.
    RandomPlaces,
    /// The test compares presses of the same session and keeps how often each word is pressed.
    FrequenciesKept,
    /// Word and thing were compared crosswise, with the thing that came drawn.
    SameThing,
    /// The notebook drew it, so no person's choice could follow anything.
    Drawn,
    /// What counted was the next press, which nobody scores.
    NextPress,
    /// Two people scoring apart agree (kappa at least 0.6 at the lower end of its interval).
    TwoScorers,
    /// Scored by a device or by somebody who could not know.
    BlindScoring,
}

/// What would rule a rival out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Remedy {
    /// A probe in which the person with the learner does not know the answer.
    BlindProbe,
    /// A probe with places drawn at random.
    RandomPlaces,
    /// A time of agreed swaps, or a probe.
    SameThing,
    /// A second person scoring the recordings without knowing the word.
    SecondScorer,
}

/// Kappa from which agreement counts as good enough, at the lower end of its interval (Landis & Koch 1977 call 0.61 and
/// above substantial, one paper's label as quoted by several pages).
pub const KAPPA_FLOOR: f64 = 0.6;

/// Where each rival stands on this rung, in the order of [`Rival::ALL`].
///
/// ```
/// use sayso_methods::understanding::ladder::Rung;
/// use sayso_methods::understanding::rivals::{Remedy, Rival, Scoring, Standing, rivals};
/// let cueing = rivals(Rung::DiffersByWord, Scoring::OnePerson)[0];
/// assert_eq!(cueing, (Rival::Cueing, Standing::Open(Remedy::BlindProbe)));
/// ```
#[must_use]
pub fn rivals(rung: Rung, scoring: Scoring) -> [(Rival, Standing); 6] {
    let scored = match scoring {
        Scoring::Blind => Standing::RuledOut(Why::BlindScoring),
        Scoring::TwoPeople { kappa_low } if kappa_low >= KAPPA_FLOOR => Standing::RuledOut(Why::TwoScorers),
        _ => Standing::Open(Remedy::SecondScorer),
    };
    Rival::ALL.map(|rival| {
        let standing = match (rung, rival) {
            (Rung::NothingYet | Rung::FitsChance, _) => Standing::NothingToExplain,
            // Fully blind: random order and places, nobody present or scoring knew.
            (Rung::StandsUpToBlindCheck, Rival::Cueing | Rival::WishfulScoring) => Standing::RuledOut(Why::BlindProbe),
            (_, Rival::Cueing) => Standing::Open(Remedy::BlindProbe),
            (Rung::PassesOpenProbe | Rung::StandsUpToBlindCheck, Rival::ClockOrBout) => Standing::RuledOut(Why::Drawn),
            (
                Rung::PassesOpenProbe | Rung::StandsUpToBlindCheck,
                Rival::PlaceHabit | Rival::Frequency | Rival::Liking,
            ) => Standing::RuledOut(Why::RandomPlaces),
            (Rung::HoldsAgainstHabit, Rival::WishfulScoring) if scoring == Scoring::Blind => {
                Standing::RuledOut(Why::NextPress)
            }
            (Rung::HoldsAgainstHabit, Rival::PlaceHabit | Rival::Liking) => Standing::RuledOut(Why::SameThing),
            (_, Rival::ClockOrBout) => Standing::RuledOut(Why::Drawn),
            (_, Rival::Frequency) => Standing::RuledOut(Why::FrequenciesKept),
            (_, Rival::PlaceHabit) => Standing::Open(Remedy::RandomPlaces),
            (_, Rival::Liking) => Standing::Open(Remedy::SameThing),
            (_, Rival::WishfulScoring) => scored,
        };
        (rival, standing)
    })
}
