//! What a year may cost.

use sayso_model::Day;
use study_norms::files::{FileFault, enter};
use study_norms::{Ledger, LedgerFault, Loss};

fn day(text: &str) -> Day {
    text.parse().unwrap()
}

fn loss(text: &str) -> Option<Loss> {
    Some(text.parse().unwrap())
}

fn refused(why: Result<(), FileFault>) -> LedgerFault {
    match why {
        Err(FileFault::Budget { why, .. }) => why,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_release_that_would_go_over_is_refused_until_a_year_is_over() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("budget.jsonl");
    let ask = |on: &str, name: &str, epsilon: &str| enter(&file, (day(on), name), loss(epsilon), None);
    ask("2026-01-10", "first", "0.6").unwrap();
    // Again with another seed, or another name, is another release.
    assert!(matches!(refused(ask("2026-01-10", "first", "0.1")), LedgerFault::Again(_)));
    assert!(matches!(refused(ask("2026-01-11", "second", "0.401")), LedgerFault::Over { .. }));
    ask("2026-01-11", "second", "0.4").unwrap();
    assert!(matches!(refused(ask("2027-01-09", "third", "0.001")), LedgerFault::Over { .. }));
    assert!(matches!(refused(ask("2025-06-01", "earlier", "0.5")), LedgerFault::Backwards { .. }));
    ask("2027-01-10", "third", "0.6").unwrap();
    assert!(matches!(refused(ask("2027-01-10", "fourth", "0.001")), LedgerFault::Over { .. }));
    let ledger = Ledger::read(&std::fs::read_to_string(&file).unwrap()).unwrap();
    assert_eq!(ledger.entries().iter().map(|e| e.name.as_str()).collect::<Vec<_>>(), ["first", "second", "third"]);
    // More than a year may cost is refused at once.
    assert!(matches!(
        refused(enter(&dir.path().join("new"), (day("2026-01-01"), "a"), loss("1.001"), None)),
        LedgerFault::Over { .. }
    ));
}

#[test]
fn a_club_has_one_release_without_noise_a_year() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("budget.jsonl");
    let ask = |on: &str, name: &str, club: &str| enter(&file, (day(on), name), None, Some(club));
    ask("2026-01-10", "a", "One").unwrap();
    ask("2026-01-10", "b", "Other").unwrap();
    assert!(matches!(refused(ask("2026-12-31", "c", "One")), LedgerFault::Often { .. }));
    ask("2027-01-10", "c", "One").unwrap();
}

#[test]
fn a_line_taken_out_altered_or_cut_is_found() {
    let mut text = String::new();
    for (on, name) in [("2026-01-10", "a"), ("2026-02-10", "b"), ("2026-03-10", "c")] {
        text += &Ledger::read(&text).unwrap().enter(day(on), name, loss("0.1"), None).unwrap();
    }
    let lines: Vec<&str> = text.split_inclusive('\n').collect();
    assert!(matches!(Ledger::read(&[lines[0], lines[2]].concat()), Err(LedgerFault::Altered { line: 2 })));
    assert!(matches!(Ledger::read(&text.replacen("0.1", "0.01", 1)), Err(LedgerFault::Altered { line: 2 })));
    assert!(matches!(Ledger::read(text.trim_end()), Err(LedgerFault::Cut { line: 3 })));
    assert!(matches!(Ledger::read(&text.replacen("form", "Form", 1)), Err(LedgerFault::Form { line: 1, .. })));
    for end in 0..text.len() {
        // Whatever is cut off: an answer, no panic; and never a whole ledger unless it ends with a line.
        let read = Ledger::read(&text[..end]);
        assert_eq!(read.is_ok(), end == 0 || text[..end].ends_with('\n'), "{end}");
    }
}

#[test]
fn releases_at_the_same_moment_do_not_share_the_budget() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("budget.jsonl");
    let went: usize = std::thread::scope(|scope| {
        let ask = |n: u32| {
            let file = &file;
            scope.spawn(move || enter(file, (day("2026-01-10"), &format!("r{n}")), loss("0.3"), None).is_ok())
        };
        let all: Vec<_> = (0..12).map(ask).collect();
        all.into_iter().map(|one| usize::from(one.join().unwrap())).sum()
    });
    assert_eq!(went, 3);
}
