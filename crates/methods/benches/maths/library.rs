//! The library side: a Python process in a virtual environment that answers one row at a time.

use serde_json::{Value, json};
use std::io::{BufRead, BufReader, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, ChildStdin, ChildStdout, Command, Stdio};

/// Times in milliseconds: by the clock on the wall, and of the processor over all threads.
#[derive(Clone, Copy)]
pub struct Times {
    pub wall: f64,
    pub cpu: f64,
}

/// What the library said to one row.
pub struct Reply {
    pub times: Times,
    pub answer: Value,
    pub note: String,
}

pub struct Library {
    process: Child,
    requests: ChildStdin,
    replies: BufReader<ChildStdout>,
    /// Versions of Python and the packages.
    pub versions: String,
    data: tempfile::TempDir,
}

impl Library {
    /// Starts the library side, making its environment first where it is missing or out of date; `once`: a single run of each row.
    pub fn start(once: bool) -> Self {
        let python = environment();
        let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("benches/reference.py");
        let mut command = Command::new(python);
        // A second thread on matrices this small costs the library more processor time than it saves.
        let piped = command
            .env("OPENBLAS_NUM_THREADS", "1")
            .env("OMP_NUM_THREADS", "1")
            .env("RUNS", if once { "1" } else { "" })
            .arg(script)
            .stdin(Stdio::piped())
            .stdout(Stdio::piped());
        let mut process = piped.spawn().expect("the library side starts");
        let requests = process.stdin.take().unwrap();
        let replies = BufReader::new(process.stdout.take().unwrap());
        let data = tempfile::tempdir().unwrap();
        let mut library = Self { process, requests, replies, versions: String::new(), data };
        library.versions = library.line()["versions"].as_str().unwrap().to_owned();
        library
    }

    /// Writes the bytes of an array for the library; `name` ends in its type.
    pub fn give(&self, name: &str, bytes: &[u8]) {
        std::fs::write(self.data.path().join(name), bytes).unwrap();
    }

    /// Reads an array the library wrote.
    pub fn take(&self, name: &str) -> Vec<f64> {
        let bytes = std::fs::read(self.data.path().join(name)).unwrap();
        bytes.as_chunks().0.iter().map(|eight| f64::from_le_bytes(*eight)).collect()
    }

    /// Runs one row on the arrays given before.
    pub fn run(&mut self, row: &str, mut request: Value) -> Reply {
        request["row"] = json!(row);
        request["dir"] = json!(self.data.path());
        writeln!(self.requests, "{request}").unwrap();
        let reply = self.line();
        let times = Times { wall: reply["wall_ms"].as_f64().unwrap(), cpu: reply["cpu_ms"].as_f64().unwrap() };
        let note = reply["note"].as_str().unwrap_or_default().to_owned();
        Reply { times, answer: reply["answer"].clone(), note }
    }

    fn line(&mut self) -> Value {
        let mut line = String::new();
        let read = self.replies.read_line(&mut line).unwrap();
        assert!(read > 0, "the library side ended: {:?}", self.process.wait());
        serde_json::from_str(&line).unwrap_or_else(|e| panic!("{e}: {line}"))
    }
}

/// The environment's Python, in the target directory. The list of packages beside it tells whether it is up to date.
fn environment() -> PathBuf {
    let wanted = Path::new(env!("CARGO_MANIFEST_DIR")).join("benches/requirements.txt");
    // The benchmark lies in <target>/<profile>/deps.
    let here = std::env::current_exe().unwrap();
    let folder = here.ancestors().nth(3).unwrap().join("reference-venv");
    let python = folder.join(if cfg!(windows) { "Scripts/python.exe" } else { "bin/python" });
    let installed = folder.join("installed.txt");
    let text = std::fs::read_to_string(&wanted).unwrap();
    if std::fs::read_to_string(&installed).is_ok_and(|made_with| made_with == text) {
        return python;
    }
    println!("making the Python environment in {}", folder.display());
    let run = |command: &mut Command| assert!(command.status().expect("Python 3 is there").success(), "{command:?}");
    run(Command::new(if cfg!(windows) { "python" } else { "python3" }).args(["-m", "venv"]).arg(&folder));
    run(Command::new(&python).args(["-m", "pip", "install", "--quiet", "-r"]).arg(&wanted));
    std::fs::write(installed, text).unwrap();
    python
}
