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
    /// What it means, and how it is answered.
    pub(super) means: &'static str,
    pub(super) answer: &'static str,
    pub(super) kind: RewardKind,
    /// Energy and weight of one piece of food.
    pub(super) food: Option<(f64, f64)>,
    /// Seconds one delivery takes.
    pub(super) seconds: f64,
}

type Text = &'static str;

const fn thing(says: Text, name: Text, kind: RewardKind, seconds: f64, means: Text, answer: Text) -> Thing {
    Thing { says, name, means, answer, kind, food: None, seconds }
}

const fn food(says: Text, name: Text, kcal: f64, grams: f64, means: Text, answer: Text) -> Thing {
    Thing { says, name, means, answer, kind: Food, food: Some((kcal, grams)), seconds: 5.0 }
}

/// Eight things of a species. Invented: energy and weights are only of the right size.
pub(super) const fn things(species: Species) -> [Thing; 8] {
    match species {
        Species::Dog => [
            thing(
                "outside",
                "going into the yard",
                Exploring,
                60.0,
                "I want to go into the yard.",
                "Open the door to the yard at once and go along.",
            ),
            food(
                "snack",
                "a piece of kibble",
                3.0,
                1.0,
                "A piece of kibble.",
                "One piece, from the jar beside the board.",
            ),
            thing(
                "tug",
                "tug with the rope",
                Play,
                45.0,
                "Play tug with me.",
                "Pick up the rope and play half a minute.",
            ),
            thing("rub", "a chest rub", Touch, 20.0, "Rub my chest.", "Kneel down and rub for as long as it leans in."),
            thing(
                "sniff",
                "a scent hunt in a towel",
                Exploring,
                90.0,
                "Hide the scent in the towel.",
                "Fold the towel and put it on the floor.",
            ),
            thing(
                "fetch",
                "throwing the ring",
                Play,
                40.0,
                "Throw the ring.",
                "Throw the ring along the hall, three times.",
            ),
            thing(
                "walk",
                "once around the block",
                Exploring,
                600.0,
                "Once around the block.",
                "Take the lead from its hook and go.",
            ),
            thing(
                "bed",
                "settling on the bed",
                Rest,
                30.0,
                "I want to settle down.",
                "Go to the bed along with it and speak softly.",
            ),
        ],
        Species::Cat => [
            thing(
                "wand",
                "the feather wand",
                Play,
                60.0,
                "Play with the feather wand.",
                "Take the wand from the shelf and play a minute.",
            ),
            food(
                "snack",
                "a bit of dried fish",
                1.5,
                0.5,
                "A bit of dried fish.",
                "One bit, from the jar beside the board.",
            ),
            thing(
                "window",
                "the window seat",
                Exploring,
                30.0,
                "I want onto the window seat.",
                "Clear the seat and draw the curtain.",
            ),
            thing(
                "brush",
                "being brushed",
                Touch,
                45.0,
                "Brush me.",
                "Sit down with the brush and stop when it turns away.",
            ),
            thing(
                "tunnel",
                "the paper tunnel",
                Exploring,
                40.0,
                "Open the tunnel.",
                "Unfold the tunnel and step back.",
            ),
            thing(
                "chase",
                "rolling a cork",
                Play,
                40.0,
                "Roll the cork.",
                "Roll the cork along the hall, a few times.",
            ),
            thing(
                "stairs",
                "the stairwell",
                Exploring,
                120.0,
                "I want into the stairwell.",
                "Open the door and go along.",
            ),
            thing("blanket", "the warm blanket", Rest, 20.0, "The warm blanket.", "Spread the blanket on its place."),
        ],
        Species::Parrot => [
            food("seed", "a safflower seed", 0.3, 0.05, "A safflower seed.", "One seed, by hand."),
            thing(
                "scratch",
                "a scratch on the neck",
                Touch,
                20.0,
                "Scratch my neck.",
                "Scratch gently and stop when it leans away.",
            ),
            thing("mist", "a fine mist of water", Play, 30.0, "The fine mist.", "Three sprays above it, never at it."),
            thing("shred", "paper to shred", Play, 60.0, "Paper to shred.", "Hand over one sheet of plain paper."),
            thing(
                "window",
                "the perch at the window",
                Exploring,
                40.0,
                "The perch at the window.",
                "Offer an arm and walk over.",
            ),
            thing(
                "whistle",
                "whistling together",
                Play,
                25.0,
                "Whistle with me.",
                "Whistle two tunes and wait for an answer.",
            ),
            thing("swing", "the rope swing", Play, 40.0, "The rope swing.", "Hang the swing up and steady it."),
            thing(
                "home",
                "going back into the cage",
                Rest,
                30.0,
                "Back into the cage.",
                "Offer an arm and go to the open door.",
            ),
        ],
        Species::Rabbit => [
            food(
                "herb",
                "a sprig of coriander",
                0.3,
                1.2,
                "A sprig of coriander.",
                "One sprig, on the floor beside the board.",
            ),
            thing(
                "run",
                "the run in the yard",
                Exploring,
                60.0,
                "I want into the run.",
                "Open the run and step aside.",
            ),
            thing(
                "tunnel",
                "the cloth tunnel",
                Exploring,
                40.0,
                "The cloth tunnel.",
                "Unfold the tunnel and step back.",
            ),
            food("leaf", "a dandelion leaf", 0.5, 1.1, "A dandelion leaf.", "One leaf, on the floor beside the board."),
            thing(
                "dig",
                "the box to dig in",
                Play,
                30.0,
                "The box to dig in.",
                "Put the box on the floor and take the lid off.",
            ),
            thing(
                "stroke",
                "strokes on the forehead",
                Touch,
                30.0,
                "Stroke my forehead.",
                "Sit on the floor and stroke for as long as it stays.",
            ),
            thing(
                "branch",
                "a branch of apple wood",
                Play,
                20.0,
                "A branch of apple wood.",
                "Lay one branch into the pen.",
            ),
            thing(
                "quiet",
                "the lid over the house",
                Rest,
                15.0,
                "The lid over the house.",
                "Lay the lid on and go away.",
            ),
        ],
        Species::Other => [
            food("slice", "a slice of cucumber", 0.4, 3.0, "A slice of cucumber.", "One slice, by hand."),
            thing("hide", "the house of cork", Rest, 15.0, "The house of cork.", "Set the house in its corner."),
            thing(
                "floor",
                "running on the floor",
                Exploring,
                120.0,
                "I want to run on the floor.",
                "Close the door to the hall and open the pen.",
            ),
            food("leaf", "a leaf of lettuce", 0.4, 2.5, "A leaf of lettuce.", "One leaf, by hand."),
            thing("hay", "the rack filled anew", Exploring, 30.0, "Hay in the rack.", "Fill the rack anew."),
            thing("lap", "sitting on a lap", Touch, 60.0, "I want onto a lap.", "Sit down and offer both hands."),
            thing("tube", "the tube of card", Play, 30.0, "The tube of card.", "Lay the tube on the floor."),
            thing("twig", "a twig of willow", Play, 20.0, "A twig of willow.", "Hand over one twig."),
        ],
    }
}
