//! A PostgreSQL cluster for the tests of this binary: in a temporary folder, on a socket there, without a port. Each test has a
//! database of its own. The last test that ends stops it, also where it failed.

use sayso_people::{Lifetimes, People};
use sqlx::postgres::{PgConnectOptions, PgConnection};
use sqlx::{ConnectOptions, Connection};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::sync::{Arc, Mutex, PoisonError, Weak};
use std::time::Duration;

pub struct Cluster {
    folder: tempfile::TempDir,
    server: Child,
    user: Option<&'static str>,
}

static RUNNING: Mutex<Weak<Cluster>> = Mutex::new(Weak::new());
static NEXT: AtomicU32 = AtomicU32::new(0);

/// Where a program of PostgreSQL is: on the path, or where Debian puts it.
fn program(name: &str) -> PathBuf {
    let path = std::env::var_os("PATH").unwrap_or_default();
    let debian = std::fs::read_dir("/usr/lib/postgresql").into_iter().flatten().flatten().map(|d| d.path().join("bin"));
    let folders = std::env::split_paths(&path).chain(debian);
    let found = folders.map(|folder| folder.join(name)).find(|p| p.is_file());
    found.unwrap_or_else(|| {
        panic!("these tests need PostgreSQL 15 or later: no program {name} on the path or in /usr/lib/postgresql")
    })
}

/// A command as a user that PostgreSQL runs as: it refuses the superuser.
fn command(name: &str, user: Option<&str>) -> Command {
    match user {
        None => Command::new(program(name)),
        Some(user) => {
            let mut command = Command::new("setpriv");
            command.args(["--reuid", user, "--regid", "nogroup", "--clear-groups"]).arg(program(name));
            command
        }
    }
}

fn run(mut command: Command) {
    let done = command.output().unwrap_or_else(|e| panic!("{command:?}: {e}"));
    assert!(done.status.success(), "{command:?}: {}", String::from_utf8_lossy(&done.stderr));
}

impl Cluster {
    fn start() -> Self {
        let root = Command::new("id").arg("-u").output().is_ok_and(|o| o.stdout.trim_ascii() == b"0");
        let user = root.then_some("nobody");
        let folder = tempfile::tempdir().unwrap();
        if let Some(user) = user {
            let mut own = Command::new("chown");
            own.arg(user).arg(folder.path());
            run(own);
        }
        let data = folder.path().join("data");
        let mut init = command("initdb", user);
        init.arg("-D").arg(&data).args(["-U", "postgres", "-A", "trust", "-E", "UTF8", "--no-sync", "--locale=C"]);
        run(init);
        let mut server = command("postgres", user);
        server.arg("-D").arg(&data).arg("-k").arg(folder.path()).args(["-h", ""]);
        for setting in ["fsync=off", "max_connections=200", "shared_buffers=32MB"] {
            server.arg("-c").arg(setting);
        }
        let server = server.stdout(Stdio::null()).stderr(Stdio::null()).current_dir("/").spawn().unwrap();
        Self { folder, server, user }
    }

    pub fn options(&self, database: &str) -> PgConnectOptions {
        let socket: &Path = self.folder.path();
        PgConnectOptions::new().socket(socket).username("postgres").database(database).disable_statement_logging()
    }
}

impl Drop for Cluster {
    fn drop(&mut self) {
        // Stopped by its own program, as the user it runs as; the folder goes after it.
        let mut stop = command("pg_ctl", self.user);
        stop.arg("-D").arg(self.folder.path().join("data")).args(["-m", "immediate", "-w", "stop"]);
        let stopped = stop.stdout(Stdio::null()).stderr(Stdio::null()).current_dir("/").status();
        if !stopped.is_ok_and(|s| s.success()) {
            self.server.kill().ok();
        }
        self.server.wait().ok();
    }
}

fn running() -> Arc<Cluster> {
    let mut running = RUNNING.lock().unwrap_or_else(PoisonError::into_inner);
    running.upgrade().unwrap_or_else(|| {
        let cluster = Arc::new(Cluster::start());
        *running = Arc::downgrade(&cluster);
        cluster
    })
}

/// A database of one test.
pub struct Database {
    /// One process of the server.
    pub people: People,
    pub options: PgConnectOptions,
    _cluster: Arc<Cluster>,
}

impl Database {
    pub async fn new() -> Self {
        Self::with(Lifetimes::default()).await
    }

    pub async fn with(lifetimes: Lifetimes) -> Self {
        let cluster = running();
        let name = format!("test{}", NEXT.fetch_add(1, Ordering::Relaxed));
        let mut first = connect(&cluster.options("postgres")).await;
        let create: &'static str = Box::leak(format!("CREATE DATABASE {name}").into_boxed_str());
        sqlx::query(create).execute(&mut first).await.unwrap();
        first.close().await.unwrap();
        let options = cluster.options(&name);
        let people = People::open(options.clone(), lifetimes, 4).await.unwrap();
        Self { people, options, _cluster: cluster }
    }

    /// Another process of the same server.
    pub async fn another(&self) -> People {
        People::open(self.options.clone(), *self.people.lifetimes(), 4).await.unwrap()
    }

    /// A connection past the crate, to look at what is stored.
    pub async fn look(&self) -> PgConnection {
        connect(&self.options).await
    }
}

async fn connect(options: &PgConnectOptions) -> PgConnection {
    // The server takes connections a moment after it was started.
    for _ in 0..600 {
        match options.connect().await {
            Ok(connection) => return connection,
            Err(_) => tokio::time::sleep(Duration::from_millis(50)).await,
        }
    }
    options.connect().await.expect("the test's PostgreSQL answers")
}
