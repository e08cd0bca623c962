//! The four things of a rehearsal, each with a button that names it.

/// Something the animal may want.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Thing {
    /// A small piece of food.
    Treat,
    /// A ball, thrown once.
    Ball,
    /// Out of the door for a moment.
    Out,
    /// Company: sitting beside, a stroke if it asks for one.
    Company,
}

impl Thing {
    /// All of them, in the order of their places on the board.
    pub const ALL: [Self; 4] = [Self::Treat, Self::Ball, Self::Out, Self::Company];

    /// Its name, for messages and addresses.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Treat => "treat",
            Self::Ball => "ball",
            Self::Out => "out",
            Self::Company => "company",
        }
    }

    /// Its place on the board, 0 to 3: two columns, row by row.
    #[must_use]
    pub const fn place(self) -> usize {
        self as usize
    }

    /// The thing at a place; none beyond the fourth.
    #[must_use]
    pub fn at(place: usize) -> Option<Self> {
        Self::ALL.get(place).copied()
    }

    /// Seconds for which the animal then has enough to do with it.
    #[must_use]
    pub const fn lasts_s(self) -> f64 {
        match self {
            Self::Treat => 2.5,
            Self::Ball => 4.0,
            Self::Out => 5.0,
            Self::Company => 3.5,
        }
    }

    /// Logits of wanting that one portion takes away for a while.
    pub(super) const fn sates(self) -> f64 {
        match self {
            Self::Treat => 0.25,
            Self::Ball => 0.35,
            Self::Out => 0.9,
            Self::Company => 0.4,
        }
    }
}
