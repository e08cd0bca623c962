//! Presses in bursts and learners with good and bad days: intervals and bands hold the truth as often as they say.

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use sayso_methods::demand::change::{change_points_with_exposure, clumped_penalty, default_penalty};
use sayso_methods::demand::rates::rates_by_bin;
use sayso_methods::learning::shown::curve_by_day;
use sayso_methods::stats::{Clumping, Count, Level, highest_stretch};

struct Dice(ChaCha8Rng);

impl Dice {
    fn new(seed: u64) -> Self {
        Self(ChaCha8Rng::seed_from_u64(seed))
    }
    fn unit(&mut self) -> f64 {
        self.0.random()
    }
    fn exponential(&mut self) -> f64 {
        -(1.0 - self.unit()).ln()
    }
    fn normal(&mut self) -> f64 {
        (-2.0 * (1.0 - self.unit()).ln()).sqrt() * (std::f64::consts::TAU * self.unit()).cos()
    }

    /// Times, in days, of presses in bouts of that size, a minute apart, at random over days of 15 hours.
    fn bouts(&mut self, presses: f64, days: u32, size: f64, geometric: bool) -> Vec<f64> {
        let mut times = Vec::new();
        let gap = f64::from(days) * size / presses;
        let mut at = gap * self.exponential();
        while at < f64::from(days) {
            let mut press = at.floor() + (7.0 + 15.0 * at.fract()) / 24.0;
            let mut pressed = 0.0;
            loop {
                times.push(press);
                pressed += 1.0;
                if if geometric { self.unit() < 1.0 / size } else { pressed >= size } {
                    break;
                }
                press += self.exponential() / 1440.0;
            }
            at += gap * self.exponential();
        }
        times.retain(|t| *t < f64::from(days));
        times
    }
}

#[test]
fn the_interval_of_a_rate_admits_bursts() {
    const ANIMALS: u32 = 250;
    for (size, geometric) in [(1.0, false), (2.0, false), (3.0, true), (5.0, false), (5.0, true)] {
        for (presses, days) in [(20.0, 7), (60.0, 30), (200.0, 60)] {
            let mut dice = Dice::new(31);
            let (mut shown, mut exact) = (0, 0);
            for _ in 0..ANIMALS {
                let times = dice.bouts(presses, days, size, geometric);
                let clumping = Clumping::of_times(&times, f64::from(days)).unwrap();
                let count = Count::new(times.len() as u64, 1.0).unwrap();
                shown += u32::from(count.clumped_interval(clumping, Level::P95).contains(presses));
                exact += u32::from(count.interval(Level::P95).contains(presses));
            }
            let share = |k| f64::from(k) / f64::from(ANIMALS);
            let what = format!("{size} {geometric} {presses} {days}: {} {}", share(shown), share(exact));
            assert!(share(shown) >= 0.915, "{what}");
            // What the widening is for: intervals that take presses singly fail.
            assert!(size < 5.0 || share(exact) < 0.75, "{what}");
        }
    }
}

#[test]
fn single_presses_keep_about_their_exact_interval() {
    let mut dice = Dice::new(8);
    let times = dice.bouts(200.0, 30, 1.0, false);
    let count = Count::new(times.len() as u64, 30.0).unwrap();
    let wider = count.clumped_interval(Clumping::of_times(&times, 30.0).unwrap(), Level::P95);
    let exact = count.interval(Level::P95);
    assert!(wider.high - wider.low < 1.25 * (exact.high - exact.low));
    assert_eq!(count.clumped_interval(Clumping::NONE, Level::P95), exact);
    // A rhythm of the day is no burst: everything at breakfast, one press a day and now and then two.
    let breakfast: Vec<f64> = (0..30).map(|d| f64::from(d) + 0.3).collect();
    assert!(Clumping::of_times(&breakfast, 30.0).unwrap().factor() <= 1.0);
    // Nothing seen: how presses come is unknown, so the interval is wider than for single presses.
    let none = Count::new(0, 7.0).unwrap();
    assert!(
        none.clumped_interval(Clumping::of_times(&[], 7.0).unwrap(), Level::P95).high > none.interval(Level::P95).high
    );
    assert!(Clumping::of_times(&[8.0], 7.0).is_err() && Clumping::of_times(&[f64::NAN], 7.0).is_err());
    assert!(Clumping::of_times(&[], 0.0).is_err());
}

#[test]
fn bursts_make_no_weekday_stand_out_and_no_change_of_rate() {
    const ANIMALS: u32 = 200;
    let mut dice = Dice::new(4);
    let (mut days_out, mut singly_out, mut changes, mut singly_changes) = (0, 0, 0, 0);
    for _ in 0..ANIMALS {
        let times = dice.bouts(150.0, 56, 5.0, false);
        let clumping = Clumping::of_times(&times, 56.0).unwrap();
        let (mut weekdays, mut days) = ([0_u64; 7], [0_u64; 56]);
        for time in times {
            weekdays[time as usize % 7] += 1;
            days[time as usize] += 1;
        }
        let out = |clumping| {
            let bins = rates_by_bin(&weekdays, &[8.0; 7], clumping).unwrap();
            u32::from(bins.iter().any(|b| b.adjusted_p.is_some_and(|p| p <= 0.05)))
        };
        days_out += out(clumping);
        singly_out += out(Clumping::NONE);
        let changed = |penalty| {
            u32::from(!change_points_with_exposure(&days, &[1.0; 56], penalty).unwrap().change_after.is_empty())
        };
        changes += changed(clumped_penalty(56, clumping));
        singly_changes += changed(default_penalty(56));
    }
    assert!(days_out <= 16 && singly_out > 60, "{days_out} {singly_out}");
    assert!(changes <= 20 && singly_changes > 100, "{changes} {singly_changes}");
}

#[test]
fn the_band_holds_good_and_bad_days_and_a_late_loss_of_interest() {
    const TRIALS: usize = 40;
    let logistic = |x: f64| 1.0 / (1.0 + (-x).exp());
    for (wobble, least) in [(true, 0.84), (false, 0.87)] {
        let (mut held, mut all) = (0, 0);
        for seed in 0..60 {
            let mut dice = Dice::new(700 + seed);
            let by_day: Vec<f64> = (0..TRIALS / 4).map(|_| dice.normal()).collect();
            let truth: Vec<f64> = (0..TRIALS)
                .map(|k| match (wobble, k < 30) {
                    (true, _) => logistic(-1.0 + 0.06 * k as f64 + by_day[k / 4]),
                    (_, true) => 0.85,
                    (_, false) => 0.3,
                })
                .collect();
            let trials: Vec<_> = truth.iter().map(|p| Some(dice.unit() < *p)).collect();
            let days: Vec<i32> = (0..TRIALS).map(|k| (k / 4) as i32).collect();
            let curve = curve_by_day(&trials, &days, 1.0 / 3.0, Level::P90).unwrap();
            held += curve.points.iter().zip(&truth).filter(|(p, t)| p.lower <= **t && **t <= p.upper).count();
            all += TRIALS;
        }
        let share = held as f64 / all as f64;
        assert!(share >= least, "good and bad days {wobble}: {share}");
    }
}

#[test]
fn a_stretch_stands_out_only_beyond_all_that_were_looked_at() {
    const SERIES: u64 = 100;
    let stretches: Vec<Vec<usize>> = (0..8).map(|s| (5 * s..5 * s + 5).collect()).collect();
    let (mut by_chance, mut found) = (0, 0);
    for seed in 0..SERIES {
        let mut dice = Dice::new(seed);
        let mut values: Vec<f64> = (0..40).map(|_| dice.normal()).collect();
        by_chance += u32::from(highest_stretch(&values, &stretches, 1, seed).unwrap().p <= 0.05);
        values[10..15].iter_mut().for_each(|v| *v += 2.5);
        let scan = highest_stretch(&values, &stretches, 1, seed).unwrap();
        found += u32::from(scan.p <= 0.05 && scan.at == 2);
    }
    assert!(by_chance <= 13, "{by_chance} of {SERIES}");
    assert!(found >= 92, "{found} of {SERIES}");
    assert!(highest_stretch(&[1.0, 1.0], &[vec![0]], 1, 1).is_err());
    assert!(highest_stretch(&[1.0, 2.0], &[vec![7]], 1, 1).is_err());
    assert!(highest_stretch(&[1.0, 2.0], &[vec![0]], 0, 1).is_err());
}
