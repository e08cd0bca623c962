//! What to do, and the one hint that matters.

use super::words;
use crate::{Locale, say};
use sayso_advisor::advice::{Act, Lack};
use sayso_advisor::hint::Hint;
use sayso_advisor::stuck::Cause;
use sayso_model::Stage;

/// What to do.
#[must_use]
pub fn act(l: &Locale, name: &str, act: &Act) -> String {
    match act {
        Act::GiveSpace => say!(l, act::give_space, name = name),
        Act::PauseSessions => say!(l, act::pause_sessions, name = name),
        Act::NoMoreToday => say!(l, act::no_more_today, name = name),
        Act::AskAboutThreats => say!(l, act::ask_about_threats),
        Act::AskAboutGuarding => say!(l, act::ask_about_guarding, name = name),
        Act::AskAboutSwallowing { today } => {
            say!(l, act::ask_about_swallowing, today = if *today { "yes" } else { "no" }, name = name)
        }
        Act::ShortenSessions => say!(l, act::shorten_sessions, name = name),
        Act::EaseSessions => say!(l, act::ease_sessions),
        Act::LookAtHealth => say!(l, act::look_at_health, name = name),
        Act::StopFood => say!(l, act::stop_food),
        Act::ListRewards => say!(l, act::list_rewards, name = name),
        Act::TestLikes => say!(l, act::test_likes),
        Act::ChooseFirstWords => say!(l, act::choose_first_words),
        Act::SetAllowance => say!(l, act::set_allowance, name = name),
        Act::FillCard { word, lacks: what } => {
            say!(l, act::fill_card, word = &word.says, lacks = lacks(l, what))
        }
        Act::CheckBatteries { words: of } => say!(l, act::check_batteries, words = words(l, of)),
        Act::CheckSilent { words: of } => say!(l, act::check_silent, words = words(l, of)),
        Act::RetestLikes => say!(l, act::retest_likes),
        Act::Mend { word, cause } => mend(l, name, &word.says, *cause),
        Act::StepBack { word, to } => {
            say!(l, act::step_back, word = &word.says, to = if *to == Stage::Invite { "invite" } else { "show" })
        }
        Act::BeginInviting { word, wait_s } => {
            say!(l, act::begin_inviting, word = &word.says, seconds = l.number(*wait_s, 0))
        }
        Act::Invite { word } => say!(l, act::invite, word = &word.says),
        Act::Show { word } => say!(l, act::show, word = &word.says),
        Act::ShowAtEnd { word } => say!(l, act::show_at_end, word = &word.says),
        Act::LeaveToAnimal { word } => say!(l, act::leave_to_animal, name = name, word = &word.says),
        Act::Answer { word } => say!(l, act::answer, word = &word.says),
        Act::SignalTimes { word, available_s, unavailable_s } => say!(
            l,
            act::signal_times,
            name = name,
            word = &word.says,
            available = l.number(*available_s, 0),
            unavailable = l.number(*unavailable_s, 0)
        ),
        Act::Rest { word } => say!(l, act::rest, word = &word.says),
        Act::PlanCheck { words: of } => say!(l, act::plan_check, words = words(l, of)),
        Act::GoOnWithCheck { done, of } => say!(l, act::go_on_with_check, done = *done, of = *of),
    }
}

/// What a card lacks, as a list.
pub(super) fn lacks(l: &Locale, lacks: &[Lack]) -> String {
    let said: Vec<String> = lacks
        .iter()
        .map(|lack| match lack {
            Lack::Reward => say!(l, act::lack_reward),
            Lack::Answer => say!(l, act::lack_answer),
            Lack::NotNow => say!(l, act::lack_not_now),
        })
        .collect();
    l.and(&said)
}

fn mend(l: &Locale, name: &str, word: &str, cause: Cause) -> String {
    match cause {
        Cause::HardToMakeOut => say!(l, act::mend_hard_to_make_out, word = word),
        Cause::NotWanted => say!(l, act::mend_not_wanted, word = word, name = name),
        Cause::TooLittle => say!(l, act::mend_too_little, word = word),
        Cause::TooLate => say!(l, act::mend_too_late, word = word),
        Cause::Avoided => say!(l, act::mend_avoided, word = word, name = name),
        Cause::TimeOrPlace => say!(l, act::mend_time_or_place, name = name),
        Cause::Health => say!(l, act::mend_health),
        Cause::SoundsAlike => say!(l, act::mend_sounds_alike, word = word),
        Cause::PeopleDiffer => say!(l, act::mend_people_differ, word = word),
    }
}

/// The one hint that matters for a word now.
#[must_use]
pub fn hint(l: &Locale, name: &str, hint: &Hint) -> String {
    match hint {
        Hint::GiveFaster { seconds, aim_s } => {
            say!(l, act::hint_give_faster, seconds = l.value(seconds.value, seconds.unit), aim = l.set_seconds(*aim_s))
        }
        Hint::ShowOnly => say!(l, act::hint_show_only),
        Hint::WaitThenShow { wait_s } => say!(l, act::hint_wait_then_show, seconds = l.number(*wait_s, 0)),
        Hint::WhenWanted => say!(l, act::hint_when_wanted, name = name),
        Hint::LittleEveryDay => say!(l, act::hint_little_every_day),
        Hint::AnswerAlike => say!(l, act::hint_answer_alike),
        Hint::GoodHours => say!(l, act::hint_good_hours, name = name),
        Hint::LetItCome => say!(l, act::hint_let_it_come, name = name),
        Hint::AtTheEnd => say!(l, act::hint_at_the_end),
        Hint::AnswerEvery => say!(l, act::hint_answer_every),
    }
}
