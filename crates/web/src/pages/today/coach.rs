//! What coach and home agreed on, on Today: a line that leads to what is to be answered, and beside a word's step what was agreed
//! for it. Never in its place; and while rest is said nothing is to be done.

use crate::page::AnimalPage;
use crate::pages::talk::{is_open_to, is_witnessed, open_now, passed_on, seen, writer};
use maud::{Markup, html};
use sayso_advisor::today::{Next, Today};
use sayso_model::talks::{Passed, Standing, Talk, agreed as lines, talks};
use sayso_model::{PlanLine, Proposed, WordId};
use sayso_people::Capability;
use sayso_wording::talk::{dose, proposed};
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;

/// Of what holds, so much stands on Today.
const HELD: usize = 2;
/// Days for which Today says that another coach has taken the place of the one before.
const SAID_DAYS: i32 = 7;

/// For the home what a coach wrote and nobody answered yet; for a coach the way to write.
pub fn line(page: &AnimalPage) -> Markup {
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
        return html! { (whose(page, &all)) (waiting) (holds(page, &all)) };
    }
    html! {
        @if writer(page).is_some() {
            div.row.coach data-test="coach" {
                a.button href=(page.of_home_with("/talk/write", &[("animal", page.id.to_string())])) data-test="write" { (say!(l, talk::write)) }
                a.button href=(page.of_home("/talk")) data-test="talk" { (say!(l, talk::title)) }
            }
        }
    }
}

/// Who coaches the home now, where that changed lately or is so for some days; while the home is open to them.
fn whose(page: &AnimalPage, all: &[Talk<'_>]) -> Markup {
    let (l, today) = (&page.locale, page.now.day(&page.zone));
    let open = open_now(page);
    let passed = passed_on(page, all);
    let is_open = |p: &&Passed| is_open_to(&open, p);
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

/// What holds between home and coach, the newest first, with the coach's words on a plan.
fn holds(page: &AnimalPage, all: &[Talk<'_>]) -> Markup {
    let l = &page.locale;
    let here = |t: &&Talk<'_>| t.standing == Standing::Accepted && is_witnessed(page, t.id()) && t.concerns(page.id);
    let agreed = all.iter().filter(here).filter(|t| t.part.proposes.opens_to().is_none());
    html! {
        @for talk in agreed.take(HELD) {
            @let what = proposed(l, &page.story, &talk.part.proposes);
            p.quiet data-test="holds" {
                a href=(page.of_home("/talk")) { (say!(l, talk::agreed_with, name = &talk.part.from.name, what = what)) }
                @if let (Proposed::Plan { .. }, Some(text)) = (&talk.part.proposes, &talk.part.text) { " " (text) }
            }
        }
    }
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

/// What was agreed for a word, beside its step.
pub fn beside(l: &Locale, agreed: &PlanLine) -> Markup {
    html! { span.agreed data-test="agreed" { (say!(l, talk::row, dose = dose(l, agreed))) } }
}
