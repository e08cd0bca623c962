//! False presses where nothing is pressed: many hours made block by block, heard with three boards, never kept.

use super::boards::{BOARDS, Board, Range, boards};
use super::hear::{self, hear_made};
use super::scenes::{Home, quiet};
use super::score::{SAID_S, rate_and_bound};
use crate::error::{LabError, at, told};
use crate::experiments::line;
use crate::report::figure::table;
use crate::work::side_by_side;
use sayso_listen::Detection;
use sayso_sim::Chance;
use serde::{Deserialize, Serialize};
use std::path::{Path, PathBuf};

/// What to hear.
#[derive(Debug, Clone, clap::Args)]
pub struct Order {
    /// Hours in all; those that the file holds already are not heard again.
    #[arg(long, default_value_t = 200.0)]
    pub hours: f64,
    /// Blocks left out at the start, so that some can be heard again: what is kept begins with the block after them.
    #[arg(long, default_value_t = 0)]
    pub skip: usize,
    /// Minutes of a block, each in a room of its own.
    #[arg(long, default_value_t = 10.0)]
    pub block_minutes: f64,
    /// Seed everything follows from.
    #[arg(long, default_value_t = 1)]
    pub seed: u64,
    /// Speeds to listen for.
    #[arg(long, value_enum, default_value_t = Range::Usual)]
    pub speeds: Range,
    /// File of what was heard so far, to go on from; made if it is not there.
    #[arg(long, value_name = "FILE")]
    pub kept: PathBuf,
    /// Weights to hear with; the shipped ones, if left out.
    #[arg(long, value_name = "FILE")]
    pub weights: Option<PathBuf>,
    /// File for the tables as well.
    #[arg(long, value_name = "FILE")]
    pub out: Option<PathBuf>,
}

/// Blocks between two writings.
const AT_ONCE: usize = 4;

/// Kinds of blocks, in turn.
const KINDS: [(Home, bool, &str); 4] = [
    (Home::Flat, false, "flat"),
    (Home::House, false, "house"),
    (Home::Flat, true, "flat, television on"),
    (Home::House, true, "house, television on"),
];

/// A press that was none.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
struct False {
    board: usize,
    word: String,
    onset_s: f64,
    confidence: f64,
    speed: f64,
    /// Whether somebody said the word just then.
    said: bool,
}

/// What one block gave.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
struct Block {
    said: usize,
    wrong: Vec<False>,
}

/// Everything heard so far.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
struct Kept {
    seed: u64,
    #[serde(default)]
    skipped: usize,
    block_s: f64,
    speeds: Range,
    /// Where the weights come from, and the program.
    heard_with: String,
    blocks: Vec<Block>,
}

struct Ears {
    boards: Vec<Board>,
}

impl Ears {
    /// Makes a block, in which words of one board are said, and hears it with every board.
    fn block(&self, seed: u64, block_s: f64, index: usize) -> Result<Block, LabError> {
        let (home, television, _) = KINDS[index % KINDS.len()];
        let whose = (index / KINDS.len()) % self.boards.len();
        let sound =
            quiet(home, television, block_s, &self.boards[whose].buttons, Chance::new(seed, 20_000 + index as u64));
        let mut wrong = Vec::new();
        for (at, board) in self.boards.iter().enumerate() {
            let none = |h: Detection| {
                let near = |onset: f64, word: &str| word == h.word && (onset - h.onset_s).abs() <= SAID_S;
                let said = at == whose && sound.live.iter().any(|l| near(l.onset_s, &l.word));
                let Detection { word, onset_s, confidence, speed, .. } = h;
                False { board: at, word, onset_s, confidence, speed, said }
            };
            wrong.extend(hear_made(&sound.samples, &board.enrolled)?.into_iter().map(none));
        }
        Ok(Block { said: sound.live.len(), wrong })
    }
}

fn read(order: &Order, heard_with: &str) -> Result<Kept, LabError> {
    let fresh = || Kept {
        seed: order.seed,
        skipped: order.skip,
        block_s: 60.0 * order.block_minutes,
        speeds: order.speeds,
        heard_with: heard_with.to_owned(),
        blocks: Vec::new(),
    };
    let text = match std::fs::read_to_string(&order.kept) {
        Ok(text) => text,
        Err(e) if e.kind() == std::io::ErrorKind::NotFound => return Ok(fresh()),
        Err(e) => return Err(at(&order.kept)(e)),
    };
    let content = |reason: String| LabError::Content { path: order.kept.clone(), reason };
    let kept: Kept = serde_json::from_str(&text).map_err(|e| content(e.to_string()))?;
    if (Kept { blocks: Vec::new(), ..kept.clone() }) != fresh() {
        let run = |k: &Kept| {
            format!(
                "seed {}, {} blocks left out, of {} s, speeds {:?}, {}",
                k.seed, k.skipped, k.block_s, k.speeds, k.heard_with
            )
        };
        let reason = format!("it holds {}; name another file for {}", run(&kept), run(&fresh()));
        return Err(content(reason));
    }
    Ok(kept)
}

/// Writes beside and renames, so that an interruption leaves the former one.
fn write(path: &Path, kept: &Kept) -> Result<(), LabError> {
    let text = serde_json::to_string(kept).map_err(told)?;
    let beside = path.with_extension("part");
    std::fs::write(&beside, text).map_err(at(&beside))?;
    std::fs::rename(&beside, path).map_err(at(path))
}

/// Hears so many hours; answers the tables.
///
/// # Errors
/// [`LabError`] where the hours are none, or the file cannot be read or written, or holds another run.
pub fn hours(order: &Order) -> Result<String, LabError> {
    if !(order.hours > 0.0 && order.hours <= 100_000.0 && (0.25..=60.0).contains(&order.block_minutes)) {
        return Err(told("--hours is a number above 0, at most 100 000, --block-minutes from 0.25 to 60"));
    }
    let weights = hear::weights(order.weights.as_ref())?.provenance;
    let heard_with = format!("weights of {}, {}", weights.corpus_sha256.unwrap_or_default(), weights.made_by);
    let mut kept = read(order, &heard_with)?;
    let wanted = (order.hours * 3600.0 / kept.block_s).ceil() as usize;
    if kept.blocks.len() < wanted {
        let weights = hear::weights(order.weights.as_ref())?;
        let ears = Ears { boards: boards(order.seed, order.speeds, &weights)? };
        while kept.blocks.len() < wanted {
            let from = kept.blocks.len();
            let n = AT_ONCE.min(wanted - from);
            for block in side_by_side(n, |i, _| ears.block(order.seed, kept.block_s, order.skip + from + i)) {
                kept.blocks.push(block?);
            }
            write(&order.kept, &kept)?;
            let wrong: usize = kept.blocks.iter().map(|b| b.wrong.len()).sum();
            eprintln!("{} of {wanted} blocks, {wrong} false presses", kept.blocks.len());
        }
    }
    let tables = tables(&kept);
    if let Some(path) = &order.out {
        std::fs::write(path, &tables).map_err(at(path))?;
    }
    Ok(tables)
}

/// A row: false presses in so many hours, a day of 24 hours, and the exact bound.
fn row(name: String, wrong: usize, said: usize, hours: f64) -> Vec<String> {
    let days = hours / 24.0;
    let (rate, bound) = match rate_and_bound(wrong, days) {
        Some((rate, bound)) => (format!("{rate:.2}"), format!("{bound:.2}")),
        None => ("-".into(), "-".into()),
    };
    vec![name, format!("{hours:.1}"), wrong.to_string(), said.to_string(), rate, bound]
}

fn tables(kept: &Kept) -> String {
    let mut out = String::new();
    let hours = |n: usize| n as f64 * kept.block_s / 3600.0;
    let head = ["", "hours", "false presses", "of them live speech", "a day", "exact 95 % upper bound a day"];
    let count = |of: &dyn Fn(usize, &False) -> bool| {
        let all = kept.blocks.iter().enumerate().flat_map(|(i, b)| b.wrong.iter().map(move |w| (i, w)));
        let some: Vec<&False> = all.filter(|(i, w)| of(*i, w)).map(|(_, w)| w).collect();
        (some.len(), some.iter().filter(|w| w.said).count())
    };
    let by_board = BOARDS.iter().enumerate().map(|(at, (words, home))| {
        let (wrong, said) = count(&|_, w| w.board == at);
        row(format!("{words} words, {home:?}"), wrong, said, hours(kept.blocks.len()))
    });
    line!(out, "{}", table(&head, &by_board.collect::<Vec<_>>()));
    let kind = |i: usize| (kept.skipped + i) % KINDS.len();
    let by_kind = KINDS.iter().enumerate().map(|(at, (_, _, name))| {
        let blocks = (0..kept.blocks.len()).filter(|i| kind(*i) == at).count();
        let (wrong, said) = count(&|i, _| kind(i) == at);
        row(format!("{name} (all three boards)"), wrong, said, hours(blocks) * BOARDS.len() as f64)
    });
    line!(out, "{}", table(&head, &by_kind.collect::<Vec<_>>()));
    let said: usize = kept.blocks.iter().map(|b| b.said).sum();
    line!(
        out,
        "{said} times somebody said a word of one of the boards. Seed {}, speeds {:?}, heard with {}.",
        kept.seed,
        kept.speeds,
        kept.heard_with
    );
    out
}
