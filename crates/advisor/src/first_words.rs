//! First words: which two or three, under which label, why in figures, what was left out and why, and the alternatives.

mod giving;

pub use giving::{Basis, Given, MEASURED_FROM};

use crate::case::Case;
use crate::estimate::Estimate;
use crate::likes::{LikesReport, likes};
use crate::ration::{FoodCaution, food_cautions, forbidden, ration};
use giving::AtHome;
use sayso_methods::words::{
    AlikeRule, Candidate, Delivery, FirstWordRules, FirstWordsError, LeftOut, Liking, Score, Scored, alike,
    first_words as choose, labels_for,
};
use sayso_model::{AnimalCard, Kcal, Language, RewardCard, RewardId, RewardKind};
use std::collections::BTreeMap;

pub use sayso_methods::words::{Bound, Part, Reason};

/// How much the animal is known to like something.
#[derive(Clone, PartialEq, Debug)]
pub enum Liked {
    /// Never tested.
    Untested,
    /// From choices: the chance of being taken over an average reward.
    Chosen(Estimate),
    /// From tests without a choice between things, by format.
    Scored(Vec<(&'static str, Estimate)>),
}

/// One proposed word.
#[derive(Clone, PartialEq, Debug)]
pub struct Proposed {
    /// What would be delivered.
    pub reward: RewardId,
    /// What the button would say.
    pub says: String,
    /// Its kind.
    pub kind: RewardKind,
    /// How much it is liked.
    pub liked: Liked,
    /// Deliveries a day that time, appetite and the day's food leave it in this set.
    pub per_day: f64,
    /// What lets it be no oftener.
    pub bound: Bound,
    /// Seconds of one delivery.
    pub seconds: f64,
    /// How it is given and where these figures come from.
    pub given: Given,
    /// Pieces a day within the food allowance, if nothing else is fed as reward; none for what is not eaten.
    pub pieces: Option<u32>,
    /// Whether people already say the word many times a day.
    pub already_said: bool,
    /// A word on the board that this one sounds much like, whichever label is taken.
    pub sounds_like: Option<String>,
}

/// One set of words.
#[derive(Clone, PartialEq, Debug)]
pub struct Choice {
    /// The words.
    pub words: Vec<Proposed>,
    /// Its score in its parts.
    pub score: Score,
    /// Share of draws from the likings' uncertainty in which this set is the best.
    pub best_in: f64,
    /// Draws made.
    pub draws: u32,
}

/// What kept a reward out of the best set.
#[derive(Clone, PartialEq, Debug)]
pub enum Why {
    /// It is food, and no allowance is set: it cannot be dosed.
    NoAllowance,
    /// It must never be given: what the hazards list says of it.
    Never(Vec<FoodCaution>),
    /// It sounds too much like this word of its best set.
    SoundsLike(String),
    /// What else the choice of words says.
    Choice(Reason),
}

/// A reward that is not in the best set.
#[derive(Clone, PartialEq, Debug)]
pub struct NotChosen {
    /// Which.
    pub reward: RewardId,
    /// What it would say.
    pub says: String,
    /// What kept it out.
    pub why: Why,
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
    pub none_because: Option<FirstWordsError>,
    /// Trials of likes tests behind it.
    pub likes_trials: usize,
}

/// What the choice starts from.
struct Known<'a> {
    rewards: Vec<&'a RewardCard>,
    candidates: Vec<Candidate>,
    given: Vec<Given>,
    sounds_like: Vec<Option<String>>,
    likes: LikesReport,
    /// What must never be given, and why.
    never: BTreeMap<RewardId, Vec<FoodCaution>>,
    undosed: Vec<RewardId>,
}

/// Proposes first words from the active rewards of an animal that have no word yet. Labels are made out of the rewards'
/// names as written in `language`.
#[must_use]
pub fn first_words(case: &Case<'_>, language: Language) -> FirstWords {
    let (story, animal) = (case.story(), case.animal());
    let Some(card) = story.animals().get(&animal).copied() else { return FirstWords::default() };
    let rules = FirstWordRules { language, ..FirstWordRules::default() };
    let known = Known::of(case, card, &rules);
    match choose(&known.candidates, &rules) {
        Ok(found) => FirstWords {
            best: Some(known.told(&found.best, rules.draws)),
            alternatives: found.alternatives.iter().map(|s| known.told(s, rules.draws)).collect(),
            left_out: known.left(&found.left_out),
            none_because: None,
            likes_trials: known.likes.trials,
        },
        Err(why) => FirstWords {
            left_out: if let FirstWordsError::NoSet { left_out, .. } = &why {
                known.left(left_out)
            } else {
                Vec::new()
            },
            none_because: Some(why),
            likes_trials: known.likes.trials,
            ..FirstWords::default()
        },
    }
}

/// Rewards of the animal that have no word yet, each with the label it is proposed under and the word on the board that this
/// one sounds like, if any.
fn labelled<'a>(
    case: &Case<'a>,
    liked: &dyn Fn(&RewardCard) -> f64,
    rules: &FirstWordRules,
) -> (Vec<&'a RewardCard>, Vec<(String, Option<String>)>) {
    let words = case.story().words_of(case.animal());
    let taken: Vec<RewardId> = words.iter().filter_map(|w| w.reward).collect();
    let rewards = case.story().rewards_of(case.animal()).into_iter().filter(|r| !taken.contains(&r.reward));
    let rewards: Vec<&RewardCard> = rewards.collect();
    let on_board: Vec<&str> = words.iter().map(|w| w.says.as_str()).collect();
    let labels = labels(&rewards, &on_board, rules, liked);
    (rewards, labels)
}

/// The label that a reward is proposed under, as [`first_words`] has it; for one that has a word, the first one of its name.
#[must_use]
pub fn label_of(case: &Case<'_>, reward: &RewardCard, language: Language) -> String {
    let rules = FirstWordRules { language, ..FirstWordRules::default() };
    let liking = likings(&likes(case));
    let mean = |r: &RewardCard| liking.get(&r.reward).copied().unwrap_or(Liking::UNTESTED).mean;
    let (rewards, labels) = labelled(case, &mean, &rules);
    let at = rewards.iter().position(|r| r.reward == reward.reward);
    let found = at.and_then(|i| labels.into_iter().nth(i)).map(|(label, _)| label);
    found.or_else(|| options(reward, language).into_iter().next()).unwrap_or_default()
}

impl<'a> Known<'a> {
    fn of(case: &Case<'a>, card: &AnimalCard, rules: &FirstWordRules) -> Self {
        let likes = likes(case);
        let budget = ration(case.story(), card, case.now()).budget_kcal;
        let liking = likings(&likes);
        let liked = |r: &RewardCard| liking.get(&r.reward).copied().unwrap_or(Liking::UNTESTED);
        let (rewards, labels) = labelled(case, &|r| liked(r).mean, rules);
        let home = AtHome::of(case);
        let given: Vec<Given> = rewards.iter().map(|r| home.given(r)).collect();
        let never: BTreeMap<RewardId, Vec<FoodCaution>> =
            rewards.iter().filter_map(|r| Some((r.reward, forbidden(card.species, r)?))).collect();
        let undosed: Vec<RewardId> = rewards
            .iter()
            .filter(|r| r.kind == RewardKind::Food && budget.is_none() && !never.contains_key(&r.reward))
            .map(|r| r.reward)
            .collect();
        let candidates = rewards
            .iter()
            .zip(&labels)
            .zip(&given)
            .map(|((r, (says, _)), g)| {
                Candidate {
                    says: says.clone(),
                    kind: r.kind,
                    liking: liked(r),
                    at_board: g.at_board,
                    seconds: g.seconds,
                    most_per_day: Some(g.per_day),
                    ration_pieces: pieces(r, budget),
                    // What for is told by `Why`.
                    barred: never.contains_key(&r.reward) || undosed.contains(&r.reward),
                    cautioned: food_cautions(card.species, r.name.as_str()).iter().any(|c| c.certain),
                    already_said: r.already_said,
                }
            })
            .collect();
        let sounds_like = labels.into_iter().map(|(_, like)| like).collect();
        Self { rewards, candidates, given, sounds_like, likes, never, undosed }
    }

    fn told(&self, set: &Scored, draws: u32) -> Choice {
        let words = set.words.iter().zip(&set.deliveries).filter_map(|(i, d)| self.propose(*i, d)).collect();
        Choice { words, score: set.score, best_in: set.best_in, draws }
    }

    fn propose(&self, i: usize, delivery: &Delivery) -> Option<Proposed> {
        let (reward, candidate) = (self.rewards.get(i)?, self.candidates.get(i)?);
        let liked = match self.likes.ranking.iter().find(|r| r.reward == reward.reward) {
            Some(r) if r.strength.is_some() => Liked::Chosen(r.over_average),
            Some(r) if !r.scores.is_empty() => Liked::Scored(r.scores.iter().map(|(f, e)| (*f, *e)).collect()),
            _ => Liked::Untested,
        };
        Some(Proposed {
            reward: reward.reward,
            says: candidate.says.clone(),
            kind: reward.kind,
            liked,
            per_day: delivery.per_day,
            bound: delivery.bound,
            seconds: delivery.seconds,
            given: *self.given.get(i)?,
            pieces: candidate.ration_pieces,
            already_said: candidate.already_said,
            sounds_like: self.sounds_like.get(i)?.clone(),
        })
    }

    fn left(&self, list: &[LeftOut]) -> Vec<NotChosen> {
        list.iter()
            .filter_map(|l| Some((l, self.rewards.get(l.candidate)?)))
            .map(|(l, r)| NotChosen {
                reward: r.reward,
                says: l.says.clone(),
                why: match &l.reason {
                    _ if self.undosed.contains(&r.reward) => Why::NoAllowance,
                    Reason::Barred => Why::Never(self.never.get(&r.reward).cloned().unwrap_or_default()),
                    Reason::SoundsLike { other, .. } => {
                        Why::SoundsLike(self.candidates.get(*other).map_or_else(String::new, |c| c.says.clone()))
                    }
                    reason => Why::Choice(reason.clone()),
                },
            })
            .collect()
    }
}

/// Labels to choose from: what the home says for it, else those out of its name.
fn options(reward: &RewardCard, language: Language) -> Vec<String> {
    let named = || labels_for(reward.name.as_str(), language);
    reward.says.as_ref().map_or_else(named, |says| vec![says.to_string()])
}

/// A label for each reward: what the home says for it, else the best one out of its name that sounds like no word on the
/// board and like no label of a reward liked better. With each, the word on the board it still sounds like, if any.
fn labels(
    rewards: &[&RewardCard],
    on_board: &[&str],
    rules: &FirstWordRules,
    liked: &dyn Fn(&RewardCard) -> f64,
) -> Vec<(String, Option<String>)> {
    let rule: AlikeRule = rules.alike;
    let clash = |label: &str, with: &str| alike(label, with, rules.language, rule).too_alike;
    let options: Vec<Vec<String>> = rewards.iter().map(|r| options(r, rules.language)).collect();
    // What can only be called one thing takes its label first.
    let mut order: Vec<usize> = (0..rewards.len()).collect();
    let free_to_choose = |i: usize| options[i].len() > 1;
    order.sort_by(|a, b| {
        free_to_choose(*a).cmp(&free_to_choose(*b)).then(liked(rewards[*b]).total_cmp(&liked(rewards[*a])))
    });
    let mut found: Vec<Option<String>> = vec![None; rewards.len()];
    for i in order {
        let options = &options[i];
        let given: Vec<&str> = found.iter().flatten().map(String::as_str).collect();
        let free = options.iter().find(|o| !on_board.iter().chain(&given).any(|with| clash(o, with)));
        found[i] = free.or(options.first()).cloned();
    }
    let heard = |label: &str| on_board.iter().find(|with| clash(label, with)).map(|with| (*with).to_owned());
    found.into_iter().map(Option::unwrap_or_default).map(|label| (label.clone(), heard(&label))).collect()
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

/// Pieces a day the allowance has of one food; none for what is not eaten or cannot be dosed.
fn pieces(reward: &RewardCard, budget: Option<f64>) -> Option<u32> {
    let kcal = reward.kcal_per_piece.map(Kcal::get).filter(|k| reward.kind == RewardKind::Food && *k > 0.0)?;
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    budget.map(|b| (b / kcal).floor().min(f64::from(u32::MAX)) as u32)
}
