// What goes and what stays when a device may no longer read the notebook. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { test } from "node:test";
import { asLines, unsent } from "../../src/client/copy.js";

const row = (state, id = state) => ({ id, state, event: { id, body: { kind: "press" } } });

test("whatever the notebook has not taken is unsent", () => {
  const all = [row("sent"), row("kept"), row("held"), row("refused")];
  assert.deepEqual(
    unsent(all).map((r) => r.state),
    ["kept", "held", "refused"],
  );
});

test("saved taps are one event a line, whole", () => {
  const lines = asLines([row("kept", "a"), row("held", "b")]);
  assert.ok(lines.endsWith("\n"));
  assert.deepEqual(
    lines
      .trim()
      .split("\n")
      .map((l) => JSON.parse(l).id),
    ["a", "b"],
  );
});
