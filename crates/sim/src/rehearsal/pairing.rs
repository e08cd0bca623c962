//! What teaches it: a press, and what came of it. Kept in their order, so that afterwards it can be worked out what it would have
//! learned had something of this come otherwise, all else being as it was.

use super::character::Traits;
use super::thing::Thing;

/// Logits between which understanding lies.
pub(super) const LOGITS: (f64, f64) = (-4.0, 3.0);
/// Seconds between two showings at which the second teaches half.
const HALF_S: f64 = 6.0;

/// What came of a press.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Came {
    /// It was shown, and the thing taken.
    Shown,
    /// It was shown, and the thing not taken.
    Missed,
    /// It was shown while the animal was elsewhere, on its way out, or had something to do still.
    Unseen,
    /// It was shown at a strain at which the animal shows a sign.
    Strained,
    /// Its own press, answered and taken.
    Own,
    /// Its own press, answered and not taken.
    OwnNotTaken,
    /// Its own press: "not now".
    NotNow,
    /// Its own press, without an answer.
    Unanswered,
    /// Its own press: "not now", and something else that can be had.
    Instead,
    /// Something else came than was pressed, as if it were that.
    Wrong,
}

impl Came {
    /// How much it teaches, against a showing whose thing is taken.
    #[must_use]
    pub const fn weight(self) -> f64 {
        match self {
            Self::Shown => 1.0,
            Self::Missed => 0.15,
            Self::Unseen => 0.0,
            Self::Own => 0.5,
            Self::OwnNotTaken => 0.1,
            Self::Instead | Self::Strained => -0.1,
            Self::NotNow | Self::Unanswered => -0.2,
            Self::Wrong => -0.3,
        }
    }
}

/// What a gift answers.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) enum Answers {
    /// The person's own press of a button: it is shown.
    Showing,
    /// The animal's press.
    Own,
    /// The animal's press, to which "not now" was said.
    Declined,
}

impl Answers {
    /// What came of the press of a word, given that thing and whether it was taken.
    pub fn came(self, pressed: Thing, given: Thing, takes: bool) -> Came {
        match (self, pressed == given, takes) {
            (Self::Declined, false, _) => Came::Instead,
            (Self::Showing | Self::Own, false, _) => Came::Wrong,
            (Self::Showing, true, true) => Came::Shown,
            (Self::Showing, true, false) => Came::Missed,
            (Self::Own | Self::Declined, true, true) => Came::Own,
            (Self::Own | Self::Declined, true, false) => Came::OwnNotTaken,
        }
    }
}

/// One press with what came of it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Pairing {
    /// The word pressed.
    pub word: Thing,
    /// What came.
    pub came: Came,
    /// Seconds from press to thing.
    pub delay_s: f64,
    /// How much of it reaches the animal: less where the sound drives it away.
    pub share: f64,
    /// Seconds since the showing before; infinite of the first, and of what was not shown.
    pub gap_s: f64,
}

/// Share of what a showing teaches so many seconds after the one before.
fn spaced(gap_s: f64) -> f64 {
    1.0 / (1.0 + (HALF_S / gap_s).powi(2))
}

impl Pairing {
    /// One that reaches the animal whole, with none before it.
    #[must_use]
    pub const fn of(word: Thing, came: Came, delay_s: f64) -> Self {
        Self { word, came, delay_s, share: 1.0, gap_s: f64::INFINITY }
    }

    /// Logits that it adds to the word.
    #[must_use]
    pub fn teaches(self, traits: &Traits) -> f64 {
        // What undoes something does so however soon it comes.
        let spaced = if self.came.weight() > 0.0 { spaced(self.gap_s) } else { 1.0 };
        traits.rate * self.came.weight() * self.share * spaced * (-self.delay_s / traits.delay_tau_s.max(0.1)).exp()
    }

    /// The same with the thing so much sooner, though never before a fifth of a second after its press. What came wrongly comes
    /// as it did.
    #[must_use]
    pub fn sooner(self, by_s: f64) -> Self {
        let delay_s =
            if self.came.weight() > 0.0 { (self.delay_s - by_s).max(self.delay_s.min(0.2)) } else { self.delay_s };
        Self { delay_s, ..self }
    }
}

/// Logits of understanding after these pairings.
pub(super) fn after(traits: &Traits, mut logits: [f64; 4], pairings: impl IntoIterator<Item = Pairing>) -> [f64; 4] {
    for pairing in pairings.into_iter().filter(|_| traits.means) {
        let logit = &mut logits[pairing.word.place()];
        *logit = (*logit + pairing.teaches(traits)).clamp(LOGITS.0, LOGITS.1);
    }
    logits
}
