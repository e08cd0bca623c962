//! Does a coach's desk find the troubled homes of a club, in the right order, and leave the others alone?

use super::stuck::named;
use super::{Section, end};
use crate::error::{LabError, told};
use crate::report::figure::{Finding, In, Wanted, table};
use crate::work::{Work, side_by_side};
use sayso_advisor::Case;
use sayso_advisor::desk::{About, Line, Need, Row, Seen, What, desk};
use sayso_advisor::stuck::Cause as Named;
use sayso_model::facts::{Tells, tells};
use sayso_model::{Body, Day, Moment, SignLevel, Story, WordId};
use sayso_sim::{Keeps, Trouble, Troubled, troubled_one};
use std::collections::BTreeSet;

/// What one home gave.
struct Read {
    is: Troubled,
    line: Line,
    words: Vec<WordId>,
    /// By the log alone: how unsafe, none where it is not.
    danger: Option<Danger>,
    /// Days it was kept.
    days: u32,
    /// How far each word is truly understood at the end, and how often it was shown.
    understood: Vec<f64>,
    shown: Vec<u32>,
    /// Whether people truly give at different times, one of them late.
    differ: bool,
}

impl Read {
    fn is_unsafe(&self) -> bool {
        self.danger.is_some()
    }
}

/// How soon somebody may be hurt, the soonest first. Homes of one degree are equally pressing.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Danger {
    /// A strong sign, or one that lasts (growls, guards, swallows things), today.
    Today,
    /// Strong signs on two days of the week.
    Often,
    /// A sign that lasts, within the week.
    ThisWeek,
    /// Within four weeks.
    Lately,
}

/// The signs of a log, counted here by themselves, not by what the desk makes of them.
fn danger(events: &[sayso_model::Event], now: Moment, zone: &sayso_model::Zone) -> Option<Danger> {
    let today = now.day(zone);
    let mut strong: BTreeSet<Day> = BTreeSet::new();
    // Days since the last sign that lasts.
    let mut lasting: Option<i32> = None;
    for event in events {
        let Body::Sign(sign) = &event.body else { continue };
        let day = event.happened_at.day(zone);
        let ago = today.days_since(day);
        let kind = tells(sign.sign.as_str());
        let lasts = matches!(kind, Some(Tells::Threat | Tells::Guarding | Tells::Swallowing));
        if lasts && sign.level != SignLevel::Joining && ago < 28 {
            lasting = Some(lasting.map_or(ago, |least| least.min(ago)));
        }
        if sign.level == SignLevel::Strong && ago < 7 {
            strong.insert(day);
        }
    }
    match lasting {
        _ if strong.contains(&today) || lasting.is_some_and(|ago| ago <= 0) => Some(Danger::Today),
        _ if strong.len() >= 2 => Some(Danger::Often),
        Some(..=6) => Some(Danger::ThisWeek),
        Some(_) => Some(Danger::Lately),
        None => None,
    }
}

fn see(seed: u64, number: u32) -> Result<Read, LabError> {
    let now = end()?;
    let home = troubled_one(seed, number, now);
    let (is, truth) = (home.is, home.run.truth);
    let last = truth.last_day(0).ok_or_else(|| told("no day was simulated"))?;
    let (understood, shown) = (last.understanding.clone(), last.showings.clone());
    let delays = || truth.home.people.iter().map(|p| p.delay_s);
    let (slow, quick) = (delays().fold(0.0, f64::max), delays().fold(f64::INFINITY, f64::min));
    let differ = slow > 3.5 && slow - quick > 1.5;
    let animal = truth.ids.animals.first().copied().ok_or_else(|| told("no animal"))?;
    let danger = danger(&home.run.events, now, &truth.home.zone);
    let story = Story::from_events(home.run.events);
    let line = Line::of(&Case::new(&story, animal, now));
    Ok(Read { is, line, words: truth.ids.words, danger, days: truth.home.days, understood, shown, differ })
}

/// Causes named in a home, each with its word (by index).
fn causes(home: &Read, needs: &[Need]) -> Vec<(Named, Option<usize>)> {
    let named = |n: &Need| match &n.what {
        What::Held { word, held: Some(h), .. } => Some((h.cause, home.words.iter().position(|w| w == word))),
        _ => None,
    };
    needs.iter().filter_map(named).collect()
}

/// Whether a need tells of a trouble.
fn tells_of(home: &Read, needs: &[Need], trouble: Trouble, word: Option<usize>) -> bool {
    let about = |of: About| needs.iter().any(|n| n.about == of);
    let signs = |kinds: &[sayso_advisor::desk::SignKind]| {
        needs.iter().any(|n| matches!(&n.what, What::Signs { kind, .. } if kinds.contains(kind)))
    };
    use sayso_advisor::desk::SignKind as K;
    match trouble {
        Trouble::StrongSigns => signs(&[K::Threat, K::Other]),
        Trouble::Guarding => signs(&[K::Guarding]),
        Trouble::SuddenDrop => about(About::Change),
        Trouble::Silent => about(About::Silent),
        Trouble::Overfed => about(About::Ration),
        Trouble::ReadyNotInvited => needs.iter().any(
            |n| matches!(&n.what, What::Ready { word: w, .. } if word.is_none_or(|at| home.words.get(at) == Some(w))),
        ),
        _ => trouble.cause().is_some_and(|cause| {
            // Two words that sound alike are one trouble of both; too little showing, or people who differ, of the home.
            let anywhere = matches!(trouble, Trouble::TooLittleShowing | Trouble::PeopleDiffer | Trouble::SoundsAlike);
            let here = |at: &Option<usize>| anywhere || word.is_none() || *at == word;
            causes(home, needs).iter().any(|(c, at)| *c == named(cause) && here(at))
        }),
    }
}

/// How pressing a home truly is, the most first: by the signs of its log and by degrees, then by the simulation's truth.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Pressing {
    Unsafe(Danger),
    Troubled(u8),
}

/// None of a home without trouble.
fn pressing(home: &Read) -> Option<Pressing> {
    let worst = || home.is.troubles.iter().map(|(trouble, _)| trouble.severity()).min();
    home.danger.map(Pressing::Unsafe).or_else(|| worst().map(Pressing::Troubled))
}

/// A home and what is told of it.
type Told<'a> = (&'a Read, &'a [Need]);
/// A claim by its name, and which needs make it.
type Claim = (&'static str, fn(&Need) -> bool);
type Club<'a> = (Vec<Row<usize>>, &'a [Read]);

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("A coach's desk: found, in order, and nothing named that is not there");
    let (clubs, homes) = (work.size(4, 1), work.size(500, 40));
    let seed = |club: usize| work.first(7_000).wrapping_add(1_000 * club as u64);
    let all: Result<Vec<Read>, LabError> = side_by_side(clubs * homes, |i, tells| {
        if tells && i % 100 == 0 {
            eprintln!("  desk: {i} of {}", clubs * homes);
        }
        see(seed(i / homes), u32::try_from(i % homes).unwrap_or(0))
    })
    .into_iter()
    .collect();
    let (all, now, seen) = (all?, end()?, Seen::default());
    let read: Vec<Club<'_>> = all
        .chunks(homes)
        .map(|club| (desk(club.iter().map(|h| &h.line).enumerate(), now, &seen, None), club))
        .collect();
    troubles(&mut section, &read);
    quiet(&mut section, &read);
    order(&mut section, &read, homes);
    little(&mut section, &read);
    section.text(format!(
        "{clubs} clubs of {homes} simulated homes (seeds {} and on, not those the rules were tuned on). Half of the homes have \
         a trouble, some two; a tenth press without meaning; some write little down. A trouble counts as found where a need of \
         its kind is told of the right word; precision asks how many of the homes with such a need have that trouble.",
        seed(0)
    ));
    Ok(section)
}

fn each<'a>(read: &'a [Club<'a>]) -> impl Iterator<Item = (&'a Read, &'a [Need])> {
    read.iter().flat_map(|(rows, club)| rows.iter().map(|row| (&club[row.key], &row.needs[..])))
}

fn troubles(section: &mut Section, read: &[Club<'_>]) {
    let percent = |k: usize, n: usize| {
        let f = Finding::share("", Wanted::Known, k, n);
        if n == 0 { "-".to_owned() } else { f.row()[2].clone() }
    };
    let mut rows = Vec::new();
    for trouble in Trouble::ALL {
        // Shown too little and learned all the same is no trouble; nor does a word shown hardly at all wait to be invited,
        // or one of an animal that is unsafe.
        let really = |h: &Read, word: Option<usize>| match trouble {
            Trouble::TooLittleShowing => h.understood.iter().any(|u| *u < 0.5),
            Trouble::ReadyNotInvited => {
                !h.is_unsafe() && word.and_then(|w| h.shown.get(w)).is_some_and(|shown| *shown >= 20)
            }
            _ => true,
        };
        let is = |h: &Read| {
            let here = h.is.troubles.iter().find(|(t, word)| *t == trouble && really(h, *word));
            here.map(|(_, word)| *word)
        };
        let (mut n, mut found, mut little, mut found_little) = (0, 0, 0, 0);
        let (mut told, mut right) = (0, 0);
        for (home, needs) in each(read) {
            let hit = is(home).is_some_and(|word| tells_of(home, needs, trouble, word));
            match (is(home).is_some(), home.is.keeps == Keeps::All) {
                (true, true) => (n, found) = (n + 1, found + usize::from(hit)),
                (true, false) => (little, found_little) = (little + 1, found_little + usize::from(hit)),
                _ => {}
            }
            let true_too = match trouble {
                // A strong sign by the log is one, whoever wrote it.
                Trouble::StrongSigns | Trouble::Guarding => home.is_unsafe(),
                Trouble::PeopleDiffer => home.differ || is(home).is_some(),
                _ => is(home).is_some(),
            };
            if tells_of(home, needs, trouble, None) {
                told += 1;
                right += usize::from(true_too);
            }
        }
        let aim = match trouble {
            Trouble::StrongSigns | Trouble::Guarding => 1.0,
            Trouble::Silent | Trouble::Overfed | Trouble::ReadyNotInvited => 0.9,
            _ => 0.8,
        };
        let name = format!("{trouble:?}");
        section.add(Finding::share(format!("{name}: found (homes that write)"), Wanted::AtLeast(aim), found, n));
        section.add(Finding::share(format!("{name}: of homes told so, so"), Wanted::AtLeast(0.9), right, told));
        rows.push(vec![name, percent(found, n), percent(right, told), percent(found_little, little)]);
    }
    section.tables.push(table(
        &["trouble", "found, of homes that write", "right, of homes told so", "found, of homes that write little"],
        &rows,
    ));
}

/// What is told of homes without trouble, and of those in which presses mean nothing.
fn quiet(section: &mut Section, read: &[Club<'_>]) {
    let claims: [Claim; 8] = [
        ("a sudden change", |n| n.about == About::Change),
        ("silent", |n| n.about == About::Silent),
        ("a cause of a stuck word", |n| matches!(n.what, What::Held { stuck: Some(_), held: Some(_), .. })),
        ("a cause of a word that gets on", |n| matches!(n.what, What::Held { stuck: None, .. })),
        ("a stuck word without a cause", |n| matches!(n.what, What::Held { held: None, .. })),
        ("leaves sessions", |n| n.about == About::Leaves),
        ("more food than the day's", |n| n.about == About::Ration),
        ("ready to be invited", |n| n.about == About::Ready),
    ];
    let plain = |h: &Read| h.is.troubles.is_empty() && !h.is.meaningless && h.is.keeps == Keeps::All;
    let nothing = |h: &Read| h.is.meaningless && h.is.keeps == Keeps::All;
    let mut rows = Vec::new();
    for (what, claim) in claims {
        let of = |which: &dyn Fn(&Read) -> bool| {
            let inside: Vec<bool> =
                each(read).filter(|(h, _)| which(h)).map(|(_, needs)| needs.iter().any(claim)).collect();
            (inside.iter().filter(|c| **c).count(), inside.len())
        };
        let (a, b) = (of(&plain), of(&nothing));
        let cell = |(k, n): (usize, usize)| Finding::share("", Wanted::Known, k, n).row()[2].clone();
        rows.push(vec![what.to_owned(), cell(a), cell(b)]);
    }
    section.tables.push(table(&["told of", "homes without trouble", "homes that mean nothing"], &rows));
    let false_claim = |h: &Read, n: &Need| {
        let true_cause = |c: Named| h.differ && c == Named::PeopleDiffer;
        matches!(n.about, About::Change | About::Silent | About::Ration | About::Ready | About::Leaves)
            || matches!(n.what, What::Held { held: Some(held), .. } if !true_cause(held.cause))
    };
    for (name, which) in [
        ("homes without trouble: any false claim", &plain as &dyn Fn(&Read) -> bool),
        ("homes that mean nothing: any false claim", &nothing),
    ] {
        let inside: Vec<bool> =
            each(read).filter(|(h, _)| which(h)).map(|(h, needs)| needs.iter().any(|n| false_claim(h, n))).collect();
        let k = inside.iter().filter(|c| **c).count();
        section.add(Finding::share(name, Wanted::AtMost(0.05), k, inside.len()));
    }
    let changed = |(h, needs): (&Read, &[Need])| {
        let drop = h.is.troubles.iter().any(|(t, _)| *t == Trouble::SuddenDrop);
        needs.iter().any(|n| n.about == About::Change).then_some(drop)
    };
    let told: Vec<bool> = each(read).filter_map(changed).collect();
    let wrong = told.iter().filter(|d| !**d).count();
    section.add(Finding::share("sudden changes told that are chance", Wanted::AtMost(0.1), wrong, told.len()));
    let with: Vec<f64> = read
        .iter()
        .map(|(rows, _)| {
            let needing = rows.iter().filter(|r| r.needs.iter().any(|n| n.about < About::Check)).count();
            needing as f64 / rows.len() as f64
        })
        .collect();
    section.add(Finding::mean("share of a desk with a need above checks", Wanted::Known, &with, In::Percent));
}

/// Whether the first rows hold the homes that are truly the most pressing, and safety stands above all else.
fn order(section: &mut Section, read: &[Club<'_>], homes: usize) {
    let share = |rows: &[&Read], first: usize| {
        let mut truly: Vec<_> = rows.iter().filter_map(|h| pressing(h)).collect();
        truly.sort_unstable();
        let of = first.min(truly.len());
        let Some(bar) = of.checked_sub(1).and_then(|last| truly.get(last)) else { return (0, 0) };
        (rows.iter().take(of).filter(|h| pressing(h).is_some_and(|of| of <= *bar)).count(), of)
    };
    let mut add = |name: String, found: (usize, usize)| {
        section.add(Finding::share(name, Wanted::AtLeast(0.9), found.0, found.1));
    };
    let sum = |all: Vec<(usize, usize)>| all.iter().fold((0, 0), |(a, b), (k, n)| (a + k, b + n));
    let ranked: Vec<Vec<&Read>> = read.iter().map(|(rows, club)| rows.iter().map(|r| &club[r.key]).collect()).collect();
    add(format!("first ten of {homes}: truly the most pressing"), sum(ranked.iter().map(|r| share(r, 10)).collect()));
    let calm = ranked.iter().map(|r| r.iter().copied().filter(|h| !h.is_unsafe()).collect::<Vec<_>>());
    add("the ten after all that is unsafe: truly the next".to_owned(), sum(calm.map(|r| share(&r, 10)).collect()));
    // A coach of fifty: each club in parts, read by themselves.
    let parts = || {
        read.iter().flat_map(|(_, club)| {
            club.chunks(50).filter(|c| c.len() == 50).map(|part| {
                let rows = desk(part.iter().map(|h| &h.line).enumerate(), part[0].line.at, &Seen::default(), None);
                rows.iter().map(|r| &part[r.key]).collect::<Vec<_>>()
            })
        })
    };
    let small: Vec<(usize, usize)> = parts().map(|r| share(&r, 10)).collect();
    if !small.is_empty() {
        add("first ten of 50: truly the most pressing".to_owned(), sum(small));
    }
    let (mut above, mut of) = (0, 0);
    for (rows, club) in read {
        let first_calm = rows.iter().position(|r| !club[r.key].is_unsafe()).unwrap_or(rows.len());
        for (at, row) in rows.iter().enumerate().filter(|(_, r)| club[r.key].is_unsafe()) {
            of += 1;
            above += usize::from(at < first_calm && row.needs.first().is_some_and(|n| n.about == About::Safety));
        }
    }
    section.add(Finding::share("unsafe by its log: above all that is not", Wanted::AtLeast(1.0), above, of));
    let calm = each(read).filter(|(h, _)| !h.is_unsafe());
    let called: Vec<bool> = calm.map(|(_, needs)| needs.iter().any(|n| n.about == About::Safety)).collect();
    let wrong = called.iter().filter(|c| **c).count();
    section.add(Finding::share("safe by its log: called unsafe", Wanted::AtMost(0.0), wrong, called.len()));
}

/// Homes that write little: is a cause named that is about what was not written?
fn little(section: &mut Section, read: &[Club<'_>]) {
    let mut rows = Vec::new();
    for keeps in [Keeps::FewDays, Keeps::FewRecords, Keeps::OnlyPresses] {
        let homes: Vec<(&Read, &[Need])> = each(read).filter(|(h, _)| h.is.keeps == keeps && h.days > 28).collect();
        let wrong = |(h, needs): &(&Read, &[Need])| {
            let true_causes: Vec<Named> = h.is.troubles.iter().filter_map(|(t, _)| t.cause()).map(named).collect();
            causes(h, needs).iter().any(|(c, _)| !(true_causes.contains(c) || h.differ && *c == Named::PeopleDiffer))
        };
        let too_little = |(h, needs): &(&Read, &[Need])| {
            let truly = h.is.troubles.iter().any(|(t, _)| *t == Trouble::TooLittleShowing);
            !truly && causes(h, needs).iter().any(|(c, _)| *c == Named::TooLittle)
        };
        let said = |(_, needs): &(&Read, &[Need])| {
            needs.iter().any(|n| matches!(n.about, About::Little | About::Silent | About::Safety))
        };
        let changed = |(h, needs): &(&Read, &[Need])| {
            let truly = h.is.troubles.iter().any(|(t, _)| *t == Trouble::SuddenDrop);
            !truly && needs.iter().any(|n| n.about == About::Change)
        };
        let n = homes.len();
        let count = |f: &dyn Fn(&Told<'_>) -> bool| homes.iter().filter(|h| f(h)).count();
        let (a, b, c, d) = (count(&wrong), count(&too_little), count(&said), count(&changed));
        section.add(Finding::share(format!("{keeps:?}: a wrong cause is named"), Wanted::AtMost(0.05), a, n));
        let cell = |k: usize| Finding::share("", Wanted::Known, k, n).row()[2].clone();
        rows.push(vec![format!("{keeps:?}"), cell(a), cell(b), cell(d), cell(c), n.to_string()]);
    }
    section.tables.push(table(
        &[
            "what is written",
            "a wrong cause",
            "\"shown too little\" wrongly",
            "a change wrongly",
            "told as silent, unsafe or too little written",
            "homes",
        ],
        &rows,
    ));
}
