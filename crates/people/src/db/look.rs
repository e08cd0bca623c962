//! Who looked at what of a home, when: told to its keepers.

use super::{People, moment};
use crate::error::Error;
use crate::may::Allowed;
use sayso_model::{AccountId, HomeId, Label, Moment};
use sqlx::Row;

const HOUR_MS: i64 = 3_600_000;
const DAY_MS: i64 = 24 * HOUR_MS;

/// Looks of someone at one thing within an hour.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Looked {
    /// Who.
    pub account: AccountId,
    /// What the person is called.
    pub name: Label,
    /// By which leave, by its name.
    pub capability: String,
    /// Which page, by its name; empty where it was none that has one.
    pub page: String,
    /// The first time in that hour.
    pub first_at: Moment,
    /// The last time in that hour.
    pub last_at: Moment,
    /// How often.
    pub times: i64,
}

impl People {
    /// Notes a look. Those of an hour are one row: pages fetch much at once.
    pub(super) async fn note_look(&self, leave: &Allowed, page: &str, home: HomeId, now: Moment) -> Result<(), Error> {
        sqlx::query(
            "INSERT INTO people.look AS l (home, account, capability, hour, first_at, last_at, times, page)
             VALUES ($1, $2, $3, $4, $5, $5, 1, $6)
             ON CONFLICT (home, account, capability, page, hour) DO UPDATE
             SET times = l.times + 1, first_at = LEAST(l.first_at, $5), last_at = GREATEST(l.last_at, $5)",
        )
        .bind(home.0)
        .bind(leave.account.0)
        .bind(leave.capability.name())
        .bind(now.millis().div_euclid(HOUR_MS))
        .bind(now.millis())
        .bind(page)
        .execute(&self.pool)
        .await?;
        Ok(())
    }

    /// Notes that many homes were looked at beside each other on a page: once a day (of UTC) and home, however often it is opened,
    /// so that a desk of many homes does not flood them. Roles whose looks are not noted are passed over.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn looked_at_each<'a>(
        &self,
        leaves: impl IntoIterator<Item = &'a Allowed>,
        page: &str,
        now: Moment,
    ) -> Result<(), Error> {
        let noted = leaves.into_iter().filter(|leave| leave.capability.looks() && leave.role.looks_are_noted());
        let rows: Vec<_> = noted.filter_map(|leave| Some((leave.scope.home()?, leave))).collect();
        let Some((_, first)) = rows.first() else { return Ok(()) };
        let homes: Vec<_> = rows.iter().filter(|(_, l)| l.account == first.account).map(|(home, _)| home.0).collect();
        sqlx::query(
            "INSERT INTO people.look (home, account, capability, hour, first_at, last_at, times, page)
             SELECT home, $2, $3, $4, $5, $5, 1, $6 FROM unnest($1::uuid[]) AS home ON CONFLICT DO NOTHING",
        )
        .bind(homes)
        .bind(first.account.0)
        .bind(first.capability.name())
        .bind(now.millis().div_euclid(DAY_MS) * (DAY_MS / HOUR_MS))
        .bind(now.millis())
        .bind(page)
        .execute(&self.pool)
        .await?;
        Ok(())
    }

    /// Looks at a home, newest first.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn looks(&self, home: HomeId, most: u32) -> Result<Vec<Looked>, Error> {
        let rows = sqlx::query(
            "SELECT l.*, a.name FROM people.look l JOIN people.account a ON a.id = l.account
             WHERE l.home = $1 ORDER BY l.last_at DESC, l.account, l.capability, l.page LIMIT $2",
        )
        .bind(home.0)
        .bind(i64::from(most))
        .fetch_all(&self.pool)
        .await?;
        let of = |row: &sqlx::postgres::PgRow| {
            let name = row.try_get::<String, _>("name")?;
            Ok(Looked {
                account: AccountId(row.try_get("account")?),
                name: Label::try_from(name).map_err(|_| Error::Stored("account"))?,
                capability: row.try_get("capability")?,
                page: row.try_get("page")?,
                first_at: moment(row.try_get("first_at")?),
                last_at: moment(row.try_get("last_at")?),
                times: row.try_get("times")?,
            })
        };
        rows.iter().map(of).collect()
    }
}
