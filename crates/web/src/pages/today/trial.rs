//! What a trial of a change has drawn for today, while one goes on: people do it, so they are told where they look first.

use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::designs::{Today, plans, trial};
use sayso_model::{CaseCondition, DesignId};
use sayso_wording::designs::{exact, question, with_change};
use sayso_wording::say;

/// Trials that began longer ago are over, or nobody keeps them.
const DAYS: i32 = 400;

/// A line for each trial with something drawn for now; none while rest is said.
pub fn now(page: &AnimalPage) -> Markup {
    let today = page.now.day(&page.zone);
    let begun = plans(&page.story, page.id).into_iter().filter(|p| (0..DAYS).contains(&today.days_since(p.part.first)));
    html! { @for id in begun.map(|p| p.part.trial) { (line(page, id)) } }
}

fn line(page: &AnimalPage, id: DesignId) -> Markup {
    let l = &page.locale;
    let Some(Ok(of)) = trial(&page.story, page.id, id) else { return html! {} };
    let plan = of.plan.part;
    let lanes = of.lanes.iter().zip(of.today(&page.story, page.now)).filter(|(lane, _)| lane.animal == page.id);
    let said: Vec<String> = lanes
        .filter_map(|(lane, now)| {
            let Today::Condition { condition, criterion, .. } = now else { return None };
            let what = match (condition, criterion.and_then(|c| plan.criteria.get(c))) {
                (_, Some(goal)) => say!(l, designs::deliver_within, seconds = exact(l, goal.get())),
                (CaseCondition::Changed, None) => with_change(l, plan),
                (CaseCondition::Usual, None) => say!(l, designs::as_usual),
            };
            let named = (!lane.name.is_empty()).then(|| say!(l, designs::of_lane, lane = lane.name.as_str()));
            Some(named.map_or_else(|| what.clone(), |lane| format!("{lane} {what}")))
        })
        .collect();
    html! {
        @if !said.is_empty() {
            p.note data-test="trial-today" {
                a.link href=(format!("/a/{}/designs/{id}", page.id)) { (say!(l, talk::trial_today, question = question(l, plan), what = said.join("; "))) }
            }
        }
    }
}
