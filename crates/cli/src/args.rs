//! Every command and flag, in one place; help, completions and manual pages come from here.

mod picture;
pub mod sheet;

pub use picture::{Picturing, Shown};

use clap::{Args, Parser, Subcommand, ValueEnum};
use sayso_model::{CaseDesign, CaseExpected, CaseMeasure, CaseQuestion, CaseStop, CaseUnit, Day};
use std::path::PathBuf;

/// A notebook that does the maths for a person who teaches a companion animal to use a board of recorded-word buttons.
#[derive(Parser, Debug)]
#[command(name = "sayso", version, arg_required_else_help = true)]
pub struct Cli {
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
    #[command(flatten)]
    pub logging: Logging,
}

/// What goes wrong, and what was done, in lines a person can read.
#[derive(Args, Debug, Clone)]
pub struct Logging {
    /// Write the log to this file instead of standard error. At 1 MiB it is renamed to FILE.old, in place of the one
    /// before it, and begun anew.
    #[arg(long, global = true, value_name = "FILE")]
    pub log_file: Option<PathBuf>,
    /// What to log. If left out: info while serving and in a file, otherwise warn.
    #[arg(long, global = true, value_enum, value_name = "LEVEL")]
    pub log_level: Option<Level>,
}

/// What is logged, each with those before it.
#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum Level {
    /// What failed, and what would put it right.
    Error,
    /// What may need a look, such as wrong pairing codes.
    Warn,
    /// What was done: start, stop, pairings, imports, restores.
    Info,
    /// Also connections that broke off.
    Debug,
}

/// Where the notebook is.
#[derive(Args, Debug, Clone)]
pub struct Data {
    /// Directory of the notebook; made if it is not there.
    #[arg(long, value_name = "DIR")]
    pub data: PathBuf,
}

/// Whose events may come in.
#[derive(Args, Debug, Clone, Copy)]
pub struct OtherHomes {
    /// Take in events of a home that this notebook does not hold, or begin an empty one with several. It then holds
    /// several, for good.
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
    /// Port; 0 takes any free one.
    #[arg(long, default_value_t = 7297)]
    pub port: u16,
    /// Let phones on the home network in, each after typing the pairing code shown here: at all addresses of this
    /// machine, or only at the one given.
    #[arg(long, value_name = "ADDRESS", num_args = 0..=1, default_missing_value = "0.0.0.0")]
    pub lan: Option<std::net::IpAddr>,
    /// Serve phones over HTTPS, with a certificate made here that each phone installs once. The microphone, and pages
    /// that load while this machine is off, need it.
    #[arg(long, requires = "lan")]
    pub secure: bool,
}

/// What to listen to, and for what.
#[derive(Args, Debug, Clone)]
pub struct Listening {
    /// Directory of the notebook whose recordings are listened for.
    #[arg(long, value_name = "DIR", required_unless_present = "clips", conflicts_with = "clips")]
    pub data: Option<PathBuf>,
    /// Folder of clips listened for instead, one a file: 03_all_done.wav is the word "all done".
    #[arg(long, value_name = "DIR")]
    pub clips: Option<PathBuf>,
    /// Put what is heard into the notebook's log.
    #[arg(long, requires = "data")]
    pub log: bool,
    /// When the sound began, such as 2026-03-01T18:30:00Z; for a stream the moment its first bytes come, if left out.
    #[arg(long, value_name = "TIME")]
    pub started_at: Option<sayso_model::Moment>,
    /// Name or id of the animal the board is for; needed where there are several and the log should say which.
    #[arg(long, requires = "log", alias = "learner")]
    pub animal: Option<String>,
    /// Samples on standard input: s16le or f32le.
    #[arg(long, value_name = "FORMAT")]
    pub pcm: Option<sayso_listen::PcmFormat>,
    /// Samples a second and channel on standard input.
    #[arg(long, value_name = "HZ", default_value_t = 16_000)]
    pub rate: u32,
    /// Channels on standard input, interleaved.
    #[arg(long, default_value_t = 1)]
    pub channels: u16,
    /// Least confidence of a press, from 0 to 1.
    #[arg(long, value_name = "CONFIDENCE")]
    pub least: Option<f64>,
    /// Threads for files; as many as there are processors, if left out.
    #[arg(long)]
    pub threads: Option<std::num::NonZeroU16>,
    /// File to store how far hearing has come, and to go on from; removed at the end.
    #[arg(long, value_name = "FILE")]
    pub checkpoint: Option<PathBuf>,
    /// Listen through this machine's microphone instead, until Ctrl-C; the program must have been built with it.
    #[arg(long, conflicts_with_all = ["files", "checkpoint", "threads", "pcm", "started_at"])]
    pub microphone: bool,
    /// Sound files (WAV, FLAC, Ogg Vorbis, MP3), or - for standard input.
    #[arg(required_unless_present = "microphone", value_name = "FILE")]
    pub files: Vec<PathBuf>,
}

/// Reads one of a vocabulary by its name on the wire.
fn by_name<T: Copy + Send + Sync>(
    all: &'static [T],
    name: fn(T) -> &'static str,
) -> impl Fn(&str) -> Result<T, String> + Clone {
    move |text: &str| {
        let found = all.iter().copied().find(|t| name(*t) == text);
        found.ok_or_else(|| format!("one of: {}", all.iter().map(|t| name(*t)).collect::<Vec<_>>().join(", ")))
    }
}

/// A trial of a change to plan.
#[derive(Args, Debug, Clone)]
pub struct Planning {
    /// Directory of the notebook.
    #[arg(long, value_name = "DIR")]
    pub data: PathBuf,
    /// Name or id of the animal; may be left out where there is one.
    #[arg(long, alias = "learner")]
    pub animal: Option<String>,
    /// What is changed: quieter_button, new_place, faster_delivery or other.
    #[arg(long, value_parser = by_name(CaseQuestion::ALL, CaseQuestion::name))]
    pub question: CaseQuestion,
    /// What is changed, in words; with --question other.
    #[arg(long)]
    pub label: Option<String>,
    /// Design (reversal, multiple_baseline, alternating_treatments, changing_criterion); the one proposed for the
    /// question, if left out.
    #[arg(long, value_parser = by_name(CaseDesign::ALL, CaseDesign::name))]
    pub design: Option<CaseDesign>,
    /// What is measured: own_presses, joined_share, time_to_press, pressed_share, stress_signs or delivery_delay.
    #[arg(long, value_parser = by_name(CaseMeasure::ALL, CaseMeasure::name))]
    pub measure: CaseMeasure,
    /// What is expected of the change: more, less or either.
    #[arg(long, value_parser = by_name(CaseExpected::ALL, CaseExpected::name))]
    pub expected: CaseExpected,
    /// A word by what it says or its id; again for more. All words, if left out.
    #[arg(long)]
    pub word: Vec<String>,
    /// An animal of a multiple baseline across animals, by name or id; again for more.
    #[arg(long, value_name = "ANIMAL")]
    pub across: Vec<String>,
    /// What a point is: day or session.
    #[arg(long, default_value = "day", value_parser = by_name(CaseUnit::ALL, CaseUnit::name))]
    pub unit: CaseUnit,
    /// First day, such as 2026-03-01; tomorrow, if left out.
    #[arg(long)]
    pub first: Option<Day>,
    /// Days or sessions in all.
    #[arg(long)]
    pub points: u16,
    /// Phases of a reversal or a changing criterion.
    #[arg(long, default_value_t = 4)]
    pub phases: u16,
    /// Least points a phase.
    #[arg(long, default_value_t = 5)]
    pub least: u16,
    /// Least points between two changes of a multiple baseline.
    #[arg(long, default_value_t = 3)]
    pub apart: u16,
    /// Goal for people in seconds, one for each phase after the first; with a changing criterion.
    #[arg(long, value_name = "SECONDS")]
    pub goal: Vec<f64>,
}

/// What to do with trials of a change.
#[derive(Subcommand, Debug)]
pub enum Designing {
    /// List them.
    List {
        #[command(flatten)]
        data: Data,
        /// Name or id of the animal; all of them if left out.
        #[arg(long, alias = "learner")]
        animal: Option<String>,
    },
    /// Today's condition, the figures so far, and at the end the result. Later days are not told.
    Show {
        #[command(flatten)]
        data: Data,
        /// Id of the trial.
        trial: sayso_model::DesignId,
    },
    /// Plan one: the order is drawn by chance.
    Plan(Box<Planning>),
    /// Stop one.
    Stop {
        #[command(flatten)]
        data: Data,
        /// Id of the trial.
        trial: sayso_model::DesignId,
        /// Why: strong_sign, not_good, not_kept or other.
        #[arg(long, value_parser = by_name(CaseStop::ALL, CaseStop::name))]
        reason: CaseStop,
    },
}

/// The commands.
#[derive(Subcommand, Debug)]
pub enum Command {
    /// Make an invented home (by simulation) and serve it.
    Demo {
        /// Directory to keep it in; a temporary one, removed at the end, if left out.
        #[arg(long, value_name = "DIR")]
        data: Option<PathBuf>,
        /// Seed of the simulation.
        #[arg(long, default_value_t = 1)]
        seed: u64,
        #[command(flatten)]
        serving: Serving,
    },
    /// Serve your own notebook.
    Serve {
        #[command(flatten)]
        data: Data,
        #[command(flatten)]
        serving: Serving,
    },
    /// List the devices that were paired, or end one or all; while it is served or not.
    Devices {
        #[command(flatten)]
        data: Data,
        /// End the device of this id.
        #[arg(long, value_name = "ID")]
        end: Option<String>,
        /// End all of them.
        #[arg(long, conflicts_with = "end")]
        end_all: bool,
    },
    /// What to do today, and why.
    Today {
        #[command(flatten)]
        data: Data,
        /// Name or id of the animal; all of them if left out.
        #[arg(long, alias = "learner")]
        animal: Option<String>,
    },
    /// The evidence for each word.
    Evidence {
        #[command(flatten)]
        data: Data,
        /// Name or id of the animal; all of them if left out.
        #[arg(long, alias = "learner")]
        animal: Option<String>,
    },
    /// Patterns in presses and choices: growing or fading, before and after changes, what follows what, slips, likes by hour.
    Patterns {
        #[command(flatten)]
        data: Data,
        /// Name or id of the animal; all of them if left out.
        #[arg(long)]
        animal: Option<String>,
    },
    /// Does a change help this animal? Trials by single-case designs: planned, drawn by chance, tested against the draw.
    #[command(subcommand)]
    Design(Designing),
    /// Do two or more people see the same? Scores from a file: a line for each thing, a column for each person.
    Agree {
        /// The file; - for standard input.
        file: PathBuf,
        /// What the scores are: names, steps (only order counts) or numbers (differences count).
        #[arg(long, default_value = "names")]
        scale: sayso_advisor::agreement::ScoreScale,
        /// The first line holds the people's names.
        #[arg(long)]
        headed: bool,
    },
    /// Put events (JSON array, or JSON Lines) from standard input into the log.
    Log {
        #[command(flatten)]
        data: Data,
    },
    /// Read a CSV or JSON Lines file, or an archive; first shows what would happen.
    Import {
        #[command(flatten)]
        data: Data,
        /// The file.
        file: PathBuf,
        /// Do it, after the preview found nothing wrong.
        #[arg(long)]
        yes: bool,
        #[command(flatten)]
        others: OtherHomes,
    },
    /// Write every event to standard output or a file.
    Export {
        #[command(flatten)]
        data: Data,
        /// Form of the file.
        #[arg(long, value_enum, default_value_t = Form::Jsonl)]
        form: Form,
        /// File to write; standard output if left out.
        #[arg(long, value_name = "FILE")]
        to: Option<PathBuf>,
    },
    /// Enrol a sound file (WAV, FLAC, Ogg Vorbis or MP3), or what the microphone hears, as the recording on a word's button, and check it.
    Enrol {
        #[command(flatten)]
        data: Data,
        /// What the button says, or the id of the word.
        #[arg(long)]
        word: String,
        /// Record so many seconds through this machine's microphone instead; the program must have been built with it.
        #[arg(long, value_name = "SECONDS", conflicts_with = "file")]
        record: Option<f64>,
        /// The sound file.
        #[arg(required_unless_present = "record")]
        file: Option<PathBuf>,
    },
    /// Check all recordings: length, loudness, noise, and which are too alike.
    Clips {
        #[command(flatten)]
        data: Data,
    },
    /// Keep a picture (JPEG, PNG or WebP, at most 300 kB and 1024 pixels each way) of an animal, a reward or a word, or remove it.
    Picture(Picturing),
    /// Listen for buttons in sound files or a stream of samples, and print one JSON object a press.
    Listen(Listening),
    /// Write a sheet to print as PDF: progress, rules, likes or labels.
    Sheet(sheet::Printing),
    /// Copy the notebook to one file, while it is served or not.
    Backup {
        #[command(flatten)]
        data: Data,
        /// File to write; must not exist.
        file: PathBuf,
    },
    /// Bring back every event of a backup that the notebook lacks, while it is served or not.
    Restore {
        #[command(flatten)]
        data: Data,
        /// The backup.
        file: PathBuf,
        #[command(flatten)]
        others: OtherHomes,
    },
    /// Look the notebook through: the file, every event, every recording.
    Check {
        #[command(flatten)]
        data: Data,
    },
    /// Write what a shell completes commands and flags by to standard output.
    Completions {
        /// Shell.
        shell: clap_complete::Shell,
    },
    /// Write the manual pages, one a command.
    Man {
        /// Folder for them; made if it is not there.
        #[arg(long, value_name = "DIR")]
        to: PathBuf,
    },
}

/// Forms of an export.
#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum Form {
    /// JSON Lines: every event, whole.
    Jsonl,
    /// CSV: one row an event.
    Csv,
    /// An archive of the events and the recordings; needs --to.
    Tar,
}
