//! Who has to do with a home, by name.

use crate::asker::{Asker, Inside};
use crate::fault::told;
use crate::pages::said::is_kept;
use sayso_model::{AccountId, ClubId, Coach, Label};
use sayso_people::db::Member;
use sayso_people::may::who_can_see;
use sayso_people::needs::clubs_coached;
use sayso_people::{Capability, Scope, Who};
use sayso_web::Error;
use std::collections::BTreeMap;

/// One who has to do with the home.
pub struct Near {
    /// The account with its roles everywhere.
    pub who: Who,
    /// What it is called.
    pub name: String,
    /// Its role here; none for a coach.
    pub member: Option<Member>,
    /// Clubs in which it is a coach.
    pub clubs: Vec<String>,
    /// What it can see at this moment.
    pub sees: Vec<Capability>,
}

/// Everyone who has to do with the home: its people, then coaches it shares with.
///
/// # Errors
/// Where a database fails.
pub async fn all(asker: &Asker, inside: &Inside) -> Result<Vec<Near>, Error> {
    let (people, home) = (&asker.host.people, inside.page.home);
    let around = people.all_around(home).await.map_err(told)?;
    let sees = who_can_see(&inside.known, &around, asker.now);
    let members = people.members(Scope::Home(home)).await.map_err(told)?;
    let mut all = Vec::new();
    for who in around {
        let account = who.account;
        let mut clubs = Vec::new();
        for club in clubs_coached(&who) {
            clubs.extend(people.club(club).await.map_err(told)?.map(|name| name.to_string()));
        }
        let member = members.iter().find(|m| m.membership.account == account).cloned();
        let name = match &member {
            Some(member) => member.name.to_string(),
            None => named(asker, account).await?.map(|name| name.to_string()).unwrap_or_default(),
        };
        let sees = sees.iter().filter(|s| s.account == account).map(|s| s.capability);
        let sees = sees.filter(|capability| is_kept(*capability)).collect();
        all.push(Near { who, name, member, clubs, sees });
    }
    all.sort_by(|a, b| a.member.is_none().cmp(&b.member.is_none()).then(a.name.cmp(&b.name)));
    Ok(all)
}

/// What an account is called.
///
/// # Errors
/// Where the database fails.
pub async fn named(asker: &Asker, account: AccountId) -> Result<Option<Label>, Error> {
    Ok(asker.host.people.account(account).await.map_err(told)?.map(|account| account.name))
}

/// What those are called to whom consent is given; coaches and clubs that are not here any more have none.
#[derive(Default)]
pub struct Names(BTreeMap<Coach, String>);

impl Names {
    /// Finds the names of some.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn of(asker: &Asker, coaches: impl Iterator<Item = Coach>) -> Result<Self, Error> {
        let mut names = BTreeMap::new();
        for coach in coaches {
            if names.contains_key(&coach) {
                continue;
            }
            let name = match coach {
                Coach::Club { club } => club_name(asker, club).await?,
                Coach::Account { account } => named(asker, account).await?,
            };
            names.extend(name.map(|name| (coach, name.to_string())));
        }
        Ok(Self(names))
    }

    /// The name of one.
    pub fn get(&self, coach: Option<Coach>) -> Option<&str> {
        coach.and_then(|coach| self.0.get(&coach)).map(String::as_str)
    }
}

/// What a club is called.
///
/// # Errors
/// Where the database fails.
pub async fn club_name(asker: &Asker, club: ClubId) -> Result<Option<Label>, Error> {
    asker.host.people.club(club).await.map_err(told)
}
