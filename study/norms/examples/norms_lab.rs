//! Measures the estimates of releases on households of known truth, and writes tables in Markdown: `norms_lab [SETS]`.

use sayso_norms::{Stretch, TimedStage};
use std::process::ExitCode;
use study_norms::coverage::{Found, Setting, Wait, hundredths_of, measure, stages, weeks};
use study_norms::known::Laws;
use study_norms::{FromSeed, Loss, NoNoise, Noise, Proven};

fn main() -> ExitCode {
    let sets = std::env::args().nth(1).map_or(Ok(1_000), |text| text.parse());
    let Ok(sets) = sets else {
        eprintln!("norms_lab: the number of data sets must be a whole number");
        return ExitCode::FAILURE;
    };
    match run(sets) {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            eprintln!("norms_lab: {why}");
            ExitCode::FAILURE
        }
    }
}

fn run(sets: u32) -> Result<(), NoNoise> {
    let laws = Laws::default();
    println!("{sets} data sets each, seed 1, of {laws:?}\n");
    println!(
        "| of | households | parts | noise | points told | intervals held | by place | at places seldom told | quantiles .25 .5 .75 told and held | median off: half, nine in ten |"
    );
    println!("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    for wait in [Wait::Showings, Wait::Days] {
        for households in [50, 100, 300, 1_000] {
            for (loss, parts) in [(None, 1), (Some(Loss::YEARLY), 1), (Some(Loss::YEARLY), 4)] {
                let setting = Setting { households, parts, wait, loss };
                row(&of(setting), &measure(&laws, setting, sets, 1, &mut FromSeed::new(1))?);
            }
        }
    }
    println!("\nThe same with OpenDP's noise:\n");
    let setting = Setting { households: 300, parts: 1, wait: Wait::Showings, loss: Some(Loss::YEARLY) };
    let mut proven: Box<dyn Noise> = Box::new(Proven);
    row(&of(setting), &measure(&laws, setting, sets, 1, proven.as_mut())?);
    println!("\nStays in a stage, of whole releases of that many households:\n");
    for households in [1_000, 2_000, 6_000] {
        let mut noise = FromSeed::new(1);
        let found = stages(&laws, households, (Loss::YEARLY, &mut noise), (sets / 4, 1))?;
        for (stage, (told, found)) in TimedStage::ALL.into_iter().zip(found) {
            let told = 100.0 * f64::from(told) / f64::from(found.sets.max(1));
            row(&format!("{} | {households} | told in {told:.0} %", stage.name()), &found);
        }
    }
    println!("\nPresses in a week, of whole releases of that many households:\n");
    println!(
        "| weeks | households | told in | of those held: pressed at all, seven times or more | share pressed at all off by: half, nine in ten | its interval wide: half |"
    );
    println!("| --- | --- | --- | --- | --- | --- |");
    for households in [1_000, 2_000, 6_000] {
        let mut noise = FromSeed::new(1);
        let found = weeks(&laws, households, (Loss::YEARLY, &mut noise), (sets / 4, 1))?;
        for (stretch, found) in Stretch::ALL.into_iter().zip(found) {
            let percent = |of: u32, all: u32| 100.0 * f64::from(of) / f64::from(all.max(1));
            let [some, daily] = found.held.map(|held| percent(held, found.told));
            println!(
                "| {} to {} | {households} | {:.0} % | {some:.0}, {daily:.0} | {}, {} | {} |",
                stretch.from(),
                stretch.to(),
                percent(found.told, sets / 4),
                at(&found.off, 50),
                at(&found.off, 90),
                at(&found.wide, 50),
            );
        }
    }
    Ok(())
}

/// The value below which so many of a hundred lie, in percentage points.
fn at(values: &[f64], hundredths: usize) -> String {
    hundredths_of(values, hundredths).map_or("–".to_owned(), |value| format!("{:.0}", 100.0 * value))
}

fn of(setting: Setting) -> String {
    let noise = setting.loss.map_or("none".to_owned(), |loss| format!("ε {loss}"));
    format!("{:?} | {} | {} | {noise}", setting.wait, setting.households, setting.parts)
}

fn row(of: &str, found: &Found) {
    let percent = |(told, held): (u32, u32)| {
        if told == 0 { "–".to_owned() } else { format!("{:.0}", 100.0 * f64::from(held) / f64::from(told)) }
    };
    let told: u32 = found.points.iter().map(|point| point.0).sum();
    // Where a curve seldom goes that far, it does because of its noise: those are counted in the whole, and not told by place.
    let often = |point: &(u32, u32)| point.0 * 10 >= found.sets;
    let places: Vec<String> =
        found.points.iter().map(|point| if often(point) { percent(*point) } else { "·".to_owned() }).collect();
    let seldom: u32 = found.points.iter().filter(|point| !often(point)).map(|point| point.0).sum();
    let quantiles = found.quantiles[1..4].iter().map(|q| format!("{} {}", percent((found.sets, q.0)), percent(*q)));
    let off = [50, 90].map(|share| found.off_in(share).map_or("–".to_owned(), |off| format!("{:.0} %", 100.0 * off)));
    println!(
        "| {of} | {:.0} % | {:.1} % | {} | {:.1} % | {} | {} |",
        100.0 * f64::from(told) / f64::from(found.sets) / found.points.len().max(1) as f64,
        100.0 * found.held(),
        places.join(" "),
        100.0 * f64::from(seldom) / f64::from(told.max(1)),
        quantiles.collect::<Vec<_>>().join(", "),
        off.join(", "),
    );
}
