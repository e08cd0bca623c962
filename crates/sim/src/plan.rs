//! What a household sets out to do with one learner: sessions, likes tests, checks, swaps. Indices count from 0.

use sayso_model::{Kcal, Label, LikesFormat, ProbeDesign, SwapEnd};

/// A likes test to be run on or after a day.
#[derive(Clone, PartialEq, Debug)]
pub struct LikesPlan {
    /// Earliest day.
    pub day: u32,
    /// Format.
    pub format: LikesFormat,
    /// Rounds.
    pub rounds: u16,
    /// Rewards (by index).
    pub rewards: Vec<usize>,
}

/// A check of understanding to be run on or after a day.
#[derive(Clone, PartialEq, Debug)]
pub struct ProbeSchedule {
    /// Earliest day.
    pub day: u32,
    /// Design.
    pub design: ProbeDesign,
    /// Words (by index). Each trial offers all of them, so chance is one over their number (two at least).
    pub words: Vec<usize>,
    /// Trials.
    pub trials: u16,
    /// Whether the person with the learner does not know the answer.
    pub blind: bool,
}

/// A time in which the household agrees to swapped answers.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SwapSchedule {
    /// The day it begins.
    pub day: u32,
    /// Days it lasts, 4 to 366.
    pub days: u16,
    /// Day on which it is stopped before that, and why.
    pub stopped: Option<(u32, SwapEnd)>,
}

/// What the household does with one learner.
#[derive(Clone, PartialEq, Debug)]
pub struct Plan {
    /// Local hours at which sessions are planned each day.
    pub hours: Vec<f64>,
    /// Probability that a planned session takes place.
    pub kept: f64,
    /// Showings in a session, if the learner stays.
    pub showings: u16,
    /// Invitations in a session, if the learner stays.
    pub invitations: u16,
    /// Whether invitations are held in rounds drawn by the notebook.
    pub rounds: bool,
    /// Agreed times of swaps, one after the other.
    pub swaps: Vec<SwapSchedule>,
    /// Wait after an offer, in seconds (0.5 to 120).
    pub wait_s: f64,
    /// Showings after which a word goes to invitations.
    pub show_before_invite: u32,
    /// Right presses, of the last ten invitations in which the thing was wanted, after which a word goes to converse.
    pub presses_to_converse: usize,
    /// Energy of rewards the household keeps to each day; none sets no limit.
    pub ration_kcal: Option<f64>,
    /// Local hours of waking and sleeping.
    pub awake: (f64, f64),
    /// Probability that an ordinary press without a person near is heard and logged.
    pub heard: f64,
    /// Food given outside the board now and then: times a day, what, and its energy.
    pub extra: Option<(f64, Label, Kcal)>,
    /// Likes tests.
    pub likes: Vec<LikesPlan>,
    /// Checks of understanding.
    pub probes: Vec<ProbeSchedule>,
}

impl Default for Plan {
    fn default() -> Self {
        Self {
            hours: vec![8.0, 18.0],
            kept: 0.85,
            showings: 8,
            invitations: 6,
            rounds: false,
            swaps: Vec::new(),
            wait_s: 5.0,
            show_before_invite: 60,
            presses_to_converse: 8,
            ration_kcal: None,
            awake: (7.0, 22.0),
            heard: 0.6,
            extra: None,
            likes: Vec::new(),
            probes: Vec::new(),
        }
    }
}
