//! Exercises: how long each is, and how much the animal knows at its beginning.

/// What is rehearsed.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Exercise {
    /// What it likes best, found out by holding out two things at a time.
    Likes,
    /// Two minutes of press, say, give.
    Showing,
    /// The animal goes, and is let go.
    Leaving,
    /// Five invitations, each with its whole wait.
    Inviting,
    /// An evening of thirty presses, each answered fairly.
    Evening,
    /// A word that does not get on, and what holds it up.
    Stuck,
    /// Whatever one likes.
    Free,
}

/// Seconds that an invitation waits.
pub const WAIT_S: f64 = 5.0;
/// Invitations of the exercise about them.
pub const INVITATIONS: usize = 5;
/// Pairs of a likes test: each thing with each other, and once more with the sides swapped.
pub(super) const PAIRS: usize = 12;
/// Presses of an evening.
pub(super) const PRESSES: usize = 30;
/// Treats of an evening: then the day's ration is used up.
pub const TREATS: usize = 8;

impl Exercise {
    /// All of them, in the order in which they are offered.
    pub const ALL: [Self; 7] =
        [Self::Likes, Self::Showing, Self::Leaving, Self::Inviting, Self::Evening, Self::Stuck, Self::Free];

    /// Its name, for messages and addresses.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Likes => "likes",
            Self::Showing => "showing",
            Self::Leaving => "leaving",
            Self::Inviting => "inviting",
            Self::Evening => "evening",
            Self::Stuck => "stuck",
            Self::Free => "free",
        }
    }

    /// The exercise of a name.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|e| e.name() == name)
    }

    /// Its longest, in milliseconds.
    #[must_use]
    pub const fn most_ms(self) -> u32 {
        match self {
            Self::Showing => 120_000,
            Self::Leaving => 90_000,
            Self::Stuck => 180_000,
            Self::Likes | Self::Inviting => 240_000,
            Self::Free => 300_000,
            Self::Evening => 360_000,
        }
    }

    /// Logits of understanding at its beginning, by the place of the word.
    pub(super) const fn known(self) -> [f64; 4] {
        match self {
            Self::Likes | Self::Showing | Self::Leaving => [-2.0; 4],
            Self::Inviting => [0.4, 0.0, -0.4, -0.2],
            Self::Evening => [2.2, 1.8, 1.6, 1.4],
            // There it depends on what is hidden.
            Self::Stuck | Self::Free => [-0.5, -1.0, -1.5, -2.0],
        }
    }

    /// How much longer than a session it may last before it grows long: an evening is none, one comes and goes.
    pub(super) const fn lasts(self) -> f64 {
        match self {
            Self::Evening => 4.0,
            _ => 1.0,
        }
    }

    /// How much oftener it asks than its character does by itself: an evening is hurried.
    pub(super) const fn asks(self) -> f64 {
        match self {
            Self::Evening => 4.0,
            // The board is put away.
            Self::Likes => 0.0,
            _ => 1.0,
        }
    }
}
