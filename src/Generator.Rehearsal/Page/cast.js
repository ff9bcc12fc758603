// Who is in the fight, and the floor: a form over the brief. What it does not show stays as it is. And the form for somebody who is hurt.
import { call, inTurn } from './talk.js';
import { at, make, button } from './make.js';

const trees = ['Ash', 'Birch', 'Cedar', 'Elm', 'Fir', 'Juniper', 'Larch', 'Oak'];
const most = 8;
const skills = ['novice', 'trained', 'stunt'];
const surfaces = ['matted', 'sprung', 'hard', 'wet', 'uneven'];
const kinds = {
  obstacles: { one: 'obstacle', fields: [['x', 'from the 9 o\'clock side', 'in'], ['y', 'from the 6 o\'clock side', 'up'], ['width', 'wide', 'wide'], ['depth', 'deep', 'deep']], fresh: n => ({ name: n ? `box ${n + 1}` : 'box', x: Math.min(5, 0.3 + n), y: 0.3, width: 0.8, depth: 0.6 }) },
  waysIn: { one: 'way in', fields: [['x', 'from the 9 o\'clock side', 'in'], ['y', 'from the 6 o\'clock side', 'up']], fresh: (n, brief) => ({ name: n ? `door ${n + 1}` : 'door', x: n % 2 ? 0 : brief.floor.width / 2, y: n % 2 ? brief.floor.depth / 2 : brief.floor.depth }) },
  cameras: { one: 'camera', fields: [['bearing', 'o\'clock', 'o\'clock'], ['distance', 'from the mark', 'm off,'], ['height', 'high', 'm high']], fresh: n => ({ name: String.fromCharCode(65 + n), bearing: ['6', '9', '3', '12'][n % 4], distance: 5, height: 1.5 }) },
};
let state;
let hooks;
let shown = '';

export function start(given) {
  hooks = given;
  at('cast').addEventListener('toggle', () => { hooks.whole(at('cast').open); shown = ''; if (state) show(state); });
  at('hurt').addEventListener('toggle', limits);
  at('hurt-form').addEventListener('submit', e => {
    e.preventDefault();
    hooks.ask('hurt', { performer: Number(at('hurt-who').value), limit: at('hurt-what').value });
  });
}

export function show(next) {
  const first = !state;
  state = next;
  if (first && next.fresh) { at('cast').open = true; return; }
  const names = [next.hero, ...next.attackers.map(a => a.name)];
  if (at('hurt-who').dataset.names !== names.join('\n')) {
    at('hurt-who').dataset.names = names.join('\n');
    at('hurt-who').replaceChildren(...names.map((n, i) => make('option', { value: String(i - 1), textContent: n })));
  }
  const looks = JSON.stringify(next.brief);
  if (!at('cast').open || looks === shown) return;
  shown = looks;
  form(next.brief);
}

async function limits() {
  if (at('hurt-what').options.length) return;
  try { at('hurt-what').replaceChildren(...(await call('limits')).limits.map(l => make('option', { value: l, textContent: l.replaceAll('-', ' ') }))); } catch (fault) { hooks.fault(fault); }
}

/** Asks for another brief; attackers stay who they are unless it is said who was who. */
export async function recast(what, brief, was) {
  try {
    const revision = state.revision;
    await inTurn(async () => hooks.changed(await call('recast', { revision, what, brief: JSON.stringify(brief), was: (was ?? brief.attackers.map((_, i) => String(i))).join(',') })));
    at('cast-answer').textContent = '';
  } catch (fault) {
    if (fault.status !== 400) { hooks.fault(fault); return; }
    at('cast-answer').textContent = `${fault.problem} ${fault.maybe}`;
    at('cast').open = true;
  }
}

function field(id, label, value, set, kind = 'text', choices = null) {
  const input = choices ? make('select', {}, ...choices.map(c => make('option', { value: c, textContent: c }))) : make('input', { type: 'text', autocomplete: 'off', inputMode: kind });
  input.id = id;
  input.value = value ?? '';
  input.setAttribute('aria-label', label);
  input.addEventListener('change', () => set(kind === 'decimal' ? input.value.trim() === '' ? null : Number(input.value.replace(',', '.')) : input.value));
  return input;
}

const set = (object, name, value) => { const next = { ...object, [name]: value }; if (value === null || value === '') delete next[name]; return next; };

function form(brief) {
  const focus = document.activeElement?.id;
  const hero = (name, value) => recast(`${name} of the hero`, { ...brief, hero: set(brief.hero, name, value) });
  const floor = (name, value) => recast('the floor', { ...brief, floor: name === 'mark' ? { ...brief.floor, mark: value } : set(brief.floor, name, value) });
  at('cast-form').replaceChildren(
    line('Title', field('cast-title', 'title', brief.title, v => recast('title', { ...brief, title: v }))),
    Array.isArray(brief.tempo) ? line('Tempo', make('span', { textContent: `${brief.tempo.length} passages; change them in the file` })) : line('Tempo', field('cast-tempo', 'tempo, counts a minute', brief.tempo, v => recast('tempo', { ...brief, tempo: v }), 'decimal'), 'counts a minute'),
    make('h3', { textContent: 'Hero' }),
    person('hero', brief.hero, hero),
    make('h3', { textContent: 'Attackers' }),
    ...brief.attackers.map((a, i) => person(`a${i}`, a, (name, value) => recast(`${name} of ${a.name}`, renamed(brief, i, name, value)),
      brief.attackers.length > 1 ? () => recast(`${a.name} leaves`, without(brief, i), brief.attackers.map((_, j) => String(j)).filter((_, j) => j !== i)) : null)),
    brief.attackers.length < most ? button('Add an attacker', () => {
      const name = trees.find(t => ![brief.hero, ...brief.attackers].some(p => p.name === t)) ?? `Attacker ${brief.attackers.length + 1}`;
      recast(`${name} comes in`, { ...brief, attackers: [...brief.attackers, { name }] }, [...brief.attackers.map((_, i) => String(i)), '']);
    }) : null,
    make('h3', { textContent: 'Floor' }),
    line('Wide', field('cast-width', 'width of the floor, metres', brief.floor.width, v => floor('width', v), 'decimal'), 'm, deep', field('cast-depth', 'depth of the floor, metres', brief.floor.depth, v => floor('depth', v), 'decimal'), 'm'),
    line('Mark', field('cast-markx', 'mark, metres from the 9 o\'clock side', brief.floor.mark[0], v => floor('mark', [v ?? 0, brief.floor.mark[1]]), 'decimal'), 'm in,', field('cast-marky', 'mark, metres from the 6 o\'clock side', brief.floor.mark[1], v => floor('mark', [brief.floor.mark[0], v ?? 0]), 'decimal'), 'm up'),
    line('Surface', field('cast-surface', 'surface', brief.floor.surface, v => floor('surface', v), 'text', surfaces)),
    ...Object.entries(kinds).flatMap(([list, kind]) => stuff(brief, list, kind)));
  if (focus) document.getElementById(focus)?.focus();
}

const line = (label, ...inside) => make('div', { className: 'cast-line' }, make('span', { className: 'cast-label', textContent: label }), ...inside);

function person(id, of, change, leave = null) {
  return line(`${of.name}`,
    field(`cast-${id}-name`, `name of ${of.name}`, of.name, v => change('name', v)),
    field(`cast-${id}-height`, `height of ${of.name}, metres`, of.height, v => change('height', v), 'decimal'), 'm',
    field(`cast-${id}-skill`, `skill of ${of.name}`, of.skill, v => change('skill', v), 'text', skills),
    leave ? button('×', leave, `take ${of.name} out`) : null,
    (of.limits ?? []).length ? make('ul', { className: 'limits' }, ...of.limits.map(l => make('li', {}, l.replaceAll('-', ' ') + ' ', button('×', () => change('limits', of.limits.filter(o => o !== l)), `${of.name} may do it again: ${l.replaceAll('-', ' ')}`)))) : null);
}

/** A name stands wherever the brief says it. */
function renamed(brief, i, name, value) {
  const next = { ...brief, attackers: brief.attackers.map((a, j) => j === i ? set(a, name, value) : a) };
  if (name !== 'name') return next;
  const [was, text] = [brief.attackers[i].name, v => v === brief.attackers[i].name ? value : v];
  if (brief.ending) next.ending = { ...brief.ending, out: Array.isArray(brief.ending.out) ? brief.ending.out.map(text) : brief.ending.out, ...(brief.ending.last === was ? { last: value } : {}) };
  if (brief.moments) next.moments = brief.moments.map(m => ({ ...m, ...(m.attacker === was ? { attacker: value } : {}), ...(m.moves ? { moves: m.moves.map(o => o.attacker === was ? { ...o, attacker: value } : o) } : {}) }));
  return next;
}

function without(brief, i) {
  const { name } = brief.attackers[i];
  const next = { ...brief, attackers: brief.attackers.filter((_, j) => j !== i) };
  if (brief.ending) {
    next.ending = { ...brief.ending, ...(Array.isArray(brief.ending.out) ? { out: brief.ending.out.filter(o => o !== name) } : {}) };
    if (next.ending.last === name) delete next.ending.last;
  }
  return next;
}

function stuff(brief, list, kind) {
  const inFloor = list !== 'cameras';
  const all = (inFloor ? brief.floor[list] : brief.cameras) ?? [];
  const put = (what, next) => recast(what, inFloor ? { ...brief, floor: set(brief.floor, list, next.length ? next : null) } : set(brief, 'cameras', next.length ? next : null));
  return [
    ...all.map((t, i) => line(kind.one.charAt(0).toUpperCase() + kind.one.slice(1),
      field(`cast-${list}${i}-name`, `name of ${kind.one} ${i + 1}`, t.name, v => put(`name of ${t.name}`, all.map((o, j) => j === i ? set(o, 'name', v) : o))),
      ...kind.fields.flatMap(([name, says, word]) => [field(`cast-${list}${i}-${name}`, `${t.name}, ${says}${name === 'bearing' ? '' : ', metres'}`, t[name], v => put(t.name, all.map((o, j) => j === i ? set(o, name, v) : o)), name === 'bearing' ? 'text' : 'decimal'), inFloor ? `m ${word}` : word]),
      button('×', () => put(`${t.name} goes`, all.filter((_, j) => j !== i)), `take ${t.name} away`))),
    button(`Add ${kind.one === 'obstacle' ? 'an' : 'a'} ${kind.one}`, () => put(`add ${kind.one === 'obstacle' ? 'an' : 'a'} ${kind.one}`, [...all, kind.fresh(all.length, brief)])),
  ];
}
