//! Who asks for one of the server's own pages, and what for.

use crate::asked::AnyOf;
use crate::fault::told;
use crate::gate;
use crate::host::Host;
use crate::inside;
use crate::signed::Signed;
use crate::to_home::ToHome;
use crate::way;
use axum::extract::FromRequestParts;
use axum::http::HeaderMap;
use axum::http::request::Parts;
use maud::{Markup, html};
use sayso_model::{ClubId, Moment};
use sayso_people::needs::clubs_coached;
use sayso_people::{Allowed, Capability, Denied, HomeNow, Who};
use sayso_web::layout::{bare_with, doors, wide_with};
use sayso_web::page::EvenEmpty;
use sayso_web::reading::Reader;
use sayso_web::told::no_such_page;
use sayso_web::typed::Typed;
use sayso_web::{Error, Page};
use sayso_wording::{Locale, Words, words};
use std::sync::Arc;

/// Field of a form that names the home it was shown for: another tab may have chosen another one since.
pub const HOME: &str = "home";

/// Someone signed in, with their request.
pub struct Asker {
    /// The server.
    pub host: Arc<Host>,
    /// Who.
    pub signed: Signed,
    /// The time of the request.
    pub now: Moment,
    parts: Parts,
}

impl FromRequestParts<Arc<Host>> for Asker {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, host: &Arc<Host>) -> Result<Self, Error> {
        let signed = Signed::from_request_parts(parts, host).await?;
        if let Some(reader) = parts.extensions.get::<Reader>() {
            reader.is(signed.locale(&parts.headers));
        }
        Ok(Self { host: Arc::clone(host), signed, now: host.now(), parts: parts.clone() })
    }
}

/// The chosen home, let into.
pub struct Inside {
    /// By which leave.
    pub leave: Allowed,
    /// It, as far as it decides who may do what.
    pub known: HomeNow,
    /// Its page.
    pub page: Page,
}

impl Inside {
    /// That a form was shown for this home.
    ///
    /// # Errors
    /// [`Error::Refused`] where it was another one's.
    pub fn is_of(&self, typed: &Typed) -> Result<(), Error> {
        let same = typed.text(HOME) == self.page.home.to_string();
        if same { Ok(()) } else { Err(Error::refused(HOME, words!(sharing::other_home))) }
    }
}

impl Asker {
    /// Asks for a capability in the home that this browser is about.
    ///
    /// # Errors
    /// [`Error::NotFound`] without a home; [`Error::Forbidden`], [`Error::NotFresh`].
    pub async fn home(&self, any_of: AnyOf) -> Result<Inside, Error> {
        let chosen = way::chosen(&self.host, &self.signed, &self.parts.headers).await?;
        let Some(to) = chosen else { return Err(no_such_page().await) };
        if way::was_lost(&self.parts.headers, &to.homes) {
            return Err(Error::NotFound(words!(homes::lost)));
        }
        let ToHome { home, .. } = to;
        let (leave, may) = gate::visit(&self.host, &self.signed, any_of, ("", true, self.locale()), to).await?;
        let (known, mut parts) = (may.known.clone(), self.parts.clone());
        parts.extensions.insert(may);
        parts.extensions.insert(EvenEmpty);
        let page = Page::from_request_parts(&mut parts, &inside::state(&self.host, home)).await?;
        Ok(Inside { leave, known, page })
    }

    /// Asks for a capability in a club.
    ///
    /// # Errors
    /// [`Error::NotFound`] for a club that the account has nothing to do with; [`Error::Forbidden`], [`Error::NotFresh`].
    pub async fn club(&self, capability: Capability, club: ClubId) -> Result<Allowed, Error> {
        let asked = self.host.people.may_in_club(&self.signed.session, capability, club, self.now).await;
        asked.map_err(|why| by_role(why, words!(club::not_by_role)))
    }

    /// Asks for the desk of a coach; who asks, with every role.
    ///
    /// # Errors
    /// [`Error::NotFound`] where the account coaches in no club.
    pub async fn coach(&self) -> Result<Who, Error> {
        let who = self.host.people.who(self.signed.account.id).await.map_err(told)?;
        let Some(club) = clubs_coached(&who).next() else { return Err(no_such_page().await) };
        self.club(Capability::SeeDesk, club).await?;
        Ok(who)
    }

    /// Asks for a capability on the server.
    ///
    /// # Errors
    /// [`Error::NotFound`] where the account keeps no server; [`Error::Forbidden`], [`Error::NotFresh`].
    pub async fn server(&self, capability: Capability) -> Result<Allowed, Error> {
        let asked = self.host.people.may_on_server(&self.signed.session, capability, self.now).await;
        asked.map_err(|why| by_role(why, words!(server::not_by_role)))
    }

    /// Whether the person proved who they are in the last minutes.
    pub fn is_fresh(&self) -> bool {
        self.host.people.is_fresh(&self.signed.session, self.now)
    }

    /// How the person reads.
    pub fn locale(&self) -> Locale {
        self.signed.locale(self.headers())
    }

    /// What the browser sent along.
    pub const fn headers(&self) -> &HeaderMap {
        &self.parts.headers
    }

    /// A page that is about no home.
    pub fn framed(&self, title: &str, body: Markup) -> Markup {
        self.framed_with(&[], title, body)
    }

    /// The same with ES modules.
    pub fn framed_with(&self, modules: &[&str], title: &str, body: Markup) -> Markup {
        let l = self.locale();
        bare_with(&l, title, modules, html! { (body) (doors(&l, self.signed.account.name.as_str())) })
    }

    /// The same, as wide as the screen has use for.
    pub fn wide_with(&self, modules: &[&str], title: &str, body: Markup) -> Markup {
        let l = self.locale();
        wide_with(&l, title, modules, html! { (body) (doors(&l, self.signed.account.name.as_str())) })
    }
}

/// A role that does not reach so far is told in the words of the place.
fn by_role(why: sayso_people::Error, words: Words) -> Error {
    match why {
        sayso_people::Error::Denied(Denied::NotByRole(_)) => Error::Forbidden(words),
        other => told(other),
    }
}
