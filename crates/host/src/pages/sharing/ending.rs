//! All sharing ended in one step: every consent that opens something now, or would by itself.

use super::around::Names;
use super::consent::write;
use super::past::{Giving, Past};
use super::view::to_what;
use crate::asker::{Asker, HOME};
use axum::response::Redirect;
use maud::{Markup, html};
use sayso_model::ConsentTakenBack;
use sayso_people::Capability;
use sayso_web::Error;
use sayso_web::layout::{Tab, layout};
use sayso_web::typed::Typed;
use sayso_wording::say;
use std::collections::BTreeSet;

pub async fn ask(asker: Asker) -> Result<Markup, Error> {
    let inside = asker.home(&[Capability::TakeBack]).await?;
    let (page, l, past) = (&inside.page, &inside.page.locale, Past::of(&inside, &[]));
    let all: Vec<&Giving> = past.standing(page.now).collect();
    let names = Names::of(&asker, all.iter().filter_map(|one| one.consent.coach())).await?;
    let mut what: Vec<String> = all.iter().map(|one| to_what(l, &names, one.consent)).collect();
    let mut told = BTreeSet::new();
    what.retain(|one| told.insert(one.clone()));
    let body = html! {
        @if what.is_empty() { p { (say!(l, sharing::consent_none)) } }
        @else {
            p { (say!(l, sharing::end_all_what)) }
            ul { @for one in &what { li data-test="ends" { (one) } } }
            form method="post" action="/sharing/end" {
                input type="hidden" name=(HOME) value=(page.home);
                button.primary.wide data-test="end-all-now" { (say!(l, sharing::end_all_now)) }
            }
            p.quiet { (say!(l, sharing::already_seen)) }
        }
        p { a href="/sharing" { (say!(l, sharing::back)) } }
    };
    Ok(layout(page, Tab::None, &say!(l, sharing::end_all), body))
}

/// Asks for no fresh sign-in, as opening does: whoever can reach the page may close.
pub async fn end(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    let inside = asker.home(&[Capability::TakeBack]).await?;
    inside.is_of(&typed.only(&[HOME])?)?;
    let past = Past::of(&inside, &[]);
    let back = |one: &Giving| ConsentTakenBack { consent: one.consent, given: one.id };
    write(&asker, &inside, past.standing(asker.now).map(back).collect()).await?;
    Ok(Redirect::to("/sharing#consent"))
}
