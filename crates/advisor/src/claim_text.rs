//! Claims in words: what may be said, which tests stand behind it, and which rival explanations are still open.

use crate::claims::Claim;
use sayso_methods::understanding::rivals::{Remedy, Rival, Scoring, Standing, Why, rivals};

/// A rival explanation and where it stands.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct RivalText {
    /// The rival.
    pub rival: &'static str,
    /// Where it stands.
    pub standing: String,
    /// Whether it is still open.
    pub open: bool,
}

/// Every rival explanation of a claim. Everyday records count as scored by one person who knew what was pressed.
#[must_use]
pub fn rivals_of(claim: &Claim) -> Vec<RivalText> {
    rivals(&claim.verdict, Scoring::OnePerson).into_iter().map(in_words).collect()
}

/// The tests behind a claim, with raw p-values; the claim itself rests on them corrected over all words together.
#[must_use]
pub fn tests_of(claim: &Claim) -> Vec<String> {
    let e = &claim.evidence;
    let mut tests = Vec::new();
    let mut add =
        |what: &str, p: Option<f64>| tests.extend(p.map(|p| format!("{what}: p = {p:.4} (n = {} presses)", e.presses)));
    add("pressed when it was called for, sittings kept apart", e.association_p);
    add("its thing is taken more when asked for than when it comes otherwise", e.fitting_p);
    add("the same word again after another thing came, more than after the right one", e.correction_p);
    for p in &e.probes {
        let how = if p.conduct.fully_blind() { "blind" } else { "not blind" };
        let done = if p.carried_out >= p.planned { "finished" } else { "not finished, so not counted" };
        tests.push(format!(
            "planned check ({how}, {done}): right in {} of {} choices, chance {:.2}",
            p.seen.k(),
            p.seen.n(),
            p.chance
        ));
    }
    tests
}

fn in_words((rival, standing): (Rival, Standing)) -> RivalText {
    let name = match rival {
        Rival::Cueing => "cueing: a person who knows the answer gives it away",
        Rival::PlaceHabit => "place habit: it goes to a place, not to a word",
        Rival::Frequency => "frequency: some words are simply pressed more",
        Rival::Liking => "liking: some things are simply liked more",
        Rival::WishfulScoring => "wishful scoring: people see what they hope for",
    };
    let (text, open) = match standing {
        Standing::NothingToExplain => ("nothing is claimed, so there is nothing to explain".to_owned(), false),
        Standing::RuledOut(why) => (format!("ruled out by {}", ruled_out_by(why)), false),
        Standing::Open(remedy) => (format!("open; {} would settle it", remedy_words(remedy)), true),
    };
    RivalText { rival: name, standing: text, open }
}

const fn ruled_out_by(why: Why) -> &'static str {
    match why {
        Why::BlindProbe => "a finished blind check",
        Why::RandomPlaces => "random order and places",
        Why::FrequenciesKept => "a test that keeps how often each word is pressed",
        Why::SameThing => "comparing the same thing asked for and not",
        Why::TwoScorers => "two people scoring apart who agree",
        Why::BlindScoring => "scoring by one who could not know",
    }
}

const fn remedy_words(remedy: Remedy) -> &'static str {
    match remedy {
        Remedy::BlindProbe => "a check in which the person with the animal does not know the answer",
        Remedy::RandomPlaces => "a check with places drawn at random",
        Remedy::SameThing => "a check, or now and then another thing than asked for",
        Remedy::SecondScorer => "a second person scoring the same records apart",
    }
}
