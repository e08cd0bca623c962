//! Do likes hold from day to day, and is it time to test again?
//!
//! Sources: Kendall's tau-b between two days and W over several (see [`crate::stats`]); the interval of tau is over draws from
//! what each day's choices leave open, own construction. The rule for testing again is common practice put in numbers, no source.

use super::{ChoiceFit, LikesError, draws::draw_strengths};
use crate::stats::{Concordance, Interval, Level, Proportion, StatsError, Tail, TauB, kendall_tau_b, kendall_w};

/// Agreement of two days.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayAgreement {
    /// Tau-b of the two estimated rankings, with its p-value and number of items.
    pub estimated: TauB,
    /// Interval of the tau between the true rankings of the two days, given how much the choices leave open.
    pub interval: Interval,
    /// Choices on the first day and on the second.
    pub n: (u64, u64),
}

/// Compares the rankings of two days over the same items.
///
/// # Errors
/// [`LikesError::Stats`] if the items differ in number, or one estimate is all ties (no choices), or without draws.
///
/// ```
/// use sayso_methods::likes::{Prior, Ranking, day_agreement, plackett_luce};
/// use sayso_methods::stats::Level;
/// let day = |order: &[usize]| plackett_luce(4, &[Ranking::complete(order)], Prior::HOME, Level::P95);
/// let found = day_agreement(&day(&[0, 1, 2, 3])?, &day(&[0, 1, 3, 2])?, Level::P95, 1000, 1)?;
/// assert!((found.estimated.tau - 2.0 / 3.0).abs() < 1e-12);
/// assert!(found.interval.width() > 0.5, "one array a day leaves much open");
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn day_agreement(
    first: &ChoiceFit,
    second: &ChoiceFit,
    level: Level,
    draws: usize,
    seed: u64,
) -> Result<DayAgreement, LikesError> {
    let values = |fit: &ChoiceFit| -> Vec<f64> { fit.strengths.iter().map(|s| s.value).collect() };
    let estimated = kendall_tau_b(&values(first), &values(second))?;
    // Two seeds, or the two days' draws would go hand in hand.
    let (a, b) = (draw_strengths(first, draws, seed)?, draw_strengths(second, draws, seed ^ 0x9e37_79b9_7f4a_7c15)?);
    let mut taus = Vec::with_capacity(draws);
    // The sample is in no random order, so the second is paired at a stride that shares no factor with the first.
    let stride = (1..).map(|k| draws / 2 + k).find(|s| coprime(*s, draws)).unwrap_or(1);
    for (at, strengths) in a.iter().enumerate() {
        taus.push(kendall_tau_b(strengths, &b[at * stride % draws])?.tau);
    }
    taus.sort_by(f64::total_cmp);
    let place = |share: f64| taus[((share * (taus.len() - 1) as f64).round() as usize).min(taus.len() - 1)];
    let interval = Interval { low: place(level.tail()), high: place(1.0 - level.tail()), level };
    Ok(DayAgreement { estimated, interval, n: (first.n, second.n) })
}

fn coprime(a: usize, b: usize) -> bool {
    let (mut a, mut b) = (a, b);
    while b > 0 {
        (a, b) = (b, a % b);
    }
    a == 1
}

/// Agreement of several days: Kendall's W over their estimated strengths.
///
/// # Errors
/// [`LikesError::Stats`] below two days, or if the items differ in number.
pub fn days_concordance(days: &[&ChoiceFit]) -> Result<Concordance, LikesError> {
    let rows: Vec<Vec<f64>> = days.iter().map(|d| d.strengths.iter().map(|s| s.value).collect()).collect();
    Ok(kendall_w(&rows)?)
}

/// What is known about how far a ranking can still be trusted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RankingState {
    /// Days since the last test; `None` if there was none.
    pub age_days: Option<f64>,
    /// Half-life of likes, days (infinite: they do not change). See [`super::choose_half_life`].
    pub half_life_days: f64,
    /// Tau between the last two tests, if there were two.
    pub last_agreement: Option<f64>,
    /// Probability that the top set is right, from a fit in which old trials count for less.
    pub top_probability: f64,
    /// Offers of a top item since the test, and how many of them were turned down.
    pub turned_down: Option<Proportion>,
}

/// When a ranking is stale.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RetestRule {
    /// Test again when this share of what was known is forgotten by age (0 to 1).
    pub forgotten: f64,
    /// Test again when the top set is less sure than this.
    pub least_top_probability: f64,
    /// Rankings that agreed less than this count as changing: the time allowed is then halved.
    pub steady_agreement: f64,
    /// Share of offers of a top item that may be turned down without meaning anything.
    pub usual_turn_downs: f64,
    /// Level at which more turning down counts as news.
    pub alpha: f64,
}

impl Default for RetestRule {
    /// Half forgotten, 60 % sure, tau of 0.4, a fifth turned down, 5 % (common practice put in numbers, no source).
    fn default() -> Self {
        Self { forgotten: 0.5, least_top_probability: 0.6, steady_agreement: 0.4, usual_turn_downs: 0.2, alpha: 0.05 }
    }
}

/// Why to test again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RetestReason {
    /// Never tested.
    NeverTested,
    /// A top item is turned down more often than is usual.
    TurnedDown(Proportion),
    /// Too old: so many days past its time.
    TooOld(f64),
    /// The top set is not clear.
    TopUnclear(f64),
}

/// Whether to test again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Retest {
    /// Now, and why.
    Now(RetestReason),
    /// Not for so many days (infinite if likes do not change).
    InDays(f64),
}

/// Decides whether a ranking is stale.
///
/// # Errors
/// [`LikesError::Stats`] for an age, half-life, probability or rule outside its range.
///
/// ```
/// use sayso_methods::likes::{RankingState, Retest, RetestRule, retest};
/// let state = RankingState {
///     age_days: Some(10.0),
///     half_life_days: 30.0,
///     last_agreement: None,
///     top_probability: 0.9,
///     turned_down: None,
/// };
/// assert_eq!(retest(&state, &RetestRule::default())?, Retest::InDays(20.0));
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn retest(state: &RankingState, rule: &RetestRule) -> Result<Retest, LikesError> {
    let shares = [
        ("share forgotten", rule.forgotten),
        ("least probability", rule.least_top_probability),
        ("usual turn-downs", rule.usual_turn_downs),
        ("alpha", rule.alpha),
        ("top probability", state.top_probability),
    ];
    if let Some((what, value)) = shares.into_iter().find(|(_, v)| !(0.0..=1.0).contains(v)) {
        return Err(StatsError::OutOfRange { what, value }.into());
    }
    if state.half_life_days.is_nan() || state.half_life_days <= 0.0 {
        return Err(StatsError::OutOfRange { what: "half-life in days", value: state.half_life_days }.into());
    }
    if rule.forgotten == 0.0 {
        return Err(StatsError::OutOfRange { what: "share forgotten", value: 0.0 }.into());
    }
    let Some(age) = state.age_days else { return Ok(Retest::Now(RetestReason::NeverTested)) };
    if !(age >= 0.0 && age.is_finite()) {
        return Err(StatsError::OutOfRange { what: "age in days", value: age }.into());
    }
    if let Some(turned_down) = state.turned_down
        && turned_down.n() > 0
        && turned_down.test(rule.usual_turn_downs, Tail::Greater)? < rule.alpha
    {
        return Ok(Retest::Now(RetestReason::TurnedDown(turned_down)));
    }
    // A share f is forgotten after log2(1 / (1 - f)) half-lives.
    let half_lives = -(1.0 - rule.forgotten).log2();
    let changing = state.last_agreement.is_some_and(|tau| tau < rule.steady_agreement);
    let time = state.half_life_days * half_lives * if changing { 0.5 } else { 1.0 };
    if age >= time {
        return Ok(Retest::Now(RetestReason::TooOld(age - time)));
    }
    if state.top_probability < rule.least_top_probability {
        return Ok(Retest::Now(RetestReason::TopUnclear(state.top_probability)));
    }
    Ok(Retest::InDays(time - age))
}
