//! Homes that share with coaches are kept up to date while nobody waits, so that a desk is opened and not worked out.

use crate::desk::lines::{Stale, bring, look};
use crate::fault::told;
use crate::host::Host;
use sayso_web::Error;
use std::sync::Arc;
use std::time::{Duration, Instant};

/// Between two rounds, unless an opening left homes behind.
const EVERY: Duration = Duration::from_secs(20);
/// What was worked out less than this long ago waits, unless signs are among what is new: a session is many taps.
const REST_S: f64 = 45.0;
/// After a home nobody works for so many times as long as it took, so that people's requests come first.
const PAUSE: u32 = 2;
/// Homes looked at between two questions to the database.
const BATCH: usize = 500;

/// Goes on until it is dropped. Several processes may: each asks what is still to be done before each home.
pub async fn go_on(host: Arc<Host>) {
    loop {
        match round(&host).await {
            Ok(0) => {}
            Ok(homes) => tracing::debug!("Brought the lines of {homes} homes up to date."),
            Err(error) => tracing::error!("Lines of desks could not be brought up to date: {error}"),
        }
        tokio::select! {
            () = tokio::time::sleep(EVERY) => {}
            () = host.desks.left_behind.notified() => {}
        }
    }
}

/// Each home that grew, once; how many.
///
/// # Errors
/// Where a database fails; the others are done by the next round.
async fn round(host: &Host) -> Result<usize, Error> {
    let (homes, mut done) = (host.people.shared_with_coaches().await.map_err(told)?, 0);
    for batch in homes.chunks(BATCH) {
        let (kept, mut stale) = look(host, batch).await?;
        stale.sort_by_key(|s| !s.signs);
        let now = host.now();
        let rests = |s: &Stale| {
            let lines = kept.get(&s.home).into_iter().flat_map(|kept| kept.animals.values());
            !s.signs && lines.map(|animal| animal.line.at).max().is_some_and(|at| at > now.plus_seconds(-REST_S))
        };
        for one in stale.iter().filter(|s| !rests(s)) {
            let begun = Instant::now();
            bring(host, one.home).await?;
            done += 1;
            tokio::time::sleep(PAUSE * begun.elapsed()).await;
        }
    }
    Ok(done)
}
