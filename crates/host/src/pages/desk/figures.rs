//! Small figures of an animal beside each other: eight weeks as bars with their scale, and the latest seven days as a number.

use maud::{Markup, html};
use sayso_advisor::Estimate;
use sayso_advisor::desk::{Line, WEEKS, WeekLine};
use sayso_model::{Day, Moment, WordId};
use sayso_web::chart::{spark_of, tallest};
use sayso_wording::{Locale, say};

/// Days of a week.
const DAYS: usize = 7;

/// One of them.
struct Figure {
    /// What is counted.
    what: String,
    counts: [usize; WEEKS],
    /// Of how many each is, where it is a part of something.
    of: Option<[usize; WEEKS]>,
    /// The latest seven days in words.
    value: String,
}

/// What the figures of every animal are of, in their order; those of its words follow.
fn of_all(l: &Locale) -> [String; 3] {
    [say!(l, desk_page::presses), say!(l, desk_page::joined), say!(l, desk_page::days_written)]
}

/// The same once above the rows, where these stand in columns. Each figure says it by itself too.
pub fn heads(l: &Locale) -> Markup {
    html! { div.heads aria-hidden="true" { div.tinies { @for what in of_all(l) { span.tiny { (what) } } } } }
}

/// Own presses, sessions joined, days with records, and own presses of so many words, a week.
pub fn figures(l: &Locale, line: &Line, now: Moment, says: &dyn Fn(WordId) -> String, words: usize) -> Markup {
    let today = now.day(&line.zone);
    let weeks = |count: fn(&WeekLine) -> usize| up_to(line.weeks.each_ref().map(count), line, today);
    let presses = |what: String, counts: [usize; WEEKS]| {
        let value = say!(l, desk_page::in_seven, count = latest(&counts));
        Figure { what, counts, of: None, value }
    };
    let (joined, sessions, days) = (weeks(|w| w.joined), weeks(|w| w.sessions), weeks(|w| w.days));
    let [of_presses, of_sessions, of_days] = of_all(l);
    let mut all = vec![
        presses(of_presses, weeks(|w| w.presses)),
        Figure {
            what: of_sessions,
            value: share(l, latest(&joined), latest(&sessions)),
            counts: joined,
            of: Some(sessions),
        },
        Figure {
            what: of_days,
            value: say!(l, desk_page::of, part = latest(&days), whole = DAYS),
            counts: days,
            of: Some([DAYS; WEEKS]),
        },
    ];
    all.extend(line.words.iter().take(words).map(|w| presses(says(w.word), up_to(w.weeks, line, today))));
    html! { div.tinies data-test="figures" { @for one in &all { (figure(l, one)) } } }
}

/// How the small charts are read, once on a page.
pub fn key(l: &Locale) -> Markup {
    html! {
        details data-test="key" {
            summary { (say!(l, desk_page::key)) }
            p { (say!(l, desk_page::key_says, weeks = WEEKS)) }
        }
    }
}

fn latest(counts: &[usize; WEEKS]) -> usize {
    counts.last().copied().unwrap_or_default()
}

/// So many of so many, with the interval of the share as soon as it says something: one that holds however often it is read, as wherever
/// sessions joined are told.
pub fn share(l: &Locale, part: usize, whole: usize) -> String {
    let share = Estimate::share_any_time(part, whole);
    match share.low.zip(share.high) {
        _ if whole == 0 => say!(l, desk_page::of_none),
        Some((low, high)) if !share.too_early() => {
            let (low, high) = (l.percent(low), l.percent(high));
            say!(l, desk_page::of_within, part = part, whole = whole, low = low, high = high)
        }
        _ => say!(l, desk_page::of, part = part, whole = whole),
    }
}

fn figure(l: &Locale, one: &Figure) -> Markup {
    let wholes = one.of.as_ref().map_or(&[][..], |of| of);
    let told: Vec<String> = match one.of {
        Some(of) => one.counts.iter().zip(of).map(|(k, n)| say!(l, desk_page::of, part = *k, whole = n)).collect(),
        None => one.counts.iter().map(ToString::to_string).collect(),
    };
    let says = say!(l, desk_page::weeks, what = &one.what, counts = told.join(", "));
    html! {
        figure.tiny {
            figcaption { span.what title=(one.what) { (one.what) } " " span.value data-test="value" { (one.value) } }
            div.drawn {
                (spark_of(&one.counts, wholes, &says))
                // From the foot of the bars to the top of the tallest.
                span.scale data-test="scale" aria-hidden="true" { span { (tallest(&one.counts, wholes)) } span { "0" } }
            }
        }
    }
}

/// Weeks up to today: a home that writes no more has nothing in the latest.
fn up_to(counts: [usize; WEEKS], line: &Line, today: Day) -> [usize; WEEKS] {
    let late = usize::try_from(today.days_since(line.at.day(&line.zone))).unwrap_or(0) / 7;
    std::array::from_fn(|week| counts.get(week + late).copied().unwrap_or(0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn weeks_move_on_while_nothing_is_written() {
        let story = sayso_model::Story::default();
        let animal = sayso_model::AnimalId(uuid::Uuid::nil());
        let line = Line::of(&sayso_advisor::Case::new(&story, animal, Moment::clamped(0)));
        let written = line.at.day(&line.zone);
        let at = |days| up_to([1, 2, 3, 4, 5, 6, 7, 8], &line, written.plus(days));
        assert_eq!(at(0), [1, 2, 3, 4, 5, 6, 7, 8]);
        assert_eq!(at(6), [1, 2, 3, 4, 5, 6, 7, 8]);
        assert_eq!(at(15), [3, 4, 5, 6, 7, 8, 0, 0]);
        assert_eq!(at(400), [0; WEEKS]);
    }

    #[test]
    fn a_share_carries_its_count_and_its_interval_once_it_has_one() {
        let l = &Locale::ENGLISH;
        assert_eq!((share(l, 0, 0), share(l, 2, 3)), ("none".to_owned(), "2 of 3".to_owned()));
        let told = share(l, 6, 10);
        assert!(told.starts_with("6 of 10 (") && told.contains(" to "), "{told}");
    }
}
