//! The configuration of an invented household: people, rewards, words, plans. Indices count from 0.

use crate::animal::AnimalTruth;
use crate::held_up::Stuck;
use sayso_model::{Grams, Kcal, Label, LikesFormat, Note, Place, RewardKind, Role, Seconds, Zone};

/// How one person answers a learner's press; weights, not necessarily adding up to 1.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct AnswerHabit {
    /// Gives it.
    pub given: f64,
    /// Gives some of it.
    pub partly: f64,
    /// Says "not now".
    pub declined: f64,
    /// Offers, or by mistake gives, something else.
    pub alternative: f64,
    /// Does not answer in time.
    pub missed: f64,
}

impl Default for AnswerHabit {
    fn default() -> Self {
        Self { given: 0.8, partly: 0.05, declined: 0.06, alternative: 0.05, missed: 0.04 }
    }
}

/// One person.
#[derive(Clone, PartialEq, Debug)]
pub struct PersonTruth {
    /// The name used at home.
    pub name: Label,
    /// What they are to the household.
    pub role: Role,
    /// Median seconds from a press to the delivery.
    pub delay_s: f64,
    /// Standard deviation of the logarithm of that delay.
    pub delay_spread: f64,
    /// Weight with which this person is the one at the board.
    pub share: f64,
    /// First and last local hour at home.
    pub hours: (f64, f64),
    /// How they answer.
    pub answers: AnswerHabit,
    /// Probability that they write down what the learner did after the answer.
    pub notes_then: f64,
    /// Probability that a record is sent late, because the phone had no network.
    pub late: f64,
    /// Probability that a tap is wrong and put right a little later.
    pub mistaps: f64,
}

impl PersonTruth {
    /// An ordinary person with that median delay.
    #[must_use]
    pub fn ordinary(name: Label, delay_s: f64) -> Self {
        Self {
            name,
            role: Role::Home,
            delay_s,
            delay_spread: 0.35,
            share: 1.0,
            hours: (6.0, 23.5),
            answers: AnswerHabit::default(),
            notes_then: 0.9,
            late: 0.03,
            mistaps: 0.006,
        }
    }
}

/// A reward of the household.
#[derive(Clone, PartialEq, Debug)]
pub struct RewardTruth {
    /// Its name at home.
    pub name: Label,
    /// Its kind.
    pub kind: RewardKind,
    /// Energy of one piece; needed for food, and only for food.
    pub kcal_per_piece: Option<Kcal>,
    /// Weight of one piece.
    pub grams_per_piece: Option<Grams>,
    /// Seconds one delivery takes.
    pub seconds_to_deliver: Seconds,
    /// Most deliveries a day the household allows.
    pub most_per_day: u16,
    /// The word for it.
    pub says: Option<Label>,
    /// Whether the household says this word often already.
    pub already_said: bool,
    /// Learners it is for (by index); empty means all.
    pub animals: Vec<usize>,
}

/// A word and what the household does with it.
#[derive(Clone, PartialEq, Debug)]
pub struct WordTruth {
    /// What the button says.
    pub says: Label,
    /// What it means here.
    pub means: Option<Note>,
    /// How everyone answers it.
    pub answer: Option<Note>,
    /// What is said for "not now".
    pub not_now: Option<Note>,
    /// The reward (by index).
    pub reward: usize,
    /// Whether it ends a session.
    pub closing: bool,
    /// Learners it is taught to (by index).
    pub animals: Vec<usize>,
    /// Where its button is.
    pub place: Place,
    /// Day (from 0) on which its card is written and its button placed.
    pub introduced: u32,
    /// Day from which it is shown.
    pub shown_from: u32,
    /// Day on which it goes to invitations whatever was seen; none leaves it to the number of showings.
    pub invited_from: Option<u32>,
    /// How easily it is learned: multiplies the learner's rate.
    pub ease: f64,
    /// Seconds it takes to fetch the thing, added to every delay.
    pub fetch_s: f64,
}

/// A rule of the house.
#[derive(Clone, PartialEq, Debug)]
pub struct Rule {
    /// The word it is about (by index); none for all.
    pub word: Option<usize>,
    /// The rule.
    pub text: Note,
}

/// A remark someone writes down.
#[derive(Clone, PartialEq, Debug)]
pub struct Remarked {
    /// The day.
    pub day: u32,
    /// The remark.
    pub text: Note,
}

/// An invented household.
#[derive(Clone, PartialEq, Debug)]
pub struct Home {
    /// What it calls itself.
    pub name: Label,
    /// The zone it lives in.
    pub zone: Zone,
    /// Days it has kept the notebook, the last one included; at least 1.
    pub days: u32,
    /// Rows and columns of the board, 1 to 20 each.
    pub board: (u8, u8),
    /// People. The first one writes the cards.
    pub people: Vec<PersonTruth>,
    /// Rewards.
    pub rewards: Vec<RewardTruth>,
    /// Words.
    pub words: Vec<WordTruth>,
    /// Learners.
    pub animals: Vec<AnimalTruth>,
    /// Rules of the house.
    pub rules: Vec<Rule>,
    /// Remarks.
    pub remarks: Vec<Remarked>,
    /// Whether clip cards are written. No audio exists behind them.
    pub clips: bool,
    /// What is known to be stuck, and why.
    pub stuck: Vec<Stuck>,
}

/// A configuration nothing can be simulated from.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum ConfigError {
    /// A list that needs an entry has none.
    #[error("there must be at least one of {0}")]
    None(&'static str),
    /// An index points outside its list.
    #[error("{0} points at an entry that does not exist")]
    Dangling(&'static str),
    /// A number outside its range.
    #[error("{0} must be {1}")]
    OutOfRange(&'static str, &'static str),
}

impl Home {
    /// Checks that every index points somewhere and every number is in range.
    ///
    /// # Errors
    /// [`ConfigError`], the first one found.
    pub fn check(&self) -> Result<(), ConfigError> {
        use ConfigError::{Dangling, None as Missing, OutOfRange};
        let ok = |good: bool, error: ConfigError| if good { Ok(()) } else { Err(error) };
        ok(!self.people.is_empty(), Missing("people"))?;
        ok(!self.animals.is_empty(), Missing("animals"))?;
        ok(self.days >= 1 && self.days <= 20_000, OutOfRange("days", "1 to 20000"))?;
        let (rows, columns) = self.board;
        ok((1..=20).contains(&rows) && (1..=20).contains(&columns), OutOfRange("board", "1 to 20 rows and columns"))?;
        for r in &self.rewards {
            ok(
                (r.kind == RewardKind::Food) == r.kcal_per_piece.is_some(),
                OutOfRange("kcal_per_piece", "there for food and only for food"),
            )?;
            ok(r.animals.iter().all(|l| *l < self.animals.len()), Dangling("reward.animals"))?;
        }
        let mut places = std::collections::BTreeSet::new();
        for w in &self.words {
            ok(w.reward < self.rewards.len(), Dangling("word.reward"))?;
            ok(w.animals.iter().all(|l| *l < self.animals.len()), Dangling("word.animals"))?;
            ok(w.place.row < rows && w.place.column < columns, OutOfRange("word.place", "on the board"))?;
            ok(places.insert(w.place), OutOfRange("word.place", "one word's only"))?;
            ok(
                w.ease.is_finite() && w.fetch_s >= 0.0,
                OutOfRange("word.ease and fetch_s", "finite, and not negative"),
            )?;
        }
        for t in &self.people {
            ok(t.delay_s > 0.0 && t.delay_s.is_finite(), OutOfRange("person.delay_s", "above 0"))?;
        }
        for l in &self.animals {
            ok((0.5..=120.0).contains(&l.plan.wait_s), OutOfRange("plan.wait_s", "0.5 to 120"))?;
            ok(l.plan.hours.iter().all(|h| (0.0..24.0).contains(h)), OutOfRange("plan.hours", "from 0 to below 24"))?;
            ok(
                l.plan.likes.iter().all(|p| p.rewards.iter().all(|r| *r < self.rewards.len())),
                Dangling("plan.likes.rewards"),
            )?;
            for p in &l.plan.likes {
                let least = if p.format == LikesFormat::Single { 1 } else { 2 };
                ok((least..=12).contains(&p.rewards.len()), OutOfRange("plan.likes.rewards", "1 or 2 to 12"))?;
                ok((1..=20).contains(&p.rounds), OutOfRange("plan.likes.rounds", "1 to 20"))?;
            }
            for p in &l.plan.probes {
                ok(p.words.len() >= 2 && p.trials > 0, OutOfRange("plan.probes", "two words and a trial at least"))?;
                let unlike = p.words.iter().enumerate().all(|(i, w)| !p.words[..i].contains(w));
                ok(unlike, OutOfRange("plan.probes.words", "each word once"))?;
                ok(p.words.iter().all(|w| *w < self.words.len()), Dangling("plan.probes.words"))?;
            }
            ok(l.plan.swaps.iter().all(|s| (4..=366).contains(&s.days)), OutOfRange("plan.swaps.days", "4 to 366"))?;
            let pairs = &l.presser.mixes_up;
            ok(
                pairs.iter().all(|(a, b, _)| *a < self.words.len() && *b < self.words.len()),
                Dangling("presser.mixes_up"),
            )?;
            let shies = &l.presser.shies_from;
            ok(shies.iter().all(|(w, _)| *w < self.words.len()), Dangling("presser.shies_from"))?;
        }
        ok(self.rules.iter().all(|r| r.word.is_none_or(|w| w < self.words.len())), Dangling("rule.word"))?;
        ok(self.stuck.iter().all(|s| s.word < self.words.len() && s.animal < self.animals.len()), Dangling("stuck"))
    }
}
