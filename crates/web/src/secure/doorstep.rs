//! What a device gets that comes in plain where the notebook is served safely: how to come in safely, nothing else.

use super::Authority;
use crate::layout::bare;
use crate::rich;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use maud::html;
use sayso_wording::{Locale, say};

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
        &say!(locale, doorstep::title),
        html! {
            p { (say!(locale, doorstep::intro)) }
            p.caution role="note" {
                strong { (say!(locale, doorstep::only_own)) } " " (say!(locale, doorstep::care))
            }
            ol.stack {
                li {
                    p { (say!(locale, doorstep::fetch)) }
                    p { a.button.primary href=(CERTIFICATE) download { (say!(locale, doorstep::fetch_button)) } }
                }
                li {
                    p { (say!(locale, doorstep::install)) }
                    details { summary { (say!(locale, doorstep::android)) }
                        p { (rich!(locale, doorstep::android_how, file = html! { code { "sayso-home.crt" } })) }
                    }
                    details { summary { (say!(locale, doorstep::iphone)) }
                        p { (say!(locale, doorstep::iphone_how)) }
                    }
                    details { summary { (say!(locale, doorstep::computer)) }
                        p { (say!(locale, doorstep::computer_how)) }
                    }
                }
                li {
                    p { (say!(locale, doorstep::fingerprint)) }
                }
                li {
                    p { a.button href=(format!("https://{host}/")) { (say!(locale, doorstep::open)) } }
                }
            }
        },
    )
    .into_response()
}
