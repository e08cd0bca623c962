use crate::fields::{line, select, summary};
use crate::layout::{bare_with, doors};
use crate::rich;
use crate::typed::Typed;
use maud::{Markup, html};
use sayso_model::{Species, Zone};
use sayso_wording::{Locale, say};

/// On a server `account` is whose it is, and the page says where it is kept.
pub fn view(l: &Locale, typed: &Typed, account: Option<&str>) -> Markup {
    let species: Vec<_> =
        Species::ALL.iter().map(|s| (s.name().to_owned(), say!(l, start::species_name, species = s.name()))).collect();
    // Shut, unless the browser could not guess.
    let open = typed.problem("zone").is_some() || typed.problem("home").is_some();
    bare_with(
        l,
        &say!(l, start::title),
        &["client/zone.js"],
        html! {
            p { (if account.is_some() { say!(l, start::on_server) } else { say!(l, start::all_stays) }) }
            (summary(typed))
            form method="post" action="/start" .stack {
                (line(typed, "you", &say!(l, start::you), &say!(l, start::you_hint), true))
                (line(typed, "animal", &say!(l, start::animal), "", true))
                (select(typed, "species", &say!(l, start::species), "", &species))
                (line(typed, "others", &say!(l, start::others), &say!(l, start::others_hint), false))
                details open[open] {
                    summary { (say!(l, start::zone)) " " span.quiet data-zone-name { (typed.text("zone")) } }
                    (line(typed, "home", &say!(l, start::home), &say!(l, start::home_hint), false))
                    div.field {
                        label for="zone" { (say!(l, start::zone_field)) }
                        @if let Some(what) = typed.problem("zone") { span.wrong { (what) "." } }
                        input #zone name="zone" list="zones" value=(typed.text("zone")) placeholder="Europe/Berlin" autocomplete="off" data-zone;
                        datalist #zones { @for z in Zone::all() { option value=(z) {} } }
                    }
                }
                button.primary.wide { (say!(l, setup::next)) }
            }
            p data-test="before" { (rich!(l, start::before, lessons = html! { a href="/learn" { (say!(l, start::before_read)) } }, rehearse = html! { a href="/rehearse" { (say!(l, start::before_rehearse)) } })) }
            p { (rich!(l, start::bring, link = html! { a href="/exchange" { (say!(l, start::bring_link)) } })) }
            // Two homes are not mixed: whoever has one already links it before anything is written here.
            @if account.is_some() { p { (rich!(l, start::notebook, link = html! { a href="/sharing/notebooks" data-test="notebook" { (say!(l, start::notebook_link)) } })) } }
            @else { p { (rich!(l, start::linked, link = html! { a href="/linked" data-test="linked" { (say!(l, start::linked_link)) } })) } }
            p.quiet { (say!(l, start::no_vet)) }
            @if let Some(account) = account { (doors(l, account)) }
        },
    )
}
