//! A calendar by secret address of all homes that a coach may see. Having the address opens nothing by itself: what the account may
//! see in each home is asked for at each reading.

use super::feed::{READ_EVERY, feed_of};
use super::{Feed, People};
use crate::capability::Capability;
use crate::error::Error;
use crate::may::Allowed;
use crate::secret::{Secret, Secrets};
use sayso_model::{AccountId, Moment};
use uuid::Uuid;

impl People {
    /// Makes the calendar of a caseload, or gives it another address: the one before ends.
    ///
    /// # Errors
    /// [`crate::Denied`] where `by` is no leave to see a desk; where the database fails.
    pub async fn make_caseload_feed(
        &self,
        by: &Allowed,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<Secret, Error> {
        by.is_for(Capability::SeeDesk)?;
        let secret = Secret::long(secrets);
        sqlx::query(
            "INSERT INTO people.caseload (account, secret, made_at) VALUES ($1, $2, $3)
             ON CONFLICT (account) DO UPDATE SET secret = $2, made_at = $3, read_at = NULL",
        )
        .bind(by.account.0)
        .bind(secret.hash().bytes().as_slice())
        .bind(now.millis())
        .execute(&self.pool)
        .await?;
        Ok(secret)
    }

    /// The calendar of an account's caseload, if there is one.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn caseload_feed(&self, account: AccountId) -> Result<Option<Feed>, Error> {
        let row = sqlx::query("SELECT made_at, read_at FROM people.caseload WHERE account = $1")
            .bind(account.0)
            .fetch_optional(&self.pool)
            .await?;
        row.as_ref().map(feed_of).transpose()
    }

    /// Ends the calendar of an account's caseload.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn end_caseload_feed(&self, account: AccountId) -> Result<(), Error> {
        sqlx::query("DELETE FROM people.caseload WHERE account = $1").bind(account.0).execute(&self.pool).await?;
        Ok(())
    }

    /// Whose caseload an address is of; none where it is unknown, was changed or ended. Nothing is opened by that.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn caseload_at(&self, secret: &Secret) -> Result<Option<AccountId>, Error> {
        let account: Option<Uuid> = sqlx::query_scalar("SELECT account FROM people.caseload WHERE secret = $1")
            .bind(secret.hash().bytes().as_slice())
            .fetch_optional(&self.pool)
            .await?;
        Ok(account.map(AccountId))
    }

    /// Remembers that the calendar of a caseload was given out.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn caseload_read(&self, account: AccountId, now: Moment) -> Result<(), Error> {
        sqlx::query("UPDATE people.caseload SET read_at = $2 WHERE account = $1 AND COALESCE(read_at, 0) <= $3")
            .bind(account.0)
            .bind(now.millis())
            .bind(now.millis() - READ_EVERY)
            .execute(&self.pool)
            .await?;
        Ok(())
    }
}
