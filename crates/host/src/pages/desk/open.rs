//! What a desk holds at this moment: homes whose consent to figures is open to this account now, and what is known of each.

use crate::asker::Asker;
use crate::desk::{
    Found, HomeAnswer, InHand, Kept, KeptAnimal, StoodIn, Witnessed, goes_on_with, is_theirs, lines, stood_in,
};
use crate::fault::told;
use crate::host::Host;
use crate::news;
use crate::stories::opening;
use sayso_advisor::desk::{Mark, PutAside, Row, Seen, desk};
use sayso_model::consents::consents;
use sayso_model::{AccountId, AnimalId, Coach, Consent, HomeId, Moment, Story};
use sayso_people::db::Aside;
use sayso_people::needs::coaches_in;
use sayso_people::{Allowed, Capability, Who};
use sayso_web::Error;
use std::collections::BTreeMap;
use std::sync::Arc;

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
    /// What the coach put aside, or had lately.
    pub asides: Vec<Aside>,
    /// Proposals that the coach goes on with.
    pub goes_on: InHand,
    /// What is new to the coach since they last looked at what was agreed there, or spoke with the home.
    pub unheard: BTreeMap<About, Unheard>,
    /// Homes in which no animal is written down yet, each with since when it shares its figures.
    pub not_begun: Vec<(HomeId, Moment)>,
    /// Homes in which every animal is put away.
    pub put_away: Vec<HomeId>,
    /// When the server was lately brought back from a backup.
    pub restored: Option<Moment>,
}

/// What something new is about: an animal, that of the whole home its first; none where a home has no animal in use.
pub type About = (HomeId, Option<AnimalId>);

/// What was written by another in a coach's place and what was answered, since they last looked there.
#[derive(Default)]
pub struct Unheard {
    pub stood_in: Vec<StoodIn>,
    pub answers: Vec<HomeAnswer>,
}

impl Opened {
    /// What is known of an animal.
    pub fn animal(&self, (home, animal): Key) -> Option<&KeptAnimal> {
        self.found.kept.get(&home)?.animals.get(&animal)
    }

    /// What is new about an animal, or in a home without one; none where nothing is.
    pub fn unheard_of(&self, about: About) -> Option<&Unheard> {
        self.unheard.get(&about)
    }

    /// Whether a home answered something about it that is new.
    pub fn has_answered(&self, about: About) -> bool {
        self.unheard_of(about).is_some_and(|new| !new.answers.is_empty())
    }

    /// What homes answered about: an animal each, or a home without one.
    pub fn answered(&self) -> impl Iterator<Item = About> {
        self.unheard.keys().copied().filter(|about| self.has_answered(*about))
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
            let extent = serde_json::from_str(&aside.extent).ok();
            put.put_aside(aside.animal, mark, PutAside { at: aside.at, until: aside.until, extent });
        }
    }
    let all = found
        .kept
        .iter()
        .flat_map(|(home, kept)| kept.animals.iter().map(move |(animal, kept)| ((*home, *animal), &kept.line)));
    let rows = desk(all, now, &put, asker.host.norms.as_deref());
    let witnessed = Witnessed::of(&asker.host, &found.kept).await?;
    let goes_on = goes_on_with(&witnessed, who.account, &found.kept, now);
    let unheard = unheard(asker, who, (&found, &witnessed), &goes_on).await?;
    let restored = news::lately_restored(&asker.host, now).await?;
    let not_begun = not_begun(asker, who, &found).await?;
    let unused = found.kept.iter().filter(|(_, kept)| kept.begun && kept.animals.is_empty());
    let put_away = unused.map(|(home, _)| *home).collect();
    Ok(Opened { found, rows, asides, goes_on, unheard, not_begun, put_away, restored })
}

/// Homes without an animal, those that share their figures longest first: a desk of animals would leave them out.
async fn not_begun(asker: &Asker, who: &Who, found: &Found) -> Result<Vec<(HomeId, Moment)>, Error> {
    let homes: Vec<HomeId> = found.kept.iter().filter(|(_, kept)| !kept.begun).map(|(home, _)| *home).collect();
    if homes.is_empty() {
        return Ok(Vec::new());
    }
    let stories = opening(&asker.host.server, &homes).await?;
    let to_them = |consent: Consent| match consent {
        Consent::CoachFigures { to: Coach::Account { account } } => account == who.account,
        Consent::CoachFigures { to: Coach::Club { club } } => coaches_in(who, club),
        _ => false,
    };
    let since = |home: HomeId| {
        let open = consents(stories.get(&home)?, asker.now);
        let given =
            open.open().filter(|(consent, _)| to_them(*consent)).flat_map(|(_, given)| given).map(|given| given.at);
        Some((home, given.min()?))
    };
    let mut all: Vec<(HomeId, Moment)> = homes.into_iter().filter_map(since).collect();
    all.sort_by_key(|(home, at)| (*at, *home));
    Ok(all)
}

/// Answers to what a coach goes on with, since it is theirs, and what was written in their place; as far as they have not looked at it.
async fn unheard(
    asker: &Asker,
    who: &Who,
    (found, witnessed): (&Found, &Witnessed),
    goes_on: &InHand,
) -> Result<BTreeMap<About, Unheard>, Error> {
    let theirs = |answer: &&HomeAnswer| is_theirs(goes_on, who.account, answer);
    let stood = |home: HomeId, kept: &Kept| stood_in(witnessed, who.account, (home, kept));
    let said: BTreeMap<HomeId, Vec<StoodIn>> =
        found.kept.iter().map(|(home, kept)| (*home, stood(*home, kept))).filter(|(_, all)| !all.is_empty()).collect();
    let new = |(home, kept): &(&HomeId, &Arc<Kept>)| said.contains_key(home) || kept.told_answers().any(|a| theirs(&a));
    let homes: Vec<HomeId> = found.kept.iter().filter(new).map(|(home, _)| *home).collect();
    let heard = asker.host.people.heard(who.account, &homes).await.map_err(told)?;
    let mut all: BTreeMap<About, Unheard> = BTreeMap::new();
    for (home, kept) in homes.iter().filter_map(|home| Some((*home, found.kept.get(home)?))) {
        let new = |at: Moment| heard.get(&home).is_none_or(|since| at > *since);
        let about = |animal: Option<AnimalId>| {
            (home, animal.filter(|a| kept.animals.contains_key(a)).or_else(|| kept.animals.keys().next().copied()))
        };
        for answer in kept.told_answers().filter(theirs).filter(|a| new(a.known)) {
            all.entry(about(answer.animal)).or_default().answers.push(answer.clone());
        }
        for one in said.get(&home).into_iter().flatten().filter(|s| new(s.at)) {
            all.entry(about(one.animal)).or_default().stood_in.push(one.clone());
        }
    }
    Ok(all)
}
