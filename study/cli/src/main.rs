//! The binary `study`: what many households' records say together. For researchers; a household needs none of it.

mod args;
mod ask;
#[cfg(feature = "cluster")]
mod cluster;
mod failed;
mod norms;
mod write;

use args::{Cli, Command, Norms};
use clap::Parser;
use failed::Failed;
use std::io::Write;
use std::process::ExitCode;

fn main() -> ExitCode {
    let done = match Cli::parse().command {
        Command::Simulate(order) => write::simulate(&order),
        Command::Export(order) => write::export(&order),
        Command::Ask(order) => ask::run(&order),
        #[cfg(feature = "cluster")]
        Command::Scheduler(order) => cluster::scheduler(order),
        #[cfg(feature = "cluster")]
        Command::Executor(order) => cluster::executor(order),
        Command::Norms(Norms::Release(order)) => norms::release(&order),
        Command::Norms(Norms::Table(order)) => norms::table(&order),
        Command::Codebook => write!(std::io::stdout(), "{}", study_cohort::codebook()).map_err(Failed::Out),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            eprintln!("study: {why}");
            ExitCode::FAILURE
        }
    }
}
