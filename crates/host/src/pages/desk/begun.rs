//! Homes that share their figures and have no animal in use, so that none of the desk's rows is theirs: those in which nothing is begun,
//! and those in which every animal is put away.

use super::asked::{ANSWERS, Chosen, NONE};
use super::open::Opened;
use super::row::{called, own_mark, says, unheard};
use maud::{Markup, html};
use sayso_model::{HomeId, Label, Moment, Zone};
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;

/// A home of the week's view.
const NEWS: &str = "news-of-home";

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
    let card = |home: HomeId, stands: &str| {
        let mark = chosen.marks.get(&home);
        html! {
            (name(l, opened, home, mark))
            p { (stands) }
            (told(l, opened, home))
            details {
                summary { (say!(l, desk_page::own_mark)) }
                (own_mark(l, &chosen.asked, (home, &home.to_string()), mark))
            }
        }
    };
    let since = |at: &Moment| say!(l, desk_page::not_begun_since, day = l.weekday_date(at.day(&Zone::utc())));
    let begun = shown.not_begun.iter().map(|(home, at)| card(*home, &since(at)));
    let away = shown.put_away.iter().map(|home| card(*home, &say!(l, desk_page::put_away_all)));
    html! {
        (section("not-begun", "not-begun-home", &say!(l, desk_page::not_begun), begun))
        (section("put-away", "put-away-home", &say!(l, desk_page::put_away), away))
    }
}

/// In the week's view: those of them that answered, or to which another coach wrote; none where none did.
pub fn news_of_homes(l: &Locale, opened: &Opened, marks: &BTreeMap<HomeId, Label>) -> Option<Markup> {
    let is_new = |home: &HomeId| opened.unheard_of((*home, None)).is_some();
    let card = |home: HomeId| html! { (name(l, opened, home, marks.get(&home))) (told(l, opened, home)) };
    let begun = || opened.not_begun.iter().map(|(home, _)| *home).filter(is_new);
    let away = || opened.put_away.iter().copied().filter(is_new);
    begun().chain(away()).next()?;
    Some(html! {
        (section("news-not-begun", NEWS, &say!(l, desk_page::not_begun), begun().map(card)))
        (section("news-put-away", NEWS, &say!(l, desk_page::put_away), away().map(card)))
    })
}

/// Homes under one heading; nothing where there are none.
fn section(test: &str, of_each: &str, head: &str, cards: impl Iterator<Item = Markup>) -> Markup {
    let mut cards = cards.peekable();
    html! {
        @if cards.peek().is_some() {
            section data-test=(test) {
                h2 { (head) }
                ul.plain.stack { @for card in cards { li.card data-test=(of_each) { (card) } } }
            }
        }
    }
}

fn name(l: &Locale, opened: &Opened, home: HomeId, mark: Option<&Label>) -> Markup {
    html! { p { strong { (called(l, &opened.found, home)) } @if let Some(mark) = mark { " · " (mark.as_str()) } } }
}

/// What is new in such a home, and the way to write to it.
fn told(l: &Locale, opened: &Opened, home: HomeId) -> Markup {
    let says = says(l, opened.found.words(home));
    html! {
        @if let Some(new) = opened.unheard_of((home, None)) { ul.answers { (unheard(l, (home, &Zone::utc()), new, &says)) } }
        p { a.link href=(format!("/talk?home={home}")) { (say!(l, talk::title)) } }
    }
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
        ANSWERS => opened.has_answered((home, None)),
        _ => false,
    };
    let shown = |home: HomeId| kind(home) && fits(home);
    let told = |home: HomeId| looks_for || opened.unheard_of((home, None)).is_some();
    Shown {
        not_begun: opened.not_begun.iter().filter(|(home, _)| shown(*home)).copied().collect(),
        put_away: opened.put_away.iter().copied().filter(|home| shown(*home) && told(*home)).collect(),
    }
}
