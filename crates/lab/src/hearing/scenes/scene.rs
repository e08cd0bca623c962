//! One scene: a room, a board, and some minutes of a home, with the truth of what sounded.

use super::chain::{Loudspeaker, Microphone};
use super::noise::bed;
use super::room::{Home, Room};
use super::signal::{RATE, add, convolve, loud_part, rms, speech_band};
use super::television::programme;
use super::voice::{Voice, Word, say};
use crate::hearing::truth::{Live, Press};
use sayso_sim::Chance;

/// What one button holds.
pub(crate) struct Button {
    pub(crate) word: String,
    pub(crate) sound: Word,
    pub(crate) voice: Voice,
    pub(crate) clip: Vec<f32>,
}

/// A scene and its truth.
pub(crate) struct Scene {
    pub(crate) samples: Vec<f32>,
    pub(crate) presses: Vec<Press>,
    pub(crate) live: Vec<Live>,
    pub(crate) tired: Option<String>,
}

pub(crate) struct Stage<'a> {
    c: Chance,
    room: Room,
    board: (Vec<f32>, usize),
    speaker: Loudspeaker,
    bed: Vec<f32>,
    /// The bed in the speech band, against which levels are set.
    under: Vec<f32>,
    scene: Vec<f32>,
    buttons: &'a [Button],
    presses: Vec<Press>,
    live: Vec<Live>,
}

/// How loud a television is against the bed of unit strength.
const TELEVISION: f64 = 0.7;
/// How much a button slows over a scene where its battery is tired.
const SLOWING: f64 = 0.035;

impl<'a> Stage<'a> {
    fn new(home: Home, seconds: f64, buttons: &'a [Button], mut c: Chance) -> Self {
        let room = Room::draw(home, &mut c);
        let far = c.between(0.6, 3.0);
        let place = room.place(Some(far), 0.05, &mut c);
        let board = room.response(place, &mut c);
        let speaker = Loudspeaker::draw(home, &mut c);
        let bed = bed(home, (seconds * RATE as f64) as usize, &mut c);
        let (under, scene) = (speech_band(&bed), vec![0.0; bed.len()]);
        Self { c, room, board, speaker, bed, under, scene, buttons, presses: Vec::new(), live: Vec::new() }
    }

    /// Mixes a sound in so that it stands `snr_db` over the bed, over its loud part.
    fn mix(&mut self, sound: &[f32], at: usize, snr_db: f64) {
        let part = loud_part(sound);
        let under = &self.under[(at + part.start).min(self.under.len())..(at + part.end).min(self.under.len())];
        let strength = rms(&speech_band(sound)[part]);
        add(&mut self.scene, sound, at, rms(under) * 10f64.powf(snr_db / 20.0) / strength);
    }

    /// Plays a button; answers how many seconds it sounds.
    fn press(&mut self, word: usize, at_s: f64, speed: f64, share: f64, snr_db: f64) -> f64 {
        let mut x = self.speaker.play(&self.buttons[word].clip, speed);
        x.truncate((x.len() as f64 * share) as usize);
        let length_s = x.len() as f64 / RATE as f64;
        let at = (at_s * RATE as f64) as usize;
        let heard = convolve(&x, &self.board.0);
        let snr = snr_db + self.c.between(-1.5, 1.5);
        self.mix(&heard, at, snr);
        self.presses.push(Press {
            word: self.buttons[word].word.clone(),
            onset_s: (at + self.board.1) as f64 / RATE as f64,
            speed,
            cut_s: (share < 1.0).then_some(length_s),
        });
        length_s
    }

    /// Somebody says a button's word: the one who recorded it, or another, or a loudspeaker elsewhere.
    fn say(&mut self, word: usize, at_s: f64, source: &str, snr_db: f64) {
        let c = &mut self.c;
        let button = &self.buttons[word];
        let voice = if source == "person" || c.coin(0.5) { button.voice } else { Voice::draw(c) };
        let mut x = say(&button.sound, &voice, c);
        if source == "radio" {
            x = Loudspeaker::draw(Home::Flat, c).play(&x, 1.0);
        }
        let height = c.between(0.5, 1.7);
        let place = self.room.place(None, height, c);
        let (h, delay) = self.room.response(place, c);
        let at = (at_s * RATE as f64) as usize;
        let snr = snr_db.max(5.0) + c.between(-3.0, 3.0);
        self.mix(&convolve(&x, &h), at, snr);
        let onset_s = (at + delay) as f64 / RATE as f64;
        self.live.push(Live { word: button.word.clone(), onset_s, source: source.to_owned() });
    }

    /// A television is on in the room, nearly as loud as all else.
    fn television(&mut self) {
        let sound = programme(self.bed.len(), &mut self.c);
        let height = self.c.between(0.4, 1.4);
        let place = self.room.place(None, height, &mut self.c);
        let (h, _) = self.room.response(place, &mut self.c);
        let heard = convolve(&sound, &h);
        add(&mut self.scene, &heard, 0, TELEVISION / rms(&heard));
    }

    /// Somebody says a button's word every so many seconds, in the mean.
    fn talked(&mut self, every_s: f64) {
        let seconds = self.bed.len() as f64 / RATE as f64;
        let mut at = self.c.exponential(every_s);
        while at < seconds - 4.0 {
            let (word, snr) = (self.c.below(self.buttons.len()), self.c.between(5.0, 20.0));
            let source = ["person", "person", "radio"][self.c.below(3)];
            self.say(word, at, source, snr);
            at += 1.0 + self.c.exponential(every_s);
        }
    }

    fn end(mut self, home: Home, tired: Option<String>) -> Scene {
        let sum: Vec<f32> = self.bed.iter().zip(&self.scene).map(|(a, b)| a + b).collect();
        let microphone = Microphone::draw(home, &mut self.c);
        let samples = microphone.take(sum, &mut self.c);
        self.presses.sort_by(|a, b| a.onset_s.total_cmp(&b.onset_s));
        self.live.sort_by(|a, b| a.onset_s.total_cmp(&b.onset_s));
        Scene { samples, presses: self.presses, live: self.live, tired }
    }
}

/// Minutes in which buttons are pressed every few seconds, some again before they ended, some over another; people say
/// the words too. One button's battery runs down; or, where a speed is given, all play at it, each press within 0.15 % or so.
/// Levels are against the bed, whether a television is on or not.
pub(crate) fn busy(
    home: Home,
    television: bool,
    snr_db: f64,
    seconds: f64,
    buttons: &[Button],
    all_at: Option<f64>,
    c: Chance,
) -> Scene {
    let mut s = Stage::new(home, seconds, buttons, c);
    if television {
        s.television();
    }
    let speeds: Vec<f64> = buttons.iter().map(|_| s.c.between(0.975, 1.03)).collect();
    let tired = s.c.below(buttons.len());
    let speed = |s: &mut Stage, word: usize, at: f64| {
        let slowing = if word == tired { SLOWING * at / seconds } else { 0.0 };
        let scatter = 0.0015 * s.c.normal();
        all_at.map_or((speeds[word] - slowing + scatter).clamp(0.94, 1.04), |speed| speed + scatter)
    };
    let mut at = 1.0;
    while at < seconds - 7.0 {
        let word = s.c.below(buttons.len());
        let again = if s.c.coin(0.15) { 1 + s.c.below(2) } else { 0 };
        for k in 0..=again {
            let share = if k < again && s.c.coin(0.5) { s.c.between(0.45, 0.8) } else { 1.0 };
            let v = speed(&mut s, word, at);
            at += s.press(word, at, v, share, snr_db);
            at += if share < 1.0 { 0.0 } else { s.c.between(0.05, 0.6) };
        }
        match s.c.pick(&[0.1, 0.25, 0.15, 0.5]).unwrap_or(3) {
            0 if buttons.len() > 1 => {
                // Another button over the end of this one.
                let (other, early) = ((word + 1) % buttons.len(), s.c.between(0.2, 0.5));
                let v = speed(&mut s, other, at);
                s.press(other, at - early, v, 1.0, snr_db);
            }
            1 => {
                let pause = s.c.between(0.0, 0.4);
                s.say(word, at + pause, "person", snr_db);
                at += 1.2;
            }
            2 => {
                let (other, pause) = (s.c.below(buttons.len()), s.c.between(1.0, 1.6));
                let source = if s.c.coin(0.5) { "person" } else { "radio" };
                s.say(other, at + pause, source, snr_db);
                at += 2.8;
            }
            _ => {}
        }
        at += s.c.between(1.5, 7.0);
    }
    s.end(home, all_at.is_none().then(|| buttons[tired].word.clone()))
}

/// Seconds between people saying a button's word where none is pressed, in the mean.
const SAID_EVERY_S: f64 = 20.0;

/// A home without a press for so many seconds. Somebody says one of the buttons' words three times a minute.
pub(crate) fn quiet(home: Home, television: bool, seconds: f64, buttons: &[Button], c: Chance) -> Scene {
    let mut s = Stage::new(home, seconds, buttons, c);
    if television {
        s.television();
    }
    s.talked(SAID_EVERY_S);
    s.end(home, None)
}
