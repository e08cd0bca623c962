//! What taking in a file did.

use crate::brought::Report;
use maud::{Markup, html};
use sayso_store::TakenIn;
use sayso_wording::{Locale, say};

impl Report {
    /// The counts in words.
    pub fn counts(&self, l: &Locale) -> String {
        let (new, known, clips, clips_known) = match &self.done {
            TakenIn::Events(events, clips) => (events.new, events.duplicates, clips.new, clips.known),
            TakenIn::Backup(r) => (r.new, r.known, r.clips_new, r.clips_known),
        };
        let events = say!(l, exchange::counts, count = new, known = known);
        if clips + clips_known == 0 {
            return events;
        }
        l.apart(&[events, say!(l, exchange::counts_recordings, count = clips, known = clips_known)])
    }
}

pub fn view(l: &Locale, report: &Report, another: &str) -> Markup {
    let damaged = match &report.done {
        TakenIn::Events(_, clips) => clips.damaged,
        TakenIn::Backup(restored) => restored.clips_damaged,
    };
    html! {
        p data-test="report" { (say!(l, exchange::report, name = &report.name, counts = report.counts(l))) }
        @if damaged > 0 {
            p.caution { (say!(l, exchange::damaged, count = damaged)) }
        }
        @if let TakenIn::Backup(restored) = &report.done {
            @if !restored.conflicts.is_empty() {
                p.caution { (say!(l, exchange::kept_here, count = restored.conflicts.len())) }
            }
            @if !restored.faults.is_empty() {
                p.caution { (say!(l, exchange::unsound_left, count = restored.faults.len())) }
            }
        }
        p.row { a.button.primary href="/" { (say!(l, errors::to_start)) } a.button href=(another) { (say!(l, exchange::another_file)) } }
    }
}
