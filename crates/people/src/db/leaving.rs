//! A home leaves: it is refused from then on, and nothing of its people's rows stays but that mark.

use super::{People, Tx, membership, moment};
use crate::capability::Capability;
use crate::error::Error;
use crate::may::{Allowed, Denied};
use sayso_model::{AccountId, HomeId, Moment};

impl People {
    /// Marks a home as left and erases its memberships, invitations, witnessed consents, looks and what coaches
    /// keep about it, in one step. Its log and sounds
    /// are erased by who keeps those, after this: from here on nobody is let in to write any more.
    ///
    /// # Errors
    /// [`Denied`] where `by` is no leave to leave; [`Error::Left`] where the home has left already.
    pub async fn leave(&self, by: &Allowed, now: Moment) -> Result<(), Error> {
        by.is_for(Capability::Leave)?;
        let home = by.scope.home().ok_or(Denied::NotByRole(Capability::Leave))?;
        let mut tx = self.begin().await?;
        membership::lock(&mut tx, by.scope).await?;
        let done = sqlx::query("UPDATE people.home SET left_at = $2 WHERE id = $1 AND left_at IS NULL")
            .bind(home.0)
            .bind(now.millis())
            .execute(&mut *tx)
            .await?;
        if done.rows_affected() == 0 {
            return Err(Error::Left);
        }
        sqlx::query(
            "UPDATE people.session SET renew = true WHERE ended_at IS NULL
             AND account IN (SELECT account FROM people.membership WHERE home = $1 AND ended_at IS NULL)",
        )
        .bind(home.0)
        .execute(&mut *tx)
        .await?;
        erase_rows(&mut tx, home, now).await?;
        tx.commit().await?;
        Ok(())
    }

    /// When homes left to which an account belonged then, newest first: those of the last weeks.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn parted(&self, account: AccountId) -> Result<Vec<Moment>, Error> {
        let at = "SELECT at FROM people.parted WHERE account = $1 ORDER BY at DESC";
        let at: Vec<i64> = sqlx::query_scalar(at).bind(account.0).fetch_all(&self.pool).await?;
        Ok(at.into_iter().map(moment).collect())
    }
}

/// Erases what people's tables hold of a home, but its mark, and that whoever belonged to it can be told that it left.
pub(super) async fn erase_rows(tx: &mut Tx, home: HomeId, at: Moment) -> Result<(), Error> {
    sqlx::query(
        "INSERT INTO people.parted (account, home, at)
         SELECT account, home, $2 FROM people.membership WHERE home = $1 AND ended_at IS NULL ON CONFLICT DO NOTHING",
    )
    .bind(home.0)
    .bind(at.millis())
    .execute(&mut **tx)
    .await?;
    for erase in [
        "DELETE FROM people.membership WHERE home = $1",
        "DELETE FROM people.invitation WHERE home = $1",
        "DELETE FROM people.rescue WHERE home = $1",
        "DELETE FROM people.witness WHERE home = $1",
        "DELETE FROM people.look WHERE home = $1",
        "DELETE FROM people.look_left WHERE home = $1",
        "DELETE FROM people.aside WHERE home = $1",
        "DELETE FROM people.mark WHERE home = $1",
        "DELETE FROM people.spoken WHERE home = $1",
        "DELETE FROM people.feed WHERE home = $1",
        "DELETE FROM people.tiding WHERE home = $1",
    ] {
        sqlx::query(erase).bind(home.0).execute(&mut **tx).await?;
    }
    // The hash of its key stays, so that a notebook is told that the home left instead of asking for ever.
    sqlx::query("DELETE FROM people.notebook WHERE home = $1 AND key IS NULL").bind(home.0).execute(&mut **tx).await?;
    sqlx::query(
        "UPDATE people.notebook SET account = NULL, code = NULL, name = '', ended_at = COALESCE(ended_at, $2)
         WHERE home = $1",
    )
    .bind(home.0)
    .bind(at.millis())
    .execute(&mut **tx)
    .await?;
    Ok(())
}
