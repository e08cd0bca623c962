//! Markup of Others.

use crate::chart::{Axis, Bar, Lines, Mark, Series, bars, lines, nice_axis};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::others::{Beside, beside, by_week, first_words, hours, in_stage, taking_part};
use sayso_advisor::summary::Summary;
use sayso_model::{Stage, WordId};
use sayso_norms::{
    Cell, Curve, HourShare, Nearest, People, Question, Release, SummaryRow, TimedStage, Told, WeekShare, WordKind,
};
use sayso_people::Capability;
use sayso_wording::others::{
    half, hours_span, hours_told, joined, kind_name, level, own, source, stages_told, week_told, who,
};
use sayso_wording::{Locale, events, figures, say};

/// The page below its heading.
pub fn page(page: &AnimalPage, summaries: &[Summary]) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let release = match page.state.norms.current() {
        Ok(Some(release)) => release,
        Ok(None) => return html! { (lead(l, name)) (none(page)) },
        Err(why) => {
            return html! { (lead(l, name)) p.caution data-test="damaged" { (say!(l, others::damaged, why = why)) } };
        }
    };
    html! {
        (lead(l, name))
        @if release.people == People::Invented { p.caution data-test="invented" { (say!(l, others::invented)) } }
        p.quiet { (say!(l, others::press, name = name)) }
        @for summary in summaries.iter().filter(|summary| !ends_sessions(summary)) { (word(page, &release, summary)) }
        (closing(page, &release, summaries))
        @match summaries.first() {
            None => p data-test="nothing-shown" { (say!(l, others::nothing_shown)) },
            Some(Summary { row, .. }) => {
                (joining(page, &release, row, summaries))
                (weeks(page, &release, row))
                (stages(page, &release, row))
                (hours_of_day(page, &release, row))
                (words(l, &release, row))
            }
        }
        (from(l, &release))
    }
}

fn lead(l: &Locale, name: &str) -> Markup {
    html! { p.lead { (say!(l, others::lead, name = name)) } }
}

/// No release: how to get one.
fn none(page: &AnimalPage) -> Markup {
    let l = &page.locale;
    html! {
        section.card data-test="no-release" {
            p { (say!(l, others::none)) }
            @if page.leave.is_some() {
                p { (say!(l, others::none_server)) }
            } @else {
                p { (say!(l, others::none_home, dir = page.state.store.dir().display().to_string())) }
            }
        }
    }
}

/// Whose figures they are.
fn from(l: &Locale, release: &Release) -> Markup {
    html! {
        section data-test="source" {
            h2 { (say!(l, others::source_title)) }
            @for sentence in source(l, release) { p { (sentence) } }
            p { a.link href="/methods" { (say!(l, evidence::how_computed)) } }
        }
    }
}

/// What a cell holds besides learners like this one.
fn wider(l: &Locale, nearest: &Nearest<'_>) -> Markup {
    html! {
        @if nearest.any_age { p.quiet { (say!(l, others::any_age)) } }
        @if nearest.any_kind { p.quiet { (say!(l, others::any_kind)) } }
    }
}

fn ends_sessions(summary: &Summary) -> bool {
    summary.row.word_kind == WordKind::Closing
}

/// Words that end a session, apart: beside words that bring something they would look late.
fn closing(page: &AnimalPage, release: &Release, summaries: &[Summary]) -> Markup {
    let (l, mut all) = (&page.locale, summaries.iter().filter(|summary| ends_sessions(summary)).peekable());
    html! {
        @if all.peek().is_some() {
            section data-test="closing-words" {
                h2 { (say!(l, others::closing_title)) }
                p { (say!(l, others::closing)) }
                @for summary in all { (word(page, release, summary)) }
            }
        }
    }
}

/// One word beside those of others.
fn word(page: &AnimalPage, release: &Release, summary: &Summary) -> Markup {
    let (l, name, row) = (&page.locale, page.card.name.as_str(), &summary.row);
    let says = says(page, summary.word);
    let showings = beside(release, Question::ShowingsToFirstPress, row);
    let days = beside(release, Question::DaysToFirstPress, row);
    html! {
        section.card data-test="others-word" {
            h2.first { (say!(l, words::quoted, says = &says)) }
            p { (own(l, name, &says, row)) }
            @match showings {
                Err(_) => p data-test="not-enough" { (say!(l, others::not_enough)) },
                Ok(found @ Beside { nearest, curve }) => {
                    p data-test="half" { (half(l, release, nearest.cell, curve)) }
                    @if let Ok(days) = days { p { (half(l, release, days.nearest.cell, days.curve)) } }
                    (wider(l, &nearest))
                    (drawn(l, release, (name, &says), row, nearest.cell, curve))
                    @if found.looks_late(row) { p.note data-test="late" { (say!(l, others::late, name = name)) } }
                }
            }
        }
    }
}

fn says(page: &AnimalPage, word: WordId) -> String {
    page.story.words().get(&word).map(|card| card.says.to_string()).unwrap_or_default()
}

/// The curve of others with its band, and how far it is here.
fn drawn(
    l: &Locale,
    release: &Release,
    (name, says): (&str, &str),
    row: &SummaryRow,
    cell: &Cell,
    curve: &Curve,
) -> Markup {
    let shown = f64::from(row.exposures);
    let last = curve.points.last().map_or(shown, |point| point.at);
    let number = l.number(shown, 0);
    let mark = if row.pressed {
        say!(l, others::chart_mark, name = name, shown = number)
    } else {
        say!(l, others::chart_mark_open, name = name, shown = number)
    };
    let points = curve.points.iter().map(|p| (p.at, p.share, Some((p.low, p.high)))).collect();
    lines(
        l,
        &Lines {
            title: say!(l, others::chart_title, word = says),
            told: format!("{} {}", half(l, release, cell, curve), own(l, name, says, row)),
            x: nice_axis(l, &say!(l, others::chart_showings), 0.0, last.max(shown).max(1.0)),
            y: Axis::share(l, &say!(l, others::chart_share)),
            series: vec![Series { points, steps: true, ..Series::default() }],
            level: None,
            mark: Some(Mark { at: shown, name: mark, open: !row.pressed }),
            band: say!(l, others::band, level = level(l, release)),
        },
    )
}

/// How often animals took part.
fn joining(page: &AnimalPage, release: &Release, row: &SummaryRow, summaries: &[Summary]) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let (took, invited) =
        summaries.iter().fold((0, 0), |(took, invited), s| (took + s.row.joined, invited + s.row.invited));
    html! {
        @if let Ok((nearest, spread)) = taking_part(release, row) {
            section.card data-test="taking-part" {
                h2.first { (say!(l, others::joined_title)) }
                @if invited > 0 { p { (say!(l, others::own_joined, name = name, joined = took, invited = invited)) } }
                p { (joined(l, release, nearest.cell, spread)) }
                (wider(l, &nearest))
            }
        }
    }
}

/// Whether a release tells of it of anybody: one of a form before does not.
fn tells(release: &Release, of: &[Question]) -> bool {
    release.cells.iter().any(|cell| of.contains(&cell.question))
}

/// How long words stand in each stage.
fn stages(page: &AnimalPage, release: &Release, row: &SummaryRow) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let of = TimedStage::ALL.map(|stage| (stage, in_stage(release, stage, row).ok()));
    if !tells(release, &TimedStage::ALL.map(Question::in_stage)) {
        return html! {};
    }
    let title = say!(l, others::stages_title);
    let said = of.map(|(stage, found)| stages_told(l, release, stage, found));
    let found: Vec<_> = of.into_iter().filter_map(|(stage, found)| Some((stage, found?))).collect();
    html! {
        section.card data-test="stages" {
            h2.first { (&title) }
            @for sentence in &said { p { (sentence) } }
            @if let Some((_, first)) = found.first() {
                (wider(l, &first.nearest))
                (stages_drawn(l, release, title, &said.join(" "), &found))
                p.note { (say!(l, others::stages_caution, name = name)) }
            }
        }
    }
}

fn stages_drawn(
    l: &Locale,
    release: &Release,
    title: String,
    told: &str,
    found: &[(TimedStage, Beside<'_>)],
) -> Markup {
    let series = |(stage, Beside { curve, .. }): &(TimedStage, Beside<'_>)| Series {
        name: events::stage(l, Stage::from(*stage)),
        points: curve.points.iter().map(|p| (p.at, p.share, Some((p.low, p.high)))).collect(),
        steps: true,
        ..Series::default()
    };
    let last = found.iter().filter_map(|(_, beside)| beside.curve.points.last()).map(|p| p.at).fold(1.0, f64::max);
    lines(
        l,
        &Lines {
            title,
            told: told.to_owned(),
            x: nice_axis(l, &say!(l, others::stages_axis), 0.0, last),
            y: Axis::share(l, &say!(l, others::stages_share)),
            series: found.iter().map(series).collect(),
            level: None,
            mark: None,
            band: say!(l, others::band, level = level(l, release)),
        },
    )
}

/// How often words are pressed in a week, by weeks since their first showing.
fn weeks(page: &AnimalPage, release: &Release, row: &SummaryRow) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    if !tells(release, &[Question::PressesByWeek]) {
        return html! {};
    }
    let title = say!(l, others::weeks_title);
    html! {
        section.card data-test="weeks" {
            h2.first { (&title) }
            @match by_week(release, row) {
                Err(_) => p { (say!(l, others::not_enough)) },
                Ok((nearest, weeks)) => {
                    @let said: Vec<String> = weeks.iter().map(|one| week_told(l, release, one)).collect();
                    p { (say!(l, others::weeks, homes = nearest.cell.households, who = who(l, nearest.cell))) }
                    (wider(l, &nearest))
                    (weeks_drawn(l, release, title, &said.join(" "), weeks))
                    ul { @for line in &said { li { (line) } } }
                    p.note { (say!(l, others::weeks_caution, name = name)) }
                }
            }
        }
    }
}

fn weeks_drawn(l: &Locale, release: &Release, title: String, told: &str, weeks: &[WeekShare]) -> Markup {
    let series = |name: String, of: fn(&WeekShare) -> Told| Series {
        name,
        points: weeks
            .iter()
            .map(|one| {
                let told = of(one);
                (middle(one), told.share, Some((told.low, told.high)))
            })
            .collect(),
        dots: true,
        ..Series::default()
    };
    let last = weeks.last().map_or(1.0, |one| f64::from(one.to));
    lines(
        l,
        &Lines {
            title,
            told: told.to_owned(),
            x: nice_axis(l, &say!(l, others::weeks_axis), 0.0, last),
            y: Axis::share(l, &say!(l, others::weeks_share)),
            series: vec![
                series(say!(l, others::weeks_some), |one| one.some),
                series(say!(l, others::weeks_daily), |one| one.daily),
            ],
            level: None,
            mark: None,
            band: say!(l, others::band, level = level(l, release)),
        },
    )
}

/// The middle of a stretch, in weeks that have passed.
fn middle(one: &WeekShare) -> f64 {
    f64::midpoint(f64::from(one.from.from() - 1), f64::from(one.to))
}

/// In which hours of the day animals press.
fn hours_of_day(page: &AnimalPage, release: &Release, row: &SummaryRow) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    if !tells(release, &[Question::Hours]) {
        return html! {};
    }
    let title = say!(l, others::hours_title);
    html! {
        section.card data-test="hours" {
            h2.first { (title) }
            @match hours(release, row) {
                Err(_) => p { (say!(l, others::not_enough)) },
                Ok((nearest, shares)) => {
                    @let told = hours_told(l, release, nearest.cell, shares);
                    p { (told) }
                    (wider(l, &nearest))
                    (bars(l, &title, &told, &say!(l, others::hours_axis), &say!(l, others::hours_share), &hours_drawn(l, shares)))
                    p.note { (say!(l, others::hours_caution, name = name)) }
                }
            }
        }
    }
}

fn hours_drawn(l: &Locale, shares: &[HourShare]) -> Vec<Bar> {
    let bar = |one: &HourShare| Bar {
        tick: l.hour(one.part.begins()),
        name: hours_span(l, one.part),
        value: 100.0 * one.share,
        interval: Some((100.0 * one.low, 100.0 * one.high)),
        n: None,
    };
    shares.iter().map(bar).collect()
}

/// What first words brought.
fn words(l: &Locale, release: &Release, row: &SummaryRow) -> Markup {
    html! {
        @if let Ok((nearest, parts)) = first_words(release, row) {
            details data-test="first-words" {
                summary { (say!(l, others::words_title)) }
                p { (say!(l, others::words, homes = nearest.cell.households, who = who(l, nearest.cell))) }
                (wider(l, &nearest))
                div.scroll tabindex="0" role="region" aria-label=(say!(l, others::words_title)) {
                    table {
                        thead { tr {
                            th scope="col" { (say!(l, others::nth)) }
                            th scope="col" { (say!(l, others::brings)) }
                            th scope="col" { (say!(l, others::share)) " (" (say!(l, others::band, level = level(l, release))) ")" }
                        } }
                        tbody { @for part in parts { tr {
                            th scope="row" { (part.word) }
                            td { (kind_name(l, part.kind)) }
                            td { (l.percent(part.share)) " (" (figures::interval(l, &l.percent(part.low), &l.percent(part.high))) ")" }
                        } } }
                    }
                }
            }
        }
    }
}

/// The line on a word's evidence: what is usual, and where more of it stands.
pub fn of_word(page: &AnimalPage, word: WordId) -> Markup {
    let l = &page.locale;
    let Ok(Some(release)) = page.state.norms.current() else { return html! {} };
    let summaries = page.state.kept.summaries(page.home, &page.case());
    let row = summaries.iter().find(|summary| summary.word == word).map(|summary| &summary.row);
    let told = row.and_then(|row| beside(&release, Question::ShowingsToFirstPress, row).ok());
    html! {
        @if let Some(Beside { nearest, curve }) = told {
            p data-test="others" { (half(l, &release, nearest.cell, curve)) " " (link(page)) }
        }
    }
}

/// The line on Today, where it helps: a word is not pressed yet, and others took longer.
pub fn usual(page: &AnimalPage) -> Option<Markup> {
    let l = &page.locale;
    let release = page.may(Capability::SeeFigures).then(|| page.state.norms.current().ok().flatten()).flatten()?;
    let summaries = page.state.kept.summaries(page.home, &page.case());
    let usual = sayso_advisor::others::usual(&release, &summaries)?;
    let told = sayso_wording::others::usual(l, &release, &says(page, usual.word), &usual);
    Some(html! { p data-test="others" { (told) " " (link(page)) } })
}

fn link(page: &AnimalPage) -> Markup {
    html! { a href=(format!("/a/{}/others", page.id)) { (say!(&page.locale, others::link)) } }
}
