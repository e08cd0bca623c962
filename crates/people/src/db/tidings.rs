//! Who is told by e-mail that something is new, what they were told of, and how they stop it.
//!
//! A letter goes out at most once a period: whoever moves `due_at` on sends it, and no other process does. A process that ends between
//! the two sends none, and the next period tells what is new then.

use super::{People, Tx, moment};
use crate::email::Email;
use crate::error::Error;
use crate::secret::{Secret, Secrets};
use crate::tidings::{Chosen, Every};
use sayso_model::{AccountId, HomeId, Language, Moment, Zone};
use sqlx::Row;
use sqlx::postgres::PgRow;
use std::collections::BTreeSet;
use uuid::Uuid;

/// Something new of a home, by the id of an event, or of the home itself where that is what is new.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Tiding {
    /// Of which home.
    pub home: HomeId,
    /// What.
    pub what: Uuid,
}

/// Someone to whom a letter is due.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Due {
    /// Who.
    pub account: AccountId,
    /// Where to.
    pub email: Email,
    /// In which language.
    pub language: Language,
    /// What they chose.
    pub chosen: Chosen,
    /// What is older is not told.
    pub since: Moment,
    /// Letters of this period that could not be handed over.
    pub tries: i16,
    due_at: Moment,
}

fn chosen_of(row: &PgRow) -> Result<Chosen, Error> {
    let bad = || Error::Stored("tidings");
    Ok(Chosen {
        every: Every::of_name(row.try_get("every")?).ok_or_else(bad)?,
        hour: u8::try_from(row.try_get::<i16, _>("hour")?).map_err(|_| bad())?,
        zone: Zone::new(row.try_get("zone")?).map_err(|_| bad())?,
    })
}

impl People {
    /// What an account chose; none where it wants no letters.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn tidings(&self, account: AccountId) -> Result<Option<Chosen>, Error> {
        let row = sqlx::query("SELECT every, hour, zone FROM people.tidings WHERE account = $1")
            .bind(account.0)
            .fetch_optional(&self.pool)
            .await?;
        row.as_ref().map(chosen_of).transpose()
    }

    /// Chooses how often an account is written to; none stops it. What was there before the first choice is not told.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn choose_tidings(&self, account: AccountId, chosen: Option<&Chosen>, now: Moment) -> Result<(), Error> {
        let Some(chosen) = chosen else {
            let stop = "DELETE FROM people.tidings WHERE account = $1";
            sqlx::query(stop).bind(account.0).execute(&self.pool).await?;
            return Ok(());
        };
        sqlx::query(
            "INSERT INTO people.tidings (account, every, hour, zone, chosen_at, due_at) VALUES ($1, $2, $3, $4, $5, $6)
             ON CONFLICT (account) DO UPDATE SET every = $2, hour = $3, zone = $4, due_at = $6, tries = 0",
        )
        .bind(account.0)
        .bind(chosen.every.name())
        .bind(i16::from(chosen.hour))
        .bind(chosen.zone.name())
        .bind(now.millis())
        .bind(chosen.next(now).millis())
        .execute(&self.pool)
        .await?;
        Ok(())
    }

    /// To whom a letter is due, longest first, at most so many. Who has no address any more is left out.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn tidings_due(&self, now: Moment, most: i64) -> Result<Vec<Due>, Error> {
        let rows = sqlx::query(
            "SELECT t.account, a.email, a.language, t.every, t.hour, t.zone, t.chosen_at, t.due_at, t.tries
             FROM people.tidings t JOIN people.account a ON a.id = t.account
             WHERE t.due_at <= $1 AND a.email IS NOT NULL ORDER BY t.due_at, t.account LIMIT $2",
        )
        .bind(now.millis())
        .bind(most)
        .fetch_all(&self.pool)
        .await?;
        let of = |row: &PgRow| {
            let bad = || Error::Stored("tidings");
            Ok(Due {
                account: AccountId(row.try_get("account")?),
                email: Email::new(row.try_get("email")?).map_err(|_| bad())?,
                language: Language::of_tag(row.try_get("language")?).ok_or_else(bad)?,
                chosen: chosen_of(row)?,
                since: moment(row.try_get("chosen_at")?),
                tries: row.try_get("tries")?,
                due_at: moment(row.try_get("due_at")?),
            })
        };
        rows.iter().map(of).collect()
    }

    /// Takes it on to send a letter that is due, which moves it to the next period; whether nobody else did, and it is still wanted.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn take_tidings(&self, due: &Due, now: Moment) -> Result<bool, Error> {
        let take = "UPDATE people.tidings SET due_at = $3, tries = 0 WHERE account = $1 AND due_at = $2";
        let taken = sqlx::query(take)
            .bind(due.account.0)
            .bind(due.due_at.millis())
            .bind(due.chosen.next(now).millis())
            .execute(&self.pool)
            .await?;
        Ok(taken.rows_affected() == 1)
    }

    /// What of some things an account was not told of.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn untold(&self, account: AccountId, all: &BTreeSet<Tiding>) -> Result<BTreeSet<Tiding>, Error> {
        let ids: Vec<Uuid> = all.iter().map(|tiding| tiding.what).collect();
        let told: Vec<Uuid> =
            sqlx::query_scalar("SELECT what FROM people.tiding WHERE account = $1 AND what = ANY($2)")
                .bind(account.0)
                .bind(ids)
                .fetch_all(&self.pool)
                .await?;
        Ok(all.iter().filter(|tiding| !told.contains(&tiding.what)).copied().collect())
    }

    /// Notes that an account is told of some things, before it is; the secret by which the letter's reader stops such letters. None
    /// where the account wants none any more.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn tell(
        &self,
        account: AccountId,
        all: &BTreeSet<Tiding>,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<Option<Secret>, Error> {
        let mut tx = self.begin().await?;
        let wants = "SELECT 1 FROM people.tidings WHERE account = $1 FOR UPDATE";
        if sqlx::query(wants).bind(account.0).fetch_optional(&mut *tx).await?.is_none() {
            return Ok(None);
        }
        for tiding in all {
            // Of a home that left meanwhile nothing is kept.
            sqlx::query(
                "INSERT INTO people.tiding (account, home, what, at)
                 SELECT $1, id, $3, $4 FROM people.home WHERE id = $2 AND left_at IS NULL ON CONFLICT DO NOTHING",
            )
            .bind(account.0)
            .bind(tiding.home.0)
            .bind(tiding.what)
            .bind(now.millis())
            .execute(&mut *tx)
            .await?;
        }
        let secret = Secret::long(secrets);
        sqlx::query("INSERT INTO people.tidings_stop (secret, account, at) VALUES ($1, $2, $3)")
            .bind(secret.hash().bytes().as_slice())
            .bind(account.0)
            .bind(now.millis())
            .execute(&mut *tx)
            .await?;
        tx.commit().await?;
        Ok(Some(secret))
    }

    /// Takes back what [`Self::tell`] noted, for the letter did not go; it is due again at a moment, unless the next period begins
    /// before, or another choice was made meanwhile.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn not_told(
        &self,
        due: &Due,
        all: &BTreeSet<Tiding>,
        secret: &Secret,
        again: Option<Moment>,
    ) -> Result<(), Error> {
        let mut tx = self.begin().await?;
        let ids: Vec<Uuid> = all.iter().map(|tiding| tiding.what).collect();
        sqlx::query("DELETE FROM people.tiding WHERE account = $1 AND what = ANY($2)")
            .bind(due.account.0)
            .bind(ids)
            .execute(&mut *tx)
            .await?;
        sqlx::query("DELETE FROM people.tidings_stop WHERE secret = $1")
            .bind(secret.hash().bytes().as_slice())
            .execute(&mut *tx)
            .await?;
        if let Some(again) = again {
            sqlx::query(
                "UPDATE people.tidings SET due_at = $2, tries = $3 WHERE account = $1 AND due_at > $2 AND tries = 0",
            )
            .bind(due.account.0)
            .bind(again.millis())
            .bind(due.tries.saturating_add(1))
            .execute(&mut *tx)
            .await?;
        }
        tx.commit().await?;
        Ok(())
    }

    /// Stops letters by the secret of one; whether it is one. Doing it twice changes nothing.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn stop_tidings(&self, secret: &Secret) -> Result<bool, Error> {
        let mut tx = self.begin().await?;
        let account = stops(&mut tx, secret).await?;
        if let Some(account) = account {
            sqlx::query("DELETE FROM people.tidings WHERE account = $1").bind(account).execute(&mut *tx).await?;
        }
        tx.commit().await?;
        Ok(account.is_some())
    }

    /// Whether a secret is one by which letters are stopped.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn stops_tidings(&self, secret: &Secret) -> Result<bool, Error> {
        let mut tx = self.begin().await?;
        Ok(stops(&mut tx, secret).await?.is_some())
    }
}

async fn stops(tx: &mut Tx, secret: &Secret) -> Result<Option<Uuid>, Error> {
    let whose = "SELECT account FROM people.tidings_stop WHERE secret = $1";
    Ok(sqlx::query_scalar(whose).bind(secret.hash().bytes().as_slice()).fetch_optional(&mut **tx).await?)
}
