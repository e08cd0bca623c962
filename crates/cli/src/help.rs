//! What the commands and arguments say of themselves, in the reader's language. Headings, errors and the help for `--help`
//! itself are clap's own, in English.

use crate::args::Cli;
use clap::{Arg, Command, CommandFactory};
use sayso_wording::{Locale, by_id};

/// The command line with its help. A command's message is `help-command-design-plan`; that of an argument is
/// `help-design-plan-animal`, or `help-animal` where several commands share it.
pub fn command(l: &Locale) -> Command {
    worded(Cli::command(), "", &|id| by_id(l, id))
}

fn worded(command: Command, path: &str, say: &dyn Fn(&str) -> Option<String>) -> Command {
    let told = |arg: Arg| {
        let name = arg.get_id().as_str().replace('_', "-");
        let help = say(&format!("help{path}-{name}")).or_else(|| say(&format!("help-{name}")));
        arg.help(help.unwrap_or_default())
    };
    let about = say(&format!("help-command{path}")).unwrap_or_default();
    command.about(about).mut_args(told).mut_subcommands(|below| {
        let path = format!("{path}-{}", below.get_name());
        worded(below, &path, say)
    })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use sayso_model::Language;
    use std::cell::RefCell;
    use std::collections::BTreeSet;

    fn silent(command: &Command, path: &str, found: &mut Vec<String>) {
        let here = format!("{path} {}", command.get_name());
        let said = |text: Option<&clap::builder::StyledStr>| text.is_some_and(|t| !t.to_string().trim().is_empty());
        if !said(command.get_about()) {
            found.push(here.clone());
        }
        found.extend(
            command.get_arguments().filter(|a| !said(a.get_help())).map(|a| format!("{here} --{}", a.get_id())),
        );
        command.get_subcommands().for_each(|below| silent(below, &here, found));
    }

    #[test]
    fn every_command_and_argument_says_what_it_is_for_in_every_language() {
        for language in Language::ALL {
            let mut found = Vec::new();
            silent(&command(&Locale::of(language)), "", &mut found);
            assert!(found.is_empty(), "{}: no message in help.ftl for {found:?}", language.tag());
        }
    }

    #[test]
    fn every_message_of_help_belongs_to_a_command_or_an_argument() {
        let asked = RefCell::new(BTreeSet::new());
        let say = |id: &str| {
            asked.borrow_mut().insert(id.to_owned());
            by_id(&Locale::ENGLISH, id)
        };
        worded(Cli::command(), "", &say);
        let file = include_str!("../../wording/catalogues/en/help.ftl");
        let ids = file.lines().filter_map(|line| line.split_once(" =")).map(|(id, _)| id);
        let over: Vec<&str> = ids.filter(|id| id.starts_with("help-") && !asked.borrow().contains(*id)).collect();
        assert!(over.is_empty(), "these belong to nothing: {over:?}");
    }
}
