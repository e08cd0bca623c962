//! One household running day by day: configuration, state and the record so far.

use crate::chance::Chance;
use crate::clock::local_hour;
use crate::home::Home;
use crate::mind::Mind;
use crate::pen::{Pen, Seen, uuid_at};
use crate::truth::{Ids, PressTruth, SessionTruth, Truth, Why};
use sayso_model::*;
use std::collections::{BTreeMap, VecDeque};

/// Where the household stands with one word and one learner.
#[derive(Clone, Debug)]
pub(crate) struct Progress {
    pub(crate) stage: Option<Stage>,
    pub(crate) showings: u32,
    /// Of the last ten invitations in which the thing was wanted: was the word pressed in the wait?
    pub(crate) recent: VecDeque<bool>,
    /// Deliveries of its reward today.
    pub(crate) today: u16,
}

/// One household, running.
pub(crate) struct World<'a> {
    pub(crate) cfg: &'a Home,
    pub(crate) ids: Ids,
    pub(crate) pen: Pen,
    pub(crate) chance: Chance,
    pub(crate) minds: Vec<Mind<'a>>,
    /// By learner, then word.
    pub(crate) progress: Vec<Vec<Progress>>,
    /// Energy of rewards today, by learner.
    pub(crate) kcal: Vec<f64>,
    /// Likes tests and checks still to be run, by learner: indices into the plan.
    pub(crate) likes_due: Vec<Vec<usize>>,
    pub(crate) probes_due: Vec<Vec<usize>>,
    pub(crate) presses: BTreeMap<EventId, PressTruth>,
    pub(crate) sessions: Vec<SessionTruth>,
    pub(crate) unlogged: usize,
    /// By learner: the button favoured since its last session began.
    pub(crate) favourites: Vec<usize>,
    /// By learner: the agreed time of swaps that is on, and when it began.
    pub(crate) swaps: Vec<Option<(SwapPlan, Moment)>>,
    pub(crate) end: Moment,
}

/// Seconds as people and phones write them, to the tenth.
pub(crate) fn seconds(s: f64) -> Seconds {
    Seconds::clamped((s * 10.0).round() / 10.0)
}

impl<'a> World<'a> {
    pub(crate) fn new(cfg: &'a Home, seed: u64, begin: Moment, end: Moment) -> Self {
        let mut names = Chance::new(seed, 1);
        let mut pen = Pen::new(cfg.zone.clone(), begin, end, Chance::new(seed, 2));
        let mut chance = Chance::new(seed, 3);
        let mut fresh = |n: usize| (0..n).map(|_| uuid_at(begin, &mut names)).collect::<Vec<_>>();
        let ids = Ids {
            home: pen.home(),
            people: fresh(cfg.people.len()).into_iter().map(PersonId).collect(),
            rewards: fresh(cfg.rewards.len()).into_iter().map(RewardId).collect(),
            words: fresh(cfg.words.len()).into_iter().map(WordId).collect(),
            animals: fresh(cfg.animals.len()).into_iter().map(AnimalId).collect(),
        };
        let new = Progress { stage: None, showings: 0, recent: VecDeque::new(), today: 0 };
        let minds = cfg.animals.iter().map(|l| Mind::new(l, cfg.rewards.len(), cfg.words.len(), &mut chance)).collect();
        pen.take();
        Self {
            minds,
            progress: vec![vec![new; cfg.words.len()]; cfg.animals.len()],
            kcal: vec![0.0; cfg.animals.len()],
            likes_due: cfg.animals.iter().map(|l| (0..l.plan.likes.len()).collect()).collect(),
            probes_due: cfg.animals.iter().map(|l| (0..l.plan.probes.len()).collect()).collect(),
            presses: BTreeMap::new(),
            sessions: Vec::new(),
            unlogged: 0,
            favourites: vec![0; cfg.animals.len()],
            swaps: vec![None; cfg.animals.len()],
            cfg,
            ids,
            pen,
            chance,
            end,
        }
    }

    /// Local hour at a moment.
    pub(crate) fn hour(&self, at: Moment) -> f64 {
        local_hour(at, &self.cfg.zone)
    }

    /// A person at home at that hour; the first one if nobody is.
    pub(crate) fn someone(&mut self, hour: f64) -> usize {
        let weights: Vec<f64> = self
            .cfg
            .people
            .iter()
            .map(|t| if (t.hours.0..t.hours.1).contains(&hour) { t.share } else { 0.0 })
            .collect();
        self.chance.pick(&weights).unwrap_or(0)
    }

    /// Something a person taps about a learner.
    pub(crate) fn tap(&mut self, animal: usize, person: usize, at: Moment, known: Moment) -> Seen {
        let late = self.chance.coin(self.cfg.people[person].late);
        let lag_s = if late { self.chance.exponential(1500.0) } else { self.chance.between(0.1, 1.5) };
        Seen {
            animal: Some(self.ids.animals[animal]),
            person: Some(self.ids.people[person]),
            at,
            known,
            source: Source::Tap,
            lag_s,
        }
    }

    /// Something a person taps that is about no one animal.
    pub(crate) fn card(&self, at: Moment, body: impl Into<Body>) -> (Seen, Body) {
        let person = self.ids.people.first().copied();
        (Seen { animal: None, person, at, known: at, source: Source::Tap, lag_s: 0.5 }, body.into())
    }

    /// Writes a body that is tapped once what it tells is known.
    pub(crate) fn note(&mut self, animal: usize, person: usize, at: Moment, body: impl Into<Body>) -> EventId {
        let seen = self.tap(animal, person, at, at);
        self.pen.write(seen, body)
    }

    /// Whether a word's button is on the board for a learner.
    pub(crate) fn taught(&self, animal: usize, word: usize) -> bool {
        self.progress[animal][word].stage.is_some()
    }

    /// Words of a learner at one of these stages.
    pub(crate) fn at_stage(&self, animal: usize, stages: &[Stage]) -> Vec<usize> {
        (0..self.cfg.words.len())
            .filter(|w| self.progress[animal][*w].stage.is_some_and(|s| stages.contains(&s)))
            .collect()
    }

    /// Words whose buttons are on the board.
    pub(crate) fn on_board(&self) -> Vec<usize> {
        (0..self.cfg.words.len()).filter(|w| (0..self.progress.len()).any(|l| self.taught(l, *w))).collect()
    }

    /// Words on places next to that of `word`, diagonals included.
    pub(crate) fn neighbours(&self, word: usize) -> Vec<usize> {
        let here = self.cfg.words[word].place;
        self.on_board()
            .into_iter()
            .filter(|w| {
                let p = self.cfg.words[*w].place;
                *w != word && p.row.abs_diff(here.row) <= 1 && p.column.abs_diff(here.column) <= 1
            })
            .collect()
    }

    /// The word a learner presses when it wants that of `wanted`, and why that one.
    pub(crate) fn aims(&mut self, animal: usize, wanted: usize) -> (usize, Why) {
        use crate::animal::Style;
        let presser = &self.cfg.animals[animal].presser;
        let board = self.on_board();
        match &presser.style {
            Style::ByMeaning => {}
            Style::AnyWord => return (board[self.chance.below(board.len())], Why::Habit),
            Style::BySession => {
                let favourite = self.favourites[animal] % board.len();
                let any = self.chance.below(board.len());
                return (board[if self.chance.coin(0.85) { favourite } else { any }], Why::Habit);
            }
            Style::ByPlace(weights) => {
                let weights: Vec<f64> = board.iter().map(|w| weights.get(*w).copied().unwrap_or(0.0)).collect();
                let word = self.chance.pick(&weights).map_or(wanted, |i| board[i]);
                return (word, Why::Habit);
            }
        }
        for (a, b, p) in &presser.mixes_up {
            let other = if *a == wanted { *b } else { *a };
            if (*a == wanted || *b == wanted) && board.contains(&other) && self.chance.coin(*p) {
                return (other, Why::MixedUp);
            }
        }
        let near = self.neighbours(wanted);
        if !near.is_empty() && self.chance.coin(presser.slip) {
            return (near[self.chance.below(near.len())], Why::Slip);
        }
        (wanted, Why::Meant)
    }

    /// Probability that a learner who wants the thing of `word`, and has the opportunity, presses.
    pub(crate) fn presses(&self, animal: usize, word: usize) -> f64 {
        use crate::animal::Style;
        let presser = &self.cfg.animals[animal].presser;
        let p = match presser.style {
            Style::ByMeaning => self.minds[animal].understands(word),
            // These press whenever they want anything at all; they have learned that pressing pays.
            Style::AnyWord | Style::ByPlace(_) | Style::BySession => self
                .at_stage(animal, &Stage::ALL)
                .into_iter()
                .map(|w| self.minds[animal].understands(w))
                .fold(0.0, f64::max),
        };
        p * (1.0 - self.shy(animal, word))
    }

    /// How far a learner avoids the button of a word, 0 to 1.
    pub(crate) fn shy(&self, animal: usize, word: usize) -> f64 {
        let shies = &self.cfg.animals[animal].presser.shies_from;
        shies.iter().find(|(w, _)| *w == word).map_or(0.0, |(_, p)| p.clamp(0.0, 1.0))
    }

    /// A button the learner comes near by the way, if it does not avoid the one at hand.
    pub(crate) fn comes_near(&mut self, animal: usize) -> Option<usize> {
        let board = self.on_board();
        let word = *board.get(self.chance.below(board.len()))?;
        let shy = self.shy(animal, word);
        (!self.chance.coin(shy)).then_some(word)
    }

    /// How a press looks to a person: meant or not.
    pub(crate) fn looks(&mut self, why: Why) -> Accident {
        let (no, likely) = match why {
            Why::Accident => (0.2, 0.6),
            Why::Slip => (0.5, 0.3),
            Why::Meant | Why::MixedUp | Why::Habit => (0.85, 0.03),
        };
        match self.chance.pick(&[no, likely, 1.0 - no - likely]) {
            Some(0) => Accident::No,
            Some(1) => Accident::Likely,
            _ => Accident::Unsure,
        }
    }

    /// Whether food of that reward still fits the ration, and the reward its number a day.
    pub(crate) fn still_given(&self, animal: usize, word: usize) -> bool {
        let reward = &self.cfg.rewards[self.cfg.words[word].reward];
        let kcal = reward.kcal_per_piece.map_or(0.0, Kcal::get);
        let fits = self.cfg.animals[animal].plan.ration_kcal.is_none_or(|r| self.kcal[animal] + kcal <= r);
        fits && self.progress[animal][word].today < reward.most_per_day
    }

    /// Everything true, once the run is over.
    pub(crate) fn into_truth(
        self,
        days: Vec<crate::truth::TrueDay>,
        written: &std::collections::BTreeSet<EventId>,
    ) -> Truth {
        let mut presses = self.presses;
        presses.retain(|id, _| written.contains(id));
        Truth {
            home: self.cfg.clone(),
            ids: self.ids,
            presses,
            sessions: self.sessions,
            days,
            unlogged_presses: self.unlogged,
        }
    }
}
