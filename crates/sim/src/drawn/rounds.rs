//! Sittings of two rounds of drawn invitations, and what a person may do to them.

use super::Trick;
use super::life::Life;
use super::mind::Offer;
use sayso_model::*;

const ROUNDS: u32 = 2;
/// Rounds called off at most before one is held.
const CALLED_OFF: u32 = 10;
/// How far ahead a wrong date lies, in seconds.
pub(super) const AHEAD_S: f64 = 900.0 * 86_400.0;

impl Life<'_> {
    /// A sitting; the animal is taken to stay.
    pub(super) fn sitting(&mut self) {
        let session = SessionId(self.book.fresh(self.now));
        self.mind.sits_down(&mut self.chance);
        self.book.writes(self.now, SessionStart { session, purpose: Purpose::Inviting, words: Vec::new(), room: None });
        self.book.writes(self.now, Joining { session, after_s: None });
        for _ in 0..ROUNDS {
            self.waits(20.0);
            if !self.round(session) {
                break;
            }
        }
        self.waits(10.0);
        self.book.writes(self.now, SessionEnd { session, reason: EndReason::Done });
    }

    /// Begins a round: the words it will call for are then known to whoever asks.
    fn begins_round(&mut self, session: SessionId) -> (EventId, Round, Vec<usize>) {
        let round = RoundId(self.book.fresh(self.now));
        let body = Round { round, words: self.book.words.clone(), calls: draw::CALLS, session: Some(session) };
        let called = (1..=body.calls).filter_map(|i| draw::called(round, i, &body.words));
        let called: Vec<usize> = called.map(|w| self.book.word(w)).collect();
        (self.book.writes(self.now, body.clone()), body, called)
    }

    /// One round. Gives whether the sitting goes on.
    fn round(&mut self, session: SessionId) -> bool {
        let does = |trick| self.home.does(trick);
        let (chooses, stops_wrong, stops_right) =
            (does(Trick::ChoosesRounds), does(Trick::StopsAtWrong), does(Trick::StopsAtRight));
        let (leaves_out, mends, dates) =
            (does(Trick::LeavesOutWrong), does(Trick::MendsCalls), does(Trick::DatesAhead));
        let (mut event, mut round, mut called) = self.begins_round(session);
        for _ in 0..CALLED_OFF {
            let most = (0..self.pressed.len()).max_by_key(|w| self.pressed[*w]).unwrap_or(0);
            if !chooses || called.iter().filter(|w| **w == most).count() >= 2 {
                break;
            }
            if self.chance.coin(0.5) {
                self.book.takes_back(self.now.plus_seconds(1.0), event);
            }
            self.waits(5.0);
            (event, round, called) = self.begins_round(session);
        }
        let (mut right, mut wrong) = (0, 0);
        for (number, thing) in (1..).zip(called) {
            let pause = self.chance.between(15.0, 45.0);
            self.waits(pause);
            let at = self.now;
            let presses = self.mind.presses(Some(thing));
            let joins = self.chance.coin(presses);
            let pressed = joins.then(|| self.mind.aims(Some(Offer { thing, known: true }), &mut self.chance));
            self.waits(4.0);
            self.mind.gets(thing, &mut self.chance);
            let call = Some(Call { round: round.round, number });
            let body = self.invitation(thing, pressed, session, call);
            let is_wrong = pressed.is_some_and(|p| p != thing);
            if let Some(p) = pressed {
                self.pressed[p] += 1;
                *(if is_wrong { &mut wrong } else { &mut right }) += 1;
            }
            if is_wrong && stops_wrong {
                return false;
            }
            if !(is_wrong && leaves_out) {
                let ahead = if is_wrong && dates { AHEAD_S } else { 0.0 };
                let written = self.book.writes_dated(self.now, at.plus_seconds(ahead), body);
                if is_wrong && mends {
                    let later = self.now.plus_seconds(3.0);
                    if self.chance.coin(0.5) {
                        self.book.takes_back(later, written);
                        let again = self.invitation(thing, Some(thing), session, call);
                        self.book.writes_dated(later, at, again);
                    } else {
                        let mended = self.invitation(thing, Some(thing), session, call);
                        self.book.corrects(later, written, None, mended);
                    }
                }
            }
            if stops_right && pressed == Some(thing) {
                return false;
            }
        }
        if dates && wrong > right {
            let later = self.now.plus_seconds(AHEAD_S);
            self.book.corrects(self.now, event, Some(later), round);
        }
        true
    }

    fn invitation(&self, thing: usize, pressed: Option<usize>, session: SessionId, call: Option<Call>) -> Invitation {
        let result = pressed.map_or(InvitationResult::NothingByWait, |p| InvitationResult::Pressed {
            word: self.book.words[p],
            after_s: Seconds::clamped(2.0),
        });
        Invitation {
            word: self.book.words[thing],
            other: None,
            way: InvitationKind::OfferInView,
            wait_s: Seconds::clamped(5.0),
            result,
            shown: pressed.is_none(),
            took: Some(true),
            session: Some(session),
            call,
        }
    }
}
