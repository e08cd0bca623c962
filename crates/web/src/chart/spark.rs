//! A trend in one line: a bar a week, small enough to stand in a row of words.

use maud::{Markup, html};

/// Height of the tallest bar and width of one, in units of about a pixel.
const HEIGHT: usize = 24;
const WIDTH: usize = 7;
const GAP: usize = 2;

/// A bar for each count, oldest first; `says` tells it in words. A week without anything is a thin line, so that nothing looks
/// like something missing.
#[must_use]
pub fn spark(counts: &[usize], says: &str) -> Markup {
    spark_of(counts, &[], says)
}

/// What the height of the tallest bar stands for.
#[must_use]
pub fn tallest(counts: &[usize], of: &[usize]) -> usize {
    counts.iter().chain(of).copied().max().unwrap_or(0).max(1)
}

/// The same of counts that are parts of others: the whole stands pale behind each.
#[must_use]
pub fn spark_of(counts: &[usize], of: &[usize], says: &str) -> Markup {
    let most = tallest(counts, of);
    let across = counts.len() * (WIDTH + GAP) - GAP.min(counts.len());
    html! {
        svg.spark role="img" aria-label=(says) viewBox=(format!("0 0 {across} {HEIGHT}")) width=(across) height=(HEIGHT) {
            @for (i, count) in counts.iter().enumerate() {
                @let height = high(*count, most);
                @if let Some(whole) = of.get(i).map(|whole| high(*whole, most)).filter(|whole| *whole > height) {
                    rect.whole x=(i * (WIDTH + GAP)) y=(HEIGHT - whole) width=(WIDTH) height=(whole) {}
                }
                rect.bar.last[i + 1 == counts.len()] x=(i * (WIDTH + GAP)) y=(HEIGHT - height) width=(WIDTH) height=(height) {}
            }
        }
    }
}

/// How high a bar is.
fn high(count: usize, most: usize) -> usize {
    if count == 0 { 1 } else { (count * HEIGHT).div_ceil(most).max(3) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bars_are_as_tall_as_their_counts() {
        let drawn = spark(&[0, 2, 4], "0, 2, 4").0;
        let heights: Vec<&str> = drawn.split(" height=\"").skip(2).filter_map(|p| p.split('"').next()).collect();
        assert_eq!(heights, ["1", "12", "24"]);
        let drawn = spark_of(&[0, 2], &[4, 2], "").0;
        let heights: Vec<&str> = drawn.split(" height=\"").skip(2).filter_map(|p| p.split('"').next()).collect();
        assert_eq!((heights, tallest(&[0, 2], &[4, 2])), (vec!["24", "1", "12"], 4), "the whole behind its part");
        assert!(spark(&[], "").0.contains("svg"), "nothing is drawn, and nothing fails");
    }
}
