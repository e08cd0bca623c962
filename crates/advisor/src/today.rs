//! Today: welfare, one next thing to do, one step a word, what the week holds, and what can wait. Welfare first.

use crate::advice::{Act, Advice, Because, Change, NamedWord, Sure, Topic};
use crate::case::Case;
use crate::estimate::Estimate;
use crate::held::{Another, Held, another, held};
use crate::lately::{Lately, lately};
use crate::later::{allowance, first_test, later, tests_rest};
use crate::likes::{LikesReport, likes};
use crate::plan::{Plan, plan};
use crate::ration::{Ration, ration};
use crate::stages::joining_recent;
use crate::steps::{Step, WordStep, steps};
use crate::welfare::{rest_today, welfare};
use sayso_model::{AnimalCard, Moment, WordId};
use serde::Serialize;

/// Everything the Today page shows.
#[derive(Clone, Debug)]
pub struct Today {
    /// The animal.
    pub animal: AnimalCard,
    /// The moment it holds for.
    pub now: Moment,
    /// What concerns its wellbeing, most pressing first.
    pub welfare: Vec<Advice>,
    /// The one next thing to do.
    pub next: Next,
    /// One step a word, by what it says.
    pub steps: Vec<WordStep>,
    /// Since when a session runs; none where none does.
    pub running: Option<Moment>,
    /// Sessions of today that are over.
    pub held: Option<Held>,
    /// Facts of the last seven days.
    pub lately: Vec<Lately>,
    /// What can wait.
    pub later: Vec<Advice>,
    /// The day's rewards.
    pub ration: Ration,
    /// Share of sessions joined over four weeks.
    pub joining: Estimate,
}

/// The one next thing to do.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(tag = "next", rename_all = "snake_case")]
pub enum Next {
    /// No session today: its wellbeing first. Presses are answered.
    Rest,
    /// Something to set up.
    SetUp {
        /// What.
        advice: Box<Advice>,
    },
    /// A first likes test.
    TestLikes {
        /// Why.
        advice: Box<Advice>,
    },
    /// A session.
    Session {
        /// Its plan.
        plan: Box<Plan>,
    },
    /// Nothing after the sessions held today, until a later hour or for the day. Presses are answered.
    Pause {
        /// From when another one fits; none for today.
        until: Option<Moment>,
        /// Its plan, should somebody hold one all the same.
        plan: Box<Plan>,
    },
    /// Something to mend before a session has anything to show.
    Mend {
        /// What.
        advice: Box<Advice>,
    },
    /// Nothing but to answer whatever it presses.
    Answer {
        /// Words in use.
        words: Vec<NamedWord>,
    },
}

impl Today {
    /// The next session, now or after a pause; none while sessions rest or nothing is to be shown.
    #[must_use]
    pub const fn plan(&self) -> Option<&Plan> {
        match &self.next {
            Next::Session { plan } | Next::Pause { plan, .. } => Some(plan),
            _ => None,
        }
    }

    /// Whether that word may be invited: its step is to invite, or it is in use and nothing is to be mended. Only inviting now and then
    /// tells whether a word lasts.
    #[must_use]
    pub fn may_invite(&self, word: WordId) -> bool {
        let open = |act: &Act| act.invites() || matches!(act, Act::Answer { .. });
        self.steps.iter().any(|s| s.word.word == word && open(&s.advice.act))
    }

    /// The words a round of invitations draws from where nobody says otherwise: those that the plan invites; where these are
    /// fewer than two, and nothing could be drawn, every word that may be invited.
    #[must_use]
    pub fn draws(&self) -> Vec<WordId> {
        let planned = self.plan().into_iter().flat_map(|p| &p.words).filter(|p| p.invitations > 0);
        let planned: Vec<WordId> = planned.map(|p| p.word.word).collect();
        if planned.len() > 1 {
            return planned;
        }
        self.steps.iter().filter(|s| !s.closing).map(|s| s.word.word).filter(|word| self.may_invite(*word)).collect()
    }

    /// Every advice, most important first: welfare, the steps of all words, what can wait.
    pub fn advice(&self) -> impl Iterator<Item = &Advice> {
        let next = match &self.next {
            Next::SetUp { advice } | Next::TestLikes { advice } if advice.word.is_none() => Some(&**advice),
            _ => None,
        };
        let steps = self.steps.iter().map(|s| &s.advice);
        self.welfare.iter().chain(next).chain(steps).chain(&self.later)
    }
}

/// What to do at `now`; none for an animal the story does not know.
#[must_use]
pub fn today(case: &Case<'_>) -> Option<Today> {
    let (story, now) = (case.story(), case.now());
    let card = (*story.animals().get(&case.animal())?).clone();
    let (ration, likes, steps) = (ration(story, &card, now), likes(case), steps(case));
    let (joined, begun) = joining_recent(case);
    let held = held(case);
    let next = next(case, &ration, &likes, (&steps, held.as_ref()));
    let mut later = later(case, &ration, &likes);
    // What is next does not also come later.
    if let Next::SetUp { advice } | Next::TestLikes { advice } = &next {
        later.retain(|a| a.act != advice.act);
    }
    Some(Today {
        animal: card,
        now,
        welfare: welfare(case),
        next,
        steps,
        running: case.sessions().iter().rev().find(|s| s.open(now)).map(|s| s.start.at()),
        held,
        lately: lately(case),
        later,
        ration,
        joining: Estimate::share(joined, begun),
    })
}

/// In the order of precedence of steps: rest, set up, a session or the pause after one, mend, answer.
fn next(case: &Case<'_>, ration: &Ration, likes: &LikesReport, (steps, held): (&[WordStep], Option<&Held>)) -> Next {
    if rest_today(case) {
        return Next::Rest;
    }
    if let Some(next) = first_things(case, ration, likes) {
        return next;
    }
    if let Some(plan) = plan(case, steps) {
        let until = match held.map_or(Another::Now, |held| another(case, &plan, held)) {
            Another::Now => return Next::Session { plan: Box::new(plan) },
            Another::From(at) => Some(at),
            Another::Tomorrow => None,
        };
        return Next::Pause { until, plan: Box::new(plan) };
    }
    let of = |step: Step| steps.iter().find(|s| s.step == step).map(|s| Box::new(s.advice.clone()));
    if let Some(advice) = of(Step::SetUp) {
        return Next::SetUp { advice };
    }
    if let Some(advice) = of(Step::Avoided).or_else(|| of(Step::Mend)) {
        return Next::Mend { advice };
    }
    Next::Answer { words: steps.iter().map(|s| s.word.clone()).collect() }
}

/// What a home has to settle before there is a first word.
fn first_things(case: &Case<'_>, ration: &Ration, likes: &LikesReport) -> Option<Next> {
    let set_up = |act, because: Because, change| {
        let advice = Advice::new(Topic::SetUp, act, vec![because.into()], Sure::Very, change);
        Some(Next::SetUp { advice: Box::new(advice) })
    };
    if !case.words().is_empty() {
        return None;
    }
    let rewards = case.story().rewards_of(case.animal()).len();
    if rewards < 2 {
        return set_up(Act::ListRewards, Because::RewardsListed { rewards }, Change::RewardsListed);
    }
    if let Some(advice) = allowance(ration) {
        return Some(Next::SetUp { advice: Box::new(advice) });
    }
    if likes.trials == 0 {
        if tests_rest(case) {
            return Some(Next::Rest);
        }
        return Some(Next::TestLikes { advice: Box::new(first_test(rewards)) });
    }
    set_up(Act::ChooseFirstWords, Because::NoWordYet { trials: likes.trials }, Change::WordMade)
}
