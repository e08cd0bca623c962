//! Text that a person reads stands in the catalogues and nowhere else. Finds it in the sources of the crates that speak to
//! people: string literals that look like words, outside of what only programs or the log read.
#![allow(clippy::unwrap_used, clippy::panic, missing_docs)]

use proc_macro2::{TokenStream, TokenTree};
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

/// Crates whose text people read.
const READ: [&str; 5] = ["advisor", "cli", "notebook", "paper", "web"];

/// Files and folders whose text has not been moved yet. This list may only become shorter.
const NOT_YET: &str = include_str!("not_yet.txt");

/// What programmers read stays in English: the description of the HTTP interface.
const FOR_PROGRAMMERS: [&str; 2] = ["web/src/api/openapi.rs", "web/src/api/view.rs"];

/// The program's own name, alone or before a message.
const NAMES: [&str; 2] = ["Sayso", "sayso: {why}"];

/// Macros whose texts no person reads on a page or in a command's answer: the log, tests, programming errors.
const UNREAD: [&str; 12] = [
    "info",
    "warn",
    "error",
    "debug",
    "trace",
    "assert",
    "assert_eq",
    "debug_assert",
    "debug_assert_eq",
    "unreachable",
    "concat",
    "env",
];

/// Attributes of elements that programs read.
const FOR_PROGRAMS: [&str; 33] = [
    "class",
    "id",
    "href",
    "src",
    "type",
    "name",
    "value",
    "for",
    "rel",
    "method",
    "action",
    "role",
    "accept",
    "enctype",
    "inputmode",
    "autocomplete",
    "autocapitalize",
    "spellcheck",
    "pattern",
    "list",
    "lang",
    "dir",
    "viewBox",
    "d",
    "fill",
    "stroke",
    "transform",
    "content",
    "charset",
    "style",
    "crossorigin",
    "sizes",
    "points",
];

fn crates() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap().to_owned()
}

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|e| e == "rs") && path.file_stem().is_none_or(|s| s != "tests") {
            found.push(path);
        }
    }
}

/// Whether a literal reads like words: two words in a row, or one that begins a label.
fn words(text: &str) -> bool {
    let mut places = text.split(|c: char| c.is_whitespace()).filter(|w| !w.is_empty());
    let word = |w: &str| {
        let bare = w.trim_matches(|c: char| !c.is_alphanumeric());
        bare.chars().count() > 1 && bare.chars().all(|c| c.is_alphabetic() || c == '\'' || c == '\u{2019}' || c == '-')
    };
    let two = text.split_whitespace().collect::<Vec<_>>().windows(2).any(|pair| word(pair[0]) && word(pair[1]));
    let label = places.next().is_some_and(|w| {
        word(w) && w.starts_with(char::is_uppercase) && w.chars().skip(1).all(|c| !c.is_uppercase()) && text == w
    });
    two || label
}

/// Walks tokens; literals of attributes for programs, of unread macros and of `#[...]` are passed over.
fn walk(tokens: TokenStream, found: &mut Vec<(usize, String)>) {
    let all: Vec<TokenTree> = tokens.into_iter().collect();
    let mut i = 0;
    while i < all.len() {
        match &all[i] {
            // `#[...]` and `#![...]`, but `#{...}` and `#name` of markup go on.
            TokenTree::Punct(p) if p.as_char() == '#' => {
                let next = if matches!(all.get(i + 1), Some(TokenTree::Punct(p)) if p.as_char() == '!') {
                    i + 2
                } else {
                    i + 1
                };
                if let Some(TokenTree::Group(g)) = all.get(next)
                    && g.delimiter() == proc_macro2::Delimiter::Bracket
                {
                    // What stands under `#[cfg(test)]` is for tests: skip to the end of that item.
                    let test = g.stream().to_string().replace(' ', "");
                    i = next + 1;
                    if test.starts_with("cfg(test") || test == "test" {
                        while i < all.len() {
                            let ends = match &all[i] {
                                TokenTree::Group(g) => g.delimiter() == proc_macro2::Delimiter::Brace,
                                TokenTree::Punct(p) => p.as_char() == ';',
                                _ => false,
                            };
                            i += 1;
                            if ends {
                                break;
                            }
                        }
                    }
                    continue;
                }
            }
            TokenTree::Ident(name) => {
                let name = name.to_string();
                let (bang, group) = (all.get(i + 1), all.get(i + 2));
                if matches!(bang, Some(TokenTree::Punct(p)) if p.as_char() == '!')
                    && matches!(group, Some(TokenTree::Group(_)))
                    && UNREAD.contains(&name.as_str())
                {
                    i += 3;
                    continue;
                }
                // `name="..."` of an attribute; `data-name="..."` begins with `data` and a dash.
                let dashed = matches!(all.get(i.wrapping_sub(1)), Some(TokenTree::Punct(p)) if p.as_char() == '-');
                let equals = matches!(bang, Some(TokenTree::Punct(p)) if p.as_char() == '=');
                if equals && matches!(group, Some(TokenTree::Literal(_))) {
                    let before: String = all[..i].iter().rev().take(2).map(ToString::to_string).collect();
                    let aria = dashed && before.starts_with("-aria");
                    let read = aria && ["label", "valuetext", "roledescription"].contains(&name.as_str());
                    if (dashed && !read) || FOR_PROGRAMS.contains(&name.as_str()) {
                        i += 3;
                        continue;
                    }
                }
            }
            TokenTree::Literal(literal) => {
                if let Ok(text) = syn::parse_str::<syn::LitStr>(&literal.to_string())
                    && words(&text.value())
                    && !NAMES.contains(&text.value().as_str())
                {
                    found.push((literal.span().start().line, text.value()));
                }
            }
            TokenTree::Group(group) => walk(group.stream(), found),
            TokenTree::Punct(_) => {}
        }
        i += 1;
    }
}

fn outside() -> BTreeMap<String, Vec<(usize, String)>> {
    let mut all = BTreeMap::new();
    for name in READ {
        let mut files = Vec::new();
        sources(&crates().join(name).join("src"), &mut files);
        for path in files {
            let text = std::fs::read_to_string(&path).unwrap();
            let mut found = Vec::new();
            walk(text.parse().unwrap_or_else(|why| panic!("{}: {why}", path.display())), &mut found);
            let file = path.strip_prefix(crates()).unwrap().to_string_lossy().replace('\\', "/");
            if !found.is_empty() && !FOR_PROGRAMMERS.contains(&file.as_str()) {
                all.insert(file, found);
            }
        }
    }
    all
}

#[test]
fn text_stands_in_the_catalogues_only() {
    let not_yet: Vec<&str> = NOT_YET.lines().filter(|l| !l.is_empty() && !l.starts_with('#')).collect();
    let found = outside();
    let mut faults = String::new();
    for (file, texts) in &found {
        if !not_yet.iter().any(|place| file.starts_with(place)) {
            for (line, text) in texts {
                writeln!(faults, "crates/{file}:{line}: {text:?}").unwrap();
            }
        }
    }
    assert!(faults.is_empty(), "text outside the catalogues (crates/wording/catalogues); say it by `say!`:\n{faults}");
    let done: Vec<_> = not_yet.iter().filter(|place| !found.keys().any(|file| file.starts_with(**place))).collect();
    assert!(
        done.is_empty(),
        "all text of these has been moved; take them out of crates/wording/tests/not_yet.txt: {done:?}"
    );
}

#[test]
fn words_are_told_from_names_for_programs() {
    for text in ["Not here", "Today", "It is here.", "wait for it"] {
        assert!(words(text), "{text}");
    }
    for text in ["client/board.js", "a b", "data-test", "SELECT", "snake_case", "%d"] {
        assert!(!words(text), "{text}");
    }
    let found = |code: &str| {
        let mut found = Vec::new();
        walk(code.parse().unwrap(), &mut found);
        found.into_iter().map(|f| f.1).collect::<Vec<_>>()
    };
    assert_eq!(found(r#"html! { p class="two words" aria-label="Say it" { "Hello you" } }"#), ["Say it", "Hello you"]);
    assert!(found(r#"tracing::info!("Told to stop."); #[doc = "It is so"] struct A; #[cfg(test)] mod t { fn a() { "It is so"; } }"#).is_empty());
}
