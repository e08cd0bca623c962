//! Homes that joined and share their figures, and in which nothing is begun: no animal is written down, so none of the desk's rows is theirs.

use super::asked::{ANSWERS, Chosen, NONE};
use super::open::{News, Opened};
use super::row::{answers, called, own_mark};
use maud::{Markup, html};
use sayso_model::{HomeId, Label, Moment, Zone};
use sayso_wording::{Locale, say};

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
                        @if let Some(News { stood_in, answers: said }) = opened.of_homes.get(home) {
                            @let said: Vec<_> = said.iter().collect();
                            ul.answers { (answers(l, (*home, &Zone::utc()), (stood_in, &said), &|_| say!(l, desk_page::nameless))) }
                        }
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
        ANSWERS => opened.of_homes.contains_key(home),
        _ => false,
    };
    opened.not_begun.iter().filter(|(home, _)| kind(home) && fits(*home)).copied().collect()
}
