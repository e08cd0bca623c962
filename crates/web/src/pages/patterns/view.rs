//! Markup of Patterns.

use crate::chart::{Bar, Panel, PhasePoint, Phases, Whisker, bars, nice_axis, phases, whiskers};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::patterns::{
    HOURS_DO_NOT_SHOW, Hours, LINES_DO_NOT_SHOW, LOOKS_BACK, ORDER_DOES_NOT_SHOW, Order, PACE_DOES_NOT_SHOW, Pace,
    Patterns, PhaseLine, SLIPS_DO_NOT_SHOW, Slips,
};

/// The page below its heading.
pub fn page(page: &AnimalPage, found: &Patterns) -> Markup {
    html! {
        p { "What shows in " (found.name) "\u{2019}s own presses and choices, and what it does not show. " a href=(format!("/l/{}/days", page.id)) { "Days" } " tells what happened when. " (LOOKS_BACK) }
        (pace(&found.pace))
        (lines(page, &found.lines))
        (order(page, &found.order))
        (slips(page, &found.slips))
        (hours(&found.hours))
        p.quiet { a href="/methods" { "How these figures are computed" } "." }
    }
}

#[allow(clippy::cast_precision_loss)]
fn pace(all: &[Pace]) -> Markup {
    let rows: Vec<Whisker> = all
        .iter()
        .filter(|p| p.factor.value.is_some())
        .map(|p| Whisker {
            name: p.says.clone(),
            value: p.factor.value,
            interval: p.factor.low.zip(p.factor.high),
            n: p.presses,
        })
        .collect();
    let most = rows.iter().filter_map(|r| r.interval.map(|i| i.1).or(r.value)).fold(1.5, f64::max).min(4.0);
    html! {
        h2 { "Do presses grow or fade?" }
        @if all.is_empty() { p { "No own press yet (n = 0)." } }
        @if let Some(together) = all.first() {
            (weeks(together))
        }
        @if !rows.is_empty() {
            (whiskers("Factor a week", "Each dot is the factor by which presses multiply a week, with its 90 % interval; the line is no change.", &nice_axis("times a week", 0.0, most), Some(1.0), &clipped(rows, most)))
        }
        ul { @for p in all { li { (p.sentence) } } }
        @if !all.is_empty() { p.quiet { (PACE_DOES_NOT_SHOW) } }
    }
}

/// Intervals that run out of the picture end at its edge; the table and the sentences tell them in full.
fn clipped(rows: Vec<Whisker>, most: f64) -> Vec<Whisker> {
    rows.into_iter()
        .filter(|r| r.value.is_some_and(|v| v <= most))
        .map(|r| Whisker { interval: r.interval.map(|(low, high)| (low, high.min(most))), ..r })
        .collect()
}

#[allow(clippy::cast_precision_loss)]
fn weeks(together: &Pace) -> Markup {
    let last = together.by_week.len();
    let drawn: Vec<Bar> = together
        .by_week
        .iter()
        .enumerate()
        .map(|(i, n)| {
            let ago = last - 1 - i;
            let name = if ago == 0 { "the last seven days".to_owned() } else { format!("{ago} weeks before") };
            Bar { tick: format!("\u{2212}{ago}"), name, value: *n as f64, interval: None, n: None }
        })
        .collect();
    let told = format!(
        "{} own presses in {} days, by week up to today; the first week may be cut short.",
        together.presses, together.days
    );
    html! { (bars("Own presses by week", &told, "weeks before now", "presses", &drawn)) }
}

fn lines(page: &AnimalPage, all: &[PhaseLine]) -> Markup {
    html! {
        h2 { "Before and after a change" }
        @if all.is_empty() {
            p { "No change with at least five days on both sides yet: buttons moved, a word or a rule that came (n = 0)." }
        }
        @for line in all {
            (drawn(line))
            p { (line.sentence) }
        }
        @if !all.is_empty() {
            p.quiet { (LINES_DO_NOT_SHOW) " " a href=(format!("/l/{}/designs", page.id)) { "Trials of a change" } "." }
        }
    }
}

#[allow(clippy::cast_precision_loss)]
fn drawn(line: &PhaseLine) -> Markup {
    let name = |day: i32| if day < 0 { "before" } else { "after" };
    let points: Vec<PhasePoint> = line
        .points
        .iter()
        .map(|(day, n)| PhasePoint {
            x: f64::from(*day),
            y: Some(*n as f64),
            n: *n,
            changed: *day > 0,
            phase: name(*day).to_owned(),
        })
        .collect();
    let from = line.points.first().map_or(-1.0, |p| f64::from(p.0));
    let to = line.points.last().map_or(1.0, |p| f64::from(p.0));
    let most = points.iter().filter_map(|p| p.y).fold(1.0, f64::max);
    phases(&Phases {
        title: format!("Own presses a day around {}", line.day),
        told: format!("{}: before {}, after {}.", line.what, line.before, line.after),
        x: nice_axis("days from the change", from, to),
        y: nice_axis("presses a day", 0.0, most),
        points,
        panels: vec![Panel { from, name: "before".into() }, Panel { from: 0.0, name: "after".into() }],
    })
}

fn order(page: &AnimalPage, order: &Order) -> Markup {
    html! {
        h2 { "One word after another" }
        p { (order.sentence) }
        @if order.since.is_none() { p { a href=(format!("/l/{}/words", page.id)) { "Draw the board" } "." } }
        @if let Some(since) = order.since {
            p.quiet { (order.presses) " own presses of " (order.words) " words since " (since.day(&page.zone)) ", when the buttons came to lie where they lie." }
        }
        @if !order.pairs.is_empty() {
            div.scroll tabindex="0" role="region" aria-label="One word after another" {
                table {
                    caption { "Pairs pressed within ten seconds, three times or more, the least expected first" }
                    thead { tr { th scope="col" { "First" } th scope="col" { "Next" } th.num scope="col" { "Times" } th.num scope="col" { "Expected from habits" } th.num scope="col" { "Adjusted p" } th scope="col" { "Side by side" } } }
                    tbody {
                        @for p in &order.pairs {
                            tr {
                                th scope="row" { (p.first) }
                                td { (p.second) }
                                td.num { (p.times) }
                                td.num { (format!("{:.1}", p.expected)) }
                                td.num { (format!("{:.3}", p.adjusted_p)) }
                                td { @if p.side_by_side { "yes: it may be a slip" } @else { "no" } }
                            }
                        }
                    }
                }
            }
        }
        p.quiet { (ORDER_DOES_NOT_SHOW) }
    }
}

fn slips(page: &AnimalPage, slips: &Slips) -> Markup {
    let rows: Vec<Whisker> = slips
        .places
        .iter()
        .map(|p| Whisker {
            name: p.says.clone(),
            value: p.share.value,
            interval: p.share.low.zip(p.share.high),
            n: p.share.n,
        })
        .collect();
    html! {
        h2 { "Presses that look like slips" }
        p { (slips.sentence) }
        @if slips.since.is_none() { p { a href=(format!("/l/{}/words", page.id)) { "Draw the board" } "." } }
        @if !rows.is_empty() {
            (whiskers("Explained by slips, by button", "Each dot is the share of a button\u{2019}s presses that slips explain, with its 95 % interval.", &crate::chart::Axis::share("share of its presses"), None, &rows))
        }
        p { "Taken for a slip by somebody who was there: " (slips.judged) " of the presses somebody judged." }
        p.quiet { (SLIPS_DO_NOT_SHOW) }
    }
}

fn hours(hours: &Hours) -> Markup {
    html! {
        h2 { "Likes by the hour" }
        p { (hours.sentence) }
        @for at in &hours.at {
            h3 { (at.hour) ":00" }
            p { "Chance of being taken rather than a thing of average liking at that hour:" }
            ul { @for (what, share) in &at.things { li { (what) ": " (share) } } }
        }
        p.quiet { (HOURS_DO_NOT_SHOW) }
    }
}
