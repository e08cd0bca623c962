//! Is a place with noise, or an animal that is unwell, among the suspected causes, and are untroubled households left alone?

use sayso_advisor::Case;
use sayso_advisor::stuck::{Bearing, Cause, differential};
use sayso_model::{Moment, Story};
use sayso_sim::{Cause as Truth, Home, plain_home, simulate, stuck_home};

/// Share of `n` households from `first` on in which the cause is suspected for the third word.
fn suspected(home: impl Fn(u64) -> Home, causes: &[Cause], first: u64, n: u64) -> Vec<f64> {
    let now: Moment = "2026-06-01T20:00:00Z".parse().unwrap();
    let mut found = vec![0.0; causes.len()];
    for seed in first..first + n {
        let run = simulate(&home(seed), seed, now).unwrap();
        let (animal, word) = (run.truth.ids.animals[0], run.truth.ids.words[2]);
        let ranked = differential(&Case::new(&Story::from_events(run.events), animal, now), word);
        for (cause, found) in causes.iter().zip(&mut found) {
            let of = |b: Bearing| matches!(b, Bearing::For | Bearing::Perhaps);
            *found += f64::from(u8::from(ranked.iter().any(|w| w.cause == *cause && of(w.bearing))));
        }
    }
    found.into_iter().map(|k| k / n as f64).collect()
}

#[test]
fn noise_and_illness_are_suspected_where_they_are_and_seldom_elsewhere() {
    let n = 30;
    let both = [Cause::TimeOrPlace, Cause::Health];
    let noise = suspected(|seed| stuck_home(Truth::PlaceOrNoise, seed), &both, 900, n);
    let unwell = suspected(|seed| stuck_home(Truth::Unwell, seed), &both, 900, n);
    let plain = suspected(plain_home, &both, 900, 2 * n);
    assert!(noise[0] >= 0.8 && unwell[1] >= 0.8, "{noise:?} {unwell:?}");
    assert!(plain[0] <= 0.1 && plain[1] <= 0.1, "{plain:?}");
}
