//! What whoever is at a home has to know before anything else, on a server of many homes: told where they look first, with one tap to
//! what to do.

use crate::leave::News;
use crate::page::{HOME_QUERY, Page};
use maud::{Markup, html};
use sayso_model::HomeId;
use sayso_wording::{Locale, say};

/// The page on which it is seen to.
pub const SEEN_TO: &str = "/sharing";

fn news(page: &Page) -> &[News] {
    page.leave.as_ref().map_or(&[], |leave| &leave.news)
}

/// All of it, with why.
#[must_use]
pub fn told(page: &Page) -> Markup {
    let l = &page.locale;
    let when = |at| l.weekday_date_time(at, &page.zone);
    html! {
        @for one in news(page) {
            section.caution data-test="news" {
                @match one {
                    News::Anew { by, opens_at } => {
                        p { (say!(l, sharing::news_anew, by = by, from = when(*opens_at))) }
                        (way(page.home, &say!(l, sharing::news_look)))
                    }
                    News::Restored { at } => {
                        p { (say!(l, sharing::news_restored, at = when(*at))) }
                        (way(page.home, &say!(l, sharing::news_give)))
                    }
                }
            }
        }
    }
}

/// What cannot wait, in a line, for where hands are full.
#[must_use]
pub fn in_a_line(page: &Page) -> Markup {
    let l = &page.locale;
    html! {
        @if news(page).iter().any(|one| matches!(one, News::Anew { .. })) {
            div data-test="news" { (way(page.home, &anew(l))) }
        }
    }
}

/// That a new keeper was invited, in a line.
#[must_use]
pub fn anew(l: &Locale) -> String {
    say!(l, sharing::news_anew_short)
}

/// The way to where it is seen to. This device is about that home from then on.
#[must_use]
pub fn way(home: HomeId, says: &str) -> Markup {
    html! {
        form method="post" action="/homes" {
            input type="hidden" name="to" value=(SEEN_TO);
            button.wide name=(HOME_QUERY) value=(home) data-test="see-to" { (says) }
        }
    }
}
