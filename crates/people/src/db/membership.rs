//! Roles as they are stored.

use super::{People, Tx, moment};
use crate::capability::Capability;
use crate::error::Error;
use crate::id::{MembershipId, new_id};
use crate::may::Allowed;
use crate::membership::{Days, Membership, Part, Scope, Who};
use crate::role::Role;
use crate::secret::Secrets;
use sayso_model::{AccountId, ClubId, Day, HomeId, Label, Moment, PersonId};
use sqlx::Row;
use sqlx::postgres::PgRow;
use uuid::Uuid;

/// Someone with a role in a place.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Member {
    /// What the person is called.
    pub name: Label,
    /// The role.
    pub membership: Membership,
}

/// The part of a row that says where, as what, as whom and when.
pub(super) fn part_of(row: &PgRow) -> Result<Part, Error> {
    let bad = || Error::Stored("membership");
    let (home, club): (Option<Uuid>, Option<Uuid>) = (row.try_get("home")?, row.try_get("club")?);
    let scope = match (home, club) {
        (Some(home), _) => Scope::Home(HomeId(home)),
        (None, Some(club)) => Scope::Club(ClubId(club)),
        (None, None) => Scope::Server,
    };
    let day = |text: Option<String>| text.map(|t| t.parse::<Day>().map_err(|_| bad())).transpose();
    let days = match (day(row.try_get("days_first")?)?, day(row.try_get("days_last")?)?) {
        (Some(first), Some(last)) => {
            let weekdays: Option<i16> = row.try_get("weekdays")?;
            let weekdays = weekdays.and_then(|bits| u8::try_from(bits).ok()).ok_or_else(bad)?;
            Some(Days { first, last, weekdays })
        }
        (None, None) => None,
        (Some(_), None) | (None, Some(_)) => return Err(bad()),
    };
    let role = Role::named(row.try_get("role")?).ok_or_else(bad)?;
    let person: Option<Uuid> = row.try_get("person")?;
    Part::new(scope, role, person.map(PersonId), days).map_err(|_| bad())
}

fn membership_of(row: &PgRow) -> Result<Membership, Error> {
    Ok(Membership {
        id: MembershipId(row.try_get("id")?),
        account: AccountId(row.try_get("account")?),
        part: part_of(row)?,
        since: moment(row.try_get("since")?),
    })
}

fn member_of(row: &PgRow) -> Result<Member, Error> {
    let name = Label::try_from(row.try_get::<String, _>("name")?).map_err(|_| Error::Stored("account"))?;
    Ok(Member { name, membership: membership_of(row)? })
}

/// Gives an account a role.
pub(super) async fn give(
    tx: &mut Tx,
    account: AccountId,
    part: &Part,
    now: Moment,
    secrets: &mut (impl Secrets + Send),
) -> Result<MembershipId, Error> {
    let id = MembershipId(new_id(now, secrets));
    sqlx::query(
        "INSERT INTO people.membership (id, account, home, club, role, person, days_first, days_last, weekdays, since)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)",
    )
    .bind(id.0)
    .bind(account.0)
    .bind(part.scope().home().map(|h| h.0))
    .bind(part.scope().club().map(|c| c.0))
    .bind(part.role().name())
    .bind(part.person().map(|p| p.0))
    .bind(part.days().map(|d| d.first.to_string()))
    .bind(part.days().map(|d| d.last.to_string()))
    .bind(part.days().map(|d| i16::from(d.weekdays)))
    .bind(now.millis())
    .execute(&mut **tx)
    .await
    .map_err(super::taken)?;
    roles_changed(tx, account).await?;
    Ok(id)
}

/// Sessions of an account get new tokens once its roles change.
async fn roles_changed(tx: &mut Tx, account: AccountId) -> Result<(), Error> {
    let due = "UPDATE people.session SET renew = true WHERE account = $1 AND ended_at IS NULL";
    sqlx::query(due).bind(account.0).execute(&mut **tx).await?;
    Ok(())
}

/// Ends a role, and the invitations that its holder wrote by it. The place's row is locked first, so that of two last keepers
/// who go at once one must stay.
/// Only a role that is `meant`; any other is as if it were not there.
pub(super) async fn end(
    tx: &mut Tx,
    id: Uuid,
    meant: impl Fn(&Membership) -> bool,
    now: Moment,
) -> Result<Membership, Error> {
    let row = sqlx::query("SELECT * FROM people.membership WHERE id = $1 AND ended_at IS NULL")
        .bind(id)
        .fetch_optional(&mut **tx)
        .await?;
    let held = membership_of(&row.ok_or(Error::NotValid)?)?;
    if !meant(&held) {
        return Err(Error::NotValid);
    }
    let scope = held.part.scope();
    lock(tx, scope).await?;
    let ended = "UPDATE people.membership SET ended_at = $2 WHERE id = $1 AND ended_at IS NULL";
    let done = sqlx::query(ended).bind(id).bind(now.millis()).execute(&mut **tx).await?;
    if done.rows_affected() == 0 {
        return Err(Error::NotValid);
    }
    if held.part.role().keeps() && keepers(tx, scope).await? == 0 {
        return Err(Error::LastKeeper);
    }
    sqlx::query(
        "UPDATE people.invitation SET ended_at = $4 WHERE made_by = $1 AND home IS NOT DISTINCT FROM $2
         AND club IS NOT DISTINCT FROM $3 AND used_at IS NULL AND ended_at IS NULL",
    )
    .bind(held.account.0)
    .bind(scope.home().map(|h| h.0))
    .bind(scope.club().map(|c| c.0))
    .bind(now.millis())
    .execute(&mut **tx)
    .await?;
    roles_changed(tx, held.account).await?;
    Ok(held)
}

/// Who changes the keepers of a place waits here for who else does.
pub(super) async fn lock(tx: &mut Tx, scope: Scope) -> Result<(), Error> {
    match scope {
        Scope::Home(home) => {
            sqlx::query("SELECT id FROM people.home WHERE id = $1 FOR UPDATE").bind(home.0).execute(&mut **tx).await?
        }
        Scope::Club(club) => {
            sqlx::query("SELECT id FROM people.club WHERE id = $1 FOR UPDATE").bind(club.0).execute(&mut **tx).await?
        }
        Scope::Server => {
            sqlx::query("SELECT pg_advisory_xact_lock($1)").bind(super::LOCK + 1).execute(&mut **tx).await?
        }
    };
    Ok(())
}

/// How many keepers a place has.
pub(super) async fn keepers(tx: &mut Tx, scope: Scope) -> Result<i64, Error> {
    let count = sqlx::query_scalar(
        "SELECT count(*) FROM people.membership WHERE ended_at IS NULL AND home IS NOT DISTINCT FROM $1
         AND club IS NOT DISTINCT FROM $2 AND role IN ('keeper', 'club_keeper', 'server_keeper')",
    )
    .bind(scope.home().map(|h| h.0))
    .bind(scope.club().map(|c| c.0))
    .fetch_one(&mut **tx)
    .await?;
    Ok(count)
}

/// The capability by which roles in a place are changed.
pub(super) const fn manages(scope: Scope) -> Capability {
    match scope {
        Scope::Home(_) => Capability::ManagePeople,
        Scope::Club(_) => Capability::ManageClub,
        Scope::Server => Capability::ManageServer,
    }
}

impl People {
    /// An account with the roles it has now.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn who(&self, account: AccountId) -> Result<Who, Error> {
        let rows = sqlx::query("SELECT * FROM people.membership WHERE account = $1 AND ended_at IS NULL ORDER BY id")
            .bind(account.0)
            .fetch_all(&self.pool)
            .await?;
        Ok(Who { account, memberships: rows.iter().map(membership_of).collect::<Result<_, _>>()? })
    }

    /// Everyone with a role in a place.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn members(&self, scope: Scope) -> Result<Vec<Member>, Error> {
        let rows = sqlx::query(
            "SELECT m.*, a.name FROM people.membership m JOIN people.account a ON a.id = m.account
             WHERE m.ended_at IS NULL AND m.home IS NOT DISTINCT FROM $1 AND m.club IS NOT DISTINCT FROM $2 ORDER BY m.id",
        )
        .bind(scope.home().map(|h| h.0))
        .bind(scope.club().map(|c| c.0))
        .fetch_all(&self.pool)
        .await?;
        rows.iter().map(member_of).collect()
    }

    /// Ends someone's role in the place that `by` may manage.
    ///
    /// # Errors
    /// [`Error::NotValid`] where there is no such role there, [`Error::LastKeeper`], [`crate::may::Denied`].
    pub async fn end_membership(&self, by: &Allowed, id: MembershipId, now: Moment) -> Result<(), Error> {
        by.is_for(manages(by.scope))?;
        let mut tx = self.begin().await?;
        end(&mut tx, id.0, |held| held.part.scope() == by.scope, now).await?;
        tx.commit().await?;
        Ok(())
    }

    /// Ends an own role: everyone may go.
    ///
    /// # Errors
    /// [`Error::NotValid`] where the account has no such role, [`Error::LastKeeper`].
    pub async fn end_own_membership(&self, account: AccountId, id: MembershipId, now: Moment) -> Result<(), Error> {
        let mut tx = self.begin().await?;
        end(&mut tx, id.0, |held| held.account == account, now).await?;
        tx.commit().await?;
        Ok(())
    }

    /// Gives someone another role in the same place: the old one ends as the new one begins.
    ///
    /// # Errors
    /// [`Error::NotValid`] where there is no such role there, [`Error::LastKeeper`], [`crate::may::Denied`].
    pub async fn change_membership(
        &self,
        by: &Allowed,
        id: MembershipId,
        part: &Part,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<MembershipId, Error> {
        by.is_for_at(manages(part.scope()), part.scope())?;
        let mut tx = self.begin().await?;
        let held = end(&mut tx, id.0, |held| held.part.scope() == by.scope, now).await?;
        let id = give(&mut tx, held.account, part, now, secrets).await?;
        tx.commit().await?;
        Ok(id)
    }
}
