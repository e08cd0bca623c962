//! The day's food allowance against reference values (tests/reference/ration.json), and under absurd input.

use crate::read::file;
use proptest::prelude::*;
use sayso_methods::ration::*;
use sayso_model::{Grams, Kcal, Kilograms, LifeStage, Species};
use serde_json::Value;

fn reference() -> Value {
    file("ration.json")
}

// Any animal the program has no entry for is `Other`, as in the program.
fn species(name: &str) -> Species {
    Species::ALL.into_iter().find(|s| s.name() == name).unwrap_or(Species::Other)
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("a number, not {value}"))
}

fn close(name: &str, found: f64, expected: &Value, tolerance: f64) {
    let expected = number(expected);
    assert!((found - expected).abs() <= tolerance, "{name}: {found}, expected {expected}");
}

fn kg(input: &Value) -> Kilograms {
    Kilograms::new(number(&input["kg"])).unwrap()
}

/// Whole pieces in a budget of which nothing was eaten yet.
fn whole(budget: Kcal, piece: Kcal) -> Result<u32, PieceRefusal> {
    left_today::<u8>(budget, &[]).pieces(piece)
}

#[test]
fn every_reference_case_holds() {
    let reference = reference();
    let cases = reference["cases"].as_array().unwrap();
    assert!(!cases.is_empty());
    for case in cases {
        let (name, input, expected) = (case["name"].as_str().unwrap(), &case["input"], &case["expected"]);
        let tolerance = case["tolerance"].as_f64().unwrap_or(0.0);
        if name.starts_with("resting energy") {
            let kcal = resting_energy(species(input["species"].as_str().unwrap()), kg(input)).unwrap();
            close(name, kcal.get(), &expected["kcal_per_day"], tolerance);
        } else if name.starts_with("life-stage factors") {
            factors_match(name, expected, tolerance);
        } else if name.starts_with("puppy factors") {
            puppies_match(name, &input["grown_kg"], expected, tolerance);
        } else if name.starts_with("pieces a day") {
            let resting = resting_energy(species(input["species"].as_str().unwrap()), kg(input)).unwrap();
            let day = Kcal::new(resting.get() * number(&input["factor"])).unwrap();
            close(name, day.get(), &expected["day_kcal"], tolerance);
            let share = RewardShare::new(number(&input["share"])).unwrap();
            let budget = Kcal::new(day.get() * share.get()).unwrap();
            close(name, budget.get(), &expected["reward_kcal"], tolerance);
            let pieces = whole(budget, Kcal::new(number(&input["kcal_per_piece"])).unwrap()).unwrap();
            assert_eq!(u64::from(pieces), expected["pieces"].as_u64().unwrap(), "{name}");
        } else if name == "no formula" {
            for other in input["species"].as_array().unwrap() {
                refused_but_typed_in_accepted(species(other.as_str().unwrap()));
            }
        } else if name.starts_with("kcal per gram") {
            let table = expected.as_object().unwrap();
            for (food, value) in table {
                let found = food_energy(food).unwrap_or_else(|| panic!("no figure for {food}"));
                close(food, found.kcal_per_gram, value, tolerance);
            }
            assert_eq!(FOODS.len(), table.len(), "a food without a reference value");
        } else {
            panic!("a case nobody checks: {name}");
        }
    }
}

fn factors_match(name: &str, expected: &Value, tolerance: f64) {
    let mut seen = 0;
    for (animal, stages) in expected.as_object().unwrap() {
        for (stage, times) in stages.as_object().unwrap() {
            let stage = LifeStage::ALL.into_iter().find(|s| s.name() == stage).unwrap_or_else(|| panic!("{stage}"));
            let found = life_stage_factor(species(animal), stage, Kilograms::new(4.0).unwrap(), None).unwrap();
            close(name, found.times, times, tolerance);
            seen += 1;
        }
    }
    assert_eq!(seen, FACTORS.len(), "a factor without a reference value");
}

fn puppies_match(name: &str, grown_kg: &Value, expected: &Value, tolerance: f64) {
    let grown = Kilograms::new(number(grown_kg)).unwrap();
    for case in expected.as_array().unwrap() {
        let puppy = puppy(number(&case["kg"]), Some(grown.get()));
        let allowance = day_allowance(&puppy).unwrap();
        let Basis::Formula { factor, .. } = allowance.basis else { panic!("{name}: {:?}", allowance.basis) };
        close(name, factor, &case["times"], 0.0);
        close(name, allowance.day.get(), &case["day_kcal"], tolerance);
        assert!(allowance.cautions.contains(&Caution::Growing));
        // The earlier names by age are one stage now: age no longer decides.
        for stage in [LifeStage::PuppyUnder4Months, LifeStage::PuppyOver4Months] {
            assert_eq!(day_allowance(&Animal { stage: Some(stage), ..puppy }), Ok(allowance.clone()));
        }
    }
}

fn puppy(kg: f64, grown: Option<f64>) -> Animal {
    Animal {
        species: Species::Dog,
        weight: Kilograms::new(kg).ok(),
        grown_weight: grown.map(|g| Kilograms::new(g).unwrap()),
        stage: Some(LifeStage::Puppy),
        typed_in: None,
    }
}

#[test]
fn a_puppy_whose_grown_weight_is_unknown_or_passed_is_refused_never_guessed() {
    assert_eq!(day_allowance(&puppy(8.0, None)), Err(Refusal::NoGrownWeight));
    assert!(Refusal::NoGrownWeight.to_string().contains("type it in"));
    assert_eq!(day_allowance(&puppy(31.0, Some(30.0))), Err(Refusal::Outgrown { kg: 31.0, grown: 30.0 }));
    assert!(matches!(day_allowance(&puppy(8.0, Some(1000.0))), Err(Refusal::Weight { .. })));
    let typed_in = Animal { typed_in: Kcal::new(900.0).ok(), ..puppy(8.0, None) };
    assert_eq!(day_allowance(&typed_in).unwrap().day.get(), 900.0);
}

#[test]
fn a_slimming_dog_gets_four_fifths_of_resting_energy_at_its_target_weight() {
    let dog = Animal { stage: Some(LifeStage::WeightLoss), ..puppy(20.0, None) };
    assert!((day_allowance(&dog).unwrap().day.get() - 529.615).abs() < 0.01);
}

#[test]
fn every_food_says_where_its_figure_was_confirmed() {
    for food in FOODS {
        assert!(food.status.starts_with("confirmed") && food.ndb.len() == 5, "{food:?}");
    }
    assert!(food_energy("salmon_farmed_cooked").is_some(), "wild salmon has less: the name says which");
}

fn refused_but_typed_in_accepted(species: Species) {
    let mut animal = Animal { species, stage: Some(LifeStage::NeuteredAdult), ..puppy(4.0, None) };
    assert_eq!(day_allowance(&animal), Err(Refusal::NoFormula(species)));
    assert!(Refusal::NoFormula(species).to_string().contains("ask a veterinarian"));
    animal.typed_in = Kcal::new(120.0).ok();
    let allowance = day_allowance(&animal).unwrap();
    assert_eq!((allowance.day.get(), allowance.basis, allowance.range), (120.0, Basis::TypedIn, None));
    assert!(allowance.cautions.contains(&Caution::TypedIn));
}

#[test]
fn the_range_is_threefold_and_holds_the_figure() {
    let range = individual_range(Kcal::new(900.0).unwrap());
    assert!(range.low < 900.0 && 900.0 < range.high);
    assert!((range.high / range.low - 3.0).abs() < 1e-12);
}

#[test]
fn growing_and_slimming_animals_carry_their_caution() {
    let cat = |stage| Animal { species: Species::Cat, stage: Some(stage), ..puppy(2.0, None) };
    assert!(day_allowance(&cat(LifeStage::Kitten)).unwrap().cautions.contains(&Caution::Growing));
    assert!(day_allowance(&cat(LifeStage::WeightLoss)).unwrap().cautions.contains(&Caution::WeightLoss));
    assert!(matches!(day_allowance(&cat(LifeStage::Puppy)), Err(Refusal::Stage { .. })));
}

#[test]
fn the_running_total_is_over_everyone_and_says_by_how_much_it_is_over() {
    let piece = Kcal::new(3.5).unwrap();
    let mut feeds: Vec<Feed<u8>> = (0..32).map(|i| Feed { person: Some(i % 2), kcal: Some(piece) }).collect();
    let budget = Kcal::new(113.772).unwrap();
    let left = left_today(budget, &feeds);
    assert_eq!((left.pieces(piece).unwrap(), left.over_by_kcal, left.n), (0, 0.0, 32));
    assert!(left.left_kcal > 1.0);
    assert_eq!(left.by_person.iter().map(|t| t.n).collect::<Vec<_>>(), [16, 16]);
    feeds.push(Feed { person: None, kcal: Some(piece) });
    feeds.push(Feed { person: None, kcal: None });
    let over = left_today(budget, &feeds);
    assert!((over.over_by_kcal - (33.0 * 3.5 - 113.772)).abs() < 1e-9);
    assert_eq!((over.left_kcal, over.unknown), (0.0, 1));
    let none = left_today::<u8>(budget, &[]);
    assert_eq!((none.n, none.pieces(piece).unwrap()), (0, 32));
}

#[test]
fn exact_multiples_lose_no_piece_to_rounding() {
    for pieces in 1..=300_u32 {
        for kcal in [0.1, 0.3, 0.7, 1.1, 3.3] {
            let day = f64::from(pieces) * kcal * 10.0;
            let budget = Kcal::new(day * RewardShare::MOST.get()).unwrap();
            assert_eq!(whole(budget, Kcal::new(kcal).unwrap()), Ok(pieces), "{kcal}");
        }
    }
}

proptest! {
    #[test]
    fn any_weight_gives_a_figure_or_a_refusal(kg in 0.005_f64..1500.0, grown in proptest::option::of(0.005_f64..1500.0), which in 0..5_usize, stage in 0..LifeStage::ALL.len()) {
        let animal = Animal {
            species: Species::ALL[which],
            stage: Some(LifeStage::ALL[stage]),
            ..puppy(kg, grown)
        };
        match day_allowance(&animal) {
            Ok(found) => prop_assert!(found.day.get() > 0.0 && found.range.is_some()),
            Err(refusal) => prop_assert!(!refusal.to_string().is_empty()),
        }
    }

    #[test]
    fn any_share_and_piece_give_a_count_within_the_budget_or_a_refusal(day in 0.0_f64..20_000.0, share in any::<f64>(), piece in 0.0_f64..20_000.0) {
        let piece = Kcal::new(piece).unwrap();
        match RewardShare::new(share) {
            Ok(share) => {
                let budget = Kcal::new(day * share.get()).unwrap();
                match whole(budget, piece) {
                    Ok(n) => prop_assert!(f64::from(n) * piece.get() <= budget.get() * (1.0 + 1e-9)),
                    Err(refusal) => prop_assert_eq!(refusal, PieceRefusal::NoEnergy),
                }
            }
            Err(_) => prop_assert!(!(share > 0.0 && share <= 0.1)),
        }
    }

    #[test]
    fn any_energy_a_gram_gives_a_piece_or_a_refusal(grams in 0.0_f64..20_000.0, per_gram in any::<f64>()) {
        if let Ok(kcal) = kcal_per_piece(Grams::new(grams).unwrap(), per_gram) {
            prop_assert!(kcal.get() > 0.0);
        }
    }

    #[test]
    fn any_text_can_be_looked_up(text in ".{0,60}", which in 0..5_usize) {
        let verdict = look_up(Species::ALL[which], &text);
        prop_assert!(verdict.level().is_none() || !verdict.findings.is_empty());
    }

    #[test]
    fn a_listed_food_is_found_in_any_company(before in "[a-z]{3,8}", after in "[a-z]{3,8}") {
        prop_assume!(after != "free" && !["non", "without", "sin", "sem", "ohne", "kein", "keine", "sans", "nao"].contains(&before.as_str()));
        let text = format!("{before} chocolate {after}");
        prop_assert_eq!(look_up(Species::Dog, &text).level(), Some(FoodLevel::Never));
    }
}
