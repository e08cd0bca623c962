//! An archive of recordings of real buttons, as the notebook's page saves it: `manifest.json` and the sounds it names.

use super::error::KitError;
use serde::Deserialize;
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::io::Read;
use std::path::{Path, PathBuf};

/// Version of the manifest that is read.
const VERSION: u64 = 1;
const MANIFEST: &str = "manifest.json";
/// Longest archive that is read: hours of sound, and no more than fits in memory.
const MOST_BYTES: u64 = 1 << 30;
/// By how many seconds a sound may differ from the length told.
const LENGTH_S: f64 = 0.01;

/// What an archive says of itself.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Manifest {
    /// Version.
    pub kit: u64,
    /// Program and version.
    pub made_by: String,
    /// When it was saved.
    pub made_at: jiff::Timestamp,
    /// What was agreed to.
    pub consent: Consent,
    /// The device that recorded, in words of its owner.
    pub phone: String,
    /// What the browser says it does to the sound.
    pub microphone: Microphone,
    /// Buttons.
    pub buttons: Vec<Button>,
    /// Recordings.
    pub takes: Vec<Take>,
}

/// What was agreed to.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Consent {
    /// The words that stood beside the box.
    pub text: String,
    /// Their language.
    pub language: String,
    /// When the box was ticked.
    pub at: jiff::Timestamp,
    /// Whether the sounds may be published.
    pub publish: bool,
}

/// Settings of the microphone; none where the browser does not say.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Microphone {
    /// Echo cancellation.
    pub echo_cancellation: Option<bool>,
    /// Noise suppression.
    pub noise_suppression: Option<bool>,
    /// Automatic gain.
    pub auto_gain_control: Option<bool>,
}

impl Microphone {
    /// Whether the sound was changed on its way, as far as the browser says.
    pub fn processed(self) -> bool {
        [self.echo_cancellation, self.noise_suppression, self.auto_gain_control].contains(&Some(true))
    }
}

/// A button.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Button {
    /// What it says.
    pub word: String,
    /// What kind of button it is.
    pub about: String,
    /// Its sound from close by.
    pub clip: Sound,
}

/// A recording.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Take {
    /// The button that was pressed; none where nothing was.
    pub word: Option<String>,
    /// Metres from the button to the device.
    pub distance_m: f64,
    /// Kind of room.
    pub room: String,
    /// What else sounded.
    pub noise: String,
    /// How presses were marked.
    pub marked: Marked,
    /// When they were, seconds from the beginning.
    pub presses_s: Vec<f64>,
    /// The sound.
    pub sound: Sound,
}

/// How presses are marked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Marked {
    /// Pressed when a countdown came to its end.
    Countdown,
    /// Somebody tapped as the button was pressed.
    Tap,
}

/// A sound file.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sound {
    /// Its name in the archive.
    pub file: String,
    /// SHA-256 of its bytes, hexadecimal.
    pub sha256: String,
    /// Its length.
    pub seconds: f64,
}

/// An archive, whole and checked.
#[derive(Clone, PartialEq)]
pub struct Kit {
    /// Where it was read.
    pub path: PathBuf,
    /// What it says of itself.
    pub manifest: Manifest,
    /// Bytes of its sounds by name.
    files: BTreeMap<String, Vec<u8>>,
}

// Without the bytes of its sounds.
impl std::fmt::Debug for Kit {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Kit").field("path", &self.path).field("manifest", &self.manifest).finish_non_exhaustive()
    }
}

impl Kit {
    /// Reads and checks an archive.
    ///
    /// # Errors
    /// [`KitError`] where it cannot be read, a file is missing, has changed or is not named, or a value cannot be.
    pub fn read(path: &Path) -> Result<Self, KitError> {
        let archive = |source| KitError::Archive { path: path.to_owned(), source };
        let bytes = std::fs::read(path).map_err(archive)?;
        Self::from_bytes(path, &bytes)
    }

    /// The same from bytes; `path` is what errors name.
    ///
    /// # Errors
    /// As [`Kit::read`].
    pub fn from_bytes(path: &Path, bytes: &[u8]) -> Result<Self, KitError> {
        let mut files = entries(bytes).map_err(|source| KitError::Archive { path: path.to_owned(), source })?;
        let manifest = files.remove(MANIFEST).ok_or_else(|| KitError::Missing {
            path: path.to_owned(),
            entry: MANIFEST.into(),
            named_by: "which every kit has",
        })?;
        let manifest = manifest_of(path, &manifest)?;
        check_values(path, &manifest)?;
        let kit = Self { path: path.to_owned(), manifest, files };
        kit.check_files()?;
        Ok(kit)
    }

    /// The bytes of a sound that the manifest names.
    pub(super) fn bytes(&self, sound: &Sound) -> &[u8] {
        self.files.get(&sound.file).map_or(&[], Vec::as_slice)
    }

    fn sounds(&self) -> impl Iterator<Item = &Sound> {
        self.manifest.buttons.iter().map(|b| &b.clip).chain(self.manifest.takes.iter().map(|t| &t.sound))
    }

    fn check_files(&self) -> Result<(), KitError> {
        let path = || self.path.clone();
        for sound in self.sounds() {
            let entry = sound.file.clone();
            let missing =
                || KitError::Missing { path: path(), entry: entry.clone(), named_by: "which its manifest names" };
            let found = hash(self.files.get(&sound.file).ok_or_else(missing)?);
            if found != sound.sha256 {
                return Err(KitError::Changed { path: path(), entry, found, told: sound.sha256.clone() });
            }
            let wrong = |reason: String| KitError::Sound { path: path(), entry: entry.clone(), reason };
            let info =
                sayso_listen::decode_bytes(self.bytes(sound).to_vec(), |_| true).map_err(|e| wrong(e.to_string()))?;
            let seconds = info.frames as f64 / f64::from(info.rate);
            if (seconds - sound.seconds).abs() > LENGTH_S {
                let told = sound.seconds;
                return Err(wrong(format!("{seconds:.3} s of sound are there, the manifest says {told:.3} s")));
            }
        }
        match self.files.keys().find(|name| self.sounds().all(|s| s.file != **name)) {
            Some(entry) => Err(KitError::Unnamed { path: path(), entry: entry.clone() }),
            None => Ok(()),
        }
    }
}

/// SHA-256, hexadecimal.
pub fn hash(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|b| format!("{b:02x}")).collect()
}

fn entries(bytes: &[u8]) -> std::io::Result<BTreeMap<String, Vec<u8>>> {
    let cut = |what: &'static str| std::io::Error::new(std::io::ErrorKind::UnexpectedEof, what);
    if bytes.len() as u64 > MOST_BYTES {
        return Err(std::io::Error::other("it is over a gigabyte"));
    }
    // Two empty blocks end an archive; without them it was cut short between two files.
    if bytes.len() < 1024 || !bytes.len().is_multiple_of(512) || bytes[bytes.len() - 1024..].iter().any(|b| *b != 0) {
        return Err(cut("its end is missing"));
    }
    let mut files = BTreeMap::new();
    for entry in tar::Archive::new(bytes).entries()? {
        let mut entry = entry?;
        let name = String::from_utf8_lossy(&entry.path_bytes()).into_owned();
        let told = entry.size();
        let mut content = Vec::new();
        entry.read_to_end(&mut content)?;
        if content.len() as u64 != told {
            return Err(cut("a file in it is cut short"));
        }
        files.insert(name, content);
    }
    Ok(files)
}

fn manifest_of(path: &Path, bytes: &[u8]) -> Result<Manifest, KitError> {
    let wrong = |field: String, reason: String| KitError::Manifest { path: path.to_owned(), field, reason };
    // The version first: another may have other fields.
    let any: serde_json::Value = serde_json::from_slice(bytes).map_err(|e| wrong("the whole".into(), e.to_string()))?;
    match any.get("kit").and_then(serde_json::Value::as_u64) {
        Some(VERSION) => {}
        Some(found) => return Err(KitError::Version { path: path.to_owned(), found, reads: VERSION }),
        None => return Err(wrong("kit".into(), "the version of the kit is missing, such as 1".into())),
    }
    serde_path_to_error::deserialize(any).map_err(|e| wrong(e.path().to_string(), e.inner().to_string()))
}

fn check_values(path: &Path, m: &Manifest) -> Result<(), KitError> {
    let wrong = |field: String, found: String, wanted: &'static str| {
        Err(KitError::Value { path: path.to_owned(), field, found, wanted })
    };
    if m.consent.text.trim().is_empty() {
        return wrong("consent.text".into(), "empty".into(), "the words that were agreed to");
    }
    if m.buttons.is_empty() {
        return wrong("buttons".into(), "empty".into(), "one button or more, each with its sound from close by");
    }
    for (i, b) in m.buttons.iter().enumerate() {
        if b.word.trim().is_empty() || m.buttons[..i].iter().any(|o| o.word == b.word) {
            let found = format!("\"{}\"", b.word);
            return wrong(format!("buttons[{i}].word"), found, "a word, and one that no other button has");
        }
    }
    for (i, t) in m.takes.iter().enumerate() {
        let field = |name: &str| format!("takes[{i}].{name}");
        if !(t.distance_m > 0.0 && t.distance_m <= 50.0) {
            return wrong(field("distance_m"), t.distance_m.to_string(), "metres, more than 0 and at most 50");
        }
        match &t.word {
            Some(word) if m.buttons.iter().all(|b| b.word != *word) => {
                return wrong(field("word"), format!("\"{word}\""), "a word of one of the buttons");
            }
            None if !t.presses_s.is_empty() => {
                let found = format!("{} moments", t.presses_s.len());
                return wrong(field("presses_s"), found, "empty where no button is named");
            }
            _ => {}
        }
        if let Some(at) = t.presses_s.iter().find(|at| !(**at >= 0.0 && **at <= t.sound.seconds)) {
            return wrong(field("presses_s"), at.to_string(), "seconds within the sound");
        }
    }
    Ok(())
}
