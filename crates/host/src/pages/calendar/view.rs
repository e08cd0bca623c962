//! Markup of the page: whether there is an address, and a new one, once.

use super::{HERE, OF_CASELOAD};
use crate::asker::{Asker, HOME, Inside};
use crate::pages::invited::{HANDS_ON, handed_on, when};
use maud::{Markup, html};
use sayso_model::Zone;
use sayso_people::db::Feed;
use sayso_web::layout::{Tab, layout, layout_with};
use sayso_web::page::Page;
use sayso_wording::events::home_name;
use sayso_wording::{Locale, say};

/// Whether there is one.
pub fn view(inside: &Inside, feed: Option<Feed>) -> Markup {
    let (page, l) = (&inside.page, &inside.page.locale);
    layout(
        page,
        Tab::None,
        &say!(l, calendar::title),
        html! {
            p { strong { (say!(l, calendar::of_home, home = home_name(l, &page.story))) } }
            p { (say!(l, calendar::what)) }
            p { (say!(l, calendar::sees)) }
            @if inside.leave.role.looks_are_noted() { p data-test="noted" { (say!(l, calendar::noted)) } }
            p.note { (say!(l, calendar::late)) }
            (there(l, feed, &page.zone, HERE, &of_home(page)))
            p { a.link href="/talk" { (say!(l, talk::title)) } }
        },
    )
}

/// What is said before one is made.
pub fn ask(inside: &Inside, feed: Option<Feed>) -> Markup {
    let (page, l) = (&inside.page, &inside.page.locale);
    let says = says(l, feed);
    layout(
        page,
        Tab::None,
        &says,
        html! {
            p { strong { (say!(l, calendar::of_home, home = home_name(l, &page.story))) } }
            p.caution { (say!(l, calendar::whoever)) }
            (to_make(l, feed, HERE, &of_home(page)))
            p { a.link href=(HERE) { (say!(l, calendar::title)) } }
        },
    )
}

/// The address, once.
pub fn made(inside: &Inside, link: &str) -> Markup {
    let (page, l) = (&inside.page, &inside.page.locale);
    layout_with(
        page,
        Tab::None,
        &say!(l, calendar::made),
        &[HANDS_ON],
        html! {
            p { strong { (say!(l, calendar::of_home, home = home_name(l, &page.story))) } }
            p.caution { (say!(l, calendar::shown_once)) }
            (handed_on(l, link, "address"))
            p { (say!(l, calendar::whoever)) }
            p { a.link href=(HERE) { (say!(l, calendar::title)) } }
        },
    )
}

/// Since when there is an address and when it was read last, or that there is none, with what can be done about it at `here`; forms send
/// `of` along.
fn there(l: &Locale, feed: Option<Feed>, zone: &Zone, here: &str, of: &Markup) -> Markup {
    let new = format!("{here}/new");
    html! {
        @if let Some(feed) = feed {
            p data-test="there" { (say!(l, calendar::there, day = l.date(feed.made_at.day(zone)))) }
            p.quiet {
                @match feed.read_at {
                    Some(at) => (say!(l, calendar::read, when = when(l, at, zone))),
                    None => (say!(l, calendar::never_read)),
                }
            }
            p { a.button href=(new) data-test="change" { (say!(l, calendar::change)) } }
            form method="post" action=(format!("{here}/end")) { (of) button data-test="end" { (say!(l, calendar::end)) } }
        } @else {
            p data-test="none" { (say!(l, calendar::none)) }
            p { a.button.primary href=(new) data-test="new" { (say!(l, calendar::make)) } }
        }
    }
}

/// The form that makes an address, and what becomes of the one before.
fn to_make(l: &Locale, feed: Option<Feed>, here: &str, of: &Markup) -> Markup {
    html! {
        @if feed.is_some() { p { (say!(l, calendar::change_what)) } }
        form method="post" action=(format!("{here}/new")) { (of) button.primary.wide data-test="make" { (says(l, feed)) } }
    }
}

fn says(l: &Locale, feed: Option<Feed>) -> String {
    if feed.is_some() { say!(l, calendar::change) } else { say!(l, calendar::make) }
}

/// Which home a form is about.
fn of_home(page: &Page) -> Markup {
    html! { input type="hidden" name=(HOME) value=(page.home); }
}

/// Whether there is one of a caseload.
pub fn caseload(asker: &Asker, feed: Option<Feed>) -> Markup {
    let l = &asker.locale();
    asker.framed(
        &say!(l, calendar::caseload),
        html! {
            p { (say!(l, calendar::caseload_what)) }
            p { (say!(l, calendar::caseload_sees)) }
            p data-test="noted" { (say!(l, calendar::caseload_noted)) }
            p.note { (say!(l, calendar::caseload_late)) }
            (there(l, feed, &Zone::utc(), OF_CASELOAD, &html! {}))
            p { a.link href="/desk" { (say!(l, desk_page::title)) } }
        },
    )
}

/// What is said before one of a caseload is made.
pub fn ask_caseload(asker: &Asker, feed: Option<Feed>) -> Markup {
    let l = &asker.locale();
    let says = says(l, feed);
    asker.framed(
        &says,
        html! {
            p.caution { (say!(l, calendar::caseload_whoever)) }
            (to_make(l, feed, OF_CASELOAD, &html! {}))
            p { a.link href=(OF_CASELOAD) { (say!(l, calendar::caseload)) } }
        },
    )
}

/// The address of one of a caseload, once.
pub fn made_caseload(asker: &Asker, link: &str) -> Markup {
    let l = &asker.locale();
    asker.framed_with(
        &[HANDS_ON],
        &say!(l, calendar::made),
        html! {
            p.caution { (say!(l, calendar::shown_once)) }
            (handed_on(l, link, "address"))
            p { (say!(l, calendar::caseload_whoever)) }
            p { a.link href=(OF_CASELOAD) { (say!(l, calendar::caseload)) } }
        },
    )
}
