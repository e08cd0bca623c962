//! Programmes of a club: courses that its coaches laid out. They are read by coaches of that club alone; what a home joined stands in its
//! own log.

use super::{People, moment};
use crate::capability::Capability;
use crate::error::Error;
use crate::may::{Allowed, Denied};
use sayso_model::{AccountId, ClubId, Moment, Programme, ProgrammeId};
use sqlx::Row;
use sqlx::postgres::PgRow;
use uuid::Uuid;

/// A programme of a club.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct ClubProgramme {
    /// The course.
    pub course: Programme,
    /// Of which club.
    pub club: ClubId,
    /// Who laid it out; none where that account is gone.
    pub by: Option<AccountId>,
    /// When.
    pub made_at: Moment,
    /// Whether it is proposed to nobody more.
    pub closed: bool,
}

fn read(row: &PgRow) -> Result<ClubProgramme, Error> {
    let course: String = row.try_get("course")?;
    let by: Option<Uuid> = row.try_get("account")?;
    let closed: Option<i64> = row.try_get("closed_at")?;
    Ok(ClubProgramme {
        course: serde_json::from_str(&course).map_err(|_| Error::Stored("programme"))?,
        club: ClubId(row.try_get("club")?),
        by: by.map(AccountId),
        made_at: moment(row.try_get("made_at")?),
        closed: closed.is_some(),
    })
}

impl People {
    /// Keeps a course for a club, under its own id.
    ///
    /// # Errors
    /// [`Denied`] where `by` is no leave of a coach in a club; where the database fails.
    pub async fn lay_out(&self, by: &Allowed, course: &Programme, now: Moment) -> Result<(), Error> {
        by.is_for(Capability::SeeDesk)?;
        let club = by.scope.club().ok_or(Denied::NotByRole(by.capability))?;
        let text = serde_json::to_string(course).map_err(|_| Error::Stored("programme"))?;
        sqlx::query("INSERT INTO people.programme (id, club, account, course, made_at) VALUES ($1, $2, $3, $4, $5)")
            .bind(course.programme.0)
            .bind(club.0)
            .bind(by.account.0)
            .bind(text)
            .bind(now.millis())
            .execute(&self.pool)
            .await?;
        Ok(())
    }

    /// Courses of some clubs, the newest first.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn programmes(&self, clubs: &[ClubId]) -> Result<Vec<ClubProgramme>, Error> {
        let clubs: Vec<Uuid> = clubs.iter().map(|club| club.0).collect();
        let rows = sqlx::query("SELECT * FROM people.programme WHERE club = ANY($1) ORDER BY made_at DESC, id")
            .bind(clubs)
            .fetch_all(&self.pool)
            .await?;
        rows.iter().map(read).collect()
    }

    /// A course of one of some clubs, by its id; none where they have no such one.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn programme(&self, clubs: &[ClubId], id: ProgrammeId) -> Result<Option<ClubProgramme>, Error> {
        let clubs: Vec<Uuid> = clubs.iter().map(|club| club.0).collect();
        let row = sqlx::query("SELECT * FROM people.programme WHERE id = $1 AND club = ANY($2)")
            .bind(id.0)
            .bind(clubs)
            .fetch_optional(&self.pool)
            .await?;
        row.as_ref().map(read).transpose()
    }

    /// A course is proposed to nobody more, or again. Homes that joined keep it.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn close_programme(&self, clubs: &[ClubId], id: ProgrammeId, at: Option<Moment>) -> Result<(), Error> {
        let clubs: Vec<Uuid> = clubs.iter().map(|club| club.0).collect();
        sqlx::query("UPDATE people.programme SET closed_at = $3 WHERE id = $1 AND club = ANY($2)")
            .bind(id.0)
            .bind(clubs)
            .bind(at.map(Moment::millis))
            .execute(&self.pool)
            .await?;
        Ok(())
    }
}
