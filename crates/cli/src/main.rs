//! The binary `sayso`: thin. Arguments in, words out; everything else lives in the libraries.

mod args;
mod commands;
mod error;
mod log;
mod microphone;
mod out;
mod recorded;

use args::{Cli, Command};
use clap::Parser;
use error::CliError;
use std::process::ExitCode;
use std::time::Duration;

/// How long work that nobody waits for any more may hold up the end, such as a page half computed.
const LAST_WAIT: Duration = Duration::from_millis(500);

fn main() -> ExitCode {
    let cli = Cli::parse();
    let serving = matches!(cli.command, Command::Serve { .. } | Command::Demo { .. });
    let in_file = cli.logging.log_file.is_some();
    let done = log::begin(&cli.logging, serving).and_then(|()| {
        let runtime = tokio::runtime::Runtime::new()?;
        let done = runtime.block_on(run(cli));
        runtime.shutdown_timeout(LAST_WAIT);
        done
    });
    done.unwrap_or_else(|why| {
        eprintln!("sayso: {why}");
        if in_file {
            tracing::error!("{why}");
        }
        ExitCode::FAILURE
    })
}

async fn run(cli: Cli) -> Result<ExitCode, CliError> {
    match cli.command {
        Command::Demo { data, seed, serving } => commands::serve::demo(data, seed, &serving).await?,
        Command::Serve { data, serving } => commands::serve::serve(&data.data, &serving).await?,
        Command::Devices { data, end, end_all } => commands::devices::devices(&data.data, end.as_deref(), end_all)?,
        Command::Today { data, animal } => commands::tell::today(&data.data, animal.as_deref()).await?,
        Command::Evidence { data, animal } => commands::tell::evidence(&data.data, animal.as_deref()).await?,
        Command::Patterns { data, animal } => commands::tell::patterns(&data.data, animal.as_deref()).await?,
        Command::Design(what) => commands::design::design(&what).await?,
        Command::Agree { file, scale, headed } => commands::tell::agree(&file, scale, headed)?,
        Command::Log { data } => return commands::exchange::log(&data.data).await,
        Command::Import { data, file, yes, others } => {
            return commands::exchange::import(&data.data, &file, yes, others.into()).await;
        }
        Command::Export { data, form, to } => return commands::exchange::export(&data.data, form, to.as_deref()).await,
        Command::Sheet(asked) => commands::sheet::sheet(&asked).await?,
        Command::Backup { data, file } => commands::keep::backup(&data.data, &file).await?,
        Command::Restore { data, file, others } => commands::keep::restore(&data.data, &file, others.into()).await?,
        Command::Completions { shell } => commands::describe::completions(shell),
        Command::Man { to } => commands::describe::man(&to)?,
        Command::Enrol { data, word, record, file } => {
            return commands::enrol::enrol(&data.data, &word, file.as_deref(), record).await;
        }
        Command::Clips { data } => return commands::enrol::clips(&data.data).await,
        Command::Picture(args) => commands::picture::picture(&args).await?,
        Command::Listen(args) => return commands::listen::listen(&args).await,
        Command::Check { data } => return commands::keep::check(&data.data).await,
    }
    Ok(ExitCode::SUCCESS)
}
