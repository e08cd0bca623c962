//! The words of a line: where they stand, whether they do not get on, and the best supported cause that the records carry.
//!
//! The cause is that of the word's step ([`crate::steps`]), in its order of precedence. A desk names it only where the records
//! that the cause is about were kept: a showing that nobody wrote down is no showing too few.

use super::line::{Held, Logging, WEEKS, WordLine, tidied, tidy};
use super::looks::taken_for;
use crate::advice::{Act, Advice, Because, Sure};
use crate::case::Case;
use crate::cause::{Bearing, Cause};
use crate::causes::{alike, not_wanted, people_differ, too_late};
use crate::estimate::{Estimate, Unit};
use crate::observe::Answered;
use crate::others::Wait;
use crate::stages::standings;
use crate::steps::{GIVE_WITHIN_S, WordStep, steps};
use crate::stuck::stuck_for;
use crate::summary::{Summary, summaries};
use crate::sums::WordSums;
use sayso_methods::learning::stage::StageRule;
use sayso_methods::stats::{Proportion, Tail};
use sayso_model::{Day, PressedBy, Stage, WordId};

/// Causes weighed for each word that have a p-value.
const CAUSES: usize = 6;
/// How often chance may bring a cause to a word that is stuck without one.
const FALSE_CAUSE: f64 = 0.05;
/// Days looked back on by the causes of a word.
const DAYS: i32 = crate::causes::RECENT_DAYS;
/// Fewest outcomes, delays, or contacts behind a cause.
const FEWEST: usize = 10;
/// Fewest looks, brushes and own presses behind an avoided button.
const NEAR: usize = 20;
/// Fewest presses at a word's invitations behind two words that sound alike.
const PRESSED: usize = 6;
/// Presses at invitations from which a home whose presses go with no word at all is taken to press by habit.
const HABIT: usize = 30;
/// Share of deliveries whose outcome must be written down, or those noted may be those that stood out.
const NOTED: f64 = 0.5;

/// Every active word of the animal, by id.
pub(crate) fn words(case: &Case<'_>, logging: &Logging) -> Vec<WordLine> {
    // A word invited by itself can never show more than chance, so mostly right presses of any word say as much.
    let mostly_right = |w: WordId| {
        let (right, presses) = case.invitations(w).right();
        Estimate::share(right, presses).surely_above(0.5)
    };
    let by_habit = case.invited_presses().len() >= HABIT
        && standings(case).iter().all(|s| !s.above_chance && !mostly_right(s.word));
    let waits = summaries(case.story(), case.animal(), case.now());
    let one = |step| one(case, logging, by_habit, step, &waits);
    let mut all: Vec<WordLine> = steps(case).iter().filter_map(one).collect();
    all.sort_by_key(|w| w.word);
    all
}

fn one(case: &Case<'_>, logging: &Logging, by_habit: bool, step: &WordStep, waits: &[Summary]) -> Option<WordLine> {
    let word = step.word.word;
    let standing = standings(case).iter().find(|s| s.word == word)?;
    let (sums, asked) = (case.totals().of(word), case.invitations(word));
    let right = Estimate::share(asked.usable.iter().filter(|u| u.right).count(), asked.usable.len());
    let given = Given { case, logging, by_habit, word };
    // "Hardly pressed" says something only where presses are written down; what came of invitations says it by itself.
    let stuck =
        step.stuck.then(|| stuck_for(case, standing)).flatten().filter(|_| right.surely_below(0.5) || logging.full());
    let held = if stuck.is_some() { given.best(step) } else { given.of_one_that_gets_on(step) };
    Some(WordLine {
        word,
        first_shown: sums.shown_by_day.first().map(|d| d.0),
        first_press: sums.own_by_day.first().map(|d| d.0),
        stage: step.stage,
        figures_say: step.figures_say,
        above_chance: standing.above_chance,
        showings: standing.showings,
        stuck,
        right: tidied(right),
        held,
        held_seen: (stuck.is_some() || held.is_some()).then(|| case.now().day(case.zone())),
        looked: if step.closing { 0 } else { CAUSES },
        ready_since: ready_since(step, sums),
        weeks: weeks(case, sums),
        wait: waits.iter().find(|summary| summary.word == word).map(|summary| Wait::of(&summary.row)),
    })
}

/// Own presses of each week.
fn weeks(case: &Case<'_>, sums: &WordSums) -> [usize; WEEKS] {
    let (mut weeks, today) = ([0; WEEKS], case.now().day(case.zone()));
    for (day, presses) in &sums.own_by_day {
        let ago = usize::try_from(today.days_since(*day)).ok().map(|days| days / 7).filter(|ago| *ago < WEEKS);
        ago.and_then(|ago| weeks.get_mut(WEEKS - 1 - ago)).into_iter().for_each(|week| *week += *presses);
    }
    weeks
}

/// The day on which it had been shown often enough, on enough days, where inviting is what the figures point to.
fn ready_since(step: &WordStep, sums: &WordSums) -> Option<Day> {
    let rule = StageRule::default();
    if step.closing || step.stage > Stage::Show || step.figures_say < Stage::Invite {
        return None;
    }
    let mut so_far = 0;
    let shown = sums.shown_by_day.iter().find(|(_, n)| {
        so_far += n;
        so_far >= rule.min_showings as usize
    })?;
    let days = sums.shown_by_day.get(rule.min_showing_days.saturating_sub(1) as usize)?;
    Some(shown.0.max(days.0))
}

struct Given<'c, 'a> {
    case: &'c Case<'a>,
    logging: &'c Logging,
    by_habit: bool,
    word: WordId,
}

impl Given<'_, '_> {
    /// The first cause, in the order of the step, that the records carry. A word taken for another explains that what comes is
    /// not what was wanted, and that its own button is left alone.
    fn best(&self, step: &WordStep) -> Option<Held> {
        let mut all = std::iter::once(&step.advice).chain(&step.also);
        let found = all.find_map(|advice| self.held(advice).filter(Self::stands_out));
        let explained = found.is_none_or(|h| matches!(h.cause, Cause::NotWanted | Cause::Avoided));
        self.sounds_alike().filter(|h| explained && Self::stands_out(h)).or(found)
    }

    /// Among the causes weighed for a word, one is named only beyond what chance brings to the best of them (Bonferroni); one
    /// without a p-value where its whole interval lies on the wrong side. A recording too short is a fact.
    fn stands_out(held: &Held) -> bool {
        held.cause == Cause::HardToMakeOut
            || held.p.map_or(held.sure > Sure::Little, |p| p <= FALSE_CAUSE / CAUSES as f64)
    }

    /// A cause of a word that gets on is a discovery among thousands looked at, so it needs a p-value of its own. Weighed also
    /// once a word is in conversation, where its step looks for no cause any more.
    fn of_one_that_gets_on(&self, step: &WordStep) -> Option<Held> {
        if step.closing {
            return None;
        }
        let weighed =
            [too_late(self.case, self.word), people_differ(self.case, self.word), not_wanted(self.case, self.word)];
        let spoken_for = weighed.iter().filter(|w| w.bearing == Bearing::For);
        let mut found = spoken_for.filter_map(|w| self.strongest(w.cause, w.evidence.iter(), Sure::Fairly));
        found.find(|h| h.p.is_some()).or_else(|| self.sounds_alike())
    }

    /// Two words are mixed up while both get on well enough.
    fn sounds_alike(&self) -> Option<Held> {
        self.strongest(Cause::SoundsAlike, alike(self.case, self.word).evidence.iter(), Sure::Little)
    }

    fn held(&self, advice: &Advice) -> Option<Held> {
        let Act::Mend { cause, .. } = &advice.act else { return None };
        self.strongest(*cause, advice.because.iter().map(|r| &r.fact), advice.sure)
    }

    /// Of two people both delays and what they give are weighed: the one that stands out more.
    fn strongest<'b>(&self, cause: Cause, facts: impl Iterator<Item = &'b Because>, sure: Sure) -> Option<Held> {
        let found = facts.filter_map(|fact| self.weigh(cause, fact, sure));
        found.min_by(|a, b| a.p.unwrap_or(1.0).total_cmp(&b.p.unwrap_or(1.0)))
    }

    /// The figure of a cause and whether the records it rests on were kept.
    fn weigh(&self, cause: Cause, fact: &Because, sure: Sure) -> Option<Held> {
        let bar = |bar: f64, unit: Unit| Estimate { value: Some(bar), ..Estimate::unknown(unit) };
        let found = |figure: Estimate, beside: Estimate, p: Option<f64>| {
            let (figure, beside) = (tidied(figure), tidied(beside));
            Some(Held { cause, sure, figure, beside, p: p.map(tidy) })
        };
        // Where presses go with no word, what it does at one button tells nothing of that word; what people do, still.
        let of_the_animal = matches!(
            cause,
            Cause::NotWanted | Cause::Avoided | Cause::SoundsAlike | Cause::TimeOrPlace | Cause::Health
        );
        if self.by_habit && of_the_animal {
            return None;
        }
        match (cause, fact) {
            (Cause::NotWanted, Because::Taken { share, bar: at, .. }) => {
                let kept = share.n >= FEWEST && self.outcomes_noted();
                kept.then(|| found(*share, bar(*at, Unit::Share), below(share, *at))).flatten()
            }
            (Cause::TooLittle, Because::ShowingsADay { rate, bar: at, .. }) => {
                self.logging.full().then(|| found(*rate, bar(*at, Unit::PerDay), None)).flatten()
            }
            (Cause::TooLate, Because::Delay { seconds, bar: at }) => {
                (seconds.n >= FEWEST).then(|| found(*seconds, bar(*at, Unit::Seconds), self.later_than(*at))).flatten()
            }
            (Cause::Avoided, Because::Near { share, expected }) => {
                let kept = share.n >= NEAR && !self.presses_another();
                kept.then(|| found(*share, bar(*expected, Unit::Share), below(share, expected / 2.0))).flatten()
            }
            (Cause::TimeOrPlace, Because::UneasyHours { here, elsewhere, p, .. }) => {
                self.logging.whole().then(|| found(*here, *elsewhere, Some(*p))).flatten()
            }
            (Cause::Health, Because::LateFall { lately, before, p, .. }) => {
                self.logging.full().then(|| found(*lately, *before, Some(*p))).flatten()
            }
            (Cause::Health, Because::SuddenChange { now, before }) => {
                self.logging.full().then(|| found(*now, *before, None)).flatten()
            }
            (Cause::SoundsAlike, Because::Sounds { too_alike: true, .. }) => {
                let other = self.sounds_most_like()?;
                let (taken, of, p) = taken_for(self.case, self.word, other);
                let (presses, expected) = self.pressed_elsewhere(other);
                let kept = of >= PRESSED && taken > 1;
                kept.then(|| found(Estimate::share(taken, of), Estimate::share(presses, expected), Some(p))).flatten()
            }
            (Cause::PeopleDiffer, Because::PeopleDelay { seconds, p, .. }) => {
                // Two who both give soon enough differ in nothing that matters.
                let late = seconds.iter().any(|s| s.value.is_some_and(|s| s > 2.0 * GIVE_WITHIN_S));
                late.then(|| found(seconds[0], seconds[1], Some((2.0 * p).min(1.0)))).flatten()
            }
            (Cause::PeopleDiffer, Because::PeopleGive { share, p, .. }) => {
                found(share[0], share[1], Some((2.0 * p).min(1.0)))
            }
            (Cause::HardToMakeOut, Because::Recording { seconds, short, quiet }) if *short || *quiet => {
                let length = Estimate { value: Some(*seconds), n: 1, ..Estimate::unknown(Unit::Seconds) };
                found(length, Estimate::unknown(Unit::Seconds), None)
            }
            _ => None,
        }
    }

    fn of_word(&self) -> impl Iterator<Item = &Answered<'_>> {
        let recent = self.case.recent(self.case.since(DAYS));
        recent.iter().filter(|a| a.press.part.word == self.word)
    }

    /// Whether it is written down, for most of what was given, whether it was taken.
    fn outcomes_noted(&self) -> bool {
        let given: Vec<bool> =
            self.of_word().filter(|a| a.given()).filter_map(|a| a.delivery).map(|d| d.part.then.is_some()).collect();
        given.iter().filter(|noted| **noted).count() as f64 >= NOTED * given.len() as f64
    }

    /// Sign test: more than half of the deliveries come later than that.
    fn later_than(&self, bar: f64) -> Option<f64> {
        let shown = self.of_word().filter(|a| a.press.part.by == PressedBy::Person && a.given());
        let delays: Vec<f64> = shown.filter_map(Answered::delay_s).collect();
        let late = delays.iter().filter(|d| **d > bar).count();
        Proportion::new(late as u64, delays.len() as u64).ok()?.test(0.5, Tail::Greater).ok()
    }

    /// At its invitations, the thing wanted, another button is pressed rather than none: a habit, not a button kept away from.
    fn presses_another(&self) -> bool {
        let asked = &self.case.invitations(self.word).usable;
        let other = asked.iter().filter(|u| u.pressed && !u.right).count();
        let none = asked.iter().filter(|u| !u.pressed).count();
        other > none
    }

    fn sounds_most_like(&self) -> Option<WordId> {
        use sayso_methods::words::{AlikeRule, alike};
        let language = self.case.story().language_of_words();
        let this = self.case.words().iter().find(|w| w.word == self.word)?;
        let others = self.case.words().iter().filter(|w| w.word != self.word);
        let apart = others
            .map(|w| (w.word, alike(this.says.as_str(), w.says.as_str(), language, AlikeRule::default())))
            .filter(|(_, verdict)| verdict.too_alike);
        apart.min_by(|(_, a), (_, b)| a.apart.total_cmp(&b.apart)).map(|(word, _)| word)
    }

    /// How often the other word is pressed where neither of the two is invited.
    fn pressed_elsewhere(&self, other: WordId) -> (usize, usize) {
        let elsewhere = self.case.invited_presses().iter().filter(|p| {
            let invited = p.invitation.part.word;
            invited != self.word && invited != other
        });
        elsewhere.fold((0, 0), |(k, n), p| (k + usize::from(p.word == other), n + 1))
    }
}

/// p-value that a share lies below a bar.
fn below(share: &Estimate, bar: f64) -> Option<f64> {
    let k = (share.value? * share.n as f64).round();
    Proportion::new(k as u64, share.n as u64).ok()?.test(bar.clamp(0.0, 1.0), Tail::Less).ok()
}
