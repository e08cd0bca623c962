//! Printing that survives a reader who has gone (`sayso today | head`).

use sayso_web::state::machine_clock;
use serde_json::json;
use std::fmt::Arguments;
use std::io::{ErrorKind, Write};
use std::sync::atomic::{AtomicBool, Ordering};

static OBJECTS: AtomicBool = AtomicBool::new(false);

/// From here on every line is an object, as those of the log are: for a program that gathers all that is printed.
pub fn in_objects() {
    OBJECTS.store(true, Ordering::Relaxed);
}

/// Writes a line to standard output, or an object that holds it. A closed pipe ends the program quietly: nobody reads on. Anything else that stops
/// writing is told in the log.
pub fn line(text: Arguments<'_>) {
    let done = if OBJECTS.load(Ordering::Relaxed) {
        let message = text.to_string();
        if message.is_empty() {
            return;
        }
        let line = json!({ "timestamp": machine_clock().to_string(), "level": "INFO", "message": message });
        writeln!(std::io::stdout(), "{line}")
    } else {
        writeln!(std::io::stdout(), "{text}")
    };
    match done {
        Ok(()) => {}
        Err(why) if why.kind() == ErrorKind::BrokenPipe => std::process::exit(0),
        Err(why) => {
            tracing::error!("Standard output cannot be written: {why}");
            std::process::exit(1);
        }
    }
}

/// Prints a message of the catalogues, `tell!(locale, file::message, argument = value)`, or as `println!`, through [`line()`].
macro_rules! tell {
    () => { $crate::out::line(format_args!("")) };
    ($text:literal $($values:tt)*) => { $crate::out::line(format_args!($text $($values)*)) };
    ($l:expr, $($message:tt)*) => { $crate::out::line(format_args!("{}", sayso_wording::say!($l, $($message)*))) };
}
pub(crate) use tell;

/// Prints a message to standard error, where what is no answer goes: `note!(locale, file::message, argument = value)`.
macro_rules! note {
    ($l:expr, $($message:tt)*) => { eprintln!("{}", sayso_wording::say!($l, $($message)*)) };
}
pub(crate) use note;
