//! Runs the application on a port.

use crate::access::{Access, PAIRED_FILE, PairedError, SAFELY_PAIRED_FILE, ShowCode};
use crate::connections::{self, Bounds, Patience};
use crate::listening;
use crate::secure::{Authority, SecureError};
use crate::state::{AppState, machine_clock};
use crate::store::{Store, StoreError};
use sayso_wording::{Locale, Message, say};
use std::net::{IpAddr, Ipv4Addr, SocketAddr};
use std::path::PathBuf;
use std::pin::Pin;
use std::sync::Arc;
use std::time::Duration;
use tokio::net::TcpListener;

/// The file of the home's own certificate authority in the data directory.
const AUTHORITY_FILE: &str = "home-authority.pem";

/// So long after the start the file is looked through: the first pages come first.
const SETTLED: Duration = Duration::from_secs(10);

/// What to serve, and to whom.
#[derive(Clone)]
pub struct Config {
    /// Directory of the notebook.
    pub data: PathBuf,
    /// Port; 0 takes any free one.
    pub port: u16,
    /// Where devices on the home network may come in, after pairing: one address of this machine, or all of them
    /// (unspecified). None answers this machine alone.
    pub lan: Option<IpAddr>,
    /// Whether devices on the home network must come over HTTPS, with a certificate made here.
    pub secure: bool,
    /// Whether sound is taken from pages that cannot listen by themselves.
    pub takes_sound: bool,
    /// This machine's name on the home network, for the certificate.
    pub host: Option<String>,
    /// How long the other end of a connection may take.
    pub patience: Patience,
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
    #[error(
        "{at} cannot be opened: {source}; is Sayso running already? Choose another port, or an address of this machine"
    )]
    Port {
        /// Address and port.
        at: SocketAddr,
        /// Why.
        source: std::io::Error,
    },
    /// The notebook cannot be opened.
    #[error("the notebook cannot be opened: {0}")]
    Store(#[source] StoreError),
    /// It cannot be served safely.
    #[error("HTTPS cannot be served: {0}")]
    Secure(#[from] SecureError),
    /// The paired devices cannot be read.
    #[error("{0}")]
    Paired(#[from] PairedError),
    /// Reading or writing failed.
    #[error("{0}")]
    Io(#[from] std::io::Error),
}

impl Message for ServeError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Port { at, source } => {
                say!(l, command_serve::port_taken, at = at.to_string(), why = source.to_string())
            }
            Self::Store(why) => say!(l, command_serve::cannot_open, why = why.say(l)),
            Self::Secure(why) => say!(l, command_serve::not_safe, why = why.say(l)),
            Self::Paired(why) => why.say(l),
            // What the system said.
            Self::Io(why) => why.to_string(),
        }
    }
}

/// Where it listens: this machine alone, unless an address is given.
#[must_use]
pub fn address(lan: Option<IpAddr>, port: u16) -> SocketAddr {
    SocketAddr::new(lan.unwrap_or(Ipv4Addr::LOCALHOST.into()), port)
}

/// Opens the notebook and serves it until the process is told to stop (Ctrl-C, or SIGTERM where there is that). What
/// is being answered then may finish, within [`Patience::stop`].
///
/// # Errors
/// [`ServeError`], each saying what would put it right.
pub async fn serve(config: Config) -> Result<(), ServeError> {
    // Before anything else, so that a stop is orderly from the start.
    let stop = told_to_stop()?;
    let said = |what: &str| eprintln!("{what}");
    let store = Store::open_at_once(&config.data, &said).await.map_err(ServeError::Store)?;
    let access = if config.lan.is_some() {
        let paired = if config.secure { SAFELY_PAIRED_FILE } else { PAIRED_FILE };
        Access::home_network(&config.data.join(paired), config.show_code.clone())?
    } else {
        Access::this_machine()
    };
    let authority = (config.lan.is_some() && config.secure)
        .then(|| {
            Authority::read_or_make(&config.data.join(AUTHORITY_FILE), config.host.as_deref(), machine_clock)
                .map(Arc::new)
        })
        .transpose()?;
    let at = address(config.lan, config.port);
    let listener = TcpListener::bind(at).await.map_err(|source| ServeError::Port { at, source })?;
    // A large notebook takes a moment to read; begin before the first page is asked for.
    let early = store.clone();
    tokio::spawn(async move {
        if let Ok(Some(home)) = early.home().await {
            // Whatever is wrong is told by the first page, which reads the same.
            let _ = early.story(home).await;
        }
        tokio::time::sleep(SETTLED).await;
        if let Err(error) = early.look_through().await {
            tracing::error!("{error}. Nothing more is written to it.");
        }
    });
    let at = listener.local_addr()?;
    let fingerprint = authority.as_ref().map(|a| a.fingerprint());
    let state =
        AppState::new(Arc::new(store), access).with_authority(authority.clone()).taking_sound(config.takes_sound);
    (config.opened)(&Opened { at, fingerprint });
    let linked = tokio::spawn(sayso_linked::go_on((*state.store).clone(), machine_clock));
    state.access.offer_code(state.now())?;
    tracing::info!(
        "Serving {} at {at}{}.",
        config.data.display(),
        if config.lan.is_some() { " for the home network" } else { "" }
    );
    let stopping = state.clone();
    let stop = async move {
        stop.await;
        tracing::info!("Told to stop.");
        stopping.stop();
    };
    connections::run(
        listener,
        crate::app(state.clone()),
        authority,
        (config.patience, Bounds::of_this_process()),
        stop,
    )
    .await;
    // Whatever it was at is only done once more.
    linked.abort();
    let orderly = async {
        listening::end_all(&state).await;
        state.store.close().await
    };
    match tokio::time::timeout(config.patience.stop, orderly).await {
        Ok(Ok(())) => tracing::info!("Stopped."),
        Ok(Err(error)) => {
            tracing::error!("The notebook was not closed properly: {error}. What was acknowledged is stored.")
        }
        Err(_) => tracing::error!("Closing the notebook took too long. What was acknowledged is stored."),
    }
    Ok(())
}

/// Resolves when the process is told to stop, by Ctrl-C or, on Unix, SIGTERM.
///
/// # Errors
/// Where the system lets nobody listen for signals.
pub fn told_to_stop() -> std::io::Result<Pin<Box<dyn Future<Output = ()> + Send>>> {
    #[cfg(unix)]
    {
        use tokio::signal::unix::{SignalKind, signal};
        let (mut interrupt, mut terminate) = (signal(SignalKind::interrupt())?, signal(SignalKind::terminate())?);
        Ok(Box::pin(async move {
            tokio::select! {
                _ = interrupt.recv() => {}
                _ = terminate.recv() => {}
            }
        }))
    }
    #[cfg(not(unix))]
    Ok(Box::pin(async {
        // Where the signal cannot be listened for, serving simply goes on.
        if tokio::signal::ctrl_c().await.is_err() {
            std::future::pending::<()>().await;
        }
    }))
}
