//! The client's own tests, which need no browser but do need Node.

use std::process::Command;

#[test]
fn the_clients_own_tests_pass() {
    let dir = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/client");
    let mut files: Vec<_> = std::fs::read_dir(dir).unwrap().map(|f| f.unwrap().path()).collect();
    files.sort();
    assert!(files.len() >= 2, "{files:?}");
    let run = Command::new("node").arg("--test").args(&files).output();
    let run =
        run.expect("Node runs the client's tests; install it (20.19 or newer), for example: apt-get install nodejs");
    assert!(run.status.success(), "{}{}", String::from_utf8_lossy(&run.stdout), String::from_utf8_lossy(&run.stderr));
}

/// Types from the notebook's document, rules, form. Needs `npm ci` in `client-checks`; CI always runs it.
#[test]
fn the_clients_types_and_rules_hold() {
    let dir = concat!(env!("CARGO_MANIFEST_DIR"), "/client-checks");
    if !std::path::Path::new(dir).join("node_modules").is_dir() {
        eprintln!("not run: the client's tools are not installed; npm ci --prefix crates/web/client-checks");
        return;
    }
    let run = Command::new("npm").args(["run", "--silent", "check"]).current_dir(dir).output().unwrap();
    assert!(run.status.success(), "{}{}", String::from_utf8_lossy(&run.stdout), String::from_utf8_lossy(&run.stderr));
}
