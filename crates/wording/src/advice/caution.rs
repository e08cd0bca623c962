//! What to watch out for, and what would change an advice.

use super::because;
use crate::{Locale, say};
use sayso_advisor::advice::{Caution, Change};

/// What to watch out for.
#[must_use]
pub fn caution(l: &Locale, name: &str, caution: Caution) -> String {
    match caution {
        Caution::AskBoth => say!(l, act::caution_ask_both),
        Caution::AskIfBack => say!(l, act::caution_ask_if_back),
        Caution::AskNow => say!(l, act::caution_ask_now),
        Caution::CallVetNow => say!(l, act::caution_call_vet_now, name = name),
        Caution::AskVetUnlessSeen => say!(l, act::caution_ask_vet_unless_seen, name = name),
        Caution::TakeNothing => say!(l, act::caution_take_nothing),
        Caution::LeavingIsAnswer => say!(l, act::caution_leaving_is_answer, name = name),
        Caution::SingleSign => say!(l, act::caution_single_sign),
        Caution::MayBeIllness => say!(l, act::caution_may_be_illness),
        Caution::IndividualsDiffer => say!(l, act::caution_individuals_differ),
        Caution::Battery => say!(l, act::caution_battery),
        Caution::NotPressing => say!(l, act::caution_not_pressing, name = name),
        Caution::ComesAndGoes => say!(l, act::caution_comes_and_goes, name = name),
        Caution::BurstMayCome => say!(l, act::caution_burst_may_come),
        Caution::NeverForNeeds => say!(l, act::caution_never_for_needs, name = name),
    }
}

/// What would change an advice.
#[must_use]
pub fn change(l: &Locale, name: &str, change: &Change) -> String {
    match change {
        Change::CalmDays { days } => say!(l, act::change_calm_days, days = *days),
        Change::CalmStart => say!(l, act::change_calm_start, name = name),
        Change::DaysWithout { days } => say!(l, act::change_days_without, days = *days),
        Change::FewerLeft { sessions } => say!(l, act::change_fewer_left, name = name, sessions = *sessions),
        Change::FewerMild { share } => say!(l, act::change_fewer_mild, share = l.percent(*share)),
        Change::UsualPresses => say!(l, act::change_usual_presses),
        Change::NextDay => say!(l, act::change_next_day),
        Change::RewardsListed => say!(l, act::change_rewards_listed),
        Change::TestRecorded => say!(l, act::change_test_recorded),
        Change::WordMade => say!(l, act::change_word_made),
        Change::AllowanceSet => say!(l, act::change_allowance_set),
        Change::SoundsApart => say!(l, act::change_sounds_apart),
        Change::CardFilled => say!(l, act::change_card_filled),
        Change::EndsNoSession => say!(l, act::change_ends_no_session),
        Change::UsualSpeed => say!(l, act::change_usual_speed),
        Change::HeardAgain => say!(l, act::change_heard_again),
        Change::TestAgrees => say!(l, act::change_test_agrees),
        Change::MorePresses { days } => say!(l, act::change_more_presses, days = *days),
        Change::Figure { figure } => because(l, name, figure),
        Change::ShownEnough { showings, days } => say!(l, act::change_shown_enough, showings = *showings, days = *days),
        Change::JoinsMore { share } => say!(l, act::change_joins_more, name = name, share = l.percent(*share)),
        Change::RightMore => say!(l, act::change_right_more),
        Change::Masters { share, sessions, people } => {
            say!(l, act::change_masters, share = l.percent(*share), sessions = *sessions, people = *people)
        }
        Change::MoreWhenInvited { share } => {
            say!(l, act::change_more_when_invited, name = name, share = l.percent(*share))
        }
        Change::LastsAgain { share } => say!(l, act::change_lasts_again, share = l.percent(*share)),
        Change::Fades { share } => say!(l, act::change_fades, share = l.percent(*share)),
        Change::LongerOrBack => say!(l, act::change_longer_or_back),
        Change::Checked => say!(l, act::change_checked),
    }
}
