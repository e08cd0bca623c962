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
use sayso_model::talks::plans_inviting;
use sayso_model::{Body, Event, Fault, HomeId, Label, Problem, Problems, ProposalAnswer, Story};
use sayso_people::may::may;
use sayso_people::{
    Allowed, Capability, Denied, HomeNow, Who,
    needs::{asks_passed, goes_by, may_append},
};
use sayso_store::Appended;
use sayso_web::Error;
use sayso_web::api::{Brought, Outcome, plan_refused};
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
        let taken = events.iter().map(|to| to.event.clone()).collect();
        let outcomes = host.server.home(home).append(taken).await?;
        for (Writes { place, event, proposes }, outcome) in events.into_iter().zip(outcomes) {
            if let (Some(by), Appended::New) = (proposes, &outcome) {
                host.people.witness_proposal(&by, &event, host.now()).await.map_err(told)?;
            }
            if let Some(slot) = came.get_mut(place) {
                *slot = Some(outcome);
            }
        }
    }
    brought.told(&locale, came.into_iter().flatten()).map(Json)
}

/// An event that may be written.
struct Writes {
    /// Its place in what came.
    place: usize,
    event: Event,
    /// By which leave, where it is a coach's proposal: then it is remembered who wrote it.
    proposes: Option<Allowed>,
}

/// Who asks.
struct Asks<'a> {
    host: &'a Host,
    who: Who,
    name: Label,
    fresh: bool,
}

impl<'a> Asks<'a> {
    async fn of(host: &'a Host, signed: Signed) -> Result<Self, Error> {
        let who = host.people.who(signed.account.id).await.map_err(told)?;
        let fresh = host.people.is_fresh(&signed.session, host.now());
        Ok(Self { host, who, name: signed.account.name, fresh })
    }

    /// The events of a home that may be written; the others are answered.
    async fn allowed(
        &self,
        home: HomeId,
        events: Vec<(usize, Event)>,
        came: &mut [Option<Appended>],
    ) -> Result<Vec<Writes>, Error> {
        let (stories, now) = (Stories(&self.host.server), self.host.now());
        let known = self.host.people.known_to(&self.who, home, &stories, now).await.map_err(told)?;
        // The log is read where something in it decides alone: a tap waits for no more than it needs.
        let decides = events.iter().any(|(_, event)| goes_by(&event.body).is_some() || plans_inviting(&event.body));
        let story = if known.is_some() && decides { story(self.host, home).await? } else { None };
        let passes = events.iter().any(|(_, event)| asks_passed(&event.body));
        let known = match (known, &story) {
            (Some(known), Some(story)) if passes => Some(known.with_talk(story, now)),
            (known, _) => known,
        };
        let mut may = Vec::new();
        for (place, event) in events {
            match self.ask(&event, known.as_ref(), story.as_deref()) {
                // Given here it would open nothing: nobody saw its words being read.
                Ok(_) if matches!(event.body.stands_as(), Body::ConsentGiven(_)) => {
                    if let Some(slot) = came.get_mut(place) {
                        *slot = Some(refused_for("body", Fault::OnItsPage));
                    }
                }
                Ok(proposes) => match story.as_deref().and_then(|story| plan_refused(story, &event)) {
                    Some(problems) => {
                        if let Some(slot) = came.get_mut(place) {
                            *slot = Some(Appended::Refused(problems));
                        }
                    }
                    None => may.push(Writes { place, event, proposes }),
                },
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

    fn ask(&self, event: &Event, known: Option<&HomeNow>, story: Option<&Story>) -> Result<Option<Allowed>, Denied> {
        let (first, now) = (|id| story.and_then(|s| s.ledger().first(id)), self.host.now());
        may_append(&self.who, event, known, first, now, self.fresh)?;
        if let Body::ProposalAnswer(ProposalAnswer { by: Some(by), .. }) = &event.body
            && by.name != self.name
        {
            return Err(Denied::NotYourName);
        }
        let Body::Proposal(proposal) = &event.body else { return Ok(None) };
        if proposal.from.name != self.name {
            return Err(Denied::NotYourName);
        }
        may(&self.who, Capability::Advise, event.home, known, now).map(Some)
    }
}

fn refused(why: Denied) -> Appended {
    let (field, fault) = match why {
        Denied::NothingHere => ("home", Fault::NotYourHome),
        Denied::NotToday => ("happened_at", Fault::NotYourDay),
        Denied::NotYourName => ("body.from", Fault::NotYourAccount),
        Denied::NotByRole(_) | Denied::NotFresh(_) => ("body", Fault::NotYourRole),
    };
    refused_for(field, fault)
}

fn refused_for(field: &str, fault: Fault) -> Appended {
    Appended::Refused(Problems(vec![Problem { field: field.into(), fault }]))
}
