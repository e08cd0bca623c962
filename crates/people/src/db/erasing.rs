//! An account's row goes, and what is told of it to others stays theirs.

use super::{Tx, look};
use crate::error::Error;
use sayso_model::AccountId;

/// Erases an account's row and all that hangs on it; whether there was one. What homes are told of its looks stays with them.
pub(super) async fn erase_row(tx: &mut Tx, id: AccountId) -> Result<bool, Error> {
    look::keep_nameless(tx, id).await?;
    let erase = sqlx::query("DELETE FROM people.account WHERE id = $1").bind(id.0).execute(&mut **tx).await?;
    Ok(erase.rows_affected() == 1)
}
