//! Runs the application on a port.

use crate::access::{Access, ShowCode};
use crate::state::AppState;
use crate::store::Store;
use std::net::{IpAddr, Ipv4Addr, SocketAddr};
use std::path::PathBuf;
use std::sync::Arc;
use tokio::net::TcpListener;

/// The file of paired devices in the data directory.
const PAIRED_FILE: &str = "paired.json";

/// What to serve, and to whom.
#[derive(Clone)]
pub struct Config {
    /// Directory of the notebook.
    pub data: PathBuf,
    /// Port; 0 takes any free one.
    pub port: u16,
    /// Whether devices on the home network may pair. Otherwise only this machine is answered.
    pub lan: bool,
    /// Told once the port is open, with the address to open.
    pub opened: Arc<dyn Fn(SocketAddr) + Send + Sync>,
    /// Shows a pairing code at the machine.
    pub show_code: ShowCode,
}

/// Why serving could not begin or go on.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum ServeError {
    /// The port cannot be had.
    #[error("port {port} cannot be opened: {source}; is Sayso running already? Choose another port")]
    Port {
        /// Which.
        port: u16,
        /// Why.
        source: std::io::Error,
    },
    /// The notebook cannot be opened.
    #[error("the notebook cannot be opened: {0}")]
    Store(#[source] Box<dyn std::error::Error + Send + Sync>),
    /// Reading or writing failed.
    #[error("{0}")]
    Io(#[from] std::io::Error),
}

/// Opens the notebook and serves it until the process is told to stop (Ctrl-C).
///
/// # Errors
/// [`ServeError`], each saying what would put it right.
pub async fn serve(config: Config) -> Result<(), ServeError> {
    let store = Store::open(&config.data).await.map_err(|e| ServeError::Store(e.into()))?;
    let access = if config.lan {
        Access::home_network(&config.data.join(PAIRED_FILE), config.show_code.clone())?
    } else {
        Access::this_machine()
    };
    let ip: IpAddr = if config.lan { Ipv4Addr::UNSPECIFIED.into() } else { Ipv4Addr::LOCALHOST.into() };
    let listener =
        TcpListener::bind((ip, config.port)).await.map_err(|source| ServeError::Port { port: config.port, source })?;
    // A large notebook takes a second or two to read; begin before the first page is asked for.
    let early = store.clone();
    tokio::spawn(async move {
        if let Ok(Some(household)) = early.household().await {
            // Whatever is wrong is told by the first page, which reads the same.
            let _ = early.story(household).await;
        }
    });
    let state = AppState::new(Arc::new(store), access);
    (config.opened)(listener.local_addr()?);
    state.access.offer_code(state.now())?;
    let service = crate::app(state).into_make_service_with_connect_info::<SocketAddr>();
    axum::serve(listener, service)
        .with_graceful_shutdown(async {
            // Where the signal cannot be listened for, serving simply goes on.
            if tokio::signal::ctrl_c().await.is_err() {
                std::future::pending::<()>().await;
            }
        })
        .await?;
    Ok(())
}
