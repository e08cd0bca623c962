//! The files: sorted as they say, small, and silent about whose they are.

use datafusion::arrow::array::{AsArray, RecordBatch};
use datafusion::arrow::datatypes::{Int32Type, UInt32Type};
use datafusion::parquet::arrow::arrow_reader::ParquetRecordBatchReaderBuilder;
use sayso_model::{Event, Story};
use sayso_sim::{any_home, simulate};
use std::fs::File;
use std::path::Path;
use study_cohort::{animals_schema, events_schema};
use study_export::{Bucket, Dataset, Simulated, write};

fn of(households: u32) -> Simulated {
    Simulated::new(households, 5, 60, "2026-06-01T19:00:00Z".parse().unwrap(), None).unwrap()
}

fn batches(path: &Path) -> Vec<RecordBatch> {
    let file = ParquetRecordBatchReaderBuilder::try_new(File::open(path).unwrap()).unwrap();
    file.build().unwrap().map(Result::unwrap).collect()
}

#[test]
fn rows_lie_sorted_by_household_and_time_and_the_file_says_so() {
    let dir = tempfile::tempdir().unwrap();
    write(dir.path(), &of(6), Bucket(4), 2, &|_| {}).unwrap();
    let tables = Dataset::open(dir.path()).unwrap();
    assert_eq!(tables.events.len(), 2);
    let mut last = (0, i32::MIN);
    for path in &tables.events {
        let file = ParquetRecordBatchReaderBuilder::try_new(File::open(path).unwrap()).unwrap();
        assert_eq!(file.schema().fields(), events_schema().fields());
        for group in file.metadata().row_groups() {
            let sorted = group.sorting_columns().unwrap();
            let told: Vec<_> = sorted.iter().map(|c| (c.column_idx, c.descending)).collect();
            assert_eq!(told, [(1, false), (3, false)]);
        }
        for batch in batches(path) {
            let households = batch.column_by_name("household").unwrap().as_primitive::<UInt32Type>().clone();
            let times = batch.column_by_name("at_s").unwrap().as_primitive::<Int32Type>().clone();
            for now in households.values().iter().copied().zip(times.values().iter().copied()) {
                assert!(last <= now, "{last:?} before {now:?}");
                last = now;
            }
        }
    }
    let animals = batches(&tables.animals[0]);
    assert_eq!(animals[0].schema().fields(), animals_schema().fields());
    assert_eq!(animals.iter().map(RecordBatch::num_rows).sum::<usize>(), 4);
    assert_eq!(last.0, 5);
}

#[test]
fn an_event_takes_few_bytes() {
    let dir = tempfile::tempdir().unwrap();
    let manifest = write(dir.path(), &of(20), Bucket(20), 1, &|_| {}).unwrap();
    let bytes: u64 = manifest.whole.iter().map(|e| e.bytes).sum();
    let each = bytes as f64 / manifest.events() as f64;
    assert!((2.0..9.0).contains(&each), "{each:.2} bytes an event, {} events", manifest.events());
}

#[test]
fn nothing_a_household_wrote_is_in_the_files() {
    let end = "2026-06-01T19:00:00Z".parse().unwrap();
    let dir = tempfile::tempdir().unwrap();
    write(dir.path(), &of(1), Bucket(1), 1, &|_| {}).unwrap();
    let tables = Dataset::open(dir.path()).unwrap();
    let mut home = any_home(5 << 32);
    home.days = 60;
    let events: Vec<Event> = simulate(&home, 5 << 32, end).unwrap().events;
    let story = Story::from_events(events.iter().cloned());
    let mut secrets: Vec<Vec<u8>> = events.iter().map(|e| e.id.0.as_bytes().to_vec()).collect();
    secrets.push(events[0].home.0.as_bytes().to_vec());
    secrets.push(events[0].home.0.to_string().into_bytes());
    secrets.push(story.zone().name().as_bytes().to_vec());
    secrets.push(story.home().unwrap().name.to_string().into_bytes());
    secrets.extend(story.animals().values().map(|card| card.name.to_string().into_bytes()));
    secrets.extend(story.words().values().map(|card| card.says.to_string().into_bytes()));
    secrets.extend(story.people().values().map(|card| card.name.to_string().into_bytes()));
    assert!(secrets.len() > 100);
    // What is compressed in the file is looked at as it is read: no column can hold text but of the vocabularies.
    let mut bytes = Vec::new();
    for path in tables.events.iter().chain(&tables.animals) {
        bytes.extend(std::fs::read(path).unwrap());
        for batch in batches(path) {
            bytes.extend(format!("{batch:?}").into_bytes());
        }
    }
    for secret in secrets.iter().filter(|secret| secret.len() > 3) {
        let found = bytes.windows(secret.len()).any(|window| window == secret);
        assert!(!found, "{:?} is in the files", String::from_utf8_lossy(secret));
    }
}
