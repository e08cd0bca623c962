//! A home whose keepers have all lost their way in gets a new keeper, by way of a keeper of the server.
//!
//! Who has the link has the home, so this is slow and seen: nobody gets in before some days are over, no account that keeps the
//! server gets in by it, whoever is still in may refuse it, and who did it when stays for the home to see.

use super::{People, Tx, later, moment};
use crate::capability::Capability;
use crate::email::Email;
use crate::error::Error;
use crate::id::InvitationId;
use crate::letter::{Addressed, Letter};
use crate::may::{Allowed, Denied};
use crate::membership::{Part, Scope};
use crate::role::Role;
use crate::secret::{Secret, Secrets};
use sayso_model::{AccountId, HomeId, Label, Language, Moment};
use sqlx::Row;
use sqlx::postgres::PgRow;
use uuid::Uuid;

/// One such invitation, as the home sees it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Rescue {
    /// Which.
    pub id: InvitationId,
    /// The keeper of the server who invited.
    pub made_by: String,
    /// When.
    pub made_at: Moment,
    /// From when it lets someone in.
    pub opens_at: Moment,
    /// Who came by it, and when.
    pub taken: Option<(String, Moment)>,
    /// Who of the home refused it, and when.
    pub refused: Option<(String, Moment)>,
}

impl Rescue {
    /// Whether it may still let someone in.
    #[must_use]
    pub fn is_open(&self, now: Moment, holds_s: f64) -> bool {
        self.taken.is_none() && self.refused.is_none() && now < self.opens_at.plus_seconds(holds_s)
    }

    fn of(row: &PgRow) -> Result<Self, Error> {
        let pair = |by: &str, at: &str| -> Result<Option<(String, Moment)>, Error> {
            let (by, at): (Option<String>, Option<i64>) = (row.try_get(by)?, row.try_get(at)?);
            Ok(by.zip(at.map(moment)))
        };
        Ok(Self {
            id: InvitationId(row.try_get("invitation")?),
            made_by: row.try_get("made_by")?,
            made_at: moment(row.try_get("made_at")?),
            opens_at: moment(row.try_get("opens_at")?),
            taken: pair("taken_by", "taken_at")?,
            refused: pair("refused_by", "refused_at")?,
        })
    }
}

/// What came of it: the link's secret, when it opens, and letters to whoever belongs to the home and has an address here.
#[derive(Debug)]
pub struct Rescued {
    /// For the link, which is shown once.
    pub secret: Secret,
    /// From when it lets someone in.
    pub opens_at: Moment,
    /// Until when.
    pub expires_at: Moment,
    /// To be sent.
    pub letters: Vec<Addressed>,
}

impl People {
    /// Invites a new keeper to a home that had one.
    ///
    /// # Errors
    /// [`Denied`] where `by` is no leave to host; [`Error::Left`] where the home is not here; [`Error::NotValid`] where it never
    /// had a keeper: then its first one is invited ([`People::invite`]); [`Error::Taken`] where such an invitation is open already.
    pub async fn invite_keeper_anew(
        &self,
        by: &Allowed,
        home: HomeId,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<Rescued, Error> {
        by.is_for(Capability::Host)?;
        let part = Part::new(Scope::Home(home), Role::Keeper, None, None)?;
        let keeper = self.account(by.account).await?.ok_or(Error::NotValid)?;
        let mut tx = self.begin().await?;
        super::membership::lock(&mut tx, part.scope()).await?;
        let (invited, secret) = self.write(&mut tx, Some(by.account), &part, now, secrets).await?;
        let kept = "SELECT EXISTS (SELECT 1 FROM people.membership WHERE home = $1 AND role = 'keeper')";
        if !sqlx::query_scalar::<_, bool>(kept).bind(home.0).fetch_one(&mut *tx).await? {
            return Err(Error::NotValid);
        }
        let (opens_at, opened) = (later(now, self.lifetimes.rescue_waits_s), later(now, -self.rescue_holds_s()));
        let open =
            "SELECT EXISTS (SELECT 1 FROM people.rescue WHERE home = $1 AND taken_at IS NULL AND refused_at IS NULL
                    AND made_at > $2)";
        if sqlx::query_scalar::<_, bool>(open).bind(home.0).bind(opened).fetch_one(&mut *tx).await? {
            return Err(Error::Taken);
        }
        let expires_at = later(moment(opens_at), self.lifetimes.invitation_s);
        sqlx::query("UPDATE people.invitation SET expires_at = $2 WHERE id = $1")
            .bind(invited.id.0)
            .bind(expires_at)
            .execute(&mut *tx)
            .await?;
        sqlx::query(
            "INSERT INTO people.rescue (invitation, home, made_by, made_at, opens_at) VALUES ($1, $2, $3, $4, $5)",
        )
        .bind(invited.id.0)
        .bind(home.0)
        .bind(keeper.name.as_str())
        .bind(now.millis())
        .bind(opens_at)
        .execute(&mut *tx)
        .await?;
        let letters = letters(&mut tx, home, &keeper.name, moment(opens_at)).await?;
        tx.commit().await?;
        Ok(Rescued { secret, opens_at: moment(opens_at), expires_at: moment(expires_at), letters })
    }

    /// From being made to its end, seconds.
    fn rescue_holds_s(&self) -> f64 {
        self.lifetimes.rescue_waits_s + self.lifetimes.invitation_s
    }

    /// Such invitations of a home, newest first: all there ever were.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn rescues(&self, home: HomeId) -> Result<Vec<Rescue>, Error> {
        let all = "SELECT * FROM people.rescue WHERE home = $1 ORDER BY made_at DESC, invitation";
        let rows = sqlx::query(all).bind(home.0).fetch_all(&self.pool).await?;
        rows.iter().map(Rescue::of).collect()
    }

    /// Someone who belongs to the home refuses one; nobody gets in by it any more. Whether there was one that was open.
    ///
    /// # Errors
    /// [`Denied`] where `by` is no leave to see who belongs to the home.
    pub async fn refuse_rescue(&self, by: &Allowed, id: InvitationId, now: Moment) -> Result<bool, Error> {
        by.is_for(Capability::SeePeople)?;
        let home = by.scope.home().ok_or(Denied::NothingHere)?;
        let who = self.account(by.account).await?.ok_or(Error::NotValid)?;
        let mut tx = self.begin().await?;
        super::membership::lock(&mut tx, by.scope).await?;
        let done = sqlx::query(
            "UPDATE people.rescue SET refused_by = $3, refused_at = $4
             WHERE invitation = $1 AND home = $2 AND taken_at IS NULL AND refused_at IS NULL",
        )
        .bind(id.0)
        .bind(home.0)
        .bind(who.name.as_str())
        .bind(now.millis())
        .execute(&mut *tx)
        .await?;
        if done.rows_affected() == 1 {
            let end =
                "UPDATE people.invitation SET ended_at = $2 WHERE id = $1 AND used_at IS NULL AND ended_at IS NULL";
            sqlx::query(end).bind(id.0).bind(now.millis()).execute(&mut *tx).await?;
        }
        tx.commit().await?;
        Ok(done.rows_affected() == 1)
    }
}

/// Letters to everyone who belongs to a home and has an address.
async fn letters(tx: &mut Tx, home: HomeId, by: &Label, opens_at: Moment) -> Result<Vec<Addressed>, Error> {
    let rows = sqlx::query(
        "SELECT DISTINCT a.id, a.email, a.language FROM people.membership m JOIN people.account a ON a.id = m.account
         WHERE m.home = $1 AND m.ended_at IS NULL AND m.role IN ('keeper', 'member') AND a.email IS NOT NULL ORDER BY a.id",
    )
    .bind(home.0)
    .fetch_all(&mut **tx)
    .await?;
    let of = |row: &PgRow| {
        Ok(Addressed {
            to: Email::new(row.try_get("email")?)?,
            language: Language::of_tag(row.try_get("language")?).ok_or(Error::Stored("account"))?,
            letter: Letter::Rescue { by: by.clone(), opens_at },
        })
    };
    rows.iter().map(of).collect()
}

/// When an invitation of this kind opens; none where it is another one.
pub(super) async fn opens(tx: &mut Tx, id: InvitationId) -> Result<Option<Moment>, Error> {
    let opens = "SELECT opens_at FROM people.rescue WHERE invitation = $1";
    Ok(sqlx::query_scalar::<_, i64>(opens).bind(id.0).fetch_optional(&mut **tx).await?.map(moment))
}

/// Makes room for whom it lets in, who may be a member already, and keeps who it was.
pub(super) async fn taken(
    tx: &mut Tx,
    id: InvitationId,
    account: AccountId,
    scope: Scope,
    now: Moment,
) -> Result<(), Error> {
    let roles = sqlx::query("SELECT id, role, home FROM people.membership WHERE account = $1 AND ended_at IS NULL")
        .bind(account.0)
        .fetch_all(&mut **tx)
        .await?;
    for row in &roles {
        let role = Role::named(row.try_get("role")?);
        // Whoever made the link could be who takes it.
        if role == Some(Role::ServerKeeper) {
            return Err(Denied::NotByRole(Capability::ManagePeople).into());
        }
        if row.try_get::<Option<Uuid>, _>("home")?.map(HomeId) == scope.home() && role != Some(Role::Keeper) {
            super::membership::end(tx, row.try_get("id")?, |_| true, now).await?;
        }
    }
    sqlx::query(
        "UPDATE people.rescue SET taken_at = $2, taken_by = (SELECT name FROM people.account WHERE id = $3)
         WHERE invitation = $1",
    )
    .bind(id.0)
    .bind(now.millis())
    .bind(account.0)
    .execute(&mut **tx)
    .await?;
    Ok(())
}
