//! Notebooks at home that are linked to a home here. A keeper makes a code, once and for a while; the notebook exchanges it for a key
//! that is bound to that one home. The key holds until somebody who keeps the home ends it, the notebook is not heard of for long, or
//! whoever made the code keeps the home no more.

use super::{People, later, moment};
use crate::capability::Capability;
use crate::error::Error;
use crate::id::{NotebookId, new_id};
use crate::may::{Allowed, Denied};
use crate::role::Role;
use crate::secret::{Secret, Secrets};
use sayso_model::{AccountId, HomeId, Moment};
use sqlx::Row;
use sqlx::postgres::PgRow;

/// Most characters of what a notebook calls itself.
const MOST_NAME: usize = 80;
/// That it was heard of is written down once in so many milliseconds.
const SEEN_EVERY: i64 = 60_000;

/// A linked notebook.
#[derive(Clone, PartialEq, Debug)]
pub struct Notebook {
    /// Which.
    pub id: NotebookId,
    /// To which home.
    pub home: HomeId,
    /// By whose code.
    pub account: AccountId,
    /// What it calls itself.
    pub name: String,
    /// Since when.
    pub linked_at: Moment,
    /// When it was heard of last.
    pub seen_at: Moment,
}

impl Notebook {
    fn of(row: &PgRow) -> Result<Self, Error> {
        Ok(Self {
            id: NotebookId(row.try_get("id")?),
            home: HomeId(row.try_get("home")?),
            account: AccountId(row.try_get("account")?),
            name: row.try_get("name")?,
            linked_at: moment(row.try_get("linked_at")?),
            seen_at: moment(row.try_get("seen_at")?),
        })
    }
}

/// What a key is good for.
#[derive(Clone, PartialEq, Debug)]
pub enum Keyed {
    /// For this.
    Holds(Notebook),
    /// Nothing any more: unknown, ended, unused for long, or its keeper keeps the home no more.
    Ended,
    /// Nothing any more, for the home left.
    Left,
}

/// Columns of a key that holds, with its conditions: of which `$2` is since when it must have been heard of.
const HELD: &str = "key IS NOT NULL AND n.ended_at IS NULL AND n.seen_at > $2 AND EXISTS
    (SELECT 1 FROM people.membership m WHERE m.home = n.home AND m.account = n.account AND m.ended_at IS NULL AND m.role = $3)";

impl People {
    fn heard_since(&self, now: Moment) -> i64 {
        later(now, -f64::from(self.lifetimes.notebook_idle_days) * 86_400.0)
    }

    /// Makes a code for linking a notebook; it is shown once. Until when it holds.
    ///
    /// # Errors
    /// [`Denied`] where `by` is no leave to link one in a home.
    pub async fn make_notebook_code(
        &self,
        by: &Allowed,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(Moment, Secret), Error> {
        by.is_for(Capability::LinkNotebook)?;
        let home = by.scope.home().ok_or(Denied::NotByRole(by.capability))?;
        let (id, code) = (new_id(now, secrets), Secret::long(secrets));
        let expires_at = later(now, self.lifetimes.notebook_code_s);
        sqlx::query(
            "INSERT INTO people.notebook (id, home, account, code, made_at, expires_at) VALUES ($1, $2, $3, $4, $5, $6)",
        )
        .bind(id)
        .bind(home.0)
        .bind(by.account.0)
        .bind(code.hash().bytes().as_slice())
        .bind(now.millis())
        .bind(expires_at)
        .execute(&self.pool)
        .await?;
        Ok((moment(expires_at), code))
    }

    /// The home of a code, without taking it.
    ///
    /// # Errors
    /// [`Error::NotValid`] where it is unknown, used or too old, or its maker keeps the home no more; [`Error::TooOften`].
    pub async fn notebook_code(&self, code: &Secret, from: &str, now: Moment) -> Result<HomeId, Error> {
        self.attempt("notebook", None, from, now).await?;
        let home: Option<uuid::Uuid> = sqlx::query_scalar(
            "SELECT home FROM people.notebook n WHERE code = $1 AND key IS NULL AND ended_at IS NULL AND expires_at > $2
             AND EXISTS (SELECT 1 FROM people.membership m
                 WHERE m.home = n.home AND m.account = n.account AND m.ended_at IS NULL AND m.role = $3)",
        )
        .bind(code.hash().bytes().as_slice())
        .bind(now.millis())
        .bind(Role::Keeper.name())
        .fetch_optional(&self.pool)
        .await?;
        home.map(HomeId).ok_or(Error::NotValid)
    }

    /// Takes a code, which is then used up; the key is told once.
    ///
    /// # Errors
    /// [`Error::NotValid`] where it is unknown, used or too old.
    pub async fn link_notebook(
        &self,
        code: &Secret,
        name: &str,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(Notebook, Secret), Error> {
        let key = Secret::long(secrets);
        let plain: String = name.chars().filter(|c| !c.is_control()).take(MOST_NAME).collect();
        let row = sqlx::query(
            "UPDATE people.notebook SET key = $2, name = $3, linked_at = $4, seen_at = $4
             WHERE code = $1 AND key IS NULL AND ended_at IS NULL AND expires_at > $4
             RETURNING id, home, account, name, linked_at, seen_at",
        )
        .bind(code.hash().bytes().as_slice())
        .bind(key.hash().bytes().as_slice())
        .bind(plain.trim())
        .bind(now.millis())
        .fetch_optional(&self.pool)
        .await?;
        Ok((Notebook::of(&row.ok_or(Error::NotValid)?)?, key))
    }

    /// What a key is good for now. To be asked at each request: what was ended has ended.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn notebook(&self, key: &Secret, now: Moment) -> Result<Keyed, Error> {
        let sql = format!(
            "SELECT n.id, n.home, n.account, n.name, n.linked_at, n.seen_at, h.left_at IS NOT NULL AS gone, ({HELD}) AS holds
             FROM people.notebook n JOIN people.home h ON h.id = n.home WHERE n.key = $1"
        );
        let row = sqlx::query(sqlx::AssertSqlSafe(sql))
            .bind(key.hash().bytes().as_slice())
            .bind(self.heard_since(now))
            .bind(Role::Keeper.name())
            .fetch_optional(&self.pool)
            .await?;
        let Some(row) = row else { return Ok(Keyed::Ended) };
        if row.try_get("gone")? {
            return Ok(Keyed::Left);
        }
        if !row.try_get::<bool, _>("holds")? {
            return Ok(Keyed::Ended);
        }
        let found = Notebook::of(&row)?;
        if now.millis() - found.seen_at.millis() >= SEEN_EVERY {
            sqlx::query("UPDATE people.notebook SET seen_at = GREATEST(seen_at, $2) WHERE id = $1")
                .bind(found.id.0)
                .bind(now.millis())
                .execute(&self.pool)
                .await?;
        }
        Ok(Keyed::Holds(found))
    }

    /// Notebooks that are linked to a home, the one heard of last first.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn notebooks(&self, home: HomeId, now: Moment) -> Result<Vec<Notebook>, Error> {
        let sql = format!(
            "SELECT n.id, n.home, n.account, n.name, n.linked_at, n.seen_at FROM people.notebook n
             WHERE n.home = $1 AND {HELD} ORDER BY n.seen_at DESC, n.id"
        );
        let rows = sqlx::query(sqlx::AssertSqlSafe(sql))
            .bind(home.0)
            .bind(self.heard_since(now))
            .bind(Role::Keeper.name())
            .fetch_all(&self.pool)
            .await?;
        rows.iter().map(Notebook::of).collect()
    }

    /// Ends the link of a notebook to the home that `by` is leave in, at once; whether there was one.
    ///
    /// # Errors
    /// [`Denied`] where `by` is no leave to.
    pub async fn end_notebook(&self, by: &Allowed, id: NotebookId, now: Moment) -> Result<bool, Error> {
        by.is_for(Capability::LinkNotebook)?;
        let home = by.scope.home().ok_or(Denied::NotByRole(by.capability))?;
        self.end_notebook_of(home, id, now).await
    }

    /// Ends the link of a notebook that says itself that it goes.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn notebook_goes(&self, notebook: &Notebook, now: Moment) -> Result<(), Error> {
        self.end_notebook_of(notebook.home, notebook.id, now).await.map(drop)
    }

    async fn end_notebook_of(&self, home: HomeId, id: NotebookId, now: Moment) -> Result<bool, Error> {
        let end = "UPDATE people.notebook SET ended_at = $3 WHERE id = $1 AND home = $2 AND ended_at IS NULL";
        let done = sqlx::query(end).bind(id.0).bind(home.0).bind(now.millis()).execute(&self.pool).await?;
        Ok(done.rows_affected() == 1)
    }
}
