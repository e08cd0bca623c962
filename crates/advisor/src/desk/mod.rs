//! A coach's desk: which home needs me first and why, and what changed since we last spoke.
//!
//! A [`Line`] is worked out from a home's story once, when the story changes, and kept; the desk reads lines, never stories,
//! so that five thousand homes are placed in the time of a page. [`needs()`] says what may need a coach, [`desk`] in which
//! order, [`changes()`] what is new between two lines. Nothing here diagnoses: it names what was written down, how sure the
//! figures are, and what would change them.

mod around;
mod aside;
mod bar;
mod changes;
mod followed;
mod line;
mod logging;
mod looks;
mod make;
mod need;
mod needs;
mod order;
mod outside;
mod sureness;
mod tried;
mod words;

pub use aside::{ASIDE_DAYS, Extent, Mark, PutAside, Seen};
pub use bar::Bar;
pub use changes::{Changed, changes};
pub use followed::{Drawn, Followed, LEAST_DAYS, Overall, overall};
pub use line::{
    CheckLine, Held, Line, Logging, Look, Measure, OtherVersion, Over, SignDay, SignKind, SoFar, Version, WEEKS,
    WeekLine, WordLine,
};
pub use logging::LEAST_SILENT;
pub use need::{About, BackFor, Comparable, Lack, Need, Put, Since, Until, What};
pub use needs::needs;
pub use order::order;
pub use sureness::{Claim, MEASURED, sure};
pub use tried::{AgreedLine, ChangeKind, ChangeLine, DAYS, PracticeLine, Pressed, ProgrammeLine, TrialLine};

use sayso_model::Moment;
use sayso_norms::Release;

/// One animal on a desk.
#[derive(Clone, PartialEq, Debug)]
pub struct Row<K> {
    /// Whatever the caller knows it by.
    pub key: K,
    /// What may need a coach, the first first; empty where nothing does.
    pub needs: Vec<Need>,
}

/// Every animal of a desk at `now`, the one that needs a coach first in the first place. Those without a need come last, by
/// their key. `norms`, where there are any, tell what other homes did.
#[must_use]
pub fn desk<'a, K: Ord>(
    lines: impl IntoIterator<Item = (K, &'a Line)>,
    now: Moment,
    seen: &Seen,
    norms: Option<&Release>,
) -> Vec<Row<K>> {
    let lines: Vec<(K, &Line)> = lines.into_iter().collect();
    let bar = Bar::over(lines.iter().map(|(_, line)| *line));
    let rows = lines.into_iter().map(|(key, line)| Row { key, needs: needs(line, now, &bar, seen, norms) });
    let mut placed: Vec<(Vec<order::Place>, Row<K>)> =
        rows.map(|row| (row.needs.iter().map(order::place).collect(), row)).collect();
    placed.sort_by(|(a, x), (b, y)| {
        // An animal without a need comes after all with one, not before them.
        (a.is_empty(), a, &x.key).cmp(&(b.is_empty(), b, &y.key))
    });
    placed.into_iter().map(|(_, row)| row).collect()
}
