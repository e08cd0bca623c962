//! Who may come in: the door for requests, pairing, sessions.
//!
//! What this protects, and what it does not, is told in `docs/decisions/access.md`.

mod code;
mod devices;
mod rate_limiter;
mod session_guard;
mod sessions;
mod view;

pub(crate) use session_guard::plain_label;
pub use session_guard::{PAIRED_COOKIE, guard, headers, host_of, same_site};
pub use sessions::{Device, IDLE_DAYS, PairedError, Sessions};

/// The file of paired devices in the data directory.
pub const PAIRED_FILE: &str = "paired.json";
/// The same for devices that paired over HTTPS: a secret that once went over plain HTTP must not open this door.
pub const SAFELY_PAIRED_FILE: &str = "paired-safely.json";

/// Routes of pairing and of the paired devices.
pub fn router() -> axum::Router<crate::AppState> {
    view::router().merge(devices::router())
}

use crate::error::Error;
use code::Code;
use rate_limiter::RateLimiter;
pub use rate_limiter::network;
use sayso_model::Moment;
use sayso_wording::Words;
use std::fmt;
use std::net::IpAddr;
use std::path::Path;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// Shows a person at the machine a pairing code and the minutes it is good for.
pub type ShowCode = Arc<dyn Fn(&str, u32) + Send + Sync>;

/// Who may come in.
pub struct Access {
    pairing: Option<Pairing>,
}

/// What pairing needs to know.
struct Pairing {
    code: Mutex<Option<Code>>,
    tries: Mutex<RateLimiter>,
    sessions: Mutex<Sessions>,
    show: ShowCode,
}

impl fmt::Debug for Access {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Access").field("lan", &self.lan()).finish_non_exhaustive()
    }
}

/// What came of a try to pair.
#[derive(Debug, PartialEq, Eq)]
pub enum Tried {
    /// Paired; the secret for the cookie.
    Paired(String),
    /// Not the code.
    Wrong,
    /// The code is no longer good; a new one is on the terminal.
    Expired,
    /// Too many tries; seconds to wait.
    TooMany(u64),
}

impl Access {
    /// For this machine only: nobody pairs, only loopback names are answered.
    #[must_use]
    pub const fn this_machine() -> Self {
        Self { pairing: None }
    }

    /// For the home network: devices pair by a code. `kept_in` is the file of paired devices.
    ///
    /// # Errors
    /// [`PairedError`] where the file is there and cannot be read.
    pub fn home_network(kept_in: &Path, show: ShowCode) -> Result<Self, PairedError> {
        Ok(Self {
            pairing: Some(Pairing {
                code: Mutex::new(None),
                tries: Mutex::new(RateLimiter::default()),
                sessions: Mutex::new(Sessions::read(kept_in)?),
                show,
            }),
        })
    }

    /// Whether devices of the home network may pair.
    #[must_use]
    pub const fn lan(&self) -> bool {
        self.pairing.is_some()
    }

    /// Whether a request with this secret may come in.
    #[must_use]
    pub fn admits(&self, secret: Option<&str>, now: Moment) -> bool {
        match &self.pairing {
            None => true,
            Some(_) => self.device(secret, now).is_some(),
        }
    }

    /// The id of the paired device with this secret.
    #[must_use]
    pub fn device(&self, secret: Option<&str>, now: Moment) -> Option<String> {
        lock(&self.pairing.as_ref()?.sessions).knows(secret?, now)
    }

    /// Sees to it that a good code is on the terminal.
    ///
    /// # Errors
    /// [`std::io::Error`] where the machine gives no random bytes.
    pub fn offer_code(&self, now: Moment) -> std::io::Result<()> {
        let Some(p) = &self.pairing else { return Ok(()) };
        let mut code = lock(&p.code);
        if !code.as_ref().is_some_and(|c| c.good(now)) {
            let new = Code::new(now)?;
            (p.show)(new.shown(), code::GOOD_FOR_MINUTES);
            *code = Some(new);
        }
        Ok(())
    }

    /// Tries a code typed on a device at `from`, to be called `name`.
    ///
    /// # Errors
    /// [`Error::Damaged`] where there are no random bytes or the file of paired devices cannot be written.
    pub fn pair(&self, typed: &str, name: &str, from: IpAddr, now: Moment) -> Result<Tried, Error> {
        let Some(p) = &self.pairing else { return Ok(Tried::Wrong) };
        let mut tries = lock(&p.tries);
        if let Some(wait) = tries.wait(from, now) {
            tracing::debug!("{from} tries codes too often; it waits {wait} seconds.");
            return Ok(Tried::TooMany(wait));
        }
        let code = lock(&p.code);
        let matches = match code.as_ref() {
            Some(c) if c.good(now) => c.is(typed),
            _ => {
                drop(code);
                self.offer_code(now).map_err(Error::internal)?;
                return Ok(Tried::Expired);
            }
        };
        if !matches {
            tries.failed(from, now);
            tracing::warn!("A wrong pairing code came from {from}.");
            return Ok(Tried::Wrong);
        }
        drop(code);
        drop(tries);
        let secret = lock(&p.sessions).begin(name, now).map_err(damaged)?;
        tracing::info!("Paired \u{201c}{name}\u{201d} from {from}.");
        Ok(Tried::Paired(secret))
    }

    /// The devices that may come in, the last seen first.
    #[must_use]
    pub fn devices(&self, now: Moment) -> Vec<Device> {
        self.pairing.as_ref().map_or_else(Vec::new, |p| lock(&p.sessions).devices(now))
    }

    /// Ends one device; whether it was there.
    ///
    /// # Errors
    /// [`Error::Damaged`] where the file of paired devices cannot be written.
    pub fn end(&self, id: &str) -> Result<bool, Error> {
        let Some(p) = &self.pairing else { return Ok(false) };
        let ended = lock(&p.sessions).end(id).map_err(damaged)?;
        if ended {
            tracing::info!("The device {id} was ended.");
        }
        Ok(ended)
    }

    /// Forgets every paired device.
    ///
    /// # Errors
    /// [`Error::Damaged`] where the file of paired devices cannot be written.
    pub fn forget_all(&self) -> Result<(), Error> {
        let Some(p) = &self.pairing else { return Ok(()) };
        lock(&p.sessions).forget_all().map_err(damaged)?;
        tracing::info!("All paired devices were forgotten.");
        Ok(())
    }
}

/// The words name the file and the remedy.
fn damaged(error: PairedError) -> Error {
    Error::Damaged(Words::from(error).sentence())
}

/// A thread that panicked while holding the lock left whole values behind: each change is one assignment or insert.
fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}
