// Links that are to reach somebody else: copied, or handed to what the device sends with. Without a script they are read off the page.

/** @param {HTMLElement} box */
function offer(box) {
  const link = new URL(box.dataset.link ?? "", location.href).href;
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
    send?.addEventListener("click", () => navigator.share({ url: link }).catch(() => {}));
  }
}

for (const box of document.querySelectorAll("[data-link]")) offer(/** @type {HTMLElement} */ (box));
