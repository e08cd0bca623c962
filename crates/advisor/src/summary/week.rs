//! How often a word was pressed in one week since its first showing.

use super::DAY_S;
use sayso_model::draw::one_of;
use sayso_model::{AnimalId, WordId};
use sayso_norms::{Often, Stretch, WeekPresses};

/// Draws for a word: of the stretch, and of the week in it.
const STRETCH: u64 = 1;
const WEEK: u64 = 2;

/// Of which week a word is asked, from 1, and in which stretch it lies. Drawn beforehand, whether or not it is watched so long: drawn among
/// the weeks that were watched, words watched for a short time would be asked of their first weeks more often than others.
fn asked(animal: AnimalId, word: WordId) -> (Stretch, i64) {
    let stretch = Stretch::ALL[one_of(animal, word, STRETCH, Stretch::ALL.len())];
    let many = usize::from(stretch.to() - stretch.from() + 1);
    let nth = u16::try_from(one_of(animal, word, WEEK, many)).unwrap_or(0);
    (stretch, i64::from(stretch.from() + nth))
}

/// How often a word shown first at `begin` and watched to `until` was pressed in the week asked of it. `noted` is everything of the learner, by time,
/// with the word where it is a press of its own accord. None where the week is not over, or nothing but such presses of the word was noted in
/// it: a week without any might have been one in which nobody looked, and a week that counts by its presses alone would always have some.
pub(super) fn week(
    animal: AnimalId,
    word: WordId,
    noted: &[(i64, Option<WordId>)],
    (begin, until): (i64, i64),
) -> Option<WeekPresses> {
    let (from, week) = asked(animal, word);
    let [start, end] = [week - 1, week].map(|weeks| begin + weeks * 7 * DAY_S);
    let place = |at: i64| noted.partition_point(|(noted, _)| *noted < at);
    let within = noted.get(place(start)..place(end))?;
    let presses = within.iter().filter(|(_, own)| *own == Some(word)).count();
    (end <= until && presses < within.len()).then(|| WeekPresses { from, pressed: Often::of(presses) })
}
