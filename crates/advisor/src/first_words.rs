//! First words: which two or three, why in figures, what was left out and why, and the alternatives.

use crate::case::Case;
use crate::likes::{LikesReport, likes};
use crate::ration::{forbidden, ration};
use sayso_methods::words::{
    Candidate, Delivery, FirstWordRules, FirstWordsError, LeftOut, Liking, Scored, first_words as choose,
};
use sayso_model::{AnimalCard, Kcal, RewardCard, RewardId, RewardKind};
use std::collections::BTreeMap;

/// One proposed word.
#[derive(Clone, PartialEq, Debug)]
pub struct Proposed {
    /// What would be delivered.
    pub reward: RewardId,
    /// What the button would say.
    pub says: String,
    /// Its kind.
    pub kind: RewardKind,
    /// The reasons, in figures.
    pub because: Vec<String>,
}

/// One set of words.
#[derive(Clone, PartialEq, Debug)]
pub struct Choice {
    /// The words.
    pub words: Vec<Proposed>,
    /// Its score and the score's parts, in words.
    pub score: String,
    /// Share of draws from the likings' uncertainty in which this set is the best.
    pub best_in: f64,
    /// Draws made.
    pub draws: u32,
}

/// A reward that is not in the best set.
#[derive(Clone, PartialEq, Debug)]
pub struct NotChosen {
    /// Which.
    pub reward: RewardId,
    /// What it would say.
    pub says: String,
    /// What kept it out.
    pub why: String,
}

/// The proposal.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct FirstWords {
    /// The best set; none where nothing fits.
    pub best: Option<Choice>,
    /// The next best sets.
    pub alternatives: Vec<Choice>,
    /// What was left out and why.
    pub left_out: Vec<NotChosen>,
    /// Why there is no proposal, if so.
    pub none_because: Option<String>,
    /// Trials of likes tests behind it.
    pub likes_trials: usize,
}

/// Proposes first words from the active rewards of an animal that have no word yet.
#[must_use]
pub fn first_words(case: &Case<'_>) -> FirstWords {
    let (story, animal) = (case.story(), case.animal());
    let Some(card) = story.animals().get(&animal).map(|c| (*c).clone()) else { return FirstWords::default() };
    let likes = likes(case);
    let taken: Vec<RewardId> = story.words_of(animal).iter().filter_map(|w| w.reward).collect();
    let rewards: Vec<&RewardCard> =
        story.rewards_of(animal).into_iter().filter(|r| !taken.contains(&r.reward)).collect();
    let budget = ration(story, &card, case.now()).budget_kcal;
    let liking = likings(&likes);
    let candidates: Vec<Candidate> = rewards.iter().map(|r| candidate(r, &card, budget, &liking)).collect();
    let rules = FirstWordRules::default();
    let draws = rules.draws;
    let left = |list: &[LeftOut]| -> Vec<NotChosen> {
        list.iter()
            .filter_map(|l| Some((l, rewards.get(l.candidate)?)))
            .map(|(l, r)| NotChosen { reward: r.reward, says: l.says.clone(), why: l.reason.to_string() })
            .collect()
    };
    let told = |set: &Scored| Choice {
        words: set
            .words
            .iter()
            .zip(&set.deliveries)
            .filter_map(|(i, d)| Some(propose(rewards.get(*i)?, candidates.get(*i)?, d, &likes)))
            .collect(),
        score: format!(
            "score {:.2}: liking and deliveries {:.2}, kinds {:.2}, sounding apart {:.2}, already said {:.2}",
            set.score.total,
            set.score.total - set.score.spread - set.score.apart - set.score.said,
            set.score.spread,
            set.score.apart,
            set.score.said
        ),
        best_in: set.best_in,
        draws,
    };
    match choose(&candidates, &rules) {
        Ok(found) => FirstWords {
            best: Some(told(&found.best)),
            alternatives: found.alternatives.iter().map(told).collect(),
            left_out: left(&found.left_out),
            none_because: None,
            likes_trials: likes.trials,
        },
        Err(why) => FirstWords {
            left_out: if let FirstWordsError::NoSet { left_out, .. } = &why { left(left_out) } else { Vec::new() },
            none_because: Some(why.to_string()),
            likes_trials: likes.trials,
            ..FirstWords::default()
        },
    }
}

/// Likings from choices; for a reward never in a choice, from how often it was approached or how long it was engaged.
fn likings(likes: &LikesReport) -> BTreeMap<RewardId, Liking> {
    likes
        .ranking
        .iter()
        .filter_map(|r| {
            let from_choices = r.strength.map(|(value, se)| Liking::from_log_odds(value, se));
            let from_scores = || {
                let e = r.scores.values().next()?;
                // A 95 % interval is about four standard errors wide.
                let sd = e.low.zip(e.high).map_or(Liking::UNTESTED.sd, |(low, high)| (high - low) / 4.0);
                Some(Liking { mean: e.value?, sd })
            };
            Some((r.reward, from_choices.or_else(from_scores)?))
        })
        .collect()
}

fn candidate(
    reward: &RewardCard,
    animal: &AnimalCard,
    budget: Option<f64>,
    liking: &BTreeMap<RewardId, Liking>,
) -> Candidate {
    let kcal = reward.kcal_per_piece.map_or(0.0, Kcal::get);
    let food = reward.kind == RewardKind::Food;
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let pieces = budget.filter(|_| food && kcal > 0.0).map(|b| (b / kcal).floor().min(f64::from(u32::MAX)) as u32);
    // Without an allowance food cannot be dosed, so it is no first word until one is set.
    let no_allowance =
        (food && budget.is_none()).then(|| "no food allowance is set: ask a veterinarian and type it in".to_owned());
    Candidate {
        says: reward.says.as_ref().unwrap_or(&reward.name).to_string(),
        kind: reward.kind,
        liking: liking.get(&reward.reward).copied().unwrap_or(Liking::UNTESTED),
        seconds: reward.seconds_to_deliver.map(|s| s.get()),
        most_per_day: reward.most_per_day.map(u32::from),
        ration_pieces: pieces,
        hazard: forbidden(animal.species, reward).or(no_allowance),
        already_said: reward.already_said,
    }
}

fn propose(reward: &RewardCard, candidate: &Candidate, delivery: &Delivery, likes: &LikesReport) -> Proposed {
    let mut because = Vec::new();
    match likes.ranking.iter().find(|r| r.reward == reward.reward) {
        Some(r) if r.strength.is_some() => {
            because.push(format!("chosen over an average reward: {}", r.over_average));
        }
        Some(r) => because.extend(r.scores.iter().map(|(format, e)| format!("{} test: {e}", format.replace('_', " ")))),
        None => because.push("not tested yet (n = 0): test it before relying on it".to_owned()),
    }
    let assumed = if delivery.assumed { ", assumed" } else { "" };
    because.push(format!(
        "about {:.0} deliveries a day at the board ({:.0} s each{assumed})",
        delivery.per_day, delivery.seconds
    ));
    if let Some(pieces) = candidate.ration_pieces {
        because.push(format!("{pieces} pieces a day within the food allowance, if nothing else is fed as reward"));
    }
    if candidate.already_said {
        because.push("people already say this word often".to_owned());
    }
    Proposed { reward: reward.reward, says: candidate.says.clone(), kind: reward.kind, because }
}
