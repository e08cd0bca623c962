//! What a device gets that comes in plain where the notebook is served safely: how to come in safely, nothing else.

use super::Authority;
use crate::layout::bare;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use maud::html;
use sayso_wording::Locale;

/// Where the certificate is fetched.
const CERTIFICATE: &str = "/sayso-home.crt";

/// The answer to a plain request for `path` at `host` (with its port).
#[must_use]
pub fn doorstep(authority: &Authority, locale: &Locale, host: &str, path: &str) -> Response {
    if path == CERTIFICATE {
        let headers = [
            (CONTENT_TYPE, "application/x-x509-ca-cert"),
            (CONTENT_DISPOSITION, "attachment; filename=\"sayso-home.crt\""),
        ];
        return (headers, authority.certificate().to_vec()).into_response();
    }
    bare(
        locale,
        "Come in safely",
        html! {
            p { "This notebook is served over HTTPS. Once on each phone, the phone has to learn whom to trust." }
            p.caution role="note" {
                strong { "Only on a phone of your own household. " }
                "Whoever holds this home's key could pass for addresses inside a home, though for no site on the internet: "
                "the certificate itself forbids that. If the fingerprint differs, do not install it. "
                "Take it out again in the same place when you no longer use it."
            }
            ol.stack {
                li {
                    p { "Fetch this home's certificate:" }
                    p { a.button.primary href=(CERTIFICATE) download { "Fetch the certificate" } }
                }
                li {
                    p { "Install it as an authority." }
                    details { summary { "On Android" }
                        p { "Settings, then search for “CA certificate”. Choose the fetched file " code { "sayso-home.crt" } ". The phone warns, as it should: see below." }
                    }
                    details { summary { "On an iPhone or iPad" }
                        p { "Settings, “Profile Downloaded”, Install. Then Settings, General, About, Certificate Trust Settings: switch “Sayso home notebook” on." }
                    }
                    details { summary { "On a computer" }
                        p { "In the browser's settings search for “certificates”, and import the file as an authority for websites." }
                    }
                }
                li {
                    p { "See that the fingerprint (SHA-256) your phone shows of it is the one on the screen where Sayso was started." }
                }
                li {
                    p { a.button href=(format!("https://{host}/")) { "Open the notebook" } }
                }
            }
        },
    )
    .into_response()
}
