//! What was left undone is finished: logs of homes that left, and what has served its time.

use crate::fault::told;
use crate::host::Host;
use sayso_model::HomeId;
use sayso_store::StoreError;
use sayso_web::Error;
use std::collections::BTreeSet;
use std::sync::Arc;
use std::time::Duration;

/// Between two sweeps.
const EVERY: Duration = Duration::from_secs(3_600);

/// Erases the log of a home that left, here and from this process's memory. Doing it twice changes nothing.
///
/// # Errors
/// Where the database fails; then a sweep does it.
pub async fn erase(host: &Host, home: HomeId) -> Result<(), StoreError> {
    host.rooms.forget(home);
    host.desks.forget(home);
    match host.server.erase(home).await {
        Ok(()) | Err(StoreError::NoSuchHome(_)) => {}
        Err(why) => return Err(why),
    }
    // Whoever was still being answered may have opened them again.
    host.rooms.forget(home);
    host.desks.forget(home);
    Ok(())
}

/// Homes that left and whose log is still here.
///
/// # Errors
/// Where a database fails.
pub async fn unfinished(host: &Host) -> Result<Vec<HomeId>, Error> {
    let left: BTreeSet<HomeId> = host.people.left_homes().await.map_err(told)?.into_iter().collect();
    // Those that another process erased: what this one keeps of them in memory goes as well.
    left.iter().for_each(|home| {
        host.rooms.forget(*home);
        host.desks.forget(*home);
    });
    Ok(host.server.homes().await?.into_iter().filter(|home| left.contains(home)).collect())
}

/// Finishes leaving for all of them; how many.
///
/// # Errors
/// Where a database fails; the others are finished by the next sweep.
pub async fn finish(host: &Host) -> Result<usize, Error> {
    let homes = unfinished(host).await?;
    for home in &homes {
        erase(host, *home).await?;
    }
    Ok(homes.len())
}

/// Sweeps at once and then every hour, until it is dropped.
pub async fn go_on(host: Arc<Host>) {
    loop {
        match finish(&host).await {
            Ok(0) => {}
            Ok(count) => tracing::info!("Erased the logs of {count} homes that had left."),
            Err(error) => tracing::error!("Logs of homes that left could not be erased: {error}"),
        }
        match host.people.sweep(host.now()).await {
            Ok(rows) => tracing::debug!("Deleted {rows} rows that had served their time."),
            Err(error) => tracing::error!("What has served its time could not be deleted: {error}"),
        }
        tokio::time::sleep(EVERY).await;
    }
}
