//! Welfare rules. They come first and outrank every other advice. They name what was seen and whom to ask; they never diagnose.

use crate::advice::{Act, Advice, Because, Caution, Change, Lasting, Reason, Sure, Topic};
use crate::case::Case;
use crate::estimate::{Estimate, Unit};
use crate::rate::{clumping, rate};
use crate::rest::rests_until;
use crate::weeks::WEEK;
use sayso_methods::stats::{Count, clumped_p};
use sayso_model::facts::{Tells, tells};
use sayso_model::{Day, Fact, Invitation, Moment, PressedBy, Session, SessionId, Sign, SignLevel, WordId};
use std::collections::{BTreeMap, BTreeSet};

/// Days for which a growl, snap or bite, guarding and swallowing stay at the top (our own rule, on the side of caution).
pub const LASTS_DAYS: i32 = 28;
/// Weeks looked at for what comes back, and those with one from which it is called so (our own rule).
const RECURS: (usize, usize) = (6, 3);
/// Days of a week with strong signs in sessions with a word from which that word is under strain: one alone is not.
const STRAIN_DAYS: usize = 2;
/// Sessions looked back on for leaving.
const RECENT_SESSIONS: usize = 8;
/// Share of a week's sessions with a mild sign from which something should change.
const MILD: f64 = 0.25;
/// A change in pressing this unlikely by chance is worth a look at the animal's health.
const SUDDEN: f64 = 0.001;

/// Advice on welfare, most pressing first; empty where nothing speaks against a session.
#[must_use]
pub fn welfare(case: &Case<'_>) -> Vec<Advice> {
    let mut found = Vec::new();
    // What cannot wait comes first; after its day, what to do now does.
    let mut swallowed = lasting(case, Lasting::Swallowing);
    found.extend(swallowed.take_if(|a| a.act == Act::AskAboutSwallowing { today: true }));
    let strong = strong_signs(case);
    // On a day without a session for a growl, that advice tells of the weeks before as well.
    let told = strong.as_ref().is_some_and(|a| a.act == Act::GiveSpace);
    found.extend(strong);
    found.extend(lasting(case, Lasting::Threat).filter(|_| !told));
    found.extend(swallowed);
    found.extend(lasting(case, Lasting::Guarding));
    found.extend(leaving(case));
    found.extend(mild_signs(case));
    found.extend(sudden_change(case));
    found
}

/// Whether sessions should rest now ([`rests_until`]).
#[must_use]
pub fn rest_today(case: &Case<'_>) -> bool {
    rests_until(case).is_some()
}

fn signs_since<'a>(case: &Case<'a>, from: Moment) -> impl Iterator<Item = Fact<'a, Sign>> {
    case.story().between::<Sign>(case.animal(), from, case.now())
}

fn of_level<'a>(case: &Case<'a>, level: SignLevel, from: Moment) -> Vec<Fact<'a, Sign>> {
    signs_since(case, from).filter(|s| s.part.level == level).collect()
}

const fn kind(tells: Tells) -> Lasting {
    match tells {
        Tells::Threat => Lasting::Threat,
        Tells::Guarding => Lasting::Guarding,
        Tells::Swallowing => Lasting::Swallowing,
    }
}

fn of_kind<'a>(case: &Case<'a>, which: Lasting, from: Moment) -> Vec<Fact<'a, Sign>> {
    let seen = signs_since(case, from).filter(|s| s.part.level != SignLevel::Joining);
    seen.filter(|s| tells(s.part.sign.as_str()).map(kind) == Some(which)).collect()
}

/// What is said of signs that are not over with the day: how many, the last, and whether they come back.
fn lasting_facts(case: &Case<'_>, sign: Lasting) -> Option<(Vec<Reason>, Day)> {
    let seen = of_kind(case, sign, case.since(LASTS_DAYS));
    let last = seen.last()?;
    let last_on = last.at().day(case.zone());
    let fact =
        Because::LastingSigns { sign, count: seen.len(), days: LASTS_DAYS, last: last.part.sign.to_string(), last_on };
    let mut because = vec![Reason::from_events(fact, seen.iter().map(Fact::id))];
    let (of, from) = RECURS;
    let today = case.now().day(case.zone());
    let looked = of_kind(case, sign, case.since(7 * i32::try_from(of).unwrap_or(0)));
    let weeks: BTreeSet<i32> = looked.iter().map(|s| today.days_since(s.at().day(case.zone())) / 7).collect();
    if weeks.len() >= from {
        because.push(Because::Recurring { sign, weeks: weeks.len(), of }.into());
    }
    Some((because, last_on))
}

fn lasting(case: &Case<'_>, sign: Lasting) -> Option<Advice> {
    let (because, last_on) = lasting_facts(case, sign)?;
    let today = last_on == case.now().day(case.zone());
    let (act, cautions) = match sign {
        Lasting::Threat => (Act::AskAboutThreats, vec![Caution::AskBoth]),
        Lasting::Guarding => (Act::AskAboutGuarding, vec![Caution::TakeNothing, Caution::AskBoth]),
        Lasting::Swallowing => (
            Act::AskAboutSwallowing { today },
            vec![if today { Caution::CallVetNow } else { Caution::AskVetUnlessSeen }],
        ),
    };
    let mut advice = Advice::new(Topic::Welfare, act, because, Sure::Very, Change::DaysWithout { days: LASTS_DAYS });
    advice.cautions = cautions;
    Some(advice)
}

/// Strong signs of the week, and the days on which they fell.
fn strong_week<'a>(case: &Case<'a>) -> (Vec<Fact<'a, Sign>>, BTreeSet<Day>) {
    let week = of_level(case, SignLevel::Strong, case.since(WEEK));
    let days = week.iter().map(|s| s.at().day(case.zone())).collect();
    (week, days)
}

/// Why sessions rest now, with until when, and what would change it; none where they do not.
pub(crate) fn resting(case: &Case<'_>) -> Option<(Vec<Reason>, Change)> {
    let until = rests_until(case)?;
    let (week, days) = strong_week(case);
    Some((because_of(case, until, &week, &days), ends_by(&days)))
}

/// What ends a rest after strong signs on these days.
fn ends_by(days: &BTreeSet<Day>) -> Change {
    if days.len() >= 2 { Change::CalmDays { days: WEEK } } else { Change::CalmStart }
}

fn because_of(case: &Case<'_>, until: Moment, week: &[Fact<'_, Sign>], days: &BTreeSet<Day>) -> Vec<Reason> {
    let zone = case.zone();
    let today = week.iter().filter(|s| s.at().day(zone) == case.now().day(zone)).count();
    let fact = Because::StrongSigns {
        today,
        count: week.len(),
        on_days: days.len(),
        days: WEEK,
        last: week.last().map_or_else(String::new, |s| s.part.sign.to_string()),
    };
    let until = Because::RestsUntil { until, zone: zone.clone() };
    vec![Reason::from_events(fact, week.iter().map(Fact::id)), until.into()]
}

fn strong_signs(case: &Case<'_>) -> Option<Advice> {
    let until = rests_until(case)?;
    let (week, days) = strong_week(case);
    let mut because = because_of(case, until, &week, &days);
    let threat = week.iter().any(|s| tells(s.part.sign.as_str()) == Some(Tells::Threat));
    let (act, caution) = if threat {
        because.extend(lasting_facts(case, Lasting::Threat).into_iter().flat_map(|f| f.0));
        (Act::GiveSpace, Caution::AskBoth)
    } else if days.len() >= 2 {
        (Act::PauseSessions, Caution::AskNow)
    } else {
        (Act::NoMoreToday, Caution::AskIfBack)
    };
    Some(Advice::new(Topic::Welfare, act, because, Sure::Very, ends_by(&days)).caution(caution))
}

/// Words in whose sessions strong signs were seen on two days of the week or more. A single sign rests the day; it says
/// nothing of every word on the board.
pub(crate) fn strained(case: &Case<'_>) -> BTreeSet<WordId> {
    let from = case.since(WEEK);
    let strong: BTreeMap<SessionId, Day> = of_level(case, SignLevel::Strong, from)
        .iter()
        .filter_map(|s| Some((s.part.session?, s.at().day(case.zone()))))
        .collect();
    if strong.values().collect::<BTreeSet<_>>().len() < STRAIN_DAYS {
        return BTreeSet::new();
    }
    let mut days: BTreeMap<WordId, BTreeSet<Day>> = BTreeMap::new();
    let presses = case.recent(from).iter().map(|a| (a.press.part.word, a.press.part.session));
    let asked = case.story().between::<Invitation>(case.animal(), from, case.now());
    for (word, session) in presses.chain(asked.map(|i| (i.part.word, i.part.session))) {
        if let Some(day) = session.and_then(|s| strong.get(&s)) {
            days.entry(word).or_default().insert(*day);
        }
    }
    days.into_iter().filter(|(_, days)| days.len() >= STRAIN_DAYS).map(|(word, _)| word).collect()
}

fn leaving(case: &Case<'_>) -> Option<Advice> {
    let joined = case.sessions().iter().filter(|s| s.joined());
    let recent: Vec<&Session<'_>> = joined.rev().take(RECENT_SESSIONS).collect();
    let left = recent.iter().filter(|s| s.left()).count();
    if left < 3 || left * 2 < recent.len() {
        return None;
    }
    let share = Estimate::share(left, recent.len());
    let sure = if share.surely_above(0.3) { Sure::Fairly } else { Sure::Little };
    let events = recent.iter().rev().map(|s| s.start.id());
    let because = Reason::from_events(Because::LeftSessions { share, left }, events);
    let change = Change::FewerLeft { sessions: RECENT_SESSIONS };
    let advice = Advice::new(Topic::Welfare, Act::ShortenSessions, vec![because], sure, change);
    Some(advice.caution(Caution::LeavingIsAnswer))
}

fn mild_signs(case: &Case<'_>) -> Option<Advice> {
    let from = case.since(WEEK);
    let mild = of_level(case, SignLevel::Mild, from);
    let sessions = case.sessions_since(from).len();
    let with: BTreeSet<SessionId> = mild.iter().filter_map(|s| s.part.session).collect();
    let share = Estimate::share(with.len().min(sessions), sessions);
    if share.too_early() || !share.surely_above(MILD) {
        return None;
    }
    let because = Reason::from_events(Because::MildSigns { share }, mild.iter().map(Fact::id));
    let change = Change::FewerMild { share: MILD };
    let advice = Advice::new(Topic::Welfare, Act::EaseSessions, vec![because], Sure::Fairly, change);
    Some(advice.caution(Caution::SingleSign))
}

/// A sharp change in the animal's own pressing over the last two days against the four weeks before.
pub(crate) fn changed_suddenly(case: &Case<'_>) -> Option<Because> {
    let (now, recent_from, from) = (case.now(), case.since(2), case.since(30));
    let pressed = case.presses_between(from, now).filter(|p| p.part.by == PressedBy::Animal);
    let own: Vec<Moment> = pressed.map(|p| p.at()).collect();
    let first = *own.first()?;
    let days_before = recent_from.seconds_since(first.max(from)) / 86_400.0;
    let days_recent = now.seconds_since(recent_from) / 86_400.0;
    if days_before < 10.0 || days_recent < 1.0 {
        return None;
    }
    let recent = own.iter().filter(|&&at| at >= recent_from).count();
    let before = own.len() - recent;
    let recent = Count::new(recent as u64, days_recent).ok()?;
    let earlier = Count::new(before as u64, days_before).ok()?;
    let bursts = clumping(own.iter().copied(), first.max(from), now, case.zone());
    let p = clumped_p(recent, earlier, bursts).ok()?;
    let ratio = recent.rate() / earlier.rate().max(f64::MIN_POSITIVE);
    // A change may be sure and small: ask also for a fall or rise to a quarter or fourfold.
    if p > SUDDEN || earlier.events() < 20 || (0.25..=4.0).contains(&ratio) {
        return None;
    }
    let estimate = |count: Count| rate(count, bursts, Unit::PerDay);
    Some(Because::SuddenChange { now: estimate(recent), before: estimate(earlier) })
}

fn sudden_change(case: &Case<'_>) -> Option<Advice> {
    let because = vec![changed_suddenly(case)?.into()];
    let advice = Advice::new(Topic::Welfare, Act::LookAtHealth, because, Sure::Fairly, Change::UsualPresses);
    Some(advice.caution(Caution::MayBeIllness))
}
