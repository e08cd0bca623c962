//! Markup of the page: whether there is an address, and a new one, once.

use crate::asker::{HOME, Inside};
use crate::pages::invited::{HANDS_ON, handed_on};
use maud::{Markup, html};
use sayso_people::db::Feed;
use sayso_web::layout::{Tab, layout, layout_with};
use sayso_wording::events::home_name;
use sayso_wording::say;

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
            @if let Some(feed) = feed {
                p data-test="there" { (say!(l, calendar::there, day = l.date(feed.made_at.day(&page.zone)))) }
                p.quiet {
                    @match feed.read_at {
                        Some(at) => (say!(l, calendar::read, when = l.weekday_date_time(at, &page.zone))),
                        None => (say!(l, calendar::never_read)),
                    }
                }
                p { a.button href="/calendar/new" data-test="change" { (say!(l, calendar::change)) } }
                form method="post" action="/calendar/end" {
                    input type="hidden" name=(HOME) value=(page.home);
                    button data-test="end" { (say!(l, calendar::end)) }
                }
            } @else {
                p data-test="none" { (say!(l, calendar::none)) }
                p { a.button.primary href="/calendar/new" data-test="new" { (say!(l, calendar::make)) } }
            }
            p { a.link href="/talk" { (say!(l, talk::title)) } }
        },
    )
}

/// What is said before one is made.
pub fn ask(inside: &Inside, feed: Option<Feed>) -> Markup {
    let (page, l) = (&inside.page, &inside.page.locale);
    let says = if feed.is_some() { say!(l, calendar::change) } else { say!(l, calendar::make) };
    layout(
        page,
        Tab::None,
        &says,
        html! {
            p { strong { (say!(l, calendar::of_home, home = home_name(l, &page.story))) } }
            p.caution { (say!(l, calendar::whoever)) }
            @if feed.is_some() { p { (say!(l, calendar::change_what)) } }
            form method="post" action="/calendar/new" {
                input type="hidden" name=(HOME) value=(page.home);
                button.primary.wide data-test="make" { (says) }
            }
            p { a.link href="/calendar" { (say!(l, calendar::title)) } }
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
            p { a.link href="/calendar" { (say!(l, calendar::title)) } }
        },
    )
}
