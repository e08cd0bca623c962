//! Invitations: links, also as QR codes, each for one role in one place, once, for some days.

use super::membership::{give, keepers, lock, manages, part_of};
use super::{People, Session, account, later, moment, rescue, session};
use crate::capability::Capability;
use crate::error::Error;
use crate::id::{InvitationId, MembershipId, new_id};
use crate::may::{Allowed, Denied};
use crate::membership::{Part, Scope};
use crate::role::Role;
use crate::secret::{Secret, Secrets};
use sayso_model::{AccountId, Label, Language, Moment};
use sqlx::Row;
use uuid::Uuid;

/// An invitation that nobody has taken yet.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Invited {
    /// Which.
    pub id: InvitationId,
    /// To what.
    pub part: Part,
    /// From when it lets someone in, where that is later than at once.
    pub opens_at: Option<Moment>,
    /// Until when it holds.
    pub expires_at: Moment,
}

/// Who takes an invitation.
#[derive(Clone, Copy, Debug)]
pub enum Taker<'a> {
    /// Someone who is signed in.
    Known(&'a Session),
    /// Someone without an account, who gets one.
    New {
        /// What the person wants to be called.
        name: &'a Label,
        /// What the person reads.
        language: Language,
    },
}

/// What came of taking an invitation.
#[derive(Debug)]
pub struct Joined {
    /// The role.
    pub membership: MembershipId,
    /// To what.
    pub part: Part,
    /// The session of a new account, with its token. A known one's session is to be renewed.
    pub session: Option<(Session, Secret)>,
}

/// Whether leave to do one thing is leave to invite to a part. Who hosts may invite first keepers only; whether a place has had
/// one, the database knows.
fn may_invite(by: &Allowed, part: &Part) -> Result<(), Denied> {
    let scope = part.scope();
    let first = matches!(part.role(), Role::Keeper | Role::ClubKeeper);
    if first && by.is_for(Capability::Host).is_ok() { Ok(()) } else { by.is_for_at(manages(scope), scope) }
}

impl People {
    /// Invites to a role; the secret belongs into a link or a QR code and is shown once.
    ///
    /// # Errors
    /// [`Denied`] where `by` is no leave to; [`Error::Left`] where the place is not here.
    pub async fn invite(
        &self,
        by: &Allowed,
        part: &Part,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(Invited, Secret), Error> {
        may_invite(by, part)?;
        let mut tx = self.begin().await?;
        lock(&mut tx, part.scope()).await?;
        if by.capability == Capability::Host {
            first_keeper_only(&mut tx, part.scope()).await?;
        }
        let made = self.write(&mut tx, Some(by.account), part, now, secrets).await?;
        tx.commit().await?;
        Ok(made)
    }

    /// Invites the first keeper of the server: for whoever starts the server on its machine. Again as long as there is none.
    ///
    /// # Errors
    /// [`Error::Taken`] where the server has a keeper.
    pub async fn invite_first_keeper(
        &self,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(Invited, Secret), Error> {
        let part = Part::new(Scope::Server, Role::ServerKeeper, None, None)?;
        let mut tx = self.begin().await?;
        lock(&mut tx, part.scope()).await?;
        first_keeper_only(&mut tx, part.scope()).await?;
        let made = self.write(&mut tx, None, &part, now, secrets).await?;
        tx.commit().await?;
        Ok(made)
    }

    pub(super) async fn write(
        &self,
        tx: &mut super::Tx,
        by: Option<AccountId>,
        part: &Part,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(Invited, Secret), Error> {
        if let Scope::Home(home) = part.scope() {
            let here = "SELECT EXISTS (SELECT 1 FROM people.home WHERE id = $1 AND left_at IS NULL)";
            if !sqlx::query_scalar::<_, bool>(here).bind(home.0).fetch_one(&mut **tx).await? {
                return Err(Error::Left);
            }
        }
        let (id, secret) = (InvitationId(new_id(now, secrets)), Secret::long(secrets));
        let expires_at = later(now, self.lifetimes.invitation_s);
        sqlx::query(
            "INSERT INTO people.invitation (id, secret, home, club, role, person, days_first, days_last, weekdays,
                 made_by, made_at, expires_at)
             VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12)",
        )
        .bind(id.0)
        .bind(secret.hash().bytes().as_slice())
        .bind(part.scope().home().map(|h| h.0))
        .bind(part.scope().club().map(|c| c.0))
        .bind(part.role().name())
        .bind(part.person().map(|p| p.0))
        .bind(part.days().map(|d| d.first.to_string()))
        .bind(part.days().map(|d| d.last.to_string()))
        .bind(part.days().map(|d| i16::from(d.weekdays)))
        .bind(by.map(|a| a.0))
        .bind(now.millis())
        .bind(expires_at)
        .execute(&mut **tx)
        .await?;
        Ok((Invited { id, part: *part, opens_at: None, expires_at: moment(expires_at) }, secret))
    }

    /// What an invitation is to, without taking it: for the page behind the link.
    ///
    /// # Errors
    /// [`Error::NotValid`] where it is unknown, used, ended or too old; [`Error::Taken`] where it is for a first keeper, and somebody
    /// else came first.
    pub async fn invitation(&self, secret: &Secret, now: Moment) -> Result<Invited, Error> {
        let row = sqlx::query(
            "SELECT i.*, r.opens_at FROM people.invitation i LEFT JOIN people.rescue r ON r.invitation = i.id
             WHERE secret = $1 AND used_at IS NULL AND ended_at IS NULL AND expires_at > $2",
        )
        .bind(secret.hash().bytes().as_slice())
        .bind(now.millis())
        .fetch_optional(&self.pool)
        .await?;
        let row = row.ok_or(Error::NotValid)?;
        let expires_at = moment(row.try_get("expires_at")?);
        let opens_at = row.try_get::<Option<i64>, _>("opens_at")?.map(moment);
        let part = part_of(&row)?;
        if opens_at.is_none() && part.role().keeps() {
            let mut tx = self.begin().await?;
            still_first(&mut tx, row.try_get("made_by")?, part.scope()).await?;
        }
        Ok(Invited { id: InvitationId(row.try_get("id")?), part, opens_at, expires_at })
    }

    /// To what an account came by an invitation that it took itself; none where it did not, or has that role no more.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn took(&self, secret: &Secret, account: AccountId) -> Result<Option<Part>, Error> {
        let row = sqlx::query("SELECT * FROM people.invitation WHERE secret = $1 AND taken_by = $2")
            .bind(secret.hash().bytes().as_slice())
            .bind(account.0)
            .fetch_optional(&self.pool)
            .await?;
        let Some(part) = row.as_ref().map(part_of).transpose()? else { return Ok(None) };
        let held = self.who(account).await?.memberships.iter().any(|m| m.part.scope() == part.scope());
        Ok(held.then_some(part))
    }

    /// Takes an invitation, which is then used up.
    ///
    /// # Errors
    /// [`Error::NotValid`] where it is unknown, used, ended or too old; [`Error::Taken`] where it is for a first keeper and somebody else
    /// came first, or where the account has a role there already, and then the invitation still holds; [`Error::NotYet`] where it opens later; [`Denied`] where it is not for
    /// who keeps the server; [`Error::TooOften`].
    pub async fn take_invitation(
        &self,
        secret: &Secret,
        taker: Taker<'_>,
        from: &str,
        device: &str,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<Joined, Error> {
        self.attempt("invitation", None, from, now).await?;
        // Its place is locked before the invitation is: so does who ends a role and with it the invitations written by it.
        let to = self.invitation(secret, now).await?.part.scope();
        let mut tx = self.begin().await?;
        lock(&mut tx, to).await?;
        let row = sqlx::query(
            "UPDATE people.invitation SET used_at = $2
             WHERE secret = $1 AND used_at IS NULL AND ended_at IS NULL AND expires_at > $2 RETURNING *",
        )
        .bind(secret.hash().bytes().as_slice())
        .bind(now.millis())
        .fetch_optional(&mut *tx)
        .await?;
        let row = row.ok_or(Error::NotValid)?;
        let part = part_of(&row)?;
        let made_by: Option<Uuid> = row.try_get("made_by")?;
        let id = InvitationId(row.try_get("id")?);
        let rescues = rescue::opens(&mut tx, id).await?;
        // Nobody gets in by one before whoever is still in had time to refuse it. It still holds then.
        if rescues.is_some_and(|opens| now < opens) {
            return Err(Error::NotYet);
        }
        if rescues.is_none() {
            still_first(&mut tx, made_by, part.scope()).await?;
        }
        let (account, new) = match taker {
            Taker::Known(session) => (session.account, false),
            Taker::New { name, language } => (account::make(&mut tx, name, language, now, secrets).await?, true),
        };
        if rescues.is_some() {
            rescue::taken(&mut tx, id, account, part.scope(), now).await?;
        }
        sqlx::query("UPDATE people.invitation SET taken_by = $2 WHERE id = $1")
            .bind(id.0)
            .bind(account.0)
            .execute(&mut *tx)
            .await?;
        let membership = give(&mut tx, account, &part, now, secrets).await?;
        let session =
            if new { Some(session::begin(&mut tx, self, account, device, now, secrets).await?) } else { None };
        tx.commit().await?;
        Ok(Joined { membership, part, session })
    }

    /// Invitations to a place that nobody has taken yet. Those by which a home that lost its way in gets a new keeper are told
    /// apart ([`People::rescues`]).
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn invitations(&self, scope: Scope, now: Moment) -> Result<Vec<Invited>, Error> {
        let rows = sqlx::query(
            "SELECT * FROM people.invitation WHERE home IS NOT DISTINCT FROM $1 AND club IS NOT DISTINCT FROM $2
             AND used_at IS NULL AND ended_at IS NULL AND expires_at > $3
             AND NOT EXISTS (SELECT 1 FROM people.rescue r WHERE r.invitation = people.invitation.id) ORDER BY id",
        )
        .bind(scope.home().map(|h| h.0))
        .bind(scope.club().map(|c| c.0))
        .bind(now.millis())
        .fetch_all(&self.pool)
        .await?;
        let of = |row: &sqlx::postgres::PgRow| {
            let expires_at = moment(row.try_get("expires_at")?);
            Ok(Invited { id: InvitationId(row.try_get("id")?), part: part_of(row)?, opens_at: None, expires_at })
        };
        rows.iter().map(of).collect()
    }

    /// Takes an invitation back; whether there was one.
    ///
    /// # Errors
    /// [`Denied`]; where the database fails.
    pub async fn end_invitation(&self, by: &Allowed, id: InvitationId, now: Moment) -> Result<bool, Error> {
        let managing = by.is_for(manages(by.scope));
        by.is_for(Capability::Host).or(managing)?;
        let done = sqlx::query(
            "UPDATE people.invitation SET ended_at = $2 WHERE id = $1 AND used_at IS NULL AND ended_at IS NULL
             AND ((home IS NOT DISTINCT FROM $3 AND club IS NOT DISTINCT FROM $4) OR made_by = $5)",
        )
        .bind(id.0)
        .bind(now.millis())
        .bind(by.scope.home().map(|h| h.0))
        .bind(by.scope.club().map(|c| c.0))
        .bind(by.account.0)
        .execute(&self.pool)
        .await?;
        Ok(done.rows_affected() == 1)
    }
}

/// That an invitation which no keeper of the place wrote still finds it without one: a first keeper is only ever the first, however many
/// links were written.
async fn still_first(tx: &mut super::Tx, made_by: Option<Uuid>, scope: Scope) -> Result<(), Error> {
    let by_keeper = match made_by {
        Some(by) => is_keeper(tx, by, scope).await?,
        None => false,
    };
    if by_keeper {
        return Ok(());
    }
    first_keeper_only(tx, scope).await
}

/// That a place has no keeper and never had one.
async fn first_keeper_only(tx: &mut super::Tx, scope: Scope) -> Result<(), Error> {
    let had = sqlx::query_scalar::<_, bool>(
        "SELECT EXISTS (SELECT 1 FROM people.membership WHERE home IS NOT DISTINCT FROM $1
         AND club IS NOT DISTINCT FROM $2)",
    )
    .bind(scope.home().map(|h| h.0))
    .bind(scope.club().map(|c| c.0))
    .fetch_one(&mut **tx)
    .await?;
    if had || keepers(tx, scope).await? > 0 { Err(Error::Taken) } else { Ok(()) }
}

/// Whether an account keeps a place at this moment.
async fn is_keeper(tx: &mut super::Tx, account: Uuid, scope: Scope) -> Result<bool, Error> {
    let keeps = sqlx::query_scalar(
        "SELECT EXISTS (SELECT 1 FROM people.membership WHERE account = $1 AND ended_at IS NULL
         AND home IS NOT DISTINCT FROM $2 AND club IS NOT DISTINCT FROM $3
         AND role IN ('keeper', 'club_keeper', 'server_keeper'))",
    )
    .bind(account)
    .bind(scope.home().map(|h| h.0))
    .bind(scope.club().map(|c| c.0))
    .fetch_one(&mut **tx)
    .await?;
    Ok(keeps)
}
