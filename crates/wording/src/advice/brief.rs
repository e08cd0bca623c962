//! What to do for a word in a few words, for a line that stands beside the word itself.

use super::{act, because};
use crate::{Locale, say};
use sayso_advisor::Advice;
use sayso_advisor::advice::{Act, Because, Below};
use sayso_advisor::stuck::Cause;
use sayso_methods::learning::ground::Counted;
use sayso_model::{PlanWay, Stage};

/// The step of a word in a few words; the whole of it where there is no shorter way.
#[must_use]
pub fn brief(l: &Locale, name: &str, of: &Act) -> String {
    match of {
        Act::FillCard { .. } => say!(l, brief::fill_card),
        Act::CheckBatteries { .. } => say!(l, brief::batteries),
        Act::CheckSilent { .. } => say!(l, brief::silent),
        Act::Mend { cause, .. } => mend(l, *cause),
        Act::StepBack { to, .. } => {
            say!(l, brief::step_back, to = if *to == Stage::Invite { "invite" } else { "show" })
        }
        Act::BeginInviting { .. } => say!(l, brief::begin_inviting),
        Act::Invite { .. } => say!(l, brief::invite),
        Act::Show { .. } => say!(l, brief::show),
        Act::ShowAtEnd { .. } => say!(l, brief::show_at_end),
        Act::LeaveToAnimal { .. } => say!(l, brief::leave_to_animal, name = name),
        Act::Answer { .. } => say!(l, brief::answer),
        Act::SignalTimes { .. } => say!(l, brief::signal_times),
        Act::Rest { .. } => say!(l, brief::rest),
        whole => act(l, name, whole),
    }
}

/// The way that was agreed for a word, as its step.
#[must_use]
pub fn agreed_way(l: &Locale, way: PlanWay) -> String {
    say!(l, brief::agreed, way = way.name())
}

/// Why a step, in a few words where it goes back a stage, else its first reason.
#[must_use]
pub fn step_because(l: &Locale, name: &str, of: &Advice) -> String {
    let first = || of.because.first().map(|why| because(l, name, &why.fact));
    back_because(l, of).or_else(first).unwrap_or_default()
}

/// Why a word goes back a stage, in a few words; the figure stands with the reasons. None for any other step.
#[must_use]
pub fn back_because(l: &Locale, of: &Advice) -> Option<String> {
    let Act::StepBack { .. } = &of.act else { return None };
    // The first reason is the one that decides.
    let why = match &of.because.first()?.fact {
        Because::Strain => "strain",
        Because::NotPrepared => "card",
        Because::Later { .. } | Because::Below(Below { counted: Counted::LaterWanted | Counted::LaterPresses, .. }) => {
            "faded"
        }
        Because::Below(Below { counted: Counted::Wanted, .. }) => "seldom",
        Because::Joining { .. } => "joins",
        Because::Showings { .. } => "shown",
        _ => "unsure",
    };
    Some(say!(l, brief::back_because, why = why))
}

fn mend(l: &Locale, cause: Cause) -> String {
    match cause {
        Cause::HardToMakeOut => say!(l, brief::hard_to_make_out),
        Cause::NotWanted => say!(l, brief::not_wanted),
        Cause::TooLittle => say!(l, brief::too_little),
        Cause::TooLate => say!(l, brief::too_late),
        Cause::Avoided => say!(l, brief::avoided),
        Cause::TimeOrPlace => say!(l, brief::time_or_place),
        Cause::Health => say!(l, brief::health),
        Cause::SoundsAlike => say!(l, brief::sounds_alike),
        Cause::PeopleDiffer => say!(l, brief::people_differ),
    }
}
