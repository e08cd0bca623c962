//! How well a steady and a slowing line explain one button's speeds; the integrals over lines are in closed form.

/// Spread of what a healthy button drifts by over the stretch, either way (warmth, a fresh start; no source).
const HEALTHY_DRIFT: f64 = 0.0015;
/// Scale of what a tired one slows by over the stretch (half-normal; no source).
const TIRED_DRIFT: f64 = 0.03;
/// Share of buttons whose battery runs down during a stretch, before any press is heard (no source).
const TIRED_SHARE: f64 = 0.02;
/// Share of sure presses whose speed is wrong all the same: none of the 1 100 of the tuned scenes was off by over 0.4 %.
const WRONG_SPEED: f64 = 0.001;
/// Width of the range over which a wrong speed may lie: the speeds that are listened for.
const SPEED_RANGE: f64 = 0.12;
/// A longer history speaks through the medians of so many spans: presses of one day are hardly independent.
const MOST_SPANS: usize = 24;

/// One press's speed at its time, from any source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpeedAt {
    /// Seconds since any fixed moment, the same for all words.
    pub time_s: f64,
    /// Playback speed against the enrolled clip.
    pub speed: f64,
    /// Probability that it was a press of this word, 0 to 1.
    pub confidence: f64,
}

/// One word's presses, or the medians of spans of them, in order of time.
pub(crate) struct Button<'a> {
    pub(crate) word: &'a str,
    pub(crate) n: usize,
    /// Time as a share of the stretch, speed, confidence.
    looks: Vec<(f64, f64, f64)>,
}

/// A steadily slowing line, as a posterior.
#[derive(Clone, Copy, Default)]
pub(crate) struct Line {
    /// Speed lost over the whole stretch.
    pub(crate) slowing: f64,
    pub(crate) variance: f64,
    pub(crate) speed_now: f64,
}

/// Logarithms of how well each explanation predicts a button's presses at one spread, and the line if it is tired.
pub(crate) struct Evidence {
    healthy: f64,
    tired: f64,
    pub(crate) line: Line,
}

impl Evidence {
    pub(crate) fn either(&self) -> f64 {
        let top = self.healthy.max(self.tired);
        top + ((1.0 - TIRED_SHARE) * (self.healthy - top).exp() + TIRED_SHARE * (self.tired - top).exp()).ln()
    }

    pub(crate) fn tired_share(&self) -> f64 {
        (TIRED_SHARE.ln() + self.tired - self.either()).exp()
    }
}

/// Weighted moments of lines.
#[derive(Default)]
pub(crate) struct Moments {
    pub(crate) weight: f64,
    slowing: f64,
    square: f64,
    speed_now: f64,
}

impl Moments {
    pub(crate) fn add(&mut self, weight: f64, line: Line) {
        self.weight += weight;
        self.slowing += weight * line.slowing;
        self.square += weight * (line.variance + line.slowing * line.slowing);
        self.speed_now += weight * line.speed_now;
    }

    pub(crate) fn mean(&self) -> Line {
        let w = if self.weight > 0.0 { self.weight } else { 1.0 };
        let slowing = self.slowing / w;
        Line { slowing, variance: self.square / w - slowing * slowing, speed_now: self.speed_now / w }
    }
}

impl<'a> Button<'a> {
    pub(crate) fn new(word: &'a str, mut presses: Vec<SpeedAt>, from: f64, length: f64) -> Option<Self> {
        presses.sort_by(|a, b| a.time_s.total_cmp(&b.time_s));
        let n = presses.len();
        let spans = n.min(MOST_SPANS);
        let looks: Vec<(f64, f64, f64)> = (0..spans)
            .map(|k| {
                let mut span = presses[k * n / spans..(k + 1) * n / spans].to_vec();
                let many = span.len() as f64;
                let time = span.iter().map(|p| (p.time_s - from) / length).sum::<f64>() / many;
                let confidence = span.iter().map(|p| p.confidence.clamp(0.001, 1.0)).sum::<f64>() / many;
                span.sort_by(|a, b| a.speed.total_cmp(&b.speed));
                let (low, high) = (span[(span.len() - 1) / 2].speed, span[span.len() / 2].speed);
                (time, 0.5 * (low + high), confidence)
            })
            .collect();
        (n >= 2).then_some(Self { word, n, looks })
    }

    /// Share of the stretch from the first press to the last.
    pub(crate) fn span(&self) -> f64 {
        self.looks.last().map_or(0.0, |l| l.0) - self.looks.first().map_or(0.0, |l| l.0)
    }

    pub(crate) fn evidence(&self, spread: f64) -> Evidence {
        let n = self.looks.len();
        let whole = Sums::of(&self.looks);
        let right: Vec<f64> = self.looks.iter().map(|l| l.2 * (1.0 - WRONG_SPEED)).collect();
        let all: f64 = right.iter().map(|r| r.ln()).sum();
        let odds: Vec<f64> = right.iter().map(|r| (1.0 - r).ln() - r.ln() - SPEED_RANGE.ln()).collect();
        let last = self.looks.last().map_or(0.0, |l| l.0);
        let mut cases = vec![(all, whole)];
        for i in 0..n {
            let one = whole.without(self.looks[i]);
            cases.push((all + odds[i], one));
            cases.extend((i + 1..n).map(|j| (all + odds[i] + odds[j], one.without(self.looks[j]))));
        }
        let fits: Vec<(f64, f64, Line)> = cases
            .iter()
            .map(|(prior, sums)| {
                let healthy = sums.drifting(spread, HEALTHY_DRIFT);
                let tired = sums.drifting(spread, TIRED_DRIFT);
                let (below, slowing, variance) = above_zero(tired.mean, tired.variance);
                let line = Line { slowing, variance, speed_now: sums.line_at(last, slowing) };
                (prior + healthy.log, prior + tired.log + (2.0 * below).ln(), line)
            })
            .collect();
        let top = |of: fn(&(f64, f64, Line)) -> f64| fits.iter().map(of).fold(f64::NEG_INFINITY, f64::max);
        let (top_healthy, top_tired) = (top(|f| f.0), top(|f| f.1));
        let mut lines = Moments::default();
        for (_, tired, line) in &fits {
            lines.add((tired - top_tired).exp(), *line);
        }
        let healthy = top_healthy + fits.iter().map(|f| (f.0 - top_healthy).exp()).sum::<f64>().ln();
        Evidence { healthy, tired: top_tired + lines.weight.ln(), line: lines.mean() }
    }
}

/// Sums over presses: their number, times, speeds over 1, and products of these.
#[derive(Clone, Copy, Default)]
struct Sums {
    n: f64,
    t: f64,
    v: f64,
    tt: f64,
    tv: f64,
    vv: f64,
}

/// How well a drifting line predicts presses (logarithm), and its drift: loss of speed over the stretch.
struct Fit {
    log: f64,
    mean: f64,
    variance: f64,
}

impl Sums {
    fn of(looks: &[(f64, f64, f64)]) -> Self {
        looks.iter().fold(Self::default(), |s, l| s.plus(*l, 1.0))
    }

    fn plus(self, (t, speed, _): (f64, f64, f64), sign: f64) -> Self {
        let v = speed - 1.0;
        Self {
            n: self.n + sign,
            t: self.t + sign * t,
            v: self.v + sign * v,
            tt: self.tt + sign * t * t,
            tv: self.tv + sign * t * v,
            vv: self.vv + sign * v * v,
        }
    }

    fn without(self, look: (f64, f64, f64)) -> Self {
        self.plus(look, -1.0)
    }

    /// The line's height integrated out over the range of speeds, its drift over a normal prior of this scale.
    fn drifting(&self, spread: f64, drift: f64) -> Fit {
        if self.n < 0.5 {
            return Fit { log: 0.0, mean: 0.0, variance: drift * drift };
        }
        let noise = spread * spread;
        let tt = (self.tt - self.t * self.t / self.n).max(0.0);
        let tv = self.tv - self.t * self.v / self.n;
        let vv = (self.vv - self.v * self.v / self.n).max(0.0);
        let precision = tt / noise + 1.0 / (drift * drift);
        let mean = -tv / noise / precision;
        let log = -SPEED_RANGE.ln()
            - 0.5 * (self.n - 1.0) * (std::f64::consts::TAU * noise).ln()
            - 0.5 * self.n.ln()
            - 0.5 * vv / noise
            - 0.5 * (drift * drift * precision).ln()
            + 0.5 * mean * mean * precision;
        Fit { log, mean, variance: 1.0 / precision }
    }

    /// Speed at a time, on the line that loses so much over the stretch.
    fn line_at(&self, t: f64, slowing: f64) -> f64 {
        if self.n < 0.5 { 1.0 } else { 1.0 + self.v / self.n - slowing * (t - self.t / self.n) }
    }
}

/// A normal variable's chance of being above zero, and its mean and variance if it is.
fn above_zero(mean: f64, variance: f64) -> (f64, f64, f64) {
    let deviation = variance.sqrt();
    let z = mean / deviation;
    let chance = 0.5 * libm::erfc(-z / std::f64::consts::SQRT_2);
    if chance < 1e-300 {
        let left = variance / -mean;
        return (1e-300, left, left * left);
    }
    let ratio = (-0.5 * z * z).exp() / (std::f64::consts::TAU.sqrt() * chance);
    (chance, mean + deviation * ratio, (variance * (1.0 - ratio * (z + ratio))).max(0.0))
}

#[cfg(test)]
mod tests {
    use super::above_zero;

    #[test]
    fn a_normal_above_zero_has_its_known_moments() {
        // Half-normal: mean sqrt(2 / pi), variance 1 - 2 / pi.
        let (chance, mean, variance) = above_zero(0.0, 1.0);
        assert!((chance - 0.5).abs() < 1e-15 && (mean - 0.797_884_560_8).abs() < 1e-9);
        assert!((variance - 0.363_380_227_6).abs() < 1e-9);
        let (chance, mean, variance) = above_zero(-60.0, 1.0);
        assert!(chance > 0.0 && (mean - 1.0 / 60.0).abs() < 1e-4 && variance > 0.0);
    }
}
