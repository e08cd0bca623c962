//! Cards, rules and layouts: what the household writes about itself.

use crate::chance::Chance;
use crate::clock::at_hour;
use crate::world::{World, seconds};
use sayso_model::*;

impl World<'_> {
    /// Cards of the household, its people, animals, rewards and rules. `begin` is the first moment.
    pub(crate) fn write_cards(&mut self, begin: Moment) {
        let cfg = self.cfg;
        let mut at = begin;
        let mut card = |w: &mut Self, body: Body| {
            at = at.plus_seconds(w.chance.between(4.0, 20.0));
            let (seen, body) = w.card(at, body);
            w.pen.write(seen, body);
        };
        card(self, HomeCard { name: cfg.name.clone(), zone: cfg.zone.clone() }.into());
        for (t, id) in cfg.people.iter().zip(self.ids.people.clone()) {
            card(self, PersonCard::new(id, t.name.clone(), t.role).into());
        }
        for animal in 0..cfg.animals.len() {
            let body = self.animal_card(animal, 0);
            card(self, body.into());
        }
        for (i, r) in cfg.rewards.iter().enumerate() {
            let body = RewardCard {
                kcal_per_piece: r.kcal_per_piece,
                grams_per_piece: r.grams_per_piece,
                seconds_to_deliver: Some(r.seconds_to_deliver),
                most_per_day: Some(r.most_per_day),
                says: r.says.clone(),
                already_said: r.already_said,
                animals: r.animals.iter().map(|l| self.ids.animals[*l]).collect(),
                ..RewardCard::new(self.ids.rewards[i], r.name.clone(), r.kind)
            };
            card(self, body.into());
        }
    }

    fn animal_card(&self, animal: usize, number: u32) -> AnimalCard {
        let l = &self.cfg.animals[animal];
        AnimalCard {
            animal: self.ids.animals[animal],
            name: l.name.clone(),
            species: l.species,
            born: l.born,
            born_estimated: l.born_estimated,
            weight_kg: l.weight_kg,
            adult_weight_kg: None,
            life_stage: l.life_stage,
            day_kcal: l.day_kcal.filter(|(from, _)| *from <= number).map(|(_, kcal)| kcal),
            reward_share: None,
            limits: l.limits.clone(),
            cautions: l.cautions.clone(),
            active: true,
        }
    }

    /// What the household writes on a day: words introduced, their places, later versions of cards.
    pub(crate) fn write_day_cards(&mut self, number: u32, day: Day, begin: Moment) {
        let cfg = self.cfg;
        let mut at = if number == 0 { begin.plus_seconds(900.0) } else { at_hour(day, 6.5, &cfg.zone) };
        let mut placed = false;
        for (word, w) in cfg.words.iter().enumerate().filter(|(_, w)| w.introduced == number) {
            at = at.plus_seconds(self.chance.between(20.0, 60.0));
            let body = WordCard {
                word: self.ids.words[word],
                says: w.says.clone(),
                means: w.means.clone(),
                answer: w.answer.clone(),
                not_now: w.not_now.clone(),
                reward: self.ids.rewards.get(w.reward).copied(),
                closing: w.closing,
                animals: w.animals.iter().map(|l| self.ids.animals[*l]).collect(),
                active: true,
            };
            let (seen, body) = self.card(at, body);
            self.pen.write(seen, body);
            for animal in w.animals.clone() {
                let (stage, because) = if w.shown_from <= number {
                    (Stage::Show, "we start to show it")
                } else {
                    (Stage::Prepare, "card written, button placed")
                };
                self.choose_stage(animal, word, stage, because, at.plus_seconds(3.0));
            }
            if cfg.clips {
                let body = self.clip_card(word, at);
                let (seen, body) = self.card(at.plus_seconds(8.0), body);
                self.pen.write(seen, body);
            }
            for rule in cfg.rules.iter().filter(|r| r.word == Some(word)) {
                let body = HouseRule {
                    rule: RuleId(self.pen.fresh(at)),
                    word: Some(self.ids.words[word]),
                    text: rule.text.clone(),
                    active: true,
                };
                let (seen, body) = self.card(at.plus_seconds(12.0), body);
                self.pen.write(seen, body);
            }
            placed = true;
        }
        if placed {
            at = at.plus_seconds(30.0);
            let words = self
                .on_board()
                .into_iter()
                .map(|w| {
                    let Place { row, column } = cfg.words[w].place;
                    Placed { word: self.ids.words[w], row, column }
                })
                .collect();
            let body = BoardLayout { rows: cfg.board.0, columns: cfg.board.1, words };
            let (seen, body) = self.card(at, body);
            self.pen.write(seen, body);
        }
        if number == 0 {
            for r in cfg.rules.iter().filter(|r| r.word.is_none()) {
                at = at.plus_seconds(15.0);
                let rule = RuleId(self.pen.fresh(at));
                let (seen, body) = self.card(at, HouseRule { rule, word: None, text: r.text.clone(), active: true });
                self.pen.write(seen, body);
            }
        }
        for r in cfg.remarks.iter().filter(|r| r.day == number) {
            let (seen, body) = self.card(at_hour(day, 20.0, &cfg.zone), Remark { text: r.text.clone() });
            self.pen.write(seen, body);
        }
        for animal in 0..cfg.animals.len() {
            if number > 0 && cfg.animals[animal].day_kcal.is_some_and(|(from, _)| from == number) {
                let body = self.animal_card(animal, number);
                let (seen, body) = self.card(at.plus_seconds(60.0), body);
                self.pen.write(seen, body);
            }
        }
    }

    fn clip_card(&mut self, word: usize, at: Moment) -> ClipCard {
        let mut chance = Chance::new(u64::from(self.chance.seed()), 9);
        ClipCard {
            clip: ClipId(self.pen.fresh(at)),
            word: self.ids.words[word],
            seconds: seconds(chance.between(0.5, 1.3)),
            sha256: chance.bytes::<32>().iter().map(|b| format!("{b:02x}")).collect(),
            lufs: Some((chance.between(-26.0, -18.0) * 10.0).round() / 10.0),
            active: true,
        }
    }
}
