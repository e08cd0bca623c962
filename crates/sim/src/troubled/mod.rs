//! A club of troubled homes: what holds each up is known, some have two troubles, many none, some write little down, and in
//! some presses mean nothing. For a coach's desk, which must find the first without naming what is not there.

mod kinds;
mod written;

pub use kinds::{Keeps, Trouble, Troubled};

use crate::animal::{Presser, Style};
use crate::chance::Chance;
use crate::fixed::{label, note};
use crate::home::*;
use crate::run::{Simulated, Simulation};
use crate::stuck::{hold_up, plain, vary};
use sayso_model::*;

/// A home of the club.
#[derive(Clone, PartialEq, Debug)]
pub struct TroubledHome {
    /// What is behind it.
    pub is: Troubled,
    /// Its events, and the truth behind them.
    pub run: Simulated,
}

/// The word that a trouble is about, and the one that a second trouble is about.
const WORDS: [usize; 2] = [2, 0];
/// The day's energy on every card, and the share of it that is for rewards, kcal.
const DAY_KCAL: f64 = 500.0;
const REWARDS_KCAL: f64 = 50.0;

/// So many homes, ending at `end`. The same seed, number and end give the same events to the byte.
///
/// # Example
/// ```
/// use sayso_sim::troubled_club;
/// let end = "2026-06-01T19:00:00Z".parse()?;
/// let club = troubled_club(1, 3, end);
/// assert!(club.iter().flat_map(|home| &home.run.events).all(|e| e.check().is_ok() && e.recorded_at <= end));
/// # Ok::<(), sayso_model::time::TimeError>(())
/// ```
#[must_use]
pub fn troubled_club(seed: u64, homes: u32, end: Moment) -> Vec<TroubledHome> {
    (0..homes).map(|number| troubled_one(seed, number, end)).collect()
}

/// One home of [`troubled_club`].
#[must_use]
pub fn troubled_one(seed: u64, number: u32, end: Moment) -> TroubledHome {
    lived(seed, number, troubled_home(seed, number), end)
}

/// The same with another name of the home and of its animal, to stand among homes of which no two are called alike.
#[must_use]
pub fn troubled_called(seed: u64, number: u32, end: Moment, name: Label, animal: Label) -> TroubledHome {
    let (is, mut home) = troubled_home(seed, number);
    home.name = name;
    if let Some(first) = home.animals.first_mut() {
        first.name = animal;
    }
    lived(seed, number, (is, home), end)
}

fn lived(seed: u64, number: u32, (is, home): (Troubled, Home), end: Moment) -> TroubledHome {
    let run = Simulation::unchecked(&home, own_seed(seed, number), end).run();
    let mut c = Chance::new(own_seed(seed, number), 83);
    TroubledHome { run: written::as_kept(run, &is, end, &mut c), is }
}

/// The seed of one of the homes (SplitMix64, Steele et al. 2014).
fn own_seed(seed: u64, number: u32) -> u64 {
    let mut z = seed.wrapping_mul(0x9E37_79B9_7F4A_7C15).wrapping_add(u64::from(number) + 1);
    z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    z ^ (z >> 31)
}

/// What is behind one home, and the configuration it runs by.
#[must_use]
pub fn troubled_home(seed: u64, number: u32) -> (Troubled, Home) {
    let mut c = Chance::new(own_seed(seed, number), 82);
    let lot = c.unit();
    let (meaningless, troubled) = (lot < 0.1, lot >= 0.5);
    let new = !troubled && !meaningless && c.coin(0.12);
    let days = if new { 3 + c.below(10) } else { 49 + c.below(50) };
    let mut home = plain(&mut c, u32::try_from(days).unwrap_or(49));
    vary(&mut home, &mut c);
    ordinary(&mut home, &mut c);
    if meaningless {
        home.animals[0].presser.style = match c.below(3) {
            0 => Style::AnyWord,
            1 => Style::ByPlace(vec![0.7, 0.2, 0.1]),
            _ => Style::BySession,
        };
    }
    let troubles = if troubled { draw(&mut c) } else { Vec::new() };
    let silent = troubles.iter().any(|(t, _)| *t == Trouble::Silent);
    let keeps = match c.below(16) {
        0 if !silent => Keeps::FewDays,
        1 if !silent => Keeps::FewRecords,
        2 if !silent => Keeps::OnlyPresses,
        _ => Keeps::All,
    };
    for (trouble, word) in &troubles {
        befall(&mut home, *trouble, word.unwrap_or(WORDS[0]), &mut c);
    }
    (Troubled { troubles, keeps, meaningless }, home)
}

/// One trouble, in a quarter of the homes a second of another sort.
fn draw(c: &mut Chance) -> Vec<(Trouble, Option<usize>)> {
    let about = |t: Trouble, word| (t.cause().is_some() || t == Trouble::ReadyNotInvited).then_some(word);
    let first = Trouble::ALL[c.below(Trouble::ALL.len())];
    let mut all = vec![(first, about(first, WORDS[0]))];
    let others = [Trouble::StrongSigns, Trouble::Guarding, Trouble::Overfed, Trouble::ReadyNotInvited];
    let second = others[c.below(others.len())];
    // A home that is gone writes of nothing else; whoever guards or growls has that written once.
    let fits = first != second && first != Trouble::Silent && first.severity() > 0;
    if c.coin(0.25) && fits {
        all.push((second, about(second, WORDS[1])));
    }
    all
}

/// Without trouble: shown enough, invited in time, food within the day's.
fn ordinary(home: &mut Home, c: &mut Chance) {
    let animal = &mut home.animals[0];
    animal.plan.showings = 7 + u16::try_from(c.below(6)).unwrap_or(0);
    animal.plan.kept = c.between(0.7, 1.0);
    animal.plan.ration_kcal = Some(0.9 * REWARDS_KCAL);
    animal.day_kcal = Some((0, Kcal::clamped(DAY_KCAL)));
    animal.presser = Presser { style: Style::ByMeaning, rate: c.between(0.09, 0.16), ..animal.presser.clone() };
    animal.temper.join = animal.temper.join.max(0.9);
    // Strong signs of a bad day are rare here: what is unsafe is written by whoever has that trouble.
    animal.temper.strong_below = -4.5;
    for word in &mut home.words {
        word.answer = Some(note("Give it at once."));
        word.not_now = Some(note("Later."));
    }
}

fn befall(home: &mut Home, trouble: Trouble, word: usize, c: &mut Chance) {
    if let Some(cause) = trouble.cause() {
        hold_up(home, word, cause, c);
    }
    let days = home.days;
    let animal = &mut home.animals[0];
    match trouble {
        Trouble::SuddenDrop => {
            animal.temper.join = animal.temper.join.max(1.6);
            animal.temper.unwell_stays_away = c.between(1.0, 2.5);
            animal.temper.unwell_from = Some(days - 5 - u32::try_from(c.below(6)).unwrap_or(0));
        }
        Trouble::Overfed => {
            animal.plan.extra = Some((c.between(2.5, 4.0), label("scraps from the table"), Kcal::clamped(35.0)));
        }
        Trouble::ReadyNotInvited => {
            home.words[word].invited_from = None;
            animal.plan.show_before_invite = u32::MAX;
        }
        _ => {}
    }
}
