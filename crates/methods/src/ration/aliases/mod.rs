//! Other names under which the foods of the hazards list come to the kitchen, in five languages: a home mixes them, and a
//! danger must be found whatever the reader's language is.
//!
//! No name is kept to the reader's language, not even one that is another food elsewhere ("salsa", "pate", "turrón", "punch"): what a
//! label is written in is nobody's to know. Such a name says that something may be in it, or that it is better left ("pate", which
//! pasta is in French, for a rabbit); it forbids nothing.
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
    // Sold under this name, most are made with cocoa.
    ("crema de avellana", "hazelnut spread"),
    ("mantequilla de avellana", "nut butter"),
    ("pâte à tartiner", "hazelnut spread"),
    ("nuss nougat creme", "hazelnut spread"),
    ("creme de avelã", "hazelnut spread"),
    // Nuts that are not on the list, by names that hold the word for any nut or for a walnut.
    ("brazil nut", ""),
    ("cashew nut", ""),
    ("pecan nut", ""),
    ("pine nut", ""),
    ("nuez de brasil", ""),
    ("nuez del brasil", ""),
    ("nuez pecana", ""),
    ("nueces de brasil", ""),
    ("nueces del brasil", ""),
    ("nueces pecanas", ""),
    ("nueces de pecán", ""),
    ("nuez de pecán", ""),
    ("noix du brésil", ""),
    ("noix de pécan", ""),
    ("noz pecã", ""),
    ("nozes pecã", ""),
    ("nozes do brasil", ""),
    ("nozes de caju", ""),
    ("noz do brasil", ""),
    ("noz de caju", ""),
    // No sweets of sugar alone, and no chocolate.
    ("caramelo para la tos", "cough drop"),
    ("pastilla para la tos", "cough drop"),
    ("pastilla para la garganta", "cough drop"),
    ("hustenbonbon", "cough drop"),
    ("hustenpastille", "cough drop"),
    ("hustenpastillen", "cough drop"),
    ("halsbonbon", "cough drop"),
    ("halspastille", "cough drop"),
    ("halspastillen", "cough drop"),
    ("bonbon pour la toux", "cough drop"),
    ("bonbon pour la gorge", "cough drop"),
    ("pastille pour la toux", "cough drop"),
    ("pastille pour la gorge", "cough drop"),
    ("rebuçado para a tosse", "cough drop"),
    ("bala para tosse", "cough drop"),
    ("bala para a tosse", "cough drop"),
    ("pastilha para a tosse", "cough drop"),
    ("pastilha para a garganta", "cough drop"),
    // Words for yeast that mean baking powder, and yeast that no longer works.
    ("levadura química", "baking powder"),
    ("levure chimique", "baking powder"),
    ("fermento em pó", "baking powder"),
    ("fermento químico", "baking powder"),
    ("brewer's yeast", ""),
    ("nutritional yeast", ""),
    ("levadura de cerveza", ""),
    ("levadura nutricional", ""),
    ("levure de bière", ""),
    ("levure maltée", ""),
    ("levedura de cerveja", ""),
    ("levedura nutricional", ""),
    ("lait de poule", "eggnog"),
    ("ponche de huevo", "eggnog"),
    ("gemada", "eggnog"),
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
    // One letter from another food: "sauvage" (wild) from "sausage".
    ("sauvage", "sausage"),
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
