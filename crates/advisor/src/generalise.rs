//! Does it hold elsewhere: with another person, in another room, weeks later, after the button was moved, with a new
//! recording? The two figures of invitations, setting by setting. A moved button is the direct test of a habit of place.

use crate::case::Case;
use crate::estimate::{Estimate, Unit};
use crate::observe::Invitations;
use sayso_model::{BoardLayout, ClipCard, Fact, Invitation, Moment, SessionId, Story, WordId};
use std::collections::BTreeMap;

/// Invitations after a change that are looked at apart: later ones are no news any more.
const AFTER_DAYS: f64 = 14.0;
/// Days up to which the first weeks, and then the next ones, are counted.
const WEEKS: [(Which, f64); 3] = [(Which::FirstWeeks, 28.0), (Which::NextWeeks, 84.0), (Which::Later, f64::INFINITY)];

/// What is compared.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Compares {
    /// People who invite.
    Person,
    /// Rooms of sessions.
    Room,
    /// Weeks since the first invitation.
    Time,
    /// Places of the button.
    Place,
    /// Recordings of the word.
    Recording,
    /// Who chose the word to invite.
    Chooser,
    /// Planned checks.
    Checks,
}

/// Which of it, in the order in which they are shown.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Which {
    /// A person or a room by name.
    Named(String),
    /// The first four weeks.
    FirstWeeks,
    /// Weeks 5 to 12.
    NextWeeks,
    /// Later.
    Later,
    /// The two weeks after the button was moved.
    AfterMove,
    /// The two weeks after a new recording.
    AfterRecording,
    /// Not soon after a change.
    Otherwise,
    /// The notebook drew the word.
    Drawn,
    /// A person chose the word.
    Chosen,
    /// Nobody with the animal knew the answer.
    Blind,
    /// Somebody knew the answer.
    Open,
}

/// One setting with its two figures.
#[derive(Clone, PartialEq, Debug)]
pub struct Setting {
    /// What is compared.
    pub compares: Compares,
    /// Which of it.
    pub which: Which,
    /// Pressed, of wanted.
    pub pressed: Estimate,
    /// Right, of presses.
    pub right: Estimate,
}

/// The settings of one word's invitations. A kind of which only one was seen is left out: it compares nothing.
#[must_use]
pub fn settings(case: &Case<'_>, word: WordId) -> Vec<Setting> {
    let (story, now, asked) = (case.story(), case.now(), case.invitations(word));
    let people = story.people();
    let rooms: BTreeMap<SessionId, String> =
        case.sessions().iter().filter_map(|s| Some((s.id(), s.start.part.room.as_ref()?.to_string()))).collect();
    let first = asked.usable.first().map(|u| u.invitation.at()).into_iter();
    let first = first.chain(asked.presses.first().map(|p| p.invitation.at())).min();
    let (moved, voices) = (moves(story, word, now), recordings(story, word, now));
    let days_since = |i: &Fact<'_, Invitation>, from: Moment| i.at().seconds_since(from) / 86_400.0;
    let after = |i: &Fact<'_, Invitation>, changes: &[Moment], soon: Which| {
        let last = changes.iter().rfind(|at| **at <= i.at());
        Some(match last {
            Some(at) if days_since(i, *at) < AFTER_DAYS => soon,
            _ => Which::Otherwise,
        })
        .filter(|_| !changes.is_empty())
    };
    let by_person = |i: &Fact<'_, Invitation>| Some(Which::Named(people.get(&i.person()?)?.name.to_string()));
    let by_room = |i: &Fact<'_, Invitation>| rooms.get(&i.part.session?).cloned().map(Which::Named);
    let by_week = |i: &Fact<'_, Invitation>| {
        let days = days_since(i, first?);
        WEEKS.iter().find(|(_, upto)| days < *upto).map(|(which, _)| which.clone())
    };
    let by_draw = |i: &Fact<'_, Invitation>| Some(if i.part.call.is_some() { Which::Drawn } else { Which::Chosen });
    let mut out = sorted(asked, Compares::Person, by_person);
    out.extend(sorted(asked, Compares::Room, by_room));
    out.extend(sorted(asked, Compares::Time, by_week));
    out.extend(sorted(asked, Compares::Place, |i| after(i, &moved, Which::AfterMove)));
    out.extend(sorted(asked, Compares::Recording, |i| after(i, &voices, Which::AfterRecording)));
    out.extend(sorted(asked, Compares::Chooser, by_draw));
    out.extend(checks_by_blinding(case, word));
    out
}

/// Right, of the times it went for this word in planned checks: where somebody knew the answer, and where nobody did.
fn checks_by_blinding(case: &Case<'_>, word: WordId) -> Vec<Setting> {
    let mut counts: BTreeMap<bool, [usize; 2]> = BTreeMap::new();
    for check in case.checks() {
        // A plan whose order cannot be drawn again says nothing, and its own page says why.
        let Ok(found) = &check.conduct else { continue };
        for counted in found.counted.iter().filter(|c| c.word == word) {
            let c = counts.entry(check.plan.blind).or_default();
            c[0] += usize::from(counted.right);
            c[1] += 1;
        }
    }
    if counts.len() < 2 {
        return Vec::new();
    }
    let row = |(blind, [right, n]): (bool, [usize; 2])| Setting {
        compares: Compares::Checks,
        which: if blind { Which::Blind } else { Which::Open },
        pressed: Estimate::unknown(Unit::Share),
        right: Estimate::share(right, n),
    };
    counts.into_iter().map(row).collect()
}

fn sorted(
    asked: &Invitations<'_>,
    compares: Compares,
    which: impl Fn(&Fact<'_, Invitation>) -> Option<Which>,
) -> Vec<Setting> {
    let mut counts: BTreeMap<Which, [usize; 4]> = BTreeMap::new();
    for u in &asked.usable {
        if let Some(which) = which(&u.invitation) {
            let c = counts.entry(which).or_default();
            c[0] += usize::from(u.pressed);
            c[1] += 1;
        }
    }
    for p in &asked.presses {
        if let Some(which) = which(&p.invitation) {
            let c = counts.entry(which).or_default();
            c[2] += usize::from(p.right());
            c[3] += 1;
        }
    }
    if counts.len() < 2 {
        return Vec::new();
    }
    let setting = |(which, [pressed, wanted, right, presses]): (Which, [usize; 4])| Setting {
        compares,
        which,
        pressed: Estimate::share(pressed, wanted),
        right: Estimate::share(right, presses),
    };
    counts.into_iter().map(setting).collect()
}

/// Moments at which the word's button came to another place.
fn moves(story: &Story, word: WordId, now: Moment) -> Vec<Moment> {
    let mut boards: Vec<Fact<'_, BoardLayout>> = story.everyones().filter(|b| b.at() <= now).collect();
    boards.sort_by_key(|b| (b.at(), b.id()));
    let mut last = None;
    let mut out = Vec::new();
    for board in boards {
        let here = board.part.words.iter().find(|p| p.word == word).map(|p| (p.row, p.column));
        if here.is_some() && last.is_some() && here != last {
            out.push(board.at());
        }
        last = here.or(last);
    }
    out
}

/// Moments at which the word got another recording than its first.
fn recordings(story: &Story, word: WordId, now: Moment) -> Vec<Moment> {
    let mut clips: Vec<(Moment, &str)> = story
        .everyones::<ClipCard>()
        .filter(|c| c.part.word == word && c.at() <= now)
        .map(|c| (c.at(), c.part.sha256.as_str()))
        .collect();
    clips.sort_unstable();
    clips.dedup_by_key(|c| c.1);
    clips.into_iter().skip(1).map(|c| c.0).collect()
}
