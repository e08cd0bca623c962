//! Arguments that make no sense, told in the reader's language.

use crate::args::WrongValue;
use crate::help::without_heading;
use clap::error::{ContextKind, ContextValue, ErrorKind};
use sayso_wording::{Locale, Message, say};
use std::error::Error;

/// What the program ends with where its arguments make no sense.
pub const CODE: u8 = 2;

/// What is wrong, what may have been meant, and how the command is used.
pub fn told(l: &Locale, why: &clap::Error) -> String {
    let mut told = what(l, why);
    let meant = [ContextKind::SuggestedSubcommand, ContextKind::SuggestedArg, ContextKind::SuggestedValue];
    if let Some(meant) = meant.into_iter().find_map(|kind| text(why, kind)) {
        told = format!("{told}. {}", say!(l, usage::did_you_mean, known = meant));
    }
    if let Some(ContextValue::StyledStr(usage)) = why.get(ContextKind::Usage) {
        let usage = usage.to_string();
        told = format!("{told}\n\n{} {}", say!(l, usage::heading), without_heading(&usage));
    }
    format!("{told}\n\n{}", say!(l, usage::more))
}

/// What is wrong. Never clap's own words.
fn what(l: &Locale, why: &clap::Error) -> String {
    let of = |kind| text(why, kind).unwrap_or_default();
    let number = |kind| match why.get(kind) {
        Some(ContextValue::Number(n)) => n.to_string(),
        _ => String::new(),
    };
    let argument = of(ContextKind::InvalidArg);
    match why.kind() {
        ErrorKind::UnknownArgument => say!(l, usage::unknown_argument, argument = argument),
        ErrorKind::InvalidSubcommand => say!(l, usage::unknown_command, command = of(ContextKind::InvalidSubcommand)),
        ErrorKind::InvalidValue | ErrorKind::ValueValidation => wrong_value(l, why, &argument),
        ErrorKind::NoEquals => say!(l, usage::equals, argument = argument),
        ErrorKind::TooManyValues => {
            say!(l, usage::too_many, argument = argument, value = of(ContextKind::InvalidValue))
        }
        ErrorKind::TooFewValues => {
            let (least, found) = (number(ContextKind::MinValues), number(ContextKind::ActualNumValues));
            say!(l, usage::too_few, argument = argument, least = least, found = found)
        }
        ErrorKind::WrongNumberOfValues => {
            let (right, found) = (number(ContextKind::ExpectedNumValues), number(ContextKind::ActualNumValues));
            say!(l, usage::other_number, argument = argument, right = right, found = found)
        }
        ErrorKind::ArgumentConflict => conflict(l, why, argument),
        ErrorKind::MissingRequiredArgument => say!(l, usage::missing, arguments = argument),
        ErrorKind::MissingSubcommand => {
            let (command, known) = (of(ContextKind::InvalidSubcommand), of(ContextKind::ValidSubcommand));
            say!(l, usage::missing_command, command = command, known = known)
        }
        ErrorKind::InvalidUtf8 => say!(l, usage::not_utf8),
        // What a later version of the parser finds, or the system when it writes.
        _ => say!(l, usage::not_understood),
    }
}

fn wrong_value(l: &Locale, why: &clap::Error, argument: &str) -> String {
    let value = text(why, ContextKind::InvalidValue).unwrap_or_default();
    let known = text(why, ContextKind::ValidValue);
    match why.source().and_then(|source| source.downcast_ref::<WrongValue>()) {
        _ if value.is_empty() && known.is_none() => say!(l, usage::needs_value, argument = argument),
        _ if value.is_empty() => {
            say!(l, usage::needs_one_of, argument = argument, known = known.unwrap_or_default())
        }
        Some(time @ WrongValue::Time(_)) => say!(l, usage::wrong_time, argument = argument, what = time.say(l)),
        Some(wanted) => say!(l, usage::wrong_value, argument = argument, value = value, wanted = wanted.say(l)),
        None => match known {
            Some(known) => {
                let wanted = say!(l, usage::one_of, known = known);
                say!(l, usage::wrong_value, argument = argument, value = value, wanted = wanted)
            }
            None => say!(l, usage::unfit_value, argument = argument, value = value),
        },
    }
}

fn conflict(l: &Locale, why: &clap::Error, argument: String) -> String {
    let argument =
        if argument.is_empty() { text(why, ContextKind::InvalidSubcommand).unwrap_or_default() } else { argument };
    match text(why, ContextKind::PriorArg) {
        Some(other) if other == argument => say!(l, usage::twice, argument = argument),
        Some(other) => say!(l, usage::conflict, argument = argument, other = other),
        None => say!(l, usage::conflict_with_others, argument = argument),
    }
}

fn text(why: &clap::Error, kind: ContextKind) -> Option<String> {
    match why.get(kind)? {
        ContextValue::String(text) => Some(text.clone()),
        ContextValue::Strings(all) if !all.is_empty() => Some(all.join(", ")),
        _ => None,
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::panic)]
mod tests {
    use super::*;
    use crate::help;
    use clap::{Arg, ArgAction, Command};
    use sayso_model::Language;
    use std::collections::BTreeSet;
    use std::ffi::OsString;

    /// What the parser says of itself in English.
    const FRAME: [&str; 24] = [
        "Usage:",
        "Commands:",
        "Arguments:",
        "Options:",
        "default:",
        "possible values",
        "Print help",
        "Print version",
        "Print this message",
        "For more information",
        "error:",
        "tip:",
        "similar",
        "unexpected",
        "unrecognized",
        "required",
        "provided",
        "supplied",
        "invalid",
        "cannot be used",
        "is not in",
        "subcommand",
        "were expected",
        "UTF-8 was detected",
    ];

    fn refused(command: Command, line: &[&str]) -> clap::Error {
        command.try_get_matches_from(["sayso"].iter().chain(line)).unwrap_err()
    }

    /// A command line that is wrong in a way of each kind, with what stands in the answer in any language.
    const WRONG: [(&[&str], ErrorKind, &str); 20] = [
        (&["today", "--data", "d", "--wrong"], ErrorKind::UnknownArgument, "--wrong"),
        (&["today", "--dat", "d"], ErrorKind::UnknownArgument, "--data"),
        (&["check", "--data", "d", "more"], ErrorKind::UnknownArgument, "more"),
        (&["tody"], ErrorKind::InvalidSubcommand, "today"),
        (&["check", "--data"], ErrorKind::InvalidValue, "--data"),
        (&["export", "--data", "d", "--form", "pdf"], ErrorKind::InvalidValue, "jsonl, csv, tar"),
        (&["export", "--data", "d", "--form"], ErrorKind::InvalidValue, "jsonl, csv, tar"),
        (&["agree", "f", "--scale", "colours"], ErrorKind::InvalidValue, "names, steps, numbers"),
        (&["serve", "--data", "d", "--port", "many"], ErrorKind::ValueValidation, "65535"),
        (&["serve", "--data", "d", "--port", "70000"], ErrorKind::ValueValidation, "65535"),
        (&["serve", "--data", "d", "--lan", "here"], ErrorKind::ValueValidation, "192.168"),
        (&["enrol", "--data", "d", "--word", "w", "--record", "long"], ErrorKind::ValueValidation, "4.5"),
        (&["design", "show", "--data", "d", "x"], ErrorKind::ValueValidation, "0198a2b4"),
        (&["listen", "--data", "d", "--started-at", "noon", "f"], ErrorKind::ValueValidation, "2026-03-01T18:30:00Z"),
        (&["sheet", "rules", "--data", "d", "--to", "t", "--days", "1"], ErrorKind::ValueValidation, "28"),
        (&["import", "--data", "d", "f", "--yes=1"], ErrorKind::TooManyValues, "--yes"),
        (&["devices", "--data", "d", "--end", "1", "--end-all"], ErrorKind::ArgumentConflict, "--end-all"),
        (&["check", "--data", "d", "--data", "e"], ErrorKind::ArgumentConflict, "--data"),
        (&["check"], ErrorKind::MissingRequiredArgument, "--data <DIR>"),
        (&["--log-level", "info"], ErrorKind::MissingSubcommand, "today"),
    ];

    /// Kinds that our own command line cannot meet, from one that can.
    fn rare() -> Vec<(clap::Error, &'static str)> {
        let of = |arg: Arg, line: &[&str]| refused(Command::new("sayso").arg(arg.long("one")), line);
        let take = || Arg::new("one").action(ArgAction::Append);
        vec![
            (of(take().require_equals(true), &["--one", "x"]), "--one"),
            (of(take().num_args(3..5), &["--one", "x"]), "3"),
            (of(take().num_args(3), &["--one", "x"]), "3"),
        ]
    }

    #[test]
    fn what_is_wrong_is_told_in_every_language_and_never_in_the_words_of_the_parser() {
        let mut kinds = BTreeSet::new();
        let mut english: Vec<String> = Vec::new();
        for language in Language::ALL {
            let l = Locale::of(language);
            let mut all: Vec<(clap::Error, &str)> = Vec::new();
            for (line, kind, part) in WRONG {
                let why = refused(help::command(&l), line);
                assert_eq!(why.kind(), kind, "{line:?}");
                all.push((why, part));
            }
            all.extend(rare());
            #[cfg(unix)]
            {
                use std::os::unix::ffi::OsStringExt;
                let line = ["sayso", "today", "--data", "d", "--animal"].map(OsString::from);
                let line = line.into_iter().chain([OsString::from_vec(vec![0xff])]);
                all.push((help::command(&l).try_get_matches_from(line).unwrap_err(), "UTF-8"));
            }
            for (i, (why, part)) in all.iter().enumerate() {
                let told = told(&l, why);
                kinds.insert(format!("{:?}", why.kind()));
                assert!(told.contains(part) && told.contains("--help"), "{language:?}: {part} in {told}");
                let other = say!(&l, usage::not_understood);
                assert!(!told.starts_with(&other), "{:?} falls through: {told}", why.kind());
                if language == Language::En {
                    english.push(told);
                } else {
                    let left: Vec<&&str> = FRAME.iter().filter(|word| told.contains(**word)).collect();
                    assert!(left.is_empty(), "{language:?}: {left:?} in {told}");
                    assert!(english.iter().all(|e| e.lines().next() != told.lines().next()), "{language:?}: {told}");
                    assert_eq!(told.lines().count(), english.get(i).unwrap().lines().count());
                }
            }
        }
        // Every kind of the parser but those that answer help and version, and those of the system's.
        let wanted = "ArgumentConflict InvalidSubcommand InvalidUtf8 InvalidValue MissingRequiredArgument \
                      MissingSubcommand NoEquals TooFewValues TooManyValues UnknownArgument ValueValidation \
                      WrongNumberOfValues";
        assert_eq!(kinds.iter().map(String::as_str).collect::<Vec<_>>().join(" "), wanted);
    }

    fn helps(command: &mut Command, found: &mut Vec<String>) {
        found.push(command.render_help().to_string());
        found.push(command.render_long_help().to_string());
        command.get_subcommands_mut().for_each(|below| helps(below, found));
    }

    #[test]
    fn help_has_no_word_of_the_parser_in_any_other_language() {
        for language in Language::ALL {
            let l = Locale::of(language);
            let mut found = Vec::new();
            helps(&mut help::command(&l), &mut found);
            assert!(found.len() > 50, "{}", found.len());
            for help in &found {
                for heading in [say!(&l, usage::heading), say!(&l, usage::options), say!(&l, help::help)] {
                    assert!(help.contains(&heading), "{language:?}: no {heading} in {help}");
                }
                // What an address is written with is no language.
                let said = help.replace("tls=required", "");
                let english = |word: &&str| said.contains(*word) && language != Language::En;
                let left: Vec<&str> = FRAME.into_iter().filter(|word| english(word)).collect();
                assert!(left.is_empty(), "{language:?}: {left:?} in {help}");
            }
            for line in [&["help"] as &[&str], &["design", "--help"], &["-h"], &[]] {
                let why = help::command(&l).try_get_matches_from(["sayso"].iter().chain(line));
                let Err(why) = why else { continue };
                assert!(why.render().to_string().contains(&say!(&l, usage::heading)), "{language:?}: {line:?}");
            }
        }
    }

    #[test]
    fn the_help_of_a_command_is_found_by_its_names() {
        let l = Locale::of(Language::De);
        let names = |of: &[&str]| of.iter().map(|n| (*n).to_owned()).collect::<Vec<_>>();
        let plan = help::of(&l, &names(&["design", "plan"])).unwrap().to_string();
        assert!(plan.contains("Aufruf: sayso design plan [OPTIONEN] --data <DIR>"), "{plan}");
        assert!(plan.contains("--points") && plan.contains("[sonst: 4]"), "{plan}");
        assert_eq!(help::of(&l, &names(&["design", "nothing"])).unwrap_err(), "nothing");
    }
}
