//! Every command and flag, in one place; help, completions and manual pages come from here. What each says of itself stands
//! in the catalogues (`help.ftl`), by its name.

pub mod host;
pub mod norms;
mod picture;
pub mod restored;
pub mod sheet;
mod values;

pub use picture::{Picturing, Shown};
pub use values::{WrongValue, whole};

use clap::{Args, Parser, Subcommand, ValueEnum};
use sayso_model::{CaseDesign, CaseExpected, CaseMeasure, CaseQuestion, CaseStop, CaseUnit, Day, Language};
use std::path::PathBuf;
use values::{by_name, one_of, typed};

/// A notebook that does the maths for a person who teaches a companion animal to use a board of recorded-word buttons.
#[derive(Parser, Debug)]
#[command(name = "sayso", version, arg_required_else_help = true)]
pub struct Cli {
    #[command(subcommand)]
    pub command: Command,
    #[command(flatten)]
    pub logging: Logging,
    #[arg(long, global = true, value_name = "LANGUAGE", value_parser = by_name(&Language::ALL, Language::tag))]
    pub language: Option<Language>,
}

/// What goes wrong, and what was done, in lines a person can read.
#[derive(Args, Debug, Clone)]
pub struct Logging {
    #[arg(long, global = true, value_name = "FILE")]
    pub log_file: Option<PathBuf>,
    #[arg(long, global = true, value_enum, value_name = "LEVEL")]
    pub log_level: Option<Level>,
}

/// What is logged, each with those before it.
#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum Level {
    // What failed, and what would put it right.
    Error,
    // What may need a look, such as wrong pairing codes.
    Warn,
    // What was done: start, stop, pairings, imports, restores.
    Info,
    // Also connections that broke off.
    Debug,
}

/// Where the notebook is.
#[derive(Args, Debug, Clone)]
pub struct Data {
    #[arg(long, value_name = "DIR")]
    pub data: PathBuf,
}

/// Whose events may come in.
#[derive(Args, Debug, Clone, Copy)]
pub struct OtherHomes {
    #[arg(long, alias = "take-in-other-household")]
    pub take_in_other_home: bool,
}

impl From<OtherHomes> for sayso_store::Others {
    fn from(given: OtherHomes) -> Self {
        if given.take_in_other_home { Self::TakeIn } else { Self::Refuse }
    }
}

/// How to serve.
#[derive(Args, Debug, Clone)]
pub struct Serving {
    #[arg(long, default_value_t = 7297, value_parser = whole::<u16>)]
    pub port: u16,
    #[arg(long, value_name = "ADDRESS", num_args = 0..=1, default_missing_value = "0.0.0.0", value_parser = typed::<std::net::IpAddr>)]
    pub lan: Option<std::net::IpAddr>,
    #[arg(long, requires = "lan")]
    pub secure: bool,
    #[arg(long)]
    pub no_sound: bool,
}

/// What to listen to, and for what.
#[derive(Args, Debug, Clone)]
pub struct Listening {
    #[arg(long, value_name = "DIR", required_unless_present = "clips", conflicts_with = "clips")]
    pub data: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    pub clips: Option<PathBuf>,
    #[arg(long, requires = "data")]
    pub log: bool,
    #[arg(long, value_name = "TIME", value_parser = typed::<sayso_model::Moment>)]
    pub started_at: Option<sayso_model::Moment>,
    #[arg(long, requires = "log", alias = "learner")]
    pub animal: Option<String>,
    #[arg(long, value_name = "FORMAT", value_parser = one_of::<sayso_listen::PcmFormat>(&["s16le", "f32le"]))]
    pub pcm: Option<sayso_listen::PcmFormat>,
    #[arg(long, value_name = "HZ", default_value_t = 16_000, value_parser = whole::<u32>)]
    pub rate: u32,
    #[arg(long, default_value_t = 1, value_parser = whole::<u16>)]
    pub channels: u16,
    #[arg(long, value_name = "CONFIDENCE", value_parser = typed::<f64>)]
    pub least: Option<f64>,
    #[arg(long, value_parser = whole::<std::num::NonZeroU16>)]
    pub threads: Option<std::num::NonZeroU16>,
    #[arg(long, value_name = "FILE")]
    pub checkpoint: Option<PathBuf>,
    #[arg(long, conflicts_with_all = ["files", "checkpoint", "threads", "pcm", "started_at"])]
    pub microphone: bool,
    #[arg(required_unless_present = "microphone", value_name = "FILE")]
    pub files: Vec<PathBuf>,
}

/// A trial of a change to plan.
#[derive(Args, Debug, Clone)]
pub struct Planning {
    #[arg(long, value_name = "DIR")]
    pub data: PathBuf,
    #[arg(long, alias = "learner")]
    pub animal: Option<String>,
    #[arg(long, value_parser = by_name(CaseQuestion::ALL, CaseQuestion::name))]
    pub question: CaseQuestion,
    #[arg(long)]
    pub label: Option<String>,
    #[arg(long, value_parser = by_name(CaseDesign::ALL, CaseDesign::name))]
    pub design: Option<CaseDesign>,
    #[arg(long, value_parser = by_name(CaseMeasure::ALL, CaseMeasure::name))]
    pub measure: CaseMeasure,
    #[arg(long, value_parser = by_name(CaseExpected::ALL, CaseExpected::name))]
    pub expected: CaseExpected,
    #[arg(long)]
    pub word: Vec<String>,
    #[arg(long, value_name = "ANIMAL")]
    pub across: Vec<String>,
    #[arg(long, default_value = "day", value_parser = by_name(CaseUnit::ALL, CaseUnit::name))]
    pub unit: CaseUnit,
    #[arg(long, value_parser = typed::<Day>)]
    pub first: Option<Day>,
    #[arg(long, value_parser = whole::<u16>)]
    pub points: u16,
    #[arg(long, default_value_t = 4, value_parser = whole::<u16>)]
    pub phases: u16,
    #[arg(long, default_value_t = 5, value_parser = whole::<u16>)]
    pub least: u16,
    #[arg(long, default_value_t = 3, value_parser = whole::<u16>)]
    pub apart: u16,
    #[arg(long, value_name = "SECONDS", value_parser = typed::<f64>)]
    pub goal: Vec<f64>,
}

/// What to do with trials of a change.
#[derive(Subcommand, Debug)]
pub enum Designing {
    List {
        #[command(flatten)]
        data: Data,
        #[arg(long, alias = "learner")]
        animal: Option<String>,
    },
    Show {
        #[command(flatten)]
        data: Data,
        #[arg(value_parser = typed::<sayso_model::DesignId>)]
        trial: sayso_model::DesignId,
    },
    Plan(Box<Planning>),
    Stop {
        #[command(flatten)]
        data: Data,
        #[arg(value_parser = typed::<sayso_model::DesignId>)]
        trial: sayso_model::DesignId,
        #[arg(long, value_parser = by_name(CaseStop::ALL, CaseStop::name))]
        reason: CaseStop,
    },
}

/// The commands.
#[derive(Subcommand, Debug)]
pub enum Command {
    Demo {
        #[arg(long, value_name = "DIR")]
        data: Option<PathBuf>,
        #[arg(long, default_value_t = 1, value_parser = whole::<u64>)]
        seed: u64,
        #[command(flatten)]
        serving: Serving,
    },
    Serve {
        #[command(flatten)]
        data: Data,
        #[command(flatten)]
        serving: Serving,
    },
    Host(Box<host::Hosting>),
    Closings(restored::Listing),
    Restored(restored::BroughtBack),
    Devices {
        #[command(flatten)]
        data: Data,
        #[arg(long, value_name = "ID")]
        end: Option<String>,
        #[arg(long, conflicts_with = "end")]
        end_all: bool,
    },
    Link {
        #[command(flatten)]
        data: Data,
        #[arg(long, value_name = "URL", requires = "code")]
        server: Option<String>,
        #[arg(long)]
        code: Option<String>,
        #[arg(long)]
        yes: bool,
        #[arg(long, requires = "yes")]
        pictures: bool,
        #[arg(long, requires = "yes")]
        recordings: bool,
        #[arg(long)]
        now: bool,
    },
    Unlink {
        #[command(flatten)]
        data: Data,
    },
    Today {
        #[command(flatten)]
        data: Data,
        #[arg(long, alias = "learner")]
        animal: Option<String>,
    },
    Evidence {
        #[command(flatten)]
        data: Data,
        #[arg(long, alias = "learner")]
        animal: Option<String>,
    },
    Patterns {
        #[command(flatten)]
        data: Data,
        #[arg(long)]
        animal: Option<String>,
    },
    #[command(subcommand)]
    Design(Designing),
    #[command(subcommand)]
    Norms(norms::Norming),
    Agree {
        file: PathBuf,
        #[arg(long, default_value = "names", value_parser = one_of::<sayso_advisor::agreement::ScoreScale>(&["names", "steps", "numbers"]))]
        scale: sayso_advisor::agreement::ScoreScale,
        #[arg(long)]
        headed: bool,
    },
    Log {
        #[command(flatten)]
        data: Data,
    },
    Import {
        #[command(flatten)]
        data: Data,
        file: PathBuf,
        #[arg(long)]
        yes: bool,
        #[command(flatten)]
        others: OtherHomes,
    },
    Export {
        #[command(flatten)]
        data: Data,
        #[arg(long, value_enum, default_value_t = Form::Jsonl)]
        form: Form,
        #[arg(long, value_name = "FILE")]
        to: Option<PathBuf>,
    },
    Enrol {
        #[command(flatten)]
        data: Data,
        #[arg(long)]
        word: String,
        #[arg(long, value_name = "SECONDS", conflicts_with = "file", value_parser = typed::<f64>)]
        record: Option<f64>,
        #[arg(long)]
        another_button: bool,
        #[arg(required_unless_present = "record")]
        file: Option<PathBuf>,
    },
    Clips {
        #[command(flatten)]
        data: Data,
    },
    Picture(Picturing),
    Listen(Listening),
    Sheet(sheet::Printing),
    Backup {
        #[command(flatten)]
        data: Data,
        file: PathBuf,
    },
    Restore {
        #[command(flatten)]
        data: Data,
        file: PathBuf,
        #[command(flatten)]
        others: OtherHomes,
    },
    Check {
        #[command(flatten)]
        data: Data,
    },
    Completions {
        shell: clap_complete::Shell,
    },
    Man {
        #[arg(long, value_name = "DIR")]
        to: PathBuf,
    },
    Help {
        #[arg(value_name = "COMMAND")]
        of: Vec<String>,
    },
}

/// Forms of an export.
#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum Form {
    // JSON Lines: every event, whole.
    Jsonl,
    // CSV: one row an event.
    Csv,
    // An archive of the events and the recordings; needs --to.
    Tar,
}
