//! Someone's role in a home: changed, or ended.

use super::invite::{FIELDS, fields, keep_card, part_of, taken};
use crate::asker::{Asker, HOME, Inside};
use crate::fault::{told, told_of_role};
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_people::db::Member;
use sayso_people::{Capability, MembershipId, OsSecrets, Scope};
use sayso_web::Error;
use sayso_web::fields::{AGAIN, sent_again, summary};
use sayso_web::layout::{Tab, layout_with};
use sayso_web::told::no_such_page;
use sayso_web::typed::{Typed, again, named};
use sayso_wording::say;
use uuid::Uuid;

pub async fn ask(asker: Asker, Path(id): Path<String>) -> Result<Markup, Error> {
    let inside = asker.home(&[Capability::ManagePeople]).await?;
    let member = member(&asker, &inside, &id).await?;
    let part = member.membership.part;
    let today = inside.page.now.day(&inside.page.zone);
    let typed = Typed::default()
        .with("role", part.role().name())
        .with_some("person", part.person())
        .with("first", part.days().map_or(today, |d| d.first))
        .with("last", part.days().map_or(today.plus(6), |d| d.last));
    let weekdays = part.days().map_or(0b111_1111, |d| d.weekdays);
    let typed = (0..7).filter(|bit| weekdays & (1 << bit) != 0).fold(typed, |typed, bit| typed.with("weekdays", bit));
    Ok(form(&inside, &member, &typed))
}

pub async fn change(asker: Asker, Path(id): Path<String>, typed: Typed) -> Result<Response, Error> {
    let inside = asker.home(&[Capability::ManagePeople]).await?;
    let mut typed = typed.only(&FIELDS)?.read_by(inside.page.locale);
    inside.is_of(&typed)?;
    let member = member(&asker, &inside, &id).await?;
    let taken = taken(&asker, &inside, Some(member.membership.id)).await?;
    let Some((part, card)) = part_of(&inside, &taken, &mut typed) else {
        return Ok(again(form(&inside, &member, &typed)));
    };
    keep_card(&inside, card).await?;
    let (id, people) = (member.membership.id, &asker.host.people);
    people.change_membership(&inside.leave, id, &part, asker.now, &mut OsSecrets).await.map_err(told_of_role)?;
    Ok(Redirect::to("/sharing#people").into_response())
}

pub async fn end(asker: Asker, Path(id): Path<String>, typed: Typed) -> Result<Redirect, Error> {
    let inside = asker.home(&[Capability::ManagePeople]).await?;
    inside.is_of(&typed)?;
    let member = member(&asker, &inside, &id).await?;
    asker.host.people.end_membership(&inside.leave, member.membership.id, asker.now).await.map_err(told_of_role)?;
    Ok(Redirect::to(if member.membership.account == asker.signed.account.id { "/homes" } else { "/sharing#people" }))
}

async fn member(asker: &Asker, inside: &Inside, id: &str) -> Result<Member, Error> {
    let id = MembershipId(named::<Uuid>(id, "role")?);
    let all = asker.host.people.members(Scope::Home(inside.page.home)).await.map_err(told)?;
    match all.into_iter().find(|m| m.membership.id == id) {
        Some(member) => Ok(member),
        None => Err(no_such_page().await),
    }
}

fn form(inside: &Inside, member: &Member, typed: &Typed) -> Markup {
    let (page, l, name) = (&inside.page, &inside.page.locale, member.name.as_str());
    let to = format!("/sharing/people/{}", member.membership.id);
    layout_with(
        page,
        Tab::None,
        &say!(l, sharing::role_of, name = name),
        &[AGAIN],
        html! {
            (sent_again(l))
            (summary(typed))
            form method="post" action=(to) .stack {
                (fields(page, typed))
                button.primary.wide { (say!(l, setup::keep)) }
            }
            h2 { (say!(l, sharing::end_role)) }
            p { (say!(l, sharing::end_role_what, name = name)) }
            form method="post" action=(format!("{to}/end")) {
                input type="hidden" name=(HOME) value=(page.home);
                button data-test="end-role" { (say!(l, sharing::end_role_of, name = name)) }
            }
            p { a href="/sharing#people" { (say!(l, sharing::back)) } }
        },
    )
}
