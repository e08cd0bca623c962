//! No estimator without a reader.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod reach;
mod source;

use reach::Graph;
use sayso_web::pages::methods::METHODS;
use sayso_wording::Locale;
use source::{Name, Sources};
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

fn crates() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap().to_owned()
}

fn sources() -> Sources {
    let mut sources = Sources::default();
    for name in ["methods", "advisor", "wording", "paper", "web", "host", "cli"] {
        sources.add(name, &crates().join(name).join("src"));
    }
    sources
}

/// Crates of pages and commands.
const FACES: [&str; 3] = ["web", "host", "cli"];

fn written(name: &Name) -> String {
    name.join("::")
}

/// Items that nobody is shown, because the one shown is held against them: by published values that exist for this form
/// alone, or in the laboratory. Each with what it is held against.
const COMPARED: [(&str, &str); 7] = [
    (
        "methods::learning::curve::learning_curve",
        "the published curve, by which the filter of the curve shown is checked",
    ),
    ("methods::learning::curve::CurveSettings", "how the published curve is fitted"),
    ("methods::likes::bradley_terry::bradley_terry", "published strengths of the fit shown, from a table of wins"),
    ("methods::likes::bradley_terry::fit_pairs", "the fit shown, with all trials of one sitting"),
    ("methods::likes::plackett_luce::plackett_luce", "published strengths of the fit shown, from rankings"),
    ("methods::likes::plackett_luce::fit_rankings", "the fit shown, with all rankings counting alike"),
    ("methods::likes::trial::Ranking::complete", "a ranking as published examples have it"),
];

#[test]
fn every_public_item_of_methods_and_advisor_is_reached_from_a_page_or_a_command() {
    let sources = sources();
    let reached = Graph::of(&sources).reached(|name| FACES.contains(&name[0].as_str()));
    let public = sources.nodes.iter().filter(|(name, node)| {
        ["methods", "advisor"].contains(&name[0].as_str()) && node.public && !reached.contains(*name)
    });
    let mut without: Vec<String> = public.map(|(name, _)| written(name)).collect();
    for (name, why) in COMPARED {
        let listed = without.iter().position(|w| w == name);
        without.remove(listed.unwrap_or_else(|| panic!("{name} ({why}) is gone or reached: take it off the list")));
    }
    assert!(
        without.is_empty(),
        "{} public items are reached by no page, command or advice, only by tests, benches or the laboratory. \
         Show each where a person needs it, or delete it with its tests, reference values and page:\n{}",
        without.len(),
        without.join("\n")
    );
}

/// Modules that only hold what methods share: types, algebra, random draws.
const SHARED: [&str; 11] = [
    "agreement",
    "demand",
    "learning",
    "likes",
    "single_case",
    "stats::interval",
    "stats::p_method",
    "stats::special",
    "understanding",
    "likes::draws",
    "stats",
];

#[test]
fn the_page_of_methods_lists_just_what_is_used_and_where() {
    let sources = sources();
    let graph = Graph::of(&sources);
    // Modules of methods in which something public is reached from these roots.
    let used = |root: &dyn Fn(&Name) -> bool| -> BTreeSet<String> {
        let reached = graph.reached(root);
        let public = reached.iter().filter(|name| name[0] == "methods" && sources.nodes[*name].public);
        public.map(|name| sources.module_of(name)[1..].join("::")).collect()
    };
    let listed: BTreeSet<String> =
        METHODS.iter().flat_map(|(_, all)| *all).flat_map(|m| m.code).map(|c| (*c).to_owned()).collect();
    let shared: BTreeSet<String> = SHARED.iter().map(|s| (*s).to_owned()).collect();
    let all = used(&|name| FACES.contains(&name[0].as_str()));
    let missing: Vec<_> = all.iter().filter(|m| !listed.contains(*m) && !shared.contains(*m)).collect();
    assert!(
        missing.is_empty(),
        "used, but not on the page of methods (crates/web/src/pages/methods/list.rs): {missing:?}"
    );
    let gone: Vec<_> = listed.iter().filter(|m| !all.contains(*m)).collect();
    assert!(gone.is_empty(), "on the page of methods, but used nowhere: {gone:?}");

    let by_command = used(&|name| name[0] == "cli");
    let args = std::fs::read_to_string(crates().join("cli/src/args.rs")).unwrap();
    let mut by_page = BTreeMap::new();
    for method in METHODS.iter().flat_map(|(_, all)| *all) {
        let name = (method.name)(&Locale::ENGLISH);
        assert!(!method.pages.is_empty() || !method.commands.is_empty(), "{}: shown nowhere", name);
        for page in method.pages {
            let used = by_page.entry(*page).or_insert_with(|| {
                used(&|name| name[0] == "web" && name.len() > 3 && name[1] == "pages" && name[2] == *page)
            });
            let shows = method.code.iter().any(|code| used.contains(*code));
            assert!(shows, "{}: the page {page} reaches none of {:?}", name, method.code);
        }
        for command in method.commands {
            let variant = format!("    {}{}", command[..1].to_uppercase(), &command[1..]);
            let there = [" {", "("].iter().any(|end| args.contains(&format!("{variant}{end}")));
            assert!(there, "{}: there is no command {command}", name);
            let tells = method.code.iter().any(|code| by_command.contains(*code));
            assert!(tells, "{}: no command reaches any of {:?}", name, method.code);
        }
    }
}

#[test]
fn pages_of_methods_name_only_code_there_is_and_every_page_is_listed() {
    let docs = crates().parent().unwrap().join("docs/methods");
    let mut listed: BTreeSet<&str> = METHODS.iter().flat_map(|(_, all)| *all).map(|m| m.page).collect();
    // Hearing is the floor beside the methods; the simulator stands below them.
    listed.extend(["hearing", "rehearsal", "simulator"]);
    let mut said = String::new();
    for name in ["methods", "advisor", "web", "cli", "model", "sim", "rehearse", "listen"] {
        all_text(&crates().join(name).join("src"), &mut said);
    }
    for file in std::fs::read_dir(&docs).unwrap().map(|f| f.unwrap().path()) {
        let page = file.file_stem().unwrap().to_string_lossy().into_owned();
        assert!(listed.remove(page.as_str()), "docs/methods/{page}.md is no page of any method listed");
        let text = std::fs::read_to_string(&file).unwrap();
        // Code outside of blocks: names with an underscore, and paths of such.
        for code in text.split("```").step_by(2).flat_map(|prose| prose.split('`').skip(1).step_by(2)) {
            let parts: Vec<&str> = code.split("::").collect();
            let names = parts.iter().all(|p| !p.is_empty() && p.chars().all(|c| c.is_ascii_alphanumeric() || c == '_'));
            let is_code = names && (parts.len() > 1 || (code.contains('_') && code.chars().any(|c| c.is_lowercase())));
            let gone: Vec<_> = parts.iter().filter(|p| is_code && !said.contains(**p)).collect();
            assert!(gone.is_empty(), "docs/methods/{page}.md names `{code}`, but there is no {gone:?} in the sources");
        }
    }
    assert!(listed.is_empty(), "pages of methods that are not there: {listed:?}");
}

/// The text of every source below a folder.
fn all_text(folder: &Path, all: &mut String) {
    for path in std::fs::read_dir(folder).unwrap().map(|f| f.unwrap().path()) {
        if path.is_dir() {
            all_text(&path, all);
        } else if path.extension().is_some_and(|e| e == "rs") {
            all.push_str(&std::fs::read_to_string(&path).unwrap());
        }
    }
}
