//! Where a role is: what the place is called, its zone, and the page one begins on.

use crate::fault::told;
use crate::host::Host;
use crate::stories::story;
use sayso_model::{Story, Zone};
use sayso_people::{Capability, Part, Role, Scope, Who, table};
use sayso_web::{Error, Tab};

/// A place as far as a role in it is about it.
pub struct Place {
    /// Its name; none for a home in which nothing is written yet, and for the server.
    pub name: Option<String>,
    /// What the person of the home is called whom the role is of.
    pub person: Option<String>,
    /// Its zone, where it is a home.
    pub zone: Option<Zone>,
    /// Where whoever has the role begins.
    pub begins: String,
}

/// The place of a role.
///
/// # Errors
/// Where the database fails.
pub async fn of(host: &Host, part: &Part) -> Result<Place, Error> {
    Ok(match part.scope() {
        Scope::Home(home) => {
            let story = story(host, home).await?.filter(|story| !story.ledger().is_empty());
            Place {
                name: story.as_ref().and_then(|s| s.home()).map(|card| card.name.to_string()),
                person: story.as_ref().and_then(|s| Some(s.people().get(&part.person()?)?.name.to_string())),
                zone: story.as_ref().map(|s| s.zone()),
                begins: begins(story.as_deref(), part.role()),
            }
        }
        Scope::Club(club) => {
            let name = host.people.club(club).await.map_err(told)?;
            Place { name: name.map(|n| n.to_string()), person: None, zone: None, begins: format!("/club/{club}") }
        }
        Scope::Server => Place { name: None, person: None, zone: None, begins: "/server".into() },
    })
}

/// The first page of a home for a role: Today, or the Board for whoever only scores; the set-up where nothing is written yet.
fn begins(story: Option<&Story>, role: Role) -> String {
    let may = |capability| table::grant(role, capability) != table::Grant::No;
    let Some(story) = story else {
        return if may(Capability::SettleHome) { "/start".into() } else { "/".into() };
    };
    let first = story.animals().into_values().find(|card| card.active).map(|card| card.animal);
    match first {
        None => "/".into(),
        Some(animal) if may(Capability::SeeToday) => Tab::Today.href(Some(animal)),
        Some(animal) => Tab::Board.href(Some(animal)),
    }
}

/// The zone in which an account reads its dates: that of its first home, UTC without one.
///
/// # Errors
/// Where the database fails.
pub async fn zone_of(host: &Host, who: &Who) -> Result<Zone, Error> {
    let Some(home) = who.memberships.iter().find_map(|m| m.part.scope().home()) else { return Ok(Zone::utc()) };
    Ok(story(host, home).await?.map_or_else(Zone::utc, |story| story.zone()))
}
