//! In which order needs are told, and animals stand on a desk.
//!
//! What it is about comes first ([`About`]), then how pressing it is within that, then what the coach has not yet put aside,
//! then how strong the evidence is, then how long it has waited. No score is made of all together: each step can be said in
//! a sentence. The reasons stand in `docs/decisions/desk.md`.

use super::line::SignKind;
use super::need::{About, Need, Since, What};
use sayso_model::Day;
use sayso_norms::Outside;
use std::cmp::Reverse;

/// The place of a need: smaller comes first.
pub(crate) type Place = (About, u8, bool, Reverse<i64>, Option<Day>);

/// How pressing within what it is about, 0 first.
pub(super) fn pressing(need: &Need) -> u8 {
    match &need.what {
        // What cannot wait; what rests sessions; what comes back; what lasts.
        What::Signs { kind: SignKind::Swallowing | SignKind::Threat, today: true, .. } => 0,
        What::Signs { kind: SignKind::Other, .. } | What::Signs { today: true, .. } => 1,
        What::Signs { recurring: Some(_), .. } => 2,
        What::Signs { kind: SignKind::Swallowing | SignKind::Threat, .. } => 3,
        What::Signs { .. } => 4,
        What::Held { stuck: Some(_), held: Some(_), .. } => 0,
        What::Held { stuck: Some(_), .. } => 1,
        What::Held { .. } => 2,
        What::CheckNever { .. } | What::Outside { side: Outside::Below, .. } => 1,
        _ => 0,
    }
}

/// How strong it is among its like, larger first. Numbers of one kind only are ever compared.
#[allow(clippy::cast_possible_truncation)]
fn strength(need: &Need) -> i64 {
    let thousand = |x: f64| (1000.0 * x).clamp(-1e12, 1e12) as i64;
    match &need.what {
        What::Signs { count, last, .. } => {
            // The latest day first, then the more.
            i64::from(last.days_since(Day::EPOCH)) * 1000 + i64::try_from(*count).unwrap_or(0).min(999)
        }
        What::TakenBack { last, .. } => i64::from(last.days_since(Day::EPOCH)),
        What::Change(look) => thousand(-look.p.max(1e-300).log10()),
        What::Leaves { share } => thousand(share.low.unwrap_or(0.0)),
        What::Silent { days, after, .. } => thousand(f64::from(*days) / f64::from((*after).max(1))),
        What::Held { held, .. } => {
            need.sure as i64 * 1_000_000
                + held.and_then(|h| h.p).map_or(0, |p| thousand(-p.max(1e-300).log10()).min(999_999))
        }
        What::Ration { days, most_kcal, budget_kcal, .. } => {
            i64::try_from(*days).unwrap_or(0) * 1_000_000 + thousand(most_kcal / budget_kcal.max(1.0)).min(999_999)
        }
        What::Ready { showings, .. } => i64::try_from(*showings).unwrap_or(0),
        // How far outside is nobody's rank.
        What::CheckOpen { .. } | What::CheckNever { .. } | What::Little { .. } | What::Outside { .. } => 0,
    }
}

pub(crate) fn place(need: &Need) -> Place {
    (need.about, pressing(need), need.is_aside(), Reverse(strength(need)), need.since.map(Since::day))
}

/// Sorts needs of one animal: the first is why it stands where it stands.
pub fn order(needs: &mut [Need]) {
    needs.sort_by_key(|need| (place(need), need.mark()));
}
