//! Runs the application on a port.

use crate::access::{Access, ShowCode};
use crate::secure::{Authority, Gate, Peer, SecureError};
use crate::state::{AppState, machine_clock};
use crate::store::Store;
use axum::serve::Listener;
use std::net::{IpAddr, Ipv4Addr, SocketAddr};
use std::path::PathBuf;
use std::sync::Arc;
use tokio::net::TcpListener;

/// The file of paired devices in the data directory.
const PAIRED_FILE: &str = "paired.json";
/// The same for devices that paired over HTTPS: a secret that once went over plain HTTP must not open this door.
const SAFELY_PAIRED_FILE: &str = "paired-safely.json";
/// The file of the home's own certificate authority in the data directory.
const AUTHORITY_FILE: &str = "home-authority.pem";

/// What to serve, and to whom.
#[derive(Clone)]
pub struct Config {
    /// Directory of the notebook.
    pub data: PathBuf,
    /// Port; 0 takes any free one.
    pub port: u16,
    /// Whether devices on the home network may pair. Otherwise only this machine is answered.
    pub lan: bool,
    /// Whether devices on the home network must come over HTTPS, with a certificate made here.
    pub secure: bool,
    /// This machine's name on the home network, for the certificate.
    pub host: Option<String>,
    /// Told once the port is open.
    pub opened: Arc<dyn Fn(&Opened) + Send + Sync>,
    /// Shows a pairing code at the machine.
    pub show_code: ShowCode,
}

/// Where the notebook is open.
#[derive(Clone, Debug)]
pub struct Opened {
    /// The address of the port.
    pub at: SocketAddr,
    /// SHA-256 of the certificate that phones install, where it is served over HTTPS.
    pub fingerprint: Option<String>,
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
    /// It cannot be served safely.
    #[error("HTTPS cannot be served: {0}")]
    Secure(#[from] SecureError),
    /// Reading or writing failed.
    #[error("{0}")]
    Io(#[from] std::io::Error),
}

/// Opens the notebook and serves it until the process is told to stop (Ctrl-C).
///
/// # Errors
/// [`ServeError`], each saying what would put it right.
pub async fn serve(config: Config) -> Result<(), ServeError> {
    let said = |what: &str| eprintln!("{what}");
    let store = Store::open_saying(&config.data, &said).await.map_err(|e| ServeError::Store(e.into()))?;
    let access = if config.lan {
        let paired = if config.secure { SAFELY_PAIRED_FILE } else { PAIRED_FILE };
        Access::home_network(&config.data.join(paired), config.show_code.clone())?
    } else {
        Access::this_machine()
    };
    let authority = (config.lan && config.secure)
        .then(|| {
            Authority::read_or_make(&config.data.join(AUTHORITY_FILE), config.host.as_deref(), machine_clock)
                .map(Arc::new)
        })
        .transpose()?;
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
    let gate = Gate::new(listener, authority.clone())?;
    let fingerprint = authority.as_ref().map(|a| a.fingerprint());
    let state = AppState::new(Arc::new(store), access).with_authority(authority);
    (config.opened)(&Opened { at: gate.local_addr()?, fingerprint });
    state.access.offer_code(state.now())?;
    let service = crate::app(state).into_make_service_with_connect_info::<Peer>();
    axum::serve(gate, service)
        .with_graceful_shutdown(async {
            // Where the signal cannot be listened for, serving simply goes on.
            if tokio::signal::ctrl_c().await.is_err() {
                std::future::pending::<()>().await;
            }
        })
        .await?;
    Ok(())
}
