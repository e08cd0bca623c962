//! Second look: is it the recording itself? Coherence of the sound with the clip, bin by bin, over the clip's length.
//!
//! A loudspeaker, a room and a microphone are a linear filter; over 64 ms windows that filter is nearly one complex
//! number per frequency bin, whatever the room. So if the clip is playing, the product of the sound's short-time
//! spectrum with the clip's conjugate keeps one phase per bin from window to window, once the clip is warped to the
//! right speed within about 0.05 %. A person saying the word keeps no phase at all. The statistic is the energy of the
//! per-bin sums over windows, divided by what sums of random phases would give: near 1 without the clip, and up to the
//! number of windows with it. Both spectra are first divided by the sound's own smoothed power, so that noise,
//! loud events and tones weigh what they tell. (Magnitude-squared coherence: Carter, Knapp and Nuttall 1973.)
//!
//! A press may be cut short by the next one: the sums are read at several shares of the length.

use crate::dsp::resampler::SpeedResampler;
use crate::dsp::simd::LANES;
use crate::dsp::stft::Stft;
use crate::speeds::Speeds;
use crate::verify::coherent_sum::{self, Lags, Ratios, ReplaySpectra, ReplaySpectrum, SHARES, SoundSpectra};
use crate::verify::phase_ramp::{PAIRS, PhaseRamps, STEP, TURNS};
use crate::verify::whitened_stft::{BINS, GRID, LOW, SMOOTH_ROWS, Segment, Sound, WINDOW};

/// Distance of the windows summed over while searching: half a window loses hardly anything.
const HOP: usize = 256;
/// Distance of the windows once the speed is known.
const FINE_HOP: usize = 128;
/// The search keeps to every other row of the sound.
const SPARSE: usize = 2;
/// Bins of the quick search: up to 1 562 Hz.
const QUICK: usize = 80;
const _: () = assert!(QUICK.is_multiple_of(LANES) && BINS.is_multiple_of(LANES));
/// Steps of the prepared speeds; finer steps are turns of phase.
const SPEED_STEP: f64 = 0.005;
/// The handicap of each share of the clip.
const HANDICAP: [f32; SHARES.len()] = [0.88, 0.92, 0.96, 1.0];

/// Speeds are named by their place on a grid of steps from 0.
fn speed_of(index: usize) -> f64 {
    SPEED_STEP * index as f64
}

/// Speed of a turn at a prepared speed.
fn turned(index: usize, turn: usize) -> f64 {
    speed_of(index) * (1.0 + STEP * (turn as f64 - PAIRS as f64))
}

/// A clip at the prepared speeds: those on the grid that it is listened for, and a little beyond.
pub(crate) struct Replays {
    spectra: ReplaySpectra,
    /// Place of the first.
    first: usize,
    count: usize,
}

impl Replays {
    pub(crate) fn prepare(clip: &[f32], speeds: Speeds) -> Self {
        let first = ((speeds.low() - BEYOND) / SPEED_STEP - 1e-6).ceil() as usize;
        let last = ((speeds.high() + BEYOND) / SPEED_STEP + 1e-6).floor() as usize;
        let resampler = SpeedResampler::new();
        let played: Vec<Vec<f32>> = (first..=last).map(|i| resampler.resample(clip, speed_of(i))).collect();
        let spectra = ReplaySpectra::new(&played, HOP, &mut Stft::new(WINDOW, LOW, BINS));
        Self { spectra, first, count: played.len() }
    }

    /// Places of the speeds that are searched near this one.
    fn near(&self, speed: f64) -> Vec<usize> {
        let near = |i: &usize| (speed_of(*i) - speed).abs() <= SPEED_REACH + 1e-9;
        (self.first..self.first + self.count).filter(near).collect()
    }

    fn at(&self, place: usize) -> ReplaySpectrum<'_> {
        self.spectra.at(place - self.first)
    }
}

/// Turns of phase for the longest of the clips, while searching and once the speed is known.
pub(crate) struct SearchRamps {
    search: PhaseRamps,
    fine: PhaseRamps,
}

impl SearchRamps {
    pub(crate) fn new(replays: &[Replays]) -> Self {
        let windows = replays.iter().map(|r| r.spectra.most_windows()).max().unwrap_or(0);
        Self {
            search: PhaseRamps::new(windows, HOP, PAIRS),
            fine: PhaseRamps::new((windows + 1) * HOP / FINE_HOP, FINE_HOP, 1),
        }
    }
}

/// What the second look found for one candidate.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Match {
    /// Coherence ratio at its best.
    pub(crate) ratio: f32,
    /// Best ratio of the quick search, and its mean at other speeds.
    pub(crate) quick: f32,
    pub(crate) quick_mean: f32,
    /// Ratio at other speeds, all bins: mean and nearly highest.
    pub(crate) other_mean: f32,
    pub(crate) other_high: f32,
    /// Best ratio of the scan over speeds, before its lag was refined.
    pub(crate) scan: f32,
    /// Which of [`SHARES`] fitted best.
    pub(crate) share: usize,
    /// Ratios at every share, at the best speed and lag.
    pub(crate) by_share: [f32; SHARES.len()],
    pub(crate) speed: f64,
    /// Engine-rate sample at which the clip starts.
    pub(crate) onset: f64,
    /// Windows of the clip.
    pub(crate) windows: usize,
}

/// Speeds prepared on either side of those listened for, so that a peak at their end is seen to be one.
const BEYOND: f64 = 0.01;
/// Speeds around the first look's best that are searched.
const SPEED_REACH: f64 = 0.025;

/// Engine-rate samples after a candidate's start that [`CoherenceSearch::look`] may read, for a clip of `samples` that the
/// first look thought plays at speed `near`.
pub(crate) fn reach(samples: usize, near: f64, speeds: Speeds) -> u64 {
    let slowest = (near - SPEED_REACH).max(speeds.low() - BEYOND) * (1.0 - STEP * PAIRS as f64);
    // The last row tried begins 320 samples after the clip's end and is a window long; smoothing looks further.
    (samples as f64 / slowest) as u64 + (320 + WINDOW) as u64 + SMOOTH_ROWS * GRID as u64
}

/// A ratio with its place: prepared speed and turn.
type Point = (f32, usize, usize);

/// Best over shares of the mean of two lags' ratios.
fn pair(a: &Ratios, b: &Ratios, e: usize) -> f32 {
    (0..SHARES.len()).map(|k| 0.5 * (a[k][e] + b[k][e]) * HANDICAP[k]).fold(0.0, f32::max)
}

/// The highest point, and the mean and 95th percentile of points at other speeds.
fn summary(profile: &[Point]) -> Option<(Point, f32, f32)> {
    let top = *profile.iter().max_by(|a, b| a.0.total_cmp(&b.0))?;
    let away = |p: &&Point| (turned(p.1, p.2) - turned(top.1, top.2)).abs() > 0.002;
    let mut others: Vec<f32> = profile.iter().filter(away).map(|p| p.0).collect();
    if others.is_empty() || top.0 <= 0.0 {
        return None;
    }
    others.sort_by(f32::total_cmp);
    let mean = others.iter().sum::<f32>() / others.len() as f32;
    Some((top, mean, others[(others.len() * 95 / 100).min(others.len() - 1)]))
}

/// Where a candidate lies, and what to compare it with.
pub(crate) struct Query<'a> {
    pub(crate) clip: &'a [f32],
    pub(crate) replays: &'a Replays,
    pub(crate) ramps: &'a SearchRamps,
    /// Engine-rate sample near which the clip seems to start.
    pub(crate) at: u64,
    /// Speed the first look thought best.
    pub(crate) near: f64,
}

/// How far a candidate has been looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Stage {
    /// All speeds in the lower bins.
    Quick,
    /// All bins at the speeds liked best so far.
    Liked,
    /// All bins at all speeds.
    Scanned,
}

/// First row of the sound gathered, before the first look's place.
const BEFORE: i64 = 5;
/// Lags searched, in rows, and those tried once the speed is known.
const SEARCHED: [i64; 3] = [-1, 1, 3];
const TRIED: std::ops::RangeInclusive<i64> = -4..=6;

/// Where the row `lag` rows after the first look's place stands among every other row gathered, and among all.
const fn sparse(lag: i64) -> usize {
    (lag + BEFORE) as usize / SPARSE
}

const fn dense(lag: i64) -> usize {
    (lag + BEFORE) as usize
}

/// What the second look works with.
pub(crate) struct CoherenceSearch {
    pub(crate) sound: Sound,
    around: SoundSpectra,
    ratios: Vec<Ratios>,
    spectra: Stft,
    resampler: SpeedResampler,
}

impl CoherenceSearch {
    /// For a stream that begins at this engine-rate sample.
    pub(crate) fn new(first_sample: u64) -> Self {
        Self {
            sound: Sound::new(first_sample),
            around: SoundSpectra::default(),
            ratios: Vec::new(),
            spectra: Stft::new(WINDOW, LOW, BINS),
            resampler: SpeedResampler::new(),
        }
    }

    /// Rows `from..until` of the sound, of which every `step`th is gathered.
    fn gather(&mut self, stretch: &Segment, rows: std::ops::Range<u64>, step: usize, bins: usize) -> Option<()> {
        self.sound.prepare(stretch, rows.clone().step_by(step));
        let rows: Option<Vec<_>> = rows.step_by(step).map(|i| self.sound.row(i)).collect();
        self.around.gather(&rows?, bins);
        Some(())
    }

    /// Examines one candidate. `go_on` sees what is known after each stage and says whether more is worth while.
    pub(crate) fn look(
        &mut self,
        stretch: &Segment,
        q: &Query,
        mut go_on: impl FnMut(Stage, &Match) -> bool,
    ) -> Option<Match> {
        // An odd row, so that the lags searched are even ones.
        let base = ((q.at as f64 - (WINDOW / 2) as f64) / GRID as f64 / 2.0).floor() as i64 * 2 + 1;
        let first = base - BEFORE;
        if first < self.sound.first as i64 {
            return None;
        }
        let speeds = q.replays.near(q.near);
        let clips = |i: &[usize]| -> Vec<ReplaySpectrum> { i.iter().map(|i| q.replays.at(*i)).collect() };
        let middle = *speeds.get(speeds.len() / 2)?;
        let windows = clips(&speeds).iter().map(ReplaySpectrum::windows).max()?;
        let rows = first as u64..(base + SEARCHED[2]) as u64 + ((windows - 1) * HOP / GRID) as u64 + 1;
        let stride = HOP / GRID / SPARSE;

        self.gather(stretch, rows.clone(), SPARSE, QUICK)?;
        let hold = coherent_sum::hold(&self.around, q.replays.at(middle), sparse(0), stride);
        let lags = Lags { first_rows: &SEARCHED.map(sparse)[..2], stride };
        let (around, turns) = (&self.around, &q.ramps.search);
        coherent_sum::ratios::<{ coherent_sum::QUICK }>(around, &clips(&speeds), turns, lags, hold, &mut self.ratios);
        let mut profile: Vec<Point> = Vec::new();
        for (i, r) in speeds.iter().zip(self.ratios.chunks_exact(2)) {
            let quick = (1..TURNS).step_by(2);
            profile.extend(quick.map(|e| (pair(&r[0], &r[0], e).max(pair(&r[1], &r[1], e)), *i, e)));
        }
        let (top, quick_mean, _) = summary(&profile)?;
        let mut out = Match { quick: top.0, quick_mean, ..Match::default() };
        if !go_on(Stage::Quick, &out) {
            return None;
        }

        // The speeds the quick search liked come first; unless one of them shows promise, the rest are not worth the work.
        let liking = |i: usize| profile.iter().filter(|p| p.1 == i).map(|p| p.0).fold(0.0, f32::max);
        let mut order: Vec<(f32, usize)> = speeds.iter().map(|i| (liking(*i), *i)).collect();
        order.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
        let order: Vec<usize> = order.into_iter().map(|o| o.1).collect();
        self.gather(stretch, rows, SPARSE, BINS)?;
        let around = &self.around;
        let hold = coherent_sum::hold(around, q.replays.at(middle), sparse(0), stride);
        let mut scanned: Vec<Point> = Vec::new();
        let (liked, rest) = order.split_at(LIKED.min(order.len()));
        for part in [liked, rest] {
            let lags = Lags { first_rows: &SEARCHED.map(sparse), stride };
            coherent_sum::ratios::<{ coherent_sum::ALL }>(around, &clips(part), turns, lags, hold, &mut self.ratios);
            for (i, r) in part.iter().zip(self.ratios.chunks_exact(3)) {
                // The last turn of one prepared speed is the first of the next.
                scanned.extend((0..TURNS - 1).map(|e| (pair(&r[0], &r[1], e).max(pair(&r[1], &r[2], e)), *i, e)));
            }
            out.scan = scanned.iter().map(|p| p.0).fold(0.0, f32::max);
            if !go_on(Stage::Liked, &out) {
                return None;
            }
        }
        let (top, other_mean, other_high) = summary(&scanned)?;
        (out.other_mean, out.other_high) = (other_mean, other_high);
        if !go_on(Stage::Scanned, &out) {
            return None;
        }
        self.refine(stretch, q, base, turned(top.1, top.2), hold, &mut out)?;
        Some(out)
    }

    /// Finds the best lag near one speed.
    fn refine(&mut self, stretch: &Segment, q: &Query, base: i64, near: f64, hold: f32, out: &mut Match) -> Option<()> {
        let replays = ReplaySpectra::new(&[self.resampler.resample(q.clip, near)], FINE_HOP, &mut self.spectra);
        let clip = replays.at(0);
        let stride = FINE_HOP / GRID;
        let rows = (base - BEFORE) as u64..(base + TRIED.end()) as u64 + ((clip.windows() - 1) * stride) as u64 + 1;
        self.gather(stretch, rows, 1, BINS)?;
        let first_rows: Vec<usize> = TRIED.map(dense).collect();
        let lags = Lags { first_rows: &first_rows, stride };
        coherent_sum::ratios::<{ coherent_sum::NEXT }>(
            &self.around,
            &[clip],
            &q.ramps.fine,
            lags,
            hold,
            &mut self.ratios,
        );
        let lags = &self.ratios;
        for a in 0..lags.len() - 2 {
            for e in PAIRS - 1..=PAIRS + 1 {
                for k in 0..SHARES.len() {
                    let (u, v) = (lags[a][k][e], lags[a + 2][k][e]);
                    if 0.5 * (u + v) * HANDICAP[k] > out.ratio {
                        out.ratio = 0.5 * (u + v) * HANDICAP[k];
                        out.share = k;
                        out.by_share = std::array::from_fn(|j| 0.5 * (lags[a][j][e] + lags[a + 2][j][e]));
                        out.speed = near * (1.0 + STEP * (e as f64 - PAIRS as f64));
                        // The later of the two lags holds the room's reply; weigh them for the start.
                        let lean = f64::from(v / (u + v + 1e-9));
                        let row = (base + TRIED.start()) as f64 + a as f64 + 2.0 * lean * lean;
                        out.onset = row * GRID as f64 + (WINDOW / 2) as f64;
                        out.windows = clip.windows();
                    }
                }
            }
        }
        (out.windows > 0).then_some(())
    }
}

/// Prepared speeds examined before giving up.
const LIKED: usize = 4;
