//! How many words lie outside in homes drawn from the same population as the release: a tenth at most, by construction.

use crate::invented::rows_of;
use sayso_advisor::others::{Wait, is_laid, outside};
use sayso_methods::stats::{Level, Proportion};
use sayso_norms::{Outside, Question, Release};

/// Homes that are not in the release.
const HOMES: std::ops::RangeInclusive<u64> = 2_001..=2_160;

#[test]
fn of_homes_like_those_of_the_release_a_tenth_of_words_at_most_lies_outside() {
    let release = Release::read(include_str!("../../../../tests/norms/invented.sayso-norms")).unwrap();
    let waits: Vec<Wait> = HOMES.flat_map(rows_of).map(|row| Wait::of(&row)).collect();
    let laid: Vec<&Wait> = waits.iter().filter(|wait| is_laid(&release, wait)).collect();
    let sides: Vec<Outside> = laid.iter().filter_map(|wait| Some(outside(&release, wait)?.side)).collect();
    // By the places themselves, their intervals left out: a twentieth of waits lies above, of those that were pressed or waited so long.
    let above = laid.iter().filter(|wait| {
        let nearest = release.cell_for(Question::ShowingsToFirstPress, wait.like).unwrap();
        let place = nearest.curve().unwrap().quantiles.p95.value;
        place.is_some_and(|place| f64::from(wait.showings) > place)
    });
    let share = |k: usize| Proportion::new(k as u64, laid.len() as u64).unwrap().clopper_pearson(Level::P95);
    let (above, outside) = (above.count(), sides.len());
    let (by_place, told) = (share(above), share(outside));
    println!(
        "{} words of {} homes. Above the place: {above} ({:.3} to {:.3}). Told as outside: {outside} ({:.3} to {:.3}).",
        laid.len(),
        HOMES.count(),
        by_place.low,
        by_place.high,
        told.low,
        told.high
    );
    assert!(laid.len() > 400, "{}", laid.len());
    // The release's own place is of ninety homes: a twentieth, give or take what that leaves open.
    assert!(by_place.low < 0.08 && by_place.high > 0.03, "{by_place:?}");
    assert!(outside > 0, "a line that never speaks tells nothing");
    assert!(told.high < 0.1, "{told:?}");
}
