//! A recording of several buttons in a row, cut at its pauses.

use crate::common::{RATE, add, bed, say};
use proptest::prelude::*;
use sayso_listen::{Clip, Stretch, stretches};

const GAIN: f32 = 0.4;

fn clip(x: Vec<f32>) -> Clip {
    Clip::from_samples("", x, RATE as u32).unwrap()
}

fn cut(x: Vec<f32>) -> Vec<Stretch> {
    stretches(&clip(x)).sounds
}

fn beep(hz: f32, seconds: f32) -> Vec<f32> {
    (0..(seconds * RATE as f32) as usize)
        .map(|i| 0.5 * (2.0 * std::f32::consts::PI * hz * i as f32 / RATE as f32).sin())
        .collect()
}

/// From and to of what sounds in a made word, seconds: it has silence at both ends.
fn sounding(w: u64) -> (f64, f64) {
    (0.05, say(w, 0).len() as f64 / RATE as f64 - 1.0 / 12.0)
}

fn assert_at(found: &Stretch, at: f64, w: u64) {
    let (from, to) = (found.from as f64 / RATE as f64, found.to as f64 / RATE as f64);
    let (a, b) = sounding(w);
    assert!((from - (at + a - 0.08)).abs() < 0.05, "begins at {from}, in truth {}", at + a - 0.08);
    assert!((to - (at + b + 0.08)).abs() < 0.08, "ends at {to}, in truth {}", at + b + 0.08);
}

#[test]
fn buttons_pressed_in_a_row_are_cut_at_the_pauses() {
    for noise in [0.0005, 0.004] {
        let mut x = bed(14, noise, 3);
        let at = [1.0, 3.4, 6.0, 8.1, 11.0];
        for (w, t) in at.iter().enumerate() {
            add(&mut x, &say(w as u64, 0), *t, GAIN);
        }
        let found = cut(x);
        assert_eq!(found.len(), at.len(), "{found:?}");
        for (w, (f, t)) in found.iter().zip(at).enumerate() {
            assert_at(f, t, w as u64);
            assert!(!f.quiet && !f.long && !f.beep, "{f:?}");
        }
    }
}

#[test]
fn a_beep_and_a_click_in_front_are_cut_off() {
    let mut x = bed(6, 0.001, 4);
    add(&mut x, &beep(1000.0, 0.15), 0.9, GAIN);
    add(&mut x, &say(1, 0), 1.1, GAIN);
    add(&mut x, &[0.5; 160], 3.2, GAIN);
    add(&mut x, &say(2, 0), 3.4, GAIN);
    let found = cut(x);
    assert_eq!(found.len(), 2, "{found:?}");
    assert!(found[0].beep && !found[1].beep, "{found:?}");
    assert!(found[0].from >= (1.05 * RATE as f64) as usize - 160, "the beep is no part of it: {found:?}");
    assert_at(&found[1], 3.4, 2);
}

#[test]
fn a_button_that_only_beeps_is_kept_whole() {
    let mut x = bed(3, 0.001, 4);
    add(&mut x, &beep(1000.0, 0.5), 1.0, GAIN);
    let found = cut(x);
    assert_eq!(found.len(), 1);
    assert!(!found[0].beep && found[0].to - found[0].from > RATE / 2);
}

#[test]
fn two_that_run_together_and_quiet_ones_are_marked() {
    let mut x = bed(14, 0.002, 8);
    for (w, t) in [(0, 1.0), (1, 3.5), (2, 9.0)] {
        add(&mut x, &say(w, 0), t, GAIN);
    }
    let (mut at, mut n) = (5.5, 0);
    while at < 7.2 {
        add(&mut x, &say(3 + n, 0), at, GAIN);
        at += say(3 + n, 0).len() as f64 / RATE as f64 + 0.1;
        n += 1;
    }
    add(&mut x, &say(1, 0), 12.0, 0.025);
    let found = cut(x);
    let marks: Vec<_> = found.iter().map(|f| (f.long, f.quiet)).collect();
    assert_eq!(marks, [(false, false), (false, false), (true, false), (false, false), (false, true)], "{found:?}");
}

#[test]
fn a_quiet_room_has_no_sounds_and_a_knock_is_none() {
    assert!(cut(bed(5, 0.004, 2)).is_empty());
    let mut x = bed(5, 0.001, 2);
    add(&mut x, &[0.6; 400], 2.0, GAIN);
    assert!(cut(x).is_empty());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    /// Whatever comes: in order, apart from each other, within the sound.
    #[test]
    fn stretches_are_in_order_and_within(x in prop::collection::vec(-1.0f32..1.0, 1..40_000), loud in 0.0f32..1.0) {
        let x: Vec<f32> = x.iter().enumerate().map(|(i, v)| if (i / 9_000) % 2 == 0 { v * loud * 0.01 } else { *v }).collect();
        prop_assume!(x.iter().any(|v| v.abs() > 1e-4));
        let n = x.len();
        let found = cut(x);
        for f in &found { prop_assert!(f.from < f.to && f.to <= n && f.level_db.is_finite()); }
        for pair in found.windows(2) { prop_assert!(pair[0].from < pair[1].from); }
    }
}
