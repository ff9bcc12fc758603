// What lies and stands on the floor, as a form over the brief: marks, things, mats, ways in, cameras and props.
import { call } from './talk.js';
import { make, button } from './make.js';
import { line, field, tick, set } from './fields.js';

// How large things are to begin with, in metres. Common practice, no source.
const sizes = { table: [1.4, 0.8], counter: [2, 0.6], chair: [0.45, 0.45], bench: [1.6, 0.4], sofa: [1.8, 0.9], bed: [2, 1.4], wall: [3, 0.2], pillar: [0.4, 0.4], rail: [2, 0.1], stairs: [1.2, 1.5], crate: [0.8, 0.6], car: [4.2, 1.8] };
const across = ['x', "from the 9 o'clock side", 'm in'], up = ['y', "from the 6 o'clock side", 'm up'], wide = ['width', 'wide', 'm wide'], deep = ['depth', 'deep', 'm deep'];
const most = { marks: 8, mats: 20, props: 12 };
let known = { things: [], props: [] };
let fresh = '';

/** The kinds that the library knows. */
export async function learn() { known = await call('kinds'); }

const cm = value => Math.round(value * 100) / 100;
const named = (all, word) => { for (let n = 1; ; n++) { const name = n === 1 ? word : `${word} ${n}`; if (!all.some(o => o.name.toLowerCase() === name.toLowerCase())) return name; } };
const marksOf = brief => brief.marks?.length ? brief.marks : [{ x: brief.floor.mark[0], y: brief.floor.mark[1] }];

/** The first place for something so large that is clear of what stands there and of the marks. */
function free({ floor, marks }, width, depth, clear = 0.6) {
  const meets = (x, y, o) => x < o.x + (o.width ?? 0) && o.x < x + width && y < o.y + (o.depth ?? 0) && o.y < y + depth;
  const spots = marksOf({ floor, marks }).map(m => ({ x: m.x - clear, y: m.y - clear, width: 2 * clear, depth: 2 * clear }));
  for (let y = 0.3; y + depth <= floor.depth; y += 0.5) for (let x = 0.3; x + width <= floor.width; x += 0.5) {
    if (![...floor.obstacles ?? [], ...spots].some(o => meets(x, y, o))) return { x: cm(x), y: cm(y) };
  }
  return { x: 0, y: 0 };
}

/** Two marks at first: the one that there is, and another. */
function moreMarks(brief) {
  const all = brief.marks ?? [];
  const first = all.length ? all : [{ name: 'first mark', ...marksOf(brief)[0] }];
  const apart = (x, y) => first.every(m => Math.hypot(m.x - x, m.y - y) >= 1.4);
  for (let y = 1; y <= brief.floor.depth - 0.5; y += 0.5) for (let x = 1; x <= brief.floor.width - 0.5; x += 0.5) {
    if (apart(x, y) && (brief.floor.obstacles ?? []).every(o => x < o.x - 0.3 || x > o.x + o.width + 0.3 || y < o.y - 0.3 || y > o.y + o.depth + 0.3)) return [...first, { name: named(first, first.length === 1 ? 'second mark' : 'mark'), x, y }];
  }
  return [...first, { name: named(first, 'second mark'), ...marksOf(brief)[0] }];
}

/** The first mark is the floor's own, and a last one needs no name. */
function withMarks(brief, marks) {
  const floor = { ...brief.floor, mark: [marks[0].x, marks[0].y] };
  return { ...set(brief, 'marks', marks.length > 1 ? marks : null), floor };
}

const lists = {
  marks: { one: 'mark', fields: [across, up], put: withMarks, add: moreMarks },
  obstacles: {
    one: 'thing', fields: [across, up, wide, deep],
    add: brief => { const [width, depth] = (sizes[fresh] ?? [0.8, 0.6]).map((s, i) => Math.min(s, brief.floor[i ? 'depth' : 'width'])); const all = brief.floor.obstacles ?? []; return [...all, set({ name: named(all, fresh || 'box'), width, depth, ...free(brief, width, depth) }, 'kind', fresh)]; },
  },
  mats: {
    one: 'mat', fields: [across, up, wide, deep],
    // The first before the hero, the others where there is none yet.
    add: brief => {
      const { floor } = brief, all = floor.mats ?? [];
      const [width, depth] = [Math.min(2, floor.width), Math.min(2, floor.depth)];
      const at = all.length ? free({ floor: { ...floor, obstacles: all } }, width, depth, 0) : { x: cm(Math.max(0, Math.min(floor.width - width, floor.mark[0] - width / 2))), y: cm(Math.max(0, Math.min(floor.depth - depth, floor.mark[1] + 0.5))) };
      return [...all, { name: named(all, 'mat'), ...at, width, depth }];
    },
  },
  waysIn: { one: 'way in', fields: [across, up], add: brief => { const all = brief.floor.waysIn ?? []; return [...all, { name: named(all, 'door'), ...(all.length % 2 ? { x: 0, y: brief.floor.depth / 2 } : { x: brief.floor.width / 2, y: brief.floor.depth }) }]; } },
  cameras: {
    one: 'camera', fields: [['bearing', "o'clock", "o'clock"], ['distance', 'from the mark', 'm off,'], ['height', 'high', 'm high']],
    add: brief => { const all = brief.cameras ?? []; return [...all, { name: [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].find(l => !all.some(c => c.name.toUpperCase() === l)) ?? named(all, 'camera'), bearing: ['6', '9', '3', '12'][all.length % 4], distance: 5, height: 1.5 }]; },
  },
  props: { one: 'prop', fields: [across, up], add: brief => { const all = brief.props ?? []; return [...all, { name: named(all, (known.props[0] ?? ['stick'])[0]), kind: (known.props[0] ?? ['stick'])[0], ...free(brief, 0.4, 0.4) }]; } },
};
const onFloor = new Set(['obstacles', 'mats', 'waysIn']);
const inList = (brief, list) => (onFloor.has(list) ? brief.floor[list] : brief[list]) ?? [];
const withList = (brief, list, next) => lists[list].put && next.length ? lists[list].put(brief, next) : onFloor.has(list) ? { ...brief, floor: set(brief.floor, list, next.length ? next : null) } : set(brief, list, next.length ? next : null);

/** The form; every change of it is another brief. */
export function stuff(brief, recast) {
  return Object.keys(lists).filter(list => !(brief.ally && (list === 'marks' || list === 'props'))).map(list => part(brief, list, recast));
}

function part(brief, list, recast) {
  const { one, fields, add } = lists[list];
  const all = inList(brief, list);
  const put = (what, next) => recast(what, withList(brief, list, next));
  const change = (i, name, value) => put(name === 'name' ? `name of ${all[i].name}` : all[i].name, all.map((o, j) => j === i ? set(o, name, value) : o));
  const rows = all.map((t, i) => {
    const id = `cast-${list}${i}`;
    const own = (name, says, word, kind = 'decimal') => [make('span', { className: 'unit' }, field(`${id}-${name}`, `${t.name}, ${says}${kind === 'decimal' ? ', metres' : ''}`, t[name], v => change(i, name, v), kind), ` ${word}`)];
    return line(one.charAt(0).toUpperCase() + one.slice(1),
      field(`${id}-name`, `name of ${one} ${i + 1}`, t.name, v => change(i, 'name', v)),
      ...(list === 'obstacles' ? [field(`${id}-kind`, `${t.name}, kind`, t.kind ?? '', v => change(i, 'kind', v), 'text', [['', 'only in the way'], ...known.things])] : list === 'props' ? held(brief, t, i, id, recast, change) : []),
      ...(list === 'props' && t.with ? [] : fields.flatMap(([name, says, word]) => own(name, says, word, name === 'bearing' ? 'text' : 'decimal'))),
      ...(list === 'obstacles' && t.kind ? [...own('height', 'high', 'm high'), tick(`${id}-rated`, 'rated', `${t.name} is rated for the weight of those who come onto it, and fixed`, t.rated, v => change(i, 'rated', v)), tick(`${id}-padded`, 'padded', `${t.name} is padded`, t.padded, v => change(i, 'padded', v))] : []),
      button('×', () => put(`${t.name} goes`, all.filter((_, j) => j !== i)), `take ${t.name} away`));
  });
  const more = all.length < (most[list] ?? 100) ? button(`Add a ${one}`, () => put(`add a ${one}`, add(brief))) : null;
  const kind = list === 'obstacles' ? field('cast-add-kind', 'kind of the thing that is added', fresh, v => { fresh = v; }, 'text', [['', 'only in the way'], ...known.things]) : null;
  const hint = list === 'mats' && all.length && brief.floor.surface !== 'hard' ? make('p', { className: 'hint', textContent: `Mats matter on a hard floor only; this one is ${brief.floor.surface}.` }) : null;
  return make('div', { className: 'cast-part' }, ...rows, hint, make('div', { className: 'cast-line' }, more, kind));
}

/** Of a prop: its kind, who holds it, and in which hand. */
function held(brief, prop, i, id, recast, change) {
  const people = [brief.hero, ...brief.attackers].map(p => p.name);
  const give = who => {
    const { x, y, hand, ...rest } = brief.props[i];
    const next = who ? { ...rest, with: who, ...(hand ? { hand } : {}) } : { ...set(rest, 'with', null), ...free(brief, 0.4, 0.4) };
    recast(who ? `${who} holds ${prop.name}` : `${prop.name} lies ready`, { ...brief, props: brief.props.map((o, j) => j === i ? next : o) });
  };
  return [
    field(`${id}-kind`, `${prop.name}, kind`, prop.kind, v => change(i, 'kind', v), 'text', known.props),
    field(`${id}-with`, `${prop.name}, who holds it`, prop.with ?? '', give, 'text', [['', 'lies ready'], ...people.map(p => [p, `with ${p}`])]),
    ...(prop.with ? [field(`${id}-hand`, `${prop.name}, hand`, prop.hand, v => change(i, 'hand', v), 'text', ['right', 'left', 'both'])] : []),
  ];
}
