//! What can be asked for on the command line.

use clap::builder::PossibleValuesParser;
use clap::builder::TypedValueParser as _;
use clap::{Args, Parser, Subcommand};
use sayso_model::{Day, Moment};
use std::path::PathBuf;
use study_cohort::Question;
use study_export::Approval;
use study_norms::Loss;

/// What many households' records say together.
#[derive(Parser, Debug)]
#[command(name = "study", version)]
pub struct Cli {
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
}

/// What to do.
#[derive(Subcommand, Debug)]
pub enum Command {
    /// Write tables of invented households, to try questions and to measure. Not evidence about animals.
    Simulate(Simulate),
    /// Write tables of the homes that agreed to research, under names that only the key can tell.
    Export(Export),
    /// Ask tables a question.
    Ask(Ask),
    /// Deal the work of questions to executors. Whoever reaches its port can have plans of their own worked on, which read any file that
    /// executors can: it belongs in a network of one's own.
    #[cfg(feature = "cluster")]
    Scheduler(Scheduler),
    /// Work for a scheduler. Whoever reaches its ports can read what it hands on: they belong in a network of one's own.
    #[cfg(feature = "cluster")]
    Executor(Executor),
    /// Say what stands in the tables: every column, and every word that can stand in it.
    Codebook,
    /// Figures of many households for the pages of each: releases.
    #[command(subcommand)]
    Norms(Norms),
}

/// What is done with norms.
#[derive(Subcommand, Debug)]
pub enum Norms {
    /// Make a release of the rows of households that agree now.
    Release(Release),
    /// Write a release as a Parquet table, with a codebook beside it.
    Table(Table),
}

/// A release.
#[derive(Args, Debug)]
pub struct Release {
    /// Rows of households, as `sayso norms rows` writes them (.jsonl).
    #[arg(required = true, value_name = "ROWS")]
    pub rows: Vec<PathBuf>,
    /// Study names of the households that agree at this moment, a line each, as `sayso norms rows --only-names` lists them anew:
    /// others are left out.
    #[arg(long, value_name = "FILE", required_unless_present = "invented")]
    pub agreed: Option<PathBuf>,
    /// Privacy loss of the release, of 1 a year in all.
    #[arg(long, default_value = "1", conflicts_with = "club")]
    pub epsilon: Loss,
    /// A club that agreed to figures of its own households without noise. Only for the club.
    #[arg(long, value_name = "NAME")]
    pub club: Option<String>,
    /// File in which releases and what they cost are entered; every release of these households in the same one.
    #[arg(long, value_name = "FILE", required_unless_present = "invented")]
    pub budget: Option<PathBuf>,
    /// What the release is called: each differently.
    #[arg(long)]
    pub name: String,
    /// The day it is made, where it is not today (in UTC).
    #[arg(long, value_name = "DAY")]
    pub made: Option<Day>,
    /// The households are invented: no consent is asked for and no budget kept, and the release says so.
    #[arg(long)]
    pub invented: bool,
    /// Noise that can be repeated, and taken off again by whoever knows the seed: for invented households only.
    #[arg(long, value_name = "SEED", requires = "invented", conflicts_with = "club")]
    pub seed_for_tests: Option<u64>,
    /// The release: a file that is not there yet, ending in .sayso-norms.
    #[arg(long, value_name = "FILE")]
    pub to: PathBuf,
}

/// A table of a release.
#[derive(Args, Debug)]
pub struct Table {
    /// The release.
    pub release: PathBuf,
    /// The table: a file that is not there yet, ending in .parquet. The codebook stands beside it, ending in .md.
    #[arg(long, value_name = "FILE")]
    pub to: PathBuf,
}

/// How tables are written.
#[derive(Args, Debug)]
pub struct Tables {
    /// Folder of the tables. What is whole there stays: after a stop the same command goes on.
    #[arg(long, value_name = "DIR")]
    pub out: PathBuf,
    /// Households that lie together in a file.
    #[arg(long, default_value_t = 500)]
    pub bucket: u32,
    /// Threads.
    #[arg(long, default_value_t = 1)]
    pub threads: usize,
}

/// Invented households.
#[derive(Args, Debug)]
pub struct Simulate {
    /// How many.
    #[arg(long)]
    pub households: u32,
    /// Seed: the same gives the same tables.
    #[arg(long, default_value_t = 1)]
    pub seed: u64,
    /// Days each.
    #[arg(long, default_value_t = 365)]
    pub days: u32,
    /// Last day.
    #[arg(long, value_name = "TIME", default_value = "2026-06-01T19:00:00Z")]
    pub end: Moment,
    /// Simulate only so many and repeat them: enough to measure an engine with, no good for learning about households.
    #[arg(long)]
    pub patterns: Option<u32>,
    #[command(flatten)]
    pub tables: Tables,
}

/// Homes' logs, or a server's homes.
#[derive(Args, Debug)]
pub struct Export {
    /// Logs as the notebook exports them (.jsonl), or folders of such.
    #[arg(required_unless_present = "homes", conflicts_with = "homes", value_name = "LOG")]
    pub from: Vec<PathBuf>,
    /// Instead of logs, the homes of a server's database: those whose keeper agreed to research on that server. The file lists them
    /// under their study names; it is made at the first run and read at each later one, so that numbers stay while homes come and go.
    /// Keep it apart from the tables, like the key.
    #[arg(long, value_name = "FILE")]
    pub homes: Option<PathBuf>,
    /// Which ethics board approved the study, and the number of its approval: homes agreed to such studies alone. It stands beside the
    /// tables, in approval.txt; a folder is of one approval. Homes of a server are not exported without.
    #[arg(long, value_name = "BOARD AND NUMBER", conflicts_with = "check", required_unless_present_any = ["from", "check"])]
    pub approval: Option<Approval>,
    /// The database, where it does not stand in the variable SAYSO_DATABASE. This program must be of the server's version.
    #[arg(long, value_name = "URL", requires = "homes")]
    pub database: Option<String>,
    /// How the owner of the database's tables connects, who brings them up to date. If left out, that of the variable
    /// SAYSO_DATABASE_OWNER, then as the program itself does.
    #[arg(long, value_name = "URL", requires = "homes")]
    pub database_owner: Option<String>,
    /// Write nothing: ask whether those who agreed when the tables were written are those who agree now. Before anything is published.
    #[arg(long)]
    pub check: bool,
    /// File with 32 bytes or more of good randomness, kept apart from the tables. The same key gives a home the same name.
    #[arg(long, value_name = "FILE")]
    pub key: PathBuf,
    #[command(flatten)]
    pub tables: Tables,
}

/// A question.
#[derive(Args, Debug)]
pub struct Ask {
    /// Which.
    #[arg(value_parser = question())]
    pub question: Question,
    /// Folder of the tables.
    pub dir: PathBuf,
    /// Threads; with --scheduler, parts into which the work is cut.
    #[arg(long, default_value_t = 2)]
    pub threads: usize,
    /// Show how the engine goes about it instead of asking.
    #[arg(long)]
    pub plan: bool,
    /// Write the answer as a table of comma-separated values, for a program.
    #[arg(long)]
    pub csv: bool,
    #[cfg(feature = "cluster")]
    #[command(flatten)]
    pub cluster: Cluster,
}

/// Where the work of a question is done.
#[cfg(feature = "cluster")]
#[derive(Args, Debug)]
pub struct Cluster {
    /// Have the work done by executors of this scheduler, as soon as it has any. It and each of them must see the folder under the
    /// same path.
    #[arg(long, value_name = "HOST:PORT", conflicts_with = "plan")]
    pub scheduler: Option<study_cluster::Address>,
    /// How often it is asked anew where the scheduler was lost, which remembers nothing; a little later each time.
    #[arg(long, value_name = "TIMES", default_value_t = 5, requires = "scheduler")]
    pub again: u32,
}

/// A scheduler.
#[cfg(feature = "cluster")]
#[derive(Args, Debug)]
pub struct Scheduler {
    /// Where it listens.
    #[arg(long, value_name = "ADDRESS:PORT", default_value = "127.0.0.1:50050")]
    pub bind: std::net::SocketAddr,
    /// Under which name or number executors reach it, where it listens on all of its machine's.
    #[arg(long, value_name = "HOST")]
    pub advertise: Option<String>,
    /// Seconds after which an executor that was not heard of is given up, and its work done anew by others.
    #[arg(long, value_name = "SECONDS", default_value_t = 30)]
    pub lost_after: u64,
}

/// An executor.
#[cfg(feature = "cluster")]
#[derive(Args, Debug)]
pub struct Executor {
    /// The scheduler it works for.
    #[arg(long, value_name = "HOST:PORT")]
    pub scheduler: study_cluster::Address,
    /// Where it listens.
    #[arg(long, value_name = "ADDRESS", default_value = "127.0.0.1")]
    pub bind: std::net::IpAddr,
    /// Under which name or number the others reach it, where it listens on all of its machine's.
    #[arg(long, value_name = "HOST")]
    pub advertise: Option<String>,
    /// Port of what it hands on; 0: any that is free.
    #[arg(long, value_name = "PORT", default_value_t = 0)]
    pub data_port: u16,
    /// Port of orders to it; 0: any that is free.
    #[arg(long, value_name = "PORT", default_value_t = 0)]
    pub order_port: u16,
    /// Parts that it works on at a time.
    #[arg(long, default_value_t = 2)]
    pub threads: usize,
    /// Folder for what it hands on: rows of the tables, as far as a question needs them. Deleted as it ends, not if it is killed.
    #[arg(long, value_name = "DIR")]
    pub work: Option<PathBuf>,
}

fn question() -> impl clap::builder::TypedValueParser<Value = Question> {
    PossibleValuesParser::new(Question::ALL.map(Question::name))
        .map(|name| Question::ALL.into_iter().find(|q| q.name() == name).unwrap_or(Question::FirstPress))
}
