//! A plan for some days: its fields, what they begin with, and what was typed into them. A coach's and the home's own have the same.

use super::first;
use crate::fields::{day, number, select};
use crate::page::Page;
use crate::pages::designs::beside;
use crate::typed::Typed;
use maud::{Markup, html};
use sayso_advisor::{Act, Case};
use sayso_model::talks::invites_closing;
use sayso_model::{AnimalCard, Day, PlanLine, PlanWay, WordCard, WordId};
use sayso_wording::talk::way_name;
use sayso_wording::{Locale, say, words};

/// Lines that the form has room for.
pub const LINES: usize = 3;
/// Farthest last day, in days from today.
pub const MOST_DAYS: i32 = 56;
/// The usual last day, and what a line begins with.
const USUAL: (i32, u8, u8) = (6, 3, 3);
/// Names of the fields.
pub const FIELDS: [&str; 13] = [
    "last_day",
    "word_1",
    "way_1",
    "minutes_1",
    "times_1",
    "word_2",
    "way_2",
    "minutes_2",
    "times_2",
    "word_3",
    "way_3",
    "minutes_3",
    "times_3",
];

/// Words of the animal, and none; those that end sessions last, and marked.
pub fn words(page: &Page, with: Option<&AnimalCard>) -> Vec<(String, String)> {
    let mut own = with.map(|a| page.story.words_of(a.animal)).unwrap_or_default();
    own.sort_by_key(|w| w.closing);
    let named = |w: &&WordCard| {
        if w.closing { say!(&page.locale, talk::ends_sessions, word = &w.says) } else { w.says.to_string() }
    };
    let mut all = vec![(String::new(), String::new())];
    all.extend(own.iter().map(|w| (w.word.to_string(), named(w))));
    all
}

fn ways(l: &Locale) -> Vec<(String, String)> {
    let mut all = vec![(String::new(), say!(l, talk::way, way = way_name(None)))];
    all.extend(PlanWay::ALL.iter().map(|way| (way.name().to_owned(), say!(l, talk::way, way = way.name()))));
    all
}

/// The fields.
pub fn fields(page: &Page, typed: &Typed, with: Option<&AnimalCard>) -> Markup {
    let (l, words) = (&page.locale, words(page, with));
    let one = |n: usize| {
        html! {
            fieldset data-test="line" {
                legend { (say!(l, talk::line_of, number = n)) }
                (select(typed, &format!("word_{n}"), &say!(l, talk::field_word), "", &words))
                (select(typed, &format!("way_{n}"), &say!(l, talk::field_way), "", &ways(l)))
                div.row.even {
                    (number(typed, &format!("minutes_{n}"), &say!(l, talk::field_minutes), ""))
                    (number(typed, &format!("times_{n}"), &say!(l, talk::field_times), ""))
                }
            }
        }
    };
    // What was typed there stays in sight.
    let more = (2..=LINES).any(|n| !typed.text(&format!("word_{n}")).is_empty());
    html! {
        @if let Some(animal) = with { (beside::of_a_plan(page, animal.animal, None)) (first::of_words(page, animal.animal)) }
        (one(1))
        details open[more] { summary { (say!(l, talk::more_lines)) } @for n in 2..=LINES { (one(n)) } }
        (day(typed, "last_day", &say!(l, talk::field_last_day), ""))
    }
}

/// What stands in the fields where nothing else does.
pub fn usual(page: &Page, typed: Typed) -> Typed {
    let (days, minutes, times) = USUAL;
    let mut typed = typed;
    for n in 1..=LINES {
        typed = typed.with(&format!("minutes_{n}"), minutes).with(&format!("times_{n}"), times);
    }
    typed.with("last_day", page.now.day(&page.zone).plus(days))
}

/// The lines of an earlier plan, as far as there is room.
pub fn taken_up(typed: Typed, lines: &[PlanLine]) -> Typed {
    let mut typed = typed;
    for (line, n) in lines.iter().zip(1..=LINES) {
        typed = typed.with(&format!("word_{n}"), line.word).with(&format!("minutes_{n}"), line.minutes);
        typed = typed.with(&format!("times_{n}"), line.times);
        typed = typed.with_some(&format!("way_{n}"), line.way.map(PlanWay::name));
    }
    typed
}

/// A line for each word that Today chose to show or invite, as far as there is room.
pub fn from_steps(page: &Page, case: &Case<'_>, typed: Typed) -> Typed {
    let today = page.state.kept.today(page.home, case);
    let Some(today) = today.as_ref().as_ref() else { return typed };
    let mut typed = typed;
    for (step, n) in today.steps.iter().filter(|step| step.shown()).zip(1..=LINES) {
        let only_shown = matches!(step.advice.act, Act::Show { .. }).then_some(PlanWay::Show);
        typed = typed.with(&format!("word_{n}"), step.word.word).with("filled", "steps");
        typed = typed.with_some(&format!("way_{n}"), only_shown.map(PlanWay::name));
    }
    typed
}

/// A word of the animal.
pub fn word(page: &Page, animal: &AnimalCard, typed: &mut Typed, name: &str) -> Option<WordId> {
    let own = page.story.words_of(animal.animal);
    if typed.text(name).is_empty() {
        typed.wrong(name, words!(faults::missing_choose));
    }
    typed.id(name, |id| own.iter().any(|w| w.word == *id))
}

/// A day from today to the farthest.
pub fn near_day(page: &Page, typed: &mut Typed, name: &str) -> Option<Day> {
    let today = page.now.day(&page.zone);
    let last = today.plus(MOST_DAYS);
    typed.day_within(name, (today, last), words!(talk::last_day_wrong, last = page.locale.date(last)))
}

/// What was typed: the lines, and the last day.
pub fn read(page: &Page, animal: &AnimalCard, typed: &mut Typed) -> Option<(Vec<PlanLine>, Day)> {
    let mut lines: Vec<PlanLine> = Vec::new();
    for n in 1..=LINES {
        let name = |field: &str| format!("{field}_{n}");
        if typed.text(&name("word")).is_empty() {
            continue;
        }
        let word = word(page, animal, typed, &name("word"));
        let way = typed.one_of(&name("way"), PlanWay::ALL, PlanWay::name);
        let mut number = |field: &str, most: u8| {
            let name = name(field);
            typed.whole_needed(&name, 1, u16::from(most)).and_then(|n| u8::try_from(n).ok())
        };
        let (minutes, times) = (number("minutes", PlanLine::MOST_MINUTES), number("times", PlanLine::MOST_TIMES));
        if let (Some(word), Some(minutes), Some(times)) = (word, minutes, times) {
            if lines.iter().any(|l| (l.word, l.way) == (word, way)) {
                typed.wrong(&name("word"), words!(faults::same_word));
            }
            let line = PlanLine { word, way, minutes, times };
            if invites_closing(&page.story, &[line]).is_some() {
                typed.wrong(&name("way"), words!(talk::way_of_closing));
            }
            lines.push(line);
        }
    }
    if lines.is_empty() && (1..=LINES).all(|n| typed.text(&format!("word_{n}")).is_empty()) {
        typed.wrong("word_1", words!(talk::no_line));
    }
    Some((lines, near_day(page, typed, "last_day")?))
}
