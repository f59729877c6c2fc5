"use strict";
(() => {
  const main = document.querySelector("main");
  const steps = [...main.querySelectorAll("section.step:not(.done)")];
  const end = main.querySelector("section.done");
  const button = id => document.getElementById(id);
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  const SECONDS = 7;
  const panel = document.getElementById("measure");
  const fields = ["height", "width", "left"];
  const INCH = 25.4;
  const TELL = panel.dataset.tell;
  const place = what => main.dataset.piece + (what ? " " + what : "");
  let measured = kept("measured");
  let ticks = kept();
  let read = 0;
  let laid = 1;
  let speed = 1;
  let going = !still;
  let before = 0;
  let frame = 0;

  function kept(what) {
    try {
      const found = JSON.parse(localStorage.getItem(place(what)) || "{}");
      return found && typeof found === "object" ? found : {};
    } catch (unread) {
      return {};
    }
  }

  function keep() {
    try {
      localStorage.setItem(place(), JSON.stringify(ticks));
      localStorage.setItem(place("measured"), JSON.stringify(measured));
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
    askMeasures();
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

  /** The length in mm that is typed; 0 where none is read. A number alone is in the page's unit. */
  function mm(text) {
    const typed = text.trim().toLowerCase().replace(",", ".")
      .replace(/[½¼¾]/g, each => " " + { "½": "1/2", "¼": "1/4", "¾": "3/4" }[each]).trim();
    const read = /^(\d+(?:\.\d+)?)?(?:(?:^|\s+)(\d+)\/([1-9]\d*))?\s*(mm|cm|m|in|"|″)?$/.exec(typed);
    if (!read || read[1] === undefined && read[2] === undefined) {
      return 0;
    }
    const number = Number(read[1] || 0) + (read[2] ? Number(read[2]) / Number(read[3]) : 0);
    const unit = { mm: 1, cm: 10, m: 1000, in: INCH, "\"": INCH, "″": INCH }[read[4] || panel.dataset.unit];
    return number * unit;
  }

  /** To the millimetre, or to the sixteenth of an inch. */
  function said(length) {
    if (panel.dataset.unit === "cm") {
      const whole = Math.round(length);
      return whole < 10 ? whole + " mm" : whole < 3000 ? String(Number((whole / 10).toFixed(1))) + " cm"
        : (whole / 1000).toFixed(2) + " m";
    }
    let over = 16;
    let parts = Math.round(length / INCH * over);
    const whole = Math.floor(parts / over);
    for (parts -= whole * over; parts > 0 && parts % 2 === 0; parts /= 2) {
      over /= 2;
    }
    return (whole > 0 || parts === 0 ? whole : "") + (whole > 0 && parts > 0 ? " " : "")
      + (parts > 0 ? parts + "/" + over : "") + " in";
  }

  const fill = (key, values) =>
    panel.dataset[key].replace(/\{(\w+)\}/g, (whole, name) => name in values ? values[name] : whole);
  const typed = (step, field) => (measured[step.dataset.key] || {})[field] || "";

  /** The last step before in the same part whose height was measured. */
  function measuredBefore(step) {
    for (let i = steps.indexOf(step) - 1; i >= 0; i--) {
      if (steps[i].dataset.part === step.dataset.part && mm(typed(steps[i], "height")) > 0) {
        return steps[i];
      }
    }
    return null;
  }

  /** By how much a step's height moves for what was measured before it, mm. */
  function moved(step) {
    const last = measuredBefore(step);
    return last ? mm(typed(last, "height")) - Number(last.dataset.reach) : 0;
  }

  /** The step that has just ended, until the next one is begun; else the one that is woven. */
  function measurable() {
    const [at, row] = now();
    const ended = steps[last()];
    const between = row === 0 && ended && ended.dataset.reach;
    const step = between ? ended : steps[at];
    return step && step.dataset.reach ? step : null;
  }

  const follows = step => steps.slice(steps.indexOf(step) + 1).some(each => each.dataset.part === step.dataset.part);

  function heightMeans(step, text) {
    const reached = mm(text);
    const planned = Number(step.dataset.reach);
    const lower = measuredBefore(step);
    if (lower && reached <= mm(typed(lower, "height"))) {
      return [fill("below", { before: said(mm(typed(lower, "height"))) })];
    }
    const over = reached - planned;
    const values = { planned: said(planned), by: said(Math.abs(over)) };
    return Math.abs(over) < 0.5 ? [fill("asPlanned", values)]
      : [fill((over > 0 ? "over" : "under") + (follows(step) ? "" : "Last"), values), TELL];
  }

  function means(step) {
    const all = [];
    for (const field of fields) {
      const text = typed(step, field).trim();
      const length = mm(text);
      if (text && !length) {
        all.push(fill("unread", { typed: text }));
      } else if (text && field === "height") {
        all.push(...heightMeans(step, text));
      } else if (text && field === "width") {
        const wider = length - Number(step.dataset.width);
        if (Math.abs(wider) >= 1) {
          all.push(fill(wider > 0 ? "wider" : "narrower", { by: said(Math.abs(wider)) }), TELL);
        }
      } else if (text && field === "left") {
        const cut = Number(step.dataset.cut);
        all.push(length > cut ? fill("more", { cut: said(cut) }) : fill("used", { used: said(cut - length), cut: said(cut) }));
      }
    }
    return all.filter(each => each !== TELL).concat(all.includes(TELL) ? TELL : []);
  }

  /** The fields of the step at hand, and in each step the height that it comes to by what was measured before. */
  function askMeasures() {
    const step = measurable();
    panel.hidden = !step;
    if (step) {
      panel.querySelector("summary").textContent = fill("open", { step: step.querySelector("h1").textContent });
      if (panel.dataset.step !== step.dataset.key) {
        panel.querySelector("details").open = false;
        panel.dataset.step = step.dataset.key;
      }
      // what has just ended is measured before the next is begun
      panel.classList.toggle("first", step !== steps[now()[0]]);
      for (const field of fields) {
        const input = button(field);
        input.parentElement.hidden = field === "left" && !step.dataset.cut;
        if (input.value !== typed(step, field)) {
          input.value = typed(step, field);
        }
      }
      const said = panel.querySelector("div");
      said.replaceChildren(...means(step).map(sentence => {
        const line = document.createElement("p");
        line.textContent = sentence;
        return line;
      }));
    }
    steps.filter(each => each.dataset.reach).forEach(each => {
      let note = each.querySelector(".moved");
      const by = moved(each);
      if (!note && Math.abs(by) >= 0.5) {
        note = document.createElement("span");
        note.className = "moved";
        each.querySelector(".reach").append(" ", note);
      }
      if (note) {
        note.textContent = Math.abs(by) < 0.5 ? "" : fill("reach", { height: said(Number(each.dataset.reach) + by) });
      }
    });
  }

  function measure(event) {
    const step = measurable();
    const of = measured[step.dataset.key] || {};
    of[event.target.id] = event.target.value;
    measured[step.dataset.key] = of;
    keep();
    askMeasures();
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
  fields.forEach(field => button(field).addEventListener("input", measure));
  Object.keys(deeds).forEach(id => button(id).addEventListener("click", deeds[id]));
  addEventListener("keydown", event => {
    const id = keys[event.key];
    if (id && !panel.contains(event.target) && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      deeds[id]();
    }
  });
  document.addEventListener("visibilitychange", run);
  addEventListener("storage", event => {
    if (event.key === place() || event.key === place("measured")) {
      ticks = kept();
      measured = kept("measured");
      show();
    }
  });
  document.documentElement.classList.add("live");
  show();
})();
