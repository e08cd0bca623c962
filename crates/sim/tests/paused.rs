//! Whoever pauses where the animal asks for it teaches at least as much as whoever goes on.
#![allow(clippy::unwrap_used, clippy::cast_precision_loss, missing_docs)]

use sayso_model::SignLevel;
use sayso_sim::rehearsal::{Act, Character, Does, Exercise, Rehearsal, Run, Setup, Thing, What, play};

/// Milliseconds from press to thing, and after a sign until something is asked again.
const GIVES_MS: u32 = 600;
const PAUSES_MS: u32 = 6_000;
const SEEDS: u64 = 40;

fn setup(character: Character, seed: u64) -> Setup {
    Setup { seed, character, exercise: Exercise::Showing }
}

/// Shows one word after the other every so many milliseconds to the end, whatever the animal does.
fn goes_on(setup: Setup, every_ms: usize) -> Run {
    let acts: Vec<Act> = (1_000..119_000)
        .step_by(every_ms)
        .enumerate()
        .flat_map(|(turn, at_ms)| {
            let thing = Thing::ALL[turn % 3];
            [Act { at_ms, does: Does::Show(thing) }, Act { at_ms: at_ms + GIVES_MS, does: Does::Give(thing) }]
        })
        .collect();
    play(setup, &acts)
}

/// Shows no oftener than that, and only while it is there and has nothing else to do; pauses after a sign, steps away at a strong
/// one, answers its presses.
fn pauses(setup: Setup, every_ms: u32) -> Run {
    let mut live = Rehearsal::new(setup);
    let (mut seen, mut turn) = (0, 0);
    let (mut next_ms, mut due, mut has_enough) = (1_000, None, false);
    while !live.is_over() {
        let now = live.now_ms();
        let new = live.told()[seen..].to_vec();
        for told in new {
            match told.what {
                What::Took(_) => has_enough = true,
                What::Finished(_) | What::Leaves => has_enough = false,
                What::Pressed(thing) => due = Some((now + GIVES_MS, thing)),
                What::Sign(sign) => {
                    next_ms = next_ms.max(now + PAUSES_MS);
                    if sign.level == SignLevel::Strong {
                        live.does(Does::Back);
                    }
                }
                _ => {}
            }
        }
        seen = live.told().len();
        if let Some((_, thing)) = due.take_if(|(at, _)| *at <= now) {
            live.does(Does::Give(thing));
            next_ms = next_ms.max(now + 2_000);
        } else if due.is_none() && now >= next_ms && live.is_there() && !has_enough {
            let thing = Thing::ALL[turn % 3];
            live.does(Does::Show(thing));
            due = Some((now + GIVES_MS, thing));
            turn += 1;
            next_ms = now + every_ms;
        }
        live.step();
    }
    live.ends()
}

fn learned(character: Character, of: impl Fn(Setup) -> Run) -> Vec<f64> {
    (0..SEEDS).map(|seed| of(setup(character, seed)).learned()).collect()
}

fn mean(of: &[f64]) -> f64 {
    of.iter().sum::<f64>() / of.len() as f64
}

/// Both at their own pace and at the same.
#[test]
fn whoever_goes_on_through_signs_or_shows_by_the_clock_teaches_less_than_whoever_pauses() {
    for character in Character::ALL {
        for (goes_ms, pauses_ms) in [(1_500, 9_000), (1_500, 5_000), (3_000, 5_000), (5_000, 5_000)] {
            let on = learned(character, |setup| goes_on(setup, goes_ms));
            let paused = learned(character, |setup| pauses(setup, pauses_ms));
            let more = on.iter().zip(&paused).filter(|(on, paused)| on > paused).count();
            let what = format!("{character:?}, every {goes_ms} ms {:.2}, who pauses {:.2}", mean(&on), mean(&paused));
            assert!(mean(&on) < 0.75 * mean(&paused), "{what}");
            assert!(more <= 4, "{what}: it learned more in {more} of {SEEDS}");
        }
    }
}
