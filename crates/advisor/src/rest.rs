//! Until when sessions rest after strong signs. The rule stands here; the Board's client follows the same one while nothing
//! answers it (`client/rest.js`), and the shared cases hold both to it. See `docs/decisions/one-step-a-word.md`.

use crate::case::Case;
use crate::weeks::WEEK;
use sayso_model::{Day, Moment, Sign, SignLevel, Zone};
use std::collections::BTreeSet;

/// The least rest after a strong sign, in seconds: twelve hours, so that a growl at night is not over at midnight (our own
/// rule, on the side of caution).
pub const LEAST_REST_S: f64 = 43_200.0;

/// When sessions may be held again; none where they may be held now.
#[must_use]
pub fn rests_until(case: &Case<'_>) -> Option<Moment> {
    until(&strong_of_week(case), case.zone()).filter(|until| case.now() < *until)
}

/// The strong signs of the last seven household days, by time: all that a rest can follow from.
#[must_use]
pub fn strong_of_week(case: &Case<'_>) -> Vec<Moment> {
    let signs = case.story().between::<Sign>(case.animal(), case.since(WEEK), case.now());
    signs.filter(|s| s.part.level == SignLevel::Strong).map(|s| s.at()).collect()
}

/// When the rest after these strong signs is over: the last one's day is over and twelve hours have passed; where they fell on two
/// days or more, the last but one of those days is a week ago.
fn until(strong: &[Moment], zone: &Zone) -> Option<Moment> {
    let last = *strong.iter().max()?;
    let of_last = last.day(zone).plus(1).start(zone).max(last.plus_seconds(LEAST_REST_S));
    let days: BTreeSet<Day> = strong.iter().map(|at| at.day(zone)).collect();
    let of_two = days.iter().rev().nth(1).map(|day| day.plus(WEEK).start(zone));
    Some(of_two.map_or(of_last, |of_two| of_two.max(of_last)))
}
