//! Because of what: facts with their figures in words.

use super::act::lacks;
use crate::figures::{finding, told, told_to};
use crate::signs::noted;
use crate::{Locale, say};
use sayso_advisor::advice::{Because, Below, Lasting, NamedWord};
use sayso_advisor::estimate::{Estimate, TOO_EARLY};
use sayso_methods::learning::ground::Counted;
use sayso_methods::learning::stage::StageRule;
use sayso_model::Day;

const fn more(above_chance: bool) -> &'static str {
    if above_chance { "more" } else { "not" }
}

/// A fact.
#[must_use]
pub fn because(l: &Locale, name: &str, fact: &Because) -> String {
    let figure = |e: &Estimate| finding(l, e);
    match fact {
        Because::StrongSigns { today, count, on_days, days, last } => {
            say!(
                l,
                because::strong_signs,
                today = *today,
                count = *count,
                days = *days,
                on = *on_days,
                last = noted(l, last)
            )
        }
        Because::LastingSigns { sign, count, days, last, last_on } => {
            lasting(l, name, *sign, (*count, *days), (&noted(l, last), *last_on))
        }
        Because::RestsUntil { until, zone } => {
            say!(l, because::rests_until, until = l.weekday_date_time(*until, zone))
        }
        Because::Recurring { weeks, of, .. } => say!(l, because::recurring, weeks = *weeks, of = *of),
        Because::LeftSessions { share, left } if share.too_early() => {
            say!(l, because::left_few, name = name, left = *left, of = share.n)
        }
        Because::LeftSessions { share, left } => {
            say!(l, because::left_sessions, name = name, left = *left, share = figure(share))
        }
        Because::MildSigns { share } => say!(l, because::mild_signs, share = figure(share)),
        // Few presses over days that were watched are a finding of their own.
        Because::SuddenChange { now, before } => {
            say!(l, because::sudden_change, now = told(l, now), before = told(l, before))
        }
        Because::FoodGiven(feed) => say!(
            l,
            because::food_given,
            given = l.number(feed.given_kcal, 0),
            feeds = feed.feeds,
            budget = l.number(feed.budget_kcal, 0)
        ),
        Because::RewardsListed { rewards } => say!(l, because::rewards_listed, rewards = *rewards),
        Because::NoLikesTest { rewards } => say!(l, because::no_likes_test, rewards = *rewards),
        Because::NoWordYet { trials } => say!(l, because::no_word_yet, trials = *trials),
        Because::NoAllowance => say!(l, because::no_allowance),
        Because::CardLacks { lacks: what } => say!(l, because::card_lacks, lacks = lacks(l, what)),
        Because::TestOld { days, half_life_days } => {
            say!(l, because::test_old, days = l.number(*days, 0), half = l.number(*half_life_days, 0))
        }
        Because::BestUnclear { best, probability, choices } => say!(
            l,
            because::best_unclear,
            best = l.names(best),
            probability = l.percent(*probability),
            choices = *choices
        ),
        Because::WhenWanted { this, other, none } => {
            let of = this + other + none;
            if of < TOO_EARLY {
                return say!(l, because::when_wanted_early, name = name, of = of);
            }
            let all = |times: usize| if times == of { "yes" } else { "no" };
            let mut parts = Vec::new();
            if *this > 0 {
                parts.push(say!(l, because::wanted_this, times = *this, all = all(*this)));
            }
            if *other > 0 {
                parts.push(say!(l, because::wanted_other, times = *other, all = all(*other)));
            }
            if *none > 0 {
                parts.push(say!(l, because::wanted_none, times = *none, all = all(*none)));
            }
            say!(l, because::when_wanted, name = name, of = of, parts = l.and(&parts))
        }
        Because::Contradiction { why } => say!(l, because::contradiction, why = why),
        Because::NeverChecked { words } => say!(l, because::never_checked, words = *words),
        Because::CheckOpen { done, of } => say!(l, because::check_open, done = *done, of = *of),
        Because::ManyPresses { rate, bar, days } => {
            say!(l, because::many_presses, days = *days, rate = figure(rate), bar = l.number(*bar, 0))
        }
        Because::GivenShare { share } => say!(l, because::given_share, share = figure(share)),
        Because::SignalledTimes => say!(l, because::signalled_times),
        Because::Slowing { .. } | Because::Silent { .. } | Because::NotedByHand { .. } | Because::SilentCauses => {
            button(l, fact)
        }
        Because::Right { .. }
        | Because::Showings { .. }
        | Because::Joining { .. }
        | Because::Mastery { .. }
        | Because::OwnPresses { .. }
        | Because::Below(_)
        | Because::Later { .. }
        | Because::Strain
        | Because::NotPrepared
        | Because::EndsSessions => stage(l, name, fact),
        _ => cause(l, name, fact),
    }
}

fn lasting(l: &Locale, name: &str, sign: Lasting, (count, days): (usize, i32), (last, day): (&str, Day)) -> String {
    let day = l.weekday_date(day);
    match sign {
        Lasting::Threat => say!(l, because::lasting_threat, count = count, days = days, last = last, day = day),
        Lasting::Guarding => {
            say!(l, because::lasting_guarding, name = name, count = count, days = days, last = last, day = day)
        }
        Lasting::Swallowing => {
            say!(l, because::lasting_swallowing, name = name, count = count, days = days, last = last, day = day)
        }
    }
}

/// Facts about a button.
fn button(l: &Locale, fact: &Because) -> String {
    match fact {
        Because::Slowing { word, by, probability, days } => say!(
            l,
            because::slowing,
            word = &word.says,
            by = told_to(l, by, 1),
            probability = l.percent(*probability),
            days = l.number(*days, 0)
        ),
        Because::Silent { word, last_on, days, others, before } => {
            silent(l, word, (*last_on, *days), *others, before.as_ref())
        }
        Because::NotedByHand { word, times } => {
            say!(l, because::noted_by_hand, word = &word.says, times = *times)
        }
        _ => say!(l, because::silent_causes),
    }
}

fn silent(
    l: &Locale,
    word: &NamedWord,
    (last_on, days): (Option<Day>, f64),
    others: usize,
    before: Option<&Estimate>,
) -> String {
    let (word, days) = (&word.says, l.number(days, 0));
    match (last_on.map(|d| l.weekday_date(d)), before) {
        (None, _) => say!(l, because::never_heard, word = word, days = days, others = others),
        (Some(day), None) => say!(l, because::silent, word = word, day = day, days = days, others = others),
        (Some(day), Some(before)) => say!(
            l,
            because::silent_before,
            word = word,
            day = day,
            days = days,
            others = others,
            before = finding(l, before)
        ),
    }
}

/// Facts the stage rests on.
fn stage(l: &Locale, name: &str, fact: &Because) -> String {
    match fact {
        Because::Right { share, elsewhere, above_chance, .. } if share.n > 0 && !elsewhere.too_early() => say!(
            l,
            because::right_elsewhere,
            share = finding(l, share),
            elsewhere = finding(l, elsewhere),
            chance = more(*above_chance),
            bar = StageRule::default().e_bar
        ),
        Because::Right { share, .. } if share.n == 0 => say!(l, because::right_none),
        Because::Right { share, above_chance, .. } => {
            say!(
                l,
                because::right,
                share = finding(l, share),
                chance = more(*above_chance),
                bar = StageRule::default().e_bar
            )
        }
        Because::Showings { showings, wanted, days, days_wanted } => {
            say!(l, because::showings, showings = *showings, wanted = *wanted, days = *days, dayswanted = *days_wanted)
        }
        Because::Joining { share, floor, .. } => {
            say!(l, because::joining, share = finding(l, share), floor = l.percent(*floor))
        }
        Because::Mastery { sessions, sessions_wanted, people, people_wanted, share } => say!(
            l,
            because::mastery,
            sessions = *sessions,
            wanted = *sessions_wanted,
            people = *people,
            peoplewanted = *people_wanted,
            share = l.percent(*share)
        ),
        Because::OwnPresses { presses, wanted, days, days_wanted } => {
            say!(l, because::own_presses, presses = *presses, wanted = *wanted, days = *days, dayswanted = *days_wanted)
        }
        Because::Below(Below { counted, share, bar }) => {
            let counted = match counted {
                Counted::Wanted => "wanted",
                Counted::Latest => "latest",
                Counted::LaterWanted => "later",
                Counted::LaterPresses => "right",
            };
            say!(l, because::below, counted = counted, name = name, share = finding(l, share), bar = l.percent(*bar))
        }
        Because::Later { wanted, needed, .. } if wanted < needed => {
            say!(l, because::later_unknown, wanted = *wanted, needed = *needed)
        }
        Because::Later { pressed, wanted, right, presses, .. } => say!(
            l,
            because::later,
            name = name,
            pressed = *pressed,
            wanted = *wanted,
            right = *right,
            presses = *presses
        ),
        Because::Strain => say!(l, because::strain),
        Because::EndsSessions => say!(l, because::ends_sessions),
        _ => say!(l, because::not_prepared),
    }
}

/// Facts that bear on what may hold a word up.
fn cause(l: &Locale, name: &str, fact: &Because) -> String {
    let figure = |e: &Estimate| finding(l, e);
    match fact {
        Because::Recording { seconds: length, short, quiet } => {
            let found = match (short, quiet) {
                (true, true) => "both",
                (true, false) => "short",
                (false, true) => "quiet",
                (false, false) => "checked",
            };
            say!(l, because::recording, found = found, seconds = l.seconds(*length))
        }
        Because::Taken { share, days, bar } => {
            say!(l, because::taken, days = *days, share = figure(share), bar = l.percent(*bar))
        }
        Because::ShowingsADay { rate, days, bar } => {
            say!(l, because::showings_a_day, days = *days, rate = told(l, rate), bar = l.number(*bar, 0))
        }
        Because::Delay { seconds: delay, bar } => {
            say!(l, because::delay, seconds = figure(delay), bar = l.seconds(*bar))
        }
        Because::Near { share, expected } => {
            say!(l, because::near, share = figure(share), expected = l.percent(*expected))
        }
        Because::ComesMore { now, before } => say!(l, because::comes_more, now = *now, before = *before),
        Because::TooFewHours => say!(l, because::too_few_hours),
        Because::UneasyHours { from, to, here, elsewhere, p, days } => say!(
            l,
            because::uneasy_hours,
            name = name,
            from = l.hour(*from),
            to = l.hour(*to),
            here = figure(here),
            elsewhere = figure(elsewhere),
            p = l.p(*p),
            days = *days
        ),
        Because::TooFewDays => say!(l, because::too_few_days),
        Because::LateFall { days, lately, before, p } => {
            say!(l, because::late_fall, days = *days, lately = figure(lately), before = figure(before), p = l.p(*p))
        }
        Because::OnlyWord => say!(l, because::only_word),
        Because::Sounds { nearest, too_alike, others } => say!(
            l,
            because::sounds,
            alike = if *too_alike { "yes" } else { "no" },
            nearest = nearest,
            others = figure(others)
        ),
        Because::TooFewPeople => say!(l, because::too_few_people),
        Because::PeopleDelay { people: [one, two], seconds: [first, second], p } => say!(
            l,
            because::people_delay,
            one = one,
            two = two,
            first = figure(first),
            second = figure(second),
            p = l.p(*p)
        ),
        Because::PeopleGive { people: [one, two], share: [first, second], p } => say!(
            l,
            because::people_give,
            one = one,
            two = two,
            first = figure(first),
            second = figure(second),
            p = l.p(*p)
        ),
        _ => say!(l, because::no_recording_checked),
    }
}
