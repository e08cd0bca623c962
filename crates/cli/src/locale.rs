//! The reader's language.

use crate::error::CliError;
use sayso_model::Language;
use sayso_wording::{Locale, words};
use std::ffi::OsString;

/// The variable that names the language for this program alone.
const OWN: &str = "SAYSO_LANGUAGE";
/// The system's own, the first that is set deciding (POSIX.1-2017, Base Definitions, section 8.2).
const SYSTEM: [&str; 3] = ["LC_ALL", "LC_MESSAGES", "LANG"];

/// The reader's locale: as asked for by `--language`, else by `SAYSO_LANGUAGE`, else as the system speaks, else English.
///
/// # Errors
/// `SAYSO_LANGUAGE` names a language that the catalogues do not know. What the system speaks may be any.
pub fn locale(asked: Option<Language>, variable: impl Fn(&str) -> Option<String>) -> Result<Locale, CliError> {
    let set = |name: &str| variable(name).filter(|value| !value.is_empty());
    if let Some(asked) = asked {
        return Ok(Locale::of(asked));
    }
    if let Some(own) = set(OWN) {
        return tagged(&own).map(Locale::of).ok_or_else(|| {
            CliError::said(words!(
                command::no_language,
                given = own,
                known = Language::ALL.map(Language::tag).join(", ")
            ))
        });
    }
    let system = SYSTEM.into_iter().find_map(set);
    Ok(Locale::of(system.and_then(|name| Language::of_tag(&name)).unwrap_or(Language::En)))
}

/// What `--language` asks for, read ahead: help is written before the arguments are understood. Anything else is refused
/// with the others.
pub fn asked(arguments: impl Iterator<Item = OsString>) -> Option<Language> {
    let mut arguments = arguments.skip(1).map(|a| a.to_string_lossy().into_owned()).take_while(|a| a != "--");
    while let Some(argument) = arguments.next() {
        if argument == "--language" {
            return arguments.next().as_deref().and_then(tagged);
        }
        if let Some(value) = argument.strip_prefix("--language=") {
            return tagged(value);
        }
    }
    None
}

fn tagged(tag: &str) -> Option<Language> {
    Language::ALL.into_iter().find(|l| l.tag() == tag)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn with(asked: Option<Language>, set: &[(&str, &str)]) -> Result<Language, CliError> {
        let variable = |name: &str| set.iter().find(|s| s.0 == name).map(|s| s.1.to_owned());
        locale(asked, variable).map(|l| l.language)
    }

    #[test]
    fn the_argument_decides_then_the_own_variable_then_the_system() {
        use Language::{De, En, Es, Fr, Pt};
        assert_eq!(with(Some(Fr), &[("SAYSO_LANGUAGE", "de"), ("LC_ALL", "es")]).unwrap(), Fr);
        assert_eq!(with(None, &[("SAYSO_LANGUAGE", "de"), ("LC_ALL", "es")]).unwrap(), De);
        assert_eq!(with(None, &[("LANG", "pt_BR.UTF-8"), ("LC_MESSAGES", "es_MX")]).unwrap(), Es);
        assert_eq!(with(None, &[("LANG", "pt_BR.UTF-8"), ("LC_ALL", "")]).unwrap(), Pt);
        for system in ["C", "POSIX", "nl_NL.UTF-8"] {
            assert_eq!(with(None, &[("LC_ALL", system), ("LANG", "de_AT")]).unwrap(), En, "{system}");
        }
        assert_eq!(with(None, &[]).unwrap(), En);
        let why = with(None, &[("SAYSO_LANGUAGE", "nl")]).unwrap_err().to_string();
        assert!(why.contains("nl") && why.contains("en, es, de, fr, pt"), "{why}");
    }

    #[test]
    fn the_argument_is_read_ahead_wherever_it_stands() {
        let of = |line: &str| asked(line.split(' ').map(OsString::from));
        assert_eq!(of("sayso today --language de --help"), Some(Language::De));
        assert_eq!(of("sayso --language=fr"), Some(Language::Fr));
        assert_eq!(of("sayso --language nl"), None);
        assert_eq!(of("sayso agree -- --language=fr"), None);
        assert_eq!(of("sayso --language"), None);
    }
}
