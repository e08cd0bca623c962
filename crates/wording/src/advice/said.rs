//! What an advice is about, how sure it is, causes, the one next thing, and what the week holds.

use super::words;
use crate::advice::act;
use crate::{Locale, say};
use sayso_advisor::held::Held;
use sayso_advisor::lately::Lately;
use sayso_advisor::plan::{Planned, SoFar};
use sayso_advisor::stuck::{Bearing, Cause};
use sayso_advisor::today::Next;
use sayso_advisor::{Sure, Topic};
use sayso_model::{Moment, Stage, Zone};

/// What an advice is about.
#[must_use]
pub fn topic(l: &Locale, topic: Topic) -> String {
    match topic {
        Topic::Welfare => say!(l, advice::topic_welfare),
        Topic::Ration => say!(l, advice::topic_ration),
        Topic::SetUp => say!(l, advice::topic_set_up),
        Topic::Likes => say!(l, advice::topic_likes),
        Topic::Stuck => say!(l, advice::topic_stuck),
        Topic::Show => say!(l, advice::topic_show),
        Topic::Invite => say!(l, advice::topic_invite),
        Topic::Converse => say!(l, advice::topic_converse),
        Topic::Probe => say!(l, advice::topic_probe),
    }
}

/// Where a word stands.
#[must_use]
pub fn stage_name(l: &Locale, stage: Stage) -> String {
    match stage {
        Stage::Prepare => say!(l, advice::stage_prepare),
        Stage::Show => say!(l, advice::stage_show),
        Stage::Invite => say!(l, advice::stage_invite),
        Stage::Converse => say!(l, advice::stage_converse),
    }
}

/// How sure an advice is.
#[must_use]
pub fn sure(l: &Locale, sure: Sure) -> String {
    match sure {
        Sure::Little => say!(l, advice::sure_little),
        Sure::Fairly => say!(l, advice::sure_fairly),
        Sure::Very => say!(l, advice::sure_very),
    }
}

/// What may hold a word up.
#[must_use]
pub fn cause(l: &Locale, name: &str, cause: Cause) -> String {
    match cause {
        Cause::HardToMakeOut => say!(l, advice::cause_hard_to_make_out),
        Cause::NotWanted => say!(l, advice::cause_not_wanted),
        Cause::TooLittle => say!(l, advice::cause_too_little),
        Cause::TooLate => say!(l, advice::cause_too_late),
        Cause::Avoided => say!(l, advice::cause_avoided, name = name),
        Cause::TimeOrPlace => say!(l, advice::cause_time_or_place),
        Cause::Health => say!(l, advice::cause_health, name = name),
        Cause::SoundsAlike => say!(l, advice::cause_sounds_alike),
        Cause::PeopleDiffer => say!(l, advice::cause_people_differ),
    }
}

/// How the records bear on a cause.
#[must_use]
pub fn bearing(l: &Locale, bearing: Bearing) -> String {
    match bearing {
        Bearing::For => say!(l, advice::bearing_for),
        Bearing::Perhaps => say!(l, advice::bearing_perhaps),
        Bearing::Unknown => say!(l, advice::bearing_unknown),
        Bearing::Against => say!(l, advice::bearing_against),
    }
}

/// A word of a plan: `“ball” 3 times, 2 of them invited`.
#[must_use]
pub fn planned(l: &Locale, planned: &Planned) -> String {
    let (word, times, invited) = (&planned.word.says, planned.showings, planned.invitations);
    if invited == 0 {
        let said = say!(l, advice::next_words_shown, word = word, times = times);
        let Some(SoFar { shown, of }) = planned.so_far else { return said };
        return say!(l, advice::so_far, planned = said, shown = shown, of = of);
    }
    say!(l, advice::next_words_invited, word = word, times = times, invited = invited)
}

/// The sessions of today that are over.
#[must_use]
pub fn held(l: &Locale, zone: &Zone, held: &Held) -> String {
    let (sessions, showings, time) = (held.sessions, held.showings, l.time(held.ended, zone));
    say!(l, advice::held, sessions = sessions, showings = showings, bare = held.bare, time = time)
}

/// That a session runs, and where it is held.
#[must_use]
pub fn running(l: &Locale, zone: &Zone, since: Moment) -> String {
    say!(l, advice::running, time = l.time(since, zone))
}

/// The one next thing to do, in a sentence or two.
#[must_use]
pub fn next(l: &Locale, name: &str, zone: &Zone, next: &Next) -> String {
    match next {
        Next::Rest => say!(l, advice::next_rest, name = name),
        Next::SetUp { advice } | Next::TestLikes { advice } | Next::Mend { advice } => act(l, name, &advice.act),
        Next::Session { plan } => {
            let each: Vec<String> = plan.words.iter().map(|w| planned(l, w)).collect();
            say!(l, advice::next_session, minutes = plan.minutes, words = l.and(&each))
        }
        Next::Pause { until: Some(until), .. } => {
            say!(l, advice::next_pause, name = name, time = l.time(*until, zone))
        }
        Next::Pause { until: None, .. } => say!(l, advice::next_enough, name = name),
        Next::Answer { .. } => say!(l, advice::next_answer, name = name),
    }
}

/// A fact of the last seven days.
#[must_use]
pub fn lately(l: &Locale, name: &str, fact: &Lately) -> String {
    match fact {
        Lately::FirstPress { word, day } => {
            say!(l, advice::lately_first_press, word = &word.says, name = name, day = l.weekday_date(*day))
        }
        Lately::MorePresses { word, now, before, .. } => {
            say!(l, advice::lately_more_presses, word = &word.says, now = *now, before = *before)
        }
        Lately::CheckPassed { words: of_words, right, of } => {
            say!(l, advice::lately_check_passed, words = words(l, of_words), right = *right, of = *of)
        }
        Lately::Joined { joined, of } => say!(l, advice::lately_joined, name = name, joined = *joined, of = *of),
        Lately::Taken { taken, of } => say!(l, advice::lately_taken, name = name, taken = *taken, of = *of),
    }
}
