use crate::host::Host;
use crate::pages::invited::when;
use crate::place::Place;
use crate::reader::Reads;
use maud::{Markup, html};
use sayso_model::{Day, Label, Zone};
use sayso_people::db::Invited;
use sayso_people::{Days, Scope, Secret};
use sayso_web::fields::{line, summary};
use sayso_web::layout::{bare, bare_with, doors};
use sayso_web::pages::who::as_field;
use sayso_web::rich;
use sayso_web::typed::Typed;
use sayso_wording::{Locale, say};

pub fn invitation(
    host: &Host,
    reads: &Reads,
    typed: &Typed,
    secret: &Secret,
    invited: &Invited,
    place: &Place,
) -> Markup {
    let l = &reads.locale;
    let here = format!("/join/{}", secret.reveal());
    let zone = place.zone.clone().unwrap_or_else(Zone::utc);
    let name = place.name.as_deref();
    let waits = invited.opens_at.filter(|opens| host.now() < *opens);
    // Whoever made a link for a home that lost its way in has it in hand: they are shown no name of the home.
    let lost = invited.opens_at.and(invited.part.scope().home()).map(|home| home.to_string());
    let (kind, name) = match invited.part.scope() {
        Scope::Home(_) if lost.is_some() => ("lost_home", lost.as_deref().unwrap_or_default()),
        Scope::Home(_) if name.is_none() => ("new_home", ""),
        Scope::Home(_) => ("home", name.unwrap_or_default()),
        Scope::Club(_) => ("club", name.unwrap_or_default()),
        Scope::Server => ("server", host.public_url.host_str().unwrap_or_default()),
    };
    bare(
        l,
        &say!(l, join::title),
        html! {
            p.lead data-test="invited-to" { (say!(l, join::to, kind = kind, place = name)) }
            p { (say!(l, join::part, role = invited.part.role().name())) }
            @if let Some(name) = place.person.as_ref().filter(|_| lost.is_none()) { p data-test="as-whom" { (say!(l, join::as_whom, name = name)) } }
            @if let Some(days) = invited.part.days() { p { (agreed(l, days, host.now().day(&zone))) } }
            (summary(typed))
            @if let Some(opens) = waits { p.caution data-test="not-yet" { (say!(l, join::not_yet, from = when(l, opens, &zone))) } }
            @else { form method="post" action=(&here) .stack {
                @match &reads.signed {
                    Some(signed) => p data-test="signed-in" { (say!(l, join::signed_in, name = signed.account.name.as_str())) }
                    None => (line(typed, "name", &say!(l, start::you), &say!(l, join::you_hint, kind = kind), true))
                }
                button.primary.wide data-test="join" { (say!(l, join::join)) }
            } }
            @if let Some(signed) = &reads.signed {
                form method="post" action="/sign-out" .row data-test="not-you" {
                    input type="hidden" name="to" value=(here);
                    button { (say!(l, join::not_you, name = signed.account.name.as_str())) }
                }
            } @else {
                p { (rich!(l, join::have_account, link = html! { a href=(format!("/sign-in?to={here}")) { (say!(l, join::sign_in_first)) } })) }
            }
            p.quiet { (say!(l, join::until, when = when(l, invited.expires_at, &zone))) }
        },
    )
}

fn agreed(l: &Locale, days: Days, today: Day) -> String {
    let mut week: Vec<_> =
        (0..7).map(|n| days.first.plus(n)).filter(|d| days.weekdays & (1 << d.weekday()) != 0).collect();
    week.sort_by_key(|day| day.weekday());
    let names: Vec<String> = week.into_iter().map(|day| l.weekday(day)).collect();
    let (first, last) = (l.day_near(days.first, today), l.day_near(days.last, today));
    say!(l, join::days, weekdays = l.and(&names), first = first, last = last)
}

pub fn gone(l: &Locale) -> Markup {
    bare(
        l,
        &say!(l, join::gone_title),
        html! {
            p { (say!(l, join::gone)) }
            p { a.button href="/sign-in" { (say!(l, sign_in::title)) } }
        },
    )
}

/// For whoever took the invitation and opens its link once more.
pub fn yours(l: &Locale, begins: &str) -> Markup {
    bare(
        l,
        &say!(l, join::yours_title),
        html! {
            p { (say!(l, join::yours)) }
            p { a.button.primary href=(begins) data-test="yours" { (say!(l, join::yours_go)) } }
        },
    )
}

/// For whoever opens one of several links for a first keeper after another one was taken.
pub fn kept(l: &Locale) -> Markup {
    bare(
        l,
        &say!(l, join::taken_title),
        html! {
            p data-test="kept" { (say!(l, join::kept)) }
            p { a.button href="/sign-in" { (say!(l, sign_in::title)) } }
        },
    )
}

pub fn taken(l: &Locale) -> Markup {
    bare(
        l,
        &say!(l, join::taken_title),
        html! {
            p { (say!(l, join::taken)) }
            p { a.button href="/" { (say!(l, errors::to_start)) } }
        },
    )
}

pub fn welcome(l: &Locale, name: &str, to: &str, provider: Option<&Label>) -> Markup {
    bare_with(
        l,
        &say!(l, join::welcome, name = name),
        &["client/passkey.js"],
        html! {
            div .stack hidden data-passkey="/account/passkey" data-makes data-to=(to) data-cancelled=(say!(l, account::cancelled))
                data-failed=(say!(l, account::failed)) data-known=(say!(l, account::known)) {
                p { (say!(l, join::passkey)) }
                button.primary.wide type="button" data-test="make-passkey" { (say!(l, join::make_passkey)) }
                p.caution role="alert" hidden {}
            }
            @if let Some(name) = provider {
                p { a.button.wide href=(format!("/account/provider?to={}", as_field(to))) data-test="link-provider" { (say!(l, account::provider_link, name = name.as_str())) } }
            }
            p { a.button.wide href=(to) data-test="later" { (say!(l, join::later)) } }
            p.quiet { (rich!(l, join::way_back, account = html! { a href="/account" { (say!(l, account::title)) } })) }
            (doors(l, name))
        },
    )
}
