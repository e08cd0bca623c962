//! The pairing code on the terminal.

use sayso_model::Moment;
use subtle::ConstantTimeEq;

/// How long a code is good for.
pub const GOOD_FOR_MINUTES: u32 = 15;

// Without letters and digits that are read for one another: 32 signs, 5 bits each.
const SIGNS: &[u8; 32] = b"ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
const LENGTH: usize = 10;

/// A random code of ten signs (50 bits), good for a quarter of an hour, for as many devices as are paired in it.
pub struct Code {
    signs: [u8; LENGTH],
    shown: String,
    until: Moment,
}

impl Code {
    /// A new one.
    pub fn new(now: Moment) -> std::io::Result<Self> {
        let mut signs = [0; LENGTH];
        getrandom::fill(&mut signs).map_err(std::io::Error::other)?;
        // 256 is a multiple of 32: no sign is likelier than another.
        for sign in &mut signs {
            *sign = SIGNS[usize::from(*sign) % SIGNS.len()];
        }
        let text: String = signs.iter().map(|s| char::from(*s)).collect();
        let shown = format!("{}-{}", &text[..LENGTH / 2], &text[LENGTH / 2..]);
        Ok(Self { signs, shown, until: now.plus_seconds(f64::from(GOOD_FOR_MINUTES) * 60.0) })
    }

    /// As it is shown.
    pub fn shown(&self) -> &str {
        &self.shown
    }

    /// Whether it is still good.
    pub fn good(&self, now: Moment) -> bool {
        now < self.until
    }

    /// Whether this was typed; small letters, blanks and dashes are forgiven. Takes the same time for every wrong code.
    pub fn is(&self, typed: &str) -> bool {
        let typed: Vec<u8> =
            typed.bytes().filter(u8::is_ascii_alphanumeric).map(|b| b.to_ascii_uppercase()).take(LENGTH + 1).collect();
        typed.ct_eq(&self.signs).into()
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_code_is_known_as_typed_by_a_person_and_only_for_its_time() {
        let now = Moment::clamped(1_800_000_000_000);
        let code = Code::new(now).unwrap();
        assert_eq!(code.shown().len(), LENGTH + 1);
        assert!(code.is(code.shown()));
        assert!(code.is(&code.shown().to_lowercase().replace('-', " ")));
        assert!(!code.is(&code.shown()[1..]));
        assert!(!code.is(&format!("{}A", code.shown())));
        assert!(!code.is(""));
        assert!(code.good(now.plus_seconds(899.0)) && !code.good(now.plus_seconds(900.0)));
    }

    #[test]
    fn codes_differ() {
        let now = Moment::clamped(1_800_000_000_000);
        assert_ne!(Code::new(now).unwrap().shown(), Code::new(now).unwrap().shown());
    }
}
