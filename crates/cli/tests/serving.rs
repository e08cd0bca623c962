//! The served binary: an orderly stop, the log, and the paired devices.

#![cfg(unix)]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::Path;
use std::process::{Child, Command, ExitStatus, Stdio};
use std::time::{Duration, Instant};

/// The stop is bounded by ten seconds; a busy machine may take longer over the rest.
const PATIENCE: Duration = Duration::from_secs(60);

fn sayso(args: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_sayso"));
    command.args(args);
    command
}

/// A served notebook and its port.
fn serve(dir: &Path, more: &[&str]) -> (Child, u16) {
    let mut command = sayso(&["serve", "--port", "0", "--data", dir.to_str().unwrap()]);
    let mut child = command.args(more).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
    let mut out = BufReader::new(child.stdout.take().unwrap());
    let mut line = String::new();
    out.read_line(&mut line).unwrap();
    let port = line.trim_end_matches(['/', '\n']).rsplit(':').next().and_then(|p| p.parse().ok());
    // Read on, so that a full pipe never holds it up.
    std::thread::spawn(move || std::io::copy(&mut out, &mut std::io::sink()));
    (child, port.unwrap_or_else(|| panic!("an address, not {line:?}")))
}

fn ask(port: u16, request: &str) -> String {
    let mut stream = TcpStream::connect(("127.0.0.1", port)).unwrap();
    stream.write_all(request.as_bytes()).unwrap();
    let mut answer = String::new();
    stream.read_to_string(&mut answer).unwrap();
    answer
}

fn post(path: &str, kind: &str, body: &str) -> String {
    let length = body.len();
    format!(
        "POST {path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: {kind}\r\nContent-Length: {length}\r\n\r\n{body}"
    )
}

fn end(child: &mut Child, signal: &str) -> ExitStatus {
    assert!(Command::new("kill").args([signal, &child.id().to_string()]).status().unwrap().success());
    let since = Instant::now();
    loop {
        if let Some(status) = child.try_wait().unwrap() {
            return status;
        }
        if since.elapsed() > PATIENCE {
            child.kill().unwrap();
            panic!("it did not end after {signal}");
        }
        std::thread::sleep(Duration::from_millis(50));
    }
}

fn set_up(port: u16) {
    let form = "home=The+house&you=Ann&animal=Momo&species=dog&zone=Europe%2FBerlin";
    let answer = ask(port, &post("/start", "application/x-www-form-urlencoded", form));
    assert!(answer.starts_with("HTTP/1.1 303"), "{answer}");
}

fn exported(dir: &Path) -> String {
    let out = sayso(&["export", "--data", dir.to_str().unwrap()]).output().unwrap();
    assert!(out.status.success());
    String::from_utf8(out.stdout).unwrap()
}

#[test]
fn a_stop_during_half_sent_requests_ends_in_order_and_loses_nothing() {
    for signal in ["-TERM", "-INT"] {
        let dir = tempfile::tempdir().unwrap();
        let (mut child, port) = serve(dir.path(), &[]);
        set_up(port);
        let mut half = TcpStream::connect(("127.0.0.1", port)).unwrap();
        half.write_all(b"GET / HTTP/1.1\r\nHost: local").unwrap();
        let mut body = TcpStream::connect(("127.0.0.1", port)).unwrap();
        let begun = post("/api/events", "application/json", "[]").replace("Content-Length: 2", "Content-Length: 20");
        body.write_all(begun.as_bytes()).unwrap();
        let _idle = TcpStream::connect(("127.0.0.1", port)).unwrap();
        let status = end(&mut child, signal);
        let mut log = String::new();
        child.stderr.take().unwrap().read_to_string(&mut log).unwrap();
        assert_eq!(status.code(), Some(0), "{signal}: {log}");
        assert!(log.contains("Serving ") && log.contains("Told to stop.") && log.contains("Stopped."), "{log}");
        let kept = exported(dir.path());
        assert_eq!(kept.lines().count(), 3, "{kept}");
        assert!(!dir.path().join("sayso.db-wal").exists(), "the database was closed");
    }
}

#[test]
fn the_log_goes_to_a_file_of_its_owner_with_what_failed_and_the_remedy() {
    use std::os::unix::fs::PermissionsExt;
    let dir = tempfile::tempdir().unwrap();
    let log = dir.path().join("sayso.log");
    let (mut child, port) = serve(&dir.path().join("notebook"), &["--log-file", log.to_str().unwrap()]);
    set_up(port);
    assert_eq!(end(&mut child, "-TERM").code(), Some(0));
    // Damaged behind its back: it is found when the page reads it, or already at the start.
    let file = dir.path().join("notebook/sayso.db");
    std::fs::write(&file, "not a database, but long enough to be looked at").unwrap();
    let again = sayso(&["serve", "--port", "0", "--data", dir.path().join("notebook").to_str().unwrap()])
        .args(["--log-file", log.to_str().unwrap()])
        .output()
        .unwrap();
    assert!(!again.status.success());
    let lines = std::fs::read_to_string(&log).unwrap();
    assert!(lines.lines().any(|l| l.contains(" INFO ") && l.contains("Serving ")), "{lines}");
    assert!(lines.lines().any(|l| l.contains("ERROR") && l.contains("sayso.db")), "{lines}");
    assert_eq!(std::fs::metadata(&log).unwrap().permissions().mode() & 0o777, 0o600);
}

#[test]
fn paired_devices_are_told_and_ended_and_a_damaged_list_is_named() {
    let dir = tempfile::tempdir().unwrap();
    let data = dir.path().to_str().unwrap();
    let devices = |more: &[&str]| sayso(&["devices", "--data", data]).args(more).output().unwrap();
    assert!(String::from_utf8_lossy(&devices(&[]).stdout).contains("No device is paired."));
    let file = dir.path().join("paired.json");
    let hash = "ab".repeat(32);
    let now = sayso_web::state::machine_clock();
    std::fs::write(&file, format!(r#"[{{"sha256":"{hash}","paired_at":"{now}","name":"Ann's phone"}}]"#)).unwrap();
    let listed = String::from_utf8(devices(&[]).stdout).unwrap();
    assert!(listed.contains("Ann's phone") && listed.starts_with("abababababab "), "{listed}");
    assert!(!devices(&["--end", "000000000000"]).status.success());
    assert!(devices(&["--end", "abababababab"]).status.success());
    assert!(String::from_utf8_lossy(&devices(&[]).stdout).contains("No device is paired."));
    std::fs::write(&file, "[{").unwrap();
    let said = String::from_utf8(devices(&[]).stderr).unwrap();
    assert!(said.contains("paired.json") && said.contains("delete it"), "{said}");
    let served = sayso(&["serve", "--lan", "127.0.0.1", "--port", "0", "--data", data]).output().unwrap();
    assert!(!served.status.success());
    assert!(String::from_utf8_lossy(&served.stderr).contains("paired.json"), "{served:?}");
}

#[test]
fn a_demo_whose_port_is_taken_says_so_before_it_simulates() {
    let taken = std::net::TcpListener::bind(("127.0.0.1", 0)).unwrap();
    let port = taken.local_addr().unwrap().port().to_string();
    let dir = tempfile::tempdir().unwrap();
    let asked = ["demo", "--language", "en", "--port", &port, "--data", dir.path().to_str().unwrap()];
    let out = sayso(&asked).output().unwrap();
    let said = format!("{}{}", String::from_utf8_lossy(&out.stdout), String::from_utf8_lossy(&out.stderr));
    assert!(!out.status.success() && said.contains(&port), "{said}");
    assert!(!said.contains("Simulating"), "{said}");
    assert_eq!(std::fs::read_dir(dir.path()).unwrap().count(), 0, "nothing was made");
}
