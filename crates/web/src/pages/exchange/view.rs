use super::columns::COLUMNS;
use super::upload::{FIELD, MOST_UPLOAD};
use crate::home_label::tail;
use crate::page::Page;
use crate::rich;
use maud::{Markup, html};
use sayso_model::Zone;
use sayso_store::{Diary, FaultKind, Look, Preview, Restored, Shares};
use sayso_wording::wanted::{place_of, read_as, told};
use sayso_wording::{Locale, say};

/// Kinds of faults shown; the rest is counted.
const MOST_SHOWN: usize = 40;

/// The first page: bring a file, or take everything out.
pub fn begin(l: &Locale, page: Option<&Page>) -> Markup {
    let at = |path: &str| page.map_or_else(|| path.to_owned(), |page| page.of_home(path));
    let has_home = page.is_some();
    // A backup is of a whole database, which a home on a server is a part of.
    let on_server = page.is_some_and(|page| page.leave.is_some());
    let hint = if on_server {
        say!(l, exchange::file_hint_server, most = MOST_UPLOAD >> 20)
    } else {
        say!(l, exchange::file_hint, most = MOST_UPLOAD >> 20)
    };
    let kinds = if on_server { ".csv,.jsonl,.ndjson,.tar" } else { ".csv,.jsonl,.ndjson,.tar,.sayso" };
    html! {
        section #in {
            h2 { (say!(l, exchange::bring)) }
            p { (say!(l, exchange::bring_intro)) }
            form method="post" action=(at("/exchange")) enctype="multipart/form-data" .stack {
                div.field {
                    label for=(FIELD) { (say!(l, exchange::file)) }
                    span.hint #file-hint { (hint) }
                    input type="file" id=(FIELD) name=(FIELD) accept=(kinds) aria-describedby="file-hint" required;
                }
                button.primary.wide { (say!(l, exchange::look)) }
            }
            @if has_home { details { summary { (say!(l, exchange::help_open)) } (example(l, &at("/exchange/diary.csv"))) } }
            @else { p { (say!(l, exchange::diary_first)) } }
            @if has_home { p.quiet { (all_columns(l, &at(COLUMNS))) } }
        }
        @if has_home {
            section #out {
                h2 { (say!(l, exchange::out)) }
                p { (say!(l, exchange::out_intro)) }
                ul.plain {
                    @if !on_server { li.line { span { strong { (say!(l, exchange::backup)) } span.hint { (say!(l, exchange::backup_hint)) } }
                        a.button href="/exchange/backup.sayso" download { (say!(l, exchange::backup_save)) } } }
                    li.line { span { strong { (say!(l, exchange::archive)) } span.hint { (say!(l, exchange::archive_hint)) } }
                        a.button href=(at("/exchange/archive.tar")) download { (say!(l, exchange::archive_save)) } }
                    li.line { span { strong { (say!(l, exchange::table)) } span.hint { (say!(l, exchange::table_hint)) } }
                        a.button href=(at("/api/export.csv")) download { (say!(l, exchange::table_save)) } }
                    li.line { span { strong { (say!(l, exchange::lines)) } span.hint { (say!(l, exchange::lines_hint)) } }
                        a.button href=(at("/api/export.jsonl")) download { (say!(l, exchange::lines_save)) } }
                }
            }
            p { a href=(at("/people")) { (say!(l, exchange::to_people)) } }
        } @else {
            p { a.button href="/start" { (say!(l, exchange::begin_new)) } }
        }
    }
}

/// Where it is told what a table may hold.
fn all_columns(l: &Locale, to: &str) -> Markup {
    let page = html! { a href=(to) { (say!(l, exchange::columns_title)) } };
    rich!(l, exchange::columns, page = page)
}

/// What a diary needs, by an example.
fn example(l: &Locale, save: &str) -> Markup {
    html! {
        p { (say!(l, exchange::help_wanted)) }
        pre.scroll tabindex="0" { (say!(l, exchange::example)) }
        p { a.button href=(save) download { (say!(l, exchange::help_save)) } }
    }
}

/// What helps where a table's columns are not ours.
fn help(l: &Locale, found: &[String], save: &str, columns: &str) -> Markup {
    html! {
        section #help data-test="columns-help" {
            h2 { (say!(l, exchange::help)) }
            p { (say!(l, exchange::help_found, columns = l.and(found))) }
            (example(l, save))
            p.quiet { (all_columns(l, columns)) }
        }
    }
}

/// How a table with columns of its own is read.
fn diary(l: &Locale, diary: &Diary, empty: bool) -> Markup {
    html! {
        section #diary data-test="diary" {
            h2 { (say!(l, exchange::diary)) }
            @if empty { p.caution { (say!(l, exchange::diary_first)) " " a href="/start" { (say!(l, exchange::begin_new)) } } }
            p { (say!(l, exchange::diary_intro)) }
            ul { @for line in read_as(l, diary) { li { (line) } } }
        }
    }
}

/// The box of a file that would make the notebook hold several homes.
pub fn take_in_box(l: &Locale, empty: bool) -> String {
    if empty { say!(l, exchange::several_box) } else { say!(l, exchange::other_box) }
}

/// What a file would bring, with days as they are in `zone`, and what there is to decide: the form goes `to`, or the file `away`;
/// an example of a table is to be had under `save`.
pub fn look(
    l: &Locale,
    name: &str,
    [to, away, save, columns]: &[String; 4],
    look: &Look,
    zone: &Zone,
    empty: bool,
) -> Markup {
    let (told, brings, leave_out) = match look {
        Look::Events { preview, recordings } => {
            let told = html! {
                @if let Some(found) = &preview.diary { (diary(l, found, empty)) }
                (events(l, preview, *recordings, zone))
                @if !preview.strange_columns.is_empty() { (help(l, &preview.strange_columns, save, columns)) }
            };
            (told, preview.new + recordings > 0, preview.bad_rows)
        }
        Look::Backup(found) => (backup(l, found), found.new + found.clips_new > 0, 0),
    };
    let others = sayso_wording::errors::homes(l, &look.others());
    html! {
        p { (rich!(l, exchange::nothing_taken, name = html! { strong { (name) } })) }
        (told)
        @if brings {
            form method="post" action=(to) .stack {
                @if !others.is_empty() {
                    fieldset {
                        @if empty {
                            legend { (say!(l, exchange::several)) }
                            p { (say!(l, exchange::several_intro, homes = &others)) }
                        } @else {
                            legend { (say!(l, exchange::another)) }
                            p { (say!(l, exchange::another_intro, homes = &others)) }
                        }
                        p { (say!(l, exchange::for_good)) }
                        label { input type="checkbox" name="take_in_other_home" value="yes"; span { (take_in_box(l, empty)) } }
                    }
                }
                @if leave_out > 0 {
                    fieldset {
                        legend { (say!(l, exchange::faults)) }
                        p { (say!(l, exchange::faults_intro)) }
                        label { input type="checkbox" name="leave_out_faulty_rows" value="yes"; span { (say!(l, exchange::leave_out_box)) span.hint { (say!(l, exchange::leave_out_hint, count = leave_out)) } } }
                    }
                }
                button.primary.wide data-test="take-in" { (say!(l, exchange::take_in)) }
            }
        } @else {
            p data-test="nothing-new" { (say!(l, exchange::nothing_new)) }
        }
        form method="post" action=(away) { button.wide { (say!(l, exchange::away)) } }
    }
}

fn events(l: &Locale, preview: &Preview, recordings: usize, zone: &Zone) -> Markup {
    let kinds = preview.faults.kinds();
    let told: usize = kinds.iter().take(MOST_SHOWN).map(|kind| kind.count).sum();
    html! {
        dl.facts data-test="counts" {
            dt { (say!(l, exchange::rows)) } dd.num { (preview.rows) }
            dt { (say!(l, exchange::new)) } dd.num { (preview.new) }
            dt { (say!(l, exchange::known)) } dd.num { (preview.duplicates) }
            dt { (say!(l, exchange::other_id)) } dd.num { (preview.conflicts) }
            dt { (say!(l, exchange::other_faults)) } dd.num { (preview.bad_rows.saturating_sub(preview.conflicts)) }
            @if recordings > 0 { dt { (say!(l, exchange::recordings)) } dd.num { (recordings) } }
            @if let Some((first, last)) = preview.span.map(|(a, b)| (a.day(zone), b.day(zone))) {
                dt { (say!(l, exchange::days)) } dd.num { @if last == first { (l.date(first)) } @else { (say!(l, exchange::from_to, from = l.date(first), to = l.date(last))) } }
            }
        }
        @if !preview.kinds.is_empty() {
            details { summary { (say!(l, exchange::by_kind)) }
                ul { @for (kind, n) in &preview.kinds { li { (n) " " (kind.replace('_', " ")) } } } }
        }
        @for (kind, n) in &preview.later {
            p.caution { (say!(l, exchange::later, count = *n, kind = kind)) }
        }
        @if let Some(of) = preview.moved { p.caution data-test="moves-in" { (say!(l, exchange::moves_in, home = of.to_string())) } }
        (homes(l, &preview.homes, |count| say!(l, exchange::share_new, count = count)))
        @if !kinds.is_empty() {
            section #faults {
                h2 { (say!(l, exchange::faults)) }
                ul { @for kind in kinds.iter().take(MOST_SHOWN) { li data-test="fault" { (fault(l, kind)) } } }
                @if preview.problem_count > told { p { (say!(l, exchange::and_more, count = preview.problem_count - told)) } }
            }
        }
    }
}

fn fault(l: &Locale, kind: &FaultKind) -> Markup {
    html! { strong { (place_of(l, kind)) } ", " (told(l, kind)) }
}

fn repeats(shares: &Shares, name: &str) -> bool {
    shares.values().filter(|share| share.name.as_deref() == Some(name)).count() > 1
}

fn homes(l: &Locale, shares: &Shares, what: impl Fn(usize) -> String) -> Markup {
    html! {
        @if !shares.is_empty() {
            h2 { (say!(l, exchange::whose)) }
            ul { @for (id, share) in shares {
                li data-test="home-in-file" {
                    @match &share.name { Some(name) => { strong { (name) } @if repeats(shares, name) { " (\u{2026}" (tail(*id)) ")" } } None => { (say!(l, exchange::unnamed, id = id.to_string())) } }
                    (l.colon("", ""))
                    @let told = what(share.events);
                    @if share.other { (say!(l, exchange::not_here, share = told)) } @else { (told) }
                }
            } }
        }
    }
}

fn backup(l: &Locale, found: &Restored) -> Markup {
    html! {
        dl.facts data-test="counts" {
            dt { (say!(l, exchange::new_events)) } dd.num { (found.new) }
            dt { (say!(l, exchange::known)) } dd.num { (found.known) }
            dt { (say!(l, exchange::other_content)) } dd.num { (found.conflicts.len()) }
            dt { (say!(l, exchange::unsound)) } dd.num { (found.faults.len()) }
            dt { (say!(l, exchange::new_recordings)) } dd.num { (found.clips_new) }
            dt { (say!(l, exchange::known_recordings)) } dd.num { (found.clips_known) }
            @if found.clips_damaged > 0 { dt { (say!(l, exchange::damaged_recordings)) } dd.num { (found.clips_damaged) } }
        }
        @if !found.conflicts.is_empty() { p.caution { (say!(l, exchange::conflicts)) } }
        @if !found.digest { p.quiet { (say!(l, exchange::no_digest)) } }
        (homes(l, &found.homes, |count| say!(l, exchange::share_backup, count = count)))
    }
}
