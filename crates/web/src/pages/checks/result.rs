//! What came out of a check, and what may be said.

use super::says;
use crate::chart::{Axis, Whisker, whiskers};
use crate::page::AnimalPage;
use crate::rich;
use maud::{Markup, html};
use sayso_advisor::checks::{Report, WordResult};
use sayso_advisor::claims::{Claim, claims};
use sayso_model::ProbePlan;
use sayso_wording::claims::may_be_said as may_be_said_of;
use sayso_wording::{Locale, say};

/// Open when all planned trials were carried out; before that folded away, with the reason.
pub fn result(page: &AnimalPage, plan: &ProbePlan, r: &Report) -> Markup {
    let l = &page.locale;
    html! {
        @if r.carried_out == 0 { p.quiet { (say!(l, checks::nothing_done)) } }
        @else if r.finished() {
            h2 { (say!(l, checks::came_out)) }
            div data-part="figures" {
                (figures(page, plan, r))
                @if !plan.blind { p.caution data-test="not-blind" { (say!(l, checks::this_not_blind)) } }
                (may_be_said(page, plan))
            }
        } @else {
            details {
                summary { (say!(l, checks::figures)) }
                p.quiet { (say!(l, checks::read_any_time)) }
                (figures(page, plan, r))
            }
        }
    }
}

fn figures(page: &AnimalPage, plan: &ProbePlan, r: &Report) -> Markup {
    let rows: Vec<Whisker> = r.words.iter().map(|w| Whisker::of(says(page, w.word), &w.right)).collect();
    let l = &page.locale;
    let told: Vec<String> = r.words.iter().map(|w| l.colon(&says(page, w.word), &l.estimate(&w.right))).collect();
    html! {
        (whiskers(l, &say!(l, checks::chart), &l.apart(&told), &Axis::share(l, &say!(l, checks::chart_axis)), Some(r.chance), &rows))
        p.quiet { (say!(l, checks::chart_read, chance = l.percent(r.chance), name = &page.card.name)) }
        ul.plain { @for w in &r.words { li { (word(page, plan, r, w)) } } }
    }
}

fn word(page: &AnimalPage, plan: &ProbePlan, r: &Report, w: &WordResult) -> Markup {
    let (l, n) = (&page.locale, w.right.n);
    let share = |x: Option<f64>| l.percent(x.unwrap_or(f64::NAN));
    let [value, low, high] = [w.right.value, w.right.low, w.right.high].map(share);
    let name = page.card.name.as_str();
    html! {
        h3 { (says(page, w.word)) }
        p { @if n == 0 { (say!(l, checks::no_choice)) }
            @else { (say!(l, checks::went_for, name = name, times = n, right = w.k, share = value, low = low, high = high)) }
            " " (say!(l, checks::never_wrong, nothing = w.nothing, away = w.left)) }
        @if let Some(p) = w.p {
            p { @if plan.design.places_drawn() { (say!(l, checks::p_chance, chance = l.percent(r.chance), p = l.p(p), times = n)) }
                @else { (say!(l, checks::p_rearranged, p = l.p(p))) } }
        }
        @if let Some(factor) = w.bayes_factor { p { (bayes(l, factor)) } }
        @let [(right, right_n), (wrong, wrong_n)] = w.seconds;
        @if let Some(s) = right { p { (say!(l, checks::seconds_right, timed = right_n, seconds = l.number(s, 1)))
            @if let Some(s) = wrong { " " (say!(l, checks::seconds_wrong, timed = wrong_n, seconds = l.number(s, 1))) }
            @if let Some(both) = &w.latency { " " (say!(l, checks::latency, p = l.p(both.p_two_sided))) } } }
    }
}

fn bayes(l: &Locale, factor: f64) -> String {
    let times = |x: f64| {
        if x >= 1000.0 { say!(l, checks::more_than, number = 1000) } else { l.number(x, usize::from(x < 10.0)) }
    };
    if factor >= 1.0 {
        say!(l, checks::bayes_above, factor = times(factor))
    } else {
        say!(l, checks::bayes_below, factor = times(1.0 / factor))
    }
}

/// From all records of the animal together, corrected; a check alone is not judged apart.
fn may_be_said(page: &AnimalPage, plan: &ProbePlan) -> Markup {
    let l = &page.locale;
    let link = |c: &Claim| {
        html! { a href=(format!("/a/{}/evidence/{}", page.id, c.word)) { (say!(l, checks::quoted, word = &c.says)) } }
    };
    html! {
        h2 { (say!(l, checks::may_be_said)) }
        @match claims(&page.case()) {
            Err(why) => p { (why) },
            Ok(all) => {
                ul { @for c in all.words.iter().filter(|c| plan.words.contains(&c.word)) {
                    li { (rich!(l, checks::said_of_word, word = link(c), said = may_be_said_of(l, c, &page.zone))) }
                } }
                p.quiet { (say!(l, checks::judged)) @if !plan.design.places_drawn() { " " (say!(l, checks::suggests)) } }
            }
        }
    }
}
