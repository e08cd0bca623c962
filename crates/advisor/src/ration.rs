//! The day's rewards: what may be given, what was, what is left in pieces, and the cautions.

use sayso_methods::ration::{
    Animal, Basis, Caution, Feed, FoodLevel, Left, Refusal, RewardShare, day_allowance, left_today, look_up, look_up_as,
};
use sayso_model::facts::{FoodHazard, GivenAs};
use sayso_model::{AnimalCard, Day, Kcal, Moment, PersonId, RewardCard, RewardId, RewardKind, Species, Story};
use std::collections::BTreeMap;

/// What the hazards list says of a food for a species.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct FoodCaution {
    /// For whom.
    pub species: Species,
    /// What is listed.
    pub fact: &'static FoodHazard,
    /// How bad.
    pub level: FoodLevel,
    /// Whether the food is it, rather than may hold it.
    pub certain: bool,
}

/// What to bear in mind about a day's rewards.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum DayCaution {
    /// Today's food rewards are used up.
    UsedUp,
    /// What the animal's card says.
    Card(String),
    /// What goes with the day's energy.
    Energy(Caution),
}

/// What is left of one food reward.
#[derive(Clone, PartialEq, Debug)]
pub struct RewardLeft {
    /// Which.
    pub reward: RewardId,
    /// Its name.
    pub name: String,
    /// Energy of a piece.
    pub kcal_per_piece: f64,
    /// Whole pieces left, if nothing else is given: what the day's energy leaves, and no more than its card allows in a
    /// day; none where the energy of a piece is 0 or unknown.
    pub pieces: Option<u32>,
    /// Cautions about this food for this species, worst first.
    pub cautions: Vec<FoodCaution>,
}

/// The day's rewards of one animal.
#[derive(Clone, PartialEq, Debug)]
pub struct Ration {
    /// The day.
    pub day: Day,
    /// The whole day's energy, kcal; none where it is refused.
    pub day_kcal: Option<f64>,
    /// Range of individuals, kcal; none where it was typed in.
    pub range_kcal: Option<(f64, f64)>,
    /// Where the day's energy comes from; none where it is refused.
    pub basis: Option<Basis>,
    /// Energy for rewards, kcal.
    pub budget_kcal: Option<f64>,
    /// Given so far, kcal.
    pub given_kcal: f64,
    /// Feeds counted.
    pub feeds: usize,
    /// Left, kcal; none where the budget is not known.
    pub left_kcal: Option<f64>,
    /// Given beyond the budget, kcal.
    pub over_kcal: f64,
    /// Given by each person (kcal), and by nobody named.
    pub by_person: Vec<(Option<PersonId>, f64)>,
    /// Pieces left by reward.
    pub rewards: Vec<RewardLeft>,
    /// Why nothing is computed, if so.
    pub refusal: Option<Refusal>,
    /// What to bear in mind.
    pub cautions: Vec<DayCaution>,
}

/// The day's rewards at `now`: the feeds of all people on the household's day, in its zone.
#[must_use]
pub fn ration(story: &Story, card: &AnimalCard, now: Moment) -> Ration {
    let zone = story.zone();
    let day = now.day(&zone);
    let fed = || {
        let all = story.between::<sayso_model::Feed>(card.animal, day.start(&zone), day.plus(1).start(&zone));
        all.filter(|f| f.at().day(&zone) == day)
    };
    let feeds: Vec<Feed<PersonId>> = fed().map(|f| Feed { person: f.person(), kcal: Some(f.part.kcal) }).collect();
    let mut pieces: BTreeMap<RewardId, u32> = BTreeMap::new();
    for f in fed() {
        if let Some(reward) = f.part.reward {
            *pieces.entry(reward).or_insert(0) += u32::from(f.part.pieces.unwrap_or(1));
        }
    }
    let allowance = day_allowance(&Animal {
        species: card.species,
        weight: card.weight_kg,
        grown_weight: card.adult_weight_kg,
        stage: card.life_stage,
        typed_in: card.day_kcal,
    });
    let share = card.reward_share.and_then(|s| RewardShare::new(s.get()).ok()).unwrap_or(RewardShare::MOST);
    let (refusal, budget) = match &allowance {
        Ok(a) => (None, Some(Kcal::clamped(a.day.get() * share.get()))),
        Err(why) => (Some(*why), None),
    };
    // Without a budget what was given is still added up and shown.
    let left = left_today(budget.unwrap_or(Kcal::clamped(0.0)), &feeds);
    let used_up = (budget.is_some() && left.over_by_kcal > 0.0).then_some(DayCaution::UsedUp);
    let own = card.cautions.as_ref().map(|text| DayCaution::Card(text.to_string()));
    let energy = allowance.iter().flat_map(|a| &a.cautions).map(|c| DayCaution::Energy(*c));
    let cautions = used_up.into_iter().chain(own).chain(energy).collect();
    Ration {
        day,
        day_kcal: allowance.as_ref().ok().map(|a| a.day.get()),
        range_kcal: allowance.as_ref().ok().and_then(|a| a.range).map(|r| (r.low, r.high)),
        basis: allowance.as_ref().ok().map(|a| a.basis),
        budget_kcal: budget.map(Kcal::get),
        given_kcal: left.given_kcal,
        feeds: left.n,
        left_kcal: budget.map(|_| left.left_kcal),
        over_kcal: if budget.is_some() { left.over_by_kcal } else { 0.0 },
        by_person: left.by_person.iter().map(|t| (t.person, t.kcal)).collect(),
        rewards: foods_left(story, card, budget.map(|_| &left), &pieces),
        refusal,
        cautions,
    }
}

fn foods_left(
    story: &Story,
    card: &AnimalCard,
    left: Option<&Left<PersonId>>,
    given: &BTreeMap<RewardId, u32>,
) -> Vec<RewardLeft> {
    let allowed = |r: &RewardCard| {
        let most = r.most_per_day.map_or(u32::MAX, u32::from);
        most.saturating_sub(given.get(&r.reward).copied().unwrap_or(0))
    };
    story
        .rewards_of(card.animal)
        .into_iter()
        .filter(|r| r.kind == RewardKind::Food)
        .map(|r| {
            let kcal = r.kcal_per_piece.map_or(0.0, Kcal::get);
            RewardLeft {
                reward: r.reward,
                name: r.name.to_string(),
                kcal_per_piece: kcal,
                pieces: left.and_then(|l| l.pieces(Kcal::clamped(kcal)).ok()).map(|left| left.min(allowed(r))),
                cautions: food_cautions(card.species, r.name.as_str()),
            }
        })
        .collect()
}

/// What the hazards list says of a food by its name, worst first.
#[must_use]
pub fn food_cautions(species: Species, name: &str) -> Vec<FoodCaution> {
    cautions_as(GivenAs::Food, species, name)
}

/// What the hazards list says of a reward, by what it is given as.
#[must_use]
pub fn cautions(species: Species, reward: &RewardCard) -> Vec<FoodCaution> {
    cautions_of(species, reward.kind, reward.name.as_str())
}

/// The same of a thing of that kind under that name.
#[must_use]
pub fn cautions_of(species: Species, kind: RewardKind, name: &str) -> Vec<FoodCaution> {
    let given = if kind == RewardKind::Food { GivenAs::Food } else { GivenAs::Thing };
    cautions_as(given, species, name)
}

fn cautions_as(given: GivenAs, species: Species, name: &str) -> Vec<FoodCaution> {
    let found = look_up_as(given, species, name).findings.into_iter();
    found.map(|f| FoodCaution { species, fact: f.fact, level: f.level, certain: f.is_certain() }).collect()
}

/// What the hazards list says of a reward that it forbids for this species; none where it does not forbid it.
#[must_use]
pub fn forbidden(species: Species, reward: &RewardCard) -> Option<Vec<FoodCaution>> {
    let found = food_cautions(species, reward.name.as_str());
    let never = found.iter().any(|c| c.certain && c.level == FoodLevel::Never);
    (reward.kind == RewardKind::Food && never).then_some(found)
}

/// Whether something that is said to be no food is called what the list forbids this species, and nothing more: a slip of the kind,
/// or a toy whose name would make somebody give the food.
#[must_use]
pub fn called_like_forbidden(species: Species, reward: &RewardCard) -> bool {
    let name = reward.name.as_str();
    let whole = |words: &str| words.split_whitespace().count() == name.split_whitespace().count();
    reward.kind != RewardKind::Food
        && look_up(species, name)
            .findings
            .iter()
            .any(|f| f.is_certain() && f.level == FoodLevel::Never && whole(&f.words))
}
