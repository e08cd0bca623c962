//! One animal at one moment: what its records say up to then, taken out of the story once and only when asked for.
//!
//! Every figure about an animal is a function of its case, so that two of one page never read the log twice, and none sees
//! what is dated after `now`. See `docs/decisions/case.md`.

use crate::observe::{Answered, Invitations, PressedAt, answered_between, invitations, invited_presses, since};
use crate::originals::{Originals, originals};
use crate::pool::{Check, checks};
use crate::standing::Standing;
use crate::sums::{Sums, Totals};
use sayso_model::{
    AnimalId, EventId, Fact, Invitation, Moment, Press, Session, SessionId, Story, WordCard, WordId, Zone,
};
use std::cell::OnceCell;
use std::collections::{BTreeMap, BTreeSet};

/// The longest look back of the advice, in days.
const LATELY_DAYS: i32 = 42;

/// One animal at one moment.
pub struct Case<'a> {
    story: &'a Story,
    animal: AnimalId,
    now: Moment,
    zone: Zone,
    kept: Sums,
    words: OnceCell<Vec<&'a WordCard>>,
    sessions: OnceCell<Vec<Session<'a>>>,
    invited: OnceCell<Vec<Fact<'a, Invitation>>>,
    invited_presses: OnceCell<Vec<PressedAt<'a>>>,
    invitations: OnceCell<BTreeMap<WordId, Invitations<'a>>>,
    lately: OnceCell<Vec<Answered<'a>>>,
    totals: OnceCell<Totals>,
    log: OnceCell<Originals<'a>>,
    checks: OnceCell<Vec<Check>>,
    pub(crate) standings: OnceCell<Vec<Standing>>,
}

impl<'a> Case<'a> {
    /// The case of an animal at a moment. What is dated later is not there yet.
    #[must_use]
    pub fn new(story: &'a Story, animal: AnimalId, now: Moment) -> Self {
        Self {
            story,
            animal,
            now,
            zone: story.zone(),
            kept: Sums::default(),
            words: OnceCell::new(),
            sessions: OnceCell::new(),
            invited: OnceCell::new(),
            invited_presses: OnceCell::new(),
            invitations: OnceCell::new(),
            lately: OnceCell::new(),
            totals: OnceCell::new(),
            log: OnceCell::new(),
            checks: OnceCell::new(),
            standings: OnceCell::new(),
        }
    }

    /// The same with sums kept from earlier cases of this home: the same figures, and only what is new is added up.
    #[must_use]
    pub fn with(self, kept: Sums) -> Self {
        Self { kept, ..self }
    }

    /// All that is known of the home, also what is dated after `now`.
    #[must_use]
    pub const fn story(&self) -> &'a Story {
        self.story
    }

    /// The animal.
    #[must_use]
    pub const fn animal(&self) -> AnimalId {
        self.animal
    }

    /// The moment.
    #[must_use]
    pub const fn now(&self) -> Moment {
        self.now
    }

    /// The home's zone.
    #[must_use]
    pub const fn zone(&self) -> &Zone {
        &self.zone
    }

    /// The first moment of the last `days` household days, today included.
    #[must_use]
    pub fn since(&self, days: i32) -> Moment {
        since(self.now, days, &self.zone)
    }

    /// Active words taught to the animal, by what they say.
    pub fn words(&self) -> &[&'a WordCard] {
        self.words.get_or_init(|| self.story.words_of(self.animal))
    }

    /// Sessions begun, by time.
    pub fn sessions(&self) -> &[Session<'a>] {
        self.sessions.get_or_init(|| {
            let mut all = self.story.sessions(self.animal);
            all.truncate(all.partition_point(|s| s.start.at() <= self.now));
            for s in &mut all {
                s.joinings.retain(|j| j.at() <= self.now);
                s.leavings.retain(|l| l.at() <= self.now);
                s.end = s.end.filter(|e| e.at() <= self.now);
            }
            all
        })
    }

    /// Sessions begun since a moment.
    pub fn sessions_since(&self, from: Moment) -> &[Session<'a>] {
        let all = self.sessions();
        &all[all.partition_point(|s| s.start.at() < from)..]
    }

    /// Of these, those that are over: ended, or an hour old. One that still runs may yet be joined, so no share of those
    /// joined counts it.
    pub fn sessions_over_since(&self, from: Moment) -> impl DoubleEndedIterator<Item = &Session<'a>> {
        self.sessions_since(from).iter().filter(|s| !s.open(self.now))
    }

    fn invited(&self) -> &[Fact<'a, Invitation>] {
        self.invited.get_or_init(|| self.story.of(self.animal).take_while(|i| i.at() <= self.now).collect())
    }

    /// Every press at an invitation, of whatever word, by time.
    pub fn invited_presses(&self) -> &[PressedAt<'a>] {
        self.invited_presses.get_or_init(|| invited_presses(self.invited()))
    }

    fn by_word(&self) -> &BTreeMap<WordId, Invitations<'a>> {
        self.invitations.get_or_init(|| {
            let joined: BTreeSet<SessionId> = self.sessions().iter().filter(|s| s.joined()).map(Session::id).collect();
            invitations(self.invited(), &joined)
        })
    }

    /// The invitations of one word.
    #[must_use]
    pub fn invitations(&self, word: WordId) -> &Invitations<'a> {
        const NONE: &Invitations<'static> =
            &Invitations { usable: Vec::new(), presses: Vec::new(), not_wanted: 0, without_button: 0, unrecorded: 0 };
        self.by_word().get(&word).unwrap_or(NONE)
    }

    /// The invitations of each word that was ever invited.
    pub fn all_invitations(&self) -> impl Iterator<Item = (WordId, &Invitations<'a>)> {
        self.by_word().iter().map(|(word, all)| (*word, all))
    }

    /// Presses of six weeks, today included, with their answers, by time.
    fn lately(&self) -> &[Answered<'a>] {
        self.lately.get_or_init(|| self.answered_since(self.since(LATELY_DAYS)))
    }

    /// Presses since a moment of the last six weeks with their answers, by time.
    pub fn recent(&self, from: Moment) -> &[Answered<'a>] {
        let all = self.lately();
        &all[all.partition_point(|a| a.press.at() < from)..]
    }

    /// Presses since any moment with their answers, by time; read anew.
    #[must_use]
    pub fn answered_since(&self, from: Moment) -> Vec<Answered<'a>> {
        answered_between(self.story, self.animal, (from, self.now), self.now)
    }

    /// One press with its answer; none where it is not this animal's, taken back, or not yet there.
    #[must_use]
    pub fn answered(&self, press: EventId) -> Option<Answered<'a>> {
        let at = self.story.ledger().standing(press)?.happened_at;
        let there = at <= self.now;
        let mut here =
            there.then(|| answered_between(self.story, self.animal, (at, at), self.now)).into_iter().flatten();
        here.find(|a| a.press.id() == press)
    }

    /// Presses of a stretch (both ends included), by time, without their answers.
    pub fn presses_between(&self, from: Moment, to: Moment) -> impl Iterator<Item = Fact<'a, Press>> {
        self.story.between(self.animal, from, to.min(self.now))
    }

    /// Sums over all presses, by word.
    pub fn totals(&self) -> &Totals {
        self.totals.get_or_init(|| self.kept.totals(self.story, self.animal, &self.zone, self.now))
    }

    /// What was worked out of the home's weeks, to be shared with what is not about this animal alone.
    #[must_use]
    pub const fn sums(&self) -> &Sums {
        &self.kept
    }

    /// What was drawn, as it was first written down.
    pub fn log(&self) -> &Originals<'a> {
        self.log.get_or_init(|| originals(self.story, self.animal, self.now))
    }

    /// Checks as they were carried out, in the order they were planned.
    pub fn checks(&self) -> &[Check] {
        self.checks.get_or_init(|| checks(self.log()))
    }
}
