//! What a trial shows: a graph a series with its phases, figures under it, the test and the verdict on the design.

use crate::chart::{Axis, Panel, PhasePoint, Phases, nice_axis, phases, short};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::designs::{LaneResult, Report, Standing, Trial, measure_words, verdict_words};
use sayso_methods::learning::celeration::{Celeration, Turn};
use sayso_methods::single_case::effects::{Change, Contrast};
use sayso_model::{CaseCondition, CaseDesign, CaseMeasure, CaseUnit};
use sayso_wording::Locale;

/// Open at the end; folded away before, with the reason.
pub fn result(page: &AnimalPage, trial: &Trial<'_>, r: &Report) -> Markup {
    html! {
        @match r.standing {
            Standing::NotYet(_) => {},
            Standing::Running => details {
                summary { "Figures so far" }
                p.caution { "Not finished: nothing is claimed from these, and looking tempts to stop. The test is made at the end." }
                (figures(trial, r))
            },
            _ => {
                h2 { "What came out" }
                (test(r))
                (figures(trial, r))
                p { "What would change it: " (r.would_change) }
                p.quiet { "This is about " (page.card.name.as_str()) " alone. It says nothing of other animals." }
            }
        }
    }
}

fn test(r: &Report) -> Markup {
    html! {
        @match &r.tested {
            Err(why) => p.quiet { "No test: " (why) "." },
            Ok(found) => {
                @let t = found.test;
                dl.facts data-test="test" {
                    @if let Some(d) = found.difference {
                        dt { "Difference, changed less usual" }
                        dd { (short(&Locale::ENGLISH, d.value.unwrap_or(0.0))) " ("
                            @match (d.low, d.high) {
                                (None, None) => "no 95 % interval: too few orders",
                                (low, high) => { "95 % interval " (low.map_or_else(|| "open".to_owned(), |x| short(&Locale::ENGLISH, x))) " to " (high.map_or_else(|| "open".to_owned(), |x| short(&Locale::ENGLISH, x))) },
                            } ", n = " (d.n) " points)" }
                    } @else {
                        dt { "Mean distance from the goal" } dd { (short(&Locale::ENGLISH, t.observed)) " s" }
                    }
                    dt { "Orders as extreme" } dd { (t.as_extreme) " of " (t.orders) @if t.exact { ", all counted" } @else { ", drawn anew" } }
                    dt { "p" } dd { (format!("{:.4}", t.p)) }
                    @if t.undefined > 0 { dt { "Orders left out" } dd { (t.undefined) " (missing points would have left a condition empty)" } }
                }
            }
        }
        @if let Some(s) = r.standards {
            p data-test="verdict" { "The design " strong { (verdict_words(s.verdict)) } ": " (s.demonstrations) " chances to show an effect (3 wanted), at least " (s.fewest) " observed points each (5 wanted, 3 with reservations; Kratochwill et al. 2010)." }
        }
    }
}

fn figures(trial: &Trial<'_>, r: &Report) -> Markup {
    html! {
        @if r.missing > 0 { p.quiet { (r.missing) " of " (r.done.0) " points over have no value: nothing was logged that this measure could be read from. They are left out, not counted as zero." } }
        @for lane in &r.lanes {
            @if !lane.lane.name.is_empty() { h3 { (lane.lane.name) } }
            @if lane.points.is_empty() { p.quiet { "No point yet (n = 0)." } }
            @else { (graph(trial, lane)) (under(lane)) }
        }
    }
}

/// Letters of the trade: A for the usual, B for the change.
fn letter(trial: &Trial<'_>, phase: u8) -> String {
    match trial.plan.part.design {
        CaseDesign::Reversal => format!("{}{}", if phase.is_multiple_of(2) { "A" } else { "B" }, phase / 2 + 1),
        CaseDesign::ChangingCriterion if phase > 0 => {
            trial.plan.part.criteria.get(usize::from(phase) - 1).map_or_else(String::new, |c| format!("{c} s"))
        }
        _ => (if phase == 0 { "A" } else { "B" }).to_owned(),
    }
}

fn graph(trial: &Trial<'_>, lane: &LaneResult) -> Markup {
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
            phase: lane.phases.get(usize::from(m.phase)).map_or_else(String::new, |p| p.name.clone()),
        })
        .collect();
    let mut panels: Vec<Panel> = Vec::new();
    if plan.design != CaseDesign::AlternatingTreatments {
        let mut last = None;
        for m in lane.points.iter().filter(|m| m.over) {
            if last != Some(m.phase) {
                panels.push(Panel { from: f64::from(m.point) - 0.5, name: letter(trial, m.phase) });
                last = Some(m.phase);
            }
        }
    }
    let most = points.iter().filter_map(|p| p.y).fold(0.0, f64::max);
    let what = measure_words(plan.measure);
    let y = match plan.measure {
        CaseMeasure::JoinedShare | CaseMeasure::PressedShare => Axis::share(&Locale::ENGLISH, what),
        _ => nice_axis(&Locale::ENGLISH, what, 0.0, most),
    };
    let unit = match plan.unit {
        CaseUnit::Day => "day",
        CaseUnit::Session => "session",
    };
    let told = format!(
        "{}: {}.",
        sayso_advisor::designs::question_words(plan),
        lane.phases.iter().map(|p| format!("{} {}", p.name, p.mean)).collect::<Vec<_>>().join("; ")
    );
    html! {
        (phases(&Locale::ENGLISH, &Phases { title: format!("{what}, by {unit}"), told, x: nice_axis(&Locale::ENGLISH, unit, 0.0, f64::from(plan.points)), y, points, panels }))
        p.quiet { "Hollow points: as usual (A). Filled points: with the change (B). Dashed lines: the phase changed. Gaps: missing." }
    }
}

fn under(lane: &LaneResult) -> Markup {
    html! {
        dl.facts {
            @for p in &lane.phases {
                dt { (p.name) }
                dd { "mean " (p.mean) @if let Some(c) = &p.celeration { "; " (weekly(c)) } }
            }
        }
        @for (name, c) in &lane.contrasts { p { strong { (name) } } (contrast(c)) }
        p.quiet { "Intervals of means, NAP, level and trend take points as independent, which days of one animal are not quite. The test above does not rest on that." }
    }
}

fn weekly(c: &Celeration) -> String {
    let turn = match c.turn() {
        Turn::Times(x) => format!("\u{d7} {} a week", short(&Locale::ENGLISH, x)),
        Turn::DividedBy(x) => format!("\u{f7} {} a week", short(&Locale::ENGLISH, x)),
    };
    let interval = c.interval.map_or_else(
        || "no interval yet".to_owned(),
        |i| {
            format!(
                "90 % interval \u{d7} {} to \u{d7} {}",
                short(&Locale::ENGLISH, i.low),
                short(&Locale::ENGLISH, i.high)
            )
        },
    );
    format!("celeration {turn} ({interval}, n = {})", c.n)
}

fn contrast(c: &Contrast) -> Markup {
    let n = &c.nonoverlap;
    let percent = |x: f64| format!("{:.0} %", 100.0 * x);
    let change = |c: &Change| {
        let interval = c.interval.map_or_else(
            || "no interval yet".to_owned(),
            |i| format!("95 % interval {} to {}", short(&Locale::ENGLISH, i.low), short(&Locale::ENGLISH, i.high)),
        );
        format!("{} ({interval})", short(&Locale::ENGLISH, c.value))
    };
    html! {
        dl.facts {
            dt { "NAP (pairs in which the change did better)" }
            dd { (percent(n.nap)) " (90 % interval " (percent(n.nap_interval.low)) " to " (percent(n.nap_interval.high)) ", n = " (n.n_a) " and " (n.n_b) ")" }
            dt { "Tau-U (less the trend before)" }
            dd { (percent(n.tau_u)) " (p = " (format!("{:.3}", n.tau_u_p)) ", n = " (n.n_a) " and " (n.n_b) "; no interval is published)" }
            @if let Some(l) = &c.level { dt { "Step of the level" } dd { (change(l)) } }
            @if let Some(t) = &c.trend { dt { "Change of the trend, a day" } dd { (change(t)) } }
        }
    }
}
