//! What must hold across the fields of an event. Ranges of single fields are held by their types.

use crate::body::*;
use crate::event::{Body, Event};
use crate::facts;
use crate::species::LifeStage;
use std::collections::BTreeSet;
use std::fmt;

/// One thing wrong with an event.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Problem {
    /// Path of the field, such as `body.then_word`.
    pub field: String,
    /// What was found and what would be right.
    pub what: String,
}

/// Everything wrong with an event.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
pub struct Problems(pub Vec<Problem>);

impl fmt::Display for Problems {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (i, p) in self.0.iter().enumerate() {
            write!(f, "{}{}: {}", if i == 0 { "" } else { "; " }, p.field, p.what)?;
        }
        Ok(())
    }
}

const MOST_LISTED: usize = 400;
/// Most phases or series of a trial of a change, and most points.
const MOST_PARTS: usize = 8;
const MOST_POINTS: u16 = 120;

impl Event {
    /// Checks what the types cannot hold.
    ///
    /// # Errors
    /// [`Problems`], each with its field and what would be right.
    pub fn check(&self) -> Result<(), Problems> {
        let mut found = Vec::new();
        if needs_animal(&self.body) && self.animal.is_none() {
            found.push(problem("animal", "is missing; this kind of event is about one animal"));
        }
        check_body(&self.body, "body", &mut found);
        if found.is_empty() { Ok(()) } else { Err(Problems(found)) }
    }
}

fn problem(field: impl Into<String>, what: impl Into<String>) -> Problem {
    Problem { field: field.into(), what: what.into() }
}

/// Presses, signs and the like may be seen without knowing which animal it was; these may not.
const fn needs_animal(body: &Body) -> bool {
    matches!(
        body,
        Body::StageChoice(_)
            | Body::SessionStart(_)
            | Body::Joining(_)
            | Body::Leaving(_)
            | Body::Invitation(_)
            | Body::LikesTest(_)
            | Body::LikeTrial(_)
            | Body::ProbePlan(_)
            | Body::ProbeTrial(_)
            | Body::DesignPlan(_)
            | Body::DesignNote(_)
            | Body::DesignStop(_)
            | Body::Feed(_)
            | Body::Round(_)
            | Body::SwapPlan(_)
            | Body::SwapDraw(_)
            | Body::SwapStop(_)
    )
}

fn check_body(body: &Body, at: &str, found: &mut Vec<Problem>) {
    let mut wrong = |field: &str, what: String| found.push(problem(format!("{at}.{field}"), what));
    match body {
        Body::RewardCard(card) => {
            if card.kind == crate::cards::RewardKind::Food && card.kcal_per_piece.is_none() {
                wrong("kcal_per_piece", "is missing; food needs the energy of one piece, in kcal".into());
            }
            if card.kind != crate::cards::RewardKind::Food && card.kcal_per_piece.is_some() {
                wrong("kcal_per_piece", "is only for food".into());
            }
        }
        Body::AnimalCard(card) => {
            if let Some(share) = card.reward_share
                && share.get() > facts::MOST_REWARD_SHARE
            {
                wrong(
                    "reward_share",
                    format!("must be at most {}; ask a veterinarian for more", facts::MOST_REWARD_SHARE),
                );
            }
            if let (Some(stage), species) = (card.life_stage, card.species)
                && !stage.fits(species)
            {
                wrong("life_stage", format!("{} is not for a {}", stage.name(), species.name()));
            }
            if let (Some(kg), Some(grown)) = (card.weight_kg, card.adult_weight_kg)
                && card.life_stage.is_some_and(|s| s.today() == LifeStage::Puppy)
                && kg > grown
            {
                wrong(
                    "adult_weight_kg",
                    format!(
                        "is {grown} kg, less than the {kg} kg this puppy weighs; correct one, or choose a grown stage"
                    ),
                );
            }
        }
        Body::ClipCard(clip) => {
            if clip.sha256.len() != 64 || !clip.sha256.bytes().all(|b| b.is_ascii_hexdigit()) {
                wrong("sha256", "must be 64 hexadecimal digits".into());
            }
            if clip.lufs.is_some_and(|l| !(-100.0..=20.0).contains(&l)) {
                wrong("lufs", "must lie from -100 to 20".into());
            }
        }
        Body::BoardLayout(board) => check_board(board, &mut wrong),
        Body::Delivery(d) => {
            if d.alternative.is_some() && d.answer != Answer::Alternative {
                wrong("alternative", "goes only with answer \"alternative\"".into());
            }
            if d.then_word.is_some() && d.then != Some(Then::PressedAgain) {
                wrong("then_word", "goes only with then \"pressed_again\"".into());
            }
        }
        Body::Invitation(i) => check_invitation(i, &mut wrong),
        Body::LikesTest(test) => {
            let distinct: BTreeSet<_> = test.rewards.iter().collect();
            let least = if test.format == LikesFormat::Single { 1 } else { 2 };
            if distinct.len() != test.rewards.len() {
                wrong("rewards", "names one thing twice".into());
            }
            if !(least..=12).contains(&test.rewards.len()) {
                wrong("rewards", format!("must name {least} to 12 things, not {}", test.rewards.len()));
            }
            if !(1..=20).contains(&test.rounds) {
                wrong("rounds", format!("must be 1 to 20, not {}", test.rounds));
            }
        }
        Body::LikeTrial(trial) => check_trial(trial, &mut wrong),
        Body::ProbePlan(plan) => {
            if plan.words.is_empty() || plan.words.len() > MOST_LISTED {
                wrong("words", format!("must name 1 to {MOST_LISTED} words"));
            }
            if plan.choices < 2 {
                wrong("choices", format!("must be at least 2, not {}", plan.choices));
            }
        }
        Body::Round(round) => {
            taking_part(&round.words, &mut wrong);
            if !(2..=12).contains(&round.calls) {
                wrong("calls", format!("must be 2 to 12, not {}", round.calls));
            }
        }
        Body::SwapPlan(plan) => {
            taking_part(&plan.words, &mut wrong);
            if !(4..=50).contains(&plan.one_in) {
                wrong(
                    "one_in",
                    format!("must be 4 to 50, not {}; more swaps than one in four tire an animal", plan.one_in),
                );
            }
            if !(4..=366).contains(&plan.days) {
                wrong("days", format!("must be 4 to 366, not {}", plan.days));
            }
        }
        Body::DesignPlan(plan) => check_design(plan, &mut wrong),
        Body::DesignNote(note) if note.point == 0 || note.point > MOST_POINTS => {
            wrong("point", format!("must be 1 to {MOST_POINTS}, not {}", note.point));
        }
        Body::Feed(feed) if feed.reward.is_none() && feed.food.is_none() => {
            wrong("food", "is missing; say what was given, or name a reward".into());
        }
        Body::SessionStart(start) if start.words.len() > MOST_LISTED => {
            wrong("words", format!("must name at most {MOST_LISTED} words"));
        }
        Body::Correction(c) => match *c.body {
            Body::Correction(_) | Body::Withdrawal(_) => {
                wrong("body", "must not itself be a correction or withdrawal; correct the first event again".into());
            }
            ref inner => check_body(inner, &format!("{at}.body"), found),
        },
        _ => {}
    }
}

fn taking_part(words: &[crate::id::WordId], wrong: &mut impl FnMut(&str, String)) {
    if !(2..=60).contains(&words.len()) {
        wrong("words", format!("must name 2 to 60 words, not {}", words.len()));
    }
    if words.iter().collect::<BTreeSet<_>>().len() != words.len() {
        wrong("words", "names one word twice".into());
    }
}

fn check_board(board: &crate::cards::BoardLayout, wrong: &mut impl FnMut(&str, String)) {
    if !(1..=20).contains(&board.rows) || !(1..=20).contains(&board.columns) {
        wrong("rows", "and columns must each be 1 to 20".into());
    }
    let (mut places, mut words) = (BTreeSet::new(), BTreeSet::new());
    for (i, placed) in board.words.iter().enumerate() {
        if placed.row >= board.rows || placed.column >= board.columns {
            wrong(&format!("words[{i}]"), format!("row {} column {} is off the board", placed.row, placed.column));
        }
        if !places.insert((placed.row, placed.column)) {
            wrong(&format!("words[{i}]"), format!("row {} column {} is taken twice", placed.row, placed.column));
        }
        if !words.insert(placed.word) {
            wrong(&format!("words[{i}].word"), "stands in two places".into());
        }
    }
}

fn check_invitation(i: &Invitation, wrong: &mut impl FnMut(&str, String)) {
    if i.other.is_some() != (i.way == InvitationKind::AskBetweenTwo) {
        wrong("other", "names the second word of \"ask_between_two\", and only of that".into());
    }
    if i.other == Some(i.word) {
        wrong("other", "must be another word".into());
    }
    if !(0.5..=120.0).contains(&i.wait_s.get()) {
        wrong("wait_s", format!("must be 0.5 to 120 seconds, not {}", i.wait_s));
    }
    if let InvitationResult::Pressed { after_s, .. } = i.result
        && after_s.get() > i.wait_s.get()
    {
        wrong("result.after_s", format!("lies beyond the wait of {} s; log it as an ordinary press", i.wait_s));
    }
}

fn check_design(plan: &DesignPlan, wrong: &mut impl FnMut(&str, String)) {
    let design = plan.design;
    if (plan.label.is_some()) != (plan.question == CaseQuestion::Other) {
        wrong("label", "says what is changed where the question is \"other\", and only there".into());
    }
    for (field, n, distinct) in [
        ("words", plan.words.len(), plan.words.iter().collect::<BTreeSet<_>>().len()),
        ("animals", plan.animals.len(), plan.animals.iter().collect::<BTreeSet<_>>().len()),
    ] {
        if n != distinct {
            wrong(field, "names one twice".into());
        }
        if n > MOST_LISTED {
            wrong(field, format!("must name at most {MOST_LISTED}"));
        }
    }
    let lanes = plan.lanes();
    if design == CaseDesign::MultipleBaseline {
        if !(2..=MOST_PARTS).contains(&lanes) {
            let field = if plan.animals.is_empty() { "words" } else { "animals" };
            wrong(field, format!("must name 2 to {MOST_PARTS}, each a series of its own, not {lanes}"));
        }
        if plan.animals.is_empty() && !plan.measure.by_word() {
            wrong("measure", format!("\"{}\" is not counted word by word; name animals instead", plan.measure.name()));
        }
        if plan.apart == 0 || plan.apart > MOST_POINTS {
            wrong("apart", format!("must be 1 to {MOST_POINTS}, not {}", plan.apart));
        }
    } else if !plan.animals.is_empty() {
        wrong("animals", "are only for a multiple baseline over animals".into());
    }
    let phased = matches!(design, CaseDesign::Reversal | CaseDesign::ChangingCriterion);
    if phased && !(2..=MOST_PARTS).contains(&usize::from(plan.phases)) {
        wrong("phases", format!("must be 2 to {MOST_PARTS}, not {}", plan.phases));
    }
    // A criterion asks something of people. None is ever set for an animal.
    if design == CaseDesign::ChangingCriterion {
        if plan.measure != CaseMeasure::DeliveryDelay {
            wrong("measure", "must be \"delivery_delay\": a criterion is for people, never for the animal".into());
        }
        if plan.criteria.len() + 1 != usize::from(plan.phases) {
            wrong("criteria", format!("must be one for each phase after the first, not {}", plan.criteria.len()));
        }
    } else if !plan.criteria.is_empty() {
        wrong("criteria", "are only for a changing criterion".into());
    }
    if design != CaseDesign::AlternatingTreatments && !(1..=MOST_POINTS).contains(&plan.least) {
        wrong("least", format!("must be 1 to {MOST_POINTS}, not {}", plan.least));
    }
    if plan.points > MOST_POINTS || u64::from(plan.points) < plan.needed() {
        wrong("points", format!("must be {} to {MOST_POINTS} for this design, not {}", plan.needed(), plan.points));
    }
}

fn check_trial(trial: &LikeTrial, wrong: &mut impl FnMut(&str, String)) {
    let n = trial.offered.len();
    let distinct: BTreeSet<_> = trial.offered.iter().collect();
    if distinct.len() != n {
        wrong("offered", "names one thing twice".into());
    }
    let wanted = match trial.format {
        LikesFormat::Single => 1..=1,
        LikesFormat::Paired => 2..=2,
        LikesFormat::Multiple | LikesFormat::FreeAccess => 1..=12,
    };
    if !wanted.contains(&n) {
        wrong("offered", format!("must name {} to {} things in this format, not {n}", wanted.start(), wanted.end()));
    }
    let free = trial.format == LikesFormat::FreeAccess;
    match &trial.result {
        LikeOutcome::Chose { reward } if !distinct.contains(reward) => {
            wrong("result.reward", "was not offered in this trial".into());
        }
        LikeOutcome::Chose { .. } if free => wrong("result", "free access is scored by time: use \"observed\"".into()),
        LikeOutcome::Observed { .. } if !free => wrong("result", "\"observed\" is only for free access".into()),
        LikeOutcome::Observed { observed_s, engaged } => {
            let mut seen = BTreeSet::new();
            for (k, e) in engaged.iter().enumerate() {
                if !distinct.contains(&e.reward) || !seen.insert(e.reward) {
                    wrong(&format!("result.engaged[{k}]"), "must be one of the offered things, once".into());
                }
                if e.seconds.get() > observed_s.get() {
                    wrong(&format!("result.engaged[{k}].seconds"), format!("is more than the {observed_s} s observed"));
                }
            }
        }
        _ => {}
    }
}
