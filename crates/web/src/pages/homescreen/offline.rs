//! What is shown in the place of any page while the notebook gives no answer: what works, and what waits here. The worker
//! keeps it (`client/worker.js`); its script says what this device has.

use crate::assets::asset;
use crate::layout::{Tab, bare_with};
use crate::page::Page;
use maud::{Markup, html};
use sayso_wording::say;

/// Modules that the page's own one imports: the worker keeps what a page names.
const IMPORTED: [&str; 4] = ["client/copy.js", "client/db.js", "client/dom.js", "client/say.js"];

/// The page. Links to pages that this device did not keep are taken away by its script.
pub async fn offline(page: Page) -> Markup {
    let l = &page.locale;
    let animals = page.animals();
    let name = |tab: Tab, animal: &str| if animals.len() > 1 { l.colon(&tab.name(l), animal) } else { tab.name(l) };
    bare_with(
        l,
        &say!(l, homescreen::no_answer),
        &["client/offline.js"],
        html! {
            @for module in IMPORTED { link rel="modulepreload" href=(asset(module)); }
            div #offline data-test="offline" {
                p.caution { (say!(l, homescreen::not_this_page)) }
                p { (say!(l, homescreen::what_works)) }
                ul.links {
                    @for animal in &animals {
                        @for tab in [Tab::Board, Tab::Today].into_iter().filter(|tab| tab.is_open(&page)) {
                            li { a.button href=(tab.href(Some(animal.animal))) data-kept { (name(tab, animal.name.as_str())) } }
                        }
                    }
                }
                // Kept with the first lesson that was open: of all pages the one that teaches without the notebook.
                ul.links { li { a.button href="/learn/booklet" data-kept data-test="read-lessons" { (say!(l, homescreen::read_lessons)) } } }
                p data-part="none-kept" data-test="none-kept" hidden { (say!(l, homescreen::none_kept)) }
                p role="status" data-part="waiting" data-test="waiting" {}
                p { a.button href="" data-test="try-again" { (say!(l, homescreen::try_again)) } }
            }
        },
    )
}
