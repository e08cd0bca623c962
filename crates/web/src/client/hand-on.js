// Links that are to reach somebody else: copied, or handed to what the device sends with. Without a script they are read off the page.

import { isAtHome } from "./rehearsal.js";

/** @param {HTMLElement} box */
function offer(box) {
  const within = box.dataset.link ?? "";
  // The address of a notebook at home opens nowhere else: what stands after it does, behind that of another.
  const athome = isAtHome(location.hostname);
  const link = athome ? within : new URL(within, location.href).href;
  if (athome) box.parentElement?.querySelector("[data-at-home]")?.removeAttribute("hidden");
  const copy = box.querySelector("[data-copy]");
  const send = box.querySelector("[data-send]");
  if (navigator.clipboard) {
    copy?.removeAttribute("hidden");
    copy?.addEventListener("click", () =>
      navigator.clipboard.writeText(link).then(
        () => copy.replaceChildren(box.dataset.copied ?? ""),
        (error) => console.warn("not copied", error),
      ),
    );
  }
  if (navigator.share) {
    send?.removeAttribute("hidden");
    // Whoever closes the device's own sheet sends nothing: no fault.
    send?.addEventListener("click", () => navigator.share(athome ? { text: link } : { url: link }).catch(() => {}));
  }
}

for (const box of document.querySelectorAll("[data-link]")) offer(/** @type {HTMLElement} */ (box));
