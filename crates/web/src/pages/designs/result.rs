//! What a trial shows: a graph a series with its phases, figures under it, the test and the verdict on the design.

use crate::chart::{Axis, Panel, PhasePoint, Phases, nice_axis, phases, short};
use crate::page::AnimalPage;
use crate::rich;
use maud::{Markup, html};
use sayso_advisor::designs::{LaneResult, Report, Standing, Tested, Trial};
use sayso_advisor::estimate::Estimate;
use sayso_methods::learning::celeration::{Celeration, Turn};
use sayso_methods::single_case::effects::{Change, Contrast};
use sayso_model::{CaseCondition, CaseDesign, CaseMeasure};
use sayso_wording::designs::{compared, exact, measure, no_test, phase, question, verdict, would_change};
use sayso_wording::{Locale, say};

/// Open at the end; folded away before, with the reason.
pub fn result(page: &AnimalPage, trial: &Trial<'_>, r: &Report) -> Markup {
    let l = &page.locale;
    html! {
        @match r.standing {
            Standing::NotYet(_) => {},
            Standing::Running => details {
                summary { (say!(l, designs::figures)) }
                p.caution { (say!(l, designs::not_finished_yet)) }
                (figures(l, trial, r))
            },
            _ => {
                h2 { (say!(l, designs::came_out)) }
                (test(l, r))
                (figures(l, trial, r))
                p { (say!(l, designs::would_change, what = would_change(l, trial.plan.part, r))) }
                p.quiet { (say!(l, designs::about_one, name = &page.card.name)) }
            }
        }
    }
}

fn test(l: &Locale, r: &Report) -> Markup {
    html! {
        @match &r.tested {
            Err(why) => p.quiet { (say!(l, designs::no_test, why = no_test(l, *why))) },
            Ok(found) => (tested(l, found)),
        }
        @if let Some(s) = r.standards {
            p data-test="verdict" { (rich!(l, designs::verdict, verdict = html! { strong { (verdict(l, s.verdict)) } }, chances = s.demonstrations, fewest = s.fewest)) }
        }
    }
}

fn tested(l: &Locale, found: &Tested) -> Markup {
    let t = found.test;
    let way = if t.exact { "yes" } else { "no" };
    html! {
        dl.facts data-test="test" {
            @if let Some(d) = &found.difference {
                dt { (say!(l, designs::difference)) }
                dd { (difference(l, d)) }
            } @else {
                dt { (say!(l, designs::distance)) } dd { (say!(l, unit::seconds, value = short(l, t.observed))) }
            }
            dt { (say!(l, designs::extreme)) } dd { (say!(l, designs::extreme_of, extreme = t.as_extreme, orders = t.orders, exact = way)) }
            dt { "p" } dd { (l.p(t.p)) }
            @if t.undefined > 0 { dt { (say!(l, designs::orders_left_out)) } dd { (say!(l, designs::orders_undefined, orders = t.undefined)) } }
        }
    }
}

fn difference(l: &Locale, d: &Estimate) -> String {
    let value = short(l, d.value.unwrap_or(0.0));
    let end = |x: Option<f64>| x.map_or_else(|| say!(l, designs::open_end), |x| short(l, x));
    match (d.low, d.high) {
        (None, None) => say!(l, designs::difference_none, value = value, points = d.n),
        (low, high) => {
            say!(l, designs::difference_interval, value = value, low = end(low), high = end(high), points = d.n)
        }
    }
}

fn figures(l: &Locale, trial: &Trial<'_>, r: &Report) -> Markup {
    html! {
        @if r.missing > 0 { p.quiet { (say!(l, designs::missing, missing = r.missing, points = r.done.0)) } }
        @for lane in &r.lanes {
            @if !lane.lane.name.is_empty() { h3 { (lane.lane.name) } }
            @if lane.points.is_empty() { p.quiet { (say!(l, designs::no_point)) } }
            @else { (graph(l, trial, lane)) (under(l, lane)) }
        }
    }
}

/// Letters of the trade: A for the usual, B for the change.
fn letter(l: &Locale, trial: &Trial<'_>, phase: u8) -> String {
    match trial.plan.part.design {
        CaseDesign::Reversal => format!("{}{}", if phase.is_multiple_of(2) { "A" } else { "B" }, phase / 2 + 1),
        CaseDesign::ChangingCriterion if phase > 0 => {
            let goal = trial.plan.part.criteria.get(usize::from(phase) - 1);
            goal.map_or_else(String::new, |c| say!(l, unit::seconds, value = exact(l, c.get())))
        }
        _ => (if phase == 0 { "A" } else { "B" }).to_owned(),
    }
}

fn graph(l: &Locale, trial: &Trial<'_>, lane: &LaneResult) -> Markup {
    let plan = trial.plan.part;
    let points: Vec<PhasePoint> = lane
        .points
        .iter()
        .filter(|m| m.over)
        .map(|m| PhasePoint {
            x: f64::from(m.point),
            y: m.value,
            n: m.n,
            changed: m.drawn == CaseCondition::Changed,
            phase: lane.phases.get(usize::from(m.phase)).map_or_else(String::new, |p| phase(l, p.name)),
        })
        .collect();
    let mut panels: Vec<Panel> = Vec::new();
    if plan.design != CaseDesign::AlternatingTreatments {
        let mut last = None;
        for m in lane.points.iter().filter(|m| m.over) {
            if last != Some(m.phase) {
                panels.push(Panel { from: f64::from(m.point) - 0.5, name: letter(l, trial, m.phase) });
                last = Some(m.phase);
            }
        }
    }
    let most = points.iter().filter_map(|p| p.y).fold(0.0, f64::max);
    let what = measure(l, plan.measure);
    let y = match plan.measure {
        CaseMeasure::JoinedShare | CaseMeasure::PressedShare => Axis::share(l, &what),
        _ => nice_axis(l, &what, 0.0, most),
    };
    let x = nice_axis(l, &say!(l, designs::unit, unit = plan.unit.name()), 0.0, f64::from(plan.points));
    let means: Vec<String> = lane.phases.iter().map(|p| l.colon(&phase(l, p.name), &l.estimate(&p.mean))).collect();
    let told = say!(l, designs::chart_told, question = question(l, plan), phases = l.apart(&means));
    let title = say!(l, designs::chart, unit = plan.unit.name(), measure = what);
    html! {
        (phases(l, &Phases { title, told, x, y, points, panels }))
        p.quiet { (say!(l, designs::chart_read)) }
    }
}

fn under(l: &Locale, lane: &LaneResult) -> Markup {
    html! {
        dl.facts {
            @for p in &lane.phases {
                dt { (phase(l, p.name)) }
                dd { (say!(l, designs::mean, mean = l.estimate(&p.mean))) @if let Some(c) = &p.celeration { (say!(l, unit::apart)) (weekly(l, c)) } }
            }
        }
        @for (what, c) in &lane.contrasts { p { strong { (compared(l, *what)) } } (contrast(l, c)) }
        p.quiet { (say!(l, designs::independent)) }
    }
}

fn weekly(l: &Locale, c: &Celeration) -> String {
    let turn = match c.turn() {
        Turn::Times(x) => say!(l, designs::times_a_week, factor = short(l, x)),
        Turn::DividedBy(x) => say!(l, designs::divided_a_week, factor = short(l, x)),
    };
    match c.interval {
        Some(i) => say!(l, designs::weekly, turn = turn, low = short(l, i.low), high = short(l, i.high), n = c.n),
        None => say!(l, designs::weekly_no_interval, turn = turn, n = c.n),
    }
}

fn contrast(l: &Locale, c: &Contrast) -> Markup {
    let n = &c.nonoverlap;
    let nap = say!(
        l,
        designs::nap_value,
        share = l.percent(n.nap),
        low = l.percent(n.nap_interval.low),
        high = l.percent(n.nap_interval.high),
        usual = n.n_a,
        changed = n.n_b
    );
    let tau =
        say!(l, designs::tau_value, share = l.percent(n.tau_u), p = l.p(n.tau_u_p), usual = n.n_a, changed = n.n_b);
    html! {
        dl.facts {
            dt { (say!(l, designs::nap)) } dd { (nap) }
            dt { (say!(l, designs::tau)) } dd { (tau) }
            @if let Some(level) = &c.level { dt { (say!(l, designs::level)) } dd { (change(l, level)) } }
            @if let Some(trend) = &c.trend { dt { (say!(l, designs::trend)) } dd { (change(l, trend)) } }
        }
    }
}

fn change(l: &Locale, c: &Change) -> String {
    let value = short(l, c.value);
    match c.interval {
        Some(i) => say!(l, designs::change_value, value = value, low = short(l, i.low), high = short(l, i.high)),
        None => say!(l, designs::change_value_no_interval, value = value),
    }
}
