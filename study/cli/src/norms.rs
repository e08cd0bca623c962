//! Releases of norms, and their tables.

use crate::args::{Release, Table};
use crate::failed::Failed;
use datafusion::arrow::array::{ArrayRef, Float64Array, RecordBatch, StringArray, UInt32Array};
use datafusion::parquet::arrow::ArrowWriter;
use datafusion::parquet::basic::{Compression, ZstdLevel};
use datafusion::parquet::file::metadata::KeyValue;
use datafusion::parquet::file::properties::WriterProperties;
use sayso_model::Day;
use sayso_norms::{MadeBy, People};
use std::io::Write;
use std::path::Path;
use std::sync::Arc;
use std::time::{SystemTime, UNIX_EPOCH};
use study_norms::files::{agreed, enter, free, rows, sha256, write};
use study_norms::table::{COLUMNS, Figure, codebook, figures};
use study_norms::{FromSeed, Noise, Order, Proven, release as make};

/// Makes a release.
pub fn release(order: &Release) -> Result<(), Failed> {
    ends(&order.to, sayso_norms::Release::ENDING)?;
    free(&order.to)?;
    let rows = rows(&order.rows)?;
    let agreed = order.agreed.as_deref().map(agreed).transpose()?;
    if agreed.as_ref().is_some_and(|agreed| !rows.iter().any(|row| agreed.contains(&row.household))) {
        return Err(Failed::NobodyAgrees);
    }
    let epsilon = order.club.is_none().then_some(order.epsilon);
    let asked = Order {
        name: order.name.clone(),
        made: order.made.unwrap_or_else(today),
        people: if order.invented { People::Invented } else { People::SelfChosen },
        club: order.club.clone(),
        made_by: made_by(order)?,
    };
    // Nothing is spent on what would be refused anyhow: a release of nobody tells whether the order holds together.
    let mut nothing = FromSeed::new(0);
    make(&[], None, asked.clone(), epsilon.map(|loss| (loss, &mut nothing as &mut dyn Noise)))?;
    if let Some(budget) = &order.budget {
        // By the day on which it is made, whatever day it is called by: a year's budget is spent in that year.
        enter(budget, (today(), &order.name), epsilon, order.club.as_deref())?;
    }
    let (mut proven, mut seeded) = (Proven, FromSeed::new(order.seed_for_tests.unwrap_or(0)));
    let noise: &mut dyn Noise = if order.seed_for_tests.is_some() { &mut seeded } else { &mut proven };
    let done = make(&rows, agreed.as_ref(), asked, epsilon.map(|loss| (loss, noise)))?;
    let no_release =
        |why: sayso_norms::ReleaseFault| Failed::NoRelease { path: order.to.clone(), why: why.to_string() };
    let text = done.release.write().map_err(no_release)?;
    write(&order.to, text.as_bytes())?;
    // These counts are exact: they are for whoever makes the release, and stand in no file.
    eprintln!(
        "{} households used, {} left out as they do not agree now. Keep these two numbers to yourself.",
        done.used, done.left_out
    );
    let cells = done.release.cells.len();
    let said = format!("{}: {cells} cells, SHA-256 {}\n", order.to.display(), sha256(text.as_bytes()));
    std::io::stdout().lock().write_all(said.as_bytes()).map_err(Failed::Out)
}

/// Today in UTC.
fn today() -> Day {
    const DAY_S: u64 = 86_400;
    let days = SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |since| since.as_secs() / DAY_S);
    Day::EPOCH.plus(i32::try_from(days).unwrap_or(i32::MAX))
}

/// The command without names of files, which may tell of whoever gave it or, being many, of the homes; and the program.
fn made_by(order: &Release) -> Result<MadeBy, Failed> {
    let mut words = vec!["study norms release ROWS".to_owned()];
    words.extend(order.agreed.is_some().then(|| "--agreed FILE".to_owned()));
    words.extend(order.budget.is_some().then(|| "--budget FILE".to_owned()));
    match &order.club {
        Some(club) => words.push(format!("--club {club:?}")),
        None => words.push(format!("--epsilon {}", order.epsilon)),
    }
    words.push(format!("--name {:?}", order.name));
    words.extend(order.made.map(|day| format!("--made {day}")));
    words.extend(order.invented.then(|| "--invented".to_owned()));
    words.extend(order.seed_for_tests.map(|seed| format!("--seed-for-tests {seed}")));
    let program = std::env::current_exe().and_then(std::fs::read).map_err(Failed::Program)?;
    Ok(MadeBy {
        command: words.join(" "),
        program: format!("study {}", env!("CARGO_PKG_VERSION")),
        program_sha256: sha256(&program),
    })
}

/// Writes a release as a table.
pub fn table(order: &Table) -> Result<(), Failed> {
    ends(&order.to, "parquet")?;
    let book = order.to.with_extension("md");
    free(&order.to)?;
    free(&book)?;
    let no_release = |why: String| Failed::NoRelease { path: order.release.clone(), why };
    let text = std::fs::read_to_string(&order.release).map_err(|why| no_release(why.to_string()))?;
    let release = sayso_norms::Release::read(&text).map_err(|why| no_release(why.to_string()))?;
    let hash = sha256(text.as_bytes());
    let batch = batch(&figures(&release))?;
    let said = [
        ("release", release.name.clone()),
        ("release_sha256", hash.clone()),
        ("command", release.made_by.command.clone()),
    ];
    let said = said.into_iter().map(|(key, value)| KeyValue::new(key.to_owned(), value)).collect();
    let properties = WriterProperties::builder()
        .set_compression(Compression::ZSTD(ZstdLevel::default()))
        .set_key_value_metadata(Some(said))
        .set_created_by("sayso study".to_owned())
        .build();
    let mut bytes = Vec::new();
    let mut writer = ArrowWriter::try_new(&mut bytes, batch.schema(), Some(properties)).map_err(Failed::Parquet)?;
    writer.write(&batch).map_err(Failed::Parquet)?;
    writer.close().map_err(Failed::Parquet)?;
    write(&order.to, &bytes)?;
    write(&book, codebook(&release, &hash).as_bytes())?;
    let said = format!("{}: {} figures; {}\n", order.to.display(), batch.num_rows(), book.display());
    std::io::stdout().lock().write_all(said.as_bytes()).map_err(Failed::Out)
}

fn batch(figures: &[Figure]) -> Result<RecordBatch, Failed> {
    let words = |of: fn(&Figure) -> Option<&'static str>| -> ArrayRef {
        Arc::new(figures.iter().map(of).collect::<StringArray>())
    };
    let numbers =
        |of: fn(&Figure) -> Option<f64>| -> ArrayRef { Arc::new(figures.iter().map(of).collect::<Float64Array>()) };
    let households: ArrayRef = Arc::new(UInt32Array::from_iter_values(figures.iter().map(|f| f.households)));
    let columns = [
        words(|f| Some(f.question)),
        words(|f| Some(f.species)),
        words(|f| f.age_band),
        words(|f| f.word_kind),
        households,
        words(|f| Some(f.figure)),
        numbers(|f| Some(f.at)),
        words(|f| f.brought),
        numbers(|f| f.value),
        numbers(|f| f.low),
        numbers(|f| f.high),
    ];
    let named = COLUMNS.iter().zip(columns).map(|((name, _), column)| (*name, column));
    Ok(RecordBatch::try_from_iter(named.collect::<Vec<_>>())?)
}

fn ends(path: &Path, ending: &'static str) -> Result<(), Failed> {
    let does = path.extension().is_some_and(|its| its == ending);
    if does { Ok(()) } else { Err(Failed::Ending { path: path.to_owned(), ending }) }
}
