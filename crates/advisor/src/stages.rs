//! The stage of each word: what people set, what the figures point to, and why.

use crate::advice::Reason;
use crate::estimate::{Estimate, Unit};
use crate::observe::{Answered, Invitations, answered, by_day, invitations, own_presses, showings, since};
use crate::welfare::rest_today;
use sayso_methods::learning::stage::{InvitationSession, StageAdvice, StageRule, WordFigures, stage};
use sayso_model::{LearnerId, Moment, Session, Stage, StageChoice, Story, TeacherId, Then, WordCard, WordId};
use std::collections::BTreeMap;

/// Days looked back on for joining and own presses.
const RECENT_DAYS: i32 = 28;

/// Where a word stands.
#[derive(Clone, PartialEq, Debug)]
pub struct Standing {
    /// The word.
    pub word: WordId,
    /// What its button says.
    pub says: String,
    /// The stage people work at: what they chose last, else what the figures point to.
    pub stage: Stage,
    /// What the figures point to.
    pub figures_say: Stage,
    /// Why.
    pub because: Vec<String>,
    /// What would change it.
    pub would_change: Vec<String>,
    /// Showings so far.
    pub showings: usize,
    /// Showings in the last seven days.
    pub showings_week: usize,
    /// Middle delay from press to delivery, seconds.
    pub delay: Estimate,
    /// Share pressed of the invitations in which it wanted the thing.
    pub response: Estimate,
    /// Own presses of the last 28 days.
    pub own_presses: usize,
    /// When it was last shown.
    pub last_shown: Option<Moment>,
}

/// The standing of every active word taught to this animal, by what it says.
#[must_use]
pub fn standings(story: &Story, learner: LearnerId, now: Moment) -> Vec<Standing> {
    let all: Vec<Answered<'_>> = answered(story, learner).into_iter().filter(|a| a.press.at() <= now).collect();
    let strain = rest_today(story, learner, now);
    let joining = joining_recent(story, learner, now);
    story.words_of(learner).into_iter().map(|card| standing(story, learner, now, card, &all, joining, strain)).collect()
}

/// Sessions begun and joined in the last weeks.
#[must_use]
pub fn joining_recent(story: &Story, learner: LearnerId, now: Moment) -> (usize, usize) {
    let from = since(now, RECENT_DAYS, &story.zone());
    let sessions = story.sessions(learner);
    let begun: Vec<&Session<'_>> = sessions.iter().filter(|s| s.start.at() >= from && s.start.at() <= now).collect();
    (begun.iter().filter(|s| s.joined()).count(), begun.len())
}

fn standing(
    story: &Story,
    learner: LearnerId,
    now: Moment,
    card: &WordCard,
    all: &[Answered<'_>],
    (joined, offered): (usize, usize),
    under_strain: bool,
) -> Standing {
    let zone = story.zone();
    let shown = showings(all, Some(card.word));
    let own = own_presses(all, Some(card.word));
    let asked = invitations(story, learner, card.word);
    let week = since(now, 7, &zone);
    let recent = since(now, RECENT_DAYS, &zone);
    let taken: Vec<Moment> = own
        .iter()
        .filter(|a| a.press.at() >= recent && a.press.part.session.is_none())
        .filter(|a| a.delivery.is_some_and(|d| d.part.then == Some(Then::Took)))
        .map(|a| a.press.at())
        .collect();
    let chosen = story.of::<StageChoice>(learner).rfind(|c| c.part.word == card.word && c.at() <= now);
    let current = chosen.map_or(Stage::Show, |c| c.part.stage);
    let figures = WordFigures {
        prepared: card.reward.is_some() && card.answer.is_some(),
        showings: count(shown.len()),
        showing_days: count(by_day(shown.iter().map(|a| a.press.at()), &zone).len()),
        offered: count(offered),
        joined: count(joined),
        invitations: by_session(&asked),
        own_presses_taken: count(taken.len()),
        own_press_days: count(by_day(taken.iter().copied(), &zone).len()),
        under_strain,
    };
    let advice = stage(current, &figures, &StageRule::default());
    let (figures_say, because, would_change) = match advice {
        Ok(StageAdvice { stage, because, would_change }) => (
            stage,
            because.iter().map(ToString::to_string).collect(),
            would_change.iter().map(ToString::to_string).collect(),
        ),
        // The figures are counts of one story and cannot contradict themselves; if they do, say so.
        Err(why) => (current, vec![why.to_string()], Vec::new()),
    };
    let pressed = asked.usable.iter().filter(|u| u.pressed).count();
    let delays: Vec<f64> = shown.iter().rev().take(50).filter_map(Answered::delay_s).collect();
    Standing {
        word: card.word,
        says: card.says.to_string(),
        stage: chosen.map_or(figures_say, |c| c.part.stage),
        figures_say,
        because,
        would_change,
        showings: shown.len(),
        showings_week: shown.iter().filter(|a| a.press.at() >= week).count(),
        delay: crate::estimate::median(&delays, Unit::Seconds),
        response: Estimate::share(pressed, asked.usable.len()),
        own_presses: own.iter().filter(|a| a.press.at() >= recent).count(),
        last_shown: shown.last().map(|a| a.press.at()),
    }
}

fn count(n: usize) -> u32 {
    u32::try_from(n).unwrap_or(u32::MAX)
}

/// Usable invitations by session and person, oldest first. Outside a session a household day counts as one.
fn by_session(asked: &Invitations<'_>) -> Vec<InvitationSession> {
    let mut people: BTreeMap<Option<TeacherId>, u32> = BTreeMap::new();
    let mut sessions: Vec<(String, InvitationSession)> = Vec::new();
    for usable in &asked.usable {
        let next = count(people.len());
        let teacher = *people.entry(usable.invitation.teacher()).or_insert(next);
        let event = usable.invitation.event;
        let key = usable
            .invitation
            .part
            .session
            .map_or_else(|| format!("{} {teacher}", event.happened_at.day(&event.zone)), |s| format!("{s} {teacher}"));
        let place = sessions.iter().rposition(|(k, _)| *k == key).unwrap_or_else(|| {
            sessions.push((key, InvitationSession { wanted: 0, pressed: 0, teacher }));
            sessions.len() - 1
        });
        let session = &mut sessions[place].1;
        session.wanted += 1;
        session.pressed += u32::from(usable.pressed);
    }
    sessions.into_iter().map(|(_, s)| s).collect()
}

/// The reasons of a standing, as an advice carries them.
#[must_use]
pub fn reasons(standing: &Standing) -> Vec<Reason> {
    standing.because.iter().map(|b| Reason::said(format!("{}: {b}.", standing.says))).collect()
}
