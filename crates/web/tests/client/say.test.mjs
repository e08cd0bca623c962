// Messages as the scripts say them. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { test } from "node:test";
import { number, say, time, timeSeconds } from "../../src/client/say.js";

test("a message is said with its arguments, in the number they need", () => {
  globalThis.saysoText = {
    "a-plain": ["Given"],
    "b-places": [
      "Showed ",
      { v: "word" },
      " ",
      { s: "times", o: { 0: ["never"], one: ["once"], other: [{ v: "times" }, " times"] } },
      ".",
    ],
  };
  assert.equal(say("a-plain"), "Given");
  assert.equal(say("b-places", { word: "ball", times: 0 }), "Showed ball never.");
  assert.equal(say("b-places", { word: "ball", times: 1 }), "Showed ball once.");
  assert.equal(say("b-places", { word: "ball", times: 1200 }), "Showed ball 1,200 times.");
  assert.throws(() => say("c-none"), /no message c-none/);
  assert.equal(number(2.25, 1), "2.3");
  assert.equal(number(-1.5, 1), "\u22121.5");
  assert.equal(number(-0.04, 1), "0.0");
});

test("a full stop of an argument ends the sentence as well", () => {
  globalThis.saysoText = { "a-rest": ["Hasta las ", { v: "until" }, ". Luego sigue."] };
  assert.equal(say("a-rest", { until: "7:06 a. m." }), "Hasta las 7:06 a. m. Luego sigue.");
  assert.equal(say("a-rest", { until: "07:06" }), "Hasta las 07:06. Luego sigue.");
});

test("a time is written with two digits for the hour on a clock of twenty-four hours", () => {
  const at = new Date("2026-11-02T07:06:05Z");
  assert.equal(time(at, "UTC"), "07:06");
  assert.match(timeSeconds(at), /^\d\d:06:05$/);
});
