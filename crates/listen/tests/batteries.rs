//! Tired batteries on simulated households with known truth, over thousands of stretches of sound.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use sayso_listen::{Detection, tired_batteries};

/// A small repeatable source of chance (xorshift).
struct Chance(u64);

impl Chance {
    fn uniform(&mut self) -> f64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }

    fn normal(&mut self) -> f64 {
        (-2.0 * (self.uniform() + 1e-18).ln()).sqrt() * (std::f64::consts::TAU * self.uniform()).cos()
    }

    /// Student's t of four degrees of freedom, scaled to unit variance.
    fn heavy(&mut self) -> f64 {
        let chi: f64 = (0..4).map(|_| self.normal().powi(2)).sum();
        self.normal() / (chi / 4.0).sqrt() / 2f64.sqrt()
    }
}

/// How a household's buttons are.
#[derive(Clone, Copy)]
struct Kind {
    spread: f64,
    heavy: bool,
    wrong: f64,
    drift: f64,
}

/// Three minutes of 3 to 20 buttons, each pressed 1 to 8 times on average; button 0 slows by 3.5 % if `tired`.
fn stretch(chance: &mut Chance, kind: Kind, tired: bool) -> (Vec<Detection>, usize) {
    let words = 3 + (chance.uniform() * 18.0) as usize;
    let rate = 1.0 + 7.0 * chance.uniform();
    let (mut heard, mut of_tired) = (Vec::new(), 0);
    for w in 0..words {
        let (base, drift) = (0.97 + 0.06 * chance.uniform(), kind.drift * chance.normal());
        let mut t = 360.0 / rate * chance.uniform();
        while t < 180.0 {
            let noise = if kind.heavy { chance.heavy() } else { chance.normal() };
            let slowing = if tired && w == 0 { 0.035 } else { drift };
            let wrong = chance.uniform() < kind.wrong;
            let speed =
                if wrong { 0.94 + 0.12 * chance.uniform() } else { base - slowing * t / 180.0 + kind.spread * noise };
            let confidence = 1.0 - 0.05 * chance.uniform().powi(4);
            heard.push(Detection {
                word: format!("word {w}"),
                onset_s: t,
                confidence,
                speed,
                level_db: -20.0,
                share: 1.0,
            });
            of_tired += usize::from(w == 0);
            t -= (1.0 - chance.uniform()).ln() * 180.0 / rate;
        }
    }
    (heard, of_tired)
}

/// Of so many stretches each: healthy ones in which anything is named; with a tired button, those in which a healthy one
/// is named, in which the tired one is, and in which it was pressed twice at least.
fn count(kind: Kind, stretches: usize) -> [usize; 4] {
    let mut chance = Chance(0x5EED_0001);
    let mut counts = [0; 4];
    for _ in 0..stretches {
        let (heard, _) = stretch(&mut chance, kind, false);
        counts[0] += usize::from(!tired_batteries(&heard).is_empty());
        let (heard, presses) = stretch(&mut chance, kind, true);
        let named = tired_batteries(&heard);
        counts[1] += usize::from(named.iter().any(|t| t.word != "word 0"));
        counts[2] += usize::from(named.iter().any(|t| t.word == "word 0"));
        counts[3] += usize::from(presses >= 2);
    }
    counts
}

#[test]
fn healthy_buttons_stay_unnamed_and_most_tired_ones_are_named() {
    // Over 2 000 of each kind of stretch there were 0 and 1 such in normal noise, 8 to 14 with heavy tails.
    let n = 600;
    let usual = Kind { spread: 0.002, heavy: false, wrong: 0.0, drift: 0.0 };
    let [none, other, _, _] = count(usual, n);
    assert!(none <= 2 && other <= 2, "normal noise: {none} and {other} of {n}");
    let [none, other, _, _] = count(Kind { heavy: true, wrong: 0.001, drift: 0.0015, ..usual }, n);
    assert!(none <= 10 && other <= 10, "heavy tails: {none} and {other} of {n}");
    let [_, _, named, twice] = count(Kind { spread: 0.0015, wrong: 0.001, drift: 0.0005, ..usual }, n);
    assert!(named as f64 >= 0.75 * twice as f64, "{named} of {twice}");
}
