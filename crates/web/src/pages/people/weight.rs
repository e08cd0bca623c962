//! An animal's weight in the unit of whoever types it; kept in kilograms.

use crate::typed::Typed;
use sayso_model::{Kilograms, WeightUnit};
use sayso_wording::{Locale, say};

/// A kept weight as it is put into a field.
pub fn shown(locale: &Locale, kg: Kilograms) -> String {
    let value = kg.get() / locale.weight_unit.in_kg();
    let rounded = (value * 100.0).round() / 100.0;
    format!("{rounded}")
}

/// The weight in a field. What was not touched stays as it was kept, to the gram.
pub fn read(typed: &mut Typed, name: &str, locale: &Locale, before: Option<Kilograms>) -> Option<Kilograms> {
    if let Some(kept) = before.filter(|kg| shown(locale, *kg) == typed.text(name)) {
        return Some(kept);
    }
    // Two decimals of a kilogram: no scale at home weighs finer.
    typed.quantity(name, |value| {
        let kg = value * locale.weight_unit.in_kg();
        Kilograms::new(if locale.weight_unit == WeightUnit::Kg { kg } else { (kg * 100.0).round() / 100.0 })
    })
}

/// The unit, as a word beside the field's label.
pub fn unit(locale: &Locale) -> String {
    match locale.weight_unit {
        WeightUnit::Kg => say!(locale, people::kilograms),
        WeightUnit::Lb => say!(locale, people::pounds),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pounds_are_kept_as_kilograms_and_an_untouched_weight_stays_as_it_was() {
        let pounds = Locale { weight_unit: WeightUnit::Lb, ..Locale::ENGLISH };
        let mut typed = Typed::default().with("weight_kg", "22");
        assert_eq!(read(&mut typed, "weight_kg", &pounds, None).map(Kilograms::get), Some(9.98));
        let kept = Kilograms::clamped(4.567);
        let mut typed = Typed::default().with("weight_kg", shown(&pounds, kept));
        assert_eq!(read(&mut typed, "weight_kg", &pounds, Some(kept)), Some(kept));
        let mut typed = Typed::default().with("weight_kg", "4,5");
        assert_eq!(read(&mut typed, "weight_kg", &Locale::ENGLISH, None).map(Kilograms::get), Some(4.5));
        let mut typed = Typed::default().with("weight_kg", "heavy");
        assert!(read(&mut typed, "weight_kg", &pounds, None).is_none() && !typed.right());
    }
}
