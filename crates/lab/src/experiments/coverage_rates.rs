//! Rates of presses that come in bouts: do the intervals hold the truth, and does nothing stand out or change by chance?

use super::Section;
use crate::error::{LabError, told};
use crate::light::{Bouts, bouts};
use crate::report::figure::{Finding, Wanted};
use crate::work::Work;
use sayso_methods::demand::change::{change_points_with_exposure, clumped_penalty, default_penalty};
use sayso_methods::demand::rates::rates_by_bin;
use sayso_methods::stats::{Clumping, Count, Level};

/// Wanted of an interval widened for bouts: it may hold the truth more often.
const ADMITS: Wanted = Wanted::AtLeast(0.93);
/// Presses expected, and days.
const AMOUNTS: [(f64, u32); 5] = [(5.0, 7), (20.0, 7), (20.0, 30), (60.0, 30), (200.0, 60)];

/// Adds the rows.
pub fn add(work: &Work, section: &mut Section) -> Result<(), LabError> {
    let reps = work.size(2000, 100);
    for (geometric, day_spread) in [(false, 0.0), (true, 0.0), (false, 0.5)] {
        for size in [1.0, 2.0, 3.0, 5.0] {
            if size == 1.0 && geometric {
                continue;
            }
            let kind = match (size == 1.0, geometric, day_spread > 0.0) {
                (true, _, false) => "presses singly".to_owned(),
                (false, true, false) => format!("bouts of about {size}"),
                (false, false, false) => format!("bouts of {size}"),
                _ => format!("bouts of {size}, good and bad days"),
            };
            for (presses, days) in AMOUNTS {
                let what = format!("{kind}, {presses} presses in {days} days");
                let how = Bouts { presses, days, size, geometric, day_spread };
                let found = work.each(&format!("rate: {what}"), reps, |seed| {
                    let times = bouts(&how, seed);
                    let clumping = Clumping::of_times(&times, f64::from(days)).map_err(told)?;
                    let count = Count::new(times.len() as u64, 1.0).map_err(told)?;
                    let shown = count.clumped_interval(clumping, Level::P95);
                    Ok((count.interval(Level::P95).contains(presses), shown.contains(presses)))
                })?;
                let hits = |of: fn(&(bool, bool)) -> bool| found.iter().filter(|f| of(f)).count();
                // Good and bad days are no part of what was asked for; how far they are met is told.
                let wanted = if day_spread > 0.0 { Wanted::Known } else { ADMITS };
                section.add(Finding::share(format!("rate as shown, {what}"), wanted, hits(|f| f.1), reps));
                if (presses, days) == (60.0, 30) {
                    section.add(Finding::share(format!("exact rate, {what}"), Wanted::Known, hits(|f| f.0), reps));
                }
            }
        }
    }
    chance_findings(work, section)
}

/// Weekdays that stand out, and changes of the rate, where there are none.
fn chance_findings(work: &Work, section: &mut Section) -> Result<(), LabError> {
    let reps = work.size(1000, 60);
    for size in [1.0, 2.0, 5.0] {
        let how = Bouts { presses: 150.0, days: 56, size, geometric: false, day_spread: 0.0 };
        let found = work.each(&format!("chance findings: {size}"), reps, |seed| {
            let times = bouts(&how, seed);
            let clumping = Clumping::of_times(&times, 56.0).map_err(told)?;
            let (mut weekdays, mut days) = ([0_u64; 7], [0_u64; 56]);
            for time in &times {
                weekdays[time.floor() as usize % 7] += 1;
                days[time.floor() as usize] += 1;
            }
            let outstanding = |clumping| -> Result<bool, LabError> {
                let bins = rates_by_bin(&weekdays, &[8.0; 7], clumping).map_err(told)?;
                Ok(bins.iter().any(|b| b.adjusted_p.is_some_and(|p| p <= 0.05)))
            };
            let changes = |penalty| -> Result<bool, LabError> {
                Ok(!change_points_with_exposure(&days, &[1.0; 56], penalty).map_err(told)?.change_after.is_empty())
            };
            Ok([
                outstanding(Clumping::NONE)?,
                outstanding(clumping)?,
                changes(default_penalty(56))?,
                changes(clumped_penalty(56, clumping))?,
            ])
        })?;
        let named = [
            ("a weekday stands out (presses taken singly)", Wanted::Known),
            ("a weekday stands out (as shown)", Wanted::AtMost(0.05)),
            ("a change of the rate (presses taken singly)", Wanted::Known),
            // The penalty is the published one; bursts should add nothing to what it lets by.
            ("a change of the rate (as shown)", Wanted::Known),
        ];
        for (i, (what, wanted)) in named.into_iter().enumerate() {
            let hits = found.iter().filter(|f| f[i]).count();
            section.add(Finding::share(format!("by chance alone, bouts of {size}: {what}"), wanted, hits, reps));
        }
    }
    Ok(())
}
