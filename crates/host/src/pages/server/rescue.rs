//! A home that lost its way in gets a new keeper. Who keeps the server gives the link and sees nothing of the home.

use super::act::{back, wrong};
use crate::asker::Asker;
use crate::fault::told;
use crate::links;
use crate::mailing;
use crate::pages::invited;
use crate::qr;
use axum::response::{IntoResponse, Response};
use maud::html;
use sayso_model::{AccountId, HomeId, Zone};
use sayso_people::{Allowed, Capability, Email, OsSecrets, Role};
use sayso_web::Error;
use sayso_web::typed::Typed;
use sayso_wording::{Words, say, words};

/// The field of the form.
const WHOSE: &str = "whose";

pub async fn invite_anew(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let by = asker.server(Capability::Host).await?;
    let typed = typed.only(&["whose"])?;
    let home = match meant(&asker, &by, typed.text("whose").trim()).await? {
        Ok(home) => home,
        Err(what) => return wrong(&asker, typed, WHOSE, what).await,
    };
    let made = match asker.host.people.invite_keeper_anew(&by, home, asker.now, &mut OsSecrets).await {
        Err(sayso_people::Error::NotValid | sayso_people::Error::Left) => {
            return wrong(&asker, typed, WHOSE, unknown()).await;
        }
        Err(sayso_people::Error::Taken) => return wrong(&asker, typed, WHOSE, words!(server::anew_open)).await,
        made => made.map_err(told)?,
    };
    tracing::warn!("Account {} invited a new keeper to home {home}, which lost its way in.", by.account);
    mailing::send_all(&asker.host, made.letters);
    let l = &asker.locale();
    let link = links::join(&asker.host.public_url, &made.secret);
    let (from, until) =
        (invited::when(l, made.opens_at, &Zone::utc()), invited::when(l, made.expires_at, &Zone::utc()));
    let body = html! {
        p.caution { (say!(l, sharing::shown_once, count = 1)) }
        (invited::handed_on(l, &link, "link"))
        p { (qr::drawn(&link, &say!(l, sharing::qr))?) }
        p data-test="anew-from" { (say!(l, server::anew_from, from = from, until = until)) }
        p.quiet { (say!(l, server::anew_told)) }
        (back(&asker))
    };
    Ok(asker.framed_with(&[invited::HANDS_ON], &say!(l, sharing::invitation), body).into_response())
}

fn unknown() -> Words {
    words!(server::anew_unknown)
}

/// The home that is meant: by its id, or by the account that keeps it; else why none is.
async fn meant(asker: &Asker, by: &Allowed, text: &str) -> Result<Result<HomeId, Words>, Error> {
    let people = &asker.host.people;
    let id = text.parse::<HomeId>().ok();
    if let Some(home) = id
        && people.home_state(home).await.map_err(told)? == sayso_people::db::HomeState::Here
    {
        return Ok(Ok(home));
    }
    let account = match (text.parse::<AccountId>(), Email::new(text)) {
        (Ok(account), _) => Some(account),
        (_, Ok(email)) => people.account_at(by, &email).await.map_err(told)?,
        (Err(_), Err(_)) => None,
    };
    let Some(account) = account else { return Ok(Err(unknown())) };
    let who = people.who(account).await.map_err(told)?;
    let kept = who.memberships.iter().filter(|m| m.part.role() == Role::Keeper).filter_map(|m| m.part.scope().home());
    Ok(match kept.collect::<Vec<_>>().as_slice() {
        [one] => Ok(*one),
        [] => Err(unknown()),
        _ => Err(words!(server::anew_several)),
    })
}
