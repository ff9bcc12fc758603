// Two fights side by side: this one, an offer, a version that was saved before or another routine of the folder; what differs, on both floors, both time lines and move by move.
import { call } from './talk.js';
import { at, make, button, drawn, many } from './make.js';
import { choose } from './chosen.js';
import { picture, shade } from './time.js';

const own = 'this';
let hooks;
let state;
let shown = '';
let choices = '';
let beside = [];
let replaced = [];
let rows = [];

export function start(given) {
  hooks = given;
  at('compare').addEventListener('toggle', async () => {
    if (at('compare').open) await look();
    if (state) show(state);
  });
  at('compare-one').addEventListener('change', load);
  at('compare-with').addEventListener('change', load);
  at('only-different').addEventListener('change', filter);
  at('compare-take').addEventListener('click', () => hooks.ask(kind('compare-with') === 'card' ? 'take' : 'restore', { revision: state.revision, ...side('compare-with') }));
}

/** What else is in the folder, and when versions were replaced. */
async function look() {
  try { ({ files: beside, replaced } = await call('beside')); } catch (fault) { hooks.fault(fault); }
}

const when = i => replaced[i] ? `, replaced ${new Date(replaced[i]).toLocaleString([], { day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' })}` : '';

export function show(next) {
  state = next;
  if (at('compare').open && next.versions > replaced.length) look().then(() => { if (replaced.length >= next.versions) show(state); });
  const offers = next.offers?.cards ?? [];
  const wanted = JSON.stringify([next.versions, replaced, offers.map(o => o.name), beside]);
  if (wanted !== choices) {
    choices = wanted;
    const others = () => [
      ...Array.from({ length: next.versions }, (_, i) => make('option', { value: `version ${next.versions - 1 - i}`, textContent: `saved version ${next.versions - i}${when(next.versions - 1 - i)}` })),
      ...offers.map((o, i) => make('option', { value: `card ${i}`, textContent: `offer ${i + 1}: ${o.name}` })),
      ...beside.map((file, i) => make('option', { value: `beside ${i}`, textContent: file }))];
    for (const [id, first] of [['compare-one', [make('option', { value: own, textContent: 'this fight' })]], ['compare-with', []]]) {
      const was = at(id).value;
      at(id).replaceChildren(...first, ...others());
      if ([...at(id).options].some(o => o.value === was)) at(id).value = was;
    }
  }
  at('compare-none').hidden = at('compare-with').options.length > 0;
  at('compare-which').hidden = at('compare-with').options.length === 0;
  load();
}

const kind = id => at(id).value.split(' ')[0];

/** What a call asks for: nothing for this fight. */
function side(id, first = '') {
  const [what, number] = at(id).value.split(' ');
  return what === own ? {} : { [first + what]: Number(number) };
}

const nameOf = id => { const text = at(id).selectedOptions[0]?.textContent.split(/[:,]/)[0] ?? ''; return text.charAt(0).toUpperCase() + text.slice(1); };

const differs = r => !r.same || r.shifted;

async function load() {
  const has = at('compare').open && at('compare-with').value !== '';
  const key = has ? JSON.stringify([state.instance, state.revision, state.offers?.number, at('compare-one').value, at('compare-with').value]) : '';
  if (key === shown) return;
  shown = key;
  if (!has) { for (const id of ['compare-rows', 'compare-facts', 'compare-floors', 'compare-times']) at(id).replaceChildren(); return; }
  at('compare-take').disabled = kind('compare-one') !== own;
  at('compare-head-one').textContent = nameOf('compare-one');
  at('compare-head-other').textContent = nameOf('compare-with');
  try {
    const said = await call('compare', { ...side('compare-one', 'first-'), ...side('compare-with') });
    if (key !== shown) return;
    rows = said.rows;
    const differ = rows.filter(differs).length;
    at('compare-facts').replaceChildren(...[[nameOf('compare-one'), said.one], [nameOf('compare-with'), said.other]].map(([name, f]) =>
      make('li', { textContent: `${name}: ${many(f.moves, 'move')}, ${many(f.points, 'point')}${f.grave ? `, ${f.grave} unsafe or broken` : ''}${f.open ? `, open from move ${f.open} on` : ''}` })),
    make('li', { textContent: differ ? `${many(differ, 'move')} different` : 'Nothing is different.' }));
    at('compare-rows').replaceChildren(...rows.map(pair));
    filter();
    await times(key);
    const first = rows.find(differs) ?? rows[0];
    if (first) await floors(first);
  } catch (fault) { hooks.fault(fault); }
}

const words = m => m ? `${m.count || 'open'}  ${m.attacker ? m.attacker + ': ' : ''}${m.text || 'open'}` : '–';

function pair(row) {
  return make('tr', { className: row.same ? row.shifted ? 'shifted' : 'same' : 'other' },
    make('td', {}, button(String((row.was ?? row.now).move + 1), () => floors(row, true), `show ${row.was ? `move ${row.was.move + 1}` : `move ${row.now.move + 1} of the other`} on both floors`)),
    make('td', { textContent: words(row.was) }), make('td', { textContent: words(row.now) }),
    make('td', { textContent: row.same ? row.shifted ? 'other count' : '' : !row.was ? 'only there' : !row.now ? 'only here' : 'different' }));
}

/** Both time lines, one above the other, what differs shaded. */
async function times(key) {
  const [one, two] = await Promise.all([call('time', side('compare-one')), call('time', side('compare-with'))]);
  if (key !== shown || one.gone || two.gone || one.cannot || two.cannot) { at('compare-times').replaceChildren(); return; }
  at('compare-times').replaceChildren(...[['compare-one', one, 'was'], ['compare-with', two, 'now']].map(([id, said, which]) => {
    const plan = picture(said);
    shade(plan, rows.filter(differs).flatMap(r => r[which] ? [r[which].move] : []));
    return make('figure', {}, make('figcaption', { textContent: nameOf(id) }), ...plan.nodes);
  }));
}

/** Both floors at a move, side by side. */
async function floors(row, leads = false) {
  try {
    const [one, two] = await Promise.all([call('floor', { move: row.was?.move ?? -1, ...side('compare-one') }), call('floor', { move: row.now?.move ?? -1, ...side('compare-with') })]);
    if (one.gone || two.gone) return;
    if (one.cannot || two.cannot) { at('compare-floors').replaceChildren(make('p', { className: 'hint', textContent: one.cannot ?? two.cannot })); return; }
    at('compare-floors').replaceChildren(...[['compare-one', row.was, one], ['compare-with', row.now, two]].map(([id, m, plate]) => make('figure', {},
      make('figcaption', { textContent: `${nameOf(id)}, ${m ? `move ${m.move + 1}` : 'opening'}` }), ...drawn(plate.svg), make('div', { className: 'strip' }, ...drawn(plate.figures)), make('p', { className: 'hint', textContent: plate.told }))));
    if (leads && row.was && kind('compare-one') === own) choose(row.was.move);
  } catch (fault) { hooks.fault(fault); }
}

function filter() { at('compare-rows').classList.toggle('only', at('only-different').checked); }
