//! What taking in a file did.

use super::view::count;
use crate::brought::Report;
use maud::{Markup, html};
use sayso_store::TakenIn;

impl Report {
    /// The counts in words.
    pub fn counts(&self) -> String {
        let (new, known, clips, clips_known) = match &self.done {
            TakenIn::Events(events, clips) => (events.new, events.duplicates, clips.new, clips.known),
            TakenIn::Backup(r) => (r.new, r.known, r.clips_new, r.clips_known),
        };
        let mut words = format!("{} new, {} known already", count(new, "event", "events"), known);
        if clips + clips_known > 0 {
            words.push_str(&format!(
                "; {} new, {} known already",
                count(clips, "recording", "recordings"),
                clips_known
            ));
        }
        words
    }
}

pub fn view(report: &Report) -> Markup {
    let damaged = match &report.done {
        TakenIn::Events(_, clips) => clips.damaged,
        TakenIn::Backup(restored) => restored.clips_damaged,
    };
    html! {
        p data-test="report" { "\u{201c}" (report.name) "\u{201d}: " (report.counts()) ". The file itself is not kept here." }
        @if damaged > 0 {
            p.caution { (count(damaged, "recording", "recordings")) " in it " @if damaged == 1 { "is" } @else { "are" } " damaged and left out." }
        }
        @if let TakenIn::Backup(restored) = &report.done {
            @if !restored.conflicts.is_empty() {
                p.caution { "Of " (count(restored.conflicts.len(), "event", "events")) " the one here has another content than the one in the backup. What is here was kept." }
            }
            @if !restored.faults.is_empty() {
                p.caution { "Left out, because unsound when it was backed up: " (count(restored.faults.len(), "event", "events")) "." }
            }
        }
        p.row { a.button.primary href="/" { "To the start" } a.button href="/exchange" { "Another file" } }
    }
}
