//! What the invented homes of a club, their people, their animals and their things are called.

use sayso_model::RewardKind::{self, Exploring, Food, Play, Rest, Touch};
use sayso_model::Species;

/// The first half of a home's name.
pub(super) const WHERE: [&str; 10] =
    ["Alder", "Brook", "Clover", "Dune", "Elm", "Fern", "Gorse", "Hazel", "Linden", "Meadow"];
/// The second half of it.
pub(super) const WHAT: [&str; 8] = ["Row", "Yard", "End", "Loft", "Court", "Steps", "Corner", "Rise"];

/// Animals.
pub(super) const ANIMALS: [&str; 48] = [
    "Amble", "Bixie", "Brindle", "Burdock", "Caraway", "Chervil", "Cricket", "Dapple", "Dibble", "Dorrit", "Ember",
    "Fidget", "Flint", "Gambol", "Gimlet", "Hobnail", "Jasper", "Juniper", "Kestrel", "Larkin", "Lovage", "Marl",
    "Mistle", "Nettle", "Nimbus", "Oriel", "Osier", "Pebble", "Pippin", "Plover", "Quince", "Rowan", "Rumple", "Sedge",
    "Sorrel", "Tansy", "Teasel", "Thistle", "Tumble", "Umber", "Vetch", "Wattle", "Whisk", "Willet", "Yarrow",
    "Zephyr", "Bracken", "Cobble",
];

/// People.
pub(super) const PEOPLE: [&str; 24] = [
    "Ada", "Bela", "Carlo", "Dita", "Enno", "Faro", "Gesa", "Hanno", "Ines", "Jori", "Kaja", "Leto", "Mira", "Nilo",
    "Orla", "Pavo", "Runa", "Sina", "Tilo", "Ulla", "Veit", "Wanda", "Yara", "Zeno",
];

/// Where they live.
pub(super) const ZONES: [&str; 10] = [
    "Europe/Lisbon",
    "Europe/Berlin",
    "Europe/Paris",
    "Europe/Madrid",
    "America/Sao_Paulo",
    "America/Mexico_City",
    "America/Toronto",
    "Africa/Nairobi",
    "Asia/Kolkata",
    "Pacific/Auckland",
];

/// A thing, and the word for it.
pub(super) struct Thing {
    pub(super) says: &'static str,
    pub(super) name: &'static str,
    pub(super) kind: RewardKind,
    /// Energy and weight of one piece of food.
    pub(super) food: Option<(f64, f64)>,
    /// Seconds one delivery takes.
    pub(super) seconds: f64,
}

const fn thing(says: &'static str, name: &'static str, kind: RewardKind, seconds: f64) -> Thing {
    Thing { says, name, kind, food: None, seconds }
}

const fn food(says: &'static str, name: &'static str, kcal: f64, grams: f64) -> Thing {
    Thing { says, name, kind: Food, food: Some((kcal, grams)), seconds: 5.0 }
}

/// Eight things of a species. Invented: energy and weights are only of the right size.
pub(super) const fn things(species: Species) -> [Thing; 8] {
    match species {
        Species::Dog => [
            thing("outside", "going into the yard", Exploring, 60.0),
            food("snack", "a piece of kibble", 3.0, 1.0),
            thing("tug", "tug with the rope", Play, 45.0),
            thing("rub", "a chest rub", Touch, 20.0),
            thing("sniff", "a scent hunt in a towel", Exploring, 90.0),
            thing("fetch", "throwing the ring", Play, 40.0),
            thing("walk", "once around the block", Exploring, 600.0),
            thing("bed", "settling on the bed", Rest, 30.0),
        ],
        Species::Cat => [
            thing("wand", "the feather wand", Play, 60.0),
            food("snack", "a bit of dried fish", 1.5, 0.5),
            thing("window", "the window seat", Exploring, 30.0),
            thing("brush", "being brushed", Touch, 45.0),
            thing("tunnel", "the paper tunnel", Exploring, 40.0),
            thing("chase", "rolling a cork", Play, 40.0),
            thing("stairs", "the stairwell", Exploring, 120.0),
            thing("blanket", "the warm blanket", Rest, 20.0),
        ],
        Species::Parrot => [
            food("seed", "a safflower seed", 0.3, 0.05),
            thing("scratch", "a scratch on the neck", Touch, 20.0),
            thing("mist", "a fine mist of water", Play, 30.0),
            thing("shred", "paper to shred", Play, 60.0),
            thing("window", "the perch at the window", Exploring, 40.0),
            thing("whistle", "whistling together", Play, 25.0),
            thing("swing", "the rope swing", Play, 40.0),
            thing("home", "going back into the cage", Rest, 30.0),
        ],
        Species::Rabbit => [
            food("herb", "a sprig of coriander", 0.3, 1.2),
            thing("run", "the run in the yard", Exploring, 60.0),
            thing("tunnel", "the cloth tunnel", Exploring, 40.0),
            food("leaf", "a dandelion leaf", 0.5, 1.1),
            thing("dig", "the box to dig in", Play, 30.0),
            thing("stroke", "strokes on the forehead", Touch, 30.0),
            thing("branch", "a branch of apple wood", Play, 20.0),
            thing("quiet", "the lid over the house", Rest, 15.0),
        ],
        Species::Other => [
            food("slice", "a slice of cucumber", 0.4, 3.0),
            thing("hide", "the house of cork", Rest, 15.0),
            thing("floor", "running on the floor", Exploring, 120.0),
            food("leaf", "a leaf of lettuce", 0.4, 2.5),
            thing("hay", "the rack filled anew", Exploring, 30.0),
            thing("lap", "sitting on a lap", Touch, 60.0),
            thing("tube", "the tube of card", Play, 30.0),
            thing("twig", "a twig of willow", Play, 20.0),
        ],
    }
}
