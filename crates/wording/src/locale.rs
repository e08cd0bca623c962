//! How one person reads: language, clock, unit of weight.

use sayso_model::{Clock, Language, PersonCard, WeightUnit};

/// Which way a language runs.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Direction {
    /// Left to right.
    Ltr,
    /// Right to left.
    Rtl,
}

impl Direction {
    /// The value of the `dir` attribute.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Ltr => "ltr",
            Self::Rtl => "rtl",
        }
    }
}

/// How one person reads.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub struct Locale {
    /// The language of the catalogue.
    pub language: Language,
    /// A stand-in that is English a third longer and right to left, for the tests of the layout; nobody's language.
    pub pseudo: bool,
    /// How the time of day is written.
    pub clock: Clock,
    /// The unit of an animal's weight.
    pub weight_unit: WeightUnit,
}

impl Locale {
    /// English, 24 hours, kilograms.
    pub const ENGLISH: Self = Self::of(Language::En);
    /// The stand-in.
    pub const PSEUDO: Self = Self { pseudo: true, ..Self::ENGLISH };

    /// As usual in a language: 24 hours and kilograms, which every one of these is read with somewhere.
    #[must_use]
    pub const fn of(language: Language) -> Self {
        Self { language, pseudo: false, clock: Clock::Hours24, weight_unit: WeightUnit::Kg }
    }

    /// As a person chose; what they left open is read from the `Accept-Language` header of their browser
    /// (RFC 9110, section 12.5.4): the language, and clock and unit by its region; else English, 24 hours, kilograms. Who chose another
    /// language than the browser's gets the clock of that language.
    #[must_use]
    pub fn chosen(person: Option<&PersonCard>, accept_language: Option<&str>) -> Self {
        let (guess, region) = accept_language.and_then(accepted).unwrap_or((Language::En, None));
        let browser = region.map_or(Self::of(guess), |region| Self::of(guess).in_region(region, guess));
        let usual = browser.in_language(person.and_then(|p| p.language).unwrap_or(guess));
        Self {
            clock: person.and_then(|p| p.clock).unwrap_or(usual.clock),
            weight_unit: person.and_then(|p| p.weight_unit).unwrap_or(usual.weight_unit),
            ..usual
        }
    }

    /// The same in a language that was chosen: another one brings its clock, the unit stays.
    #[must_use]
    pub fn in_language(self, language: Language) -> Self {
        if self.language == language { self } else { Self { language, clock: Self::of(language).clock, ..self } }
    }

    /// Clock and unit as a region writes them where people speak `spoken`; as usual in any other region.
    fn in_region(self, region: &str, spoken: Language) -> Self {
        let is = |one: &&str| one.eq_ignore_ascii_case(region);
        let twelve = TWELVE_HOURS.iter().any(&is) || spoken == Language::En && is(&"CA");
        Self {
            clock: if twelve { Clock::Hours12 } else { self.clock },
            weight_unit: if POUNDS.iter().any(is) { WeightUnit::Lb } else { self.weight_unit },
            ..self
        }
    }

    /// The BCP 47 tag for `lang`. The stand-in is English: a screen reader shall read it so.
    #[must_use]
    pub const fn tag(&self) -> &'static str {
        self.language.tag()
    }

    /// Which way it runs.
    #[must_use]
    pub const fn direction(&self) -> Direction {
        if self.pseudo { Direction::Rtl } else { Direction::Ltr }
    }

    /// The name of its client messages.
    #[must_use]
    pub const fn catalogue(&self) -> &'static str {
        if self.pseudo { "pseudo" } else { self.language.tag() }
    }

    /// A weight in the person's unit.
    #[must_use]
    pub fn weight(&self, kg: f64) -> String {
        let value = self.number(kg / self.weight_unit.in_kg(), 1);
        match self.weight_unit {
            WeightUnit::Kg => crate::say!(self, unit::kg, value = value),
            WeightUnit::Lb => crate::say!(self, unit::lb, value = value),
        }
    }
}

/// Regions that write twelve hours, and those that weigh in pounds (from memory of CLDR's supplemental data; a first guess, which a
/// person's card overrides).
const TWELVE_HOURS: [&str; 6] = ["US", "PR", "AU", "NZ", "IN", "PH"];
const POUNDS: [&str; 2] = ["US", "PR"];

/// The region of a tag such as `en-US` or `zh-Hant-TW`: two letters after the language (RFC 5646, section 2.2.4).
fn region(tag: &str) -> Option<&str> {
    tag.split('-').skip(1).take_while(|part| part.len() > 1).find(|part| part.len() == 2)
}

/// The first language of the header that the catalogues know, by its weight, and the region it comes with.
fn accepted(header: &str) -> Option<(Language, Option<&str>)> {
    let mut known: Vec<(f32, (Language, Option<&str>))> = header
        .split(',')
        .filter_map(|part| {
            let mut fields = part.split(';').map(str::trim);
            let tag = fields.next()?;
            let language = Language::of_tag(tag)?;
            let weight = fields.find_map(|f| f.strip_prefix("q=")).map_or(Some(1.0), |q| q.parse().ok())?;
            (weight > 0.0).then_some((weight, (language, region(tag))))
        })
        .collect();
    // Stable: of equal weight the one named first.
    known.sort_by(|a, b| b.0.total_cmp(&a.0));
    known.first().map(|k| k.1)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use sayso_model::{Label, PersonId, Role};

    #[test]
    fn the_browser_is_asked_first_and_the_person_has_the_last_word() {
        assert_eq!(Locale::chosen(None, None).language, Language::En);
        assert_eq!(Locale::chosen(None, Some("nl, fr-CH;q=0.8, de;q=0.9")).language, Language::De);
        assert_eq!(Locale::chosen(None, Some("de;q=0, x")).language, Language::En);
        assert_eq!(Locale::chosen(None, Some("pt;q=high")).language, Language::En);
        let mut card = PersonCard::new(
            "0197a1b2-0000-7000-8000-000000000001".parse::<PersonId>().unwrap(),
            Label::new("Ilda").unwrap(),
            Role::Home,
        );
        card.language = Some(Language::Es);
        card.weight_unit = Some(WeightUnit::Lb);
        let locale = Locale::chosen(Some(&card), Some("de"));
        assert_eq!((locale.language, locale.clock), (Language::Es, Clock::Hours24));
        assert_eq!(locale.weight(10.0), "22,0 lb");
    }

    #[test]
    fn clock_and_unit_are_guessed_by_the_region_and_chosen_by_the_person() {
        let read = |header| {
            let l = Locale::chosen(None, Some(header));
            (l.clock, l.weight_unit)
        };
        assert_eq!(read("en-US,en;q=0.9"), (Clock::Hours12, WeightUnit::Lb));
        assert_eq!(read("es-us"), (Clock::Hours12, WeightUnit::Lb));
        assert_eq!(read("en-AU"), (Clock::Hours12, WeightUnit::Kg));
        assert_eq!(read("en-CA"), (Clock::Hours12, WeightUnit::Kg));
        for header in ["en", "en-GB,en-US;q=0.9", "fr-CA", "de-DE,en-US;q=0.8", "nl-NL", "pt-BR"] {
            assert_eq!(read(header), (Clock::Hours24, WeightUnit::Kg), "{header}");
        }
        let id = "0197a1b2-0000-7000-8000-000000000001".parse::<PersonId>().unwrap();
        let mut card = PersonCard::new(id, Label::new("Ilda").unwrap(), Role::Home);
        (card.clock, card.weight_unit) = (Some(Clock::Hours24), Some(WeightUnit::Kg));
        let locale = Locale::chosen(Some(&card), Some("en-US"));
        assert_eq!((locale.clock, locale.weight_unit), (Clock::Hours24, WeightUnit::Kg));
        // A language that was chosen brings its clock, whatever the browser's region; one that was not, does not.
        (card.clock, card.language) = (None, Some(Language::De));
        assert_eq!(Locale::chosen(Some(&card), Some("en-US")).clock, Clock::Hours24);
        card.language = Some(Language::En);
        assert_eq!(Locale::chosen(Some(&card), Some("en-US")).clock, Clock::Hours12);
        (card.clock, card.language) = (Some(Clock::Hours12), Some(Language::De));
        assert_eq!(Locale::chosen(Some(&card), Some("en-US")).clock, Clock::Hours12);
    }
}
