//! Sourced facts of the trade, embedded: body language, hazards, practice, ideas to try, how kinds of reward are given, and
//! lessons.
//! A species is one entry in each file. Texts here are English, for programs; people read the messages that `wording` has
//! for each id, in their language.

mod giving;
mod ideas;
mod lessons;

pub use giving::{Giving, given_at_board, giving, held_up};
pub use ideas::{Care, Idea, idea, ideas};
pub use lessons::{Lesson, LessonFact, Occasion, Question, ReadAs, lesson, lesson_facts, lessons, lessons_for};

use crate::species::Species;
use crate::text::unaccented;
use crate::units::Seconds;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::OnceLock;

/// Rewards take at most this share of the day's energy (WSAVA and AAHA recommendation, as stated in Vet Sci 2025;12:282).
pub const MOST_REWARD_SHARE: f64 = 0.1;

/// Wait before showing it yourself (common practice, no source; constant time delay of 3 to 5 s is usual in teaching
/// people: two special-education pages, by what others tell).
pub const WAIT: Seconds = Seconds::clamped(5.0);

/// What a sign may tell that is not over with the day.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Tells {
    /// A growl, snap or bite; a hiss, swat or lunge.
    Threat,
    /// Guarding food, a thing or the button.
    Guarding,
    /// Swallowing something that is no food.
    Swallowing,
}

/// One sign of body language.
#[derive(Clone, PartialEq, Eq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SignFact {
    /// Its short name; the same sign has the same in every species.
    pub id: String,
    /// Species it is seen in.
    pub species: Species,
    /// What is seen. The log holds this text, whatever the language of who noted it.
    pub sign: String,
    /// `joining` or `stress`.
    pub kind: String,
    /// `mild`, `strong` or `-`.
    pub level: String,
    /// The short name of what to do.
    pub act_id: String,
    /// What to do.
    #[serde(rename = "do")]
    pub act: String,
    /// Where the fact comes from.
    pub source: String,
    /// What it tells beyond the day, if anything.
    #[serde(default)]
    pub tells: Option<Tells>,
}

/// As what something is dangerous.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum GivenAs {
    /// To eat.
    Food,
    /// To play with or chew.
    Thing,
}

fn as_food() -> Vec<GivenAs> {
    vec![GivenAs::Food]
}

/// One dangerous food, or thing to play with or chew.
#[derive(Clone, PartialEq, Eq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FoodHazard {
    /// Its short name.
    pub id: String,
    /// What, with its other names.
    pub item: String,
    /// As what it is given.
    #[serde(default = "as_food", rename = "as")]
    pub given_as: Vec<GivenAs>,
    /// Whom it harms.
    pub species: Vec<Species>,
    /// `never`, `avoid` or `little`.
    pub level: String,
    /// What it does.
    pub why: String,
    /// Where the fact comes from.
    pub source: String,
    /// How well sourced it is.
    pub status: String,
}

/// One danger that is no food.
#[derive(Clone, PartialEq, Eq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct OtherHazard {
    /// Its short name.
    pub id: String,
    /// What.
    pub hazard: String,
    /// What it does.
    pub why: String,
    /// What to do.
    pub act: String,
    /// Where the fact comes from.
    pub source: String,
    /// How well sourced it is.
    pub status: String,
}

/// One habit of the trade.
#[derive(Clone, PartialEq, Eq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Practice {
    /// Its short name.
    pub id: String,
    /// What.
    pub practice: String,
    /// How much.
    pub value: String,
    /// Where it comes from.
    pub source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SignFile {
    signs: Vec<SignFact>,
    words: BTreeMap<Tells, Vec<String>>,
    note: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct HazardFile {
    foods: Vec<FoodHazard>,
    others: Vec<OtherHazard>,
    note: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct PracticeFile {
    practice: Vec<Practice>,
}

/// A facts file compiled in. One that does not parse must never read as "no hazards": the program stops, naming it.
///
/// # Panics
/// Where the file this program was built with is no such file; the tests hold that none is.
#[allow(clippy::panic)]
fn parsed<T: serde::de::DeserializeOwned>(name: &str, json: &str) -> T {
    match serde_json::from_str(json) {
        Ok(file) => file,
        Err(why) => panic!("the facts file {name} this program was built with cannot be read: {why}"),
    }
}

fn sign_file() -> &'static SignFile {
    static FILE: OnceLock<SignFile> = OnceLock::new();
    FILE.get_or_init(|| parsed("body_language.json", include_str!("../facts/body_language.json")))
}

fn hazard_file() -> &'static HazardFile {
    static FILE: OnceLock<HazardFile> = OnceLock::new();
    FILE.get_or_init(|| parsed("hazards.json", include_str!("../facts/hazards.json")))
}

fn practice_file() -> &'static PracticeFile {
    static FILE: OnceLock<PracticeFile> = OnceLock::new();
    FILE.get_or_init(|| parsed("practice.json", include_str!("../facts/practice.json")))
}

/// Body language of one species.
#[must_use]
pub fn signs(species: Species) -> Vec<&'static SignFact> {
    sign_file().signs.iter().filter(|s| s.species == species).collect()
}

/// The sign of the list that was noted, if it was one of the list.
#[must_use]
pub fn known_sign(noted: &str) -> Option<&'static SignFact> {
    sign_file().signs.iter().find(|s| s.sign == noted)
}

/// Every sign of every species.
#[must_use]
pub fn all_signs() -> &'static [SignFact] {
    &sign_file().signs
}

/// What a sign tells beyond the day: by the list of signs, else by words in it, for people also write in words of their own.
#[must_use]
pub fn tells(sign: &str) -> Option<Tells> {
    if let Some(known) = known_sign(sign) {
        return known.tells;
    }
    let sign = unaccented(sign);
    let said = |words: &Vec<String>| words.iter().any(|w| sign.contains(&unaccented(w)));
    sign_file().words.iter().find(|(_, words)| said(words)).map(|(tells, _)| *tells)
}

/// How far signs can be trusted.
#[must_use]
pub fn signs_note() -> &'static str {
    &sign_file().note
}

/// Foods dangerous to one species.
#[must_use]
pub fn food_hazards(species: Species) -> Vec<&'static FoodHazard> {
    hazard_file().foods.iter().filter(|f| f.species.contains(&species)).collect()
}

/// Every food hazard of every species, with what is dangerous to play with or chew.
#[must_use]
pub fn all_food_hazards() -> &'static [FoodHazard] {
    &hazard_file().foods
}

/// Dangers that are no food.
#[must_use]
pub fn other_hazards() -> &'static [OtherHazard] {
    &hazard_file().others
}

/// How far the hazards list can be trusted.
#[must_use]
pub fn hazards_note() -> &'static str {
    &hazard_file().note
}

/// Habits of the trade.
#[must_use]
pub fn practice() -> &'static [Practice] {
    &practice_file().practice
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_facts_file_parses_and_is_not_empty() {
        assert!(!sign_file().signs.is_empty());
        assert!(!hazard_file().foods.is_empty() && !hazard_file().others.is_empty());
        assert!(!practice().is_empty());
        for species in [Species::Dog, Species::Cat, Species::Parrot, Species::Rabbit] {
            assert!(signs(species).iter().any(|s| s.level == "strong"), "{species:?}");
            assert!(!food_hazards(species).is_empty(), "{species:?}");
        }
    }

    fn sources(of: &[&str]) -> String {
        let signs = sign_file().signs.iter().map(|s| (&s.sign, &s.source));
        let foods = all_food_hazards().iter().map(|f| (&f.item, &f.source));
        let all: Vec<_> = signs.chain(foods).filter(|(what, _)| of.iter().any(|o| what.contains(o))).collect();
        assert!(!all.is_empty(), "{of:?}");
        all.into_iter().map(|(_, source)| source.as_str()).collect::<Vec<_>>().join("; ")
    }

    #[test]
    fn a_score_is_not_cited_for_signs_it_does_not_list() {
        // Kessler & Turner's table has neither; raised feathers alone go with calm company too.
        assert!(sources(&["skin ripples"]).contains("no source"));
        assert!(sources(&["pupils pin"]).contains("Bertin"));
        assert!(sign_file().signs.iter().any(|s| s.sign.contains("raised nape and a stiff, upright body")));
        assert!(sources(&["tail tip flicks"]).contains("Kessler"));
    }

    #[test]
    fn hearing_is_told_by_species() {
        let loud = other_hazards().iter().find(|h| h.hazard.contains("loud replay")).map(|h| h.why.as_str());
        let loud = loud.unwrap_or_default();
        for range in ["cats from about 48 Hz to 85 kHz at 70 dB", "Budgerigars hear less", "96 Hz to 49 kHz"] {
            assert!(loud.contains(range), "{range}: {loud}");
        }
    }

    #[test]
    fn a_threat_is_read_in_every_language_people_write_in() {
        use Tells::{Guarding, Swallowing, Threat};
        for (noted, tells_of) in [
            ("She growled at me", Some(Threat)),
            ("gruñó", Some(Threat)),
            ("me ha gruñido; GRUNIDO", Some(Threat)),
            ("lanzó un zarpazo", Some(Threat)),
            ("hat zugebissen", Some(Threat)),
            ("Biss in die Hand", Some(Threat)),
            ("il a grondé", Some(Threat)),
            ("coup de griffe", Some(Threat)),
            ("rosnou", Some(Threat)),
            ("bufou", Some(Threat)),
            ("verteidigt den Napf", Some(Guarding)),
            ("protège sa gamelle", Some(Guarding)),
            ("se tragó un botón", Some(Swallowing)),
            ("hat einen Knopf geschluckt", Some(Swallowing)),
            ("a avalé une pile", Some(Swallowing)),
            ("engoliu uma pilha", Some(Swallowing)),
            ("ein bisschen müde", None),
            ("mueve la cola", None),
            ("se couche", None),
        ] {
            assert_eq!(tells(noted), tells_of, "{noted}");
        }
    }

    #[test]
    fn every_fact_has_a_short_name_of_its_own() {
        let foods = all_food_hazards().iter().map(|f| &f.id);
        let ids: Vec<&String> = foods.chain(other_hazards().iter().map(|o| &o.id)).collect();
        let practice: Vec<&String> = practice().iter().map(|p| &p.id).collect();
        for ids in [ids, practice] {
            assert_eq!(ids.iter().collect::<std::collections::BTreeSet<_>>().len(), ids.len(), "{ids:?}");
        }
        for (a, b) in all_signs().iter().flat_map(|a| all_signs().iter().map(move |b| (a, b))) {
            assert_eq!(a.id == b.id, a.sign == b.sign, "{} {}", a.sign, b.sign);
            assert_eq!(a.act_id == b.act_id, a.act == b.act, "{} {}", a.act, b.act);
        }
    }

    #[test]
    fn a_battery_in_a_child_is_named_beside_one_in_an_animal() {
        let child = other_hazards().iter().find(|h| h.hazard.contains("child"));
        assert!(child.is_some_and(|h| h.act.contains("emergency department at once")));
        assert!(other_hazards().iter().any(|h| h.hazard.contains("battery") && h.act.contains("veterinarian")));
    }

    #[test]
    fn food_hazards_follow_their_sources() {
        let of = |species, item: &str| {
            food_hazards(species)
                .into_iter()
                .find(|f| f.item.contains(item))
                .map(|f| (f.level.as_str(), f.why.as_str()))
        };
        assert!(of(Species::Parrot, "xylitol").is_some_and(|(level, _)| level == "never"));
        assert!(
            of(Species::Dog, "xylitol").is_some_and(|(_, why)| why.contains("0.1 g/kg") && why.contains("0.5 g/kg"))
        );
        // A trial found no harm where popular pages say "deadly": kept off the table without alarm.
        assert!(
            of(Species::Cat, "xylitol")
                .is_some_and(|(level, why)| level == "avoid" && why.contains("no cause for alarm"))
        );
        assert!(of(Species::Cat, "onion").is_some_and(|(_, why)| why.contains("secondary")));
        assert!(of(Species::Dog, "apple seeds").is_some_and(|(level, _)| level == "avoid"));
        for listed in ["cream of tartar", "tamarind", "hops", "nutmeg", "mouldy food", "black walnut"] {
            assert!(of(Species::Dog, listed).is_some(), "{listed}");
        }
        assert!(sources(&["nutmeg"]).contains("no primary source"));
    }

    #[test]
    fn habits_of_the_trade_say_how_far_they_are_known() {
        let of = |what: &str| practice().iter().find(|p| p.practice.contains(what));
        assert!(
            of("too many requests")
                .is_some_and(|p| p.value.contains("may come first (24%") && p.value.contains("240 s"))
        );
        assert!(of("mastery").is_some_and(|p| p.value.contains("keep checking")));
        assert!(of("hard to make out").is_some_and(|p| p.value.contains("30%") && p.source.contains("secondary")));
    }

    #[test]
    #[should_panic(expected = "hazards.json")]
    fn a_facts_file_that_does_not_parse_stops_the_program() {
        parsed::<HazardFile>("hazards.json", "{\"foods\": [], \"others\": []");
    }

    #[test]
    fn levels_are_the_known_ones() {
        assert!(sign_file().signs.iter().all(|s| ["mild", "strong", "-"].contains(&s.level.as_str())));
        assert!(all_food_hazards().iter().all(|f| ["never", "avoid", "little"].contains(&f.level.as_str())));
    }
}
