//! Labels out of names typed by hand, in languages that put the noun first.

use sayso_methods::words::labels_for;
use sayso_model::Language::{Es, Fr, Pt};

#[test]
fn where_the_noun_comes_first_nothing_after_it_is_proposed() {
    for (name, language, label) in [
        ("Pavo cocido", Es, "pavo"),
        ("Ternera magra cocida", Es, "ternera"),
        ("zanahoria fresca", Es, "zanahoria"),
        ("Poivron rouge", Fr, "poivron"),
        ("cenoura crua", Pt, "cenoura"),
        ("Tira y afloja", Es, "tira"),
        ("tira de pollo", Es, "pollo"),
        ("Dar la pata", Es, "pata"),
        ("Donner la patte", Fr, "patte"),
        ("dar a pata", Pt, "pata"),
    ] {
        assert_eq!(labels_for(name, language), [label], "{name}");
    }
}
