//! Patterns: what is told of learners whose presses mean nothing and do not change, and what of those that do?

use super::{Section, end};
use crate::error::{LabError, told};
use crate::light::{Bouts, Chooser, bouts};
use crate::report::figure::{Finding, Wanted};
use crate::work::Work;
use sayso_advisor::Case;
use sayso_advisor::patterns::{Patterns, patterns};
use sayso_model::{
    AnimalId, AssessmentId, BoardLayout, Body, Event, EventId, HomeId, LikeOutcome, LikeTrial, LikesFormat, Moment,
    Placed, Press, PressedBy, RewardId, Source, Story, WordId, Zone,
};
use sayso_sim::Chance;
use uuid::Uuid;

/// Words on a board of two rows of three.
const WORDS: usize = 6;
const DAYS: u32 = 56;
const SITTINGS: usize = 5;

/// Learners whose presses follow no meaning, and one with a true pair of words.
#[derive(Clone, Copy, PartialEq, Debug)]
enum Stream {
    /// Any button.
    Any,
    /// Some buttons far more than others.
    Favourites,
    /// Presses again what it just pressed, half of the time.
    Repeats,
    /// Steps along the board to a button beside, half of the time.
    Steps,
    /// Two of the words are answered with a meal: a minute and more until the next press.
    Meals,
    /// One of the words ends the sitting most of the time.
    GoesOut,
    /// Favourites of their own in each sitting.
    Moods,
    /// Favourites that change in the middle of each sitting.
    Drifts,
    /// After the first word the last comes with a probability of three in ten, and means it.
    Pair,
}

impl Stream {
    const EMPTY: [Self; 8] = [
        Self::Any,
        Self::Favourites,
        Self::Repeats,
        Self::Steps,
        Self::Meals,
        Self::GoesOut,
        Self::Moods,
        Self::Drifts,
    ];

    const fn name(self) -> &'static str {
        match self {
            Self::Any => "any button",
            Self::Favourites => "favourite buttons",
            Self::Repeats => "repeats",
            Self::Steps => "steps along the board",
            Self::Meals => "two words followed by a meal",
            Self::GoesOut => "one word ends the sitting",
            Self::Moods => "favourites by sitting",
            Self::Drifts => "favourites change within the sitting",
            Self::Pair => "a true pair, 3 in 10",
        }
    }

    /// Presses as (seconds from the start, word).
    fn live(self, seed: u64) -> Vec<(f64, usize)> {
        let mut c = Chance::new(seed, 61);
        let mut out = Vec::new();
        for day in 0..DAYS {
            let mut starts: Vec<f64> = (0..SITTINGS).map(|_| c.between(8.0, 21.0)).collect();
            starts.sort_by(f64::total_cmp);
            for hour in starts {
                let mut at = 86_400.0 * f64::from(day) + 3600.0 * hour;
                let mut weights = self.weights(&mut c);
                let presses = 3 + c.below(6);
                let mut last: Option<usize> = None;
                for k in 0..presses {
                    if self == Self::Drifts && k == presses / 2 {
                        weights = self.weights(&mut c);
                    }
                    let any = c.pick(&weights).unwrap_or(0);
                    let word = match (self, last) {
                        (Self::Repeats, Some(last)) if c.coin(0.5) => last,
                        (Self::Steps, Some(last)) if c.coin(0.5) => beside(last, &mut c),
                        (Self::Pair, Some(0)) if c.coin(0.3) => WORDS - 1,
                        _ => any,
                    };
                    out.push((at, word));
                    last = Some(word);
                    if self == Self::GoesOut && word == 0 && c.coin(0.8) {
                        break;
                    }
                    at += if self == Self::Meals && word < 2 { c.between(40.0, 120.0) } else { c.between(2.0, 16.0) };
                }
            }
        }
        out.sort_by(|a, b| a.0.total_cmp(&b.0));
        out
    }

    fn weights(self, c: &mut Chance) -> Vec<f64> {
        match self {
            Self::Favourites => vec![8.0, 4.0, 2.0, 1.0, 1.0, 1.0],
            Self::Moods | Self::Drifts => (0..WORDS).map(|_| c.lognormal(1.0, 1.0)).collect(),
            _ => vec![1.0; WORDS],
        }
    }
}

fn beside(word: usize, c: &mut Chance) -> usize {
    let near: Vec<usize> = (0..WORDS)
        .filter(|w| *w != word && (w / 3).abs_diff(word / 3) <= 1 && (w % 3).abs_diff(word % 3) <= 1)
        .collect();
    near[c.below(near.len())]
}

/// A notebook that holds what is needed, and nothing else.
struct Pen {
    events: Vec<Event>,
    begun: Moment,
    next: u128,
}

const ANIMAL: AnimalId = AnimalId(Uuid::from_u128(1));

impl Pen {
    fn new() -> Result<Self, LabError> {
        let end = end()?;
        let begun = end.day(&Zone::utc()).plus(1 - i32::try_from(DAYS).unwrap_or(0)).start(&Zone::utc());
        let mut pen = Self { events: Vec::new(), begun, next: 100 };
        let card = serde_json::json!({ "kind": "animal_card", "animal": ANIMAL, "name": "Pim", "species": "dog" });
        let card: Body = serde_json::from_value(card).map_err(told)?;
        pen.write(begun, card);
        let placed = |w: usize| Placed { word: word(w), row: (w / 3) as u8, column: (w % 3) as u8 };
        let words = (0..WORDS).map(placed).collect();
        pen.write(begun, BoardLayout { rows: 2, columns: 3, words, language: None });
        Ok(pen)
    }

    fn write(&mut self, at: Moment, body: impl Into<Body>) {
        let body = body.into();
        self.next += 1;
        let about = !matches!(body, Body::AnimalCard(_) | Body::BoardLayout(_));
        self.events.push(Event {
            id: EventId(Uuid::from_u128(self.next)),
            home: HomeId(Uuid::from_u128(2)),
            animal: about.then_some(ANIMAL),
            person: None,
            happened_at: at,
            zone: Zone::utc(),
            recorded_at: at,
            source: Source::Tap,
            body,
        });
    }

    fn press(&mut self, seconds: f64, w: usize) -> Result<(), LabError> {
        let press = serde_json::json!({ "word": word(w), "by": PressedBy::Animal });
        let press: Press = serde_json::from_value(press).map_err(told)?;
        self.write(self.begun.plus_seconds(seconds), press);
        Ok(())
    }

    fn read(self) -> Result<Patterns, LabError> {
        let now = self.begun.plus_seconds(86_400.0 * f64::from(DAYS) - 1.0);
        patterns(&Case::new(&Story::from_events(self.events), ANIMAL, now)).ok_or_else(|| told("no animal"))
    }
}

fn word(w: usize) -> WordId {
    WordId(Uuid::from_u128(10 + w as u128))
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Patterns");
    let reps = work.size(100, 3);
    for stream in Stream::EMPTY {
        let found = work.each(&format!("order: {}", stream.name()), reps, |seed| of_stream(stream, seed))?;
        let out = found.iter().filter(|p| p.order.pairs.iter().any(|f| f.stands_out())).count();
        let what = format!("means nothing, {}: a pair of words is told to stand out", stream.name());
        section.add(Finding::share(what, Wanted::AtMost(0.05), out, reps));
    }
    let found = work.each("order: true pair", reps, |seed| of_stream(Stream::Pair, seed))?;
    let hit = |p: &&Patterns| p.order.pairs.iter().any(|f| f.stands_out() && f.times > 0);
    section.add(Finding::share(
        format!("{}: a pair is told to stand out", Stream::Pair.name()),
        Wanted::AtLeast(0.8),
        found.iter().filter(hit).count(),
        reps,
    ));
    slips(work, &mut section)?;
    paces(work, &mut section)?;
    hours(work, &mut section)?;
    section.text(format!("Every animal is read once, through the same function as the Patterns page, at the end of {DAYS} days. Order: six words on a board of two rows, {SITTINGS} sittings a day of three to eight presses, two to sixteen seconds apart; no press means anything, except in the last row. Slips: every press quick after the one before; a share of them lands beside it. Pace and phase lines: presses of one word at a steady rate, singly or in bouts; a rule of the house comes in the middle. Hours: pairs of five things, two sittings a day at eight and at nineteen o'clock, likes that do not depend on the hour."));
    Ok(section)
}

fn of_stream(stream: Stream, seed: u64) -> Result<Patterns, LabError> {
    let mut pen = Pen::new()?;
    for (at, w) in stream.live(seed) {
        pen.press(at, w)?;
    }
    pen.read()
}

/// Shares of slips: none, or three in ten of the quick presses.
fn slips(work: &Work, section: &mut Section) -> Result<(), LabError> {
    let reps = work.size(200, 3);
    for share in [0.0, 0.3] {
        let found = work.each(&format!("slips {share}"), reps, |seed| {
            let mut c = Chance::new(seed, 62);
            let mut pen = Pen::new()?;
            let (mut slipped, mut all) = (0.0, 0.0);
            for k in 0..150 {
                let at = 86_400.0 * f64::from(k % 50) + 3600.0 * (8.0 + 4.0 * f64::from(k / 50));
                let first = c.below(WORDS);
                pen.press(at, first)?;
                let slip = c.coin(share);
                slipped += f64::from(u8::from(slip));
                all += 2.0;
                pen.press(at + 0.7, if slip { beside(first, &mut c) } else { c.below(WORDS) })?;
                // Presses that no contact came before tell how often it means each button.
            }
            let read = pen.read()?.slips.share;
            let truth = slipped / all;
            let held = read.low.zip(read.high).is_some_and(|(low, high)| low <= truth && truth <= high);
            Ok((held, read.low.is_some_and(|low| low > 0.0)))
        })?;
        let held = found.iter().filter(|f| f.0).count();
        let what = format!("slips in {:.0} % of quick presses: interval holds the share", 100.0 * share);
        section.add(Finding::share(what, Wanted::AtLeast(0.93), held, reps));
        if share == 0.0 {
            let told = found.iter().filter(|f| f.1).count();
            section.add(Finding::share("no slips: interval leaves out none", Wanted::AtMost(0.05), told, reps));
        }
    }
    Ok(())
}

/// Factors a week and phase lines where nothing changes.
fn paces(work: &Work, section: &mut Section) -> Result<(), LabError> {
    let reps = work.size(200, 3);
    for (size, day_spread) in [(1.0, 0.0), (3.0, 0.0), (5.0, 0.0), (3.0, 0.5)] {
        let days = if day_spread > 0.0 { ", good and bad days" } else { "" };
        let kind = format!("bouts of {size}{days}");
        let how = Bouts { presses: 170.0, days: DAYS, size, geometric: true, day_spread };
        let found = work.each(&format!("pace: {kind}"), reps, |seed| {
            let mut pen = Pen::new()?;
            for at in bouts(&how, seed) {
                pen.press(86_400.0 * at, 0)?;
            }
            let rule = serde_json::json!({ "kind": "house_rule", "rule": Uuid::from_u128(3), "text": "A rule." });
            let rule: Body = serde_json::from_value(rule).map_err(told)?;
            let middle = pen.begun.plus_seconds(86_400.0 * f64::from(DAYS / 2));
            pen.write(middle, rule);
            let read = pen.read()?;
            let factor = read.pace.first().map(|p| p.factor);
            let out = factor.and_then(|f| f.low.zip(f.high)).is_some_and(|(low, high)| !(low..=high).contains(&1.0));
            Ok((out, read.lines.first().is_some_and(|l| l.more_after.1 <= 0.05)))
        })?;
        let out = found.iter().filter(|f| f.0).count();
        let what = format!("steady presses, {kind}: the 90 % interval of the factor a week leaves out 1");
        section.add(Finding::share(what, Wanted::AtMost(0.1), out, reps));
        let lines = found.iter().filter(|f| f.1).count();
        let what = format!("steady presses, {kind}: p of a phase line at most 0.05");
        section.add(Finding::share(what, Wanted::AtMost(0.05), lines, reps));
    }
    Ok(())
}

/// Likes that do not depend on the hour, and likes that do.
fn hours(work: &Work, section: &mut Section) -> Result<(), LabError> {
    let reps = work.size(60, 2);
    for turns in [0.0, 1.5] {
        let found = work.each(&format!("hours {turns}"), reps, |seed| {
            let mut c = Chance::new(seed, 63);
            let likes: Vec<f64> = (0..5).map(|_| c.normal()).collect();
            let mut pen = Pen::new()?;
            for sitting in 0..16_u32 {
                let morning = sitting % 2 == 0;
                let turn = if morning { turns } else { -turns };
                let strengths = likes.iter().enumerate().map(|(i, l)| l + if i == 0 { turn } else { 0.0 }).collect();
                let chooser = Chooser { strengths, side_bias: 0.0, none: f64::NEG_INFINITY };
                let at = 86_400.0 * f64::from(2 * sitting) + 3600.0 * if morning { 8.0 } else { 19.0 };
                for (k, (left, right, chosen)) in chooser.paired(1, u64::from(c.seed())).into_iter().enumerate() {
                    let thing = |i: usize| RewardId(Uuid::from_u128(20 + i as u128));
                    let result = chosen.map_or(LikeOutcome::ChoseNone, |i| LikeOutcome::Chose { reward: thing(i) });
                    let trial = LikeTrial {
                        assessment: AssessmentId(Uuid::from_u128(4)),
                        format: LikesFormat::Paired,
                        round: 1,
                        offered: vec![thing(left), thing(right)],
                        result,
                    };
                    pen.write(pen.begun.plus_seconds(at + 60.0 * k as f64), trial);
                }
            }
            Ok(pen.read()?.hours.p.is_some_and(|p| p <= 0.05))
        })?;
        let out = found.iter().filter(|f| **f).count();
        let (what, wanted) = if turns == 0.0 {
            ("likes do not depend on the hour, told that they do".to_owned(), Wanted::AtMost(0.05))
        } else {
            (format!("one liking turns by {turns} logits morning and evening, told so"), Wanted::Known)
        };
        section.add(Finding::share(what, wanted, out, reps));
    }
    Ok(())
}
