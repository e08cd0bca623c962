//! The table names every address of a home's pages, and none that is not there.

use sayso_host::asked::TABLE;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// Addresses that a server leaves closed: sound of browsers that cannot hear by themselves is not taken, a backup is of a whole
/// database, and homes are chosen
/// on the server's own page.
const CLOSED: [&str; 5] = [
    "/api/listen/{animal}",
    "/a/{animal}/words/cut",
    "/a/{animal}/words/prove/{word}",
    "/exchange/backup.sayso",
    "/homes",
];

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|e| e == "rs") {
            found.push(path);
        }
    }
}

/// Addresses in the sources of `web`, as their routes say them.
fn routes() -> BTreeSet<String> {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("../web/src");
    let mut found = BTreeSet::new();
    for (folder, below) in [("pages", ""), ("api", "/api")] {
        let mut files = Vec::new();
        sources(&src.join(folder), &mut files);
        for file in files {
            let text = std::fs::read_to_string(file).unwrap();
            for part in text.split(".route(").skip(1) {
                let first = part.trim_start();
                let path = match first.strip_prefix('"') {
                    Some(rest) => rest.split('"').next().unwrap().to_owned(),
                    // A constant of the same file.
                    None => {
                        let name: String = first.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect();
                        let at = text.find(&format!("const {name}: &str = \"")).unwrap();
                        text[at..].split('"').nth(1).unwrap().to_owned()
                    }
                };
                // A nested router answers at its own address.
                let path = if below.is_empty() { path } else { path.trim_end_matches('/').to_owned() };
                found.insert(format!("{below}{path}"));
            }
        }
    }
    found
}

#[test]
fn every_address_of_a_home_is_decided_on() {
    let routes = routes();
    assert!(routes.len() > 90, "{routes:?}");
    let decided: BTreeSet<String> =
        TABLE.iter().map(|line| line.0.to_owned()).chain(CLOSED.map(str::to_owned)).collect();
    let open: Vec<_> = routes.difference(&decided).collect();
    let gone: Vec<_> = decided.difference(&routes).collect();
    assert!(open.is_empty(), "decide in asked.rs what these take: {open:?}");
    assert!(gone.is_empty(), "these are no addresses any more: {gone:?}");
    assert_eq!(TABLE.len() + CLOSED.len(), decided.len(), "an address stands twice");
}
