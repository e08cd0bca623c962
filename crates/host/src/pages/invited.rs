//! An invitation's link, shown once.

use crate::host::Host;
use crate::links;
use crate::qr;
use maud::{Markup, html};
use sayso_model::{Moment, Zone};
use sayso_people::Secret;
use sayso_people::db::Invited;
use sayso_web::Error;
use sayso_wording::{Locale, say};

/// The link behind an invitation.
pub fn link(host: &Host, secret: &Secret) -> String {
    links::join(&host.public_url, secret)
}

/// A link with buttons to copy it and to send it, where the browser can.
pub fn handed_on(l: &Locale, link: &str, test: &str) -> Markup {
    html! {
        p.prose { code data-test=(test) { (link) } }
        p.row data-link=(link) data-copied=(say!(l, sharing::copied)) {
            button type="button" data-copy hidden { (say!(l, sharing::copy)) }
            button type="button" data-send hidden { (say!(l, sharing::send)) }
        }
    }
}

/// The script behind those buttons.
pub const HANDS_ON: &str = "client/hand-on.js";

/// A moment, with the zone where that is no home's own.
pub fn when(l: &Locale, at: Moment, zone: &Zone) -> String {
    let written = l.weekday_date_time(at, zone);
    if *zone == Zone::utc() { say!(l, server::utc, at = written) } else { written }
}

/// The link with its QR code, and until when it holds.
///
/// # Errors
/// Where it cannot be drawn.
pub fn shown(host: &Host, l: &Locale, zone: &Zone, (invited, secret): &(Invited, Secret)) -> Result<Markup, Error> {
    let link = link(host, secret);
    let code = qr::drawn(&link, &say!(l, sharing::qr))?;
    let until = when(l, invited.expires_at, zone);
    Ok(html! {
        p.caution { (say!(l, sharing::shown_once, count = 1)) }
        (handed_on(l, &link, "link"))
        p { (code) }
        p { (say!(l, sharing::holds, until = until)) }
        p.quiet { (say!(l, sharing::whoever)) }
    })
}
