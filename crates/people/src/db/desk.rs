//! A coach's own hand on the desk: what was put aside, own marks of homes, and when coach and home last spoke, with what was known
//! then. Nothing of it opens anything: whether a home may be seen is asked for each time ([`People::may_in_each`]).

use super::{People, moment};
use crate::capability::Capability;
use crate::error::Error;
use crate::may::{Allowed, HomeNow, may};
use crate::membership::Who;
use sayso_model::{AccountId, AnimalId, HomeId, Label, Moment, Story};
use std::collections::{BTreeMap, BTreeSet};
use uuid::Uuid;

/// By what looks at the page of what coach and home agreed are noted.
pub const TALK: &str = "talk";

/// Something that was put aside.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Aside {
    /// In which home.
    pub home: HomeId,
    /// Of which animal.
    pub animal: AnimalId,
    /// By what the need is known, as the desk writes it.
    pub need: String,
    /// When.
    pub at: Moment,
    /// How far it had gone then, as the desk writes it; empty where that was not kept.
    pub extent: String,
    /// When it is back at the latest.
    pub until: Moment,
}

/// When a coach last spoke with a home, and what was known of it then.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Spoken {
    /// When.
    pub at: Moment,
    /// The form of the bytes.
    pub form: i32,
    /// What was known, in the desk's own form.
    pub bytes: Vec<u8>,
}

/// Days for which what was put aside is kept after its day, so that a desk can say that it had been.
pub(super) const REMEMBERED_DAYS: f64 = 28.0;

impl People {
    /// Which of some homes open a capability to an account now, each with its leave. `stories` hold what of each home's log decides on
    /// consent; a home without one has given none. Asked of all at once, by the one rule ([`may`]): nothing is remembered.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn may_in_each(
        &self,
        who: &Who,
        capability: Capability,
        stories: &BTreeMap<HomeId, Story>,
        now: Moment,
    ) -> Result<BTreeMap<HomeId, Allowed>, Error> {
        let ids: Vec<Uuid> = stories.keys().map(|home| home.0).collect();
        let here: Vec<Uuid> = sqlx::query_scalar("SELECT id FROM people.home WHERE id = ANY($1) AND left_at IS NULL")
            .bind(&ids)
            .fetch_all(&self.pool)
            .await?;
        let seen: Vec<(Uuid, Uuid)> =
            sqlx::query_as("SELECT home, event FROM people.witness WHERE home = ANY($1) AND ended_at IS NULL")
                .bind(&ids)
                .fetch_all(&self.pool)
                .await?;
        let mut witnessed: BTreeMap<HomeId, BTreeSet<_>> = BTreeMap::new();
        for (home, event) in seen {
            witnessed.entry(HomeId(home)).or_default().insert(sayso_model::EventId(event));
        }
        let none = BTreeSet::new();
        let ask = |id: Uuid| {
            let home = HomeId(id);
            let known = HomeNow::of(home, stories.get(&home)?, witnessed.get(&home).unwrap_or(&none), now);
            Some((home, may(who, capability, home, Some(&known), now).ok()?))
        };
        Ok(here.into_iter().filter_map(ask).collect())
    }

    /// Homes that share something with any coach, as far as this server saw it.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn shared_with_coaches(&self) -> Result<Vec<HomeId>, Error> {
        let homes: Vec<Uuid> = sqlx::query_scalar(
            "SELECT DISTINCT home FROM people.witness
             WHERE ended_at IS NULL AND (coach IS NOT NULL OR club IS NOT NULL) ORDER BY home",
        )
        .fetch_all(&self.pool)
        .await?;
        Ok(homes.into_iter().map(HomeId).collect())
    }

    /// What an account put aside, and what was back by its date lately.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn asides(&self, account: AccountId, now: Moment) -> Result<Vec<Aside>, Error> {
        let rows: Vec<(Uuid, Uuid, String, String, i64, i64)> = sqlx::query_as(
            "SELECT home, animal, need, extent, at, until FROM people.aside
             WHERE account = $1 AND until > $2 ORDER BY home, animal, need",
        )
        .bind(account.0)
        .bind(now.plus_seconds(-REMEMBERED_DAYS * 86_400.0).millis())
        .fetch_all(&self.pool)
        .await?;
        let of = |(home, animal, need, extent, at, until): (Uuid, Uuid, String, String, i64, i64)| Aside {
            home: HomeId(home),
            animal: AnimalId(animal),
            need,
            extent,
            at: moment(at),
            until: moment(until),
        };
        Ok(rows.into_iter().map(of).collect())
    }

    /// Puts a need aside for an account.
    ///
    /// # Errors
    /// [`crate::may::Denied`] where `by` is no leave to see the home's figures; where the database fails.
    pub async fn put_aside(&self, by: &Allowed, aside: &Aside) -> Result<(), Error> {
        by.is_for_at(Capability::SeeFigures, crate::Scope::Home(aside.home))?;
        sqlx::query(
            "INSERT INTO people.aside (account, home, animal, need, extent, at, until) VALUES ($1, $2, $3, $4, $5, $6, $7)
             ON CONFLICT (account, home, animal, need)
             DO UPDATE SET extent = excluded.extent, at = excluded.at, until = excluded.until",
        )
        .bind(by.account.0)
        .bind(aside.home.0)
        .bind(aside.animal.0)
        .bind(&aside.need)
        .bind(&aside.extent)
        .bind(aside.at.millis())
        .bind(aside.until.millis())
        .execute(&self.pool)
        .await?;
        Ok(())
    }

    /// Takes a need back that an account had put aside; of an animal all of them, where none is named.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn bring_back(&self, account: AccountId, animal: AnimalId, need: Option<&str>) -> Result<(), Error> {
        sqlx::query("DELETE FROM people.aside WHERE account = $1 AND animal = $2 AND ($3::text IS NULL OR need = $3)")
            .bind(account.0)
            .bind(animal.0)
            .bind(need)
            .execute(&self.pool)
            .await?;
        Ok(())
    }

    /// An account's own marks of homes.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn marks(&self, account: AccountId) -> Result<BTreeMap<HomeId, Label>, Error> {
        let rows: Vec<(Uuid, String)> = sqlx::query_as("SELECT home, mark FROM people.mark WHERE account = $1")
            .bind(account.0)
            .fetch_all(&self.pool)
            .await?;
        let of = |(home, mark)| Ok((HomeId(home), Label::try_from(mark).map_err(|_| Error::Stored("mark"))?));
        rows.into_iter().map(of).collect()
    }

    /// Marks a home for an account alone, or takes the mark away.
    ///
    /// # Errors
    /// [`crate::may::Denied`] where `by` is no leave to see the home's figures; where the database fails.
    pub async fn mark(&self, by: &Allowed, home: HomeId, mark: Option<&Label>) -> Result<(), Error> {
        by.is_for_at(Capability::SeeFigures, crate::Scope::Home(home))?;
        let query = match mark {
            Some(mark) => sqlx::query(
                "INSERT INTO people.mark (account, home, mark) VALUES ($1, $2, $3)
                 ON CONFLICT (account, home) DO UPDATE SET mark = excluded.mark",
            )
            .bind(by.account.0)
            .bind(home.0)
            .bind(mark.as_str()),
            None => {
                sqlx::query("DELETE FROM people.mark WHERE account = $1 AND home = $2").bind(by.account.0).bind(home.0)
            }
        };
        query.execute(&self.pool).await?;
        Ok(())
    }

    /// When an account last spoke with some homes, and what was known of each then.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn spoken(&self, account: AccountId, homes: &[HomeId]) -> Result<BTreeMap<HomeId, Spoken>, Error> {
        let ids: Vec<Uuid> = homes.iter().map(|home| home.0).collect();
        let rows: Vec<(Uuid, i64, i32, Vec<u8>)> =
            sqlx::query_as("SELECT home, at, form, bytes FROM people.spoken WHERE account = $1 AND home = ANY($2)")
                .bind(account.0)
                .bind(ids)
                .fetch_all(&self.pool)
                .await?;
        let of = |(home, at, form, bytes)| (HomeId(home), Spoken { at: moment(at), form, bytes });
        Ok(rows.into_iter().map(of).collect())
    }

    /// When an account last looked at what was agreed with some homes, or spoke with them.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn heard(&self, account: AccountId, homes: &[HomeId]) -> Result<BTreeMap<HomeId, Moment>, Error> {
        if homes.is_empty() {
            return Ok(BTreeMap::new());
        }
        let ids: Vec<Uuid> = homes.iter().map(|home| home.0).collect();
        let rows: Vec<(Uuid, i64)> = sqlx::query_as(
            "SELECT home, max(at) FROM (
                 SELECT home, last_at AS at FROM people.look WHERE home = ANY($2) AND account = $1 AND page = $3
                 UNION ALL SELECT home, at FROM people.spoken WHERE account = $1 AND home = ANY($2)) AS heard
             GROUP BY home",
        )
        .bind(account.0)
        .bind(ids)
        .bind(TALK)
        .fetch_all(&self.pool)
        .await?;
        Ok(rows.into_iter().map(|(home, at)| (HomeId(home), moment(at))).collect())
    }

    /// Marks that an account spoke with a home, with what was known of it then.
    ///
    /// # Errors
    /// [`crate::may::Denied`] where `by` is no leave to see the home's figures; where the database fails.
    pub async fn speaks(&self, by: &Allowed, home: HomeId, spoken: &Spoken) -> Result<(), Error> {
        by.is_for_at(Capability::SeeFigures, crate::Scope::Home(home))?;
        sqlx::query(
            "INSERT INTO people.spoken (account, home, at, form, bytes) VALUES ($1, $2, $3, $4, $5)
             ON CONFLICT (account, home) DO UPDATE SET at = excluded.at, form = excluded.form, bytes = excluded.bytes",
        )
        .bind(by.account.0)
        .bind(home.0)
        .bind(spoken.at.millis())
        .bind(spoken.form)
        .bind(&spoken.bytes)
        .execute(&self.pool)
        .await?;
        Ok(())
    }
}
