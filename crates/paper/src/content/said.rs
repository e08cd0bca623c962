//! Typed values of `advisor` in words.

use sayso_advisor::Advice;
use sayso_advisor::likes::{Known, LikesReport, SideReport};
use sayso_model::{AnimalCard, Day, Stage};
use sayso_wording::{Locale, say};

/// An advice in a paragraph: what to do, because of what, what to watch out for.
pub fn advice(l: &Locale, advice: &Advice) -> String {
    let mut all = vec![advice.act.clone()];
    for reason in &advice.because {
        all.push(reason.text.clone());
        all.extend(reason.figure.as_ref().map(|f| format!("{}.", l.estimate(f))));
    }
    all.extend(advice.caution.clone());
    all.join(" ")
}

/// Whether the best few are known.
pub fn known(_: &Locale, known: &Known) -> String {
    known.words.clone()
}

/// What the side says.
pub fn lean(_: &Locale, side: &SideReport) -> String {
    side.words.clone()
}

/// Why to test again, unless that was said by [`known`] already.
pub fn test_again(_: &Locale, report: &LikesReport) -> Option<String> {
    report.retest.clone().filter(|why| report.known.as_ref().is_none_or(|k| k.words != *why))
}

/// A stage.
pub fn stage(l: &Locale, stage: Stage) -> String {
    say!(l, sheets::stage_name, stage = stage.name())
}

/// As in a Julian year.
const DAYS_A_YEAR: f64 = 365.25;

/// Species, age and weight.
pub fn described(l: &Locale, card: &AnimalCard, today: Day) -> String {
    let mut all = vec![card.name.to_string(), say!(l, sheets::species, species = card.species.name())];
    if let Some(born) = card.born {
        let age = age(l, born, today);
        all.push(if card.born_estimated { say!(l, sheets::age_about, age = age) } else { age });
    }
    all.extend(card.weight_kg.map(|kg| l.weight(kg.get())));
    all.join(", ")
}

fn age(l: &Locale, born: Day, today: Day) -> String {
    let days = today.days_since(born).max(0);
    let years = f64::from(days) / DAYS_A_YEAR;
    match days {
        0..=55 => say!(l, sheets::age_weeks, weeks = days / 7),
        56..=729 => say!(l, sheets::age_months, months = (years * 12.0).round()),
        _ => say!(l, sheets::age_years, years = years.floor()),
    }
}
