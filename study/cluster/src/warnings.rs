//! What the engine warns of, on standard error: a machine that is lost, a scheduler that does not answer.

use log::{Level, LevelFilter, Log, Metadata, Record};

/// Letters of one warning: the engine adds all that it knows of a piece of work.
const LONGEST: usize = 300;

struct OnStderr;

impl Log for OnStderr {
    fn enabled(&self, metadata: &Metadata<'_>) -> bool {
        metadata.level() <= Level::Warn
    }

    fn log(&self, record: &Record<'_>) {
        if self.enabled(record.metadata()) {
            let said = record.args().to_string();
            let short: String = said.chars().take(LONGEST).collect();
            let more = if short.len() < said.len() { " …" } else { "" };
            eprintln!("{}: {short}{more}", record.target());
        }
    }

    fn flush(&self) {}
}

/// From now on the engine's warnings and errors are written to standard error. A program that has said already where they go
/// keeps that.
pub fn warn_on_stderr() {
    static WARNINGS: OnStderr = OnStderr;
    if log::set_logger(&WARNINGS).is_ok() {
        log::set_max_level(LevelFilter::Warn);
    }
}
