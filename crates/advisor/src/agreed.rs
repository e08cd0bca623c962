//! What was agreed with a coach, and what the log has of it since: facts and counts, side by side. It judges nobody: a day without
//! any record is a day without a record, not one on which nothing was done.

use crate::advice::{Act, Because, NamedWord};
use crate::case::Case;
use crate::estimate::Estimate;
use crate::observe::showings;
use crate::steps::{Step, WordStep};
use sayso_model::{
    Body, Day, Event, Fact, Invitation, InvitationKind, Moment, PlanLine, PlanWay, SessionId, Stage, WordId,
};
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

/// Days looked back on before a plan, to set beside the days since.
pub const BEFORE_DAYS: i32 = 28;

/// How what was agreed for a word stands to its step. A plan is between people who know the animal, so it may teach a word otherwise
/// than the step would; what comes before teaching it does not move.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Stands {
    /// Beside the step, which says no other thing.
    Beside,
    /// In place of the step.
    Instead {
        /// Whether the step would be something else.
        differs: bool,
    },
    /// Behind the step: until that is done, or the figures are those of before, nothing of what was agreed.
    Waits,
    /// Nowhere: the word ends sessions, and nobody waits for it.
    Never,
}

impl Stands {
    /// Whether anything of what was agreed is done.
    #[must_use]
    pub const fn is_done(self) -> bool {
        matches!(self, Self::Beside | Self::Instead { .. })
    }
}

/// How what was agreed for a word stands to its step: by the step's own order of precedence.
#[must_use]
pub fn stands(step: &WordStep, agreed: &PlanLine) -> Stands {
    let (act, invites) = (&step.advice.act, agreed.invites());
    if step.closing {
        // Also while it rests: that will not have changed when the rest is over.
        return match step.step {
            _ if invites => Stands::Never,
            Step::Rest => Stands::Waits,
            _ => Stands::Beside,
        };
    }
    if !step.step.teaches() && (!step.shown() || (invites && !act.invites())) {
        return Stands::Waits;
    }
    let strained = || step.advice.because.iter().any(|why| why.fact == Because::Strain);
    match act {
        _ if agreed.way.is_none() => Stands::Beside,
        Act::Show { .. } => Stands::Instead { differs: invites },
        Act::Invite { .. } | Act::BeginInviting { .. } => Stands::Instead { differs: !invites },
        // Further back than the step goes.
        Act::StepBack { to: Stage::Invite, .. } if !invites && !strained() => Stands::Instead { differs: true },
        Act::LeaveToAnimal { .. } | Act::Answer { .. } => Stands::Instead { differs: true },
        _ => Stands::Beside,
    }
}

/// One line of a plan, and what the log has of it.
#[derive(Clone, PartialEq, Debug)]
pub struct Kept {
    /// The word.
    pub word: NamedWord,
    /// What was agreed.
    pub line: PlanLine,
    /// Times it was shown or invited, as the line says, since the agreement.
    pub times: usize,
    /// On how many days.
    pub on_days: usize,
    /// Sessions in which it was.
    pub sessions: usize,
    /// Their length in seconds, of those whose end is known.
    pub seconds: f64,
    /// How many of the sessions have an end.
    pub timed: usize,
    /// Presses of wanted invitations in the days before the agreement, and since.
    pub pressed: (Estimate, Estimate),
    /// Right presses of presses at invitations, before and since.
    pub right: (Estimate, Estimate),
}

/// A plan, and what the log has of it.
#[derive(Clone, PartialEq, Debug)]
pub struct Doing {
    /// Days of the plan so far; today is one once something of the plan was noted on it.
    pub days: usize,
    /// Days among them without any record of the animal.
    pub no_record: usize,
    /// Days on which each of the lines was worked on.
    pub kept: usize,
    /// Line by line.
    pub lines: Vec<Kept>,
}

/// The days of a plan and what the log has of them, so that they can be counted on any later day.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlanDays {
    /// Its first day.
    pub first: Day,
    /// Its last.
    pub last: Day,
    /// The latest day on which anything of it was noted.
    pub noted: Option<Day>,
    /// Days on which each of its lines was worked on.
    pub kept: usize,
    /// Days of it, up to when this was counted, with any record of the animal.
    pub recorded: Vec<Day>,
}

impl PlanDays {
    /// What the log has of the days of a plan that was agreed at a moment and goes to a day, both included.
    #[must_use]
    pub fn of(case: &Case<'_>, lines: &[PlanLine], agreed_at: Moment, last: Day) -> Self {
        let to = end(case, last);
        let done: Vec<Done> = lines.iter().map(|line| done(case, line, agreed_at, to)).collect();
        Self::from(case, &done, agreed_at.day(case.zone()), last)
    }

    fn from(case: &Case<'_>, done: &[Done], first: Day, last: Day) -> Self {
        let (zone, story) = (case.zone(), case.story());
        let recorded = |day: &Day| {
            let mut all = story.all_between(case.animal(), day.start(zone), day.plus(1).start(zone));
            all.any(is_of_the_animal)
        };
        let so_far = last.min(case.now().day(zone)).days_since(first);
        let days: Vec<Day> = (0..=so_far).map(|n| first.plus(n)).collect();
        Self {
            first,
            last,
            noted: done.iter().filter_map(|d| d.days.last().copied()).max(),
            kept: days.iter().filter(|day| done.iter().all(|d| d.days.contains(*day))).count(),
            recorded: days.into_iter().filter(recorded).collect(),
        }
    }

    /// Days of it that have passed on a day, and those among them without any record. That day itself is one once something of the plan was
    /// noted on it.
    #[must_use]
    pub fn so_far(&self, today: Day) -> (usize, usize) {
        let last = self.last.min(if self.noted == Some(today) { today } else { today.plus(-1) });
        let days = usize::try_from(last.days_since(self.first) + 1).unwrap_or(0);
        (days, days - self.recorded.iter().filter(|day| **day <= last).count())
    }
}

/// Up to when a plan that goes to a day is looked at.
fn end(case: &Case<'_>, last: Day) -> Moment {
    last.plus(1).start(case.zone()).plus_seconds(-0.001).min(case.now())
}

/// What the log has of a plan that was agreed at a moment and goes to a day, both included.
#[must_use]
pub fn doing(case: &Case<'_>, lines: &[PlanLine], agreed_at: Moment, last_day: Day) -> Doing {
    let to = end(case, last_day);
    let done: Vec<Done> = lines.iter().map(|line| done(case, line, agreed_at, to)).collect();
    let days = PlanDays::from(case, &done, agreed_at.day(case.zone()), last_day);
    let (passed, no_record) = days.so_far(case.now().day(case.zone()));
    let lines = lines.iter().zip(done).map(|(line, done)| kept(case, line, &done, agreed_at, to)).collect();
    Doing { days: passed, no_record, kept: days.kept, lines }
}

/// What a person noted of the animal, not what was written about it.
pub(crate) fn is_of_the_animal(event: &Event) -> bool {
    !matches!(event.body, Body::Proposal(_) | Body::ProposalAnswer(_) | Body::OwnPlan(_) | Body::AimDone(_))
        && matches!(event.body.about().does, sayso_model::event::Does::Tells)
}

/// When a word was worked on as its line says, and in which session; and on which days.
struct Done {
    at: Vec<(Moment, Option<SessionId>)>,
    days: BTreeSet<Day>,
}

fn done(case: &Case<'_>, line: &PlanLine, from: Moment, to: Moment) -> Done {
    let mut at: Vec<(Moment, Option<SessionId>)> = Vec::new();
    if matches!(line.way, None | Some(PlanWay::Show)) {
        let shown = showings(&case.answered_since(from), Some(line.word));
        at.extend(shown.iter().map(|s| (s.press.at(), s.press.part.session)));
    }
    let invited = case.story().between::<Invitation>(case.animal(), from, to);
    let meant = |i: &Fact<'_, Invitation>| i.part.word == line.word && way_fits(line.way, i.part.way);
    at.extend(invited.filter(meant).map(|i| (i.at(), i.part.session)));
    at.retain(|(at, _)| *at <= to);
    let days = at.iter().map(|(at, _)| at.day(case.zone())).collect();
    Done { at, days }
}

fn way_fits(agreed: Option<PlanWay>, way: InvitationKind) -> bool {
    match agreed {
        None => true,
        Some(PlanWay::Show) => false,
        Some(PlanWay::OfferInView) => way == InvitationKind::OfferInView,
        Some(PlanWay::AskAndPoint) => way == InvitationKind::AskAndPoint,
        Some(PlanWay::AskBetweenTwo) => way == InvitationKind::AskBetweenTwo,
    }
}

fn kept(case: &Case<'_>, line: &PlanLine, done: &Done, from: Moment, to: Moment) -> Kept {
    let sessions: BTreeSet<SessionId> = done.at.iter().filter_map(|(_, session)| *session).collect();
    let lengths: BTreeMap<SessionId, Option<f64>> =
        case.sessions().iter().filter(|s| sessions.contains(&s.id())).map(|s| (s.id(), s.seconds())).collect();
    let timed: Vec<f64> = lengths.values().filter_map(|s| *s).collect();
    let before = from.day(case.zone()).plus(-BEFORE_DAYS).start(case.zone());
    let figures = |from: Moment, to: Moment| figures(case, line.word, from, to);
    let ((pressed_before, right_before), (pressed_since, right_since)) =
        (figures(before, from.plus_seconds(-0.001)), figures(from, to));
    Kept {
        word: NamedWord::of(case.story(), line.word),
        line: *line,
        times: done.at.len(),
        on_days: done.days.len(),
        sessions: sessions.len(),
        seconds: timed.iter().sum(),
        timed: timed.len(),
        pressed: (pressed_before, pressed_since),
        right: (right_before, right_since),
    }
}

/// Pressed, of wanted, and right, of presses, at invitations of a word within a stretch.
fn figures(case: &Case<'_>, word: WordId, from: Moment, to: Moment) -> (Estimate, Estimate) {
    let within = |at: Moment| at >= from && at <= to;
    let all = case.invitations(word);
    let usable: Vec<bool> = all.usable.iter().filter(|u| within(u.invitation.at())).map(|u| u.pressed).collect();
    let right: Vec<bool> = all.presses.iter().filter(|p| within(p.invitation.at())).map(|p| p.right()).collect();
    let share = |all: &[bool]| Estimate::share(all.iter().filter(|yes| **yes).count(), all.len());
    (share(&usable), share(&right))
}
