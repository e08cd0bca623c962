//! What a fitted choice model says: strengths, their uncertainty, and preferences between two items.

use super::{
    LikesError,
    apart::outer_end,
    logit::{Design, Optimum},
    posterior::{self, Sample},
};
use crate::stats::{Interval, Level, StatsError, dense::Cholesky, normal_cdf};

/// What is assumed before the first trial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Prior {
    /// Nothing: maximum likelihood. Refused where the data give no finite estimate.
    None,
    /// The objective is the log-likelihood less `alpha` times the sum of squared strengths: strengths are normal about their
    /// mean with variance `1 / (2 alpha)`. Always gives an answer; its intervals are short where likes differ more than that.
    Weak {
        /// Positive; larger pulls harder towards "all liked alike".
        alpha: f64,
    },
    /// Strengths are normal about their mean, and how far they spread is learned from the choices. Always gives an answer.
    Learned,
}

impl Prior {
    /// The prior used unless another is asked for; see the page on coverage for why.
    pub const HOME: Self = Self::Learned;

    /// Penalty on the strengths; a starting value where it is learned.
    pub(super) fn ridge(self) -> Result<f64, LikesError> {
        match self {
            Self::None => Ok(0.0),
            Self::Weak { alpha } if alpha > 0.0 && alpha < 1e6 => Ok(alpha),
            Self::Weak { alpha } => Err(StatsError::OutOfRange { what: "prior alpha", value: alpha }.into()),
            Self::Learned => Ok(0.5),
        }
    }
}

/// Penalty of the side term: standard deviation 2, since even 9 in 10 to one side is a log odds of 2.2.
pub(super) const SIDE_RIDGE: f64 = 0.125;
/// Penalty of "nothing" and of "both": standard deviation 3.
pub(super) const RIVAL_RIDGE: f64 = 1.0 / 18.0;

/// How the intervals of the strengths were made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum IntervalMethod {
    /// Quantiles of the posterior; the outer end of a strength or a preference as far as the profile with that one item let off
    /// the pull towards the others. With [`Prior::Learned`], up to 20 items.
    Posterior,
    /// Where the best penalised log-likelihood has fallen by half the squared normal quantile; may be lopsided, as it should.
    /// With the other priors, up to 40 items.
    Profile,
    /// Normal, from the curvature at the optimum. With more items.
    Normal,
}

/// Which intervals to make.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Intervals {
    /// The best the prior and the number of items allow (see [`IntervalMethod`]).
    Best,
    /// Normal ones: many times quicker, a little off with few choices.
    Quick,
}

/// Most items for which the posterior is sampled: in more dimensions too few points carry the weight.
const POSTERIOR_UP_TO: usize = 20;
/// Most items for which profile intervals are made.
const PROFILE_UP_TO: usize = 40;

/// How well one item is liked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strength {
    /// The item.
    pub item: usize,
    /// Log odds of being taken rather than an item of average strength; all items together average 0.
    pub value: f64,
    /// Its standard error.
    pub standard_error: f64,
    /// Its interval.
    pub interval: Interval,
    /// Times it was on offer.
    pub offered: u64,
    /// Times it was taken.
    pub chosen: u64,
}

/// Another figure of the model, on the log-odds scale.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Term {
    /// Estimate.
    pub value: f64,
    /// Its standard error.
    pub standard_error: f64,
    /// Its interval.
    pub interval: Interval,
    /// Two-sided normal p-value against 0.
    pub p: f64,
    /// Trials that bear on it.
    pub n: u64,
}

/// A fitted model of choices.
#[derive(Debug, Clone, PartialEq)]
pub struct ChoiceFit {
    /// One per item, in index order.
    pub strengths: Vec<Strength>,
    /// Extra log odds of taking what lies on the left, if the model has a side term.
    pub side: Option<Term>,
    /// Strength of "nothing" on the scale of the items, if trials without a choice were modelled.
    pub nothing: Option<Term>,
    /// How readily both are taken at once (log of Davidson's parameter), if that happened.
    pub both: Option<Term>,
    /// Log odds an item loses for each taste of it just had (negative: gains), if the model has such a term and trials show it.
    pub tires: Option<Term>,
    /// Log-likelihood at the estimate, without the penalty.
    pub log_likelihood: f64,
    /// How the intervals were made.
    pub interval_method: IntervalMethod,
    /// Level of the intervals.
    pub level: Level,
    /// Choices behind the fit.
    pub n: u64,
    covariance: Vec<f64>,
    /// Kept for intervals of figures nobody has asked for yet.
    basis: Basis,
}

/// What intervals are made from.
#[derive(Debug, Clone, PartialEq)]
struct Basis {
    design: Design,
    items: usize,
    top: Optimum,
    sample: Option<Sample>,
    method: IntervalMethod,
    /// Whether outer ends allow for an item that stands apart.
    lets_off: bool,
    level: Level,
}

/// Which parameters a model has beside the items.
pub(super) struct Layout {
    pub(super) items: usize,
    pub(super) side: Option<usize>,
    pub(super) nothing: Option<usize>,
    pub(super) both: Option<usize>,
    pub(super) tires: Option<usize>,
    /// Trials that bear on each.
    pub(super) counts: TermCounts,
    pub(super) offered: Vec<u64>,
    pub(super) chosen: Vec<u64>,
    pub(super) n: u64,
}

/// Trials that bear on each extra term.
#[derive(Default)]
pub(super) struct TermCounts {
    pub(super) side: u64,
    pub(super) nothing: u64,
    pub(super) both: u64,
    pub(super) tires: u64,
}

pub(super) fn conclude(
    design: Design,
    layout: &Layout,
    prior: Prior,
    level: Level,
    intervals: Intervals,
) -> Result<ChoiceFit, LikesError> {
    let items = layout.items;
    let basis = Basis::new(design, items, prior, level, intervals)?;
    let parameters = basis.top.theta.len();
    // A strength is the item's parameter less the mean of the items.
    let share = 1.0 / items as f64;
    let covariance = basis.centred_covariance(items);
    let centre = basis.top.theta[..items].iter().sum::<f64>() * share;
    let mut strengths = Vec::with_capacity(items);
    for item in 0..items {
        let (value, standard_error, interval) = if basis.method == IntervalMethod::Normal && !basis.lets_off {
            // Already worked out with all the others.
            basis.normal(basis.top.theta[item] - centre, covariance[item * items + item].max(0.0).sqrt())
        } else {
            let mut contrast = vec![0.0; parameters];
            contrast[..items].fill(-share);
            contrast[item] += 1.0;
            basis.figure(&contrast, Some(item))?
        };
        let (offered, chosen) = (layout.offered[item], layout.chosen[item]);
        strengths.push(Strength { item, value, standard_error, interval, offered, chosen });
    }
    let term = |at: Option<usize>, relative: bool, n: u64| -> Result<Option<Term>, LikesError> {
        let Some(at) = at else { return Ok(None) };
        let mut contrast = vec![0.0; parameters];
        if relative {
            contrast[..items].fill(-share);
        }
        contrast[at] = 1.0;
        let (value, standard_error, interval) = basis.figure(&contrast, None)?;
        let p = (2.0 * normal_cdf(-(value / standard_error).abs())).min(1.0);
        Ok(Some(Term { value, standard_error, interval, p, n }))
    };
    Ok(ChoiceFit {
        side: term(layout.side, false, layout.counts.side)?,
        nothing: term(layout.nothing, true, layout.counts.nothing)?,
        both: term(layout.both, false, layout.counts.both)?,
        tires: term(layout.tires, false, layout.counts.tires)?,
        log_likelihood: basis.log_likelihood(),
        interval_method: basis.method,
        level,
        n: layout.n,
        covariance,
        strengths,
        basis,
    })
}

impl Basis {
    fn new(design: Design, items: usize, prior: Prior, level: Level, intervals: Intervals) -> Result<Self, LikesError> {
        let best = intervals == Intervals::Best;
        if prior == Prior::Learned {
            let sample_up_to = if best { POSTERIOR_UP_TO } else { 0 };
            let (top, sample) = posterior::learn(&design, items, sample_up_to).ok_or(LikesError::Unsettled)?;
            let method = if sample.is_some() { IntervalMethod::Posterior } else { IntervalMethod::Normal };
            let lets_off = best && items <= POSTERIOR_UP_TO;
            return Ok(Self { design, items, top, sample, method, lets_off, level });
        }
        let profile = best && items <= PROFILE_UP_TO;
        let method = if profile { IntervalMethod::Profile } else { IntervalMethod::Normal };
        let top = design.optimum().ok_or(LikesError::Unsettled)?;
        Ok(Self { design, items, top, sample: None, method, lets_off: false, level })
    }

    /// Estimate, standard error and interval of `contrast' theta`. With a learned spread its outer end reaches as far as it would
    /// with the item `standing_out` let off the pull towards the others.
    fn figure(&self, contrast: &[f64], standing_out: Option<usize>) -> Result<(f64, f64, Interval), LikesError> {
        let (value, standard_error, mut interval) = self.pulled(contrast);
        if let Some(item) = standing_out.filter(|_| self.lets_off) {
            let upwards = value > 0.0;
            let end = outer_end(&self.design, self.items, item, contrast, upwards, self.level)?;
            // Without an end (counts near a thousand million) the choices themselves say where the item lies.
            match end {
                Some(end) if upwards => interval.high = interval.high.max(end),
                Some(end) => interval.low = interval.low.min(end),
                None => {}
            }
        }
        Ok((value, standard_error, interval))
    }

    /// The same with all items pulled towards their mean as the prior says.
    fn pulled(&self, contrast: &[f64]) -> (f64, f64, Interval) {
        let level = self.level;
        let at = |theta: &[f64]| contrast.iter().zip(theta).map(|(c, t)| c * t).sum::<f64>();
        if let Some(sample) = &self.sample {
            let values = sample.values(at);
            let (value, standard_error) = sample.moments(&values);
            let (low, high) = sample.ends(&values, level.tail());
            return (value, standard_error, Interval { low, high, level });
        }
        let value = at(&self.top.theta);
        let standard_error = self.top.factor.quadratic(contrast).sqrt();
        let z = level.z();
        let normal = |sign: f64| value + sign * z * standard_error;
        let end = |up: bool| {
            let profile = self.method == IntervalMethod::Profile;
            let followed = if profile { self.design.profile_end(&self.top, contrast, z, up) } else { None };
            // Rounding stops the profile only with counts near a thousand million, where the normal end is as good.
            followed.unwrap_or_else(|| normal(if up { 1.0 } else { -1.0 }))
        };
        let (low, high) = (end(false), end(true));
        (value, standard_error, Interval { low, high, level })
    }

    /// A figure with its normal interval.
    fn normal(&self, value: f64, standard_error: f64) -> (f64, f64, Interval) {
        let half = self.level.z() * standard_error;
        (value, standard_error, Interval { low: value - half, high: value + half, level: self.level })
    }

    fn log_likelihood(&self) -> f64 {
        let Some(sample) = &self.sample else { return self.top.log_likelihood };
        let mut mean = vec![0.0; self.top.theta.len()];
        for (point, weight) in sample.points().zip(&sample.weights) {
            mean.iter_mut().zip(point).for_each(|(m, p)| *m += weight * p);
        }
        self.design.log_likelihood(&mean)
    }

    /// Covariance of the strengths about their mean.
    fn centred_covariance(&self, items: usize) -> Vec<f64> {
        let parameters = self.top.theta.len();
        let mut raw = vec![0.0; items * items];
        match &self.sample {
            Some(sample) => {
                let means: Vec<f64> = (0..items).map(|i| sample.moments(&sample.values(|p| p[i])).0).collect();
                for (point, weight) in sample.points().zip(&sample.weights) {
                    for i in 0..items {
                        for j in 0..items {
                            raw[i * items + j] += weight * (point[i] - means[i]) * (point[j] - means[j]);
                        }
                    }
                }
            }
            None => {
                let inverse = self.top.factor.inverse();
                for i in 0..items {
                    raw[i * items..(i + 1) * items].copy_from_slice(&inverse[i * parameters..i * parameters + items]);
                }
            }
        }
        let n = items as f64;
        let means: Vec<f64> = raw.chunks(items).map(|row| row.iter().sum::<f64>() / n).collect();
        let grand = means.iter().sum::<f64>() / n;
        (0..items * items).map(|at| raw[at] - means[at / items] - means[at % items] + grand).collect()
    }
}

impl ChoiceFit {
    /// Items from the strongest to the weakest (equal ones by index).
    pub fn ranking(&self) -> Vec<usize> {
        let mut order: Vec<usize> = (0..self.strengths.len()).collect();
        order.sort_by(|a, b| self.strengths[*b].value.total_cmp(&self.strengths[*a].value).then(a.cmp(b)));
        order
    }

    /// Covariance of two strengths.
    ///
    /// # Errors
    /// [`LikesError::UnknownItem`].
    pub fn covariance(&self, first: usize, second: usize) -> Result<f64, LikesError> {
        let items = self.strengths.len();
        super::check_item(first, items)?;
        super::check_item(second, items)?;
        Ok(self.covariance[first * items + second])
    }

    /// The posterior sample, if the intervals rest on one.
    pub(super) fn sample(&self) -> Option<&Sample> {
        self.basis.sample.as_ref()
    }

    /// Factor of the covariance, for drawing strengths; the ridge stands for the direction in which they have none.
    pub(super) fn factor(&self) -> Option<Cholesky> {
        let k = self.strengths.len();
        let scale = (0..k).map(|i| self.covariance[i * k + i]).fold(0.0, f64::max).max(1e-12);
        let mut matrix = self.covariance.clone();
        for i in 0..k {
            matrix[i * k + i] += 1e-9 * scale;
        }
        Cholesky::new(&matrix, k)
    }
}

pub(super) fn logistic(x: f64) -> f64 {
    if x >= 0.0 { 1.0 / (1.0 + (-x).exp()) } else { x.exp() / (1.0 + x.exp()) }
}
