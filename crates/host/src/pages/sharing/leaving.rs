//! Leaving the server with a home: its rows are erased, then its log.

use crate::asker::{Asker, HOME, Inside};
use crate::fault::told;
use crate::sweep;
use axum::response::{IntoResponse, Response};
use maud::{Markup, html};
use sayso_people::db::Member;
use sayso_people::{Capability, Role, Scope};
use sayso_web::Error;
use sayso_web::fields::{AGAIN, line, sent_again, summary};
use sayso_web::layout::{Tab, layout_with};
use sayso_web::typed::{Typed, again};
use sayso_wording::events::home_name;
use sayso_wording::{say, words};

pub async fn ask(asker: Asker) -> Result<Markup, Error> {
    let inside = asker.home(&[Capability::Leave]).await?;
    let others = other_keepers(&asker, &inside).await?;
    Ok(form(&asker, &inside, &others, &Typed::default()))
}

pub async fn leave(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let inside = asker.home(&[Capability::Leave]).await?;
    let mut typed = typed.only(&[HOME, "name"])?.read_by(inside.page.locale);
    inside.is_of(&typed)?;
    let (home, name) = (inside.page.home, home_name(&inside.page.locale, &inside.page.story));
    if !is_empty(&inside) && plain(typed.text("name")) != plain(&name) {
        typed.wrong("name", words!(sharing::not_the_name, name = name));
        let others = other_keepers(&asker, &inside).await?;
        return Ok(again(form(&asker, &inside, &others, &typed)));
    }
    asker.host.people.leave(&inside.leave, asker.now).await.map_err(told)?;
    // From here on nobody reaches the home any more, whatever becomes of its log.
    let erased = sweep::erase(&asker.host, home).await;
    if let Err(why) = &erased {
        tracing::error!("The log of a home that left could not be erased: {why}. The next sweep does it.");
    }
    Ok(gone(&asker, &name, erased.is_ok()).into_response())
}

/// Whether nothing is written in it: then there is nothing to take along, and no name to type.
fn is_empty(inside: &Inside) -> bool {
    inside.page.story.ledger().is_empty()
}

/// A name as it is compared: its letters and digits. A phone types other marks and spaces than a computer.
fn plain(name: &str) -> String {
    name.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}

fn backup_days(asker: &Asker) -> u32 {
    asker.host.people.lifetimes().backup_days
}

/// Who keeps the home besides, by name: one keeper leaves with it for all of them.
async fn other_keepers(asker: &Asker, inside: &Inside) -> Result<Vec<String>, Error> {
    let all = asker.host.people.members(Scope::Home(inside.page.home)).await.map_err(told)?;
    let keeps =
        |m: &&Member| m.membership.part.role() == Role::Keeper && m.membership.account != asker.signed.account.id;
    Ok(all.iter().filter(keeps).map(|m| m.name.to_string()).collect())
}

fn form(asker: &Asker, inside: &Inside, others: &[String], typed: &Typed) -> Markup {
    let (page, l) = (&inside.page, &inside.page.locale);
    let name = home_name(l, &page.story);
    let (days, lifetimes) = (backup_days(asker), asker.host.people.lifetimes());
    layout_with(
        page,
        Tab::None,
        &say!(l, sharing::leave),
        &[AGAIN],
        html! {
            (summary(typed))
            @if !is_empty(inside) { section {
                h2 { (say!(l, sharing::take_along)) }
                p { (say!(l, sharing::take_along_what)) }
                p { a.button href="/exchange/archive.tar" download { (say!(l, exchange::archive_save)) } }
            } }
            section {
                h2 { (say!(l, sharing::what_happens)) }
                ul {
                    li { (say!(l, sharing::erased)) }
                    li { (say!(l, sharing::stays)) }
                    li { (say!(l, sharing::stays_accounts, days = lifetimes.kept_days)) }
                    li { (say!(l, sharing::stays_notebooks, days = lifetimes.looks_days)) }
                    li { (say!(l, sharing::accounts_stay)) }
                    li { (say!(l, sharing::backups, days = days)) }
                    li { (say!(l, sharing::others_have)) }
                    li { (say!(l, sharing::phones)) }
                }
            }
            section {
                h2 { (say!(l, sharing::leave_now)) }
                (sent_again(l))
                p.caution { (say!(l, sharing::no_way_back)) }
                @if !others.is_empty() { p.caution data-test="other-keepers" { (say!(l, sharing::leave_for_all, names = l.and(others))) } }
                form method="post" action="/sharing/leave" .stack {
                    input type="hidden" name=(HOME) value=(page.home);
                    @if !is_empty(inside) { (line(typed, "name", &say!(l, sharing::type_name, name = &name), "", true)) }
                    button.wide data-test="leave" { (say!(l, sharing::leave_button)) }
                }
            }
            p { a href="/sharing" { (say!(l, sharing::back)) } }
        },
    )
}

fn gone(asker: &Asker, name: &str, erased: bool) -> Markup {
    let l = &asker.locale();
    asker.framed(
        &say!(l, sharing::gone_title),
        html! {
            @if erased { p data-test="erased" { (say!(l, sharing::gone, name = name)) } }
            @else { p.caution data-test="not-yet" { (say!(l, sharing::gone_not_yet, name = name)) } }
            p { (say!(l, sharing::backups, days = backup_days(asker))) }
            p { a.button href="/homes" { (say!(l, sharing::to_homes)) } }
        },
    )
}
