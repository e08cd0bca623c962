//! `demo` and `serve`.

use super::notebook::open_store;
use crate::args::Serving;
use crate::error::CliError;
use crate::out::{note, tell};
use qrcode::QrCode;
use qrcode::render::unicode::Dense1x2;
pub use sayso_web::state::machine_clock as now;
use sayso_web::{Config, Opened, ServeError};
use sayso_wording::{Locale, say};
use std::net::{IpAddr, SocketAddr, UdpSocket};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Events put in at once while the demo is made.
const BATCH: usize = 1000;

/// Makes the invented household, unless the directory holds one already, and serves it.
pub async fn demo(l: &Locale, data: Option<PathBuf>, seed: u64, serving: &Serving) -> Result<(), CliError> {
    // Simulating takes a while: what would fail after it is tried before.
    let at = sayso_web::address(serving.lan, serving.port);
    super::try_port(at).map_err(|source| ServeError::Port { at, source })?;
    // Held to the end: dropping it removes the directory.
    let temporary;
    let dir = match data {
        Some(dir) => dir,
        None => {
            temporary = tempfile::tempdir()?;
            temporary.path().to_owned()
        }
    };
    let store = open_store(&dir).await?;
    if store.home().await?.is_none() {
        note!(l, command_serve::simulating);
        let simulated = sayso_sim::demo(seed, now());
        let count = simulated.events.len();
        let mut events = simulated.events.into_iter();
        loop {
            let batch: Vec<_> = events.by_ref().take(BATCH).collect();
            if batch.is_empty() {
                break;
            }
            store.append(batch).await?;
        }
        note!(l, command_serve::invented, n = count);
    } else {
        note!(l, command_serve::holds_home, dir = dir.display().to_string());
    }
    drop(store);
    serve(l, &dir, serving).await
}

/// Serves a notebook until told to stop.
pub async fn serve(l: &Locale, dir: &Path, serving: &Serving) -> Result<(), CliError> {
    let (lan, l) = (serving.lan, *l);
    let host = gethostname::gethostname().into_string().ok();
    let config = Config {
        data: dir.to_owned(),
        port: serving.port,
        lan,
        secure: serving.secure,
        takes_sound: !serving.no_sound,
        host,
        patience: sayso_web::connections::Patience::default(),
        opened: Arc::new(move |opened| announce(&l, opened, lan.is_some())),
        show_code: Arc::new(move |code, minutes| {
            tell!("\n{}\n", say!(&l, command_serve::code, minutes = minutes, code = code));
        }),
    };
    Ok(sayso_web::serve(config).await?)
}

fn announce(l: &Locale, opened: &Opened, lan: bool) {
    let at = opened.at;
    // Bound to one address, it is open there alone.
    let bound = Some(at.ip()).filter(|ip| !ip.is_unspecified() && !ip.is_loopback());
    let scheme = if opened.fingerprint.is_some() && bound.is_some() { "https" } else { "http" };
    let here = if bound.is_some() { at.to_string() } else { format!("127.0.0.1:{}", at.port()) };
    tell!(l, command_serve::open, url = format!("{scheme}://{here}/"));
    let Some(here) = bound.or_else(home_address) else {
        tell!(l, command_serve::no_address);
        return;
    };
    let url = format!("http://{}/", SocketAddr::new(here, at.port()));
    if let Some(fingerprint) = &opened.fingerprint {
        tell!(l, command_serve::from_phone, url = &url);
        tell!(l, command_serve::certificate);
        tell!("{fingerprint}");
        if !sayso_web::secure::at_home(&here) {
            tell!(l, command_serve::strange_address);
        }
    } else if lan {
        tell!(l, command_serve::from_phone, url = &url);
    } else {
        tell!(l, command_serve::this_machine, url = &url);
    }
    match QrCode::new(&url) {
        Ok(code) => tell!("{}", code.render::<Dense1x2>().quiet_zone(true).build()),
        Err(why) => tell!(l, command_serve::no_qr, why = why.to_string()),
    }
    tell!(l, command_serve::stop);
}

/// The address other devices reach this machine by. Connecting a UDP socket sends nothing; it only asks the system
/// which way it would go (203.0.113.1 is reserved for documentation, RFC 5737).
fn home_address() -> Option<IpAddr> {
    let socket = UdpSocket::bind("0.0.0.0:0").ok()?;
    socket.connect("203.0.113.1:9").ok()?;
    let ip = socket.local_addr().ok()?.ip();
    (!ip.is_loopback() && !ip.is_unspecified()).then_some(ip)
}
