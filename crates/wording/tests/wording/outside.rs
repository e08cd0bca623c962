//! Text that a person reads stands in the catalogues and nowhere else. Finds it in the sources of the crates that speak to
//! people: string literals that look like words, outside of what only programs or the log read.

use proc_macro2::{TokenStream, TokenTree};
use sayso_model::facts::lessons;
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

/// Crates whose text people read.
const READ: [&str; 6] = ["advisor", "cli", "host", "notebook", "paper", "web"];

/// What programmers read stays in English: the description of the HTTP interface.
const FOR_PROGRAMMERS: [&str; 4] =
    ["advisor/src/desk/line.rs", "host/src/health.rs", "web/src/api/openapi.rs", "web/src/api/view.rs"];

/// Names that are the same in every language: the program's own, alone, before a message or in a certificate; systems, as a
/// browser calls them; and a sound in what `sayso listen` prints for programs.
const NAMES: [&str; 9] = [
    "Sayso",
    "sayso: {why}",
    "Sayso at home",
    "Sayso home notebook",
    "standard input",
    "Android",
    "Windows",
    "Macintosh",
    "Linux",
];

/// Functions whose texts no person reads on a page or in a command's answer: failures of ours, which go to the log, headers
/// of HTTP, and what a debugger prints.
const UNREAD_OF: [&str; 3] = ["internal", "from_static", "debug_struct"];

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
const FOR_PROGRAMS: [&str; 34] = [
    // What may be sent, in the message that a field is none of it.
    "names",
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

/// Whether a text is a cookie or the range of a part, as HTTP has them (RFC 6265, 4.1; RFC 9110, 14.4).
fn of_http(text: &str) -> bool {
    text.contains("; Path=/") || text.starts_with("bytes {")
}

/// Whether a text is a list of citations, each with its year at the end: the same in every language.
fn cited(text: &str) -> bool {
    text.split("; ").all(|part| {
        part.rsplit_once(' ').is_some_and(|(who, year)| {
            let authors = !who.contains(' ') || who.contains(" & ") || who.ends_with(" et al.");
            authors && year.len() == 4 && year.bytes().all(|b| b.is_ascii_digit())
        })
    })
}

/// Whether a literal reads like words: two words in a row, or one that begins a label.
fn words(text: &str) -> bool {
    if text.contains("=\"") || of_http(text) || cited(text) {
        return false;
    }
    let mut places = text.split(|c: char| c.is_whitespace()).filter(|w| !w.is_empty());
    // A place for an argument is no word, but stands beside one.
    let place = |w: &str| w.contains('{');
    let word = |w: &str| {
        let bare = w.trim_matches(|c: char| !c.is_alphanumeric());
        !place(w)
            && bare.chars().count() > 1
            && bare.chars().all(|c| c.is_alphabetic() || c == '\'' || c == '\u{2019}' || c == '-')
    };
    let two = text.split_whitespace().collect::<Vec<_>>().windows(2).any(|pair| {
        let worded = |w: &str| word(w) || place(w);
        worded(pair[0]) && worded(pair[1]) && (word(pair[0]) || word(pair[1]))
    });
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
                let read_by_none = UNREAD_OF.contains(&name.as_str());
                if read_by_none
                    && matches!(bang, Some(TokenTree::Group(g)) if g.delimiter() == proc_macro2::Delimiter::Parenthesis)
                {
                    i += 2;
                    continue;
                }
                // `name="..."` of an attribute; `data-name="..."` begins with `data` and a dash.
                let dashed = matches!(all.get(i.wrapping_sub(1)), Some(TokenTree::Punct(p)) if p.as_char() == '-');
                let equals = matches!(bang, Some(TokenTree::Punct(p)) if p.as_char() == '=');
                // `class=(format!("..."))`: made of more than one class.
                if equals && !dashed && name == "class" && matches!(group, Some(TokenTree::Group(_))) {
                    i += 3;
                    continue;
                }
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
    let mut faults = String::new();
    for (file, texts) in outside() {
        for (line, text) in texts {
            writeln!(faults, "crates/{file}:{line}: {text:?}").unwrap();
        }
    }
    assert!(faults.is_empty(), "text outside the catalogues (crates/wording/catalogues); say it by `say!`:\n{faults}");
}

/// Text in a script that reads like words: not in comments, imports, errors for programmers, or names of classes.
fn of_script(script: &str) -> Vec<(usize, String)> {
    let mut found = Vec::new();
    let mut comment = false;
    for (number, line) in script.lines().enumerate() {
        let line = line.trim();
        comment |= line.starts_with("/*");
        let skipped = comment
            || line.starts_with("//")
            || ["import ", "Error(", "console.", "class:", "className", "querySelector", "find("]
                .iter()
                .any(|s| line.contains(s));
        comment &= !line.contains("*/");
        if skipped {
            continue;
        }
        let code = line.split(" // ").next().unwrap_or_default();
        for quote in ['"', '`'] {
            let texts = code.split(quote).skip(1).step_by(2).filter(|text| words(text) && !text.contains(['[', '{']));
            found.extend(texts.map(|text| (number + 1, text.to_owned())));
        }
    }
    found
}

/// What is written into the log by a script, whatever the reader's language, and names of events of the browser.
const STORED: [&str; 5] = ["looked at it", "went to it", "brought it", "touched me", "cannot be read by the notebook"];

#[test]
fn the_scripts_say_nothing_of_their_own() {
    let mut faults = String::new();
    for entry in std::fs::read_dir(crates().join("web/src/client")).unwrap() {
        let path = entry.unwrap().path();
        for (line, text) in of_script(&std::fs::read_to_string(&path).unwrap()) {
            let label = !text.contains(' ');
            if !label && !STORED.contains(&text.as_str()) && !text.contains("${") {
                writeln!(faults, "{}:{line}: {text:?}", path.file_name().unwrap().to_string_lossy()).unwrap();
            }
        }
    }
    assert!(faults.is_empty(), "text outside the catalogues; say it by `say(\"client-...\")`:\n{faults}");
    assert_eq!(of_script("text(at, \"Nothing was heard.\"); // not said"), [(1, "Nothing was heard.".to_owned())]);
}

#[test]
fn words_are_told_from_names_for_programs() {
    for text in ["Not here", "Today", "It is here.", "wait for it"] {
        assert!(words(text), "{text}");
    }
    for text in ["Seen here since 2004", "Levene 1960; or so", "It is at Path=/"] {
        assert!(words(text), "{text}");
    }
    for text in ["Smith et al. 2004; Hand et al. 2010", "{NAME}={value}; Path=/; Max-Age=9", "bytes {from}-{to}/{all}"]
    {
        assert!(!words(text), "{text}");
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
    assert_eq!(found(r#"html! { p class=(format!("pads cols-{}", n)) { (named("It is so")) } }"#), ["It is so"]);
    assert!(found(r#"Error::internal("It is broken"); words!(faults::one_of, names = "home, signs");"#).is_empty());
    assert!(found(r#"tracing::info!("Told to stop."); #[doc = "It is so"] struct A; #[cfg(test)] mod t { fn a() { "It is so"; } }"#).is_empty());
}

/// Every English message by the name its user writes: `file::message`, or its id in the client's scripts.
fn messages() -> Vec<(String, String)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("catalogues/en");
    let mut all = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let file = path.file_stem().unwrap().to_string_lossy().into_owned();
        let prefix = format!("{}-", file.replace('_', "-"));
        for line in std::fs::read_to_string(&path).unwrap().lines() {
            let id = line.split(' ').next().unwrap_or_default();
            if let Some(name) = id.strip_prefix(&prefix).filter(|_| line.contains('=')) {
                all.push((id.to_owned(), format!("{file}::{}", name.replace('-', "_"))));
            }
        }
    }
    all
}

/// Messages that facts find by their ids: `facts.rs`, of lessons `lessons.rs`, holds that each fact has its own and none is over.
const OF_FACTS: [&str; 13] = [
    "hazards-food-",
    "hazards-why-",
    "hazards-other-",
    "hazards-harm-",
    "hazards-act-",
    "hazards-brief-",
    "hazards-source-",
    "signs-see-",
    "signs-act-",
    "practice-what-",
    "practice-value-",
    "practice-source-",
    "lesson-facts-",
];

#[test]
fn every_message_is_said_somewhere() {
    let mut text = String::new();
    for entry in std::fs::read_dir(crates()).unwrap() {
        let src = entry.unwrap().path().join("src");
        let mut files = Vec::new();
        if src.is_dir() {
            sources(&src, &mut files);
            let client = src.join("client");
            if client.is_dir() {
                files.extend(std::fs::read_dir(client).unwrap().map(|f| f.unwrap().path()));
            }
        }
        for file in files {
            text += &std::fs::read_to_string(file).unwrap().replace("::r#", "::");
        }
    }
    // Whole names only: `today::word` is not said by `today::words`.
    let named = |name: &str| {
        text.match_indices(name).any(|(at, _)| {
            let after = text[at + name.len()..].chars().next();
            after.is_none_or(|c| !c.is_alphanumeric() && c != '_' && c != '-')
        })
    };
    // A script may choose the end of an id: `client-board-level-${level}`.
    let chosen = |id: &str| id.match_indices('-').any(|(at, _)| text.contains(&format!("`{}${{", &id[..=at])));
    let said = |id: &str, name: &str| {
        // Commands and arguments find theirs by their names: a test of `cli` holds that none is over.
        let of_lesson = lessons().iter().any(|lesson| id.starts_with(&format!("lessons-{}-", lesson.id)));
        if id.starts_with("help-") || of_lesson || OF_FACTS.iter().any(|kind| id.starts_with(kind)) {
            return true;
        }
        if id.starts_with("client") { named(&format!("\"{id}\"")) || chosen(id) } else { named(name) }
    };
    let unsaid: Vec<String> = messages().into_iter().filter(|(id, name)| !said(id, name)).map(|(id, _)| id).collect();
    assert!(unsaid.is_empty(), "nobody says these messages; take them out of every catalogue: {unsaid:?}");
}
