//! A report of one animal's progress over a period, for the family, a veterinarian or a behaviour professional.

use super::{report, said, sheet};
use crate::sheet::{Block, Look, Paragraph, Sheet};
use sayso_advisor::Case;
use sayso_advisor::days::days;
use sayso_advisor::ration::ration;
use sayso_advisor::stages::standings;
use sayso_model::PersonCard;
use sayso_wording::{Locale, say};

/// Lengths of the period that can be chosen, days.
pub const LENGTHS: [u16; 3] = [14, 28, 84];

/// The report; none where the case is about no animal of the story.
#[must_use]
pub fn progress(case: &Case<'_>, locale: Locale, length: u16, printed_by: Option<&PersonCard>) -> Option<Sheet> {
    let l = &locale;
    let (story, now, zone) = (case.story(), case.now(), case.zone());
    let card = *story.animals().get(&case.animal())?;
    let all = days(case, length);
    let words = standings(case);
    let mut facts = vec![(say!(l, sheets::animal), said::described(l, card, now.day(zone)))];
    if let (Some(first), Some(last)) = (all.days.first(), all.days.last()) {
        let period = say!(l, sheets::from_to, first = l.date(first.day), last = l.date(last.day), zone = zone.name());
        facts.push((say!(l, sheets::period), period));
    }
    facts.extend(printed_by.map(|p| (say!(l, sheets::printed_by), p.name.to_string())));
    facts.extend(card.limits.as_ref().map(|text| (say!(l, sheets::limits), text.to_string())));
    facts.extend(card.cautions.as_ref().map(|text| (say!(l, sheets::health), text.to_string())));

    let mut above = vec![Block::Facts(facts)];
    above.extend(report::in_short(case, l, card, &all));
    let mut below = report::answered(l, card, &all);
    below.extend(report::signs(case, l, &all));
    below.extend(report::food(l, card.name.as_str(), &ration(story, card, now)));
    below.extend(report::likes_in_short(case, l));

    let mut blocks =
        vec![Paragraph::block(say!(l, sheets::not_a_diagnosis), say!(l, sheets::own_records), Look::Boxed)];
    blocks.extend(beside(above, report::showings(l, &all)));
    blocks.extend(report::words(case, l, card, words, &all));
    let charts = [report::joined(l, &all), report::response(l, words)].into_iter().flatten();
    blocks.extend(beside(below, charts));
    blocks.extend(report::not_known(case, l, card, &all, words));
    let title = say!(l, sheets::progress_of, name = &card.name);
    Some(sheet(story, now, locale, title, blocks))
}

/// Text with its charts, or the text alone.
fn beside(text: Vec<Block>, charts: impl IntoIterator<Item = crate::sheet::Chart>) -> Vec<Block> {
    let charts: Vec<_> = charts.into_iter().collect();
    if charts.is_empty() { text } else { vec![Block::Beside { text, charts }] }
}
