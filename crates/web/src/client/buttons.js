// All buttons recorded in one go: pressed in order, cut at the pauses, named by that order, kept, and proved one by one.

import { button, el, text } from "./dom.js";
import { asked, canJudge, openJudge, sent } from "./judge.js";
import { inWords, noMicrophone } from "./microphone.js";
import { compared, dropped, inOrder, renamed, skipped } from "./naming.js";
import { makeProof } from "./proof.js";
import { number, say } from "./say.js";
import { loudness, take, wav } from "./sound.js";
import { wave } from "./wave.js";

/** @import { Judge, Stretch, Taken, Taking } from "../../client-checks/client" */
/** @import { Names } from "./naming.js" */

/** @typedef {{ word: string, says: string, recorded: boolean }} Word */

const MOST_S = 150; // what a notebook takes at once, at any rate of a microphone
const LOOK_S = 2;

/** @param {unknown} error */
const why = (error) => (error instanceof Error ? error.message : String(error));

/** @param {HTMLElement} root */
function wire(root) {
  /** @type {Word[]} */
  const words = JSON.parse(root.dataset.buttons ?? "[]");
  const said = el("p", { role: "status", "data-test": "buttons-state" });
  const level = el("meter", {
    class: "wide",
    min: 0,
    max: 1,
    value: 0,
    "aria-label": say("client-ear-loudness"),
    hidden: true,
  });
  const body = el("div", { class: "stack" });
  const go = button(say("client-enrol-begin"), "buttons-go", () => (taking ? taking.stop() : start()), {
    class: "primary wide",
  });
  /** @type {Taking | undefined} */
  let taking;
  /** @type {Judge | undefined} */
  let judge;
  root.append(level, said, go, body);
  const mic = noMicrophone();
  const unable =
    mic === undefined ? canJudge(root.dataset) : say(mic === "insecure" ? "client-ear-insecure" : "client-ear-unable");
  if (unable !== undefined) {
    go.disabled = true;
    text(said, unable);
    return;
  }

  /** @param {string} name */
  const step = (name) => {
    root.dataset.step = name;
  };

  /** @param {string} words */
  function halted(words) {
    judge?.close();
    judge = undefined;
    taking = undefined;
    level.hidden = true;
    go.hidden = false;
    go.disabled = false;
    text(go, say("client-enrol-start-again"));
    text(said, words);
    step("begin");
  }

  async function start() {
    body.replaceChildren();
    go.disabled = true;
    text(said, say("client-ear-asking"));
    let heard = 0;
    let looked = 0;
    let looking = false;
    try {
      judge = await openJudge(root.dataset);
      const here = judge;
      taking = await take({
        most: MOST_S,
        passed(seconds, peak) {
          level.value = loudness(peak);
          // The count is looked at now and then, not while a look is on; a notebook is not sent the same sound over and over.
          if (!looking && taking && here.here && seconds - looked >= LOOK_S) {
            looking = true;
            looked = seconds;
            here
              .cut(taking.sofar())
              .then(({ sounds }) => {
                heard = sounds.length;
              })
              .catch((error) => console.warn("count", error))
              .finally(() => {
                looking = false;
              });
          }
          const next = words[Math.min(heard, words.length - 1)].says;
          text(
            said,
            here.here && heard >= words.length
              ? say("client-enrol-running-all", { heard, words: words.length })
              : say("client-enrol-running", {
                  next,
                  heard,
                  words: words.length,
                  seconds: number(Math.max(0, MOST_S - seconds)),
                }),
          );
        },
        done: cut,
        lost: halted,
      });
      level.hidden = false;
      text(go, say("client-enrol-end"));
      step("record");
      go.disabled = false;
    } catch (error) {
      halted(error instanceof DOMException ? inWords(error) : say("client-enrol-failed", { why: why(error) }));
    }
  }

  /** @param {Taken} taken */
  async function cut(taken) {
    taking = undefined;
    level.hidden = true;
    go.disabled = true;
    text(said, say("client-enrol-cutting"));
    try {
      const { sounds } = await /** @type {Judge} */ (judge).cut(taken);
      judge?.close();
      judge = undefined;
      if (sounds.length === 0) halted(say("client-enrol-none"));
      else chosen(taken, sounds);
    } catch (error) {
      halted(say("client-enrol-failed", { why: why(error) }));
    }
  }

  /**
   * Each sound with its picture and its word, to be put right and kept.
   * @param {Taken} taken
   * @param {Stretch[]} sounds
   */
  function chosen({ samples, rate }, sounds) {
    let names = inOrder(sounds.length, words.length);
    const pieces = sounds.map(({ from, to }) => samples.slice(from, to));
    const keep = button("", "buttons-keep", () => kept(pieces, rate, names), { class: "primary wide" });
    const rows = el("ol", { class: "plain" });
    text(go, say("client-enrol-start-again"));
    go.disabled = false;
    go.classList.remove("primary");
    step("name");

    /** @param {Names} now */
    function draw(now) {
      names = now;
      const left = names.filter((n) => n !== null).length;
      const count = names.filter((n) => typeof n === "number").length;
      const how = compared(left, words.length);
      const numbers = { sounds: left, words: words.length };
      text(
        said,
        how === "none"
          ? say("client-enrol-none")
          : how === "match"
            ? say("client-enrol-match", { words: words.length })
            : how === "fewer"
              ? say("client-enrol-fewer", numbers)
              : say("client-enrol-more", numbers),
      );
      text(keep, say("client-enrol-keep", { count }));
      keep.disabled = count === 0;
      rows.replaceChildren(...sounds.map((sound, i) => row(sound, i)));
    }

    /**
     * @param {Stretch} sound
     * @param {number} i
     */
    function row(sound, i) {
      const name = names[i];
      const id = `says-${i}`;
      const choice = el(
        "select",
        {
          id,
          "data-test": `sound-${i}`,
          onchange: () => draw(renamed(names, i, choice.value === "" ? null : Number(choice.value))),
        },
        el("option", { value: "" }, say("client-enrol-no-word")),
        ...words.map((w, n) => el("option", { value: String(n) }, w.says)),
      );
      choice.value = typeof name === "number" ? String(name) : "";
      const notes = [
        sound.beep && say("client-enrol-beep"),
        sound.long && say("client-enrol-long"),
        sound.quiet && say("client-enrol-quiet", { db: number(Math.max(0, sound.over_room_db)) }),
      ];
      const wrong = sound.long || sound.quiet;
      return el(
        "li",
        { class: "card", "data-test": "sound", "data-name": typeof name === "number" ? words[name].says : "" },
        el("h3", { class: "first" }, say("client-enrol-sound", { number: i + 1 })),
        /** @type {any} */ (wave(pieces[i], rate)),
        ...notes.filter((n) => n !== false).map((n) => el("p", { class: wrong ? "caution" : "hint" }, n)),
        el("div", { class: "field" }, el("label", { htmlFor: id }, say("client-enrol-says")), choice),
        el(
          "div",
          { class: "row" },
          button(say("client-enrol-play"), `play-${i}`, () => {
            const url = URL.createObjectURL(new Blob([wav(pieces[i], rate)], { type: "audio/wav" }));
            const audio = new Audio(url);
            audio.onended = () => URL.revokeObjectURL(url);
            audio.play().catch((error) => text(said, why(error)));
          }),
          name !== null && button(say("client-enrol-drop"), `drop-${i}`, () => draw(dropped(names, i, words.length))),
          typeof name === "number" &&
            button(say("client-enrol-not-pressed", { says: words[name].says }), `skip-${i}`, () =>
              draw(skipped(names, i, words.length)),
            ),
        ),
      );
    }

    draw(names);
    const replaces = words.some((w) => w.recorded) && el("p", { class: "hint" }, say("client-enrol-keep-hint"));
    body.replaceChildren(rows, ...(replaces ? [replaces] : []), keep);
    root.scrollIntoView();
  }

  /**
   * Keeps each, one after the other; those that cannot be kept are told with why, and the rest goes on.
   * @param {Int16Array[]} pieces
   * @param {number} rate
   * @param {Names} names
   */
  async function kept(pieces, rate, names) {
    const all = names.flatMap((n, i) => (typeof n === "number" ? [{ word: words[n], samples: pieces[i] }] : []));
    go.hidden = true;
    step("keep");
    body.replaceChildren();
    const notes = el("ul", { class: "plain" });
    /** @type {Word[]} */
    const done = [];
    for (const [i, { word, samples }] of all.entries()) {
      text(said, say("client-enrol-keeping", { n: i + 1, count: all.length }));
      try {
        const told = await asked(`${root.dataset.card}/${word.word}/recording`, sent({ samples, rate }));
        done.push(word);
        for (const finding of told.findings) notes.append(el("li", {}, el("strong", {}, word.says), ` ${finding}`));
      } catch (error) {
        const words = say("client-enrol-not-kept", { says: word.says, why: why(error) });
        notes.append(el("li", { class: "caution", "data-test": "not-kept" }, words));
      }
    }
    if (done.length === 0) {
      halted("");
      body.replaceChildren(notes);
      return;
    }
    text(said, say("client-enrol-kept", { count: done.length }));
    body.replaceChildren(notes);
    proved(done, 0, []);
  }

  /**
   * @param {Word[]} all
   * @param {number} at
   * @param {Word[]} open those not heard surely
   */
  function proved(all, at, open) {
    step("prove");
    if (at >= all.length) {
      step("done");
      text(said, say("client-enrol-done", { proved: all.length - open.length, count: all.length }));
      const links = open.map((w) =>
        el("li", {}, el("a", { class: "link", href: `${root.dataset.card}/${w.word}#recording` }, w.says)),
      );
      body.replaceChildren(
        ...(links.length ? [el("p", {}, say("client-enrol-not-proved")), el("ul", { class: "plain" }, ...links)] : []),
      );
      return;
    }
    const { word, says } = all[at];
    const place = el("div", { class: "stack", "data-test": "proof" });
    let told = false;
    makeProof(place, {
      word,
      says,
      where: root.dataset,
      first: true,
      ended(heard) {
        if (told) return;
        told = true;
        const next = () => proved(all, at + 1, heard ? open : [...open, all[at]]);
        if (!heard || at + 1 >= all.length) next();
        else {
          const on = button(say("client-enrol-next", { says: all[at + 1].says }), "proof-next", next, {
            class: "primary wide",
          });
          place.append(on);
          on.focus();
        }
      },
    });
    text(said, say("client-enrol-of", { n: at + 1, count: all.length, says }));
    body.replaceChildren(...[...body.children].filter((c) => c.tagName === "UL"), place);
  }
}

/** @type {HTMLElement | null} */
const root = document.querySelector("[data-buttons]");
if (root) wire(root);
