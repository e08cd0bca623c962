//! How often is anything claimed of learners that mean nothing, read on every day, whatever a person does to the records?

use super::{Section, end};
use crate::error::{LabError, told};
use crate::report::figure::{Finding, Wanted, table};
use crate::work::Work;
use sayso_advisor::Case;
use sayso_advisor::claims::{Claims, claims};
use sayso_methods::understanding::ladder::{Rung, Verdict};
use sayso_model::Story;
use sayso_sim::{DrawnHome, DrawnLife, Habit, Trick, drawn_life};

/// Most homes in which anything may ever be claimed.
const ANY: Wanted = Wanted::AtMost(0.05);
/// Most homes in which the top rung may ever be claimed.
const TOP: Wanted = Wanted::AtMost(0.01);
const DAYS: u32 = 365;
/// The same in a quick run.
const QUICK_DAYS: u32 = 60;
/// Trials for each word in each check, about.
const TRIALS: u16 = 24;

/// Learners that mean nothing, and for which every rung counts.
const NOTHING: [(&str, Habit); 18] = [
    ("any button", Habit::Random),
    ("place habit", Habit::Place),
    ("one favourite a sitting", Habit::SessionFavourite),
    ("repeats the last", Habit::RepeatsLast),
    ("alternates", Habit::Alternates),
    ("avoids what it just got", Habit::AvoidsGiven),
    ("goes through what it has not had", Habit::GoesThrough),
    ("interest drifts, 2 hours", Habit::Interest(0.1)),
    ("interest drifts, days", Habit::Interest(5.0)),
    ("interest drifts, weeks", Habit::Interest(25.0)),
    ("less once sated", Habit::Sated),
    ("one button in bursts", Habit::Bursts),
    ("one button when aroused", Habit::Aroused),
    ("stays after a good thing", Habit::WinStay),
    ("buttons by what they brought lately", Habit::Matching),
    ("lively button, thing that keeps it busy", Habit::Busy),
    ("counts on after each thing", Habit::Counts),
    ("favourite thing, and its button", Habit::FavouriteThing),
];

/// Learners for which a lower rung is true, or known not to be kept out: what is said of them, and the habit.
const APART: [(&str, Habit); 4] = [
    ("follows cues", Habit::Cued),
    ("excited at the sight of one thing", Habit::Sight),
    ("two moods, hours each", Habit::Moods(3.0)),
    ("two moods, a minute each", Habit::Moods(0.02)),
];

/// What a person does to the records, or how it answers.
const BENT: [(&str, &[Trick]); 19] = [
    ("answers at mealtimes", &[Trick::AnswersAtMeals]),
    ("answers by appetite", &[Trick::AnswersByAppetite]),
    ("hopeful \"took\"", &[Trick::Wishful]),
    ("more trials under used numbers", &[Trick::ExtraTrials]),
    ("wrong answers taken back", &[Trick::TakesBack]),
    ("wrong answers corrected", &[Trick::CorrectsToRight]),
    ("bad checks dropped, sixteen begun", &[Trick::DropsBadChecks]),
    ("checks dropped at the first wrong answer", &[Trick::DropsAtWrong]),
    ("round over at a wrong press", &[Trick::StopsAtWrong]),
    ("round over at a right press", &[Trick::StopsAtRight]),
    ("wrong calls left out", &[Trick::LeavesOutWrong]),
    ("wrong calls mended", &[Trick::MendsCalls]),
    ("rounds called off until they suit", &[Trick::ChoosesRounds]),
    ("no swaps at mealtimes", &[Trick::NoSwapsAtMeals]),
    ("no swaps of one thing", &[Trick::NoSwapsOfOne]),
    ("swaps stopped when they go badly", &[Trick::StopsSwaps]),
    ("answers after swaps hidden", &[Trick::HidesAnswers]),
    ("dates ahead", &[Trick::DatesAhead]),
    ("all of these on purpose", &Trick::ON_PURPOSE),
];

/// What was ever claimed in one home.
#[derive(Clone, Copy, Debug)]
struct Ever {
    any: bool,
    rounds: bool,
    animal: bool,
    open: bool,
    top: bool,
    /// Whether any claim lapsed.
    lapsed: bool,
}

/// Claims never go once they stand, except by lapsing, which is told: so one reading at the end tells what any reading told.
fn ever(found: &Claims) -> Ever {
    let words: Vec<&Verdict> = found.words.iter().flat_map(|c| [&c.asking, &c.hearing]).collect();
    let rung = |rung: Rung| words.iter().any(|v| v.rung == rung);
    let lapsed = words.iter().chain([&&found.animal.verdict]).any(|v| v.lapsed.is_some());
    let animal = found.animal.verdict.rung > Rung::FitsChance;
    Ever {
        any: words.iter().any(|v| v.rung > Rung::FitsChance) || animal || lapsed,
        rounds: rung(Rung::DiffersByWord),
        animal,
        open: rung(Rung::PassesOpenProbe),
        top: rung(Rung::StandsUpToBlindCheck),
        lapsed,
    }
}

fn home(habit: Habit, tricks: &[Trick], days: u32, seed: u64) -> DrawnHome {
    let mut home = DrawnHome::of(habit, days).checked(TRIALS);
    home.sees_likes = seed.is_multiple_of(2);
    home.tricks = tricks.to_vec();
    home
}

fn lived(habit: Habit, tricks: &[Trick], days: u32, seed: u64) -> Result<DrawnLife, LabError> {
    Ok(drawn_life(&home(habit, tricks, days, seed), seed, end()?))
}

fn read(life: &DrawnLife) -> Result<Ever, LabError> {
    let story = Story::from_events(life.events.iter().cloned());
    Ok(ever(&claims(&Case::new(&story, life.animal, end()?)).map_err(told)?))
}

/// Whether anything was claimed on any evening, from what was on record by then.
fn read_daily(life: &DrawnLife, days: u32, every: usize) -> Result<bool, LabError> {
    let mut story = Story::default();
    let mut events = life.events.iter().peekable();
    for day in (1..=days).step_by(every) {
        let evening = life.begun.plus_seconds(f64::from(day) * 86_400.0);
        while let Some(event) = events.next_if(|e| e.recorded_at < evening) {
            story.add(event.clone());
        }
        if ever(&claims(&Case::new(&story, life.animal, evening)).map_err(told)?).any {
            return Ok(true);
        }
    }
    Ok(false)
}

/// Learners whose habits are bent by tricks: half press any button, half by place.
fn plain(seed: u64) -> Habit {
    if (seed / 2).is_multiple_of(2) { Habit::Random } else { Habit::Place }
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("False claims of understanding");
    let reps = work.size(300, 6);
    let days = if work.quick { QUICK_DAYS } else { DAYS };
    let mut rows = Vec::new();
    for (name, habit) in NOTHING {
        let found = work.each(&format!("nothing meant, {name}"), reps, |seed| read(&lived(habit, &[], days, seed)?))?;
        add(&mut section, &mut rows, name, &found);
    }
    for (name, tricks) in BENT {
        let found = work.each(&format!("bent, {name}"), reps, |seed| read(&lived(plain(seed), tricks, days, seed)?))?;
        add(&mut section, &mut rows, &format!("person: {name}"), &found);
    }
    for (name, habit) in APART {
        let found = work.each(&format!("apart, {name}"), reps, |seed| read(&lived(habit, &[], days, seed)?))?;
        let count = |what: fn(&Ever) -> bool| found.iter().filter(|e| what(e)).count();
        let upper = count(|e| e.animal || e.top);
        section.add(Finding::share(format!("{name}: claims that leave out cues"), ANY, upper, found.len()));
        section.add(Finding::share(format!("{name}: top rung"), TOP, count(|e| e.top), found.len()));
        section.add(Finding::share(
            format!("{name}: differs by word"),
            Wanted::Known,
            count(|e| e.rounds),
            found.len(),
        ));
        section.add(Finding::share(format!("{name}: open check"), Wanted::Known, count(|e| e.open), found.len()));
        rows.push(row(name, &found));
    }
    let hidden = work
        .each("hidden corrections", reps, |seed| read(&lived(plain(seed), &[Trick::HidesCorrections], days, seed)?))?;
    let animal = hidden.iter().filter(|e| e.animal).count();
    section.add(Finding::share(
        "person: presses again after its own thing not written (claims of the animal; cannot be kept out)",
        Wanted::Known,
        animal,
        hidden.len(),
    ));
    // One reading at the end against one each day (each week in a quick run).
    let every = if work.quick { 28 } else { 1 };
    let differ = work.each("read daily", work.size(24, 4), |seed| {
        let tricks: &[Trick] = if seed.is_multiple_of(3) { &Trick::ON_PURPOSE } else { &[] };
        let habit = if seed.is_multiple_of(2) { Habit::Matching } else { Habit::Bursts };
        let life = lived(habit, tricks, days, seed)?;
        Ok(read(&life)?.any != read_daily(&life, days, every)?)
    })?;
    let differ_n = differ.iter().filter(|d| **d).count();
    section.add(Finding::share("read at the end otherwise than day by day", Wanted::Known, differ_n, differ.len()));
    let head = ["animal or person", "any claim", "differs by word", "animal", "open check", "top rung", "lapsed", "n"];
    section.tables.push(table(&head, &rows));
    section.text(format!("Lives of {days} days of which only what is drawn is told: 4 words, 10 to 40 presses a day, one and a half sittings of two rounds a day, swaps agreed to all the time, six checks (blind and open, things laid out and covered buttons, about {TRIALS} trials a word). Half of the animals press more when they see what they like. Any claim: anything above \"fits chance\", of any word or the animal, at any reading of the year, lapsed ones included; read once at the end, where running maxima keep what any earlier reading told (checked by daily reading, last row). A person's tricks are played on animals that press any button or by place. Apart: for an animal that follows cues the lower rungs are right in their own words, which leave cues open; one excited at a sight does press differently by what is shown; two moods that change from call to call together with what is wanted are known to get past the rounds."));
    Ok(section)
}

fn row(name: &str, found: &[Ever]) -> Vec<String> {
    let share = |what: fn(&Ever) -> bool| {
        format!("{:.1} %", 100.0 * found.iter().filter(|e| what(e)).count() as f64 / found.len().max(1) as f64)
    };
    vec![
        name.to_owned(),
        share(|e| e.any),
        share(|e| e.rounds),
        share(|e| e.animal),
        share(|e| e.open),
        share(|e| e.top),
        share(|e| e.lapsed),
        found.len().to_string(),
    ]
}

fn add(section: &mut Section, rows: &mut Vec<Vec<String>>, name: &str, found: &[Ever]) {
    let count = |what: fn(&Ever) -> bool| found.iter().filter(|e| what(e)).count();
    section.add(Finding::share(format!("{name}: any claim"), ANY, count(|e| e.any), found.len()));
    section.add(Finding::share(format!("{name}: top rung"), TOP, count(|e| e.top), found.len()));
    rows.push(row(name, found));
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    /// By the binomial: at true rates of 5 % and 1 %, ten claims or five top rungs among 40 come with probabilities of 2.1e-5
    /// and 4.9e-5.
    #[test]
    fn animals_that_mean_nothing_are_seldom_claimed() {
        let work = Work { seed: 11, quick: true };
        for (habit, tricks) in [(Habit::FavouriteThing, &[][..]), (Habit::Place, &Trick::ON_PURPOSE)] {
            let found = work.each("bound", 40, |seed| read(&lived(habit, tricks, QUICK_DAYS, seed)?)).unwrap();
            assert!(found.iter().filter(|e| e.any).count() < 10, "{habit:?} {found:?}");
            assert!(found.iter().filter(|e| e.top).count() < 5, "{habit:?} {found:?}");
        }
    }
}
