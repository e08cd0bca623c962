//! The web socket of a listening page.

use super::hearing::Hearing;
use super::message::{Begin, FromPage, HeardPress, ToPage};
use super::seats::{Asked, Over, Seat, Ticket};
use crate::access::PAIRED_COOKIE;
use crate::error::Error;
use crate::page::{AnimalPage, cookie};
use crate::state::AppState;
use axum::extract::ws::rejection::WebSocketUpgradeRejection;
use axum::extract::ws::{Message, WebSocket, WebSocketUpgrade};
use axum::http::HeaderMap;
use axum::response::Response;
use sayso_model::{AnimalId, HomeId};
use sayso_notebook::NotLogged;
use sayso_wording::{Locale, Message as _, Words, words};
use std::sync::Arc;
use std::time::Duration;

/// Most bytes of a message: over a second of sound at any rate a browser has.
const MOST_MESSAGE: usize = 1 << 18;
/// A page sends ten times a second; one that is silent for so long is gone.
const SILENT: Duration = Duration::from_secs(20);
/// How long a page may take to close a connection that is over.
const PARTING: Duration = Duration::from_secs(3);
/// How long a page that was lost may come back to its stream.
const GRACE: Duration = Duration::from_secs(60);
/// A page whose clock is further off than this would put presses on another day, in seconds.
const CLOCK_OFF_S: f64 = 43_200.0;

/// Opens the socket. Who may: see `access::guard`, which holds sockets to the rules of writes.
///
/// # Errors
/// [`Error::BadRequest`] for a request that opens none; [`Error::Forbidden`] where no sound is taken.
pub async fn open(
    page: AnimalPage,
    headers: HeaderMap,
    upgrade: Result<WebSocketUpgrade, WebSocketUpgradeRejection>,
) -> Result<Response, Error> {
    if !page.state.takes_sound {
        return Err(Error::Forbidden(words!(errors::no_sound_taken)));
    }
    let upgrade = upgrade.map_err(|_| Error::BadRequest(words!(listen::web_socket)))?;
    let secret = cookie(&headers, PAIRED_COOKIE).map(str::to_owned);
    let (state, home, animal, locale) = (page.state.clone(), page.home, page.id, page.locale);
    Ok(upgrade.max_message_size(MOST_MESSAGE).max_frame_size(MOST_MESSAGE).on_upgrade(move |socket| {
        Line { socket, state, home, animal, locale, secret, ticket: None, told_upto: 0, troubled: false }.run()
    }))
}

/// One connection.
struct Line {
    socket: WebSocket,
    state: AppState,
    home: HomeId,
    animal: AnimalId,
    /// How whoever opened the page reads.
    locale: Locale,
    secret: Option<String>,
    ticket: Option<Ticket>,
    told_upto: u64,
    troubled: bool,
}

/// What came of samples.
struct Worked {
    logged: Result<Vec<HeardPress>, NotLogged>,
    upto: u64,
    /// Frames a second.
    second: u64,
}

/// Why a connection ends.
enum End {
    /// The stream is over.
    Done,
    /// The page may come back.
    Lost,
}

impl Line {
    async fn run(mut self) {
        let state = self.state.clone();
        let stopping = state.stopping();
        tokio::pin!(stopping);
        loop {
            let message = tokio::select! {
                biased;
                () = &mut stopping => {
                    self.stop().await;
                    return;
                }
                over = until_over(self.ticket.as_mut()) => {
                    self.give_way(over).await;
                    return;
                }
                message = tokio::time::timeout(SILENT, self.socket.recv()) => message,
            };
            let Ok(Some(Ok(message))) = message else { return self.lost() };
            match self.answer(message).await {
                Ok(None) => {}
                Ok(Some(End::Done)) => return self.part().await,
                // Whatever else there was to tell cannot be told.
                Ok(Some(End::Lost)) | Err(_) => return self.lost(),
            }
        }
    }

    async fn answer(&mut self, message: Message) -> Result<Option<End>, axum::Error> {
        match message {
            Message::Text(text) => match serde_json::from_str::<FromPage>(text.as_str()) {
                Ok(FromPage::Begin(begin)) => self.begin(begin).await,
                Ok(FromPage::KeepUnsure(keep)) => {
                    if let Some(ticket) = &self.ticket
                        && let Some(hearing) = ticket.seat.hearing.lock().await.as_mut()
                    {
                        hearing.keep_unsure = keep;
                    }
                    Ok(None)
                }
                Ok(FromPage::End) => {
                    if let Some(ticket) = self.ticket.take() {
                        self.state.seats.leave(self.home, &ticket.seat);
                        let told = finish(&self.state, self.home, &ticket.seat).await;
                        self.tell_all(told).await?;
                    }
                    self.tell(&ToPage::Ended).await?;
                    Ok(Some(End::Done))
                }
                Err(why) => self.wrong(&words!(listen::not_understood, why = why.to_string())).await,
            },
            Message::Binary(bytes) => self.hear(&bytes).await,
            Message::Close(_) => Ok(Some(End::Lost)),
            Message::Ping(_) | Message::Pong(_) => Ok(None),
        }
    }

    async fn begin(&mut self, begin: Begin) -> Result<Option<End>, axum::Error> {
        if let Some(former) = self.ticket.take().filter(|t| t.seat.stream != begin.stream) {
            self.state.seats.leave(self.home, &former.seat);
            let told = finish(&self.state, self.home, &former.seat).await;
            self.tell_all(told).await?;
        }
        let now = self.state.now();
        if begin.began.seconds_since(now).abs() > CLOCK_OFF_S {
            return self.wrong(&words!(listen::clock_off)).await;
        }
        let ticket = match self.state.seats.ask(self.home, begin.stream, begin.take, now) {
            Asked::Busy(since) => {
                self.tell(&ToPage::Busy(since)).await?;
                return Ok(Some(End::Done));
            }
            Asked::Granted(ticket, former) => {
                if let Some(former) = former {
                    finish(&self.state, self.home, &former).await;
                }
                ticket
            }
        };
        let go = {
            let mut held = ticket.seat.hearing.lock().await;
            let ready = match held.take() {
                Some(mut known) => {
                    known.keep_unsure = begin.keep_unsure;
                    Ok(known)
                }
                None => self.hearing(&begin).await,
            };
            ready.map(|hearing| held.insert(hearing).go())
        };
        self.told_upto = 0;
        match go {
            Ok(go) => {
                self.ticket = Some(ticket);
                self.tell(&go).await?;
                Ok(None)
            }
            Err(why) => {
                self.state.seats.leave(self.home, &ticket.seat);
                self.wrong(&why.words()).await
            }
        }
    }

    async fn hearing(&mut self, begin: &Begin) -> Result<Hearing, Error> {
        let story = self.state.store.story(self.home).await?;
        let animal = begin.only.then_some(self.animal);
        Hearing::new(&self.state.store, &story, self.home, animal, begin).await
    }

    async fn hear(&mut self, bytes: &[u8]) -> Result<Option<End>, axum::Error> {
        let Some((position, samples)) = samples(bytes) else {
            return self.wrong(&words!(listen::sound_broken)).await;
        };
        let Some(ticket) = &self.ticket else { return self.wrong(&words!(listen::sound_too_soon)).await };
        let seat = Arc::clone(&ticket.seat);
        let heard = self.heard_at(&seat, position, samples).await;
        // Another page took the board in this very moment, and has brought this stream to its end.
        if heard.is_err() && self.ticket.as_ref().and_then(Ticket::over) == Some(Over::Taken) {
            self.tell(&ToPage::Taken).await?;
            return Ok(Some(End::Done));
        }
        let Worked { logged, upto, second } = match heard {
            Ok(worked) => worked,
            Err(Some(why)) => return self.wrong(&why).await,
            Err(None) => return Ok(Some(End::Lost)),
        };
        match logged {
            Ok(told) => {
                self.tell_all(told).await?;
                if std::mem::take(&mut self.troubled) {
                    self.tell(&ToPage::Trouble(None)).await?;
                }
            }
            Err(why) => {
                if !std::mem::replace(&mut self.troubled, true) {
                    self.tell(&ToPage::Trouble(Some(why.say(&self.locale)))).await?;
                }
            }
        }
        if upto >= self.told_upto + second {
            self.told_upto = upto;
            self.tell(&ToPage::Upto(upto)).await?;
        }
        // A device that was forgotten meanwhile is heard no longer.
        if position % second < samples_in(bytes) && !self.state.access.admits(self.secret.as_deref(), self.state.now())
        {
            return self.wrong(&words!(listen::not_paired)).await;
        }
        Ok(None)
    }

    /// Hears and logs samples. The error is what to tell the page; none where coming back may help.
    async fn heard_at(&mut self, seat: &Seat, position: u64, samples: Vec<i16>) -> Result<Worked, Option<Words>> {
        let mut held = seat.hearing.lock().await;
        let mut hearing = held.take().ok_or_else(|| Some(words!(listen::over)))?;
        let worked = tokio::task::spawn_blocking(move || {
            let taken = hearing.take(position, &samples);
            (hearing, taken)
        });
        let (hearing, taken) = worked.await.map_err(|why| {
            tracing::error!(error = %why, "hearing failed");
            None
        })?;
        let hearing = held.insert(hearing);
        taken.map_err(|why| Some(why.words()))?;
        let logged = hearing.log(&self.state.store, self.home, self.state.now()).await;
        Ok(Worked { logged, upto: hearing.upto(), second: u64::from(hearing.rate()) })
    }

    /// The notebook is closed: what was heard so far is logged; the page comes back by itself.
    async fn stop(mut self) {
        if let Some(ticket) = self.ticket.take() {
            self.state.seats.leave(self.home, &ticket.seat);
            let told = finish(&self.state, self.home, &ticket.seat).await;
            // The page may be gone; there is nothing left to do for it.
            let _ = self.tell_all(told).await;
        }
        self.part().await;
    }

    /// Another page or connection has the board now.
    async fn give_way(mut self, over: Over) {
        if over == Over::Taken
            && let Some(ticket) = self.ticket.take()
        {
            let told = finish(&self.state, self.home, &ticket.seat).await;
            // The page may be gone; there is nothing left to do for it.
            let _ = self.tell_all(told).await;
            let _ = self.tell(&ToPage::Taken).await;
        }
        self.part().await;
    }

    /// Closes the connection so that the last words arrive: what the page still sends is taken until it has closed too.
    async fn part(mut self) {
        let closed = async {
            self.socket.send(Message::Close(None)).await?;
            while let Some(message) = self.socket.recv().await {
                message?;
            }
            Ok::<(), axum::Error>(())
        };
        // A page that is gone, or does not close, is left.
        let _ = tokio::time::timeout(PARTING, closed).await;
    }

    /// Keeps the stream for a while, for the page to come back to; then it is brought to its end.
    fn lost(self) {
        let Some(ticket) = self.ticket else { return };
        ticket.lost();
        let (state, home) = (self.state, self.home);
        tokio::spawn(async move {
            tokio::time::sleep(GRACE).await;
            if ticket.still_lost() {
                state.seats.leave(home, &ticket.seat);
                finish(&state, home, &ticket.seat).await;
            }
        });
    }

    async fn wrong(&mut self, why: &Words) -> Result<Option<End>, axum::Error> {
        self.tell(&ToPage::Wrong(why.say(&self.locale))).await?;
        if let Some(ticket) = self.ticket.take() {
            self.state.seats.leave(self.home, &ticket.seat);
            finish(&self.state, self.home, &ticket.seat).await;
        }
        Ok(Some(End::Done))
    }

    async fn tell_all(&mut self, presses: Vec<HeardPress>) -> Result<(), axum::Error> {
        for press in presses {
            self.tell(&ToPage::Heard(press)).await?;
        }
        Ok(())
    }

    async fn tell(&mut self, what: &ToPage) -> Result<(), axum::Error> {
        let text = serde_json::to_string(what).map_err(axum::Error::new)?;
        self.socket.send(Message::text(text)).await
    }
}

/// Brings the streams to their end whose pages were lost and have not come back.
pub async fn end_all(state: &AppState) {
    for (home, seat) in state.seats.all() {
        state.seats.leave(home, &seat);
        finish(state, home, &seat).await;
    }
}

async fn until_over(ticket: Option<&mut Ticket>) -> Over {
    match ticket {
        Some(ticket) => ticket.until_over().await,
        None => std::future::pending().await,
    }
}

/// Brings a stream to its end and logs what is still to be decided. Whoever comes first does it.
async fn finish(state: &AppState, home: HomeId, seat: &Arc<Seat>) -> Vec<HeardPress> {
    let Some(mut hearing) = seat.hearing.lock().await.take() else { return Vec::new() };
    let ended = tokio::task::spawn_blocking(move || {
        let ended = hearing.finish();
        (hearing, ended)
    });
    let told = match ended.await {
        Ok((mut hearing, Ok(()))) => hearing.log(&state.store, home, state.now()).await.map_err(|e| e.to_string()),
        Ok((_, Err(why))) => Err(why.to_string()),
        Err(why) => Err(why.to_string()),
    };
    told.unwrap_or_else(|why| {
        tracing::error!(why, "the last presses of a stream could not be logged");
        Vec::new()
    })
}

/// Position and samples of a binary message.
fn samples(bytes: &[u8]) -> Option<(u64, Vec<i16>)> {
    let (position, sound) = bytes.split_first_chunk::<8>()?;
    let pairs = sound.chunks_exact(2);
    if !pairs.remainder().is_empty() {
        return None;
    }
    let samples = pairs.map(|b| i16::from_le_bytes([b[0], b[1]])).collect();
    Some((u64::from_le_bytes(*position), samples))
}

const fn samples_in(bytes: &[u8]) -> u64 {
    (bytes.len() as u64).saturating_sub(8) / 2
}
