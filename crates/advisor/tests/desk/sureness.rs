//! Words of sureness are those of the laboratory's figures.

use sayso_advisor::Sure;
use sayso_advisor::desk::{About, Claim, MEASURED, sure};
use sayso_advisor::stuck::Cause;

const RESULTS: &str = include_str!("../../../../docs/lab/results-desk.md");

/// What the laboratory calls the trouble that a claim tells of.
fn row(claim: Claim) -> &'static str {
    match claim {
        Claim::Of(About::Change) => "SuddenDrop",
        Claim::Of(About::Silent) => "Silent",
        Claim::Of(About::Ration) => "Overfed",
        Claim::Of(About::Ready) => "ReadyNotInvited",
        Claim::HeldBy(Cause::Avoided) => "AvoidedButton",
        Claim::HeldBy(Cause::TooLate) => "LateDelivery",
        Claim::HeldBy(Cause::NotWanted) => "RewardNotWanted",
        Claim::HeldBy(Cause::TooLittle) => "TooLittleShowing",
        Claim::HeldBy(Cause::PeopleDiffer) => "PeopleDiffer",
        Claim::HeldBy(Cause::SoundsAlike) => "SoundsAlike",
        other => panic!("{other:?} is not in the tables"),
    }
}

#[test]
fn the_table_of_precision_is_that_of_the_laboratory() {
    for (claim, right, told) in MEASURED {
        let row = row(claim);
        let lead = format!("| {row}: of homes told so, so |");
        let line = RESULTS.lines().find(|line| line.starts_with(&lead)).unwrap_or_else(|| panic!("{row}"));
        let cells: Vec<&str> = line.split('|').map(str::trim).collect();
        let share = format!("{:.1} %", 100.0 * right as f64 / told as f64);
        assert!(cells[3].starts_with(&share) && cells[4] == told.to_string(), "{claim:?}: {share} of {told}: {line}");
    }
}

#[test]
fn what_was_right_more_often_is_never_called_less_sure() {
    for (claim, right, told) in MEASURED {
        for (other, its_right, its_told) in MEASURED {
            let more = right as f64 / told as f64 > its_right as f64 / its_told as f64 && told >= its_told;
            assert!(!more || sure(claim) >= sure(other), "{claim:?} beside {other:?}");
        }
    }
    assert_eq!(sure(Claim::HeldBy(Cause::SoundsAlike)), Some(Sure::Very), "right in 37 of 37");
    assert_eq!(sure(Claim::HeldBy(Cause::TooLittle)), Some(Sure::Little), "right in 27 of 34");
    assert_eq!(sure(Claim::Of(About::Leaves)), None, "not measured");
}
