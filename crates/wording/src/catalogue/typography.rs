//! Spaces and percents, as each language writes them.
#![allow(clippy::unwrap_used, clippy::panic)]

use super::*;

/// Lines of a language's catalogues without their comments, with the names of their files.
fn lines(language: Language) -> impl Iterator<Item = (&'static str, &'static str)> {
    let of_file = |(file, text): &'static (&'static str, &'static str)| text.lines().map(move |line| (*file, line));
    sources(language).iter().flat_map(of_file).filter(|(_, line)| !line.starts_with('#'))
}

/// Whether French wants a space that does not break between the two.
fn together(before: &str, after: char) -> bool {
    match after {
        ';' | '?' | '!' | ':' | '»' | '%' => before.ends_with(' ') || before.ends_with("{ \" \" }"),
        ' ' => before.ends_with('«'),
        _ => false,
    }
}

/// What separates parts of a message in the syntax of catalogues begins no text.
fn loose(line: &str) -> Option<&str> {
    let at = line.char_indices().find(|(at, c)| together(&line[..*at], *c) && !line[..*at].trim().is_empty());
    at.map(|(at, _)| &line[..at])
}

#[test]
fn french_keeps_its_signs_on_the_line_of_their_word() {
    assert!(loose("a-b = Assez ?").is_some() && loose("a-b = « mot »").is_some() && loose("} : { $x }").is_some());
    assert!(loose("   *[other] { \" \" }; { $name }").is_some() && loose("a-b = 50 %").is_some());
    assert!(loose("a-b = Assez\u{202f}? «\u{a0}mot\u{a0}»\u{a0}: 50\u{202f}%; ou").is_none());
    let torn: Vec<String> =
        lines(Language::Fr).filter_map(|(file, line)| loose(line).map(|before| format!("{file}: {before}|"))).collect();
    assert!(torn.is_empty(), "{} places:\n{}", torn.len(), torn.join("\n"));
}

#[test]
fn a_percent_that_is_typed_reads_as_one_that_is_computed() {
    let mut typed = 0;
    for language in Language::ALL {
        let computed = Locale::of(language).percent(0.5);
        let sign = computed.trim_start_matches("50");
        for (file, line) in lines(language).filter(|(_, line)| !line.starts_with("unit-percent")) {
            for (at, _) in line.match_indices('%') {
                let before = line[..at].trim_end_matches([' ', '\u{a0}', '\u{202f}']);
                // "95-%-Intervall" is one word; a sign alone is a unit.
                if before.ends_with(|c: char| c.is_ascii_digit() || c == '}') {
                    typed += 1;
                    assert_eq!(&line[before.len()..=at], sign, "{language:?} {file}: {line}");
                }
            }
        }
    }
    assert!(typed > 100, "{typed}");
}
