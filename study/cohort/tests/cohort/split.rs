//! An answer is the same however the rows are split and however many threads take them in: states merge.

use crate::made::{Answer, Dice, answer, answer_of, tables};
use datafusion::common::ScalarValue;
use study_cohort::*;

/// Sums of numbers with a point may differ in their last digits by the order in which they were added.
fn same(one: &ScalarValue, two: &ScalarValue) -> bool {
    match (one, two) {
        (ScalarValue::Float64(Some(one)), ScalarValue::Float64(Some(two))) => {
            (one - two).abs() <= 1e-12 * one.abs().max(1.0)
        }
        (one, two) => one == two,
    }
}

fn assert_same(one: &Answer, two: &Answer, of: &str) {
    let (one, two) = (one.cells(), two.cells());
    assert_eq!(one.len(), two.len(), "{of}");
    for (a, b) in one.iter().zip(&two) {
        assert!(a.0 == b.0 && same(&a.1, &b.1), "{of}: {a:?} is not {b:?}");
    }
}

#[tokio::test]
async fn parts_taken_in_anywhere_equal_the_whole() {
    let (rows, animals) = tables(40);
    for question in Question::ALL {
        let whole = answer(question, &rows, &animals).await;
        assert!(whole.rows() > 1, "{}: nothing to compare", question.name());
        let mut dice = Dice(3);
        // Rows of one household and one word in any part, out of order: the worst split there is.
        let mut parts = vec![Vec::new(); 5];
        for row in &rows {
            parts[dice.below(5) as usize].push(*row);
        }
        for part in &mut parts {
            part.reverse();
        }
        let parts = parts.iter().map(|part| events_batch(0, part).unwrap()).collect();
        let split = answer_of(config(4), question, parts, &animals).await;
        assert_same(&whole, &split, question.name());
    }
}

#[tokio::test]
async fn rows_handed_on_one_by_one_equal_the_whole() {
    let (rows, animals) = tables(40);
    for question in Question::ALL {
        let whole = answer(question, &rows, &animals).await;
        // At once, the engine gives up gathering groups that do not get fewer and hands states of single rows on.
        let config = config(4)
            .set_u64("datafusion.execution.skip_partial_aggregation_probe_rows_threshold", 0)
            .set_str("datafusion.execution.skip_partial_aggregation_probe_ratio_threshold", "0.0")
            .set_u64("datafusion.execution.batch_size", 64);
        let parts = rows.chunks(700).map(|part| events_batch(0, part).unwrap()).collect();
        let handed_on = answer_of(config, question, parts, &animals).await;
        assert_same(&whole, &handed_on, question.name());
    }
}
