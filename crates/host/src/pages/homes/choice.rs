//! The homes that an account can choose from.

use crate::asker::Asker;
use crate::fault::told;
use crate::news;
use crate::stories::Stories;
use crate::stories::story;
use crate::way;
use sayso_model::{AnimalCard, HomeId, Story};
use sayso_people::may::may;
use sayso_people::{Capability, MembershipId, Part, Scope, Who};
use sayso_web::{Error, Tab};
use std::sync::Arc;

/// A home that an account can choose.
pub struct Choice {
    /// Which.
    pub home: HomeId,
    /// All that is known of it.
    pub story: Arc<Story>,
    /// The role there; none for a coach.
    pub part: Option<(MembershipId, Part)>,
    /// The first page that is open now.
    pub first: Option<Tab>,
    /// What it shares at this moment with whoever comes as a coach, by the names of the purposes.
    pub shares: Vec<&'static str>,
    /// Whether a keeper of the server invited a new keeper to it, and whoever asks may refuse that.
    pub anew: bool,
    /// Whether the account may begin it, where nothing is written yet.
    pub begins: bool,
}

impl Choice {
    /// Where choosing it leads; none where nothing is open now.
    pub fn to(&self) -> Option<String> {
        if self.story.ledger().is_empty() {
            return self.begins.then(|| "/start".to_owned());
        }
        let active = self.story.animals().into_values().filter(|a| a.active);
        let animal = active.min_by(|a, b| a.name.cmp(&b.name).then(a.animal.cmp(&b.animal)));
        Some(self.first?.href(animal.map(|a: &AnimalCard| a.animal)))
    }
}

/// Homes that an account can choose: those it has a role in, and those that share something with it at this moment. No other
/// is told of.
///
/// # Errors
/// Where a database fails.
pub async fn choices(asker: &Asker, who: &Who) -> Result<Vec<Choice>, Error> {
    let (host, now) = (&asker.host, asker.now);
    let stories = Stories(&host.server);
    let mut all = Vec::new();
    for home in way::homes_of(host, who).await? {
        let Some(known) = host.people.known_to(who, home, &stories, now).await.map_err(told)? else { continue };
        let open = |capability: &Capability| may(who, *capability, home, Some(&known), now).is_ok();
        let held = who.memberships.iter().find(|m| m.part.scope() == Scope::Home(home));
        let shares = [Capability::SeeFigures, Capability::SeeLog];
        if held.is_none() && !shares.iter().any(open) {
            continue;
        }
        all.push(Choice {
            anew: open(&Capability::SeePeople) && !news::open_rescues(host, home, now).await?.is_empty(),
            home,
            story: story(host, home).await?.unwrap_or_default(),
            part: held.map(|m| (m.id, m.part)),
            first: Tab::ALL.into_iter().find(|tab| tab.opened_by().iter().any(open)),
            shares: shares
                .iter()
                .filter(|c| held.is_none() && open(c))
                .filter_map(|c| c.opened_by())
                .map(|p| p.name())
                .collect(),
            begins: open(&Capability::SettleHome),
        });
    }
    Ok(all)
}
