//! What followed when changes were agreed, over many homes, and how trials came out: in words that claim nothing.

use crate::figures::number;
use crate::talk::{change, way_name};
use crate::{Locale, say};
use sayso_advisor::Estimate;
use sayso_advisor::designs::Outcome;
use sayso_advisor::desk::ChangeKind;
use std::collections::BTreeMap;

/// A kind of change.
#[must_use]
pub fn kind(l: &Locale, kind: ChangeKind) -> String {
    match kind {
        ChangeKind::Change { question } => change(l, question, None),
        ChangeKind::Plan { way } => say!(l, followed::plan, way = way_name(way)),
        ChangeKind::Stage { stage } => {
            say!(l, followed::stage, stage = say!(l, events::stage_name, stage = stage.name()))
        }
    }
}

/// A share of homes, with its interval and their count; too few homes are no finding.
#[must_use]
pub fn share(l: &Locale, of: &Estimate) -> String {
    let value = of.value.unwrap_or_default();
    #[allow(clippy::cast_precision_loss, clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let more = (value * of.n as f64).round() as usize;
    let end = |x: Option<f64>| number(l, x.unwrap_or_default(), of.unit);
    if of.too_early() {
        return say!(l, followed::share_early, more = more, homes = of.n);
    }
    say!(
        l,
        followed::share,
        share = number(l, value, of.unit),
        low = end(of.low),
        high = end(of.high),
        more = more,
        homes = of.n
    )
}

/// How trials came out, the counts one after the other; none at all is said.
#[must_use]
pub fn outcomes(l: &Locale, all: &BTreeMap<Outcome, usize>) -> String {
    if all.is_empty() {
        return say!(l, followed::none_alone);
    }
    l.apart(&all.iter().map(|(how, count)| outcome(l, *how, *count)).collect::<Vec<_>>())
}

/// How many trials came out so.
#[must_use]
pub fn outcome(l: &Locale, outcome: Outcome, count: usize) -> String {
    let name = match outcome {
        Outcome::Going => "going",
        Outcome::Stopped => "stopped",
        Outcome::Untested => "untested",
        Outcome::TooFewOrders => "too_few_orders",
        Outcome::Rare => "rare",
        Outcome::MayBeChance => "may_be_chance",
    };
    say!(l, followed::outcome, outcome = name, count = count)
}
