//! Why a sound file cannot be read, in words, with what to do.

use crate::locale::Locale;
use crate::message::Message;
use crate::say;
use sayso_listen::Undecodable;

impl Message for Undecodable {
    fn say(&self, l: &Locale) -> String {
        let tenths = |s: f64| l.number(s, 1);
        match self {
            Self::Empty => say!(l, sound_files::empty),
            Self::NoSound => say!(l, sound_files::no_sound),
            Self::OtherFile(kind) => say!(l, sound_files::other_file, kind = *kind),
            Self::Unknown => say!(l, sound_files::unknown),
            Self::OtherSound(coding) => say!(l, sound_files::other_sound, coding = coding),
            Self::CutShort { there_s, promised_s } => {
                say!(l, sound_files::cut_short, there = tenths(*there_s), promised = tenths(*promised_s))
            }
            Self::PartMissing => say!(l, sound_files::part_missing),
            Self::Damaged { after_s } => say!(l, sound_files::damaged, after = tenths(*after_s)),
            Self::NoFormat => say!(l, sound_files::no_format),
            Self::Changes => say!(l, sound_files::changes),
            // A reason of a later listener.
            other => other.to_string(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use sayso_listen::ListenError;
    use sayso_model::Language;

    #[test]
    fn a_file_cut_short_tells_its_seconds_in_the_reader_s_language() {
        let reason = Undecodable::CutShort { there_s: 12.34, promised_s: 60.0 };
        let error = ListenError::Decode { name: Some("evening.wav".into()), reason };
        let said = error.say(&Locale::ENGLISH);
        assert!(said.starts_with("evening.wav: it is cut short: 12.3 s of 60.0 s are there"), "{said}");
        let german = error.say(&Locale::of(Language::De));
        assert!(german.contains("12,3 s von 60,0 s"), "{german}");
    }
}
