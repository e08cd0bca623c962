//! What became of marked presses, summed up: by distance, room, noise, device and way of marking.

use super::archive::Marked;
use crate::experiments::line;
use crate::report::figure::table;
use sayso_methods::stats::{Count, Level, Proportion};
use std::collections::BTreeMap;

/// One take, heard.
#[derive(Debug, Clone, PartialEq)]
pub struct Heard {
    /// The device.
    pub phone: String,
    /// Millimetres from the button.
    pub distance_mm: u32,
    /// Kind of room.
    pub room: String,
    /// What else sounded.
    pub noise: String,
    /// How presses were marked.
    pub marked: Marked,
    /// Its sums.
    pub tally: Tally,
}

/// Sums over takes.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Tally {
    /// Takes.
    pub takes: usize,
    /// Hours.
    pub hours: f64,
    /// Presses marked.
    pub presses: usize,
    /// Of these, heard.
    pub heard: usize,
    /// Detections that no mark answers to.
    pub wrong: usize,
    /// Seconds from the mark to the onset heard; the person's timing is in it.
    pub from_mark_s: Vec<f64>,
    /// Seconds from the sound's own rise to the onset heard, where the rise can be told.
    pub from_rise_s: Vec<f64>,
}

impl Tally {
    fn add(&mut self, other: &Self) {
        self.takes += other.takes;
        self.hours += other.hours;
        self.presses += other.presses;
        self.heard += other.heard;
        self.wrong += other.wrong;
        self.from_mark_s.extend(&other.from_mark_s);
        self.from_rise_s.extend(&other.from_rise_s);
    }
}

/// Scores of archives.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Scores {
    /// Every take.
    pub takes: Vec<Heard>,
    /// What a reader has to know besides.
    pub notes: Vec<String>,
}

impl Scores {
    /// All takes.
    pub fn all(&self) -> Tally {
        self.of(|_| true)
    }

    /// Those takes for which `which` answers true.
    pub fn of(&self, which: impl Fn(&Heard) -> bool) -> Tally {
        let mut sum = Tally::default();
        self.takes.iter().filter(|t| which(t)).for_each(|t| sum.add(&t.tally));
        sum
    }

    fn by<K: Ord>(&self, key: impl Fn(&Heard) -> K) -> BTreeMap<K, Tally> {
        let mut sums: BTreeMap<K, Tally> = BTreeMap::new();
        self.takes.iter().for_each(|t| sums.entry(key(t)).or_default().add(&t.tally));
        sums
    }

    /// Tables in Markdown.
    pub fn tables(&self) -> String {
        let mut out = String::new();
        let metres = |mm: u32| format!("{} m", f64::from(mm) / 1000.0);
        let named = |sums: BTreeMap<String, Tally>| sums.into_iter().collect::<Vec<_>>();
        let groups: [(&str, Vec<(String, Tally)>); 6] = [
            ("distance", self.by(|t| t.distance_mm).into_iter().map(|(mm, t)| (metres(mm), t)).collect()),
            ("room", named(self.by(|t| t.room.clone()))),
            ("noise", named(self.by(|t| t.noise.clone()))),
            ("device", named(self.by(|t| t.phone.clone()))),
            ("marked by", named(self.by(|t| format!("{:?}", t.marked).to_lowercase()))),
            ("in all", vec![("all".into(), self.all())]),
        ];
        for (what, sums) in groups {
            let head = [
                what,
                "presses marked",
                "heard (95 % interval)",
                "false presses",
                "false an hour (95 % interval)",
                "onset from the sound's rise, ms: median, 95 % of sizes under, largest (n)",
                "onset from the mark, s: median, 95 % of sizes under (n)",
            ];
            let rows: Vec<Vec<String>> = sums.into_iter().map(|(name, t)| row(name, &t)).collect();
            line!(out, "{}", table(&head, &rows));
        }
        self.notes.iter().for_each(|note| line!(out, "- {note}"));
        out
    }
}

fn row(name: String, t: &Tally) -> Vec<String> {
    let share = match Proportion::new(t.heard as u64, t.presses as u64) {
        Ok(p) if t.presses > 0 => {
            let i = p.clopper_pearson(Level::P95);
            format!("{} of {}: {:.3} ({:.3}-{:.3})", t.heard, t.presses, p.share().unwrap_or(f64::NAN), i.low, i.high)
        }
        _ => "none marked".into(),
    };
    let false_an_hour = match Count::new(t.wrong as u64, t.hours) {
        Ok(c) => {
            let i = c.interval(Level::P95);
            format!("{:.1} ({:.1}-{:.1}) in {:.3} h", c.rate(), i.low, i.high, t.hours)
        }
        Err(_) => "no sound".into(),
    };
    let [rise, rise_95, rise_most] = spread(&t.from_rise_s).map(|s| format!("{:.0}", 1e3 * s));
    let [mark, mark_95, _] = spread(&t.from_mark_s).map(|s| format!("{s:.2}"));
    let of = |n: usize, text: String| if n == 0 { "none".into() } else { format!("{text} (n = {n})") };
    vec![
        name,
        t.presses.to_string(),
        share,
        t.wrong.to_string(),
        false_an_hour,
        of(t.from_rise_s.len(), format!("{rise}, {rise_95}, {rise_most}")),
        of(t.from_mark_s.len(), format!("{mark}, {mark_95}")),
    ]
}

/// Median with its sign; then of the sizes the value 95 % are under, and the largest.
fn spread(values: &[f64]) -> [f64; 3] {
    let at = |mut v: Vec<f64>, share: f64| {
        v.sort_by(f64::total_cmp);
        v.get(((v.len() as f64 * share) as usize).min(v.len().saturating_sub(1))).copied().unwrap_or(f64::NAN)
    };
    let sizes: Vec<f64> = values.iter().map(|v| v.abs()).collect();
    [at(values.to_vec(), 0.5), at(sizes.clone(), 0.95), at(sizes, 1.0)]
}
