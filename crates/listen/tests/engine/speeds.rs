//! Buttons that play fast or slow, and what is listened for.

use crate::common::{RATE, add, bed, clips, replay, room, say};
use sayso_listen::{Clip, Config, Detection, Detector, Pace, Speeds};

fn at(speeds: impl Fn(usize) -> Speeds) -> Vec<Clip> {
    clips(6).into_iter().enumerate().map(|(i, c)| c.at_speeds(speeds(i))).collect()
}

fn hear(clips: &[Clip], sound: &[f32], pace: Pace) -> Vec<Detection> {
    let mut ear = Detector::new(clips, Config::new(RATE as u32, 1, pace)).unwrap();
    let mut heard = ear.push(sound);
    heard.extend(ear.finish().0);
    heard
}

/// One press of each of the six words at this speed, three seconds apart.
fn pressed(speed: f64) -> Vec<f32> {
    let mut sound = bed(21, 0.004, 11);
    for w in 0..6 {
        add(&mut sound, &room(&replay(&say(w, 0), speed), 0.35, 9), 1.0 + 3.0 * w as f64, 0.3);
    }
    sound
}

/// Presses rightly heard, of which at most so many more may be told.
fn right(heard: &[Detection], speed: f64, wrong: usize) -> usize {
    let right = |h: &&Detection| {
        let at = 1.0 + 3.0 * h.clip as f64;
        h.word == format!("word {}", h.clip) && (h.onset_s - at).abs() < 0.05 && (h.speed - speed).abs() < 0.002
    };
    let n = heard.iter().filter(right).count();
    assert!(heard.len() <= n + wrong, "{} besides presses at {speed}: {heard:#?}", heard.len() - n);
    n
}

#[test]
fn each_range_of_speeds_is_heard_to_its_ends_and_no_farther() {
    // Word 4 is much like word 1 when it plays 8 % faster, which only few speeds leave out.
    let of = |speeds: Speeds, speed, wrong| right(&hear(&at(|_| speeds), &pressed(speed), Pace::File), speed, wrong);
    for speed in [0.905, 0.94, 1.0, 1.04, 1.075] {
        assert!(of(Speeds::WIDE, speed, 1) >= 5, "wide at {speed}");
    }
    for (speed, heard) in [(0.90, false), (0.945, true), (1.035, true), (1.06, false)] {
        assert_eq!(of(Speeds::USUAL, speed, 1) >= 5, heard, "usual at {speed}");
    }
    for (speed, heard) in [(0.96, false), (0.98, true), (0.985, true), (0.99, true), (1.01, false)] {
        let n = of(Speeds::around(0.985, 0.01), speed, 0);
        assert!(if heard { n >= 5 } else { n == 0 }, "narrow at {speed}: {n}");
    }
}

#[test]
fn each_button_has_its_own_range_at_every_pace() {
    // The even words play 7 % fast, the odd ones 8 % slow.
    let speed = |w: usize| if w.is_multiple_of(2) { 1.07 } else { 0.92 };
    let mut sound = bed(21, 0.004, 11);
    for w in 0..6 {
        let x = replay(&say(w as u64, 0), speed(w));
        add(&mut sound, &room(&x, 0.35, 9), 1.0 + 3.0 * w as f64, 0.3);
    }
    let own = at(|w| Speeds::around(speed(w), 0.01));
    let turned = at(|w| Speeds::around(speed(w + 1), 0.01));
    for pace in [Pace::File, Pace::Page, Pace::Live] {
        let heard = hear(&own, &sound, pace);
        assert_eq!(heard.iter().map(|h| h.clip).collect::<Vec<_>>(), [0, 1, 2, 3, 4, 5], "{pace:?}: {heard:#?}");
        assert!(heard.iter().all(|h| (h.speed - speed(h.clip)).abs() < 0.002));
        assert!(hear(&turned, &sound, pace).is_empty(), "{pace:?}");
    }
}
