use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::rich;
use maud::{Markup, html};
use sayso_wording::say;

pub fn view(page: &Page, back: &str) -> Markup {
    let l = &page.locale;
    layout(
        page,
        Tab::None,
        &say!(l, who::title),
        html! {
            p { (say!(l, who::intro)) }
            form method="post" action=(page.of_home("/who")) .stack {
                input type="hidden" name="back" value=(back);
                @for t in page.people() {
                    button.wide name="person" value=(t.person) aria-pressed=(page.person == Some(t.person)) {
                        (t.name.as_str())
                        @if page.person == Some(t.person) { span.quiet { " " (say!(l, who::now)) } }
                    }
                }
                @if let Some(name) = super::new_name(page) {
                    button.wide name="person" value=(super::NEW) data-test="new" { (say!(l, who::new, name = name)) }
                }
            }
            p { (rich!(l, who::not_listed, link = html! { a href="/people" { (say!(l, who::add)) } })) }
        },
    )
}
