//! Small dense symmetric systems, by Cholesky factorisation.
//!
//! Source: G. H. Golub & C. F. Van Loan, Matrix Computations, 4.2.

/// Lower factor of a symmetric positive definite matrix, row by row.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Cholesky {
    size: usize,
    lower: Vec<f64>,
}

/// Runs `work` with the widest vector instructions the machine has. The sums below add in the same order on all of them,
/// so the answers do not depend on the machine.
fn widest<R>(work: impl FnOnce() -> R) -> R {
    pulp::Arch::new().dispatch(work)
}

/// The sum of eight, in pairs.
#[inline(always)]
fn folded(s: [f64; 8]) -> f64 {
    ((s[0] + s[4]) + (s[1] + s[5])) + ((s[2] + s[6]) + (s[3] + s[7]))
}

/// Sum of products. Eight sums side by side: one alone would wait for each addition before the next.
#[inline(always)]
fn dot(a: &[f64], b: &[f64]) -> f64 {
    let ((a, a_rest), (b, b_rest)) = (a.as_chunks::<8>(), b.as_chunks::<8>());
    let mut sums = [0.0; 8];
    for (a, b) in a.iter().zip(b) {
        for lane in 0..8 {
            sums[lane] += a[lane] * b[lane];
        }
    }
    let rest: f64 = a_rest.iter().zip(b_rest).map(|(a, b)| a * b).sum();
    folded(sums) + rest
}

/// Rows factored together.
const ROWS: usize = 4;

/// [`dot`] of one row with four.
#[inline(always)]
fn dots(one: &[f64], four: [&[f64]; ROWS]) -> [f64; ROWS] {
    let (chunks, rest) = one.as_chunks::<8>();
    let whole = four.map(|row| row.as_chunks::<8>());
    let mut sums = [[0.0; 8]; ROWS];
    for (at, chunk) in chunks.iter().enumerate() {
        for (sum, (row, _)) in sums.iter_mut().zip(&whole) {
            for lane in 0..8 {
                sum[lane] += chunk[lane] * row[at][lane];
            }
        }
    }
    std::array::from_fn(|r| {
        let over: f64 = rest.iter().zip(whole[r].1).map(|(a, b)| a * b).sum();
        folded(sums[r]) + over
    })
}

impl Cholesky {
    /// Factors `matrix` (row-major, `size` squared); `None` if it is not positive definite to working precision.
    pub(crate) fn new(matrix: &[f64], size: usize) -> Option<Self> {
        widest(|| Self::factored(matrix, size))
    }

    #[inline(always)]
    fn factored(matrix: &[f64], size: usize) -> Option<Self> {
        let mut lower = matrix.to_vec();
        // Four rows at a time: each row above is read from memory once for all of them.
        for first in (0..size).step_by(ROWS) {
            let (above, rows) = lower.split_at_mut(first * size);
            let mut rows: Vec<&mut [f64]> = rows.chunks_mut(size).take(ROWS).collect();
            for column in 0..first {
                let other = &above[column * size..column * size + column + 1];
                match rows.as_mut_slice() {
                    [a, b, c, d] => {
                        let sums = dots(&other[..column], [&a[..column], &b[..column], &c[..column], &d[..column]]);
                        for (row, sum) in [a, b, c, d].into_iter().zip(sums) {
                            row[column] = (row[column] - sum) / other[column];
                        }
                    }
                    few => {
                        for row in few {
                            row[column] = (row[column] - dot(&other[..column], &row[..column])) / other[column];
                        }
                    }
                }
            }
            for at in 0..rows.len() {
                let (before, here) = rows.split_at_mut(at);
                let (here, pivot) = (&mut here[0], first + at);
                for (column, other) in (first..).zip(before) {
                    here[column] = (here[column] - dot(&other[..column], &here[..column])) / other[column];
                }
                let left = here[pivot] - dot(&here[..pivot], &here[..pivot]);
                // A pivot that is rounding noise beside its diagonal means a direction without information.
                if !(left > 1e-13 * matrix[pivot * size + pivot].abs() && left.is_finite()) {
                    return None;
                }
                here[pivot] = left.sqrt();
            }
        }
        Some(Self { size, lower })
    }

    /// Solves `L y = v` in place.
    fn forward(&self, v: &mut [f64]) {
        for row in 0..self.size {
            let line = &self.lower[row * self.size..row * self.size + row + 1];
            v[row] = (v[row] - dot(&line[..row], &v[..row])) / line[row];
        }
    }

    /// Solves `A x = v`.
    pub(crate) fn solve(&self, v: &[f64]) -> Vec<f64> {
        let mut x = v.to_vec();
        self.forward(&mut x);
        self.solve_upper(&x)
    }

    /// Solves `L' x = z`: turns independent standard normals into a draw with covariance `A^-1`.
    pub(crate) fn solve_upper(&self, z: &[f64]) -> Vec<f64> {
        let mut x = z.to_vec();
        for row in (0..self.size).rev() {
            x[row] /= self.lower[row * self.size + row];
            let at = x[row];
            for (value, l) in x[..row].iter_mut().zip(&self.lower[row * self.size..row * self.size + row]) {
                *value -= l * at;
            }
        }
        x
    }

    /// `v' A v`.
    pub(crate) fn square_of_upper(&self, v: &[f64]) -> f64 {
        let mut product = vec![0.0; self.size];
        for (row, at) in v.iter().enumerate() {
            for (sum, l) in product.iter_mut().zip(&self.lower[row * self.size..=row * self.size + row]) {
                *sum += l * at;
            }
        }
        product.iter().map(|p| p * p).sum()
    }

    /// Logarithm of the determinant of `A`.
    pub(crate) fn log_determinant(&self) -> f64 {
        2.0 * (0..self.size).map(|i| self.lower[i * self.size + i].ln()).sum::<f64>()
    }

    /// `v' A^-1 v`.
    pub(crate) fn quadratic(&self, v: &[f64]) -> f64 {
        let mut y = v.to_vec();
        self.forward(&mut y);
        y.iter().map(|a| a * a).sum()
    }

    /// The inverse, row-major.
    pub(crate) fn inverse(&self) -> Vec<f64> {
        widest(|| self.inverted())
    }

    #[inline(always)]
    fn inverted(&self) -> Vec<f64> {
        let n = self.size;
        let mut all = vec![0.0; n * n];
        let mut x = vec![0.0; n];
        // Column by column. Above its one a column of the identity stays zero going forward, and symmetry gives what lies
        // above going back.
        for column in 0..n {
            x[column] = 1.0;
            for row in column..n {
                let line = &self.lower[row * n..row * n + row + 1];
                x[row] = (x[row] - dot(&line[column..row], &x[column..row])) / line[row];
            }
            for row in (column..n).rev() {
                let line = &self.lower[row * n..row * n + row + 1];
                x[row] /= line[row];
                let at = x[row];
                x[column..row].iter_mut().zip(&line[column..row]).for_each(|(value, l)| *value -= l * at);
                (all[row * n + column], all[column * n + row]) = (at, at);
            }
            x.fill(0.0);
        }
        all
    }

    /// Factors of a covariance matrix turn independent standard normals into a draw: `L z`.
    pub(crate) fn times(&self, z: &[f64]) -> Vec<f64> {
        (0..self.size)
            .map(|row| self.lower[row * self.size..=row * self.size + row].iter().zip(z).map(|(l, z)| l * z).sum())
            .collect()
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn solves_and_inverts() {
        let a = [4.0, 2.0, 0.4, 2.0, 3.0, 0.5, 0.4, 0.5, 2.0];
        let factor = Cholesky::new(&a, 3).unwrap();
        let x = factor.solve(&[1.0, 2.0, 3.0]);
        for row in 0..3 {
            let product: f64 = (0..3).map(|c| a[row * 3 + c] * x[c]).sum();
            assert!((product - [1.0, 2.0, 3.0][row]).abs() < 1e-12);
        }
        let inverse = factor.inverse();
        let quadratic: f64 = (0..3)
            .map(|r| (0..3).map(|c| [1.0, 2.0, 3.0][r] * inverse[r * 3 + c] * [1.0, 2.0, 3.0][c]).sum::<f64>())
            .sum();
        assert!((factor.log_determinant() - 15.32_f64.ln()).abs() < 1e-12);
        let square: f64 = (0..3).map(|r| (0..3).map(|c| x[r] * a[r * 3 + c] * x[c]).sum::<f64>()).sum();
        assert!((factor.square_of_upper(&x) - square).abs() < 1e-12);
        assert!((factor.quadratic(&[1.0, 2.0, 3.0]) - quadratic).abs() < 1e-12);
        assert!(Cholesky::new(&[1.0, 1.0, 1.0, 1.0], 2).is_none());
    }
    #[test]
    fn inverts_a_matrix_longer_than_the_side_by_side_sums() {
        let n = 21;
        let at = |r: usize, c: usize| 1.0 / (1 + r.abs_diff(c)) as f64 + if r == c { 2.0 + r as f64 } else { 0.0 };
        let a: Vec<f64> = (0..n * n).map(|i| at(i / n, i % n)).collect();
        let inverse = Cholesky::new(&a, n).unwrap().inverse();
        for row in 0..n {
            for column in 0..n {
                let product: f64 = (0..n).map(|k| a[row * n + k] * inverse[k * n + column]).sum();
                let identity = if row == column { 1.0 } else { 0.0 };
                assert!((product - identity).abs() < 1e-13, "{row} {column}: {product}");
            }
        }
    }
}
