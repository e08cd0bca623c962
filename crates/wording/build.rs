//! Turns the English catalogue into Rust: one type a message with its arguments as named fields, so that a message that does
//! not exist, or an argument that is missing, does not compile. The other languages are held to it by tests.

// A build that cannot go on stops with what is wrong.
#![allow(clippy::unwrap_used, clippy::panic)]

use fluent_syntax::ast::{CallArguments, Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;
use std::collections::BTreeSet;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::{env, fs};

const LANGUAGES: [&str; 5] = ["en", "es", "de", "fr", "pt"];

fn main() {
    let root = PathBuf::from(env::var_os("CARGO_MANIFEST_DIR").unwrap()).join("catalogues");
    let out = PathBuf::from(env::var_os("OUT_DIR").unwrap());
    println!("cargo::rerun-if-changed=catalogues");
    println!("cargo::rerun-if-changed=build.rs");

    let mut code = String::new();
    for file in files(&root.join("en")) {
        let name = file.file_stem().unwrap().to_str().unwrap().to_owned();
        writeln!(code, "/// Messages of `{name}.ftl`.\npub mod {name} {{").unwrap();
        messages(&mut code, &name, &fs::read_to_string(&file).unwrap(), &file);
        writeln!(code, "}}").unwrap();
    }
    fs::write(out.join("messages.rs"), code).unwrap();

    // The files of a language, each with its name, as the program carries them.
    let mut sources = String::from("static SOURCES: &[(&str, &[(&str, &str)])] = &[\n");
    for language in LANGUAGES {
        writeln!(sources, "    ({language:?}, &[").unwrap();
        for file in files(&root.join(language)) {
            let name = file.file_stem().unwrap().to_str().unwrap();
            writeln!(sources, "        ({name:?}, include_str!({:?})),", file.display()).unwrap();
        }
        sources.push_str("    ]),\n");
    }
    sources.push_str("];\n");
    fs::write(out.join("sources.rs"), sources).unwrap();
}

fn files(folder: &Path) -> Vec<PathBuf> {
    let mut found: Vec<PathBuf> = fs::read_dir(folder)
        .unwrap_or_else(|why| panic!("{}: {why}", folder.display()))
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|e| e == "ftl"))
        .collect();
    found.sort();
    found
}

fn messages(code: &mut String, file: &str, text: &str, path: &Path) {
    let resource = match parser::parse(text) {
        Ok(resource) => resource,
        Err((_, errors)) => {
            let at: Vec<String> = errors
                .iter()
                .map(|e| format!("line {}: {}", text[..e.pos.start.min(text.len())].lines().count() + 1, e.kind))
                .collect();
            panic!("{} is no Fluent file: {}", path.display(), at.join("; "));
        }
    };
    for entry in resource.body {
        match entry {
            Entry::Message(message) => {
                let id = message.id.name;
                let prefix = format!("{}-", file.replace('_', "-"));
                let Some(short) = id.strip_prefix(&prefix) else {
                    panic!("{}: {id} must begin with {prefix}", path.display());
                };
                assert!(
                    message.attributes.is_empty(),
                    "{}: {id} has attributes; make messages of them",
                    path.display()
                );
                let pattern = message.value.unwrap_or_else(|| panic!("{}: {id} says nothing", path.display()));
                let mut names = BTreeSet::new();
                of_pattern(&pattern, &mut names);
                one(code, id, &short.replace('-', "_"), &names, &text_of(&pattern));
            }
            Entry::Term(_) | Entry::Comment(_) | Entry::GroupComment(_) | Entry::ResourceComment(_) => {}
            Entry::Junk { content } => panic!("{}: not understood: {content}", path.display()),
        }
    }
}

fn one(code: &mut String, id: &str, name: &str, arguments: &BTreeSet<String>, english: &str) {
    let name = if matches!(name, "where" | "type" | "move" | "match" | "in" | "for" | "as" | "use" | "yield" | "try") {
        format!("r#{name}")
    } else {
        name.to_owned()
    };
    writeln!(code, "/// {english}").unwrap();
    if arguments.is_empty() {
        writeln!(code, "#[derive(Debug)] pub struct {name} {{}}").unwrap();
        writeln!(code, "impl crate::Message for {name} {{ fn say(&self, locale: &crate::Locale) -> String {{ crate::catalogue::say(locale, {id:?}, &[]) }} fn kind(&self) -> Option<&'static str> {{ Some({id:?}) }} }}").unwrap();
        return;
    }
    writeln!(code, "#[derive(Debug)] pub struct {name}<'a> {{").unwrap();
    for argument in arguments {
        writeln!(code, "/// `${argument}` of the message.\npub {argument}: crate::Value<'a>,").unwrap();
    }
    writeln!(code, "}}").unwrap();
    writeln!(code, "impl crate::Message for {name}<'_> {{ fn say(&self, locale: &crate::Locale) -> String {{ crate::catalogue::say(locale, {id:?}, &[").unwrap();
    for argument in arguments {
        writeln!(code, "({argument:?}, &self.{argument}),").unwrap();
    }
    writeln!(code, "]) }} fn kind(&self) -> Option<&'static str> {{ Some({id:?}) }} }}").unwrap();
}

/// The plain parts of a pattern, for the documentation of what it becomes.
fn text_of(pattern: &Pattern<&str>) -> String {
    let mut text = String::new();
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => text.push_str(value),
            PatternElement::Placeable { .. } => text.push('\u{2026}'),
        }
    }
    text.replace(['\n', '['], " ").replace(']', " ")
}

fn of_pattern(pattern: &Pattern<&str>, names: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            of_expression(expression, names);
        }
    }
}

fn of_expression(expression: &Expression<&str>, names: &mut BTreeSet<String>) {
    match expression {
        Expression::Inline(inline) => of_inline(inline, names),
        Expression::Select { selector, variants } => {
            of_inline(selector, names);
            variants.iter().for_each(|v| of_pattern(&v.value, names));
        }
    }
}

fn of_inline(inline: &InlineExpression<&str>, names: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            names.insert(id.name.to_owned());
        }
        InlineExpression::FunctionReference { arguments, .. } => of_arguments(arguments, names),
        InlineExpression::TermReference { arguments: Some(arguments), .. } => of_arguments(arguments, names),
        InlineExpression::Placeable { expression } => of_expression(expression, names),
        InlineExpression::StringLiteral { .. }
        | InlineExpression::NumberLiteral { .. }
        | InlineExpression::MessageReference { .. }
        | InlineExpression::TermReference { .. } => {}
    }
}

fn of_arguments(arguments: &CallArguments<&str>, names: &mut BTreeSet<String>) {
    arguments.positional.iter().for_each(|a| of_inline(a, names));
    arguments.named.iter().for_each(|a| of_inline(&a.value, names));
}
