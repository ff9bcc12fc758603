// Playback of a routine: moves the markers of the floor plan by counts. Times are half counts, places units of the drawing.
const playback = () => {
  "use strict";
  const byId = id => document.getElementById(id);
  const course = JSON.parse(byId("course").textContent);
  const calm = matchMedia("(prefers-reduced-motion: reduce)");
  const player = byId("player");
  const actors = new Map([...document.querySelectorAll(".actor")].map(g => [Number(g.dataset.performer), g]));
  const lines = new Map([...document.querySelectorAll("#doings li")].map(li => [Number(li.dataset.performer), li]));
  const state = { at: course.from, playing: false, speed: 0.5, last: 0, followed: null, sounded: null, countIn: 0 };
  const round = byId("round") ? inTheRound(JSON.parse(byId("round").textContent), byId("scene"), { signs: course.performers.map((_, p) => p ? `A${p}` : "H"), names: course.performers.map(p => p.name), last: null }) : null;
  const { placeOf, held, onTheWay, bodyAt, facingOf, metres, moveAt, after } = momentsOf(course);
  const blows = blowsOf(course);
  const sounded = clickSound();
  const nextView = round ? waysToSee(round) : () => {};

  const range = () => byId("part").value === "all" ? [course.from, course.to] : course.phrases[Number(byId("part").value)];

  function draw() {
    const time = calm.matches ? Math.floor(state.at) : state.at;
    const cell = clamp(Math.floor(time) - course.from, 0, course.performers[0].doings.length - 1);
    const mark = placeOf(course.performers[0], time);
    const places = course.performers.map(performer => held(placeOf(performer, time), mark));
    course.performers.forEach((performer, p) => {
      const group = actors.get(p);
      const [x, y, there] = places[p];
      const figure = performer.figures[cell];
      const doing = course.doings[performer.doings[cell]];
      group.setAttribute("transform", `translate(${x.toFixed(1)},${y.toFixed(1)})`);
      const way = figure === "L" || figure === "A" || calm.matches ? null : onTheWay(performer, time);
      const [body, share] = way ?? [bodyAt(performer, time), 1];
      if (body) group.querySelector(".lying").setAttribute("transform", `translate(${((body[2] - x) * share).toFixed(1)},${((body[3] - y) * share).toFixed(1)}) rotate(${body[4]}) scale(1,${(0.3 + 0.7 * share).toFixed(3)})`);
      group.classList.toggle("falls", way !== null);
      group.querySelector(".turned").setAttribute("transform", `rotate(${facingOf(performer, time, x, y, mark).toFixed(1)})`);
      group.classList.toggle("lies", figure === "L");
      group.classList.toggle("kneels", figure === "K");
      group.classList.toggle("away", figure === "A");
      group.classList.toggle("afar", !there);
      group.classList.toggle("is-out", doing === "out");
      group.dataset.x = x.toFixed(1);
      group.dataset.y = y.toFixed(1);
      lines.get(p).querySelector(".what").textContent = there || figure === "A" ? doing : `${doing}, off the drawing, ${metres(performer, time, mark)} m from the mark`;
    });
    drawProps(time);
    byId("blows").replaceChildren(...blows(time, places));
    round?.draw({ time, followed: state.followed, names: byId("names").checked, blows: course.performers.flatMap((p, i) => p.contacts.filter(c => time >= c[0] - 1 && time < c[0] + 1).map(c => [c[0], i, c[2]])), away: course.performers.map(p => p.figures[cell] === "A") });
    const move = moveAt(time);
    byId("count").textContent = countText(time);
    byId("caption").textContent = move && time < move[1] + 4 ? move[3] : "";
    byId("place").value = Math.floor(time);
    byId("place").setAttribute("aria-valuetext", countText(time));
    tellNext(time);
    player.dispatchEvent(new CustomEvent("moment", { detail: time }));
  }

  /** What lies on the floor, and where every prop is. */
  function drawProps(time) {
    (course.props ?? []).forEach((spells, p) => {
      const spell = spells.findLast(s => s[0] <= time) ?? spells[0];
      const group = document.querySelector(`#stage [data-prop="${p}"]`);
      group.classList.toggle("held", spell.length < 4);
      if (spell.length > 3) group.setAttribute("transform", `translate(${spell[2]},${spell[3]})`);
      document.querySelector(`#handled [data-prop="${p}"] .what`).textContent = spell[1];
    });
  }

  /** What comes next, or what the one who is followed does next. */
  function tellNext(time) {
    const text = byId("next");
    const next = course.moves.find(m => m[0] > time && (!state.followed || m[2] + 1 === state.followed));
    text.textContent = next ? `Next at ${countText(next[0])}: ${next[3]}` : "Nothing more to do.";
  }

  const click = first => byId("click").checked && sounded(first);

  /** Sounds the click when a whole count has come. */
  function soundCounts() {
    const count = Math.floor(state.at / 2);
    if (count === state.sounded) return;
    state.sounded = count;
    click(course.phrases.some(p => Math.floor(p[0] / 2) === count));
  }

  /** Four counts before anybody moves: a click and a figure for each. */
  function countIn(passed) {
    state.countIn -= passed;
    if (state.countIn <= 0) {
      state.sounded = null;
      return;
    }
    const beat = clamp(4 - Math.floor(state.countIn / 2 - 1e-9), 1, 4);
    if (beat === state.sounded) return;
    state.sounded = beat;
    byId("count").textContent = `in ${beat} of 4`;
    byId("caption").textContent = "";
    click(beat === 1);
  }

  function frame(now) {
    if (!state.playing) return;
    const [from, to] = range();
    const seconds = Math.min(now - state.last, 250) / 1000 * state.speed;
    state.last = now;
    if (state.countIn > 0) {
      countIn(seconds * course.tempo / 30);
      requestAnimationFrame(frame);
      return;
    }
    state.at = after(state, seconds);
    if (state.at >= to) {
      if (byId("loop").checked) {
        state.at = from;
        state.sounded = null;
      } else {
        state.at = to;
        stop();
        draw();
        return;
      }
    }
    soundCounts();
    draw();
    requestAnimationFrame(frame);
  }

  function play() {
    const [from, to] = range();
    if (state.at >= to || state.at < from) state.at = from;
    state.playing = true;
    state.sounded = null;
    state.countIn = byId("count-in").checked ? 8 : 0;
    state.last = performance.now();
    show();
    requestAnimationFrame(frame);
  }

  function stop() {
    state.playing = false;
    show();
  }

  function show() {
    byId("play").textContent = state.playing ? "Pause" : "Play";
    byId("now").setAttribute("aria-live", state.playing ? "off" : "polite");
  }

  /** Fills the screen with the playback, or gives it back. */
  function fill() {
    if (document.fullscreenElement) document.exitFullscreen();
    else player.requestFullscreen?.().catch(() => {});
  }

  function showNames() {
    player.classList.toggle("named", byId("names").checked);
    draw();
  }

  function nextFinding() {
    const counts = byId("finding").dataset.counts.split(" ").map(Number);
    byId("part").value = "all";
    trace();
    go(counts.find(c => c > state.at + 0.5) ?? counts[0]);
  }

  const toggle = () => state.playing ? stop() : play();

  function go(time) {
    const [from, to] = range();
    stop();
    state.at = clamp(time, from, to);
    draw();
  }

  /** To the next whole count in that direction, or by a half count. */
  function step(direction, half) {
    const size = half ? 1 : 2;
    const on = Math.floor(state.at / size) * size;
    go(direction > 0 ? on + size : on < state.at ? on : on - size);
  }

  function follow(value) {
    state.followed = value === "" ? null : Number(value);
    player.classList.toggle("following", state.followed !== null);
    for (const [p, group] of actors) {
      group.classList.toggle("followed", p === state.followed);
      lines.get(p).classList.toggle("followed", p === state.followed);
    }
    trace();
    draw();
  }

  /** The whole way of the one who is followed, within the part that is played. */
  function trace() {
    const [from, to] = range();
    const path = document.createElementNS("http://www.w3.org/2000/svg", "path");
    if (state.followed !== null) {
      const performer = course.performers[state.followed];
      const times = [from, ...performer.ways.map(w => w[0]).filter(t => t > from && t < to), to];
      path.setAttribute("d", "M" + times.map(t => held(placeOf(performer, t), placeOf(course.performers[0], t)).slice(0, 2).map(v => v.toFixed(1)).join()).join("L"));
    }
    byId("trace").replaceChildren(path);
  }

  function setSpeed(value) {
    state.speed = value;
    for (const radio of document.querySelectorAll("[name=speed]")) radio.checked = Number(radio.value) === value;
  }

  function onKey(event) {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const own = event.target.closest("button, select, input");
    const chooses = own && (own.tagName === "SELECT" || own.type === "range" || own.type === "radio");
    const keys = {
      k: toggle, l: () => byId("loop").click(), n: () => byId("names").click(), v: nextView, f: fill,
      1: () => setSpeed(0.25), 2: () => setSpeed(0.5), 3: () => setSpeed(0.75), 4: () => setSpeed(1),
    };
    if (!own) keys[" "] = toggle;
    if (!chooses) {
      keys.ArrowRight = () => step(1, event.shiftKey);
      keys.ArrowLeft = () => step(-1, event.shiftKey);
    }
    const act = keys[event.key.length === 1 ? event.key.toLowerCase() : event.key];
    if (act && own?.tagName !== "SELECT") {
      event.preventDefault();
      act();
    }
  }

  function touch() {
    const stage = byId("stage");
    let start = null;
    stage.addEventListener("pointerdown", event => { start = event; });
    stage.addEventListener("pointerup", event => {
      if (!start) return;
      const [dx, dy] = [event.clientX - start.clientX, event.clientY - start.clientY];
      start = null;
      if (Math.abs(dx) > 40 && Math.abs(dx) > Math.abs(dy)) step(dx < 0 ? 1 : -1, false);
      else if (Math.abs(dx) < 12 && Math.abs(dy) < 12) toggle();
    });
    stage.addEventListener("pointercancel", () => { start = null; });
  }

  function themes() {
    const button = byId("theme");
    if (!button) return;
    button.hidden = false;
    button.addEventListener("click", () => {
      const root = document.documentElement;
      const dark = (root.dataset.theme ?? (matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light")) === "dark";
      root.dataset.theme = dark ? "light" : "dark";
      round?.repaint();
    });
  }

  player.hidden = false;
  player.tabIndex = -1;
  byId("no-player").hidden = true;
  byId("play").addEventListener("click", toggle);
  byId("back").addEventListener("click", () => step(-1, false));
  byId("on").addEventListener("click", () => step(1, false));
  byId("place").addEventListener("input", event => go(Number(event.target.value)));
  byId("part").addEventListener("change", () => { go(range()[0]); trace(); });
  byId("follow").addEventListener("change", event => follow(event.target.value));
  byId("speeds").addEventListener("change", event => setSpeed(Number(event.target.value)));
  byId("full").hidden = !document.fullscreenEnabled;
  byId("full").addEventListener("click", fill);
  document.addEventListener("fullscreenchange", draw);
  byId("names").addEventListener("change", showNames);
  byId("finding")?.addEventListener("click", nextFinding);
  player.addEventListener("keydown", onKey);
  calm.addEventListener("change", draw);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => round?.repaint());
  touch();
  themes();
  showNames();
  return { go, moves: course.moves };
};
if (document.getElementById("course")) playback();
