use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_model::facts::BATTERY_EMERGENCY;
use sayso_store::SNIPPET_DAYS;

pub fn view(page: &AnimalPage) -> Markup {
    layout_with(
        page,
        Tab::None,
        "Listen",
        &["client/listen.js"],
        html! {
            p { "This device's microphone hears which button sounds, by its recording. It does not hear who pressed it, and a person saying the word is no press." }
            noscript { p.caution { "Listening needs JavaScript, which is switched off in this browser." } }
            (switch(page))
            details {
                summary { "What happens to the sound" }
                ul {
                    li { "It goes from this device to the machine where Sayso runs, and nowhere else." }
                    li { "It is looked at there and dropped: some seconds are held in memory, nothing is written, unless you ask for it above." }
                    li { "Only presses stay: the word, the time, how sure, how fast it played." }
                    li { "People in the room are heard too while it is on. Tell them." }
                }
            }
            details {
                summary { "Where to put the device" }
                ul {
                    li { "Within about three metres of the board, with nothing over its microphone." }
                    li { "Plugged in, this page in front: many phones take the microphone away when the screen goes dark. While it listens, the screen is kept on where the browser allows it." }
                    li { "Out of the animal's reach, cable too. A chewed cable is dangerous. " (BATTERY_EMERGENCY) }
                }
            }
            p { a.link href=(Tab::Board.href(Some(page.id))) { "To the Board, where the same switch is" } }
        },
    )
}

/// The switch with what it hears; `client/listen.js` makes it work.
pub fn switch(page: &AnimalPage) -> Markup {
    let words = page.story.words();
    let recorded = |word| page.story.clips().into_values().any(|c| c.active && c.word == word);
    let (with, without): (Vec<_>, Vec<_>) = page.story.words_of(page.id).into_iter().partition(|w| recorded(w.word));
    let any = !with.is_empty() || words.values().any(|w| w.active && recorded(w.word));
    let several = page.animals().len() > 1;
    html! {
        section.listen.card #listen aria-labelledby="listen-title" data-test="listen" data-state="off" data-heard="0" data-listen=[any.then(|| format!("/api/listen/{}", page.id))] {
            h2 #listen-title .first { "Microphone" }
            @if any {
                button.wide type="button" role="switch" aria-checked="false" disabled data-ear="switch" data-test="listen-switch" { "Listen for presses" }
                p role="status" data-ear="state" data-test="listen-state" { "Off." }
                div data-ear="live" hidden {
                    meter.wide data-ear="level" min="0" max="1" value="0" aria-label="Loudness at the microphone" {}
                    p.quiet.num data-ear="link" data-test="listen-link" {}
                }
                ol.heard role="log" aria-label="Presses heard" data-ear="heard" data-test="listen-heard" {}
                p.quiet data-ear="words" {}
                label { input type="checkbox" data-ear="keep" data-test="listen-keep";
                    span { "Keep the sound of unsure presses, to judge them later"
                        span.hint { "About a second each, until judged, " (format!("{SNIPPET_DAYS:.0}")) " days at most. All other sound is dropped once it was looked at." } } }
                @if several {
                    label { input type="checkbox" data-ear="only"; span { "Only " (page.card.name.as_str()) " uses this board" span.hint { "else presses are noted for no animal until you say whose they were" } } }
                }
                p { a.link href=(format!("/l/{}/heard", page.id)) { "Judge presses that were heard" } }
                @if !without.is_empty() {
                    p.quiet { "No recording yet, so not listened for: "
                        @for (i, w) in without.iter().enumerate() { @if i > 0 { ", " } a.link href=(card(page, w.word)) { (w.says.as_str()) } } }
                }
            } @else {
                p data-test="listen-missing" { "Nothing can be heard yet: no word here has a recording. A press is known by the very sound its button plays." }
                @if without.is_empty() { p { a.button href=(Tab::Words.href(Some(page.id))) { "Add words first" } } }
                @else {
                    p { "Record a button's sound on its word's card:" }
                    div.row { @for w in &without { a.button href=(card(page, w.word)) { (w.says.as_str()) } } }
                }
            }
        }
    }
}

fn card(page: &AnimalPage, word: sayso_model::WordId) -> String {
    format!("/l/{}/words/card/{word}#recording", page.id)
}
