//! The stage of each word: what people set, what the figures point to, and why.

use crate::advice::{Because, Below, Change};
use crate::called::Numbered;
use crate::case::Case;
use crate::causes::delay;
use crate::estimate::{Estimate, Unit};
use crate::observe::{Invitations, PressedAt, by_day, meant};
pub use crate::standing::{Chance, Standing};
use crate::stuck::when_wanted;
use crate::weeks::WEEK;
use crate::welfare::strained;
use sayso_methods::learning::ground::Ground;
use sayso_methods::learning::stage::{InvitationSession, StageAdvice, StageRule, WordFigures, mastery, stage};
use sayso_methods::understanding::rounds::{Called, Outcome, Round, word_evidence};
use sayso_model::{
    Day, Fact, Invitation, Moment, PersonId, PressedBy, SessionId, Stage, StageChoice, Then, WordCard, WordId,
};
use std::collections::{BTreeMap, BTreeSet};

/// Days looked back on for joining and own presses.
const RECENT_DAYS: i32 = 28;

/// The standing of every active word taught to this animal, by what it says.
pub fn standings<'c>(case: &'c Case<'_>) -> &'c [Standing] {
    case.standings.get_or_init(|| {
        let words = case.words().len();
        let called = called_by_sitting(case.invited_presses(), case.words().iter().map(|w| w.word));
        let ln_e = case.sums().by_sitting(case.animal(), (called, words), |(called, words)| {
            let most = |number| word_evidence(called, number, *words).into_iter().fold(0.0, f64::max);
            (0..*words).map(most).collect()
        });
        let mut pressed = BTreeMap::new();
        for p in case.invited_presses() {
            *pressed.entry(p.word).or_default() += 1;
        }
        let given = Given { case, ln_e: &ln_e, joining: joining_recent(case), strained: strained(case), pressed };
        case.words().iter().enumerate().map(|(number, card)| standing(&given, card, number)).collect()
    })
}

/// What the standings of all words rest on.
struct Given<'c, 'a> {
    case: &'c Case<'a>,
    ln_e: &'c [f64],
    joining: (usize, usize),
    strained: BTreeSet<WordId>,
    /// Presses at invitations, whichever word was invited, by the word pressed.
    pressed: BTreeMap<WordId, usize>,
}

/// A session, or outside of one a household day.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Sitting {
    Session(SessionId),
    Day(Day),
}

impl Sitting {
    fn of(invitation: &Fact<'_, Invitation>) -> Self {
        let event = invitation.event;
        invitation.part.session.map_or_else(|| Self::Day(event.happened_at.day(&event.zone)), Self::Session)
    }
}

/// Presses at invitations by sitting.
fn called_by_sitting(pressed: &[PressedAt<'_>], words: impl Iterator<Item = WordId>) -> Vec<Round> {
    let mut numbered = Numbered::of(words);
    let mut sittings: Vec<(Sitting, Round)> = Vec::new();
    for p in pressed {
        let sitting = Sitting::of(&p.invitation);
        if sittings.last().is_none_or(|(last, _)| *last != sitting) {
            sittings.push((sitting, Round::new()));
        }
        let call = Called {
            word: numbered.number(p.invitation.part.word),
            outcome: Outcome::Pressed(numbered.number(p.word)),
        };
        if let Some((_, round)) = sittings.last_mut() {
            round.push(call);
        }
    }
    sittings.into_iter().map(|(_, round)| round).collect()
}

/// Of the sessions of the last weeks that are over, those joined and all.
#[must_use]
pub fn joining_recent(case: &Case<'_>) -> (usize, usize) {
    case.sessions_over_since(case.since(RECENT_DAYS))
        .fold((0, 0), |(joined, all), s| (joined + usize::from(s.joined()), all + 1))
}

fn standing(given: &Given<'_, '_>, card: &WordCard, number: usize) -> Standing {
    let &Given { case, ln_e, joining: (joined, offered), ref strained, ref pressed } = given;
    let (sums, asked, words) = (case.totals().of(card.word), case.invitations(card.word), case.words().len());
    let (week, recent) = (case.since(7), case.since(RECENT_DAYS));
    let of_word = || case.recent(recent).iter().filter(|a| a.press.part.word == card.word);
    let own = || of_word().filter(|a| meant(a.press.part));
    let taken: Vec<Moment> = own()
        .filter(|a| a.press.part.session.is_none())
        .filter(|a| a.delivery.is_some_and(|d| d.part.then == Some(Then::Took)))
        .map(|a| a.press.at())
        .collect();
    let mut choices = case.story().of::<StageChoice>(case.animal());
    let chosen = choices.rfind(|c| c.part.word == card.word && c.at() <= case.now());
    let current = chosen.map_or(Stage::Show, |c| c.part.stage);
    let rule = StageRule::default();
    let sessions = by_session(asked);
    let (right, presses) = asked.right();
    // At other words' invitations: all presses but those at this word's.
    let elsewhere = pressed.get(&card.word).copied().unwrap_or(0) - right;
    let chance = Chance { words, elsewhere: Estimate::share(elsewhere, case.invited_presses().len() - presses) };
    let ln_e = ln_e.get(number).copied().unwrap_or(0.0);
    let figures = WordFigures {
        prepared: card.reward.is_some() && card.answer.is_some(),
        showings: count(sums.shown.len()),
        showing_days: count(sums.shown_by_day.len()),
        offered: count(offered),
        joined: count(joined),
        later: later(&sessions, &rule),
        invitations: sessions.into_iter().map(|s| s.1).collect(),
        ln_e,
        elsewhere: chance.elsewhere.value,
        own_presses_taken: count(taken.len()),
        own_press_days: count(by_day(taken.iter().copied(), case.zone()).len()),
        under_strain: strained.contains(&card.word),
    };
    let advice = stage(current, &figures, &rule);
    let (responded, wanted) = asked.pressed();
    let response = Estimate::share_any_time(responded, wanted);
    let right_share = Estimate::share_any_time(right, presses);
    // One figure and one interval a fact: those of the standing are told, but where an interval decides, that one.
    let told = |ground: &Ground| match *ground {
        Ground::Response { .. } => when_wanted(case, card.word),
        Ground::Right { right: (right, _), e, .. } => Because::Right {
            share: right_share,
            right: right as usize,
            elsewhere: chance.elsewhere,
            above_chance: e.0 >= e.1,
        },
        Ground::Below { counted, share: (k, n), interval, bar } => {
            let share = Estimate::with(f64::from(k) / f64::from(n), interval, n as usize, Unit::Share);
            Because::Below(Below { counted, share, bar })
        }
        ref other => fact(other),
    };
    let (figures_say, because, would_change) = match advice {
        _ if card.closing => closes(card),
        Ok(StageAdvice { stage, because, would_change }) => {
            let change = |ground: &Ground| change(ground, because.contains(ground), &rule, told);
            (stage, because.iter().map(told).collect(), would_change.iter().map(change).collect())
        }
        // The figures are counts of one story and cannot contradict themselves; if they do, say so.
        Err(why) => (current, vec![Because::Contradiction { why: why.to_string() }], Vec::new()),
    };
    Standing {
        word: card.word,
        says: card.says.to_string(),
        stage: chosen.map_or(figures_say, |c| c.part.stage),
        figures_say,
        because,
        would_change,
        showings: sums.shown.len(),
        showings_week: sums.shown.iter().rev().take_while(|s| s.at >= week).count(),
        delay: delay(case, card.word),
        response,
        right: right_share,
        chance,
        above_chance: ln_e >= rule.e_bar.ln(),
        own_presses: own().count(),
        stumbles: of_word().filter(|a| a.press.part.by == PressedBy::Animal && !meant(a.press.part)).count(),
        last_shown: sums.shown.last().map(|s| s.at),
        closing: card.closing,
    }
}

/// What would change the stage. A reason that holds now is told by what would end it.
fn change(ground: &Ground, holds: bool, rule: &StageRule, told: impl Fn(&Ground) -> Because) -> Change {
    match *ground {
        Ground::Strain if holds => Change::CalmDays { days: WEEK },
        Ground::NotPrepared => Change::CardFilled,
        Ground::Response { .. } => Change::MoreWhenInvited { share: rule.back_share },
        Ground::Later { .. } if holds => Change::LastsAgain { share: rule.mastery_share },
        Ground::Later { pressed: (_, wanted), needed, .. } if wanted >= needed => {
            Change::Fades { share: rule.mastery_share }
        }
        Ground::Showings { showings: (_, showings), days: (_, days) } if holds => {
            Change::ShownEnough { showings, days }
        }
        Ground::Joining { floor, .. } if holds => Change::JoinsMore { share: floor },
        Ground::Right { .. } if holds => Change::RightMore,
        Ground::Mastery { sessions: (_, sessions), people: (_, people), share } if holds => {
            Change::Masters { share, sessions, people }
        }
        ref figure => Change::Figure { figure: told(figure) },
    }
}

/// A word that ends sessions is no wish: it is shown, brings nothing, and no figure leads beyond that.
fn closes(card: &WordCard) -> (Stage, Vec<Because>, Vec<Change>) {
    if card.answer.is_none() {
        return (Stage::Prepare, vec![Because::NotPrepared], vec![Change::CardFilled]);
    }
    (Stage::Show, vec![Because::EndsSessions], Vec::new())
}

fn count(n: usize) -> u32 {
    u32::try_from(n).unwrap_or(u32::MAX)
}

/// Days after mastery from which a session tells whether it lasts.
const LATER_DAYS: f64 = 14.0;

/// Sessions two weeks and more after mastery was first reached, together; none where that was not yet.
fn later(sessions: &[(Moment, InvitationSession)], rule: &StageRule) -> Option<InvitationSession> {
    let figures: Vec<InvitationSession> = sessions.iter().map(|s| s.1).collect();
    let reached = (1..=sessions.len()).find(|n| {
        let (in_a_row, people) = mastery(&figures[..*n], rule);
        in_a_row >= rule.mastery_sessions && people >= rule.mastery_people
    })?;
    let from = sessions[reached - 1].0.plus_seconds(LATER_DAYS * 86_400.0);
    let none = InvitationSession { wanted: 0, pressed: 0, presses: 0, right: 0, person: 0 };
    Some(sessions.iter().filter(|s| s.0 >= from).fold(none, |sum, (_, s)| InvitationSession {
        wanted: sum.wanted + s.wanted,
        pressed: sum.pressed + s.pressed,
        presses: sum.presses + s.presses,
        right: sum.right + s.right,
        ..sum
    }))
}

/// Invitations by session and person, oldest first, each with its beginning. Outside a session a household day counts as
/// one.
fn by_session(asked: &Invitations<'_>) -> Vec<(Moment, InvitationSession)> {
    let mut people: BTreeMap<Option<PersonId>, u32> = BTreeMap::new();
    let mut places: BTreeMap<(Sitting, u32), usize> = BTreeMap::new();
    let mut sessions: Vec<(Moment, InvitationSession)> = Vec::new();
    let mut all: Vec<(Fact<'_, Invitation>, Option<bool>, Option<bool>)> =
        asked.usable.iter().map(|u| (u.invitation, Some(u.pressed), None)).collect();
    all.extend(asked.presses.iter().map(|p| (p.invitation, None, Some(p.right()))));
    all.sort_by_key(|(i, ..)| (i.at(), i.id()));
    for (invitation, wanted, right) in all {
        let next = count(people.len());
        let person = *people.entry(invitation.person()).or_insert(next);
        let place = *places.entry((Sitting::of(&invitation), person)).or_insert_with(|| {
            let none = InvitationSession { wanted: 0, pressed: 0, presses: 0, right: 0, person };
            sessions.push((invitation.at(), none));
            sessions.len() - 1
        });
        let session = &mut sessions[place].1;
        session.wanted += u32::from(wanted.is_some());
        session.pressed += u32::from(wanted == Some(true));
        session.presses += u32::from(right.is_some());
        session.right += u32::from(right == Some(true));
    }
    sessions
}

/// A ground of the rule that needs no figure of the standing.
fn fact(ground: &Ground) -> Because {
    match *ground {
        Ground::Strain => Because::Strain,
        Ground::NotPrepared => Because::NotPrepared,
        Ground::Showings { showings: (showings, wanted), days: (days, days_wanted) } => {
            Because::Showings { showings, wanted, days, days_wanted }
        }
        Ground::Joining { joined: (joined, offered), floor, .. } => {
            let share = Estimate::share(joined as usize, offered as usize);
            Because::Joining { share, joined: joined as usize, floor }
        }
        Ground::Mastery { sessions: (sessions, sessions_wanted), people: (people, people_wanted), share } => {
            Because::Mastery { sessions, sessions_wanted, people, people_wanted, share }
        }
        Ground::OwnPresses { presses: (presses, wanted), days: (days, days_wanted) } => {
            Because::OwnPresses { presses, wanted, days, days_wanted }
        }
        Ground::Later { pressed: (pressed, wanted), right: (right, presses), needed } => {
            Because::Later { pressed, wanted, right, presses, needed }
        }
        ref other => Because::Contradiction { why: other.to_string() },
    }
}
