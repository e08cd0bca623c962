//! What a server has, for whoever keeps it: counts and ids, no content.

use super::{People, moment};
use crate::error::Error;
use sayso_model::{ClubId, HomeId, Label, Moment};
use sqlx::Row;
use uuid::Uuid;

/// How much of what there is.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Counts {
    /// Homes that are here.
    pub homes: i64,
    /// Homes that left.
    pub left: i64,
    /// Clubs.
    pub clubs: i64,
    /// Accounts.
    pub accounts: i64,
}

impl People {
    /// Counts what there is.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn counts(&self) -> Result<Counts, Error> {
        let row = sqlx::query(
            "SELECT (SELECT count(*) FROM people.home WHERE left_at IS NULL) AS homes,
                 (SELECT count(*) FROM people.home WHERE left_at IS NOT NULL) AS gone,
                 (SELECT count(*) FROM people.club) AS clubs, (SELECT count(*) FROM people.account) AS accounts",
        )
        .fetch_one(&self.pool)
        .await?;
        Ok(Counts {
            homes: row.try_get("homes")?,
            left: row.try_get("gone")?,
            clubs: row.try_get("clubs")?,
            accounts: row.try_get("accounts")?,
        })
    }

    /// Homes that left, by id.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn left_homes(&self) -> Result<Vec<HomeId>, Error> {
        let left = "SELECT id FROM people.home WHERE left_at IS NOT NULL ORDER BY id";
        let ids: Vec<Uuid> = sqlx::query_scalar(left).fetch_all(&self.pool).await?;
        Ok(ids.into_iter().map(HomeId).collect())
    }

    /// Homes whose first keeper has not come yet, with when they were opened, oldest first.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn waiting_homes(&self, most: u32) -> Result<Vec<(HomeId, Moment)>, Error> {
        let rows = sqlx::query(
            "SELECT id, opened_at FROM people.home h WHERE left_at IS NULL
             AND NOT EXISTS (SELECT 1 FROM people.membership m WHERE m.home = h.id) ORDER BY opened_at, id LIMIT $1",
        )
        .bind(i64::from(most))
        .fetch_all(&self.pool)
        .await?;
        rows.iter().map(|row| Ok((HomeId(row.try_get("id")?), moment(row.try_get("opened_at")?)))).collect()
    }

    /// Clubs by name.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn clubs(&self) -> Result<Vec<(ClubId, Label)>, Error> {
        let rows = sqlx::query("SELECT id, name FROM people.club ORDER BY name, id").fetch_all(&self.pool).await?;
        let of = |row: &sqlx::postgres::PgRow| {
            let name = Label::try_from(row.try_get::<String, _>("name")?).map_err(|_| Error::Stored("club"))?;
            Ok((ClubId(row.try_get("id")?), name))
        };
        rows.iter().map(of).collect()
    }

    /// Homes that may share something with every coach of a club; what they share, and whether they still do, their logs say.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn may_share_with_club(&self, club: ClubId) -> Result<Vec<HomeId>, Error> {
        let homes = "SELECT DISTINCT home FROM people.witness WHERE ended_at IS NULL AND club = $1 ORDER BY home";
        let ids: Vec<Uuid> = sqlx::query_scalar(homes).bind(club.0).fetch_all(&self.pool).await?;
        Ok(ids.into_iter().map(HomeId).collect())
    }
}
