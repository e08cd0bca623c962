//! Homes and clubs this server has.

use super::People;
use crate::capability::Capability;
use crate::error::Error;
use crate::id::new_id;
use crate::may::Allowed;
use crate::membership::Scope;
use crate::secret::Secrets;
use sayso_model::{ClubId, HomeId, Label, Moment};

/// What this server has of a home.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum HomeState {
    /// Nothing.
    Unknown,
    /// It is here.
    Here,
    /// It has left. Nothing of it is taken in again.
    Left,
}

impl People {
    /// Opens a home on the server. It has nobody until its first keeper takes an invitation.
    ///
    /// # Errors
    /// [`Error::Taken`] where it is here already, [`Error::Left`] where it has left, [`crate::may::Denied`].
    pub async fn open_home(&self, by: &Allowed, home: HomeId, now: Moment) -> Result<(), Error> {
        by.is_for(Capability::Host)?;
        let open = "INSERT INTO people.home (id, opened_at) VALUES ($1, $2) ON CONFLICT DO NOTHING";
        let done = sqlx::query(open).bind(home.0).bind(now.millis()).execute(&self.pool).await?;
        if done.rows_affected() == 1 {
            return Ok(());
        }
        Err(if self.home_state(home).await? == HomeState::Left { Error::Left } else { Error::Taken })
    }

    /// What this server has of a home. Whoever takes in a home's events asks this first: a phone that was offline while its
    /// home left still has some.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn home_state(&self, home: HomeId) -> Result<HomeState, Error> {
        let left: Option<Option<i64>> = sqlx::query_scalar("SELECT left_at FROM people.home WHERE id = $1")
            .bind(home.0)
            .fetch_optional(&self.pool)
            .await?;
        Ok(match left {
            None => HomeState::Unknown,
            Some(None) => HomeState::Here,
            Some(Some(_)) => HomeState::Left,
        })
    }

    /// Opens a club on the server. It has nobody until its first keeper takes an invitation.
    ///
    /// # Errors
    /// [`Error::Taken`] where a club here has this name; [`crate::may::Denied`]; where the database fails.
    pub async fn open_club(
        &self,
        by: &Allowed,
        name: &Label,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<ClubId, Error> {
        by.is_for(Capability::Host)?;
        let id = ClubId(new_id(now, secrets));
        let mut tx = self.begin().await?;
        // Two who open at once wait for one another here.
        super::membership::lock(&mut tx, Scope::Server).await?;
        let same = "SELECT EXISTS (SELECT 1 FROM people.club WHERE lower(name) = lower($1))";
        if sqlx::query_scalar::<_, bool>(same).bind(name.as_str()).fetch_one(&mut *tx).await? {
            return Err(Error::Taken);
        }
        sqlx::query("INSERT INTO people.club (id, name, made_at) VALUES ($1, $2, $3)")
            .bind(id.0)
            .bind(name.as_str())
            .bind(now.millis())
            .execute(&mut *tx)
            .await?;
        tx.commit().await?;
        Ok(id)
    }

    /// What a club is called.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn club(&self, id: ClubId) -> Result<Option<Label>, Error> {
        let name = "SELECT name FROM people.club WHERE id = $1";
        let name: Option<String> = sqlx::query_scalar(name).bind(id.0).fetch_optional(&self.pool).await?;
        name.map(|n| Label::try_from(n).map_err(|_| Error::Stored("club"))).transpose()
    }
}
