//! The evidence for a word, in a sentence.

use crate::locale::Locale;
use crate::say;
use sayso_advisor::evidence::Evidence;
use sayso_advisor::stages::Chance;
use sayso_methods::understanding::ladder::Rung;

/// Rungs a word can stand on, the ground left out.
pub const STEPS: u8 = 4;

/// How many steps up a rung is: 0 where nothing was drawn, to [`STEPS`].
#[must_use]
pub const fn step(rung: Rung) -> u8 {
    match rung {
        Rung::NothingYet => 0,
        Rung::FitsChance => 1,
        Rung::DiffersByWord | Rung::HoldsAgainstHabit => 2,
        Rung::PassesOpenProbe => 3,
        Rung::StandsUpToBlindCheck => 4,
    }
}

/// A rung in a few words.
#[must_use]
pub fn rung(locale: &Locale, rung: Rung) -> String {
    let name = match rung {
        Rung::NothingYet => "nothing",
        Rung::FitsChance => "chance",
        Rung::DiffersByWord | Rung::HoldsAgainstHabit => "differs",
        Rung::PassesOpenProbe => "open",
        Rung::StandsUpToBlindCheck => "blind",
    };
    say!(locale, evidence::rung, rung = name)
}

/// What the records of a word come to, in one plain sentence about the animal called `name`.
#[must_use]
pub fn sentence(locale: &Locale, name: &str, e: &Evidence) -> String {
    let (standing, counts) = (&e.standing, e.invitations);
    let word = &standing.says;
    if counts.wanted > 0 || counts.presses > 0 {
        let above = if standing.above_chance { "yes" } else { "no" };
        return say!(
            locale,
            evidence::sentence_invited,
            name = name,
            word = word,
            pressed = counts.pressed,
            wanted = counts.wanted,
            presses = counts.presses,
            right = counts.right,
            above = above
        );
    }
    if standing.own_presses > 0 {
        return say!(locale, evidence::sentence_own, name = name, word = word, times = standing.own_presses);
    }
    say!(locale, evidence::sentence_shown, name = name, word = word, times = standing.showings)
}

/// What chance would be.
#[must_use]
pub fn chance(locale: &Locale, chance: &Chance) -> String {
    let words = chance.words.max(2);
    #[allow(clippy::cast_precision_loss)]
    let share = locale.percent(1.0 / words as f64);
    if chance.elsewhere.n < sayso_advisor::estimate::TOO_EARLY {
        return say!(locale, evidence::chance_even, words = words, share = share);
    }
    let elsewhere = crate::figures::estimate(locale, &chance.elsewhere);
    say!(locale, evidence::chance_habit, words = words, share = share, elsewhere = elsewhere)
}
