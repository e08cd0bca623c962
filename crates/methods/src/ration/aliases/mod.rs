//! Other names under which the foods of the hazards list come to the kitchen, in five languages: a home mixes them, and a
//! danger must be found whatever the reader's language is.
//!
//! Source: common names of foods, from memory, not checked by native speakers. A name only points at a term of the
//! facts; level, reason and source are the facts' own.

mod english;
mod french;
mod german;
mod portuguese;
mod spanish;

use sayso_model::Language;

/// Whether a food by this name is, or only may hold, the listed one.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) enum Sure {
    /// It is, or is made of it.
    Is,
    /// Some are: the label or the cook knows.
    May,
}

/// Term of the facts (in the facts' words), certainty, names with commas between them. A star at an end of a name: the
/// word may go on there, as in compounds.
pub(super) type Row = (&'static str, Sure, &'static str);

/// The names of each language.
pub(super) const ALIASES: [(Language, &[Row]); 5] = [
    (Language::En, english::NAMES),
    (Language::Es, spanish::NAMES),
    (Language::De, german::NAMES),
    (Language::Fr, french::NAMES),
    (Language::Pt, portuguese::NAMES),
];

/// Phrases that hold a listed word and are another thing: what they are read as, nothing where that is harmless.
pub(super) const OTHER_THINGS: &[(&str, &str)] = &[
    ("coconut milk", ""),
    ("almond milk", ""),
    ("oat milk", ""),
    ("soy milk", ""),
    ("rice milk", ""),
    ("milk thistle", ""),
    ("coconut cream", ""),
    ("grape tomato", ""),
    ("salt lick", ""),
    // Bearberry: no grape.
    ("uva ursi", ""),
    ("chocolate coloured", ""),
    ("chocolate colored", ""),
    ("chocolate brown", ""),
    ("pan fried", ""),
    ("sweet hay", ""),
    ("sweet stalk", ""),
    ("tallo dulce", ""),
    ("talo doce", ""),
    ("speck of", ""),
    ("leche de coco", ""),
    ("leche de almendra", ""),
    ("leche de avena", ""),
    ("leche de soja", ""),
    ("leche de arroz", ""),
    ("cardo de leche", ""),
    ("color chocolate", ""),
    ("cola de", ""),
    ("choco frito", ""),
    ("crema de cacahuete", "peanut butter"),
    ("crema de maní", "peanut butter"),
    ("crema de almendra", "almond butter"),
    ("crema de avellana", "nut butter"),
    ("creme de amendoim", "peanut butter"),
    ("nuez moscada", "nutmeg"),
    ("sin azúcar añadido", "no added sugar"),
    ("sin azúcares añadidos", "no added sugar"),
    ("ohne Zuckerzusatz", "no added sugar"),
    ("lait de coco", ""),
    ("lait d'amande", ""),
    ("lait d'avoine", ""),
    ("lait de soja", ""),
    ("lait de riz", ""),
    ("couleur chocolat", ""),
    ("noix de coco", ""),
    ("noix de cajou", ""),
    ("noix de saint-jacques", ""),
    ("noix de muscade", "nutmeg"),
    ("noix muscade", "nutmeg"),
    ("noix de macadamia", "macadamia"),
    ("noix du queensland", "macadamia"),
    ("chips de pomme de terre", "crisp"),
    // French names of the lists that hold a potato are written as this leaves them.
    ("pomme de terre", "potato"),
    ("pasta de dientes", "toothpaste"),
    ("pasta de dentes", "toothpaste"),
    ("creme dental", "toothpaste"),
    ("zahnpasta", "toothpaste"),
    ("pasta de amendoim", "peanut butter"),
    ("pasta de amêndoa", "almond butter"),
    ("play dough", "playdough"),
    ("pâte à modeler", "playdough"),
    ("massa de modelar", "playdough"),
    ("massinha de modelar", "playdough"),
    // A prune is no raisin.
    ("ciruela pasa", "ciruela"),
    ("ameixa passa", "ameixa"),
    ("cherry tomato", "tomato"),
    ("tomate cherry", "tomate"),
    ("tomate cereza", "tomate"),
    ("tomate cerise", "tomate"),
    ("tomate cereja", "tomate"),
    // Baked: its dough is raw no longer.
    ("pan de masa madre", "pan"),
    ("pain au levain", "pain"),
    ("pão de massa mãe", "pão"),
    ("sin sal", "unsalted"),
    ("ohne salz", "unsalted"),
    ("salzfrei", "unsalted"),
    ("sans sel", "unsalted"),
    ("sem sal", "unsalted"),
    ("sans sucre ajouté", "no added sugar"),
    ("sans sucres ajoutés", "no added sugar"),
    ("leite de coco", ""),
    ("leite de amêndoa", ""),
    ("leite de aveia", ""),
    ("leite de soja", ""),
    ("leite de arroz", ""),
    ("cor de chocolate", ""),
    ("noz moscada", "nutmeg"),
    ("noz da índia", ""),
    ("sem açúcar adicionado", "no added sugar"),
    ("sem açúcares adicionados", "no added sugar"),
    ("sem adição de açúcar", "no added sugar"),
    // The core of an apple goes by the word for a pit.
    ("maçã sem caroço", "apple"),
    ("caroço de maçã", "apple core"),
    ("caroço da maçã", "apple core"),
];

/// Beginnings of words that hold a name and are not made of it.
pub(super) const NOT_MADE_OF: &[(&str, &str)] = &[
    ("bonbon", "bombo"),
    ("tartar", "tarta"),
    ("tartiner", "tartine"),
    // One letter from another food.
    ("cereza", "cerveza"),
    ("cereja", "cerveja"),
    ("potito", "potato"),
    ("schwarz", "schwarte"),
    ("playdough", "dough"),
    ("sauerteigbrot", "sauerteig"),
    ("traubenzucker", "traube"),
    ("traubenkern", "traube"),
    ("schokofarb", "schoko"),
    ("schokobraun", "schoko"),
    ("schokoladenbraun", "schoko"),
    ("schokoladenfarb", "schoko"),
    ("hupf", "hopfen"),
    ("kochen", "knochen"),
    ("kompott", "kompost"),
    ("schlauch", "lauch"),
    ("mangold", "mango"),
    // French for dry food.
    ("croquette", "croquet"),
    ("apfelsine", "apfel"),
    ("granatapfel", "apfel"),
    ("erdapfel", "apfel"),
    ("kokosmilch", "milch"),
    ("mandelmilch", "milch"),
    ("hafermilch", "milch"),
    ("sojamilch", "milch"),
    ("reismilch", "milch"),
    ("ungesalzen", "gesalzen"),
    ("ungesalzen", "salz"),
    ("speckled", "speck"),
    ("broth", "brot"),
    ("salad", "sal"),
    ("lechuga", "leche"),
    ("salzwasserfisch", "salz"),
    ("salzburg", "salz"),
    ("olivenol", "olive"),
    ("uvaia", "uva"),
];
