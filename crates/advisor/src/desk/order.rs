//! In which order needs are told, and animals stand on a desk.
//!
//! What it is about comes first ([`About`]), then how pressing it is within that, then what the coach has not yet put aside,
//! then how strong the evidence is, then how long it has waited. No score is made of all together: each step can be said in
//! a sentence. The reasons stand in `docs/decisions/desk.md`.

use super::line::SignKind;
use super::need::{About, Need, Since, What};
use crate::weeks::WEEK;
use sayso_model::Day;
use sayso_norms::Outside;
use std::cmp::Reverse;

/// The place of a need: smaller comes first.
pub(crate) type Place = (About, u8, bool, Reverse<i64>, Option<Day>);

/// How pressing within what it is about, 0 first.
pub(super) fn pressing(need: &Need) -> u8 {
    match &need.what {
        What::Signs { kind, ago, recurring, .. } => signs(*kind, *ago, recurring.is_some()),
        What::Held { stuck: Some(_), held: Some(_), .. } => 0,
        What::Held { stuck: Some(_), .. } => 1,
        What::Held { .. } => 2,
        What::CheckNever { .. } | What::Outside { side: Outside::Below, .. } => 1,
        _ => 0,
    }
}

/// How soon somebody may be hurt decides first: what cannot wait today; what rests sessions; what was within the week; what
/// was before. Within a week a threat stands before guarding, and the latest first, for it is the day that can still be
/// changed; once a week went by without, what comes back stands first, for it will come again.
const fn signs(kind: SignKind, ago: i32, comes_back: bool) -> u8 {
    let guards = matches!(kind, SignKind::Guarding);
    match (kind, ago) {
        (SignKind::Swallowing | SignKind::Threat, ..=0) => 0,
        (_, ..=0) => 1,
        (SignKind::Other, _) => 2,
        (_, ..WEEK) => 3 + guards as u8,
        _ if comes_back => 5,
        _ => 6 + guards as u8,
    }
}

/// How strong it is among its like, larger first. Numbers of one kind only are ever compared.
#[allow(clippy::cast_possible_truncation)]
fn strength(need: &Need) -> i64 {
    let thousand = |x: f64| (1000.0 * x).clamp(-1e12, 1e12) as i64;
    match &need.what {
        What::Signs { count, last, recurring, .. } => {
            // The latest day first, then what comes back, then the more.
            i64::from(last.days_since(Day::EPOCH)) * 2000
                + i64::from(recurring.is_some()) * 1000
                + i64::try_from(*count).unwrap_or(0).min(999)
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
