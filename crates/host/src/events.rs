//! Events from phones, for whichever of the account's homes: each is asked for by itself, and answered for itself.

use crate::fault::told;
use crate::host::Host;
use crate::signed::Signed;
use crate::stories::{Stories, story};
use axum::Json;
use axum::body::Bytes;
use axum::extract::State;
use axum::extract::rejection::BytesRejection;
use axum::http::HeaderMap;
use sayso_model::{Event, Fault, HomeId, Problem, Problems, Story};
use sayso_people::{Denied, HomeNow, Who, needs::may_append};
use sayso_store::Appended;
use sayso_web::Error;
use sayso_web::api::{Brought, Outcome};
use std::collections::BTreeMap;
use std::sync::Arc;

/// Takes a JSON array of events, as the notebook at home does.
///
/// # Errors
/// [`Error::NotSignedIn`]; [`Error::NotFresh`] where an event needs a fresh sign-in, and then nothing is kept;
/// [`Error::BadRequest`] where the body is no JSON array of events.
pub async fn append(
    State(host): State<Arc<Host>>,
    signed: Signed,
    headers: HeaderMap,
    body: Result<Bytes, BytesRejection>,
) -> Result<Json<Vec<Outcome>>, Error> {
    let locale = signed.locale(&headers);
    let brought = Brought::of(&locale, body)?;
    let asks = Asks::of(&host, signed).await?;
    let mut by_home: BTreeMap<HomeId, Vec<(usize, Event)>> = BTreeMap::new();
    let mut came: Vec<Option<Appended>> = Vec::new();
    for (place, event) in brought.sound().enumerate() {
        came.push(None);
        by_home.entry(event.home).or_default().push((place, event.clone()));
    }
    let mut allowed = Vec::new();
    for (home, events) in by_home {
        allowed.push((home, asks.allowed(home, events, &mut came).await?));
    }
    for (home, events) in allowed {
        let (places, events): (Vec<usize>, Vec<Event>) = events.into_iter().unzip();
        let outcomes = host.server.home(home).append(events).await?;
        for (place, outcome) in places.into_iter().zip(outcomes) {
            if let Some(slot) = came.get_mut(place) {
                *slot = Some(outcome);
            }
        }
    }
    brought.told(&locale, came.into_iter().flatten()).map(Json)
}

/// Who asks.
struct Asks<'a> {
    host: &'a Host,
    who: Who,
    fresh: bool,
}

impl<'a> Asks<'a> {
    async fn of(host: &'a Host, signed: Signed) -> Result<Self, Error> {
        let who = host.people.who(signed.account.id).await.map_err(told)?;
        let fresh = host.people.is_fresh(&signed.session, host.now());
        Ok(Self { host, who, fresh })
    }

    /// The events of a home that may be written; the others are answered.
    async fn allowed(
        &self,
        home: HomeId,
        events: Vec<(usize, Event)>,
        came: &mut [Option<Appended>],
    ) -> Result<Vec<(usize, Event)>, Error> {
        let (stories, now) = (Stories(&self.host.server), self.host.now());
        let known = self.host.people.known_to(&self.who, home, &stories, now).await.map_err(told)?;
        let story = match &known {
            Some(_) => story(self.host, home).await?,
            None => None,
        };
        let mut may = Vec::new();
        for (place, event) in events {
            match self.ask(&event, known.as_ref(), story.as_deref()) {
                Ok(()) => may.push((place, event)),
                // Kept on the phone until the person has signed in again; the rest of what came is, too.
                Err(Denied::NotFresh(_)) => return Err(Error::NotFresh),
                Err(why) => {
                    tracing::warn!("Account {} may not write an event into home {home}: {why}.", self.who.account);
                    if let Some(slot) = came.get_mut(place) {
                        *slot = Some(refused(why));
                    }
                }
            }
        }
        Ok(may)
    }

    fn ask(&self, event: &Event, known: Option<&HomeNow>, story: Option<&Story>) -> Result<(), Denied> {
        let first = |id| story.and_then(|s| s.ledger().first(id));
        may_append(&self.who, event, known, first, self.host.now(), self.fresh).map(drop)
    }
}

fn refused(why: Denied) -> Appended {
    let (field, fault) = match why {
        Denied::NothingHere => ("home", Fault::NotYourHome),
        Denied::NotToday => ("happened_at", Fault::NotYourDay),
        Denied::NotByRole(_) | Denied::NotFresh(_) => ("body", Fault::NotYourRole),
    };
    Appended::Refused(Problems(vec![Problem { field: field.into(), fault }]))
}
