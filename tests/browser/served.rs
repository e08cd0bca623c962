//! A server of one's own for each test, and the home that it serves.

use sayso_advisor::Case;
use sayso_advisor::today::today;
use sayso_model::{AnimalId, Event, HomeId, Story, WordCard};
use sayso_store::Store;
use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::{Arc, OnceLock};
use std::time::Duration;
use tempfile::TempDir;

/// Longest wait for anything; a busy machine is slow.
pub const PATIENCE: Duration = Duration::from_secs(60);

/// The binary under test.
pub fn sayso() -> Command {
    Command::new(env!("CARGO_BIN_EXE_sayso"))
}

/// A running server.
pub struct Server {
    child: Child,
    pub port: u16,
    pub dir: PathBuf,
    more: Vec<String>,
    said: Arc<std::sync::Mutex<String>>,
}

impl Server {
    /// Serves a directory; port 0 takes any free one.
    pub fn start(dir: &Path, port: u16) -> Self {
        Self::start_with(dir, port, &[])
    }

    /// Serves it with more arguments.
    pub fn start_with(dir: &Path, port: u16, more: &[&str]) -> Self {
        let mut child = sayso()
            .args(["serve", "--data", dir.to_str().unwrap(), "--port", &port.to_string()])
            .args(more)
            .stdout(Stdio::piped())
            .spawn()
            .expect("the binary starts");
        let mut out = BufReader::new(child.stdout.take().unwrap());
        let mut line = String::new();
        out.read_line(&mut line).unwrap();
        let port = line
            .trim_end_matches(['/', '\n', ' '])
            .rsplit(':')
            .next()
            .and_then(|p| p.parse().ok())
            .unwrap_or_else(|| panic!("the server should print its address, not {line:?}"));
        // Go on reading, so that the server is never held up by a full pipe.
        let said = Arc::new(std::sync::Mutex::new(String::new()));
        let heard = said.clone();
        std::thread::spawn(move || {
            for line in out.lines().map_while(Result::ok) {
                heard.lock().unwrap().push_str(&format!("{line}\n"));
            }
        });
        let more = more.iter().map(|m| (*m).to_owned()).collect();
        Self { child, port, dir: dir.to_owned(), more, said }
    }

    /// The rest of a line it has printed that begins so; waits for it.
    pub async fn said(&self, begin: &str) -> String {
        let deadline = tokio::time::Instant::now() + PATIENCE;
        loop {
            let line = self.said.lock().unwrap().lines().find_map(|l| l.strip_prefix(begin).map(str::to_owned));
            if let Some(line) = line {
                return line;
            }
            assert!(tokio::time::Instant::now() < deadline, "the server did not say {begin:?}");
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }

    /// Ends it at once, as a power cut would.
    pub fn kill(&mut self) {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
    }

    /// Starts again on the same port.
    pub fn restart(&mut self) {
        let more: Vec<&str> = self.more.iter().map(String::as_str).collect();
        *self = Self::start_with(&self.dir.clone(), self.port, &more);
    }

    pub fn url(&self, path: &str) -> String {
        format!("http://127.0.0.1:{}{path}", self.port)
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        // Already gone in tests that kill it.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// A directory with the demo household in it.
pub fn demo_dir() -> TempDir {
    static MADE: OnceLock<TempDir> = OnceLock::new();
    let made = MADE.get_or_init(|| {
        let dir = tempfile::tempdir().unwrap();
        let mut child = sayso()
            .args(["demo", "--data", dir.path().to_str().unwrap(), "--port", "0"])
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let mut line = String::new();
        BufReader::new(child.stdout.take().unwrap()).read_line(&mut line).unwrap();
        child.kill().unwrap();
        child.wait().unwrap();
        assert!(line.contains("http://"), "the demo should open, not say {line:?}");
        dir
    });
    let copy = tempfile::tempdir().unwrap();
    for entry in std::fs::read_dir(made.path()).unwrap() {
        let entry = entry.unwrap();
        if entry.file_type().unwrap().is_file() {
            std::fs::copy(entry.path(), copy.path().join(entry.file_name())).unwrap();
        }
    }
    copy
}

/// What the notebook in a directory holds.
pub async fn story(dir: &Path) -> (HomeId, Arc<Story>) {
    let store = Store::open(dir).await.unwrap();
    let home = store.home().await.unwrap().expect("a household");
    let story = store.story(home).await.unwrap();
    store.close().await.unwrap();
    (home, story)
}

/// The first animal of the demo that has words.
pub fn animal(story: &Story) -> AnimalId {
    let all = story.animals();
    *all.keys().max_by_key(|l| story.words_of(**l).len()).expect("an animal")
}

/// A word that is shown, and not invited before that: its pad is the person's own press at once.
pub fn plain_word(story: &Story, animal: AnimalId) -> &WordCard {
    let now = story.ledger().all().map(|e| e.happened_at).max().expect("an event");
    let steps = today(&Case::new(story, animal, now)).expect("an animal").steps;
    let invited = |word| steps.iter().any(|s| s.word.word == word && s.advice.act.invites());
    let all = story.words_of(animal);
    all.into_iter().find(|w| !w.closing && w.reward.is_some() && !invited(w.word)).expect("a word that is shown")
}

/// Events made on a device by tapping, as first recorded.
pub fn taps(story: &Story, after: usize) -> Vec<Event> {
    let mut all: Vec<Event> = story.ledger().all().cloned().collect();
    all.sort_by_key(|e| (e.recorded_at, e.id));
    all.split_off(after)
}
