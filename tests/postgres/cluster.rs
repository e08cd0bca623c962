//! A database server of the tests' own: in a folder for temporary files, reached by a socket there. It is stopped and its
//! folder removed when the process that began it ends, however that ends.
#![allow(dead_code)]

use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};

/// Where Debian keeps the server's programs, beside what PATH has.
const DEBIAN: &str = "/usr/lib/postgresql";
/// Whom the server runs as where the tests run as root, which it refuses.
const NOBODY: &str = "nobody";

/// A running server.
pub struct Cluster {
    dir: PathBuf,
    bin: PathBuf,
    // Waits at the other end of a pipe for this process to end.
    _watch: Child,
}

fn programs() -> PathBuf {
    let path = std::env::var_os("PATH").unwrap_or_default();
    let mut folders: Vec<PathBuf> = std::env::split_paths(&path).collect();
    let mut versions: Vec<PathBuf> =
        std::fs::read_dir(DEBIAN).map(|all| all.map(|e| e.unwrap().path().join("bin")).collect()).unwrap_or_default();
    versions.sort();
    folders.extend(versions.into_iter().rev());
    let has = |folder: &PathBuf| folder.join("initdb").exists() && folder.join("pg_ctl").exists();
    folders
        .into_iter()
        .find(has)
        .expect("initdb of PostgreSQL in PATH or below /usr/lib/postgresql: .ci/install brings it")
}

fn is_root() -> bool {
    use std::os::unix::fs::MetadataExt;
    std::fs::metadata("/proc/self").is_ok_and(|m| m.uid() == 0)
}

/// A command of the server, as somebody who may run it.
fn as_somebody(program: &Path) -> Command {
    if !is_root() {
        return Command::new(program);
    }
    let mut command = Command::new("setpriv");
    command.args(["--reuid", NOBODY, "--regid", "nogroup", "--clear-groups"]).arg(program);
    command
}

fn done(command: &mut Command) {
    let out = command.stdin(Stdio::null()).output().unwrap();
    assert!(out.status.success(), "{command:?}: {}", String::from_utf8_lossy(&out.stderr));
}

impl Cluster {
    /// Starts one. `safe` is to survive a power cut, at the price of waiting for the disk.
    pub fn start(safe: bool) -> Self {
        let bin = programs();
        let dir = tempfile::Builder::new().prefix("sayso-pg").tempdir().unwrap().keep();
        if is_root() {
            done(Command::new("chown").arg(NOBODY).arg(&dir));
        }
        let mut make = as_somebody(&bin.join("initdb"));
        make.args(["-A", "trust", "-U", "postgres", "-E", "UTF8", "--no-locale", "-D"]).arg(dir.join("data"));
        if !safe {
            make.arg("--no-sync");
        }
        done(&mut make);
        let settings = format!(
            "listen_addresses = ''\nunix_socket_directories = '{}'\nmax_connections = 200\nfsync = {}\n",
            dir.display(),
            if safe { "on" } else { "off" },
        );
        let file = dir.join("data/postgresql.conf");
        let before = std::fs::read_to_string(&file).unwrap();
        std::fs::write(&file, before + &settings).unwrap();
        // `cat` ends with this process, whatever ends that.
        let clear = "cat > /dev/null; \"$@\" -m immediate stop; rm -rf \"$DIR\"";
        let stop = as_somebody(&bin.join("pg_ctl"));
        let mut watch = Command::new("sh");
        watch.args(["-c", clear, "sh"]).arg(stop.get_program()).args(stop.get_args()).arg("-D").arg(dir.join("data"));
        watch.env("DIR", &dir).stdin(Stdio::piped()).stdout(Stdio::null()).stderr(Stdio::null());
        let watch = watch.spawn().unwrap();
        let cluster = Self { dir, bin, _watch: watch };
        cluster.up();
        cluster
    }

    fn control(&self) -> Command {
        let mut command = as_somebody(&self.bin.join("pg_ctl"));
        command.arg("-D").arg(self.dir.join("data")).arg("-w");
        command
    }

    /// Starts it, and waits until it takes connections.
    pub fn up(&self) {
        let mut start = self.control();
        start
            .arg("-l")
            .arg(self.dir.join("log"))
            .args(["-t", "120", "start"])
            .stdout(Stdio::null())
            .stderr(Stdio::null());
        assert!(
            start.status().unwrap().success(),
            "{}",
            std::fs::read_to_string(self.dir.join("log")).unwrap_or_default()
        );
    }

    /// Stops it as a crash does: without a checkpoint, in the midst of whatever is under way.
    pub fn crash(&self) {
        done(self.control().args(["-m", "immediate", "stop"]));
    }

    /// How a user connects to a database in it.
    pub fn address(&self, user: &str, database: &str) -> String {
        format!("postgres://{user}@localhost/{database}?host={}", self.dir.display())
    }
}
