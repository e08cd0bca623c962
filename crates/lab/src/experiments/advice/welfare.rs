//! Does its wellbeing come first in what is advised? Counted from the records, not from what the advice says of them.

use crate::experiments::advice::seen::Seen;
use sayso_advisor::steps::Step;
use sayso_advisor::today::{Next, Today};
use sayso_advisor::{Act, Because, Case};
use sayso_model::facts::{Tells, tells};
use sayso_model::{Moment, Sign, SignLevel};
use sayso_sim::Chance;
use std::collections::BTreeSet;

pub(crate) const DAY_S: f64 = 86_400.0;
/// Days for which a growl, guarding or swallowing must stay at the top.
const LASTS_DAYS: i32 = 28;

/// Signs written into a household: most have none, one, or one a week; some guard or swallow.
pub(crate) fn signs(c: &mut Chance, end: Moment) -> Vec<(Moment, &'static str)> {
    let at = |days: f64| end.plus_seconds(-days * DAY_S);
    let once = c.between(0.0, 40.0);
    match c.below(8) {
        0 => vec![(at(0.05), "growl")],
        1 => vec![(at(once), "growl")],
        2 => (0..5).map(|week| (at(1.0 + once / 8.0 + 7.0 * f64::from(week)), "snap or bite")).collect(),
        3 => vec![(at(once), "guards food, a thing or the button")],
        4 => vec![(at(once / 10.0), "swallowed something that is no food"), (at(once), "growl")],
        5 => vec![(at(once), "tail tucked, crouching"), (at(once + 2.0), "freezes, stares")],
        _ => Vec::new(),
    }
}

/// What is said of rest and of signs that last, at one reading.
pub(crate) fn read_welfare(seen: &mut Seen, case: &Case<'_>, today: &Today) {
    let (now, zone) = (case.now(), case.zone());
    let ago = |at: Moment| now.day(zone).days_since(at.day(zone));
    let all: Vec<_> = case.story().of::<Sign>(case.animal()).take_while(|s| s.at() <= now).collect();
    let strong_today = all.iter().any(|s| s.part.level == SignLevel::Strong && ago(s.at()) == 0);
    let rests = today.next == Next::Rest && today.plan().is_none() && today.steps.iter().all(|s| s.step == Step::Rest);
    seen.strong_today += usize::from(strong_today);
    seen.no_rest += usize::from(strong_today && !rests);
    for which in [Tells::Threat, Tells::Guarding, Tells::Swallowing] {
        let days: Vec<i32> =
            all.iter().filter(|s| tells(s.part.sign.as_str()) == Some(which)).map(|s| ago(s.at())).collect();
        if days.iter().any(|d| *d < LASTS_DAYS) {
            seen.lasting += 1;
            // At the top: nothing but what lasts, and the rest of the day, stands before it.
            let on_top = today.welfare.iter().take_while(|a| lasts(&a.act)).any(|a| tells_of(&a.act) == Some(which));
            seen.not_on_top += usize::from(!on_top);
        }
        let weeks: BTreeSet<i32> = days.iter().filter(|d| **d < 42).map(|d| d / 7).collect();
        if weeks.len() >= 3 && days.iter().any(|d| *d < LASTS_DAYS) {
            seen.weekly += 1;
            let facts = today.welfare.iter().flat_map(|a| &a.because);
            let named = facts.filter(|r| matches!(r.fact, Because::Recurring { weeks: n, .. } if n == weeks.len()));
            seen.not_named += usize::from(named.count() == 0);
        }
    }
}

const fn tells_of(act: &Act) -> Option<Tells> {
    match act {
        Act::GiveSpace | Act::AskAboutThreats => Some(Tells::Threat),
        Act::AskAboutGuarding => Some(Tells::Guarding),
        Act::AskAboutSwallowing { .. } => Some(Tells::Swallowing),
        _ => None,
    }
}

const fn lasts(act: &Act) -> bool {
    tells_of(act).is_some() || matches!(act, Act::NoMoreToday | Act::PauseSessions)
}
