//! Trials as the choice models want them, and one set of strengths from all formats that hold choices.

use sayso_methods::likes::{
    ChoiceFit, PairModel, PairOutcome, PairTrial, RankModel, Ranking, fit_sittings, fit_weighted_rankings,
    forgetting_weight,
};
use sayso_model::{AssessmentId, Fact, LikeOutcome, LikeTrial, LikesFormat, Moment, RewardId};
use std::collections::BTreeMap;

/// Days after which a trial counts half, and a ranking is half forgotten (common practice, no source: likes change).
pub(super) const HALF_LIFE_DAYS: f64 = 30.0;
/// A pause so long starts a new sitting, hours: what was tasted before it no longer counts as just had (common practice, no
/// source).
const NEW_SITTING_H: f64 = 2.0;

/// Paired trials; the first thing offered lay on the animal's left.
pub(super) fn pair_trials(trials: &[Fact<'_, LikeTrial>], index: &BTreeMap<RewardId, usize>) -> Vec<PairTrial> {
    trials
        .iter()
        .filter(|t| t.part.format == LikesFormat::Paired)
        .filter_map(|t| {
            let [l, r] = t.part.offered[..] else { return None };
            let outcome = match t.part.result {
                LikeOutcome::Chose { reward } if reward == l => PairOutcome::Left,
                LikeOutcome::Chose { .. } => PairOutcome::Right,
                _ => PairOutcome::Neither,
            };
            Some(PairTrial { left: *index.get(&l)?, right: *index.get(&r)?, outcome })
        })
        .collect()
}

/// Rounds of multiple-without-replacement as rankings.
pub(super) fn array_rankings(trials: &[Fact<'_, LikeTrial>], index: &BTreeMap<RewardId, usize>) -> Vec<Ranking> {
    let mut rounds: BTreeMap<(AssessmentId, u16), Ranking> = BTreeMap::new();
    for t in trials.iter().filter(|t| t.part.format == LikesFormat::Multiple) {
        let round = rounds.entry((t.part.assessment, t.part.round)).or_insert_with(|| Ranking::stopped(&[], &[]));
        let offered = t.part.offered.iter().filter_map(|r| index.get(r).copied());
        match t.part.result {
            LikeOutcome::Chose { reward } => {
                let Some(&item) = index.get(&reward) else { continue };
                if !round.chosen.contains(&item) {
                    round.chosen.push(item);
                }
                round.left_over = offered.filter(|i| !round.chosen.contains(i)).collect();
            }
            _ => {
                round.left_over = offered.filter(|i| !round.chosen.contains(i)).collect();
                round.turned_away = true;
            }
        }
    }
    rounds.into_values().filter(|r| !r.chosen.is_empty() || r.turned_away).collect()
}

/// One set of strengths from pairs and arrays together (a pair is a ranking of two), older trials counting for less.
pub(super) fn choice_fit(
    items: usize,
    trials: &[Fact<'_, LikeTrial>],
    index: &BTreeMap<RewardId, usize>,
    age: &impl Fn(Moment) -> f64,
) -> Option<ChoiceFit> {
    let weight = |at: Moment| forgetting_weight(age(at).max(0.0), HALF_LIFE_DAYS).unwrap_or(1.0);
    let (mut pairs, mut pair_weights, mut arrays, mut array_weights) = (vec![], vec![], vec![], vec![]);
    let (mut sittings, mut last_h): (Vec<i64>, Option<f64>) = (vec![], None);
    let mut tests: Vec<(AssessmentId, u16)> = Vec::new();
    for t in trials {
        if t.part.format == LikesFormat::Paired {
            for pair in pair_trials(std::slice::from_ref(t), index) {
                pairs.push(pair);
                pair_weights.push(weight(t.at()));
                let hours = 24.0 * age(t.at());
                let fresh = last_h.replace(hours).is_some_and(|last| (last - hours).abs() > NEW_SITTING_H);
                sittings.push(sittings.last().copied().unwrap_or(0) + i64::from(fresh));
            }
        }
        let round = (t.part.assessment, t.part.round);
        if t.part.format == LikesFormat::Multiple && !tests.contains(&round) {
            tests.push(round);
            let of_round: Vec<Fact<'_, LikeTrial>> =
                trials.iter().filter(|o| (o.part.assessment, o.part.round) == round).copied().collect();
            for ranking in array_rankings(&of_round, index) {
                arrays.push(ranking);
                array_weights.push(weight(t.at()));
            }
        }
    }
    if arrays.is_empty() {
        let fit = || fit_sittings(items, &pairs, &pair_weights, &sittings, &PairModel::default()).ok();
        return (!pairs.is_empty()).then(fit).flatten();
    }
    arrays.extend(pairs.iter().map(|p| match p.outcome {
        PairOutcome::Left => Ranking::stopped(&[p.left], &[p.right]),
        PairOutcome::Right => Ranking::stopped(&[p.right], &[p.left]),
        PairOutcome::Neither | PairOutcome::Both => Ranking::turned_away(&[], &[p.left, p.right]),
    }));
    array_weights.extend(pair_weights);
    fit_weighted_rankings(items, &arrays, &array_weights, &RankModel::default()).ok()
}
