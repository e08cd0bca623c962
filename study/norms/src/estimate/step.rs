//! One step of a curve between two places of a grid.

/// Nearest to 1 that the part may be that is gone.
const NEAR: f64 = 1e-6;

/// What is left of a step, as a share of what was left before it.
pub struct Step {
    /// The share.
    pub survived: f64,
    /// Of its logarithm, the derivative by how many were left before, the others kept.
    pub by_left: f64,
    /// By how many came.
    pub by_came: f64,
    /// By of how many the watching ended.
    pub by_ended: f64,
}

impl Step {
    /// Of so many `left`, so many `came`, and of so many the watching `ended`, in an even ratio all through the step: Chiang's (1968) estimate, by
    /// which who has neither is to the power of the part that came. Without who ended it is Kaplan and Meier's. Taken for half watched, as in
    /// a life table, they make too little of a step in which many come and many end (Breslow and Crowley 1974).
    pub fn new(left: f64, came: f64, ended: f64) -> Self {
        let gone = ((came + ended) / left).min(1.0 - NEAR);
        // -ln(1 - gone) / gone and its derivative, which noise may ask for at 0 and below.
        let (rate, slope) = if gone.abs() < 1e-4 {
            (1.0 + gone / 2.0 + gone * gone / 3.0, 0.5 + 2.0 * gone / 3.0)
        } else {
            let log = (-gone).ln_1p();
            (-log / gone, (gone / (1.0 - gone) + log) / (gone * gone))
        };
        let came = came / left;
        Self {
            survived: (-came * rate).exp(),
            by_left: came * (rate + slope * gone) / left,
            by_came: -(rate + came * slope) / left,
            by_ended: -came * slope / left,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn even_hazards_are_found_whatever_they_are() {
        for (press, end) in [(0.1, 0.0), (0.7, 0.7), (2.0, 0.5), (0.2, 3.0)] {
            let both: f64 = press + end;
            let gone = 1_000.0 * -(-both).exp_m1();
            let step = Step::new(1_000.0, gone * press / both, gone * end / both);
            assert!((step.survived.ln() + press).abs() < 1e-9, "{press}, {end}: {}", step.survived);
        }
        // Without who ended it is Kaplan and Meier's, with Greenwood's derivative.
        let step = Step::new(50.0, 10.0, 0.0);
        assert!((step.survived - 0.8).abs() < 1e-12 && (step.by_left - 10.0 / (50.0 * 40.0)).abs() < 1e-12);
    }

    #[test]
    fn derivatives_are_those_of_the_estimate() {
        for (left, came, ended) in [(80.0, 30.0, 20.0), (80.0, -6.0, 9.0), (80.0, 3.0, -3.000_1), (80.0, 60.0, 15.0)] {
            let (step, by) = (Step::new(left, came, ended), 1e-5);
            let slope = |a: Step, b: Step| (a.survived.ln() - b.survived.ln()) / (2.0 * by);
            let of = [
                (step.by_left, slope(Step::new(left + by, came, ended), Step::new(left - by, came, ended))),
                (step.by_came, slope(Step::new(left, came + by, ended), Step::new(left, came - by, ended))),
                (step.by_ended, slope(Step::new(left, came, ended + by), Step::new(left, came, ended - by))),
            ];
            assert!(of.iter().all(|(told, found)| (told - found).abs() < 1e-6), "{left} {came} {ended}: {of:?}");
        }
    }
}
