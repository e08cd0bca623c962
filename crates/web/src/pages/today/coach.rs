//! What coach and home agreed on, on Today: a line that leads to what is to be answered, and beside a word's step what was agreed
//! for it. Never in its place; and while rest is said nothing is to be done.

use crate::page::AnimalPage;
use crate::pages::talk::{address, is_witnessed, seen, writer};
use maud::{Markup, html};
use sayso_advisor::today::Next;
use sayso_model::WordId;
use sayso_model::talks::{Standing, Talk, agreed as lines, talks};
use sayso_people::Capability;
use sayso_wording::say;
use sayso_wording::talk::{dose, proposed};

/// For the home what a coach wrote and nobody answered yet; for a coach the way to write.
pub fn line(page: &AnimalPage) -> Markup {
    let l = &page.locale;
    if page.leave.is_some() && page.may(Capability::Agree) {
        let all = seen(page);
        let about = |t: &&Talk<'_>| t.event.animal.is_none_or(|animal| animal == page.id);
        let open: Vec<&Talk<'_>> =
            all.iter().filter(|t| t.standing == Standing::Open && is_witnessed(page, t)).filter(about).collect();
        return match open.as_slice() {
            [] => html! {},
            [one] => {
                let what = proposed(l, &page.story, &one.part.proposes);
                to_talk(page, &say!(l, talk::card, name = &one.part.from.name, what = what))
            }
            several => {
                let mut names: Vec<&str> = several.iter().map(|t| t.part.from.name.as_str()).collect();
                names.sort_unstable();
                names.dedup();
                to_talk(page, &say!(l, talk::card_more, names = l.and(&names), count = several.len()))
            }
        };
    }
    html! {
        @if writer(page).is_some() {
            div.row.coach data-test="coach" {
                a.button href=(address(page, "/talk/write", &[("animal", page.id.to_string())])) data-test="write" { (say!(l, talk::write)) }
                a.button href=(address(page, "/talk", &[])) data-test="talk" { (say!(l, talk::title)) }
            }
        }
    }
}

fn to_talk(page: &AnimalPage, says: &str) -> Markup {
    html! { a.button.wide.coach href=(address(page, "/talk", &[])) data-test="from-coach" { span { (says) } } }
}

/// What was agreed for a word, beside its step.
pub fn agreed(page: &AnimalPage, word: WordId) -> Markup {
    let agreed = lines(&page.story, &talks(&page.story, page.now), page.id, page.now);
    let Some(line) = agreed.get(&word) else { return html! {} };
    let kept = page.state.kept.today(page.home, &page.case());
    let rests = kept.as_ref().as_ref().is_some_and(|today| today.next == Next::Rest);
    html! {
        @if !rests { span.agreed data-test="agreed" { (say!(&page.locale, talk::row, dose = dose(&page.locale, line))) } }
    }
}
