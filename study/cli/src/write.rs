//! Writing tables.

use crate::args::{Export, Simulate, Tables};
use crate::failed::Failed;
use sayso_model::Moment;
use std::io::Write;
use std::sync::Mutex;
use std::time::{Instant, SystemTime, UNIX_EPOCH};
use study_export::{Bucket, Entry, Key, Logs, Manifest, OnServer, Simulated, Source, check, write};

/// The variable that holds the address of a server's database, which may hold a password.
const DATABASE: &str = "SAYSO_DATABASE";
/// And of how the owner of its tables connects.
const DATABASE_OWNER: &str = "SAYSO_DATABASE_OWNER";

/// Invented households.
pub fn simulate(order: &Simulate) -> Result<(), Failed> {
    let source = Simulated::new(order.households, order.seed, order.days, order.end, order.patterns)?;
    tables(&source, &order.tables)
}

/// Homes that agreed.
pub fn export(order: &Export) -> Result<(), Failed> {
    let key = Key::read(&order.key, &order.tables.out).map_err(study_export::ExportError::from)?;
    match &order.homes {
        Some(list) => {
            let database = given(order.database.as_ref(), DATABASE).ok_or(Failed::NoDatabase)?;
            let owner = given(order.database_owner.as_ref(), DATABASE_OWNER);
            written(order, &OnServer::open((&database, owner), &key, (list, &order.tables.out), now)?)
        }
        None => written(order, &Logs::open(&order.from, &key, now())?),
    }
}

/// The value of a flag, else of a variable that is set and not empty.
fn given(flag: Option<&String>, variable: &str) -> Option<String> {
    flag.cloned().or_else(|| std::env::var(variable).ok()).filter(|value| !value.is_empty())
}

fn written(order: &Export, source: &dyn Source) -> Result<(), Failed> {
    if !order.check {
        if let Some(approval) = &order.approval {
            approval.stand_in(&order.tables.out)?;
        }
        return tables(source, &order.tables);
    }
    let manifest = check(&order.tables.out, source, Bucket(order.tables.bucket))?;
    let same = "Those who agreed when these tables were written are those who agree now.";
    writeln!(std::io::stdout(), "{}\n{same}", said(&manifest)).map_err(Failed::Out)
}

fn now() -> Moment {
    let since = SystemTime::now().duration_since(UNIX_EPOCH);
    Moment::clamped(since.map_or(0, |d| i64::try_from(d.as_millis()).unwrap_or(i64::MAX)))
}

fn tables(source: &dyn Source, order: &Tables) -> Result<(), Failed> {
    let (begin, written) = (Instant::now(), Mutex::new(Vec::new()));
    let told = |entry: &Entry| {
        eprintln!("bucket {}: {} events of {} households", entry.bucket, entry.events, entry.households);
        written.lock().unwrap_or_else(std::sync::PoisonError::into_inner).push((entry.events, entry.households));
    };
    let manifest = write(&order.out, source, Bucket(order.bucket), order.threads, &told)?;
    let seconds = begin.elapsed().as_secs_f64();
    let written = written.into_inner().unwrap_or_else(std::sync::PoisonError::into_inner);
    let (events, households) = written.iter().fold((0, 0), |sum, one| (sum.0 + one.0, sum.1 + u64::from(one.1)));
    let rate = events as f64 / seconds.max(1e-9);
    let now = format!(
        "Written now: {events} events of {households} households in {seconds:.1} s ({rate:.0} events a second)."
    );
    writeln!(std::io::stdout(), "{}\n{now}", said(&manifest)).map_err(Failed::Out)?;
    Ok(())
}

fn said(manifest: &Manifest) -> String {
    let (events, bytes) = (manifest.events(), manifest.sum(|e| e.bytes));
    let a_row = if events == 0 { 0.0 } else { bytes as f64 / events as f64 };
    format!(
        "{}: {events} events of {} animals in {} households, {bytes} bytes ({a_row:.2} an event). \
         Left out, as nobody said which animal it was: {} presses.",
        manifest.of,
        manifest.sum(|e| e.animals),
        manifest.households(),
        manifest.sum(|e| e.of_nobody),
    )
}
