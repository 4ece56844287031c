"use strict";

/* The days of a job: chosen by mouse or keyboard, painted with a use, sent as spans with the form around them. */
function scheduleEditor(form) {
  const grid = form.querySelector(".weeks");
  const status = form.querySelector("#days-status");
  const field = form.elements.namedItem("schedule");
  const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
  const weekdays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
  const mostDays = 1100;
  const undone = [];
  let copied = null;
  let anchor = null;
  let focus = null;
  let dragging = false;

  const frames = () => Array.from(grid.querySelectorAll(".dayframe"));
  const frameOf = date => grid.querySelector('[data-date="' + date + '"]');
  const rowOf = frame => frame.closest(".weekrow");
  const shifted = (date, days) => new Date(Date.parse(date + "T00:00:00Z") + days * 86400000).toISOString().slice(0, 10);
  const words = date => {
    const day = new Date(date + "T00:00:00Z");
    return { weekday: weekdays[day.getUTCDay()], day: day.getUTCDate(), month: months[day.getUTCMonth()], year: day.getUTCFullYear() };
  };

  function use(frame, name) {
    const date = words(frame.dataset.date);
    frame.dataset.use = name;
    frame.querySelector("rect").setAttribute("fill", "url(#use-" + name + ")");
    frame.querySelector(".word").textContent = name === "unscheduled" ? "" : name;
    frame.setAttribute("aria-label", date.weekday + " " + date.day + " " + date.month + " " + date.year + ", " + name);
  }

  function state() {
    const days = {};
    for (const frame of frames()) {
      if (frame.dataset.use !== "unscheduled") {
        days[frame.dataset.date] = frame.dataset.use;
      }
    }
    return days;
  }

  function remember() {
    undone.push(state());
    if (undone.length > 200) {
      undone.shift();
    }
  }

  function spans() {
    const list = [];
    for (const frame of frames()) {
      const name = frame.dataset.use;
      const last = list[list.length - 1];
      if (name === "unscheduled") {
        continue;
      }
      if (last && last.use === name && shifted(last.to, 1) === frame.dataset.date) {
        last.to = frame.dataset.date;
      } else {
        list.push({ from: frame.dataset.date, to: frame.dataset.date, use: name });
      }
    }
    return list;
  }

  // Days that were painted and refused are shown again, not saved yet.
  const saved = form.hasAttribute('data-unsaved') ? '' : JSON.stringify(spans());

  function settle(said) {
    const list = spans();
    const changed = JSON.stringify(list) !== saved;
    field.value = JSON.stringify(list);
    form.querySelector('[data-do="undo"]').disabled = undone.length === 0;
    form.querySelector('[data-do="save"]').disabled = !changed || list.length === 0;
    status.textContent = list.length === 0 ? "A job needs at least one day." : (said ? said + " " : "") + (changed ? "Changed, not saved yet." : "");
  }

  function chosen() {
    if (!focus) {
      return [];
    }
    const from = anchor < focus ? anchor : focus;
    const to = anchor < focus ? focus : anchor;
    return frames().filter(frame => frame.dataset.date >= from && frame.dataset.date <= to);
  }

  function choose(date, extend, moveFocus) {
    focus = date;
    anchor = extend && anchor ? anchor : date;
    const range = new Set(chosen());
    for (const frame of frames()) {
      frame.setAttribute("aria-selected", range.has(frame) ? "true" : "false");
      frame.tabIndex = frame.dataset.date === focus ? 0 : -1;
    }
    for (const button of form.querySelectorAll("[data-paint]")) {
      button.disabled = false;
    }
    if (moveFocus) {
      frameOf(date).focus();
    }
  }

  function paint(name) {
    const range = chosen();
    if (range.length === 0) {
      return;
    }
    remember();
    range.forEach(frame => use(frame, name));
    settle(range.length === 1 ? "1 day " + name + "." : range.length + " days " + name + ".");
  }

  function undo() {
    const days = undone.pop();
    if (days) {
      frames().forEach(frame => use(frame, days[frame.dataset.date] || "unscheduled"));
      settle("Undone.");
    }
  }

  function addWeek(after) {
    if (frames().length + 7 > mostDays + 14) {
      settle("A schedule has at most " + mostDays + " days.");
      return;
    }
    const rows = grid.querySelectorAll(".weekrow");
    const edge = after ? rows[rows.length - 1] : rows[0];
    const row = edge.cloneNode(true);
    for (const frame of row.querySelectorAll(".dayframe")) {
      frame.dataset.date = shifted(frame.dataset.date, after ? 7 : -7);
      const date = words(frame.dataset.date);
      frame.querySelector(".when").firstChild.textContent = date.weekday + " " + date.day + " ";
      frame.querySelector(".month").textContent = date.month;
      frame.setAttribute("aria-selected", "false");
      frame.tabIndex = -1;
      use(frame, "unscheduled");
    }
    const monday = words(row.querySelector(".dayframe").dataset.date);
    row.querySelector(".weekname").textContent = "week of " + monday.day + " " + monday.month;
    grid.insertBefore(row, after ? null : edge);
    wire(row);
    choose(row.querySelector(".dayframe").dataset.date, false, true);
  }

  function copyOrPaste(row) {
    const days = Array.from(row.querySelectorAll(".dayframe"));
    if (!copied) {
      copied = days.map(frame => frame.dataset.use);
      copied.row = row;
      status.textContent = "Week copied: choose the week it goes onto.";
    } else {
      if (copied.row !== row) {
        remember();
        days.forEach((frame, at) => use(frame, copied[at]));
      }
      const done = copied.row !== row;
      copied = null;
      settle(done ? "Week copied." : "");
    }
    nameCopies();
  }

  function nameCopies() {
    for (const row of grid.querySelectorAll(".weekrow")) {
      const button = row.querySelector("[data-week]");
      if (!button) {
        continue;
      }
      const name = row.querySelector(".weekname").textContent;
      button.textContent = !copied ? "Copy week" : copied.row === row ? "Leave it" : "Copy here";
      button.setAttribute("aria-label", button.textContent + ", " + name);
    }
  }

  function wire(row) {
    let button = row.querySelector("[data-week]");
    if (!button) {
      button = document.createElement("button");
      button.type = "button";
      button.dataset.week = "";
      row.appendChild(button);
    }
    button.addEventListener("click", () => copyOrPaste(row));
    nameCopies();
  }

  const steps = { ArrowLeft: -1, ArrowRight: 1, ArrowUp: -7, ArrowDown: 7 };

  grid.addEventListener("keydown", event => {
    const frame = event.target.closest(".dayframe");
    if (!frame) {
      return;
    }
    let next = null;
    if (event.key in steps) {
      next = shifted(frame.dataset.date, steps[event.key]);
    } else if (event.key === "Home") {
      next = rowOf(frame).querySelector(".dayframe").dataset.date;
    } else if (event.key === "End") {
      next = shifted(rowOf(frame).querySelector(".dayframe").dataset.date, 6);
    } else if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      choose(frame.dataset.date, true, false);
      form.querySelector("[data-paint]").focus();
      return;
    }
    if (next) {
      event.preventDefault();
      if (frameOf(next)) {
        choose(next, event.shiftKey, true);
      }
    }
  });

  grid.addEventListener("pointerdown", event => {
    const frame = event.target.closest(".dayframe");
    if (frame && event.button === 0) {
      dragging = event.pointerType === "mouse";
      choose(frame.dataset.date, event.shiftKey, false);
    }
  });
  grid.addEventListener("pointerover", event => {
    const frame = event.target.closest(".dayframe");
    if (dragging && frame) {
      choose(frame.dataset.date, true, false);
    }
  });
  addEventListener("pointerup", () => { dragging = false; });

  form.addEventListener("keydown", event => {
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z" && !event.shiftKey) {
      event.preventDefault();
      undo();
    }
  });

  form.querySelector(".palette").addEventListener("keydown", event => {
    const buttons = Array.from(form.querySelectorAll("[data-paint]"));
    const at = buttons.indexOf(document.activeElement);
    const step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    if (at >= 0 && step !== 0) {
      event.preventDefault();
      buttons[(at + step + buttons.length) % buttons.length].focus();
    }
  });

  for (const button of form.querySelectorAll("[data-paint]")) {
    button.addEventListener("click", () => {
      paint(button.dataset.paint);
      frameOf(focus).focus();
    });
  }
  form.querySelector('[data-do="undo"]').addEventListener("click", undo);
  for (const [name, after] of [["before", false], ["after", true]]) {
    const button = form.querySelector('[data-do="' + name + '"]');
    button.disabled = false;
    button.addEventListener("click", () => addWeek(after));
  }
  grid.querySelectorAll(".weekrow").forEach(wire);
  const first = frames().find(frame => frame.dataset.use !== "unscheduled") || frames()[0];
  first.tabIndex = 0;
  first.addEventListener("focus", () => { if (!focus) { choose(first.dataset.date, false, false); } });

  let sending = false;
  form.addEventListener("submit", () => { sending = true; });
  addEventListener("beforeunload", event => {
    if (!sending && JSON.stringify(spans()) !== saved) {
      event.preventDefault();
    }
  });
}

/* A costing under way: counts the seconds and goes on when it is done. */
function watchRun(run) {
  const elapsed = document.getElementById("elapsed");
  const ask = () => fetch(run.dataset.state, { headers: { Accept: "application/json" } })
    .then(answer => answer.json())
    .then(state => {
      elapsed.textContent = state.elapsedSeconds;
      const draws = document.getElementById("draws-done");
      if (draws) {
        draws.textContent = state.drawsDone;
      }
      if (state.over) {
        location.reload();
      } else {
        setTimeout(ask, 700);
      }
    })
    .catch(() => setTimeout(ask, 2000));
  setTimeout(ask, 700);
}

/* Pictures of a note: dropped, pasted, taken or chosen, and shown before they are sent. */
function pictureField(form) {
  const field = form.querySelector("#f-pictures");
  const camera = form.querySelector("#f-camera");
  const zone = form.querySelector("[data-drop]");
  const list = form.querySelector(".chosen");
  let files = [];

  function show() {
    const all = new DataTransfer();
    files.forEach(file => all.items.add(file));
    field.files = all.files;
    list.querySelectorAll("img").forEach(image => URL.revokeObjectURL(image.src));
    list.replaceChildren(...files.map((file, at) => {
      const entry = document.createElement("li");
      const image = document.createElement("img");
      image.src = URL.createObjectURL(file);
      image.alt = file.name;
      const leave = document.createElement("button");
      leave.type = "button";
      leave.className = "quiet";
      leave.textContent = "Leave out";
      leave.setAttribute("aria-label", "Leave out " + file.name);
      leave.addEventListener("click", () => {
        files.splice(at, 1);
        show();
        field.focus();
      });
      entry.append(image, leave);
      return entry;
    }));
  }

  function take(more) {
    files = files.concat(Array.from(more).filter(file => file.type.startsWith("image/")));
    show();
  }

  field.addEventListener("change", () => {
    files = Array.from(field.files);
    show();
  });
  camera.addEventListener("change", () => {
    take(camera.files);
    camera.value = "";
  });
  zone.addEventListener("dragover", event => {
    event.preventDefault();
    zone.dataset.over = "";
  });
  zone.addEventListener("dragleave", () => delete zone.dataset.over);
  zone.addEventListener("drop", event => {
    event.preventDefault();
    delete zone.dataset.over;
    take(event.dataTransfer.files);
  });
  form.addEventListener("paste", event => {
    if (event.clipboardData.files.length > 0) {
      event.preventDefault();
      take(event.clipboardData.files);
    }
  });
}

/*
 * A keyboard-wedge scanner types a label faster than anybody can and ends it with Enter. Where no field has the focus,
 * what comes that fast opens the unit.
 */
function listenForScanner(box) {
  const fastest = 50;
  const least = 3;
  let typed = "";
  let last = 0;
  addEventListener("keydown", event => {
    const busy = event.target.closest("input, textarea, select");
    if (busy || event.ctrlKey || event.metaKey || event.altKey) {
      return;
    }
    if (event.timeStamp - last > fastest) {
      typed = "";
    }
    last = event.timeStamp;
    if (event.key === "Enter" && typed.length >= least) {
      event.preventDefault();
      box.value = typed;
      box.form.requestSubmit();
    } else if (event.key.length === 1) {
      typed += event.key;
    }
  });
}

/*
 * A package is priced while it is typed: the page is asked for again with what the form says, and the parts of it that
 * the typing does not stand in are put in the place of the old ones.
 */
function livePackage(form) {
  const parts = ["told", "finds", "lines", "days", "price"];
  const text = form.elements.namedItem("text");
  const dates = form.elements.namedItem("/dates");
  const price = () => document.getElementById("price");
  let running = null;
  let waiting = 0;

  function address(button) {
    const said = new URLSearchParams();
    new FormData(form).forEach((value, name) => value !== "" && name !== "once" && said.append(name, value));
    if (button) {
      said.append(button.name, button.value);
    }
    return form.getAttribute("action") + "?" + said;
  }

  function show(page, button) {
    const active = document.activeElement;
    for (const id of parts) {
      const now = document.getElementById(id);
      if (button || !now.contains(active)) {
        now.replaceWith(page.getElementById(id));
      }
    }
    if (button) {
      text.value = page.getElementById("text").value;
      dates.value = page.getElementById("dates").value;
      const day = button.name === "day" && document.getElementById("day-" + button.value);
      (day || (button.name === "month" ? dates : text)).focus();
    }
    history.replaceState(null, "", address());
    rove();
  }

  /* One stop of the Tab key for all days; the arrows go from day to day. */
  function rove() {
    const days = Array.from(form.querySelectorAll(".month-days button:enabled"));
    const stop = days.find(day => day === document.activeElement)
      || days.find(day => day.getAttribute("aria-pressed") === "true") || days[0];
    days.forEach(day => { day.tabIndex = day === stop ? 0 : -1; });
  }

  async function ask(button) {
    clearTimeout(waiting);
    if (running) {
      running.abort();
    }
    const mine = running = new AbortController();
    const slow = setTimeout(() => { price().dataset.waits = ""; }, 250);
    try {
      const answer = await fetch(address(button), { signal: mine.signal, headers: { Accept: "text/html" } });
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      if (mine === running && page.getElementById("price")) {
        show(page, button);
      }
    } catch (failure) {
      if (failure.name !== "AbortError") {
        price().innerHTML = '<div class="told" role="alert"><p>No answer from the server. What is typed is still here; try again.</p></div>';
      }
    } finally {
      clearTimeout(slow);
      if (mine === running) {
        delete price().dataset.waits;
      }
    }
  }

  form.addEventListener("input", event => {
    if (!event.target.name.startsWith("/customer/")) {
      clearTimeout(waiting);
      waiting = setTimeout(ask, 60);
    }
  });
  form.addEventListener("submit", event => {
    const button = event.submitter;
    if (button && button.formMethod === "post") {
      return;
    }
    event.preventDefault();
    // Enter in any other field presses the first button of the form; nothing is to be added by that.
    const field = document.activeElement;
    ask(button && button.name === "first" && field !== text && field.tagName === "INPUT" ? null : button);
  });
  form.addEventListener("keydown", event => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (!step || !(event.target === text || event.target.closest("#finds"))) {
      return;
    }
    const stops = [text, ...document.querySelectorAll("#finds button")];
    const next = stops[stops.indexOf(event.target) + step];
    if (next) {
      event.preventDefault();
      next.focus();
    }
  });
  form.addEventListener("keydown", event => {
    const day = event.target.closest(".month-days button");
    const step = day && { ArrowLeft: -1, ArrowRight: 1, ArrowUp: -7, ArrowDown: 7 }[event.key];
    if (step) {
      event.preventDefault();
      const date = new Date(Date.parse(day.value + "T00:00:00Z") + step * 86400000).toISOString().slice(0, 10);
      const next = document.getElementById("day-" + date);
      if (next && !next.disabled) {
        next.focus();
        rove();
      }
    }
  });
  rove();
}

/* At the door: a scanned tag ticks its unit and all that belongs with it; what is not there is unticked by hand. */
function tickAtTheDoor(form) {
  const line = form.querySelector(".scan-tick");
  const box = line.querySelector("input");
  const status = line.querySelector("[role=status]");
  const units = Array.from(form.querySelectorAll("[data-tag]"));
  const all = form.querySelector("[data-all]");
  line.hidden = false;
  all.hidden = false;

  function tick(unit) {
    unit.closest("li").querySelectorAll("input[type=checkbox]").forEach(each => { each.checked = true; });
  }

  box.addEventListener("keydown", event => {
    if (event.key !== "Enter") {
      return;
    }
    event.preventDefault();
    const said = box.value.trim().toLowerCase();
    const unit = units.find(each => each.dataset.tag.toLowerCase() === said)
      || units.find(each => each.dataset.serial.toLowerCase() === said);
    if (unit) {
      tick(unit);
    }
    const left = units.filter(each => !each.checked).length;
    status.textContent = unit
      ? unit.dataset.tag + " ticked, " + (left === 0 ? "all are." : left + " to go.")
      : said + " is not booked on this rental, or it went already.";
    box.value = "";
  });
  all.addEventListener("click", () => units.forEach(tick));
}

/* A form that was sent cannot be sent twice. */
addEventListener("submit", event => {
  const form = event.target;
  if (form.dataset.sent) {
    event.preventDefault();
  } else if (form.method === "post") {
    form.dataset.sent = "yes";
  }
});
addEventListener("pageshow", () => document.querySelectorAll("form[data-sent]").forEach(form => delete form.dataset.sent));

const schedule = document.getElementById("schedule");
if (schedule) {
  scheduleEditor(schedule);
}
const run = document.getElementById("run");
if (run) {
  watchRun(run);
}
const pictures = document.querySelector("form[data-pictures]");
if (pictures) {
  pictureField(pictures);
}
const pack = document.getElementById("package");
if (pack) {
  livePackage(pack);
}
document.querySelectorAll("form[data-door]").forEach(tickAtTheDoor);
/* A link that says so is followed by its key, where no field has the focus. */
addEventListener("keydown", event => {
  const busy = event.target.closest("input, textarea, select") || event.ctrlKey || event.metaKey || event.altKey || event.shiftKey;
  const link = busy ? null : [...document.querySelectorAll("a[data-key]")].find(each => each.dataset.key === event.key);
  if (link) {
    event.preventDefault();
    link.click();
  }
});
listenForScanner(document.getElementById("scan"));
document.querySelectorAll("[data-tick]").forEach(button => button.addEventListener("click", () => {
  button.form.querySelectorAll(`input[type=checkbox][name="${button.dataset.tick}"]`).forEach(box => { box.checked = true; });
}));
document.querySelectorAll("[data-print]").forEach(button => button.addEventListener("click", () => print()));
