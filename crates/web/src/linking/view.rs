//! Markup of the page.

use super::{held, hinders};
use crate::fields::{area, summary};
use crate::typed::Typed;
use crate::visitor::Visitor;
use maud::{Markup, html};
use sayso_linked::{Held, LinkError, Sends, State};
use sayso_model::{Moment, Zone};
use sayso_wording::{Locale, say};

/// Not linked: what a link is, and where its text goes.
pub fn begin(l: &Locale, typed: &Typed) -> Markup {
    html! {
        (summary(typed))
        p { (say!(l, linked::what)) }
        p { (say!(l, linked::what_offline)) }
        ol { li { (say!(l, linked::step_code)) } li { (say!(l, linked::step_paste)) } li { (say!(l, linked::step_yes)) } }
        form method="post" action="/linked" .stack {
            (area(typed, "link", &say!(l, linked::link), &say!(l, linked::link_hint)))
            button.primary.wide data-test="begin" { (say!(l, linked::begin)) }
        }
    }
}

/// Linked: what goes, how far it is, what is held.
pub fn state(visitor: &Visitor, state: &State) -> Markup {
    let (l, progress) = (&visitor.locale, &state.progress);
    let zone = visitor.zone();
    let name = if progress.about.name.is_empty() { say!(l, linked::unnamed) } else { progress.about.name.clone() };
    html! {
        p data-test="with" { (say!(l, linked::with, home = name, url = &state.link.server)) }
        @match state.link.sends {
            None => {
                p.caution data-test="not-yet" { (say!(l, linked::not_yet)) }
                (goes(visitor, state, None))
            }
            Some(sends) => {
                @if let Some(stop) = progress.stopped {
                    p.caution role="alert" data-test="stopped" { (say!(l, linked::stopped, why = stop.name())) }
                } @else if let Some(hindrance) = &progress.hinders {
                    p.caution data-test="hinders" { (hinders(l, hindrance)) }
                }
                (how_far(l, state, &zone))
                (not_there(l, progress))
                @if progress.stopped.is_some() || progress.held.total() + progress.lacks.total() > 0 {
                    form method="post" action="/linked/again" { button data-test="again" { (say!(l, linked::again)) } }
                }
                @if progress.stopped.is_none() { (goes(visitor, state, Some(sends))) }
            }
        }
        section {
            h2 { (say!(l, linked::unlinking)) }
            p { (say!(l, linked::unlinking_what)) }
            form method="post" action="/linked/end" { button data-test="unlink" { (say!(l, linked::unlink)) } }
        }
        p { a.button href="/people" { (say!(l, exchange::to_people)) } }
    }
}

fn how_far(l: &Locale, state: &State, zone: &Zone) -> Markup {
    let progress = &state.progress;
    let when = |at: Moment| l.weekday_date_time(at, zone);
    let whole = |n: u64| usize::try_from(n).unwrap_or(usize::MAX);
    html! {
        p data-test="agreed" {
            @match progress.agreed_at {
                Some(at) => (say!(l, linked::agreed, when = when(at))),
                None => (say!(l, linked::never_agreed)),
            }
        }
        p data-test="waits" { (say!(l, linked::waits, count = whole(state.waits))) }
        p.quiet data-test="moved" { (say!(l, linked::moved, sent = whole(progress.sent), received = whole(progress.received), media = whole(progress.media))) }
    }
}

/// What does not stand on the other side: told, for nothing is passed over in silence.
fn not_there(l: &Locale, progress: &sayso_linked::Progress) -> Markup {
    html! {
        (one_way(l, &progress.held, &say!(l, linked::held_title), "held"))
        (one_way(l, &progress.lacks, &say!(l, linked::lacks_title), "lacks"))
    }
}

fn one_way(l: &Locale, all: &Held, title: &str, test: &str) -> Markup {
    html! {
        @if all.total() > 0 {
            section {
                h2 { (title) }
                ul { @for (why, count) in &all.counts { li data-test=(test) { (held(l, *why, *count)) } } }
                details { summary { (say!(l, linked::which)) }
                    ul { @for one in &all.told {
                        li.quiet { (one.kind.replace('_', " ")) @if let Some(id) = one.id { " " code { (id) } } }
                    } } }
            }
        }
    }
}

/// What goes there and who sees it, with the yes to it.
fn goes(visitor: &Visitor, state: &State, sends: Option<Sends>) -> Markup {
    let (l, about) = (&visitor.locale, &state.progress.about);
    let (pictures, recordings) = (sends.is_some_and(|s| s.pictures), sends.is_some_and(|s| s.recordings));
    html! {
        section {
            h2 { (say!(l, linked::goes)) }
            p { (say!(l, linked::goes_all)) }
            p { (say!(l, linked::goes_who)) }
            @if sends.is_some() {
                p data-test="coaches" {
                    @if about.coaches.is_empty() { (say!(l, linked::no_coach)) }
                    @else { (say!(l, linked::coaches, names = l.and(&about.coaches))) }
                }
            }
            form method="post" action="/linked/yes" .stack {
                label { input type="checkbox" name="pictures" value="yes" checked[pictures]; span { (say!(l, linked::pictures)) } }
                label { input type="checkbox" name="recordings" value="yes" checked[recordings]; span { (say!(l, linked::recordings)) } }
                p.hint { (say!(l, linked::sound_stays)) }
                button.primary[sends.is_none()].wide data-test="yes" {
                    @if sends.is_none() { (say!(l, linked::yes)) } @else { (say!(l, setup::keep)) }
                }
            }
        }
    }
}

/// What is kept of the link cannot be read.
pub fn damaged(l: &Locale, why: &LinkError) -> Markup {
    let file = if let LinkError::Damaged { file, why } = why {
        say!(l, linked::damaged, file = file.display().to_string(), why = why)
    } else {
        why.to_string()
    };
    html! {
        p.caution role="alert" { (file) }
        form method="post" action="/linked/end" { button data-test="unlink" { (say!(l, linked::unlink)) } }
    }
}

/// Unlinked; whether the server was told.
pub fn ended(l: &Locale, told: bool) -> Markup {
    html! {
        p data-test="ended" { (say!(l, linked::ended)) }
        @if !told { p.caution data-test="not-told" { (say!(l, linked::not_told)) } }
        p { a.button href="/linked" { (say!(l, linked::title)) } }
        p { a.button href="/people" { (say!(l, exchange::to_people)) } }
    }
}
