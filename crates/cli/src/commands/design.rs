//! `design`: trials of a change, planned and read as on the page, from the same figures.

use super::notebook;
use super::serve::now;
use super::tell::story;
use crate::args::{Designing, Planning};
use crate::error::CliError;
use crate::out::tell;
use sayso_advisor::Case;
use sayso_advisor::designs::{self, Report, Standing, Today, Trial, beside, proposal, report};
use sayso_advisor::welfare::rest_today;
use sayso_model::{
    AnimalId, CaseCondition, CaseDesign, CaseUnit, DesignId, DesignPlan, DesignStop, Label, Seconds, Story,
};
use sayso_notebook::{animal_named, word_named};
use sayso_wording::designs::{
    beside_line, beside_wait, compared, departure, design_of as design_words, measure, no_test, phase, question,
    refused, sentence, verdict, with_change, would_change,
};
use sayso_wording::{Locale, Message, say, words};
use uuid::Uuid;

/// Does what was asked.
pub async fn design(l: &Locale, what: &Designing) -> Result<(), CliError> {
    match what {
        Designing::List { data, animal } => {
            let story = story(l, &data.data).await?;
            for card in animal_named(&story, animal.as_deref())? {
                tell!("# {}", card.name);
                for fact in designs::plans(&story, card.animal) {
                    let p = fact.part;
                    tell!(
                        l,
                        command_design::listed,
                        id = p.trial.to_string(),
                        question = question(l, p),
                        design = design_words(l, p),
                        points = p.points,
                        first = l.date(p.first)
                    );
                }
                tell!();
            }
            Ok(())
        }
        Designing::Show { data, trial } => {
            let story = story(l, &data.data).await?;
            let found = find(l, &story, *trial)?;
            print(l, &story, &found);
            Ok(())
        }
        Designing::Plan(asked) => plan(l, asked).await,
        Designing::Stop { data, trial, reason } => {
            let book = notebook::open(l, &data.data).await?;
            let animal = find(l, &book.story, *trial)?.animal;
            let mut event = book.pen(now()).event(DesignStop { trial: *trial, reason: *reason, because: None });
            event.animal = Some(animal);
            book.keep(vec![event]).await?;
            tell!(l, command_design::stopped);
            Ok(())
        }
    }
}

fn find<'a>(l: &Locale, story: &'a Story, id: DesignId) -> Result<Trial<'a>, CliError> {
    let found = story.animals().into_keys().find_map(|l| designs::trial(story, l, id));
    let found = found.ok_or_else(|| CliError::said(words!(command_design::no_trial, id = id.to_string())))?;
    found.map_err(|why| CliError::said(words!(command_design::not_drawn, why = refused(l, why))))
}

fn print(l: &Locale, story: &Story, trial: &Trial<'_>) {
    let plan = trial.plan.part;
    let r = report(story, trial, now());
    tell!(
        l,
        command_design::heading,
        question = question(l, plan),
        design = design_words(l, plan),
        measure = measure(l, plan.measure),
        unit = plan.unit.name()
    );
    if matches!(r.standing, Standing::Running | Standing::NotYet(_)) {
        for (lane, today) in trial.lanes.iter().zip(trial.today(story, now())) {
            let lane = if lane.name.is_empty() { String::new() } else { format!("{}: ", lane.name) };
            let now = match today {
                Today::Rest => say!(l, command_design::rest),
                Today::Nothing => say!(l, command_design::nothing),
                Today::Condition { point, condition, criterion } => {
                    let what = match (condition, criterion.and_then(|c| plan.criteria.get(c))) {
                        (_, Some(goal)) => say!(l, command_design::within, seconds = goal.to_string()),
                        (CaseCondition::Changed, None) => with_change(l, plan),
                        (CaseCondition::Usual, None) => say!(l, command_design::usual),
                    };
                    say!(l, command_design::point, point = point, of = plan.points, what = what)
                }
            };
            tell!(l, command_design::now, what = format!("{lane}{now}"));
        }
    }
    let animals = story.animals();
    let name = animals.get(&trial.animal).map_or("", |c| c.name.as_str());
    tell!("{}", sentence(l, name, plan, &r));
    let others = beside(story, trial.animal, plan, now());
    if !others.is_empty() {
        tell!(l, designs::beside_kept, measure = measure(l, plan.measure));
        others.iter().for_each(|other| tell!("   {}", beside_line(l, other)));
        tell!(l, designs::beside_read);
    }
    for d in &r.departures {
        tell!(l, command_design::departure, what = departure(l, *d));
    }
    if r.standing == Standing::Running {
        tell!(l, command_design::so_far);
    }
    figures(l, &r);
    tell!(l, command_tell::would_change, what = would_change(l, plan, &r));
}

fn figures(l: &Locale, r: &Report) {
    match &r.tested {
        Err(why) => tell!(l, command_design::no_test, why = no_test(l, *why)),
        Ok(found) => {
            let t = found.test;
            if let Some(d) = found.difference {
                let end = |x: Option<f64>| x.map_or_else(|| say!(l, command_design::open_end), |x| l.number(x, 2));
                let value = l.number(t.observed, 2);
                tell!(l, command_design::difference, value = value, low = end(d.low), high = end(d.high), n = d.n);
            } else {
                let seconds = say!(l, unit::seconds, value = l.number(t.observed, 2));
                tell!(l, command_design::distance, seconds = seconds);
            }
            let (extreme, of) = (t.as_extreme.to_string(), t.orders.to_string());
            tell!(l, command_design::orders, extreme = extreme, of = of, p = l.p(t.p));
        }
    }
    if let Some(s) = r.standards.filter(|_| r.standing != Standing::Running) {
        let verdict = verdict(l, s.verdict);
        tell!(l, command_design::standards, verdict = verdict, chances = s.demonstrations, fewest = s.fewest);
    }
    if r.missing > 0 {
        tell!(l, command_design::missing, n = r.missing, of = r.done.0);
    }
    for lane in r.lanes.iter().filter(|l| !l.points.is_empty()) {
        if !lane.lane.name.is_empty() {
            tell!("## {}", lane.lane.name);
        }
        for p in &lane.phases {
            tell!("   {:<12} {}", phase(l, p.name), say!(l, command_design::mean, mean = l.estimate(&p.mean)));
        }
        for (what, c) in &lane.contrasts {
            let n = &c.nonoverlap;
            let nap = say!(
                l,
                command_design::nap,
                name = compared(l, *what),
                nap = l.percent(n.nap),
                low = l.percent(n.nap_interval.low),
                high = l.percent(n.nap_interval.high),
                n_a = n.n_a,
                n_b = n.n_b,
                tau = l.percent(n.tau_u),
                p = l.p(n.tau_u_p)
            );
            tell!("   {nap}");
        }
    }
}

async fn plan(l: &Locale, what: &Planning) -> Result<(), CliError> {
    let book = notebook::open(l, &what.data).await?;
    let cards = animal_named(&book.story, what.animal.as_deref())?;
    let [card] = cards.as_slice() else {
        return Err(CliError::said(words!(command_design::which_animal)));
    };
    if rest_today(&Case::new(&book.story, card.animal, now())) {
        return Err(CliError::said(words!(command_design::not_today)));
    }
    let today = now().day(&book.story.zone());
    let first = what.first.unwrap_or_else(|| today.plus(1));
    let soonest = if what.unit == CaseUnit::Session { today } else { today.plus(1) };
    if first < soonest {
        return Err(CliError::said(words!(command_design::too_soon, day = soonest.to_string())));
    }
    let design = what.design.unwrap_or_else(|| proposal(what.question));
    let phased = matches!(design, CaseDesign::Reversal | CaseDesign::ChangingCriterion);
    let staggered = design == CaseDesign::MultipleBaseline;
    let only = |used: bool, n: u16| if used { n } else { 0 };
    let label = |text: &String| Label::new(text).map_err(|e| CliError::flag("--label", e.say(l)));
    let goal = |s: &f64| Seconds::new(*s).map_err(|e| CliError::flag("--goal", e.say(l)));
    let plan = DesignPlan {
        trial: DesignId(Uuid::now_v7()),
        design,
        question: what.question,
        label: what.label.as_ref().map(label).transpose()?,
        measure: what.measure,
        expected: what.expected,
        words: what
            .word
            .iter()
            .map(|w| word_named(&book.story, Some(card.animal), w).map(|card| card.word))
            .collect::<Result<_, _>>()?,
        animals: animals(&book.story, &what.across)?,
        unit: what.unit,
        first,
        points: what.points,
        phases: only(phased, what.phases),
        least: only(design != CaseDesign::AlternatingTreatments, what.least),
        apart: only(staggered, what.apart),
        criteria: what.goal.iter().map(goal).collect::<Result<_, _>>()?,
        seed: getrandom::u32().map_err(|e| CliError::said(words!(command_design::no_random, why = e.to_string())))?,
        proposal: None,
    };
    let id = plan.trial;
    let others = beside(&book.story, card.animal, &plan, now());
    let caution = (!others.is_empty()).then(|| {
        let lines = others.iter().map(|other| format!("   {}", beside_line(l, other)));
        let lead = say!(l, designs::beside_planned, measure = measure(l, plan.measure));
        [lead].into_iter().chain(lines).chain([beside_wait(l, &others)]).collect::<Vec<_>>().join("\n")
    });
    let mut event = book.pen(now()).event(plan);
    event.animal = Some(card.animal);
    event.check().map_err(CliError::said)?;
    book.keep(vec![event]).await?;
    tell!(l, command_design::planned, id = id.to_string());
    tell!(l, command_design::about, name = &card.name);
    if let Some(caution) = caution {
        tell!("{caution}");
    }
    tell!(l, command_design::see, id = id.to_string());
    Ok(())
}

fn animals(story: &Story, names: &[String]) -> Result<Vec<AnimalId>, CliError> {
    let mut all = Vec::new();
    for name in names {
        all.extend(animal_named(story, Some(name))?.into_iter().map(|c| c.animal));
    }
    Ok(all)
}
