//! The house stands as ARCHITECTURE.md draws it: a floor knows only floors below it, and no files use each other in a
//! circle.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use syn::visit::Visit;

/// Each crate and the floors it may know, tests left aside.
const FLOORS: &[(&str, &[&str])] = &[
    ("model", &[]),
    ("methods", &["model"]),
    // Rows that homes give and releases made of them.
    ("norms", &["model"]),
    ("listen", &[]),
    // The engine once more, for pages.
    ("ear", &["listen"]),
    ("store", &["model"]),
    ("people", &["model"]),
    // PostgreSQL for a while.
    ("cluster", &[]),
    ("advisor", &["model", "methods", "listen", "norms"]),
    ("notebook", &["model", "listen", "norms", "store"]),
    ("sim", &["model"]),
    // A notebook at home and its home on a server.
    ("linked", &["model", "store"]),
    // What comes of a rehearsal.
    ("rehearse", &["model", "methods", "advisor", "sim"]),
    ("wording", &["model", "methods", "norms", "listen", "store", "advisor", "notebook"]),
    ("paper", &["model", "advisor", "wording"]),
    (
        "web",
        &[
            "model", "methods", "norms", "listen", "ear", "store", "advisor", "notebook", "wording", "paper", "people",
            "sim", "rehearse", "linked",
        ],
    ),
    ("host", &["model", "norms", "people", "store", "advisor", "linked", "web", "wording"]),
    (
        "cli",
        &[
            "model", "methods", "norms", "listen", "store", "advisor", "notebook", "sim", "wording", "paper", "web",
            "people", "cluster", "host", "linked",
        ],
    ),
    ("lab", &["model", "methods", "listen", "store", "advisor", "notebook", "sim", "rehearse"]),
];

fn crates() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap().to_owned()
}

/// Names of the workspace's crates in a manifest's `[dependencies]`.
fn known(manifest: &str) -> BTreeSet<String> {
    let mut inside = false;
    let mut found = BTreeSet::new();
    for line in manifest.lines() {
        if line.starts_with('[') {
            inside = line == "[dependencies]";
        } else if inside && let Some(name) = line.strip_prefix("sayso-") {
            found.insert(name.chars().take_while(|c| c.is_alphanumeric() || *c == '-').collect());
        }
    }
    found
}

#[test]
fn a_floor_knows_only_floors_below_it() {
    let mut seen = BTreeSet::new();
    for entry in std::fs::read_dir(crates()).unwrap() {
        let dir = entry.unwrap().path();
        let Ok(manifest) = std::fs::read_to_string(dir.join("Cargo.toml")) else { continue };
        let name = dir.file_name().unwrap().to_str().unwrap().to_owned();
        let (_, below) = FLOORS.iter().find(|(floor, _)| *floor == name).unwrap_or_else(|| {
            panic!("{name} is no floor of the house yet: draw it in ARCHITECTURE.md and name it here")
        });
        for other in known(&manifest) {
            assert!(below.contains(&other.as_str()), "{name} must not know {other}");
        }
        seen.insert(name);
    }
    let drawn = std::fs::read_to_string(crates().parent().unwrap().join("ARCHITECTURE.md")).unwrap();
    for (floor, _) in FLOORS {
        assert!(seen.contains(*floor), "there is no crate {floor}");
        assert!(drawn.contains(&format!("`crates/{floor}`")), "ARCHITECTURE.md does not tell what {floor} is for");
    }
}

/// Modules of a crate by path, each with its file. `a/mod.rs` is module `a`.
fn modules(src: &Path) -> BTreeMap<Vec<String>, PathBuf> {
    let mut found = BTreeMap::new();
    let mut folders = vec![src.to_owned()];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(&folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|e| e == "rs") {
                let inner = path.strip_prefix(src).unwrap().with_extension("");
                let mut parts: Vec<String> = inner.iter().map(|p| p.to_str().unwrap().to_owned()).collect();
                if parts.last().is_some_and(|p| ["mod", "lib", "main"].contains(&p.as_str())) {
                    parts.pop();
                }
                found.insert(parts, path);
            }
        }
    }
    found
}

/// Paths that begin with `crate`, `super` or `self`, outside of tests.
#[derive(Default)]
struct Uses(Vec<Vec<String>>);

fn only_in_tests(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|a| {
        a.path().is_ident("cfg") && matches!(&a.meta, syn::Meta::List(l) if l.tokens.to_string().contains("test"))
    })
}

impl Uses {
    fn tree(&mut self, before: &[String], tree: &syn::UseTree) {
        let with = |name: &syn::Ident| before.iter().cloned().chain([name.to_string()]).collect::<Vec<_>>();
        match tree {
            syn::UseTree::Path(path) => self.tree(&with(&path.ident), &path.tree),
            syn::UseTree::Name(name) => self.0.push(with(&name.ident)),
            syn::UseTree::Rename(name) => self.0.push(with(&name.ident)),
            syn::UseTree::Glob(_) => self.0.push(before.to_vec()),
            syn::UseTree::Group(group) => group.items.iter().for_each(|item| self.tree(before, item)),
        }
    }
}

impl<'a> Visit<'a> for Uses {
    fn visit_item_mod(&mut self, module: &'a syn::ItemMod) {
        if !only_in_tests(&module.attrs) {
            syn::visit::visit_item_mod(self, module);
        }
    }
    fn visit_item_use(&mut self, item: &'a syn::ItemUse) {
        self.tree(&[], &item.tree);
    }
    fn visit_path(&mut self, path: &'a syn::Path) {
        self.0.push(path.segments.iter().map(|s| s.ident.to_string()).collect());
        syn::visit::visit_path(self, path);
    }
}

/// The module a path written in module `here` leads into, if it is one of the crate's.
fn leads_to(modules: &BTreeMap<Vec<String>, PathBuf>, here: &[String], path: &[String]) -> Option<Vec<String>> {
    let mut at = match path.first()?.as_str() {
        "crate" => Vec::new(),
        "self" | "super" => here.to_vec(),
        _ => return None,
    };
    for part in path {
        match part.as_str() {
            "crate" | "self" => {}
            "super" => {
                at.pop();
            }
            name => at.push(name.to_owned()),
        }
    }
    while !modules.contains_key(&at) {
        at.pop()?;
    }
    // The root lists the crate's parts; what is used through it is found where it stands.
    (!at.is_empty() && at != here).then_some(at)
}

/// Modules that use each other in a circle: what is left once all that use nothing, or only such, are taken away, from
/// both ends.
fn circles(mut uses: BTreeMap<Vec<String>, BTreeSet<Vec<String>>>) -> BTreeMap<Vec<String>, BTreeSet<Vec<String>>> {
    loop {
        let before = uses.len();
        let used: BTreeSet<Vec<String>> = uses.values().flatten().cloned().collect();
        uses.retain(|module, others| !others.is_empty() && used.contains(module));
        let left: BTreeSet<Vec<String>> = uses.keys().cloned().collect();
        uses.values_mut().for_each(|others| others.retain(|o| left.contains(o)));
        if uses.len() == before {
            return uses;
        }
    }
}

#[test]
fn no_files_use_each_other_in_a_circle() {
    let mut wrong = Vec::new();
    for (floor, _) in FLOORS {
        let modules = modules(&crates().join(floor).join("src"));
        let mut uses: BTreeMap<Vec<String>, BTreeSet<Vec<String>>> = BTreeMap::new();
        for (module, file) in &modules {
            let parsed = syn::parse_file(&std::fs::read_to_string(file).unwrap()).unwrap();
            let mut found = Uses::default();
            found.visit_file(&parsed);
            uses.insert(module.clone(), found.0.iter().filter_map(|p| leads_to(&modules, module, p)).collect());
        }
        for (module, others) in circles(uses) {
            let others: Vec<String> = others.iter().map(|o| o.join("/")).collect();
            wrong.push(format!("{floor}: {} uses {}", module.join("/"), others.join(", ")));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn a_circle_is_found_where_there_is_one() {
    let module = |name: &str| vec![name.to_owned()];
    let all = |pairs: &[(&str, &[&str])]| {
        pairs.iter().map(|(m, o)| (module(m), o.iter().map(|o| module(o)).collect())).collect::<BTreeMap<_, _>>()
    };
    let round = circles(all(&[("a", &["b"]), ("b", &["c", "d"]), ("c", &["a"]), ("d", &[]), ("e", &["a"])]));
    assert_eq!(round.keys().map(|m| m.join("")).collect::<String>(), "abc");
    assert!(circles(all(&[("a", &["b", "c"]), ("b", &["c"]), ("c", &[])])).is_empty());
}
