//! Links sent by e-mail: to sign in, and to prove an address.
//!
//! Whoever asks for a link gets the same answer after the same work, whether an account has the address or not: a row is
//! written in either case, and the mail is sent after the answer. The secret stands in the mail alone.

use super::{People, later, session};
use crate::db::Session;
use crate::email::Email;
use crate::error::Error;
use crate::letter::{Addressed, Letter};
use crate::secret::{Secret, Secrets};
use sayso_model::{AccountId, Language, Moment};
use sqlx::Row;
use uuid::Uuid;

/// A letter that may have to be sent, once the answer is given. Tells nobody but the sender whether there is one.
#[must_use]
#[derive(Debug)]
pub struct Pending(Option<Addressed>);

impl Pending {
    /// What to send, if anything: after the answer, never before it.
    #[must_use]
    pub fn letter(self) -> Option<Addressed> {
        self.0
    }
}

impl People {
    fn link_minutes(&self) -> u32 {
        (self.lifetimes.link_s / 60.0).round().clamp(1.0, f64::from(u32::MAX)) as u32
    }

    async fn new_link(
        &self,
        account: Option<Uuid>,
        proves: Option<&Email>,
        now: Moment,
        secret: &Secret,
    ) -> Result<(), Error> {
        sqlx::query("INSERT INTO people.link (secret, account, proves, expires_at) VALUES ($1, $2, $3, $4)")
            .bind(secret.hash().bytes().as_slice())
            .bind(account)
            .bind(proves.map(Email::as_str))
            .bind(later(now, self.lifetimes.link_s))
            .execute(&self.pool)
            .await?;
        Ok(())
    }

    /// Asks for a link to sign in. `from` is the network address it was asked from; `before` what the browser had as its session,
    /// be it over: whoever was signed in by that as the account with this address is no stranger to it.
    ///
    /// # Errors
    /// [`Error::TooOften`], by the address as typed and by the network address, whether anyone has the address or not.
    pub async fn ask_link(
        &self,
        email: &Email,
        before: Option<&Secret>,
        from: &str,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<Pending, Error> {
        let known = self.was_signed_in(before, email).await?;
        self.attempt_by("link", email.as_str(), from, known, now).await?;
        let row = sqlx::query("SELECT id, language FROM people.account WHERE email = $1")
            .bind(email.as_str())
            .fetch_optional(&self.pool)
            .await?;
        let secret = Secret::long(secrets);
        let account = row.as_ref().map(|r| r.try_get::<Uuid, _>("id")).transpose()?;
        self.new_link(account, None, now, &secret).await?;
        let Some(row) = row else { return Ok(Pending(None)) };
        let language = Language::of_tag(row.try_get("language")?).ok_or(Error::Stored("account"))?;
        let letter = Letter::SignIn { secret, minutes: self.link_minutes() };
        Ok(Pending(Some(Addressed { to: email.clone(), language, letter })))
    }

    /// Whether a session, over or not, is or was that of the account with an address.
    async fn was_signed_in(&self, token: Option<&Secret>, email: &Email) -> Result<bool, Error> {
        let Some(token) = token else { return Ok(false) };
        let was = "SELECT EXISTS (SELECT 1 FROM people.session s JOIN people.account a ON a.id = s.account
                   WHERE s.token = $1 AND a.email = $2)";
        let hash = token.hash();
        let was = sqlx::query_scalar(was).bind(hash.bytes().as_slice()).bind(email.as_str());
        Ok(was.fetch_one(&self.pool).await?)
    }

    /// Whether a link to sign in, or with an account one that proves its address, still holds: for the page behind it.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn link_holds(&self, secret: &Secret, proves: Option<AccountId>, now: Moment) -> Result<bool, Error> {
        let holds = "SELECT EXISTS (SELECT 1 FROM people.link WHERE secret = $1 AND used_at IS NULL AND expires_at > $2
                     AND account IS NOT NULL AND CASE WHEN $3::uuid IS NULL THEN proves IS NULL
                         ELSE proves IS NOT NULL AND account = $3 END)";
        let hash = secret.hash();
        let held = sqlx::query_scalar(holds).bind(hash.bytes().as_slice()).bind(now.millis());
        Ok(held.bind(proves.map(|account| account.0)).fetch_one(&self.pool).await?)
    }

    /// Signs in with a link, which is then used up. To be called by a button on the page behind the link, not by opening it:
    /// mail programs open links by themselves.
    ///
    /// # Errors
    /// [`Error::NotValid`] where it is unknown, used or too old.
    pub async fn use_link(
        &self,
        secret: &Secret,
        device: &str,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(Session, Secret), Error> {
        let mut tx = self.begin().await?;
        let account: Option<Option<Uuid>> = sqlx::query_scalar(
            "UPDATE people.link SET used_at = $2
             WHERE secret = $1 AND proves IS NULL AND used_at IS NULL AND expires_at > $2 RETURNING account",
        )
        .bind(secret.hash().bytes().as_slice())
        .bind(now.millis())
        .fetch_optional(&mut *tx)
        .await?;
        let account = AccountId(account.flatten().ok_or(Error::NotValid)?);
        let begun = session::begin(&mut tx, self, account, device, now, secrets).await?;
        tx.commit().await?;
        Ok(begun)
    }

    /// Asks for a link that proves an address to be a signed-in account's.
    ///
    /// # Errors
    /// [`Error::NotFresh`], [`Error::TooOften`].
    pub async fn ask_proof(
        &self,
        session: &Session,
        email: &Email,
        from: &str,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<Pending, Error> {
        self.may_add_way(session, now).await?;
        self.attempt("proof", Some(&session.account.to_string()), from, now).await?;
        self.attempt("proof", Some(email.as_str()), from, now).await?;
        let account = self.account(session.account).await?.ok_or(Error::NotValid)?;
        let secret = Secret::long(secrets);
        self.new_link(Some(session.account.0), Some(email), now, &secret).await?;
        let letter = Letter::Prove { secret, minutes: self.link_minutes() };
        Ok(Pending(Some(Addressed { to: email.clone(), language: account.language, letter })))
    }

    /// Takes an address for the account's own, proved by the link sent there and opened in the same account.
    ///
    /// # Errors
    /// [`Error::NotFresh`]; [`Error::NotValid`] where the link is not the account's, used or too old; [`Error::Taken`] where another account has
    /// the address, told only to whoever reads its mail.
    pub async fn prove_email(&self, session: &Session, secret: &Secret, now: Moment) -> Result<Email, Error> {
        let mut tx = self.begin().await?;
        let email: Option<String> = sqlx::query_scalar(
            "UPDATE people.link SET used_at = $3
             WHERE secret = $1 AND account = $2 AND proves IS NOT NULL AND used_at IS NULL AND expires_at > $3
             RETURNING proves",
        )
        .bind(secret.hash().bytes().as_slice())
        .bind(session.account.0)
        .bind(now.millis())
        .fetch_optional(&mut *tx)
        .await?;
        let email = Email::new(&email.ok_or(Error::NotValid)?)?;
        // Asked for as the first, it is not added beside another that came meanwhile; the link holds on.
        self.may_add_begun(session, self.lifetimes.link_s, now).await?;
        sqlx::query("UPDATE people.account SET email = $2 WHERE id = $1")
            .bind(session.account.0)
            .bind(email.as_str())
            .execute(&mut *tx)
            .await
            .map_err(super::taken)?;
        tx.commit().await?;
        Ok(email)
    }

    /// Forgets an account's address.
    ///
    /// # Errors
    /// [`Error::NotFresh`].
    pub async fn forget_email(&self, session: &Session, now: Moment) -> Result<(), Error> {
        self.proved(session, now)?;
        let forget = "UPDATE people.account SET email = NULL WHERE id = $1";
        sqlx::query(forget).bind(session.account.0).execute(&self.pool).await?;
        Ok(())
    }
}
