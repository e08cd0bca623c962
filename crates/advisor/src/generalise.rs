//! Does it hold elsewhere: with another person, in another room, weeks later, after the button was moved, with a new
//! recording? The two figures of invitations, setting by setting. A moved button is the direct test of a habit of place.

use crate::case::Case;
use crate::estimate::{Estimate, Unit};
use crate::observe::Invitations;
use sayso_model::{BoardLayout, ClipCard, Fact, Invitation, Moment, SessionId, Story, WordId};
use std::collections::BTreeMap;

/// Invitations after a change that are looked at apart: later ones are no news any more.
const AFTER_DAYS: f64 = 14.0;
/// Days between the first weeks and the later ones.
const WEEKS: [(&str, f64); 3] = [("first four weeks", 28.0), ("weeks 5 to 12", 84.0), ("later", f64::INFINITY)];

/// One setting with its two figures.
#[derive(Clone, PartialEq, Debug)]
pub struct Setting {
    /// What is compared: people, rooms, weeks, places, recordings.
    pub kind: &'static str,
    /// Which of it.
    pub name: String,
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
    let after = |i: &Fact<'_, Invitation>, changes: &[Moment], what: &str| {
        let last = changes.iter().rfind(|at| **at <= i.at());
        Some(match last {
            Some(at) if days_since(i, *at) < AFTER_DAYS => format!("two weeks after {what}"),
            _ => "otherwise".to_owned(),
        })
        .filter(|_| !changes.is_empty())
    };
    let by_person = |i: &Fact<'_, Invitation>| Some(people.get(&i.person()?)?.name.to_string());
    let by_room = |i: &Fact<'_, Invitation>| rooms.get(&i.part.session?).cloned();
    let by_week = |i: &Fact<'_, Invitation>| {
        let days = days_since(i, first?);
        WEEKS.iter().find(|(_, upto)| days < *upto).map(|(name, _)| (*name).to_owned())
    };
    let by_draw = |i: &Fact<'_, Invitation>| {
        Some(if i.part.call.is_some() { "drawn by the notebook" } else { "chosen by a person" }.to_owned())
    };
    let mut out = sorted(asked, "person", by_person);
    out.extend(sorted(asked, "room", by_room));
    out.extend(sorted(asked, "time", by_week));
    out.extend(sorted(asked, "place of the button", |i| after(i, &moved, "it was moved")));
    out.extend(sorted(asked, "recording", |i| after(i, &voices, "a new one")));
    out.extend(sorted(asked, "who chose the word", by_draw));
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
        kind: "checks",
        name: if blind { "blind" } else { "open: somebody knew" }.to_owned(),
        pressed: Estimate::unknown(Unit::Share),
        right: Estimate::share(right, n),
    };
    counts.into_iter().map(row).collect()
}

fn sorted(
    asked: &Invitations<'_>,
    kind: &'static str,
    name: impl Fn(&Fact<'_, Invitation>) -> Option<String>,
) -> Vec<Setting> {
    let mut counts: BTreeMap<String, [usize; 4]> = BTreeMap::new();
    for u in &asked.usable {
        if let Some(name) = name(&u.invitation) {
            let c = counts.entry(name).or_default();
            c[0] += usize::from(u.pressed);
            c[1] += 1;
        }
    }
    for p in &asked.presses {
        if let Some(name) = name(&p.invitation) {
            let c = counts.entry(name).or_default();
            c[2] += usize::from(p.right());
            c[3] += 1;
        }
    }
    if counts.len() < 2 {
        return Vec::new();
    }
    let setting = |(name, [pressed, wanted, right, presses]): (String, [usize; 4])| Setting {
        kind,
        name,
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
