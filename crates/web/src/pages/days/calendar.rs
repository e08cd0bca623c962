//! A calendar of weeks: each day a cell with what happened, which opens the day's log.

use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::days::DayRow;
use sayso_model::Day;
use sayso_people::Capability;
use sayso_wording::say;

/// Weeks in sight; those before are folded.
const IN_SIGHT: usize = 6;

/// The weeks of these days, the newest first.
pub fn calendar(page: &AnimalPage, rows: &[DayRow]) -> Markup {
    let locale = &page.locale;
    let Some(first) = rows.first() else { return html! {} };
    // Whole weeks from Monday: days outside the time shown stay empty.
    let lead = i32::from(first.day.weekday());
    let monday = first.day.plus(-lead);
    let mut weeks: Vec<(Day, Vec<&DayRow>)> = Vec::new();
    for row in rows {
        let begins = monday.plus(row.day.days_since(monday).div_euclid(7) * 7);
        match weeks.last_mut() {
            Some((day, days)) if *day == begins => days.push(row),
            _ => weeks.push((begins, vec![row])),
        }
    }
    weeks.reverse();
    let (seen, earlier) = weeks.split_at(weeks.len().min(IN_SIGHT));
    html! {
        section data-test="calendar" {
            (table(page, seen, &say!(locale, days::calendar, name = &page.card.name)))
            p.quiet { (say!(locale, days::legend)) }
            @if !earlier.is_empty() {
                details {
                    summary { (say!(locale, days::earlier)) }
                    (table(page, earlier, &say!(locale, days::earlier)))
                }
            }
        }
    }
}

fn table(page: &AnimalPage, weeks: &[(Day, Vec<&DayRow>)], caption: &str) -> Markup {
    let locale = &page.locale;
    let heads = weeks.first().map(|w| w.0);
    html! {
        table.calendar {
            caption { (caption) }
            thead { tr {
                th scope="col" { span.unseen { (say!(locale, days::week)) } }
                @if let Some(monday) = heads { @for i in 0..7 { th scope="col" { (locale.weekday(monday.plus(i))) } } }
            } }
            tbody {
                @for (monday, days) in weeks {
                    tr {
                        th scope="row" { span.unseen { (say!(locale, days::week_of, day = locale.date(*monday))) } }
                        @for i in 0..7 {
                            @let day = monday.plus(i);
                            td { @if let Some(row) = days.iter().find(|r| r.day == day) { (cell(page, row)) } }
                        }
                    }
                }
            }
        }
    }
}

fn cell(page: &AnimalPage, row: &DayRow) -> Markup {
    let (locale, presses) = (&page.locale, row.all_presses());
    let signs = match (row.strong_signs, row.mild_signs) {
        (0, 0) => "none",
        (0, _) => "mild",
        _ => "strong",
    };
    let told = say!(
        locale,
        days::cell,
        day = locale.weekday_date(row.day),
        presses = presses,
        sessions = row.sessions,
        joined = row.joined,
        signs = signs
    );
    let today = (row.day == page.now.day(&page.zone)).then_some("date");
    // Without the log a cell leads nowhere.
    let to = page.may(Capability::SeeLog).then(|| format!("/a/{}/log?day={}", page.id, row.day));
    html! {
        a href=[to] aria-current=[today] {
            // What the eye reads as signs is said in a sentence to those who listen.
            span.unseen { (told) }
            span.date aria-hidden="true" { (row.day.parts().2) }
            span.count aria-hidden="true" { @if presses > 0 { (presses) } @else { "\u{b7}" } }
            span.marks aria-hidden="true" {
                @if row.sessions > 0 { @if row.joined > 0 { "\u{25cf}" } @else { "\u{25cb}" } }
                @match signs { "none" => {}, "mild" => "!", _ => "!!" }
            }
        }
    }
}
