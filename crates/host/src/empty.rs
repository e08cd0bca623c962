//! Homes in which nothing is written and to which nobody else belongs: whoever keeps such a one may just go, and it goes along.

use crate::fault::told;
use crate::host::Host;
use crate::stories::{Stories, story};
use crate::sweep;
use sayso_model::AccountId;
use sayso_people::may::may;
use sayso_people::{Allowed, Capability, MembershipId};
use sayso_web::Error;

/// Lets the homes go that stand in the way of an account's going, of one of its roles or of all. Where anything else does, nothing
/// is changed; whether the way is free now.
///
/// # Errors
/// Where a database fails.
pub async fn go_along(host: &Host, account: AccountId, of: Option<MembershipId>) -> Result<bool, Error> {
    let Some(homes) = kept_alone(host, account, of).await? else { return Ok(false) };
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

/// Leave to leave with each home that would be without a keeper; none where a place would be in which there is something, or
/// someone else.
async fn kept_alone(host: &Host, account: AccountId, of: Option<MembershipId>) -> Result<Option<Vec<Allowed>>, Error> {
    let who = host.people.who(account).await.map_err(told)?;
    let mut all = Vec::new();
    for held in who.memberships.iter().filter(|m| m.part.role().keeps() && of.is_none_or(|of| of == m.id)) {
        let members = host.people.members(held.part.scope()).await.map_err(told)?;
        if members.iter().filter(|m| m.membership.part.role().keeps()).count() > 1 {
            continue;
        }
        let Some(home) = held.part.scope().home() else { return Ok(None) };
        let empty = story(host, home).await?.is_none_or(|story| story.ledger().is_empty());
        if !empty || members.len() > 1 {
            return Ok(None);
        }
        let known = host.people.known_to(&who, home, &Stories(&host.server), host.now()).await.map_err(told)?;
        let leave = may(&who, Capability::Leave, home, known.as_ref(), host.now());
        all.push(leave.map_err(|why| told(why.into()))?);
    }
    Ok(Some(all))
}
