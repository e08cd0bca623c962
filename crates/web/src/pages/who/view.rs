use crate::layout::{Tab, layout};
use crate::page::Page;
use maud::{Markup, html};

pub fn view(page: &Page, back: &str) -> Markup {
    layout(
        page,
        Tab::None,
        "Who are you?",
        html! {
            p { "Everything noted on this device is then noted as yours. It can be changed at any time." }
            form method="post" action="/who" .stack {
                input type="hidden" name="back" value=(back);
                @for t in page.people() {
                    button.wide name="person" value=(t.person) aria-pressed=(page.person == Some(t.person)) {
                        (t.name.as_str())
                        @if page.person == Some(t.person) { span.quiet { " (now)" } }
                    }
                }
            }
            p { "Not listed? " a href="/people" { "Add a person" } "." }
        },
    )
}
