//! What is said of a word beside those of others.

use sayso_advisor::others::{TookMore, beside, first_words, taking_part, usual};
use sayso_advisor::summary::Summary;
use sayso_model::{Species, WordId};
use sayso_norms::{AgeBand, NotEnough, Question, Release, StudyName, SummaryRow, WordKind};
use uuid::Uuid;

fn release() -> Release {
    Release::read(include_str!("../../../../tests/norms/invented.sayso-norms")).unwrap()
}

fn waiting(exposures: u32) -> SummaryRow {
    SummaryRow {
        form: SummaryRow::FORM,
        household: StudyName::new("here").unwrap(),
        learner: 0,
        word: 1,
        species: Species::Dog,
        age_band: AgeBand::Unknown,
        word_kind: WordKind::Exploring,
        exposures,
        pressed: false,
        days: 9,
        watched: 9,
        invited: 4,
        joined: 3,
        hours: None,
        stage: None,
        week: None,
    }
}

fn told(exposures: u32, pressed: bool) -> Option<(TookMore, u32)> {
    let (release, row) = (release(), SummaryRow { pressed, ..waiting(exposures) });
    let summaries = [Summary { word: WordId(Uuid::nil()), row }];
    usual(&release, &summaries).map(|told| (told.part, told.row.exposures))
}

#[test]
fn today_speaks_of_others_only_while_a_good_part_of_them_took_longer() {
    let release = release();
    let curve = beside(&release, Question::ShowingsToFirstPress, &waiting(1)).unwrap().curve;
    let low = |quantile: sayso_norms::Quantile| quantile.low.unwrap() as u32;
    let (half, quarter) = (low(curve.quantiles.p50), low(curve.quantiles.p75));
    assert!(5 < half && half < quarter, "{half} {quarter}");
    assert_eq!(told(4, false), None, "nobody waits yet");
    assert_eq!(told(half - 1, false), Some((TookMore::Half, half - 1)));
    assert_eq!(told(half, false), Some((TookMore::Quarter, half)));
    assert_eq!(told(quarter, false), None, "it would not help");
    assert_eq!(told(half - 1, true), None, "it was pressed");
}

#[test]
fn an_animal_of_a_species_that_nobody_told_of_stands_beside_nobody() {
    let (release, parrot) = (release(), SummaryRow { species: Species::Parrot, ..waiting(9) });
    assert_eq!(beside(&release, Question::ShowingsToFirstPress, &parrot), Err(NotEnough));
    assert_eq!(taking_part(&release, &parrot), Err(NotEnough));
    assert_eq!(first_words(&release, &parrot), Err(NotEnough));
    assert!(taking_part(&release, &waiting(9)).is_ok() && first_words(&release, &waiting(9)).is_ok());
}
