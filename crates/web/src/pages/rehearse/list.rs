//! Markup of the exercises and of those to rehearse with.

use super::asked::REHEARSE;
use super::lessons;
use crate::layout::{Tab, layout};
use crate::page::{HOME_QUERY, Page};
use maud::{Markup, html};
use sayso_model::{Invitation, SessionStart};
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
            p.caution data-test="simulation" { (say!(l, rehearse::simulation)) }
            details.fold data-test="assumes" {
                summary { (say!(l, rehearse::assumes)) }
                p { (say!(l, rehearse::assumes_short)) }
                p { a.link href="/methods/rehearsal" { (say!(l, frame::methods)) } }
            }
            (all(page, fits(page)))
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

/// The exercise for how far the home has come.
fn fits(page: &Page) -> Exercise {
    let (story, animals) = (&page.story, page.animals());
    if !animals.iter().any(|a| story.of::<SessionStart>(a.animal).next().is_some()) {
        Exercise::Showing
    } else if !animals.iter().any(|a| story.of::<Invitation>(a.animal).next().is_some()) {
        Exercise::Inviting
    } else {
        Exercise::Evening
    }
}

/// One exercise first, the others in a line each; with whom is chosen once for all of them.
fn all(page: &Page, first: Exercise) -> Markup {
    let (l, which) = (&page.locale, first.name());
    let title = |exercise: Exercise| say!(l, rehearse::exercise, which = exercise.name());
    let short = |exercise: Exercise| say!(l, rehearse::short, which = exercise.name());
    let choose = |exercise: Exercise| html! { (say!(l, rehearse::choose)) span.unseen { ": " (title(exercise)) } };
    html! {
        form method="get" action=(to(first)) {
            @if page.names_home() { input type="hidden" name=(HOME_QUERY) value=(page.home); }
            div.field {
                label for="with" { (say!(l, rehearse::with)) }
                select name="character" id="with" {
                    @for who in Character::ALL { option value=(who.name()) { (say!(l, rehearse::who, who = who.name())) } }
                }
            }
            details.fold data-test="who" {
                summary { (say!(l, rehearse::whoswho)) }
                ul { @for who in Character::ALL { li { (say!(l, rehearse::character, who = who.name())) } } }
            }
            section.card data-test=(format!("exercise-{which}")) {
                p.hint { (say!(l, rehearse::fits, which = which)) }
                h2.first { (title(first)) }
                p { (short(first)) }
                div.row.after { button.primary data-test=(format!("choose-{which}")) { (choose(first)) } }
                (lessons::links(page, first))
            }
            h2 { (say!(l, rehearse::others)) }
            ul.plain {
                @for exercise in Exercise::ALL.into_iter().filter(|exercise| *exercise != first) {
                    li.line data-test=(format!("exercise-{}", exercise.name())) {
                        div { strong { (title(exercise)) } span.hint { (short(exercise)) } }
                        button formaction=(to(exercise)) data-test=(format!("choose-{}", exercise.name())) { (choose(exercise)) }
                    }
                }
            }
        }
    }
}

fn to(exercise: Exercise) -> String {
    format!("{REHEARSE}/{}", exercise.name())
}
