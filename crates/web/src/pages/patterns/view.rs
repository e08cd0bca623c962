//! Markup of Patterns.

use crate::chart::{Axis, Bar, Panel, PhasePoint, Phases, Whisker, bars, nice_axis, phases, whiskers, whiskers_of};
use crate::page::AnimalPage;
use crate::rich;
use maud::{Markup, html};
use sayso_advisor::estimate::TOO_EARLY;
use sayso_advisor::patterns::{Hours, LOOKS_BACK_DAYS, Order, Pace, Patterns, PhaseLine, Slips};
use sayso_wording::figures::{self, finding};
use sayso_wording::{Locale, patterns as told, say};

/// The page below its heading.
pub fn page(page: &AnimalPage, found: &Patterns) -> Markup {
    let locale = &page.locale;
    let days = html! { a href=(format!("/a/{}/days", page.id)) { (say!(locale, patterns::days)) } };
    html! {
        p { (rich!(locale, patterns::intro, name = &found.name, link = days, days = LOOKS_BACK_DAYS)) }
        (pace(locale, &found.name, &found.pace))
        (lines(page, &found.name, &found.lines))
        (order(page, &found.name, &found.order))
        (slips(page, &found.name, &found.slips))
        (hours(locale, &found.name, &found.hours))
        p.quiet { a href="/methods" { (say!(locale, patterns::how_computed)) } }
    }
}

fn says(locale: &Locale, p: &Pace) -> String {
    if p.word.is_none() { say!(locale, patterns::all_words) } else { p.says.clone() }
}

#[allow(clippy::cast_precision_loss)]
fn pace(locale: &Locale, name: &str, all: &[Pace]) -> Markup {
    let rows: Vec<Whisker> = all
        .iter()
        .filter(|p| p.factor.value.is_some())
        .map(|p| Whisker { n: p.presses, ..Whisker::of(says(locale, p), &p.factor) })
        .collect();
    let most = rows.iter().filter_map(|r| r.interval.map(|i| i.1).or(r.value)).fold(1.5, f64::max).min(4.0);
    html! {
        h2 { (say!(locale, patterns::pace)) }
        @if all.is_empty() { p { (say!(locale, patterns::no_press)) } }
        @if let Some(together) = all.first() { (weeks(locale, together)) }
        @if !rows.is_empty() {
            (whiskers_of(
                locale,
                &say!(locale, patterns::factor),
                &say!(locale, patterns::factor_told),
                &nice_axis(locale, &say!(locale, patterns::times_a_week), 0.0, most),
                Some(1.0),
                (&say!(locale, patterns::factor_interval), &clipped(rows, most)),
            ))
        }
        ul { @for p in all { li { (told::pace(locale, name, p)) } } }
        @if !all.is_empty() { p.quiet { (say!(locale, patterns::pace_does_not_show)) } }
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
fn weeks(locale: &Locale, together: &Pace) -> Markup {
    let last = together.by_week.len();
    let drawn: Vec<Bar> = together
        .by_week
        .iter()
        .enumerate()
        .map(|(i, n)| {
            let ago = last - 1 - i;
            let name = say!(locale, patterns::week_ago, ago = ago);
            Bar { tick: locale.number(-(ago as f64), 0), name, value: *n as f64, interval: None, n: None }
        })
        .collect();
    let by_week = say!(locale, patterns::by_week_told, n = together.presses, days = together.days);
    bars(
        locale,
        &say!(locale, patterns::by_week),
        &by_week,
        &say!(locale, patterns::weeks_axis),
        &say!(locale, patterns::presses),
        &drawn,
    )
}

fn lines(page: &AnimalPage, name: &str, all: &[PhaseLine]) -> Markup {
    let locale = &page.locale;
    html! {
        h2 { (say!(locale, patterns::lines)) }
        @if all.is_empty() { p { (say!(locale, patterns::no_lines)) } }
        @for line in all {
            (drawn(locale, line))
            p { (told::line(locale, name, line)) }
        }
        @if !all.is_empty() {
            p.quiet { (say!(locale, patterns::lines_do_not_show)) " " a href=(format!("/a/{}/designs", page.id)) { (say!(locale, patterns::trials)) } }
        }
    }
}

#[allow(clippy::cast_precision_loss)]
fn drawn(locale: &Locale, line: &PhaseLine) -> Markup {
    let (before, after) = (say!(locale, patterns::before), say!(locale, patterns::after));
    let points: Vec<PhasePoint> = line
        .points
        .iter()
        .map(|(day, n)| PhasePoint {
            x: f64::from(*day),
            y: Some(*n as f64),
            n: *n,
            changed: *day > 0,
            phase: if *day < 0 { before.clone() } else { after.clone() },
        })
        .collect();
    let from = line.points.first().map_or(-1.0, |p| f64::from(p.0));
    let to = line.points.last().map_or(1.0, |p| f64::from(p.0));
    let most = points.iter().filter_map(|p| p.y).fold(1.0, f64::max);
    let in_words = say!(
        locale,
        patterns::line_told,
        what = told::changes(locale, &line.what),
        before = figures::told(locale, &line.before),
        after = figures::told(locale, &line.after)
    );
    phases(
        locale,
        &Phases {
            title: say!(locale, patterns::line_title, day = locale.date(line.day)),
            told: in_words,
            x: nice_axis(locale, &say!(locale, patterns::days_from_change), from, to),
            y: nice_axis(locale, &say!(locale, patterns::presses_a_day), 0.0, most),
            points,
            panels: vec![Panel { from, name: before.clone() }, Panel { from: 0.0, name: after.clone() }],
        },
    )
}

fn board_link(page: &AnimalPage) -> Markup {
    html! { p { a href=(format!("/a/{}/words", page.id)) { (say!(&page.locale, patterns::draw_board)) } } }
}

fn order(page: &AnimalPage, name: &str, order: &Order) -> Markup {
    let locale = &page.locale;
    let pairs: Vec<_> = order.pairs.iter().filter(|p| p.times >= TOO_EARLY as u64).collect();
    html! {
        h2 { (say!(locale, patterns::order)) }
        p { (told::order(locale, name, order)) }
        @match order.since {
            None => (board_link(page)),
            Some(_) if order.presses == 0 => {},
            Some(since) => p.quiet { (say!(locale, patterns::order_since, n = order.presses, words = order.words, day = locale.date(since.day(&page.zone)))) },
        }
        @if !pairs.is_empty() {
            div.scroll tabindex="0" role="region" aria-label=(say!(locale, patterns::order)) {
                table {
                    caption { (say!(locale, patterns::pairs_caption)) }
                    thead { tr {
                        th scope="col" { (say!(locale, patterns::first)) }
                        th scope="col" { (say!(locale, patterns::next)) }
                        th.num scope="col" { (say!(locale, patterns::times)) }
                        th.num scope="col" { (say!(locale, patterns::expected)) }
                        th.num scope="col" { (say!(locale, patterns::adjusted_p)) }
                        th scope="col" { (say!(locale, patterns::beside)) }
                    } }
                    tbody {
                        @for p in pairs {
                            tr {
                                th scope="row" { (p.first) }
                                td { (p.second) }
                                td.num { (p.times) }
                                td.num { (locale.number(p.expected, 1)) }
                                td.num { (locale.p(p.adjusted_p)) }
                                td { (say!(locale, patterns::beside_told, beside = if p.side_by_side { "yes" } else { "no" })) }
                            }
                        }
                    }
                }
            }
        }
        p.quiet { (say!(locale, patterns::order_does_not_show)) }
    }
}

fn slips(page: &AnimalPage, name: &str, slips: &Slips) -> Markup {
    let locale = &page.locale;
    let rows: Vec<Whisker> =
        slips.places.iter().filter(|p| p.share.n >= TOO_EARLY).map(|p| Whisker::of(p.says.clone(), &p.share)).collect();
    html! {
        h2 { (say!(locale, patterns::slips)) }
        p { (told::slips(locale, name, slips)) }
        @if slips.since.is_none() { (board_link(page)) }
        @if !rows.is_empty() {
            (whiskers(
                locale,
                &say!(locale, patterns::by_button),
                &say!(locale, patterns::by_button_told),
                &Axis::share(locale, &say!(locale, patterns::share_of_presses)),
                None,
                &rows,
            ))
        }
        p { (say!(locale, patterns::judged, share = finding(locale, &slips.judged))) }
        p.quiet { (say!(locale, patterns::slips_do_not_show)) }
    }
}

fn hours(locale: &Locale, name: &str, hours: &Hours) -> Markup {
    html! {
        h2 { (say!(locale, patterns::hours)) }
        p { (told::hours(locale, name, hours)) }
        @for at in &hours.at {
            h3 { (locale.hour(at.hour)) }
            p { (say!(locale, patterns::at_hour)) }
            ul { @for (what, share) in &at.things { li { (say!(locale, patterns::named_figure, what = what, figure = finding(locale, share))) } } }
        }
        p.quiet { (say!(locale, patterns::hours_do_not_show)) }
    }
}
