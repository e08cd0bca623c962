//! Sign-ins and tries in the log: by which way, from which network, and which account where it is known. No secret, no name and no
//! e-mail address.

use sayso_people::{Error, Session};

/// Notes what came of a try to sign in, and gives it on.
///
/// # Errors
/// As it came.
pub fn sign_in<T>(way: &str, from: &str, done: Result<(Session, T), Error>) -> Result<(Session, T), Error> {
    match &done {
        Ok((session, _)) => tracing::info!("Account {} signed in by {way} from {from}.", session.account),
        Err(why) => tracing::warn!("A sign-in by {way} from {from} failed: {why}."),
    }
    done
}
