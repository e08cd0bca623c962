//! Homes that share their figures and have no animal in use, so that none of the desk's rows is theirs: those in which nothing is begun,
//! and those in which every animal is put away.

use super::asked::{ANSWERS, Chosen, NONE};
use super::open::Opened;
use super::row::{called, own_mark, says, unheard};
use maud::{Markup, html};
use sayso_model::{HomeId, Label, Moment, Zone};
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;

/// Those that are shown.
pub struct Shown {
    /// In which nothing is begun, each with since when it shares.
    pub not_begun: Vec<(HomeId, Moment)>,
    /// In which every animal is put away.
    pub put_away: Vec<HomeId>,
}

impl Shown {
    /// Whether there is none.
    pub const fn is_empty(&self) -> bool {
        self.not_begun.is_empty() && self.put_away.is_empty()
    }
}

/// Below the rows: each with how it stands, the way to write to it, and the coach's own mark, for such a home seldom has a name.
pub fn homes(l: &Locale, opened: &Opened, chosen: &Chosen, shown: &Shown) -> Markup {
    let since = |since: &Moment| say!(l, desk_page::not_begun_since, day = l.weekday_date(since.day(&Zone::utc())));
    html! {
        @if !shown.not_begun.is_empty() {
            section data-test="not-begun" {
                h2 { (say!(l, desk_page::not_begun)) }
                ul.plain.stack { @for (home, at) in &shown.not_begun {
                    li.card data-test="not-begun-home" { (card(l, opened, chosen, *home, &since(at))) }
                } }
            }
        }
        @if !shown.put_away.is_empty() {
            section data-test="put-away" {
                h2 { (say!(l, desk_page::put_away)) }
                ul.plain.stack { @for home in &shown.put_away {
                    li.card data-test="put-away-home" { (card(l, opened, chosen, *home, &say!(l, desk_page::put_away_all))) }
                } }
            }
        }
    }
}

fn card(l: &Locale, opened: &Opened, chosen: &Chosen, home: HomeId, stands: &str) -> Markup {
    let mark = chosen.marks.get(&home);
    html! {
        (name(l, opened, home, mark))
        p { (stands) }
        (told(l, opened, home))
        p { a.link href=(format!("/talk?home={home}")) { (say!(l, talk::title)) } }
        details {
            summary { (say!(l, desk_page::own_mark)) }
            (own_mark(l, &chosen.asked, (home, &home.to_string()), mark))
        }
    }
}

fn name(l: &Locale, opened: &Opened, home: HomeId, mark: Option<&Label>) -> Markup {
    html! { p { strong { (called(l, &opened.found, home)) } @if let Some(mark) = mark { " · " (mark.as_str()) } } }
}

/// In the week's view: those of them that answered, or to which another coach wrote.
pub fn news_of_homes(l: &Locale, opened: &Opened, marks: &BTreeMap<HomeId, Label>) -> Option<Markup> {
    let is_new = |home: &HomeId| opened.unheard_of((*home, None)).is_some();
    let begun: Vec<HomeId> = opened.not_begun.iter().map(|(home, _)| *home).filter(is_new).collect();
    let away: Vec<HomeId> = opened.put_away.iter().copied().filter(is_new).collect();
    let section = |test: &str, head: String, homes: &[HomeId]| {
        html! {
            @if !homes.is_empty() {
                section data-test=(test) {
                    h2 { (head) }
                    ul.plain.stack { @for home in homes {
                        li.card data-test="news-of-home" {
                            (name(l, opened, *home, marks.get(home)))
                            (told(l, opened, *home))
                            p { a.link href=(format!("/talk?home={home}")) { (say!(l, talk::title)) } }
                        }
                    } }
                }
            }
        }
    };
    (!begun.is_empty() || !away.is_empty()).then(|| {
        html! {
            (section("news-not-begun", say!(l, desk_page::not_begun), &begun))
            (section("news-put-away", say!(l, desk_page::put_away), &away))
        }
    })
}

/// What is new in such a home.
fn told(l: &Locale, opened: &Opened, home: HomeId) -> Markup {
    let (new, kept) = (opened.unheard_of((home, None)), opened.found.kept.get(&home));
    let words = kept.map(|kept| says(l, &kept.words));
    html! { @if let (Some(_), Some(says)) = (new, words) { ul.answers { (unheard(l, (home, &Zone::utc()), new, &says)) } } }
}

/// Those that fit what was asked for: they have no need, no animal in use and no word; what they are called, and the own mark. One whose
/// animals are put away needs nobody: it is shown where something is new, and to whoever looks for it.
pub fn fitting(opened: &Opened, chosen: &Chosen) -> Shown {
    let asked = &chosen.asked;
    let find = asked.find.trim().to_lowercase();
    let looks_for = !find.is_empty() || !asked.mark.is_empty();
    let fits = |home: HomeId| {
        let mark = chosen.marks.get(&home).map_or("", Label::as_str);
        let named = |text: &str| text.to_lowercase().contains(&find);
        (asked.mark.is_empty() || mark == asked.mark)
            && (find.is_empty() || named(opened.found.home(home)) || named(mark))
    };
    let kind = |home: HomeId| match asked.kind.as_str() {
        "" | NONE => true,
        ANSWERS => opened.answered().any(|about| about == (home, None)),
        _ => false,
    };
    let shown = |home: HomeId| kind(home) && fits(home);
    let told = |home: HomeId| looks_for || opened.unheard_of((home, None)).is_some();
    Shown {
        not_begun: opened.not_begun.iter().filter(|(home, _)| shown(*home)).copied().collect(),
        put_away: opened.put_away.iter().copied().filter(|home| shown(*home) && told(*home)).collect(),
    }
}
