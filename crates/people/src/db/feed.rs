//! A calendar by secret address: of one account and one home, one at a time. Having the address opens nothing by itself: what the
//! account may see is asked for at each reading.

use super::{People, moment};
use crate::error::Error;
use crate::may::{Allowed, Denied};
use crate::secret::{Secret, Secrets};
use sayso_model::{AccountId, HomeId, Moment};
use sqlx::Row;
use sqlx::postgres::PgRow;

/// A reading is written down once in so many milliseconds.
pub(super) const READ_EVERY: i64 = 3_600_000;

/// That there is a calendar.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Feed {
    /// Since when it has the address it has.
    pub made_at: Moment,
    /// When it was read last, to the hour.
    pub read_at: Option<Moment>,
}

pub(super) fn feed_of(row: &PgRow) -> Result<Feed, Error> {
    let read_at: Option<i64> = row.try_get("read_at")?;
    Ok(Feed { made_at: moment(row.try_get("made_at")?), read_at: read_at.map(moment) })
}

impl People {
    /// Makes the calendar of an account and a home, or gives it another address: the one before ends. `by` is leave to see in the
    /// home what the calendar holds.
    ///
    /// # Errors
    /// [`Denied::NotByRole`] where `by` is about no home; where the database fails.
    pub async fn make_feed(
        &self,
        by: &Allowed,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<Secret, Error> {
        let home = by.scope.home().ok_or(Denied::NotByRole(by.capability))?;
        let secret = Secret::long(secrets);
        sqlx::query(
            "INSERT INTO people.feed (account, home, secret, made_at) VALUES ($1, $2, $3, $4)
             ON CONFLICT (account, home) DO UPDATE SET secret = $3, made_at = $4, read_at = NULL",
        )
        .bind(by.account.0)
        .bind(home.0)
        .bind(secret.hash().bytes().as_slice())
        .bind(now.millis())
        .execute(&self.pool)
        .await?;
        Ok(secret)
    }

    /// The calendar of an account and a home, if there is one.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn feed(&self, account: AccountId, home: HomeId) -> Result<Option<Feed>, Error> {
        let row = sqlx::query("SELECT made_at, read_at FROM people.feed WHERE account = $1 AND home = $2")
            .bind(account.0)
            .bind(home.0)
            .fetch_optional(&self.pool)
            .await?;
        row.as_ref().map(feed_of).transpose()
    }

    /// Ends the calendar of an account and a home.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn end_feed(&self, account: AccountId, home: HomeId) -> Result<(), Error> {
        sqlx::query("DELETE FROM people.feed WHERE account = $1 AND home = $2")
            .bind(account.0)
            .bind(home.0)
            .execute(&self.pool)
            .await?;
        Ok(())
    }

    /// Whose calendar an address is, and of which home; none where it is unknown, was changed or ended. Nothing is opened by that.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn feed_at(&self, secret: &Secret) -> Result<Option<(AccountId, HomeId)>, Error> {
        let row = sqlx::query("SELECT account, home FROM people.feed WHERE secret = $1")
            .bind(secret.hash().bytes().as_slice())
            .fetch_optional(&self.pool)
            .await?;
        let Some(row) = row else { return Ok(None) };
        Ok(Some((AccountId(row.try_get("account")?), HomeId(row.try_get("home")?))))
    }

    /// Remembers that a calendar was given out.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn feed_read(&self, account: AccountId, home: HomeId, now: Moment) -> Result<(), Error> {
        sqlx::query(
            "UPDATE people.feed SET read_at = $3 WHERE account = $1 AND home = $2 AND COALESCE(read_at, 0) <= $4",
        )
        .bind(account.0)
        .bind(home.0)
        .bind(now.millis())
        .bind(now.millis() - READ_EVERY)
        .execute(&self.pool)
        .await?;
        Ok(())
    }
}
