// Messages as the scripts say them. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { test } from "node:test";
import { number, say } from "../../src/client/say.js";

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
