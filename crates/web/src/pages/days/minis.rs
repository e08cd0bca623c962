//! Small charts side by side, each with what it comes to in words.

use crate::chart::small_bars;
use maud::{Markup, html};
use sayso_advisor::days::{DayRow, Days};
use sayso_advisor::rhythm::Bin;
use sayso_model::Day;
use sayso_wording::{Locale, say};

/// More days than these are drawn week by week.
const MOST_BARS: usize = 70;

/// Sessions joined, of those there were.
pub fn joined_of(locale: &Locale, joined: usize, sessions: usize) -> String {
    match sessions {
        0 => say!(locale, days::no_sessions),
        _ => say!(locale, days::told_joined, joined = joined, sessions = sessions),
    }
}

/// All of them.
#[allow(clippy::cast_precision_loss)]
pub fn minis(locale: &Locale, days: &Days) -> Markup {
    let rows = &days.days;
    let (presses, showings): (usize, usize) =
        (rows.iter().map(DayRow::all_presses).sum(), rows.iter().map(DayRow::all_showings).sum());
    let without = rows.iter().filter(|r| r.all_showings() == 0).count();
    let (sessions, joined): (usize, usize) =
        (rows.iter().map(|r| r.sessions).sum(), rows.iter().map(|r| r.joined).sum());
    let told_joined = joined_of(locale, joined, sessions);
    let delays: Vec<Option<f64>> =
        days.weeks.iter().map(|w| w.delay.value.filter(|_| w.delay.n >= sayso_advisor::estimate::TOO_EARLY)).collect();
    let delay =
        days.weeks.last().map(|w| w.delay).filter(|d| d.n >= sayso_advisor::estimate::TOO_EARLY).and_then(|d| d.value);
    let told_delay = match delay {
        Some(s) => {
            say!(locale, days::told_delay, seconds = locale.seconds(s))
        }
        None => say!(locale, days::too_few),
    };
    let joining: Vec<Option<f64>> = days.weeks.iter().map(|w| w.joining.value).collect();
    let bins = |all: &[Bin]| -> Vec<Option<f64>> { all.iter().map(|b| b.per_day.value).collect() };
    let stands_out = |all: &[Bin], named: &dyn Fn(u8) -> String| {
        if presses < sayso_advisor::estimate::TOO_EARLY {
            return say!(locale, days::too_few);
        }
        let found = days.rhythm.outstanding(all);
        // A quiet hour is one to note as well, but not as a busy one.
        let side = |more: bool| -> Vec<String> {
            found.iter().filter(|b| b.ratio.is_some_and(|r| (r > 1.0) == more)).map(|b| named(b.at)).collect()
        };
        let (more, fewer) = (side(true), side(false));
        let told = [
            (!more.is_empty()).then(|| say!(locale, days::stands_out, which = locale.and(&more))),
            (!fewer.is_empty()).then(|| say!(locale, days::quiet, which = locale.and(&fewer))),
        ];
        let told: Vec<String> = told.into_iter().flatten().collect();
        if told.is_empty() { say!(locale, days::none_stands_out) } else { locale.apart(&told) }
    };
    let rhythm = &days.rhythm;
    html! {
        section.minis aria-label=(say!(locale, days::side_by_side)) data-test="minis" {
            (mini(&say!(locale, days::mini_presses), &counts(rows, DayRow::all_presses), None,
                &say!(locale, days::told_presses, n = presses, days = rows.len())))
            (mini(&say!(locale, days::mini_showings), &counts(rows, DayRow::all_showings), None,
                &say!(locale, days::told_showings, n = showings, days = rows.len(), without = without)))
            (mini(&say!(locale, days::mini_joined), &joining, Some(1.0), &told_joined))
            (mini(&say!(locale, days::mini_delay), &delays, None, &told_delay))
            (mini(&say!(locale, days::mini_hours), &bins(&rhythm.hours), None, &stands_out(&rhythm.hours, &|h| locale.hour(h))))
            (mini(&say!(locale, days::mini_weekdays), &bins(&rhythm.weekdays), None, &stands_out(&rhythm.weekdays, &|d| weekday(locale, d))))
        }
    }
}

/// A day of the week, from Monday on.
pub fn weekday(locale: &Locale, at: u8) -> String {
    // The first of these days was a Thursday (1 January 1970).
    locale.weekday(Day::EPOCH.plus(4 + i32::from(at)))
}

/// By day, or by week from the last day back where there are many.
#[allow(clippy::cast_precision_loss)]
fn counts(rows: &[DayRow], value: impl Fn(&DayRow) -> usize) -> Vec<Option<f64>> {
    if rows.len() <= MOST_BARS {
        return rows.iter().map(|r| Some(value(r) as f64)).collect();
    }
    rows.rchunks(7).rev().map(|week| Some(week.iter().map(&value).sum::<usize>() as f64)).collect()
}

fn mini(title: &str, values: &[Option<f64>], top: Option<f64>, told: &str) -> Markup {
    html! {
        figure.mini {
            figcaption { (title) }
            (small_bars(values, top))
            p { (told) }
        }
    }
}
