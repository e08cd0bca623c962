//! A scheduler and executors, each a process of its own: their answers are those of one process, whoever is lost on the way.
//!
//! Nothing is held to a time. Where something must happen in the middle of a question, an executor that holds a part of it is
//! stopped (SIGSTOP): so the question stays open until it goes on or is killed.
#![cfg(unix)]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod common;

use common::{QUESTIONS, cells};
use std::io::{BufRead, BufReader, Read};
use std::os::unix::fs::PermissionsExt;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Output, Stdio};
use std::time::{Duration, Instant};

/// Parts of a question; more than there are executors, each of which works on one at a time.
const PARTS: &str = "4";

fn study(args: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_study"));
    command.args(args);
    command
}

fn run(args: &[&str]) -> String {
    let output = study(args).output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

/// A process that runs until told, and no longer than the test.
struct Running {
    child: Child,
    /// What it said of itself.
    said: String,
}

impl Running {
    fn start(args: &[&str], before: &str) -> Self {
        let mut child = study(args).stdout(Stdio::piped()).spawn().unwrap();
        let mut line = String::new();
        BufReader::new(child.stdout.take().unwrap()).read_line(&mut line).unwrap();
        let said = line.trim().strip_prefix(before).unwrap_or_else(|| panic!("{args:?} said {line:?}")).to_owned();
        Self { child, said }
    }

    fn signal(&self, name: &str) {
        let sent = Command::new("kill").args([format!("-{name}"), self.child.id().to_string()]).status().unwrap();
        assert!(sent.success());
    }

    fn kill(&mut self) {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
    }
}

impl Drop for Running {
    fn drop(&mut self) {
        // One that has ended already is all the better.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

struct Executor(Running);

impl Executor {
    fn work(&self) -> PathBuf {
        PathBuf::from(&self.0.said)
    }

    /// Of how many parts of stages it has handed something on.
    fn parts(&self) -> usize {
        folders_with_files(&self.work())
    }

    /// As if the machine were gone: what it handed on as well.
    fn lose(&mut self) {
        self.0.kill();
        std::fs::remove_dir_all(self.work()).unwrap();
    }
}

fn folders_with_files(dir: &Path) -> usize {
    // It may be gone by now.
    let Ok(entries) = std::fs::read_dir(dir) else { return 0 };
    let (folders, files): (Vec<_>, Vec<_>) = entries.map(|entry| entry.unwrap().path()).partition(|path| path.is_dir());
    usize::from(!files.is_empty()) + folders.iter().map(|folder| folders_with_files(folder)).sum::<usize>()
}

/// Tables, a scheduler, two executors.
struct Place {
    dir: tempfile::TempDir,
    scheduler: Running,
    executors: [Executor; 2],
}

impl Place {
    fn new(lost_after: &str) -> Self {
        let dir = tempfile::tempdir().unwrap();
        let tables = dir.path().join("tables");
        run(&["simulate", "--households", "24", "--days", "50", "--bucket", "5", "--out", tables.to_str().unwrap()]);
        let scheduler = scheduler("127.0.0.1:0", lost_after);
        let work = dir.path().to_str().unwrap();
        let executor = || {
            let args = ["executor", "--scheduler", &scheduler.said, "--threads", "1", "--work", work];
            Executor(Running::start(&args, "executor: "))
        };
        let executors = [executor(), executor()];
        Self { dir, scheduler, executors }
    }

    fn tables(&self) -> String {
        self.dir.path().join("tables").to_str().unwrap().to_owned()
    }

    /// The answer of one process.
    fn alone(&self, question: &str) -> Vec<String> {
        cells(&run(&["ask", question, &self.tables(), "--csv"]))
    }

    fn ask(&self, question: &str) -> Child {
        let tables = self.tables();
        let args = ["ask", question, &tables, "--csv", "--threads", PARTS, "--scheduler", &self.scheduler.said];
        study(&args).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap()
    }

    /// A question that stays open: one executor stands still, the other has handed on so many parts.
    fn ask_halted(&self, question: &str, still: usize, parts: usize) -> Child {
        self.executors[still].0.signal("STOP");
        let mut asked = self.ask(question);
        until("parts of the other executor", || self.executors[1 - still].parts() >= parts);
        assert!(asked.try_wait().unwrap().is_none(), "answered without the part of an executor that stands still");
        asked
    }
}

fn scheduler(bind: &str, lost_after: &str) -> Running {
    Running::start(&["scheduler", "--bind", bind, "--lost-after", lost_after], "scheduler: ")
}

fn answer(output: &Output) -> Vec<String> {
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    cells(std::str::from_utf8(&output.stdout).unwrap())
}

/// Waits for what must come. That it never comes is told after a time that no machine needs.
fn until(what: &str, mut come: impl FnMut() -> bool) {
    let begin = Instant::now();
    while !come() {
        assert!(begin.elapsed() < Duration::from_secs(300), "never came: {what}");
        std::thread::sleep(Duration::from_millis(10));
    }
}

#[test]
fn two_executors_answer_as_one_process_does() {
    let mut place = Place::new("30");
    for question in QUESTIONS {
        let found = answer(&place.ask(question).wait_with_output().unwrap());
        assert!(found.len() > 20, "{question}: nothing to compare");
        assert_eq!(found, place.alone(question), "{question}");
    }
    for executor in &mut place.executors {
        let mode = std::fs::metadata(executor.work()).unwrap().permissions().mode();
        assert_eq!(mode & 0o77, 0, "others can look into it");
        // What was handed on is deleted with each answer, but for the last part; the folder of a question stays.
        assert!(std::fs::read_dir(executor.work()).unwrap().count() > 1, "it had next to nothing to do");
        executor.0.signal("TERM");
        assert!(executor.0.child.wait().unwrap().success());
        assert!(!executor.work().exists(), "rows of the tables stayed behind");
    }
}

#[test]
fn an_executor_killed_in_the_middle_of_its_work_is_replaced() {
    let mut place = Place::new("30");
    let asked = place.ask_halted("first-press", 0, 1);
    place.executors[0].lose();
    assert_eq!(answer(&asked.wait_with_output().unwrap()), place.alone("first-press"));
}

#[test]
fn what_an_executor_wrote_before_it_was_killed_is_made_anew() {
    let mut place = Place::new("15");
    // Of four parts the one that stands still holds one; the second of the others is begun when the first is done.
    let asked = place.ask_halted("first-press", 1, 2);
    place.executors[0].lose();
    place.executors[1].0.signal("CONT");
    assert_eq!(answer(&asked.wait_with_output().unwrap()), place.alone("first-press"));
}

#[test]
fn an_executor_that_falls_silent_is_given_up() {
    let place = Place::new("5");
    place.executors[0].0.signal("STOP");
    let asked = place.ask("hours");
    assert_eq!(answer(&asked.wait_with_output().unwrap()), place.alone("hours"));
}

#[test]
fn a_scheduler_that_comes_back_is_asked_anew() {
    let mut place = Place::new("30");
    let mut asked = place.ask_halted("curve", 1, 1);
    place.scheduler.kill();
    let address = place.scheduler.said.clone();
    place.executors[1].0.signal("CONT");
    let mut told = String::new();
    let mut errors = BufReader::new(asked.stderr.take().unwrap());
    errors.read_line(&mut told).unwrap();
    assert!(told.contains("asked anew") && told.contains(&address), "{told}");
    place.scheduler = scheduler(&address, "30");
    let rest = std::thread::spawn(move || errors.read_to_string(&mut told).map(|_| told).unwrap());
    let output = asked.wait_with_output().unwrap();
    assert!(output.status.success(), "{}", rest.join().unwrap());
    assert_eq!(answer(&output), place.alone("curve"));
}

#[test]
fn a_scheduler_that_is_not_there_is_named() {
    let dir = tempfile::tempdir().unwrap();
    let tables = dir.path().to_str().unwrap();
    run(&["simulate", "--households", "1", "--days", "2", "--out", tables]);
    // A port nobody listens on: it was free a moment ago.
    let free = std::net::TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap().to_string();
    let asked = study(&["ask", "hours", tables, "--scheduler", &free, "--again", "1"]).output().unwrap();
    let told = String::from_utf8_lossy(&asked.stderr);
    assert!(!asked.status.success());
    assert!(told.contains(&format!("the scheduler at {free} was not reached, or lost, 2 times")), "{told}");
}

#[test]
fn what_cannot_be_is_said_at_once() {
    let told = |args: &[&str]| {
        let output = study(args).output().unwrap();
        assert!(!output.status.success(), "{args:?}");
        String::from_utf8_lossy(&output.stderr).into_owned()
    };
    let nowhere = told(&["executor", "--scheduler", "127.0.0.1:1", "--bind", "0.0.0.0"]);
    assert!(nowhere.contains("--advertise") && nowhere.contains("network of one's own"), "{nowhere}");
    assert!(told(&["scheduler", "--bind", "0.0.0.0:0"]).contains("--advertise"));
    assert!(told(&["scheduler", "--lost-after", "3"]).contains("more than 4 s"));
    assert!(told(&["executor", "--scheduler", "http://here"]).contains("no HOST:PORT"));
}
