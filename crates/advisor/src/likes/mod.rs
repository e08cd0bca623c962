//! What the animal likes, from all its tests: published scores by format, one ranking with intervals, side bias,
//! what to test next, whether it is known well enough, and when to test again.

mod choices;
mod report;
mod setup;

pub use report::{ConsistencyReport, Known, Lean, LikesReport, NextTest, RankedReward, Settled, SideReport};
pub use setup::{Setup, next_setup};

use crate::advice::{Because, NAMELESS};
use crate::case::Case;
use crate::estimate::{Estimate, LEVEL, Unit};
use choices::{HALF_LIFE_DAYS, array_rankings, choice_fit, pair_trials};
use sayso_methods::likes::{
    ChoiceFit, Consistency, FreeAccessSession, Goal, PairOutcome, PairTrial, Ranking, RankingState, Retest,
    RetestReason, RetestRule, SideBias, SingleItem, StopRule, TopSet, Tournament, Verdict, consistency,
    free_access_scores, multiple_scores, next_pair, paired_scores, retest, should_stop, side_bias, single_item_scores,
};
use sayso_model::{Fact, LikeOutcome, LikeTrial, LikesFormat, Moment, RewardCard, RewardId, RewardKind};
use std::collections::{BTreeMap, BTreeSet};

/// Draws for probabilities of sets; fixed seed, so that the same records give the same words.
const DRAWS: usize = 2000;
const SEED: u64 = 1;
/// The set looked for: as many as first words.
const TOP: usize = 3;

/// What one animal likes, as of `now`.
#[must_use]
pub fn likes(case: &Case<'_>) -> LikesReport {
    let now = case.now();
    let trials: Vec<Fact<'_, LikeTrial>> =
        case.story().of::<LikeTrial>(case.animal()).take_while(|t| t.at() <= now).collect();
    let cards = case.story().rewards();
    // Rewards in the order of their ids: an index here is an item there.
    let items: Vec<RewardId> =
        trials.iter().flat_map(|t| t.part.offered.iter().copied()).collect::<BTreeSet<_>>().into_iter().collect();
    if items.is_empty() {
        return LikesReport::default();
    }
    let index: BTreeMap<RewardId, usize> = items.iter().enumerate().map(|(i, r)| (*r, i)).collect();
    let pairs = pair_trials(&trials, &index);
    let arrays = array_rankings(&trials, &index);
    let age = |at: Moment| now.seconds_since(at) / 86_400.0;
    let fit = choice_fit(items.len(), &trials, &index, &age);
    let verdict = fit.as_ref().and_then(|f| verdict(f, items.len()));
    let scores = scores(&trials, &index, &pairs, &arrays);
    let no_choice =
        trials.iter().filter(|t| matches!(t.part.result, LikeOutcome::ChoseNone | LikeOutcome::WalkedAway)).count();
    let last = trials.iter().map(Fact::at).max();
    let known = verdict.as_ref().map(|v| known(v, &items, &cards));
    LikesReport {
        trials: trials.len(),
        choosing: trials.iter().filter(|t| is_choosing(t.part.format)).count(),
        no_choice,
        ranking: ranking(&items, &cards, fit.as_ref(), verdict.as_ref().map(set_of), &scores),
        side: side(&pairs),
        consistency: triads(items.len(), &pairs),
        next: next(fit.as_ref(), &pairs, &items, known.as_ref()),
        retest: retest_because(last.map(age), known.as_ref()),
        known,
        last,
    }
}

/// Whether a trial of this kind holds things to choose between, as the models of choice read them.
const fn is_choosing(format: LikesFormat) -> bool {
    matches!(format, LikesFormat::Paired | LikesFormat::Multiple)
}

fn verdict(fit: &ChoiceFit, items: usize) -> Option<Verdict> {
    let top = if items < 5 { 1 } else { TOP };
    (items >= 2).then(|| should_stop(fit, &StopRule { top, ..StopRule::default() }, DRAWS, SEED).ok()).flatten()
}

const fn set_of(verdict: &Verdict) -> &TopSet {
    match verdict {
        Verdict::GoOn(set) | Verdict::KnownWellEnough(set) | Verdict::EnoughForNow(set) => set,
    }
}

fn known(verdict: &Verdict, items: &[RewardId], cards: &BTreeMap<RewardId, &RewardCard>) -> Known {
    let set = set_of(verdict);
    let best: Vec<RewardId> = set.members.iter().filter_map(|i| items.get(*i).copied()).collect();
    let names: Vec<String> = best.iter().map(|r| name(cards, *r)).collect();
    let verdict = match verdict {
        Verdict::KnownWellEnough(_) => Settled::WellEnough,
        Verdict::EnoughForNow(_) => Settled::EnoughForNow,
        Verdict::GoOn(_) => Settled::NotYet,
    };
    Known { verdict, best, names, probability: set.probability, n: set.n }
}

fn name(cards: &BTreeMap<RewardId, &RewardCard>, reward: RewardId) -> String {
    cards.get(&reward).map_or_else(|| NAMELESS.to_owned(), |c| c.name.to_string())
}

pub(crate) fn logistic(x: f64) -> f64 {
    1.0 / (1.0 + (-x).exp())
}

fn ranking(
    items: &[RewardId],
    cards: &BTreeMap<RewardId, &RewardCard>,
    fit: Option<&ChoiceFit>,
    best: Option<&TopSet>,
    scores: &[BTreeMap<&'static str, Estimate>],
) -> Vec<RankedReward> {
    let mut ranking: Vec<RankedReward> = items
        .iter()
        .enumerate()
        .map(|(i, &reward)| {
            let strength = fit.and_then(|f| f.strengths.get(i)).filter(|s| s.offered > 0);
            let n = strength.map_or(0, |s| usize::try_from(s.offered).unwrap_or(usize::MAX));
            RankedReward {
                reward,
                name: name(cards, reward),
                kind: cards.get(&reward).map_or(RewardKind::Play, |c| c.kind),
                over_average: strength.map_or(Estimate::unknown(Unit::Share), |s| Estimate {
                    value: Some(logistic(s.value)),
                    low: Some(logistic(s.interval.low)),
                    high: Some(logistic(s.interval.high)),
                    n,
                    unit: Unit::Share,
                }),
                strength: strength.map(|s| (s.value, s.standard_error)),
                among_best: strength.and(best).and_then(|b| b.each.get(i).copied()),
                scores: scores.get(i).cloned().unwrap_or_default(),
            }
        })
        .collect();
    let key = |r: &RankedReward| r.strength.map_or(f64::NEG_INFINITY, |s| s.0);
    ranking.sort_by(|a, b| key(b).total_cmp(&key(a)).then_with(|| a.name.cmp(&b.name)));
    ranking
}

fn scores(
    trials: &[Fact<'_, LikeTrial>],
    index: &BTreeMap<RewardId, usize>,
    pairs: &[PairTrial],
    arrays: &[Ranking],
) -> Vec<BTreeMap<&'static str, Estimate>> {
    let items = index.len();
    let mut all = vec![BTreeMap::new(); items];
    let mut keep = |format: &'static str, item: usize, estimate: Estimate| {
        if estimate.n > 0 && item < items {
            all[item].insert(format, estimate);
        }
    };
    for s in paired_scores(items, pairs, LEVEL).unwrap_or_default() {
        keep(LikesFormat::Paired.name(), s.item, Estimate::share(count(s.count.k()), count(s.count.n())));
    }
    for s in multiple_scores(items, arrays, LEVEL).unwrap_or_default() {
        keep(LikesFormat::Multiple.name(), s.item, Estimate::share(count(s.count.k()), count(s.count.n())));
    }
    let mut single = vec![SingleItem { presented: 0, approached: 0 }; items];
    let mut free: Vec<FreeAccessSession> = Vec::new();
    for t in trials {
        match (t.part.format, &t.part.result) {
            (LikesFormat::Single, result) => {
                if let Some(&i) = t.part.offered.first().and_then(|r| index.get(r)) {
                    single[i].presented += 1;
                    single[i].approached += u64::from(matches!(result, LikeOutcome::Chose { .. }));
                }
            }
            (LikesFormat::FreeAccess, LikeOutcome::Observed { observed_s, engaged }) => {
                let seconds = |r: &RewardId| engaged.iter().find(|e| e.reward == *r).map_or(0.0, |e| e.seconds.get());
                free.push(FreeAccessSession {
                    session_s: observed_s.get(),
                    engaged_s: t.part.offered.iter().filter_map(|r| Some((*index.get(r)?, seconds(r)))).collect(),
                });
            }
            _ => {}
        }
    }
    for s in single_item_scores(&single, LEVEL).unwrap_or_default() {
        keep(LikesFormat::Single.name(), s.item, Estimate::share(count(s.count.k()), count(s.count.n())));
    }
    for s in free_access_scores(items, &free, LEVEL).unwrap_or_default() {
        let share = |x: f64| (x / 100.0).clamp(0.0, 1.0);
        keep(
            LikesFormat::FreeAccess.name(),
            s.item,
            Estimate {
                value: s.percent().map(share),
                low: s.interval.map(|i| i.low.clamp(0.0, 1.0)),
                high: s.interval.map(|i| i.high.clamp(0.0, 1.0)),
                n: s.sessions,
                unit: Unit::Share,
            },
        );
    }
    all
}

fn count(n: u64) -> usize {
    usize::try_from(n).unwrap_or(usize::MAX)
}

fn side(pairs: &[PairTrial]) -> Option<SideReport> {
    let left = pairs.iter().filter(|p| p.outcome == PairOutcome::Left).count();
    let right = pairs.iter().filter(|p| p.outcome == PairOutcome::Right).count();
    let SideBias { p, .. } = side_bias(left as u64, right as u64, LEVEL).ok()?;
    let n = left + right;
    if n == 0 {
        return None;
    }
    let lean = match (p < 0.05, left > right) {
        (true, true) => Lean::Left,
        (true, false) => Lean::Right,
        _ if n < 6 => Lean::TooFew,
        _ => Lean::None,
    };
    Some(SideReport { left: Estimate::share(left, n), p, lean })
}

/// Circular triads need every pair decided; only items all of whose pairs are go in, and at least three.
fn triads(items: usize, pairs: &[PairTrial]) -> Option<ConsistencyReport> {
    let mut wins = vec![vec![0_u64; items]; items];
    for p in pairs {
        match p.outcome {
            PairOutcome::Left => wins[p.left][p.right] += 1,
            PairOutcome::Right => wins[p.right][p.left] += 1,
            PairOutcome::Neither | PairOutcome::Both => {}
        }
    }
    let decided = |a: usize, b: usize| wins[a][b] != wins[b][a];
    let mut kept: Vec<usize> = (0..items).filter(|&a| (0..items).any(|b| b != a && decided(a, b))).collect();
    // Drop the item with most undecided pairs until none is left undecided.
    loop {
        let open = |a: &usize| kept.iter().filter(|b| *b != a && !decided(*a, **b)).count();
        let Some(worst) = kept.iter().max_by_key(|a| open(a)).copied().filter(|a| open(a) > 0) else { break };
        kept.retain(|a| *a != worst);
    }
    if kept.len() < 3 {
        return None;
    }
    let table: Vec<Vec<u64>> = kept.iter().map(|a| kept.iter().map(|b| wins[*a][*b]).collect()).collect();
    let Consistency { circular_triads, most, zeta, items, .. } =
        consistency(&Tournament::from_wins(&table).ok()?).ok()?;
    Some(ConsistencyReport { circular: circular_triads, most, zeta, items })
}

fn next(fit: Option<&ChoiceFit>, pairs: &[PairTrial], items: &[RewardId], known: Option<&Known>) -> Option<NextTest> {
    let (fit, known) = (fit?, known?);
    let goal = if known.best.len() < items.len() { Goal::TopSet(known.best.len()) } else { Goal::Strengths };
    let pair = next_pair(fit, pairs, goal, DRAWS, SEED).ok()?;
    Some(NextTest { left: *items.get(pair.left)?, right: *items.get(pair.right)? })
}

fn retest_because(age_days: Option<f64>, known: Option<&Known>) -> Option<Because> {
    let known = known?;
    let state = RankingState {
        age_days,
        half_life_days: HALF_LIFE_DAYS,
        top_probability: known.probability,
        turned_down: None,
    };
    match retest(&state, &RetestRule::default()).ok()? {
        Retest::Now(RetestReason::TooOld(_)) => {
            Some(Because::TestOld { days: age_days.unwrap_or(0.0), half_life_days: HALF_LIFE_DAYS })
        }
        // On the day of a test its own page says what to offer next; what is enough for now may never become clear.
        Retest::Now(RetestReason::TopUnclear(_))
            if known.verdict != Settled::EnoughForNow && age_days.is_some_and(|a| a > 1.0) =>
        {
            Some(Because::BestUnclear { best: known.names.clone(), probability: known.probability, choices: known.n })
        }
        Retest::Now(_) | Retest::InDays(_) => None,
    }
}
