// What happened, in the words of the catalogue that the notebook's own pages say too (client_events.ftl).

import { say } from "./say.js";

/** @import { Answer, EndReason, SignLevel, Then } from "../../client-checks/client" */

/** @type {Record<Answer, string>} How a press was answered. */
export const ANSWER = {
  given: say("client-events-given"),
  partly: say("client-events-partly"),
  declined: say("client-events-declined"),
  alternative: say("client-events-alternative"),
  missed: say("client-events-missed"),
};

/** @type {Record<Then, string>} What the animal did then. */
export const THEN = {
  took: say("client-events-took"),
  ignored: say("client-events-ignored"),
  left: say("client-events-left"),
  pressed_again: say("client-events-pressed-again"),
};

/** @type {Record<EndReason, string>} Why a session ended. */
export const END = {
  done: say("client-events-end-done"),
  animal_left: say("client-events-end-left"),
  strong_sign: say("client-events-end-strong-sign"),
  closing_word: say("client-events-end-closing-word"),
  interrupted: say("client-events-end-interrupted"),
};

/** @type {Record<SignLevel, string>} How strong a sign is. */
export const LEVEL = {
  joining: say("client-events-level-joining"),
  mild: say("client-events-level-mild"),
  strong: say("client-events-level-strong"),
};
