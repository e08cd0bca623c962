//! `demo` and `serve`.

use super::notebook::open_store;
use crate::args::Serving;
use crate::error::CliError;
use crate::out::say;
use qrcode::QrCode;
use qrcode::render::unicode::Dense1x2;
pub use sayso_web::state::machine_clock as now;
use sayso_web::{Config, Opened};
use std::net::{IpAddr, SocketAddr, UdpSocket};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Events put in at once while the demo is made.
const BATCH: usize = 1000;

/// Makes the invented household, unless the directory holds one already, and serves it.
pub async fn demo(data: Option<PathBuf>, seed: u64, serving: &Serving) -> Result<(), CliError> {
    // Held to the end: dropping it removes the directory.
    let temporary = if data.is_none() { Some(tempfile::tempdir()?) } else { None };
    let dir = match (&data, &temporary) {
        (Some(dir), _) => dir.clone(),
        (None, Some(temporary)) => temporary.path().to_owned(),
        (None, None) => return Err(CliError::said("no directory for the demo")),
    };
    let store = open_store(&dir).await?;
    if store.home().await?.is_none() {
        eprintln!("Simulating ten weeks of an invented home ...");
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
        eprintln!("{count} events, all invented. Nothing here is evidence about real animals.");
    } else {
        eprintln!("{} holds a home already; serving it.", dir.display());
    }
    drop(store);
    serve(&dir, serving).await
}

/// Serves a notebook until told to stop.
pub async fn serve(dir: &Path, serving: &Serving) -> Result<(), CliError> {
    let lan = serving.lan;
    let host = gethostname::gethostname().into_string().ok();
    let config = Config {
        data: dir.to_owned(),
        port: serving.port,
        lan,
        secure: serving.secure,
        host,
        patience: sayso_web::connections::Patience::default(),
        opened: Arc::new(move |opened| announce(opened, lan.is_some())),
        show_code: Arc::new(|code, minutes| {
            say!("\nPairing code for a phone (good for {minutes} minutes): {code}\n");
        }),
    };
    Ok(sayso_web::serve(config).await?)
}

fn announce(opened: &Opened, lan: bool) {
    let at = opened.at;
    // Bound to one address, it is open there alone.
    let bound = Some(at.ip()).filter(|ip| !ip.is_unspecified() && !ip.is_loopback());
    let scheme = if opened.fingerprint.is_some() && bound.is_some() { "https" } else { "http" };
    match bound {
        None => say!("Sayso is open at http://127.0.0.1:{}/", at.port()),
        Some(_) => say!("Sayso is open at {scheme}://{at}/"),
    }
    let Some(here) = bound.or_else(home_address) else {
        say!("This machine has no address on a home network, so no phone can reach it.");
        return;
    };
    let url = format!("http://{}/", SocketAddr::new(here, at.port()));
    if let Some(fingerprint) = &opened.fingerprint {
        say!("From a phone on the same network: {url} (then type the pairing code)");
        say!("Once on each phone the page there installs this home's certificate; its fingerprint (SHA-256) must be");
        say!("{fingerprint}");
        if !sayso_web::secure::at_home(&here) {
            say!("This machine's address is none of the kinds homes use, so the certificate cannot vouch for it.");
            say!("Open this machine's name on the network, ending in .local, instead.");
        }
    } else if lan {
        say!("From a phone on the same network: {url} (then type the pairing code)");
    } else {
        say!("Only this machine is answered. To use a phone, stop with Ctrl-C and start again with --lan;");
        say!("this code then opens {url} on the phone:");
    }
    match QrCode::new(&url) {
        Ok(code) => say!("{}", code.render::<Dense1x2>().quiet_zone(true).build()),
        Err(why) => say!("(no QR code: {why})"),
    }
    say!("Stop with Ctrl-C.");
}

/// The address other devices reach this machine by. Connecting a UDP socket sends nothing; it only asks the system
/// which way it would go (203.0.113.1 is reserved for documentation, RFC 5737).
fn home_address() -> Option<IpAddr> {
    let socket = UdpSocket::bind("0.0.0.0:0").ok()?;
    socket.connect("203.0.113.1:9").ok()?;
    let ip = socket.local_addr().ok()?.ip();
    (!ip.is_loopback() && !ip.is_unspecified()).then_some(ip)
}
