use super::{Shown, tidings};
use crate::place::Place;
use maud::{Markup, html};
use sayso_model::{Language, Moment};
use sayso_people::db::{KeptPasskey, KeyName};
use sayso_people::{Lifetimes, Membership, Scope, Secret};
use sayso_web::fields::{AGAIN, line, select, sent_again};
use sayso_web::layout::{bare, bare_with, doors, sign_out};
use sayso_web::page::HOME_QUERY;
use sayso_wording::{Locale, say};

pub fn page(shown: &Shown) -> Markup {
    let l = &shown.locale;
    let account = &shown.signed.account;
    let linked = shown.provider.as_ref().is_some_and(|(_, linked)| linked.is_some());
    let no_way_back = !account.has_way_back(&shown.passkeys, shown.codes_left, linked);
    bare_with(
        l,
        &say!(l, account::title),
        &["client/passkey.js", "client/zone.js", AGAIN],
        html! {
            @if let Some(what) = &shown.wrong { p.caution role="alert" { (what.say(l)) } }
            (sent_again(l))
            @if no_way_back { p.caution data-test="no-way-back" { (say!(l, account::no_way_back)) } }
            (sign_out(l))
            h2 { (say!(l, account::you)) }
            (you(shown))
            h2 { (say!(l, account::passkeys)) }
            (passkeys(shown))
            (provider(shown))
            h2 { (say!(l, sign_in::email)) }
            (email(shown))
            (tidings::form(shown))
            h2 { (say!(l, account::codes)) }
            p { (say!(l, account::codes_what)) }
            p data-test="codes-left" { (say!(l, account::codes_left, count = shown.codes_left)) }
            form method="post" action="/account/codes" .stack {
                button data-test="make-codes" { (say!(l, account::codes_make)) }
                @if shown.codes_left > 0 { span.hint { (say!(l, account::codes_old)) } }
            }
            h2 { (say!(l, account::sessions)) }
            p.quiet { (say!(l, account::zone, zone = shown.zone.name())) }
            (sessions(shown))
            h2 { (say!(l, account::roles)) }
            (roles(shown))
            p.quiet { (say!(l, account::id, id = account.id.to_string())) }
            p { a.link href="/account/erase" { (say!(l, account::erase)) } }
            p.row { a.button href="/" { (say!(l, errors::to_start)) } a.link href="/sharing" data-test="who-sees" { (say!(l, frame::who_sees)) } }
        },
    )
}

/// A credential's id as it stands on the page.
pub fn hex(credential: &[u8]) -> String {
    credential.iter().map(|byte| format!("{byte:02x}")).collect()
}

fn when(shown: &Shown, at: Moment) -> String {
    let l = &shown.locale;
    format!("{} {}", l.date(at.day(&shown.zone)), l.time(at, &shown.zone))
}

fn you(shown: &Shown) -> Markup {
    let (l, typed) = (&shown.locale, &shown.typed);
    let languages = Language::ALL.map(|language| (language.tag().to_owned(), language.own_name().to_owned()));
    html! {
        form method="post" action="/account" .stack {
            (line(typed, "name", &say!(l, start::you), "", true))
            (select(typed, "language", &say!(l, people::language), &say!(l, account::language_hint), &languages))
            button { (say!(l, setup::keep)) }
        }
    }
}

fn passkeys(shown: &Shown) -> Markup {
    let l = &shown.locale;
    html! {
        p { (say!(l, account::passkeys_what)) }
        ul.plain.stack {
            @for key in &shown.passkeys {
                li.card data-test="passkey" {
                    p { strong { (key_name(l, key)) } }
                    p.quiet {
                        @match key.used_at {
                            Some(used) => (say!(l, account::times, since = when(shown, key.made_at), used = when(shown, used)))
                            None => (say!(l, account::unused, since = when(shown, key.made_at)))
                        }
                    }
                    form method="post" action="/account/passkey/forget" {
                        button name="credential" value=(hex(&key.credential)) { (say!(l, account::forget)) span.unseen { ": " (key_name(l, key)) } }
                    }
                }
            }
        }
        div .stack hidden data-passkey="/account/passkey" data-makes data-to="/account" data-cancelled=(say!(l, account::cancelled))
            data-failed=(say!(l, account::failed)) data-known=(say!(l, account::known)) {
            div.field {
                label for="passkey-name" { (say!(l, account::passkey_name)) }
                span.hint #passkey-name-hint { (say!(l, account::passkey_name_hint)) }
                input #passkey-name maxlength="80" autocomplete="off" aria-describedby="passkey-name-hint";
            }
            button type="button" data-test="add-passkey" { (say!(l, account::add_passkey)) }
            p.caution role="alert" hidden {}
        }
        noscript { p.quiet { (say!(l, sign_in::no_script)) } }
    }
}

/// What a passkey is called, by its owner or for its owner to know it by.
fn key_name(l: &Locale, key: &KeptPasskey) -> String {
    match &key.name {
        KeyName::Own(label) => label.to_string(),
        KeyName::Device(kind) => say!(l, pairing::kind, kind = kind.as_str()),
    }
}

fn provider(shown: &Shown) -> Markup {
    let l = &shown.locale;
    html! {
        @if let Some((name, linked)) = &shown.provider {
            h2 { (say!(l, sign_in::provider, name = name.as_str())) }
            @match linked {
                Some(linked) => {
                    p.quiet data-test="linked" {
                        @match linked.used_at {
                            Some(used) => (say!(l, account::times, since = when(shown, linked.made_at), used = when(shown, used)))
                            None => (say!(l, account::unused, since = when(shown, linked.made_at)))
                        }
                    }
                    form method="post" action="/account/provider/forget" { button { (say!(l, account::provider_forget, name = name.as_str())) } }
                }
                None => {
                    p { (say!(l, account::provider_what, name = name.as_str())) }
                    p { a.button href="/account/provider?to=/account" data-test="link-provider" { (say!(l, account::provider_link, name = name.as_str())) } }
                }
            }
        }
    }
}

fn email(shown: &Shown) -> Markup {
    let (l, typed) = (&shown.locale, &shown.typed);
    html! {
        @match &shown.signed.account.email {
            Some(email) => {
                p data-test="email" { (say!(l, account::email_is, email = email)) }
                form method="post" action="/account/email/forget" { button { (say!(l, account::forget_email)) } }
            }
            None => p { (say!(l, account::email_none)) }
        }
        form method="post" action="/account/email" .stack {
            div.field {
                label for="email" { (say!(l, sign_in::email)) }
                @if let Some(what) = typed.sentence("email") { span.wrong #email-wrong role="alert" { (what) } }
                input #email name="email" type="email" required maxlength="254" autocomplete="email" value=(typed.text("email"))
                    aria-invalid=[typed.problem("email").map(|_| "true")];
            }
            button data-test="prove" { (say!(l, account::prove)) }
        }
    }
}

fn sessions(shown: &Shown) -> Markup {
    let l = &shown.locale;
    html! {
        ul.plain.stack {
            @for session in &shown.sessions {
                @let this = session.id == shown.signed.session.id;
                @let device = say!(l, pairing::kind, kind = session.device.as_str());
                li.card data-test="session" {
                    p { strong { (device) } @if this { " " (say!(l, pairing::this_device)) } }
                    p.quiet { (say!(l, account::times, since = when(shown, session.made_at), used = when(shown, session.seen_at))) }
                    @if !this {
                        form method="post" action="/account/session/end" {
                            button name="id" value=(session.id) { (say!(l, pairing::end)) span.unseen { ": " (device) } }
                        }
                    }
                }
            }
        }
        @if shown.sessions.len() > 1 {
            form method="post" action="/account/session/others" { button data-test="end-others" { (say!(l, account::end_others)) } }
        }
    }
}

fn roles(shown: &Shown) -> Markup {
    let l = &shown.locale;
    html! {
        @if shown.roles.is_empty() { p { (say!(l, account::no_role)) } }
        ul.plain.stack {
            @for (membership, place) in &shown.roles {
                li.card data-test="role" {
                    p { strong { (role(l, membership, place)) } }
                    @if let Some(home) = membership.part.scope().home() { p.quiet { (say!(l, account::home_id, id = home.to_string())) } }
                    details {
                        summary { (say!(l, account::leave)) span.unseen { ": " (role(l, membership, place)) } }
                        p.caution { (say!(l, account::leave_what)) }
                        form method="post" action="/account/role/leave" {
                            button name="id" value=(membership.id) { (say!(l, account::leave_button)) }
                        }
                    }
                }
            }
        }
    }
}

fn role(l: &Locale, membership: &Membership, place: &Place) -> String {
    let name = place.name.clone().unwrap_or_else(|| say!(l, account::new_home));
    say!(l, account::role, role = membership.part.role().name(), place = name)
}

/// That the letter could not be handed over, and with it nothing has changed.
pub fn proof_not_sent(l: &Locale, email: &str) -> Markup {
    bare(
        l,
        &say!(l, account::proof_not_sent_title),
        html! {
            p.caution role="alert" data-test="not-sent" { (say!(l, account::proof_not_sent, email = email)) }
            (to_account(l))
        },
    )
}

pub fn proof_sent(l: &Locale, email: &str, minutes: u32) -> Markup {
    bare(
        l,
        &say!(l, sign_in::sent_title),
        html! {
            p { (say!(l, account::proof_sent, email = email, minutes = minutes)) }
            p.quiet { (say!(l, sign_in::nothing_came)) }
            (to_account(l))
        },
    )
}

fn to_account(l: &Locale) -> Markup {
    html! { p { a.button href="/account" { (say!(l, account::title)) } } }
}

pub fn behind_proof(l: &Locale, secret: &Secret) -> Markup {
    bare(
        l,
        &say!(l, account::prove_title),
        html! {
            p { (say!(l, account::prove_what)) }
            form method="post" action=(format!("/account/email/{}", secret.reveal())) .stack {
                button.primary.wide data-test="prove-yes" { (say!(l, account::prove_yes)) }
            }
        },
    )
}

pub fn proof_signed_out(l: &Locale) -> Markup {
    bare(
        l,
        &say!(l, account::prove_title),
        html! {
            p { (say!(l, account::prove_signed_out)) }
            p { a.button href="/sign-in?to=/account" { (say!(l, sign_in::title)) } }
        },
    )
}

pub fn proof_gone(l: &Locale) -> Markup {
    bare(l, &say!(l, sign_in::gone_title), html! { p { (say!(l, sign_in::gone)) } (to_account(l)) })
}

pub fn email_taken(l: &Locale) -> Markup {
    bare(l, &say!(l, account::prove_title), html! { p { (say!(l, account::email_taken)) } (to_account(l)) })
}

/// `ids`: of homes with their names, and of the account.
pub fn codes(l: &Locale, server: &str, codes: &[Secret], ids: &[(Option<String>, String)]) -> Markup {
    bare_with(
        l,
        &say!(l, account::codes),
        &["client/print.js"],
        html! {
            p.caution { (say!(l, account::codes_once)) }
            p { (server) }
            ol.codes data-test="codes" { @for code in codes { li.code { (code.reveal()) } } }
            p { (say!(l, account::codes_ids)) }
            dl.facts data-test="ids" {
                @for (name, id) in ids { dt { (name.clone().unwrap_or_else(|| say!(l, account::codes_account))) } dd { code { (id) } } }
            }
            p.noprint { button.primary type="button" data-print hidden { (say!(l, sheets::print)) } }
            p.noprint { a.button href="/account" { (say!(l, account::codes_done)) } }
        },
    )
}

/// `alone`: places that nobody else keeps, with their names; while there is one, nothing can be erased.
pub fn erase(l: &Locale, name: &str, lifetimes: &Lifetimes, alone: &[(Scope, Option<String>)]) -> Markup {
    let Lifetimes { backup_days, looks_days, .. } = *lifetimes;
    bare(
        l,
        &say!(l, account::erase),
        html! {
            p.caution { (say!(l, account::erase_what, days = backup_days)) }
            p { (say!(l, account::erase_looks, days = looks_days)) }
            @if alone.is_empty() {
                form method="post" action="/account/erase" .stack { button data-test="erase" { (say!(l, account::erase_button)) } }
            } @else {
                section.stop role="alert" data-test="alone" { p { (say!(l, account::erase_alone)) } }
                ul.plain { @for (scope, name) in alone { li.line { (way_out(l, *scope, name.as_deref())) } } }
            }
            (to_account(l))
            (doors(l, name))
        },
    )
}

/// What can be done about a place that nobody else keeps.
fn way_out(l: &Locale, scope: Scope, name: Option<&str>) -> Markup {
    let called = name.map_or_else(|| say!(l, server::title), str::to_owned);
    html! {
        strong { (called) }
        span.row {
            @match scope {
                Scope::Home(home) => {
                    a.button href=(format!("/sharing/invite?{HOME_QUERY}={home}")) { (say!(l, sharing::invite)) }
                    a.button href=(format!("/sharing/leave?{HOME_QUERY}={home}")) { (say!(l, sharing::leave)) }
                }
                Scope::Club(club) => a.button href=(format!("/club/{club}")) { (say!(l, account::erase_other_keeper)) },
                Scope::Server => a.button href="/server" { (say!(l, account::erase_other_keeper)) },
            }
        }
    }
}

pub fn erased(l: &Locale) -> Markup {
    bare(l, &say!(l, account::erased_title), html! { p { (say!(l, account::erased)) } })
}
