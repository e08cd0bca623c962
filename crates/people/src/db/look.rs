//! Who looked at what of a home, when: told to its keepers.

use super::{People, Tx, moment};
use crate::error::Error;
use crate::may::Allowed;
use crate::role::Role;
use sayso_model::{AccountId, HomeId, Label, Moment};
use sqlx::Row;

const HOUR_MS: i64 = 3_600_000;
const DAY_MS: i64 = 24 * HOUR_MS;
/// What is asked for within this time of the last is the same look: a Board that lies open asks again and again by itself. Counted
/// here, from what was answered: no device says of itself that it did not look.
const SAME_LOOK_MS: i64 = HOUR_MS / 4;

/// Whose looks they are.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Looker {
    /// An account's, and what the person is called.
    Account(AccountId, Label),
    /// Those of people who erased their account since: as what they came.
    Left(Role),
}

/// Looks of someone at one thing within an hour; of people who have left, on one day.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Looked {
    /// Who.
    pub who: Looker,
    /// By which leave, by its name.
    pub capability: String,
    /// Which page, by its name; empty where it was none that has one.
    pub page: String,
    /// The first time in that hour; of people who have left, noon of the day (UTC).
    pub first_at: Moment,
    /// The last time in that hour, or the same noon.
    pub last_at: Moment,
    /// How often, with a quarter of an hour or more between two.
    pub times: i64,
}

impl People {
    /// Notes a look. Those of an hour are one row, and those close to each other one look: pages fetch much at once.
    pub(super) async fn note_look(&self, leave: &Allowed, page: &str, home: HomeId, now: Moment) -> Result<(), Error> {
        sqlx::query(
            "INSERT INTO people.look AS l (home, account, capability, hour, first_at, last_at, times, page)
             VALUES ($1, $2, $3, $4, $5, $5, 1, $6)
             ON CONFLICT (home, account, capability, page, hour) DO UPDATE
             SET times = l.times + CASE WHEN $5 - l.last_at >= $7 THEN 1 ELSE 0 END, first_at = LEAST(l.first_at, $5), last_at = GREATEST(l.last_at, $5)",
        )
        .bind(home.0)
        .bind(leave.account.0)
        .bind(leave.capability.name())
        .bind(now.millis().div_euclid(HOUR_MS))
        .bind(now.millis())
        .bind(page)
        .bind(SAME_LOOK_MS)
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
            "SELECT l.account, a.name, NULL AS role, capability, page, first_at, last_at, times
                 FROM people.look l JOIN people.account a ON a.id = l.account WHERE l.home = $1
             UNION ALL SELECT NULL, NULL, role, capability, page, at, at, times FROM people.look_left WHERE home = $1
             ORDER BY last_at DESC, account, role, capability, page LIMIT $2",
        )
        .bind(home.0)
        .bind(i64::from(most))
        .fetch_all(&self.pool)
        .await?;
        let of = |row: &sqlx::postgres::PgRow| {
            let who = match row.try_get::<Option<String>, _>("name")? {
                Some(name) => Looker::Account(
                    AccountId(row.try_get("account")?),
                    Label::try_from(name).map_err(|_| Error::Stored("account"))?,
                ),
                None => Looker::Left(Role::named(row.try_get("role")?).ok_or(Error::Stored("look"))?),
            };
            Ok(Looked {
                who,
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

/// Keeps the looks of an account that is about to be erased for the homes' keepers, without whose they were: as what, at what, on which
/// day of UTC. Whoever was neither sitter nor observer of the home then came as a coach: other looks are not noted.
pub(super) async fn keep_nameless(tx: &mut Tx, account: AccountId) -> Result<(), Error> {
    sqlx::query(
        "INSERT INTO people.look_left AS k (home, role, capability, page, at, times)
         SELECT home, role, capability, page, at, sum(times)::bigint FROM (
             SELECT l.home, l.capability, l.page, l.times, (l.last_at / $2) * $2 + $2 / 2 AS at,
                 COALESCE((SELECT m.role FROM people.membership m
                     WHERE m.account = l.account AND m.home = l.home AND m.role IN ('sitter', 'observer')
                         AND m.since <= l.last_at AND COALESCE(m.ended_at, l.last_at) >= l.first_at
                     ORDER BY m.since DESC LIMIT 1), 'coach') AS role
             FROM people.look l WHERE l.account = $1) AS looks
         GROUP BY home, role, capability, page, at
         ON CONFLICT (home, role, capability, page, at) DO UPDATE SET times = k.times + EXCLUDED.times",
    )
    .bind(account.0)
    .bind(DAY_MS)
    .execute(&mut **tx)
    .await?;
    Ok(())
}
