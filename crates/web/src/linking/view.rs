//! Markup of the page.

use super::{held, hinders};
use crate::fields::{area, summary};
use crate::typed::Typed;
use crate::visitor::Visitor;
use maud::{Markup, html};
use sayso_linked::{Ended, Held, LinkError, Sends, State};
use sayso_model::{Moment, Zone};
use sayso_wording::{Locale, say};

/// Seconds for which something may wait before the server is said not to answer: a turn begins within a minute.
const SILENT_S: f64 = 120.0;

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
    let name = if progress.name().is_empty() { say!(l, linked::unnamed) } else { progress.name().to_owned() };
    let stopped = progress.stopped.filter(|_| state.link.sends.is_some());
    html! {
        p data-test="with" {
            @if stopped.is_some() { (say!(l, linked::was_with, home = name, url = &state.link.server)) }
            @else { (say!(l, linked::with, home = name, url = &state.link.server)) }
        }
        @match (state.link.sends, stopped) {
            (None, _) => {
                p.caution data-test="not-yet" { (say!(l, linked::not_yet)) }
                (goes(visitor, state, None))
            }
            (Some(_), Some(stop)) => {
                p.caution role="alert" data-test="stopped" { (say!(l, linked::stopped, why = stop.name())) }
                p { (say!(l, linked::after_stopped)) }
                (not_there(l, progress))
            }
            (Some(sends), None) => {
                @if let Some(hindrance) = &progress.hinders {
                    p.caution data-test="hinders" { (hinders(l, hindrance)) }
                    (as_said(l, &hindrance.said))
                } @else if let Some(since) = no_answer(visitor, state) {
                    p.caution data-test="silent" { (say!(l, linked::silent, when = l.weekday_date_time(since, &zone))) }
                }
                (how_far(l, state, &zone))
                (not_there(l, progress))
                @if progress.held.total() + progress.lacks.total() > 0 { (once_more(l)) }
                (goes(visitor, state, Some(sends)))
            }
        }
        section {
            h2 { (say!(l, linked::unlinking)) }
            p { (say!(l, linked::unlinking_what)) }
            form method="post" action="/linked/end" { button.primary[stopped.is_some()] data-test="unlink" { (say!(l, linked::unlink)) } }
            @if stopped.is_some() { (once_more(l)) }
        }
        p { a.button href="/people" { (say!(l, exchange::to_people)) } }
    }
}

/// Goes through everything once more.
fn once_more(l: &Locale) -> Markup {
    html! { form method="post" action="/linked/again" { button data-test="again" { (say!(l, linked::again)) } } }
}

/// What the network or the server said, as it was said, for whoever looks after the machine.
fn as_said(l: &Locale, said: &str) -> Markup {
    html! { details { summary { (say!(l, linked::as_said)) } p lang="en" dir="ltr" { code { (said) } } } }
}

/// Since when the server has not answered, where something has waited for longer than it takes to send it.
fn no_answer(visitor: &Visitor, state: &State) -> Option<Moment> {
    let agreed = state.progress.agreed_at.filter(|_| state.waits > 0)?;
    (visitor.state.now().seconds_since(agreed) > SILENT_S).then_some(agreed)
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
    let (l, about) = (&visitor.locale, state.progress.about.as_ref());
    let (pictures, recordings) = (sends.is_some_and(|s| s.pictures), sends.is_some_and(|s| s.recordings));
    html! {
        section {
            h2 { (say!(l, linked::goes)) }
            p { (say!(l, linked::goes_all)) }
            p { (say!(l, linked::goes_who)) }
            p data-test="coaches" {
                @match about {
                    None => (say!(l, linked::coaches_unknown)),
                    Some(about) if about.coaches.is_empty() => (say!(l, linked::no_coach)),
                    Some(about) => (say!(l, linked::coaches, names = l.and(&about.coaches))),
                }
            }
            @if let Some(about) = about.filter(|about| sends.is_none() && about.records > 0) {
                p data-test="comes" { (say!(l, linked::comes, count = about.records)) }
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

/// Unlinked; whether the server was told, and what never went there.
pub fn ended(l: &Locale, ended: Ended) -> Markup {
    html! {
        p data-test="ended" { (say!(l, linked::ended)) }
        @if ended.waited > 0 { p data-test="never-went" { (say!(l, linked::never_went, count = ended.waited)) } }
        @if !ended.told { p.caution data-test="not-told" { (say!(l, linked::not_told)) } }
        p { a.button href="/linked" { (say!(l, linked::title)) } }
        p { a.button href="/people" { (say!(l, exchange::to_people)) } }
    }
}
