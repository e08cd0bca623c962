//! A browser of one's own for each test.

pub use crate::served::{PATIENCE, Server, animal, demo_dir, plain_word, sayso, story, taps};

use fantoccini::elements::Element;
use fantoccini::wd::{Capabilities, WebDriverCompatibleCommand};
use fantoccini::{Client, ClientBuilder, Locator};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};
use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::sync::{Arc, LazyLock};
use std::time::{Duration, Instant};
use tempfile::TempDir;
use tokio::sync::{OwnedSemaphorePermit, Semaphore};

/// Between two taps of a person, at the least.
const BETWEEN_TAPS: Duration = Duration::from_millis(400);
/// A common phone.
pub const PHONE: (u32, u32) = (390, 844);

/// Browsers at a time: two cores are soon full, yet one mostly waits for a person's taps.
const AT_ONCE: u32 = 2;
static TURNS: LazyLock<Arc<Semaphore>> = LazyLock::new(|| Arc::new(Semaphore::new(AT_ONCE as usize)));

/// A microphone, allowed without asking, that plays a WAV file once.
fn microphone(sound: &Path) -> [String; 3] {
    [
        "--use-fake-device-for-media-stream".into(),
        "--use-fake-ui-for-media-stream".into(),
        format!("--use-file-for-fake-audio-capture={}%noloop", sound.display()),
    ]
}

/// What a browser takes of the machine, until it and those beside it are closed.
type Turn = Arc<OwnedSemaphorePermit>;

async fn turns(many: u32) -> Turn {
    Arc::new(TURNS.clone().acquire_many_owned(many).await.expect("turns are never closed"))
}

/// A browser at phone size.
pub struct Browser {
    driver: Child,
    pub page: Client,
    _profile: TempDir,
    _home: Option<TempDir>,
    turn: Turn,
    tapped: std::sync::Mutex<Option<Instant>>,
    size: std::sync::Mutex<Option<(u32, u32)>>,
}

impl Browser {
    /// Opens one of that size.
    pub async fn open(size: (u32, u32)) -> Self {
        Self::open_at(size, &[], None, turns(1).await).await
    }

    /// One whose microphone, allowed without asking, plays a WAV file once from when it is opened.
    pub async fn hearing(size: (u32, u32), sound: &Path) -> Self {
        let [fake, allowed, plays] = microphone(sound);
        Self::open_with(size, &[&fake, &allowed, &plays]).await
    }

    /// A second device that hears, in the turn of this one.
    pub async fn beside(&self, size: (u32, u32), sound: &Path) -> Self {
        let [fake, allowed, plays] = microphone(sound);
        Self::open_at(size, &[&fake, &allowed, &plays], None, Arc::clone(&self.turn)).await
    }

    /// A second person's phone, in the turn of this one.
    pub async fn another(&self, size: (u32, u32)) -> Self {
        Self::open_at(size, &[], None, Arc::clone(&self.turn)).await
    }

    /// The same that cannot run WebAssembly, as one from before it: sound goes to the notebook.
    pub async fn sending(size: (u32, u32), sound: &Path) -> Self {
        let [fake, allowed, plays] = microphone(sound);
        Self::open_with(size, &[&fake, &allowed, &plays, "--js-flags=--jitless"]).await
    }

    /// Opens one of that size with more arguments, alone: what hears must not be late.
    pub async fn open_with(size: (u32, u32), more: &[&str]) -> Self {
        Self::open_at(size, more, None, turns(AT_ONCE).await).await
    }

    /// One that trusts this certificate authority (a PEM file), and for which every name ending in `.local` is this machine.
    pub async fn trusting(size: (u32, u32), authority: &Path) -> Self {
        let home = tempfile::tempdir().unwrap();
        let kept = home.path().join(".pki/nssdb");
        std::fs::create_dir_all(&kept).unwrap();
        let kept = format!("sql:{}", kept.display());
        let certutil = |args: &[&str]| {
            let done = Command::new("certutil").args(args).args(["-d", &kept]).output();
            let done = done.expect("certutil is on the path; .ci/install brings it");
            assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
        };
        certutil(&["-N", "--empty-password"]);
        certutil(&["-A", "-n", "sayso", "-t", "C,,", "-i", authority.to_str().unwrap()]);
        Self::open_at(size, &["--host-resolver-rules=MAP *.local 127.0.0.1"], Some(home), turns(1).await).await
    }

    /// Opens one with this directory as its home.
    async fn open_at((width, height): (u32, u32), more: &[&str], home: Option<TempDir>, turn: Turn) -> Self {
        let mut command = Command::new("chromedriver");
        if let Some(home) = &home {
            command.env("HOME", home.path());
        }
        let mut driver = command
            .arg("--port=0")
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("chromedriver is on the path; .ci/install brings it");
        let mut out = BufReader::new(driver.stdout.take().unwrap());
        let port = loop {
            let mut line = String::new();
            assert!(out.read_line(&mut line).unwrap() > 0, "chromedriver should say its port");
            if let Some(rest) = line.trim().strip_prefix("ChromeDriver was started successfully on port ") {
                break rest.trim_end_matches('.').parse::<u16>().unwrap();
            }
        };
        std::thread::spawn(move || std::io::copy(&mut out, &mut std::io::sink()));
        let profile = tempfile::tempdir().unwrap();
        let mut args = vec![
            "--headless=new".to_owned(),
            "--no-sandbox".into(),
            "--disable-gpu".into(),
            "--disable-dev-shm-usage".into(),
            "--no-first-run".into(),
            "--disable-background-networking".into(),
            "--disable-component-update".into(),
            "--disable-sync".into(),
            // Read with 24 hours and kilograms, wherever the tests run.
            "--accept-lang=en-GB".into(),
            format!("--window-size={width},{height}"),
            format!("--user-data-dir={}", profile.path().display()),
        ];
        args.extend(more.iter().map(|a| (*a).to_owned()));
        let mut wants = Capabilities::new();
        wants.insert(
            "goog:chromeOptions".into(),
            json!({ "args": args, "mobileEmulation": { "deviceMetrics": { "width": width, "height": height, "pixelRatio": 2.0, "touch": true } } }),
        );
        let page = ClientBuilder::new(HttpConnector::new())
            .capabilities(wants)
            .connect(&format!("http://127.0.0.1:{port}"))
            .await
            .expect("a browser");
        Self {
            driver,
            page,
            _profile: profile,
            _home: home,
            turn,
            tapped: std::sync::Mutex::default(),
            size: std::sync::Mutex::default(),
        }
    }

    pub async fn goto(&self, url: &str) {
        self.page.goto(url).await.unwrap();
        self.keeps_its_size().await;
    }

    /// The size it was given last: with each page the driver goes back to the one with which it was opened.
    pub async fn keeps_its_size(&self) {
        let size = *self.size.lock().unwrap();
        if let Some((width, height)) = size {
            self.resize((width, height)).await;
            let is = format!("return matchMedia('(width: {width}px)').matches");
            assert_eq!(self.page.execute(&is, vec![]).await.unwrap(), json!(true), "the page is {width} wide");
        }
    }

    /// The element with that `data-test`, once it can be seen.
    pub async fn find(&self, test: &str) -> Element {
        self.css(&format!("[data-test=\"{test}\"]")).await
    }

    pub async fn css(&self, css: &str) -> Element {
        let deadline = tokio::time::Instant::now() + PATIENCE;
        loop {
            if let Ok(found) = self.page.find(Locator::Css(css)).await
                && found.is_displayed().await.unwrap_or(false)
            {
                return found;
            }
            if tokio::time::Instant::now() > deadline {
                let main =
                    self.page.execute("return (document.querySelector('main') ?? document.body).innerText", vec![]);
                panic!("{css} did not show up; the page reads {}", main.await.unwrap_or_default());
            }
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }

    pub async fn tap(&self, test: &str) {
        self.press(&format!("[data-test=\"{test}\"]")).await;
    }

    /// Brings an element into view, as a person scrolls to it, and taps it.
    pub async fn press(&self, css: &str) {
        let mut last = None;
        // An element may be drawn anew between finding and tapping.
        for _ in 0..20 {
            let found = self.css(css).await;
            let shown = serde_json::to_value(&found).unwrap();
            let _ = self.page.execute("arguments[0].scrollIntoView({ block: 'center' })", vec![shown]).await;
            // A finger needs as long between two taps; one sooner at the same spot is taken for a tremble.
            let since = self.tapped.lock().unwrap().map(|last| last.elapsed());
            if let Some(rest) = since.and_then(|passed| BETWEEN_TAPS.checked_sub(passed)) {
                tokio::time::sleep(rest).await;
            }
            let done = found.click().await;
            *self.tapped.lock().unwrap() = Some(Instant::now());
            match done {
                Ok(()) => return,
                Err(why) => last = Some(why),
            }
            tokio::time::sleep(Duration::from_millis(100)).await;
        }
        panic!("{css} could not be tapped: {last:?}");
    }

    /// Taps a pad of a session so that its word is shown, also one that the plan has invited first.
    pub async fn shows(&self, css: &str) {
        self.press(css).await;
        let asked = "return Boolean(document.querySelector('.pad[data-state=give], [data-test=ready-show]'))";
        self.until("shown, or ready to be invited", asked).await;
        if self.page.find(Locator::Css("[data-test=ready-show]")).await.is_ok() {
            self.tap("ready-show").await;
        }
    }

    /// Taps what leads to another page, and waits until that page is there.
    pub async fn follow(&self, css: &str) {
        self.css(css).await;
        self.page.execute("window.leaving = true", vec![]).await.unwrap();
        self.press(css).await;
        self.until("the next page", "return !window.leaving && document.readyState === 'complete'").await;
        self.keeps_its_size().await;
    }

    /// Keeps a picture of the page where a folder for it is named, to be looked at by a person.
    pub async fn picture(&self, name: &str) {
        if let Some(folder) = std::env::var_os("SAYSO_PICTURES") {
            std::fs::write(Path::new(&folder).join(format!("{name}.png")), self.page.screenshot().await.unwrap())
                .unwrap();
        }
    }

    pub async fn text(&self, test: &str) -> String {
        self.find(test).await.text().await.unwrap()
    }

    /// Waits until the script says true.
    pub async fn until(&self, what: &str, script: &str) {
        let deadline = tokio::time::Instant::now() + PATIENCE;
        loop {
            if self.page.execute(script, vec![]).await.unwrap_or(Value::Null) == Value::Bool(true) {
                return;
            }
            if tokio::time::Instant::now() >= deadline {
                self.picture(&format!("failed-{what}")).await;
                let page = self.css("main").await.text().await.unwrap_or_default();
                panic!("{what} did not come about; the page says: {page}");
            }
            tokio::time::sleep(Duration::from_millis(100)).await;
        }
    }

    /// Waits until every tap has been sent and none was refused.
    pub async fn all_sent(&self) {
        let script = "const o = document.querySelector('[data-test=outbox]'); \
                      return o.dataset.kept === '0' && o.dataset.refused === '0' && Number(o.dataset.sent) > 0";
        self.until("everything sent", script).await;
    }

    /// Light or dark, as the person's device asks for.
    pub async fn colours(&self, scheme: &str) {
        let media = json!({ "features": [{ "name": "prefers-color-scheme", "value": scheme }] });
        self.devtools("Emulation.setEmulatedMedia", media).await;
    }

    /// What the browser's developer interface answers to a command.
    pub async fn devtools(&self, cmd: &'static str, params: Value) -> Value {
        self.page.issue_cmd(Devtools { cmd, params }).await.unwrap()
    }

    /// Another size of the page, in pixels of CSS.
    pub async fn resize(&self, (width, height): (u32, u32)) {
        let params = json!({ "width": width, "height": height, "deviceScaleFactor": 2, "mobile": width < 960 });
        *self.size.lock().unwrap() = Some((width, height));
        let command = Devtools { cmd: "Emulation.setDeviceMetricsOverride", params };
        self.page.issue_cmd(command).await.unwrap();
    }

    pub async fn close(mut self) {
        let _ = self.page.clone().close().await;
        let _ = self.driver.kill();
        let _ = self.driver.wait();
    }
}

impl Drop for Browser {
    fn drop(&mut self) {
        // Also when a test fails, so that no browser is left behind.
        let _ = self.driver.kill();
        let _ = self.driver.wait();
    }
}

/// A command to the browser's developer interface, through chromedriver.
#[derive(Debug)]
struct Devtools {
    cmd: &'static str,
    params: Value,
}

impl WebDriverCompatibleCommand for Devtools {
    fn endpoint(&self, base: &url::Url, session: Option<&str>) -> Result<url::Url, url::ParseError> {
        base.join(&format!("session/{}/goog/cdp/execute", session.unwrap_or_default()))
    }

    fn method_and_body(&self, _: &url::Url) -> (http::Method, Option<String>) {
        (http::Method::POST, Some(json!({ "cmd": self.cmd, "params": self.params }).to_string()))
    }
}

/// Whether pages of this build can hear by themselves. Where not, the test says that it did not run.
pub fn has_module() -> bool {
    let has = sayso_web::assets::ear().is_some();
    if !has {
        eprintln!("NOT RUN: this build has no module for pages. rustup target add wasm32-unknown-unknown");
    }
    has
}
