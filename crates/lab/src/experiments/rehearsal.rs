//! Does rehearsing teach to teach? Simulated persons rehearse; some change the one thing that the feedback names. Then all teach
//! animals that they have not met.

mod person;

use self::person::{Person, any_change, session};
use super::Section;
use crate::error::{LabError, told};
use crate::report::figure::{Finding, In, Wanted, table};
use crate::work::Work;
use sayso_model::SignLevel;
use sayso_rehearse::{change, conduct};
use sayso_sim::Chance;
use sayso_sim::rehearsal::{Character, Exercise, Setup, What};

/// Rehearsals before the animals.
const REHEARSALS: usize = 8;
/// Sessions with each animal, which remembers.
const SESSIONS: usize = 3;
/// What a person does with what the feedback says.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Way {
    Follows,
    Nothing,
    Anything,
}

/// What came of one person.
#[derive(Clone, Copy, Debug)]
struct Taught {
    /// Logits learned a session, over the animals.
    learned: f64,
    /// Strong signs a session.
    strong: f64,
    /// Middle delay, seconds.
    delay_s: f64,
}

fn one(way: Way, seed: u64) -> Taught {
    taught(Person::drawn(&mut Chance::new(seed, 900)), way, seed)
}

fn taught(mut person: Person, way: Way, seed: u64) -> Taught {
    let mut c = Chance::new(seed, 901);
    for at in 0..REHEARSALS {
        let setup = Setup {
            seed: seed.wrapping_add(at as u64),
            character: Character::ALL[at % 5],
            exercise: Exercise::Showing,
        };
        let run = session(person, setup, None, &mut c);
        match way {
            Way::Follows => person.changes(&change(&conduct(&run), &run).change),
            Way::Anything => person.changes(&any_change(&mut c)),
            Way::Nothing => {}
        }
    }
    // Animals that nobody has met, the same for every way.
    let mut c = Chance::new(seed, 902);
    let (mut learned, mut strong, mut sessions) = (0.0, 0.0, 0.0);
    for (i, character) in Character::ALL.into_iter().enumerate() {
        let mut knows = None;
        for at in 0..SESSIONS {
            let seed = seed.wrapping_add(10_000 + 100 * i as u64 + at as u64);
            let run = session(person, Setup { seed, character, exercise: Exercise::Showing }, knows, &mut c);
            knows = Some(run.logits.1);
            learned += run.learned();
            strong +=
                run.told.iter().filter(|t| matches!(t.what, What::Sign(s) if s.level == SignLevel::Strong)).count()
                    as f64;
            sessions += 1.0;
        }
    }
    Taught { learned: learned / sessions, strong: strong / sessions, delay_s: person.delay_s }
}

/// What persons do with the feedback.
const LIVES: [(Way, &str); 3] = [
    (Way::Follows, "follow the feedback"),
    (Way::Nothing, "change nothing"),
    (Way::Anything, "change something at random"),
];

/// Persons who show by the clock, whatever the animal does, and their seconds.
const BY_THE_CLOCK: [(&str, f64); 2] = [("hammers, every 1.5 s", 1.5), ("shows by the clock, every 5 s", 5.0)];

/// What comes of persons who show by the clock, whatever the animal does, in the three lives.
fn by_the_clock(work: &Work, section: &mut Section) -> Result<(), LabError> {
    let mut rows = Vec::new();
    for (name, gap_s) in BY_THE_CLOCK {
        let all = work.each(name, work.size(100, 4), |seed| {
            Ok(LIVES.map(|(way, _)| taught(Person::by_the_clock(gap_s), way, seed)))
        })?;
        let more: Vec<f64> = all.iter().map(|ways| ways[0].learned - ways[1].learned).collect();
        section.add(Finding::mean(
            format!("learned more by following than by changing nothing, pairwise: {name}"),
            Wanted::AtLeast(0.0),
            &more,
            In::Number(""),
        ));
        for (way, (_, life)) in LIVES.into_iter().enumerate() {
            let mean = |figure: fn(&Taught) -> f64| {
                let all: Vec<f64> = all.iter().map(|ways| figure(&ways[way])).collect();
                Finding::mean("", Wanted::Known, &all, In::Number("")).value
            };
            rows.push(vec![
                name.to_owned(),
                life.to_owned(),
                format!("{:.2}", mean(|t| t.learned)),
                format!("{:.2}", mean(|t| t.strong)),
            ]);
        }
    }
    section.tables.push(table(
        &[
            "at first the person",
            "after eight rehearsals they",
            "logits learned a session (mean)",
            "strong signs a session (mean)",
        ],
        &rows,
    ));
    Ok(())
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Rehearsing: do those who follow the feedback teach faster?");
    let n = work.size(400, 8);
    let all = work.each("rehearsal", n, |seed| Ok(LIVES.map(|(way, _)| one(way, seed))))?;
    if all.is_empty() {
        return Err(told("no person rehearsed"));
    }
    let of =
        |way: usize, figure: fn(&Taught) -> f64| -> Vec<f64> { all.iter().map(|ways| figure(&ways[way])).collect() };
    let less = |way: usize, figure: fn(&Taught) -> f64| -> Vec<f64> {
        all.iter().map(|ways| figure(&ways[0]) - figure(&ways[way])).collect()
    };
    for (way, (_, name)) in LIVES.into_iter().enumerate() {
        section.add(Finding::mean(
            format!("logits learned a session: {name}"),
            Wanted::Known,
            &of(way, |t| t.learned),
            In::Number(""),
        ));
    }
    section.add(Finding::mean(
        "learned more than by changing nothing, pairwise",
        Wanted::AtLeast(0.0),
        &less(1, |t| t.learned),
        In::Number(""),
    ));
    section.add(Finding::mean(
        "learned more than by changing something at random, pairwise",
        Wanted::Difference,
        &less(2, |t| t.learned),
        In::Number(""),
    ));
    let faster = all.iter().filter(|ways| ways[0].learned > ways[1].learned).count();
    section.add(Finding::share(
        "persons who teach faster than had they changed nothing",
        Wanted::AtLeast(0.8),
        faster,
        n,
    ));
    section.add(Finding::mean(
        "strong signs a session less than by changing nothing, pairwise",
        Wanted::AtMost(0.0),
        &less(1, |t| t.strong),
        In::Number(""),
    ));
    section.add(Finding::mean(
        "strong signs a session less than by changing something at random, pairwise",
        Wanted::AtMost(0.0),
        &less(2, |t| t.strong),
        In::Number(""),
    ));
    let rows: Vec<Vec<String>> = LIVES
        .into_iter()
        .enumerate()
        .map(|(way, (_, name))| {
            let middle = |figure| Finding::middle("", Wanted::Known, &of(way, figure), In::Number("")).value;
            vec![
                name.to_owned(),
                format!("{:.2}", middle(|t| t.learned)),
                format!("{:.2}", middle(|t| t.strong)),
                format!("{:.1} s", middle(|t| t.delay_s)),
            ]
        })
        .collect();
    section.tables.push(table(
        &[
            "after eight rehearsals they",
            "logits learned a session (middle)",
            "strong signs a session (middle)",
            "delay (middle)",
        ],
        &rows,
    ));
    by_the_clock(work, &mut section)?;
    section.text(format!("{n} persons drawn at random: how soon they give, how often they show, what they do when the animal eats, shows a sign or leaves. Each rehearses “press, say, give” {REHEARSALS} times, with all five characters, in three lives: following the one thing that the feedback names, changing nothing, changing something drawn at random. Whoever changes something comes 60 % of the way. Then each teaches five animals that they have not met, {SESSIONS} sessions each. Animals and luck are the same in the three lives. Changing at random is a strict control: each of the nine changes is one that the feedback might name, and makes a better teacher or an oftener one. That people change as told, and by so much, is assumed."));
    Ok(section)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn whoever_pauses_teaches_more_than_whoever_hammers_or_shows_by_the_clock() {
        let pauses = Person {
            answers: 1.0,
            lets_go: 1.0,
            heeds: 1.0,
            lets_eat: 1.0,
            waits_for_it: 1.0,
            goes_on: false,
            ..Person::by_the_clock(5.0)
        };
        let mean = |person| (0..8).map(|seed| taught(person, Way::Nothing, seed).learned).sum::<f64>() / 8.0;
        for (name, gap_s) in BY_THE_CLOCK {
            let (clock, paused) = (mean(Person::by_the_clock(gap_s)), mean(pauses));
            assert!(clock < paused, "{name}: {clock} {paused}");
        }
    }

    #[test]
    fn whoever_follows_the_feedback_gives_sooner_than_whoever_does_not() {
        let mean = |way| (0..40).map(|seed| one(way, seed).delay_s).sum::<f64>() / 40.0;
        assert!(mean(Way::Follows) < mean(Way::Nothing));
    }
}
