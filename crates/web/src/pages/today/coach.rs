//! What coach and home agreed on, on Today: a line that leads to what is to be answered, and beside a word's step what was agreed
//! for it. Never in its place; and while rest is said nothing is to be done.

use crate::page::AnimalPage;
use crate::pages::talk::{ended, is_open_to, is_witnessed, open_now, passed_on, seen, writer};
use maud::{Markup, html};
use sayso_advisor::agreed::{Stands, stands};
use sayso_advisor::designs::trying;
use sayso_advisor::programme::{course, week_of};
use sayso_advisor::steps::WordStep;
use sayso_advisor::today::{Next, Today};
use sayso_model::consents::Consents;
use sayso_model::talks::{Passed, Standing, Talk, agreed as lines, in_force, stage_of_closing, talks};
use sayso_model::{AccountId, EventId, Label, Moment, PlanLine, Programme, Proposed, WordId};
use sayso_people::Capability;
use sayso_wording::advice as words_of;
use sayso_wording::talk::{proposed, way_and_dose};
use sayso_wording::{Locale, say};
use std::collections::{BTreeMap, BTreeSet};

/// Of what holds, so much stands on Today; of what has a day of its own, so much.
const HELD: usize = 2;
const DATED: usize = 2;
/// Days for which Today says that another coach has taken the place of the one before.
const SAID_DAYS: i32 = 7;

/// What stands on Today of coach and home, and how many lines it takes beyond the usual.
pub struct Lines {
    pub lines: Markup,
    pub further: usize,
}

/// For the home what a coach wrote and nobody answered yet, and what holds; for a coach the way to write.
pub fn line(page: &AnimalPage, today: &Today) -> Lines {
    let l = &page.locale;
    if page.may(Capability::Agree) {
        let all = seen(page);
        let waits = |t: &&Talk<'_>| t.standing == Standing::Open && is_witnessed(page, t.id()) && t.concerns(page.id);
        let open: Vec<&Talk<'_>> = all.iter().filter(waits).collect();
        let waiting = match open.as_slice() {
            [] => html! {},
            [one] => {
                let what = proposed(l, &page.story, &one.part.proposes);
                to_talk(page, &say!(l, talk::card, name = &one.part.from.name, what = what))
            }
            several => {
                let mut names: Vec<&str> = several.iter().map(|t| t.part.from.name.as_str()).collect();
                names.sort_unstable();
                names.dedup();
                to_talk(page, &say!(l, talk::card_more, names = l.and(&names), count = several.len()))
            }
        };
        let (held, further) = holds(page, &all, today.next == Next::Rest);
        let (passed, open_now) = (passed_on(page, &all), open_now(page));
        let to = (passed.as_slice(), &open_now);
        return Lines { lines: html! { (whose(page, to)) (not_read(page, to, &all)) (waiting) (held) }, further };
    }
    let lines = html! {
        @if writer(page).is_some() {
            div.row.coach data-test="coach" {
                a.button href=(page.of_home_with("/talk/write", &[("animal", page.id.to_string())])) data-test="write" { (say!(l, talk::write)) }
                a.button href=(page.of_home("/talk")) data-test="talk" { (say!(l, talk::title)) }
            }
        }
    };
    Lines { lines, further: 0 }
}

/// Who coaches the home now, where that changed lately or is so for some days; while the home is open to them.
fn whose(page: &AnimalPage, (passed, open): (&[Passed], &Consents)) -> Markup {
    let (l, today) = (&page.locale, page.now.day(&page.zone));
    let is_open = |p: &&Passed| is_open_to(open, p);
    let covers = passed.iter().filter(is_open).filter_map(|p| Some((p, p.days?)));
    let covers = covers.filter(|(_, (first, last))| (*first..=*last).contains(&today));
    let handed = passed.iter().filter(|p| p.days.is_none()).max_by_key(|p| p.since).filter(is_open);
    let handed = handed.filter(|p| today.days_since(p.since.day(&page.zone)) < SAID_DAYS);
    html! {
        @if let Some(p) = handed {
            p.quiet data-test="whose-now" { (say!(l, talk::now_with, to = &p.to.name, from = &p.from.name)) }
        }
        @for (p, (_, last)) in covers {
            p.quiet data-test="whose-now" { (say!(l, talk::now_covered, to = &p.to.name, from = &p.from.name, day = l.date(last))) }
        }
    }
}

/// Which coaches read nothing any more of what waits or was agreed, and since when: once for each.
fn not_read(page: &AnimalPage, (passed, open): (&[Passed], &Consents), all: &[Talk<'_>]) -> Markup {
    let l = &page.locale;
    let live = all.iter().filter(|t| t.is_live() && t.concerns(page.id));
    let over = live.filter_map(|t| Some((&t.part.from, ended(page, (passed, open), t)?.since)));
    let over: BTreeMap<AccountId, (&Label, Option<Moment>)> =
        over.map(|(from, since)| (from.account, (&from.name, since))).collect();
    html! {
        @for (name, since) in over.values() {
            p.quiet data-test="not-read" {
                @match since {
                    Some(at) => (say!(l, talk::today_not_read, name = *name, day = l.weekday_date(at.day(&page.zone)))),
                    None => (say!(l, talk::today_not_read_now, name = *name)),
                }
            }
        }
    }
}

/// What holds between home and coach: the next meeting and the courses, each in a line with its next day, then the newest of the rest,
/// with the coach's words on a plan. A change whose days were drawn has its own line; a plan for whose words a later one is in force has
/// none. While rest is said, nothing that is done with the animal stands there. And how many lines are beyond the usual.
fn holds(page: &AnimalPage, all: &[Talk<'_>], rests: bool) -> (Markup, usize) {
    let l = &page.locale;
    let in_force: BTreeSet<EventId> =
        in_force(&page.story, all, page.id, page.now).into_values().map(|(plan, _)| plan).collect();
    let holds = |t: &&Talk<'_>| match t.part.proposes {
        Proposed::Plan { .. } => !rests && in_force.contains(&t.id()),
        Proposed::Meeting { .. } | Proposed::Practice { .. } | Proposed::Note { .. } | Proposed::Question { .. } => {
            true
        }
        // Agreed before the word came to end sessions.
        Proposed::Stage { .. } if stage_of_closing(&page.story, &t.part.proposes).is_some() => false,
        _ => !rests,
    };
    let here = |t: &&Talk<'_>| t.standing == Standing::Accepted && is_witnessed(page, t.id()) && t.concerns(page.id);
    let agreed = all.iter().filter(here).filter(holds).filter(|t| t.part.proposes.opens_to().is_none());
    let agreed: Vec<&Talk<'_>> = agreed.filter(|t| trying(&page.story, t.id()).is_none()).collect();
    let mut dated: Vec<(Moment, &Talk<'_>, String)> =
        agreed.iter().filter_map(|talk| dated(page, talk).map(|(at, says)| (at, *talk, says))).collect();
    dated.sort_by_key(|(at, talk, _)| (*at, talk.id()));
    let mut meets = false;
    dated.retain(|(_, talk, _)| !is_meeting(talk) || !std::mem::replace(&mut meets, true));
    dated.truncate(DATED);
    let many = if dated.is_empty() { HELD } else { 1 };
    let rest: Vec<_> = agreed.iter().filter(|t| !has_a_day(t)).take(many).collect();
    let further = (dated.len() + rest.len()).saturating_sub(HELD);
    let to = |talk: &Talk<'_>| format!("{}#t-{}", page.of_home("/talk"), talk.id());
    let held = html! {
        @for (_, talk, says) in &dated {
            p.quiet data-test="dated" { a href=(to(talk)) { (says) } }
        }
        @for talk in rest {
            @let what = proposed(l, &page.story, &talk.part.proposes);
            p.quiet data-test="holds" {
                a href=(to(talk)) { (say!(l, talk::agreed_with, name = &talk.part.from.name, what = what)) }
                @if let (Proposed::Plan { .. }, Some(text)) = (&talk.part.proposes, &talk.part.text) { " " (text) }
            }
        }
    };
    (held, further)
}

const fn is_meeting(talk: &Talk<'_>) -> bool {
    matches!(talk.part.proposes, Proposed::Meeting { .. })
}

const fn has_a_day(talk: &Talk<'_>) -> bool {
    matches!(talk.part.proposes, Proposed::Meeting { .. } | Proposed::Programme { .. })
}

/// A meeting or a course in a few words, with the next day that it has.
fn dated(page: &AnimalPage, talk: &Talk<'_>) -> Option<(Moment, String)> {
    let (l, today) = (&page.locale, page.now.day(&page.zone));
    if let Proposed::Meeting { starts_at, .. } = &talk.part.proposes {
        let when = l.weekday_date_time(*starts_at, &page.zone);
        return Some((*starts_at, say!(l, talk::today_meeting, name = &talk.part.from.name, when = when)));
    }
    let (course, first) = course(talk)?;
    let (name, weeks) = (&course.name, course.weeks.len());
    let Some(week) = week_of(course, first, today) else {
        let says = say!(l, talk::today_course_begins, course = name, day = l.weekday_date(first));
        return (today < first).then(|| (first.start(&page.zone), says));
    };
    let next = Programme::days(first, week).1;
    let says = if week + 1 < weeks {
        say!(l, talk::today_course, course = name, week = week + 1, weeks = weeks, day = l.weekday_date(next))
    } else {
        let last = l.weekday_date(next.plus(-1));
        say!(l, talk::today_course_last, course = name, week = week + 1, weeks = weeks, day = last)
    };
    Some((next.start(&page.zone), says))
}

fn to_talk(page: &AnimalPage, says: &str) -> Markup {
    html! { a.button.wide.coach href=(page.of_home("/talk")) data-test="from-coach" { span { (says) } } }
}

/// What was agreed, by word; nothing while rest is said.
pub fn agreed(page: &AnimalPage, today: &Today) -> BTreeMap<WordId, PlanLine> {
    if today.next == Next::Rest {
        return BTreeMap::new();
    }
    lines(&page.story, &talks(&page.story, page.now), page.id, page.now)
}

/// A word's step in a few words, that of the agreement where it stands in its place; and what would be done without the agreement, and
/// why, where that is something else.
pub fn step(l: &Locale, name: &str, of: &WordStep, agreed: Option<&PlanLine>) -> (String, Option<String>) {
    let own = words_of::brief(l, name, &of.advice.act);
    let way = agreed.and_then(|agreed| Some((agreed.way?, stands(of, agreed))));
    match way {
        Some((way, Stands::Instead { differs })) => {
            let why = || words_of::step_because(l, name, &of.advice);
            let without = differs.then(|| say!(l, today::without_agreed, step = own, why = why()));
            (words_of::agreed_way(l, way), without)
        }
        _ => (own, None),
    }
}

/// What was agreed for a word, beside its step: in which way, how long and how often; and that it waits, where the step comes first.
pub fn beside(l: &Locale, of: &WordStep, agreed: &PlanLine) -> Markup {
    let dose = way_and_dose(l, agreed);
    let says = match stands(of, agreed) {
        Stands::Beside | Stands::Instead { .. } => say!(l, talk::row, dose = dose),
        Stands::Waits => say!(l, talk::row_waits, dose = dose),
        Stands::Never => say!(l, talk::row_never, dose = dose),
    };
    html! { span.agreed data-test="agreed" { (says) } }
}
