// Sound judged: in the page where its ear can, else by the notebook. Nothing is noted, and no sound is kept.

import { hearsHere, openEar } from "./ear.js";
import { say } from "./say.js";
import { wav } from "./sound.js";

/** @import { FromEar, Judge, Taken, ToEar, Vocabulary } from "../../client-checks/client" */

/**
 * Sends what was asked for as JSON; an error says why in words.
 * @param {string} url
 * @param {RequestInit} [wanted]
 */
export async function asked(url, wanted = {}) {
  const headers = { accept: "application/json", ...wanted.headers };
  const response = await fetch(url, { credentials: "same-origin", ...wanted, headers });
  const answer = await response.json().catch(() => undefined);
  if (response.ok && answer) return answer;
  throw new Error(answer?.error ?? `${url}: ${response.status}`);
}

/**
 * A sound file for the notebook.
 * @param {Taken} sound
 * @returns {RequestInit}
 */
export const sent = ({ samples, rate }) => ({
  method: "POST",
  headers: { "content-type": "audio/wav" },
  body: wav(samples, rate),
});

/** @param {DOMStringMap} data of an element that says where the ear and the notebook are */
export const canJudge = ({ module, notebook }) =>
  (module !== undefined && hearsHere()) || notebook !== undefined ? undefined : say("client-enrol-no-way");

/**
 * What a proof or a cut names a word by: the id, or the place of its first clip.
 * @param {Vocabulary} vocabulary
 * @param {string} name
 */
export const saysOf = ({ words }, name) => (words.find((w) => w.word === name) ?? words[Number(name)])?.says ?? name;

/**
 * A judge with what is listened for now.
 * @param {DOMStringMap} data
 * @returns {Promise<Judge>}
 */
export async function openJudge({ module, vocabulary = "", notebook }) {
  if (module === undefined || !hearsHere()) {
    const known = /** @type {Vocabulary} */ (await asked(vocabulary));
    return {
      here: false,
      vocabulary: known,
      prove: (sound, word) => asked(`${notebook}/prove/${word}`, sent(sound)),
      cut: (sound) => asked(`${notebook}/cut`, sent(sound)),
      close: () => {},
    };
  }
  const { worker, words } = await openEar({ module, words: vocabulary });
  /** @type {Promise<unknown>} */
  let before = Promise.resolve();
  /**
   * One question after the other.
   * @template {"proof" | "cut"} K
   * @param {Partial<ToEar>} question
   * @param {K} answer
   * @returns {Promise<NonNullable<FromEar[K]>>}
   */
  const ask = (question, answer) => {
    const next = before.then(
      () =>
        new Promise((resolve, reject) => {
          worker.onmessage = (/** @type {MessageEvent<FromEar>} */ { data }) => {
            const found = data[answer];
            if (found) resolve(/** @type {NonNullable<FromEar[K]>} */ (found));
            if (data.wrong) reject(new Error(data.wrong));
          };
          worker.onerror = (event) => reject(new Error(event.message || "worker"));
          worker.postMessage(question);
        }),
    );
    before = next.catch(() => {});
    return /** @type {Promise<NonNullable<FromEar[K]>>} */ (next);
  };
  return {
    here: true,
    vocabulary: words,
    prove: ({ samples, rate }, word) => {
      const first = words.words.findIndex((w) => w.word === word);
      if (first < 0) return Promise.reject(new Error(say("client-ear-left-out", { words: word })));
      return ask({ prove: { samples, rate, word: first } }, "proof");
    },
    cut: ({ samples, rate }) => ask({ cut: { samples, rate } }, "cut"),
    close: () => worker.terminate(),
  };
}
