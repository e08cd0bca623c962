// Records a button's sound and puts it into the upload form as a WAV file; what follows is the same as for any file.

import { button, el, find, text } from "./dom.js";
import { inWords, noMicrophone } from "./microphone.js";
import { number, say } from "./say.js";
import { loudness, take, trimmed, wav } from "./sound.js";

/** @import { Taken, Taking } from "../../client-checks/client" */

const MOST_S = 4;
const LEAST_S = 0.15;

/** @param {HTMLElement} root */
function wire(root) {
  /** @type {HTMLFormElement} */
  const form = find(`#${root.dataset.recorder}`);
  /** @type {HTMLInputElement} */
  const file = find("input[type=file]", form);
  const said = el("p", { role: "status", "data-test": "record-state" });
  const level = el("meter", {
    class: "wide",
    min: 0,
    max: 1,
    value: 0,
    "aria-label": say("client-ear-loudness"),
    hidden: true,
  });
  const result = el("div", { class: "stack" });
  const why = noMicrophone();
  /** @type {Taking | undefined} */
  let taking;
  let again = false;

  const go = button(say("client-ear-record"), "record", () => (taking ? taking.stop() : start()), { class: "wide" });
  const how = el("p", { class: "hint" }, say("client-ear-record-how"));
  root.append(go, how, level, said, result);
  if (why) {
    go.disabled = true;
    text(said, why === "insecure" ? say("client-ear-record-insecure") : say("client-ear-record-unable"));
    return;
  }

  async function start() {
    result.replaceChildren();
    go.disabled = true;
    text(said, say("client-ear-asking"));
    try {
      taking = await take({
        most: MOST_S,
        passed(seconds, peak) {
          level.value = loudness(peak);
          text(said, say("client-ear-recording", { seconds: number(Math.max(0, MOST_S - seconds)) }));
        },
        done,
        lost(words) {
          shown(false);
          text(said, words);
        },
      });
      shown(true);
    } catch (error) {
      text(said, inWords(error));
    }
    go.disabled = false;
  }

  /** @param {boolean} recording */
  function shown(recording) {
    if (!recording) taking = undefined;
    level.hidden = !recording;
    const idle = again ? say("client-ear-record-again") : say("client-ear-record");
    text(go, recording ? say("client-ear-stop") : idle);
    go.setAttribute("aria-pressed", String(recording));
  }

  /** @param {Taken} taken */
  function done({ samples, rate }) {
    again = true;
    shown(false);
    const clip = trimmed(samples, rate);
    const seconds = clip.length / rate;
    if (seconds < LEAST_S || clip.every((s) => s === 0)) {
      text(said, say("client-ear-record-nothing"));
      return;
    }
    text(said, say("client-ear-recorded", { seconds: number(seconds, 1) }));
    const sound = new File([wav(clip, rate)], "recording.wav", { type: "audio/wav" });
    result.replaceChildren(
      el("audio", {
        controls: true,
        src: URL.createObjectURL(sound),
        "aria-label": say("client-ear-what-recorded"),
        "data-test": "record-play",
      }),
      button(
        say("client-ear-record-keep"),
        "record-keep",
        () => {
          const files = new DataTransfer();
          files.items.add(sound);
          file.files = files.files;
          form.requestSubmit();
        },
        { class: "primary wide" },
      ),
    );
  }
}

for (const root of document.querySelectorAll("[data-recorder]")) wire(/** @type {HTMLElement} */ (root));
