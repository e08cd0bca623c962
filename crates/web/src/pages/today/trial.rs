//! What a trial of a change has drawn for today, while one goes on: people do it, so they are told where they look first.

use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::designs::{Today, Trial, plans, trial_among};
use sayso_wording::designs::{condition, question};
use sayso_wording::say;

/// Trials that began longer ago are over, or nobody keeps them.
const DAYS: i32 = 400;

/// A line for each trial with something drawn for now; none while rest is said.
pub fn now(page: &AnimalPage) -> Markup {
    let (today, plans) = (page.now.day(&page.zone), plans(&page.story, page.id));
    let begun = plans.iter().filter(|p| (0..DAYS).contains(&today.days_since(p.part.first)));
    let found = begun.filter_map(|p| trial_among(&page.story, &plans, page.id, p.part.trial)?.ok());
    html! { @for of in found.filter(|of| !of.is_surely_over(&page.story, page.now)) { (line(page, &of)) } }
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
    html! {
        @if !said.is_empty() {
            p.note data-test="trial-today" {
                a.link href=(format!("/a/{}/designs/{}", page.id, plan.trial)) { (say!(l, talk::trial_today, question = question(l, plan), what = l.apart(&said))) }
            }
        }
    }
}
