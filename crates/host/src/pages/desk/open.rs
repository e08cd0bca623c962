//! What a desk holds at this moment: homes whose consent to figures is open to this account now, and what is known of each.

use crate::asker::Asker;
use crate::desk::{Found, HomeAnswer, KeptAnimal, Witnessed, goes_on_with, lines};
use crate::fault::told;
use crate::host::Host;
use crate::news;
use crate::stories::opening;
use sayso_advisor::desk::{Mark, Row, Seen, desk};
use sayso_model::{AccountId, AnimalId, EventId, HomeId, Moment, Story};
use sayso_people::db::Aside;
use sayso_people::{Allowed, Capability, Who};
use sayso_web::Error;
use std::collections::{BTreeMap, BTreeSet};

/// By what looks at the desk are noted for the keepers of each home.
const PAGE: &str = "desk";

/// An animal of a home.
pub type Key = (HomeId, AnimalId);

/// A desk.
pub struct Opened {
    /// What is known of the homes that may be seen.
    pub found: Found,
    /// Their animals, who needs a coach first in the first place.
    pub rows: Vec<Row<Key>>,
    /// What the coach put aside.
    pub asides: Vec<Aside>,
    /// Proposals that the coach goes on with.
    pub goes_on: BTreeSet<EventId>,
    /// What homes answered to the coach since they last looked at what was agreed there, or spoke with the home; by the animal it is
    /// about, and of the whole home by its first.
    pub answers: BTreeMap<Key, Vec<HomeAnswer>>,
    /// When the server was lately brought back from a backup.
    pub restored: Option<Moment>,
}

impl Opened {
    /// What is known of an animal.
    pub fn animal(&self, (home, animal): Key) -> Option<&KeptAnimal> {
        self.found.kept.get(&home)?.animals.get(&animal)
    }

    /// What was answered about an animal that the coach has not looked at.
    pub fn answers_of(&self, key: Key) -> Vec<&HomeAnswer> {
        self.answers.get(&key).into_iter().flatten().collect()
    }
}

/// Whether an account has a desk with something that may stand on it.
///
/// # Errors
/// Where the database fails.
pub async fn has_one(host: &Host, account: AccountId) -> Result<bool, Error> {
    let who = host.people.who(account).await.map_err(told)?;
    Ok(!host.people.may_share_with(&who).await.map_err(told)?.is_empty())
}

/// Which of some homes may be seen now, asked of each home's log.
async fn leaves(asker: &Asker, who: &Who, homes: &[HomeId]) -> Result<BTreeMap<HomeId, Allowed>, Error> {
    may_see(asker, who, &opening(&asker.host.server, homes).await?).await
}

async fn may_see(
    asker: &Asker,
    who: &Who,
    stories: &BTreeMap<HomeId, Story>,
) -> Result<BTreeMap<HomeId, Allowed>, Error> {
    asker.host.people.may_in_each(who, Capability::SeeFigures, stories, asker.now).await.map_err(told)
}

/// Leave for one home of a coach, now; none where it is not open to them.
///
/// # Errors
/// Where a database fails.
pub async fn leave(asker: &Asker, who: &Who, home: HomeId) -> Result<Option<Allowed>, Error> {
    // A home that shares nothing with the account is not read.
    if !asker.host.people.may_share_with(who).await.map_err(told)?.contains(&home) {
        return Ok(None);
    }
    Ok(leaves(asker, who, &[home]).await?.remove(&home))
}

/// Homes that are open to a coach now, each with whether it is open to another account as well.
///
/// # Errors
/// Where a database fails.
pub async fn homes(asker: &Asker, who: &Who, other: &Who) -> Result<Vec<(HomeId, bool)>, Error> {
    let homes = asker.host.people.may_share_with(who).await.map_err(told)?;
    let stories = opening(&asker.host.server, &homes).await?;
    let (own, others) = (may_see(asker, who, &stories).await?, may_see(asker, other, &stories).await?);
    Ok(own.into_keys().map(|home| (home, others.contains_key(&home))).collect())
}

/// What is known of the homes that are open to a coach now. Each is looked at by that.
///
/// # Errors
/// Where a database fails.
pub async fn found(asker: &Asker, who: &Who) -> Result<Found, Error> {
    let host = &asker.host;
    let homes = host.people.may_share_with(who).await.map_err(told)?;
    let leaves = leaves(asker, who, &homes).await?;
    let allowed: Vec<HomeId> = leaves.keys().copied().collect();
    let found = lines(host, &allowed).await?;
    let seen = leaves.iter().filter(|(home, _)| found.kept.contains_key(home)).map(|(_, leave)| leave);
    host.people.looked_at_each(seen, PAGE, asker.now).await.map_err(told)?;
    Ok(found)
}

/// The whole desk, with what each animal needs.
///
/// # Errors
/// Where a database fails.
pub async fn open(asker: &Asker, who: &Who) -> Result<Opened, Error> {
    let (found, now) = (found(asker, who).await?, asker.now);
    let asides = asker.host.people.asides(who.account, now).await.map_err(told)?;
    let mut put = Seen::default();
    for aside in &asides {
        // By a mark that this version does not know nothing is put aside.
        if let Ok(mark) = serde_json::from_str::<Mark>(&aside.need) {
            put.put_aside(aside.animal, mark, aside.at);
        }
    }
    let all = found
        .kept
        .iter()
        .flat_map(|(home, kept)| kept.animals.iter().map(move |(animal, kept)| ((*home, *animal), &kept.line)));
    let rows = desk(all, now, &put, asker.host.norms.as_deref());
    let goes_on = goes_on_with(&Witnessed::of(&asker.host, &found.kept).await?, who.account, &found.kept, now);
    let answers = unheard(asker, who, &found, &goes_on).await?;
    let restored = news::lately_restored(&asker.host, now).await?;
    Ok(Opened { found, rows, asides, goes_on, answers, restored })
}

/// Answers that a coach has not looked at yet, to what they go on with.
async fn unheard(
    asker: &Asker,
    who: &Who,
    found: &Found,
    goes_on: &BTreeSet<EventId>,
) -> Result<BTreeMap<Key, Vec<HomeAnswer>>, Error> {
    let theirs = |answer: &&HomeAnswer| goes_on.contains(&answer.proposal) && answer.from != Some(who.account);
    let answered = found.kept.iter().filter(|(_, kept)| kept.told_answers().any(|answer| theirs(&answer)));
    let homes: Vec<HomeId> = answered.map(|(home, _)| *home).collect();
    let heard = asker.host.people.heard(who.account, &homes).await.map_err(told)?;
    let mut all: BTreeMap<Key, Vec<HomeAnswer>> = BTreeMap::new();
    for (home, kept) in homes.iter().filter_map(|home| Some((*home, found.kept.get(home)?))) {
        let Some(first) = kept.animals.keys().next() else { continue };
        let since = heard.get(&home);
        for answer in kept.told_answers().filter(theirs).filter(|a| since.is_none_or(|since| a.known > *since)) {
            let animal = answer.animal.filter(|animal| kept.animals.contains_key(animal)).unwrap_or(*first);
            all.entry((home, animal)).or_default().push(answer.clone());
        }
    }
    Ok(all)
}
