//! What to lay out next in a likes test, from its plan, its seed and the trials recorded so far.

use sayso_methods::likes::schedule;
use sayso_model::{AnimalId, AssessmentId, LikeOutcome, LikeTrial, LikesFormat, RewardId, Story};
use std::collections::BTreeSet;

/// What to lay out next in a test.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Setup {
    /// Lay these out.
    Offer {
        /// Round, from 1.
        round: u16,
        /// Trial, from 1.
        number: usize,
        /// Trials in all, as far as they can be foreseen.
        of: usize,
        /// From the animal's left to its right.
        offered: Vec<RewardId>,
    },
    /// The test is done.
    Done,
}

/// The next trial of a test, from its plan, its seed and the trials recorded so far; none for an unknown test.
///
/// A withdrawn trial comes up again. A round of multiple-without-replacement ends when the animal walks away or
/// chooses none, for that is its answer.
#[must_use]
pub fn next_setup(story: &Story, animal: AnimalId, assessment: AssessmentId) -> Option<Setup> {
    let test = story.of::<sayso_model::LikesTest>(animal).find(|t| t.part.assessment == assessment)?.part;
    let done: Vec<&LikeTrial> =
        story.of::<LikeTrial>(animal).map(|t| t.part).filter(|t| t.assessment == assessment).collect();
    let (items, seed) = (test.rewards.len(), u64::from(test.seed));
    let pick = |indices: &[usize]| indices.iter().filter_map(|i| test.rewards.get(*i).copied()).collect::<Vec<_>>();
    let number = done.len() + 1;
    let fixed = |plan: Vec<(u16, Vec<usize>)>| {
        let of = plan.len();
        let mut open = done.clone();
        // A trial is done if one with the same things was recorded in that round, also if sides were laid otherwise.
        let next = plan.into_iter().find(|(round, row)| {
            let wanted: BTreeSet<RewardId> = pick(row).into_iter().collect();
            let same =
                |t: &&LikeTrial| t.round == *round && t.offered.iter().copied().collect::<BTreeSet<_>>() == wanted;
            match open.iter().position(same) {
                Some(at) => {
                    open.remove(at);
                    false
                }
                None => true,
            }
        });
        next.map_or(Setup::Done, |(round, row)| Setup::Offer { round, number, of, offered: pick(&row) })
    };
    Some(match test.format {
        LikesFormat::Paired => fixed(
            schedule::paired(items, test.rounds, seed).into_iter().map(|p| (p.round, vec![p.left, p.right])).collect(),
        ),
        LikesFormat::Single => {
            fixed(schedule::singles(items, test.rounds, seed).into_iter().map(|(r, i)| (r, vec![i])).collect())
        }
        LikesFormat::FreeAccess => {
            fixed((1..=test.rounds).map(|r| (r, schedule::array(items, r, seed, &[]))).collect())
        }
        LikesFormat::Multiple => {
            let of = items * usize::from(test.rounds);
            (1..=test.rounds)
                .find_map(|round| {
                    let of_round: Vec<&&LikeTrial> = done.iter().filter(|t| t.round == round).collect();
                    let ended = of_round.iter().any(|t| !matches!(t.result, LikeOutcome::Chose { .. }));
                    let chosen: Vec<usize> = of_round
                        .iter()
                        .filter_map(|t| match t.result {
                            LikeOutcome::Chose { reward } => test.rewards.iter().position(|r| *r == reward),
                            _ => None,
                        })
                        .collect();
                    let row = schedule::array(items, round, seed, &chosen);
                    (!ended && !row.is_empty()).then(|| Setup::Offer { round, number, of, offered: pick(&row) })
                })
                .unwrap_or(Setup::Done)
        }
    })
}
