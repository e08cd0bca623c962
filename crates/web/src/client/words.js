// What happened in words, as the notebook's own pages say it (crates/web/src/wording.rs); held together by
// tests/fixtures/shared.json, which is read on both sides.

/** @import { Answer, EndReason, SignLevel, Then } from "../../client-checks/client" */

/** @type {Record<Answer, string>} How a press was answered. */
export const ANSWER = {
  given: "given",
  partly: "partly given",
  declined: "not now",
  alternative: "not now, something else",
  missed: "missed",
};

/** @type {Record<Then, string>} What the animal did then. */
export const THEN = { took: "took it", ignored: "ignored it", left: "left", pressed_again: "pressed again" };

/** @type {Record<EndReason, string>} Why a session ended. */
export const END = {
  done: "the plan was done",
  animal_left: "the animal left",
  strong_sign: "a strong sign",
  closing_word: "closing word",
  interrupted: "something came up",
};

/** @type {Record<SignLevel, string>} How strong a sign is. */
export const LEVEL = { joining: "taking part", mild: "mild", strong: "strong" };
