// The fight beside an offer or a version that was saved before: what differs, move by move, on floor and time line.
import { call } from './talk.js';
import { at, make, button, drawn, many } from './make.js';
import { choose } from './chosen.js';

let hooks;
let state;
let shown = '';
let choices = '';
let beside = [];

export function start(given) {
  hooks = given;
  at('compare').addEventListener('toggle', async () => {
    if (at('compare').open) try { beside = (await call('beside')).files; } catch (fault) { hooks.fault(fault); }
    if (state) show(state);
  });
  at('compare-with').addEventListener('change', load);
  at('only-different').addEventListener('change', filter);
}

export function show(next) {
  state = next;
  const offers = next.offers?.cards ?? [];
  const wanted = JSON.stringify([next.versions, offers.map(o => o.name), beside]);
  if (wanted !== choices) {
    choices = wanted;
    const was = at('compare-with').value;
    at('compare-with').replaceChildren(
      ...Array.from({ length: next.versions }, (_, i) => make('option', { value: `version ${next.versions - 1 - i}`, textContent: `saved version ${next.versions - i}` })),
      ...offers.map((o, i) => make('option', { value: `card ${i}`, textContent: `offer ${i + 1}: ${o.name}` })),
      ...beside.map((file, i) => make('option', { value: `beside ${i}`, textContent: file })));
    if ([...at('compare-with').options].some(o => o.value === was)) at('compare-with').value = was;
  }
  at('compare-none').hidden = at('compare-with').options.length > 0;
  at('compare-which').hidden = at('compare-with').options.length === 0;
  load();
}

const subject = () => { const [kind, number] = at('compare-with').value.split(' '); return { [kind]: Number(number) }; };
const nameOf = () => at('compare-with').selectedOptions[0]?.textContent.split(':')[0] ?? '';

async function load() {
  const has = at('compare').open && at('compare-with').value !== '';
  const key = has ? JSON.stringify([state.instance, state.revision, state.offers?.number, at('compare-with').value]) : '';
  if (key === shown) return;
  shown = key;
  if (!has) { at('compare-rows').replaceChildren(); at('compare-facts').replaceChildren(); at('compare-floors').replaceChildren(); hooks.preview(null); return; }
  try {
    const said = await call('compare', subject());
    if (key !== shown) return;
    const differ = said.rows.filter(r => !r.same || r.shifted).length;
    at('compare-facts').replaceChildren(...[['This fight', said.one], [nameOf(), said.other]].map(([name, f]) =>
      make('li', { textContent: `${name}: ${many(f.moves, 'move')}, ${many(f.points, 'point')}${f.grave ? `, ${f.grave} unsafe or broken` : ''}${f.open ? `, open from move ${f.open} on` : ''}` })),
    make('li', { textContent: differ ? `${many(differ, 'move')} different` : 'Nothing is different.' }));
    at('compare-rows').replaceChildren(...said.rows.map(pair));
    filter();
    const first = said.rows.find(r => !r.same || r.shifted) ?? said.rows[0];
    if (first) await floors(first); else hooks.preview(null);
  } catch (fault) { hooks.fault(fault); }
}

const words = m => m ? `${m.count || 'open'}  ${m.attacker ? m.attacker + ': ' : ''}${m.text || 'open'}` : '–';

function pair(row) {
  const tr = make('tr', { className: row.same ? row.shifted ? 'shifted' : 'same' : 'other' },
    make('td', {}, button(row.was ? String(row.was.move + 1) : '–', () => floors(row), `show ${row.was ? `move ${row.was.move + 1}` : 'this'} on both floors`)),
    make('td', { textContent: words(row.was) }), make('td', { textContent: words(row.now) }), make('td', { textContent: row.same ? row.shifted ? 'other count' : '' : !row.was ? 'only there' : !row.now ? 'only here' : 'different' }));
  return tr;
}

/** Both floors at a move, side by side, and both time lines. */
async function floors(row) {
  try {
    const other = subject();
    const [one, two] = await Promise.all([call('floor', { move: row.was?.move ?? -1 }), call('floor', { move: row.now?.move ?? -1, ...other })]);
    if (two.gone) return;
    at('compare-floors').replaceChildren(...[['This fight', row.was, one], [nameOf(), row.now, two]].map(([name, m, plate]) => make('figure', {},
      make('figcaption', { textContent: `${name}, ${m ? `move ${m.move + 1}` : 'opening'}` }), ...drawn(plate.svg), make('div', { className: 'strip' }, ...drawn(plate.figures)), make('p', { className: 'hint', textContent: plate.told }))));
    if (row.was) choose(row.was.move);
    hooks.preview({ of: other, name: nameOf(), move: row.now?.move ?? -1 }, true);
  } catch (fault) { hooks.fault(fault); }
}

function filter() { at('compare-rows').classList.toggle('only', at('only-different').checked); }
