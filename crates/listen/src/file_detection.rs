//! Whole files: decoded once, examined in pieces side by side, decided in order. Same presses as streaming.

use crate::decide::decider::Decider;
use crate::decide::hypothesis::Hypothesis;
use crate::detection::{Detection, LEAST_CONFIDENCE, by_onset};
use crate::dsp::resampler::{RATE, Resampler};
use crate::enrolled::Enrolled;
use crate::error::ListenError;
use crate::io::decode::{SoundInfo, decode_file};
use crate::io::downmix::{check_format, mix_down};
use crate::pipeline::Pipeline;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::{Arc, Mutex, PoisonError, mpsc};

/// Engine-rate samples a piece covers: four minutes. A multiple of the whitener's group of frames, as is [`BEFORE`].
const PIECE: u64 = 240 * RATE as u64;
/// Samples each piece looks at before its own, so that its memory is full.
const BEFORE: u64 = 2 * RATE as u64;

/// Where hearing a file stands; can be stored, and given to [`hear_file`] to go on from.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Checkpoint {
    done: u64,
    #[serde(alias = "settler")]
    decider: Decider,
}

impl Checkpoint {
    /// Seconds of the file examined.
    pub fn done_s(&self) -> f64 {
        self.done as f64 / RATE as f64
    }
}

/// News while a file is heard.
#[derive(Debug)]
pub struct Progress<'a> {
    /// Share of the file read, 0 to 1.
    pub share: f64,
    /// Presses newly decided.
    pub heard: &'a [Detection],
    /// State to store if hearing may be interrupted.
    pub checkpoint: &'a Checkpoint,
}

/// How to hear a file.
#[derive(Debug, Clone)]
pub struct FileHearing {
    /// Threads that examine sound, at least 1.
    pub threads: usize,
    /// Presses below this confidence are kept back.
    pub least_confidence: f64,
    /// Go on from here.
    pub resume: Option<Checkpoint>,
}

impl Default for FileHearing {
    fn default() -> Self {
        let threads = std::thread::available_parallelism().map_or(1, usize::from);
        Self { threads, least_confidence: LEAST_CONFIDENCE, resume: None }
    }
}

struct Job {
    index: u64,
    start: u64,
    from: u64,
    end: u64,
    sound: Vec<f32>,
}

/// Hears a whole file on several threads.
///
/// `news` is called after each piece of four minutes and may answer false to stop early. Memory does not grow with the
/// file's length.
///
/// # Errors
/// As [`decode_file`]; [`ListenError::Format`] when the file's rate or channels are out of range.
pub fn hear_file(
    path: &Path,
    enrolled: &Arc<Enrolled>,
    how: &FileHearing,
    mut news: impl FnMut(Progress) -> bool,
) -> Result<(Vec<Detection>, SoundInfo), ListenError> {
    let mut state = how
        .resume
        .clone()
        .unwrap_or_else(|| Checkpoint { done: 0, decider: Decider::new(enrolled.words().len(), how.least_confidence) });
    let (give, take) = mpsc::channel::<Job>();
    let take = Mutex::new(take);
    let (answer, answers) = mpsc::channel::<(u64, u64, Vec<Hypothesis>)>();
    let threads = how.threads.max(1);
    std::thread::scope(|scope| {
        for _ in 0..threads {
            let (take, answer, enrolled) = (&take, answer.clone(), Arc::clone(enrolled));
            scope.spawn(move || {
                loop {
                    let job = take.lock().unwrap_or_else(PoisonError::into_inner).recv();
                    let Ok(job) = job else { break };
                    let hypotheses = examine(&enrolled, &job);
                    if answer.send((job.index, job.end, hypotheses)).is_err() {
                        break;
                    }
                }
            });
        }
        drop(answer);
        let mut reorder = ReorderBuffer {
            answers,
            waiting: BTreeMap::new(),
            next: 0,
            flying: 0,
            heard: Vec::new(),
            enrolled: Arc::clone(enrolled),
        };
        let mut segmenter = Segmenter {
            held: Vec::new(),
            at: 0,
            next: state.done,
            index: 0,
            after: enrolled.longest_reach() + RATE as u64,
        };
        let mut front: Option<FrontEnd> = None;
        let mut wrong = None;
        let mut go_on = true;
        let info = decode_file(path, |block| {
            let front = match &mut front {
                Some(f) => f,
                None => match FrontEnd::new(block.rate, block.channels) {
                    Ok(f) => front.insert(f),
                    Err(e) => {
                        wrong = Some(e);
                        return false;
                    }
                },
            };
            front.push(block.samples, &mut segmenter.held);
            while go_on && let Some(job) = segmenter.cut(false) {
                while reorder.flying > threads && go_on {
                    go_on = reorder.collect(&mut state, block.progress, &mut news);
                }
                reorder.flying += 1;
                go_on &= give.send(job).is_ok();
            }
            go_on
        });
        if let Some(e) = wrong {
            return Err(e);
        }
        let info = info?;
        if let Some(f) = &mut front {
            f.resampler.finish(&mut segmenter.held);
        }
        let end = segmenter.at + segmenter.held.len() as u64;
        while go_on && let Some(job) = segmenter.cut(true) {
            reorder.flying += 1;
            go_on &= give.send(job).is_ok();
        }
        drop(give);
        while reorder.flying > 0 && go_on {
            go_on = reorder.collect(&mut state, 1.0, &mut news);
        }
        if go_on {
            reorder.heard.extend(state.decider.decide_up_to(u64::MAX, enrolled));
            reorder.heard.retain(|h| h.onset_s < end as f64 / RATE as f64);
        }
        by_onset(&mut reorder.heard);
        Ok((reorder.heard, info))
    })
}

fn examine(enrolled: &Arc<Enrolled>, job: &Job) -> Vec<Hypothesis> {
    let mut pipeline = Pipeline::new(Arc::clone(enrolled), job.from, false);
    let mut hypotheses = Vec::new();
    for part in job.sound.chunks(1 << 17) {
        pipeline.push(part);
        hypotheses.extend(pipeline.take_hypotheses());
    }
    pipeline.finish();
    hypotheses.extend(pipeline.take_hypotheses());
    hypotheses.retain(|v| (job.start..job.end).contains(&v.at));
    hypotheses
}

/// Decoded sound to engine-rate mono.
struct FrontEnd {
    channels: usize,
    partial: Vec<f32>,
    mono: Vec<f32>,
    resampler: Resampler,
}

impl FrontEnd {
    fn new(rate: u32, channels: u16) -> Result<Self, ListenError> {
        check_format(rate, channels)?;
        Ok(Self {
            channels: usize::from(channels),
            partial: Vec::new(),
            mono: Vec::new(),
            resampler: Resampler::new(rate as usize),
        })
    }

    fn push(&mut self, samples: &[f32], out: &mut Vec<f32>) {
        self.mono.clear();
        mix_down(samples, self.channels, &mut self.partial, &mut self.mono);
        self.resampler.push(&self.mono, out);
    }
}

/// Cuts the stream into overlapping pieces.
struct Segmenter {
    held: Vec<f32>,
    at: u64,
    next: u64,
    index: u64,
    after: u64,
}

impl Segmenter {
    fn cut(&mut self, last: bool) -> Option<Job> {
        let end = self.at + self.held.len() as u64;
        let from = self.next.saturating_sub(BEFORE);
        let ready = end >= self.next + PIECE + self.after || (last && end > self.next);
        if from > self.at {
            // Also while skipping what a checkpoint has done, so that nothing piles up.
            let old = ((from.min(end) - self.at) as usize).min(self.held.len());
            self.held.drain(..old);
            self.at += old as u64;
        }
        if !ready || self.at != from {
            return None;
        }
        let length = ((self.next + PIECE + self.after).min(end) - from) as usize;
        let job = Job {
            index: self.index,
            start: self.next,
            from,
            end: self.next + PIECE,
            sound: self.held[..length].to_vec(),
        };
        self.index += 1;
        self.next += PIECE;
        Some(job)
    }
}

/// Puts answers back in order and decides them.
struct ReorderBuffer {
    answers: mpsc::Receiver<(u64, u64, Vec<Hypothesis>)>,
    waiting: BTreeMap<u64, (u64, Vec<Hypothesis>)>,
    next: u64,
    flying: usize,
    heard: Vec<Detection>,
    enrolled: Arc<Enrolled>,
}

impl ReorderBuffer {
    fn collect(&mut self, state: &mut Checkpoint, share: f64, news: &mut impl FnMut(Progress) -> bool) -> bool {
        let Ok((index, end, hypotheses)) = self.answers.recv() else { return false };
        self.flying -= 1;
        self.waiting.insert(index, (end, hypotheses));
        let mut go_on = true;
        while let Some((end, hypotheses)) = self.waiting.remove(&self.next) {
            self.next += 1;
            state.decider.add(hypotheses);
            // The next piece's candidates start at `end` and are ready that much later at the earliest.
            let fresh =
                state.decider.decide_up_to((end + self.enrolled.shortest_reach()).saturating_sub(1), &self.enrolled);
            state.done = end;
            go_on &= news(Progress { share, heard: &fresh, checkpoint: state });
            self.heard.extend(fresh);
            if !go_on {
                break;
            }
        }
        go_on
    }
}
