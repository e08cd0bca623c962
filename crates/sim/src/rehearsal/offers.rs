//! What the animal makes of what it is given, offered or shown to choose from.

use super::animal::{Animal, Given, Held, Offered, Place};
use super::exercise::WAIT_S;
use super::luck::Of;
use super::mind::ms;
use super::pairing::{Answers, Pairing};
use super::room::at_button;
use super::thing::Thing;
use super::told::What;

/// Milliseconds in which it comes for one of two things, or does not.
const CHOOSES_MS: u32 = 9_000;
/// Log-odds by which it favours its left side, and of choosing neither of two.
const SIDE: f64 = 0.15;
const NEITHER: f64 = -1.5;

impl Animal {
    /// Takes what lies there, or not.
    pub fn takes(&mut self) {
        if self.busy_with.is_some() && self.now >= self.busy_until {
            let with = self.busy_with.take();
            if let Some(thing) = with {
                self.tell(What::Finished(thing));
            }
        }
        let now = self.now;
        let back = |g: &mut Given| g.fetched_ms.take_if(|at| now >= *at).map(|_| g.thing);
        let fetched: Vec<Thing> = self.given.iter_mut().filter_map(back).collect();
        for thing in fetched {
            self.tell(What::Fetched(thing));
        }
        // What lies there waits until it is done with the last.
        let Some(place) = self.given.iter().position(|g| now >= g.at_ms && now >= self.busy_until) else { return };
        let Given { thing, answers, .. } = self.given.remove(place);
        let takes = self.place == Place::Board && !self.leaving && self.mind.takes(thing, self.now);
        if takes {
            self.tell(What::Took(thing));
            self.enjoys(thing, 0.25);
            self.strain = (self.strain - 0.06).max(0.0);
            self.mind.wants_anew(self.now, thing.lasts_s());
        } else {
            self.tell(What::Ignored(thing));
            self.interest -= 0.03;
        }
        let Some((pressed, delay_s, answers, shown)) = answers else { return };
        let came = answers.came(pressed, thing, takes);
        let share = if self.shies_from(pressed) { 0.2 } else { 1.0 };
        self.mind.learns(Pairing {
            share,
            gap_s: shown.map_or(f64::INFINITY, |showing| showing.gap_s),
            ..Pairing::of(pressed, shown.map_or(came, |showing| showing.came(came)), delay_s)
        });
        if answers != Answers::Showing {
            self.mind.paid(pressed, if pressed == thing { 1.04 } else { 0.97 });
        }
    }

    /// It has a thing and is busy with it; so much interest is won.
    pub fn enjoys(&mut self, thing: Thing, interest: f64) {
        self.mind.has(thing);
        self.busy_until = self.now + ms(thing.lasts_s());
        self.busy_with = Some(thing);
        self.interest = (self.interest + interest).min(1.0);
    }

    /// An invitation waits.
    pub fn waits(&mut self) {
        let Some(offered) = self.offered else { return };
        if let Some((_, pressed)) = offered.press.filter(|(at, _)| self.now >= *at)
            && self.is_there()
        {
            self.offered = None;
            self.presses(pressed);
        } else if self.now >= offered.until_ms {
            self.offered = None;
            self.tell(What::WaitOver(offered.thing));
        }
    }

    /// Chooses between two things by Luce's rule, neither among the choices, with a small favour for its left.
    pub fn chooses(&mut self) {
        let Some(held) = self.held else { return };
        let there = self.is_there() && self.now >= self.busy_until;
        if self.now >= held.at_ms && there {
            self.held = None;
            let weight = |thing: Thing, side: f64| (self.mind.appeal(thing) + side).exp();
            let weights = [weight(held.left, SIDE), weight(held.right, -SIDE), NEITHER.exp()];
            match self.mind.luck.of(Of::Chooses, self.now).pick(&weights) {
                Some(side) if side < 2 => self.chose(if side == 0 { held.left } else { held.right }),
                _ => self.tell(What::ChoseNone),
            }
        } else if self.now >= held.until_ms {
            self.held = None;
            self.tell(What::ChoseNone);
        }
    }

    fn chose(&mut self, thing: Thing) {
        self.tell(What::Chose(thing));
        self.enjoys(thing, 0.2);
    }

    /// Two things are held out to it.
    pub fn is_held_out(&mut self, left: Thing, right: Thing) {
        let latency = self.traits().latency_s;
        let after = self.mind.luck.of(Of::Offers, self.now).lognormal(latency, 0.4).clamp(0.8, 6.0);
        let at_ms = self.now + ms(after);
        self.held = Some(Held { left, right, at_ms, until_ms: self.now + CHOOSES_MS });
        self.tell(What::Held(left, right));
    }

    pub fn presses(&mut self, thing: Thing) {
        self.first_ms = None;
        self.walks(at_button(thing), Place::Board);
        self.tell(What::Pressed(thing));
        self.own = Some((thing, self.now));
    }

    /// What it does when something is offered: presses by and by, or does not. Nothing waits for one that has left.
    pub fn is_offered(&mut self, thing: Thing) {
        if self.has_left() {
            return;
        }
        let t = self.traits();
        let mut c = self.mind.luck.of(Of::Offers, self.now);
        let wants = c.coin(crate::chance::logistic(self.mind.appeal(thing) + 1.0));
        let knows = if t.means { self.mind.understands(thing) } else { 0.4 };
        let understood = c.coin(knows);
        let after = c.lognormal(t.latency_s, 0.4).clamp(0.5, 20.0);
        let pressed = self.mind.aims(thing, self.now);
        let nears = !self.shies_from(pressed);
        let press = (wants && understood && nears).then(|| (self.now + ms(after), pressed));
        self.offered = Some(Offered { thing, until_ms: self.now + ms(WAIT_S), press });
    }
}
