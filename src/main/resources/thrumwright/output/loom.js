"use strict";
(() => {
  const main = document.querySelector("main");
  const steps = [...main.querySelectorAll("section.step:not(.done)")];
  const end = main.querySelector("section.done");
  const button = id => document.getElementById(id);
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  const SECONDS = 7;
  let ticks = kept();
  let read = 0;
  let laid = 1;
  let speed = 1;
  let going = !still;
  let before = 0;
  let frame = 0;

  function kept() {
    try {
      const found = JSON.parse(localStorage.getItem(main.dataset.piece) || "{}");
      return found && typeof found === "object" ? found : {};
    } catch (unread) {
      return {};
    }
  }

  function keep() {
    try {
      localStorage.setItem(main.dataset.piece, JSON.stringify(ticks));
    } catch (full) {
      // what can't be kept is still shown
    }
  }

  const count = step => Number(step.dataset.count);
  const done = step => Math.max(0, Math.min(count(step), (ticks[step.dataset.key] || []).length || 0));
  const rows = step => [...step.querySelectorAll(".rows li")];

  function last() {
    for (let i = steps.length - 1; i >= 0; i--) {
      if (done(steps[i]) > 0) {
        return i;
      }
    }
    return -1;
  }

  function now() {
    const i = last();
    if (i < 0) {
      return [0, 0];
    }
    return done(steps[i]) < count(steps[i]) ? [i, done(steps[i])] : [i + 1, 0];
  }

  /** Words come before the first row; a step without rows is its words. */
  const worded = (step, row) => rows(step).length === 0 || row === 0 && read === 0;

  function show() {
    const [at, row] = now();
    steps.forEach((step, i) => { step.hidden = i !== at; });
    end.hidden = at < steps.length;
    button("done").disabled = at >= steps.length;
    const step = steps[at];
    const svg = step && step.querySelector("svg");
    for (const id of ["slower", "move", "crossing", "faster"]) {
      button(id).hidden = !svg;
    }
    if (step) {
      const words = worded(step, row);
      step.querySelectorAll(".words").forEach(each => { each.hidden = !words; });
      step.querySelector(".reach").hidden = words;
      step.querySelector(":scope > .next").hidden = rows(step).length > 0;
      step.querySelector(".rows").hidden = words;
      rows(step).forEach((each, i) => { each.hidden = i !== row; });
    }
    laid = going ? 0 : 1;
    scrollTo(0, 0);
    draw();
    run();
  }

  function picture() {
    const [at, row] = now();
    const svg = steps[at] && steps[at].querySelector("svg");
    if (!svg) {
      return null;
    }
    const shares = svg.dataset.rows.split(" ").map(Number);
    const shown = shares.length - 1;
    const which = row < shown ? row : shown - 1 - ((shown - 1 - row) & 1);
    return { svg, from: shares[which], to: shares[which + 1], whole: row === count(steps[at]) - 1 };
  }

  function draw() {
    const shown = picture();
    if (!shown) {
      return;
    }
    const share = shown.from + (shown.to - shown.from) * Math.min(1, laid);
    for (const part of shown.svg.querySelectorAll("g[data-from]")) {
      const from = Number(part.dataset.from);
      const to = Number(part.dataset.to);
      const tail = from === to;
      const there = tail ? (laid >= 1 && shown.whole ? 1 : 0) : (share - from) / (to - from);
      part.setAttribute("visibility", there > 0.02 ? "visible" : "hidden");
      for (const path of part.children) {
        path.setAttribute("stroke-dasharray", there < 1 ? "1 2" : "none");
        path.setAttribute("stroke-dashoffset", there < 1 ? String(1 - there) : "0");
      }
    }
    button("move").setAttribute("aria-pressed", String(going));
  }

  function run() {
    cancelAnimationFrame(frame);
    if (going && picture() && !document.hidden) {
      before = performance.now();
      frame = requestAnimationFrame(move);
    }
  }

  function move(time) {
    laid += Math.max(0, time - before) / 1000 * speed / SECONDS;
    before = time;
    if (laid > 1.25) {
      laid = 0;
    }
    draw();
    frame = requestAnimationFrame(move);
  }

  function crossing() {
    const shown = picture();
    if (!shown) {
      return;
    }
    going = false;
    const ends = [...shown.svg.querySelectorAll("g[data-from]")]
      .map(part => (Number(part.dataset.to) - shown.from) / (shown.to - shown.from))
      .filter(share => share > 0.005 && share < 0.995)
      .sort((one, other) => one - other);
    ends.push(1);
    const next = ends.find(share => share > laid + 1e-4);
    laid = next === undefined ? ends[0] : next;
    run();
    draw();
  }

  function on() {
    const [at, row] = now();
    const step = steps[at];
    if (!step) {
      return;
    }
    if (rows(step).length > 0 && worded(step, row)) {
      read = 1;
    } else {
      const times = (ticks[step.dataset.key] || []).slice(0, done(step));
      times.push(new Date().toISOString());
      ticks[step.dataset.key] = times;
      read = 0;
      keep();
    }
    show();
  }

  function back() {
    const [at, row] = now();
    if (steps[at] && row === 0 && read === 1) {
      read = 0;
    } else if (last() >= 0) {
      const step = steps[last()];
      ticks[step.dataset.key] = (ticks[step.dataset.key] || []).slice(0, done(step) - 1);
      read = 1;
      keep();
    }
    show();
  }

  function turn() {
    going = !going;
    laid = laid >= 1 && going ? 0 : Math.min(1, laid);
    run();
    draw();
  }

  const deeds = {
    done: on,
    back: back,
    move: turn,
    crossing: crossing,
    slower: () => { speed = Math.max(0.125, speed / Math.SQRT2); },
    faster: () => { speed = Math.min(8, speed * Math.SQRT2); }
  };
  const keys = {
    " ": "done", ArrowRight: "done", ArrowDown: "done", PageDown: "done", Enter: "done",
    ArrowLeft: "back", ArrowUp: "back", PageUp: "back", Backspace: "back",
    m: "move", ".": "crossing", "-": "slower", "+": "faster"
  };
  Object.keys(deeds).forEach(id => button(id).addEventListener("click", deeds[id]));
  addEventListener("keydown", event => {
    const id = keys[event.key];
    if (id && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      deeds[id]();
    }
  });
  document.addEventListener("visibilitychange", run);
  addEventListener("storage", event => {
    if (event.key === main.dataset.piece) {
      ticks = kept();
      show();
    }
  });
  document.documentElement.classList.add("live");
  show();
})();
