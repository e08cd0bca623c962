//! A coach's desk, said in every language: every need, its why, what would change it, and every change.

use sayso_advisor::Sure;
use sayso_advisor::desk::{
    About, BackFor, Changed, Comparable, Held, Lack, Look, Measure, Need, Put, SignKind, Since, Until, What,
};
use sayso_advisor::estimate::{Estimate, Unit};
use sayso_advisor::stuck::{Cause, StuckFor};
use sayso_model::{Day, Language, Moment, Species, Stage, WordId};
use sayso_norms::{Outside, Quantile, Question, WordKind};
use sayso_wording::Locale;
use sayso_wording::desk::{Names, changed, need, put, until, why};

const CAUSES: [Cause; 9] = [
    Cause::HardToMakeOut,
    Cause::NotWanted,
    Cause::TooLittle,
    Cause::TooLate,
    Cause::Avoided,
    Cause::TimeOrPlace,
    Cause::Health,
    Cause::SoundsAlike,
    Cause::PeopleDiffer,
];

fn day() -> Day {
    "2026-11-20".parse().unwrap()
}

fn word() -> WordId {
    "018f3c2a-0000-7000-8000-000000000001".parse().unwrap()
}

fn kinds() -> [SignKind; 4] {
    [SignKind::Swallowing, SignKind::Threat, SignKind::Guarding, SignKind::Other]
}

fn whats() -> Vec<What> {
    let share = Estimate::share(3, 12);
    let usual = Estimate { unit: Unit::Number, ..share };
    let mut all = Vec::new();
    for kind in kinds() {
        for (count, ago, recurring) in [(1, 0, None), (4, 3, Some((3, 6)))] {
            all.push(What::Signs { kind, count, on_days: count, days: 28, last: day(), ago, recurring });
        }
        all.push(What::TakenBack { kind, count: 1, last: day() });
    }
    for measure in [Measure::Joining, Measure::Presses, Measure::Latency] {
        all.push(What::Change(Look { measure, since: day(), lately: share, before: share, p: 0.0004 }));
    }
    for stuck in [Some(StuckFor::SeldomRight), None] {
        for cause in CAUSES {
            let held = Held { cause, sure: Sure::Fairly, figure: share, beside: share, p: Some(0.01) };
            all.push(What::Held { word: word(), stuck, right: share, held: Some(held) });
        }
    }
    let beside = Comparable { homes: 312, species: Species::Dog, age_band: None, word_kind: Some(WordKind::Play) };
    let place = Quantile { value: Some(45.0), low: Some(34.0), high: Some(66.0) };
    for (side, pressed, by) in [
        (Outside::Above, false, Question::ShowingsToFirstPress),
        (Outside::Above, true, Question::DaysToFirstPress),
        (Outside::Below, true, Question::ShowingsToFirstPress),
    ] {
        let held = Held { cause: Cause::TooLate, sure: Sure::Fairly, figure: share, beside: share, p: Some(0.01) };
        let held = Some(held).filter(|_| !pressed);
        let (word, wait, level, laid) = (word(), 100, 0.95, 4);
        all.push(What::Outside { word, side, by, wait, pressed, place, level, beside, laid, held });
    }
    all.extend([
        What::Leaves { share },
        What::Silent { days: 12, usual, longest: 3, after: 6 },
        What::Silent { days: 13, usual: Estimate::unknown(Unit::Number), longest: 0, after: 10 },
        What::Held { word: word(), stuck: Some(StuckFor::HardlyPressed { presses: 0 }), right: share, held: None },
        What::Ration { days: 4, of: 7, most_kcal: 90.0, budget_kcal: 50.0 },
        What::Ready { word: word(), showings: 41, days: 9 },
        What::CheckOpen { done: 3, of: 24 },
        What::CheckNever { words: 2 },
        What::Little { lack: Lack::Days, days: 3, of: 28, closed: share },
        What::Little { lack: Lack::Records, days: 28, of: 28, closed: Estimate::share(1, 2) },
        What::Little { lack: Lack::Whole, days: 28, of: 28, closed: share },
    ]);
    all
}

fn changes() -> Vec<Changed> {
    let share = Estimate::share(3, 12);
    let mut all: Vec<Changed> = Vec::new();
    for kind in kinds() {
        all.extend([1, 3].map(|count| Changed::Signs { kind, count, last: day() }));
    }
    all.extend([
        Changed::Joining { lately: share, before: share, p: 0.01 },
        Changed::Presses { lately: share, before: share, p: 0.01 },
        Changed::NewWord { word: word() },
        Changed::WordGone { word: word() },
        Changed::FirstPress { word: word(), day: day() },
        Changed::NewStage { word: word(), from: Stage::Show, to: Stage::Invite },
        Changed::AboveChance { word: word(), right: share },
    ]);
    all
}

fn of(what: What) -> Need {
    let (about, until) = (About::Held, Until::Record);
    Need { about, what, since: Some(Since::Began(day())), n: 12, sure: Sure::Fairly, until, put: None }
}

fn said(l: &Locale) -> (Vec<String>, Vec<String>) {
    let says = |_: WordId| "gate".to_owned();
    let names = Names { animal: "Milo", says: &says };
    let mut needs: Vec<String> = Vec::new();
    let mut rest: Vec<String> = Vec::new();
    for what in whats() {
        let one = of(what);
        needs.push(need(l, &names, &one));
        rest.extend(why(l, &names, &one));
    }
    let stuck = Some(StuckFor::SeldomTaken);
    rest.extend(why(l, &names, &of(What::Held { word: word(), stuck, right: Estimate::share(3, 12), held: None })));
    rest.extend(changes().iter().map(|c| changed(l, &names, c)));
    let untils = [
        Until::Without { before: day() },
        Until::MoreRight,
        Until::Asked,
        Until::AsBefore,
        Until::FewerLeft,
        Until::Record,
        Until::Mended,
        Until::MoreRecords { lack: Lack::Days },
        Until::MoreRecords { lack: Lack::Records },
        Until::MoreRecords { lack: Lack::Whole },
        Until::FewerOver,
        Until::Invited,
        Until::Checked,
        Until::FirstPress,
        Until::DaysSincePress { days: 28 },
    ];
    rest.extend(untils.map(|u| until(l, &names, u)));
    let (at, now) = (Moment::clamped(0), Moment::clamped(86_400_000));
    let back = [BackFor::Days, BackFor::Anew, BackFor::Worse, BackFor::Cause].map(|because| Put::Back { at, because });
    let puts = back.into_iter().chain([Put::Aside { at, until: now.plus_seconds(3.5 * 86_400.0) }]);
    let one = |of_put: Put| put(l, &Need { put: Some(of_put), ..of(whats().remove(0)) }, now);
    rest.extend(puts.filter_map(one));
    (needs, rest)
}

#[test]
fn every_need_its_why_and_every_change_is_said_in_every_language() {
    let (needs, rest) = said(&Locale::ENGLISH);
    let english: Vec<&String> = needs.iter().chain(&rest).collect();
    for language in Language::ALL {
        let (own_needs, own_rest) = said(&Locale::of(language));
        let own: Vec<&String> = own_needs.iter().chain(&own_rest).collect();
        assert_eq!(own.len(), english.len());
        for text in &own {
            let id = ["desk-", "because-", "act-"].iter().any(|file| text.starts_with(file));
            assert!(!id && !text.contains('{') && !text.trim().is_empty(), "{language:?}: {text}");
        }
        let same = own.iter().zip(&english).filter(|(a, b)| a == b).count();
        assert!(language == Language::En || same == 0, "{language:?}: {same} as in English");
    }
}

#[test]
fn what_is_put_aside_says_for_how_long_and_what_is_back_says_why() {
    let (at, l) = (Moment::clamped(0), &Locale::ENGLISH);
    let day = |days: f64| at.plus_seconds(days * 86_400.0);
    let said = |of_put: Put, now: f64| {
        put(l, &Need { put: Some(of_put), ..of(whats().remove(0)) }, day(now)).unwrap_or_default()
    };
    let aside = Put::Aside { at, until: day(7.0) };
    assert_eq!(said(aside, 0.0), "Put aside less than a day ago; back within 7 days, sooner if it gets worse.");
    assert_eq!(said(aside, 6.5), "Put aside 6 days ago; back within 1 day, sooner if it gets worse.");
    let worse = Put::Back { at, because: BackFor::Worse };
    assert_eq!(said(worse, 1.2), "You put this aside 1 day ago. It has got worse since.");
    assert_eq!(put(l, &of(whats().remove(0)), at), None);
}

#[test]
fn a_word_is_called_stuck_because_of_something_and_days_that_are_enough_are_not_called_few() {
    let (says, l) = (|_: WordId| "gate".to_owned(), &Locale::ENGLISH);
    let names = Names { animal: "Milo", says: &says };
    let right = Estimate::share(2, 20);
    let held =
        |stuck| why(l, &names, &of(What::Held { word: word(), stuck: Some(stuck), right, held: None })).remove(0);
    assert!(held(StuckFor::SeldomRight).starts_with("Called stuck for this: right in clearly less than half"));
    let hardly = held(StuckFor::HardlyPressed { presses: 2 });
    assert!(hardly.contains("Milo pressed it 2 times unasked in four weeks"), "{hardly}");
    let little = |lack, days| need(l, &names, &of(What::Little { lack, days, of: 28, closed: Estimate::share(3, 12) }));
    assert!(little(Lack::Days, 3).starts_with("Records on 3 of 28 days are too few"));
    assert!(!little(Lack::Whole, 28).contains("days are too few"), "{}", little(Lack::Whole, 28));
    // What is back already is asked about plainly; a first time is not.
    let strong = |on_days| {
        let (kind, days, ago, recurring) = (SignKind::Other, 7, 3, None);
        why(l, &names, &of(What::Signs { kind, count: on_days, on_days, days, last: day(), ago, recurring })).join(" ")
    };
    assert!(strong(3).starts_with("Such signs came back: ask") && !strong(3).contains("If "), "{}", strong(3));
    assert!(strong(1).starts_with("If such signs come back"), "{}", strong(1));
}

#[test]
fn a_need_is_one_plain_sentence_and_no_two_kinds_read_alike() {
    let (mut needs, _) = said(&Locale::ENGLISH);
    needs.sort();
    let many = needs.len();
    needs.dedup();
    assert_eq!(needs.len(), many);
    for text in &needs {
        assert!(text.ends_with('.') && !text.contains('!'), "{text}");
    }
}

#[test]
fn safety_and_health_name_whom_to_ask_and_nothing_is_diagnosed() {
    let whom = [
        (Language::En, "veterinarian", "qualified behaviour professional"),
        (Language::De, "Tierarztpraxis", "Fachperson für Tierverhalten"),
        (Language::Es, "veterinari", "comportamiento"),
        (Language::Fr, "vétérinaire", "comportement"),
        (Language::Pt, "veterinári", "comportamento"),
    ];
    let says = |_: WordId| "gate".to_owned();
    let names = Names { animal: "Milo", says: &says };
    for (language, vet, behaviour) in whom {
        let l = Locale::of(language);
        for what in whats() {
            let asks = matches!(what, What::Signs { .. } | What::Change(_) | What::Held { .. } | What::Ration { .. });
            let both = matches!(what, What::Signs { kind: SignKind::Threat | SignKind::Guarding, .. });
            let why = why(&l, &names, &of(what.clone())).join(" ");
            assert!(!asks || why.contains(vet), "{language:?}: {what:?}: {why}");
            assert!(!both || why.contains(behaviour), "{language:?}: {what:?}: {why}");
        }
        let (needs, rest) = said(&l);
        let all = needs.iter().chain(&rest).cloned().collect::<Vec<_>>().join(" ").to_lowercase();
        for never in
            ["does not understand", "no entiende", "versteht nicht", "ne comprend pas", "não entende", "failed"]
        {
            assert!(!all.contains(never), "{language:?}: {never}");
        }
    }
}
