//! `design`: trials of a change, planned and read as on the page, from the same figures.

use super::notebook;
use super::serve::now;
use super::tell::story;
use crate::args::{Designing, Planning};
use crate::error::CliError;
use crate::out::say;
use sayso_advisor::Case;
use sayso_advisor::designs::{self, Report, Standing, Today, Trial, proposal, report};
use sayso_advisor::welfare::rest_today;
use sayso_model::{
    AnimalId, CaseCondition, CaseDesign, CaseUnit, DesignId, DesignPlan, DesignStop, Label, Seconds, Story,
};
use sayso_notebook::{animal_named, word_named};
use sayso_wording::Locale;
use sayso_wording::designs::{
    compared, departure, design as design_words, measure, no_test, phase, question, sentence, verdict, with_change,
    would_change,
};
use uuid::Uuid;

/// Commands speak English for now.
const L: Locale = Locale::ENGLISH;

/// Does what was asked.
pub async fn design(what: &Designing) -> Result<(), CliError> {
    match what {
        Designing::List { data, animal } => {
            let story = story(&data.data).await?;
            for card in animal_named(&story, animal.as_deref())? {
                say!("# {}", card.name);
                for fact in designs::plans(&story, card.animal) {
                    let p = fact.part;
                    say!(
                        "{}  {}  {}, {} points from {}",
                        p.trial,
                        question(&L, p),
                        design_words(&L, p.design),
                        p.points,
                        p.first
                    );
                }
                say!();
            }
            Ok(())
        }
        Designing::Show { data, trial } => {
            let story = story(&data.data).await?;
            let found = find(&story, *trial)?;
            print(&story, &found);
            Ok(())
        }
        Designing::Plan(asked) => plan(asked).await,
        Designing::Stop { data, trial, reason } => {
            let book = notebook::open(&data.data).await?;
            let animal = find(&book.story, *trial)?.animal;
            let mut event = book.pen(now()).event(DesignStop { trial: *trial, reason: *reason, because: None });
            event.animal = Some(animal);
            book.keep(vec![event]).await?;
            say!("Stopped. Put everything back as it was.");
            Ok(())
        }
    }
}

fn find(story: &Story, id: DesignId) -> Result<Trial<'_>, CliError> {
    let found = story.animals().into_keys().find_map(|l| designs::trial(story, l, id));
    let found =
        found.ok_or_else(|| CliError::said(format!("the notebook knows no trial {id}; see `sayso design list`")))?;
    found.map_err(|why| CliError::said(format!("the order of this trial cannot be drawn from its plan: {why}")))
}

fn print(story: &Story, trial: &Trial<'_>) {
    let plan = trial.plan.part;
    let r = report(story, trial, now());
    say!(
        "{} {}; {} each {}",
        question(&L, plan),
        design_words(&L, plan.design),
        measure(&L, plan.measure),
        plan.unit.name()
    );
    if matches!(r.standing, Standing::Running | Standing::NotYet(_)) {
        for (lane, today) in trial.lanes.iter().zip(trial.today(story, now())) {
            let lane = if lane.name.is_empty() { String::new() } else { format!("{}: ", lane.name) };
            match today {
                Today::Rest => say!("now: {lane}rest, everything as usual; strong signs of stress were noted"),
                Today::Nothing => say!("now: {lane}everything as usual"),
                Today::Condition { point, condition, criterion } => {
                    let what = match (condition, criterion.and_then(|c| plan.criteria.get(c))) {
                        (_, Some(goal)) => format!("deliver within {goal} s"),
                        (CaseCondition::Changed, None) => with_change(&L, plan),
                        (CaseCondition::Usual, None) => "as usual".to_owned(),
                    };
                    say!("now: {lane}point {point} of {}: {what}", plan.points);
                }
            }
        }
    }
    let animals = story.animals();
    let name = animals.get(&trial.animal).map_or("the animal", |c| c.name.as_str());
    say!("{}", sentence(&L, name, plan, &r));
    for d in &r.departures {
        say!("not as planned: {}", departure(&L, *d));
    }
    if r.standing == Standing::Running {
        say!("figures so far; nothing is claimed from them, and looking tempts to stop:");
    }
    figures(&r);
    say!("what would change it: {}", would_change(&L, plan, &r));
}

fn figures(r: &Report) {
    match &r.tested {
        Err(why) => say!("no test: {}", no_test(&L, *why)),
        Ok(found) => {
            let t = found.test;
            if let Some(d) = found.difference {
                let end = |x: Option<f64>| x.map_or_else(|| "open".to_owned(), |x| format!("{x:.2}"));
                say!(
                    "difference, changed less usual: {:.2} (95 % interval {} to {}, n = {} points)",
                    t.observed,
                    end(d.low),
                    end(d.high),
                    d.n
                );
            } else {
                say!("mean distance from the goal: {:.2} s", t.observed);
            }
            say!("orders as extreme: {} of {}; p = {:.4}", t.as_extreme, t.orders, t.p);
        }
    }
    if let Some(s) = r.standards.filter(|_| r.standing != Standing::Running) {
        say!(
            "the design {}: {} chances to show an effect, at least {} points each",
            verdict(&L, s.verdict),
            s.demonstrations,
            s.fewest
        );
    }
    if r.missing > 0 {
        say!("points over without a value: {} of {}", r.missing, r.done.0);
    }
    for lane in r.lanes.iter().filter(|l| !l.points.is_empty()) {
        if !lane.lane.name.is_empty() {
            say!("## {}", lane.lane.name);
        }
        for p in &lane.phases {
            say!("   {:<12} mean {}", phase(&L, p.name), L.estimate(&p.mean));
        }
        for (what, c) in &lane.contrasts {
            let n = &c.nonoverlap;
            say!(
                "   {}: NAP {:.0} % (90 % interval {:.0} % to {:.0} %, n = {} and {}), Tau-U {:.0} % (p = {:.3})",
                compared(&L, *what),
                100.0 * n.nap,
                100.0 * n.nap_interval.low,
                100.0 * n.nap_interval.high,
                n.n_a,
                n.n_b,
                100.0 * n.tau_u,
                n.tau_u_p
            );
        }
    }
}

async fn plan(what: &Planning) -> Result<(), CliError> {
    let book = notebook::open(&what.data).await?;
    let cards = animal_named(&book.story, what.animal.as_deref())?;
    let [card] = cards.as_slice() else {
        return Err(CliError::said("say which animal with --animal"));
    };
    if rest_today(&Case::new(&book.story, card.animal, now())) {
        return Err(CliError::said("not today: strong signs of stress were noted; give space and plan on a calm day"));
    }
    let today = now().day(&book.story.zone());
    let first = what.first.unwrap_or_else(|| today.plus(1));
    let soonest = if what.unit == CaseUnit::Session { today } else { today.plus(1) };
    if first < soonest {
        return Err(CliError::said(format!("--first must be {soonest} or later: the order is drawn before it begins")));
    }
    let design = what.design.unwrap_or_else(|| proposal(what.question));
    let phased = matches!(design, CaseDesign::Reversal | CaseDesign::ChangingCriterion);
    let staggered = design == CaseDesign::MultipleBaseline;
    let only = |used: bool, n: u16| if used { n } else { 0 };
    let label = |text: &String| Label::new(text).map_err(|e| CliError::said(format!("--label {e}")));
    let goal = |s: &f64| Seconds::new(*s).map_err(|e| CliError::said(format!("--goal: {e}")));
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
        seed: getrandom::u32().map_err(|e| CliError::said(format!("this machine gives no random numbers: {e}")))?,
    };
    let id = plan.trial;
    let mut event = book.pen(now()).event(plan);
    event.animal = Some(card.animal);
    event.check().map_err(|problems| CliError::said(problems.to_string()))?;
    book.keep(vec![event]).await?;
    say!("Planned: {id}");
    say!(
        "It is about {}, not the other way round: it may leave at any time, and a strong sign of stress ends the trial.",
        card.name
    );
    say!("See each day's condition with `sayso design show {id}`.");
    Ok(())
}

fn animals(story: &Story, names: &[String]) -> Result<Vec<AnimalId>, CliError> {
    let mut all = Vec::new();
    for name in names {
        all.extend(animal_named(story, Some(name))?.into_iter().map(|c| c.animal));
    }
    Ok(all)
}
