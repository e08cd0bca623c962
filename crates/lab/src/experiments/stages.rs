//! Are words moved to invite and to converse too early or too late, against what is truly understood?

use super::{Section, end};
use crate::error::{LabError, told};
use crate::report::chart::{Chart, Line};
use crate::report::figure::{Finding, In, Wanted};
use crate::work::Work;
use sayso_advisor::Case;
use sayso_advisor::stages::standings;
use sayso_model::{Label, Moment, Note, Place, Stage, Story};
use sayso_sim::{Home, Style, plain_home, simulate};

/// Understood well enough to converse: meant presses given wanting and opportunity.
const READY: f64 = 0.7;
/// Understood well enough that an invitation is worth making.
const WORTH_INVITING: f64 = 0.1;
const DAYS: u32 = 42;
/// Days for which learners that mean nothing are watched.
const WATCHED: u32 = 60;
/// Probability with which they press when they want anything.
const PRESSES: f64 = 0.65;
/// Early by less than this many days does no harm.
const EARLY_DAYS: f64 = 3.0;

/// One word's way.
struct Way {
    /// First day, from 0, on which it was truly ready.
    ready: Option<u32>,
    /// First day on which the figures said converse, and understanding then.
    converse: Option<(u32, f64)>,
    /// The same for invite (or beyond).
    invite: Option<(u32, f64)>,
    /// First day truly worth inviting.
    worth: Option<u32>,
}

/// Runs the experiment.
pub fn run(work: &Work) -> Result<Section, LabError> {
    let mut section = Section::new("Stages: too early or too late");
    let homes = work.each("stages", work.size(150, 2), ways)?;
    let ways: Vec<&Way> = homes.iter().flatten().collect();
    let off: Vec<f64> = ways
        .iter()
        .filter_map(|w| w.converse.zip(w.ready).map(|((said, _), ready)| f64::from(said) - f64::from(ready)))
        .collect();
    let days = In::Number("days");
    section.add(Finding::middle("converse said after truly ready", Wanted::Within(-3.0, 7.0), &off, days));
    let said: Vec<&(u32, f64)> = ways.iter().filter_map(|w| w.converse.as_ref()).collect();
    let early = ways
        .iter()
        .filter(|w| {
            w.converse
                .is_some_and(|(said, _)| w.ready.is_none_or(|ready| f64::from(ready) - f64::from(said) > EARLY_DAYS))
        })
        .count();
    let what = format!("converse said more than {EARLY_DAYS:.0} days before ready, or never ready");
    section.add(Finding::share(what, Wanted::AtMost(0.1), early, said.len()));
    let low = said.iter().filter(|s| s.1 < 0.5).count();
    section.add(Finding::share(
        "converse said with true understanding below 0.5",
        Wanted::AtMost(0.05),
        low,
        said.len(),
    ));
    let ready: Vec<&&Way> = ways.iter().filter(|w| w.ready.is_some_and(|d| d + 10 < DAYS)).collect();
    let late = ready
        .iter()
        .filter(|w| w.converse.is_none_or(|(said, _)| w.ready.is_some_and(|ready| said > ready + 10)))
        .count();
    section.add(Finding::share(
        "converse said more than 10 days after ready (of those ready in time)",
        Wanted::AtMost(0.2),
        late,
        ready.len(),
    ));
    let at: Vec<f64> = said.iter().map(|s| s.1).collect();
    section.add(Finding::middle("true understanding when converse was said", Wanted::Known, &at, In::Percent));
    let at: Vec<f64> = ways.iter().filter_map(|w| w.invite.map(|i| i.1)).collect();
    section.add(Finding::middle("true understanding when invite was said", Wanted::Known, &at, In::Percent));
    let off: Vec<f64> = ways
        .iter()
        .filter_map(|w| w.invite.zip(w.worth).map(|((said, _), worth)| f64::from(said) - f64::from(worth)))
        .collect();
    section.add(Finding::middle("invite said after an invitation was worth making", Wanted::Known, &off, days));
    section.charts.push(chart(&ways));
    for (name, style) in [
        ("any button", Style::AnyWord),
        ("place habit", Style::ByPlace(vec![0.6, 0.2, 0.15, 0.05])),
        ("one favourite a session", Style::BySession),
    ] {
        let told = work.each(&format!("stages, {name}"), work.size(75, 2), |seed| nothing(&style, seed))?;
        let words: Vec<&(bool, bool)> = told.iter().flatten().collect();
        let converse = words.iter().filter(|w| w.0).count();
        let what = format!("means nothing, {name}: words ever told converse in {WATCHED} days");
        section.add(Finding::share(what, Wanted::AtMost(0.05), converse, words.len()));
        let above = words.iter().filter(|w| w.1).count();
        let what = format!("means nothing, {name}: words ever told above chance in {WATCHED} days");
        section.add(Finding::share(what, Wanted::AtMost(0.05), above, words.len()));
    }
    section.text(format!("Homes without trouble, {DAYS} days, animals of different speed (some slow). Every evening the stage is worked out from what was on record by then. Truly ready: a meant press with probability {READY} given wanting and opportunity, at the end of a day; worth inviting: {WORTH_INVITING}. Invitations are made by the home's own habit, after 60 showings. Animals that mean nothing: four words, invitations from day 8 (half of the homes in drawn rounds), a press in {:.0} % whatever is wanted; every evening of {WATCHED} days it is read whether a word was ever told to go to converse, or to be above chance.", 100.0 * PRESSES));
    Ok(section)
}

/// Shares of words by day: truly ready, and said to be.
fn chart(ways: &[&Way]) -> Chart {
    let by = |day: fn(&Way) -> Option<u32>| {
        (0..DAYS)
            .map(|d| (f64::from(d), ways.iter().filter(|w| day(w).is_some_and(|x| x <= d)).count() as f64))
            .map(|(d, k)| (d, k / ways.len().max(1) as f64))
            .collect::<Vec<_>>()
    };
    let line = |name: &str, points| Line { name: name.to_owned(), points };
    Chart {
        file: "stages.svg".into(),
        title: "Words truly ready, and said to be".into(),
        x: "day".into(),
        y: "share of words".into(),
        range: (0.0, 1.0),
        lines: vec![
            line("worth inviting", by(|w| w.worth)),
            line("invite said", by(|w| w.invite.map(|i| i.0))),
            line("truly ready", by(|w| w.ready)),
            line("converse said", by(|w| w.converse.map(|c| c.0))),
        ],
        wanted: None,
    }
}

fn home(seed: u64) -> Home {
    let mut home = plain_home(seed);
    home.days = DAYS;
    for word in &mut home.words {
        word.invited_from = None;
        // Without an agreed answer a word is still being prepared.
        word.answer = Note::new("Give it at once.").ok();
    }
    // Learners of different speed: every fourth at half, every fourth at twice the usual.
    home.animals[0].presser.rate *= [0.5, 1.0, 1.0, 2.0][(seed % 4) as usize];
    home
}

/// Four words and a learner that presses by habit alone.
fn habitual(style: &Style, seed: u64) -> Result<Home, LabError> {
    let mut home = home(seed);
    home.days = WATCHED;
    let mut reward = home.rewards[1].clone();
    reward.name = Label::new("a fourth thing").map_err(told)?;
    home.rewards.push(reward);
    let mut word = home.words[1].clone();
    word.says = Label::new("fourth").map_err(told)?;
    word.reward = home.rewards.len() - 1;
    word.place = Place { row: 0, column: 5 };
    home.words.push(word);
    home.words.iter_mut().for_each(|w| w.invited_from = Some(8));
    let animal = &mut home.animals[0];
    let like = animal.likes[1];
    animal.likes.push(like);
    animal.presser.style = style.clone();
    animal.presser.first_logit = (PRESSES / (1.0 - PRESSES)).ln();
    animal.presser.top = 1.0;
    animal.presser.rate = 0.0;
    animal.presser.noise_sd = 0.0;
    // Words stay at invitations, so that there are many.
    animal.plan.presses_to_converse = 11;
    animal.plan.rounds = seed.is_multiple_of(2);
    Ok(home)
}

/// By word: whether it was ever told to go to converse, and ever to be above chance.
fn nothing(style: &Style, seed: u64) -> Result<Vec<(bool, bool)>, LabError> {
    let home = habitual(style, seed)?;
    let run = simulate(&home, seed, end()?).map_err(told)?;
    let animal = run.truth.ids.animals.first().copied().ok_or_else(|| told("no animal"))?;
    let mut found = vec![(false, false); home.words.len()];
    let mut story = Story::default();
    let mut events = run.events.into_iter().peekable();
    for day in &run.truth.days {
        let evening: Moment = day.day.plus(1).start(&home.zone);
        while let Some(event) = events.next_if(|e| e.recorded_at < evening) {
            story.add(event);
        }
        for standing in standings(&Case::new(&story, animal, evening)) {
            let Some(word) = run.truth.ids.words.iter().position(|w| *w == standing.word) else { continue };
            found[word].0 |= standing.figures_say == Stage::Converse;
            found[word].1 |= standing.above_chance;
        }
    }
    Ok(found)
}

fn ways(seed: u64) -> Result<Vec<Way>, LabError> {
    let home = home(seed);
    let run = simulate(&home, seed, end()?).map_err(told)?;
    let animal = run.truth.ids.animals.first().copied().ok_or_else(|| told("no animal"))?;
    let mut ways: Vec<Way> =
        home.words.iter().map(|_| Way { ready: None, converse: None, invite: None, worth: None }).collect();
    let mut story = Story::default();
    let mut events = run.events.into_iter().peekable();
    for (number, day) in (0..).zip(&run.truth.days) {
        let evening: Moment = day.day.plus(1).start(&home.zone);
        while let Some(event) = events.next_if(|e| e.recorded_at < evening) {
            story.add(event);
        }
        let case = Case::new(&story, animal, evening);
        let standings = standings(&case);
        for (word, way) in ways.iter_mut().enumerate() {
            let understood = day.understanding.get(word).copied().unwrap_or(0.0);
            if understood >= READY {
                way.ready.get_or_insert(number);
            }
            if understood >= WORTH_INVITING {
                way.worth.get_or_insert(number);
            }
            let Some(standing) = standings.iter().find(|s| s.word == run.truth.ids.words[word]) else { continue };
            if standing.figures_say == Stage::Converse {
                way.converse.get_or_insert((number, understood));
            }
            if standing.figures_say >= Stage::Invite {
                way.invite.get_or_insert((number, understood));
            }
        }
    }
    Ok(ways)
}
