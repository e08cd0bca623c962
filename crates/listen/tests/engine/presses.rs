//! The engine on small scenes with known truth.

use crate::common::{RATE, add, bed, clips, machine, replay, room, say, scene};
use sayso_listen::{Clip, Config, Detection, Detector, Enrolled, Pace, tired_batteries};
use std::sync::Arc;

fn hear(sound: &[f32], pace: Pace, block: usize) -> Vec<Detection> {
    let mut ear = Detector::new(&clips(6), Config::new(RATE as u32, 1, pace)).unwrap();
    let mut heard: Vec<Detection> = sound.chunks(block).flat_map(|b| ear.push(b)).collect();
    heard.extend(ear.finish().0);
    heard
}

fn assert_all_found(heard: &[Detection], truth: &[(u64, f64, f64)]) {
    for (w, at, speed) in truth {
        let found = heard.iter().find(|h| h.word == format!("word {w}") && (h.onset_s - at).abs() < 0.05);
        let found = found.unwrap_or_else(|| panic!("word {w} at {at} missing in {heard:#?}"));
        assert!((found.speed - speed).abs() < 0.005, "{found:?} should play at {speed}");
    }
    assert_eq!(heard.len(), truth.len(), "{heard:#?}");
}

#[test]
fn presses_are_found_and_people_refused() {
    let (sound, truth) = scene(0.004);
    assert_all_found(&hear(&sound, Pace::File, sound.len()), &truth);
}

#[test]
fn the_size_of_blocks_changes_nothing() {
    let (sound, _) = scene(0.004);
    let whole = hear(&sound, Pace::File, sound.len());
    for block in [160, 1021, 44_100] {
        assert_eq!(hear(&sound, Pace::File, block), whole, "block {block}");
    }
}

#[test]
fn live_and_file_agree_and_live_is_soon() {
    let (sound, truth) = scene(0.004);
    let file = hear(&sound, Pace::File, 4000);
    let mut ear = Detector::new(&clips(6), Config::new(RATE as u32, 1, Pace::Live)).unwrap();
    let mut live = Vec::new();
    for (i, block) in sound.chunks(RATE / 50).enumerate() {
        for h in ear.push(block) {
            let w: u64 = h.word[5..].parse().unwrap();
            let end = h.onset_s + say(w, 0).len() as f64 / RATE as f64 / h.speed;
            let now = (i + 1) as f64 / 50.0;
            assert!(now - end <= 0.5, "{h:?} came {:.2} s after its end", now - end);
            live.push(h);
        }
    }
    assert_all_found(&live, &truth);
    for (a, b) in live.iter().zip(&file) {
        assert_eq!(a.word, b.word);
        assert!((a.onset_s - b.onset_s).abs() < 1e-3 && (a.confidence - b.confidence).abs() < 1e-2);
    }
}

#[test]
fn every_rate_and_stereo_hear_the_same_presses() {
    let (sound, truth) = scene(0.004);
    for rate in [8000usize, 22_050, 48_000] {
        let y = replay(&sound, RATE as f64 / rate as f64);
        let stereo: Vec<f32> = y.iter().flat_map(|v| [1.2 * v, 0.8 * v]).collect();
        let mut ear = Detector::new(&clips(6), Config::new(rate as u32, 2, Pace::File)).unwrap();
        let mut heard = ear.push(&stereo);
        heard.extend(ear.finish().0);
        assert_all_found(&heard, &truth);
    }
}

#[test]
fn a_gap_keeps_later_onsets_true() {
    let mut ear = Detector::new(&clips(6), Config::new(RATE as u32, 1, Pace::File)).unwrap();
    let mut sound = bed(6, 0.004, 3);
    add(&mut sound, &room(&say(2, 0), 0.3, 2), 2.0, 0.3);
    let mut heard = ear.push(&sound);
    heard.extend(ear.gap(5 * RATE as u64));
    heard.extend(ear.push(&sound));
    heard.extend(ear.finish().0);
    let onsets: Vec<f64> = heard.iter().map(|h| (h.onset_s * 10.0).round() / 10.0).collect();
    assert_eq!(onsets, [2.0, 13.0]);
}

#[test]
fn only_the_slowing_button_has_a_tired_battery() {
    let mut sound = bed(64, 0.004, 8);
    for i in 0..12u32 {
        let (w, t) = (u64::from(i % 3), 2.0 + 5.0 * f64::from(i));
        let speed = if w == 1 { 1.01 - 0.003 * f64::from(i) } else { 0.99 };
        add(&mut sound, &room(&replay(&say(w, 0), speed), 0.3, 4), t, 0.3);
    }
    let tired = tired_batteries(&hear(&sound, Pace::File, 8000));
    assert_eq!(tired.iter().map(|t| t.word.as_str()).collect::<Vec<_>>(), ["word 1"]);
    assert!((tired[0].slowed_by - 0.027).abs() < 0.004, "{tired:?}");
}

#[test]
fn an_hour_of_dull_sounds_holds_no_press() {
    let enrolled = Arc::new(Enrolled::new(&clips(6), Pace::File).unwrap());
    let sounds: [fn(usize) -> f32; 4] = [
        |_| 0.0,
        |i| 0.3 * (2.0 * std::f32::consts::PI * 50.0 * (i % RATE) as f32 / RATE as f32).sin(),
        |i| ((i as u32).wrapping_mul(2_654_435_761) ^ ((i as u32) >> 5).wrapping_mul(40_503)) as f32 / 4.3e9 - 0.5,
        |i| {
            let note = 220.0 * 2f32.powf((i / (RATE / 2) * 7 % 24) as f32 / 12.0);
            let t = (i % (RATE / 2)) as f32 / RATE as f32;
            (1..4).map(|k| (2.0 * std::f32::consts::PI * note * k as f32 * t).sin() / k as f32).sum::<f32>()
                * 0.2
                * (-3.0 * t).exp()
        },
    ];
    for (n, sound) in sounds.into_iter().enumerate() {
        let mut ear = Detector::with(Arc::clone(&enrolled), Config::new(RATE as u32, 1, Pace::File)).unwrap();
        let mut heard = Vec::new();
        // A quarter of an hour of each makes the hour.
        for s in 0..900 {
            let block: Vec<f32> = (s * RATE..(s + 1) * RATE).map(sound).collect();
            heard.extend(ear.push(&block));
        }
        heard.extend(ear.finish().0);
        assert!(heard.is_empty(), "sound {n}: {heard:?}");
    }
}

#[test]
fn odd_enrolments_are_refused_in_words() {
    assert!(Enrolled::new(&[], Pace::File).is_err());
    let long = Clip::from_samples("saga", vec![0.1; RATE * 9], RATE as u32).unwrap();
    let text = Enrolled::new(&[long], Pace::File).err().unwrap().to_string();
    assert!(text.contains("saga") && text.contains("9.00 s"), "{text}");
    assert!(Clip::from_samples("hush", vec![0.0; RATE], RATE as u32).is_err());
    assert!(Clip::from_samples("odd", vec![0.1; RATE], 7).is_err());
    assert!(Detector::new(&clips(1), Config::new(48_000, 0, Pace::Live)).is_err());
}

/// Seconds from a press's end to its event, at most, for a clip of this length among short ones.
fn latest(seconds: f64) -> f64 {
    let mut long: Vec<f32> = (40..60).flat_map(|w| say(w, 0)).collect();
    long.truncate((seconds * RATE as f64) as usize);
    let mut enrolled = clips(3);
    enrolled.push(Clip::from_samples("long", long.clone(), RATE as u32).unwrap());
    let mut sound = bed(24, 0.004, 12);
    for (at, speed) in [(1.0, 1.0), (6.5, 1.03), (12.0, 0.96), (17.5, 1.003)] {
        add(&mut sound, &room(&replay(&long, speed), 0.35, 6), at, 0.3);
    }
    let mut ear = Detector::new(&enrolled, Config::new(RATE as u32, 1, Pace::Live)).unwrap();
    let (mut worst, mut n) = (0.0f64, 0);
    for (i, block) in sound.chunks(RATE / 50).enumerate() {
        for h in ear.push(block) {
            assert_eq!(h.word, "long", "{h:?}");
            worst = worst.max((i + 1) as f64 / 50.0 - h.onset_s - seconds / h.speed);
            n += 1;
        }
    }
    assert_eq!(n, 4, "presses of a clip of {seconds} s");
    worst
}

#[test]
fn live_is_soon_for_short_and_long_clips() {
    // Half a second is the aim, and is met for clips up to 3 s; 0.54 s was measured at 4 s, and is held here as a limit.
    for (seconds, limit) in [(0.3, 0.5), (1.0, 0.5), (2.0, 0.5), (3.0, 0.5), (4.0, 0.6)] {
        let took = latest(seconds);
        println!("clip of {seconds} s: told {took:.2} s after its end at the latest");
        assert!(took <= limit, "clip of {seconds} s: {took:.2} s after its end");
    }
}

/// How many of a hundred sayings, one each 2.5 s, are taken for presses.
fn taken(noise: f32, seed: u64, say: fn(u64, u64) -> Vec<f32>) -> usize {
    let mut sound = bed(252, noise, seed);
    for i in 0..100u64 {
        add(&mut sound, &room(&say(i % 6, 100 + i), 0.35, 60 + i), 1.0 + 2.5 * i as f64, 0.3);
    }
    hear(&sound, Pace::File, sound.len()).len()
}

#[test]
fn people_are_hardly_ever_taken_for_a_press_and_machines_are_a_known_limit() {
    let people = taken(0.0002, 31, say) + taken(0.004, 32, say);
    let machines = taken(0.0002, 31, machine) + taken(0.004, 32, machine);
    println!("taken for a press: {people} of 200 people, {machines} of 200 machines");
    assert!(people <= 2, "{people} of 200 people");
    // A voice of perfectly even pulses and the clip's own melody within 6 % of its pitch is, for most of its length, the clip
    // replayed: see the limits in the method's page.
    assert!(machines <= 12, "{machines} of 200 machines");
}
