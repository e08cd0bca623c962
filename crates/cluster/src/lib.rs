//! A database server for a while: PostgreSQL from the system's packages, in a folder for temporary files, reached by a socket
//! there and from nowhere else. It is stopped and its folder removed when the process that began it ends, however that ends.
//!
//! For the demo of a server of many homes, and for tests. Nobody's data belongs in it.

use std::io;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Output, Stdio};

/// Where Debian keeps the server's programs, beside what PATH has.
const DEBIAN: &str = "/usr/lib/postgresql";
/// Whom the server runs as where this process is root, which it refuses to run as.
const NOBODY: &str = "nobody";
/// Its own first user.
const FIRST_USER: &str = "postgres";
/// How long it may take to start, seconds.
const START: &str = "120";

/// Why there is no server.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum ClusterError {
    /// PostgreSQL is not installed, or where nobody looks.
    #[error(
        "PostgreSQL's initdb and pg_ctl are neither in PATH nor below {DEBIAN}: install PostgreSQL (Debian: postgresql)"
    )]
    NotInstalled,
    /// The temporary folder.
    #[error("no folder for the database can be made: {0}")]
    Folder(#[source] io::Error),
    /// A program that could not be begun.
    #[error("{program} cannot be run: {source}")]
    NotRun {
        /// Which.
        program: String,
        /// Why.
        source: io::Error,
    },
    /// A program that failed.
    #[error("{program} failed: {said}")]
    Failed {
        /// Which.
        program: String,
        /// What it said.
        said: String,
    },
}

/// A running server.
#[derive(Debug)]
pub struct Cluster {
    dir: PathBuf,
    bin: PathBuf,
    // Waits at the other end of a pipe for this process to end, and clears up.
    watch: Child,
}

fn programs() -> Result<PathBuf, ClusterError> {
    let path = std::env::var_os("PATH").unwrap_or_default();
    let mut folders: Vec<PathBuf> = std::env::split_paths(&path).collect();
    let versions = std::fs::read_dir(DEBIAN).into_iter().flatten().flatten();
    let mut versions: Vec<PathBuf> = versions.map(|version| version.path().join("bin")).collect();
    versions.sort();
    folders.extend(versions.into_iter().rev());
    let has = |folder: &PathBuf| folder.join("initdb").exists() && folder.join("pg_ctl").exists();
    folders.into_iter().find(has).ok_or(ClusterError::NotInstalled)
}

#[cfg(unix)]
fn is_root() -> bool {
    use std::os::unix::fs::MetadataExt;
    std::fs::metadata("/proc/self").is_ok_and(|m| m.uid() == 0)
}

#[cfg(not(unix))]
const fn is_root() -> bool {
    false
}

/// A command of the server, as somebody who may run it.
fn as_somebody(program: &Path) -> Command {
    if !is_root() {
        return Command::new(program);
    }
    let mut command = Command::new("setpriv");
    command.args(["--reuid", NOBODY, "--regid", "nogroup", "--clear-groups"]).arg(program);
    // It may not look at the folder that root is in.
    command.current_dir("/");
    command
}

fn named(command: &Command) -> String {
    std::iter::once(command.get_program())
        .chain(command.get_args())
        .map(|part| part.to_string_lossy())
        .find(|part| part.contains('/'))
        .map_or_else(|| command.get_program().to_string_lossy().into_owned(), std::borrow::Cow::into_owned)
}

fn run(command: &mut Command) -> Result<Output, ClusterError> {
    command.stdin(Stdio::null()).output().map_err(|source| ClusterError::NotRun { program: named(command), source })
}

fn done(command: &mut Command) -> Result<(), ClusterError> {
    let out = run(command)?;
    if out.status.success() {
        return Ok(());
    }
    Err(ClusterError::Failed { program: named(command), said: String::from_utf8_lossy(&out.stderr).trim().to_owned() })
}

impl Cluster {
    /// Starts one. `safe` is to survive a power cut, at the price of waiting for the disk.
    ///
    /// # Errors
    /// [`ClusterError`], each saying what is missing or what the program said.
    pub fn start(safe: bool) -> Result<Self, ClusterError> {
        let bin = programs()?;
        // Whoever reaches its socket may do everything in it, and run programs as its user: nobody else gets near.
        let mut folder = tempfile::Builder::new();
        #[cfg(unix)]
        folder.permissions(std::os::unix::fs::PermissionsExt::from_mode(0o700));
        let dir = folder.prefix("sayso-pg").tempdir().map_err(ClusterError::Folder)?;
        if is_root() {
            done(Command::new("chown").arg(NOBODY).arg(dir.path()))?;
        }
        let mut make = as_somebody(&bin.join("initdb"));
        make.args(["-A", "trust", "-U", FIRST_USER, "-E", "UTF8", "--no-locale", "-D"]).arg(dir.path().join("data"));
        if !safe {
            make.arg("--no-sync");
        }
        done(&mut make)?;
        let settings = format!(
            "listen_addresses = ''\nunix_socket_directories = '{}'\nunix_socket_permissions = 0700\nmax_connections = 400\nfsync = {}\n",
            dir.path().display(),
            if safe { "on" } else { "off" },
        );
        let file = dir.path().join("data/postgresql.conf");
        let before = std::fs::read_to_string(&file).map_err(ClusterError::Folder)?;
        std::fs::write(&file, before + &settings).map_err(ClusterError::Folder)?;
        let watch = watched(dir.path(), &bin)?;
        // From here on the watch removes it.
        let cluster = Self { dir: dir.keep(), bin, watch };
        cluster.up()?;
        Ok(cluster)
    }

    fn control(&self) -> Command {
        let mut command = as_somebody(&self.bin.join("pg_ctl"));
        command.arg("-D").arg(self.dir.join("data")).arg("-w");
        command
    }

    /// Starts it, and waits until it takes connections.
    ///
    /// # Errors
    /// [`ClusterError::Failed`] with what it wrote into its log.
    pub fn up(&self) -> Result<(), ClusterError> {
        let log = self.dir.join("log");
        let mut start = self.control();
        start.arg("-l").arg(&log).args(["-t", START, "start"]);
        // What it starts would hold a pipe open.
        start.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
        let status = start.status().map_err(|source| ClusterError::NotRun { program: named(&start), source })?;
        if status.success() {
            return Ok(());
        }
        let said = std::fs::read_to_string(log).unwrap_or_default();
        Err(ClusterError::Failed { program: named(&start), said })
    }

    /// Stops it as a crash does: without a checkpoint, in the midst of whatever is under way.
    ///
    /// # Errors
    /// [`ClusterError::Failed`] where it is not running.
    pub fn crash(&self) -> Result<(), ClusterError> {
        done(self.control().args(["-m", "immediate", "stop"]))
    }

    /// How a user connects to a database in it. There is the user `postgres`, who may do everything, and the database
    /// `postgres`.
    #[must_use]
    pub fn address(&self, user: &str, database: &str) -> String {
        format!("postgres://{user}@localhost/{database}?host={}", self.dir.display())
    }

    /// A program of its version, such as `pg_dump`.
    #[must_use]
    pub fn program(&self, name: &str) -> PathBuf {
        // Of its programs only some may be linked to from PATH.
        let at = self.bin.join("initdb");
        at.canonicalize().unwrap_or(at).with_file_name(name)
    }

    /// The folder it is in.
    #[must_use]
    pub fn dir(&self) -> &Path {
        &self.dir
    }
}

impl Drop for Cluster {
    /// Waits until it is stopped and its folder removed.
    fn drop(&mut self) {
        drop(self.watch.stdin.take());
        // Where it cannot be waited for, it clears up by itself all the same.
        let _ = self.watch.wait();
    }
}

/// Begins what stops the server and removes its folder once this process has ended, whatever ends it.
fn watched(dir: &Path, bin: &Path) -> Result<Child, ClusterError> {
    // `cat` ends with this process.
    let clear = "cat > /dev/null; \"$@\" -m immediate stop; rm -rf \"$DIR\"";
    let stop = as_somebody(&bin.join("pg_ctl"));
    let mut watch = Command::new("sh");
    watch.args(["-c", clear, "sh"]).arg(stop.get_program()).args(stop.get_args()).arg("-D").arg(dir.join("data"));
    watch.env("DIR", dir).current_dir("/").stdin(Stdio::piped()).stdout(Stdio::null()).stderr(Stdio::null());
    // A Ctrl-C is for the program in front, which then ends in order.
    #[cfg(unix)]
    std::os::unix::process::CommandExt::process_group(&mut watch, 0);
    watch.spawn().map_err(|source| ClusterError::NotRun { program: named(&watch), source })
}
