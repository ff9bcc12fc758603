// Who is in the fight, and the floor: a form over the brief. What it does not show stays as it is. And the form for somebody who is hurt.
import { call, inTurn } from './talk.js';
import { at, make, button } from './make.js';
import { line, field, set, rebased } from './fields.js';
import { stuff, learn } from './stuff.js';

const trees = ['Ash', 'Birch', 'Cedar', 'Elm', 'Fir', 'Juniper', 'Larch', 'Oak'];
const most = 8;
const skills = ['novice', 'trained', 'stunt'];
const surfaces = ['matted', 'sprung', 'hard', 'wet', 'uneven'];
let state;
let hooks;
let shown = '';

export function start(given) {
  hooks = given;
  at('cast').addEventListener('toggle', opened);
  at('hurt').addEventListener('toggle', limits);
  at('hurt-form').addEventListener('submit', e => {
    e.preventDefault();
    hooks.ask('hurt', { performer: at('hurt-who').value === 'ally' ? -1 : Number(at('hurt-who').value), limit: at('hurt-what').value });
  });
  at('hurt-note').addEventListener('click', note);
}

export function show(next) {
  const first = !state;
  state = next;
  if (first && next.fresh) { at('cast').open = true; return; }
  const names = [next.hero, ...next.attackers.map(a => a.name), ...(next.ally ? [next.ally] : [])];
  if (at('hurt-who').dataset.names !== names.join('\n')) {
    at('hurt-who').dataset.names = names.join('\n');
    at('hurt-who').replaceChildren(...names.map((n, i) => make('option', { value: n === next.ally ? 'ally' : String(i - 1), textContent: n })));
  }
  const looks = JSON.stringify(next.brief);
  if (!at('cast').open || looks === shown) return;
  shown = looks;
  form(next.brief);
}

/** The form knows the kinds of things before it is shown. */
async function opened() {
  hooks.whole(at('cast').open);
  try { if (at('cast').open) await learn(); } catch (fault) { hooks.fault(fault); }
  shown = '';
  if (state) show(state);
}

async function limits() {
  if (at('hurt-what').options.length) return;
  try {
    const { limits } = await call('limits');
    const hurt = l => l.startsWith('injured-');
    const group = (label, own) => make('optgroup', { label }, ...own.map(l => make('option', { value: l, textContent: l.replaceAll('-', ' ') })));
    at('hurt-what').replaceChildren(group('Is hurt', limits.filter(hurt)), group('Must not, or must spare', limits.filter(l => !hurt(l))));
  } catch (fault) { hooks.fault(fault); }
}

/** The limit stands in the brief from now on, and what it forbids is found; nothing else changes. */
function note() {
  const { brief } = state;
  const [who, limit] = [at('hurt-who').value, at('hurt-what').value];
  const spared = of => ({ ...of, limits: [...(of.limits ?? []).filter(l => l !== limit), limit] });
  recast(brief)(`${at('hurt-who').selectedOptions[0].textContent}: ${limit}`, who === 'ally' ? { ...brief, ally: spared(brief.ally) } : who === '-1' ? { ...brief, hero: spared(brief.hero) }
    : { ...brief, attackers: brief.attackers.map((a, i) => String(i) === who ? spared(a) : a) });
}

/**
 * Asks for another brief than the one that somebody saw; attackers stay who they are unless it is said who was who. What has changed meanwhile stays changed. Says why not where it is refused.
 */
export const recast = base => async (what, brief, was) => {
  try {
    await inTurn(async () => {
      if (state.brief.attackers.length !== base.attackers.length) throw { status: 400, problem: 'Somebody has come or gone meanwhile.', maybe: 'Maybe do it again.' };
      hooks.changed(await call('recast', { revision: state.revision, what, brief: JSON.stringify(rebased(base, brief, state.brief)), was: (was ?? brief.attackers.map((_, i) => String(i))).join(',') }));
    });
    at('cast-answer').textContent = '';
    return '';
  } catch (fault) {
    if (fault.status !== 400) { hooks.fault(fault); return ''; }
    at('cast-answer').textContent = `${fault.problem} ${fault.maybe}`;
    at('cast').open = true;
    return at('cast-answer').textContent;
  }
};

function form(brief) {
  const put = recast(brief);
  const focus = document.activeElement?.id;
  const hero = (name, value) => put(`${name} of the hero`, { ...brief, hero: set(brief.hero, name, value), ...(name === 'name' ? handed(brief, brief.hero.name, value) : {}) });
  const floor = (name, value) => put('the floor', { ...brief, floor: name === 'mark' ? { ...brief.floor, mark: value } : set(brief.floor, name, value) });
  at('cast-form').replaceChildren(...[
    line('Title', field('cast-title', 'title', brief.title, v => put('title', { ...brief, title: v }))),
    Array.isArray(brief.tempo) ? line('Tempo', make('span', { textContent: `${brief.tempo.length} passages; change them in the file` })) : line('Tempo', field('cast-tempo', 'tempo, counts a minute', brief.tempo, v => put('tempo', { ...brief, tempo: v }), 'decimal'), 'counts a minute'),
    make('h3', { textContent: 'Hero' }),
    person('hero', brief.hero, hero),
    ...(brief.ally ? [make('h3', { textContent: 'Ally' }), person('ally', brief.ally, (name, value) => put(`${name} of ${brief.ally.name}`, { ...brief, ally: set(brief.ally, name, value) }))] : []),
    make('h3', { textContent: 'Attackers' }),
    ...brief.attackers.map((a, i) => person(`a${i}`, a, (name, value) => put(`${name} of ${a.name}`, renamed(brief, i, name, value)),
      brief.attackers.length > 1 ? () => put(`${a.name} leaves`, without(brief, i), brief.attackers.map((_, j) => String(j)).filter((_, j) => j !== i)) : null)),
    brief.attackers.length < most ? button('Add an attacker', () => {
      const name = trees.find(t => ![brief.hero, ...brief.attackers].some(p => p.name === t)) ?? `Attacker ${brief.attackers.length + 1}`;
      put(`${name} comes in`, { ...brief, attackers: [...brief.attackers, { name }] }, [...brief.attackers.map((_, i) => String(i)), '']);
    }) : null,
    make('h3', { textContent: 'Floor' }),
    line('Wide', field('cast-width', 'width of the floor, metres', brief.floor.width, v => floor('width', v), 'decimal'), 'm, deep', field('cast-depth', 'depth of the floor, metres', brief.floor.depth, v => floor('depth', v), 'decimal'), 'm'),
    brief.marks?.length ? null : line('Mark', field('cast-markx', 'mark, metres from the 9 o\'clock side', brief.floor.mark[0], v => floor('mark', [v ?? 0, brief.floor.mark[1]]), 'decimal'), 'm in,', field('cast-marky', 'mark, metres from the 6 o\'clock side', brief.floor.mark[1], v => floor('mark', [brief.floor.mark[0], v ?? 0]), 'decimal'), 'm up'),
    line('Surface', field('cast-surface', 'surface', brief.floor.surface, v => floor('surface', v), 'text', surfaces)),
    ...stuff(brief, put)].filter(n => n));
  if (focus) document.getElementById(focus)?.focus();
}

function person(id, of, change, leave = null) {
  return line(`${of.name}`,
    field(`cast-${id}-name`, `name of ${of.name}`, of.name, v => change('name', v)),
    field(`cast-${id}-height`, `height of ${of.name}, metres`, of.height, v => change('height', v), 'decimal'), 'm',
    field(`cast-${id}-skill`, `skill of ${of.name}`, of.skill, v => change('skill', v), 'text', skills),
    leave ? button('×', leave, `take ${of.name} out`) : null,
    (of.limits ?? []).length ? make('ul', { className: 'limits' }, ...of.limits.map(l => make('li', {}, l.replaceAll('-', ' ') + ' ', button('×', () => change('limits', of.limits.filter(o => o !== l)), `${of.name} may do it again: ${l.replaceAll('-', ' ')}`)))) : null);
}

/** Whoever holds a prop holds it under another name, too. */
const handed = (brief, was, name) => brief.props ? { props: brief.props.map(p => p.with === was ? { ...p, with: name } : p) } : {};

/** A name stands wherever the brief says it. */
function renamed(brief, i, name, value) {
  const next = { ...brief, attackers: brief.attackers.map((a, j) => j === i ? set(a, name, value) : a) };
  if (name !== 'name') return next;
  const [was, text] = [brief.attackers[i].name, v => v === brief.attackers[i].name ? value : v];
  if (brief.ending) next.ending = { ...brief.ending, out: Array.isArray(brief.ending.out) ? brief.ending.out.map(text) : brief.ending.out, ...(brief.ending.last === was ? { last: value } : {}) };
  Object.assign(next, handed(brief, was, value));
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

  // What they hold and the hero moments that name them go with them.
  if (next.props) next.props = next.props.filter(p => p.with !== name);
  if (next.moments) next.moments = next.moments.filter(m => m.attacker !== name && !m.moves?.some(o => o.attacker === name));
  return next;
}
