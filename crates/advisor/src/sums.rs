//! Sums over all presses of an animal, word by word, made of sums of single weeks.
//!
//! What a week holds is kept with the mark of the weeks it was made from ([`Story::mark_of_weeks`]): a new press makes this
//! week new, a correction of an old one that week, and every other week stays added up. The sums are those of reading
//! everything anew, for they are counts and lists, joined in order of time.

use crate::heard::{Heard, heard};
use crate::memo::Memo;
use crate::observe::{ANSWERS_WITHIN_S, Answered, NAMED_WITHIN_DAYS, answered_between, meant};
use crate::weekly::Weekly;
use sayso_methods::learning::LearningError;
use sayso_methods::learning::curve::LearningCurve;
use sayso_methods::stats::Scan;
use sayso_methods::understanding::rounds::Round;
use sayso_model::{Accident, AnimalId, Answer, Day, Moment, PressedBy, Story, Then, Week, WordId, Zone};
use serde::Serialize;
use std::collections::BTreeMap;
use std::sync::Arc;

/// What the animal did after one kind of outcome.
#[derive(Clone, Copy, PartialEq, Eq, Default, Debug)]
pub struct After {
    /// Took it.
    pub took: usize,
    /// Did not care.
    pub ignored: usize,
    /// Went away.
    pub left: usize,
    /// Pressed again.
    pub pressed_again: usize,
    /// Not recorded.
    pub unrecorded: usize,
}

impl After {
    fn note(&mut self, then: Option<Then>) {
        match then {
            Some(Then::Took) => self.took += 1,
            Some(Then::Ignored) => self.ignored += 1,
            Some(Then::Left) => self.left += 1,
            Some(Then::PressedAgain) => self.pressed_again += 1,
            None => self.unrecorded += 1,
        }
    }

    fn add(&mut self, more: &Self) {
        self.took += more.took;
        self.ignored += more.ignored;
        self.left += more.left;
        self.pressed_again += more.pressed_again;
        self.unrecorded += more.unrecorded;
    }

    /// Outcomes that were seen.
    #[must_use]
    pub const fn seen(&self) -> usize {
        self.took + self.ignored + self.left + self.pressed_again
    }
}

/// Answers to own presses.
#[derive(Clone, Copy, PartialEq, Eq, Default, Debug, Serialize)]
pub struct Answers {
    /// Given.
    pub given: usize,
    /// Partly given.
    pub partly: usize,
    /// Not now.
    pub declined: usize,
    /// Another thing offered.
    pub alternative: usize,
    /// Missed, or no answer recorded.
    pub missed: usize,
}

impl Answers {
    /// Counts one more.
    pub(crate) fn note(&mut self, answer: Option<Answer>) {
        match answer {
            Some(Answer::Given) => self.given += 1,
            Some(Answer::Partly) => self.partly += 1,
            Some(Answer::Declined) => self.declined += 1,
            Some(Answer::Alternative) => self.alternative += 1,
            Some(Answer::Missed) | None => self.missed += 1,
        }
    }

    fn add(&mut self, more: &Self) {
        self.given += more.given;
        self.partly += more.partly;
        self.declined += more.declined;
        self.alternative += more.alternative;
        self.missed += more.missed;
    }
}

/// A showing and the seconds to its delivery, where they are known.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Shown {
    /// When.
    pub at: Moment,
    /// Seconds from press to delivery.
    pub delay_s: Option<f64>,
}

/// Sums over the presses of one word.
#[derive(Clone, PartialEq, Default, Debug)]
pub struct WordSums {
    /// Showings, by time.
    pub shown: Vec<Shown>,
    /// Showings by household day, days without any being absent.
    pub shown_by_day: Vec<(Day, usize)>,
    /// Own presses that count for understanding by household day, days without any being absent.
    pub own_by_day: Vec<(Day, usize)>,
    /// Answers to own presses.
    pub answers: Answers,
    /// What it did after the thing was given for an own press.
    pub after_given: After,
    /// What it did after another answer to an own press.
    pub after_declined: After,
    /// Own presses of which somebody judged whether they were a stumble.
    pub judged: usize,
    /// Those that looked like one.
    pub stumbled: usize,
}

impl WordSums {
    fn note(&mut self, a: &Answered<'_>, day: Day) {
        let at = a.press.at();
        match a.press.part.by {
            PressedBy::Person if a.given() => {
                self.shown.push(Shown { at, delay_s: a.delay_s() });
                count(&mut self.shown_by_day, day, 1);
            }
            PressedBy::Animal => {
                if meant(a.press.part) {
                    count(&mut self.own_by_day, day, 1);
                }
                self.answers.note(a.delivery.map(|d| d.part.answer));
                if let Some(d) = a.delivery {
                    let after = if a.given() { &mut self.after_given } else { &mut self.after_declined };
                    after.note(d.part.then);
                }
                self.judged += usize::from(a.press.part.accident != Accident::Unsure);
                self.stumbled += usize::from(a.press.part.accident == Accident::Likely);
            }
            _ => {}
        }
    }

    /// Puts a later stretch behind this one.
    fn append(&mut self, later: &Self) {
        self.shown.extend_from_slice(&later.shown);
        later.shown_by_day.iter().for_each(|(day, n)| count(&mut self.shown_by_day, *day, *n));
        later.own_by_day.iter().for_each(|(day, n)| count(&mut self.own_by_day, *day, *n));
        self.answers.add(&later.answers);
        self.after_given.add(&later.after_given);
        self.after_declined.add(&later.after_declined);
        self.judged += later.judged;
        self.stumbled += later.stumbled;
    }
}

/// Days come in order; a stretch may end within one.
fn count(days: &mut Vec<(Day, usize)>, day: Day, n: usize) {
    match days.last_mut() {
        Some((last, so_far)) if *last == day => *so_far += n,
        _ => days.push((day, n)),
    }
}

/// Sums over all presses of an animal up to a moment.
#[derive(Clone, PartialEq, Default, Debug)]
pub struct Totals(BTreeMap<WordId, WordSums>);

impl Totals {
    /// The sums of one word; nothing but noughts for one never pressed.
    #[must_use]
    pub fn of(&self, word: WordId) -> &WordSums {
        const NONE: &WordSums = &WordSums {
            shown: Vec::new(),
            shown_by_day: Vec::new(),
            own_by_day: Vec::new(),
            answers: Answers { given: 0, partly: 0, declined: 0, alternative: 0, missed: 0 },
            after_given: After { took: 0, ignored: 0, left: 0, pressed_again: 0, unrecorded: 0 },
            after_declined: After { took: 0, ignored: 0, left: 0, pressed_again: 0, unrecorded: 0 },
            judged: 0,
            stumbled: 0,
        };
        self.0.get(&word).unwrap_or(NONE)
    }

    /// The sums of every word that was pressed.
    pub fn words(&self) -> impl Iterator<Item = (WordId, &WordSums)> {
        self.0.iter().map(|(word, sums)| (*word, sums))
    }

    fn append(&mut self, later: &Self) {
        for (word, sums) in &later.0 {
            self.0.entry(*word).or_default().append(sums);
        }
    }
}

/// What was worked out of the weeks of one home; clones share it, also between threads.
#[derive(Clone, Default, Debug)]
pub struct Sums(Arc<Kept>);

#[derive(Default, Debug)]
struct Kept {
    totals: Weekly<(AnimalId, Zone), Totals>,
    heard: Weekly<(), Vec<Heard>>,
    by_sitting: Memo<AnimalId, (Vec<Round>, usize), Vec<f64>>,
    by_round: Memo<(AnimalId, WordId), DrawnRounds, Vec<f64>>,
    curves: Memo<(AnimalId, WordId), CurveOf, Result<LearningCurve, LearningError>>,
    hours: Memo<AnimalId, Stretches, Option<Scan>>,
}

/// Closed rounds, the number of the word looked at, and how many words there are.
pub(crate) type DrawnRounds = (Vec<Round>, usize, usize);
/// What a learning curve is worked out from: whether each press was right, the days, and what chance would give.
pub(crate) type CurveOf = (Vec<Option<bool>>, Vec<i32>, f64);
/// Values and the stretches of them that are compared.
pub(crate) type Stretches = (Vec<f64>, Vec<Vec<usize>>);

impl Sums {
    /// Sums over all presses of an animal up to `now`. Only weeks touched since they were last asked for are read.
    pub(crate) fn totals(&self, story: &Story, animal: AnimalId, zone: &Zone, now: Moment) -> Totals {
        // Deliveries of the weeks beside it may answer a week's presses.
        let beside = ANSWERS_WITHIN_S + NAMED_WITHIN_DAYS * 86_400.0;
        let over = |week: Week| week.plus(1).begins().plus_seconds(beside) <= now;
        let read = |week: Week| of_week(story, animal, zone, week, now);
        let mut totals = Totals::default();
        for week in self.0.totals.all((animal, zone.clone()), story, now, over, read) {
            totals.append(&week);
        }
        totals
    }

    /// Evidence from rounds that people chose, in the end, by number of word: `work` from the rounds and how many words.
    pub(crate) fn by_sitting(
        &self,
        animal: AnimalId,
        of: (Vec<Round>, usize),
        work: impl FnOnce(&(Vec<Round>, usize)) -> Vec<f64>,
    ) -> Vec<f64> {
        self.0.by_sitting.get(animal, of, work)
    }

    /// Evidence from drawn rounds after each: `work` from the rounds, the number of the word and how many words.
    pub(crate) fn by_round(
        &self,
        of: (AnimalId, WordId),
        rounds: DrawnRounds,
        work: impl FnOnce(&DrawnRounds) -> Vec<f64>,
    ) -> Vec<f64> {
        self.0.by_round.get(of, rounds, work)
    }

    /// The learning curve of a word.
    pub(crate) fn curve(
        &self,
        of: (AnimalId, WordId),
        trials: CurveOf,
        work: impl FnOnce(&CurveOf) -> Result<LearningCurve, LearningError>,
    ) -> Result<LearningCurve, LearningError> {
        self.0.curves.get(of, trials, work)
    }

    /// The hours of the day that stand out.
    pub(crate) fn hours(
        &self,
        animal: AnimalId,
        of: Stretches,
        work: impl FnOnce(&Stretches) -> Option<Scan>,
    ) -> Option<Scan> {
        self.0.hours.get(animal, of, work)
    }

    /// Every press that was heard in the home, also where another event counts for it.
    #[must_use]
    pub fn heard(&self, story: &Story) -> Vec<Heard> {
        heard(&self.0.heard, story)
    }
}

fn of_week(story: &Story, animal: AnimalId, zone: &Zone, week: Week, now: Moment) -> Totals {
    let (from, end) = (week.begins(), week.plus(1).begins());
    let all = answered_between(story, animal, (from, end.plus_seconds(-0.001).min(now)), now);
    let mut sums = Totals::default();
    let mut day: Option<(Day, Moment, Moment)> = None;
    for a in &all {
        let at = a.press.at();
        let here = day.filter(|(_, begins, ends)| at >= *begins && at < *ends).unwrap_or_else(|| {
            let day = at.day(zone);
            (day, day.start(zone), day.plus(1).start(zone))
        });
        day = Some(here);
        let day = here.0;
        sums.0.entry(a.press.part.word).or_default().note(a, day);
    }
    sums
}
