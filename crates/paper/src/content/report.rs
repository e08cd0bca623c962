//! Sections of the progress report. Every figure stands with its interval and its count.

use super::said;
use crate::sheet::{Bar, Block, Cell, Chart, Drawn, Look, Paragraph, Row, Table, Whisker};
use sayso_advisor::days::{DayRow, Days, Week};
use sayso_advisor::likes::likes;
use sayso_advisor::ration::Ration;
use sayso_advisor::stages::Standing;
use sayso_advisor::welfare::welfare;
use sayso_advisor::{Case, Estimate};
use sayso_model::{AnimalCard, LikesTest, ProbeTrial, Sign, SignLevel, WordId};
use sayso_wording::advice::{known, stage_name};
use sayso_wording::figures::{finding, in_cell};
use sayso_wording::ration::{basis, refusal};
use sayso_wording::signs::noted;
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;

pub fn in_short(case: &Case<'_>, l: &Locale, card: &AnimalCard, all: &Days) -> Vec<Block> {
    let begun: usize = all.days.iter().map(|d| d.sessions).sum();
    let joined: usize = all.days.iter().map(|d| d.joined).sum();
    let showings: usize = all.days.iter().map(DayRow::all_showings).sum();
    let presses: usize = all.days.iter().map(DayRow::all_presses).sum();
    let noted = all.days.iter().filter(|d| d.sessions + d.all_showings() + d.all_presses() > 0).count();
    let items = vec![
        say!(l, sheets::noted, noted = noted, days = all.days.len()),
        say!(l, sheets::joined, name = &card.name, share = in_cell(l, &Estimate::share(joined, begun))),
        say!(l, sheets::counts, name = &card.name, showings = showings, presses = presses),
    ];
    let mut blocks = vec![Block::Heading(say!(l, sheets::in_short)), Block::List { items, big: false }];
    for advice in &welfare(case) {
        blocks.push(Paragraph::block(
            say!(l, sheets::welfare),
            said::advice(l, card.name.as_str(), advice),
            Look::Boxed,
        ));
    }
    blocks
}

/// A row a word; its own presses are those of the period, so that with those of words it is not taught, taken off or another
/// animal's, they sum to the total in short.
pub fn words(case: &Case<'_>, l: &Locale, card: &AnimalCard, all: &[Standing], period: &Days) -> Vec<Block> {
    let heading = Block::Heading(say!(l, sheets::words));
    if all.is_empty() {
        return vec![heading, Paragraph::block("", say!(l, sheets::none_taught), Look::Plain)];
    }
    let head = vec![
        say!(l, sheets::word),
        say!(l, sheets::stage),
        say!(l, sheets::shown),
        say!(l, sheets::to_giving),
        say!(l, sheets::when_invited),
        say!(l, sheets::own_presses),
    ];
    let own = |s: &Standing| -> usize { period.days.iter().filter_map(|d| d.presses.get(&s.word)).sum() };
    let mut rest: BTreeMap<WordId, usize> = BTreeMap::new();
    for (word, presses) in period.days.iter().flat_map(|d| &d.presses) {
        if all.iter().all(|s| s.word != *word) {
            *rest.entry(*word).or_default() += presses;
        }
    }
    let cards = case.story().words();
    let named = |word| cards.get(word).map_or_else(|| say!(l, events::word_without_card), |card| card.says.to_string());
    let rest: Vec<String> =
        rest.iter().map(|(word, n)| say!(l, sheets::presses_of, word = named(word), presses = *n)).collect();
    let row = |s: &Standing| {
        let cells = vec![
            Cell::from(s.says.clone()),
            stage_name(l, s.stage).into(),
            say!(l, sheets::n, n = s.showings).into(),
            in_cell(l, &s.delay).into(),
            in_cell(l, &s.response).into(),
            say!(l, sheets::n, n = own(s)).into(),
        ];
        Row { word: Some(s.word), cells }
    };
    let table = Table { caption: say!(l, sheets::since), head, rows: all.iter().map(row).collect(), whole: false };
    let stages = Paragraph::block("", say!(l, sheets::stages, name = &card.name), Look::Quiet);
    let rest = (!rest.is_empty()).then(|| {
        let said = say!(l, sheets::presses_rest, name = &card.name, words = l.and(&rest));
        Paragraph::block("", said, Look::Quiet)
    });
    [heading, Block::Table(table)].into_iter().chain(rest).chain([stages]).collect()
}

pub fn showings(l: &Locale, all: &Days) -> Option<Chart> {
    let week = |w: &Week| say!(l, sheets::week_from, day = l.date(w.first));
    let bar = |w: &Week| Bar { tick: l.day_of_month(w.first), name: week(w), count: w.showings };
    let told = |w: &Week| say!(l, sheets::told, what = week(w), figure = w.showings);
    all.weeks.iter().any(|w| w.showings > 0).then(|| Chart {
        title: say!(l, sheets::showings_a_week),
        told: l.apart(&all.weeks.iter().map(told).collect::<Vec<_>>()),
        drawn: Drawn::Bars {
            x: say!(l, sheets::axis_week),
            y: say!(l, sheets::axis_showings),
            bars: all.weeks.iter().map(bar).collect(),
        },
    })
}

fn shares(l: &Locale, title: String, x: String, rows: Vec<(String, &Estimate)>) -> Chart {
    let told = |(name, e): &(String, &Estimate)| say!(l, sheets::told, what = name, figure = finding(l, e));
    let told = l.apart(&rows.iter().map(told).collect::<Vec<_>>());
    let drawn = |(name, e): (String, &Estimate)| {
        // What is too early to say is not drawn either.
        let e = if e.too_early() { &Estimate { value: None, low: None, high: None, ..*e } } else { e };
        Whisker::of(name, e)
    };
    let rows = rows.into_iter().map(drawn).collect();
    Chart { title, told, drawn: Drawn::Whiskers { x, level: None, rows } }
}

pub fn joined(l: &Locale, all: &Days) -> Option<Chart> {
    let rows: Vec<_> =
        all.weeks.iter().map(|w| (say!(l, sheets::week_from, day = l.date(w.first)), &w.joining)).collect();
    rows.iter()
        .any(|r| r.1.n > 0)
        .then(|| shares(l, say!(l, sheets::joined_by_week), say!(l, sheets::axis_joined), rows))
}

pub fn response(l: &Locale, words: &[Standing]) -> Option<Chart> {
    let rows: Vec<_> = words.iter().filter(|s| s.response.n > 0).map(|s| (s.says.clone(), &s.response)).collect();
    (!rows.is_empty()).then(|| shares(l, say!(l, sheets::when_invited), say!(l, sheets::axis_pressed), rows))
}

pub fn answered(l: &Locale, card: &AnimalCard, all: &Days) -> Vec<Block> {
    let a = &all.answers;
    let n = a.given + a.partly + a.declined + a.alternative + a.missed;
    if n == 0 {
        return Vec::new();
    }
    let share = |k| in_cell(l, &Estimate::share(k, n));
    let given = if a.partly > 0 {
        say!(l, sheets::given_partly, share = share(a.given), partly = share(a.partly))
    } else {
        say!(l, sheets::given, share = share(a.given))
    };
    let items = vec![
        given,
        say!(l, sheets::not_now, declined = share(a.declined), other = share(a.alternative)),
        say!(l, sheets::missed, share = share(a.missed)),
    ];
    vec![Block::Heading(say!(l, sheets::answered, name = &card.name)), Block::List { items, big: false }]
}

pub fn signs(case: &Case<'_>, l: &Locale, all: &Days) -> Vec<Block> {
    let Some(first) = all.days.first() else { return Vec::new() };
    let from = first.day.start(case.zone());
    let signs: Vec<_> = case.story().between::<Sign>(case.animal(), from, case.now()).collect();
    let count = |level: SignLevel| signs.iter().filter(|s| s.part.level == level).count();
    let counts = say!(
        l,
        sheets::signs,
        joining = count(SignLevel::Joining),
        mild = count(SignLevel::Mild),
        strong = count(SignLevel::Strong)
    );
    let mut blocks = vec![Block::Heading(say!(l, sheets::body_language)), Paragraph::block("", counts, Look::Plain)];
    let strong = signs.iter().filter(|s| s.part.level == SignLevel::Strong);
    let items: Vec<String> = strong
        .map(|s| {
            say!(l, sheets::strong_sign, day = l.date(s.at().day(case.zone())), sign = noted(l, s.part.sign.as_str()))
        })
        .collect();
    if !items.is_empty() {
        blocks.push(Block::List { items, big: false });
    }
    blocks.push(Paragraph::block("", say!(l, sheets::signs_note), Look::Quiet));
    blocks
}

pub fn food(l: &Locale, name: &str, today: &Ration) -> Vec<Block> {
    let kcal = |x: f64| l.number(x, 0);
    let basis = today.basis.map(|b| basis(l, &b)).unwrap_or_default();
    let text = match (today.day_kcal, today.budget_kcal, today.range_kcal) {
        (Some(day), Some(rewards), Some((low, high))) => say!(
            l,
            sheets::reckoned_range,
            day = kcal(day),
            low = kcal(low),
            high = kcal(high),
            rewards = kcal(rewards),
            basis = &basis
        ),
        (Some(day), Some(rewards), None) => {
            say!(l, sheets::reckoned, day = kcal(day), rewards = kcal(rewards), basis = &basis)
        }
        _ => {
            let why = today.refusal.map_or_else(|| say!(l, sheets::why_unknown), |why| refusal(l, name, &why));
            say!(l, sheets::no_allowance, why = why)
        }
    };
    vec![Block::Heading(say!(l, sheets::food)), Paragraph::block("", text, Look::Plain)]
}

pub fn likes_in_short(case: &Case<'_>, l: &Locale) -> Vec<Block> {
    let report = likes(case);
    let text = match &report.known {
        Some(k) => {
            let last = report.last.map(|at| say!(l, sheets::last_tested, day = l.date(at.day(case.zone()))));
            std::iter::once(known(l, k)).chain(last).collect::<Vec<_>>().join(" ")
        }
        None => say!(l, sheets::not_tested, trials = report.trials),
    };
    vec![Block::Heading(say!(l, sheets::likes)), Paragraph::block("", text, Look::Plain)]
}

/// What the records leave open, named one by one, under a heading.
pub fn not_known(case: &Case<'_>, l: &Locale, card: &AnimalCard, all: &Days, words: &[Standing]) -> Vec<Block> {
    let items = open(case, l, card, all, words);
    vec![Block::Heading(say!(l, sheets::not_known)), Block::List { items, big: false }]
}

/// What the records leave open, named one by one.
pub fn open(case: &Case<'_>, l: &Locale, card: &AnimalCard, all: &Days, words: &[Standing]) -> Vec<String> {
    let checks = case.story().of::<ProbeTrial>(case.animal()).count();
    let mut open = vec![if checks == 0 {
        say!(l, sheets::open_no_check, name = &card.name)
    } else {
        say!(l, sheets::open_checks, name = &card.name, checks = checks)
    }];
    // What ends a session is not invited.
    let asked = || words.iter().filter(|s| !s.closing);
    for s in asked().filter(|s| s.response.n == 0) {
        open.push(say!(l, sheets::open_word, word = &s.says));
    }
    for s in asked().filter(|s| s.response.n > 0 && s.response.n < 10) {
        open.push(say!(l, sheets::open_little, word = &s.says, n = s.response.n));
    }
    if all.days.iter().all(|d| d.sessions == 0) {
        open.push(say!(l, sheets::open_sessions, name = &card.name));
    }
    if case.story().of::<LikesTest>(case.animal()).count() == 0 {
        open.push(say!(l, sheets::open_likes, name = &card.name));
    }
    open
}
