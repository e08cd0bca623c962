//! What other homes did, in words.

use crate::events;
use crate::locale::Locale;
use crate::say;
use sayso_advisor::others::{Beside, TookMore, Usual};
use sayso_model::{Species, Stage};
use sayso_norms::{
    AgeBand, Cell, Curve, DayPart, HourShare, People, Quantile, Question, Release, Spread, SummaryRow, TimedStage,
    WeekShare, WordKind,
};

/// The animals of a cell, as it stands after "with".
#[must_use]
pub fn who(l: &Locale, cell: &Cell) -> String {
    animals(l, cell.species, cell.age_band)
}

/// Animals of a species and an age, none for every age, as it stands after "with".
pub(crate) fn animals(l: &Locale, species: Species, age_band: Option<AgeBand>) -> String {
    let species = match species {
        Species::Other => "other",
        known => known.name(),
    };
    let age = match age_band {
        Some(AgeBand::UnderTwo) => "under-two",
        Some(AgeBand::TwoToSeven) => "two-to-seven",
        Some(AgeBand::EightOrMore) => "eight-or-more",
        Some(AgeBand::Unknown) | None => "every",
    };
    say!(l, others::who, species = species, age = age)
}

/// The words of a cell, as they stand after "of all".
#[must_use]
pub fn kind(l: &Locale, cell: &Cell) -> String {
    words_for(l, cell.word_kind)
}

/// Words of a kind, none for every kind, as they stand after "of all".
pub(crate) fn words_for(l: &Locale, kind: Option<WordKind>) -> String {
    say!(l, others::kind, kind = kind.map_or("every", WordKind::name))
}

/// What a word brings, in a table.
#[must_use]
pub fn kind_name(l: &Locale, kind: WordKind) -> String {
    say!(l, others::kind_name, kind = kind.name())
}

/// The level of the intervals.
#[must_use]
pub fn level(l: &Locale, release: &Release) -> String {
    l.percent(release.level)
}

/// A place on a grid; beyond what was recorded where it was not reached.
pub(crate) fn place(l: &Locale, value: Option<f64>) -> String {
    value.map_or_else(|| say!(l, others::beyond), |x| l.number(x, 0))
}

fn ends(l: &Locale, of: Quantile) -> [String; 2] {
    [place(l, of.low), place(l, of.high)]
}

/// Where half and the middle half of others first pressed, as one or two sentences.
#[must_use]
pub fn half(l: &Locale, release: &Release, cell: &Cell, curve: &Curve) -> String {
    let (half, level) = (curve.quantiles.p50, level(l, release));
    let [low, high] = ends(l, half);
    let days = cell.question == Question::DaysToFirstPress;
    let first = match whole(half) {
        Some(value) if days => say!(l, others::half_days, value = value, level = level, low = low, high = high),
        Some(value) => say!(
            l,
            others::half,
            homes = cell.households,
            who = who(l, cell),
            kind = kind(l, cell),
            value = value,
            level = level,
            low = low,
            high = high
        ),
        None if days => say!(l, others::half_open_days),
        None => say!(l, others::half_open, homes = cell.households, who = who(l, cell), kind = kind(l, cell)),
    };
    with_middle(l, curve, first)
}

/// A place on a grid of whole showings or days, checked as it was read.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
fn whole(of: Quantile) -> Option<u32> {
    of.value.map(|x| x.round() as u32)
}

/// A sentence, and where the middle half lies after it.
fn with_middle(l: &Locale, curve: &Curve, first: String) -> String {
    match middle(l, curve) {
        Some(middle) => format!("{first} {middle}"),
        None => first,
    }
}

/// The middle half, where at least its lower end was reached.
fn middle(l: &Locale, curve: &Curve) -> Option<String> {
    let low = l.number(curve.quantiles.p25.value?, 0);
    Some(match curve.quantiles.p75.value {
        Some(high) => say!(l, others::middle, low = low, high = l.number(high, 0)),
        None => say!(l, others::middle_open, low = low),
    })
}

/// How it went here so far.
#[must_use]
pub fn own(l: &Locale, name: &str, word: &str, row: &SummaryRow) -> String {
    let (shown, days) = (row.exposures, row.days);
    if row.pressed && shown == 0 {
        say!(l, others::own_before, name = name, word = word)
    } else if row.pressed {
        say!(l, others::own_pressed, name = name, word = word, shown = shown, days = days)
    } else {
        say!(l, others::own_open, name = name, word = word, shown = shown, days = days)
    }
}

/// How often animals took part.
#[must_use]
pub fn joined(l: &Locale, release: &Release, cell: &Cell, spread: &Spread) -> String {
    let share = |x: Option<f64>| l.percent(x.unwrap_or(f64::NAN));
    let [from, half, to] = [spread.quantiles.p25, spread.quantiles.p50, spread.quantiles.p75];
    say!(
        l,
        others::joined,
        homes = cell.households,
        who = who(l, cell),
        value = share(half.value),
        level = level(l, release),
        low = share(half.low),
        high = share(half.high),
        from = share(from.value),
        to = share(to.value)
    )
}

/// Within how many days half of the words moved on from a stage, with whose they are.
#[must_use]
pub fn stages_told(l: &Locale, release: &Release, stage: TimedStage, found: Option<Beside<'_>>) -> String {
    let name = events::stage(l, Stage::from(stage));
    let Some(Beside { nearest, curve }) = found else { return say!(l, others::stages_not_enough, stage = name) };
    let cell = nearest.cell;
    let (half, who) = (curve.quantiles.p50, who(l, cell));
    let [low, high] = ends(l, half);
    let first = match whole(half) {
        Some(value) => say!(
            l,
            others::stages,
            homes = cell.households,
            who = who,
            stage = name,
            value = value,
            level = level(l, release),
            low = low,
            high = high
        ),
        None => say!(l, others::stages_open, homes = cell.households, who = who, stage = name),
    };
    with_middle(l, curve, first)
}

/// How often words were pressed in one week of a stretch.
#[must_use]
pub fn week_told(l: &Locale, release: &Release, one: &WeekShare) -> String {
    let percents = [one.some.share, one.some.low, one.some.high, one.daily.share, one.daily.low, one.daily.high];
    let [some, somelow, somehigh, daily, dailylow, dailyhigh] = percents.map(|share| l.percent(share));
    say!(
        l,
        others::weeks_line,
        span = weeks_span(l, one),
        some = some,
        level = level(l, release),
        somelow = somelow,
        somehigh = somehigh,
        daily = daily,
        dailylow = dailylow,
        dailyhigh = dailyhigh,
        homes = one.households
    )
}

fn weeks_span(l: &Locale, one: &WeekShare) -> String {
    say!(l, others::weeks_span, from = one.from.from(), to = one.to)
}

/// In which hours most presses of others lay, with whose they are.
#[must_use]
pub fn hours_told(l: &Locale, release: &Release, cell: &Cell, shares: &[HourShare]) -> String {
    let told = say!(l, others::hours, homes = cell.households, who = who(l, cell));
    let Some(most) = shares.iter().max_by(|a, b| a.share.total_cmp(&b.share)) else { return told };
    let [from, to] = ends_of(l, most.part);
    let [value, low, high] = [most.share, most.low, most.high].map(|share| l.percent(share));
    let most = say!(
        l,
        others::hours_most,
        from = from,
        to = to,
        value = value,
        level = level(l, release),
        low = low,
        high = high
    );
    format!("{told} {most}")
}

/// From when to when a part of the day lasts.
#[must_use]
pub fn hours_span(l: &Locale, part: DayPart) -> String {
    let [from, to] = ends_of(l, part);
    say!(l, others::hours_span, from = from, to = to)
}

fn ends_of(l: &Locale, part: DayPart) -> [String; 2] {
    let begins = part.begins();
    [begins, (begins + DayPart::HOURS) % 24].map(|hour| l.hour(hour))
}

/// That a word is not pressed yet and others took longer.
#[must_use]
pub fn usual(l: &Locale, release: &Release, word: &str, usual: &Usual<'_>) -> String {
    let cell = usual.nearest.cell;
    let part = match usual.part {
        TookMore::Half => "half",
        TookMore::Quarter => "quarter",
    };
    let [low, high] = ends(l, usual.more);
    say!(
        l,
        others::usual,
        word = word,
        shown = usual.row.exposures,
        homes = cell.households,
        who = who(l, cell),
        part = part,
        kind = kind(l, cell),
        more = place(l, usual.more.value),
        level = level(l, release),
        low = low,
        high = high
    )
}

/// Whose figures these are and what was done to them: a sentence each.
#[must_use]
pub fn source(l: &Locale, release: &Release) -> Vec<String> {
    let mut said = vec![say!(l, others::source, release = &release.name, date = l.date(release.made))];
    said.push(match release.people {
        People::SelfChosen => say!(l, others::self_chosen),
        People::Invented => say!(l, others::invented),
    });
    if release.noise.is_some() {
        said.push(say!(l, others::noise));
    } else if let Some(club) = &release.club {
        said.push(say!(l, others::club, club = club));
    }
    said
}
