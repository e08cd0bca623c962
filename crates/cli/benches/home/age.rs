//! How a notebook bears its age: the same household after ever more events, side by side.

use super::{Line, ms, page, press, serve, timed};
use sayso_model::{Event, EventId, Moment, Story};
use std::fmt::Write as _;
use std::io::{BufWriter, Write as _};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::time::{Duration, Instant};

/// Presses sent while pages are reloaded, one every so many milliseconds, and readers that reload them.
const PRESSES: usize = 400;
const EVERY_MS: u64 = 25;
const READERS: usize = 4;
/// Pages of an animal.
const PAGES: [&str; 11] =
    ["today", "board", "board as JSON", "log", "words", "evidence", "days", "patterns", "likes", "checks", "designs"];

/// What was measured at each age.
struct Table {
    ages: Vec<String>,
    rows: Vec<(String, Vec<String>)>,
}

impl Table {
    fn put(&mut self, what: &str, figure: impl std::fmt::Display) {
        println!("  {what}: {figure}");
        let figure = figure.to_string();
        match self.rows.iter_mut().find(|(w, _)| w == what) {
            Some((_, figures)) => figures.push(figure),
            None => self.rows.push((what.to_owned(), vec![figure])),
        }
    }

    fn print(&self) {
        let mut text = format!("| | {} |\n| --- |{}\n", self.ages.join(" | "), " ---: |".repeat(self.ages.len()));
        for (what, figures) in &self.rows {
            let _ = writeln!(text, "| {what} | {} |", figures.join(" | "));
        }
        println!("\n{text}");
    }
}

/// Measures a binary with about so many events each and prints a table of it.
pub fn ages(ages: &[usize], binary: &Path, end: Moment) {
    let mut table = Table { ages: Vec::new(), rows: Vec::new() };
    for age in ages {
        // About two and a half events a press.
        let events = sayso_sim::scale(1, age * 2 / 5, end).events;
        println!("{} events, load {}", events.len(), load());
        table.ages.push(format!("{} events", events.len()));
        one(&events, binary, &mut table);
    }
    table.print();
}

fn load() -> String {
    let load = std::fs::read_to_string("/proc/loadavg").unwrap_or_default();
    load.split(' ').take(2).collect::<Vec<_>>().join(", ")
}

fn one(events: &[Event], binary: &Path, table: &mut Table) {
    let dir = tempfile::tempdir().unwrap();
    let (file, notebook) = (dir.path().join("all.jsonl"), dir.path().join("notebook"));
    let mut out = BufWriter::new(std::fs::File::create(&file).unwrap());
    for event in events {
        serde_json::to_writer(&mut out, event).unwrap();
        out.write_all(b"\n").unwrap();
    }
    out.into_inner().unwrap().sync_all().unwrap();
    let home = events[0].home;
    let (who, word) = {
        let cards = Story::from_events(events.iter().take(200).cloned());
        let who = *cards.animals().keys().next().expect("an animal");
        (who, cards.words_of(who)[0].word)
    };
    // A press of that word by that animal, just now.
    let last = events.iter().map(|e| e.happened_at).max().unwrap();
    let pattern = Event { id: EventId(word.0), animal: Some(who), happened_at: last, ..events[0].clone() };
    let (_, parsed) = timed(|| {
        let text = std::fs::read_to_string(&file).unwrap();
        text.lines().filter(|line| serde_json::from_str::<Event>(line).is_ok()).count()
    });
    table.put("file to import, MB", megabytes(&file));
    table.put("reference: the file read as events, s", seconds(parsed));
    let (done, import) = timed(|| {
        let mut command = Command::new(binary);
        command.arg("import").arg(&file).args(["--yes", "--data"]).arg(&notebook);
        command.stdout(Stdio::null()).status().unwrap()
    });
    assert!(done.success(), "the import failed");
    table.put("import, s", seconds(import));
    table.put("notebook, MB", megabytes(&notebook.join("sayso.db")));
    let snapshot = notebook.join("snapshots").join(home.to_string());
    table.put("snapshot, MB", if snapshot.exists() { megabytes(&snapshot) } else { "none".into() });

    let empty = tempfile::tempdir().unwrap();
    let started = |dir: &Path, path: &str| {
        let ((mut server, _), took) = first_page(binary, dir, path);
        // Killed, so that it leaves no snapshot of its own.
        stop(&mut server);
        took
    };
    table.put("reference: cold start of an empty notebook, ms", started(empty.path(), "/"));
    let today = format!("/a/{who}/today");
    table.put("cold start to first page, ms", started(&notebook, &today));
    let kept = dir.path().join("kept");
    if std::fs::rename(notebook.join("snapshots"), &kept).is_ok() {
        table.put("the same without a snapshot, ms", started(&notebook, &today));
        let _ = std::fs::remove_dir_all(notebook.join("snapshots"));
        std::fs::rename(kept, notebook.join("snapshots")).unwrap();
    }

    let ((mut server, port), _) = first_page(binary, &notebook, &today);
    let path = |name: &str| match name {
        "board as JSON" => format!("/api/board/{who}"),
        "evidence" => format!("/a/{who}/evidence/{word}"),
        name => format!("/a/{who}/{name}"),
    };
    // What is loaded quietly after the start is not to be in these figures.
    std::thread::sleep(Duration::from_secs(5));
    table.put(
        "reference: a page without a story (/api/openapi.json), ms",
        ms_of(&mut || drop(page(port, "/api/openapi.json"))),
    );
    let mut line = Line::open(port);
    for name in PAGES {
        let path = path(name);
        let cold = ms_of(&mut || ok(&page(port, &path)));
        let warm = ms_of(&mut || ok(&page(port, &path)));
        line.post(&serde_json::to_string(&[press(&pattern)]).unwrap());
        let after = ms_of(&mut || ok(&page(port, &path)));
        table.put(&format!("{name}: first, again, after a press, ms"), format!("{cold}, {warm}, {after}"));
    }
    let alone = presses(&mut line, &pattern);
    table.put("reference: a press with no reader, p50, p99, ms", alone);
    let (over, pages) = (AtomicBool::new(false), AtomicUsize::new(0));
    let told = std::thread::scope(|scope| {
        for reader in 0..READERS {
            let (over, pages, path) = (&over, &pages, &path);
            scope.spawn(move || {
                let mut next = reader;
                while !over.load(Ordering::Relaxed) {
                    ok(&page(port, &path(PAGES[next % PAGES.len()])));
                    next += 1;
                    pages.fetch_add(1, Ordering::Relaxed);
                }
            });
        }
        let told = presses(&mut line, &pattern);
        over.store(true, Ordering::Relaxed);
        told
    });
    table.put("a press while four readers reload pages, p50, p99, ms", told);
    table.put("pages they got meanwhile", pages.into_inner());
    table.put("most memory of the server, MB", most_memory(&server));
    table.put("load of the machine meanwhile (1, 5 minutes)", load());
    stop(&mut server);
}

/// A server that is started, and how long it took from there to the first page delivered.
fn first_page(binary: &Path, notebook: &Path, path: &str) -> ((Child, u16), String) {
    let begin = Instant::now();
    let (server, port) = serve(binary, notebook);
    page(port, path);
    let took = ms_text(begin.elapsed());
    ((server, port), took)
}

fn stop(server: &mut Child) {
    server.kill().unwrap();
    server.wait().unwrap();
}

fn ok(answer: &str) {
    assert!(answer.starts_with("HTTP/1.1 200"), "{}", answer.lines().next().unwrap_or_default());
}

/// Sends presses one after another; the middle of their times and the one that a hundredth exceeds.
fn presses(line: &mut Line, pattern: &Event) -> String {
    let mut times: Vec<Duration> = (0..PRESSES)
        .map(|_| {
            let body = serde_json::to_string(&[press(pattern)]).unwrap();
            let took = timed(|| line.post(&body)).1;
            std::thread::sleep(Duration::from_millis(EVERY_MS));
            took
        })
        .collect();
    times.sort_unstable();
    format!("{:.1}, {:.1}", ms(times[PRESSES / 2]), ms(times[PRESSES * 99 / 100]))
}

fn most_memory(server: &Child) -> String {
    let status = std::fs::read_to_string(format!("/proc/{}/status", server.id())).unwrap_or_default();
    let line = status.lines().find_map(|l| l.strip_prefix("VmHWM:"));
    let kib = line.and_then(|l| l.trim().trim_end_matches(" kB").parse::<u64>().ok());
    kib.map_or("not told by this system".to_owned(), |kib| (kib / 1_024).to_string())
}

#[allow(clippy::cast_precision_loss)]
fn megabytes(file: &Path) -> String {
    format!("{:.0}", std::fs::metadata(file).unwrap().len() as f64 / 1e6)
}

fn seconds(t: Duration) -> String {
    format!("{:.1}", t.as_secs_f64())
}

fn ms_text(t: Duration) -> String {
    format!("{:.0}", ms(t))
}

fn ms_of(work: &mut dyn FnMut()) -> String {
    let begin = Instant::now();
    work();
    ms_text(begin.elapsed())
}
