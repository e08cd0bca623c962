//! Harmful foods are found by their names in five languages, whatever the language of who reads; harmless ones are not.
//! The names are common names from memory.

use sayso_methods::ration::{FoodLevel, look_up};
use sayso_model::Species::{self, Cat, Dog, Parrot, Rabbit};

/// What is looked for as it stands in the facts, and what people call it in English, Spanish, German, French, Portuguese.
const NEVER: &[(Species, &str, [&str; 5])] = &[
    (
        Dog,
        "grapes",
        [
            "Grapes; seedless grape; raisins; currants; sultanas",
            "uvas; Uva blanca; pasas; pan de pasas; pasas de Corinto",
            "Trauben; Weintraube; kernlose Weintrauben; Rosinen; Rosinenbrötchen; Korinthen; Sultaninen; Traubensaft",
            "raisins secs; du raisin; un grain de raisin; raisins de Corinthe; pain aux raisins",
            "uvas; Uvas sem sementes; passas; pão de passas; uva passa",
        ],
    ),
    (Cat, "grapes", ["raisin bread", "uvas pasas", "Rosinen", "raisin", "passas"]),
    (
        Dog,
        "chocolate",
        [
            "chocolate; Milk Chocolate; choc drops; cocoa; coffee; tea; choclate",
            "chocolate negro; bombones; cacao; café con leche; té verde; cafeína",
            "Schokolade; Schokoladenstückchen; Vollmilchschokolade; Schokokeks; SCHOKO; Kakao; Kaffee; Koffein; Tee",
            "chocolat; Chocolat au lait; pain au chocolat; chocolats; cacao; café; thé; du thé vert",
            "chocolate; banana no chocolate; bombom; brigadeiro; cacau; café; chá preto",
        ],
    ),
    (
        Dog,
        "onion",
        [
            "onion; spring onions; garlic bread; leek; chives",
            "cebolla; cebollas fritas; ajo; pollo al ajillo; puerro; cebollino",
            "Zwiebel; Zwiebelringe; Röstzwiebeln; Roestzwiebeln; Frühlingszwiebeln; Knoblauch; Knoblauchbrot; Lauch; Porree; Schnittlauch; Bärlauch; Baerlauchpesto",
            "oignon; Oignons; soupe à l'oignon; poulet à l’ail; ail; poireaux; ciboulette; échalotes; cive",
            "cebola; Cebolas; frango no alho; alho-poró; alho; cebolinha",
        ],
    ),
    (
        Parrot,
        "avocado",
        ["avocado; guacamole", "aguacate; palta", "Avocado; Avocadocreme", "avocat; Avocats mûrs", "abacate; abacates"],
    ),
    (
        Dog,
        "macadamia",
        ["macadamias", "nueces de macadamia", "Macadamianüsse", "noix de macadamia", "nozes de macadâmia"],
    ),
    (
        Dog,
        "xylitol",
        [
            "xylitol; sugar-free sweets; E967",
            "xilitol; caramelos sin azúcar",
            "Xylit; Birkenzucker; zuckerfreie Bonbons; Bonbons ohne Zucker",
            "xylitol; sucre de bouleau; bonbons sans sucre",
            "xilitol; rebuçados sem açúcar",
        ],
    ),
    (
        Dog,
        "alcohol",
        [
            "beer; raw yeast dough",
            "cerveza; masa de pizza",
            "Bier; alkoholisches; Hefeteig; Pizzateig",
            "bière; vin rouge; pâte à pain; alcool",
            "cerveja; massa crua; álcool",
        ],
    ),
    (
        Cat,
        "cooked bones",
        [
            "chicken bones",
            "huesos de pollo; hueso cocido",
            "Hühnerknochen; Huehnerknochen; gekochte Knochen",
            "os de poulet; os cuits",
            "ossos de frango; osso cozido",
        ],
    ),
    (
        Dog,
        "fruit pits",
        [
            "peach pit",
            "huesos de cereza",
            "Kirschkerne; Pfirsichkern",
            "noyaux; noyau de pêche",
            "caroços; caroço de pêssego",
        ],
    ),
    (Dog, "hops", ["hops", "lúpulo", "Hopfen", "houblon", "lúpulo"]),
    (Dog, "mouldy", ["mouldy bread", "pan mohoso", "verschimmeltes Brot; Kompost", "fromage moisi", "pão bolorento"]),
    (
        Dog,
        "tamarind",
        [
            "tamarind; cream of tartar",
            "tamarindo",
            "Tamarinde; Weinsteinbackpulver",
            "tamarin; crème de tartre",
            "tamarindo; cremor tártaro",
        ],
    ),
    (Dog, "black walnuts", ["black walnuts", "nuez negra", "Schwarznuss; Schwarzwalnüsse", "noix noires", "noz preta"]),
    (
        Parrot,
        "salt",
        [
            "salted nuts",
            "sal; cacahuetes salados",
            "Salzstangen; gesalzene Nüsse; Kartoffelchips",
            "cacahuètes salées; sel",
            "amendoim salgado; batatas fritas",
        ],
    ),
];

/// Names that reach a milder level: with whom, level, names in the five languages.
const MILDER: &[(Species, FoodLevel, [&str; 5])] = &[
    (
        Dog,
        FoodLevel::Little,
        [
            "cheddar cheese; yoghurt",
            "queso; leche; yogur",
            "Käse; Kaesewürfel; Frischkäse; Milch; Joghurt",
            "fromage; lait; yaourt; crème",
            "queijo; leite; iogurte",
        ],
    ),
    (
        Dog,
        FoodLevel::Avoid,
        [
            "bacon; ham; nutmeg",
            "jamón; tocino; nuez moscada",
            "Speck; Schinkenwürfel; Leberwurst; Muskatnuss",
            "jambon; lardons; noix de muscade",
            "presunto; toucinho; noz-moscada",
        ],
    ),
    (Cat, FoodLevel::Avoid, ["xylitol", "xilitol", "Xylit", "sucre de bouleau", "açúcar de bétula"]),
    (
        Rabbit,
        FoodLevel::Avoid,
        ["bread; biscuit", "pan; galleta", "Brot; Keks; Kartoffel", "pain; biscuit; pommes de terre", "pão; bolacha"],
    ),
];

/// What holds a dangerous name and is another thing, or says that it holds none.
const NOT_CAUGHT: &[(Species, &[&str])] = &[
    (
        Dog,
        &[
            // English.
            "grapefruit",
            "uva ursi",
            "chocolate coloured ball",
            "the carrot",
            "no onion",
            "onion-free broth",
            "toffee apple",
            "speckled egg",
            "most loved biscuit",
            "grass",
            "beef broth",
            // Spanish.
            "pollo",
            "leche de coco",
            "pollo sin cebolla",
            "zanahoria",
            "te quiero",
            "lechuga",
            "sin ajo ni cebolla",
            "pepino",
            "cola de langosta",
            // German.
            "Schokofarbener Ball",
            "Schlauch",
            "Traubenzucker",
            "Huhn kochen",
            "Möhre",
            "Schweinefleisch",
            "Beeren",
            "Kokosmilch",
            "Apfelsine",
            "zwiebelfrei",
            "ungesalzene Nüsse",
            "Kräutertee",
            "Mangold",
            "Kompott",
            "Stock",
            "Reis",
            // French.
            "pomme de terre cuite",
            "noix de coco",
            "poulet",
            "lait d'amande",
            "salade verte",
            "sans oignon",
            "carotte à l'eau",
            "pommes",
            // Portuguese.
            "os biscoitos",
            "salada de cenoura",
            "frango sem alho",
            "salsa",
            "compota de abóbora",
            "leite de coco",
            "maçã sem caroço",
            "presente",
        ],
    ),
    (
        Parrot,
        &["Pipa de girasol sin sal", "Sonnenblumenkern, ungesalzen", "graine sans sel", "semente sem sal", "Mangold"],
    ),
    (Rabbit, &["Salsa, um raminho", "Gras", "broth", "Salat", "chou"]),
    (Cat, &["peanut butter", "crema de cacahuete", "Erdnussbutter", "beurre de cacahuète", "manteiga de amendoim"]),
];

#[test]
fn what_must_never_be_given_is_found_in_every_language() {
    for (species, fact, of_languages) in NEVER {
        for name in of_languages.iter().flat_map(|names| names.split("; ")) {
            let verdict = look_up(*species, name);
            assert_eq!(verdict.level(), Some(FoodLevel::Never), "{name:?} for {species:?}");
            let found = verdict.findings.iter().any(|f| f.is_certain() && f.fact.item.contains(fact));
            assert!(found, "{name:?} for {species:?} is no {fact}: {:?}", verdict.findings);
        }
    }
}

#[test]
fn milder_levels_are_found_in_every_language() {
    for (species, level, of_languages) in MILDER {
        for name in of_languages.iter().flat_map(|names| names.split("; ")) {
            assert_eq!(look_up(*species, name).level(), Some(*level), "{name:?} for {species:?}");
        }
    }
}

#[test]
fn harmless_names_raise_no_alarm() {
    let all = NOT_CAUGHT.iter().flat_map(|(species, names)| names.iter().map(|name| (*species, *name)));
    let read = |(species, name)| {
        look_up(species, name).findings.into_iter().find(|f| f.is_certain()).map(|f| (name, f.read_as))
    };
    let caught: Vec<_> = all.filter_map(read).collect();
    assert!(caught.is_empty(), "{caught:?}");
    // Not even a "may hold".
    for (species, name) in [
        (Dog, "grapefruit"),
        (Dog, "pollo"),
        (Rabbit, "Salsa, um raminho"),
        (Dog, "Möhre"),
        (Dog, "biscoito"),
        (Dog, "croquettes"),
        (Rabbit, "Heno, un tallo dulce"),
    ] {
        assert!(look_up(species, name).findings.is_empty(), "{name}: {:?}", look_up(species, name).findings);
    }
}

#[test]
fn a_nut_butter_may_hold_xylitol_in_every_language() {
    for name in ["peanut butter", "crema de cacahuete", "Erdnussbutter", "beurre de cacahuète", "manteiga de amendoim"]
    {
        let verdict = look_up(Dog, name);
        assert!(verdict.level().is_none(), "{name}: {:?}", verdict.findings);
        assert!(verdict.findings.iter().any(|f| f.fact.item.contains("xylitol")), "{name}: {:?}", verdict.findings);
    }
}

#[test]
fn accents_written_apart_or_left_out_change_nothing() {
    for name in ["cafe\u{301}", "cafe", "CAFÉ", "Rösti mit Zwiebeln", "a\u{e7}afr\u{e3}o com cebola", "echalote", "THÉ"]
    {
        assert_eq!(look_up(Dog, name).level(), Some(FoodLevel::Never), "{name:?}");
    }
}

#[test]
fn a_word_that_is_another_food_elsewhere_forbids_nothing() {
    let mut hints = 0;
    for name in ["punch", "salsa", "pate", "pâté", "paté", "turrón", "turron"] {
        for species in [Dog, Cat, Parrot, Rabbit] {
            let verdict = look_up(species, name);
            assert_ne!(verdict.level(), Some(FoodLevel::Never), "{name:?} for {species:?}: {verdict:?}");
            hints += verdict.findings.len();
        }
    }
    assert!(hints > 0, "some of them may hold onion or chocolate");
}
