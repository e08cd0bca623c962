//! What to do for a word in a few words, for a line that stands beside the word itself.

use super::act;
use crate::{Locale, say};
use sayso_advisor::advice::Act;
use sayso_advisor::stuck::Cause;
use sayso_model::Stage;

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
