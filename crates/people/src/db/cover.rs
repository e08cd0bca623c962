//! Who stands in for whom among coaches of a club. A note for the two of them, which opens nothing: a home that shares with the club is
//! open to both by that, and any other only where it agreed.

use super::People;
use crate::capability::Capability;
use crate::error::Error;
use crate::id::{CoverId, new_id};
use crate::may::{Allowed, Denied};
use crate::secret::Secrets;
use sayso_model::{AccountId, Author, ClubId, Day, Label, Moment};
use sqlx::Row;
use uuid::Uuid;

/// A cover.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Cover {
    /// Which.
    pub id: CoverId,
    /// In which club.
    pub club: ClubId,
    /// Who is away.
    pub away: Author,
    /// Who stands in.
    pub covers: Author,
    /// The first day.
    pub first: Day,
    /// The last day.
    pub last: Day,
}

impl People {
    /// Notes that another coach of a club stands in for whoever asks.
    ///
    /// # Errors
    /// [`Denied`] where `by` is no leave of a coach in a club, or the other is none there; where the database fails.
    pub async fn be_covered(
        &self,
        by: &Allowed,
        covers: AccountId,
        (first, last): (Day, Day),
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(), Error> {
        by.is_for(Capability::SeeDesk)?;
        let club = by.scope.club().ok_or(Denied::NotByRole(by.capability))?;
        let there = self.who(covers).await?;
        if covers == by.account || !crate::needs::coaches_in(&there, club) {
            return Err(Denied::NothingHere.into());
        }
        sqlx::query(
            "INSERT INTO people.cover (id, club, away, covers, days_first, days_last, made_at)
             VALUES ($1, $2, $3, $4, $5, $6, $7)",
        )
        .bind(new_id(now, secrets))
        .bind(club.0)
        .bind(by.account.0)
        .bind(covers.0)
        .bind(first.to_string())
        .bind(last.to_string())
        .bind(now.millis())
        .execute(&self.pool)
        .await?;
        Ok(())
    }

    /// Covers that an account has to do with, the latest first.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn covers(&self, account: AccountId) -> Result<Vec<Cover>, Error> {
        let rows = sqlx::query(
            "SELECT c.*, a.name AS away_name, s.name AS covers_name FROM people.cover c
             JOIN people.account a ON a.id = c.away JOIN people.account s ON s.id = c.covers
             WHERE c.away = $1 OR c.covers = $1 ORDER BY c.days_first DESC, c.id",
        )
        .bind(account.0)
        .fetch_all(&self.pool)
        .await?;
        let bad = || Error::Stored("cover");
        let day = |text: String| text.parse::<Day>().map_err(|_| bad());
        let named = |account, name: String| {
            Ok::<_, Error>(Author { account: AccountId(account), name: Label::try_from(name).map_err(|_| bad())? })
        };
        rows.iter()
            .map(|row| {
                Ok(Cover {
                    id: CoverId(row.try_get("id")?),
                    club: ClubId(row.try_get("club")?),
                    away: named(row.try_get("away")?, row.try_get("away_name")?)?,
                    covers: named(row.try_get("covers")?, row.try_get("covers_name")?)?,
                    first: day(row.try_get("days_first")?)?,
                    last: day(row.try_get("days_last")?)?,
                })
            })
            .collect()
    }

    /// Whoever is away ends a cover. What a home agreed to for those days stays the home's to take back.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn end_cover(&self, account: AccountId, id: Uuid) -> Result<(), Error> {
        let end = "DELETE FROM people.cover WHERE id = $1 AND away = $2";
        sqlx::query(end).bind(id).bind(account.0).execute(&self.pool).await?;
        Ok(())
    }
}
