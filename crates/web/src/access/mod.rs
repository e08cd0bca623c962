//! Who may come in: the door for requests, pairing, sessions.
//!
//! What this protects, and what it does not, is told in `docs/decisions/access.md`.

mod code;
mod door;
mod sessions;
mod tries;
mod view;

pub(crate) use door::plain_label;
pub use door::{PAIRED_COOKIE, guard, headers};
pub use view::router;

use code::Code;
use sayso_model::Moment;
use sessions::Sessions;
use std::fmt;
use std::net::IpAddr;
use std::path::Path;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use tries::Tries;

/// Shows a person at the machine a pairing code and the minutes it is good for.
pub type ShowCode = Arc<dyn Fn(&str, u32) + Send + Sync>;

/// Who may come in.
pub struct Access {
    pairing: Option<Pairing>,
}

/// What pairing needs to know.
struct Pairing {
    code: Mutex<Option<Code>>,
    tries: Mutex<Tries>,
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
    /// [`std::io::Error`] where the file is there and cannot be read.
    pub fn home_network(kept_in: &Path, show: ShowCode) -> std::io::Result<Self> {
        Ok(Self {
            pairing: Some(Pairing {
                code: Mutex::new(None),
                tries: Mutex::new(Tries::default()),
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
            Some(p) => secret.is_some_and(|s| lock(&p.sessions).knows(s, now)),
        }
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

    /// Tries a code typed on a device at `from`.
    ///
    /// # Errors
    /// [`std::io::Error`] where there are no random bytes or the file of paired devices cannot be written.
    pub fn pair(&self, typed: &str, from: IpAddr, now: Moment) -> std::io::Result<Tried> {
        let Some(p) = &self.pairing else { return Ok(Tried::Wrong) };
        let mut tries = lock(&p.tries);
        if let Some(wait) = tries.wait(from, now) {
            return Ok(Tried::TooMany(wait));
        }
        let code = lock(&p.code);
        let matches = match code.as_ref() {
            Some(c) if c.good(now) => c.is(typed),
            _ => {
                drop(code);
                self.offer_code(now)?;
                return Ok(Tried::Expired);
            }
        };
        if !matches {
            tries.failed(from, now);
            return Ok(Tried::Wrong);
        }
        drop(code);
        drop(tries);
        lock(&p.sessions).begin(now).map(Tried::Paired)
    }

    /// Forgets every paired device.
    ///
    /// # Errors
    /// [`std::io::Error`] where the file of paired devices cannot be written.
    pub fn forget_all(&self) -> std::io::Result<()> {
        self.pairing.as_ref().map_or(Ok(()), |p| lock(&p.sessions).forget_all())
    }

    /// How many devices are paired.
    #[must_use]
    pub fn paired(&self) -> usize {
        self.pairing.as_ref().map_or(0, |p| lock(&p.sessions).len())
    }
}

/// A thread that panicked while holding the lock left whole values behind: each change is one assignment or insert.
fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}
