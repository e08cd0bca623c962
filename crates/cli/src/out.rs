//! Printing that survives a reader who has gone (`sayso today | head`).

use std::fmt::Arguments;
use std::io::{ErrorKind, Write};

/// Writes a line to standard output. A closed pipe ends the program quietly: nobody reads on. Anything else that stops
/// writing is told on standard error.
pub fn line(text: Arguments<'_>) {
    match writeln!(std::io::stdout(), "{text}") {
        Ok(()) => {}
        Err(why) if why.kind() == ErrorKind::BrokenPipe => std::process::exit(0),
        Err(why) => {
            // Nothing more can be done where standard error is closed as well.
            let _ = writeln!(std::io::stderr(), "sayso: cannot write to standard output: {why}");
            std::process::exit(1);
        }
    }
}

/// `println!` through [`line()`].
macro_rules! say {
    () => { $crate::out::line(format_args!("")) };
    ($($text:tt)*) => { $crate::out::line(format_args!($($text)*)) };
}
pub(crate) use say;
