//! Markup of Days.

use crate::chart::{Axis, Bar, Lines, Point, Series, bars, lines, nice_axis, waiting};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::Estimate;
use sayso_advisor::days::{DayRow, Days, Week};
use sayso_advisor::rhythm::{Bin, Rhythm};
use sayso_model::Day;
use sayso_wording::advice::trust;
use std::cmp::Ordering;

/// The page below its heading.
pub fn page(page: &AnimalPage, days: &Days, length: u16, lengths: &[u16]) -> Markup {
    html! {
        div.row role="group" aria-label="How many days" {
            @for l in lengths {
                a.button href=(format!("?days={l}")) aria-current=[(*l == length).then_some("true")] { (l) " days" }
            }
        }
        (rhythm(page, days))
        (exposures(&days.days))
        (presses(&days.days))
        (joining(&days.weeks))
        (delay(&days.weeks))
        (waiting("Time to press when invited", "the invitations of these days that can tell", &days.waiting))
        h2 { "Answers to its own presses" }
        (answers(days))
        h2 { "Day by day" }
        (table(page, &days.days))
        p.quiet { "Days and hours are those of " (page.zone.name()) ". " a href=(format!("/l/{}/log", page.id)) { "All events" } "." }
        p { a href=(format!("/l/{}/patterns", page.id)) { "Patterns" } ": do presses grow or fade, what follows what, slips, likes by the hour." }
    }
}

/// Own presses by hour and by day of the week.
fn rhythm(page: &AnimalPage, days: &Days) -> Markup {
    let l = &page.locale;
    let hour = |b: &Bin| l.hour(u8::try_from(b.at).unwrap_or(0));
    // The first Monday of the calendar and the days after it.
    let weekday = |b: &Bin| l.weekday(Day::EPOCH.plus(4 + i32::try_from(b.at).unwrap_or(0)));
    let n: usize = days.rhythm.hours.iter().map(|h| h.presses).sum();
    html! {
        (bins("Own presses by hour", "hour of the day", &days.rhythm, &days.rhythm.hours, &hour, |b| {
            if b.at % 6 == 0 { b.at.to_string() } else { String::new() }
        }))
        (bins("Own presses by day of the week", "day of the week", &days.rhythm, &days.rhythm.weekdays, &weekday, &weekday))
        @if n > 0 { p.quiet { (trust(&page.locale, days.rhythm.trust())) } }
    }
}

fn bins(
    title: &str,
    axis: &str,
    rhythm: &Rhythm,
    all: &[Bin],
    name: &dyn Fn(&Bin) -> String,
    tick: impl Fn(&Bin) -> String,
) -> Markup {
    let drawn: Vec<Bar> = all
        .iter()
        .map(|b| Bar {
            tick: tick(b),
            name: name(b),
            value: b.per_day.value.unwrap_or(0.0),
            interval: b.per_day.low.zip(b.per_day.high),
            n: Some(b.presses),
        })
        .collect();
    let n: usize = all.iter().map(|b| b.presses).sum();
    let most = all
        .iter()
        .filter(|b| b.presses > 0)
        .max_by(|a, b| a.per_day.value.partial_cmp(&b.per_day.value).unwrap_or(Ordering::Equal));
    let mut told = most.map_or_else(
        || "No own presses in this time (n = 0).".to_owned(),
        |b| format!("{} has the most: {}; {n} own presses in all.", name(b), b.per_day),
    );
    for b in rhythm.outstanding(all) {
        let (ratio, p) = (b.ratio.unwrap_or(f64::NAN), b.adjusted_p.unwrap_or(f64::NAN));
        told.push_str(&format!(" {} stands out: {ratio:.1} times the others (adjusted p {p:.3}).", name(b)));
    }
    html! {
        (bars(title, &told, axis, "presses a day", &drawn))
        p { (told) }
    }
}

fn count_bars(rows: &[DayRow], value: impl Fn(&DayRow) -> usize) -> Vec<Bar> {
    // Name about six days; more would touch on a phone.
    let step = rows.len().div_ceil(6).max(1);
    rows.iter()
        .enumerate()
        .map(|(i, r)| Bar {
            tick: if i % step == 0 { r.day.to_string()[5..].to_owned() } else { String::new() },
            name: r.day.to_string(),
            value: value(r) as f64,
            interval: None,
            n: None,
        })
        .collect()
}

fn exposures(rows: &[DayRow]) -> Markup {
    let total: usize = rows.iter().map(DayRow::all_showings).sum();
    let without = rows.iter().filter(|r| r.all_showings() == 0).count();
    let told = format!("{total} showings in {} days; {without} days without any.", rows.len());
    html! { (bars("Showings", &told, "day", "showings", &count_bars(rows, DayRow::all_showings))) p { (told) } }
}

fn presses(rows: &[DayRow]) -> Markup {
    let total: usize = rows.iter().map(DayRow::all_presses).sum();
    let told = format!("{total} own presses in {} days.", rows.len());
    html! { (bars("Own presses", &told, "day", "presses", &count_bars(rows, DayRow::all_presses))) p { (told) } }
}

#[allow(clippy::cast_precision_loss)]
fn weekly(weeks: &[Week], value: impl Fn(&Week) -> Estimate) -> Vec<Point> {
    let last = weeks.len() as f64;
    weeks
        .iter()
        .enumerate()
        .filter_map(|(i, w)| {
            let e = value(w);
            Some((i as f64 + 1.0 - last, e.value?, e.low.zip(e.high)))
        })
        .collect()
}

#[allow(clippy::cast_precision_loss)]
fn joining(weeks: &[Week]) -> Markup {
    let told =
        weeks.last().map_or_else(String::new, |w| format!("Sessions joined in the last seven days: {}.", w.joining));
    html! {
        (lines(&Lines {
            title: "Sessions joined".into(),
            told: told.clone(),
            x: nice_axis("weeks before now", 1.0 - weeks.len() as f64, 0.0),
            y: Axis::share("joined"),
            series: vec![Series { name: "joined".into(), points: weekly(weeks, |w| w.joining), steps: false, dots: true }],
            level: None,
            band: "95 % interval".into(),
        }))
        p { (told) }
    }
}

#[allow(clippy::cast_precision_loss)]
fn delay(weeks: &[Week]) -> Markup {
    let points = weekly(weeks, |w| w.delay);
    let top = points.iter().map(|p| p.2.map_or(p.1, |b| b.1)).fold(1.0, f64::max);
    let told = weeks
        .last()
        .map_or_else(String::new, |w| format!("Press to delivery, middle value of the last seven days: {}.", w.delay));
    html! {
        (lines(&Lines {
            title: "From press to delivery".into(),
            told: told.clone(),
            x: nice_axis("weeks before now", 1.0 - weeks.len() as f64, 0.0),
            y: nice_axis("seconds", 0.0, top),
            series: vec![Series { name: "delay".into(), points, steps: false, dots: true }],
            level: None,
            band: "95 % interval".into(),
        }))
        p { (told) }
    }
}

fn answers(days: &Days) -> Markup {
    let a = days.answers;
    let n = a.given + a.partly + a.declined + a.alternative + a.missed;
    html! {
        dl.facts {
            dt { "Given" } dd { (Estimate::share(a.given, n)) }
            dt { "Partly" } dd { (Estimate::share(a.partly, n)) }
            dt { "Not now" } dd { (Estimate::share(a.declined, n)) }
            dt { "Another thing offered" } dd { (Estimate::share(a.alternative, n)) }
            dt { "Missed, or no answer recorded" } dd { (Estimate::share(a.missed, n)) }
        }
    }
}

fn table(page: &AnimalPage, rows: &[DayRow]) -> Markup {
    let words = page.story.words();
    let name = |id| words.get(id).map_or("(no card)", |w| w.says.as_str());
    html! {
        div.scroll tabindex="0" role="region" aria-label="Day by day" {
            table {
                thead { tr { th scope="col" { "Day" } th.num scope="col" { "Joined" } th scope="col" { "Shown" } th scope="col" { "Pressed by itself" } } }
                tbody {
                    @for r in rows.iter().rev().filter(|r| r.sessions + r.all_showings() + r.all_presses() > 0) {
                        tr {
                            th scope="row" { (r.day) }
                            td.num { (r.joined) " of " (r.sessions) }
                            td { @for (w, n) in &r.showings { span.pair { (name(w)) " " (n) } " " } }
                            td { @for (w, n) in &r.presses { span.pair { (name(w)) " " (n) } " " } }
                        }
                    }
                }
            }
        }
    }
}
