//! Signing in by an identity provider of the club's own (OpenID Connect): who someone is there, and the way there and back.
//! What the provider says is checked by whoever asks it; here it is known which account it stands for.
//!
//! An account is found by issuer and subject. An e-mail address decides nothing: whoever runs a provider writes into a token
//! what they like. A link is made by someone signed in here by another way, just now.

use super::{People, Session, later, moment, session};
use crate::error::Error;
use crate::id::SessionId;
use crate::secret::{Secret, Secrets};
use sayso_model::{AccountId, Moment};
use sqlx::Row;
use uuid::Uuid;

/// What is needed to set out.
#[derive(Debug)]
pub struct Errand {
    /// Comes back with the browser, in its address.
    pub state: Secret,
    /// Stands in the browser's cookie: another browser cannot come back in its stead.
    pub browser: Secret,
    /// Comes back within what the provider signs.
    pub nonce: Secret,
    /// Shows the provider that who fetches the token is who set out (RFC 7636).
    pub verifier: Secret,
}

/// What was kept of it for the way back.
#[derive(Debug)]
pub struct Returned {
    /// To be found in what the provider signed.
    pub nonce: Secret,
    /// To be shown to it.
    pub verifier: Secret,
    /// The session whose account is to be linked; none where someone signs in.
    pub links: Option<SessionId>,
}

/// Who an account is to a provider.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Linked {
    /// Which provider.
    pub issuer: String,
    /// Since when.
    pub made_at: Moment,
    /// When someone last signed in by it.
    pub used_at: Option<Moment>,
}

impl People {
    /// Sets out to the provider: to sign in, or with a session whose account is to be linked.
    ///
    /// # Errors
    /// [`Error::TooOften`] by the network address; [`Error::NotFresh`] for a link.
    pub async fn set_out(
        &self,
        links: Option<&Session>,
        from: &str,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<Errand, Error> {
        if let Some(session) = links {
            self.may_add_way(session, now).await?;
        }
        self.attempt("provider", None, from, now).await?;
        let errand = Errand {
            state: Secret::for_paper(secrets),
            browser: Secret::long(secrets),
            nonce: Secret::for_paper(secrets),
            verifier: Secret::long(secrets),
        };
        sqlx::query(
            "INSERT INTO people.errand (state, browser, nonce, verifier, session, expires_at) VALUES ($1, $2, $3, $4, $5, $6)",
        )
        .bind(errand.state.hash().bytes().as_slice())
        .bind(errand.browser.hash().bytes().as_slice())
        .bind(errand.nonce.reveal())
        .bind(errand.verifier.reveal())
        .bind(links.map(|session| session.id.0))
        .bind(later(now, self.lifetimes.link_s))
        .execute(&self.pool)
        .await?;
        Ok(errand)
    }

    /// The way back, which is then used up.
    ///
    /// # Errors
    /// [`Error::NotValid`] where it is unknown, used, too old or another browser's.
    pub async fn come_back(&self, state: &Secret, browser: &Secret, now: Moment) -> Result<Returned, Error> {
        let row = sqlx::query(
            "UPDATE people.errand SET used_at = $3
             WHERE state = $1 AND browser = $2 AND used_at IS NULL AND expires_at > $3 RETURNING nonce, verifier, session",
        )
        .bind(state.hash().bytes().as_slice())
        .bind(browser.hash().bytes().as_slice())
        .bind(now.millis())
        .fetch_optional(&self.pool)
        .await?
        .ok_or(Error::NotValid)?;
        Ok(Returned {
            nonce: Secret::typed(row.try_get("nonce")?),
            verifier: Secret::typed(row.try_get("verifier")?),
            links: row.try_get::<Option<Uuid>, _>("session")?.map(SessionId),
        })
    }

    /// Signs in whom the provider named. `proved_at` is when the person last proved to the provider who they are.
    ///
    /// # Errors
    /// [`Error::NotValid`] where no account is linked with it.
    pub async fn sign_in_by(
        &self,
        (issuer, subject): (&str, &str),
        proved_at: Moment,
        device: &str,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(Session, Secret), Error> {
        let mut tx = self.begin().await?;
        let account: Option<Uuid> = sqlx::query_scalar(
            "UPDATE people.identity SET used_at = $3 WHERE issuer = $1 AND subject = $2 RETURNING account",
        )
        .bind(issuer)
        .bind(subject)
        .bind(now.millis())
        .fetch_optional(&mut *tx)
        .await?;
        let account = AccountId(account.ok_or(Error::NotValid)?);
        let (mut begun, token) = session::begin(&mut tx, self, account, device, now, secrets).await?;
        // Whoever is known there for hours did not prove it just now.
        begun.proved_at = proved_at.min(now);
        sqlx::query("UPDATE people.session SET proved_at = $2 WHERE id = $1")
            .bind(begun.id.0)
            .bind(begun.proved_at.millis())
            .execute(&mut *tx)
            .await?;
        tx.commit().await?;
        Ok((begun, token))
    }

    /// Links the account of a session with whom the provider named.
    ///
    /// # Errors
    /// [`Error::NotFresh`]; [`Error::Taken`] where that one is linked already, or the account with another one there.
    pub async fn link_identity(
        &self,
        session: &Session,
        (issuer, subject): (&str, &str),
        now: Moment,
    ) -> Result<(), Error> {
        self.may_add_way(session, now).await?;
        sqlx::query("INSERT INTO people.identity (issuer, subject, account, made_at) VALUES ($1, $2, $3, $4)")
            .bind(issuer)
            .bind(subject)
            .bind(session.account.0)
            .bind(now.millis())
            .execute(&self.pool)
            .await
            .map_err(super::taken)?;
        Ok(())
    }

    /// Who an account is to a provider; none where it is not linked.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn identity(&self, account: AccountId, issuer: &str) -> Result<Option<Linked>, Error> {
        let row = sqlx::query("SELECT made_at, used_at FROM people.identity WHERE account = $1 AND issuer = $2")
            .bind(account.0)
            .bind(issuer)
            .fetch_optional(&self.pool)
            .await?;
        let Some(row) = row else { return Ok(None) };
        let used_at: Option<i64> = row.try_get("used_at")?;
        let made_at = moment(row.try_get("made_at")?);
        Ok(Some(Linked { issuer: issuer.to_owned(), made_at, used_at: used_at.map(moment) }))
    }

    /// Forgets who an account is to a provider.
    ///
    /// # Errors
    /// [`Error::NotFresh`].
    pub async fn forget_identity(&self, session: &Session, issuer: &str, now: Moment) -> Result<(), Error> {
        self.proved(session, now)?;
        sqlx::query("DELETE FROM people.identity WHERE account = $1 AND issuer = $2")
            .bind(session.account.0)
            .bind(issuer)
            .execute(&self.pool)
            .await?;
        Ok(())
    }
}
