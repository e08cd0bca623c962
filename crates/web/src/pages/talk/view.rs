//! Markup of the page: what waits, what holds, what was before.

use super::card::card;
use super::{is_home, open_now, own, passed_on, rests, writer};
use crate::fields::summary;
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::pages::sheets::to_meeting;
use crate::typed::Typed;
use maud::{Markup, html};
use sayso_model::talks::{Answered, Standing, Talk};
use sayso_wording::say;

/// The page, with what was typed into one of its forms.
pub fn page(page: &Page, all: &[Talk<'_>], typed: &Typed) -> Markup {
    let (l, home) = (&page.locale, is_home(page));
    let of = |standing: Standing| all.iter().filter(move |t| t.standing == standing).collect::<Vec<_>>();
    let (open, agreed) = (of(Standing::Open), of(Standing::Accepted));
    let before: Vec<&Talk<'_>> = all.iter().filter(|t| !t.is_live()).collect();
    // What was typed below a card that is folded is shown unfolded, and so is what the home answered since the coach looked.
    let unfolded = before.iter().any(|t| t.id().to_string() == typed.text("to") || is_news(page, t));
    let (passed, consents) = (passed_on(page, all), open_now(page));
    let cards =
        |talks: &[&Talk<'_>]| html! { @for talk in talks { (card(page, all, (&passed, &consents), talk, typed)) } };
    layout(
        page,
        Tab::None,
        &say!(l, talk::title),
        html! {
            (summary(typed))
            p { @if home { (say!(l, talk::intro)) } @else { (say!(l, talk::intro_coach)) } }
            p.note { (say!(l, talk::not_a_vet)) }
            @for animal in page.animals().iter().filter(|a| (!all.is_empty() || own::any(page, a)) && rests(page, a.animal)) {
                p.stop data-test="rest" { (say!(l, talk::rest, name = animal.name.as_str())) }
            }
            @if writer(page).is_some() {
                p { a.button.primary.wide href=(page.of_home("/talk/write")) data-test="write" { (say!(l, talk::write)) } }
            }
            @if all.is_empty() {
                p data-test="none" { @if home { (say!(l, talk::none)) } @else { (say!(l, talk::none_coach)) } }
            }
            @if !open.is_empty() {
                section data-test="open" {
                    h2 { @if home { (say!(l, talk::open)) } @else { (say!(l, talk::open_coach)) } }
                    (cards(&open))
                }
            }
            @if !agreed.is_empty() {
                section data-test="agreed" { h2 { (say!(l, talk::now)) } (cards(&agreed)) }
            }
            (own::cards(page))
            (to_meeting(page))
            @if page.leave.is_some() { p { a.link href=(page.of_home("/calendar")) data-test="calendar" { (say!(l, calendar::title)) } } }
            @if !before.is_empty() {
                details data-test="before" open[unfolded] {
                    summary { (say!(l, talk::before, count = before.len())) }
                    (cards(&before))
                }
            }
        },
    )
}

/// Whether the home answered something to it that whoever coaches has not looked at yet.
fn is_news(page: &Page, talk: &Talk<'_>) -> bool {
    let Some(leave) = writer(page).filter(|_| !is_home(page)) else { return false };
    let of_home = |answer: &Answered<'_>| answer.part.by.as_ref().is_none_or(|by| by.account != leave.who.account);
    talk.answers.iter().any(|answer| of_home(answer) && leave.unread.contains(&answer.event.id))
}
