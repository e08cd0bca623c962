//! What the check of a recording found, in words, with what to do.

use crate::locale::Locale;
use crate::say;
use sayso_listen::{ClipReport, Finding};

/// What no measurement here tells: whether an animal can make the word out.
#[must_use]
pub fn make_it_out(l: &Locale) -> String {
    say!(l, recording::make_it_out, share = l.percent(0.30), live = l.percent(1.0))
}

/// What was measured, sentence by sentence. `others` is the number of recordings it was compared with.
#[must_use]
pub fn measured(l: &Locale, report: &ClipReport, others: usize) -> String {
    let tenths = |x: f64| l.number(x, 1);
    let mut said = vec![say!(l, recording::length, seconds = l.number(report.seconds, 2))];
    said.push(match (report.loudness_lufs, report.against_others) {
        (Some(lufs), Some(by)) if by < 0.0 => {
            say!(l, recording::loudness_under, lufs = tenths(lufs), by = tenths(-by), others = others)
        }
        (Some(lufs), Some(by)) => {
            say!(l, recording::loudness_over, lufs = tenths(lufs), by = tenths(by), others = others)
        }
        (Some(lufs), None) => say!(l, recording::loudness, lufs = tenths(lufs)),
        (None, _) => say!(l, recording::too_quiet),
    });
    said.push(say!(l, recording::peak, db = tenths(-report.peak_db)));
    said.push(say!(l, recording::contrast, db = l.number(report.contrast_db, 0)));
    if let Some((word, like)) = &report.most_like {
        said.push(say!(l, recording::most_like, word = word, like = l.number(*like, 2)));
    }
    said.join(" ")
}

/// One finding, with what to do about it.
#[must_use]
pub fn advice(l: &Locale, finding: &Finding) -> String {
    match finding {
        Finding::TooLong => say!(l, recording::too_long),
        Finding::TooShort => say!(l, recording::too_short),
        Finding::Clipped => say!(l, recording::clipped),
        Finding::Quieter => say!(l, recording::quieter),
        Finding::Louder => say!(l, recording::louder),
        Finding::Noisy => say!(l, recording::noisy),
        Finding::TooLike(other) => say!(l, recording::too_like, other = other),
        // A finding of a later listener.
        other => format!("{other:?}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use sayso_model::Language;

    const EN: Locale = Locale::ENGLISH;

    fn report() -> ClipReport {
        ClipReport {
            word: "ball".into(),
            seconds: 0.8,
            loudness_lufs: Some(-20.0),
            against_others: Some(7.5),
            peak_db: -3.0,
            clipped_share: 0.0,
            contrast_db: 31.0,
            most_like: Some(("walk".into(), 0.21)),
            findings: vec![Finding::Louder],
        }
    }

    #[test]
    fn a_comparison_says_with_how_many() {
        let said = measured(&EN, &report(), 4);
        assert!(said.contains("7.5 LU over the middle of the 4 others"), "{said}");
        assert!(measured(&EN, &report(), 1).contains("7.5 LU over the other one"));
        let german = measured(&Locale::of(Language::De), &report(), 4);
        assert!(german.contains("7,5 LU über der Mitte der 4 anderen"), "{german}");
        let alone = ClipReport { against_others: None, loudness_lufs: None, most_like: None, ..report() };
        assert!(measured(&EN, &alone, 0).contains("Too quiet") && !measured(&EN, &alone, 0).contains("other"));
    }

    #[test]
    fn a_recording_is_to_be_judged_by_ear_too() {
        let said = make_it_out(&EN);
        assert!(said.contains("from another room") && said.contains("30%") && said.contains("live voice"), "{said}");
    }

    #[test]
    fn a_loud_recording_comes_with_the_caution() {
        assert!(advice(&EN, &Finding::Louder).contains("frighten"));
        assert!(advice(&EN, &Finding::TooLike("walk".into())).contains("walk"));
    }
}
