//! Typed values of `advisor` in words.

use crate::sheet::{Block, Look, Paragraph};
use sayso_advisor::likes::LikesReport;
use sayso_advisor::ration::{cautions, forbidden};
use sayso_advisor::{Advice, Because};
use sayso_model::{AnimalCard, Day, RewardCard};
use sayso_wording::advice as of;
use sayso_wording::hazards::{food, foods};
use sayso_wording::{Locale, say};

/// An advice in a paragraph: what to do, because of what, what to watch out for.
pub fn advice(l: &Locale, name: &str, advice: &Advice) -> String {
    let act = std::iter::once(of::act(l, name, &advice.act));
    let because = advice.because.iter().map(|reason| of::because(l, name, &reason.fact));
    let cautions = advice.cautions.iter().map(|c| of::caution(l, name, *c));
    act.chain(because).chain(cautions).collect::<Vec<_>>().join(" ")
}

/// Why to test again, where that is for age; what is not settled is said by what is known.
pub fn test_again(l: &Locale, name: &str, report: &LikesReport) -> Option<String> {
    let why = report.retest.as_ref().filter(|why| matches!(why, Because::TestOld { .. }))?;
    Some(of::because(l, name, why))
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

/// Cautions about one thing for one animal; nothing where the list says nothing.
pub fn caution(l: &Locale, card: &AnimalCard, reward: &RewardCard) -> Option<Block> {
    if let Some(why) = forbidden(card.species, reward) {
        let text = say!(l, sheets::eaten, thing = &reward.name, why = foods(l, &why));
        return Some(Paragraph::block(say!(l, sheets::never_give, name = &card.name), text, Look::Stop));
    }
    let found = cautions(card.species, reward);
    (!found.is_empty()).then(|| {
        let text = format!("{}.", found.iter().map(|c| food(l, c)).collect::<Vec<_>>().join(". "));
        Paragraph::block(say!(l, sheets::care, name = &card.name), text, Look::Boxed)
    })
}
