//! A programme on its card: its weeks, where the home stands against its own aims, and a tick for what the log cannot tell.

use super::practice::marks;
use super::{back_to, case, no_such, seen};
use crate::error::Error;
use crate::page::Page;
use crate::typed::{Typed, named};
use axum::response::Redirect;
use maud::{Markup, html};
use sayso_advisor::programme::{course, doing, week_of};
use sayso_model::talks::{Standing, Talk};
use sayso_model::{AimDone, AnimalId, Event, EventId, Programme, Withdrawal};
use sayso_people::Capability;
use sayso_wording::programme::{aim, doing as told};
use sayso_wording::say;

/// The course, week by week; that of today unfolded.
pub fn weeks(page: &Page, talk: &Talk<'_>) -> Markup {
    let (Some((course, first)), Some(animal)) = (course(talk), talk.event.animal) else { return html! {} };
    let l = &page.locale;
    let (case, today) = (case(page, animal), page.now.day(&page.zone));
    let now = week_of(course, first, today);
    html! {
        div data-test="programme" {
            @for (week, of) in course.weeks.iter().enumerate() {
                @let (from, upto) = Programme::days(first, week);
                details open[now == Some(week) || (now.is_none() && week == 0 && talk.standing == Standing::Open)] data-test="week" {
                    summary { (say!(l, programme::week, week = week + 1, first = l.date(from), last = l.date(upto.plus(-1)))) }
                    @if let Some(text) = &of.exercise { p.lines { (text) } }
                    @if of.aims.is_empty() { p.quiet { (say!(l, programme::no_aims)) } }
                    @if talk.standing.is_agreed() && from <= today {
                        ul { @for (place, one) in doing(&case, talk, week, marks(page)).iter().enumerate() {
                            li data-test="aim" data-done=(one.is_done()) { (told(l, one)) (tick(page, talk, (week, place), one.aim.is_ticked(), one.is_done())) }
                        } }
                    } @else { ul { @for one in &of.aims { li { (aim(l, one)) } } } }
                }
            }
            p.quiet { (say!(l, programme::for_people)) }
        }
    }
}

/// For the home: done, or not after all.
fn tick(page: &Page, talk: &Talk<'_>, (week, place): (usize, usize), is_ticked: bool, done: bool) -> Markup {
    let l = &page.locale;
    html! {
        @if is_ticked && page.may(Capability::Agree) && talk.standing == Standing::Accepted {
            form method="post" action=(page.of_home("/talk/aim")) {
                input type="hidden" name="of" value=(talk.id());
                input type="hidden" name="week" value=(week + 1);
                input type="hidden" name="aim" value=(place + 1);
                button name="done" value=(if done { "no" } else { "yes" }) data-test="tick" {
                    @if done { (say!(l, programme::not_after_all)) } @else { (say!(l, programme::tick)) }
                }
            }
        }
    }
}

/// Where a home notes that an aim was done, or takes that back.
pub async fn note(page: Page, typed: Typed) -> Result<Redirect, Error> {
    let mut typed = typed.only(&["of", "week", "aim", "done"])?;
    let of: EventId = named(typed.text("of"), "proposal")?;
    let most = |n: usize| u16::try_from(n).unwrap_or(u16::MAX);
    let week = typed.whole("week", 1, most(Programme::MOST_WEEKS));
    let aim = typed.whole("aim", 1, most(Programme::MOST_AIMS));
    let (Some(week), Some(aim)) = (week, aim) else { return Err(no_such()) };
    let all = seen(&page);
    let talk = all.iter().find(|t| t.id() == of && t.standing == Standing::Accepted).ok_or_else(no_such)?;
    let (Some((course, _)), Some(animal)) = (course(talk), talk.event.animal) else { return Err(no_such()) };
    let there = course.weeks.get(usize::from(week) - 1).and_then(|w| w.aims.get(usize::from(aim) - 1));
    if !there.is_some_and(sayso_model::Aim::is_ticked) {
        return Err(no_such());
    }
    let (week, aim) = (u8::try_from(week).unwrap_or(u8::MAX), u8::try_from(aim).unwrap_or(u8::MAX));
    let part = AimDone { of, week, aim };
    let known = ticks(&page, animal, &part);
    let about = |event: Event| Event { animal: Some(animal), ..event };
    if typed.text("done") == "no" {
        let back = known.into_iter().map(|of| about(page.event(Withdrawal { of, because: None })));
        page.keep(back.collect()).await?;
    } else if known.is_empty() {
        page.keep(vec![about(page.event(part))]).await?;
    }
    Ok(back_to(&page, of))
}

fn ticks(page: &Page, animal: AnimalId, part: &AimDone) -> Vec<EventId> {
    page.story.of::<AimDone>(animal).filter(|t| t.part == part).map(|t| t.id()).collect()
}
