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

/// The text that a constant of this name holds, in a source or in all of them.
fn constant(name: &str, text: &str) -> Option<String> {
    let at = text.find(&format!("const {name}: &str = \""))?;
    text[at..].split('"').nth(1).map(str::to_owned)
}

/// Addresses in the sources of a folder, as their routes say them.
pub fn routes_of(folder: &Path) -> BTreeSet<String> {
    let mut files = Vec::new();
    sources(folder, &mut files);
    // Constants of other files: of these crates, and of what a server and a notebook say to each other.
    let crates = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut around = Vec::new();
    for near in ["../linked/src", "src"] {
        sources(&crates.join(near), &mut around);
    }
    let all =
        |files: &[PathBuf]| -> String { files.iter().map(|file| std::fs::read_to_string(file).unwrap()).collect() };
    let around = all(&around);
    let mut found = BTreeSet::new();
    for file in files {
        let text = std::fs::read_to_string(&file).unwrap();
        let mut beside = Vec::new();
        sources(file.parent().unwrap(), &mut beside);
        let beside = all(&beside);
        for part in text.split(".route(").skip(1) {
            let first = part.trim_start();
            found.insert(match first.strip_prefix('"') {
                Some(rest) => rest.split('"').next().unwrap().to_owned(),
                None => {
                    let path = first.split(',').next().unwrap().trim();
                    let name = path.rsplit("::").next().unwrap();
                    [&text, &beside, &around]
                        .iter()
                        .find_map(|text| constant(name, text))
                        .unwrap_or_else(|| panic!("{path} is no constant"))
                }
            });
        }
    }
    found
}

/// Addresses in the sources of `web`.
fn routes() -> BTreeSet<String> {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("../web/src");
    // A nested router answers at its own address.
    let api = routes_of(&src.join("api"));
    let api = api.iter().map(|path| format!("/api{}", path.trim_end_matches('/')));
    routes_of(&src.join("pages")).into_iter().chain(api).collect()
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
