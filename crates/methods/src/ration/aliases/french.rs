//! French names under which the foods of the hazards list come to the kitchen.
//!
//! Source: common names, from memory; not checked by a native speaker.

use super::Row;
use super::Sure::{Is, May};

pub(super) const NAMES: &[Row] = &[
    ("chocolate", Is, "chocolat, chocolaté, pain au chocolat, praliné, moka"),
    ("chocolate", May, "truffe, gâteau, praline, muffin"),
    ("cocoa", Is, "cacao"),
    ("coffee", Is, "café, expresso, décaféiné"),
    ("caffeine", Is, "caféine, théine, thé vert, thé noir, thé glacé, boisson énergisante, guarana, cola"),
    ("xylitol", Is, "xylitol, sucre de bouleau, sans sucre, sans sucres"),
    ("xylitol", May, "dentifrice, bonbon, confiture"),
    (
        "nut butters",
        May,
        "beurre de cacahuète, beurre de cacahouète, beurre d'arachide, beurre d'amande, purée d'amande, pâte à tartiner",
    ),
    ("gum", May, "chewing-gum, gomme à mâcher"),
    ("grapes", Is, "raisin, grain de raisin, vin, moût de raisin, vigne"),
    ("raisins", Is, "raisin sec, raisins secs, pain aux raisins, cake aux fruits, sultanine"),
    ("raisins", May, "fruits secs, muesli, granola, mendiant, panettone"),
    ("currants", Is, "raisin de Corinthe, raisins de Corinthe, corinthe"),
    ("cream of tartar", Is, "crème de tartre"),
    ("cream of tartar", May, "levure chimique, poudre à lever, pâte à modeler"),
    ("tamarind", Is, "tamarin"),
    ("tartaric acid", Is, "acide tartrique"),
    ("onion", Is, "oignon, ognon, échalote, échalotte, ciboule, cive, cébette"),
    (
        "onion",
        May,
        "bouillon, soupe, potage, sauce tomate, sauce bolognaise, ragoût, boulette, terrine, petit pot, pot pour bébé, plat préparé, quiche, quiches",
    ),
    ("garlic", Is, "ail, ails, aïoli, ail des ours, persillade"),
    ("leek", Is, "poireau, poireaux"),
    ("chives", Is, "ciboulette"),
    ("macadamia nuts", Is, "macadamia"),
    ("macadamia nuts", May, "noix mélangées, mélange de noix, fruits secs"),
    ("black walnuts", Is, "noix noire, noix noires, noyer noir"),
    ("black walnuts", May, "noix, cerneau, cerneaux"),
    ("hops", Is, "houblon, drêche"),
    ("mouldy food", Is, "moisi, moisie, moisis, moisissure, fromage bleu"),
    ("compost", Is, "compost"),
    ("nutmeg", Is, "muscade"),
    ("nutmeg", May, "lait de poule, quatre-épices"),
    (
        "alcohol",
        Is,
        "alcool, alcoolisé, bière, vin, vin rouge, vin blanc, liqueur, rhum, eau-de-vie, champagne, cognac, whisky, pastis, calvados",
    ),
    ("alcohol", May, "cidre, baba au rhum"),
    (
        "raw yeast dough",
        Is,
        "pâte crue, pâte levée, pâte à pain, pâte à pizza, pâte à brioche, levain, levure fraîche, levure de boulanger",
    ),
    (
        "cooked bones",
        Is,
        "os cuit, os cuits, os de poulet, os de dinde, os de porc, os de jambon, os d'agneau, os bouilli, os rôti, os grillé, os fumé, os de lapin",
    ),
    (
        "cooked bones",
        May,
        "un os, os à moelle, os à mâcher, os charnu, os de bœuf, os de veau, aile de poulet, pilon, côtelette, travers de porc",
    ),
    ("avocado", Is, "avocat, guacamole"),
    (
        "salty snacks",
        Is,
        "salée, sel, frites, frite, bretzel, jambon, saucisse, saucisson, salami, charcuterie, rillettes, anchois, sauce soja, biscuit apéritif, viande séchée",
    ),
    ("salty snacks", May, "chips, pop-corn, popcorn, olive, crackers"),
    ("bacon", Is, "lardon, lardons, lard, poitrine fumée, bacon"),
    (
        "fatty trimmings",
        Is,
        "peau de poulet, peau de dinde, saindoux, suif, gras de viande, gras de jambon, gras de porc, graisse, foie gras, couenne",
    ),
    (
        "milk",
        Is,
        "lait, laits, lait de vache, crème, yaourt, yogourt, petit-suisse, laitage, produit laitier, crème anglaise, petit-lait, kéfir, fromage blanc",
    ),
    ("cheese", Is, "fromage, gruyère, emmental, comté, camembert, fromage blanc"),
    (
        "fruit pits",
        Is,
        "noyau, noyaux, noyau de cerise, noyau de pêche, noyau de prune, noyau d'abricot, noyau de mangue",
    ),
    ("fruit pits", May, "cerise, pêche, pêches, prune, pruneau, abricot, nectarine, brugnon, mangue, mirabelle"),
    ("apple seeds", Is, "pépin de pomme, pépins de pomme, trognon"),
    ("apple seeds", May, "pomme"),
    (
        "sugary or starchy treats",
        Is,
        "sucre, sucreries, bonbon, biscuit, gâteau, gâteaux, céréales, pâtes, nouille, riz, patate, miel, confiture, glace, viennoiserie, friandise sucrée, frites, popcorn, pop-corn, sirop",
    ),
    ("bread", Is, "pain, petit pain, biscotte, brioche, tartine, croûton, baguette"),
    (
        "salt",
        Is,
        "sel, salée, jambon, lardon, lardons, saucisse, saucisson, bacon, anchois, sauce soja, frites, charcuterie, bretzel",
    ),
    ("salt", May, "popcorn, pop-corn, crackers, fromage, olive"),
    ("crisps", May, "chips"),
];
