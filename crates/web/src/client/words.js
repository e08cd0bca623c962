// What happened, in the words of the catalogue that the notebook's own pages say too (client_events.ftl).

import { say } from "./say.js";

/** @import { Answer, EndReason, SignLevel, Then } from "../../client-checks/client" */
/** @import { Messages } from "../../client-checks/messages" */

/** @typedef {{ [K in keyof Messages]: keyof Messages[K] extends never ? K : never }[keyof Messages]} Plain A message without arguments. */

/** @type {Record<Answer, Plain>} How a press was answered. */
const ANSWER = {
  given: "client-events-given",
  partly: "client-events-partly",
  declined: "client-events-declined",
  alternative: "client-events-alternative",
  missed: "client-events-missed",
};

/** @type {Record<Then, Plain>} What the animal did then. */
const THEN = {
  took: "client-events-took",
  ignored: "client-events-ignored",
  left: "client-events-left",
  pressed_again: "client-events-pressed-again",
};

/** @type {Record<Exclude<EndReason, "animal_left">, Plain>} Why a session ended. */
const END = {
  done: "client-events-end-done",
  strong_sign: "client-events-end-strong-sign",
  closing_word: "client-events-end-closing-word",
  interrupted: "client-events-end-interrupted",
};

/** @type {Record<SignLevel, Plain>} How strong a sign is. */
const LEVEL = {
  joining: "client-events-level-joining",
  mild: "client-events-level-mild",
  strong: "client-events-level-strong",
};

/** @param {Answer} a */
export const answer = (a) => say(ANSWER[a]);
/** @param {Then} t */
export const then = (t) => say(THEN[t]);
/**
 * @param {EndReason} r
 * @param {string} name Of the animal.
 */
export const end = (r, name) => (r === "animal_left" ? say("client-events-end-left", { name }) : say(END[r]));
/** @param {SignLevel} l */
export const level = (l) => say(LEVEL[l]);
