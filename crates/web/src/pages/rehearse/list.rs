//! Markup of the exercises and of those to rehearse with.

use super::asked::REHEARSE;
use super::lessons;
use crate::layout::{Tab, layout};
use crate::page::{HOME_QUERY, Page};
use maud::{Markup, html};
use sayso_sim::rehearsal::{Character, Exercise};
use sayso_wording::{Locale, say};

pub fn view(page: &Page) -> Markup {
    let l = &page.locale;
    layout(
        page,
        Tab::Learn,
        &say!(l, rehearse::title),
        html! {
            p { (say!(l, rehearse::intro)) }
            (simulation(l))
            details.fold data-test="who" {
                summary { (say!(l, rehearse::whoswho)) }
                ul { @for who in Character::ALL { li { (say!(l, rehearse::character, who = who.name())) } } }
            }
            @for exercise in Exercise::ALL { (one(page, exercise)) }
            p { a.link href=(page.of_home("/learn")) { (say!(l, lessons::all)) } }
        },
    )
}

/// What stands on every page of a rehearsal.
pub fn simulation(l: &Locale) -> Markup {
    html! {
        p.caution data-test="simulation" { (say!(l, rehearse::simulation)) " " a href="/methods/rehearsal" { (say!(l, rehearse::assumes)) } }
    }
}

fn one(page: &Page, exercise: Exercise) -> Markup {
    let (l, which) = (&page.locale, exercise.name());
    html! {
        section.card data-test=(format!("exercise-{which}")) {
            h2.first { (say!(l, rehearse::exercise, which = which)) }
            p { (say!(l, rehearse::short, which = which)) }
            form method="get" action=(format!("{REHEARSE}/{which}")) {
                @if page.names_home() { input type="hidden" name=(HOME_QUERY) value=(page.home); }
                div.field {
                    label for=(format!("with-{which}")) { (say!(l, rehearse::with)) }
                    select name="character" id=(format!("with-{which}")) {
                        @for who in Character::ALL { option value=(who.name()) { (say!(l, rehearse::who, who = who.name())) } }
                    }
                }
                div.row.after { button.primary data-test=(format!("choose-{which}")) { (say!(l, rehearse::choose)) span.unseen { ": " (say!(l, rehearse::exercise, which = which)) } } }
            }
            (lessons::links(page, exercise))
        }
    }
}
