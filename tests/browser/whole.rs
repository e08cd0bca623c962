//! What stands on a button stands there whole: a script for the page of a rehearsal.

/// What a pad says stands on it, whole, within its frame; and words on the buttons below stay in one piece.
pub const CUT: &str = "
  const cut = [...document.querySelectorAll('#rehearse :is([data-word] .does, [data-word] .says, [data-word] .count)')]
    .filter((s) => {
      if (!s.textContent) return false;
      const pad = s.closest('[data-word]'), [at, on] = [s.getBoundingClientRect(), pad.getBoundingClientRect()];
      const frame = pad.dataset.state === 'give' ? 5.5 : 1.5;
      return at.height === 0 || s.scrollWidth > s.clientWidth + 1 || s.scrollHeight > s.clientHeight + 2 ||
        at.top < on.top + frame || at.bottom > on.bottom - frame || at.left < on.left + frame;
    })
    .map((s) => s.textContent);
  const broken = [...document.querySelectorAll('#rehearse [data-does]')].flatMap((b) => {
    const text = b.firstChild, range = document.createRange();
    let at = 0;
    return text.data.split(' ').filter((word) => {
      range.setStart(text, at);
      range.setEnd(text, at + word.length);
      at += word.length + 1;
      return range.getClientRects().length > 1;
    });
  });
  return [...cut, ...broken];";
