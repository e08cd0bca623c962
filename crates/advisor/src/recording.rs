//! What the check of a recording found, in words, with what to do.

use sayso_listen::{ClipReport, Finding};

/// What no measurement here tells: whether an animal can make the word out.
pub const MAKE_IT_OUT: &str = "Listen for yourself: play it on its button from another room. If you would not take it for your live voice and know the word at once, record it again, close to the microphone, clear and soft. Recorded words may be hard to make out: family dogs answered about 30 % of trained cues from recorded-word buttons, near 100 % from a live voice (17 dogs; Higaki 2025, figures from a press text). Go on saying the word live as well.";

/// What was measured, in one line. `others` is the number of recordings it was compared with.
#[must_use]
pub fn measured(report: &ClipReport, others: usize) -> String {
    let mut said = vec![format!("{:.2} s long", report.seconds)];
    match (report.loudness_lufs, report.against_others) {
        (Some(l), Some(d)) => said.push(format!(
            "loudness {l:.1} LUFS, {:.1} LU {} the middle of the others (n = {others})",
            d.abs(),
            if d < 0.0 { "under" } else { "over" }
        )),
        (Some(l), None) => said.push(format!("loudness {l:.1} LUFS")),
        (None, _) => said.push("too quiet for its loudness to be measured".to_owned()),
    }
    said.push(format!("highest point {:.1} dB under full scale", -report.peak_db));
    said.push(format!("its loud parts {:.0} dB over its quiet ones", report.contrast_db));
    if let Some((word, like)) = &report.most_like {
        said.push(format!("most like \u{201c}{word}\u{201d} ({like:.2} on a scale from 0 to 1)"));
    }
    said.join("; ")
}

/// One finding, with what to do about it.
#[must_use]
pub fn advice(finding: &Finding) -> String {
    match finding {
        Finding::TooLong => {
            "Longer than 3 s: record the one word alone, without a long pause (common practice, no source).".to_owned()
        }
        Finding::TooShort => {
            "Shorter than 0.3 s: say the whole word, a little slower; so short a sound is hard to tell from others \
             (common practice, no source)."
                .to_owned()
        }
        Finding::Clipped => "Clipped, that is recorded too loud: hold the recorder farther away or speak more softly, \
                             and record it again."
            .to_owned(),
        Finding::Quieter => {
            "More than 6 LU quieter than the others: record it again somewhat nearer, as loud as the others.".to_owned()
        }
        Finding::Louder => "More than 6 LU louder than the others: a sudden loud sound close to the ear can frighten \
                            or harm. Record it again more softly before the animal hears it."
            .to_owned(),
        Finding::Noisy => {
            "Noise in the background, or no pause at its ends: record it again in a quiet room.".to_owned()
        }
        Finding::TooLike(other) => format!(
            "Nearly the same sound as \u{201c}{other}\u{201d}: presses of the two may be mistaken for each other. \
             Check that the right file was taken, or record one of them in another voice."
        ),
        _ => format!("{finding:?}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

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
        assert!(measured(&report(), 4).contains("7.5 LU over the middle of the others (n = 4)"));
        let alone = ClipReport { against_others: None, loudness_lufs: None, most_like: None, ..report() };
        assert!(measured(&alone, 0).contains("too quiet") && !measured(&alone, 0).contains("n ="));
    }

    #[test]
    fn a_recording_is_to_be_judged_by_ear_too() {
        assert!(
            MAKE_IT_OUT.contains("from another room")
                && MAKE_IT_OUT.contains("30 %")
                && MAKE_IT_OUT.contains("live voice")
        );
    }

    #[test]
    fn a_loud_recording_comes_with_the_caution() {
        assert!(advice(&Finding::Louder).contains("frighten"));
        assert!(advice(&Finding::TooLike("walk".into())).contains("walk"));
    }
}
