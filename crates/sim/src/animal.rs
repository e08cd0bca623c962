//! What a learner is in truth: what it likes, how it joins, how it learns and presses.

use sayso_model::{Day, Kcal, Kilograms, Label, LifeStage, Note, Species};

/// How much a learner likes one reward, and how that changes.
///
/// The logit of wanting at a moment is
/// `strength + drift(day) + hour_swing * cos(2 pi (hour - hour_peak) / 24) - satiation`.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Liking {
    /// Logit of wanting it on an average day at an average hour, unsated.
    pub strength: f64,
    /// Local hour at which it is wanted most.
    pub hour_peak: f64,
    /// Logits by which wanting swings with the hour.
    pub hour_swing: f64,
    /// Standard deviation of the day-to-day drift, in logits.
    pub drift_sd: f64,
    /// Share of the drift kept from one day to the next, 0 to below 1.
    pub drift_keep: f64,
    /// Logits lost by one portion.
    pub satiation: f64,
    /// Hours after which 1/e of the satiation is left.
    pub recovery_h: f64,
}

impl Liking {
    /// A liking of that strength, with ordinary change.
    #[must_use]
    pub const fn of(strength: f64) -> Self {
        Self {
            strength,
            hour_peak: 18.0,
            hour_swing: 0.2,
            drift_sd: 0.3,
            drift_keep: 0.8,
            satiation: 0.12,
            recovery_h: 1.5,
        }
    }

    /// The same, wanted most at `peak` with that swing.
    #[must_use]
    pub const fn by_hour(self, peak: f64, swing: f64) -> Self {
        Self { hour_peak: peak, hour_swing: swing, ..self }
    }

    /// The same, with `satiation` logits lost a portion and recovery in `recovery_h` hours.
    #[must_use]
    pub const fn sating(self, satiation: f64, recovery_h: f64) -> Self {
        Self { satiation, recovery_h, ..self }
    }
}

/// A stretch of the day in which something by the board spoils the mood.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Noise {
    /// First local hour.
    pub from: f64,
    /// Hour at which it is over.
    pub to: f64,
    /// Mood lost meanwhile.
    pub mood: f64,
}

/// Mood, joining, leaving and signs.
///
/// Mood is standard normal over days (`mood_keep` from one day to the next) with a little added by the session.
#[derive(Clone, PartialEq, Debug)]
pub struct Temper {
    /// Logit of joining a session at mood 0.
    pub join: f64,
    /// Logits of joining a unit of mood adds.
    pub join_mood: f64,
    /// Local hour at which it joins most.
    pub best_hour: f64,
    /// Logits by which joining swings with the hour.
    pub hour_swing: f64,
    /// Median seconds from the start of a session to joining.
    pub join_latency_s: f64,
    /// Probability of leaving after each turn of a session at mood 0, before tiredness.
    pub leave: f64,
    /// Turns after which the chance of leaving has doubled.
    pub tires_after: f64,
    /// Share of the mood kept from one day to the next, 0 to below 1.
    pub mood_keep: f64,
    /// Probability that a sign is written down, per look at the learner (before, during, after).
    pub sign_noted: f64,
    /// A strong sign shows where mood plus noise lies below this.
    pub strong_below: f64,
    /// A mild sign shows where mood plus noise lies below this and not below `strong_below`.
    pub mild_below: f64,
    /// Something by the board that spoils the mood at some hours.
    pub noise: Option<Noise>,
    /// Day from which the learner is unwell: 2.5 units of mood and one logit of every want are lost.
    pub unwell_from: Option<u32>,
    /// Logits of joining lost besides while it is unwell.
    pub unwell_stays_away: f64,
}

impl Default for Temper {
    fn default() -> Self {
        Self {
            join: 1.4,
            join_mood: 0.7,
            best_hour: 18.0,
            hour_swing: 0.4,
            join_latency_s: 9.0,
            leave: 0.012,
            tires_after: 12.0,
            mood_keep: 0.6,
            sign_noted: 0.3,
            strong_below: -2.6,
            mild_below: -1.2,
            noise: None,
            unwell_from: None,
            unwell_stays_away: 0.0,
        }
    }
}

/// What decides which button is pressed.
#[derive(Clone, PartialEq, Debug)]
pub enum Style {
    /// The word of the thing wanted, as far as it is understood.
    ByMeaning,
    /// Any word on the board, whatever is wanted.
    AnyWord,
    /// Words in proportion to these weights (by word of the household), whatever is wanted: a habit of place.
    ByPlace(Vec<f64>),
    /// One favourite button in each session, whatever is wanted; out of sessions that of the last one.
    BySession,
}

/// How a learner learns words and presses buttons.
#[derive(Clone, PartialEq, Debug)]
pub struct Presser {
    /// What decides which button is pressed.
    pub style: Style,
    /// Logit of a meant press before any showing.
    pub first_logit: f64,
    /// Logits one showing adds at no delay, for a word of ease 1, if the learner takes part and takes the thing.
    pub rate: f64,
    /// Highest logit of a meant press.
    pub most_logit: f64,
    /// Share of meant presses left when everything is known (the rest are lapses).
    pub top: f64,
    /// Standard deviation of the noise a showing adds to the logit.
    pub noise_sd: f64,
    /// Seconds of delay after which a showing teaches 1/e as much.
    pub delay_tau_s: f64,
    /// Share of what was learned that is lost a day without showing.
    pub forgets: f64,
    /// Median seconds from an offer to a meant press once the word is known; up to three times that before.
    pub latency_s: f64,
    /// Standard deviation of the logarithm of that latency.
    pub latency_spread: f64,
    /// Probability that a meant press lands on a neighbouring place.
    pub slip: f64,
    /// Unmeant presses per waking hour, any place.
    pub accidents_per_hour: f64,
    /// Contacts that do not sound, per waking hour.
    pub brushes_per_hour: f64,
    /// Looks at the board noted by a person, per waking hour.
    pub looks_per_hour: f64,
    /// Probability that a want that does not lead to a press is shown in the learner's own way.
    pub own_way: f64,
    /// Buttons (by word) the learner avoids as things, with the probability that it withholds a meant press there.
    pub shies_from: Vec<(usize, f64)>,
    /// Probability of pressing again after something else was given than what was asked.
    pub corrects: f64,
    /// Probability of pressing again after "not now" or no answer.
    pub persists: f64,
    /// Times an hour a fully wanted thing is asked for, in one way or another.
    pub asks_per_hour: f64,
    /// Pairs of words (by index) taken for each other, with the probability of that.
    pub mixes_up: Vec<(usize, usize, f64)>,
    /// Probability of following an unwitting cue where the person with the learner knows the answer.
    pub cued: f64,
    /// Logits by which the item on the left is favoured over the item on the right.
    pub side_bias: f64,
    /// Logit of choosing nothing against an item of strength 0.
    pub none_logit: f64,
}

impl Default for Presser {
    fn default() -> Self {
        Self {
            style: Style::ByMeaning,
            first_logit: -4.0,
            rate: 0.05,
            most_logit: 3.0,
            top: 0.95,
            noise_sd: 0.03,
            delay_tau_s: 4.0,
            forgets: 0.01,
            latency_s: 2.2,
            latency_spread: 0.5,
            slip: 0.03,
            accidents_per_hour: 0.03,
            brushes_per_hour: 0.02,
            looks_per_hour: 0.04,
            own_way: 0.5,
            shies_from: Vec::new(),
            corrects: 0.6,
            persists: 0.35,
            asks_per_hour: 0.16,
            mixes_up: Vec::new(),
            cued: 0.25,
            side_bias: 0.3,
            none_logit: -1.5,
        }
    }
}

/// Everything true of one learner.
#[derive(Clone, PartialEq, Debug)]
pub struct AnimalTruth {
    /// The name used at home.
    pub name: Label,
    /// Species.
    pub species: Species,
    /// Birth date.
    pub born: Option<Day>,
    /// Whether the birth date is an estimate.
    pub born_estimated: bool,
    /// Body weight.
    pub weight_kg: Option<Kilograms>,
    /// Life stage.
    pub life_stage: Option<LifeStage>,
    /// The day's energy as a veterinarian set it, and the day of the household from which the card carries it.
    pub day_kcal: Option<(u32, Kcal)>,
    /// What the board must allow for.
    pub limits: Option<Note>,
    /// Health cautions.
    pub cautions: Option<Note>,
    /// One per reward of the household; where it is shorter, the rest are not wanted at all.
    pub likes: Vec<Liking>,
    /// Mood, joining, leaving, signs.
    pub temper: Temper,
    /// Learning and pressing.
    pub presser: Presser,
    /// What the household does with this learner.
    pub plan: crate::plan::Plan,
}

impl AnimalTruth {
    /// An ordinary learner with those likes.
    #[must_use]
    pub fn ordinary(name: Label, species: Species, likes: Vec<Liking>) -> Self {
        Self {
            name,
            species,
            born: None,
            born_estimated: false,
            weight_kg: None,
            life_stage: None,
            day_kcal: None,
            limits: None,
            cautions: None,
            likes,
            temper: Temper::default(),
            presser: Presser::default(),
            plan: crate::plan::Plan::default(),
        }
    }
}
