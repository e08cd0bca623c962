//! What is new with an animal since a day, and three figures since then beside as long a time before: for a meeting of those who
//! teach it. Facts and figures side by side; whether one brought the other they do not say.

use crate::advice::NamedWord;
use crate::case::Case;
use crate::estimate::{Estimate, Unit, median};
use crate::observe::{Answered, meant, meant_presses, showings};
use crate::rate::per_day;
use sayso_model::event::Part;
use sayso_model::talks::{Talk, own_plans};
use sayso_model::{
    Day, Event, Kind, LikesTest, Moment, ProbePlan, Session, Sign, SignLevel, Stage, StageChoice, WordCard, WordId,
};
use std::collections::BTreeMap;

/// Days told of where nothing was agreed, and no other day was chosen.
pub const USUAL_DAYS: i32 = 14;
/// Most days told of.
pub const MOST_DAYS: i32 = 84;

/// Something new.
#[derive(Clone, PartialEq, Debug)]
pub enum New {
    /// A word on the board.
    Word {
        /// Which.
        word: NamedWord,
    },
    /// People work at another stage of a word.
    Stage {
        /// Which word.
        word: NamedWord,
        /// The stage.
        to: Stage,
    },
    /// The first own press of a word.
    FirstPress {
        /// Which word.
        word: NamedWord,
        /// Its day.
        day: Day,
    },
    /// A likes test.
    Likes {
        /// Its day.
        day: Day,
    },
    /// A check of understanding.
    Check {
        /// Of which words.
        words: Vec<NamedWord>,
        /// The day it was planned.
        day: Day,
    },
}

/// What a figure is of.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Measure {
    /// Presses, of invitations to something wanted.
    Pressed,
    /// Right presses, of presses at invitations.
    Right,
    /// Own presses a day.
    Presses,
    /// Sessions joined.
    Joining,
    /// Seconds from a person's press to the giving: the middle value.
    Delay,
}

impl Measure {
    /// Its name for messages.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Pressed => "pressed",
            Self::Right => "right",
            Self::Presses => "presses",
            Self::Joining => "joining",
            Self::Delay => "delay",
        }
    }
}

/// A figure since the day, and in as many days before.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Figure {
    /// Of what.
    pub measure: Measure,
    /// Since the day.
    pub since: Estimate,
    /// Before.
    pub before: Estimate,
}

/// What is told at a meeting.
#[derive(Clone, PartialEq, Debug)]
pub struct Meeting {
    /// The first day told of.
    pub first: Day,
    /// Days since, that one and today included.
    pub days: usize,
    /// Days among them on which something was noted of the animal.
    pub noted: usize,
    /// Sessions begun.
    pub sessions: usize,
    /// Showings by people.
    pub showings: usize,
    /// The animal's own presses.
    pub presses: usize,
    /// Signs of each level.
    pub signs: BTreeMap<SignLevel, usize>,
    /// What is new, by time within each sort.
    pub news: Vec<New>,
    /// Three figures: those that most can be said of, in the order in which they are asked for.
    pub figures: [Figure; 3],
}

/// The first day to tell of: the chosen one, if it is one of the last twelve weeks; else that of the plan agreed, or made by the
/// home, last before today; else the last two weeks.
#[must_use]
pub fn first_day(case: &Case<'_>, talks: &[Talk<'_>], chosen: Option<Day>) -> Day {
    let today = case.now().day(case.zone());
    let told = |day: &Day| (0..MOST_DAYS).contains(&today.days_since(*day));
    let plans = talks.iter().filter(|t| {
        t.event.animal == Some(case.animal())
            && matches!(t.part.proposes, sayso_model::Proposed::Plan { .. })
            && t.standing.is_agreed()
    });
    let own = own_plans(case.story(), case.animal(), case.now()).map(|plan| plan.at());
    let days = plans.filter_map(|t| t.agreed_at).chain(own).map(|at| at.day(case.zone()));
    let last = days.filter(|day| *day < today).max();
    chosen.filter(told).or(last.filter(told)).unwrap_or_else(|| today.plus(1 - USUAL_DAYS))
}

/// What is told of the days from `first` up to now.
#[must_use]
pub fn meeting(case: &Case<'_>, first: Day) -> Meeting {
    let (zone, now) = (case.zone(), case.now());
    let from = first.start(zone);
    let days = usize::try_from(now.day(zone).days_since(first) + 1).unwrap_or(1);
    let all = case.answered_since(from);
    let mut signs: BTreeMap<SignLevel, usize> = BTreeMap::new();
    for sign in case.story().between::<Sign>(case.animal(), from, now) {
        *signs.entry(sign.part.level).or_insert(0) += 1;
    }
    let recorded = |n: &usize| {
        let day = first.plus(i32::try_from(*n).unwrap_or(0));
        let mut of_day = case.story().all_between(case.animal(), day.start(zone), day.plus(1).start(zone));
        of_day.any(crate::agreed::is_of_the_animal)
    };
    Meeting {
        first,
        days,
        noted: (0..days).filter(recorded).count(),
        sessions: case.sessions_since(from).len(),
        showings: showings(&all, None).len(),
        presses: meant_presses(&all, None).len(),
        signs,
        news: news(case, from),
        figures: figures(case, first, &all),
    }
}

fn news(case: &Case<'_>, from: Moment) -> Vec<New> {
    let (story, zone) = (case.story(), case.zone());
    let mut found = Vec::new();
    let begun = first_cards(case);
    let is_new = |card: &WordCard| begun.get(&card.word).is_some_and(|at| *at >= from);
    found
        .extend(case.words().iter().filter(|card| is_new(card)).map(|card| New::Word { word: NamedWord::from(*card) }));
    let mut stages: BTreeMap<WordId, Stage> = BTreeMap::new();
    for choice in story.between::<StageChoice>(case.animal(), from, case.now()) {
        stages.insert(choice.part.word, choice.part.stage);
    }
    let staged = case
        .words()
        .iter()
        .filter_map(|card| stages.get(&card.word).map(|to| New::Stage { word: NamedWord::from(*card), to: *to }));
    found.extend(staged);
    found.extend(case.words().iter().filter_map(|card| {
        let day = case.totals().of(card.word).own_by_day.first()?.0;
        (day >= from.day(zone)).then(|| New::FirstPress { word: NamedWord::from(*card), day })
    }));
    let likes = story.between::<LikesTest>(case.animal(), from, case.now());
    found.extend(likes.map(|test| New::Likes { day: test.at().day(zone) }));
    let cards = story.words();
    let checks = story.between::<ProbePlan>(case.animal(), from, case.now());
    found.extend(checks.map(|plan| New::Check {
        words: plan.part.words.iter().map(|word| NamedWord::among(&cards, *word)).collect(),
        day: plan.at().day(zone),
    }));
    found
}

/// When each word's first card was written.
fn first_cards(case: &Case<'_>) -> BTreeMap<WordId, Moment> {
    let mut begun: BTreeMap<WordId, Moment> = BTreeMap::new();
    let cards = case.story().ledger().all().filter(|e: &&Event| e.body.kind() == Kind::WordCard);
    for event in cards {
        let Some(card) = WordCard::of(&event.body) else { continue };
        let at = begun.entry(card.word).or_insert(event.happened_at);
        *at = (*at).min(event.happened_at);
    }
    begun
}

/// Each in the stretch and in as many days before; of two for one place the first of which something can be said.
fn figures(case: &Case<'_>, first: Day, all: &[Answered<'_>]) -> [Figure; 3] {
    let (zone, now) = (case.zone(), case.now());
    let days = now.day(zone).days_since(first) + 1;
    let (earlier, from) = (first.plus(-days).start(zone), first.start(zone));
    let stretches = ((from, now), (earlier, from.plus_seconds(-0.001)));
    let figure = |measure: Measure, of: &dyn Fn((Moment, Moment)) -> Estimate| Figure {
        measure,
        since: of(stretches.0),
        before: of(stretches.1),
    };
    let within = |at: Moment, (from, to): (Moment, Moment)| at >= from && at <= to;
    // As everywhere else these figures are told: they are read day by day.
    let share = |all: Vec<bool>| Estimate::share_any_time(all.iter().filter(|yes| **yes).count(), all.len());
    let pressed = figure(Measure::Pressed, &|stretch| {
        let usable = case.all_invitations().flat_map(|(_, i)| &i.usable);
        share(usable.filter(|u| within(u.invitation.at(), stretch)).map(|u| u.pressed).collect())
    });
    let right = figure(Measure::Right, &|stretch| {
        let presses = case.all_invitations().flat_map(|(_, i)| &i.presses);
        share(presses.filter(|p| within(p.invitation.at(), stretch)).map(|p| p.right()).collect())
    });
    // Nothing was watched before the first record.
    let watched = case.story().all_between(case.animal(), Moment::clamped(i64::MIN), now).next().map(|e| e.happened_at);
    let presses = figure(Measure::Presses, &|(from, to)| match watched.map(|begun| begun.max(from)) {
        Some(from) if from < to => {
            let own = case.presses_between(from, to).filter(|p| meant(p.part));
            per_day(own.map(|p| p.at()), from, to, zone)
        }
        _ => Estimate::unknown(Unit::PerDay),
    });
    let joining = figure(Measure::Joining, &|stretch| {
        let over = case.sessions_over_since(stretch.0).filter(|s: &&Session<'_>| within(s.start.at(), stretch));
        share(over.map(Session::joined).collect())
    });
    let earlier = case.answered_since(earlier);
    let delay = figure(Measure::Delay, &|stretch| {
        let of = if stretch == stretches.0 { all } else { &earlier };
        let shown = showings(of, None);
        let delays: Vec<f64> =
            shown.iter().filter(|a| within(a.press.at(), stretch)).filter_map(Answered::delay_s).collect();
        median(&delays, Unit::Seconds)
    });
    let better = |a: Figure, b: Figure| if a.since.too_early() && !b.since.too_early() { b } else { a };
    [better(pressed, right), presses, better(joining, delay)]
}
