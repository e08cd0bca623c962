//! What a coach does at the desk: puts aside, brings back, marks, notes that they spoke. Of a home whose consent is open, asked for
//! anew; a home that is gone meanwhile is told as gone, and nothing is kept.

use crate::asker::Asker;
use crate::desk::{FORM, Kept, lines};
use crate::fault::told;
use crate::pages::desk::asked::{Asked, DAYS, FIELDS, PATH, Tab};
use crate::pages::desk::open;
use axum::response::Redirect;
use sayso_advisor::desk::{About, Extent, Mark};
use sayso_model::{AnimalId, HomeId, Label};
use sayso_people::Allowed;
use sayso_people::db::{Aside, Spoken};
use sayso_web::Error;
use sayso_web::typed::{Typed, named};
use sayso_wording::words;
use std::sync::Arc;

const DAY_S: f64 = 86_400.0;

fn fields(own: &[&'static str]) -> Vec<&'static str> {
    own.iter().copied().chain(FIELDS).collect()
}

/// A home that something is to be done about, while it is open.
struct Open {
    home: HomeId,
    leave: Allowed,
    kept: Arc<Kept>,
}

/// The home that a form names; none where it is not open to the coach any more.
async fn home_of(asker: &Asker, typed: &Typed) -> Result<Option<Open>, Error> {
    let who = asker.coach().await?;
    let home: HomeId = named(typed.text("home"), "home")?;
    let Some(leave) = open::leave(asker, &who, home).await? else { return Ok(None) };
    let kept = lines(&asker.host, &[home]).await?.kept.remove(&home);
    Ok(kept.map(|kept| Open { home, leave, kept }))
}

fn gone(asked: &Asked) -> Redirect {
    Redirect::to(&Asked { gone: "yes".into(), ..asked.clone() }.address(PATH))
}

pub async fn put_aside(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&fields(&["home", "animal", "need", "extent", "days"]))?;
    let asked = Asked::sent(&typed);
    let Some(Open { home, leave, kept }) = home_of(&asker, &typed).await? else { return Ok(gone(&asked)) };
    let animal: AnimalId = named(typed.text("animal"), "animal")?;
    let unclear = || Error::refused("need", words!(desk_page::unclear));
    let mark: Mark = serde_json::from_str(typed.text("need")).map_err(|_| unclear())?;
    if !kept.animals.contains_key(&animal) || mark.word.is_some_and(|word| !kept.words.contains_key(&word)) {
        return Err(unclear());
    }
    if mark.about == About::Safety {
        return Err(Error::refused("need", words!(desk_page::safety_stays)));
    }
    let extent: Extent = serde_json::from_str(typed.text("extent")).map_err(|_| unclear())?;
    let days: u16 = typed.text("days").parse().ok().filter(|days| DAYS.contains(days)).ok_or_else(unclear)?;
    let until = asker.now.plus_seconds(f64::from(days) * DAY_S);
    let need = serde_json::to_string(&mark).map_err(Error::internal)?;
    let extent = serde_json::to_string(&extent).map_err(Error::internal)?;
    let aside = Aside { home, animal, need, extent, at: asker.now, until };
    asker.host.people.put_aside(&leave, &aside).await.map_err(told)?;
    Ok(Redirect::to(&Asked { put: animal.to_string(), ..asked }.address(PATH)))
}

pub async fn bring_back(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&fields(&["animal", "need"]))?;
    asker.coach().await?;
    let animal: AnimalId = named(typed.text("animal"), "animal")?;
    let people = &asker.host.people;
    people.bring_back(asker.signed.account.id, animal, Some(typed.text("need"))).await.map_err(told)?;
    Ok(Redirect::to(&Asked::sent(&typed).address(PATH)))
}

pub async fn mark(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    let mut typed = typed.only(&fields(&["home", "mark"]))?;
    let asked = Asked::sent(&typed);
    let Some(Open { home, leave, .. }) = home_of(&asker, &typed).await? else { return Ok(gone(&asked)) };
    let mark: Option<Label> = typed.label_or_none("mark");
    if !typed.right() {
        return Err(Error::refused("mark", words!(desk_page::mark_wrong)));
    }
    asker.host.people.mark(&leave, home, mark.as_ref()).await.map_err(told)?;
    Ok(Redirect::to(&asked.address(PATH)))
}

pub async fn spoken(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&fields(&["home", "from"]))?;
    let asked = Asked::sent(&typed);
    let Some(Open { home, leave, kept }) = home_of(&asker, &typed).await? else { return Ok(gone(&asked)) };
    let bytes = kept.bytes().map_err(Error::internal)?;
    let now = Spoken { at: asker.now, form: FORM, bytes };
    asker.host.people.speaks(&leave, home, &now).await.map_err(told)?;
    Ok(Redirect::to(&asked.address(if typed.text("from") == "week" { Tab::Week } else { Tab::Needs }.path())))
}
