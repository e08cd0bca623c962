use super::upload::{FIELD, MOST_UPLOAD};
use crate::home_label::tail;
use maud::{Markup, html};
use sayso_model::Zone;
use sayso_store::{FaultKind, Look, Preview, Restored, Shares};

/// The box that lets another home in.
const OTHER_HOME: &str = "Take in another home too";
/// The box that begins a notebook with several homes.
const SEVERAL_HOMES: &str = "Begin with all of them in one notebook";
/// The box that goes on without rows that have faults.
pub const LEAVE_OUT: &str = "Leave out the rows with faults";

/// Kinds of faults shown; the rest is counted.
const MOST_SHOWN: usize = 40;

/// A count with its noun.
pub fn count(n: usize, one: &str, many: &str) -> String {
    format!("{n} {}", if n == 1 { one } else { many })
}

/// The first page: bring a file, or take everything out.
pub fn begin(has_home: bool) -> Markup {
    html! {
        section #in {
            h2 { "Bring in a file" }
            p { "First you see what it holds. Nothing is taken in before you say so, and nothing that is here is changed or lost by it." }
            form method="post" action="/exchange" enctype="multipart/form-data" .stack {
                div.field {
                    label for=(FIELD) { "The file" }
                    span.hint #file-hint { "A table (.csv), lines of JSON (.jsonl), an archive with recordings (.tar) or a backup (.sayso); at most " (MOST_UPLOAD >> 20) " MiB" }
                    input type="file" id=(FIELD) name=(FIELD) accept=".csv,.jsonl,.ndjson,.tar,.sayso" aria-describedby="file-hint" required;
                }
                button.primary.wide { "Look at it" }
            }
            @if has_home { p.quiet { "What a table may hold, and by which columns: " code { "docs/import-export.md" } ", which comes with this program." } }
        }
        @if has_home {
            section #out {
                h2 { "Take everything out" }
                p { "Each holds every event as it was first recorded. Keep copies where only you can read them: they tell of your days." }
                ul.plain {
                    li.line { span { strong { "Backup" } span.hint { "events and recordings, with a check that it is whole; to keep and to bring back" } }
                        a.button href="/exchange/backup.sayso" download { "Save a backup" } }
                    li.line { span { strong { "Archive" } span.hint { "events and recordings as plain files that any system unpacks" } }
                        a.button href="/exchange/archive.tar" download { "Save an archive" } }
                    li.line { span { strong { "Table" } span.hint { "events alone, for a spreadsheet (CSV)" } }
                        a.button href="/api/export.csv" download { "Save a table" } }
                    li.line { span { strong { "Lines of JSON" } span.hint { "events alone, for another program" } }
                        a.button href="/api/export.jsonl" download { "Save the lines" } }
                }
            }
            p { a href="/people" { "Back to People" } }
        } @else {
            p { a.button href="/start" { "Begin a new notebook instead" } }
        }
    }
}

/// The box of a file that would make the notebook hold several homes.
pub fn take_in_box(empty: bool) -> &'static str {
    if empty { SEVERAL_HOMES } else { OTHER_HOME }
}

/// What a file would bring, with days as they are in `zone`, and what there is to decide.
pub fn look(name: &str, to: &str, look: &Look, zone: &Zone, empty: bool) -> Markup {
    let (told, brings, leave_out) = match look {
        Look::Events { preview, recordings } => {
            (events(preview, *recordings, zone), preview.new + recordings > 0, preview.bad_rows)
        }
        Look::Backup(found) => (backup(found), found.new + found.clips_new > 0, 0),
    };
    let others = look.others();
    html! {
        p { "\u{201c}" strong { (name) } "\u{201d}: nothing of it has been taken in yet." }
        (told)
        @if brings {
            form method="post" action=(to) .stack {
                @if !others.is_empty() {
                    fieldset {
                        @if empty {
                            legend { "Several homes" }
                            p { "This notebook is empty, and the file holds several homes: " (others) "." }
                        } @else {
                            legend { "Another home" }
                            p { "The file holds events of a home that this notebook does not: " (others) "." }
                        }
                        p { "Each home keeps its own animals, words and figures, but once they are in one notebook they cannot be parted again." }
                        label { input type="checkbox" name="take_in_other_home" value="yes"; span { (take_in_box(empty)) } }
                    }
                }
                @if leave_out > 0 {
                    fieldset {
                        legend { "Faults" }
                        p { "Best is to put them right in the file and bring it again: rows that are in already are known then." }
                        label { input type="checkbox" name="leave_out_faulty_rows" value="yes"; span { (LEAVE_OUT) span.hint { (count(leave_out, "row", "rows")) " will not come in" } } }
                    }
                }
                button.primary.wide data-test="take-in" { "Take it in" }
            }
        } @else {
            p data-test="nothing-new" { "There is nothing in it to take in." }
        }
        form method="post" action=(format!("{to}/away")) { button.wide { "Do not take it in" } }
    }
}

fn events(preview: &Preview, recordings: usize, zone: &Zone) -> Markup {
    let kinds = preview.faults.kinds();
    let told: usize = kinds.iter().take(MOST_SHOWN).map(|kind| kind.count).sum();
    html! {
        dl.facts data-test="counts" {
            dt { "Rows" } dd.num { (preview.rows) }
            dt { "New" } dd.num { (preview.new) }
            dt { "Known already" } dd.num { (preview.duplicates) }
            dt { "Another event has their id" } dd.num { (preview.conflicts) }
            dt { "With other faults" } dd.num { (preview.bad_rows.saturating_sub(preview.conflicts)) }
            @if recordings > 0 { dt { "Recordings" } dd.num { (recordings) } }
            @if let Some((first, last)) = preview.span.map(|(a, b)| (a.day(zone), b.day(zone))) {
                dt { "Days" } dd.num { (first) @if last != first { " to " (last) } }
            }
        }
        @if !preview.kinds.is_empty() {
            details { summary { "New events by kind" }
                ul { @for (kind, n) in &preview.kinds { li { (n) " " (kind.replace('_', " ")) } } } }
        }
        @for (kind, n) in &preview.later {
            p.caution { (count(*n, "event", "events")) " of kind " (kind) ": a later version wrote them. They are kept, but not shown. Update this program." }
        }
        (homes(&preview.homes, "new"))
        @if !kinds.is_empty() {
            section #faults {
                h2 { "Faults" }
                ul { @for kind in kinds.iter().take(MOST_SHOWN) { li data-test="fault" { (fault(kind)) } } }
                @if preview.problem_count > told { p { "And " (preview.problem_count - told) " more." } }
            }
        }
    }
}

fn fault(kind: &FaultKind) -> Markup {
    html! {
        strong { (kind.example.field) } ", " (count(kind.count, "time", "times")) (kind.where_it_stands()) ": "
        @if !kind.example.found.is_empty() { "found \u{201c}" (kind.example.found) "\u{201d}" @if kind.count > 1 { ", for example" } "; " }
        "wanted " (kind.example.wanted) "."
    }
}

fn repeats(shares: &Shares, name: &str) -> bool {
    shares.values().filter(|share| share.name.as_deref() == Some(name)).count() > 1
}

fn homes(shares: &Shares, what: &str) -> Markup {
    html! {
        @if !shares.is_empty() {
            h2 { "Whose they are" }
            ul { @for (id, share) in shares {
                li data-test="home-in-file" {
                    @match &share.name { Some(name) => { strong { (name) } @if repeats(shares, name) { " (\u{2026}" (tail(*id)) ")" } } None => { "A home without a name (" (id) ")" } }
                    ": " (share.events) " " (what) @if share.other { ", not in this notebook" }
                }
            } }
        }
    }
}

fn backup(found: &Restored) -> Markup {
    html! {
        dl.facts data-test="counts" {
            dt { "New events" } dd.num { (found.new) }
            dt { "Known already" } dd.num { (found.known) }
            dt { "Other content here" } dd.num { (found.conflicts.len()) }
            dt { "Unsound" } dd.num { (found.faults.len()) }
            dt { "New recordings" } dd.num { (found.clips_new) }
            dt { "Recordings known" } dd.num { (found.clips_known) }
            @if found.clips_damaged > 0 { dt { "Recordings damaged" } dd.num { (found.clips_damaged) } }
        }
        @if !found.conflicts.is_empty() { p.caution { "Where an event here has another content than the one in the backup, what is here is kept." } }
        @if !found.digest { p.quiet { "It was made by an earlier version and carries no digest: damage may have gone unnoticed." } }
        (homes(&found.homes, "in the backup"))
    }
}
