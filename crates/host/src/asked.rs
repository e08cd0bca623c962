//! What each address of a home takes: one table. An address or a method that does not stand here is closed.
//!
//! Several capabilities beside each other: any of them opens it, and the first that the account has is the one it came by (and
//! whose look is noted). What a page writes is asked for once more, event by event ([`sayso_people::needs`]).

use Capability as C;
use axum::http::Method;
use sayso_people::Capability;
use sayso_people::db::TALK as TALK_PAGE;

/// Capabilities of which one opens an address.
pub type AnyOf = &'static [Capability];

/// Whoever has anything to do with the home.
const ANY: AnyOf = &[C::Record, C::SeeToday, C::SeeFigures, C::SeeLog, C::HearSnippets, C::SeePeople];
const TODAY: AnyOf = &[C::SeeToday];
const FIGURES: AnyOf = &[C::SeeFigures];
const RULES: AnyOf = &[C::SeeRules];
/// Who lives there, and what may be given to whom: for people of the home.
const MEMBERS: AnyOf = &[C::SeePeople];
const SHEETS: AnyOf = &[C::SeeRules, C::SeeFigures];
const LOG: AnyOf = &[C::SeeLog];
const SOUNDS: AnyOf = &[C::HearSnippets];
const RECORD: AnyOf = &[C::Record];
const OTHERS: AnyOf = &[C::RecordForOthers];
const MEND: AnyOf = &[C::MendOwn];
const OWN: AnyOf = &[C::SeeOwnScores];
/// What a check has drawn: for those who lay it out, never for who only scores.
const DRAWN: AnyOf = &[C::Plan];
const CARDS: AnyOf = &[C::ChangeCards];
const PLAN: AnyOf = &[C::Plan];
const TALK: AnyOf = &[C::Agree, C::Advise];
const AGREE: AnyOf = &[C::Agree];
const ADVISE: AnyOf = &[C::Advise];
const HOME: AnyOf = &[C::SettleHome];
const IMPORT: AnyOf = &[C::Import];
const EXPORT: AnyOf = &[C::Export];
/// Sounds and pictures of the board: whoever stands at it, or reads about it.
const BOARD_MEDIA: AnyOf = &[C::Record, C::SeeToday, C::SeeFigures];
const NOBODY: AnyOf = &[];

/// An address as its route says it, what reading takes, what writing takes.
pub type Line = (&'static str, AnyOf, AnyOf);

/// Every address of a home.
#[rustfmt::skip]
pub static TABLE: &[Line] = &[
    ("/", ANY, NOBODY),
    ("/start", HOME, HOME),
    ("/who", OTHERS, OTHERS),
    ("/last", ANY, NOBODY),
    ("/offline", ANY, NOBODY),
    ("/manifest.webmanifest", ANY, NOBODY),
    ("/l/{*rest}", ANY, NOBODY),
    ("/glossary", ANY, NOBODY),
    ("/methods", ANY, NOBODY),
    ("/methods/{page}", ANY, NOBODY),
    ("/record-kit", CARDS, NOBODY),
    ("/learn", ANY, NOBODY),
    ("/learn/booklet", ANY, NOBODY),
    ("/learn/booklet.pdf", ANY, NOBODY),
    // A mark of one's own, asked for as the event it writes.
    ("/learn/{lesson}", ANY, RECORD),
    // A simulation: nothing of the home is read, nothing written.
    ("/rehearse", ANY, NOBODY),
    ("/rehearse/{exercise}", ANY, NOBODY),
    ("/rehearse/{exercise}/moments", ANY, NOBODY),
    ("/rehearse/{exercise}/went", ANY, NOBODY),

    ("/a/{animal}/today", TODAY, NOBODY),
    ("/a/{animal}/board", RECORD, NOBODY),
    ("/a/{animal}/listen", RECORD, NOBODY),
    ("/a/{animal}/ear", RECORD, NOBODY),
    ("/a/{animal}/ear/last", RECORD, NOBODY),
    ("/a/{animal}/ear/{clip}", RECORD, NOBODY),

    ("/a/{animal}/likes", FIGURES, NOBODY),
    ("/a/{animal}/likes/new", PLAN, PLAN),
    ("/a/{animal}/likes/pair", NOBODY, PLAN),
    ("/a/{animal}/likes/test/{assessment}", RECORD, NOBODY),
    ("/a/{animal}/likes/test/{assessment}/trial", NOBODY, RECORD),
    ("/a/{animal}/likes/test/{assessment}/undo", NOBODY, MEND),

    ("/a/{animal}/words", FIGURES, NOBODY),
    ("/a/{animal}/words/new", CARDS, CARDS),
    ("/a/{animal}/words/card/{word}", FIGURES, CARDS),
    ("/a/{animal}/words/card/{word}/stage", NOBODY, CARDS),
    ("/a/{animal}/words/card/{word}/recording", NOBODY, CARDS),
    ("/a/{animal}/words/card/{word}/recording/{clip}", NOBODY, CARDS),
    ("/a/{animal}/words/card/{word}/picture", NOBODY, CARDS),
    ("/a/{animal}/words/card/{word}/picture/remove", NOBODY, CARDS),
    ("/a/{animal}/words/record", CARDS, NOBODY),
    ("/a/{animal}/words/first", NOBODY, CARDS),
    ("/a/{animal}/words/board", FIGURES, CARDS),
    ("/clips/{hash}", BOARD_MEDIA, NOBODY),
    ("/pictures/{hash}", BOARD_MEDIA, NOBODY),

    ("/a/{animal}/evidence", FIGURES, NOBODY),
    ("/a/{animal}/evidence/{word}", FIGURES, NOBODY),
    ("/a/{animal}/days", FIGURES, NOBODY),
    ("/a/{animal}/others", FIGURES, NOBODY),
    ("/a/{animal}/patterns", FIGURES, NOBODY),
    ("/a/{animal}/designs", FIGURES, NOBODY),
    ("/a/{animal}/designs/new", PLAN, PLAN),
    ("/a/{animal}/designs/{trial}", FIGURES, NOBODY),
    ("/a/{animal}/designs/{trial}/note", NOBODY, RECORD),
    ("/a/{animal}/designs/{trial}/stop", NOBODY, RECORD),
    ("/a/{animal}/swaps", FIGURES, PLAN),
    ("/a/{animal}/swaps/stop", NOBODY, RECORD),
    ("/a/{animal}/checks", FIGURES, NOBODY),
    ("/a/{animal}/checks/new", PLAN, PLAN),
    ("/a/{animal}/checks/{probe}", FIGURES, NOBODY),
    ("/a/{animal}/checks/{probe}/setter", DRAWN, NOBODY),
    ("/a/{animal}/checks/{probe}/presenter", RECORD, NOBODY),
    ("/a/{animal}/checks/{probe}/alone", DRAWN, NOBODY),
    ("/a/{animal}/checks/{probe}/trial", NOBODY, RECORD),
    ("/a/{animal}/checks/{probe}/undo", NOBODY, MEND),
    ("/a/{animal}/checks/{probe}/sheet", DRAWN, NOBODY),
    ("/a/{animal}/checks/{probe}/sheet.pdf", DRAWN, NOBODY),
    ("/a/{animal}/checks/{probe}/scorer", RECORD, NOBODY),
    ("/a/{animal}/checks/{probe}/scorer.pdf", RECORD, NOBODY),

    ("/a/{animal}/scored", OWN, NOBODY),

    ("/a/{animal}/heard", LOG, NOBODY),
    ("/a/{animal}/heard/{event}", NOBODY, RECORD),
    ("/a/{animal}/heard/{event}/sound", SOUNDS, NOBODY),
    ("/a/{animal}/log", LOG, NOBODY),
    ("/a/{animal}/log/{event}", LOG, MEND),
    ("/a/{animal}/log/withdraw", NOBODY, MEND),
    ("/a/{animal}/log/bring-back", NOBODY, MEND),
    ("/agreement", LOG, LOG),

    ("/people", MEMBERS, NOBODY),
    ("/people/home", HOME, HOME),
    ("/people/animal/new", CARDS, CARDS),
    ("/people/animal/{animal}", CARDS, CARDS),
    ("/people/animal/{animal}/food", CARDS, CARDS),
    ("/people/animal/{animal}/picture", NOBODY, CARDS),
    ("/people/animal/{animal}/picture/remove", NOBODY, CARDS),
    ("/people/reward/new", CARDS, CARDS),
    ("/people/reward/{reward}", CARDS, CARDS),
    ("/people/reward/{reward}/picture", NOBODY, CARDS),
    ("/people/reward/{reward}/picture/remove", NOBODY, CARDS),
    ("/people/person/new", CARDS, CARDS),
    ("/people/person/{person}", CARDS, CARDS),
    ("/people/rule/new", CARDS, CARDS),
    ("/people/rule/{rule}", CARDS, CARDS),
    ("/a/{animal}/ideas", CARDS, CARDS),

    ("/talk", TALK, NOBODY),
    ("/talk/answer", NOBODY, AGREE),
    ("/talk/write", ADVISE, ADVISE),
    ("/talk/back", NOBODY, ADVISE),
    ("/talk/end", NOBODY, ADVISE),
    ("/talk/try", NOBODY, PLAN),
    ("/talk/aim", NOBODY, AGREE),
    ("/talk/rehearsed", NOBODY, AGREE),
    ("/talk/unshared", NOBODY, AGREE),
    ("/talk/own", PLAN, PLAN),
    ("/talk/own/stop", NOBODY, PLAN),

    ("/sheets", SHEETS, NOBODY),
    ("/sheets/rules", RULES, NOBODY),
    ("/sheets/rules.pdf", RULES, NOBODY),
    ("/sheets/labels", FIGURES, NOBODY),
    ("/sheets/labels.pdf", FIGURES, NOBODY),
    ("/sheets/kit", CARDS, NOBODY),
    ("/sheets/kit.pdf", CARDS, NOBODY),
    ("/sheets/{animal}/progress", FIGURES, NOBODY),
    ("/sheets/{animal}/progress.pdf", FIGURES, NOBODY),
    ("/sheets/{animal}/meeting", FIGURES, NOBODY),
    ("/sheets/{animal}/meeting.pdf", FIGURES, NOBODY),
    ("/sheets/{animal}/likes", FIGURES, NOBODY),
    ("/sheets/{animal}/likes.pdf", FIGURES, NOBODY),

    ("/exchange", EXPORT, IMPORT),
    // How files are made, nothing of the home.
    ("/exchange/columns", ANY, NOBODY),
    ("/exchange/archive.tar", EXPORT, NOBODY),
    ("/exchange/diary.csv", IMPORT, NOBODY),
    ("/exchange/{id}", IMPORT, IMPORT),
    ("/exchange/{id}/away", NOBODY, IMPORT),

    ("/api", ANY, NOBODY),
    ("/api/openapi.json", ANY, NOBODY),
    // Writing events is asked for event by event, before it comes here.
    ("/api/events", LOG, NOBODY),
    ("/api/board/{animal}", RECORD, NOBODY),
    ("/api/evidence/{animal}", FIGURES, NOBODY),
    ("/api/import/preview", NOBODY, IMPORT),
    ("/api/import/commit", NOBODY, IMPORT),
    ("/api/export.jsonl", EXPORT, NOBODY),
    ("/api/export.csv", EXPORT, NOBODY),
];

/// Whether an address shows nothing of the home itself (where one is led, the glossary, what browsers fetch by themselves), so
/// that opening it is no look.
#[must_use]
pub fn is_frame(any_of: AnyOf) -> bool {
    any_of == ANY
}

/// The name of a page by its address, for the home to be told who looked at what; empty for those that have none.
#[must_use]
pub fn page_of(route: &str) -> &'static str {
    /// Parts of addresses that are names.
    const NAMES: [&str; 17] = [
        "today",
        "board",
        "likes",
        "words",
        "evidence",
        "days",
        "others",
        "patterns",
        "designs",
        "swaps",
        "checks",
        "heard",
        "log",
        "agreement",
        "scored",
        "ideas",
        "sheets",
    ];
    let mut parts = route.split('/').skip(1);
    let first = parts.next().unwrap_or_default();
    let part = if first == "a" { parts.nth(1).unwrap_or_default() } else { first };
    match part {
        "talk" if route == "/talk" => TALK_PAGE,
        "clips" | "pictures" => "media",
        // What the Board asks for by itself is the Board.
        "listen" | "ear" => "board",
        "api" if route.starts_with("/api/board/") => "board",
        // The log entry by entry, whoever reads it.
        "api" if route == "/api/events" => "log",
        // Told by what it is: the whole log as a file.
        "api" if route.starts_with("/api/export.") => "",
        "api" => "figures",
        other => NAMES.iter().find(|name| **name == other).copied().unwrap_or_default(),
    }
}

/// What a request takes; none where the address or its method is closed.
#[must_use]
pub fn of(method: &Method, path: &str) -> Option<AnyOf> {
    let (_, reading, writing) = TABLE.iter().find(|(route, ..)| *route == path)?;
    let any_of = match *method {
        Method::GET | Method::HEAD => *reading,
        Method::POST => *writing,
        _ => NOBODY,
    };
    (!any_of.is_empty()).then_some(any_of)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pages_that_show_something_of_a_home_have_a_name() {
        assert_eq!(page_of("/a/{animal}/likes/test/{assessment}"), "likes");
        assert_eq!((page_of("/sheets/{animal}/progress"), page_of("/pictures/{hash}")), ("sheets", "media"));
        assert_eq!((page_of("/api/events"), page_of("/api/evidence/{animal}")), ("log", "figures"));
        assert_eq!((page_of("/api/export.csv"), page_of("/exchange/archive.tar")), ("", ""));
        assert_eq!((page_of("/api/board/{animal}"), page_of("/a/{animal}/ear/{clip}")), ("board", "board"));
        for (route, reading, _) in TABLE {
            // What coaches, sitters and observers may read, the frame and the set-up apart.
            let theirs = reading.iter().any(|c| c.looks() && !matches!(c, C::Export | C::HearSnippets | C::Advise));
            if theirs && !is_frame(reading) {
                assert!(!page_of(route).is_empty(), "{route} has no name for who looked");
            }
        }
    }
}
