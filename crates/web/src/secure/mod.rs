//! HTTPS on the home network, with certificates made here.
//!
//! Browsers give the microphone, and pages that load while the notebook is away, only to pages that came safely.
//! Why this way, and what it does not do, is told in `docs/decisions/secure.md`.

mod authority;
mod doorstep;
mod gate;

pub use authority::{Authority, SecureError, at_home};
pub use doorstep::doorstep;
pub use gate::{Carrier, Peer, begin};
