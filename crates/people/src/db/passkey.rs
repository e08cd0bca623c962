//! Passkeys as they are kept: which an account has. How they are made and asked for is another file's (`ceremony`).

use super::{People, moment};
use crate::closing::Closed;
use crate::db::Session;
use crate::error::Error;
use sayso_model::{AccountId, Label, Moment};
use sqlx::Row;

/// How a passkey is told from others.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum KeyName {
    /// What its owner calls it.
    Own(Label),
    /// The kind of device that made it, as sessions say theirs; where its owner gave it no name.
    Device(String),
}

/// A passkey as its owner sees it in a list.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct KeptPasskey {
    /// Its credential id.
    pub credential: Vec<u8>,
    /// What it goes by.
    pub name: KeyName,
    /// Since when.
    pub made_at: Moment,
    /// When it last signed in.
    pub used_at: Option<Moment>,
}

impl People {
    /// The passkeys of an account.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn passkeys(&self, account: AccountId) -> Result<Vec<KeptPasskey>, Error> {
        let rows = sqlx::query(
            "SELECT credential, label, device, made_at, used_at FROM people.passkey WHERE account = $1 ORDER BY made_at, credential",
        )
        .bind(account.0)
        .fetch_all(&self.pool)
        .await?;
        let of = |row: &sqlx::postgres::PgRow| {
            let label = row.try_get::<Option<String>, _>("label")?;
            let name = match (label, row.try_get::<Option<String>, _>("device")?) {
                (Some(label), _) => KeyName::Own(Label::try_from(label).map_err(|_| Error::Stored("passkey"))?),
                (None, Some(kind)) => KeyName::Device(kind),
                (None, None) => return Err(Error::Stored("passkey")),
            };
            Ok(KeptPasskey {
                credential: row.try_get("credential")?,
                name,
                made_at: moment(row.try_get("made_at")?),
                used_at: row.try_get::<Option<i64>, _>("used_at")?.map(moment),
            })
        };
        rows.iter().map(of).collect()
    }

    /// Forgets a passkey; whether there was one. Sessions that it began go on: they are ended one by one.
    ///
    /// # Errors
    /// [`Error::NotFresh`].
    pub async fn forget_passkey(&self, session: &Session, credential: &[u8], now: Moment) -> Result<bool, Error> {
        self.proved(session, now)?;
        let mut tx = self.begin().await?;
        let hash: Option<String> = sqlx::query_scalar(
            "DELETE FROM people.passkey WHERE credential = $1 AND account = $2 RETURNING encode(sha256(credential), 'hex')",
        )
        .bind(credential)
        .bind(session.account.0)
        .fetch_optional(&mut *tx)
        .await?;
        let known = hash.is_some();
        if let Some(hash) = hash {
            // A backup that is brought back holds it still.
            super::restored::note(&mut tx, &Closed::Passkey(hash), now).await?;
        }
        tx.commit().await?;
        Ok(known)
    }
}
