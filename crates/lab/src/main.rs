//! The binary `lab`: experiments by name, the hearing's scenes, fit and score, and homes in bulk for a server. Not for users.

use clap::{Args, Command, FromArgMatches, Subcommand};
use sayso_lab::experiments::{EXPERIMENTS, Order, run};
use sayso_lab::{LabError, hearing, host};
use std::path::PathBuf;
use std::process::ExitCode;

/// How an experiment is run.
#[derive(Args, Debug)]
struct Flags {
    /// A small run, to see whether the machinery works.
    #[arg(long)]
    quick: bool,
    /// Folder for the tables and plots.
    #[arg(long, value_name = "DIR", default_value = "docs/lab")]
    out: PathBuf,
    /// Seed of the simulations.
    #[arg(long, default_value_t = 1)]
    seed: u64,
}

fn command() -> Command {
    let lab = Command::new("lab").about("The laboratory: methods on simulated animals, the hearing on made sounds");
    let lab = lab.arg_required_else_help(true).subcommand_required(true);
    let lab = lab.subcommand(Command::new("list").about("The experiments there are"));
    let lab = lab.subcommand(Flags::augment_args(Command::new("all")).about("Every experiment of results.md"));
    let lab = EXPERIMENTS.iter().fold(lab, |lab, experiment| {
        lab.subcommand(Flags::augment_args(Command::new(experiment.name)).about(experiment.asks))
    });
    let hearing = hearing::Cli::augment_subcommands(Command::new("hearing"));
    let lab = lab.subcommand(hearing.about("Scenes, fit and score of the hearing").subcommand_required(true));
    let host = host::Cli::augment_subcommands(Command::new("host"));
    lab.subcommand(host.about("What a server of many homes is measured with").subcommand_required(true))
}

fn main() -> ExitCode {
    let done = match command().get_matches().subcommand() {
        Some(("list", _)) => {
            EXPERIMENTS.iter().for_each(|e| println!("{:18} {}", e.name, e.asks));
            Ok(())
        }
        Some(("hearing", given)) => {
            hearing::Cli::from_arg_matches(given).map_err(|e| e.exit()).and_then(|cli| hearing::run(&cli))
        }
        Some(("host", given)) => {
            host::Cli::from_arg_matches(given).map_err(|e| e.exit()).and_then(|cli| host::run(&cli))
        }
        Some((name, given)) => Flags::from_arg_matches(given).map_err(|e| e.exit()).and_then(|f| experiment(name, f)),
        None => Ok(()),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            eprintln!("lab: {why}");
            ExitCode::FAILURE
        }
    }
}

fn experiment(name: &str, flags: Flags) -> Result<(), LabError> {
    let only = (name != "all").then(|| name.to_owned());
    let (short, page) = run(&Order { quick: flags.quick, out: flags.out, seed: flags.seed, only })?;
    println!("{} figures fall short:", short.len());
    short.iter().for_each(|s| println!("  {s}"));
    println!("Written to {}", page.display());
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    // Arguments added to a command bring words of their own, which must not take the place of the command's.
    #[test]
    fn every_experiment_tells_what_it_asks() {
        let lab = command();
        for experiment in EXPERIMENTS {
            let told = lab.find_subcommand(experiment.name).and_then(Command::get_about).map(ToString::to_string);
            assert_eq!(told.as_deref(), Some(experiment.asks));
        }
        let hearing = lab.find_subcommand("hearing").and_then(Command::get_about).map(ToString::to_string);
        assert_eq!(hearing.as_deref(), Some("Scenes, fit and score of the hearing"));
    }
}
