//! Is the advice of one mind: one step a word, plan and row alike, no closing word taught, no session while sessions rest?

mod plans;
mod reason;
mod seen;
mod welfare;

use self::plans::read_plans;
use self::reason::speaks;
use self::seen::Seen;
use self::welfare::{DAY_S, read_welfare, signs};
use super::{Section, end};
use crate::error::{LabError, told};
use crate::report::figure::{Finding, Wanted, table};
use crate::work::Work;
use sayso_advisor::hint::Hint;
use sayso_advisor::stages::{Standing, standings};
use sayso_advisor::steps::{Step, WordStep};
use sayso_advisor::stuck::Cause;
use sayso_advisor::today::{Next, Today, today};
use sayso_advisor::{Act, Because, Case, Change};
use sayso_model::{AnimalId, Body, Event, EventId, Moment, Note, Sign, SignLevel, Source, Stage, Story, When};
use sayso_sim::{Chance, DrawnHome, Habit, Style, any_home, drawn_life, simulate};
use std::collections::BTreeSet;
use uuid::Uuid;

/// Days before the end at which a household is read as well.
const AGES: [f64; 4] = [0.0, 3.0, 9.0, 21.0];
/// Animals that mean nothing by their presses, of which only drawn events are told.
const HABITS: [(&str, Habit); 5] = [
    ("drawn: any button", Habit::Random),
    ("drawn: place habit", Habit::Place),
    ("drawn: repeats the last", Habit::RepeatsLast),
    ("drawn: less once sated", Habit::Sated),
    ("drawn: favourite thing", Habit::FavouriteThing),
];
const DRAWN_DAYS: u32 = 40;

/// The kinds of a next thing to do, in the order in which they are asked for, and which of them one is: one list for both.
macro_rules! kinds {
    ($($variant:ident: $name:literal),*) => {
        const NEXTS: &[&str] = &[$($name),*];

        const fn kind(next: &Next) -> &'static str {
            match next {
                $(Next::$variant { .. } => $name),*
            }
        }
    };
}

kinds! {
    Rest: "rest",
    SetUp: "set up",
    TestLikes: "test likes",
    Session: "a session",
    Pause: "a pause",
    Mend: "mend",
    Answer: "answer"
}

fn with_signs(mut events: Vec<Event>, animal: AnimalId, signs: &[(Moment, &str)]) -> Result<Story, LabError> {
    let pattern = events.first().cloned().ok_or_else(|| told("no event was simulated"))?;
    for (number, (at, text)) in signs.iter().enumerate() {
        let sign = Note::new(text).map_err(told)?;
        let body = Sign { sign, level: SignLevel::Strong, when: When::During, session: None };
        events.push(Event {
            id: EventId(Uuid::from_u128(1_000 + number as u128)),
            animal: Some(animal),
            person: None,
            happened_at: *at,
            recorded_at: *at,
            source: Source::Tap,
            body: body.into(),
            ..pattern.clone()
        });
    }
    Ok(Story::from_events(events))
}

/// Some homes have a word that ends sessions: so from the beginning and shown at their end, or taught as a wish for weeks and
/// then marked on its card.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Ends {
    Never,
    Always(usize),
    Marked(usize),
}

fn ends(seed: u64, words: usize) -> Ends {
    let mut c = Chance::new(seed, 32);
    let word = c.below(words.max(1));
    match c.below(3) {
        0 => Ends::Never,
        // Where nothing else is taught, no session would be held.
        _ if words < 2 => Ends::Never,
        1 => Ends::Always(word),
        _ => Ends::Marked(word),
    }
}

/// One household of any kind, read at several ages.
fn household(seed: u64) -> Result<Seen, LabError> {
    let (mut c, end) = (Chance::new(seed, 31), end()?);
    let drawn = c.coin(0.25);
    let (kind, events, animal) = if drawn {
        let (kind, habit) = HABITS[c.below(HABITS.len())];
        let life = drawn_life(&DrawnHome::of(habit, DRAWN_DAYS), seed, end);
        (kind, life.events, life.animal)
    } else {
        let mut home = any_home(seed);
        // Most have written down how they answer; what is not is a thing to set up.
        for word in home.words.iter_mut().filter(|_| c.coin(0.9)) {
            word.answer = Some(Note::new("Give it.").map_err(told)?);
            word.not_now = Some(Note::new("Later.").map_err(told)?);
        }
        let ends = ends(seed, home.words.len());
        if let Ends::Always(word) = ends {
            home.words[word].closing = true;
        }
        let kind = match home.animals.first().map(|a| &a.presser.style) {
            Some(Style::AnyWord) => "any button",
            Some(Style::ByPlace(_)) => "place habit",
            _ if home.stuck.is_empty() => "by meaning",
            _ => "by meaning, one word held up",
        };
        let mut run = simulate(&home, seed, end).map_err(told)?;
        if let Ends::Marked(word) = ends {
            let says = home.words[word].says.clone();
            for event in &mut run.events {
                match &mut event.body {
                    Body::WordCard(card) if card.says == says => card.closing = true,
                    _ => {}
                }
            }
        }
        let animal = run.truth.ids.animals.first().copied().ok_or_else(|| told("no animal"))?;
        (kind, run.events, animal)
    };
    let story = with_signs(events, animal, &signs(&mut c, end))?;
    let mut seen = Seen { kind, ..Seen::default() };
    for age in AGES {
        read(&mut seen, &Case::new(&story, animal, end.plus_seconds(-age * DAY_S)));
    }
    Ok(seen)
}

fn read(seen: &mut Seen, case: &Case<'_>) {
    let Some(today) = today(case) else { return };
    seen.readings += 1;
    read_words(seen, case, &today);
    read_welfare(seen, case, &today);
    for s in &today.steps {
        *seen.steps.entry(s.step).or_default() += 1;
    }
    *seen.next.entry(kind(&today.next)).or_default() += 1;
}

fn read_words(seen: &mut Seen, case: &Case<'_>, today: &Today) {
    for standing in standings(case) {
        let steps: Vec<_> = today.steps.iter().filter(|s| s.word.word == standing.word).collect();
        seen.words += 1;
        seen.not_one += usize::from(steps.len() != 1);
        let Some(step) = steps.first() else { continue };
        read_plans(seen, today, standing, step);
        if let Some(speaks) = speaks(step) {
            seen.barred += 1;
            seen.contrary += usize::from(!speaks);
        }
        let planned = today.plan().and_then(|p| p.words.iter().find(|w| w.word == step.word));
        let invited = inviting(&step.advice.act)
            || step.also.iter().any(|a| inviting(&a.act))
            || planned.is_some_and(|p| p.invitations > 0);
        let back = standing.figures_say < standing.stage.min(Stage::Invite)
            || matches!(step.advice.act, Act::StepBack { to: Stage::Prepare | Stage::Show, .. });
        seen.invited_back += usize::from(back && invited);
        if let Some(p) = planned {
            seen.planned += 1;
            let invites = p.invitations > 0;
            // The hint is about giving faster where that comes first.
            let hint_differs = match &p.hint {
                Some(Hint::ShowOnly) => invites,
                Some(Hint::WaitThenShow { .. }) => !invites,
                Some(Hint::AtTheEnd | Hint::AnswerEvery | Hint::LetItCome | Hint::WhenWanted) => true,
                _ => false,
            };
            let differs = invites != inviting(&step.advice.act) || hint_differs || p.hint != step.hint;
            seen.plan_differs += usize::from(differs || !step.shown());
        }
        if standing.closing {
            seen.closing += 1;
            seen.closing_taught += usize::from(planned.is_some() || as_a_wish(standing, step));
        }
    }
}

/// Whether people read it as telling them to wait for a press.
const fn inviting(act: &Act) -> bool {
    matches!(act, Act::Invite { .. } | Act::BeginInviting { .. } | Act::StepBack { to: Stage::Invite, .. })
}

/// Whether anything that is said of a word that ends sessions treats it as a wish: taught, invited, left alone or moved on.
fn as_a_wish(standing: &Standing, step: &WordStep) -> bool {
    let act = |act: &Act| match act {
        Act::Mend { cause, .. } => !matches!(cause, Cause::HardToMakeOut | Cause::SoundsAlike | Cause::PeopleDiffer),
        Act::Show { .. }
        | Act::Invite { .. }
        | Act::BeginInviting { .. }
        | Act::StepBack { .. }
        | Act::LeaveToAnimal { .. }
        | Act::SignalTimes { .. } => true,
        _ => false,
    };
    let hint = !matches!(step.hint, None | Some(Hint::AtTheEnd | Hint::AnswerEvery | Hint::AnswerAlike));
    let of_wishes = |fact: &Because| {
        matches!(
            fact,
            Because::WhenWanted { .. }
                | Because::Right { .. }
                | Because::Mastery { .. }
                | Because::OwnPresses { .. }
                | Because::Below(_)
                | Because::Later { .. }
        )
    };
    let figures = standing.because.iter().chain(standing.would_change.iter().filter_map(Change::figure)).any(of_wishes);
    standing.figures_say > Stage::Show
        || step.stuck
        || hint
        || figures
        || act(&step.advice.act)
        || step.also.iter().any(|a| act(&a.act))
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Advice of one mind");
    let homes = work.each("advice", work.size(1000, 12), household)?;
    let sum = |what: fn(&Seen) -> usize| homes.iter().map(what).sum::<usize>();
    let none = Wanted::AtMost(0.0);
    let mut add = |what: &str, k: usize, n: usize| section.add(Finding::share(what, none, k, n));
    add("words with no step or two", sum(|s| s.not_one), sum(|s| s.words));
    add(
        "words to be stepped back to showing that are invited, in step, reasons or plan",
        sum(|s| s.invited_back),
        sum(|s| s.words),
    );
    add(
        "lines of the plan that differ from the word's row, in step or hint",
        sum(|s| s.plan_differs),
        sum(|s| s.planned),
    );
    add(
        "words that end sessions: taught, invited or set aside as a wish",
        sum(|s| s.closing_taught),
        sum(|s| s.closing),
    );
    add(
        "plans agreed for a word, in any way: before welfare, what is to be mended, a step back or a word that ends sessions",
        sum(|s| s.agreed_first),
        sum(|s| s.agreed),
    );
    add("steps whose first reason lies on the other side of its bar", sum(|s| s.contrary), sum(|s| s.barred));
    add("days with a strong sign: a session, or a step but rest", sum(|s| s.no_rest), sum(|s| s.strong_today));
    add(
        "growl, bite, guarding or swallowing within 28 days: not at the top",
        sum(|s| s.not_on_top),
        sum(|s| s.lasting),
    );
    add("the same in three of six weeks: not named as coming back", sum(|s| s.not_named), sum(|s| s.weekly));
    section.tables = tables(&homes);
    section.text(format!(
        "{} households, each read {} times, {:?} days before its end: {} readings, {} words. Three quarters are whole households of all species, of 14 to 70 days, in a third of which one word is held up for a known cause; in a seventh the animal presses any button or by place and means nothing. A quarter are lives of {DRAWN_DAYS} days of which only drawn events are told, of animals that mean nothing. Two whole households in three have a word that ends sessions: half of them from the beginning, half after it was taught as a wish for weeks. Into most of them signs are written: a growl today, once or week by week, guarding, swallowing, other strong signs. What must not be is counted from the records, not from what the advice says of them.",
        homes.len(),
        AGES.len(),
        AGES,
        sum(|s| s.readings),
        sum(|s| s.words),
    ));
    Ok(section)
}

const STEPS: [(Step, &str); 9] = [
    (Step::Rest, "rest"),
    (Step::Avoided, "button avoided"),
    (Step::SetUp, "set up"),
    (Step::Mend, "mend"),
    (Step::StepBack, "step back"),
    (Step::Signal, "signal times"),
    (Step::Invite, "invite"),
    (Step::Show, "show"),
    (Step::Answer, "answer"),
];

fn tables(homes: &[Seen]) -> Vec<String> {
    let kinds: BTreeSet<&str> = homes.iter().map(|s| s.kind).collect();
    let percent = |k: usize, n: usize| format!("{:.1} %", 100.0 * k as f64 / n.max(1) as f64);
    let row = |name: &str, of: &[&Seen]| {
        let words: usize = of.iter().map(|s| s.words).sum();
        let cell = |step: &Step| percent(of.iter().filter_map(|s| s.steps.get(step)).sum(), words);
        let mut row = vec![name.to_owned(), of.len().to_string(), words.to_string()];
        row.extend(STEPS.iter().map(|(step, _)| cell(step)));
        row
    };
    let mut rows: Vec<Vec<String>> =
        kinds.iter().map(|kind| row(kind, &homes.iter().filter(|s| s.kind == *kind).collect::<Vec<_>>())).collect();
    rows.push(row("all", &homes.iter().collect::<Vec<_>>()));
    let mut head = vec!["animal", "households", "words"];
    head.extend(STEPS.iter().map(|(_, name)| *name));
    let readings: usize = homes.iter().map(|s| s.readings).sum();
    let next: Vec<Vec<String>> = NEXTS
        .iter()
        .map(|n| {
            let k: usize = homes.iter().filter_map(|s| s.next.get(n)).sum();
            vec![(*n).to_owned(), k.to_string(), percent(k, readings)]
        })
        .collect();
    vec![table(&head, &rows), table(&["next thing to do", "readings", "share"], &next)]
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn sixty_households_get_advice_of_one_mind() {
        let homes = Work { seed: 4, quick: true }.each("advice, small", 60, household).unwrap();
        let sum = |what: fn(&Seen) -> usize| homes.iter().map(what).sum::<usize>();
        assert_eq!(
            [sum(|s| s.not_one), sum(|s| s.invited_back), sum(|s| s.plan_differs), sum(|s| s.closing_taught)],
            [0; 4],
            "no step or two; stepped back and invited; plan against row; closing words as wishes"
        );
        assert_eq!(sum(|s| s.contrary), 0, "first reasons on the other side of their bar");
        assert_eq!([sum(|s| s.no_rest), sum(|s| s.not_on_top), sum(|s| s.not_named)], [0; 3]);
        assert_eq!(sum(|s| s.agreed_first), 0, "plans before what comes first");
        // What is counted must have come up, or nothing was tried.
        assert_eq!(sum(|s| s.agreed), 5 * sum(|s| s.words));
        assert!(sum(|s| s.words) > 300 && sum(|s| s.strong_today) > 10 && sum(|s| s.lasting) > 30, "{homes:?}");
        assert!(sum(|s| s.barred) > 150, "{homes:?}");
        assert!(sum(|s| s.planned) > 100 && sum(|s| s.closing) > 30, "{homes:?}");
        let steps: BTreeSet<Step> = homes.iter().flat_map(|s| s.steps.keys().copied()).collect();
        for step in [Step::Rest, Step::Mend, Step::StepBack, Step::Invite, Step::Show, Step::Answer] {
            assert!(steps.contains(&step), "{step:?} never came up: {steps:?}");
        }
    }

    /// The first cells of the page's table under a head that begins with these words.
    fn column<'p>(page: &'p str, head: &str) -> Vec<&'p str> {
        let (_, table) = page.split_once(head).unwrap();
        let rows = table.lines().skip(2).take_while(|line| line.starts_with("| "));
        rows.filter_map(|line| line.trim_start_matches("| ").split(" |").next()).collect()
    }

    #[test]
    fn the_page_names_the_kinds_and_steps_there_are() {
        let page = include_str!("../../../../docs/lab/results-advice.md");
        assert_eq!(column(page, "| next thing to do |"), NEXTS, "write it anew: lab advice --seed 1");
        let (_, head) = page.split_once("| animal | households | words | ").unwrap();
        let named: Vec<&str> = head.lines().next().unwrap().trim_end_matches(" |").split(" | ").collect();
        assert_eq!(named, STEPS.map(|(_, name)| name), "write it anew: lab advice --seed 1");
    }
}
