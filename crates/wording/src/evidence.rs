//! The evidence for a word, in a sentence.

use crate::figures::finding;
use crate::locale::Locale;
use crate::message::Message;
use crate::say;
use sayso_advisor::estimate::TOO_EARLY;
use sayso_advisor::evidence::Evidence;
use sayso_advisor::latency::Waiting;
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
        let above = match counts.presses {
            _ if standing.above_chance => above_chance(e),
            n if n < TOO_EARLY => "few",
            _ => "no",
        };
        let said = say!(
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
        return presses_more(locale, name, e).map_or_else(|| said.clone(), |more| format!("{said} {more}"));
    }
    let said = match standing.own_presses {
        0 => say!(locale, evidence::sentence_shown, name = name, word = word, times = standing.showings),
        times => say!(locale, evidence::sentence_own, name = name, word = word, times = times),
    };
    match left_out(locale, standing.stumbles) {
        Some(out) => format!("{said} {out}"),
        None => said,
    }
}

/// Why there are more presses at invitations than invitations that were wanted and answered by one; none where there are not.
#[must_use]
pub fn presses_more(locale: &Locale, name: &str, e: &Evidence) -> Option<String> {
    let counts = e.invitations;
    let more = counts.presses.saturating_sub(counts.pressed);
    let (presses, wanted) = (counts.presses, counts.wanted);
    (more > 0)
        .then(|| say!(locale, evidence::presses_more, more = more, presses = presses, name = name, wanted = wanted))
}

/// How right presses at invitations stand to chance: more of them than chance is told as a verdict only with what was drawn,
/// for the ladder alone says what may be said.
#[must_use]
pub fn above_chance(e: &Evidence) -> &'static str {
    let drawn = e.claim.as_ref().is_ok_and(|(claim, _)| claim.rung() > Rung::FitsChance);
    match e.standing.above_chance {
        true if drawn => "yes",
        true => "chosen",
        false => "no",
    }
}

/// How many presses are left out because they looked like a stumble; none where none is.
#[must_use]
pub fn left_out(locale: &Locale, stumbles: usize) -> Option<String> {
    (stumbles > 0).then(|| say!(locale, evidence::left_out, n = stumbles))
}

/// What chance would be.
#[must_use]
pub fn chance(locale: &Locale, chance: &Chance) -> String {
    let (words, share) = (chance.words.max(2), locale.percent(chance.even()));
    if chance.elsewhere.too_early() {
        return say!(locale, evidence::chance_even, words = words, share = share);
    }
    let elsewhere = finding(locale, &chance.elsewhere);
    say!(locale, evidence::chance_habit, words = words, share = share, elsewhere = elsewhere)
}

/// The middle time to a press in a sentence; none where nothing was invited.
#[must_use]
pub fn waited(locale: &Locale, waiting: &Waiting) -> Option<String> {
    let nothing = waiting.as_ref().is_ok_and(|middle| middle.n == 0);
    (!nothing).then(|| say!(locale, evidence::waiting, median = middle_wait(locale, waiting)))
}

/// The middle time to a press under the waits that were kept.
#[must_use]
pub fn middle_wait(locale: &Locale, waiting: &Waiting) -> String {
    match waiting {
        Err(why) => why.say(locale),
        // Enough invitations, and fewer than half of them with a press.
        Ok(middle) if middle.value.is_none() && middle.n >= TOO_EARLY => {
            say!(locale, evidence::waiting_open, n = middle.n)
        }
        Ok(middle) => finding(locale, middle),
    }
}
