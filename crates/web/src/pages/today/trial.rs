//! What a trial of a change has drawn for today, while one goes on: people do it, so they are told where they look first.

use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::designs::{Today, Trial, planned_end, plans, trial_among};
use sayso_people::Capability;
use sayso_wording::designs::{condition, question};
use sayso_wording::say;

/// Trials that began longer ago are over, or nobody keeps them.
const DAYS: i32 = 400;

/// A line for each trial with something drawn for now, none of them while rest is said; and for each that is to begin.
pub fn now(page: &AnimalPage) -> Markup {
    let (l, today, plans) = (&page.locale, page.now.day(&page.zone), plans(&page.story, page.id));
    let known = plans.iter().filter(|p| today.days_since(p.part.first) < DAYS);
    let known = known.filter_map(|p| trial_among(&page.story, &plans, page.id, p.part.trial)?.ok());
    let known = known.filter(|of| !of.is_surely_over(&page.story, page.now));
    let (ahead, begun): (Vec<_>, Vec<_>) = known.partition(|of| of.plan.part.first > today);
    html! {
        @for of in &begun { (line(page, of)) }
        @for of in &ahead {
            p.quiet data-test="trial-ahead" {
                (led(page, of, None, &say!(l, talk::trial_begins, day = l.weekday_date(of.plan.part.first), question = question(l, of.plan.part))))
            }
        }
    }
}

fn line(page: &AnimalPage, of: &Trial<'_>) -> Markup {
    let (l, plan) = (&page.locale, of.plan.part);
    let lanes = of.lanes.iter().zip(of.today(&page.story, page.now)).filter(|(lane, _)| lane.animal == page.id);
    let said: Vec<String> = lanes
        .filter_map(|(lane, now)| {
            let Today::Condition { condition: drawn, criterion, .. } = now else { return None };
            let what = condition(l, plan, drawn, criterion);
            let named = (!lane.name.is_empty()).then(|| say!(l, designs::of_lane, lane = lane.name.as_str()));
            Some(named.map_or_else(|| what.clone(), |lane| format!("{lane} {what}")))
        })
        .collect();
    let last = planned_end(plan).map(|day| l.weekday_date(day));
    let (question, what) = (question(l, plan), l.apart(&said));
    let says = match last {
        Some(last) => say!(l, talk::trial_today_until, last = last, question = question, what = what),
        None => say!(l, talk::trial_today, question = question, what = what),
    };
    html! {
        @if !said.is_empty() {
            p.note data-test="trial-today" {
                (led(page, of, Some("link"), &says))
            }
        }
    }
}

/// What is said of a trial, leading to it whoever may see it.
fn led(page: &AnimalPage, of: &Trial<'_>, class: Option<&str>, says: &str) -> Markup {
    html! {
        @if page.may(Capability::SeeFigures) {
            a class=[class] href=(format!("/a/{}/designs/{}", page.id, of.plan.part.trial)) { (says) }
        } @else { (says) }
    }
}
