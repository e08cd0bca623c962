//! Where a life stands with its planned checks.

use sayso_model::ProbePlan;
use sayso_model::order::PlannedTrial;
use std::collections::VecDeque;

/// The check that is on, and how many are behind.
#[derive(Clone, Debug, Default)]
pub(super) struct Checking {
    pub begun: usize,
    pub in_place: u32,
    pub on: Option<Check>,
}

#[derive(Clone, Debug)]
pub(super) struct Check {
    pub plan: ProbePlan,
    pub left: VecDeque<PlannedTrial>,
    pub right: u32,
    pub wrong: u32,
}
