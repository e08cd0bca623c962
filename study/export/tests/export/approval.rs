//! Under which approval tables were written.

use study_export::{Approval, ExportError};

#[test]
fn a_folder_is_of_one_approval() {
    let dir = tempfile::tempdir().unwrap();
    let (tables, file) = (dir.path().join("tables"), dir.path().join("tables/approval.txt"));
    let one: Approval = " Board of the Meadow Institute, 12/2026 ".parse().unwrap();
    one.stand_in(&tables).unwrap();
    one.stand_in(&tables).unwrap();
    let said = std::fs::read_to_string(&file).unwrap();
    assert_eq!(said, "Board of the Meadow Institute, 12/2026\n");
    let other: Approval = "Another board, 3".parse().unwrap();
    let refused = other.stand_in(&tables).unwrap_err();
    assert!(matches!(&refused, ExportError::Other { there, .. } if there.contains("12/2026")), "{refused}");
    assert_eq!(std::fs::read_to_string(&file).unwrap(), said, "as it was");
}

#[test]
fn an_approval_is_one_line_that_says_something() {
    let long = "a".repeat(201);
    for wrong in ["", "  ", "two\nlines", &long] {
        assert!(wrong.parse::<Approval>().is_err(), "{wrong}");
    }
}
