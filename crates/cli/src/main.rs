//! The binary `sayso`: thin. Arguments in, words out; everything else lives in the libraries.

mod args;
mod commands;
mod error;
mod help;
mod locale;
mod log;
mod microphone;
mod out;
mod recorded;
mod wrong_use;

use args::host::LogFormat;
use args::{Cli, Command};
use clap::FromArgMatches;
use clap::error::ErrorKind;
use error::CliError;
use sayso_notebook::Replaces;
use sayso_wording::Locale;
use std::process::ExitCode;
use std::time::Duration;

/// How long work that nobody waits for any more may hold up the end, such as a page half computed.
const LAST_WAIT: Duration = Duration::from_millis(500);

fn main() -> ExitCode {
    let variable = |name: &str| std::env::var(name).ok();
    let ahead = match locale::locale(locale::asked(std::env::args_os()), variable) {
        Ok(locale) => locale,
        Err(why) => {
            eprintln!("sayso: {why}");
            return ExitCode::from(wrong_use::CODE);
        }
    };
    let asked = help::command(&ahead).try_get_matches().and_then(|given| Cli::from_arg_matches(&given));
    let cli = match asked {
        Ok(cli) => cli,
        Err(why) => return other_than_a_command(&ahead, &why),
    };
    let l = cli.language.map_or(ahead, Locale::of);
    let serving = matches!(cli.command, Command::Serve { .. } | Command::Demo { .. } | Command::Host(_));
    let format = if let Command::Host(asked) = &cli.command { asked.log_format } else { LogFormat::default() };
    let in_file = cli.logging.log_file.is_some();
    if format == LogFormat::Json {
        out::in_objects();
    }
    let done = log::begin(&cli.logging, serving, format).and_then(|()| {
        let runtime = tokio::runtime::Runtime::new()?;
        let done = runtime.block_on(run(&l, cli));
        runtime.shutdown_timeout(LAST_WAIT);
        done
    });
    done.unwrap_or_else(|why| {
        if in_file {
            tracing::error!("{why}");
        }
        let why = why.say(&l);
        eprintln!("sayso: {why}");
        ExitCode::FAILURE
    })
}

/// Help and version, where these were asked for; else what is wrong with the arguments.
fn other_than_a_command(l: &Locale, why: &clap::Error) -> ExitCode {
    match why.kind() {
        ErrorKind::DisplayHelp | ErrorKind::DisplayVersion | ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand => {
            why.exit()
        }
        _ => {
            let why = wrong_use::told(l, why);
            eprintln!("sayso: {why}");
        }
    }
    ExitCode::from(wrong_use::CODE)
}

async fn run(l: &Locale, cli: Cli) -> Result<ExitCode, CliError> {
    match cli.command {
        Command::Demo { data, seed, serving } => commands::serve::demo(l, data, seed, &serving).await?,
        Command::Serve { data, serving } => commands::serve::serve(l, &data.data, &serving).await?,
        Command::Host(asked) => commands::host::host(l, &asked).await?,
        Command::Closings(asked) => commands::host::restored::closings(l, &asked).await?,
        Command::Restored(asked) => commands::host::restored::restored(l, &asked).await?,
        Command::Devices { data, end, end_all } => commands::devices::devices(l, &data.data, end.as_deref(), end_all)?,
        Command::Link { data, server, code, yes, pictures, recordings, now } => {
            let asked = commands::link::Linking { server, code, yes, pictures, recordings, now };
            commands::link::link(l, &data.data, asked).await?;
        }
        Command::Unlink { data } => commands::link::unlink(l, &data.data).await?,
        Command::Today { data, animal } => commands::tell::today(l, &data.data, animal.as_deref()).await?,
        Command::Evidence { data, animal } => commands::tell::evidence(l, &data.data, animal.as_deref()).await?,
        Command::Patterns { data, animal } => commands::tell::patterns(l, &data.data, animal.as_deref()).await?,
        Command::Design(what) => commands::design::design(l, &what).await?,
        Command::Norms(what) => commands::norms::norms(l, &what).await?,
        Command::Agree { file, scale, headed } => commands::tell::agree(l, &file, scale, headed)?,
        Command::Log { data } => return commands::exchange::log(l, &data.data).await,
        Command::Import { data, file, yes, others } => {
            return commands::exchange::import(l, &data.data, &file, yes, others.into()).await;
        }
        Command::Export { data, form, to } => {
            return commands::exchange::export(l, &data.data, form, to.as_deref()).await;
        }
        Command::Sheet(asked) => commands::sheet::sheet(l, &asked).await?,
        Command::Backup { data, file } => commands::keep::backup(l, &data.data, &file).await?,
        Command::Restore { data, file, others } => commands::keep::restore(l, &data.data, &file, others.into()).await?,
        Command::Completions { shell } => commands::describe::completions(shell),
        Command::Help { of } => return Ok(commands::describe::help(l, &of)),
        Command::Man { to } => commands::describe::man(l, &to)?,
        Command::Enrol { data, word, record, another_button, file } => {
            let replaces = if another_button { Replaces::None } else { Replaces::All };
            return commands::enrol::enrol(l, &data.data, &word, file.as_deref(), record, replaces).await;
        }
        Command::Clips { data } => return commands::enrol::clips(l, &data.data).await,
        Command::Picture(args) => commands::picture::picture(l, &args).await?,
        Command::Listen(args) => return commands::listen::listen(l, &args).await,
        Command::Check { data } => return commands::keep::check(l, &data.data).await,
    }
    Ok(ExitCode::SUCCESS)
}
