//! Whose a course is to go on with, and what came of proposing it to many at once.

use crate::desk::{Found, HandedOn, InHand, Witnessed, given_away, goes_on_with};
use crate::host::Host;
use sayso_model::{AccountId, AnimalId, Day, HomeId, Moment, ProgrammeId};
use sayso_web::Error;
use serde::{Deserialize, Deserializer};
use std::collections::BTreeMap;
use url::form_urlencoded::Serializer;

/// What of homes is a coach's, and what was handed over.
pub struct Around {
    /// Proposals that the coach goes on with.
    pub goes_on: InHand,
    /// Homes that were handed over and are still to be seen.
    pub given_away: BTreeMap<HomeId, HandedOn>,
}

impl Around {
    /// Of homes that are open.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn of(host: &Host, me: AccountId, found: &Found, now: Moment) -> Result<Self, Error> {
        let witnessed = Witnessed::of(host, &found.kept).await?;
        let goes_on = goes_on_with(&witnessed, me, &found.kept, now);
        Ok(Self { goes_on, given_away: given_away(&witnessed, me, &found.kept, now) })
    }

    /// Whether an animal is in a course of this coach that is not over.
    pub fn is_in(&self, found: &Found, (home, animal): (HomeId, AnimalId), course: ProgrammeId, today: Day) -> bool {
        let line = found.kept.get(&home).and_then(|kept| kept.animals.get(&animal)).map(|kept| &kept.line);
        let goes_on = |p: &&sayso_advisor::desk::ProgrammeLine| {
            let last = p.first.plus(7 * i32::try_from(p.weeks.len()).unwrap_or(0));
            p.programme == course && self.goes_on.contains_key(&p.proposal) && today < last
        };
        line.is_some_and(|line| line.programmes.iter().any(|p| goes_on(&p)))
    }
}

/// Animals for which it was proposed just now, and those left out, by why; as an address says it.
#[derive(Clone, PartialEq, Eq, Debug, Default, Deserialize)]
#[serde(default)]
pub struct Done {
    /// For these it was proposed.
    #[serde(deserialize_with = "ids")]
    pub sent: Vec<AnimalId>,
    /// A strong sign rests their sessions.
    #[serde(deserialize_with = "ids")]
    pub rests: Vec<AnimalId>,
    /// They were handed over.
    #[serde(deserialize_with = "ids")]
    pub handed: Vec<AnimalId>,
    /// They are in it.
    #[serde(deserialize_with = "ids")]
    pub joined: Vec<AnimalId>,
}

/// Ids with commas between them; what is none is passed over.
fn ids<'de, D: Deserializer<'de>>(from: D) -> Result<Vec<AnimalId>, D::Error> {
    let text = String::deserialize(from)?;
    Ok(text.split(',').filter_map(|id| id.parse().ok()).collect())
}

impl Done {
    /// The address of a page that tells it.
    pub fn address(&self, path: &str) -> String {
        let mut query = Serializer::new(String::new());
        for (name, of) in
            [("sent", &self.sent), ("rests", &self.rests), ("handed", &self.handed), ("joined", &self.joined)]
        {
            if !of.is_empty() {
                let ids: Vec<String> = of.iter().map(ToString::to_string).collect();
                query.append_pair(name, &ids.join(","));
            }
        }
        format!("{path}?{}", query.finish())
    }
}
