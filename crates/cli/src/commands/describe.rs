//! `completions` and `man`: the command line's own description, in the forms shells and `man` read, in English.

use crate::error::CliError;
use crate::help;
use crate::out::tell;
use crate::wrong_use;
use clap_complete::Shell;
use sayso_wording::{Locale, say};
use std::path::Path;
use std::process::ExitCode;

/// The help of a command, by the names that lead to it.
pub fn help(l: &Locale, names: &[String]) -> ExitCode {
    match help::of(l, names) {
        Ok(help) => {
            tell!("{}", help.to_string().trim_end());
            ExitCode::SUCCESS
        }
        Err(unknown) => {
            let why = say!(l, usage::unknown_command, command = unknown);
            eprintln!("sayso: {why}");
            ExitCode::from(wrong_use::CODE)
        }
    }
}

/// Writes what a shell completes commands and flags by to standard output.
pub fn completions(shell: Shell) {
    tell!("{}", String::from_utf8_lossy(&script(shell)).trim_end());
}

fn script(shell: Shell) -> Vec<u8> {
    let mut script = Vec::new();
    clap_complete::generate(shell, &mut help::described(&Locale::ENGLISH), "sayso", &mut script);
    script
}

/// Writes the manual pages, one a command, to a folder, which is made if it is not there.
pub fn man(l: &Locale, to: &Path) -> Result<(), CliError> {
    let written =
        std::fs::create_dir_all(to).and_then(|()| clap_mangen::generate_to(help::described(&Locale::ENGLISH), to));
    written.map_err(|why| CliError::file(to, why))?;
    tell!(l, command::manual, dir = to.display().to_string(), first = to.join("sayso.1").display().to_string());
    Ok(())
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use clap::{Command, ValueEnum};

    /// Every command with the names that lead to it.
    fn all(command: &Command, path: &[String], found: &mut Vec<(Vec<String>, Command)>) {
        let mut path = path.to_vec();
        path.push(command.get_name().to_owned());
        for below in command.get_subcommands() {
            all(below, &path, found);
        }
        found.push((path, command.clone()));
    }

    fn commands() -> Vec<(Vec<String>, Command)> {
        let mut found = Vec::new();
        all(&help::described(&Locale::ENGLISH), &[], &mut found);
        assert!(found.len() > 20, "{} commands", found.len());
        found
    }

    #[test]
    fn every_shell_completes_every_command_and_flag() {
        for shell in Shell::value_variants() {
            let script = String::from_utf8(script(*shell)).unwrap();
            for (path, command) in commands() {
                let name = path.last().unwrap();
                assert!(script.contains(name.as_str()), "{shell}: no {name}");
                for flag in command.get_arguments().filter_map(|a| a.get_long()) {
                    // Fish takes the name of a flag apart from its dashes.
                    let written = script.contains(&format!("--{flag}")) || script.contains(&format!("-l {flag}"));
                    assert!(written, "{shell}: no --{flag} of {}", path.join(" "));
                }
            }
        }
    }

    #[test]
    fn every_command_has_a_manual_page_with_its_flags() {
        let dir = tempfile::tempdir().unwrap();
        let to = dir.path().join("new");
        man(&Locale::ENGLISH, &to).unwrap();
        let all = commands();
        for (path, command) in &all {
            let file = to.join(format!("{}.1", path.join("-")));
            let page = std::fs::read_to_string(&file).unwrap();
            assert!(page.contains(".SH NAME"), "{page}");
            for flag in command.get_arguments().filter_map(|a| a.get_long()) {
                assert!(page.contains(&flag.replace('-', "\\-")), "{}: no --{flag}", file.display());
            }
        }
        assert_eq!(std::fs::read_dir(&to).unwrap().count(), all.len());
    }
}
