use super::FIELD;
use crate::page::Page;
use crate::picture::at;
use maud::{Markup, html};
use sayso_model::PictureOf;
use sayso_wording::say;

/// The picture of a thing on its card, with a way to take one or to remove it. `to` is the address of the card. The page
/// needs `client/picture.js`, which makes the picture small, and `client/draft.js`, which keeps what is typed on the card.
#[must_use]
pub fn section(page: &Page, of: PictureOf, name: &str, to: &str) -> Markup {
    let locale = &page.locale;
    let all = page.story.pictures();
    let own = all.get(&of);
    html! {
        section #picture data-test="picture" {
            h2 { (say!(locale, pictures::title)) }
            @match own {
                Some(p) => {
                    img.picture.whole src=(at(p)) width=(p.width) height=(p.height) alt=(say!(locale, pictures::of, name = name)) data-test="picture-kept";
                    form method="post" action={ (to) "/picture/remove" } { button data-test="picture-remove" { (say!(locale, pictures::remove)) } }
                }
                None => p.quiet { (say!(locale, pictures::none_yet)) }
            }
            @if of.animal().is_some() { p.caution { (say!(locale, pictures::careful, name = name)) } }
            form method="post" action={ (to) "/picture" } enctype="multipart/form-data" .stack data-picture data-cannot-open=(say!(locale, pictures::cannot_open)) {
                div.field {
                    label for="picture-file" { @if own.is_some() { (say!(locale, pictures::another)) } @else { (say!(locale, pictures::file)) } }
                    span.hint #picture-hint { (say!(locale, pictures::hint)) }
                    input type="file" id="picture-file" name=(FIELD) accept="image/*" aria-describedby="picture-hint" required;
                    span.wrong role="alert" hidden {}
                }
                canvas.picture.whole hidden {}
                button.wide data-test="picture-keep" { (say!(locale, pictures::keep)) }
            }
        }
    }
}
