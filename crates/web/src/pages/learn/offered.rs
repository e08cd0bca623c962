//! The one lesson that fits what comes next, as a small link: where the work is, until whoever reads has read it.

use super::firsts::FirstTime;
use super::{address, marks};
use crate::page::AnimalPage;
use crate::pages::rehearse;
use maud::{Markup, html};
use sayso_advisor::advice::Act;
use sayso_advisor::stuck::Cause;
use sayso_advisor::today::{Next, Today};
use sayso_model::facts::{Occasion, lessons_for};
use sayso_model::{Invitation, SessionStart, Stage};
use sayso_sim::rehearsal::Exercise;
use sayso_wording::{lessons, say};

/// The lesson on seeing that it is time to invite.
const READY: &str = "ready";

/// On Today: the lesson for the next step. Where a warning stands on top, the session beneath it needs the room.
#[must_use]
pub fn for_next(page: &AnimalPage, today: &Today) -> Markup {
    if !today.welfare.is_empty() && matches!(today.next, Next::Session { .. }) {
        return Markup::default();
    }
    let occasion = next(&today.next);
    html! {
        (offered(page, occasion))
        (practise(page, occasion))
    }
}

/// Beside a word's own step: the lesson for that.
#[must_use]
pub fn for_word(page: &AnimalPage, act: &Act) -> Markup {
    of_word(act).map(|occasion| linked(page, occasion, "word-lesson")).unwrap_or_default()
}

/// Where to practise, until the first session was held.
fn practise(page: &AnimalPage, occasion: Occasion) -> Markup {
    let exercise = match occasion {
        Occasion::Wants => Exercise::Likes,
        Occasion::Inviting => Exercise::Inviting,
        Occasion::Begin | Occasion::Words | Occasion::Recording | Occasion::Places | Occasion::Showing => {
            Exercise::Showing
        }
        _ => return Markup::default(),
    };
    if page.story.of::<SessionStart>(page.id).next().is_some() {
        return Markup::default();
    }
    let l = &page.locale;
    html! {
        a.link.practise href=(rehearse::link(page, exercise)) data-test="practise" {
            (say!(l, rehearse::practise, title = say!(l, rehearse::exercise, which = exercise.name())))
        }
    }
}

/// On the Board: the lesson before a first session, a first invitation or a first "not now", given the stages of its words.
#[must_use]
pub fn at_board(page: &AnimalPage, stages: impl Iterator<Item = Stage>) -> Markup {
    let furthest = stages.max().unwrap_or(Stage::Prepare);
    // As the lessons that open by themselves count: who has not done it yet is new to it, whoever else has.
    let first = if !FirstTime::Session.was(page) {
        Some(Occasion::Showing)
    } else if furthest >= Stage::Invite && !FirstTime::Invitation.was(page) {
        Some(Occasion::Inviting)
    } else if furthest >= Stage::Converse && !FirstTime::NotNow.was(page) {
        Some(Occasion::Declining)
    } else {
        None
    };
    first.map(|occasion| offered(page, occasion)).unwrap_or_default()
}

fn offered(page: &AnimalPage, occasion: Occasion) -> Markup {
    linked(page, occasion, "lesson")
}

/// The first lesson for a moment of the work that whoever reads has not read.
fn linked(page: &AnimalPage, occasion: Occasion, test: &str) -> Markup {
    let read = |id: &str| page.person.is_some_and(|me| marks::of(&page.story, id).contains_key(&me));
    // Whether it is time is no question any more where something was invited.
    let invited = page.story.of::<Invitation>(page.id).next().is_some();
    let unread = lessons_for(occasion).find(|lesson| !read(&lesson.id) && (!invited || lesson.id != READY));
    html! {
        @if let Some(lesson) = unread {
            @let title = lessons::title(&page.locale, lesson, Some(page.card.name.as_str()));
            a class=(if test == "lesson" { "link lesson" } else { "link" }) href=(address::about(page, &address::lesson(&lesson.id), Some(page.id))) data-test=(test) {
                (say!(&page.locale, lessons::fits, title = title))
            }
        }
    }
}

fn next(next: &Next) -> Occasion {
    match next {
        Next::Rest => Occasion::Signs,
        Next::SetUp { advice } | Next::TestLikes { advice } | Next::Mend { advice } => of_act(&advice.act),
        Next::Session { plan } if plan.words.iter().any(|word| word.invitations > 0) => Occasion::Inviting,
        // What is left to do then is to answer what it presses, once it is at inviting.
        Next::Pause { plan, .. } if plan.words.iter().any(|word| word.invitations > 0) => Occasion::Answering,
        Next::Session { .. } | Next::Pause { .. } => Occasion::Showing,
        Next::Answer { .. } => Occasion::Answering,
    }
}

fn of_act(act: &Act) -> Occasion {
    of_word(act).unwrap_or(match act {
        Act::ListRewards | Act::TestLikes | Act::RetestLikes => Occasion::Wants,
        Act::ChooseFirstWords => Occasion::Words,
        _ => Occasion::Begin,
    })
}

/// What a step of a word is about; none where no lesson is.
fn of_word(act: &Act) -> Option<Occasion> {
    Some(match act {
        Act::FillCard { .. } => Occasion::Words,
        Act::Mend { cause: Cause::HardToMakeOut | Cause::SoundsAlike, .. } => Occasion::Recording,
        Act::Mend { cause: Cause::Avoided, .. } => Occasion::Places,
        Act::Mend { cause: Cause::NotWanted, .. } => Occasion::Wants,
        Act::Mend { .. } | Act::StepBack { .. } => Occasion::Stuck,
        Act::PlanCheck { .. } | Act::GoOnWithCheck { .. } => Occasion::Checking,
        Act::BeginInviting { .. } | Act::Invite { .. } => Occasion::Inviting,
        Act::Show { .. } | Act::ShowAtEnd { .. } => Occasion::Showing,
        Act::Answer { .. } | Act::LeaveToAnimal { .. } => Occasion::Answering,
        Act::SignalTimes { .. } => Occasion::Declining,
        _ => return None,
    })
}
