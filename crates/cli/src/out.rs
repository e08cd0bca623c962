//! Printing that survives a reader who has gone (`sayso today | head`).

use std::fmt::Arguments;
use std::io::{ErrorKind, Write};

/// Writes a line to standard output. A closed pipe ends the program quietly: nobody reads on. Anything else that stops
/// writing is told in the log.
pub fn line(text: Arguments<'_>) {
    match writeln!(std::io::stdout(), "{text}") {
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
