//! Accounts: a name, a language, perhaps an e-mail address. No password.

use super::{KeptPasskey, People, Tx, erasing, moment};
use crate::capability::Capability;
use crate::closing::Closed;
use crate::email::Email;
use crate::error::Error;
use crate::id::new_id;
use crate::may::Allowed;
use crate::secret::Secrets;
use sayso_model::{AccountId, Label, Language, Moment};
use sqlx::Row;
use sqlx::postgres::PgRow;
use uuid::Uuid;

/// A person who signs in.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Account {
    /// Which.
    pub id: AccountId,
    /// What the person wants to be called.
    pub name: Label,
    /// The e-mail address, proved by a link sent there.
    pub email: Option<String>,
    /// The person's language.
    pub language: Language,
    /// When it was made.
    pub made_at: Moment,
}

impl Account {
    /// Whether anything but a session that holds lets it in, with these passkeys, so many recovery codes left, and linked with
    /// the identity provider or not.
    #[must_use]
    pub fn has_way_back(&self, passkeys: &[KeptPasskey], codes_left: i64, linked: bool) -> bool {
        self.email.is_some() || !passkeys.is_empty() || codes_left > 0 || linked
    }

    fn of(row: &PgRow) -> Result<Self, Error> {
        let bad = || Error::Stored("account");
        Ok(Self {
            id: AccountId(row.try_get("id")?),
            name: Label::try_from(row.try_get::<String, _>("name")?).map_err(|_| bad())?,
            email: row.try_get("email")?,
            language: Language::of_tag(row.try_get("language")?).ok_or_else(bad)?,
            made_at: moment(row.try_get("made_at")?),
        })
    }
}

pub(super) async fn make(
    tx: &mut Tx,
    name: &Label,
    language: Language,
    now: Moment,
    secrets: &mut (impl Secrets + Send),
) -> Result<AccountId, Error> {
    let id = AccountId(new_id(now, secrets));
    sqlx::query("INSERT INTO people.account (id, name, language, made_at) VALUES ($1, $2, $3, $4)")
        .bind(id.0)
        .bind(name.as_str())
        .bind(language.tag())
        .bind(now.millis())
        .execute(&mut **tx)
        .await?;
    Ok(id)
}

impl People {
    /// An account; none where there is no such account.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn account(&self, id: AccountId) -> Result<Option<Account>, Error> {
        let row = sqlx::query("SELECT id, name, email, language, made_at FROM people.account WHERE id = $1")
            .bind(id.0)
            .fetch_optional(&self.pool)
            .await?;
        row.as_ref().map(Account::of).transpose()
    }

    /// The account that has an address; none where nobody has it. For whoever keeps the server: to anyone else it would tell who is
    /// here.
    ///
    /// # Errors
    /// [`crate::Denied`] where `by` is no leave to host; where the database fails.
    pub async fn account_at(&self, by: &Allowed, email: &Email) -> Result<Option<AccountId>, Error> {
        by.is_for(Capability::Host)?;
        let found = "SELECT id FROM people.account WHERE email = $1";
        let id: Option<Uuid> = sqlx::query_scalar(found).bind(email.as_str()).fetch_optional(&self.pool).await?;
        Ok(id.map(AccountId))
    }

    /// Whether anything but a session that holds lets an account in: a passkey, an address, a code, an identity provider, whichever it
    /// is.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn has_way_in(&self, id: AccountId) -> Result<bool, Error> {
        let any = "SELECT EXISTS (SELECT FROM people.account WHERE id = $1 AND email IS NOT NULL)
             OR EXISTS (SELECT FROM people.passkey WHERE account = $1)
             OR EXISTS (SELECT FROM people.recovery WHERE account = $1 AND used_at IS NULL)
             OR EXISTS (SELECT FROM people.identity WHERE account = $1)";
        Ok(sqlx::query_scalar(any).bind(id.0).fetch_one(&self.pool).await?)
    }

    /// Changes what a person is called and reads.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn set_account(&self, id: AccountId, name: &Label, language: Language) -> Result<(), Error> {
        sqlx::query("UPDATE people.account SET name = $2, language = $3 WHERE id = $1")
            .bind(id.0)
            .bind(name.as_str())
            .bind(language.tag())
            .execute(&self.pool)
            .await?;
        Ok(())
    }

    /// Erases an account with all that belongs to it: passkeys, sessions, links, codes, roles. What it wrote into homes' logs stays
    /// theirs, and so does that somebody looked: as what, at what, on which day. The id stays, as that of an account that was erased,
    /// and names nobody.
    ///
    /// # Errors
    /// [`Error::LastKeeper`] where a home, club or the server would be without a keeper.
    pub async fn erase_account(&self, id: AccountId, now: Moment) -> Result<(), Error> {
        let mut tx = self.begin().await?;
        let held: Vec<Uuid> =
            sqlx::query_scalar("SELECT id FROM people.membership WHERE account = $1 AND ended_at IS NULL")
                .bind(id.0)
                .fetch_all(&mut *tx)
                .await?;
        for membership in held {
            super::membership::end(&mut tx, membership, |_| true, now).await?;
        }
        erasing::erase_row(&mut tx, id).await?;
        // A backup that is brought back holds it still.
        super::restored::note(&mut tx, &Closed::Account(id), now).await?;
        tx.commit().await?;
        Ok(())
    }
}
