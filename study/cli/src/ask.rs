//! Asking tables.

use crate::args::Ask;
use crate::failed::Failed;
use datafusion::arrow::array::{ArrayRef, AsArray, RecordBatch, StringArray};
use datafusion::arrow::csv::WriterBuilder;
use datafusion::arrow::datatypes::{Float64Type, Schema};
use datafusion::arrow::error::ArrowError;
use datafusion::arrow::util::pretty::pretty_format_batches;
use datafusion::logical_expr::col;
use datafusion::physical_plan::displayable;
use datafusion::prelude::{DataFrame, ParquetReadOptions, SessionConfig, SessionContext};
use std::io::Write;
use std::path::PathBuf;
use std::sync::Arc;
use std::time::Instant;
use study_cohort::{ORDER, Question, animals_schema, ask, config, events_schema};
use study_export::Dataset;

/// Answers on standard output; what it took, on standard error.
pub fn run(order: &Ask) -> Result<(), Failed> {
    let (begin, tables) = (Instant::now(), Dataset::open(&order.dir)?);
    let runtime = tokio::runtime::Builder::new_multi_thread()
        .worker_threads(order.threads.max(1))
        .enable_all()
        .build()
        .map_err(Failed::Threads)?;
    let answer = runtime.block_on(answer(order, &tables))?;
    std::io::stdout().lock().write_all(&answer).map_err(Failed::Out)?;
    eprintln!("{:.2} s", begin.elapsed().as_secs_f64());
    Ok(())
}

async fn answer(order: &Ask, tables: &Dataset) -> Result<Vec<u8>, Failed> {
    let config = config_of(order);
    #[cfg(feature = "cluster")]
    if let Some(scheduler) = &order.cluster.scheduler {
        let answer = crate::cluster::answer(order, scheduler, config).await?;
        return written(order, tables, &answer);
    }
    let asked = asked(&SessionContext::new_with_config(config), order.question, tables).await?;
    if order.plan {
        let plan = asked.create_physical_plan().await?;
        return Ok(format!("{}\n", displayable(plan.as_ref()).indent(false)).into_bytes());
    }
    written(order, tables, &asked.collect().await?)
}

fn config_of(order: &Ask) -> SessionConfig {
    // Files follow one another by household: with their bounds known, so do the rows of a thread.
    config(order.threads.max(1))
        .set_bool("datafusion.execution.split_file_groups_by_statistics", true)
        .set_bool("datafusion.execution.collect_statistics", true)
}

/// The plan of a question to tables.
pub async fn asked(context: &SessionContext, question: Question, tables: &Dataset) -> Result<DataFrame, Failed> {
    let events = table(context, &tables.events, &events_schema(), &ORDER).await?;
    let animals = table(context, &tables.animals, &animals_schema(), &[]).await?;
    Ok(ask(question, events, animals)?)
}

fn written(order: &Ask, tables: &Dataset, answer: &[RecordBatch]) -> Result<Vec<u8>, Failed> {
    if order.csv {
        let mut text = Vec::new();
        let mut out = WriterBuilder::new().with_header(true).build(&mut text);
        answer.iter().try_for_each(|batch| out.write(batch))?;
        drop(out);
        return Ok(text);
    }
    let read = answer.iter().map(rounded).collect::<Result<Vec<_>, _>>()?;
    let of = format!(
        "From {} events of {} households ({}). People who keep a notebook and take part chose to: these are not \
         all animals.",
        tables.manifest.events(),
        tables.manifest.households(),
        tables.manifest.of
    );
    Ok(format!("{}\n{}\n{of}\n", pretty_format_batches(&read)?, caution(order.question)).into_bytes())
}

/// How an answer is easily misread.
const fn caution(question: Question) -> &'static str {
    match question {
        Question::FirstPress => {
            "Showings and days by which a quarter, half, three quarters were pressed. Not pressed is \"not yet\", never \
             \"never\"; a first press may be chance or habit. Words of one animal hang together: intervals are somewhat narrow."
        }
        Question::Hours => "The share of an animal's own presses in each hour, each animal counted once.",
        Question::Sessions => {
            "Shares and minutes are those of animals, each counted once. Not joining is an answer, no failure."
        }
        Question::Stuck => {
            "Days in a stage, words still there counted as such. Longer: still there, beyond the day by which nine in ten went \
             on; nothing is said where fewer did. Stages are what people set."
        }
        Question::Curve => {
            "Words that are learned are invited no more. Who is still invited after many showings are those that went slowly: \
             a fall at the end is no forgetting."
        }
    }
}

/// Two digits after the point, for people to read.
fn rounded(batch: &RecordBatch) -> Result<RecordBatch, ArrowError> {
    let schema = batch.schema();
    let columns = schema.fields().iter().zip(batch.columns()).map(|(field, column)| {
        let read: ArrayRef = match column.as_primitive_opt::<Float64Type>() {
            Some(numbers) => Arc::new(numbers.iter().map(|n| n.map(|n| format!("{n:.2}"))).collect::<StringArray>()),
            None => Arc::clone(column),
        };
        (field.name().clone(), read)
    });
    RecordBatch::try_from_iter(columns.collect::<Vec<_>>())
}

async fn table(
    context: &SessionContext,
    files: &[PathBuf],
    schema: &Schema,
    order: &[&str],
) -> Result<DataFrame, Failed> {
    let paths: Vec<String> = files.iter().map(|path| path.to_string_lossy().into_owned()).collect();
    let sorted = order.iter().map(|name| col(*name).sort(true, false)).collect::<Vec<_>>();
    let orders = if sorted.is_empty() { Vec::new() } else { vec![sorted] };
    let options = ParquetReadOptions::default().schema(schema).file_sort_order(orders);
    Ok(context.read_parquet(paths, options).await?)
}
