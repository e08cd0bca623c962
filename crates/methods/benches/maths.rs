//! The maths beside Python's scientific stack: the same data, one run, answers compared.
//!
//! `cargo bench -p sayso-methods --bench maths` (add `-- layout` for the rows whose name holds "layout",
//! `--quick` to run each once). Needs Python 3
//! and, the first time, a network for its packages. What it measured: `docs/lab/speed.md`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

#[path = "maths/library.rs"]
mod library;

use cpu_time::ProcessTime;
use library::{Library, Reply, Times};
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};
use sayso_methods::board::{Effort, Problem, solve};
use sayso_methods::demand::change::{change_points_with_exposure, default_penalty};
use sayso_methods::learning::latency::{Wait, kaplan_meier};
use sayso_methods::likes::{ChoiceFit, Intervals, PairModel, PairOutcome, PairTrial, Prior, bradley_terry, fit_pairs};
use sayso_methods::stats::Level;
use sayso_methods::understanding::MonteCarlo;
use sayso_methods::understanding::association::{Association, PressIn, Unit, association};
use serde_json::{Value, json};
use std::hint::black_box;
use std::sync::atomic::{AtomicBool, Ordering::Relaxed};
use std::time::Instant;

fn main() {
    let wanted = std::env::args().skip(1).find(|a| !a.starts_with('-')).unwrap_or_default();
    if std::env::args().any(|a| a == "--quick") {
        ONCE.store(true, Relaxed);
    }
    let mut library = Library::start(ONCE.load(Relaxed));
    let cores = std::thread::available_parallelism().map_or(0, usize::from);
    println!("{}; {cores} cores; times in ms, least of several runs; ratio = library / ours\n", library.versions);
    println!(
        "| row | library side | ours: processor | wall | library: processor | wall | ratio: processor | wall | agreement |"
    );
    println!("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    type Row = (&'static str, fn(&mut Library));
    let rows: [Row; 5] = [
        ("permutation", permutation),
        ("likes", likes),
        ("changes", changes),
        ("waiting", waiting),
        ("layout", layout),
    ];
    for (_, row) in rows.iter().filter(|(name, _)| name.contains(&wanted)) {
        row(&mut library);
    }
}

/// Whether to run everything once, to see whether the machinery works.
static ONCE: AtomicBool = AtomicBool::new(false);

/// Runs once at least, and again while two processor seconds last: least times, last answer.
fn timed<T>(mut run: impl FnMut() -> T) -> (Times, T) {
    let mut least = Times { wall: f64::INFINITY, cpu: f64::INFINITY };
    let (mut spent, mut runs) = (0.0, 0);
    loop {
        let (begin, before) = (Instant::now(), ProcessTime::now());
        let answer = black_box(run());
        let cpu = before.elapsed().as_secs_f64();
        least.wall = least.wall.min(begin.elapsed().as_secs_f64() * 1e3);
        least.cpu = least.cpu.min(cpu * 1e3);
        (spent, runs) = (spent + cpu, runs + 1);
        if spent > 2.0 || runs >= 200 || ONCE.load(Relaxed) {
            return (least, answer);
        }
    }
}

fn print(row: &str, side: &str, ours: Times, reply: &Reply, agreement: &str) {
    let note = if reply.note.is_empty() { String::new() } else { format!(" ({})", reply.note) };
    let Reply { times: theirs, .. } = reply;
    println!(
        "| {row} | {side}{note} | {:.2} | {:.2} | {:.2} | {:.2} | {:.2} | {:.2} | {agreement} |",
        ours.cpu,
        ours.wall,
        theirs.cpu,
        theirs.wall,
        theirs.cpu / ours.cpu,
        theirs.wall / ours.wall
    );
}

/// Says how far apart the answers are, and stops the run if that is more than allowed.
fn within(what: &str, apart: f64, allowed: f64) -> String {
    assert!(apart <= allowed, "{what}: {apart:e} apart, {allowed:e} allowed");
    format!("{what} {apart:.0e} apart ({allowed:.0e} allowed)")
}

fn floats(values: &[f64]) -> Vec<u8> {
    values.iter().flat_map(|v| v.to_le_bytes()).collect()
}

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().unwrap().iter().map(|v| v.as_f64().unwrap()).collect()
}

fn farthest(ours: impl IntoIterator<Item = f64>, theirs: &[f64]) -> f64 {
    let ours: Vec<f64> = ours.into_iter().collect();
    assert_eq!(ours.len(), theirs.len());
    ours.iter().zip(theirs).map(|(a, b)| if a == b { 0.0 } else { (a - b).abs() }).fold(0.0, f64::max)
}

fn unit(rng: &mut Xoshiro256PlusPlus) -> f64 {
    (rng.next_u64() >> 11) as f64 / (1u64 << 53) as f64
}

// 100 000 presses of 10 words, 4 outcomes (half of them the commonest), sessions of 100.
fn permutation(library: &mut Library) {
    const LENGTH: usize = 100;
    const PRESSES: usize = 100_000;
    let draws = MonteCarlo { seed: 1, most: 10_000, enough: 10_000 };
    for (rearranged, row) in [(Unit::Press, "permutation, presses"), (Unit::Episode, "permutation, episodes")] {
        let mut rng = Xoshiro256PlusPlus::seed_from_u64(1);
        let mut words = Xoshiro256PlusPlus::seed_from_u64(6);
        let mut last = (0, 0);
        let mut drawn = || [0, 0, 0, 0, 1, 1, 2, 3][rng.next_u64() as usize % 8];
        let mut presses = Vec::with_capacity(PRESSES);
        for k in 0..PRESSES {
            let (word, outcome) = match rearranged {
                Unit::Press => {
                    let word = words.next_u64() as usize % 10;
                    (word, if word == 0 && unit(&mut words) < 0.01 { 3 } else { drawn() })
                }
                // What went on goes on.
                Unit::Episode => {
                    let word = if unit(&mut words) < 0.4 { last.0 } else { words.next_u64() as usize % 10 };
                    let lasts = unit(&mut words) < 0.75;
                    let other = std::iter::repeat_with(&mut drawn).find(|o| *o != last.1).unwrap_or(last.1);
                    (word, if lasts { last.1 } else { other })
                }
            };
            last = (word, outcome);
            presses.push(PressIn { session: k / LENGTH, word, outcome });
        }
        library.give("words.u1", &presses.iter().map(|p| p.word as u8).collect::<Vec<_>>());
        library.give("outcomes.u1", &presses.iter().map(|p| p.outcome as u8).collect::<Vec<_>>());
        let (ours, found) = timed(|| association(&presses, rearranged, draws).unwrap());
        let sides: &[(&str, &str)] = match rearranged {
            Unit::Press => &[
                ("permuted", "NumPy permuted and bincount"),
                ("random_table", "SciPy random_table, all draws of a session"),
            ],
            Unit::Episode => &[("episodes", "NumPy argsort and products")],
        };
        for (side, name) in sides {
            let reply = library.run(side, json!({ "session": LENGTH, "draws": draws.most }));
            print(row, name, ours, &reply, &same_test(&found, &reply.answer));
        }
    }
}

/// Counts seen are the same, expected counts too, and p-values within their Monte Carlo errors.
fn same_test(found: &Association, theirs: &Value) -> String {
    let (exceeded, drawn) = (numbers(&theirs["exceeded"]), theirs["drawn"].as_f64().unwrap());
    let ours = found.by_word.iter().map(|w| w.p).chain([found.overall]);
    let mut most = 0.0_f64;
    for (ours, theirs) in ours.zip(&exceeded) {
        let (a, b) = (ours.exceeded as f64, ours.drawn as f64);
        let pooled = (a + theirs) / (b + drawn);
        let error = (pooled * (1.0 - pooled) * (1.0 / b + 1.0 / drawn)).sqrt();
        // Where neither side has an exceedance (or a miss), the shares are equal.
        most = most.max(if error > 0.0 { (a / b - theirs / drawn).abs() / error } else { 0.0 });
    }
    let mut expected = 0.0_f64;
    for (word, (seen, mean)) in found.by_word.iter().zip(rows(&theirs["seen"]).zip(rows(&theirs["mean"]))) {
        assert_eq!(word.observed as f64, seen[word.leading_outcome], "the counts seen");
        expected = expected.max((word.expected - mean[word.leading_outcome]).abs());
    }
    let p = format!("11 p-values within {most:.1} Monte Carlo errors (4 allowed)");
    assert!(most <= 4.0, "{p}");
    format!("{p}; overall p {:.3}; {}", found.overall.p, within("expected counts", expected, 1e-7))
}

fn rows(table: &Value) -> impl Iterator<Item = Vec<f64>> {
    table.as_array().unwrap().iter().map(numbers)
}

// Strengths from choices among 8 and among 200 items, prior of weight 0.1.
fn likes(library: &mut Library) {
    let (alpha, level) = (0.1, Level::P95);
    let prior = Prior::Weak { alpha };
    for (items, choices) in [(8, 112), (200, 5_000)] {
        let mut rng = Xoshiro256PlusPlus::seed_from_u64(2);
        let liking: Vec<f64> = (0..items).map(|_| 3.0 * unit(&mut rng)).collect();
        let mut wins = vec![vec![0.0; items]; items];
        let mut trials = Vec::new();
        for _ in 0..choices {
            let left = rng.next_u64() as usize % items;
            let right = (left + 1 + rng.next_u64() as usize % (items - 1)) % items;
            let outcome = if unit(&mut rng) < 1.0 / (1.0 + (liking[right] - liking[left]).exp()) {
                wins[left][right] += 1.0;
                PairOutcome::Left
            } else {
                wins[right][left] += 1.0;
                PairOutcome::Right
            };
            trials.push(PairTrial { left, right, outcome });
        }
        library.give("wins.f8", &floats(&wins.concat()));
        let request = json!({ "items": items, "alpha": alpha });
        let newton = library.run("newton_pairs", request.clone());
        let choix = library.run("choix_pairs", request);
        let model = PairModel { prior, side: false, nothing: false, tires: false, level, intervals: Intervals::Quick };
        let row = format!("Bradley-Terry, {items} items");
        let (quick, fit) = timed(|| fit_pairs(items, &trials, &model).unwrap());
        print(&row, "choix opt_pairwise, no errors", quick, &choix, &same_likes(&fit, &choix.answer, 1e-4));
        print(&row, "NumPy Newton with errors", quick, &newton, &same_likes(&fit, &newton.answer, 1e-8));
        if items < 40 {
            let (best, fit) = timed(|| bradley_terry(&wins, prior, level).unwrap());
            let row = format!("{row}, profile intervals");
            print(&row, "choix opt_pairwise, no errors", best, &choix, &same_likes(&fit, &choix.answer, 1e-4));
        }
    }
}

fn same_likes(fit: &ChoiceFit, theirs: &Value, allowed: f64) -> String {
    let values = farthest(fit.strengths.iter().map(|s| s.value), &numbers(&theirs["values"]));
    let values = within("strengths", values, allowed);
    if theirs["errors"].is_null() {
        return values;
    }
    let errors = farthest(fit.strengths.iter().map(|s| s.standard_error), &numbers(&theirs["errors"]));
    format!("{values}; {}", within("errors", errors, allowed))
}

// Ten years of presses a day, and an hour; the rate changes now and then.
fn changes(library: &mut Library) {
    let day = [3.0, 4.0, 2.5, 6.0, 9.0, 8.0, 12.0, 10.0, 14.0, 13.0];
    for (row, steps, scale) in [("days", 3_652_usize, 1.0), ("hours", 87_648, 1.0 / 24.0)] {
        let mut rng = Xoshiro256PlusPlus::seed_from_u64(3);
        let counts: Vec<u64> = (0..steps)
            .map(|t| {
                let rate: f64 = day[t * day.len() / steps] * scale;
                let (mut product, mut count) = (unit(&mut rng), 0);
                while product > (-rate).exp() {
                    product *= unit(&mut rng);
                    count += 1;
                }
                count
            })
            .collect();
        library.give("counts.i8", &counts.iter().flat_map(|c| c.to_le_bytes()).collect::<Vec<_>>());
        let penalty = default_penalty(steps);
        let exposure = vec![1.0; steps];
        let (ours, found) = timed(|| change_points_with_exposure(&counts, &exposure, penalty).unwrap());
        let sides = [("numpy_pelt", "NumPy PELT"), ("ruptures_pelt", "ruptures Pelt, cost of our own")];
        // The second looks at one candidate at a time: hours would take it minutes.
        for (side, name) in &sides[..if row == "days" { 2 } else { 1 }] {
            let reply = library.run(side, json!({ "penalty": penalty }));
            let cuts: Vec<f64> = found.change_after.iter().map(|c| *c as f64).collect();
            assert_eq!(cuts, numbers(&reply.answer["cuts"]), "the same changes");
            let theirs = reply.answer["objective"].as_f64().unwrap();
            let objective = within("objective", (found.objective / theirs - 1.0).abs(), 1e-9);
            print(
                &format!("change points, 10 years of {row}"),
                name,
                ours,
                &reply,
                &format!("the same {} changes; {objective}", cuts.len()),
            );
        }
    }
}

// A million waits, a third without an event, all times distinct.
fn waiting(library: &mut Library) {
    let mut rng = Xoshiro256PlusPlus::seed_from_u64(4);
    let (mut times, mut events) = (Vec::new(), Vec::new());
    let waits: Vec<Wait> = (0..1_000_000)
        .map(|k| {
            let group = usize::from(k % 5 < 2);
            let slower = 1.0 + 0.003 * group as f64;
            let (event, end) = (-20.0 * slower * (1.0 - unit(&mut rng)).ln(), 40.0 * -(1.0 - unit(&mut rng)).ln());
            let wait = if event <= end { Wait::ended(event) } else { Wait::open(end) };
            times.push(wait.time);
            events.push(u8::from(wait.event));
            wait
        })
        .collect();
    library.give("times.f8", &floats(&times));
    library.give("events.u1", &events);
    let (ours, curve) = timed(|| kaplan_meier(&waits, Level::P95).unwrap());
    for (side, name) in
        [("lifelines_curve", "lifelines KaplanMeierFitter"), ("scipy_curve", "SciPy ecdf, log-log interval")]
    {
        let reply = library.run(side, json!({}));
        let at = library.take("at.out");
        // One side has a point at 0, the other has not. At a survival of 0 the interval is a point here and NaN there.
        let points = &curve.points[curve.points.len() - at.len()..];
        assert!(points.iter().map(|p| p.time).eq(at), "the same times");
        let settled = points.iter().filter(|p| p.survival > 0.0).count();
        let survival = farthest(points.iter().map(|p| p.survival), &library.take("survival.out"));
        let low = farthest(points[..settled].iter().map(|p| p.interval.low), &library.take("low.out")[..settled]);
        let high = farthest(points[..settled].iter().map(|p| p.interval.high), &library.take("high.out")[..settled]);
        let (survival, ends) = (within("survival", survival, 1e-9), within("interval", low.max(high), 1e-9));
        print("Kaplan-Meier, 1 000 000 waits", name, ours, &reply, &format!("{survival}; {ends}"));
    }
}

// 30 words on a board of 5 by 6, whole-number flows between a third of the pairs.
fn layout(library: &mut Library) {
    let places = 30_usize;
    let mut rng = Xoshiro256PlusPlus::seed_from_u64(5);
    let steps = |p: usize, q: usize| ((p / 6).abs_diff(q / 6) + (p % 6).abs_diff(q % 6)) as f64;
    let distance: Vec<Vec<f64>> = (0..places).map(|p| (0..places).map(|q| steps(p, q)).collect()).collect();
    let mut flow = vec![vec![0.0; places]; places];
    for i in 0..places {
        for j in 0..i {
            if unit(&mut rng) < 0.33 {
                flow[i][j] = (1 + rng.next_u64() % 9) as f64;
                flow[j][i] = flow[i][j];
            }
        }
    }
    library.give("flow.f8", &floats(&flow.concat()));
    library.give("distance.f8", &floats(&distance.concat()));
    let problem = Problem::new(places, places).unwrap().with_flow(&flow, &distance).unwrap();
    let request = |method: &str, starts: u32| json!({ "places": places, "method": method, "starts": starts });
    let mut beside = |row: &str, effort: Effort, asked: &Value| {
        let (ours, found) = timed(|| solve(&problem, None, &effort).unwrap());
        let mut asked = asked.clone();
        asked["placing"] = json!(found.places);
        let reply = library.run("assignment", asked.clone());
        let theirs = reply.answer["cost"].as_f64().unwrap();
        let placing: Vec<usize> = numbers(&reply.answer["placing"]).iter().map(|p| *p as usize).collect();
        // Each side works out the cost of the other's placing.
        assert_eq!((reply.answer["ours"].as_f64().unwrap(), problem.cost(&placing).unwrap()), (found.cost, theirs));
        let method = asked["method"].as_str().unwrap();
        let side = match asked["starts"].as_u64() {
            Some(1) => format!("SciPy quadratic_assignment {method}, one start"),
            starts => format!("SciPy quadratic_assignment {method}, best of {} starts", starts.unwrap()),
        };
        let row = format!("layout, 30 places, {row} ({} x {} rounds)", effort.starts, effort.rounds);
        let costs =
            format!("cost {} ours, {theirs} theirs ({:+.1} %)", found.cost, (theirs / found.cost - 1.0) * 100.0);
        print(&row, &side, ours, &reply, &costs);
        (found.cost, theirs)
    };
    for (method, starts) in [("faq", 1), ("faq", 30), ("2opt", 1), ("2opt", 30)] {
        let (_, theirs) = beside("as used", Effort::default(), &request(method, starts));
        // The fewest rounds, doubling, that give a placing as cheap as theirs; found beforehand, not timed.
        let with = |rounds: u32| Effort { starts: 1, rounds, ..Effort::default() };
        let enough = |rounds: &u32| solve(&problem, None, &with(*rounds)).unwrap().cost <= theirs;
        match (0..12).map(|k| 25 << k).find(enough) {
            Some(rounds) => drop(beside("as cheap as theirs", with(rounds), &request(method, starts))),
            None => println!("no single start is as cheap as theirs"),
        }
    }
}
