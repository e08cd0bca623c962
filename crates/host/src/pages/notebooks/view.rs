//! Markup of the pages.

use crate::asker::{HOME, Inside};
use crate::linked::holds_records;
use crate::pages::invited::{HANDS_ON, handed_on};
use crate::qr;
use maud::{Markup, html};
use sayso_model::Moment;
use sayso_people::db::Notebook;
use sayso_web::Error;
use sayso_web::layout::{Tab, bare, layout, layout_with};
use sayso_wording::events::home_name;
use sayso_wording::{Locale, say};

/// Which are linked.
pub fn list(inside: &Inside, notebooks: &[Notebook]) -> Markup {
    let (page, l) = (&inside.page, &inside.page.locale);
    layout(
        page,
        Tab::None,
        &say!(l, linked::notebooks),
        html! {
            p { strong { (say!(l, calendar::of_home, home = home_name(l, &page.story))) } }
            p { (say!(l, linked::notebooks_what)) }
            @if notebooks.is_empty() { p data-test="no-notebook" { (say!(l, linked::no_notebook)) } }
            ul.plain.stack { @for one in notebooks {
                @let name = if one.name.is_empty() { say!(l, linked::nameless) } else { one.name.clone() };
                li.card data-test="notebook" {
                    p { strong { (name) } }
                    p.quiet { (say!(l, linked::times, linked = when(inside, one.linked_at), heard = when(inside, one.seen_at))) }
                    // Unfolded before it is done: what ends, and what stays.
                    details {
                        summary { (say!(l, pairing::end)) span.unseen { ": " (name) } }
                        p { (say!(l, linked::unlinking_what)) }
                        form method="post" action=(format!("/sharing/notebooks/{}/end", one.id)) {
                            input type="hidden" name=(HOME) value=(page.home);
                            button data-test="end" { (say!(l, pairing::end)) span.unseen { ": " (name) } }
                        }
                    }
                }
            } }
            p { a.button.primary href="/sharing/notebooks/new" data-test="new" { (say!(l, linked::make_code)) } }
            p { a.link href="/sharing" { (say!(l, frame::who_sees)) } }
        },
    )
}

fn when(inside: &Inside, at: Moment) -> String {
    inside.page.locale.weekday_date_time(at, &inside.page.zone)
}

/// What is said before a code is made.
pub fn ask(inside: &Inside) -> Markup {
    let (page, l) = (&inside.page, &inside.page.locale);
    layout(
        page,
        Tab::None,
        &say!(l, linked::make_code),
        html! {
            p { strong { (say!(l, calendar::of_home, home = home_name(l, &page.story))) } }
            p { (say!(l, linked::code_what)) }
            p { (say!(l, linked::code_sees)) }
            @if holds_records(&page.story) { p.note data-test="holds-records" { (say!(l, linked::code_holds)) } }
            p.caution { (say!(l, linked::code_whoever)) }
            form method="post" action="/sharing/notebooks/new" {
                input type="hidden" name=(HOME) value=(page.home);
                button.primary.wide data-test="make" { (say!(l, linked::make_code)) }
            }
            p { a.link href="/sharing/notebooks" { (say!(l, linked::notebooks)) } }
        },
    )
}

/// The code's link, once.
pub fn made(inside: &Inside, link: &str, until: Moment) -> Result<Markup, Error> {
    let (page, l) = (&inside.page, &inside.page.locale);
    let code = qr::drawn(link, &say!(l, linked::qr))?;
    Ok(layout_with(
        page,
        Tab::None,
        &say!(l, linked::code),
        &[HANDS_ON],
        html! {
            p.caution { (say!(l, linked::code_once)) }
            (handed_on(l, link, "link"))
            p { (code) }
            p { (say!(l, sharing::holds, until = when(inside, until))) }
            ol { li { (say!(l, linked::step_open)) } li { (say!(l, linked::step_paste)) } li { (say!(l, linked::step_yes)) } }
            p { a.link href="/sharing/notebooks" { (say!(l, linked::notebooks)) } }
        },
    ))
}

/// What the link is for, where a browser opens it.
pub fn shown(l: &Locale) -> Markup {
    bare(
        l,
        &say!(l, linked::shown),
        html! {
            p { (say!(l, linked::shown_what)) }
            ol { li { (say!(l, linked::step_open)) } li { (say!(l, linked::step_paste)) } li { (say!(l, linked::step_yes)) } }
        },
    )
}
