//! What a page calls. One instance of the module is one ear; samples and presses lie in its memory, where the page writes
//! and reads them. Nothing here is called from elsewhere.
//!
//! `room(n)` gives the address of `n` samples (f32) to write; `clip` and `push` take what was written there. `presses`
//! gives the address of the numbers (f64) that `push`, `gap` and `finish` counted, `fault` that of the text (UTF-8) whose
//! length `clip` and `begin` answer; 0 is no fault. `prove` and `cut` answer the length of a text (JSON) at `said`, or 0,
//! and then the length of the fault is that of `wrong`.

use crate::ear::Ear;
use sayso_listen::ListenError;
use serde::Serialize;
use std::cell::RefCell;

#[derive(Default)]
struct Page {
    ear: Ear,
    samples: Vec<f32>,
    presses: Vec<f64>,
    fault: String,
    said: String,
}

impl Page {
    fn says<T: Serialize>(&mut self, found: Result<T, ListenError>) -> usize {
        let said = found.map_err(|e| e.to_string()).and_then(|f| serde_json::to_string(&f).map_err(|e| e.to_string()));
        (self.said, self.fault) = match said {
            Ok(said) => (said, String::new()),
            Err(fault) => (String::new(), fault),
        };
        self.said.len()
    }

    fn told(&mut self, outcome: Result<(), ListenError>) -> usize {
        self.fault = outcome.err().map(|e| e.to_string()).unwrap_or_default();
        self.fault.len()
    }

    fn heard(&mut self, presses: Vec<f64>) -> usize {
        self.presses = presses;
        self.presses.len()
    }
}

thread_local! {
    static PAGE: RefCell<Page> = RefCell::default();
}

fn page<T>(work: impl FnOnce(&mut Page) -> T) -> T {
    PAGE.with_borrow_mut(work)
}

/// Room for `n` samples.
#[unsafe(no_mangle)]
pub extern "C" fn room(n: usize) -> *mut f32 {
    page(|p| {
        p.samples.clear();
        p.samples.resize(n, 0.0);
        p.samples.as_mut_ptr()
    })
}

/// Takes the samples as the next clip, of the word whose first clip has this place; length of the fault.
#[unsafe(no_mangle)]
pub extern "C" fn clip(rate: u32, word: u32) -> usize {
    page(|p| {
        let taken = p.ear.clip(&p.samples, rate, word);
        p.told(taken)
    })
}

/// The clip last taken is listened for at speeds around a centre, this much on either side; numbers that are not finite
/// stand for every speed.
#[unsafe(no_mangle)]
pub extern "C" fn at_speeds(centre: f64, width: f64) {
    page(|p| p.ear.at_speeds(centre, width));
}

/// A stream begins; length of the fault.
#[unsafe(no_mangle)]
pub extern "C" fn begin(rate: u32) -> usize {
    page(|p| {
        let begun = p.ear.begin(rate);
        p.told(begun)
    })
}

/// Hears the samples; count of numbers.
#[unsafe(no_mangle)]
pub extern "C" fn push() -> usize {
    page(|p| {
        let heard = p.ear.push(&p.samples);
        p.heard(heard)
    })
}

/// So many samples were lost; count of numbers.
#[unsafe(no_mangle)]
pub extern "C" fn gap(samples: u32) -> usize {
    page(|p| {
        let heard = p.ear.gap(samples);
        p.heard(heard)
    })
}

/// The stream is over; count of numbers.
#[unsafe(no_mangle)]
pub extern "C" fn finish() -> usize {
    page(|p| {
        let heard = p.ear.finish();
        p.heard(heard)
    })
}

/// Proves a word by the samples; length of what is said.
#[unsafe(no_mangle)]
pub extern "C" fn prove(rate: u32, word: u32) -> usize {
    page(|p| {
        let proof = p.ear.prove(&p.samples, rate, word);
        p.says(proof)
    })
}

/// Cuts the samples at their pauses; length of what is said.
#[unsafe(no_mangle)]
pub extern "C" fn cut(rate: u32) -> usize {
    page(|p| {
        let cut = Ear::cut(&p.samples, rate);
        p.says(cut)
    })
}

/// Where what is said is.
#[unsafe(no_mangle)]
pub extern "C" fn said() -> *const u8 {
    page(|p| p.said.as_ptr())
}

/// Length of the fault of what said nothing.
#[unsafe(no_mangle)]
pub extern "C" fn wrong() -> usize {
    page(|p| p.fault.len())
}

/// Where the numbers are.
#[unsafe(no_mangle)]
pub extern "C" fn presses() -> *const f64 {
    page(|p| p.presses.as_ptr())
}

/// Where the fault's text is.
#[unsafe(no_mangle)]
pub extern "C" fn fault() -> *const u8 {
    page(|p| p.fault.as_ptr())
}
