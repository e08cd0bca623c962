//! Nothing of a server is left behind.
#![cfg(unix)]
#![allow(clippy::unwrap_used)]

use sayso_cluster::Cluster;
use std::os::unix::fs::PermissionsExt;
use std::os::unix::net::UnixStream;

#[test]
fn a_server_answers_comes_back_after_a_crash_and_is_gone_once_dropped() {
    let cluster = Cluster::start(false).unwrap();
    let dir = cluster.dir().to_owned();
    let socket = dir.join(".s.PGSQL.5432");
    UnixStream::connect(&socket).unwrap();
    // Nobody else on this machine gets near it.
    for place in [&dir, &socket] {
        assert_eq!(std::fs::metadata(place).unwrap().permissions().mode() & 0o077, 0, "{}", place.display());
    }
    cluster.crash().unwrap();
    assert!(UnixStream::connect(&socket).is_err() && cluster.crash().is_err());
    cluster.up().unwrap();
    UnixStream::connect(&socket).unwrap();
    drop(cluster);
    assert!(!dir.exists());
}
