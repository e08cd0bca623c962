//! Tables made for tests, and answers read out of them.

use datafusion::arrow::array::{Array, RecordBatch};
use datafusion::catalog::MemTable;
use datafusion::common::ScalarValue;
use datafusion::prelude::{DataFrame, SessionConfig, SessionContext};
use std::sync::Arc;
use study_cohort::*;

/// A number that goes on to look random: Knuth's multiplier, high bits.
pub struct Dice(pub u64);

impl Dice {
    pub fn below(&mut self, n: u32) -> u32 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        ((self.0 >> 33) % u64::from(n)) as u32
    }
}

/// Some households in which everything there is happens.
pub fn tables(households: u32) -> (Vec<Row>, Vec<Animal>) {
    let mut dice = Dice(7);
    let (mut rows, mut animals) = (Vec::new(), Vec::new());
    for household in 0..households {
        for animal in 0..=u8::from(dice.below(4) == 0) {
            let species = ["dog", "cat"][dice.below(2) as usize];
            let age_band = AgeBand::ALL[dice.below(3) as usize];
            let mut until_s = 0;
            for _ in 0..150 + dice.below(100) {
                let at_s = dice.below(90 * 86_400) as i32;
                let word = dice.below(3) as u16;
                let kind = Kind::ALL[dice.below(Kind::ALL.len() as u32) as usize];
                until_s = until_s.max(at_s);
                rows.push(Row {
                    word: (kind != Kind::Session).then_some((word, WordKind::ALL[usize::from(word)])),
                    by: Some(By::ALL[dice.below(3) as usize]),
                    outcome: match kind {
                        Kind::Invitation => {
                            Some([Outcome::Right, Outcome::Wrong, Outcome::Nothing][dice.below(3) as usize])
                        }
                        Kind::Stage => {
                            Some([Outcome::Show, Outcome::Invite, Outcome::Converse][dice.below(3) as usize])
                        }
                        _ => None,
                    },
                    joined: (dice.below(5) > 0).then(|| dice.below(3) > 0),
                    tenths: (dice.below(5) > 0).then(|| dice.below(3000)),
                    ..Row::new(household, animal, at_s, (dice.below(24)) as u8, kind)
                });
            }
            animals.push(Animal { household, animal, species, age_band, until_s });
        }
    }
    rows.sort_unstable();
    (rows, animals)
}

/// A table in memory, in so many parts.
pub fn frame(context: &SessionContext, parts: Vec<RecordBatch>) -> DataFrame {
    let schema = parts[0].schema();
    let table = MemTable::try_new(schema, parts.into_iter().map(|part| vec![part]).collect()).unwrap();
    context.read_table(Arc::new(table)).unwrap()
}

/// The answer to a question from rows that lie in one part.
pub async fn answer(question: Question, rows: &[Row], animals: &[Animal]) -> Answer {
    let parts = vec![events_batch(0, rows).unwrap()];
    answer_of(config(1), question, parts, animals).await
}

/// The answer from rows in several parts.
pub async fn answer_of(
    config: SessionConfig,
    question: Question,
    parts: Vec<RecordBatch>,
    animals: &[Animal],
) -> Answer {
    let context = SessionContext::new_with_config(config);
    let events = frame(&context, parts);
    let animals = frame(&context, vec![animals_batch(0, animals).unwrap()]);
    Answer(ask(question, events, animals).unwrap().collect().await.unwrap())
}

/// An answer, to be looked into.
pub struct Answer(pub Vec<RecordBatch>);

impl Answer {
    pub fn rows(&self) -> usize {
        self.0.iter().map(RecordBatch::num_rows).sum()
    }

    /// All of it, row by row.
    pub fn cells(&self) -> Vec<(String, ScalarValue)> {
        let mut cells = Vec::new();
        for batch in &self.0 {
            for row in 0..batch.num_rows() {
                for (field, column) in batch.schema().fields().iter().zip(batch.columns()) {
                    cells.push((field.name().clone(), ScalarValue::try_from_array(column, row).unwrap()));
                }
            }
        }
        cells
    }

    /// A number of a row; none where there is none.
    pub fn number(&self, row: usize, column: &str) -> Option<f64> {
        let (mut at, mut row) = (0, row);
        while row >= self.0[at].num_rows() {
            row -= self.0[at].num_rows();
            at += 1;
        }
        let column = self.0[at].column_by_name(column).unwrap_or_else(|| panic!("no column {column}"));
        let number =
            datafusion::arrow::compute::cast(column, &datafusion::arrow::datatypes::DataType::Float64).unwrap();
        let number = number.as_any().downcast_ref::<datafusion::arrow::array::Float64Array>().unwrap();
        number.is_valid(row).then(|| number.value(row))
    }
}
