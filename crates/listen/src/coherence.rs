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

use crate::lanes::wide;
use crate::sinc::{RATE, Warper};
use crate::spectra::Spectra;
use crate::whitened::{BINS, GRID, LOW, Row, SMOOTH_ROWS, Sound, Stretch, WINDOW};

/// Distance of the windows summed over.
const HOP: usize = 128;
const STRIDE: u64 = (HOP / GRID) as u64;
/// Bins of the quick search: up to 1 562 Hz.
const QUICK: usize = 80;
/// Clip amplitudes above this many times their root mean square are held there, so that no burst rules alone.
const CLAMP: f32 = 2.0;
/// Steps of the prepared speeds; finer steps are phase ramps.
const SPEED_STEP: f64 = 0.005;
const SLOWEST: f64 = 0.93;
const PREPARED: usize = 25;
/// Longest stretch summed with phase; longer clips add stretches without.
const STRETCH: usize = 62;
/// Shares of the clip at which the sums are read, and the handicap of each.
pub(crate) const SHARES: [f32; 4] = [0.46, 0.6, 0.78, 1.0];
const HANDICAP: [f32; 4] = [0.88, 0.92, 0.96, 1.0];

/// One clip's spectra at the prepared speeds.
pub(crate) struct Print {
    /// Per speed: windows, then per window `BINS` real, `BINS` imaginary parts.
    spectra: Vec<(usize, Vec<f32>)>,
}

fn speed_of(index: usize) -> f64 {
    SLOWEST + SPEED_STEP * index as f64
}

impl Print {
    pub(crate) fn new(clip: &[f32]) -> Self {
        let warper = Warper::new();
        let spectra = Spectra::new(WINDOW, LOW, BINS);
        let all = (0..PREPARED).map(|i| {
            let mut x = vec![0.0f32; WINDOW / 2];
            x.extend(warper.warp(clip, speed_of(i)));
            x.extend(std::iter::repeat_n(0.0, WINDOW / 2 + HOP));
            let windows = (x.len() - WINDOW) / HOP + 1;
            let mut out = vec![0.0f32; windows * 2 * BINS];
            for m in 0..windows {
                let (re, im) = out[m * 2 * BINS..(m + 1) * 2 * BINS].split_at_mut(BINS);
                spectra.frame(&x[m * HOP..m * HOP + WINDOW], re, im);
            }
            (windows, out)
        });
        Self { spectra: all.collect() }
    }

    fn windows(&self) -> usize {
        self.spectra.iter().map(|s| s.0).max().unwrap_or(0)
    }
}

/// Phase ramps for small changes of speed: per window and bin, a turn by `step`.
pub(crate) struct Ramps {
    quick: Turns,
    fine: Turns,
}

struct Turns {
    start: Vec<f32>,
    step: Vec<f32>,
}

impl Turns {
    fn new(windows: usize, start: f64, step: f64) -> Self {
        let table = |e: f64| {
            let mut out = Vec::with_capacity(windows * 2 * BINS);
            for m in 0..windows {
                // Phases are counted from the middle of a stretch, where rounding of the ramp matters least.
                let t = (m * HOP) as f64 / RATE as f64;
                let angle = |k: usize| -2.0 * std::f64::consts::PI * e * t * ((LOW + k) * RATE) as f64 / WINDOW as f64;
                out.extend((0..BINS).map(|k| angle(k).cos() as f32));
                out.extend((0..BINS).map(|k| angle(k).sin() as f32));
            }
            out
        };
        Self { start: table(start), step: table(step) }
    }
}

const QUICK_STEP: f64 = 0.001;
const QUICK_COUNT: usize = 5;
const FINE_STEP: f64 = 0.0005;
const FINE_COUNT: usize = 11;

impl Ramps {
    pub(crate) fn new(prints: &[Print]) -> Self {
        let windows = prints.iter().map(Print::windows).max().unwrap_or(0);
        Self { quick: Turns::new(windows, -0.002, QUICK_STEP), fine: Turns::new(windows, -0.0025, FINE_STEP) }
    }
}

/// Sums at one lag: `[share][ramp]` ratio of coherent energy to that of random phases.
type Ratios = [[f32; FINE_COUNT]; SHARES.len()];

/// Lanes worked on together; sums for all ramps then stay in registers or close to them.
const LANES: usize = 8;

/// The core sum for one prepared speed and one lag, over the first `bins` bins and `COUNT` ramps.
fn ratios<const COUNT: usize>(
    sound: &Sound,
    first_row: u64,
    print: &(usize, Vec<f32>),
    turns: &Turns,
    bins: usize,
) -> Option<Ratios> {
    let windows = print.0;
    let rows: Option<Vec<&Row>> = (0..windows).map(|m| sound.row(first_row + m as u64 * STRIDE)).collect();
    let rows = rows?;
    let stops: [usize; SHARES.len()] = SHARES.map(|s| (s * windows as f32).ceil() as usize);
    let mut sums = [[0.0f32; FINE_COUNT]; SHARES.len()];
    let mut random = [0.0f32; SHARES.len()];
    wide(
        #[inline(always)]
        || {
            let limit = CLAMP * CLAMP * mean_power(&rows, &print.1, bins) + 1e-12;
            for k in (0..bins).step_by(LANES) {
                add_lanes::<COUNT>(&rows, &print.1, turns, k, limit, &stops, &mut sums, &mut random);
            }
        },
    );
    let mut out: Ratios = [[0.0; FINE_COUNT]; SHARES.len()];
    for share in 0..SHARES.len() {
        for e in 0..COUNT {
            out[share][e] = sums[share][e] / random[share].max(1e-9);
        }
    }
    Some(out)
}

/// Mean power of the clip as the sound's noise would have it.
#[inline(always)]
fn mean_power(rows: &[&Row], spectra: &[f32], bins: usize) -> f32 {
    let mut acc = [0.0f32; 16];
    for (row, x) in rows.iter().zip(spectra.chunks_exact(2 * BINS)) {
        let (xr, xi) = x.split_at(BINS);
        for k in (0..bins).step_by(16) {
            let (a, b, q) = (&xr[k..k + 16], &xi[k..k + 16], &row.scale[k..k + 16]);
            for i in 0..16 {
                acc[i] += (a[i] * a[i] + b[i] * b[i]) * q[i] * q[i];
            }
        }
    }
    acc.iter().sum::<f32>() / (rows.len() * bins).max(1) as f32
}

/// Sums of eight bins over all windows, read at every stop.
#[inline(always)]
#[allow(clippy::too_many_arguments)]
fn add_lanes<const COUNT: usize>(
    rows: &[&Row],
    spectra: &[f32],
    turns: &Turns,
    k: usize,
    limit: f32,
    stops: &[usize; SHARES.len()],
    sums: &mut [[f32; FINE_COUNT]; SHARES.len()],
    random: &mut [f32; SHARES.len()],
) {
    let mut re = [[0.0f32; LANES]; COUNT];
    let mut im = [[0.0f32; LANES]; COUNT];
    let mut done = [0.0f32; COUNT];
    let mut chance = [0.0f32; LANES];
    let mut next = 0;
    for (m, row) in rows.iter().enumerate() {
        let at = m * 2 * BINS + k;
        let (xr, xi) = (&spectra[at..at + LANES], &spectra[at + BINS..at + BINS + LANES]);
        let (cr, ci) = (&turns.start[at..at + LANES], &turns.start[at + BINS..at + BINS + LANES]);
        let (tr, ti) = (&turns.step[at..at + LANES], &turns.step[at + BINS..at + BINS + LANES]);
        let (yr, yi) = (&row.re[k..k + LANES], &row.im[k..k + LANES]);
        let (q, p) = (&row.scale[k..k + LANES], &row.power[k..k + LANES]);
        let (mut zr, mut zi) = ([0.0f32; LANES], [0.0f32; LANES]);
        for i in 0..LANES {
            let a2 = (xr[i] * xr[i] + xi[i] * xi[i]) * q[i] * q[i];
            let held = a2.min(limit);
            let g = q[i] * (held / (a2 + 1e-12)).sqrt();
            chance[i] += held * p[i];
            // sound times conj(clip), then the first turn
            let (br, bi) = (g * (yr[i] * xr[i] + yi[i] * xi[i]), g * (yi[i] * xr[i] - yr[i] * xi[i]));
            zr[i] = br * cr[i] - bi * ci[i];
            zi[i] = br * ci[i] + bi * cr[i];
        }
        for e in 0..COUNT {
            for i in 0..LANES {
                re[e][i] += zr[i];
                im[e][i] += zi[i];
                let r = zr[i] * tr[i] - zi[i] * ti[i];
                zi[i] = zr[i] * ti[i] + zi[i] * tr[i];
                zr[i] = r;
            }
        }
        while next < SHARES.len() && m + 1 >= stops[next] {
            random[next] += chance.iter().sum::<f32>();
            for e in 0..COUNT {
                sums[next][e] += done[e] + energy(&re[e], &im[e]);
            }
            next += 1;
        }
        if (m + 1) % STRETCH == 0 {
            for e in 0..COUNT {
                done[e] += energy(&re[e], &im[e]);
            }
            re = [[0.0; LANES]; COUNT];
            im = [[0.0; LANES]; COUNT];
        }
    }
}

#[inline(always)]
fn energy(re: &[f32; LANES], im: &[f32; LANES]) -> f32 {
    let mut sum = 0.0;
    for i in 0..LANES {
        sum += re[i] * re[i] + im[i] * im[i];
    }
    sum
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

/// Engine-rate samples after a candidate's start that [`look`] may read, for a clip of `samples`.
pub(crate) fn reach(samples: usize) -> u64 {
    (samples as f64 / SLOWEST) as u64 + (2 * WINDOW) as u64 + SMOOTH_ROWS * GRID as u64
}

/// A ratio with its place: prepared speed and ramp.
type Point = (f32, usize, usize);

/// Best over shares of the mean of two lags' ratios.
fn pair(a: &Ratios, b: &Ratios, e: usize) -> f32 {
    (0..SHARES.len()).map(|k| 0.5 * (a[k][e] + b[k][e]) * HANDICAP[k]).fold(0.0, f32::max)
}

/// The highest point, and the mean and 95th percentile of points at other speeds.
fn summary(profile: &[Point], speed: impl Fn(&Point) -> f64) -> Option<(Point, f32, f32)> {
    let top = *profile.iter().max_by(|a, b| a.0.total_cmp(&b.0))?;
    let away = |p: &&Point| (speed(p) - speed(&top)).abs() > 0.002;
    let mut others: Vec<f32> = profile.iter().filter(away).map(|p| p.0).collect();
    if others.is_empty() || top.0 <= 0.0 {
        return None;
    }
    others.sort_by(f32::total_cmp);
    let mean = others.iter().sum::<f32>() / others.len() as f32;
    Some((top, mean, others[(others.len() * 95 / 100).min(others.len() - 1)]))
}

/// Where a candidate lies, and what to compare it with.
pub(crate) struct Question<'a> {
    pub(crate) print: &'a Print,
    pub(crate) ramps: &'a Ramps,
    /// Engine-rate sample near which the clip seems to start.
    pub(crate) at: u64,
    /// Speed the first look thought best, and how far from it to search.
    pub(crate) near: f64,
    pub(crate) within: f64,
    /// Ratio below which a candidate is not worth more work.
    pub(crate) least: f32,
}

/// Examines one candidate. `go_on` sees the quick search's best and mean and says whether more is worth while.
pub(crate) fn look(
    sound: &mut Sound,
    stretch: &Stretch,
    q: &Question,
    go_on: impl Fn(f32, f32) -> bool,
) -> Option<Match> {
    let (print, ramps) = (q.print, q.ramps);
    let base = ((q.at as f64 - (WINDOW / 2) as f64) / GRID as f64).round() as i64;
    let (before, after) = (4i64, 6i64);
    let first = base - before;
    if first < sound.first as i64 {
        return None;
    }
    let end = (base + after) as u64 + print.windows() as u64 * STRIDE + 1;
    sound.prepare(stretch, first as u64, end);
    let speeds: Vec<usize> = (0..PREPARED).filter(|i| (speed_of(*i) - q.near).abs() <= q.within + 1e-9).collect();
    let at = |lag: i64| (base + lag) as u64;
    let mut profile: Vec<Point> = Vec::new();
    for &i in &speeds {
        let early = ratios::<QUICK_COUNT>(sound, at(-1), &print.spectra[i], &ramps.quick, QUICK)?;
        let late = ratios::<QUICK_COUNT>(sound, at(1), &print.spectra[i], &ramps.quick, QUICK)?;
        profile.extend((0..QUICK_COUNT).map(|e| (pair(&early, &early, e).max(pair(&late, &late, e)), i, e)));
    }
    let (top, quick_mean, _) = summary(&profile, |p| speed_of(p.1) * (0.998 + QUICK_STEP * p.2 as f64))?;
    if !go_on(top.0, quick_mean) {
        return None;
    }
    let mut out = Match { quick: top.0, quick_mean, ..Match::default() };
    // The speeds the quick search liked come first; unless one of them shows promise, the rest are not worth the work.
    let liking = |i: usize| profile.iter().filter(|p| p.1 == i).map(|p| p.0).fold(0.0, f32::max);
    let mut order: Vec<(f32, usize)> = speeds.iter().map(|i| (liking(*i), *i)).collect();
    order.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
    let mut scanned: Vec<Point> = Vec::new();
    for (n, (_, i)) in order.into_iter().enumerate() {
        if n == LIKED && scanned.iter().all(|p| p.0 < q.least) {
            return None;
        }
        let r = [
            ratios::<FINE_COUNT>(sound, at(-1), &print.spectra[i], &ramps.fine, BINS)?,
            ratios::<FINE_COUNT>(sound, at(1), &print.spectra[i], &ramps.fine, BINS)?,
            ratios::<FINE_COUNT>(sound, at(3), &print.spectra[i], &ramps.fine, BINS)?,
        ];
        scanned.extend((0..FINE_COUNT - 1).map(|e| (pair(&r[0], &r[1], e).max(pair(&r[1], &r[2], e)), i, e)));
    }
    let fine_speed = |i: usize, e: usize| speed_of(i) * (0.9975 + FINE_STEP * e as f64);
    let (top, other_mean, other_high) = summary(&scanned, |p| fine_speed(p.1, p.2))?;
    if top.0 < q.least {
        return None;
    }
    (out.scan, out.other_mean, out.other_high) = (top.0, other_mean, other_high);
    refine(sound, base, &print.spectra[top.1], ramps, top.2, &mut out)?;
    out.speed = speed_of(top.1) * (0.9975 + FINE_STEP * out.speed);
    Some(out)
}

/// Prepared speeds examined before giving up.
const LIKED: usize = 5;

/// Finds the best lag at one prepared speed; leaves the ramp's place in `out.speed`.
fn refine(
    sound: &Sound,
    base: i64,
    spectra: &(usize, Vec<f32>),
    ramps: &Ramps,
    near: usize,
    out: &mut Match,
) -> Option<()> {
    let mut lags = Vec::new();
    for lag in -3i64..=5 {
        lags.push(ratios::<FINE_COUNT>(sound, (base + lag) as u64, spectra, &ramps.fine, BINS)?);
    }
    for a in 0..lags.len() - 2 {
        for e in near.saturating_sub(1)..(near + 2).min(FINE_COUNT) {
            for k in 0..SHARES.len() {
                let (u, v) = (lags[a][k][e], lags[a + 2][k][e]);
                if 0.5 * (u + v) * HANDICAP[k] > out.ratio {
                    out.ratio = 0.5 * (u + v) * HANDICAP[k];
                    out.share = k;
                    out.by_share = std::array::from_fn(|j| 0.5 * (lags[a][j][e] + lags[a + 2][j][e]));
                    out.speed = e as f64;
                    // The later of the two lags holds the room's reply; weigh them for the start.
                    let lean = f64::from(v / (u + v + 1e-9));
                    out.onset = (base as f64 + a as f64 - 3.0 + 2.0 * lean * lean) * GRID as f64 + (WINDOW / 2) as f64;
                    out.windows = spectra.0;
                }
            }
        }
    }
    (out.windows > 0).then_some(())
}
