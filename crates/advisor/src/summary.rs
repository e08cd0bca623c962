//! What a home gives for the norms: one row per learner and word, without names, notes, dates or places.
//!
//! A first press is the animal's own: of its own accord, unless it looked like a stumble, or of the invited word at an
//! invitation. A showing is a person's press that was followed by the thing, or what was shown after an invitation or a request.
//! A word is watched to the learner's last record, or to the day it was put away, where it still is.
//! Whole seconds from the learner's first showing, as the study counts; a test there compares.

mod seen;
mod week;

use sayso_model::draw::heads;
use sayso_model::{AnimalCard, AnimalId, Moment, RewardId, RewardKind, Stage, Story, WordId};
use sayso_norms::{AgeBand, DayPart, StageWait, StudyName, SummaryRow, TimedStage, WordKind};
use seen::Seen;
use std::collections::BTreeMap;

const DAY_S: i64 = 86_400;

/// The row of a word, and which word it is of.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Summary {
    /// The word: not part of the row.
    pub word: WordId,
    /// What it comes to.
    pub row: SummaryRow,
}

/// Every row of a home, under a study name, by learner and word. Whether the home agreed is not asked here.
#[must_use]
pub fn summary_rows(story: &Story, household: &StudyName) -> Vec<SummaryRow> {
    // Numbers by the order of ids, which is that of the cards' making; they tell no more than which rows are of one learner.
    let learners = story.animals().into_iter().zip(0_u8..=u8::MAX);
    let ever = Moment::clamped(i64::MAX);
    let rows =
        learners.flat_map(|((animal, card), learner)| of_learner(story, (animal, card), household, learner, ever));
    rows.map(|summary| summary.row).collect()
}

/// The rows of one animal, by word, of what is dated up to a moment; none where it was never shown any.
#[must_use]
pub fn summaries(story: &Story, animal: AnimalId, upto: Moment) -> Vec<Summary> {
    let (Some(card), Ok(home)) = (story.animals().get(&animal).copied(), StudyName::new("here")) else {
        return Vec::new();
    };
    of_learner(story, (animal, card), &home, 0, upto)
}

/// What is counted of one word, at seconds since the learner's first showing.
#[derive(Default)]
struct Counted {
    shown: Vec<i64>,
    first: Option<i64>,
    invited: u32,
    joined: u32,
    /// Of its own accord: by lot, and when.
    drawn: Option<(u64, Moment)>,
    /// When each stage was first chosen, in the order of [`Stage::ALL`].
    chosen: [Option<i64>; Stage::ALL.len()],
}

impl Counted {
    fn pressed(&mut self, at: i64) {
        self.first = Some(self.first.map_or(at, |first| first.min(at)));
    }

    fn chosen(&mut self, stage: Stage, at: i64) {
        let first = &mut self.chosen[stage as usize];
        *first = Some(first.map_or(at, |first| first.min(at)));
    }

    /// To when it was watched, of a learner whose last record is at `until`: a word put away stands in no stage and waits for no press,
    /// unless somebody showed it still or chose its stage, or it was first pressed after that.
    fn watched(&self, away: Option<i64>, until: i64) -> i64 {
        let own = self.shown.last().copied().into_iter().chain(self.first).chain(self.chosen.into_iter().flatten());
        away.map_or(until, |away| own.fold(away, i64::max)).min(until)
    }

    /// When a word shown first at `begin` came to a stage, and when it was first moved on from there. A word of which nobody chose a stage
    /// is being shown. None where it did not come to the stage, or was beyond it before it was seen there.
    fn stay(&self, stage: TimedStage, begin: i64) -> Option<(i64, Option<i64>)> {
        let [_, _, invite, converse] = self.chosen;
        let (from, to) = match stage {
            TimedStage::Show => (begin, invite.into_iter().chain(converse).min()),
            TimedStage::Invite => (invite?.max(begin), converse),
        };
        to.is_none_or(|to| to >= from).then_some((from, to))
    }
}

fn of_learner(
    story: &Story,
    (animal, card): (AnimalId, &AnimalCard),
    household: &StudyName,
    learner: u8,
    upto: Moment,
) -> Vec<Summary> {
    let seen = Seen::of(story, animal, upto);
    let Some((zero, _)) = seen.showings.first().copied() else { return Vec::new() };
    let since = |at: Moment| at.seconds_since(zero).floor() as i64;
    let mut order: Vec<WordId> = Vec::new();
    let mut counted: BTreeMap<WordId, Counted> = BTreeMap::new();
    for (at, word) in &seen.showings {
        let one = counted.entry(*word).or_insert_with(|| {
            order.push(*word);
            Counted::default()
        });
        one.shown.push(since(*at));
    }
    for (at, word) in &seen.presses {
        if let Some(one) = counted.get_mut(word) {
            one.pressed(since(*at));
        }
    }
    for (word, lot, at) in &seen.own {
        if let Some(one) = counted.get_mut(word) {
            one.drawn = Some(one.drawn.map_or((*lot, *at), |drawn| drawn.min((*lot, *at))));
        }
    }
    for (at, word, stage) in &seen.stages {
        if let Some(one) = counted.get_mut(word) {
            one.chosen(*stage, since(*at));
        }
    }
    for (word, joined) in &seen.invited {
        if let Some(one) = counted.get_mut(word) {
            one.invited += 1;
            one.joined += u32::from(*joined);
        }
    }
    let noted: Vec<_> = seen.noted.iter().map(|(at, own)| (since(*at), *own)).collect();
    let until = noted.last().map_or(0, |(at, _)| *at);
    let age_band = AgeBand::of(card.born, zero.day(&story.zone()));
    let (kinds, zone) = (kinds(story), story.zone());
    let row = |word: WordId, nth: u16| {
        let (one, stage) = (&counted[&word], asked_stage(animal, word));
        let begin = *one.shown.first()?;
        let until = one.watched(seen.away.get(&word).map(|at| since(*at)), until);
        let days = |to: i64| whole((to - begin).max(0) / DAY_S, SummaryRow::MOST_DAYS);
        let word_kind = kinds.get(&word).copied().unwrap_or(WordKind::Other);
        let before = one.shown.iter().filter(|at| one.first.is_none_or(|first| **at < first)).count();
        Some(SummaryRow {
            form: SummaryRow::FORM,
            household: household.clone(),
            learner,
            word: nth,
            species: card.species,
            age_band,
            word_kind,
            exposures: whole(before as i64, SummaryRow::MOST_COUNTED),
            pressed: one.first.is_some(),
            days: days(one.first.unwrap_or(until)),
            watched: days(until),
            invited: one.invited.min(SummaryRow::MOST_COUNTED),
            joined: one.joined.min(SummaryRow::MOST_COUNTED),
            hours: one.drawn.map(|(_, at)| DayPart::of_hour(at.hour(&zone))),
            stage: (word_kind != WordKind::Closing).then(|| stay(one, stage, begin, until)).flatten(),
            week: (word_kind != WordKind::Closing).then(|| week::week(animal, word, &noted, (begin, until))).flatten(),
        })
    };
    let numbered = order.iter().zip(1..=SummaryRow::MOST_WORDS);
    numbered.filter_map(|(word, nth)| Some(Summary { word: *word, row: row(*word, nth)? })).collect()
}

/// Of which stage a word is asked. Drawn beforehand: of words in both stages and drawn among them, those that stayed long in the first
/// would be asked of it more often, and stays there look longer than they are.
fn asked_stage(animal: AnimalId, word: WordId) -> TimedStage {
    if heads(animal, word) { TimedStage::Show } else { TimedStage::Invite }
}

/// How long a word shown first at `begin` stayed in a stage, in a record up to `until`.
fn stay(word: &Counted, stage: TimedStage, begin: i64, until: i64) -> Option<StageWait> {
    let (from, to) = word.stay(stage, begin)?;
    let days = whole((to.unwrap_or(until) - from).max(0) / DAY_S, SummaryRow::MOST_DAYS);
    Some(StageWait { stage, days, moved_on: to.is_some() })
}

/// A count that is held within what a row takes.
fn whole(count: i64, most: u32) -> u32 {
    u32::try_from(count.clamp(0, i64::from(most))).unwrap_or(most)
}

/// What every word brings.
#[must_use]
pub fn kinds(story: &Story) -> BTreeMap<WordId, WordKind> {
    let rewards = story.rewards();
    let brings = |reward: RewardId| -> Option<RewardKind> { rewards.get(&reward).map(|card| card.kind) };
    let kind =
        |(id, card): (WordId, &sayso_model::WordCard)| (id, WordKind::of(card.closing, card.reward.and_then(brings)));
    story.words().into_iter().map(kind).collect()
}
