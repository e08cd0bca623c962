//! Claims in words: what may be said, what stands behind it, and which rival explanations are still open.

use crate::locale::Locale;
use crate::say;
use sayso_advisor::claims::{AnimalClaim, Claim};
use sayso_methods::understanding::ladder::{Growth, Ladder, Rung, Verdict};
use sayso_methods::understanding::rivals::{Remedy, Rival, Scoring, Standing, Why, rivals};
use sayso_model::Zone;

/// A rival explanation and where it stands.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct RivalText {
    /// The rival.
    pub rival: String,
    /// Where it stands.
    pub standing: String,
    /// Whether it is still open.
    pub open: bool,
}

/// What may be said of a word, in one sentence: the ladder that says more.
#[must_use]
pub fn may_be_said(locale: &Locale, claim: &Claim, zone: &Zone) -> String {
    let (ladder, verdict) = claim.best();
    said(locale, ladder, &verdict, zone)
}

/// What may be said of a word, ladder by ladder.
#[must_use]
pub fn by_ladder(locale: &Locale, claim: &Claim, zone: &Zone) -> [(String, String); 2] {
    [
        (say!(locale, claims::asking), said(locale, Ladder::Asking, &claim.asking, zone)),
        (say!(locale, claims::hearing), said(locale, Ladder::Hearing, &claim.hearing, zone)),
    ]
}

/// What may be said of the animal over all its words.
#[must_use]
pub fn of_animal(locale: &Locale, animal: &AnimalClaim, zone: &Zone) -> String {
    let v = &animal.verdict;
    match v.rung {
        Rung::NothingYet => say!(locale, claims::animal_nothing),
        Rung::FitsChance => say!(locale, claims::animal_chance, n = v.n),
        _ => say!(locale, claims::animal_holds, n = v.n, since = since(locale, v, zone)),
    }
}

fn since(locale: &Locale, v: &Verdict, zone: &Zone) -> String {
    v.since.map_or_else(|| "none".to_owned(), |at| locale.date(at.day(zone)))
}

fn said(locale: &Locale, ladder: Ladder, v: &Verdict, zone: &Zone) -> String {
    let (n, since) = (v.n, since(locale, v, zone));
    let what = match (v.rung, ladder) {
        (Rung::NothingYet, Ladder::Asking) => say!(locale, claims::nothing_asking),
        (Rung::NothingYet, Ladder::Hearing) => say!(locale, claims::nothing_hearing),
        (Rung::FitsChance, _) => say!(locale, claims::chance, n = n),
        (Rung::DiffersByWord | Rung::HoldsAgainstHabit, _) => say!(locale, claims::differs, n = n, since = since),
        (Rung::PassesOpenProbe, Ladder::Asking) => say!(locale, claims::open_asking, n = n, since = since),
        (Rung::PassesOpenProbe, Ladder::Hearing) => say!(locale, claims::open_hearing, n = n, since = since),
        (Rung::StandsUpToBlindCheck, Ladder::Asking) => say!(locale, claims::blind_asking, n = n, since = since),
        (Rung::StandsUpToBlindCheck, Ladder::Hearing) => say!(locale, claims::blind_hearing, n = n, since = since),
    };
    match v.lapsed.filter(|_| v.since.is_none()) {
        Some(at) => say!(locale, claims::lapsed, said = what, until = locale.date(at.day(zone))),
        None => what,
    }
}

/// Every rival explanation of a word's claim; none where nothing is claimed. Calls of a round count as scored by one person who
/// knew the answer.
#[must_use]
pub fn rivals_of(locale: &Locale, claim: &Claim) -> Vec<RivalText> {
    rivals(claim.rung(), Scoring::OnePerson).into_iter().filter_map(|r| rival_text(locale, r)).collect()
}

/// What stands behind a claim, drawn records first.
#[must_use]
pub fn tests_of(locale: &Locale, claim: &Claim) -> Vec<String> {
    let e = &claim.evidence;
    let mut tests = Vec::new();
    let mut add = |what: String, growth: &Option<Growth>, bar: f64| {
        tests.extend(growth.as_ref().map(|g| {
            let most = g.steps.iter().fold(0.0f64, |most, s| most.max(s.1));
            let (now, most) = (times(locale, g.ln_now()), times(locale, most));
            let bar = say!(locale, claims::times, times = locale.number(bar, 0));
            say!(locale, claims::test, what = what, now = now, most = most, bar = bar, n = g.n)
        }));
    };
    add(say!(locale, claims::test_rounds), &e.rounds, claim.bars.rounds);
    for (at, side) in ["asking", "hearing"].into_iter().enumerate() {
        add(say!(locale, claims::test_open, side = side), &e.open[at], claim.bars.open[at]);
        add(say!(locale, claims::test_blind, side = side), &e.blind[at], claim.bars.blind[at]);
    }
    tests
}

/// An e-value in words: how far a bet against chance has multiplied its stake.
#[must_use]
pub fn times(locale: &Locale, ln: f64) -> String {
    let e = ln.min(700.0).exp();
    if e >= 1000.0 {
        say!(locale, claims::times_most, times = 1000)
    } else if e >= 1.0 {
        say!(locale, claims::times, times = locale.number(e, usize::from(e < 10.0)))
    } else {
        say!(locale, claims::times_none)
    }
}

fn rival_text(locale: &Locale, (rival, standing): (Rival, Standing)) -> Option<RivalText> {
    let kind = match rival {
        Rival::Cueing => "cueing",
        Rival::PlaceHabit => "place",
        Rival::Frequency => "frequency",
        Rival::Liking => "liking",
        Rival::ClockOrBout => "clock",
        Rival::WishfulScoring => "wishful",
    };
    let (text, open) = match standing {
        Standing::NothingToExplain => return None,
        Standing::RuledOut(why) => (say!(locale, claims::ruled_out, why = ruled_out_by(why)), false),
        Standing::Open(remedy) => (say!(locale, claims::still_open, remedy = remedy_name(remedy)), true),
    };
    Some(RivalText { rival: say!(locale, claims::rival, rival = kind), standing: text, open })
}

const fn ruled_out_by(why: Why) -> &'static str {
    match why {
        Why::BlindProbe => "blind",
        Why::RandomPlaces => "places",
        Why::FrequenciesKept => "frequencies",
        Why::SameThing => "thing",
        Why::Drawn => "drawn",
        Why::NextPress => "next",
        Why::TwoScorers => "two",
        Why::BlindScoring => "scoring",
    }
}

const fn remedy_name(remedy: Remedy) -> &'static str {
    match remedy {
        Remedy::BlindProbe => "blind",
        Remedy::RandomPlaces => "places",
        Remedy::SameThing => "thing",
        Remedy::SecondScorer => "second",
    }
}
