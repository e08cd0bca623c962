//! Homes that joined and share their figures, and in which nothing is begun: no animal is written down, so none of the desk's rows is theirs.

use super::asked::{ANSWERS, Chosen, NONE};
use super::open::Opened;
use super::row::{called, own_mark, unheard};
use maud::{Markup, html};
use sayso_model::{HomeId, Label, Moment, Zone};
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;

/// Below the rows: each with since when, the way to write to it, and the coach's own mark, for such a home seldom has a name.
pub fn not_begun(l: &Locale, opened: &Opened, chosen: &Chosen, shown: &[(HomeId, Moment)]) -> Markup {
    html! {
        @if !shown.is_empty() {
            section data-test="not-begun" {
                h2 { (say!(l, desk_page::not_begun)) }
                ul.plain.stack { @for (home, since) in shown {
                    @let mark = chosen.marks.get(home);
                    li.card data-test="not-begun-home" {
                        p { strong { (called(l, &opened.found, *home)) } @if let Some(mark) = mark { " · " (mark.as_str()) } }
                        p { (say!(l, desk_page::not_begun_since, day = l.weekday_date(since.day(&Zone::utc())))) }
                        (told(l, opened, *home))
                        p { a.link href=(format!("/talk?home={home}")) { (say!(l, talk::title)) } }
                        details {
                            summary { (say!(l, desk_page::own_mark)) }
                            (own_mark(l, &chosen.asked, (*home, &home.to_string()), mark))
                        }
                    }
                } }
            }
        }
    }
}

/// In the week's view: those of them that answered, or to which another coach wrote.
pub fn news_of_homes(l: &Locale, opened: &Opened, marks: &BTreeMap<HomeId, Label>) -> Option<Markup> {
    let new: Vec<HomeId> =
        opened.not_begun.iter().map(|(home, _)| *home).filter(|h| opened.unheard_of((*h, None)).is_some()).collect();
    (!new.is_empty()).then(|| html! {
        section data-test="news-not-begun" {
            h2 { (say!(l, desk_page::not_begun)) }
            ul.plain.stack { @for home in new {
                li.card data-test="news-of-home" {
                    p { strong { (called(l, &opened.found, home)) } @if let Some(mark) = marks.get(&home) { " · " (mark.as_str()) } }
                    (told(l, opened, home))
                    p { a.link href=(format!("/talk?home={home}")) { (say!(l, talk::title)) } }
                }
            } }
        }
    })
}

/// What is new in such a home.
fn told(l: &Locale, opened: &Opened, home: HomeId) -> Markup {
    let new = opened.unheard_of((home, None));
    html! { @if new.is_some() { ul.answers { (unheard(l, (home, &Zone::utc()), new, &|_| say!(l, desk_page::nameless))) } } }
}

/// Those that fit what was asked for: they have no need, no animal and no word; what they are called, and the own mark.
pub fn fitting(opened: &Opened, chosen: &Chosen) -> Vec<(HomeId, Moment)> {
    let asked = &chosen.asked;
    let find = asked.find.trim().to_lowercase();
    let fits = |home: HomeId| {
        let mark = chosen.marks.get(&home).map_or("", Label::as_str);
        let named = |text: &str| text.to_lowercase().contains(&find);
        (asked.mark.is_empty() || mark == asked.mark)
            && (find.is_empty() || named(opened.found.home(home)) || named(mark))
    };
    let kind = |home: &HomeId| match asked.kind.as_str() {
        "" | NONE => true,
        ANSWERS => opened.answered().any(|about| about == (*home, None)),
        _ => false,
    };
    opened.not_begun.iter().filter(|(home, _)| kind(home) && fits(*home)).copied().collect()
}
