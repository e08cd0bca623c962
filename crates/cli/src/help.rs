//! What the commands and arguments say of themselves, in the reader's language: help, its headings, and how a command is
//! used.

use crate::args::Cli;
use clap::builder::StyledStr;
use clap::{Arg, ArgAction, Command, CommandFactory};
use sayso_wording::{Locale, by_id, say};

/// What clap writes into a usage for arguments that may be left out, and for a command below.
const OPTIONS: &str = "[OPTIONS]";
const COMMAND: &str = "COMMAND";

/// The command line with its help. A command's message is `help-command-design-plan`; that of an argument is
/// `help-design-plan-animal`, or `help-animal` where several commands share it.
pub fn described(l: &Locale) -> Command {
    worded(Cli::command(), "", &|id| by_id(l, id))
}

/// The same, as it is asked and answered: also the headings, what is chosen from and how a command is used are in the reader's
/// language.
pub fn command(l: &Locale) -> Command {
    let mut all = framed(described(l), l);
    // Only now every command knows the names that lead to it.
    all.build();
    with_usage(all, l)
}

fn worded(command: Command, path: &str, say: &dyn Fn(&str) -> Option<String>) -> Command {
    let told = |arg: Arg| {
        let name = arg.get_id().as_str().replace('_', "-");
        let help = say(&format!("help{path}-{name}")).or_else(|| say(&format!("help-{name}")));
        arg.help(help.unwrap_or_default())
    };
    let about = say(&format!("help-command{path}")).unwrap_or_default();
    let own = own_flags(command.about(about), path.is_empty());
    own.mut_args(told).mut_subcommands(|below| {
        let path = format!("{path}-{}", below.get_name());
        worded(below, &path, say)
    })
}

/// In place of clap's own, which speak English.
fn own_flags(command: Command, top: bool) -> Command {
    let help = Arg::new("help").short('h').long("help").action(ArgAction::Help).display_order(1_000);
    let command = command.disable_help_flag(true).disable_help_subcommand(true).disable_version_flag(true).arg(help);
    if top {
        command.arg(Arg::new("version").short('V').long("version").action(ArgAction::Version).display_order(1_001))
    } else {
        command
    }
}

fn framed(command: Command, l: &Locale) -> Command {
    let styles = command.get_styles().clone();
    let (usage, head) = (styles.get_usage(), styles.get_header());
    let mut template = format!("{{about-with-newline}}\n{usage}{}{usage:#} {{usage}}\n", say!(l, usage::heading));
    let mut list = |title: String, tag: &str| template.push_str(&format!("\n{head}{title}{head:#}\n{{{tag}}}\n"));
    if command.has_subcommands() {
        list(say!(l, usage::commands), "subcommands");
    }
    if command.get_positionals().next().is_some() {
        list(say!(l, usage::arguments), "positionals");
    }
    list(say!(l, usage::options), "options");
    command.help_template(template).mut_args(|arg| chosen(arg, l)).mut_subcommands(|below| framed(below, l))
}

/// An argument whose help says what it may be and what it is if left out.
fn chosen(arg: Arg, l: &Locale) -> Arg {
    if !arg.get_action().takes_values() {
        return arg;
    }
    let mut help = arg.get_help().map(StyledStr::to_string).unwrap_or_default();
    let known: Vec<String> = arg.get_possible_values().iter().map(|v| v.get_name().to_owned()).collect();
    if !known.is_empty() {
        help = say!(l, usage::with_known, help = help, known = known.join(", "));
    }
    let without: Vec<String> = arg.get_default_values().iter().map(|v| v.to_string_lossy().into_owned()).collect();
    if !without.is_empty() {
        help = say!(l, usage::with_default, help = help, value = without.join(", "));
    }
    arg.help(help).hide_possible_values(true).hide_default_value(true)
}

fn with_usage(mut command: Command, l: &Locale) -> Command {
    let usage = command.render_usage().ansi().to_string();
    let usage = without_heading(&usage)
        .replace(OPTIONS, &say!(l, usage::some_options))
        .replace(COMMAND, &say!(l, usage::a_command));
    command.override_usage(usage).mut_subcommands(|below| with_usage(below, l))
}

/// A usage behind its heading, which is clap's own.
pub fn without_heading(usage: &str) -> &str {
    usage.split_once(' ').map_or("", |(_, usage)| usage)
}

/// The help of a command by the names that lead to it, or the first of them that leads nowhere.
pub fn of(l: &Locale, names: &[String]) -> Result<StyledStr, String> {
    let mut all = command(l);
    let mut at = &mut all;
    for name in names {
        at = at.find_subcommand_mut(name).ok_or_else(|| name.clone())?;
    }
    Ok(at.render_help())
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
            silent(&described(&Locale::of(language)), "", &mut found);
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
