//! Claims in words: what may be said, what stands behind it, and which rival explanations are still open.

use crate::claims::{AnimalClaim, Claim};
use sayso_methods::understanding::ladder::{Growth, Ladder, Rung, Verdict};
use sayso_methods::understanding::rivals::{Remedy, Rival, Scoring, Standing, Why, rivals};
use sayso_model::Zone;

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

/// What may be said of a word, in one sentence: the ladder that says more.
#[must_use]
pub fn may_be_said(claim: &Claim, zone: &Zone) -> String {
    let (ladder, verdict) = claim.best();
    said(ladder, &verdict, zone)
}

/// What may be said of a word, ladder by ladder.
#[must_use]
pub fn by_ladder(claim: &Claim, zone: &Zone) -> [(&'static str, String); 2] {
    [
        ("asking for the thing", said(Ladder::Asking, &claim.asking, zone)),
        ("knowing the spoken word", said(Ladder::Hearing, &claim.hearing, zone)),
    ]
}

/// What may be said of the animal over all its words.
#[must_use]
pub fn of_animal(animal: &AnimalClaim, zone: &Zone) -> String {
    let v = &animal.verdict;
    match v.rung {
        Rung::NothingYet => {
            "nothing can be said yet over all words together; a time of agreed swaps could tell (n = 0)".to_owned()
        }
        Rung::FitsChance => format!(
            "over all words, what came after swaps would also come by chance or habit (n = {} drawn answers); that speaks for nothing either way",
            v.n
        ),
        _ => format!(
            "over all its words together it presses again where another thing came than asked for; liking, frequency, habits of place and the clock do not explain it (n = {} drawn answers{}); cues may still",
            v.n,
            since(v, zone)
        ),
    }
}

fn since(v: &Verdict, zone: &Zone) -> String {
    v.since.map_or_else(String::new, |at| format!(", since {}", at.day(zone)))
}

fn said(ladder: Ladder, v: &Verdict, zone: &Zone) -> String {
    let (n, since) = (v.n, since(v, zone));
    let what = match (v.rung, ladder) {
        (Rung::NothingYet, Ladder::Asking) => {
            "nothing can be said yet: nothing was drawn (n = 0); a round of invitations drawn by the notebook could tell"
                .to_owned()
        }
        (Rung::NothingYet, Ladder::Hearing) => {
            "nothing can be said yet: no check was begun (n = 0); a check of picking things could tell".to_owned()
        }
        (Rung::FitsChance, _) => format!(
            "what was drawn so far would also come by chance (n = {n}); that speaks for nothing either way"
        ),
        (Rung::DiffersByWord | Rung::HoldsAgainstHabit, _) => format!(
            "pressing goes with what was called for, more than chance allows (n = {n} presses in drawn rounds{since}); habit, liking or cues may still explain it"
        ),
        (Rung::PassesOpenProbe, Ladder::Asking) => format!(
            "it asks for the thing with buttons swapped under covers more than chance allows (n = {n}{since}); somebody knew the answer, so cues may still explain it"
        ),
        (Rung::PassesOpenProbe, Ladder::Hearing) => format!(
            "it picks the thing for the word more than chance allows (n = {n}{since}); somebody knew the answer, so cues may still explain it"
        ),
        (Rung::StandsUpToBlindCheck, Ladder::Asking) => format!(
            "its asking stands up to a blind check: the right button with buttons swapped under covers and nobody near who knew (n = {n}{since})"
        ),
        (Rung::StandsUpToBlindCheck, Ladder::Hearing) => format!(
            "its knowing the word stands up to a blind check: it picks the thing with nobody near who knew (n = {n}{since})"
        ),
    };
    match v.lapsed.filter(|_| v.since.is_none()) {
        Some(at) => format!(
            "{what}. More was claimed until {}, when words or checks were added: all are judged together, and more is asked of each since",
            at.day(zone)
        ),
        None => what,
    }
}

/// Every rival explanation of a word's claim. Calls of a round count as scored by one person who knew the answer.
#[must_use]
pub fn rivals_of(claim: &Claim) -> Vec<RivalText> {
    rivals(claim.rung(), Scoring::OnePerson).into_iter().map(in_words).collect()
}

/// What stands behind a claim, drawn records first.
#[must_use]
pub fn tests_of(claim: &Claim) -> Vec<String> {
    let e = &claim.evidence;
    let mut tests = Vec::new();
    let mut add = |what: &str, growth: &Option<Growth>| {
        tests.extend(growth.as_ref().map(|g| {
            let most = g.steps.iter().fold(0.0f64, |most, s| most.max(s.1));
            format!("{what}: evidence {} now, {} at its most (n = {})", times(g.ln_now()), times(most), g.n)
        }));
    };
    add("drawn rounds of invitations", &e.rounds);
    for (side, what) in ["pressing under covers", "picking things"].into_iter().enumerate() {
        add(&format!("{what}, open checks together"), &e.open[side]);
        add(&format!("{what}, blind checks together"), &e.blind[side]);
    }
    tests
}

/// An e-value in words: how far a bet against chance has multiplied its stake.
#[must_use]
pub fn times(ln: f64) -> String {
    let e = ln.min(700.0).exp();
    if e >= 1000.0 {
        "more than 1000 to 1".to_owned()
    } else if e >= 10.0 {
        format!("{e:.0} to 1")
    } else if e >= 1.0 {
        format!("{e:.1} to 1")
    } else {
        "none".to_owned()
    }
}

fn in_words((rival, standing): (Rival, Standing)) -> RivalText {
    let name = match rival {
        Rival::Cueing => "cueing: a person who knows the answer gives it away",
        Rival::PlaceHabit => "place habit: it goes to a place, not to a word",
        Rival::Frequency => "frequency: some words are simply pressed more",
        Rival::Liking => "liking: some things are simply liked more",
        Rival::ClockOrBout => {
            "clock and bout: what people offer and give follows the hour, and so does what is pressed"
        }
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
        Why::BlindProbe => "blind checks",
        Why::RandomPlaces => "places drawn at random",
        Why::FrequenciesKept => "a comparison that keeps how often each word is pressed",
        Why::SameThing => "comparing word and thing crosswise, with the thing drawn",
        Why::Drawn => "drawing by the notebook instead of a person's choice",
        Why::NextPress => "counting the next press, which nobody scores",
        Why::TwoScorers => "two people scoring apart who agree",
        Why::BlindScoring => "scoring by one who could not know",
    }
}

const fn remedy_words(remedy: Remedy) -> &'static str {
    match remedy {
        Remedy::BlindProbe => "a check in which the person with the animal does not know the answer",
        Remedy::RandomPlaces => "a check with places drawn at random",
        Remedy::SameThing => "a time of agreed swaps, or a check",
        Remedy::SecondScorer => "a second person scoring the same records apart",
    }
}
