// The floor plan, drawn by the program, with handles over what may be placed: dragged, or moved by the arrow keys.
import { call, inTurn } from './talk.js';
import { at, make, button, drawn, shape, foundAt } from './make.js';
import { chosen, choose, watch } from './chosen.js';
import { placed, polar, snapped, nudged, clamp } from './placing.js';

const floor = at('floor');
const box = make('div', { className: 'plan-box' });
const places = at('places');
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
    if (!seen) alarms(own + 1);
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

/** Whoever something is found of has its sign beside them, the gravest of each; where they open only what is grave. */
function alarms(move) {
  const order = ['unsafe', 'broken', 'rough'];
  const found = state.found.findings.filter(f => f.move === move && order.includes(f.severity) && (move > 0 || f.severity !== 'rough'));
  for (const [name, x, y] of plate.people) {
    const own = found.filter(f => f.who.split(', ').includes(name)).sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
    if (own.length) box.querySelector('svg').append(shape('g', { transform: `translate(${x + 20},${y - 30}) scale(1.7)` }, foundAt(own[0], 0, 0)));
  }
}

function handles() {
  return placed(state, whole, hooks.recast, put).map(thing => {
    const handle = make('button', { type: 'button', className: 'handle' });
    handle.dataset.handle = thing.key;
    const where = thing.round ? polar(thing.clock, thing.far) : thing.at;
    const told = thing.round ? thing.says(thing.clock, Number(thing.far)) : thing.says(...where);
    handle.setAttribute('aria-label', told);
    handle.title = told;
    stand(handle, where);
    handle.addEventListener('pointerdown', e => drag(e, handle, thing, where));
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

function drag(down, handle, thing, where) {
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
  const drop = async e => {
    for (const [name, heard] of [['pointermove', move], ['pointerup', drop], ['pointercancel', drop]]) handle.removeEventListener(name, heard);
    if (!to || e.type !== 'pointerup' || await placing(thing, to)) stand(handle, where);
  };
  for (const [name, heard] of [['pointermove', move], ['pointerup', drop], ['pointercancel', drop]]) handle.addEventListener(name, heard);
}

async function nudge(e, thing, where) {
  const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[e.key];
  if (!step || e.altKey || e.ctrlKey) return;
  e.preventDefault();
  focused = thing.key;
  const to = nudged(thing, where, step, e.shiftKey ? 5 : 1);
  at('floor-says').textContent = thing.says(...to);

  // A key that is held down goes on from where the thing has come to.
  if (nudging) return;
  nudging = true;
  try { await placing(thing, to); } finally { nudging = false; }
}

/** Puts it there, or says why it cannot be, and gives that: then it is where it was. */
async function placing(thing, to) {
  const wrong = await thing.put(...to);
  if (wrong) at('floor-says').textContent = wrong;
  return wrong;
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
  try { await inTurn(async () => hooks.changed(await call('place', { revision: state.revision, attacker, bearing, distance }))); return ''; } catch (fault) { hooks.fault(fault); return fault.problem; }
}
