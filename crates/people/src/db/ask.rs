//! The one question that every page and address of a home asks.

use super::{HomeState, People, Session};
use crate::capability::Capability;
use crate::error::Error;
use crate::may::{Allowed, Denied, HomeNow, may, may_in_club, may_on_server};
use crate::membership::{Scope, Who};
use sayso_model::{ClubId, HomeId, Moment, Story};
use std::error::Error as StdError;
use std::future::Future;
use std::sync::Arc;

/// Where it is read to whom homes are open. Asked only for homes that the account may have to do with.
pub trait Homes: Sync {
    /// What of a home's log decides to whom it is open: a story of its card, its consents and what amends them. What else the
    /// story holds does not matter. None where nothing is written down yet.
    ///
    /// # Errors
    /// Where its log cannot be read.
    fn opens(
        &self,
        home: HomeId,
    ) -> impl Future<Output = Result<Option<Arc<Story>>, Box<dyn StdError + Send + Sync>>> + Send;
}

/// A request that was let into a home.
#[derive(Clone, Debug)]
pub struct Visit {
    /// By which leave.
    pub leave: Allowed,
    /// Whose, with every role.
    pub who: Who,
    /// The home as far as it decides.
    pub known: HomeNow,
}

impl People {
    /// Whether the account of a session may do something in a home now. A look is noted where it is one. To be asked at each
    /// request: nothing is remembered, so that what was ended ends at once.
    ///
    /// An account that has nothing to do with a home gets its answer before anything of the home is read, whether there is such
    /// a home or not.
    ///
    /// # Errors
    /// [`crate::Denied`] unless granted.
    pub async fn may(
        &self,
        session: &Session,
        capability: Capability,
        home: HomeId,
        homes: &impl Homes,
        now: Moment,
    ) -> Result<Allowed, Error> {
        let who = self.who(session.account).await?;
        let visit = self.visit(session, who, &[capability], home, homes, now).await?;
        self.looked(&visit, "", now).await?;
        Ok(visit.leave)
    }

    /// The same for a page that one of several capabilities opens: by the first that is granted. `who` is the
    /// session's account as [`People::who`] tells it, read for this request. Whether it is a look is for the caller to say
    /// ([`People::looked`]): a frame shows nothing of a home.
    ///
    /// # Errors
    /// Why not: not today, else by the last of them.
    pub async fn visit(
        &self,
        session: &Session,
        who: Who,
        any_of: &[Capability],
        home: HomeId,
        homes: &impl Homes,
        now: Moment,
    ) -> Result<Visit, Error> {
        let known = self.known_to(&who, home, homes, now).await?;
        let asked = |capability: &Capability| may(&who, *capability, home, known.as_ref(), now);
        let mut found = Err(Denied::NothingHere);
        for capability in any_of {
            let answer = asked(capability);
            // That today is not one of the days agreed says more than that the role does not reach to the last of them.
            if answer.is_ok() || found != Err(Denied::NotToday) {
                found = answer;
            }
            if found.is_ok() {
                break;
            }
        }
        let leave = found?;
        self.fresh(session, leave.capability, now)?;
        Ok(Visit { leave, who, known: known.ok_or(Denied::NothingHere)? })
    }

    /// Notes the look of a visit at a page, by the page's name, where it is one.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn looked(&self, visit: &Visit, page: &str, now: Moment) -> Result<(), Error> {
        if visit.leave.capability.looks() && visit.leave.role.looks_are_noted() {
            self.note_look(&visit.leave, page, visit.known.home, now).await?;
        }
        Ok(())
    }

    /// A home as far as it concerns an account; none where it does not, or is not here.
    ///
    /// # Errors
    /// Where the database or the home's log fails.
    pub async fn known_to(
        &self,
        who: &Who,
        home: HomeId,
        homes: &impl Homes,
        now: Moment,
    ) -> Result<Option<HomeNow>, Error> {
        let member = who.memberships.iter().any(|m| m.part.scope() == Scope::Home(home));
        let shares = self.may_share_with(who).await?.contains(&home);
        // Asked whether it matters or not, so that it takes as long for a foreign home as for an unknown one.
        let here = self.home_state(home).await? == HomeState::Here;
        if here && (member || shares) { self.read(home, homes, now).await.map(Some) } else { Ok(None) }
    }

    /// A home as its log and this server tell it; none where it is not here.
    ///
    /// # Errors
    /// Where the database or the home's log fails.
    pub async fn home_now(&self, home: HomeId, homes: &impl Homes, now: Moment) -> Result<Option<HomeNow>, Error> {
        let here = self.home_state(home).await? == HomeState::Here;
        if here { self.read(home, homes, now).await.map(Some) } else { Ok(None) }
    }

    async fn read(&self, home: HomeId, homes: &impl Homes, now: Moment) -> Result<HomeNow, Error> {
        let witnessed = self.witnessed(home).await?;
        let story = homes.opens(home).await.map_err(Error::Home)?.unwrap_or_default();
        Ok(HomeNow::of(home, &story, &witnessed, now))
    }

    /// Whether the account of a session may do something in a club now.
    ///
    /// # Errors
    /// [`crate::Denied`] unless granted.
    pub async fn may_in_club(
        &self,
        session: &Session,
        capability: Capability,
        club: ClubId,
        now: Moment,
    ) -> Result<Allowed, Error> {
        let leave = may_in_club(&self.who(session.account).await?, capability, club)?;
        self.fresh(session, capability, now)?;
        Ok(leave)
    }

    /// Whether the account of a session may do something on the server now.
    ///
    /// # Errors
    /// [`crate::Denied`] unless granted.
    pub async fn may_on_server(
        &self,
        session: &Session,
        capability: Capability,
        now: Moment,
    ) -> Result<Allowed, Error> {
        let leave = may_on_server(&self.who(session.account).await?, capability)?;
        self.fresh(session, capability, now)?;
        Ok(leave)
    }
}
