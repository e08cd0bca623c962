//! Rehearsals written by hand.

use sayso_sim::rehearsal::{BED, Does, Over, Run, Setup, Told, What};

/// A rehearsal that ends by the clock after `ends_ms`, in which just this happened.
pub fn run(setup: Setup, ends_ms: u32, told: &[(u32, What)]) -> Run {
    Run {
        setup,
        over: (ends_ms, Over::Time),
        begins_at: BED,
        told: told.iter().map(|&(at_ms, what)| Told { at_ms, what }).collect(),
        motions: Vec::new(),
        likes: [0.0; 4],
        traits: setup.character.traits(),
        pairings: Vec::new(),
        logits: ([0.0; 4], [0.0; 4]),
        demand: [1.0; 4],
        shut: (None, None),
        stays: true,
    }
}

/// Something that the person does.
pub fn you(does: Does) -> What {
    What::Person(does)
}
