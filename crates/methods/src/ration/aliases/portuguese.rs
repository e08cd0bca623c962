//! Portuguese names under which the foods of the hazards list come to the kitchen, of Portugal and of Brazil. Also those
//! written as in English or Spanish: "no" before a Portuguese word means "in the", not "without".
//!
//! Source: common names, from memory; not checked by a native speaker.

use super::Row;
use super::Sure::{Is, May};

pub(super) const NAMES: &[Row] = &[
    (
        "chocolate",
        Is,
        "chocolate, achocolatado, bombom, bombons, brigadeiro, trufa de chocolate, bolinha de rum, bola de rum",
    ),
    (
        "chocolate",
        May,
        "trufa, bolo, queque, rebuçado, bala, pão de gengibre, pão de mel, pão de especiarias, biscoito de gengibre, pães de mel",
    ),
    ("cocoa", Is, "cacau"),
    ("coffee", Is, "café, cafezinho, descafeinado"),
    (
        "caffeine",
        Is,
        "cafeína, chá verde, chá preto, chá mate, erva-mate, chimarrão, bebida energética, refrigerante de cola, guaraná",
    ),
    ("xylitol", Is, "xilitol, açúcar de bétula, sem açúcar, sem açúcares"),
    (
        "xylitol",
        May,
        "pasta de dentes, creme dental, rebuçado, bala de goma, compota, geleia, bala, pirulito, ursinho de goma, jujuba",
    ),
    (
        "nut butters",
        May,
        "manteiga de amendoim, pasta de amendoim, creme de amendoim, manteiga de amêndoa, pasta de amêndoa",
    ),
    ("gum", May, "pastilha elástica, chiclete, goma de mascar, chicle"),
    ("grapes", Is, "uva, vinho, mosto, sumo de uva, suco de uva"),
    ("raisins", Is, "passa, passas, uva passa, pão de passas, sultana, bolo de frutas, bolo inglês, bolo-rei"),
    ("raisins", May, "frutos secos, frutas secas, fruta desidratada, granola, muesli, panetone"),
    ("currants", Is, "passas de Corinto, passa de Corinto, uva de Corinto"),
    ("cream of tartar", Is, "cremor tártaro, creme de tártaro"),
    ("cream of tartar", May, "massinha"),
    ("tamarind", Is, "tamarindo"),
    ("tartaric acid", Is, "ácido tartárico"),
    ("onion", Is, "cebola, cebolinha, cebolinho, chalota, refogado"),
    (
        "onion",
        May,
        "caldo, sopa, molho, guisado, ensopado, estufado, almôndega, croquete, rissol, papinha, comida de bebé, comida de bebê, boião, hambúrguer, caril, lasanha, recheio, patê",
    ),
    ("garlic", Is, "alho, alheira, aioli"),
    ("leek", Is, "alho-poró, alho-francês, alho-porro"),
    ("chives", Is, "cebolinho, ceboleto"),
    ("macadamia nuts", Is, "macadâmia, noz de macadâmia"),
    (
        "macadamia nuts",
        May,
        "mistura de nozes, frutos secos, mix de nozes, nozes, castanhas mistas, mix de castanhas, mistura de castanhas",
    ),
    ("black walnuts", Is, "noz preta, noz-negra, nozes pretas, nogueira preta"),
    (
        "black walnuts",
        May,
        "noz, nozes, frutos secos, castanhas mistas, mix de castanhas, mistura de castanhas, mistura de nozes, mix de nozes",
    ),
    ("hops", Is, "lúpulo"),
    ("mouldy food", Is, "bolorento, bolorenta, bolor, mofado, mofada, mofo, queijo azul, queijos azuis"),
    ("compost", Is, "composto, compostagem, adubo"),
    ("nutmeg", Is, "noz-moscada, moscada"),
    (
        "alcohol",
        Is,
        "álcool, alcoólico, cerveja, vinho, licor, aguardente, cachaça, espumante, champanhe, caipirinha, rum, whisky, vodca, gim, uísque, conhaque, xerez",
    ),
    ("alcohol", May, "sidra"),
    (
        "raw yeast dough",
        Is,
        "massa crua, massa de pão, massa de pizza, massa-mãe, massa lêveda, massa fermentada, fermento de padeiro, fermento biológico, fermento fresco, fermento seco, levedura seca, levedura fresca",
    ),
    (
        "cooked bones",
        Is,
        "osso cozido, ossos cozidos, osso assado, osso frito, osso defumado, osso de frango, osso de galinha, osso de peru, osso de porco, osso de presunto, osso de borrego",
    ),
    ("cooked bones", May, "osso, costela, costeleta, entrecosto, asa de frango, coxa de frango"),
    ("avocado", Is, "abacate, guacamole, avocado"),
    (
        "salty snacks",
        Is,
        "salgado, salgada, salgadinho, sal, batatas fritas, batata frita, presunto, fiambre, mortadela, salsicha, linguiça, chouriço, salame, anchova, molho de soja, bacalhau salgado, torresmo, enchido, carne seca, charque, cachorro-quente, shoyu, cubo de caldo, caldo em cubo",
    ),
    ("salty snacks", May, "pipoca, azeitona, bolacha de água e sal"),
    ("bacon", Is, "bacon, toucinho, toicinho"),
    ("fatty trimmings", Is, "pele de frango, pele de galinha, pele de peru, banha, sebo, gordura"),
    (
        "milk",
        Is,
        "leite, natas, nata, iogurte, leite condensado, requeijão, coalhada, soro de leite, lacticínio, laticínio, kefir, gelado, sorvete, creme azedo, pudim, flã",
    ),
    ("cheese", Is, "queijo, queijinho, requeijão"),
    (
        "fruit pits",
        Is,
        "caroço, caroço de fruta, caroço de cereja, caroço de pêssego, caroço de ameixa, caroço de damasco, caroço de manga, caroço de abacate, caroço de nectarina",
    ),
    ("fruit pits", May, "cereja, pêssego, ameixa, damasco, alperce, nectarina, manga, ginja"),
    ("apple seeds", Is, "semente de maçã, sementes de maçã, pevide de maçã, pevides de maçã, miolo de maçã"),
    ("apple seeds", May, "maçã"),
    (
        "sugary or starchy treats",
        Is,
        "açúcar, doce, doces, rebuçado, guloseima, bolacha, biscoito, bolo, cereais, massa, macarrão, esparguete, arroz, batata, mel, compota, geleia, gelado, sorvete, pipoca, batatas fritas, papa, bala, queque, flocos de milho, flocos de aveia, mingau, xarope, espaguete, pirulito, ursinho de goma, jujuba, panqueca, crepe, waffle",
    ),
    ("bread", Is, "pão, pães, pãozinho, tosta, torrada, broa, baguete, pãezinhos"),
    (
        "salt",
        Is,
        "sal, salgado, salgada, salgadinho, presunto, bacon, toucinho, salsicha, linguiça, chouriço, anchova, molho de soja, enchido, fiambre, mortadela, salame, carne seca, charque, cachorro-quente, shoyu, cubo de caldo, caldo em cubo",
    ),
    ("salt", May, "pipoca, azeitona, queijo"),
    ("crisps", Is, "batatas fritas, batata frita"),
    ("garlic", May, "homus, húmus"),
    ("fallen nuts", Is, "noz caída, nozes caídas"),
    ("potato sprouts", Is, "broto de batata, grelo de batata, batata germinada, batata brotada, batata grelada"),
    ("green potatoes", Is, "batata verde"),
    ("rhubarb", Is, "ruibarbo"),
    ("raw yeast dough", May, "fermento, levedura"),
    (
        "wild mushrooms",
        Is,
        "cogumelo silvestre, cogumelo selvagem, cogumelos selvagens, cogumelo do mato, cogumelo venenoso",
    ),
];
