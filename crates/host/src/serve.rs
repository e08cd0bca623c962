//! Runs a server on a port.

use crate::config::{HostConfig, HostOpened};
use crate::desk;
use crate::fault::HostError;
use crate::host::Host;
use crate::links;
use crate::sweep;
use crate::tidings;
use sayso_people::{Error, OsSecrets};
use sayso_web::connections::{self, Bounds};
use std::sync::Arc;
use tokio::net::TcpListener;

/// Opens the databases and serves homes until the process is told to stop (Ctrl-C, or SIGTERM where there is that). What is
/// being answered then may finish, within the patience given; what is not acknowledged by then, a phone sends again.
///
/// # Errors
/// [`HostError`], each saying what would put it right.
pub async fn host(config: HostConfig) -> Result<(), HostError> {
    let stop = sayso_web::serve::told_to_stop()?;
    let host = Arc::new(Host::open(&config).await?);
    let listener = TcpListener::bind(config.at).await.map_err(|source| HostError::Port { at: config.at, source })?;
    let at = listener.local_addr()?;
    let first_keeper = match host.people.invite_first_keeper(host.now(), &mut OsSecrets).await {
        Ok((_, secret)) => Some(links::join(&host.public_url, &secret)),
        Err(Error::Taken) => None,
        Err(error) => return Err(error.into()),
    };
    (config.opened)(&HostOpened { at, first_keeper });
    tracing::info!("Serving homes at {at} as {}.", host.public_url);
    let sweeping = tokio::spawn(sweep::go_on(Arc::clone(&host)));
    let bringing = tokio::spawn(desk::go_on(Arc::clone(&host)));
    let telling = tokio::spawn(tidings::go_on(Arc::clone(&host)));
    let stop = async {
        stop.await;
        tracing::info!("Told to stop.");
    };
    let bounds = if config.behind_proxy { Bounds::behind_proxy() } else { Bounds::of_this_process() };
    connections::run(listener, crate::app(Arc::clone(&host)), None, (config.patience, bounds), stop).await;
    sweeping.abort();
    bringing.abort();
    telling.abort();
    if tokio::time::timeout(config.patience.stop, host.close()).await.is_err() {
        tracing::error!("Closing the database took too long. What was acknowledged is stored.");
    }
    tracing::info!("Stopped.");
    Ok(())
}
