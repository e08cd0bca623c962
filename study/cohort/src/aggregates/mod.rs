//! The aggregates: each a tally of what it saw, whose states merge, so that parts taken in anywhere equal the whole.

mod dose;
mod first_press;
mod groups;
mod hours;
mod mean;
mod spells;
mod survival;
mod tally;

use datafusion::logical_expr::{AggregateUDF, Expr};
use std::sync::{Arc, LazyLock};

macro_rules! aggregates {
    ($($(#[$doc:meta])* $function:ident($($argument:ident),+) => $tally:ty),+ $(,)?) => {
        $($(#[$doc])*
        #[must_use]
        pub(crate) fn $function($($argument: Expr),+) -> Expr {
            static MADE: LazyLock<Arc<AggregateUDF>> = LazyLock::new(groups::made::<$tally>);
            MADE.call(vec![$($argument),+])
        })+

        /// Every aggregate of the plans, each under its name: whoever works on a plan that was written down elsewhere looks them up.
        #[must_use]
        pub fn aggregates() -> Vec<Arc<AggregateUDF>> {
            vec![$(groups::made::<$tally>()),+]
        }

        #[cfg(test)]
        mod names {
            use super::tally::Tally;
            use super::*;

            #[test]
            fn each_aggregate_has_a_name_of_its_own() {
                let mut names = vec![$(<$tally>::NAME),+];
                let all = names.len();
                names.sort_unstable();
                names.dedup();
                assert_eq!(names.len(), all);
            }
        }
    };
}

aggregates! {
    /// Of one word of one animal: showings before the first press by itself, when it was first shown, when first pressed.
    first_press(at_s, kind, by, outcome, word_kind) => first_press::FirstPress,
    /// Of one word of one animal: invitations and presses at them, by how often it had been shown.
    dose(at_s, kind, outcome, joined) => dose::Dose,
    /// Of one animal: its presses over the 24 hours of the day.
    hours(hour) => hours::Hours,
    /// Of one word of one animal: its times in each stage.
    spells(at_s, outcome) => spells::Spells,
    /// A survival curve's quantiles of waits that may not be over.
    survival(time, event) => survival::Survival,
    /// The mean over units of a share, with its interval.
    mean(share) => mean::Mean,
}
