//! Markup of Days: a calendar and small charts, then the figures, folded.

use super::calendar::calendar;
use super::demand::{demand, readiness};
use super::minis::{joined_of, minis, weekday};
use crate::chart::{Axis, Bar, Lines, Point, Series, bars, lines, nice_axis};
use crate::page::AnimalPage;
use crate::pages::talk::write_about_chart;
use crate::rich;
use maud::{Markup, html};
use sayso_advisor::Estimate;
use sayso_advisor::days::{DayRow, Days, Week};
use sayso_advisor::demand::Demand;
use sayso_advisor::estimate::TOO_EARLY;
use sayso_advisor::readiness::Ready;
use sayso_advisor::rhythm::{Bin, Rhythm};
use sayso_model::{DaysChart, TalkAbout};
use sayso_people::Capability;
use sayso_wording::evidence::waited;
use sayso_wording::figures::finding;
use sayso_wording::{Locale, say};
use std::cmp::Ordering;

/// What was worked out for the page.
pub struct Found {
    pub days: Days,
    pub demand: Demand,
    pub ready: Option<Ready>,
}

/// The page below its heading.
pub fn page(page: &AnimalPage, found: &Found, length: u16, lengths: &[u16]) -> Markup {
    let (locale, days) = (&page.locale, &found.days);
    let log = html! { a href=(format!("/a/{}/log", page.id)) { (say!(locale, days::all_events)) } };
    html! {
        div.row role="group" aria-label=(say!(locale, days::how_many)) {
            @for l in lengths {
                a.button href=(format!("?days={l}")) aria-current=[(*l == length).then_some("true")] { (say!(locale, days::length, n = *l)) }
            }
        }
        (calendar(page, &days.days))
        (minis(locale, days))
        (folded(&say!(locale, days::figures_hours), &chart(page, DaysChart::Hours, &hours(locale, &days.rhythm))))
        (folded(&say!(locale, days::figures_weekdays), &chart(page, DaysChart::Weekdays, &weekdays(locale, &days.rhythm))))
        (folded(&say!(locale, days::weeks_by_week), &html! {
            (chart(page, DaysChart::Joining, &joining(locale, &days.weeks)))
            (chart(page, DaysChart::Delay, &delay(locale, &days.weeks)))
        }))
        (folded(&say!(locale, days::when_invited), &html! { @if let Some(waited) = waited(locale, &days.waiting) { p { (waited) } } }))
        (folded(&say!(locale, days::answers), &answers(locale, days)))
        (folded(&say!(locale, days::day_by_day), &table(page, &days.days)))
        @if let Some(ready) = &found.ready { (folded(&say!(locale, days::readiness), &readiness(page, ready))) }
        (folded(&say!(locale, days::demand), &demand(page, &found.demand)))
        p { a.link href=(format!("/a/{}/patterns", page.id)) { (say!(locale, days::patterns)) } }
        p.quiet {
            @if page.may(Capability::SeeLog) { (rich!(locale, days::zone, zone = page.zone.name(), link = log)) }
            @else { (say!(locale, days::zone_only, zone = page.zone.name())) }
        }
    }
}

/// A chart in the place to which a note about it leads back; for a coach, with the way to write about it.
fn chart(page: &AnimalPage, chart: DaysChart, drawn: &Markup) -> Markup {
    html! {
        @if !drawn.0.is_empty() {
            div id=(format!("chart-{}", chart.name())) { (drawn) (write_about_chart(page, &TalkAbout::DaysChart { chart })) }
        }
    }
}

fn folded(summary: &str, body: &Markup) -> Markup {
    html! { @if !body.0.is_empty() { details data-test="details" { summary { (summary) } (body) } } }
}

fn hours(locale: &Locale, rhythm: &Rhythm) -> Markup {
    let named = |at: u8| locale.hour(at);
    html! {
        (bins(locale, [say!(locale, days::figures_hours), say!(locale, days::hour_axis)], rhythm, &rhythm.hours, &named, |at| at.is_multiple_of(6)))
        p.quiet { (say!(locale, days::asleep)) }
    }
}

fn weekdays(locale: &Locale, rhythm: &Rhythm) -> Markup {
    let named = |at: u8| weekday(locale, at);
    bins(
        locale,
        [say!(locale, days::figures_weekdays), say!(locale, days::weekday_axis)],
        rhythm,
        &rhythm.weekdays,
        &named,
        |_| true,
    )
}

fn bins(
    locale: &Locale,
    [title, axis]: [String; 2],
    rhythm: &Rhythm,
    all: &[Bin],
    named: &dyn Fn(u8) -> String,
    ticked: impl Fn(u8) -> bool,
) -> Markup {
    let drawn: Vec<Bar> = all
        .iter()
        .map(|b| Bar {
            tick: if ticked(b.at) { named(b.at) } else { String::new() },
            name: named(b.at),
            value: b.per_day.value.unwrap_or(0.0),
            interval: b.per_day.low.zip(b.per_day.high).filter(|_| b.presses >= TOO_EARLY),
            n: Some(b.presses),
        })
        .collect();
    let n: usize = all.iter().map(|b| b.presses).sum();
    let most = all
        .iter()
        .filter(|b| b.presses >= TOO_EARLY)
        .max_by(|a, b| a.per_day.value.partial_cmp(&b.per_day.value).unwrap_or(Ordering::Equal));
    let mut told = vec![match most {
        Some(b) => say!(locale, days::most, which = named(b.at), rate = finding(locale, &b.per_day), n = n),
        None if n == 0 => say!(locale, days::no_presses),
        None => say!(locale, days::too_few_presses, n = n),
    }];
    for b in rhythm.outstanding(all) {
        if let (Some(ratio), Some(p)) = (b.ratio, b.adjusted_p) {
            let (ratio, p) = (locale.number(ratio, 1), locale.p(p));
            told.push(say!(locale, days::outstanding, which = named(b.at), ratio = ratio, p = p));
        }
    }
    let told = told.join(" ");
    html! {
        (bars(locale, &title, &told, &axis, &say!(locale, days::presses_a_day), &drawn))
        p { (told) }
        @if let (Some(bursts), Some(times), true) = (rhythm.bursts(), rhythm.dispersion, n >= TOO_EARLY) {
            p.quiet { (say!(locale, days::trust, bursts = if bursts { "yes" } else { "no" }, times = locale.number(times, 1))) }
        }
    }
}

/// Weeks with as many observations as say something.
#[allow(clippy::cast_precision_loss)]
fn weekly(weeks: &[Week], value: impl Fn(&Week) -> Estimate) -> Vec<Point> {
    let last = weeks.len() as f64;
    let point = |(i, w): (usize, &Week)| {
        let e = value(w);
        Some((i as f64 + 1.0 - last, e.value.filter(|_| e.n >= TOO_EARLY)?, e.low.zip(e.high)))
    };
    weeks.iter().enumerate().filter_map(point).collect()
}

#[allow(clippy::cast_precision_loss)]
fn by_week(locale: &Locale, title: String, told: String, y: Axis, points: Vec<Point>, weeks: usize) -> Markup {
    html! {
        (lines(locale, &Lines {
            title,
            told: told.clone(),
            x: nice_axis(locale, &say!(locale, days::weeks_axis), 1.0 - weeks as f64, 0.0),
            y,
            series: vec![Series { points, dots: true, ..Series::default() }],
            level: None,
            mark: None,
            band: say!(locale, chart::interval),
        }))
        p { (told) }
    }
}

fn joining(locale: &Locale, weeks: &[Week]) -> Markup {
    let Some(last) = weeks.last() else { return html! {} };
    let told = say!(locale, days::joined_told, share = finding(locale, &last.joining));
    let (title, y) = (say!(locale, days::sessions_joined), Axis::share(locale, &say!(locale, days::joined)));
    by_week(locale, title, told, y, weekly(weeks, |w| w.joining), weeks.len())
}

fn delay(locale: &Locale, weeks: &[Week]) -> Markup {
    let Some(last) = weeks.last() else { return html! {} };
    let points = weekly(weeks, |w| w.delay);
    let top = points.iter().map(|p| p.2.map_or(p.1, |b| b.1)).fold(1.0, f64::max);
    let told = say!(locale, days::delay_told, seconds = finding(locale, &last.delay));
    let y = nice_axis(locale, &say!(locale, days::seconds), 0.0, top);
    by_week(locale, say!(locale, days::delay), told, y, points, weeks.len())
}

fn answers(locale: &Locale, days: &Days) -> Markup {
    let a = days.answers;
    let n = a.given + a.partly + a.declined + a.alternative + a.missed;
    let counts = [
        ("given", a.given),
        ("partly", a.partly),
        ("declined", a.declined),
        ("alternative", a.alternative),
        ("missed", a.missed),
    ];
    html! {
        @if n == 0 { p.quiet { (say!(locale, days::no_presses)) } }
        @else { dl.facts {
            @for (answer, k) in counts {
                dt { (say!(locale, days::answer, answer = answer)) }
                dd { (finding(locale, &Estimate::share(k, n))) }
            }
        } }
    }
}

fn table(page: &AnimalPage, rows: &[DayRow]) -> Markup {
    let (locale, words, today) = (&page.locale, page.story.words(), page.now.day(&page.zone));
    let name = |id| words.get(id).map_or_else(|| say!(locale, events::word_without_card), |w| w.says.to_string());
    html! {
        div.scroll tabindex="0" role="region" aria-label=(say!(locale, days::day_by_day)) {
            table {
                thead { tr {
                    th scope="col" { (say!(locale, days::day)) }
                    th.num scope="col" { (say!(locale, days::joined)) }
                    th scope="col" { (say!(locale, days::shown)) }
                    th scope="col" { (say!(locale, days::pressed)) }
                } }
                tbody {
                    @for r in rows.iter().rev().filter(|r| r.sessions + r.all_showings() + r.all_presses() > 0) {
                        tr {
                            th scope="row" { (locale.day_near(r.day, today)) }
                            td.num { (joined_of(locale, r.joined, r.sessions)) }
                            td { @for (w, n) in &r.showings { span.pair { (name(w)) " " (n) } " " } }
                            td { @for (w, n) in &r.presses { span.pair { (name(w)) " " (n) } " " } }
                        }
                    }
                }
            }
        }
    }
}
