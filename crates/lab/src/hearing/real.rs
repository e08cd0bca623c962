//! False presses in sound files of others, in which no button of ours was pressed: people, music, animals, machines.

use super::boards::{BOARDS, Board, Range, boards};
use super::hear::{self, hear_file};
use super::score::rate_and_bound;
use crate::error::{LabError, at, told};
use crate::experiments::line;
use crate::report::figure::table;
use crate::work::side_by_side;
use std::path::{Path, PathBuf};

/// What to hear.
#[derive(Debug, Clone, clap::Args)]
pub struct Order {
    /// Folders of sound files; each is a row.
    #[arg(required = true, value_name = "FOLDER")]
    pub folders: Vec<PathBuf>,
    /// Seed of the boards.
    #[arg(long, default_value_t = 1)]
    pub seed: u64,
    /// Speeds to listen for.
    #[arg(long, value_enum, default_value_t = Range::Usual)]
    pub speeds: Range,
    /// Weights to hear with; the shipped ones, if left out.
    #[arg(long, value_name = "FILE")]
    pub weights: Option<PathBuf>,
    /// File for the table as well.
    #[arg(long, value_name = "FILE")]
    pub out: Option<PathBuf>,
}

/// Ends of names of what the ear reads.
const ENDS: [&str; 13] =
    ["wav", "aif", "aiff", "caf", "flac", "mp3", "ogg", "oga", "opus", "m4a", "mp4", "webm", "aac"];

/// What a folder gave.
#[derive(Default)]
struct Row {
    files: usize,
    /// Files that could not be read, and why.
    unread: Vec<String>,
    hours: f64,
    wrong: [usize; BOARDS.len()],
}

/// Every sound file below a folder, in order of its name.
fn files(folder: &Path) -> Result<Vec<PathBuf>, LabError> {
    let mut all = Vec::new();
    let mut left = vec![folder.to_owned()];
    while let Some(dir) = left.pop() {
        for entry in std::fs::read_dir(&dir).map_err(at(&dir))? {
            let entry = entry.map_err(at(&dir))?;
            let path = entry.path();
            let kind = entry.file_type().map_err(at(&path))?;
            let end = path.extension().map(|e| e.to_string_lossy().to_lowercase()).unwrap_or_default();
            if kind.is_dir() {
                left.push(path);
            } else if kind.is_file() && ENDS.contains(&end.as_str()) {
                all.push(path);
            }
        }
    }
    all.sort();
    Ok(all)
}

/// Hears one file with each board: its hours, and the presses told.
fn file(path: &Path, boards: &[Board]) -> Result<(f64, [usize; BOARDS.len()]), LabError> {
    let (mut seconds, mut wrong) = (0.0, [0; BOARDS.len()]);
    for (told, board) in wrong.iter_mut().zip(boards) {
        let heard = hear_file(path, &board.enrolled, false)?;
        seconds = heard.seconds;
        *told = heard.heard.len();
        for h in &heard.heard {
            eprintln!("{}: {} at {:.1} s, {:.2} sure", path.display(), h.word, h.onset_s, h.confidence);
        }
    }
    Ok((seconds / 3600.0, wrong))
}

fn folder(path: &Path, boards: &[Board]) -> Result<Row, LabError> {
    let files = files(path)?;
    let mut row = Row { files: files.len(), ..Row::default() };
    for (of, heard) in files.iter().zip(side_by_side(files.len(), |i, _| file(&files[i], boards))) {
        match heard {
            Ok((hours, wrong)) => {
                row.hours += hours;
                row.wrong.iter_mut().zip(wrong).for_each(|(sum, n)| *sum += n);
            }
            Err(why) => row.unread.push(format!("{}: {why}", of.display())),
        }
    }
    Ok(row)
}

/// Hears the folders; answers the table.
///
/// # Errors
/// [`LabError`] where a folder cannot be read or holds no sound. A file that cannot be read is counted and named.
pub fn hours(order: &Order) -> Result<String, LabError> {
    let weights = hear::weights(order.weights.as_ref())?;
    let boards = boards(order.seed, order.speeds, &weights)?;
    let mut rows = Vec::new();
    let mut sum = Row::default();
    for path in &order.folders {
        let row = folder(path, &boards)?;
        if row.files == 0 {
            return Err(told(format!("{} holds no sound file ({})", path.display(), ENDS.join(", "))));
        }
        row.unread.iter().for_each(|why| eprintln!("{why}"));
        let name = path.file_name().unwrap_or(path.as_os_str()).to_string_lossy();
        eprintln!("{name}: {:.2} hours, {:?} false presses", row.hours, row.wrong);
        rows.push(cells(&name, &row));
        sum.files += row.files;
        sum.unread.extend(row.unread);
        sum.hours += row.hours;
        sum.wrong.iter_mut().zip(row.wrong).for_each(|(all, n)| *all += n);
    }
    rows.push(cells("all", &sum));
    let words = BOARDS.map(|(words, _)| words.to_string()).join(" / ");
    let head = [
        "",
        "files",
        "not read",
        "hours",
        &format!("false presses, {words} words"),
        "exact 95 % upper bound a day, each board",
    ];
    let mut out = String::new();
    line!(out, "{}", table(&head, &rows));
    if let Some(path) = &order.out {
        std::fs::write(path, &out).map_err(at(path))?;
    }
    Ok(out)
}

fn cells(name: &str, row: &Row) -> Vec<String> {
    let bound = |n: usize| rate_and_bound(n, row.hours / 24.0).map_or("-".into(), |(_, bound)| format!("{bound:.2}"));
    let each = |say: &dyn Fn(usize) -> String| row.wrong.map(say).join(" / ");
    vec![
        name.to_owned(),
        row.files.to_string(),
        row.unread.len().to_string(),
        format!("{:.2}", row.hours),
        each(&|n| n.to_string()),
        each(&bound),
    ]
}
