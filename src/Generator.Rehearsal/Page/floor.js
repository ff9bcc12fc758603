// The floor plan, drawn by the program, with handles over what may be placed: dragged, or moved by the arrow keys.
import { call, inTurn } from './talk.js';
import { at, make, button, drawn } from './make.js';
import { chosen, choose, watch } from './chosen.js';

const floor = at('floor');
const box = make('div', { className: 'plan-box' });
const places = at('places');
const smallest = 0.1;
let state;
let hooks;
let plate;
let shown = '';
let busy = false;
let whole = false;
let seen = null;
let focused = null;
let nudging = false;

export function start(given) {
  hooks = given;
  floor.append(box);
  watch(() => { seen = null; draw(); });
}

export function show(next) {
  state = next;
  rows();
  draw();
}

/** All of the floor with what stands on it, or the part on which people are. */
export function setWhole(on) { whole = on; if (on) { seen = null; choose(-1); } draw(); }

/** Shows an offer or a version instead of the fight; null for the fight again. */
export function preview(subject) { seen = subject; draw(); }

const key = () => JSON.stringify([state.instance, state.revision, state.offers?.number, chosen().at, whole, seen]);

async function draw() {
  if (busy || !state) return;
  const wanted = key();
  if (wanted === shown) return;
  busy = true;
  try {
    const move = seen ? seen.move : chosen().at;
    const open = seen ? null : state.found.open;
    const own = move >= 0 && (open === null || move < open - 1) ? move : -1;
    const said = await call('floor', { move: own, whole: whole && own < 0, ...(seen ? seen.of : {}) });
    if (said.gone) return;
    if (said.cannot) {
      at('floor-head').textContent = 'Floor';
      box.replaceChildren(make('p', { className: 'hint', textContent: said.cannot }));
      shown = wanted;
      return;
    }
    plate = said;
    at('floor-head').textContent = (seen ? `${seen.name}: ` : '') + (own >= 0 ? `${seen ? 'move' : 'Floor, move'} ${own + 1}` : move >= 0 && !seen ? 'Floor, opening places (this move is still open)' : `${seen ? 'opening' : 'Floor, opening'} places`);
    box.style.aspectRatio = `${plate.width} / ${plate.height}`;
    box.style.maxWidth = `calc(42vh * ${plate.width / plate.height})`;
    const refocus = document.activeElement?.dataset?.handle ?? focused;
    box.replaceChildren(...drawn(plate.svg), ...(own < 0 && !seen ? handles() : []));
    if (refocus) box.querySelector(`[data-handle="${refocus}"]`)?.focus();
    focused = null;
    at('figures').replaceChildren(...drawn(plate.figures));
    at('figures-words').textContent = plate.told;
    floor.classList.toggle('offered', Boolean(seen));
    shown = wanted;
  } catch (fault) { hooks.fault(fault); } finally {
    busy = false;

    // What has come meanwhile is drawn now, whatever became of this.
    if (key() !== wanted) draw();
  }
}

// ---- where things are, in metres from the mark towards 3 o'clock and 12

const clockOf = (x, y) => {
  const half = Math.round(((Math.atan2(x, y) * 180 / Math.PI + 360) % 360) / 15) % 24;
  return `${Math.floor(half / 2) || 12}${half % 2 ? ':30' : ''}`;
};
const halfOf = clock => { const [h, m] = clock.split(':'); return (Number(h) % 12) * 2 + (m ? 1 : 0); };
const clockAt = half => { const h = ((half % 24) + 24) % 24; return `${Math.floor(h / 2) || 12}${h % 2 ? ':30' : ''}`; };
const round = (value, step = smallest) => Math.round(Math.round(value / step) * step * 100) / 100;
const clamp = (value, least, most) => Math.min(most, Math.max(least, value));
const polar = (clock, far) => [Math.sin(halfOf(clock) * Math.PI / 12) * far, Math.cos(halfOf(clock) * Math.PI / 12) * far];

/** Everything that has a handle: where it is, how that is said, and what placing it asks for. */
function things() {
  const brief = state.brief;
  const [markX, markY] = brief.floor.mark;
  const attackers = state.attackers.map((a, i) => ({
    key: `a${i}`, name: a.name, round: true, clock: a.bearing ?? a.drawn, far: a.distance ?? a.far, least: 1, most: 20,
    says: (c, d) => `${a.name} opens at ${c} o'clock, ${d.toFixed(1)} m`,
    put: (c, d) => put(i, c, Math.round(d * 100)),
  }));
  if (!whole) return attackers;
  const patched = (list, at, change) => brief[list]?.map((t, i) => i === at ? { ...t, ...change } : t);
  const onFloor = (list, word, least, most) => (brief.floor[list] ?? []).map((t, i) => ({
    key: `${list}${i}`, name: t.name, at: [t.x - markX + (t.width ?? 0) / 2, t.y - markY + (t.depth ?? 0) / 2],
    says: (x, y) => `${t.name}: ${(x + markX).toFixed(1)} m from the 9 o'clock side, ${(y + markY).toFixed(1)} m from the 6 o'clock side`,
    put: (x, y) => hooks.recast(`where ${t.name} ${word}`, { ...brief, floor: { ...brief.floor, [list]: brief.floor[list].map((o, j) => j === i
      ? { ...o, x: clamp(round(x + markX - (o.width ?? 0) / 2), least, brief.floor.width + most - (o.width ?? 0)), y: clamp(round(y + markY - (o.depth ?? 0) / 2), least, brief.floor.depth + most - (o.depth ?? 0)) } : o) } }),
  }));
  const cameras = (brief.cameras ?? []).map((c, i) => ({
    key: `camera${i}`, name: c.name, round: true, clock: c.bearing, far: c.distance, least: 1, most: 200, held: true,
    says: (clock, d) => `${c.name} at ${clock} o'clock, ${d.toFixed(1)} m from the mark`,
    put: (clock, d) => hooks.recast(`where ${c.name} stands`, { ...brief, cameras: patched('cameras', i, { bearing: clock, distance: d }) }),
  }));
  // The first of several marks is the floor's own.
  const marks = brief.marks?.length > 0 ? brief.marks.map((m, i) => ({
    key: `mark${i}`, name: m.name, at: [m.x - markX, m.y - markY],
    says: (x, y) => `mark ${m.name}: ${(x + markX).toFixed(1)} m from the 9 o'clock side, ${(y + markY).toFixed(1)} m from the 6 o'clock side`,
    put: (x, y) => hooks.recast(`where ${m.name} is`, { ...brief, ...(i === 0 ? { floor: { ...brief.floor, mark: [clamp(round(x + markX), 0, brief.floor.width), clamp(round(y + markY), 0, brief.floor.depth)] } } : {}), marks: brief.marks.map((o, j) => j === i ? { ...o, x: clamp(round(x + markX), 0, brief.floor.width), y: clamp(round(y + markY), 0, brief.floor.depth) } : o) }),
  })) : [{
    key: 'mark', name: brief.hero.name, at: [0, 0],
    says: (x, y) => `${brief.hero.name}'s mark: ${(x + markX).toFixed(1)} m from the 9 o'clock side, ${(y + markY).toFixed(1)} m from the 6 o'clock side`,
    put: (x, y) => hooks.recast(`where ${brief.hero.name} stands`, { ...brief, floor: { ...brief.floor, mark: [clamp(round(x + markX), 0, brief.floor.width), clamp(round(y + markY), 0, brief.floor.depth)] } }),
  }];
  return [...marks, ...attackers, ...onFloor('obstacles', 'stands', 0, 0), ...onFloor('waysIn', 'is', -3, 3), ...cameras];
}

function handles() {
  return things().map(thing => {
    const handle = make('button', { type: 'button', className: 'handle' });
    handle.dataset.handle = thing.key;
    const where = thing.round ? polar(thing.clock, thing.far) : thing.at;
    const told = thing.round ? thing.says(thing.clock, Number(thing.far)) : thing.says(...where);
    handle.setAttribute('aria-label', told);
    handle.title = told;
    stand(handle, where);
    handle.addEventListener('pointerdown', e => drag(e, handle, thing));
    handle.addEventListener('keydown', e => nudge(e, thing, where));
    return handle;
  });
}

/** Puts a handle over a place; whatever is off the drawing has it at the edge. */
function stand(handle, [x, y]) {
  const [px, py] = [clamp(plate.x + x * 100 * plate.scale, 12, plate.width - 12), clamp(plate.y - y * 100 * plate.scale, 12, plate.height - 12)];
  handle.style.left = `${px / plate.width * 100}%`;
  handle.style.top = `${py / plate.height * 100}%`;
}

const snapped = (thing, [x, y]) => thing.round ? [clockOf(x, y), clamp(round(Math.hypot(x, y)), thing.least, thing.most)] : [round(x), round(y)];

function drag(down, handle, thing) {
  down.preventDefault();
  handle.focus();
  handle.setPointerCapture(down.pointerId);
  let to = null;
  const move = e => {
    const frame = box.getBoundingClientRect();
    const [px, py] = [(e.clientX - frame.left) / frame.width * plate.width, (e.clientY - frame.top) / frame.height * plate.height];
    to = snapped(thing, [(px - plate.x) / plate.scale / 100, (plate.y - py) / plate.scale / 100]);
    stand(handle, thing.round ? polar(...to) : to);
    at('floor-says').textContent = thing.says(...to);
  };
  const drop = e => {
    for (const [name, heard] of [['pointermove', move], ['pointerup', drop], ['pointercancel', drop]]) handle.removeEventListener(name, heard);
    if (to && e.type === 'pointerup') thing.put(...to);
  };
  for (const [name, heard] of [['pointermove', move], ['pointerup', drop], ['pointercancel', drop]]) handle.addEventListener(name, heard);
}

async function nudge(e, thing, [x, y]) {
  const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[e.key];
  if (!step || e.altKey || e.ctrlKey) return;
  e.preventDefault();
  focused = thing.key;
  const by = e.shiftKey ? 5 : 1;
  const to = thing.round ? [clockAt(halfOf(thing.clock) + step[0]), clamp(round(Number(thing.far) + step[1] * smallest * by), thing.least, thing.most)] : [round(x + step[0] * smallest * by), round(y + step[1] * smallest * by)];
  at('floor-says').textContent = thing.says(...to);

  // A key that is held down goes on from where the thing has come to.
  if (nudging) return;
  nudging = true;
  try { await thing.put(...to); } finally { nudging = false; }
}

// ---- the same in writing

function rows() {
  places.querySelectorAll('.place').forEach(p => { if (!state.attackers[p.dataset.who] || state.attackers[p.dataset.who].name !== p.dataset.name) p.remove(); });
  state.attackers.forEach((a, i) => {
    const p = places.querySelector(`[data-who="${i}"]`) ?? row(i);
    const [clock, far] = p.querySelectorAll('input');
    if (document.activeElement !== clock) clock.value = a.bearing ?? '';
    if (document.activeElement !== far) far.value = a.bearing === null ? '' : String(a.distance);
    clock.placeholder = a.drawn;
    far.placeholder = String(a.far);
    const own = state.rows.filter(r => r.attacker === a.name && r.sayings > 0);
    const on = own.length > 0 && own.every(r => r.locked.length === r.sayings);
    const lock = p.querySelector('.lock-all');
    lock.setAttribute('aria-pressed', String(on));
    lock.classList.toggle('on', on);
    lock.disabled = own.length === 0;
  });
}

function row(i) {
  const { name } = state.attackers[i];
  const p = make('div', { className: `place w${i + 1}` });
  Object.assign(p.dataset, { who: i, name });
  const clock = field(`where ${name} opens, o'clock`);
  const far = field(`how far ${name} opens, metres`);
  for (const input of [clock, far]) {
    input.addEventListener('change', () => put(i, clock.value || clock.placeholder, Math.round(Number((far.value || far.placeholder).replace(',', '.')) * 100)));
  }
  const lock = button('', async () => {
    try { await inTurn(async () => hooks.changed(await call('lock', { revision: state.revision, attacker: i, locked: lock.getAttribute('aria-pressed') !== 'true' }))); } catch (fault) { hooks.fault(fault); }
  }, `padlock on all that ${name} is in, or off`);
  lock.className = 'lock-all';
  lock.append(hooks.padlock());
  p.append(make('span', { textContent: name }), clock, "o'clock", far, 'm', lock, button('see', () => choose(-1), `see the opening places, ${name}`));
  places.append(p);
  return p;
}

function field(label) {
  const input = make('input', { autocomplete: 'off' });
  input.setAttribute('aria-label', label);
  return input;
}

async function put(attacker, bearing, distance) {
  try { await inTurn(async () => hooks.changed(await call('place', { revision: state.revision, attacker, bearing, distance }))); } catch (fault) { hooks.fault(fault); }
}
