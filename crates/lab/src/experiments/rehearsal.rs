//! Does rehearsing teach to teach? Simulated persons rehearse; some change the one thing that the feedback names. Then all teach
//! animals that they have not met.

use super::Section;
use crate::error::{LabError, told};
use crate::report::figure::{Finding, In, Wanted, table};
use crate::work::Work;
use sayso_model::SignLevel;
use sayso_rehearse::{Change, change, conduct};
use sayso_sim::Chance;
use sayso_sim::rehearsal::{Character, Does, Exercise, Rehearsal, Run, Setup, Thing, Told, What};

/// Rehearsals before the animals.
const REHEARSALS: usize = 8;
/// Sessions with each animal, which remembers.
const SESSIONS: usize = 3;
/// How far towards the best a person comes who changes something.
const STEP: f64 = 0.6;

/// How somebody teaches.
#[derive(Clone, Copy, Debug)]
struct Person {
    /// Middle seconds from press to thing.
    delay_s: f64,
    /// Seconds between showings.
    gap_s: f64,
    /// Probability that a showing is of the favourite word rather than of the next.
    favours: f64,
    /// Probabilities of doing well.
    waits_for_it: f64,
    answers: f64,
    lets_go: f64,
    heeds: f64,
    lets_eat: f64,
    /// Calls a minute for no reason.
    calls: f64,
    /// Whether it goes on after the animal left.
    goes_on: bool,
}

impl Person {
    fn drawn(c: &mut Chance) -> Self {
        Self {
            delay_s: c.lognormal(3.5, 0.4).clamp(0.6, 10.0),
            gap_s: c.between(4.0, 16.0),
            favours: c.between(0.0, 0.8),
            waits_for_it: c.between(0.2, 0.9),
            answers: c.between(0.3, 1.0),
            lets_go: c.between(0.2, 1.0),
            heeds: c.between(0.2, 1.0),
            lets_eat: c.between(0.2, 1.0),
            calls: c.between(0.0, 3.0),
            goes_on: false,
        }
    }

    /// Shows by the clock, at once gives, and looks at nothing that the animal does.
    const fn by_the_clock(gap_s: f64) -> Self {
        Self {
            delay_s: 0.6,
            gap_s,
            favours: 0.0,
            waits_for_it: 0.0,
            answers: 0.0,
            lets_go: 0.0,
            heeds: 0.0,
            lets_eat: 0.0,
            calls: 0.0,
            goes_on: true,
        }
    }

    /// Changes one habit.
    fn changes(&mut self, what: &Change) {
        let towards = |now: &mut f64, best: f64| *now += STEP * (best - *now);
        match what {
            Change::StepAway | Change::Pause => towards(&mut self.heeds, 1.0),
            Change::LetGo => {
                towards(&mut self.lets_go, 1.0);
                self.goes_on = false;
            }
            Change::LetEat => towards(&mut self.lets_eat, 1.0),
            Change::DoNotPush { .. } => towards(&mut self.calls, 0.0),
            Change::Answer => towards(&mut self.answers, 1.0),
            Change::Sooner { .. } => towards(&mut self.delay_s, 0.8),
            Change::WhenThere { .. } => towards(&mut self.waits_for_it, 1.0),
            Change::Slower => self.gap_s *= 1.5,
            Change::Oftener => self.gap_s = (self.gap_s * 0.6).max(4.0),
            Change::Even { .. } => towards(&mut self.favours, 0.0),
            // Nothing of this is done in the exercise at hand.
            Change::Wait
            | Change::Wanted
            | Change::AfterWait
            | Change::Vet
            | Change::GiveOftener { .. }
            | Change::UsedUp { .. }
            | Change::Shorter { .. }
            | Change::LetChoose
            | Change::Soften { .. }
            | Change::Longer { .. }
            | Change::MoreInvitations
            | Change::MorePairs
            | Change::Instead { .. }
            | Change::Give
            | Change::Try
            | Change::Stay
            | Change::TooSoon
            | Change::CarryOn => {}
        }
    }
}

/// What a person may change, for those who change something whatever it is.
fn any_change(c: &mut Chance) -> Change {
    let all = [
        Change::StepAway,
        Change::LetGo,
        Change::LetEat,
        Change::DoNotPush { times: 1 },
        Change::Answer,
        Change::Sooner { delay_s: 3.0 },
        Change::WhenThere { invited: false },
        Change::Oftener,
        Change::Even { most: Thing::Treat, least: Thing::Ball },
    ];
    let at = c.below(all.len());
    all[at].clone()
}

/// What a person is about to do.
struct Plan {
    person: Person,
    next_show: u32,
    turn: usize,
    due: Vec<(u32, Does)>,
    paused_until: u32,
    eats: bool,
    counted: usize,
}

fn ms(seconds: f64) -> u32 {
    (seconds.max(0.0) * 1000.0) as u32
}

impl Plan {
    /// What is seen, and what the person makes of it.
    fn sees(&mut self, told: &Told, c: &mut Chance) {
        let now = told.at_ms;
        match told.what {
            What::Took(_) => self.eats = true,
            What::Finished(_) | What::Ignored(_) => self.eats = false,
            What::Pressed(thing) if c.coin(self.person.answers) => {
                self.due.push((now + ms(c.lognormal(self.person.delay_s, 0.3)), Does::Give(thing)));
            }
            What::Leaves if self.person.goes_on => {}
            What::Leaves => {
                self.due.clear();
                if c.coin(self.person.lets_go) {
                    self.due.push((now + 3_000, Does::End));
                } else {
                    self.due.push((now + 600, if c.coin(0.5) { Does::Block } else { Does::Call }));
                    self.due.push((now + 9_000, Does::End));
                }
            }
            What::Sign(sign) if c.coin(self.person.heeds) => {
                self.paused_until = now + 6_000;
                if sign.level == SignLevel::Strong {
                    self.due = vec![(now + 800, Does::Back), (now + 2_000, Does::End)];
                }
            }
            _ => {}
        }
    }

    fn acts(&mut self, live: &mut Rehearsal, c: &mut Chance) {
        let now = live.now_ms();
        while self.counted < live.told().len() {
            let told = live.told()[self.counted];
            self.counted += 1;
            self.sees(&told, c);
        }
        self.due.sort_by_key(|(at, _)| *at);
        while self.due.first().is_some_and(|(at, _)| *at <= now) {
            let (_, does) = self.due.remove(0);
            live.does(does);
        }
        if now < self.paused_until {
            return;
        }
        if c.coin(self.person.calls / 600.0) {
            live.does(Does::Call);
        }
        let busy = !self.due.is_empty() || (self.eats && c.coin(self.person.lets_eat));
        if now < self.next_show || busy {
            return;
        }
        self.next_show = now + ms(self.person.gap_s * c.between(0.7, 1.3));
        if !live.is_there() && c.coin(self.person.waits_for_it) {
            // Looks again in a while.
            self.next_show = now + 1_500;
            return;
        }
        let thing = if c.coin(self.person.favours) { Thing::Treat } else { Thing::ALL[self.turn % 3] };
        self.turn += 1;
        live.does(Does::Show(thing));
        self.due.push((now + ms(c.lognormal(self.person.delay_s, 0.3)), Does::Give(thing)));
    }
}

fn session(person: Person, setup: Setup, knows: Option<[f64; 4]>, c: &mut Chance) -> Run {
    let mut live = Rehearsal::new(setup);
    if let Some(logits) = knows {
        live = live.knowing(logits);
    }
    let mut plan =
        Plan { person, next_show: 2_000, turn: 0, due: Vec::new(), paused_until: 0, eats: false, counted: 0 };
    while !live.is_over() {
        plan.acts(&mut live, c);
        live.step();
    }
    live.ends()
}

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
