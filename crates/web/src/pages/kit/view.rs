use crate::layout::{Tab, layout_with};
use crate::page::Page;
use maud::{Markup, html};
use sayso_paper::KIT_DISTANCES_M;
use sayso_wording::{Locale, say};

/// Kinds of rooms, as the file names them.
const ROOMS: [&str; 6] = ["kitchen", "living", "bedroom", "hall", "outdoors", "other"];
/// What else may sound, as the file names it.
const NOISES: [&str; 6] = ["quiet", "talk", "media", "machine", "outside", "other"];
/// Longest texts, in characters.
const WORD_MOST: usize = 40;
const ABOUT_MOST: usize = 120;

pub fn view(page: &Page) -> Markup {
    let l = &page.locale;
    layout_with(
        page,
        Tab::None,
        &say!(l, kit::title),
        &["client/kit.js"],
        html! {
            p { (say!(l, kit::why)) " " (say!(l, kit::stays)) }
            noscript { p.caution { (say!(l, kit::no_script)) } }
            p { a.button href="/sheets/kit" { (say!(l, kit::print)) } }
            div.caution { strong { (say!(l, kit::before)) }
                ul { li { (say!(l, kit::away)) } li { (say!(l, kit::loud)) } li { (say!(l, sheets::batteries)) } li { (say!(l, kit::people)) } } }
            div #record-kit data-made=(concat!("sayso ", env!("CARGO_PKG_VERSION"))) data-test="kit" data-state="off" {
                section.card {
                    h2 .first { (say!(l, kit::agree)) }
                    p #kit-consent { (say!(l, kit::consent)) }
                    label { input type="checkbox" #kit-agreed data-test="kit-agreed"; span { (say!(l, kit::agreed)) } }
                    label { input type="checkbox" #kit-publish; span { (say!(l, kit::publish)) span.hint { (say!(l, kit::publish_hint)) } } }
                }
                section.card {
                    h2 { (say!(l, kit::about)) }
                    (text("kit-word", &say!(l, kit::word), None, WORD_MOST))
                    (text("kit-button", &say!(l, kit::button), Some(&say!(l, kit::button_hint)), ABOUT_MOST))
                    (text("kit-phone", &say!(l, kit::phone), Some(&say!(l, kit::phone_hint)), ABOUT_MOST))
                }
                section.card {
                    h2 { (say!(l, kit::close)) }
                    p { (say!(l, kit::close_how)) }
                    div.stack data-kit="clip" {}
                }
                section.card {
                    h2 { (say!(l, kit::take)) }
                    (choice("kit-distance", &say!(l, kit::distance), KIT_DISTANCES_M.map(|m| (m.to_string(), say!(l, kit::metres, metres = metres(l, m))))))
                    (choice("kit-room", &say!(l, kit::room), ROOMS.map(|r| (r.to_owned(), say!(l, kit::rooms, room = r)))))
                    (choice("kit-noise", &say!(l, kit::noise), NOISES.map(|n| (n.to_owned(), say!(l, kit::noises, noise = n)))))
                    fieldset { legend { (say!(l, kit::marked)) }
                        label { input type="radio" name="kit-marked" value="countdown" checked; span { (say!(l, kit::countdown)) } }
                        label { input type="radio" name="kit-marked" value="tap" data-test="kit-by-tap"; span { (say!(l, kit::tap)) } }
                    }
                    div.stack data-kit="take" {}
                }
                section.card {
                    h2 { (say!(l, kit::recorded)) }
                    ul.plain data-kit="list" data-test="kit-list" {}
                    h2 { (say!(l, kit::save)) }
                    p { (say!(l, kit::save_how)) " " (say!(l, kit::stays)) }
                    div.stack data-kit="save" {}
                }
            }
        },
    )
}

fn metres(l: &Locale, m: f64) -> String {
    l.number(m, usize::from(m.fract() != 0.0))
}

fn text(id: &str, label: &str, hint: Option<&str>, most: usize) -> Markup {
    let described = hint.map(|_| format!("{id}-hint"));
    html! {
        div.field {
            label for=(id) { (label) }
            @if let Some(hint) = hint { span.hint id=(format!("{id}-hint")) { (hint) } }
            input type="text" id=(id) maxlength=(most) autocomplete="off" aria-describedby=[described];
        }
    }
}

fn choice<const N: usize>(id: &str, label: &str, options: [(String, String); N]) -> Markup {
    html! {
        div.field {
            label for=(id) { (label) }
            select id=(id) { @for (value, words) in &options { option value=(value) { (words) } } }
        }
    }
}
