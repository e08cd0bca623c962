//! The log: lines for a person, on standard error or in a file that cannot grow without bound.

use crate::args::host::LogFormat;
use crate::args::{Level, Logging};
use crate::error::CliError;
use sayso_web::state::machine_clock;
use std::fmt;
use std::fs::{File, OpenOptions};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::sync::Mutex;
use tracing::level_filters::LevelFilter;
use tracing_subscriber::fmt::format::Writer;
use tracing_subscriber::fmt::time::FormatTime;
use tracing_subscriber::fmt::writer::BoxMakeWriter;

/// Bytes after which a file is put aside and begun anew; so both together take at most twice this.
const MOST_BYTES: u64 = 1 << 20;

/// Begins to log as asked, by a command that serves or another. Call once, before anything is logged.
///
/// # Errors
/// Where the file cannot be opened for writing.
pub fn begin(asked: &Logging, serving: bool, format: LogFormat) -> Result<(), CliError> {
    // Other commands say on standard output what they did.
    let usual = if serving || asked.log_file.is_some() { Level::Info } else { Level::Warn };
    let level = match asked.log_level.unwrap_or(usual) {
        Level::Error => LevelFilter::ERROR,
        Level::Warn => LevelFilter::WARN,
        Level::Info => LevelFilter::INFO,
        Level::Debug => LevelFilter::DEBUG,
    };
    let writer = match &asked.log_file {
        None => BoxMakeWriter::new(io::stderr),
        Some(path) => {
            let file = Bounded::open(path, MOST_BYTES);
            BoxMakeWriter::new(Mutex::new(file.map_err(|source| CliError::file(path, source))?))
        }
    };
    let lines = tracing_subscriber::fmt().with_max_level(level).with_ansi(false).with_target(false).with_timer(Clock);
    let lines = lines.with_writer(writer);
    match format {
        LogFormat::Text => lines.init(),
        LogFormat::Json => lines.json().flatten_event(true).with_current_span(false).with_span_list(false).init(),
    }
    Ok(())
}

struct Clock;

impl FormatTime for Clock {
    fn format_time(&self, w: &mut Writer<'_>) -> fmt::Result {
        write!(w, "{}", machine_clock())
    }
}

/// A file that is put aside when it is full.
struct Bounded {
    path: PathBuf,
    file: File,
    bytes: u64,
    most: u64,
}

impl Bounded {
    fn open(path: &Path, most: u64) -> io::Result<Self> {
        let file = appending(path)?;
        let bytes = file.metadata()?.len();
        Ok(Self { path: path.to_owned(), file, bytes, most })
    }
}

fn appending(path: &Path) -> io::Result<File> {
    let mut options = OpenOptions::new();
    options.append(true).create(true);
    // It names addresses and devices of the household.
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    options.open(path)
}

impl Write for Bounded {
    /// One call is one line, so that none is cut in two.
    fn write(&mut self, line: &[u8]) -> io::Result<usize> {
        let length = u64::try_from(line.len()).unwrap_or(u64::MAX);
        if self.bytes > 0 && self.bytes.saturating_add(length) > self.most {
            let mut aside = self.path.clone().into_os_string();
            aside.push(".old");
            std::fs::rename(&self.path, aside)?;
            self.file = appending(&self.path)?;
            self.bytes = 0;
        }
        self.file.write_all(line)?;
        self.bytes += length;
        Ok(line.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        self.file.flush()
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_full_file_is_put_aside_whole_and_both_keep_their_bound() {
        let dir = tempfile::tempdir().unwrap();
        let path = dir.path().join("sayso.log");
        let mut log = Bounded::open(&path, 100).unwrap();
        for i in 0..25 {
            log.write_all(format!("line number {i:02}, of 30 bytes..\n").as_bytes()).unwrap();
        }
        let (now, old) = (
            std::fs::read_to_string(&path).unwrap(),
            std::fs::read_to_string(dir.path().join("sayso.log.old")).unwrap(),
        );
        assert!(now.len() <= 100 && old.len() <= 100);
        assert!(now.ends_with("line number 24, of 30 bytes..\n"), "{now}");
        assert!(old.lines().chain(now.lines()).all(|l| l.starts_with("line number ") && l.ends_with("bytes..")));
        // Begun again, it goes on where it was.
        drop(log);
        Bounded::open(&path, 100).unwrap().write_all(b"x\n").unwrap();
        assert!(std::fs::read_to_string(&path).unwrap().ends_with("\nx\n"));
    }
}
