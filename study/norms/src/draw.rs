//! One learner and one of its words of each household: households are counted, not presses, words or learners.

use sayso_model::Species;
use sayso_norms::{AgeBand, DayPart, StageWait, StudyName, SummaryRow, WeekPresses, WordKind};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;

/// Of how many first words it is counted what they brought.
pub const FIRST_WORDS: usize = 3;

/// Fewest invitations of which a share is taken.
pub const LEAST_INVITED: u32 = 10;

/// What a household contributes.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Drawn {
    /// The learner's species.
    pub species: Species,
    /// Its age.
    pub age_band: AgeBand,
    /// What the word brings.
    pub word_kind: WordKind,
    /// Showings to the first press, or so far.
    pub exposures: u32,
    /// Days to it, or so far.
    pub days: u32,
    /// Whether it was pressed.
    pub pressed: bool,
    /// Invitations of all the learner's words it joined, of how many.
    pub joined: (u32, u32),
    /// What its first words brought.
    pub first_words: [Option<WordKind>; FIRST_WORDS],
    /// The hours of one of the word's presses; none where there was none of its own accord, or the home did not agree to tell.
    pub hours: Option<DayPart>,
    /// How long the word stood in one stage; none where it did not come to the one asked of it, or the home did not agree to tell.
    pub stage: Option<StageWait>,
    /// How often the word was pressed in one week; none where that week was not watched, or the home did not agree to tell.
    pub week: Option<WeekPresses>,
}

/// Rows by household, learner and word. Of a row given more than once the one that watched longest counts.
type Households<'a> = BTreeMap<&'a StudyName, BTreeMap<u8, BTreeMap<u16, &'a SummaryRow>>>;

/// Draws one learner of each household, and one of its words, by an order that follows from the release's name and theirs and from no
/// value. Another household's rows change nothing of it.
#[must_use]
pub fn draw<'a>(rows: impl IntoIterator<Item = &'a SummaryRow>, release: &str) -> Vec<Drawn> {
    let mut households = Households::new();
    for row in rows {
        let words = households.entry(&row.household).or_default().entry(row.learner).or_default();
        let kept = words.entry(row.word).or_insert(row);
        if (row.watched, row) > (kept.watched, *kept) {
            *kept = row;
        }
    }
    let one = |(household, learners): (&StudyName, BTreeMap<u8, BTreeMap<u16, &SummaryRow>>)| {
        let place = |learner: u8, word: Option<u16>| place(release, household, learner, word);
        let (learner, words) = learners.into_iter().min_by_key(|(learner, _)| place(*learner, None))?;
        let word = *words.iter().min_by_key(|(word, _)| place(learner, Some(**word)))?.1;
        let sum = |of: fn(&SummaryRow) -> u32| words.values().map(|row| of(row)).fold(0, u32::saturating_add);
        let kind = |number: usize| {
            let number = u16::try_from(number + 1).ok()?;
            words.get(&number).map(|row| row.word_kind)
        };
        Some(Drawn {
            species: word.species,
            age_band: word.age_band,
            word_kind: word.word_kind,
            exposures: word.exposures,
            days: word.days,
            pressed: word.pressed,
            joined: (sum(|row| row.joined), sum(|row| row.invited)),
            first_words: std::array::from_fn(kind),
            hours: word.hours,
            stage: word.stage,
            week: word.week,
        })
    };
    households.into_iter().filter_map(one).collect()
}

/// Where a learner or word stands in the order. Texts are of other lengths, so each goes with its own.
fn place(release: &str, household: &StudyName, learner: u8, word: Option<u16>) -> [u8; 32] {
    let mut hash = Sha256::new_with_prefix(b"sayso norms draw\0");
    for text in [release, household.as_str()] {
        hash.update((text.len() as u64).to_le_bytes());
        hash.update(text);
    }
    hash.update([learner]);
    if let Some(word) = word {
        hash.update(word.to_le_bytes());
    }
    hash.finalize().into()
}
