//! Rows made by hand, and noise that writes down what it was given.

use sayso_model::Species;
use sayso_norms::{
    AgeBand, DayPart, MadeBy, Often, People, StageWait, Stretch, StudyName, SummaryRow, TimedStage, WeekPresses,
    WordKind,
};
use study_norms::{NoNoise, Noise, Noisy, Order};

/// A household's row: pressed after 10 showings and 3 days.
pub fn row(household: &str, learner: u8, word: u16) -> SummaryRow {
    SummaryRow {
        form: SummaryRow::FORM,
        household: StudyName::new(household).unwrap(),
        learner,
        word,
        species: Species::Dog,
        age_band: AgeBand::UnderTwo,
        word_kind: WordKind::Play,
        exposures: 10,
        pressed: true,
        days: 3,
        watched: 60,
        invited: 20,
        joined: 10,
        hours: Some(DayPart::of_hour(18)),
        stage: Some(StageWait { stage: TimedStage::Show, days: 30, moved_on: true }),
        week: Some(WeekPresses { from: Stretch::ALL[1], pressed: Often::Some }),
    }
}

/// A release for trying.
pub fn order(name: &str, club: Option<&str>) -> Order {
    Order {
        name: name.to_owned(),
        made: "2026-11-27".parse().unwrap(),
        people: People::SelfChosen,
        club: club.map(str::to_owned),
        made_by: MadeBy { command: "study".to_owned(), program: "study".to_owned(), program_sha256: "0".repeat(64) },
    }
}

/// Gives, whatever it is given, what a rule says of the number of counts; and keeps what it was given.
pub struct Kept<F> {
    pub given: Vec<(Vec<i64>, u32, f64)>,
    pub says: F,
}

impl<F: FnMut(usize, &[i64]) -> Vec<i64>> Noise for Kept<F> {
    fn add(&mut self, counts: Vec<i64>, sensitivity: u32, scale: f64) -> Result<Noisy, NoNoise> {
        let said = (self.says)(self.given.len(), &counts);
        self.given.push((counts, sensitivity, scale));
        Ok(Noisy { counts: said, loss: f64::from(sensitivity) / scale })
    }
}
