//! The label proposed for each idea is what a home says for it, in five languages; written by hand, not read from the
//! catalogues.

use sayso_model::facts::{idea, ideas};
use sayso_model::{Language, Species};
use sayso_wording::{Locale, say};
use std::collections::BTreeSet;

const LANGUAGES: [Language; 5] = [Language::En, Language::Es, Language::De, Language::Fr, Language::Pt];

/// Key, then English, Spanish, German, French and Portuguese.
const LABELS: [(&str, [&str; 5]); 55] = [
    ("chicken", ["chicken", "pollo", "Huhn", "poulet", "frango"]),
    ("cheese", ["cheese", "queso", "Käse", "fromage", "queijo"]),
    ("carrot", ["carrot", "zanahoria", "Möhre", "carotte", "cenoura"]),
    ("apple", ["apple", "manzana", "Apfel", "pomme", "maçã"]),
    ("beans", ["bean", "judía", "Bohne", "haricot", "vagem"]),
    ("beef", ["beef", "ternera", "Rind", "bœuf", "carne"]),
    ("turkey", ["turkey", "pavo", "Pute", "dinde", "peru"]),
    ("egg", ["egg", "huevo", "Ei", "œuf", "ovo"]),
    ("salmon", ["salmon", "salmón", "Lachs", "saumon", "salmão"]),
    ("kibble", ["kibble", "pienso", "Brocken", "croquette", "ração"]),
    ("pellet", ["pellet", "gránulo", "Pellet", "granulé", "grão"]),
    ("sunflower", ["seed", "pipa", "Kern", "graine", "semente"]),
    ("millet", ["millet", "mijo", "Hirse", "millet", "painço"]),
    ("pepper", ["pepper", "pimiento", "Paprika", "poivron", "pimentão"]),
    ("dandelion", ["leaf", "hoja", "Blatt", "feuille", "folha"]),
    ("parsley", ["parsley", "perejil", "Petersilie", "persil", "salsa"]),
    ("coriander", ["herb", "cilantro", "Koriander", "coriandre", "coentro"]),
    ("hay", ["hay", "heno", "Heu", "foin", "feno"]),
    ("tug", ["tug", "tira", "Zerren", "tire", "puxa"]),
    ("ball", ["ball", "pelota", "Ball", "balle", "bola"]),
    ("chase", ["chase", "corre", "Fangen", "cours", "corre"]),
    ("squeak", ["squeak", "pito", "Quietschtier", "couine", "apito"]),
    ("wand", ["feather", "pluma", "Feder", "plume", "pena"]),
    ("crinkle", ["crinkle", "papel", "Knistern", "papier", "papel"]),
    ("toss", ["mouse", "ratón", "Maus", "souris", "rato"]),
    ("bell", ["bell", "campana", "Glocke", "cloche", "sino"]),
    ("shred", ["paper", "papel", "Papier", "papier", "papel"]),
    ("peekaboo", ["peekaboo", "cucú", "Kuckuck", "coucou", "achou"]),
    ("willow", ["willow", "mimbre", "Weide", "osier", "vime"]),
    ("tunnel", ["tunnel", "túnel", "Tunnel", "tunnel", "túnel"]),
    ("rub", ["rub", "caricia", "Kraulen", "caresse", "carinho"]),
    ("scratch", ["scratch", "rasca", "Kratzen", "gratte", "coça"]),
    ("brush", ["brush", "cepillo", "Bürste", "brosse", "escova"]),
    ("cheek", ["cheek", "mimo", "Wange", "joue", "carinho"]),
    ("head", ["scratch", "rasca", "Kraulen", "gratte", "coça"]),
    ("forehead", ["stroke", "mimo", "Stirn", "front", "testa"]),
    ("paw", ["paw", "pata", "Pfote", "patte", "pata"]),
    ("spin", ["spin", "vuelta", "Drehen", "tourne", "roda"]),
    ("touch_hand", ["touch", "mano", "Hand", "main", "mão"]),
    ("high_five", ["five", "choca", "Fünf", "tape", "toca"]),
    ("step_up", ["step", "sube", "Auf", "monte", "sobe"]),
    ("turn", ["turn", "gira", "Dreh", "demi-tour", "vira"]),
    ("target", ["stick", "palo", "Stab", "bâton", "bastão"]),
    ("up", ["up", "arriba", "Männchen", "debout", "de pé"]),
    ("garden", ["garden", "jardín", "Garten", "jardin", "jardim"]),
    ("walk", ["walk", "paseo", "Gassi", "balade", "passeio"]),
    ("sniff", ["sniff", "huele", "Schnüffeln", "flaire", "fareja"]),
    ("window", ["window", "ventana", "Fenster", "fenêtre", "janela"]),
    ("box", ["box", "caja", "Karton", "carton", "caixa"]),
    ("room", ["room", "cuarto", "Zimmer", "pièce", "quarto"]),
    ("pen", ["run", "corral", "Auslauf", "enclos", "cercado"]),
    ("bed", ["bed", "cama", "Bett", "panier", "cama"]),
    ("sofa", ["sofa", "sofá", "Sofa", "canapé", "sofá"]),
    ("perch", ["perch", "percha", "Stange", "perchoir", "poleiro"]),
    ("hide", ["house", "caseta", "Häuschen", "cachette", "casinha"]),
];

fn label(key: &str, language: Language) -> String {
    say!(&Locale::of(language), ideas::label, key = key)
}

#[test]
fn every_idea_is_proposed_under_a_word_that_a_home_says() {
    for (key, labels) in LABELS {
        assert!(idea(key).is_some(), "{key} is no idea");
        for (language, should) in LANGUAGES.into_iter().zip(labels) {
            assert_eq!(label(key, language), should, "{key} in {language:?}");
        }
    }
    let written: BTreeSet<&str> = LABELS.iter().map(|(key, _)| *key).collect();
    for species in Species::ALL {
        for idea in ideas(species) {
            assert!(written.contains(idea.key.as_str()), "{} has no label written here", idea.key);
        }
    }
}

#[test]
fn no_two_ideas_for_an_animal_share_a_label() {
    for language in LANGUAGES {
        for species in Species::ALL {
            let mut taken = BTreeSet::new();
            for idea in ideas(species) {
                let own = label(&idea.key, language);
                assert!(taken.insert(own.clone()), "{own} twice for {species:?} in {language:?}");
            }
        }
    }
}
