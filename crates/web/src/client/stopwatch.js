// Times what an animal is busy with in a free-access test. Without it the seconds are typed.
const form = document.querySelector('form[data-stopwatch]');
if (form) {
  const watch = form.querySelector('[data-clock]');
  const numbers = form.querySelector('[data-numbers]');
  const begin = form.querySelector('[data-begin]');
  const toggles = [...form.querySelectorAll('[data-toggle]')];
  const spent = new Map();
  let running = null, began = null, total = 0, turned = null;
  const field = (name) => form.elements.namedItem(name);
  const seconds = (ms) => (ms / 1000).toFixed(1);
  const clock = (ms) => `${Math.floor(ms / 60000)}:${String(Math.floor(ms / 1000) % 60).padStart(2, '0')}`;
  const now = () => performance.now();
  const show = (name, ms) => {
    field(name).value = seconds(ms);
    form.querySelector(`[data-time="${CSS.escape(name)}"]`).textContent = clock(ms);
  };
  // The sum so far, without stopping.
  const passed = () => total + (began === null ? 0 : now() - began);
  const busy = (name) => (spent.get(name) ?? 0) + (running === name ? now() - turned : 0);
  const rest = () => {
    if (running === null) return;
    spent.set(running, busy(running));
    show(running, spent.get(running));
    running = null;
  };
  const mark = () => toggles.forEach((b) => b.setAttribute('aria-pressed', String(b.dataset.toggle === running)));
  const tick = () => {
    if (began === null) return;
    show('observed_s', passed());
    if (running !== null) show(running, busy(running));
  };
  watch.hidden = false;
  // Left open where a number is to be put right.
  numbers.open = numbers.querySelector('[aria-invalid]') !== null;
  toggles.forEach((b) => {
    spent.set(b.dataset.toggle, 1000 * (Number(field(b.dataset.toggle).value.replace(',', '.')) || 0));
  });
  total = 1000 * (Number(field('observed_s').value.replace(',', '.')) || 0);
  const start = () => { began = now(); begin.textContent = 'Pause'; };
  const stop = () => { rest(); mark(); total = passed(); began = null; begin.textContent = 'Go on'; show('observed_s', total); };
  begin.addEventListener('click', () => (began === null ? start() : stop()));
  toggles.forEach((b) => b.addEventListener('click', () => {
    const name = b.dataset.toggle, same = running === name;
    rest();
    if (!same) {
      if (began === null) start();
      running = name;
      turned = now();
    }
    mark();
  }));
  form.addEventListener('submit', () => { if (began !== null) stop(); });
  setInterval(tick, 250);
}
