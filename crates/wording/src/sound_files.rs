//! Why a sound file cannot be read, in words, with what to do.

use crate::locale::Locale;
use crate::say;
use sayso_listen::{ListenError, Undecodable};

/// What is wrong with a sound, with its file where that is known. Other errors of listening are English.
#[must_use]
pub fn unread(l: &Locale, error: &ListenError) -> String {
    match error {
        ListenError::Decode { name: Some(file), reason } => {
            say!(l, sound_files::named, file = file, why = because(l, reason))
        }
        ListenError::Decode { name: None, reason } => because(l, reason),
        other => other.to_string(),
    }
}

fn because(l: &Locale, reason: &Undecodable) -> String {
    let tenths = |s: f64| l.number(s, 1);
    match reason {
        Undecodable::Empty => say!(l, sound_files::empty),
        Undecodable::NoSound => say!(l, sound_files::no_sound),
        Undecodable::OtherFile(kind) => say!(l, sound_files::other_file, kind = *kind),
        Undecodable::Unknown => say!(l, sound_files::unknown),
        Undecodable::OtherSound(coding) => say!(l, sound_files::other_sound, coding = coding),
        Undecodable::CutShort { there_s, promised_s } => {
            say!(l, sound_files::cut_short, there = tenths(*there_s), promised = tenths(*promised_s))
        }
        Undecodable::PartMissing => say!(l, sound_files::part_missing),
        Undecodable::Damaged { after_s } => say!(l, sound_files::damaged, after = tenths(*after_s)),
        Undecodable::NoFormat => say!(l, sound_files::no_format),
        Undecodable::Changes => say!(l, sound_files::changes),
        // A reason of a later listener.
        other => other.to_string(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use sayso_model::Language;

    #[test]
    fn a_file_cut_short_tells_its_seconds_in_the_reader_s_language() {
        let reason = Undecodable::CutShort { there_s: 12.34, promised_s: 60.0 };
        let error = ListenError::Decode { name: Some("evening.wav".into()), reason };
        let said = unread(&Locale::ENGLISH, &error);
        assert!(said.starts_with("evening.wav: it is cut short: 12.3 s of 60.0 s are there"), "{said}");
        let german = unread(&Locale::of(Language::De), &error);
        assert!(german.contains("12,3 s von 60,0 s"), "{german}");
    }
}
