//! What may be said about understanding, word by word: the records turned into evidence for the ladder.
//!
//! Methods and rungs: [`sayso_methods::understanding`]. This file only decides what counts as what:
//! - **Situations.** The word an invitation was about is the situation, the word pressed is held against it, within one
//!   sitting. So are the trials of checks in which a button is pressed: the buttons stay in their places, so a habit of place
//!   is compared with itself.
//! - **The same thing asked for or not.** Answers outside of sessions: given (it fits the word) or another thing offered
//!   instead. A press again leaves open what it would have taken and is left out.
//! - **Corrections.** The thing asked for was given, or another one; then the same word again, or another one.
//! - **Checks.** Only picking among things laid out counts as a probe: there places are drawn at random.
//!
//! Presses that somebody took for an accident are kept: leaving out what did not fit would make the record look better.

use crate::observe::{Answered, answered, own_presses};
use sayso_methods::stats::Proportion;
use sayso_methods::understanding::association::{PressIn, Unit, association};
use sayso_methods::understanding::corrections::{AfterDelivery, Next, corrections};
use sayso_methods::understanding::ladder::{Conduct, LadderRule, ProbeEvidence, Verdict, WordEvidence, climb};
use sayso_methods::understanding::uptake::{AnsweredPress, uptake_by_word};
use sayso_methods::understanding::{MonteCarlo, UnderstandingError};
use sayso_model::{
    Answer, Invitation, InvitationResult, LearnerId, Moment, ProbeDesign, ProbePlan, ProbeResponse, ProbeTrial, Story,
    Then, WordId,
};
use std::collections::BTreeMap;

/// Presses further apart than this, in seconds, belong to different sittings.
const SITTING_S: f64 = 900.0;
/// Days within which asked-for and other deliveries of one thing are compared: likes change.
const STRETCH_DAYS: i32 = 28;
/// Seed of the rearrangements: the same records give the same answer.
const SEED: u64 = 1;

/// What may be said about one word, and why.
#[derive(Clone, PartialEq, Debug)]
pub struct Claim {
    /// The word.
    pub word: WordId,
    /// What its button says.
    pub says: String,
    /// What may be said.
    pub verdict: Verdict,
    /// The evidence behind it, with raw p-values.
    pub evidence: WordEvidence,
}

/// What may be said about every active word of this animal, judged together so that many words and tests do not add up to a
/// false claim.
///
/// # Errors
/// [`UnderstandingError`] where the records contradict themselves (for instance a check with a single choice).
pub fn claims(story: &Story, learner: LearnerId, now: Moment) -> Result<Vec<Claim>, UnderstandingError> {
    let words = story.words_of(learner);
    let index: BTreeMap<WordId, usize> = words.iter().enumerate().map(|(i, w)| (w.word, i)).collect();
    let all: Vec<Answered<'_>> = answered(story, learner).into_iter().filter(|a| a.press.at() <= now).collect();
    let own = own_presses(&all, None);
    let mut evidence: Vec<WordEvidence> = (0..words.len())
        .map(|word| {
            let presses = own.iter().filter(|a| index.get(&a.press.part.word) == Some(&word)).count() as u64;
            WordEvidence { word, presses, ..WordEvidence::default() }
        })
        .collect();
    let situations = situations(story, learner, now, &index);
    if !situations.is_empty() {
        for found in association(&situations, Unit::Episode, MonteCarlo::seeded(SEED))?.by_word {
            evidence[found.word].association_p = Some(found.p.p);
        }
    }
    let (answers, days) = answers(story, &own, &index);
    if !answers.is_empty() {
        let stretch =
            |sitting: usize| days.get(sitting).map_or(0, |day| usize::try_from(day / STRETCH_DAYS).unwrap_or(0));
        for found in uptake_by_word(&answers, stretch)? {
            evidence[found.word].fitting_p = (found.fitting.informative > 0).then_some(found.fitting.p);
        }
    }
    for word in &mut evidence {
        let after = after(&own, words[word.word].word);
        if !after.is_empty() {
            let found = corrections(&after)?.same_of_pressed;
            word.correction_p = (found.informative > 0).then_some(found.p);
        }
        word.probes = probes(story, learner, now, words[word.word].word)?;
    }
    let verdicts = climb(&evidence, &LadderRule::default())?;
    let named = words.iter().map(|w| (w.word, w.says.to_string()));
    Ok(named
        .zip(verdicts)
        .zip(evidence)
        .map(|(((word, says), verdict), evidence)| Claim { word, says, verdict, evidence })
        .collect())
}

/// What was pressed when a word was called for, by sitting.
fn situations(story: &Story, learner: LearnerId, now: Moment, index: &BTreeMap<WordId, usize>) -> Vec<PressIn> {
    let zone = story.zone();
    let mut sittings: BTreeMap<String, Vec<(usize, usize)>> = BTreeMap::new();
    let mut add = |sitting: String, pressed: WordId, called: WordId| {
        if let (Some(pressed), Some(called)) = (index.get(&pressed), index.get(&called)) {
            sittings.entry(sitting).or_default().push((*pressed, *called));
        }
    };
    for i in story.of::<Invitation>(learner).filter(|i| i.at() <= now) {
        if let InvitationResult::Pressed { word, .. } = i.part.result {
            let sitting = i.part.session.map_or_else(|| i.at().day(&zone).to_string(), |s| s.to_string());
            add(sitting, word, i.part.word);
        }
    }
    let pressing: Vec<_> = story
        .of::<ProbePlan>(learner)
        .filter(|p| p.part.design == ProbeDesign::PressForThing)
        .map(|p| p.part.probe)
        .collect();
    for t in story.of::<ProbeTrial>(learner).filter(|t| t.at() <= now && pressing.contains(&t.part.probe)) {
        if let ProbeResponse::Chose { word, .. } = t.part.response {
            add(t.part.probe.to_string(), word, t.part.target);
        }
    }
    let pressed = |(session, pairs): (usize, Vec<(usize, usize)>)| {
        pairs.into_iter().map(move |(word, outcome)| PressIn { session, word, outcome })
    };
    sittings.into_values().enumerate().flat_map(pressed).collect()
}

/// Answers with a thing, outside of sessions, by sitting; and the day of each sitting, counted from the first.
fn answers(story: &Story, own: &[Answered<'_>], index: &BTreeMap<WordId, usize>) -> (Vec<AnsweredPress>, Vec<i32>) {
    let zone = story.zone();
    let cards = story.words();
    let mut items = BTreeMap::new();
    let (mut out, mut days) = (Vec::new(), Vec::new());
    let (mut last, mut first): (Option<Moment>, _) = (None, None);
    for a in own.iter().filter(|a| a.press.part.session.is_none()) {
        let Some(delivery) = a.delivery.map(|d| d.part) else { continue };
        let (item, fits) = match delivery.answer {
            Answer::Given | Answer::Partly => (cards.get(&a.press.part.word).and_then(|c| c.reward), true),
            Answer::Alternative => (delivery.alternative, false),
            Answer::Declined | Answer::Missed => continue,
        };
        let took = match delivery.then {
            Some(Then::Took) => true,
            Some(Then::Ignored | Then::Left) => false,
            Some(Then::PressedAgain) | None => continue,
        };
        let (Some(item), Some(&word)) = (item, index.get(&a.press.part.word)) else { continue };
        let at = a.press.at();
        if last.is_none_or(|last| at.seconds_since(last) > SITTING_S) {
            let day = at.day(&zone);
            days.push(day.days_since(*first.get_or_insert(day)));
        }
        last = Some(at);
        let next = items.len();
        let item = *items.entry(item).or_insert(next);
        out.push(AnsweredPress { session: days.len() - 1, word, item, fits, took });
    }
    (out, days)
}

/// What followed right and wrong deliveries of one word.
fn after(own: &[Answered<'_>], word: WordId) -> Vec<AfterDelivery> {
    own.iter()
        .filter(|a| a.press.part.word == word)
        .filter_map(|a| {
            let delivery = a.delivery?.part;
            let right = match delivery.answer {
                Answer::Given => true,
                Answer::Alternative => false,
                _ => return None,
            };
            let next = match (delivery.then?, delivery.then_word) {
                (Then::PressedAgain, Some(next)) if next == word => Next::SameWord,
                (Then::PressedAgain, Some(_)) => Next::OtherWord,
                (Then::PressedAgain, None) => return None,
                _ => Next::Nothing,
            };
            Some(AfterDelivery { word: 0, right, next })
        })
        .collect()
}

/// Checks of one word in which it picked among things laid out.
fn probes(
    story: &Story,
    learner: LearnerId,
    now: Moment,
    word: WordId,
) -> Result<Vec<ProbeEvidence>, UnderstandingError> {
    let mut out = Vec::new();
    for plan in story.of::<ProbePlan>(learner).filter(|p| p.part.design == ProbeDesign::PickForWord && p.at() <= now) {
        let part = plan.part;
        let run: Vec<&ProbeTrial> = story
            .of::<ProbeTrial>(learner)
            .filter(|t| t.part.probe == part.probe && t.at() <= now)
            .map(|t| t.part)
            .collect();
        let of_word: Vec<&&ProbeTrial> = run.iter().filter(|t| t.target == word).collect();
        if of_word.is_empty() || part.choices < 2 {
            continue;
        }
        let chose = |right: bool| {
            let fits = |t: &&&&ProbeTrial| match t.response {
                ProbeResponse::Chose { word: chosen, .. } => (chosen == word) == right,
                ProbeResponse::Nothing | ProbeResponse::Left => false,
            };
            of_word.iter().filter(fits).count() as u64
        };
        let (right, wrong) = (chose(true), chose(false));
        let blind = part.blind && of_word.iter().all(|t| t.blind);
        // The whole check must be finished, so that stopping while ahead wins nothing.
        out.push(ProbeEvidence {
            seen: Proportion::new(right, right + wrong)?,
            chance: 1.0 / f64::from(part.choices),
            planned: u64::from(part.trials),
            carried_out: run.len() as u64,
            conduct: Conduct {
                random_order: true,
                random_places: true,
                presenter_blind: blind,
                // The one who is with the learner scores; who does not know the answer cannot score towards it.
                scorer_blind: blind,
            },
        });
    }
    Ok(out)
}
