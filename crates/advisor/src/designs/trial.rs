//! A planned trial with its drawn order: its series, its points, what is drawn for each.

use crate::advice::{NAMELESS, NamedWord};
use sayso_methods::single_case::CaseError;
use sayso_methods::single_case::schedule::{Assignment, Design};
use sayso_model::{
    AnimalId, CaseCondition, CaseDesign, CaseQuestion, CaseUnit, DesignId, DesignNote, DesignPlan, EventId, Fact,
    Moment, Purpose, Session, Story, WordId,
};

/// One series of a trial.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Lane {
    /// Its name: a word, an animal, or none for the only one.
    pub name: String,
    /// Whose behaviour is measured.
    pub animal: AnimalId,
    /// Words measured; all where empty.
    pub words: Vec<WordId>,
}

/// A trial with its drawn order.
#[derive(Clone, Debug)]
pub struct Trial<'a> {
    /// Its plan.
    pub plan: Fact<'a, DesignPlan>,
    /// The animal the plan is about.
    pub animal: AnimalId,
    /// The design with its numbers.
    pub design: Design,
    /// The drawn order.
    pub order: Assignment,
    /// Its series.
    pub lanes: Vec<Lane>,
}

/// Which design fits a question: back and forth where the change can be taken back and takes days to get used to, one
/// after the other where moving back would confuse, in quick turn where the effect comes and goes at once.
#[must_use]
pub const fn proposal(question: CaseQuestion) -> CaseDesign {
    match question {
        CaseQuestion::QuieterButton | CaseQuestion::AnotherWord | CaseQuestion::Other => CaseDesign::Reversal,
        CaseQuestion::NewPlace => CaseDesign::MultipleBaseline,
        CaseQuestion::FasterDelivery => CaseDesign::AlternatingTreatments,
    }
}

/// The design of a plan.
#[must_use]
pub fn design_of(plan: &DesignPlan) -> Design {
    let [points, phases, least, apart] = [plan.points, plan.phases, plan.least, plan.apart].map(usize::from);
    match plan.design {
        CaseDesign::Reversal => Design::Reversal { points, phases, least },
        CaseDesign::MultipleBaseline => Design::MultipleBaseline { points, series: plan.lanes(), least, apart },
        CaseDesign::AlternatingTreatments => Design::Alternating { points },
        CaseDesign::ChangingCriterion => Design::ChangingCriterion { points, phases, least },
    }
}

/// Plans that concern an animal, oldest first: its own, and those over several animals that name it.
#[must_use]
pub fn plans(story: &Story, animal: AnimalId) -> Vec<Fact<'_, DesignPlan>> {
    let mut all: Vec<_> = story
        .everyones::<DesignPlan>()
        .filter(|p| p.event.animal == Some(animal) || p.part.animals.contains(&animal))
        .collect();
    all.sort_by_key(|p| (p.at(), p.id()));
    all
}

/// The newest trial of a proposal, with one of the animals it concerns; none where there is none.
#[must_use]
pub fn trying(story: &Story, proposal: EventId) -> Option<(AnimalId, DesignId)> {
    let of = story.everyones::<DesignPlan>().filter(|p| p.part.proposal == Some(proposal));
    of.max_by_key(|p| (p.at(), p.id())).and_then(|p| Some((p.event.animal?, p.part.trial)))
}

/// A trial by its id, with the order drawn from its seed; none for an unknown one.
///
/// # Errors
/// [`CaseError`] for a plan whose numbers do not fit together.
#[must_use]
pub fn trial(story: &Story, animal: AnimalId, id: DesignId) -> Option<Result<Trial<'_>, CaseError>> {
    trial_among(story, &plans(story, animal), animal, id)
}

/// The same, out of the [`plans`] that concern the animal: of several with one id the oldest counts.
///
/// # Errors
/// [`CaseError`] for a plan whose numbers do not fit together.
#[must_use]
pub fn trial_among<'a>(
    story: &'a Story,
    plans: &[Fact<'a, DesignPlan>],
    animal: AnimalId,
    id: DesignId,
) -> Option<Result<Trial<'a>, CaseError>> {
    let plan = *plans.iter().find(|p| p.part.trial == id)?;
    let owner = plan.event.animal.unwrap_or(animal);
    let design = design_of(plan.part);
    let lanes = lanes(story, owner, plan.part);
    Some(design.draw(u64::from(plan.part.seed)).map(|order| Trial { plan, animal: owner, design, order, lanes }))
}

fn lanes(story: &Story, owner: AnimalId, plan: &DesignPlan) -> Vec<Lane> {
    match plan.design {
        CaseDesign::MultipleBaseline if plan.animals.is_empty() => {
            let cards = story.words();
            let says = |word: &WordId| NamedWord::among(&cards, *word).says;
            plan.words.iter().map(|w| Lane { name: says(w), animal: owner, words: vec![*w] }).collect()
        }
        CaseDesign::MultipleBaseline => {
            let cards = story.animals();
            let name = |animal: &AnimalId| cards.get(animal).map_or(NAMELESS, |c| c.name.as_str()).to_owned();
            plan.animals.iter().map(|l| Lane { name: name(l), animal: *l, words: plan.words.clone() }).collect()
        }
        _ => vec![Lane { name: String::new(), animal: owner, words: plan.words.clone() }],
    }
}

impl Trial<'_> {
    /// Whether the change is drawn for a point, counted from 1; none beyond the plan.
    #[must_use]
    pub fn drawn(&self, lane: usize, point: u16) -> Option<CaseCondition> {
        let phase = *self.order.get(lane)?.get(usize::from(point).checked_sub(1)?)?;
        Some(if self.design.changed(phase) { CaseCondition::Changed } else { CaseCondition::Usual })
    }

    /// What was noted to be in force at a point, where it was noted.
    pub(super) fn noted(&self, story: &Story, lane: usize, point: u16) -> Option<CaseCondition> {
        let lane = self.lanes.get(lane)?;
        let over_words = self.plan.part.design == CaseDesign::MultipleBaseline && self.plan.part.animals.is_empty();
        let note = story.of::<DesignNote>(lane.animal).rfind(|n| {
            n.part.trial == self.plan.part.trial
                && n.part.point == point
                && (!over_words || n.part.word.is_none_or(|w| lane.words.contains(&w)))
        });
        note.map(|n| n.part.in_force)
    }

    /// Sessions that are points of a series, oldest first, at most as many as planned: those for showing or inviting from
    /// the first day on that began after the plan was made.
    pub(super) fn sessions<'s>(&self, story: &'s Story, lane: &Lane, now: Moment) -> Vec<Session<'s>> {
        let from = self.plan.part.first.start(&story.zone());
        let counts = |s: &Session<'_>| {
            let at = s.start.at();
            at >= from
                && at >= self.plan.event.recorded_at
                && at <= now
                && matches!(s.start.part.purpose, Purpose::Showing | Purpose::Inviting)
        };
        story.sessions(lane.animal).into_iter().filter(counts).take(usize::from(self.plan.part.points)).collect()
    }

    /// The point going on or coming next, from 1; none before the first day and after the last point.
    #[must_use]
    pub fn point_now(&self, story: &Story, lane: usize, now: Moment) -> Option<u16> {
        let (plan, zone) = (self.plan.part, story.zone());
        let days = now.day(&zone).days_since(plan.first);
        if days < 0 {
            return None;
        }
        let before = match plan.unit {
            CaseUnit::Day => usize::try_from(days).ok()?,
            CaseUnit::Session => {
                let sessions = self.sessions(story, self.lanes.get(lane)?, now);
                sessions.iter().filter(|s| !s.open(now)).count()
            }
        };
        let point = u16::try_from(before + 1).ok()?;
        (point <= plan.points).then_some(point)
    }

    /// Whether the order was drawn before the first point, which the test rests on.
    #[must_use]
    pub fn drawn_before(&self, story: &Story) -> bool {
        let recorded = self.plan.event.recorded_at;
        // Sessions before the plan are never points; a day that had begun would be.
        let in_time = self.plan.part.unit == CaseUnit::Session || recorded < self.plan.part.first.start(&story.zone());
        let as_planned = story.ledger().first(self.plan.id()) == Some(self.plan.event);
        in_time && as_planned
    }
}
