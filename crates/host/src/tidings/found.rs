//! What is new to somebody: asked at the moment of the letter, by the one rule that pages ask.

use crate::desk::{LATELY_S, Witnessed, all_lines, for_coach, for_home};
use crate::fault::told;
use crate::host::Host;
use crate::stories::opening;
use sayso_model::{AccountId, HomeId, Moment};
use sayso_people::db::Tiding;
use sayso_people::table::{Grant, grant};
use sayso_people::{Capability, Part, Who};
use sayso_web::Error;
use std::collections::BTreeSet;

/// What is new to somebody, and was not told.
pub struct News {
    /// All of it.
    pub all: BTreeSet<Tiding>,
    /// Homes in which something is new for a coach.
    pub homes: usize,
    /// Things that coaches sent to the person's own homes.
    pub things: usize,
    /// The home to which all of them were sent; none where there are several.
    pub sent_to: Option<HomeId>,
}

/// What is new to an account since a moment, of the last weeks, and was not told.
///
/// # Errors
/// Where a database fails.
pub async fn news(host: &Host, account: AccountId, since: Moment, now: Moment) -> Result<News, Error> {
    let since = since.max(now.plus_seconds(-LATELY_S));
    let who = host.people.who(account).await.map_err(told)?;
    let shares = host.people.shares_since(&who).await.map_err(told)?;
    let coached: Vec<HomeId> = shares.iter().map(|(home, _)| *home).collect();
    // Where no coach sees anything, none has sent anything.
    let with_coaches: BTreeSet<HomeId> = host.people.shared_with_coaches().await.map_err(told)?.into_iter().collect();
    let own = who.memberships.iter().filter_map(|m| m.part.scope().home()).filter(|home| with_coaches.contains(home));
    let own: BTreeSet<HomeId> = own.collect();

    let stories = opening(&host.server, &coached).await?;
    let open = host.people.may_in_each(&who, Capability::Advise, &stories, now).await.map_err(told)?;
    let open: Vec<HomeId> = open.into_keys().collect();
    let lines = all_lines(host, &open).await?;
    let mut of_coach = for_coach(&Witnessed::of(host, &lines).await?, account, &lines, (since, now));
    let begun = shares.iter().filter(|(home, at)| *at > since && open.contains(home));
    of_coach.extend(begun.map(|(home, _)| Tiding { home: *home, what: home.0 }));

    let stories = opening(&host.server, &own.into_iter().collect::<Vec<_>>()).await?;
    let theirs = host.people.may_in_each(&who, Capability::Agree, &stories, now).await.map_err(told)?;
    let theirs: Vec<HomeId> = theirs.into_keys().collect();
    let lines = all_lines(host, &theirs).await?;
    let of_home = for_home(&Witnessed::of(host, &lines).await?, account, &lines, (since, now));

    let of_coach = host.people.untold(account, &of_coach).await.map_err(told)?;
    let of_home = host.people.untold(account, &of_home).await.map_err(told)?;
    let homes = of_coach.iter().map(|tiding| tiding.home).collect::<BTreeSet<_>>().len();
    let things = of_home.len();
    let one = of_home.first().map(|tiding| tiding.home);
    let sent_to = one.filter(|home| of_home.iter().all(|tiding| tiding.home == *home));
    Ok(News { all: of_coach.into_iter().chain(of_home).collect(), homes, things, sent_to })
}

/// Whether there is ever anything to tell an account: it coaches, or answers coaches in a home.
#[must_use]
pub fn concern(who: &Who) -> bool {
    let has = |part: &Part, capability| grant(part.role(), capability) == Grant::Yes;
    who.memberships.iter().any(|m| has(&m.part, Capability::Agree) || has(&m.part, Capability::SeeDesk))
}
