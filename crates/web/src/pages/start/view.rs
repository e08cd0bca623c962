use crate::layout::bare_with;
use maud::{Markup, html};
use sayso_model::{Label, Species, Zone};
use sayso_wording::Locale;

pub fn view(locale: &Locale) -> Markup {
    let text = |name: &str, label: &str, hint: &str| {
        html! {
            label for=(name) { (label) @if !hint.is_empty() { span.hint { (hint) } } }
            input #(name) name=(name) required maxlength=(Label::MOST) autocomplete="off";
        }
    };
    bare_with(
        locale,
        "A new notebook",
        &["client/zone.js"],
        html! {
            p { "Four names to begin with. All can be changed later, and everything stays on this machine." }
            form method="post" action="/start" .stack {
                (text("home", "Your home", "as you call it, such as: the house by the park"))
                (text("you", "You", "as you are called at home"))
                (text("animal", "The animal", "its name"))
                label for="species" { "Its species" }
                select #species name="species" {
                    @for s in Species::ALL { option value=(s.name()) { (s.name()) } }
                }
                label for="zone" { "Time zone" span.hint { "so that a day is your day, also when clocks change" } }
                input #zone name="zone" list="zones" required placeholder="Europe/Berlin" autocomplete="off" data-zone;
                datalist #zones { @for z in Zone::all() { option value=(z) {} } }
                button.primary.wide { "Begin" }
            }
            p { "Kept a notebook or a diary before? " a href="/exchange" { "Bring in a file" } " instead." }
            p.quiet { "Sayso helps to notice and to count. It is no substitute for a veterinarian or a qualified behaviour professional." }
        },
    )
}
