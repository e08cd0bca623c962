// Passkeys (W3C Web Authentication, level 3): signing in with one, and making one. A box on the page says which, where it asks,
// where it leads, and what it says when nothing came of it. Without a script the box stays hidden.

import { find } from "./dom.js";

/** @typedef {{ error: string, kind: string }} Told */

/** What the server answered instead. */
class Refused extends Error {
  /** @param {Told} told */
  constructor(told) {
    super(told.error);
    this.kind = told.kind;
  }
}

/** @param {string} text base64url, as the server writes bytes (RFC 4648, section 5) */
export const bytes = (text) =>
  Uint8Array.from(atob(text.replaceAll("-", "+").replaceAll("_", "/")), (c) => c.charCodeAt(0));

/** @param {ArrayBuffer} buffer */
export const written = (buffer) =>
  btoa(String.fromCharCode(...new Uint8Array(buffer)))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");

/**
 * @param {string} address
 * @param {object} body
 * @returns {Promise<any>}
 */
async function ask(address, body) {
  const headers = { accept: "application/json", "content-type": "application/json" };
  const response = await fetch(address, { method: "POST", headers, body: JSON.stringify(body) });
  const told = await response.json();
  if (!response.ok) throw new Refused(told);
  return told;
}

/** @param {any} asked a `PublicKeyCredentialRequestOptionsJSON` */
async function shown(asked) {
  const publicKey = { ...asked, challenge: bytes(asked.challenge), allowCredentials: [] };
  const key = /** @type {PublicKeyCredential} */ (await navigator.credentials.get({ publicKey }));
  const response = /** @type {AuthenticatorAssertionResponse} */ (key.response);
  return {
    id: key.id,
    rawId: written(key.rawId),
    type: key.type,
    response: {
      authenticatorData: written(response.authenticatorData),
      clientDataJSON: written(response.clientDataJSON),
      signature: written(response.signature),
      userHandle: response.userHandle && written(response.userHandle),
    },
  };
}

/** @param {any} asked a `PublicKeyCredentialCreationOptionsJSON` */
async function made(asked) {
  const known = (asked.excludeCredentials ?? []).map((/** @type {any} */ key) => ({
    type: key.type,
    id: bytes(key.id),
  }));
  const user = { ...asked.user, id: bytes(asked.user.id) };
  const publicKey = { ...asked, challenge: bytes(asked.challenge), user, excludeCredentials: known };
  const key = /** @type {PublicKeyCredential} */ (await navigator.credentials.create({ publicKey }));
  const response = /** @type {AuthenticatorAttestationResponse} */ (key.response);
  return {
    id: key.id,
    rawId: written(key.rawId),
    type: key.type,
    response: {
      attestationObject: written(response.attestationObject),
      clientDataJSON: written(response.clientDataJSON),
    },
  };
}

/** @param {HTMLElement} box */
function watch(box) {
  const { passkey: address = "", makes, to } = box.dataset;
  /** @type {HTMLButtonElement} */
  const button = find("button", box);
  /** @type {HTMLElement} */
  const wrong = find("[role=alert]", box);
  /** @param {unknown} error */
  const says = (error) => {
    if (error instanceof Refused) return error.message;
    const name = error instanceof DOMException ? error.name : "";
    if (name === "NotAllowedError" || name === "AbortError") return box.dataset.cancelled;
    return (name === "InvalidStateError" && box.dataset.known) || box.dataset.failed;
  };
  button.addEventListener("click", async () => {
    button.disabled = true;
    wrong.hidden = true;
    try {
      const { ceremony, publicKey } = await ask(address, {});
      const answer = await (makes === undefined ? shown(publicKey) : made(publicKey));
      /** @type {HTMLInputElement | null} */
      const label = box.querySelector("input");
      const done = await ask(`${address}/done`, { ceremony, answer, to, ...(label && { label: label.value }) });
      location.assign(done.to);
    } catch (error) {
      button.disabled = false;
      if (error instanceof Refused && error.kind === "host-not-fresh") {
        location.assign("/sign-in?again=yes&to=/account");
        return;
      }
      console.warn("passkey", error);
      wrong.textContent = says(error) ?? "";
      wrong.hidden = false;
    }
  });
  box.hidden = false;
}

if (globalThis.PublicKeyCredential)
  for (const box of document.querySelectorAll("[data-passkey]")) watch(/** @type {HTMLElement} */ (box));
