use crate::reader::Reads;
use maud::{Markup, html};
use sayso_model::Label;
use sayso_people::Secret;
use sayso_web::layout::{bare, bare_with, doors};
use sayso_web::pages::who::as_field;
use sayso_web::typed::Typed;
use sayso_wording::{Locale, Words, say};

/// What the page says beside what was typed.
pub struct Ways<'a> {
    /// The identity provider, where there is one.
    pub provider: Option<&'a Label>,
    /// What stood in the way just now.
    pub wrong: Option<Words>,
    /// Whether a form had been sent, which is to be sent once more after this.
    pub sent: bool,
}

pub fn ways(reads: &Reads, typed: &Typed, to: &str, ways: &Ways<'_>) -> Markup {
    let l = &reads.locale;
    let again = reads.signed.is_some();
    let title = if again { say!(l, sign_in::again_title) } else { say!(l, sign_in::title) };
    // What a device keeps of homes that it may no longer read is cleared here, as where devices pair.
    let modules: &[&str] = if again { &["client/passkey.js"] } else { &["client/passkey.js", "client/forgotten.js"] };
    bare_with(
        l,
        &title,
        modules,
        html! {
            @if let Some(what) = &ways.wrong { p.caution role="alert" data-test="provider-wrong" { (what.say(l)) } }
            @if again { p { (say!(l, sign_in::again)) } }
            @if ways.sent { p.caution data-test="not-kept" { (say!(l, sign_in::not_kept)) } }
            div .stack hidden data-passkey="/sign-in/passkey" data-to=(to)
                data-cancelled=(say!(l, sign_in::cancelled)) data-failed=(say!(l, sign_in::failed)) {
                button.primary.wide type="button" data-test="passkey" { (say!(l, sign_in::passkey)) }
                p.caution role="alert" hidden {}
                p.quiet { (say!(l, sign_in::passkey_hint)) }
            }
            noscript { p.quiet { (say!(l, sign_in::no_script)) } }
            @if let Some(name) = ways.provider {
                p { a.button.wide href=(format!("/sign-in/provider?to={}", as_field(to))) data-test="provider" { (say!(l, sign_in::provider, name = name.as_str())) } }
            }
            (by_mail(reads, typed, to))
            details open[typed.problem("code").is_some()] {
                summary { (say!(l, sign_in::by_code)) }
                form method="post" action="/sign-in/code" .stack {
                    input type="hidden" name="to" value=(to);
                    div.field {
                        label for="code" { (say!(l, sign_in::code)) }
                        span.hint #code-hint { (say!(l, sign_in::code_hint)) }
                        @if let Some(what) = typed.problem("code") { span.wrong #code-wrong role="alert" { (say!(l, sign_in::code)) ": " (what) } }
                        // What was typed is not shown again: it may be all but right.
                        input #code name="code" required maxlength="80" autocomplete="off" autocapitalize="none" spellcheck="false"
                            aria-describedby="code-hint" aria-invalid=[typed.problem("code").map(|_| "true")];
                    }
                    button.wide data-test="use-code" { (say!(l, sign_in::title)) }
                }
            }
            @if !again {
                div #unsent hidden data-signed-out {}
                p.quiet { (say!(l, sign_in::no_account)) }
            }
        },
    )
}

/// By a link to an address: to the account's own where it is known whose it is, none where it has none.
fn by_mail(reads: &Reads, typed: &Typed, to: &str) -> Markup {
    let l = &reads.locale;
    let own = match &reads.signed {
        Some(signed) if signed.account.email.is_none() => return html! {},
        Some(signed) => signed.account.email.as_deref(),
        None => None,
    };
    html! {
        h2 { (say!(l, sign_in::by_mail)) }
        form method="post" action="/sign-in/link" .stack {
            input type="hidden" name="to" value=(to);
            @if let Some(own) = own {
                input type="hidden" name="email" value=(own);
                button.wide data-test="send-link" { (say!(l, sign_in::send_link_to, email = own)) }
            } @else {
                div.field {
                    label for="email" { (say!(l, sign_in::email)) }
                    span.hint #email-hint { (say!(l, sign_in::email_hint)) }
                    @if let Some(what) = typed.sentence("email") { span.wrong #email-wrong role="alert" { (what) } }
                    input #email name="email" type="email" required maxlength="254" autocomplete="email" value=(typed.text("email"))
                        aria-describedby="email-hint" aria-invalid=[typed.problem("email").map(|_| "true")];
                }
                button.wide data-test="send-link" { (say!(l, sign_in::send_link)) }
            }
        }
    }
}

/// The same whether anybody has the address or not.
pub fn sent(reads: &Reads, minutes: u32, email: &str, to: &str) -> Markup {
    let l = &reads.locale;
    // Whoever shows that it is them has one address.
    let is_typed = reads.signed.is_none();
    bare(
        l,
        &say!(l, sign_in::sent_title),
        html! {
            p data-test="sent-to" { (say!(l, sign_in::sent, minutes = minutes, email = email)) }
            p.quiet { (say!(l, sign_in::nothing_came)) }
            @if is_typed { p { a.button href=(format!("/sign-in?to={}", as_field(to))) data-test="another-address" { (say!(l, sign_in::another_address)) } } }
        },
    )
}

pub fn behind_link(l: &Locale, secret: &Secret, to: &str) -> Markup {
    bare(
        l,
        &say!(l, sign_in::here_title),
        html! {
            p { (say!(l, sign_in::here)) }
            form method="post" action=(format!("/sign-in/link/{}", secret.reveal())) .stack {
                input type="hidden" name="to" value=(to);
                button.primary.wide data-test="sign-in" { (say!(l, sign_in::title)) }
            }
        },
    )
}

pub fn link_gone(l: &Locale) -> Markup {
    bare(
        l,
        &say!(l, sign_in::gone_title),
        html! {
            p { (say!(l, sign_in::gone)) }
            p { a.button href="/sign-in" { (say!(l, sign_in::new_link)) } }
        },
    )
}

/// Where the one that the provider named is linked already, or the account with another one there.
pub fn provider_taken(l: &Locale, name: &Label) -> Markup {
    bare(
        l,
        &say!(l, sign_in::provider, name = name.as_str()),
        html! {
            p.caution role="alert" { (say!(l, sign_in::provider_taken, name = name.as_str())) }
            p { a.button href="/account" { (say!(l, account::title)) } }
        },
    )
}

/// For who is to show that it is them, and has nothing to show it by.
pub fn none_yet(l: &Locale, name: &str) -> Markup {
    bare(
        l,
        &say!(l, sign_in::again_title),
        html! {
            p.caution data-test="none-yet" { (say!(l, sign_in::none_yet)) }
            p { a.button.primary href="/account" { (say!(l, account::title)) } }
            (doors(l, name))
        },
    )
}

/// Before someone signs out whom nothing would let in again.
pub fn no_way_back(l: &Locale, to: Option<&str>) -> Markup {
    bare(
        l,
        &say!(l, frame::sign_out),
        html! {
            p.caution role="alert" { (say!(l, account::no_way_back)) }
            p { a.button.primary href="/account" { (say!(l, account::title)) } }
            form method="post" action="/sign-out" {
                @if let Some(to) = to { input type="hidden" name="to" value=(to); }
                button.wide name="anyway" value="yes" data-test="sign-out-anyway" { (say!(l, account::sign_out_anyway)) }
            }
        },
    )
}
