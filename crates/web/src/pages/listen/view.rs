use super::last;
use crate::assets::ear;
use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use crate::pages::kit;
use maud::{Markup, html};
use sayso_people::Capability;
use sayso_store::SNIPPET_DAYS;
use sayso_wording::say;

pub fn view(page: &AnimalPage) -> Markup {
    let l = &page.locale;
    layout_with(
        page,
        Tab::None,
        &say!(l, listen::title),
        &["client/listen.js"],
        html! {
            p { (say!(l, listen::intro)) }
            noscript { p.caution { (say!(l, listen::no_script)) } }
            (switch(page))
            details {
                summary { (say!(l, listen::what_happens)) }
                ul {
                    li { (say!(l, listen::stays_here)) }
                    @if page.state.takes_sound {
                        li { (say!(l, listen::goes_to)) }
                        li { (say!(l, listen::dropped)) }
                    } @else {
                        li { (say!(l, listen::none_taken)) }
                    }
                    li { (say!(l, listen::only_presses)) }
                    li { (say!(l, listen::tell_people)) }
                }
            }
            details {
                summary { (say!(l, listen::r#where)) }
                ul {
                    li { (say!(l, listen::near)) }
                    li { (say!(l, listen::plugged)) }
                    li { (say!(l, listen::several_devices)) }
                    li { (say!(l, listen::out_of_reach, name = page.card.name.as_str())) " " (say!(l, hazards::battery)) }
                }
            }
            @if page.may(Capability::ChangeCards) { p { a.link href=(kit::HREF) { (say!(l, kit::lead)) } } }
            p { a.link href=(Tab::Board.href(Some(page.id))) { (say!(l, listen::to_board)) } }
        },
    )
}

/// The switch with what it hears; `client/listen.js` makes it work.
pub fn switch(page: &AnimalPage) -> Markup {
    let l = &page.locale;
    let words = page.story.words();
    let recorded = last::recorded(page);
    let (with, without): (Vec<_>, Vec<_>) =
        page.story.words_of(page.id).into_iter().partition(|w| recorded.contains(&w.word));
    let any = !with.is_empty() || words.values().any(|w| w.active && recorded.contains(&w.word));
    let socket = (any && page.state.takes_sound).then(|| format!("/api/listen/{}", page.id));
    let module = any.then(ear).flatten();
    let (several, records) = (page.animals().len() > 1, page.may(Capability::ChangeCards));
    html! {
        section.listen.card #listen aria-labelledby="listen-title" data-test="listen" data-state="off" data-heard="0"
            data-animal=(page.id) data-listen=[socket] data-module=[module] data-vocabulary=(format!("/a/{}/ear", page.id)) {
            h2 #listen-title .first { (say!(l, listen::microphone)) }
            @if any {
                button.wide type="button" role="switch" aria-checked="false" disabled data-ear="switch" data-test="listen-switch" { (say!(l, listen::switch)) }
                p role="status" data-ear="state" data-test="listen-state" { (say!(l, listen::off)) }
                p.quiet data-ear="way" data-test="listen-way" {}
                div data-ear="live" hidden {
                    meter.wide data-ear="level" min="0" max="1" value="0" aria-label=(say!(l, listen::loudness)) {}
                    p.quiet.num data-ear="link" data-test="listen-link" {}
                }
                ol.heard role="log" aria-label=(say!(l, listen::heard)) data-ear="heard" data-test="listen-heard" {}
                ol.quiet.num data-ear="gaps" data-test="listen-gaps" aria-label=(say!(l, listen::gaps)) hidden {}
                @if !with.is_empty() { (last::list(page)) }
                p.quiet data-ear="words" {}
                label data-ear="keeping" { input type="checkbox" data-ear="keep" data-test="listen-keep";
                    span { (say!(l, listen::keep))
                        span.hint { (say!(l, listen::keep_hint, days = SNIPPET_DAYS)) } } }
                @if several {
                    label { input type="checkbox" data-ear="only"; span { (say!(l, listen::only, name = page.card.name.as_str())) span.hint { (say!(l, listen::only_hint)) } } }
                }
                @if page.may(Capability::SeeLog) { p { a.link href=(format!("/a/{}/heard", page.id)) { (say!(l, listen::judge)) } } }
                @if !without.is_empty() {
                    p.quiet { (say!(l, listen::no_recording)) " "
                        @for (i, w) in without.iter().enumerate() { @if i > 0 { ", " } a href=[records.then(|| card(page, w.word))] { (w.says.as_str()) } } }
                }
            } @else {
                p data-test="listen-missing" { (say!(l, listen::nothing_yet)) }
                @if !records {}
                @else if without.is_empty() { p { a.button href=(Tab::Words.href(Some(page.id))) { (say!(l, listen::add_words)) } } }
                @else {
                    p { a.button.primary.wide href=(format!("/a/{}/words/record", page.id)) data-test="record-all" { (say!(l, enrol::all_link)) } }
                    p { (say!(l, listen::record_on_card)) }
                    div.row { @for w in &without { a.button href=(card(page, w.word)) { (w.says.as_str()) } } }
                }
            }
        }
    }
}

fn card(page: &AnimalPage, word: sayso_model::WordId) -> String {
    format!("/a/{}/words/card/{word}#recording", page.id)
}
