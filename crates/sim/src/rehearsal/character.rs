//! Characters: how they differ in what a teacher has to reckon with. Every figure is our own choice.

use sayso_model::Species;

/// An animal to rehearse with.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Character {
    /// A young dog that comes at once and tires late.
    Eager,
    /// A cat that comes when nothing is asked of it, and remembers being pressed.
    Wary,
    /// An old dog: every step takes its time.
    Old,
    /// A parrot that learns quickly and presses out of curiosity too.
    Quick,
    /// A dog that minds being disturbed while it eats.
    Guards,
}

impl Character {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::Eager, Self::Wary, Self::Old, Self::Quick, Self::Guards];

    /// Its name, for messages and addresses.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Eager => "eager",
            Self::Wary => "wary",
            Self::Old => "old",
            Self::Quick => "quick",
            Self::Guards => "guards",
        }
    }

    /// The character of a name.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|c| c.name() == name)
    }

    /// What kind of animal it is: which signs it shows.
    #[must_use]
    pub const fn species(self) -> Species {
        match self {
            Self::Eager | Self::Old | Self::Guards => Species::Dog,
            Self::Wary => Species::Cat,
            Self::Quick => Species::Parrot,
        }
    }

    /// What makes it what it is.
    #[must_use]
    pub const fn traits(self) -> Traits {
        let usual = Traits {
            species: self.species(),
            likes: [1.4, 0.9, 0.5, 0.2],
            likes_spread: 0.5,
            speed: 130.0,
            comes: 0.35,
            stays_s: 150.0,
            leaves: 0.0015,
            calms_s: 10.0,
            minds: 0.8,
            guards: 0.0,
            rate: 0.5,
            delay_tau_s: 4.0,
            latency_s: 1.8,
            asks: 0.10,
            plays: 0.008,
            brushes: 0.012,
            slips: 0.03,
            means: true,
        };
        match self {
            Self::Eager => usual,
            Self::Wary => Traits {
                likes: [0.9, 0.7, 0.2, 1.3],
                speed: 85.0,
                comes: 0.12,
                stays_s: 100.0,
                leaves: 0.003,
                calms_s: 22.0,
                minds: 1.7,
                rate: 0.4,
                latency_s: 2.4,
                asks: 0.07,
                ..usual
            },
            Self::Old => Traits {
                likes: [1.6, -0.6, 0.5, 1.0],
                speed: 42.0,
                comes: 0.14,
                stays_s: 80.0,
                leaves: 0.002,
                calms_s: 14.0,
                minds: 1.0,
                rate: 0.28,
                latency_s: 3.2,
                asks: 0.06,
                brushes: 0.02,
                ..usual
            },
            Self::Quick => Traits {
                likes: [1.3, 1.0, -0.2, 0.9],
                speed: 105.0,
                comes: 0.25,
                stays_s: 120.0,
                calms_s: 12.0,
                minds: 1.3,
                rate: 0.75,
                latency_s: 1.2,
                asks: 0.13,
                plays: 0.03,
                ..usual
            },
            Self::Guards => {
                Traits { likes: [1.9, 0.8, 0.4, -0.2], comes: 0.28, calms_s: 15.0, guards: 0.5, rate: 0.45, ..usual }
            }
        }
    }
}

/// What makes an animal what it is. Rates are by second while nothing hinders.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Traits {
    /// Which signs it shows.
    pub species: Species,
    /// Log-odds of wanting each thing, by its place.
    pub likes: [f64; 4],
    /// How far one animal's likes lie from another's of the same character.
    pub likes_spread: f64,
    /// Units of the room a second.
    pub speed: f64,
    /// Rate of coming to the board when at ease.
    pub comes: f64,
    /// Seconds after which a session grows long for it.
    pub stays_s: f64,
    /// Rate of leaving when at ease and fresh.
    pub leaves: f64,
    /// Seconds in which strain falls to 1/e.
    pub calms_s: f64,
    /// How much it minds being pushed, 1 for the middle.
    pub minds: f64,
    /// Strain of being disturbed while it eats.
    pub guards: f64,
    /// Logits that one showing adds without any delay.
    pub rate: f64,
    /// Seconds of delay after which a showing teaches 1/e as much.
    pub delay_tau_s: f64,
    /// Median seconds from an offer to a press.
    pub latency_s: f64,
    /// Rate of asking for what it wants, if it knew every word.
    pub asks: f64,
    /// Rate of presses that mean nothing.
    pub plays: f64,
    /// Rate of touches that sound nothing.
    pub brushes: f64,
    /// Probability that a meant press lands beside.
    pub slips: f64,
    /// Whether presses have to do with what it wants. Where not, it presses any button, and nothing is learned.
    pub means: bool,
}
