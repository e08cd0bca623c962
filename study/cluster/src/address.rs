//! Where a scheduler is reached.

use crate::error::ClusterError;
use std::fmt;
use std::net::IpAddr;
use std::str::FromStr;

/// A host and a port.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Address {
    /// Name of the machine, or its number.
    pub host: String,
    /// Port.
    pub port: u16,
}

impl fmt::Display for Address {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:{}", self.host, self.port)
    }
}

impl FromStr for Address {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let bad = || format!("{text:?} is no HOST:PORT, such as 127.0.0.1:50050");
        let (host, port) = text.rsplit_once(':').ok_or_else(bad)?;
        let port = port.parse().map_err(|_| bad())?;
        // Nothing of an address but the host: no scheme, no path, and of several colons only those within brackets.
        let bare = !host.is_empty() && !host.contains(['/', '@', ' ']);
        let bracketed = host.starts_with('[') && host.ends_with(']');
        if bare && (bracketed || !host.contains(':')) { Ok(Self { host: host.to_owned(), port }) } else { Err(bad()) }
    }
}

/// A number as it stands before a port.
pub(crate) fn host(ip: IpAddr) -> String {
    if ip.is_ipv6() { format!("[{ip}]") } else { ip.to_string() }
}

/// Under which name or number others reach what listens there.
///
/// # Errors
/// [`ClusterError::Nowhere`] where it listens on all of its machine's and does not say.
pub(crate) fn reached_as(bind: IpAddr, advertise: Option<String>) -> Result<String, ClusterError> {
    match advertise {
        Some(name) => Ok(name),
        None if bind.is_unspecified() => Err(ClusterError::Nowhere(bind)),
        None => Ok(host(bind)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_host_and_a_port_are_read_and_nothing_else() {
        for good in ["127.0.0.1:50050", "scheduler:1", "[::1]:50050"] {
            assert_eq!(good.parse::<Address>().map(|address| address.to_string()), Ok(good.to_owned()));
        }
        for bad in ["", "scheduler", ":50050", "scheduler:", "scheduler:70000", "http://scheduler:1", "::1:50050"] {
            assert!(bad.parse::<Address>().is_err(), "{bad}");
        }
    }
}
