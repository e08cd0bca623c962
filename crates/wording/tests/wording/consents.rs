//! What a home was once asked keeps its words.

use sayso_model::{Consent, ConsentPurpose, Language};
use sayso_wording::Locale;
use sayso_wording::consents::asked;

#[test]
fn every_version_of_every_purpose_keeps_its_words_in_every_language() {
    for language in Language::ALL {
        let locale = Locale::of(language);
        for purpose in ConsentPurpose::ALL {
            for version in 1..=Consent::WORDS {
                assert!(asked(&locale, *purpose, version, "Ilda").is_some(), "{purpose:?} {version}");
            }
            assert!(asked(&locale, *purpose, Consent::WORDS + 1, "Ilda").is_none(), "raise Consent::WORDS");
        }
    }
}
