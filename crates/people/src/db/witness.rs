//! Which givings of consent a keeper of the home wrote under the eyes of this server, and which proposals a coach.
//!
//! The order is: ask for leave ([`crate::Capability::Consent`]), append the event to the home's log, and where the log says that
//! it is new, witness it. Where the last step is missing the giving opens nothing and is given once more; nothing opens by
//! accident. An event that came into the log in any other way (a file read in, a merged backup, another device) is never
//! witnessed.

use super::{People, moment};
use crate::capability::Capability;
use crate::error::Error;
use crate::may::{Allowed, Denied};
use crate::membership::{Scope, Who};
use crate::needs::clubs_coached;
use sayso_model::{AccountId, Body, Coach, Event, EventId, HomeId, Moment};
use std::collections::BTreeSet;
use uuid::Uuid;

impl People {
    /// Remembers that a keeper gave or took back consent by an event that was appended just now. Other events are nothing to it.
    ///
    /// # Errors
    /// [`crate::may::Denied`] where `by` is no leave to give it, or to take it back, in the event's home.
    pub async fn witness(&self, by: &Allowed, event: &Event, now: Moment) -> Result<(), Error> {
        let home = Scope::Home(event.home);
        // Kinds that are no consent stay what they are: only these two touch it.
        if let Body::ConsentGiven(given) = &event.body {
            by.is_for_at(Capability::Consent, home)?;
            let (coach, club) = match given.consent.coach() {
                Some(Coach::Account { account }) => (Some(account.0), None),
                Some(Coach::Club { club }) => (None, Some(club.0)),
                None => (None, None),
            };
            sqlx::query(
                "INSERT INTO people.witness (home, event, account, coach, club, at) VALUES ($1, $2, $3, $4, $5, $6)
                 ON CONFLICT DO NOTHING",
            )
            .bind(event.home.0)
            .bind(event.id.0)
            .bind(by.account.0)
            .bind(coach)
            .bind(club)
            .bind(now.millis())
            .execute(&self.pool)
            .await?;
        }
        if let Body::ConsentTakenBack(taken) = &event.body {
            by.is_for_at(Capability::TakeBack, home)?;
            let end = "UPDATE people.witness SET ended_at = $3 WHERE home = $1 AND event = $2 AND ended_at IS NULL";
            sqlx::query(end).bind(event.home.0).bind(taken.given.0).bind(now.millis()).execute(&self.pool).await?;
        }
        Ok(())
    }

    /// Remembers that a coach wrote a proposal that was appended just now. Where this is missing it is told as one of which
    /// nobody saw who wrote it.
    ///
    /// # Errors
    /// [`crate::may::Denied`] where `by` is no leave to propose in the event's home, or the event is no proposal of that account.
    pub async fn witness_proposal(&self, by: &Allowed, event: &Event, now: Moment) -> Result<(), Error> {
        by.is_for_at(Capability::Advise, Scope::Home(event.home))?;
        match &event.body {
            Body::Proposal(proposal) if proposal.from.account == by.account => {}
            _ => return Err(Denied::NotYourName.into()),
        }
        sqlx::query(
            "INSERT INTO people.witness (home, event, account, at) VALUES ($1, $2, $3, $4) ON CONFLICT DO NOTHING",
        )
        .bind(event.home.0)
        .bind(event.id.0)
        .bind(by.account.0)
        .bind(now.millis())
        .execute(&self.pool)
        .await?;
        Ok(())
    }

    /// Givings and proposals of a home that count, as far as this server knows: whether they still stand, its log says.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn witnessed(&self, home: HomeId) -> Result<BTreeSet<EventId>, Error> {
        let ids: Vec<Uuid> =
            sqlx::query_scalar("SELECT event FROM people.witness WHERE home = $1 AND ended_at IS NULL")
                .bind(home.0)
                .fetch_all(&self.pool)
                .await?;
        Ok(ids.into_iter().map(EventId).collect())
    }

    /// Proposals that this server saw being written by an account.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn proposed_by(&self, account: AccountId) -> Result<BTreeSet<EventId>, Error> {
        let ids: Vec<Uuid> = sqlx::query_scalar(
            "SELECT event FROM people.witness WHERE account = $1 AND coach IS NULL AND club IS NULL",
        )
        .bind(account.0)
        .fetch_all(&self.pool)
        .await?;
        Ok(ids.into_iter().map(EventId).collect())
    }

    /// Which of some proposals this server saw being written by whom they name, each in its home.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn proposals_seen(&self, all: &[(HomeId, EventId)]) -> Result<BTreeSet<(HomeId, EventId)>, Error> {
        if all.is_empty() {
            return Ok(BTreeSet::new());
        }
        let (homes, events): (Vec<Uuid>, Vec<Uuid>) = all.iter().map(|(home, event)| (home.0, event.0)).unzip();
        let rows: Vec<(Uuid, Uuid)> = sqlx::query_as(
            "SELECT w.home, w.event FROM unnest($1::uuid[], $2::uuid[]) AS asked (home, event)
             JOIN people.witness w ON w.home = asked.home AND w.event = asked.event
             WHERE w.coach IS NULL AND w.club IS NULL",
        )
        .bind(homes)
        .bind(events)
        .fetch_all(&self.pool)
        .await?;
        Ok(rows.into_iter().map(|(home, event)| (HomeId(home), EventId(event))).collect())
    }

    /// Homes to which an account proposed something, as this server saw; whether they are open to it now is not asked here.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn proposed_in(&self, account: AccountId) -> Result<Vec<HomeId>, Error> {
        let homes: Vec<Uuid> = sqlx::query_scalar(
            "SELECT DISTINCT home FROM people.witness WHERE account = $1 AND coach IS NULL AND club IS NULL ORDER BY home",
        )
        .bind(account.0)
        .fetch_all(&self.pool)
        .await?;
        Ok(homes.into_iter().map(HomeId).collect())
    }

    /// Homes that may share something with an account as a coach; each is to be asked for with [`People::may`].
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn may_share_with(&self, who: &Who) -> Result<Vec<HomeId>, Error> {
        Ok(self.shares_since(who).await?.into_iter().map(|(home, _)| home).collect())
    }

    /// The same, each with since when.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn shares_since(&self, who: &Who) -> Result<Vec<(HomeId, Moment)>, Error> {
        let clubs: Vec<Uuid> = clubs_coached(who).map(|club| club.0).collect();
        if clubs.is_empty() {
            return Ok(Vec::new());
        }
        let homes: Vec<(Uuid, i64)> = sqlx::query_as(
            "SELECT home, min(at) FROM people.witness WHERE ended_at IS NULL AND (coach = $1 OR club = ANY($2))
             GROUP BY home ORDER BY home",
        )
        .bind(who.account.0)
        .bind(clubs)
        .fetch_all(&self.pool)
        .await?;
        Ok(homes.into_iter().map(|(home, at)| (HomeId(home), moment(at))).collect())
    }

    /// Everyone who may have to do with a home: its members, and coaches it may share with. For
    /// [`crate::may::who_can_see`].
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn all_around(&self, home: HomeId) -> Result<Vec<Who>, Error> {
        let accounts: Vec<Uuid> = sqlx::query_scalar(
            "SELECT account FROM people.membership WHERE home = $1 AND ended_at IS NULL
             UNION
             SELECT m.account FROM people.membership m JOIN people.witness w ON w.coach = m.account OR w.club = m.club
             WHERE w.home = $1 AND w.ended_at IS NULL AND m.ended_at IS NULL AND m.role = 'coach'
             ORDER BY 1",
        )
        .bind(home.0)
        .fetch_all(&self.pool)
        .await?;
        let mut all = Vec::with_capacity(accounts.len());
        for account in accounts {
            all.push(self.who(AccountId(account)).await?);
        }
        Ok(all)
    }
}
