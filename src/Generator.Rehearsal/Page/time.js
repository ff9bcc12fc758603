// The fight over time: weight, and a lane for each performer. What is chosen is marked; a move is chosen by a press and put elsewhere by dragging, with all behind it.
import { call, inTurn } from './talk.js';
import { at, make, drawn, shape, foundAt } from './make.js';
import { chosen, choose, watch, named } from './chosen.js';
import { playing } from './player.js';

const line = at('time-line');
const far = 6;
let state;
let hooks;
let plan = null;
let seen = null;
let shown = '';
let busy = false;
let found = null;
let isTyped = false;
const order = ['unsafe', 'broken', 'rough'];

export function start(given) {
  hooks = given;
  watch(mark);
  line.addEventListener('pointerdown', press);
  line.addEventListener('keydown', pressed);
  at('time').addEventListener('toggle', draw);
  matchMedia('(max-width: 48rem)').addEventListener('change', () => { shown = ''; draw(); });
}

export function show(next) { state = next; draw(); }

/** Marks moves about which something is found, by the gravest: what is rough, and while words are only being typed, of which the drawing does not know, all. */
export function findings(next, typed = false) {
  [found, isTyped] = [next, typed];
  if (!plan?.svg) return;
  plan.svg.querySelectorAll('.found-at').forEach(n => n.remove());
  const worst = new Map();
  for (const f of found.findings) {
    if (f.severity === 'note' || (!isTyped && f.severity !== 'rough') || !plan.moves[f.move - 1]) continue;
    if (!worst.has(f.move) || order.indexOf(f.severity) < order.indexOf(worst.get(f.move).severity)) worst.set(f.move, f);
  }
  for (const [move, f] of worst) {
    const x = xOf(plan.moves[move - 1][0], plan);
    plan.svg.append(foundAt(f, x, plan.height + 2));
  }
}

/** An offer or a version below the fight; null for none. */
export function preview(subject) { seen = subject; draw(); }

const isNarrow = () => matchMedia('(max-width: 48rem)').matches;
const key = () => JSON.stringify([state.instance, state.revision, state.offers?.number, seen]);

async function draw() {
  if (busy || !state || !at('time').open || key() === shown) return;
  busy = true;
  const wanted = key();
  try {
    const [own, other] = await Promise.all([call('time'), seen ? call('time', seen.of) : null]);
    if (other?.gone) return;
    at('time-empty').textContent = own.cannot ?? 'Nothing is settled yet that could be drawn over time.';
    if (own.cannot) { plan = null; line.hidden = true; at('time-empty').hidden = false; shown = wanted; return; }
    plan = picture(own);

    // What is found has a row of its own below.
    plan.svg?.setAttribute('viewBox', `0 0 ${plan.width} ${plan.height + 16}`);
    line.replaceChildren(...plan.nodes);
    const second = other && picture(other);
    at('time-other').replaceChildren(...(second ? [make('p', { className: 'whose', textContent: seen.name }), ...second.nodes] : []));
    at('time-empty').hidden = own.moves.length > 0;
    line.hidden = own.moves.length === 0;
    shown = wanted;
    mark();
    if (found) findings(found, isTyped);
  } catch (fault) { hooks.fault(fault); } finally {
    busy = false;

    // What has come meanwhile is drawn now, whatever became of this.
    if (key() !== wanted) draw();
  }
}

export function picture(said) {
  const plate = isNarrow() ? said.narrow : said.wide;
  const nodes = drawn(plate.svg);
  return { ...plate, moves: said.moves, end: Math.max(1, said.end), nodes, svg: nodes.find(n => n.nodeName === 'svg') };
}

const xOf = (moment, plan) => plan.left + (plan.right - plan.left) * Math.min(plan.end, Math.max(0, moment)) / plan.end;

/** Marks moves on a time line that is drawn, numbered from 0. */
export function shade(plan, moves) {
  for (const [from, to] of moves.map(m => plan.moves[m]).filter(m => m)) plan.svg.prepend(shape('rect', { class: 'differs', x: xOf(from, plan), y: 18, width: Math.max(4, xOf(to, plan) - xOf(from, plan)), height: plan.height - 20 }));
}

/** Marks what is chosen, and where the playback is. */
export function mark() {
  if (!plan?.svg) return;
  plan.svg.querySelectorAll('.chosen, .now-at').forEach(n => n.remove());
  const { first, last, at: head } = chosen();
  const [a, b] = [plan.moves[first], plan.moves[Math.min(last, plan.moves.length - 1)]];
  if (head >= 0 && a) plan.svg.prepend(shape('rect', { class: 'chosen', x: xOf(a[0], plan), y: 18, width: Math.max(4, xOf(b[1], plan) - xOf(a[0], plan)), height: plan.height - 20 }));
  const moment = playing();
  if (moment !== null) plan.svg.append(shape('path', { class: 'now-at', d: `M${xOf(moment, plan)},18V${plan.height}` }));
  const row = state.rows[head];
  line.setAttribute('aria-valuemax', String(Math.max(1, plan.moves.length)));
  line.setAttribute('aria-valuenow', String(Math.max(0, head + 1)));
  line.setAttribute('aria-valuetext', row ? `${named(chosen())}, count ${row.count}, ${row.attacker}` : 'opening places');
}

const momentAt = e => {
  const frame = plan.svg.getBoundingClientRect();
  return ((e.clientX - frame.left) / frame.width * plan.width - plan.left) / (plan.right - plan.left) * plan.end;
};

/** The move at a moment; in an attacker's lane the nearest of theirs. */
function moveAt(e) {
  const moment = momentAt(e);
  const lane = e.target.closest?.('.lane');
  const who = lane ? Number([...lane.classList].find(c => /^p\d$/.test(c))?.slice(1) ?? 0) - 1 : -1;
  const name = who >= 0 ? state.attackers[who]?.name : null;
  const distance = ([from, to]) => moment < from ? from - moment : Math.max(0, moment - to);
  return plan.moves.map((m, i) => [distance(m), i]).filter(([, i]) => !name || state.rows[i]?.attacker === name).sort((a, b) => a[0] - b[0] || b[1] - a[1])[0]?.[1] ?? -1;
}

function press(down) {
  if (!plan?.svg || down.button > 0) return;
  const move = moveAt(down);
  if (move < 0) return;
  choose(move, down.shiftKey);
  line.focus({ preventScroll: true });
  if (down.pointerType === 'touch') return;
  line.setPointerCapture(down.pointerId);
  let by = 0;
  const drag = e => {
    if (Math.abs(e.clientX - down.clientX) < far && by === 0) return;
    by = Math.round(momentAt(e) - momentAt(down));
    const from = plan.moves[move][0] + by;
    plan.svg.querySelectorAll('.moved').forEach(n => n.remove());
    plan.svg.append(shape('path', { class: 'moved', d: `M${xOf(from, plan)},18V${plan.height}M${xOf(from, plan)},${plan.height - 8}H${plan.right}` }));
    at('time-says').textContent = by ? `from move ${move + 1} on ${Math.abs(by) / 2} ${Math.abs(by) === 2 ? 'count' : 'counts'} ${by < 0 ? 'sooner' : 'later'}` : '';
  };
  const drop = async e => {
    for (const [name, heard] of [['pointermove', drag], ['pointerup', drop], ['pointercancel', drop]]) line.removeEventListener(name, heard);
    plan.svg.querySelectorAll('.moved').forEach(n => n.remove());
    at('time-says').textContent = '';
    if (by && e.type === 'pointerup') await shift(move, by);
  };
  for (const [name, heard] of [['pointermove', drag], ['pointerup', drop], ['pointercancel', drop]]) line.addEventListener(name, heard);
}

async function shift(move, by) {
  try { await inTurn(async () => hooks.changed(await call('shift', { revision: state.revision, move, by }))); } catch (fault) { hooks.fault(fault); }
}

function pressed(e) {
  const by = { ArrowLeft: -1, ArrowRight: 1 }[e.key];
  if (!by || e.ctrlKey) return;
  e.preventDefault();
  const { at: head } = chosen();
  if (e.altKey) { if (head >= 0) shift(head, by); return; }
  choose(Math.max(-1, Math.min(state.rows.length - 1, head + by)), e.shiftKey);
}
