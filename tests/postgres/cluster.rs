//! A database server of the tests' own ([`sayso_cluster`]), which must be there.
#![allow(dead_code)]

/// A running server.
pub struct Cluster(sayso_cluster::Cluster);

impl Cluster {
    /// Starts one. `safe` is to survive a power cut, at the price of waiting for the disk.
    pub fn start(safe: bool) -> Self {
        Self(sayso_cluster::Cluster::start(safe).expect(".ci/install brings PostgreSQL"))
    }

    /// Starts it, and waits until it takes connections.
    pub fn up(&self) {
        self.0.up().unwrap();
    }

    /// Stops it as a crash does: without a checkpoint, in the midst of whatever is under way.
    pub fn crash(&self) {
        self.0.crash().unwrap();
    }

    /// Runs one of its programs, which must do what it is asked; what it printed.
    pub fn run(&self, program: &str, args: &[&str]) -> String {
        let out = std::process::Command::new(self.0.program(program)).args(args).output().unwrap();
        assert!(out.status.success(), "{program}: {}", String::from_utf8_lossy(&out.stderr));
        String::from_utf8(out.stdout).unwrap()
    }

    /// How a user connects to a database in it.
    pub fn address(&self, user: &str, database: &str) -> String {
        self.0.address(user, database)
    }
}
