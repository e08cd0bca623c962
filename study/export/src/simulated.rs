//! Invented households by the thousand, from `sayso-sim`: for trying questions whose answers are known, and for measuring.

use crate::dataset::Source;
use crate::error::ExportError;
use crate::household::{Household, household};
use sayso_model::{Moment, Story};
use sayso_sim::{any_home, simulate};
use std::ops::Range;
use std::sync::OnceLock;

/// So many households of one seed.
#[derive(Debug)]
pub struct Simulated {
    households: u32,
    seed: u64,
    days: u32,
    end: Moment,
    /// Households that the others repeat; what of them was needed yet.
    patterns: Vec<OnceLock<Household>>,
}

impl Simulated {
    /// Households drawn by the seed, each kept for `days` days up to `end`. With `patterns`, only so many are simulated and
    /// the others repeat them row by row: enough to measure an engine, no good for learning about households.
    ///
    /// # Errors
    /// [`ExportError::Range`].
    pub fn new(households: u32, seed: u64, days: u32, end: Moment, patterns: Option<u32>) -> Result<Self, ExportError> {
        if households == 0 {
            return Err(ExportError::Range { what: "households", wanted: "1 or more" });
        }
        if !(1..=20_000).contains(&days) {
            return Err(ExportError::Range { what: "days", wanted: "1 to 20000" });
        }
        let patterns = match patterns {
            Some(0) => return Err(ExportError::Range { what: "patterns", wanted: "1 or more" }),
            Some(many) if many < households => (0..many).map(|_| OnceLock::new()).collect(),
            _ => Vec::new(),
        };
        Ok(Self { households, seed, days, end, patterns })
    }

    fn simulate(&self, number: u32) -> Result<Household, ExportError> {
        let seed = self.seed.wrapping_mul(1 << 32).wrapping_add(u64::from(number));
        let mut home = any_home(seed);
        home.days = self.days;
        let run = simulate(&home, seed, self.end)?;
        Ok(household(&Story::from_events(run.events), number))
    }
}

impl Source for Simulated {
    fn of(&self) -> String {
        let (seed, households, days) = (self.seed, self.households, self.days);
        let repeated = match self.patterns.len() {
            0 => String::new(),
            patterns => format!(", {patterns} of them repeated"),
        };
        format!("{households} invented households of seed {seed}, {days} days each{repeated}")
    }

    fn households(&self) -> u32 {
        self.households
    }

    fn agreeing(&self, numbers: Range<u32>) -> Result<Vec<u32>, ExportError> {
        Ok(numbers.collect())
    }

    fn household(&self, number: u32) -> Result<Option<Household>, ExportError> {
        let Some(at) = (number as usize).checked_rem(self.patterns.len()) else {
            return self.simulate(number).map(Some);
        };
        let cell = &self.patterns[at];
        let mut one = match cell.get() {
            Some(made) => made.clone(),
            None => {
                let made = self.simulate(u32::try_from(at).unwrap_or(0))?;
                cell.get_or_init(|| made).clone()
            }
        };
        one.animals.iter_mut().for_each(|animal| animal.household = number);
        one.rows.iter_mut().for_each(|row| row.household = number);
        Ok(Some(one))
    }
}
