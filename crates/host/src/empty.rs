//! Homes in which nothing is written and to which nobody else belongs: whoever keeps such a one may just go, and it goes along.

use crate::fault::told;
use crate::host::Host;
use crate::stories::{Stories, story};
use crate::sweep;
use sayso_model::AccountId;
use sayso_people::may::may;
use sayso_people::{Allowed, Capability, MembershipId, Scope, Who};
use sayso_web::Error;

/// Lets the homes go that stand in the way of an account's going, of one of its roles or of all. Where anything else does, nothing
/// is changed; whether the way is free now.
///
/// # Errors
/// Where a database fails.
pub async fn go_along(host: &Host, account: AccountId, of: Option<MembershipId>) -> Result<bool, Error> {
    let Some(homes) = going_along(host, account, of).await? else { return Ok(false) };
    for leave in homes {
        host.people.leave(&leave, host.now()).await.map_err(told)?;
        if let Some(home) = leave.scope.home()
            && let Err(why) = sweep::erase(host, home).await
        {
            tracing::error!("The log of a home that left could not be erased: {why}. The next sweep does it.");
        }
    }
    Ok(true)
}

/// A place that would be without a keeper.
pub struct Alone {
    /// Which.
    pub scope: Scope,
    /// Whether it is a home in which nothing is written and to which nobody else belongs.
    pub is_empty: bool,
}

/// The places that nobody but this account keeps, of all its roles or of one.
///
/// # Errors
/// Where a database fails.
pub async fn kept_alone(host: &Host, who: &Who, of: Option<MembershipId>) -> Result<Vec<Alone>, Error> {
    let mut all = Vec::new();
    for held in who.memberships.iter().filter(|m| m.part.role().keeps() && of.is_none_or(|of| of == m.id)) {
        let scope = held.part.scope();
        let members = host.people.members(scope).await.map_err(told)?;
        if members.iter().filter(|m| m.membership.part.role().keeps()).count() > 1 {
            continue;
        }
        let is_empty = match scope.home() {
            Some(home) => members.len() == 1 && story(host, home).await?.is_none_or(|story| story.ledger().is_empty()),
            None => false,
        };
        all.push(Alone { scope, is_empty });
    }
    Ok(all)
}

/// Leave to leave with each home that would be without a keeper; none where a place would be in which there is something, or
/// someone else.
async fn going_along(host: &Host, account: AccountId, of: Option<MembershipId>) -> Result<Option<Vec<Allowed>>, Error> {
    let who = host.people.who(account).await.map_err(told)?;
    let mut all = Vec::new();
    for alone in kept_alone(host, &who, of).await? {
        let (Some(home), true) = (alone.scope.home(), alone.is_empty) else { return Ok(None) };
        let known = host.people.known_to(&who, home, &Stories(&host.server), host.now()).await.map_err(told)?;
        let leave = may(&who, Capability::Leave, home, known.as_ref(), host.now());
        all.push(leave.map_err(|why| told(why.into()))?);
    }
    Ok(Some(all))
}
