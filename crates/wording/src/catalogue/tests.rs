#![allow(clippy::unwrap_used, clippy::panic)]

use super::*;
use std::collections::BTreeSet;

#[derive(Debug, Default, PartialEq)]
struct Said {
    arguments: BTreeSet<String>,
    functions: BTreeSet<String>,
    selected: BTreeSet<String>,
    /// Some text for the category "one" does not write its number, and 0 has none of its own.
    one_unwritten: bool,
}

fn of_inline(inline: &InlineExpression<&str>, said: &mut Said) {
    match inline {
        InlineExpression::VariableReference { id } => drop(said.arguments.insert(id.name.to_owned())),
        InlineExpression::FunctionReference { id, .. } => drop(said.functions.insert(id.name.to_owned())),
        InlineExpression::MessageReference { id, .. } | InlineExpression::TermReference { id, .. } => {
            said.functions.insert(id.name.to_owned());
        }
        InlineExpression::Placeable { expression } => of_expression(expression, said),
        InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => {}
    }
}

fn of_expression(expression: &Expression<&str>, said: &mut Said) {
    match expression {
        Expression::Inline(inline) => of_inline(inline, said),
        Expression::Select { selector, variants } => {
            of_inline(selector, said);
            if let InlineExpression::VariableReference { id } = selector {
                said.selected.insert(id.name.to_owned());
                let none = variants.iter().any(|v| matches!(v.key, VariantKey::NumberLiteral { value: "0" }));
                let one = variants.iter().find(|v| matches!(v.key, VariantKey::Identifier { name: "one" }));
                let written = one.is_none_or(|v| {
                    let mut inside = Said::default();
                    of_pattern(&v.value, &mut inside);
                    inside.arguments.contains(id.name)
                });
                said.one_unwritten |= !none && !written;
            }
            variants.iter().for_each(|v| of_pattern(&v.value, said));
        }
    }
}

fn of_pattern(pattern: &Pattern<&str>, said: &mut Said) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            of_expression(expression, said);
        }
    }
}

fn messages(language: Language) -> BTreeMap<String, Said> {
    let mut all = BTreeMap::new();
    for (file, text) in sources(language) {
        let resource = parser::parse(*text).unwrap_or_else(|(_, why)| panic!("{language:?} {file}: {why:?}"));
        for entry in resource.body {
            match entry {
                Entry::Message(m) => {
                    let mut said = Said::default();
                    of_pattern(
                        m.value.as_ref().unwrap_or_else(|| panic!("{file}: {} says nothing", m.id.name)),
                        &mut said,
                    );
                    let before = all.insert(m.id.name.to_owned(), said);
                    assert!(before.is_none(), "{language:?} {file}: {} stands twice", m.id.name);
                }
                Entry::Junk { content } => panic!("{language:?} {file}: not understood: {content}"),
                Entry::Term(_) | Entry::Comment(_) | Entry::GroupComment(_) | Entry::ResourceComment(_) => {}
            }
        }
    }
    all
}

#[test]
fn every_language_has_every_message_with_its_arguments_and_no_other() {
    let english = messages(Language::En);
    assert!(!english.is_empty());
    let mut faults = Vec::new();
    for language in Language::ALL {
        let own = messages(language);
        for (id, said) in &english {
            match own.get(id) {
                None => faults.push(format!("{} lacks {id}", language.tag())),
                // An argument may be left out where the language needs none; one that English has not is never given.
                Some(other) if !other.arguments.is_subset(&said.arguments) => {
                    faults.push(format!("{}: {id} asks for {:?}", language.tag(), other.arguments));
                }
                Some(_) => {}
            }
        }
        faults.extend(
            own.keys()
                .filter(|id| !english.contains_key(*id))
                .map(|id| format!("{}: {id} is not in English", language.tag())),
        );
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn every_message_is_said_without_a_fault() {
    for (language, bundle) in &CATALOGUES.by_language {
        for (id, said) in messages(*language) {
            let mut given = FluentArgs::new();
            for name in &said.arguments {
                given.set(name.clone(), 2);
            }
            let mut faults = Vec::new();
            let text =
                bundle.format_pattern(bundle.get_message(&id).unwrap().value().unwrap(), Some(&given), &mut faults);
            assert!(faults.is_empty() && !text.trim().is_empty(), "{language:?} {id}: {text:?} {faults:?}");
        }
    }
}

/// In French and Portuguese 0 falls under "one" too (Unicode CLDR), so a text such as "une fois" is chosen by the number 1.
#[test]
fn a_text_for_one_is_not_said_of_none() {
    for language in [Language::Fr, Language::Pt] {
        let of_none: Vec<String> =
            messages(language).into_iter().filter(|(_, said)| said.one_unwritten).map(|(id, _)| id).collect();
        assert!(of_none.is_empty(), "{language:?} says one of none: {of_none:?}");
    }
}

#[test]
fn client_messages_use_only_what_the_scripts_read() {
    for language in Language::ALL {
        for (id, said) in messages(language).iter().filter(|(id, _)| id.starts_with("client")) {
            assert!(said.functions.is_empty(), "{language:?} {id}: {:?}", said.functions);
        }
    }
}

#[test]
fn the_stand_in_is_a_third_longer() {
    let text = "Show the words, one after the other";
    let longer = stretched(text);
    #[allow(clippy::cast_precision_loss)]
    let ratio = longer.chars().count() as f64 / text.len() as f64;
    assert!((1.2..1.5).contains(&ratio), "{ratio}: {longer}");
    assert_eq!(Locale::PSEUDO.percent(0.5), "\u{2068}50\u{2069}%");
}

#[test]
fn a_date_with_a_full_stop_ends_its_sentence_without_a_second_one() {
    let mut stops = 0;
    for l in Language::ALL.map(Locale::of) {
        for month in 1..=12 {
            let day: sayso_model::Day = format!("2026-{month:02}-26").parse().unwrap();
            let day = l.weekday_date(day);
            let said =
                crate::say!(&l, because::lasting_guarding, name = "Bo", count = 1, days = 28, last = "x", day = &day);
            assert!(said.ends_with('.') && !said.ends_with(".."), "{said}");
            stops += usize::from(day.ends_with('.'));
        }
    }
    assert!(stops > 0, "some language shortens a month with a full stop");
    assert_eq!(one_stop("Wait... Nov..".to_owned(), &[("day", &Value::from("Nov."))]), "Wait... Nov.");
}
