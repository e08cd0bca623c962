// Makes a picture small before it is sent. Drawn anew, it holds no more of what the camera wrote with it.

import { find } from "./dom.js";

const LONGEST = 512; // pixels; sharp on a label of 6 cm and on every phone
const MOST_BYTES = 300_000;

/**
 * Width and height of a picture once it fits.
 * @param {number} width
 * @param {number} height
 */
export function fitted(width, height) {
  const by = Math.min(1, LONGEST / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * by)), height: Math.max(1, Math.round(height * by)) };
}

/**
 * @param {HTMLCanvasElement} canvas
 * @param {string} type
 * @param {number} quality
 * @returns {Promise<Blob | null>}
 */
const encoded = (canvas, type, quality) => new Promise((done) => canvas.toBlob(done, type, quality));

/**
 * The picture on a canvas as a file that is small enough.
 * @param {HTMLCanvasElement} canvas
 */
async function small(canvas) {
  for (const quality of [0.85, 0.7, 0.5]) {
    // Where a browser writes no WebP it gives a PNG instead, which is large for a photo.
    for (const type of ["image/webp", "image/jpeg"]) {
      const blob = await encoded(canvas, type, quality);
      if (blob?.type === type && blob.size <= MOST_BYTES) return blob;
    }
  }
  throw new Error("no small picture");
}

/** @param {HTMLFormElement} form */
function watch(form) {
  /** @type {HTMLInputElement} */
  const input = find("input[type=file]", form);
  /** @type {HTMLCanvasElement} */
  const canvas = find("canvas", form);
  /** @type {HTMLElement} */
  const wrong = find("[role=alert]", form);
  /** @type {HTMLButtonElement} */
  const keep = find("button", form);
  input.addEventListener("change", async () => {
    const file = input.files?.[0];
    if (!file) return;
    keep.disabled = true;
    wrong.hidden = true;
    canvas.hidden = true;
    try {
      // Turned as the camera was held, which is told beside the picture and not kept.
      const bitmap = await createImageBitmap(file, { imageOrientation: "from-image" });
      Object.assign(canvas, fitted(bitmap.width, bitmap.height));
      const on = canvas.getContext("2d");
      if (!on) throw new Error("no canvas");
      on.fillStyle = "#fff";
      on.fillRect(0, 0, canvas.width, canvas.height);
      on.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
      bitmap.close();
      const blob = await small(canvas);
      const list = new DataTransfer();
      list.items.add(new File([blob], `picture.${blob.type.slice("image/".length)}`, { type: blob.type }));
      input.files = list.files;
      canvas.hidden = false;
      form.dataset.small = String(blob.size);
      keep.disabled = false;
    } catch (error) {
      console.warn("picture", error);
      input.value = "";
      wrong.textContent = form.dataset.cannotOpen ?? "";
      wrong.hidden = false;
      keep.disabled = false;
    }
  });
}

if (globalThis.document)
  for (const form of document.querySelectorAll("form[data-picture]")) watch(/** @type {HTMLFormElement} */ (form));
