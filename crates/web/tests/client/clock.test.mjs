// Times on a clock of twelve hours, as the notebook's own pages write them. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { test } from "node:test";

test("an hour of a clock of twelve hours has no zero before it", async () => {
  globalThis.document = { documentElement: { lang: "en", dataset: { clock: "h12" } } };
  const { time, timeSeconds } = await import("../../src/client/say.js");
  const at = new Date("2026-11-02T07:06:05Z");
  assert.equal(time(at, "UTC").replace("\u202f", " "), "7:06 am");
  assert.match(timeSeconds(at).replace("\u202f", " "), /^\d{1,2}:06:05 [ap]m$/);
  assert.doesNotMatch(timeSeconds(at), /^0/);
});
