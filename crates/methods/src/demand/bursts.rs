//! Bursts of presses: stretches in which presses follow each other faster than is usual for this board.
//!
//! Source: Kleinberg 2002, Bursty and hierarchical structure in streams (KDD; Data Min Knowl Discov 7:373, 2003): an
//! automaton whose state `i` expects gaps `s^i` times shorter than the mean gap, going up costs `gamma ln n` a level,
//! going down is free; the cheapest path is found exactly. Page: `docs/methods/demand.md`.

use super::DemandError;

/// Settings of the automaton.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BurstSettings {
    /// Factor between the rates of neighbouring levels, above 1 (Kleinberg uses 2).
    pub scaling: f64,
    /// Reluctance to go up a level, above 0 (Kleinberg uses 1).
    pub reluctance: f64,
    /// Seconds below which two presses count as simultaneous: shorter gaps are taken as this long, above 0.
    pub resolution: f64,
}

impl Default for BurstSettings {
    fn default() -> Self {
        Self { scaling: 2.0, reluctance: 1.0, resolution: 1.0 }
    }
}

/// One burst; bursts of a higher level lie inside one of the level below.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Burst {
    /// Level, from 1: presses come about `scaling^level` times as fast as on average.
    pub level: u32,
    /// Index of the first press.
    pub first: usize,
    /// Index of the last press.
    pub last: usize,
    /// Time of the first press.
    pub start: f64,
    /// Time of the last press.
    pub end: f64,
}

impl Burst {
    /// Presses in the burst.
    #[must_use]
    pub fn presses(&self) -> usize {
        self.last - self.first + 1
    }
}

/// More levels than this cannot matter for presses of buttons.
const MAX_LEVELS: usize = 25;

/// Finds the bursts in press times (seconds, not decreasing; equal times allowed). Fewer than 3 presses hold none.
///
/// # Errors
/// [`DemandError::TimeGoesBack`] if a clock jumped back, [`DemandError::OutOfRange`] for a time that is not finite or a
/// setting out of its range.
///
/// ```
/// use sayso_methods::demand::bursts::{BurstSettings, bursts};
/// let mut times: Vec<f64> = (0..20).map(|k| 3600.0 * f64::from(k)).collect();
/// times.extend((1..10).map(|k| 19.0 * 3600.0 + 5.0 * f64::from(k)));
/// let found = bursts(&times, &BurstSettings::default())?;
/// assert!(found.iter().any(|burst| burst.first == 19 && burst.presses() == 10));
/// # Ok::<(), sayso_methods::demand::DemandError>(())
/// ```
pub fn bursts(times: &[f64], settings: &BurstSettings) -> Result<Vec<Burst>, DemandError> {
    let BurstSettings { scaling, reluctance, resolution } = *settings;
    for (what, value, least) in
        [("scaling", scaling, 1.0), ("reluctance", reluctance, 0.0), ("resolution", resolution, 0.0)]
    {
        if !(value.is_finite() && value > least) {
            return Err(DemandError::OutOfRange { what, value });
        }
    }
    if let Some(&value) = times.iter().find(|time| !time.is_finite()) {
        return Err(DemandError::OutOfRange { what: "time of a press", value });
    }
    if let Some(at) = times.windows(2).position(|pair| pair[1] < pair[0]) {
        return Err(DemandError::TimeGoesBack { at: at + 1 });
    }
    if times.len() < 3 {
        return Ok(Vec::new());
    }
    let gaps: Vec<f64> = times.windows(2).map(|pair| (pair[1] - pair[0]).max(resolution)).collect();
    let states = cheapest_path(&gaps, scaling, reluctance);
    Ok(collect(times, &states))
}

/// The level at each gap.
fn cheapest_path(gaps: &[f64], scaling: f64, reluctance: f64) -> Vec<u8> {
    let n = gaps.len() as f64;
    let total: f64 = gaps.iter().sum();
    let shortest = gaps.iter().copied().fold(f64::INFINITY, f64::min);
    // A level whose expected gap is well below the shortest gap seen can never pay.
    let useful = ((total / n / shortest).ln() / scaling.ln()).ceil().max(0.0) as usize + 2;
    let levels = useful.min(MAX_LEVELS);
    let base = (n / total).ln();
    let log_rate: Vec<f64> = (0..levels).map(|i| base + i as f64 * scaling.ln()).collect();
    let climb = reluctance * n.ln();

    let mut so_far = vec![f64::INFINITY; levels];
    so_far[0] = 0.0;
    let mut came_from = vec![0u8; gaps.len() * levels];
    let mut entry = vec![(0.0, 0u8); levels];
    for (gap, from) in gaps.iter().zip(came_from.chunks_mut(levels)) {
        // Cheapest way into each level: climbing from below, or dropping freely from above or staying.
        let mut climbing = (f64::INFINITY, 0u8);
        for (level, slot) in entry.iter_mut().enumerate() {
            climbing.0 += climb;
            if so_far[level] < climbing.0 {
                climbing = (so_far[level], level as u8);
            }
            *slot = climbing;
        }
        let mut dropping = (f64::INFINITY, 0u8);
        for level in (0..levels).rev() {
            if so_far[level] < dropping.0 {
                dropping = (so_far[level], level as u8);
            }
            if dropping.0 < entry[level].0 {
                entry[level] = dropping;
            }
        }
        for level in 0..levels {
            from[level] = entry[level].1;
            so_far[level] = entry[level].0 - log_rate[level] + log_rate[level].exp() * gap;
        }
    }
    let mut level = so_far.iter().enumerate().fold(0, |best, (i, value)| if *value < so_far[best] { i } else { best });
    let mut path = vec![0u8; gaps.len()];
    for (at, from) in came_from.chunks(levels).enumerate().rev() {
        path[at] = level as u8;
        level = usize::from(from[level]);
    }
    path
}

fn collect(times: &[f64], states: &[u8]) -> Vec<Burst> {
    let mut found = Vec::new();
    let mut open: Vec<usize> = Vec::new(); // first press of the open burst at each level from 1
    let close = |level: usize, first: usize, last: usize| Burst {
        level: level as u32,
        first,
        last,
        start: times[first],
        end: times[last],
    };
    for (at, &state) in states.iter().chain([&0]).enumerate() {
        while open.len() > usize::from(state) {
            let level = open.len();
            if let Some(first) = open.pop() {
                found.push(close(level, first, at));
            }
        }
        while open.len() < usize::from(state) {
            open.push(at);
        }
    }
    found.sort_by_key(|burst| (burst.first, burst.level));
    found
}
