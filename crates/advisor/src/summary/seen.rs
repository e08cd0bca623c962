//! What of an animal's records is counted for its rows.

use crate::observe::{answered_between, meant};
use sayso_model::draw::lot;
use sayso_model::{
    AnimalId, Brush, Catch, Fact, Invitation, InvitationResult, Look, Moment, PressedBy, Session, Sign, Stage,
    StageChoice, Story, WordCard, WordId,
};
use std::collections::{BTreeMap, BTreeSet};

/// What is counted.
pub(super) struct Seen {
    /// By time.
    pub(super) showings: Vec<(Moment, WordId)>,
    pub(super) presses: Vec<(Moment, WordId)>,
    /// Presses of the learner's own accord: the word, a number by lot, when.
    pub(super) own: Vec<(WordId, u64, Moment)>,
    /// Stages that people chose.
    pub(super) stages: Vec<(Moment, WordId, Stage)>,
    /// Each invitation's word, and whether the learner took part.
    pub(super) invited: Vec<(WordId, bool)>,
    /// When words were put away that still are: taken off the board, or from this animal.
    pub(super) away: BTreeMap<WordId, Moment>,
    /// Everything noted of the animal, by time; and of which word it was a press of its own accord.
    pub(super) noted: Vec<(Moment, Option<WordId>)>,
}

impl Seen {
    pub(super) fn of(story: &Story, animal: AnimalId, last: Moment) -> Self {
        let first = Moment::clamped(i64::MIN);
        let mut seen = Self {
            showings: Vec::new(),
            presses: Vec::new(),
            own: Vec::new(),
            stages: Vec::new(),
            invited: Vec::new(),
            away: away(story, animal, last),
            noted: Vec::new(),
        };
        for answered in answered_between(story, animal, (first, last), last) {
            let (at, part) = (answered.press.at(), answered.press.part);
            let shows = part.by == PressedBy::Person && answered.given();
            let own = !shows && meant(part);
            seen.noted.push((at, own.then_some(part.word)));
            if shows {
                seen.showings.push((at, part.word));
            } else if own {
                seen.presses.push((at, part.word));
                seen.own.push((part.word, lot(answered.press.id()), at));
            }
        }
        let sessions = story.sessions(animal);
        let joined: BTreeSet<_> = sessions.iter().filter(|s| s.joined()).map(Session::id).collect();
        sessions.iter().map(|s| s.start.at()).filter(|at| *at <= last).for_each(|at| seen.until(at));
        for fact in story.between::<Invitation>(animal, first, last) {
            seen.invitation(fact, fact.part.session.is_none_or(|session| joined.contains(&session)));
        }
        for Fact { event, part } in story.between::<Catch>(animal, first, last) {
            seen.until(event.happened_at);
            if part.shown {
                seen.showings.push((event.happened_at, part.word));
            }
        }
        story.between::<Look>(animal, first, last).for_each(|f| seen.until(f.at()));
        story.between::<Brush>(animal, first, last).for_each(|f| seen.until(f.at()));
        story.between::<Sign>(animal, first, last).for_each(|f| seen.until(f.at()));
        for fact in story.between::<StageChoice>(animal, first, last) {
            seen.until(fact.at());
            seen.stages.push((fact.at(), fact.part.word, fact.part.stage));
        }
        seen.showings.sort_by_key(|(at, _)| *at);
        seen.noted.sort_by_key(|(at, _)| *at);
        seen
    }

    /// Something of the animal that is no press of its own accord.
    fn until(&mut self, at: Moment) {
        self.noted.push((at, None));
    }

    fn invitation(&mut self, fact: Fact<'_, Invitation>, there: bool) {
        let (part, at) = (fact.part, fact.at());
        self.until(at);
        let (right, left, after_s) = match &part.result {
            InvitationResult::Pressed { word, after_s } => (*word == part.word, false, *after_s),
            InvitationResult::WithoutButton { after_s } => (false, false, after_s.unwrap_or(part.wait_s)),
            InvitationResult::NothingByWait => (false, false, part.wait_s),
            InvitationResult::Left { after_s } => (false, true, after_s.unwrap_or(part.wait_s)),
        };
        if right {
            self.presses.push((at, part.word));
        }
        self.invited.push((part.word, there && !left && part.took == Some(true)));
        if part.shown {
            let shown = at.plus_seconds(after_s.get());
            self.until(shown);
            self.showings.push((shown, part.word));
        }
    }
}

/// When each word was put away that is away at a moment: by the first of its cards since it was last there.
fn away(story: &Story, animal: AnimalId, last: Moment) -> BTreeMap<WordId, Moment> {
    let mut cards: Vec<Fact<'_, WordCard>> = story.everyones().filter(|card| card.at() <= last).collect();
    cards.sort_by_key(|card| (card.at(), card.id()));
    let mut away = BTreeMap::new();
    for card in cards {
        if card.part.active && card.part.is_for(animal) {
            away.remove(&card.part.word);
        } else {
            away.entry(card.part.word).or_insert(card.at());
        }
    }
    away
}
