//! English names under which the foods of the hazards list come to the kitchen.
//!
//! Source: common names, from memory.

use super::Row;
use super::Sure::{Is, May};

pub(super) const NAMES: &[Row] = &[
    ("chocolate", Is, "choc, choccy, choco, cacao, brownie, fudge, mocha, ganache, hazelnut spread, rum ball"),
    ("chocolate", May, "cookie, muffin, truffle, trail mix, candy, cake, gingerbread"),
    ("coffee", Is, "decaf, espresso, latte, cappuccino, mocha, tiramisu"),
    ("caffeine", Is, "tea, cola, energy drink, matcha, guarana"),
    ("xylitol", Is, "sugar free, sugarless, e967, xylit"),
    (
        "xylitol",
        May,
        "peanut butter, almond butter, no added sugar, toothpaste, breath mint, candy, jam, cough drop, cough sweet, throat lozenge, lozenge, mint candy, lollipop, gummy",
    ),
    ("grapes", Is, "wine"),
    ("cream of tartar", Is, "tartar powder, playdough"),
    ("cream of tartar", May, "snickerdoodle, baking powder"),
    ("tamarind", May, "chutney, pad thai, brown sauce"),
    ("black walnuts", May, "walnut, mixed nuts, nut"),
    ("hops", Is, "hop pellet, brewing hop"),
    ("mouldy food", Is, "mouldy, moldy, moldy food, blue cheese, roquefort, gorgonzola, stilton"),
    ("nutmeg", May, "eggnog, mixed spice, pumpkin spice, pumpkin pie"),
    ("raisins", Is, "sultana, fruitcake, fruit cake, mince pie, christmas pudding, hot cross bun, stollen, plum cake"),
    ("raisins", May, "trail mix, granola, muesli, dried fruit, panettone"),
    ("onion", Is, "scallion, shallot, allium, spring onion"),
    (
        "onion",
        May,
        "gravy, broth, stock, soup, stuffing, baby food, pizza, curry, ready meal, stew, casserole, meatball, meatloaf, burger, hamburger, tomato sauce, pasta sauce, bolognese, ketchup, barbecue sauce, bbq sauce, lasagne, lasagna, quiche, kebab, falafel, stock cube",
    ),
    ("garlic", Is, "aioli, pesto, tzatziki"),
    ("garlic", May, "hummus, houmous, pizza"),
    ("macadamia nuts", Is, "macadamia"),
    ("macadamia nuts", May, "mixed nuts, trail mix, nut"),
    ("alcohol", Is, "beer, wine, rum, whisky, whiskey, vodka, gin, brandy, liqueur, sherry"),
    ("alcohol", May, "cider, trifle, eggnog"),
    (
        "raw yeast dough",
        Is,
        "dough, sourdough starter, fresh yeast, baker's yeast, bakers' yeast, dry yeast, dried yeast, instant yeast",
    ),
    (
        "cooked bones",
        Is,
        "chicken bone, turkey bone, rib bone, lamb bone, pork bone, boiled bone, roast bone, smoked bone",
    ),
    ("cooked bones", May, "bone, rib, chicken wing, drumstick, chop, pork chop, lamb chop"),
    ("avocado", Is, "guacamole, guac"),
    (
        "salty snacks",
        Is,
        "crisp, potato chip, corn chip, tortilla chip, pretzel, salted, salty, salt, ham, sausage, hot dog, hotdog, salami, pepperoni, jerky, pork rind, fries, anchovy, soy sauce, deli meat, lunch meat, cold cut, stock cube, bouillon cube, pork scratching, crackling",
    ),
    ("salty snacks", May, "popcorn, chip, cracker, olive"),
    ("fatty trimmings", Is, "fat trimming, chicken skin, turkey skin, lard, dripping, suet, pork fat"),
    ("fatty trimmings", May, "trimming, gristle"),
    ("milk", Is, "cream, yogurt, yoghurt, yoghourt, custard, buttermilk, milkshake, whey, dairy, kefir, latte, eggnog"),
    ("cheese", Is, "cheesy, cheddar, mozzarella, parmesan, gouda, edam, brie, feta, ricotta, halloumi, paneer"),
    (
        "fruit pits",
        Is,
        "fruit stone, cherry pit, cherry stone, peach pit, peach stone, plum pit, plum stone, apricot pit, apricot stone, apricot kernel, mango pit, mango stone, nectarine pit, nectarine stone, avocado pit, avocado stone",
    ),
    ("fruit pits", May, "cherry, peach, plum, apricot, nectarine, mango, prune, damson"),
    ("apple seeds", Is, "apple pip, apple core"),
    ("apple seeds", May, "apple"),
    (
        "sugary or starchy treats",
        Is,
        "candy, sweets, sugar, cookie, biscuit, cake, cracker, cereal, pasta, noodle, rice, potato, honey, jam, granola, muesli, pretzel, popcorn, crisp, yogurt drop, yoghurt drop, ice cream, fries, fruitcake, muffin, cornflake, corn flake, syrup, spaghetti, macaroni, oatmeal, porridge, rolled oat, pastry, doughnut, donut, cough drop, cough sweet, throat lozenge, lozenge, breath mint, mint candy, lollipop, gummy, pancake, waffle",
    ),
    ("bread", Is, "toast, bagel, bun, baguette, crouton, sourdough, rusk, croissant, brioche"),
    (
        "salt",
        Is,
        "salted, salty, pretzel, ham, bacon, sausage, salami, jerky, fries, soy sauce, anchovy, hot dog, hotdog, pepperoni, potato chip, deli meat, lunch meat, cold cut, stock cube, bouillon cube",
    ),
    ("salt", May, "popcorn, chip, cracker, cheese, olive"),
    ("potato sprouts", Is, "sprouted potato, sprouting potato, potato shoot, potato leaf, potato leaves"),
    ("raw yeast dough", May, "yeast"),
    ("wild mushrooms", Is, "wild mushroom, forest mushroom, toadstool, death cap, fly agaric"),
];
