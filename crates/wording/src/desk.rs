//! A coach's desk in words: each need in one sentence, why, and what would change it; and what changed since.
//!
//! A line holds no names: who the animal is and what a button says is given by whoever may know it. It never diagnoses: where
//! safety or health is touched, it says whom to ask.

use crate::advice::{because, caution, change, stage_name};
use crate::figures::{finding, told};
use crate::others::{animals, place, words_for};
use crate::{Locale, say};
use sayso_advisor::desk::{BackFor, Changed, Held, Lack, Look, Measure, Need, Put, SignKind, Until, What};
use sayso_advisor::stuck::{Cause, StuckFor};
use sayso_advisor::{Because, Caution, Change};
use sayso_model::{Day, Moment, WordId};
use sayso_norms::{Outside, Quantile, Question};

/// Days looked back on by the causes of a word.
const CAUSE_DAYS: i32 = 21;

/// Who a line is about, for who may know it.
pub struct Names<'a> {
    /// The animal.
    pub animal: &'a str,
    /// What a button says.
    pub says: &'a dyn Fn(WordId) -> String,
}

const fn kind(kind: SignKind) -> &'static str {
    match kind {
        SignKind::Swallowing => "swallowing",
        SignKind::Threat => "threat",
        SignKind::Guarding => "guarding",
        SignKind::Other => "strong",
    }
}

const fn lacking(lack: Lack) -> &'static str {
    match lack {
        Lack::Days => "days",
        Lack::Records => "records",
        Lack::Whole => "whole",
    }
}

fn cause(l: &Locale, names: &Names<'_>, cause: Cause) -> String {
    let cause = match cause {
        Cause::HardToMakeOut => "hard_to_make_out",
        Cause::NotWanted => "not_wanted",
        Cause::TooLittle => "too_little",
        Cause::TooLate => "too_late",
        Cause::Avoided => "avoided",
        Cause::TimeOrPlace => "time_or_place",
        Cause::Health => "health",
        Cause::SoundsAlike => "sounds_alike",
        Cause::PeopleDiffer => "people_differ",
    };
    say!(l, desk::cause, cause = cause, name = names.animal)
}

fn signs(
    l: &Locale,
    name: &str,
    of: SignKind,
    (count, on, days): (usize, usize, i32),
    last: Day,
    today: bool,
) -> String {
    let day = l.weekday_date(last);
    match of {
        SignKind::Swallowing => {
            say!(l, desk::swallowing, today = if today { "yes" } else { "no" }, name = name, day = day)
        }
        SignKind::Threat => say!(l, desk::threat, count = count, name = name, days = days, day = day),
        SignKind::Guarding => say!(l, desk::guarding, count = count, name = name, days = days, day = day),
        SignKind::Other => say!(l, desk::strong, on = on, name = name, days = days, day = day),
    }
}

fn changed_for_the_worse(l: &Locale, name: &str, look: &Look) -> String {
    let (day, lately, before) = (l.weekday_date(look.since), told(l, &look.lately), told(l, &look.before));
    match look.measure {
        Measure::Joining => say!(l, desk::joins_less, name = name, day = day, lately = lately, before = before),
        Measure::Presses => say!(l, desk::presses_less, name = name, day = day, lately = lately, before = before),
        Measure::Latency => say!(l, desk::slower, name = name, day = day, lately = lately, before = before),
    }
}

/// A need in one sentence.
#[must_use]
pub fn need(l: &Locale, names: &Names<'_>, need: &Need) -> String {
    let name = names.animal;
    match &need.what {
        What::Signs { kind, count, on_days, days, last, ago, .. } => {
            signs(l, name, *kind, (*count, *on_days, *days), *last, *ago == 0)
        }
        What::TakenBack { kind: of, last, .. } => {
            say!(l, desk::taken_back, kind = kind(*of), name = name, day = l.weekday_date(*last))
        }
        What::Change(look) => changed_for_the_worse(l, name, look),
        What::Leaves { share } => say!(l, desk::leaves, name = name, share = finding(l, share)),
        What::Silent { days, .. } => say!(l, desk::silent, name = name, days = *days),
        What::Held { word, held: None, .. } => say!(l, desk::stuck_unknown, word = (names.says)(*word)),
        What::Held { word, stuck, held: Some(held), .. } => {
            let (word, cause) = ((names.says)(*word), cause(l, names, held.cause));
            if stuck.is_some() {
                say!(l, desk::stuck, word = word, cause = cause)
            } else {
                say!(l, desk::holds, word = word, cause = cause)
            }
        }
        What::Ration { days, of, .. } => say!(l, desk::ration, name = name, days = *days, of = *of),
        What::Ready { word, days, .. } => {
            let since = need.since.map_or_else(|| days.to_string(), |day| l.weekday_date(day.day()));
            say!(l, desk::ready, word = (names.says)(*word), day = since)
        }
        What::CheckOpen { done, of } => say!(l, desk::check_open, done = *done, of = *of),
        What::CheckNever { words } => say!(l, desk::check_never, words = *words),
        What::Little { lack, days, of, .. } => {
            say!(l, desk::little, lack = lacking(*lack), days = *days, of = *of)
        }
        What::Outside { word, side, by, wait, pressed, place, level, beside, .. } => {
            let lies = lies(l, &(names.says)(*word), (*side, *pressed), (*by, *wait, *place), *level);
            say!(l, desk::outside, homes = beside.homes, lies = lies)
        }
    }
}

/// Its own wait, and the place where the middle nine tenths end.
fn lies(
    l: &Locale,
    word: &str,
    (side, pressed): (Outside, bool),
    (by, wait, ends): (Question, u32, Quantile),
    level: f64,
) -> String {
    let by = if by == Question::DaysToFirstPress { "days" } else { "showings" };
    let wait = say!(l, desk::outside_wait, by = by, wait = wait);
    let [value, low, high] = [ends.value, ends.low, ends.high].map(|x| place(l, x));
    let level = l.percent(level);
    match side {
        Outside::Above if pressed => {
            say!(l, desk::outside_later, word = word, wait = wait, place = value, level = level, low = low, high = high)
        }
        Outside::Above => {
            say!(l, desk::outside_open, word = word, wait = wait, place = value, level = level, low = low, high = high)
        }
        Outside::Below => {
            say!(
                l,
                desk::outside_sooner,
                word = word,
                wait = wait,
                place = value,
                level = level,
                low = low,
                high = high
            )
        }
    }
}

/// Why: its figures, and whom to ask where safety or health is touched.
#[must_use]
pub fn why(l: &Locale, names: &Names<'_>, need: &Need) -> Vec<String> {
    let name = names.animal;
    let asks = |caution_: Caution| caution(l, name, caution_);
    match &need.what {
        What::Signs { kind, recurring, ago, on_days, .. } => {
            let back = recurring.map(|(weeks, of)| say!(l, desk::why_recurring, weeks = weeks, of = of));
            let whom: &[Caution] = match kind {
                SignKind::Swallowing if *ago == 0 => &[Caution::CallVetNow],
                SignKind::Swallowing => &[Caution::AskVetUnlessSeen],
                SignKind::Threat => &[Caution::AskBoth],
                SignKind::Guarding => &[Caution::TakeNothing, Caution::AskBoth],
                // They are back already.
                SignKind::Other if *on_days > 1 => &[Caution::AskNow],
                SignKind::Other => &[Caution::AskIfBack],
            };
            back.into_iter().chain(whom.iter().map(|c| asks(*c))).collect()
        }
        What::TakenBack { .. } => vec![say!(l, desk::why_taken_back)],
        What::Change(look) => vec![say!(l, desk::why_change, p = l.p(look.p)), asks(Caution::MayBeIllness)],
        What::Leaves { .. } => vec![asks(Caution::LeavingIsAnswer)],
        What::Silent { usual, longest, after, .. } if usual.n > 0 => {
            let usual = told(l, usual);
            vec![say!(l, desk::why_silent, usual = usual, longest = *longest, after = *after)]
        }
        What::Silent { after, .. } => vec![say!(l, desk::why_silent_new, after = *after)],
        What::Held { right, stuck, held, .. } => {
            let right = finding(l, right);
            let stuck_for = stuck.map(|stuck| match stuck {
                StuckFor::SeldomRight => say!(l, desk::why_seldom_right, name = name, right = right.as_str()),
                StuckFor::HardlyPressed { presses } => say!(l, desk::why_hardly, name = name, presses = presses),
                StuckFor::SeldomTaken => say!(l, desk::why_seldom_taken, name = name),
            });
            // Where the figure itself is why, it was told.
            let invited = (*stuck != Some(StuckFor::SeldomRight))
                .then(|| say!(l, desk::why_right, name = name, right = right.as_str()));
            let figures = held.iter().map(|h| figure(l, name, h));
            stuck_for.into_iter().chain(figures).chain(invited).chain([asks(Caution::NotPressing)]).collect()
        }
        What::Outside { side, beside, laid, held, .. } => {
            let (who, kind) = (animals(l, beside.species, beside.age_band), words_for(l, beside.word_kind));
            let whom = say!(l, desk::why_outside, who = who, kind = kind, laid = *laid, name = name);
            let causes = held
                .iter()
                .flat_map(|h| [say!(l, desk::why_outside_cause, cause = cause(l, names, h.cause)), figure(l, name, h)]);
            let not = match side {
                Outside::Above => say!(l, others::late, name = name),
                Outside::Below => say!(l, desk::why_sooner),
            };
            std::iter::once(whom).chain(causes).chain([not]).collect()
        }
        What::Ration { most_kcal, budget_kcal, .. } => {
            let (most, budget) = (l.number(*most_kcal, 0), l.number(*budget_kcal, 0));
            vec![say!(l, desk::why_ration, most = most, budget = budget), asks(Caution::IndividualsDiffer)]
        }
        What::Ready { showings, days, .. } => {
            vec![say!(l, desk::why_ready, showings = *showings, days = *days), asks(Caution::NotPressing)]
        }
        What::CheckOpen { .. } | What::CheckNever { .. } => vec![say!(l, desk::why_check)],
        What::Little { closed, .. } => vec![say!(l, desk::why_little, closed = finding(l, closed))],
    }
}

/// The figure that a cause rests on, beside what it is held against.
fn figure(l: &Locale, name: &str, held: &Held) -> String {
    let bar = held.beside.value.unwrap_or_default();
    let (days, share) = (CAUSE_DAYS, held.figure);
    let (own, beside) = (told(l, &held.figure), told(l, &held.beside));
    match held.cause {
        Cause::NotWanted => because(l, name, &Because::Taken { share, days, bar }),
        Cause::TooLittle => because(l, name, &Because::ShowingsADay { rate: share, days, bar }),
        Cause::TooLate => because(l, name, &Because::Delay { seconds: share, bar }),
        Cause::Avoided => because(l, name, &Because::Near { share, expected: bar }),
        Cause::TimeOrPlace => say!(l, desk::why_hours, figure = own, beside = beside),
        Cause::Health => say!(l, desk::why_fall, figure = own, beside = beside),
        Cause::SoundsAlike => say!(l, desk::why_alike, figure = own, beside = beside),
        Cause::PeopleDiffer => say!(l, desk::why_people, figure = own, beside = beside),
        Cause::HardToMakeOut => {
            let seconds = say!(l, unit::seconds, value = l.number(held.figure.value.unwrap_or_default(), 1));
            say!(l, desk::why_recording, seconds = seconds)
        }
    }
}

/// What would change it.
#[must_use]
pub fn until(l: &Locale, names: &Names<'_>, until: Until) -> String {
    let said = |c: &Change| change(l, names.animal, c);
    match until {
        Until::Without { before } => say!(l, desk::until_without, day = l.weekday_date(before)),
        Until::Asked => say!(l, desk::until_asked),
        Until::AsBefore => said(&Change::UsualPresses),
        Until::FewerLeft => said(&Change::FewerLeft { sessions: 8 }),
        Until::Record => say!(l, desk::until_record),
        Until::Mended => said(&Change::MorePresses { days: 14 }),
        Until::MoreRight => say!(l, desk::until_more_right),
        Until::MoreRecords { lack } => say!(l, desk::until_more_records, lack = lacking(lack)),
        Until::FewerOver => say!(l, desk::until_fewer_over),
        Until::Invited => say!(l, desk::until_invited),
        Until::Checked => said(&Change::Checked),
        Until::FirstPress => say!(l, desk::until_first_press),
        Until::DaysSincePress { days } => say!(l, desk::until_since_press, days = days),
    }
}

/// When a need was put aside and when it is back, or that it had been and why it is back; none where it never was. In days gone by, so
/// that no zone makes another date of it.
#[must_use]
pub fn put(l: &Locale, need: &Need, now: Moment) -> Option<String> {
    let days = |seconds: f64| seconds.max(0.0) / 86_400.0;
    let ago = |at: Moment| days(now.seconds_since(at)).floor() as usize;
    Some(match need.put? {
        Put::Aside { at, until } => {
            say!(l, desk::aside, ago = ago(at), days = days(until.seconds_since(now)).ceil() as usize)
        }
        Put::Back { at, because } => {
            let why = match because {
                BackFor::Days => "days",
                BackFor::Anew => "anew",
                BackFor::Worse => "worse",
                BackFor::Cause => "cause",
            };
            say!(l, desk::back, ago = ago(at), why = why)
        }
    })
}

/// What changed between two lines, in a sentence.
#[must_use]
pub fn changed(l: &Locale, names: &Names<'_>, changed: &Changed) -> String {
    let (name, says) = (names.animal, |word: &WordId| (names.says)(*word));
    match changed {
        Changed::Signs { kind: of, count, last } => {
            say!(l, desk::new_signs, kind = kind(*of), count = *count, name = name, day = l.weekday_date(*last))
        }
        Changed::Joining { lately, before, p } => {
            let (lately, before) = (told(l, lately), told(l, before));
            say!(l, desk::new_joining, name = name, lately = lately, before = before, p = l.p(*p))
        }
        Changed::Presses { lately, before, p } => {
            say!(l, desk::new_presses, lately = told(l, lately), before = told(l, before), p = l.p(*p))
        }
        Changed::NewWord { word } => say!(l, desk::new_word, word = says(word)),
        Changed::WordGone { word } => say!(l, desk::word_gone, word = says(word)),
        Changed::FirstPress { word, day } => {
            say!(l, desk::first_press, name = name, word = says(word), day = l.weekday_date(*day))
        }
        Changed::NewStage { word, from, to } => {
            let (from, to) = (stage_name(l, *from), stage_name(l, *to));
            say!(l, desk::new_stage, word = says(word), from = from, to = to)
        }
        Changed::AboveChance { word, right } => {
            say!(l, desk::above_chance, word = says(word), right = finding(l, right))
        }
    }
}
