//! Where a home stands in a programme, against its own aims: counted from the log where that can tell, else as the home ticked.

use crate::case::Case;
use crate::observe::{answered_between, showings};
use sayso_model::talks::Talk;
use sayso_model::{Aim, AimDone, Day, Invitation, LessonRead, Moment, Programme, Proposed, Story};
use std::collections::BTreeMap;

/// One aim, and what was done of it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Doing<'a> {
    /// The aim.
    pub aim: &'a Aim,
    /// Done in its week: times, days, or once.
    pub done: usize,
    /// Of so many.
    pub of: usize,
}

impl Doing<'_> {
    /// Whether it was reached.
    #[must_use]
    pub const fn is_done(&self) -> bool {
        self.done >= self.of
    }
}

/// The course that a proposal is about, and its first day.
#[must_use]
pub const fn course<'a>(talk: &Talk<'a>) -> Option<(&'a Programme, Day)> {
    match &talk.part.proposes {
        Proposed::Programme { course, first } => Some((course, *first)),
        _ => None,
    }
}

/// The week of a course that a day lies in, counted from 0; none before and after it.
#[must_use]
pub fn week_of(course: &Programme, first: Day, day: Day) -> Option<usize> {
    let week = usize::try_from(day.days_since(first)).ok()? / 7;
    (week < course.weeks.len()).then_some(week)
}

/// Which marks on lessons are seen.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Marks {
    /// All: by the home.
    All,
    /// Those that whoever made them shows: by its coaches.
    Shown,
}

/// What was done of a week's aims, counted from 0, up to now, as far as these marks on lessons tell.
#[must_use]
pub fn doing<'a>(case: &Case<'_>, talk: &Talk<'a>, week: usize, marks: Marks) -> Vec<Doing<'a>> {
    let Some((course, first)) = course(talk) else { return Vec::new() };
    let aims = course.weeks.get(week).map_or(&[][..], |week| &week.aims);
    let days = Programme::days(first, week);
    let one = |(place, aim): (usize, &'a Aim)| {
        let (done, of) = match aim {
            Aim::Showings { times } => (shown(case, days), usize::from(*times)),
            Aim::Invitations { times } => (invited(case, days), usize::from(*times)),
            Aim::Sessions { a_day, days: on } => (days_with(case, days, usize::from(*a_day)), usize::from(*on)),
            Aim::Lesson { lesson } => {
                // Anybody of the home, by the end of the week, also before the programme.
                let end = moments(case, days).1;
                (usize::from(is_read(case.story(), lesson.as_str(), end, marks)), 1)
            }
            Aim::Own { .. } => (usize::from(ticked(case, talk, week, place)), 1),
        };
        Doing { aim, done, of }
    };
    aims.iter().enumerate().map(one).collect()
}

/// The first and the last moment of some days, the last of which is left out; none after now.
fn moments(case: &Case<'_>, (from, upto): (Day, Day)) -> (Moment, Moment) {
    (from.start(case.zone()), upto.start(case.zone()).plus_seconds(-0.001).min(case.now()))
}

fn shown(case: &Case<'_>, days: (Day, Day)) -> usize {
    let all = answered_between(case.story(), case.animal(), moments(case, days), case.now());
    showings(&all, None).len()
}

fn invited(case: &Case<'_>, days: (Day, Day)) -> usize {
    let (from, until) = moments(case, days);
    case.story().between::<Invitation>(case.animal(), from, until).count()
}

fn days_with(case: &Case<'_>, (from, upto): (Day, Day), a_day: usize) -> usize {
    let mut days: BTreeMap<Day, usize> = BTreeMap::new();
    for session in case.sessions() {
        let day = session.start.at().day(case.zone());
        if (from..upto).contains(&day) {
            *days.entry(day).or_insert(0) += 1;
        }
    }
    days.values().filter(|sessions| **sessions >= a_day).count()
}

/// Whether anybody of the home has read a lesson at a moment, as far as these marks tell.
#[must_use]
pub fn is_read(story: &Story, lesson: &str, at: Moment, marks: Marks) -> bool {
    let seen = |r: &LessonRead| marks == Marks::All || r.shown;
    story.everyones::<LessonRead>().any(|r| r.part.lesson.as_str() == lesson && r.at() <= at && seen(r.part))
}

fn ticked(case: &Case<'_>, talk: &Talk<'_>, week: usize, place: usize) -> bool {
    let mut ticks = case.story().of::<AimDone>(case.animal()).filter(|t| t.at() <= case.now());
    ticks
        .any(|t| t.part.of == talk.id() && usize::from(t.part.week) == week + 1 && usize::from(t.part.aim) == place + 1)
}
