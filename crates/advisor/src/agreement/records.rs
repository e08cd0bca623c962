//! What two people noted of the same thing in the log: presses of one session, trials of one check.

use super::scores::Scores;
use sayso_model::{AnimalId, Moment, PersonId, Press, ProbeResponse, ProbeTrial, Source, Story, WordId};
use std::collections::{BTreeMap, BTreeSet};
use uuid::Uuid;

/// Presses that two people noted within so many seconds are one press (common practice, no source).
pub const WITHIN_S: f64 = 3.0;

/// What is compared.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Noted {
    /// Which word sounded, press by press of a session both noted in.
    Presses,
    /// What came at each trial of a check.
    Checks,
}

impl Noted {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Presses, Self::Checks];

    /// Its name.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Presses => "presses",
            Self::Checks => "checks",
        }
    }
}

/// What one person noted.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Mark {
    /// This word.
    Word(WordId),
    /// That nothing was chosen.
    Nothing,
    /// That it left.
    Left,
    /// Not noted, though the other person did.
    NotNoted,
}

/// A session or check that both people noted something of.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Both {
    /// Which session or check.
    pub id: Uuid,
    /// When the first of it was noted.
    pub at: Moment,
    /// What each noted, thing by thing.
    pub marks: Vec<[Mark; 2]>,
}

/// One note: whose, when, what; and for a check of which trial.
struct Note {
    person: PersonId,
    at: Moment,
    trial: u16,
    mark: Mark,
}

fn notes(story: &Story, animal: AnimalId, what: Noted, now: Moment) -> BTreeMap<Uuid, Vec<Note>> {
    let mut all: BTreeMap<Uuid, Vec<Note>> = BTreeMap::new();
    match what {
        Noted::Presses => {
            for p in story.of::<Press>(animal).take_while(|p| p.at() <= now) {
                if let (Some(session), Some(person), Source::Tap) = (p.part.session, p.person(), p.event.source) {
                    let note = Note { person, at: p.at(), trial: 0, mark: Mark::Word(p.part.word) };
                    all.entry(session.0).or_default().push(note);
                }
            }
        }
        Noted::Checks => {
            for t in story.of::<ProbeTrial>(animal).take_while(|t| t.at() <= now) {
                if let Some(person) = t.person() {
                    let mark = match t.part.response {
                        ProbeResponse::Chose { word, .. } => Mark::Word(word),
                        ProbeResponse::Nothing => Mark::Nothing,
                        ProbeResponse::Left => Mark::Left,
                    };
                    let note = Note { person, at: t.at(), trial: t.part.trial, mark };
                    all.entry(t.part.probe.0).or_default().push(note);
                }
            }
        }
    }
    all
}

/// Pairs of people who both noted something of one session or check, with how many things both marked.
#[must_use]
pub fn pairs(story: &Story, animal: AnimalId, what: Noted, now: Moment) -> Vec<([PersonId; 2], usize)> {
    let all = notes(story, animal, what, now);
    let mut found: BTreeSet<[PersonId; 2]> = BTreeSet::new();
    for group in all.values() {
        let people: BTreeSet<PersonId> = group.iter().map(|n| n.person).collect();
        let people: Vec<PersonId> = people.into_iter().collect();
        for (i, a) in people.iter().enumerate() {
            found.extend(people[i + 1..].iter().map(|b| [*a, *b]));
        }
    }
    let count = |pair: [PersonId; 2]| both_of(&all, what, pair).iter().map(|b| b.marks.len()).sum();
    found.into_iter().map(|pair| (pair, count(pair))).filter(|(_, n)| *n > 0).collect()
}

/// What both people noted, by session or check, oldest first.
#[must_use]
pub fn both(story: &Story, animal: AnimalId, what: Noted, people: [PersonId; 2], now: Moment) -> Vec<Both> {
    both_of(&notes(story, animal, what, now), what, people)
}

fn both_of(all: &BTreeMap<Uuid, Vec<Note>>, what: Noted, people: [PersonId; 2]) -> Vec<Both> {
    let mut found: Vec<Both> = all
        .iter()
        .filter_map(|(id, group)| {
            let [a, b] = people.map(|p| group.iter().filter(|n| n.person == p).collect::<Vec<_>>());
            let at = a.first()?.at.min(b.first()?.at);
            let marks = match what {
                Noted::Presses => in_time(&a, &b),
                Noted::Checks => by_trial(&a, &b),
            };
            Some(Both { id: *id, at, marks })
        })
        .filter(|b| !b.marks.is_empty())
        .collect();
    found.sort_by_key(|b| (b.at, b.id));
    found
}

/// Two lists in order of time, laid side by side: the earliest of each within [`WITHIN_S`] are one thing.
fn in_time(a: &[&Note], b: &[&Note]) -> Vec<[Mark; 2]> {
    let (mut i, mut j, mut marks) = (0, 0, Vec::new());
    loop {
        match (a.get(i), b.get(j)) {
            (Some(x), Some(y)) if x.at.seconds_since(y.at).abs() <= WITHIN_S => {
                marks.push([x.mark, y.mark]);
                (i, j) = (i + 1, j + 1);
            }
            (Some(x), y) if y.is_none_or(|y| x.at < y.at) => {
                marks.push([x.mark, Mark::NotNoted]);
                i += 1;
            }
            (_, Some(y)) => {
                marks.push([Mark::NotNoted, y.mark]);
                j += 1;
            }
            (_, None) => return marks,
        }
    }
}

/// The last mark of each for a trial that both marked.
fn by_trial(a: &[&Note], b: &[&Note]) -> Vec<[Mark; 2]> {
    let of = |all: &[&Note]| all.iter().map(|n| (n.trial, n.mark)).collect::<BTreeMap<u16, Mark>>();
    let (a, b) = (of(a), of(b));
    a.iter().filter_map(|(trial, mark)| Some([*mark, *b.get(trial)?])).collect()
}

/// Marks as scores of names.
#[must_use]
pub fn scores(people: [String; 2], marks: &[[Mark; 2]], named: impl Fn(Mark) -> String) -> Scores {
    let kinds: Vec<Mark> = marks.iter().flatten().copied().collect::<BTreeSet<_>>().into_iter().collect();
    let place = |mark: &Mark| kinds.binary_search(mark).ok();
    Scores {
        people: people.to_vec(),
        #[allow(clippy::cast_precision_loss)]
        values: (0..kinds.len()).map(|i| i as f64).collect(),
        by_person: (0..2).map(|p| marks.iter().map(|pair| place(&pair[p])).collect()).collect(),
        categories: kinds.into_iter().map(named).collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn presses_are_one_where_both_noted_one_at_about_the_same_time() {
        let note = |seconds: f64, word: u128| Note {
            person: PersonId(Uuid::nil()),
            at: Moment::clamped(0).plus_seconds(seconds),
            trial: 0,
            mark: Mark::Word(WordId(Uuid::from_u128(word))),
        };
        let (a, b) = ([note(1.0, 1), note(20.0, 2), note(60.0, 1)], [note(2.5, 1), note(61.0, 2), note(90.0, 1)]);
        let marks = in_time(&a.iter().collect::<Vec<_>>(), &b.iter().collect::<Vec<_>>());
        let word = |n| Mark::Word(WordId(Uuid::from_u128(n)));
        assert_eq!(
            marks,
            [[word(1), word(1)], [word(2), Mark::NotNoted], [word(1), word(2)], [Mark::NotNoted, word(1)],]
        );
    }
}
