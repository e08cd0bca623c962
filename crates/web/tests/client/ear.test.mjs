// Hearing on the device, with a made-up worker and outbox. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { test } from "node:test";
import { event, hearsHere } from "../../src/client/ear.js";
import { runsHere } from "../../src/client/engine.js";
import { heardId } from "../../src/client/uuid.js";

const STREAM = "0195f3a0-0000-7000-8000-000000000001";
const BALL = "0195f3a0-0000-7000-8000-0000000000ba";
const words = {
  home: "h",
  zone: "Europe/Lisbon",
  rate: 8000,
  left_out: [],
  words: [{ word: BALL, says: "ball", clip: "" }],
};
const press = { clip: 0, onset: 12.3456, confidence: 1, speed: 0.98, level: -20, share: 1 };
const about = { stream: STREAM, began: Date.parse("2026-03-02T12:00:00Z"), words, animal: "a", session: "s" };

test("the id of a press follows from stream, moment and word", async () => {
  const at = about.began + 12_346;
  const id = await heardId(STREAM, 12.3456, BALL, at);
  assert.match(id, /^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  assert.equal(parseInt(id.replaceAll("-", "").slice(0, 12), 16), at, "it begins with the time");
  assert.equal(await heardId(STREAM, 12.34561, BALL, at), id, "heard again");
  for (const other of [
    heardId(STREAM, 12.347, BALL, at),
    heardId(STREAM, 12.3456, STREAM, at),
    heardId(BALL, 12.3456, BALL, at),
  ]) {
    assert.notEqual(await other, id);
  }
});

test("a heard press is noted as the notebook notes it: by nobody known, never quite certain", async () => {
  const made = await event(press, about);
  assert.equal(made.happened_at, "2026-03-02T12:00:12.346Z");
  assert.deepEqual([made.source, made.animal, made.zone, made.person], ["heard", "a", "Europe/Lisbon", undefined]);
  assert.deepEqual(made.body, {
    kind: "press",
    word: BALL,
    by: "unknown",
    certainty: 0.9999,
    accident: "unsure",
    speed: 0.98,
    stream: STREAM,
    session: "s",
  });
  assert.equal((await event(press, about)).id, made.id);
  const nobodys = await event(press, { ...about, animal: undefined });
  assert.ok(!("animal" in nobodys) && !("session" in nobodys.body));
});

test("without workers or caches a browser does not hear by itself", () => {
  assert.ok(runsHere());
  assert.ok(!hearsHere(), "Node has no workers of the web");
});
