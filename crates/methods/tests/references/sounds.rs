//! How alike words sound against reference values (tests/reference/phonetics.json), and under any input.

use crate::read::cases;
use proptest::prelude::*;
use sayso_methods::words::*;
use sayso_model::Language;
use serde_json::Value;

fn phonemes(value: &Value) -> Vec<Phoneme> {
    let name = |n: &Value| Phoneme::from_arpabet(n.as_str().unwrap()).unwrap_or_else(|| panic!("no sound {n}"));
    value.as_array().unwrap().iter().map(name).collect()
}

#[test]
fn every_reference_case_holds() {
    for case in &cases("phonetics.json") {
        assert!(case["expected"].get("pairs").is_some(), "a case nobody checks: {}", case["name"]);
        for (name, ipa) in case["input"]["arpabet_to_ipa"].as_object().unwrap() {
            assert_eq!(Phoneme::from_arpabet(name).unwrap().ipa(), ipa.as_str().unwrap(), "{name}");
        }
        let (mut ours, mut theirs) = (Vec::new(), Vec::new());
        for pair in case["expected"]["pairs"].as_array().unwrap() {
            let (a, b) = (phonemes(&pair["arpabet_a"]), phonemes(&pair["arpabet_b"]));
            let names = [pair["a"].as_str().unwrap(), pair["b"].as_str().unwrap()];
            assert_eq!(pronunciation(names[0]).as_ref(), Some(&a), "{}", names[0]);
            assert_eq!(pronunciation(names[1]).as_ref(), Some(&b), "{}", names[1]);
            assert_eq!(phoneme_edits(&a, &b) as u64, pair["phoneme_edits"].as_u64().unwrap(), "{names:?}");
            ours.push(sound_distance(&a, &b));
            theirs.push(pair["hamming_feature_edit"].as_f64().unwrap());
        }
        let tau = tau_b(&ours, &theirs);
        assert!(tau >= 0.8, "{}: tau-b {tau}", case["name"]);
    }
}

/// Kendall's tau-b of two lists, from its definition.
fn tau_b(x: &[f64], y: &[f64]) -> f64 {
    let sign = |a: f64, b: f64| f64::from(i8::from(a > b) - i8::from(a < b));
    let pairs = (0..x.len()).flat_map(|i| (0..i).map(move |j| (sign(x[i], x[j]), sign(y[i], y[j]))));
    let (both, of_x, of_y) = pairs.fold((0.0, 0.0, 0.0), |sum, (a, b)| (sum.0 + a * b, sum.1 + a * a, sum.2 + b * b));
    both / f64::sqrt(of_x * of_y)
}

// Differing sounds are never more than there are.
fn within(heard: Heard) -> bool {
    match heard {
        Heard::Differ { edits, of } => 0 < edits && edits <= of,
        Heard::Same | Heard::Nothing => true,
    }
}

proptest! {
    #[test]
    fn any_labels_can_be_compared(a in ".{0,24}", b in ".{0,24}", language in proptest::sample::select(&Language::ALL[..])) {
        let found = alike(&a, &b, language, AlikeRule::default());
        prop_assert!(found.apart.is_finite() && (0.0..=1.0).contains(&found.apart));
        prop_assert!(within(found.heard));
        let back = alike(&b, &a, language, AlikeRule::default());
        prop_assert_eq!((found.heard, found.too_alike), (back.heard, back.too_alike));
    }
}
