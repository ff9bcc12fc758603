// The floor plan, drawn by the program; where attackers open is typed, or dragged on the plan of the opening.
import { call } from './talk.js';

const floor = document.getElementById('floor');
const head = document.getElementById('floor-head');
const places = document.getElementById('places');
let state;
let hooks;
let move = -1;
let plate;
let shown = '';
let busy = false;

export function start(given) { hooks = given; }

export function show(next) {
  state = next;
  if (move >= next.rows.length) move = -1;
  rows();
  draw();
}

export function select(at) {
  if (move === at) return;
  move = at;
  draw();
}

async function draw() {
  const wanted = `${state.instance} ${state.revision} ${move}`;
  if (busy || wanted === shown) return;
  busy = true;
  try {
    const seen = move >= 0 && (state.found.open === null || move < state.found.open - 1) ? move : -1;
    const got = await call('floor', { move: seen });
    plate = got;
    head.textContent = seen >= 0 ? `Floor, move ${seen + 1}` : move >= 0 ? 'Floor, opening places (this move is still open)' : 'Floor, opening places';
    floor.replaceChildren(document.importNode(new DOMParser().parseFromString(got.svg, 'text/html').querySelector('svg'), true));
    floor.classList.toggle('opening', seen < 0);
    shown = wanted;
  } catch (fault) { hooks.fault(fault); } finally { busy = false; }
  if (shown === wanted && `${state.instance} ${state.revision} ${move}` !== wanted) draw();
}

function rows() {
  const inputs = state.attackers.map((a, i) => places.querySelector(`[data-who="${i}"]`) ?? row(i));
  inputs.forEach((p, i) => {
    const a = state.attackers[i];
    const [clock, far] = p.querySelectorAll('input');
    if (document.activeElement !== clock) clock.value = a.bearing ?? '';
    if (document.activeElement !== far) far.value = a.bearing === null ? '' : String(a.distance);
    clock.placeholder = a.drawn;
    far.placeholder = String(a.far);
  });
}

function row(i) {
  const p = document.createElement('div');
  p.dataset.who = i;
  p.className = `place w${i + 1}`;
  const name = document.createElement('span');
  name.textContent = state.attackers[i].name;
  const clock = field(`where ${state.attackers[i].name} opens, o'clock`);
  const far = field(`how far ${state.attackers[i].name} opens, metres`);
  for (const input of [clock, far]) {
    input.addEventListener('change', () => put(i, clock.value || clock.placeholder, Math.round(Number((far.value || far.placeholder).replace(',', '.')) * 100)));
  }
  const all = document.createElement('button');
  all.type = 'button';
  all.textContent = 'see';
  all.setAttribute('aria-label', `see the opening places, ${state.attackers[i].name}`);
  all.addEventListener('click', () => select(-1));
  p.append(name, clock, "o'clock", far, 'm', all);
  places.append(p);
  return p;
}

function field(label) {
  const input = document.createElement('input');
  input.setAttribute('aria-label', label);
  input.autocomplete = 'off';
  return input;
}

async function put(attacker, bearing, distance) {
  try { hooks.changed(await call('place', { revision: state.revision, attacker, bearing, distance })); } catch (fault) { hooks.fault(fault); }
}

// Dragging: the sign follows the pointer, and lands on the nearest half hour and ten centimetres.
const pointOf = (svg, e) => new DOMPoint(e.clientX, e.clientY).matrixTransform(svg.getScreenCTM().inverse());
floor.addEventListener('pointerdown', down => {
  const sign = down.target.closest('.opening .marker');
  const who = sign && [...sign.classList].map(c => /^p(\d)$/.exec(c)?.[1]).find(Boolean);
  if (!sign || who === '0') return;
  const svg = sign.ownerSVGElement;
  down.preventDefault();
  floor.setPointerCapture(down.pointerId);
  let at = null;
  const drag = e => { at = pointOf(svg, e); sign.setAttribute('transform', `translate(${at.x},${at.y})`); };
  const drop = () => {
    floor.removeEventListener('pointermove', drag);
    floor.removeEventListener('pointerup', drop);
    floor.removeEventListener('pointercancel', drop);
    if (!at) return;
    const [x, y] = [at.x - plate.x, plate.y - at.y];
    const half = Math.round(((Math.atan2(x, y) * 180 / Math.PI + 360) % 360) / 15) % 24;
    const hour = Math.floor(half / 2) || 12;
    put(Number(who) - 1, `${hour}${half % 2 ? ':30' : ''}`, Math.min(2000, Math.max(100, Math.round(Math.hypot(x, y) / plate.scale / 10) * 10)));
  };
  floor.addEventListener('pointermove', drag);
  floor.addEventListener('pointerup', drop);
  floor.addEventListener('pointercancel', drop);
});
