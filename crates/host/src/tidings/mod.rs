//! That something is new, told by e-mail to whoever chose that: how much and where, nothing of what.
//!
//! At most once a period: whoever takes a due letter on moves it to the next one, so that of several processes one sends it. A letter
//! that the mail server did not take is due again a little later, so many times.

mod found;

pub use found::concern;

use crate::fault::told;
use crate::host::Host;
use crate::mailing;
use sayso_model::Moment;
use sayso_people::OsSecrets;
use sayso_people::db::Due;
use sayso_people::letter::{Addressed, Letter};
use sayso_web::Error;
use std::sync::Arc;
use std::time::Duration;

/// Between two rounds.
const EVERY: Duration = Duration::from_secs(600);
/// Letters asked for at once.
const BATCH: i64 = 100;
/// A letter that was not taken is due again after so many seconds...
const AGAIN_S: f64 = 3_600.0;
/// ... as often as this in a period; then what is new waits for the next one.
const MOST_TRIES: i16 = 5;
/// After so many letters in a row that were not taken the mail server is away: the round ends.
const AWAY: u32 = 3;

/// Goes on until it is dropped, where mail goes to people at all.
pub async fn go_on(host: Arc<Host>) {
    if !host.has_post() {
        return;
    }
    loop {
        match round(&host, host.now()).await {
            Ok(0) => {}
            Ok(letters) => tracing::info!("Told {letters} people by mail that something is new."),
            Err(error) => tracing::error!("Who is to be told by mail what is new could not be worked out: {error}"),
        }
        tokio::time::sleep(EVERY).await;
    }
}

/// Sends what is due at a moment; how many letters went.
///
/// # Errors
/// Where a database fails; what was not taken on by then is due at the next round.
pub async fn round(host: &Host, now: Moment) -> Result<usize, Error> {
    let (mut sent, mut failed) = (0, 0);
    loop {
        let (mut taken, due) = (0, host.people.tidings_due(now, BATCH).await.map_err(told)?);
        for one in due {
            if !host.people.take_tidings(&one, now).await.map_err(told)? {
                // Another process has it, or another choice was made.
                continue;
            }
            taken += 1;
            match letter(host, one, now).await? {
                Some(true) => (sent, failed) = (sent + 1, 0),
                Some(false) => failed += 1,
                None => {}
            }
            if failed >= AWAY {
                tracing::error!("The mail server is away: what else is due is sent at the next round.");
                return Ok(sent);
            }
        }
        if taken == 0 {
            return Ok(sent);
        }
    }
}

/// Sends a letter that was taken on; whether it went, or none where there is nothing to tell.
async fn letter(host: &Host, due: Due, now: Moment) -> Result<Option<bool>, Error> {
    let found::News { all, homes, things, sent_to } = found::news(host, due.account, due.since, now).await?;
    if all.is_empty() {
        return Ok(None);
    }
    // Noted before it goes: a process that ends in between tells less, never twice.
    let Some(stop) = host.people.tell(due.account, &all, now, &mut OsSecrets).await.map_err(told)? else {
        return Ok(None);
    };
    let letter = Letter::Tidings { homes, things, sent_to, every: due.chosen.every, stop: stop.clone() };
    let went = mailing::handed_over(host, Addressed { to: due.email.clone(), language: due.language, letter }).await;
    if !went {
        let again = (due.tries < MOST_TRIES).then(|| now.plus_seconds(AGAIN_S));
        host.people.not_told(&due, &all, &stop, again).await.map_err(told)?;
    }
    Ok(Some(went))
}
