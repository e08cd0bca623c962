//! Every kind of event comes back from the log exactly as it went in.

use sayso_model::{Event, Kind};
use std::collections::BTreeSet;

#[test]
fn every_kind_of_event_survives_json() {
    let mut kinds = BTreeSet::new();
    for event in sayso_sim::samples() {
        kinds.insert(event.body.kind());
        let json = serde_json::to_string(&event).unwrap();
        let back: Event = serde_json::from_str(&json).unwrap_or_else(|e| panic!("{e} in {json}"));
        assert_eq!(back, event);
    }
    assert_eq!(kinds.len(), Kind::ALL.len());
}
