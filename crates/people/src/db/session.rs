//! Sessions: signed-in browsers, each to be seen and ended.

use super::{People, Tx, later, moment};
use crate::capability::Capability;
use crate::error::Error;
use crate::id::{SessionId, new_id};
use crate::may::{Allowed, Denied};
use crate::secret::{Secret, Secrets};
use sayso_model::{AccountId, Moment};
use sqlx::Row;
use sqlx::postgres::PgRow;

/// A signed-in browser.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Session {
    /// Which.
    pub id: SessionId,
    /// Whose.
    pub account: AccountId,
    /// What the browser said it is.
    pub device: String,
    /// Since when.
    pub made_at: Moment,
    /// When the person last proved who they are.
    pub proved_at: Moment,
    /// When it was last used, to the minute.
    pub seen_at: Moment,
    /// When it ends at the latest.
    pub expires_at: Moment,
    /// Whether a role changed meanwhile: the next answer should carry a new token ([`People::renew`]).
    pub renew: bool,
}

/// Most characters of what a browser says it is.
const MOST_DEVICE: usize = 120;
/// A session's last use is written down once in so many milliseconds.
const SEEN_EVERY: i64 = 60_000;

impl Session {
    fn of(row: &PgRow) -> Result<Self, Error> {
        Ok(Self {
            id: SessionId(row.try_get("id")?),
            account: AccountId(row.try_get("account")?),
            device: row.try_get("device")?,
            made_at: moment(row.try_get("made_at")?),
            proved_at: moment(row.try_get("proved_at")?),
            seen_at: moment(row.try_get("seen_at")?),
            expires_at: moment(row.try_get("expires_at")?),
            renew: row.try_get("renew")?,
        })
    }
}

/// Begins a session in a transaction in which the person proved who they are.
pub(super) async fn begin(
    tx: &mut Tx,
    people: &People,
    account: AccountId,
    device: &str,
    now: Moment,
    secrets: &mut (impl Secrets + Send),
) -> Result<(Session, Secret), Error> {
    let (id, token) = (new_id(now, secrets), Secret::long(secrets));
    let plain = device.chars().filter(|c| !c.is_control()).take(MOST_DEVICE);
    let row = sqlx::query(
        "INSERT INTO people.session (id, account, token, device, made_at, proved_at, seen_at, expires_at)
         VALUES ($1, $2, $3, $4, $5, $5, $5, $6)
         RETURNING id, account, device, made_at, proved_at, seen_at, expires_at, renew",
    )
    .bind(id)
    .bind(account.0)
    .bind(token.hash().bytes().as_slice())
    .bind(plain.collect::<String>())
    .bind(now.millis())
    .bind(later(now, people.lifetimes.session_s))
    .fetch_one(&mut **tx)
    .await?;
    Ok((Session::of(&row)?, token))
}

impl People {
    fn idle_since(&self, now: Moment) -> i64 {
        later(now, -self.lifetimes.idle_s)
    }

    /// The session of a token; none where it is unknown, ended, unused for too long or too old.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn session(&self, token: &Secret, now: Moment) -> Result<Option<Session>, Error> {
        let row = sqlx::query(
            "SELECT id, account, device, made_at, proved_at, seen_at, expires_at, renew FROM people.session
             WHERE token = $1 AND ended_at IS NULL AND expires_at > $2 AND seen_at > $3",
        )
        .bind(token.hash().bytes().as_slice())
        .bind(now.millis())
        .bind(self.idle_since(now))
        .fetch_optional(&self.pool)
        .await?;
        let Some(session) = row.as_ref().map(Session::of).transpose()? else { return Ok(None) };
        if now.millis() - session.seen_at.millis() >= SEEN_EVERY {
            sqlx::query("UPDATE people.session SET seen_at = GREATEST(seen_at, $2) WHERE id = $1")
                .bind(session.id.0)
                .bind(now.millis())
                .execute(&self.pool)
                .await?;
        }
        Ok(Some(session))
    }

    /// Sessions of an account that hold, the last used first.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn sessions(&self, account: AccountId, now: Moment) -> Result<Vec<Session>, Error> {
        let rows = sqlx::query(
            "SELECT id, account, device, made_at, proved_at, seen_at, expires_at, renew FROM people.session
             WHERE account = $1 AND ended_at IS NULL AND expires_at > $2 AND seen_at > $3 ORDER BY seen_at DESC, id",
        )
        .bind(account.0)
        .bind(now.millis())
        .bind(self.idle_since(now))
        .fetch_all(&self.pool)
        .await?;
        rows.iter().map(Session::of).collect()
    }

    /// How many sessions hold, of all accounts.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn open_sessions(&self, now: Moment) -> Result<u64, Error> {
        let count: i64 = sqlx::query_scalar(
            "SELECT count(*) FROM people.session WHERE ended_at IS NULL AND expires_at > $1 AND seen_at > $2",
        )
        .bind(now.millis())
        .bind(self.idle_since(now))
        .fetch_one(&self.pool)
        .await?;
        Ok(u64::try_from(count).unwrap_or(0))
    }

    /// Ends one session of an account, at once; whether there was one, ended before or not.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn end_session(&self, account: AccountId, id: SessionId, now: Moment) -> Result<bool, Error> {
        let end = "UPDATE people.session SET ended_at = COALESCE(ended_at, $3) WHERE id = $1 AND account = $2";
        let done = sqlx::query(end).bind(id.0).bind(account.0).bind(now.millis()).execute(&self.pool).await?;
        Ok(done.rows_affected() == 1)
    }

    /// Ends every session of an account but one; how many there were.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn end_other_sessions(&self, keep: &Session, now: Moment) -> Result<u64, Error> {
        let done =
            sqlx::query("UPDATE people.session SET ended_at = $3 WHERE account = $1 AND id <> $2 AND ended_at IS NULL")
                .bind(keep.account.0)
                .bind(keep.id.0)
                .bind(now.millis())
                .execute(&self.pool)
                .await?;
        Ok(done.rows_affected())
    }

    /// Gives a session a new token; the old one is worth nothing from then on. Of several who ask with the same old token one
    /// gets it.
    ///
    /// # Errors
    /// [`Error::NotValid`] where the old token does not hold.
    pub async fn renew(
        &self,
        token: &Secret,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(Session, Secret), Error> {
        let new = Secret::long(secrets);
        let row = sqlx::query(
            "UPDATE people.session SET token = $2, renew = false
             WHERE token = $1 AND ended_at IS NULL AND expires_at > $3 AND seen_at > $4
             RETURNING id, account, device, made_at, proved_at, seen_at, expires_at, renew",
        )
        .bind(token.hash().bytes().as_slice())
        .bind(new.hash().bytes().as_slice())
        .bind(now.millis())
        .bind(self.idle_since(now))
        .fetch_optional(&self.pool)
        .await?;
        Ok((Session::of(&row.ok_or(Error::NotValid)?)?, new))
    }

    /// Ends every session of an account: for a keeper of the server, where an account is in wrong hands. How many there were.
    ///
    /// # Errors
    /// [`Denied`] where `by` is no leave to manage the server.
    pub async fn end_all_sessions(&self, by: &Allowed, account: AccountId, now: Moment) -> Result<u64, Error> {
        by.is_for(Capability::ManageServer)?;
        let end = "UPDATE people.session SET ended_at = $2 WHERE account = $1 AND ended_at IS NULL";
        Ok(sqlx::query(end).bind(account.0).bind(now.millis()).execute(&self.pool).await?.rows_affected())
    }

    /// That the sign-in is fresh enough to change how one signs in.
    pub(super) fn proved(&self, session: &Session, now: Moment) -> Result<(), Error> {
        if self.is_fresh(session, now) { Ok(()) } else { Err(Error::NotFresh) }
    }

    /// That a way to sign in may be added: by a fresh sign-in, or where it is the account's first. Who has none cannot show once more
    /// who they are.
    ///
    /// # Errors
    /// [`Error::NotFresh`].
    pub async fn may_add_way(&self, session: &Session, now: Moment) -> Result<(), Error> {
        self.may_add_begun(session, 0.0, now).await
    }

    /// The same of one that was begun up to so many seconds ago.
    pub(super) async fn may_add_begun(&self, session: &Session, ago_s: f64, now: Moment) -> Result<(), Error> {
        let fresh = now.seconds_since(session.proved_at) < self.lifetimes.fresh_s + ago_s;
        if fresh || !self.has_way_in(session.account).await? { Ok(()) } else { Err(Error::NotFresh) }
    }

    /// Whether the person proved who they are in the last minutes.
    #[must_use]
    pub fn is_fresh(&self, session: &Session, now: Moment) -> bool {
        now.seconds_since(session.proved_at) < self.lifetimes.fresh_s
    }

    /// That the person proved who they are in the last minutes.
    ///
    /// # Errors
    /// [`Denied::NotFresh`].
    pub fn fresh(&self, session: &Session, of: Capability, now: Moment) -> Result<(), Denied> {
        if !of.needs_fresh() || self.is_fresh(session, now) { Ok(()) } else { Err(Denied::NotFresh(of)) }
    }
}
