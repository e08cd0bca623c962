//! Of what would teach faster, which by how much: worked out on what happened in this rehearsal, all else being as it was.

use crate::change::{Change, felt_delay};
use crate::conduct::Conduct;
use crate::there::left_over;
use sayso_sim::rehearsal::{Came, Exercise, Pairing, Run, Thing};

/// Seconds from press to thing, had it come soon.
const SOON_S: f64 = 1.0;
/// Of things shown when it is there and wants them: taken. Ours.
const TAKEN: f64 = 0.8;
/// Showings a minute, of the minutes for which it is at the board, that leave time to take and to breathe. Ours (common practice, no
/// source): no source says how many an animal needs.
const A_MINUTE: f64 = 6.0;
/// Logits below which showing oftener is not worth a word.
const WORTH: f64 = 0.2;

/// What a change would have brought.
#[derive(Clone, PartialEq, Debug)]
pub struct Gain {
    /// The change.
    pub change: Change,
    /// Logits that would have been learned beside, by the place of the word.
    pub words: [f64; 4],
}

impl Gain {
    /// The change, without anything that could be worked out.
    pub(crate) const fn of(change: Change) -> Self {
        Self { change, words: [0.0; 4] }
    }

    /// The change with what it would have brought in this rehearsal.
    pub(crate) fn worked_out(conduct: &Conduct, run: &Run, change: Change) -> Self {
        Self { words: gain(conduct, run, &change), change }
    }

    /// Logits that would have been learned beside, over all words.
    #[must_use]
    pub fn logits(&self) -> f64 {
        self.words.iter().sum()
    }

    /// What the words that came up would have come to, against what they came to: middle probabilities of a meant press; none
    /// where nothing would have been gained.
    #[must_use]
    pub fn brings(&self, run: &Run) -> Option<(f64, f64)> {
        let came: Vec<usize> = Thing::ALL
            .into_iter()
            .map(Thing::place)
            .filter(|place| run.pairings.iter().any(|p| p.word.place() == *place))
            .collect();
        if self.logits() < 1e-3 || came.is_empty() {
            return None;
        }
        let mean = |with: f64| {
            let all = run.presses(std::array::from_fn(|place| run.logits.1[place] + with * self.words[place]));
            came.iter().map(|place| all[*place]).sum::<f64>() / came.len() as f64
        };
        Some((mean(0.0), mean(1.0))).filter(|(was, would)| (100.0 * would).round() > (100.0 * was).round())
    }
}

/// Of these changes the one that would have taught most; of equals the first. Showing oftener is among them where it is the work
/// and nothing stood against it.
pub(crate) fn most(conduct: &Conduct, run: &Run, teaching: impl IntoIterator<Item = Change>) -> Option<Gain> {
    let worked_out = |change| Gain::worked_out(conduct, run, change);
    let mut all: Vec<Gain> = teaching.into_iter().map(worked_out).collect();
    let oftener = worked_out(Change::Oftener);
    if oftener.logits() >= WORTH {
        all.push(oftener);
    }
    all.into_iter().reduce(|best, next| if next.logits() > best.logits() { next } else { best })
}

/// Logits that a change would have brought in this rehearsal, by the place of the word.
fn gain(conduct: &Conduct, run: &Run, change: &Change) -> [f64; 4] {
    match change {
        Change::Sooner { .. } => had(run, |p| p.sooner((p.delay_s - SOON_S).max(0.0))),
        Change::Answer => {
            let delay_s = felt_delay(conduct).value.unwrap_or(SOON_S);
            had(run, |p| if p.came == Came::Unanswered { Pairing { came: Came::Own, delay_s, ..p } } else { p })
        }
        Change::WhenThere { .. } | Change::Wanted { .. } => {
            let missed = |p: Pairing| matches!(p.came, Came::Missed | Came::Unseen);
            had(run, |p| if missed(p) { Pairing { came: Came::Shown, share: p.share * TAKEN, ..p } } else { p })
        }
        Change::Oftener => {
            let shown = run.pairings.iter().filter(|p| matches!(p.came, Came::Shown | Came::Missed | Came::Unseen));
            let n = shown.clone().count() as f64;
            // As many again at the most: nobody changes more from one time to the next.
            let more = room(conduct, run).min(n);
            let mut words = [0.0; 4];
            if more < 1.0 {
                return words;
            }
            // Where there are more, each comes sooner after the last, and teaches less.
            let (times, closer) = ((n + more) / n, n / (n + more));
            for p in shown {
                let closest = Pairing { gap_s: p.gap_s * closer, ..*p };
                words[p.word.place()] += times * closest.teaches(&run.traits) - p.teaches(&run.traits);
            }
            words
        }
        _ => [0.0; 4],
    }
}

/// What would have been learned beside, had each pairing been another.
fn had(run: &Run, other: impl Fn(Pairing) -> Pairing) -> [f64; 4] {
    let would = run.had(run.pairings.iter().copied().map(other));
    std::array::from_fn(|place| would[place] - run.logits.1[place])
}

/// Showings for which there was room: where showing is the work, and the animal showed no sign.
pub(crate) fn room(conduct: &Conduct, run: &Run) -> f64 {
    let works = matches!(run.setup.exercise, Exercise::Showing | Exercise::Free);
    if !works || conduct.signs > 0 {
        return 0.0;
    }
    left_over(run, A_MINUTE, conduct.showings())
}
