//! How far out an item may lie that stands apart from the others.
//!
//! A learned spread pulls every item towards the mean, and pulls most where it should least: a treasure among fillers. So the
//! outer end of an interval is also worked out with that one item let off the pull, and the farther of the two counts. The idea
//! of limiting the pull on the extremes: B. Efron & C. Morris (1972), J Am Stat Assoc 67:130 (from memory). The end is that of a
//! profile (see [`super::logit`]).

use super::{LikesError, logit::Design, posterior::likeliest_spread};
use crate::stats::{Level, normal_quantile};

/// Spread of the item let off (standard deviation, log odds): so wide that choices decide, and finite where it always won.
const FREE_SPREAD: f64 = 5.0;

/// End of `contrast' theta`, above or below, with the item let off and the others' spread learned without it; `None` if the
/// profile does not settle. An item that stands out is missed only beyond its outer end, which so carries the whole error.
pub(super) fn outer_end(
    design: &Design,
    items: usize,
    item: usize,
    contrast: &[f64],
    upwards: bool,
    level: Level,
) -> Result<Option<f64>, LikesError> {
    let z = normal_quantile(1.0 - 2.0 * level.tail())?;
    let free = design.with_ridge(&[item], 0.5 / (FREE_SPREAD * FREE_SPREAD));
    let others: Vec<usize> = (0..items).filter(|other| *other != item).collect();
    Ok(likeliest_spread(&free, &others).and_then(|(design, top)| design.profile_end(&top, contrast, z, upwards)))
}
