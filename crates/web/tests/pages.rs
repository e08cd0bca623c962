//! A page that was written is served, and looked at by the accessibility rules.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

use std::path::{Path, PathBuf};

/// Addresses that the rules do not visit, each with the reason.
const NOT_LOOKED_AT: &[(&str, &str)] = &[
    ("/talk/write", "a coach alone has it, on a server; tests/browser/talking.rs looks at it"),
    ("/", "leads on"),
    ("/start", "leads on where there is a home; its form is that of the people page"),
    ("/clips/{}", "a sound"),
    ("/last", "leads on"),
    ("/l/{}", "leads on"),
    ("/manifest.webmanifest", "a file"),
    ("/pictures/{}", "a picture"),
    ("/a/{}/heard/{}/sound", "a sound"),
    ("/a/{}/ear", "what the ear in the page listens for, for a script"),
    ("/a/{}/ear/{}", "a sound"),
    ("/a/{}/ear/last", "when each word was last heard, for a script"),
    ("/exchange/archive.tar", "a file"),
    ("/exchange/diary.csv", "a file"),
    ("/exchange/backup.sayso", "a file"),
    ("/sheets/rules.pdf", "a PDF; its structure is held by the tests of paper"),
    ("/sheets/kit.pdf", "a PDF; its structure is held by the tests of paper"),
    ("/sheets/labels.pdf", "a PDF; its structure is held by the tests of paper"),
    ("/sheets/{}/progress.pdf", "a PDF; its structure is held by the tests of paper"),
    ("/sheets/{}/meeting.pdf", "a PDF; its structure is held by the tests of paper"),
    ("/sheets/{}/likes.pdf", "a PDF; its structure is held by the tests of paper"),
    ("/learn/booklet.pdf", "a PDF; its structure is held by the tests of paper"),
    ("/a/{}/checks/{}/sheet.pdf", "a PDF; its structure is held by the tests of paper"),
    ("/a/{}/checks/{}/scorer.pdf", "a PDF; its structure is held by the tests of paper"),
    ("/a/{}/checks/{}/presenter", "needs a check"),
    ("/a/{}/checks/{}/scorer", "needs a check"),
    ("/a/{}/checks/{}/setter", "needs a check"),
    ("/a/{}/designs/{}", "needs a trial of a change"),
    ("/rehearse/{}/moments", "what comes next, for a script"),
    ("/people/rule/{}", "the form of a new one, filled"),
];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).to_owned()
}

fn files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(files(&path));
        } else {
            found.push(path);
        }
    }
    found
}

/// An address with its parameters, or what stands for them, left open.
fn open(address: &str) -> String {
    let mut out = String::new();
    let mut inside = false;
    for c in address.chars() {
        match c {
            '{' => inside = true,
            '}' => {
                inside = false;
                out.push_str("{}");
            }
            c if !inside => out.push(c),
            _ => {}
        }
    }
    out
}

/// Addresses that answer GET in a source: every string after `.route(` whose handlers begin with `get`.
fn addresses(source: &str) -> Vec<String> {
    let routes = source.split(".route(").skip(1);
    let told = routes.filter_map(|rest| {
        let (_, rest) = rest.split_once('"')?;
        let (address, rest) = rest.split_once('"')?;
        rest.trim_start_matches([',', ' ', '\n']).starts_with("get(").then(|| open(address))
    });
    told.collect()
}

#[test]
fn every_folder_of_pages_is_served() {
    let pages = root().join("src/pages");
    // Most in the list of pages; what takes a turn of its own is merged beside it.
    let served = [pages.join("mod.rs"), root().join("src/lib.rs")].map(|file| std::fs::read_to_string(file).unwrap());
    for entry in std::fs::read_dir(&pages).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            let name = path.file_name().unwrap().to_str().unwrap().to_owned();
            let merged = |list: &String| list.contains(&format!("{name}::router()"));
            assert!(served.iter().any(merged), "neither pages/mod.rs nor lib.rs merges {name}");
        }
    }
}

#[test]
fn every_page_is_looked_at_by_the_accessibility_rules() {
    let rules = std::fs::read_to_string(root().join("../../tests/browser/every_page.rs")).unwrap();
    let (_, list) = rules.split_once("let pages = [").unwrap();
    let (list, _) = list.split_once("];").unwrap();
    let mut looked_at: Vec<String> = list.split('"').skip(1).step_by(2).map(open).collect();
    // The page of a file that waits is reached by bringing one.
    assert!(list.contains("preview,"));
    looked_at.push("/exchange/{}".to_owned());
    // One of many stands for all.
    for all in ["/methods/", "/learn/", "/rehearse/"] {
        let one_of_them = |address: &String| {
            let (path, _) = address.split_once('?').unwrap_or((address, ""));
            let rest = path.strip_prefix(all)?;
            Some(format!("{all}{{}}{}", rest.find('/').map_or("", |at| &rest[at..])))
        };
        let found: Vec<String> = looked_at.iter().filter_map(one_of_them).collect();
        looked_at.extend(found);
    }
    let mut unseen = Vec::new();
    let mut all = Vec::new();
    for file in files(&root().join("src/pages")).iter().filter(|f| f.extension().is_some_and(|e| e == "rs")) {
        all.extend(addresses(&std::fs::read_to_string(file).unwrap()));
    }
    assert!(all.len() > 40, "{all:?}");
    for address in &all {
        if !looked_at.contains(address) && !NOT_LOOKED_AT.iter().any(|(a, _)| a == address) {
            unseen.push(address);
        }
    }
    assert!(unseen.is_empty(), "add to the list in tests/browser/every_page.rs, or say here why not: {unseen:?}");
    let gone: Vec<_> = NOT_LOOKED_AT.iter().filter(|(a, _)| !all.contains(&(*a).to_owned())).collect();
    assert!(gone.is_empty(), "no such page any more: {gone:?}");
}
