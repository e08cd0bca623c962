//! Recovery codes: for whoever lost every passkey and has no e-mail address here.

use super::{People, session};
use crate::db::Session;
use crate::error::Error;
use crate::lifetimes::RECOVERY_CODES;
use crate::secret::{Secret, Secrets};
use sayso_model::{AccountId, Moment};
use uuid::Uuid;

impl People {
    /// A new set of codes, to be shown once; codes of before are worth nothing.
    ///
    /// # Errors
    /// [`Error::NotFresh`].
    pub async fn new_recovery_codes(
        &self,
        session: &Session,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<Vec<Secret>, Error> {
        self.may_add_way(session, now).await?;
        let account = session.account;
        let codes: Vec<Secret> = (0..RECOVERY_CODES).map(|_| Secret::for_paper(secrets)).collect();
        let mut tx = self.begin().await?;
        // Two who ask at once wait for one another here.
        sqlx::query("SELECT id FROM people.account WHERE id = $1 FOR UPDATE").bind(account.0).execute(&mut *tx).await?;
        sqlx::query("DELETE FROM people.recovery WHERE account = $1").bind(account.0).execute(&mut *tx).await?;
        for code in &codes {
            sqlx::query("INSERT INTO people.recovery (secret, account, made_at) VALUES ($1, $2, $3)")
                .bind(code.hash().bytes().as_slice())
                .bind(account.0)
                .bind(now.millis())
                .execute(&mut *tx)
                .await?;
        }
        tx.commit().await?;
        Ok(codes)
    }

    /// How many codes of an account are not used yet.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn recovery_codes_left(&self, account: AccountId) -> Result<i64, Error> {
        let count = "SELECT count(*) FROM people.recovery WHERE account = $1 AND used_at IS NULL";
        Ok(sqlx::query_scalar(count).bind(account.0).fetch_one(&self.pool).await?)
    }

    /// Signs in with a code, which is then used up.
    ///
    /// # Errors
    /// [`Error::NotValid`] where it is unknown or used; [`Error::TooOften`].
    pub async fn use_recovery_code(
        &self,
        code: &Secret,
        from: &str,
        device: &str,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(Session, Secret), Error> {
        self.attempt("recovery", None, from, now).await?;
        let mut tx = self.begin().await?;
        let account: Option<Uuid> = sqlx::query_scalar(
            "UPDATE people.recovery SET used_at = $2 WHERE secret = $1 AND used_at IS NULL RETURNING account",
        )
        .bind(code.hash().bytes().as_slice())
        .bind(now.millis())
        .fetch_optional(&mut *tx)
        .await?;
        let account = AccountId(account.ok_or(Error::NotValid)?);
        let begun = session::begin(&mut tx, self, account, device, now, secrets).await?;
        tx.commit().await?;
        Ok(begun)
    }
}
