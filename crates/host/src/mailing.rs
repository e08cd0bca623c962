//! Letters in words, and on their way: after the answer, so that how long that takes tells nobody whether one was sent.

use crate::host::Host;
use crate::links;
use sayso_model::Zone;
use sayso_people::db::Pending;
use sayso_people::letter::{Addressed, Letter};
use sayso_people::mail::Mail;
use sayso_web::pages::who::as_field;
use sayso_wording::{Locale, say};
use std::sync::Arc;
use std::time::Duration;

/// How long whoever waits for it is kept waiting until a letter is handed over.
const PATIENCE: Duration = Duration::from_secs(15);

/// Sends what may have to be sent, beside the answer that is given meanwhile. `to` is the own page to open afterwards. Whether it
/// went is for the log: whoever asked is not told.
pub fn send(host: &Arc<Host>, pending: Pending, to: &str) {
    let Some(addressed) = pending.letter() else { return };
    let mail = worded(host, addressed, to);
    let host = Arc::clone(host);
    tokio::spawn(async move { went(&host, &mail).await });
}

/// Hands over what has to be sent, and says whether it went: for whoever may know that.
pub async fn sent(host: &Host, pending: Pending, to: &str) -> bool {
    let Some(addressed) = pending.letter() else { return true };
    in_time(host, &worded(host, addressed, to)).await
}

/// Hands over a letter for which nobody waits; whether it went.
pub async fn handed_over(host: &Host, letter: Addressed) -> bool {
    in_time(host, &worded(host, letter, "/")).await
}

/// Sends letters that nobody asked for and everyone may know of, beside the answer.
pub fn send_all(host: &Arc<Host>, letters: Vec<Addressed>) {
    let mails: Vec<Mail> = letters.into_iter().map(|letter| worded(host, letter, "/")).collect();
    let host = Arc::clone(host);
    tokio::spawn(async move {
        for mail in mails {
            went(&host, &mail).await;
        }
    });
}

async fn in_time(host: &Host, mail: &Mail) -> bool {
    tokio::time::timeout(PATIENCE, went(host, mail)).await.unwrap_or_else(|_| {
        tracing::error!("A letter was not sent: the server for mail did not take it in {} s.", PATIENCE.as_secs());
        false
    })
}

/// Hands a letter over; whether it went. Why not is for the log.
async fn went(host: &Host, mail: &Mail) -> bool {
    match host.send(mail).await {
        Ok(()) => true,
        Err(why) => {
            tracing::error!("A letter was not sent: {why}");
            false
        }
    }
}

/// The minutes that a link sent by mail holds, for pages.
pub fn minutes(host: &Host) -> u32 {
    (host.people.lifetimes().link_s / 60.0).round() as u32
}

fn worded(host: &Host, Addressed { to: whom, language, letter }: Addressed, to: &str) -> Mail {
    let l = &Locale::of(language);
    let server = host.public_url.host_str().unwrap_or_default();
    let mut stop_at = None;
    let (subject, text) = match letter {
        Letter::SignIn { secret, minutes } => {
            let onward = if to == "/" { String::new() } else { format!("?to={}", as_field(to)) };
            let link = format!("{}{onward}", links::sign_in(&host.public_url, &secret));
            let text = say!(l, letters::sign_in, server = server, link = link, minutes = minutes);
            (say!(l, letters::sign_in_subject), text)
        }
        Letter::Rescue { by, opens_at } => {
            let (from, page) = (l.weekday_date_time(opens_at, &Zone::utc()), links::page(&host.public_url, "sharing"));
            let text = say!(l, letters::rescue, server = server, by = by.as_str(), from = from, link = page);
            (say!(l, letters::rescue_subject), text)
        }
        Letter::Tidings { homes, things, sent_to, every, stop } => {
            let stop = links::stop(&host.public_url, &stop);
            let mut text = Vec::new();
            if homes > 0 {
                let link = links::page(&host.public_url, "desk");
                text.push(say!(l, letters::tidings_homes, homes = homes, link = link));
            }
            if things > 0 {
                // The page alone would be that of the home looked at last.
                let page = sent_to.map_or_else(|| "homes".to_owned(), |home| format!("talk?home={home}"));
                let link = links::page(&host.public_url, &page);
                text.push(say!(l, letters::tidings_things, things = things, link = link));
            }
            let every = every.name();
            text.push(say!(l, letters::tidings_why, every = every, server = server, link = stop.as_str()));
            stop_at = Some(stop);
            (say!(l, letters::tidings_subject, server = server), text.join("\n\n"))
        }
        Letter::Prove { secret, minutes } => {
            let link = links::prove(&host.public_url, &secret);
            let text = say!(l, letters::prove, server = server, link = link, minutes = minutes);
            (say!(l, letters::prove_subject), text)
        }
    };
    Mail { to: whom, subject, text, stop: stop_at }
}
