//! How many words lie outside in homes drawn from the same population as the release: a tenth at most, by construction.

use crate::invented::{release, rows_of};
use sayso_advisor::others::{Wait, is_laid, outside};
use sayso_methods::stats::{Interval, Level, Proportion};
use sayso_model::Species;
use sayso_norms::{AgeBand, Outside, Question, Release, StudyName, SummaryRow, WordKind};
use sayso_sim::Chance;

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

/// A word of a household whose first press comes by a law: showings lognormal about 45, four a day, not watched for ever.
fn by_a_law(household: usize, chance: &mut Chance) -> SummaryRow {
    let showings = chance.lognormal(45.0, 1.0).round().clamp(0.0, 5_000.0);
    let watched = chance.between(60.0, 2_000.0).round();
    let (pressed, exposures) = (showings <= watched, showings.min(watched) as u32);
    SummaryRow {
        form: SummaryRow::FORM,
        household: StudyName::new(&format!("h{household}")).unwrap(),
        learner: 0,
        word: 1,
        species: Species::Dog,
        age_band: AgeBand::Unknown,
        word_kind: WordKind::Play,
        exposures: exposures.max(u32::from(!pressed)),
        pressed,
        days: exposures / 4,
        watched: if pressed { watched as u32 } else { exposures / 4 },
        invited: 1,
        joined: 1,
        hours: None,
        stage: None,
        week: None,
    }
}

#[test]
fn where_waits_lie_smoothly_a_twentieth_lies_beyond_either_place_and_fewer_are_told() {
    let mut chance = Chance::new(7, 3);
    let given: Vec<SummaryRow> = (0..600).map(|home| by_a_law(home, &mut chance)).collect();
    let release = release(&given);
    let fresh: Vec<Wait> = (0..3_000).map(|home| Wait::of(&by_a_law(home, &mut chance))).collect();
    let share = |k: usize| Proportion::new(k as u64, fresh.len() as u64).unwrap().clopper_pearson(Level::P95);
    let told =
        |side: Outside| fresh.iter().filter(|wait| outside(&release, wait).is_some_and(|l| l.side == side)).count();
    let cell = release.cell_for(Question::ShowingsToFirstPress, fresh[0].like).unwrap();
    let places = cell.curve().unwrap().quantiles;
    let (early, late) = (places.p05.value.unwrap(), places.p95.value.unwrap());
    let beyond = |wait: &&Wait| wait.pressed && f64::from(wait.showings) < early || f64::from(wait.showings) > late;
    let (beyond, sooner, later) = (fresh.iter().filter(beyond).count(), told(Outside::Below), told(Outside::Above));
    let all = [beyond, sooner + later, sooner, later];
    let line = all.map(|k| {
        let Interval { low, high, .. } = share(k);
        format!("{k} ({low:.3} to {high:.3})")
    });
    println!(
        "Of {} words by a law: beyond the places {}, told {}: sooner {}, later {}.",
        fresh.len(),
        line[0],
        line[1],
        line[2],
        line[3]
    );
    let by_place = share(beyond);
    assert!(
        by_place.low < 0.115 && by_place.high > 0.075,
        "a tenth, give or take the places of 600 homes: {by_place:?}"
    );
    assert!(sooner > 0 && later > 0 && share(sooner + later).high < 0.1, "{line:?}");
    assert!(sooner + later < beyond, "what is in doubt is not told: {line:?}");
}
