//! What an animal likes, on one sheet.

use super::{said, sheet};
use crate::sheet::{Block, Cell, Chart, Drawn, Look, Paragraph, Row, Sheet, Table, Whisker};
use sayso_advisor::Case;
use sayso_advisor::likes::{LikesReport, RankedReward};
use sayso_model::{AnimalCard, LikesFormat};
use sayso_wording::advice::{known as known_best, lean};
use sayso_wording::figures::{finding, in_cell};
use sayso_wording::{Locale, say};

/// What an animal likes; none where the case is about no animal of the story.
#[must_use]
pub fn likes(case: &Case<'_>, locale: Locale) -> Option<Sheet> {
    let l = &locale;
    let card = *case.story().animals().get(&case.animal())?;
    let report = sayso_advisor::likes::likes(case);
    let mut blocks = Vec::new();
    if report.trials == 0 {
        blocks.push(Paragraph::block("", say!(l, sheets::nothing_tested), Look::Plain));
    } else {
        known(&mut blocks, case, l, card, &report);
    }
    for reward in case.story().rewards_of(case.animal()) {
        blocks.extend(said::caution(l, card, reward));
    }
    blocks.push(Paragraph::block("", say!(l, sheets::likes_note, name = &card.name), Look::Quiet));
    let title = say!(l, sheets::likes_of, name = &card.name);
    Some(sheet(case.story(), case.now(), locale, title, blocks))
}

fn known(blocks: &mut Vec<Block>, case: &Case<'_>, l: &Locale, card: &AnimalCard, report: &LikesReport) {
    let (trials, none) = (report.trials, report.no_choice);
    let from = match report.last {
        Some(last) => {
            let day = l.date(last.day(case.zone()));
            say!(l, sheets::trials_last, trials = trials, day = day, none = none)
        }
        None => say!(l, sheets::trials, trials = trials, none = none),
    };
    let mut text = vec![Paragraph::block("", from, Look::Plain)];
    text.extend(report.known.as_ref().map(|k| Paragraph::block(known_best(l, k), "", Look::Plain)));
    if let Some(c) = &report.consistency {
        let told = say!(
            l,
            sheets::consistency,
            zeta = l.number(c.zeta, 2),
            circular = c.circular,
            most = c.most,
            items = c.items
        );
        text.push(Paragraph::block("", told, Look::Plain));
    }
    if let Some(side) = &report.side {
        let told = say!(l, sheets::side, name = &card.name, share = finding(l, &side.left));
        text.push(Paragraph::block("", format!("{} {told}", lean(l, card.name.as_str(), side.lean)), Look::Plain));
    }
    if let Some(why) = said::test_again(l, card.name.as_str(), report) {
        text.push(Paragraph::block(say!(l, sheets::test_again), why, Look::Plain));
    }
    let ranked = report.ranked();
    if ranked.is_empty() {
        blocks.append(&mut text);
    } else {
        blocks.push(Block::Beside { text, charts: vec![chart(l, &ranked)] });
    }
    blocks.extend(scores(l, card, report));
}

fn chart(l: &Locale, ranked: &[&RankedReward]) -> Chart {
    let told = |r: &&RankedReward| say!(l, sheets::told, what = &r.name, figure = finding(l, &r.over_average));
    let rows = ranked.iter().map(|r| Whisker::of(r.name.clone(), &r.over_average));
    Chart {
        title: say!(l, sheets::over_middling),
        told: l.apart(&ranked.iter().map(told).collect::<Vec<_>>()),
        drawn: Drawn::Whiskers { x: say!(l, sheets::chance), level: Some(0.5), rows: rows.collect() },
    }
}

/// Published scores, a column for each format they were found in.
fn scores(l: &Locale, card: &AnimalCard, report: &LikesReport) -> Option<Block> {
    let formats = report.formats();
    if formats.is_empty() {
        return None;
    }
    let mut head = vec![say!(l, sheets::thing)];
    head.extend(formats.iter().map(|f| say!(l, sheets::score, format = f.name(), name = &card.name)));
    let rows = report.ranking.iter().map(|r| {
        let mut cells = vec![Cell::from(r.name.clone())];
        let score = |f: &LikesFormat| r.scores.get(f.name()).map_or_else(|| "\u{2013}".to_owned(), |e| in_cell(l, e));
        cells.extend(formats.iter().map(|f| Cell::from(score(f))));
        Row { word: None, cells }
    });
    Some(Block::Table(Table { caption: say!(l, sheets::scores), head, rows: rows.collect(), whole: false }))
}
