//! Prints what a demo holds: events by kind, and for each learner the truth and the record week by week.
//! Run: `cargo run -p sayso-sim --example overview -- 7 2026-11-25T19:30:00Z`

use sayso_model::*;
use sayso_sim::demo;
use std::collections::BTreeMap;
use std::error::Error;

fn main() -> Result<(), Box<dyn Error>> {
    let mut args = std::env::args().skip(1);
    let seed: u64 = args.next().as_deref().unwrap_or("7").parse()?;
    let end: Moment = args.next().as_deref().unwrap_or("2026-11-25T19:30:00Z").parse()?;
    let run = demo(seed, end);
    let mut kinds: BTreeMap<&str, usize> = BTreeMap::new();
    for e in &run.events {
        *kinds.entry(e.body.kind().name()).or_default() += 1;
    }
    println!("{} events: {kinds:?}", run.events.len());
    let story = Story::from_events(run.events.iter().cloned());
    let zone = story.zone();
    let home = &run.truth.home;
    for (l, id) in run.truth.ids.animals.iter().enumerate() {
        println!("\n{} ({})", home.animals[l].name, home.animals[l].species.name());
        let sessions = story.sessions(*id);
        let joined = sessions.iter().filter(|s| s.joined()).count();
        let left = sessions.iter().filter(|s| s.left()).count();
        println!("sessions {}, joined {joined}, left {left}", sessions.len());
        if let Some(s) = sessions.last() {
            println!("last session {} purpose {}", s.start.at(), s.start.part.purpose.name());
        }
        let mut kcal: BTreeMap<Day, f64> = BTreeMap::new();
        for f in story.of::<Feed>(*id) {
            *kcal.entry(f.at().day(&zone)).or_default() += f.part.kcal.get();
        }
        println!(
            "reward kcal: most in a day {:.1}, today {:.1}",
            kcal.values().fold(0.0, |a: f64, b| a.max(*b)),
            kcal.get(&end.day(&zone)).unwrap_or(&0.0)
        );
        for (w, word) in run.truth.ids.words.iter().enumerate() {
            if !home.words[w].animals.contains(&l) {
                continue;
            }
            let stages: Vec<String> = story
                .of::<StageChoice>(*id)
                .filter(|f| f.part.word == *word)
                .map(|f| format!("{}@{}", f.part.stage.name(), f.at().day(&zone)))
                .collect();
            let own = story.of::<Press>(*id).filter(|f| f.part.word == *word && f.part.by == PressedBy::Animal).count();
            let shown =
                story.of::<Press>(*id).filter(|f| f.part.word == *word && f.part.by == PressedBy::Person).count();
            let wanted: Vec<bool> = story
                .of::<Invitation>(*id)
                .filter(|f| f.part.word == *word && f.part.took == Some(true))
                .map(|f| matches!(f.part.result, InvitationResult::Pressed { word: p, .. } if p == *word))
                .collect();
            let curve: Vec<String> = run
                .truth
                .days
                .iter()
                .filter(|d| d.animal == l)
                .step_by(7)
                .map(|d| format!("{:.2}", d.understanding[w]))
                .collect();
            let marks: String = wanted.iter().map(|x| if *x { '+' } else { '.' }).collect();
            println!(
                "{:9} shown {shown:4} own {own:4} invited-and-wanted {:3} pressed {:3} truth {} | {}",
                home.words[w].says.as_str(),
                wanted.len(),
                wanted.iter().filter(|x| **x).count(),
                curve.join(" "),
                stages.join(" ")
            );
            println!("          invitations in which it was wanted: {marks}");
        }
        let mut per_week = [0usize; 11];
        let first = run.truth.days[0].day;
        for f in story.of::<Press>(*id).filter(|f| f.part.by == PressedBy::Animal) {
            per_week[(f.at().day(&zone).days_since(first) / 7).clamp(0, 10) as usize] += 1;
        }
        println!("own presses a week {per_week:?}");
        for p in story.of::<ProbePlan>(*id) {
            let t: Vec<_> = story.of::<ProbeTrial>(*id).filter(|f| f.part.probe == p.part.probe).collect();
            let right = t
                .iter()
                .filter(|f| matches!(f.part.response, ProbeResponse::Chose { word, .. } if word == f.part.target))
                .count();
            let any = t.iter().filter(|f| matches!(f.part.response, ProbeResponse::Chose { .. })).count();
            println!(
                "probe {} blind {} trials {} answered {any} right {right}",
                p.part.design.name(),
                p.part.blind,
                t.len()
            );
        }
    }
    Ok(())
}
