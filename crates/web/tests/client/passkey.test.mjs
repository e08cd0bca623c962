// Bytes of passkeys as the server writes them. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { test } from "node:test";
import { bytes, written } from "../../src/client/passkey.js";

test("bytes are written in base64url without padding, and read back", () => {
  // Vectors of RFC 4648, section 10, and the two digits in which it differs from base64 (section 5).
  for (const [text, plain] of [
    ["", []],
    ["Zg", [102]],
    ["Zm8", [102, 111]],
    ["Zm9v", [102, 111, 111]],
    ["-_-_", [251, 255, 191]],
  ]) {
    assert.deepEqual([...bytes(text)], plain);
    assert.equal(written(new Uint8Array(plain).buffer), text);
  }
});
