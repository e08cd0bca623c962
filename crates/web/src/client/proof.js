// The proof of a recording: the button is pressed once more, and the page says whether it was heard, and if not, why.

import { button, el, text } from "./dom.js";
import { canJudge, openJudge, saysOf } from "./judge.js";
import { inWords, noMicrophone } from "./microphone.js";
import { number, say } from "./say.js";
import { loudness, pressed, take } from "./sound.js";

/** @import { Judge, Proof, Taken, Taking, Vocabulary } from "../../client-checks/client" */

const MOST_S = 8;
const MOST_SURE = 99;

/** @param {number} confidence */
const sure = (confidence) => Math.min(MOST_SURE, Math.round(100 * confidence));

/**
 * What came of it in words, with what to do.
 * @param {Proof} proof
 * @param {string} says
 * @param {Vocabulary} vocabulary
 * @returns {string}
 */
export function proofSays(proof, says, vocabulary) {
  switch (proof.outcome) {
    case "heard":
      return `${say("client-enrol-heard")} ${say("client-enrol-heard-more", { sure: sure(proof.confidence) })}`;
    case "unsure":
      return say("client-enrol-unsure", { says, sure: sure(proof.confidence) });
    case "nothing":
      return say("client-enrol-nothing");
    case "too_quiet":
      return say("client-enrol-too-quiet", { db: number(Math.max(0, proof.over_room_db)) });
    case "too_far":
      return say("client-enrol-too-far", { db: number(proof.below_db) });
    case "wrong_speed":
      return say("client-enrol-wrong-speed", {
        percent: number(Math.abs(100 * (proof.speed - 1))),
        way: proof.speed < 1 ? "slower" : "faster",
      });
    case "another_word":
      return say("client-enrol-another-word", {
        other: saysOf(vocabulary, proof.word),
        says,
        sure: sure(proof.confidence),
      });
    case "another_sound":
      return say("client-enrol-another-sound");
  }
}

/**
 * A proof of one word in an element: press, be told, and again or skip. `ended(heard)` is called once it is heard surely or
 * skipped. The judge is opened anew for each proof, so that it knows the recordings as they are then.
 * @param {HTMLElement} root
 * @param {{ word: string, says: string, where: DOMStringMap, first?: boolean, ended?: (heard: boolean) => void }} about
 */
export function makeProof(root, { word, says, where, first = false, ended = () => {} }) {
  const said = el("p", { role: "status", "data-test": "proof-state" });
  const level = el("meter", {
    class: "wide",
    min: 0,
    max: 1,
    value: 0,
    "aria-label": say("client-ear-loudness"),
    hidden: true,
  });
  /** @type {Taking | undefined} */
  let taking;
  const go = button(say("client-enrol-prove"), "prove", () => (taking ? taking.stop() : start()), {
    class: first ? "primary wide" : "wide",
  });
  const skip = button(say("client-enrol-skip"), "proof-skip", () => {
    if (root.dataset.outcome !== "heard") outcome("skipped", say("client-enrol-skipped"));
    skip.hidden = true;
    ended(root.dataset.outcome === "heard");
  });
  skip.hidden = !first;
  root.append(el("div", { class: "row" }, go, skip), level, said);
  const mic = noMicrophone();
  const why =
    mic === undefined
      ? canJudge(where)
      : mic === "insecure"
        ? say("client-ear-insecure")
        : say("client-ear-record-unable");
  if (why !== undefined) {
    go.disabled = true;
    outcome("unable", why);
    return;
  }

  /**
   * @param {string} name
   * @param {string} words
   */
  function outcome(name, words) {
    root.dataset.outcome = name;
    said.className = name === "heard" ? "well" : ["skipped", "judging", "listening"].includes(name) ? "" : "caution";
    text(said, words);
  }

  async function start() {
    go.disabled = true;
    outcome("listening", say("client-ear-asking"));
    const opening = openJudge(where);
    // That it failed is told once there is something to judge.
    opening.catch(() => {});
    try {
      taking = await take({
        most: MOST_S,
        enough: pressed,
        passed(seconds, peak) {
          level.value = loudness(peak);
          text(said, say("client-enrol-prove-now", { says, seconds: number(Math.max(0, MOST_S - seconds)) }));
        },
        done: (taken) => judged(opening, taken),
        lost(words) {
          over();
          outcome("wrong", words);
          opening.then((judge) => judge.close()).catch(() => {});
        },
      });
      level.hidden = false;
      text(go, say("client-ear-stop"));
    } catch (error) {
      outcome("wrong", inWords(error));
      opening.then((judge) => judge.close()).catch(() => {});
      taking = undefined;
    }
    go.disabled = false;
  }

  function over() {
    taking = undefined;
    level.hidden = true;
    text(go, say("client-enrol-again"));
  }

  /**
   * @param {Promise<Judge>} opening
   * @param {Taken} taken
   */
  async function judged(opening, taken) {
    over();
    go.disabled = true;
    outcome("judging", say("client-enrol-judging"));
    /** @type {Judge | undefined} */
    let judge;
    try {
      judge = await opening;
      const proof = await judge.prove(taken, word);
      outcome(proof.outcome, proofSays(proof, says, judge.vocabulary));
    } catch (error) {
      outcome("wrong", say("client-enrol-failed", { why: error instanceof Error ? error.message : String(error) }));
    }
    judge?.close();
    go.disabled = false;
    if (root.dataset.outcome === "heard") {
      go.classList.remove("primary");
      skip.hidden = true;
      ended(true);
    }
  }
}

/** @type {HTMLElement | null} */
const root = globalThis.document?.querySelector("[data-proof]") ?? null;
if (root) {
  const { proof: word = "", says = "" } = root.dataset;
  makeProof(root, { word, says, where: root.dataset, first: "kept" in root.dataset });
}
