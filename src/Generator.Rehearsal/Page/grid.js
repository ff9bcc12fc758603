// The moves as a grid. What is being typed belongs to the cell until it is written: no answer of the program ever takes letters away.
import { call, inTurn } from './talk.js';
import { make, button, letter } from './make.js';
import { chosen, choose, isChosen, watch } from './chosen.js';

const columns = [['count', 'Count'], ['by', 'Who'], ['attacker', 'Attacker'], ['attack', 'Attack'], ['technique', 'Technique'], ['reaction', 'Reaction']];
// What few moves say; read under the move, written once the move is opened further.
const details = [['from', 'Comes from', 'where they are'], ['cue', 'Cue', 'none'], ['hurts', 'Hurts', 'nothing'], ['linger', 'Down longer, counts', '0'], ['stance', 'Stance before it', 'soonest reached'], ['to', 'To the mark', ''], ['note', 'Note', '']];
const all = [...columns, ...details];
const words = ['attack', 'technique', 'reaction'];
const signs = { unsafe: '▲!', broken: '■×', rough: '◆~', note: '●i' };
const grid = document.getElementById('grid');
const drawn = [];
let state;
let hooks;
let trying = 0;
let stretching = false;

export function start(given) {
  hooks = given;
  watch(() => drawn.forEach(look));
}

/** The cell holds letters that are not written yet. */
export const isTyping = cell => drawn.some(d => all.some(([name]) => d.cells[name].input === cell && cell.value !== d.values[name]));

/** Shows a state; only rows that look otherwise than before are touched. */
export function show(next) {
  state = next;
  grid.classList.toggle('two', Boolean(next.ally));
  grid.classList.toggle('travels', (next.brief.marks ?? []).length > 1);
  while (drawn.length > next.rows.length) drawn.pop().row.remove();
  next.rows.forEach((row, i) => {
    if (!drawn[i]) { drawn[i] = build(i); grid.append(drawn[i].row); }
    fill(drawn[i], row, i);
  });
  findings(next.found);
}

/** Shows what is found, in place: under the move it is about. What is only being typed cannot be mended yet. */
export function findings(found, typed = false) {
  const by = new Map();
  const causes = !typed && state.offers?.isPresent ? state.offers.causes : [];
  const under = i => causes.flatMap((c, j) => c.under === i ? [found.findings[j]] : []);
  found.findings.forEach((f, i) => { if ((causes[i]?.under ?? null) === null) by.set(f.move, [...(by.get(f.move) ?? []), { ...f, at: typed ? -1 : i, mended: causes[i]?.mended, under: under(i) }]); });
  drawn.forEach((d, i) => {
    const own = by.get(i + 1) ?? [];
    const looks = JSON.stringify(own) + (found.open === i + 1);
    if (d.looks === looks) return;
    d.looks = looks;
    d.found.replaceChildren(...told(own));
    d.row.dataset.worst = own.length ? ['unsafe', 'broken', 'rough', 'note'].find(s => own.some(f => f.severity === s)) : '';
    d.row.classList.toggle('first-open', found.open === i + 1);
  });
}

/** The gravest is said; the others are folded behind it. */
export function told(own) {
  if (!own.length) return [];
  const order = ['unsafe', 'broken', 'rough', 'note'];
  const sorted = [...own].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
  const one = f => make('div', { className: 'finding ' + f.severity }, make('p', {}, make('span', { className: 'mark-sign', ariaHidden: 'true', textContent: signs[f.severity] }), ` ${f.severity}, ${f.rule}: ${f.message}`),
    f.advice ? make('p', { className: 'advice', textContent: f.advice }) : null,
    f.mended ? make('p', { className: 'advice', textContent: `Mended by: ${f.mended}` }) : null,
    f.under?.length ? make('details', {}, make('summary', { textContent: `${f.under.length} more ${f.under.length === 1 ? 'vanishes' : 'vanish'} with it` }), ...f.under.map(u => make('p', { className: 'finding ' + u.severity, textContent: `${u.severity}, ${u.rule}, ${u.move ? `move ${u.move}` : 'the whole fight'}: ${u.message}` }))) : null,
    f.at >= 0 && f.severity !== 'note' && f.move > 0 ? mender(f) : null);
  if (sorted.length === 1) return [one(sorted[0])];
  return [one(sorted[0]), make('details', {}, make('summary', { textContent: `${sorted.length - 1} more here` }), ...sorted.slice(1).map(one))];
}

function mender(f) {
  const made = button('What would mend it', () => edit('mend', { finding: f.at }), `what would mend it: ${f.rule}, move ${f.move}`);
  made.className = 'mender';
  return made;
}

export const padlockSign = () => {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('viewBox', '0 0 16 16');
  svg.setAttribute('aria-hidden', 'true');
  svg.classList.add('padlock');
  for (const [kind, d] of [['bow', 'M4.5,7V5a3.5,3.5 0 0 1 7,0V7'], ['case', 'M3,7H13V14H3Z']]) {
    const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
    path.setAttribute('d', d);
    path.classList.add(kind);
    svg.append(path);
  }
  return svg;
};

function build(i) {
  const row = make('li', { className: 'row' });
  const number = make('button', { type: 'button', className: 'number', textContent: String(i + 1) });
  number.setAttribute('aria-label', `choose move ${i + 1}; with Shift all up to it`);
  number.addEventListener('click', e => choose(i, e.shiftKey));
  const cells = {};
  const line = make('div', { className: 'cells' });
  const further = make('div', { className: 'further', id: `m${i}-further`, hidden: true });
  for (const [name, label, none] of all) {
    // Words have as many lines as they need; a count and a name have one.
    const isLong = words.includes(name) || name === 'note';
    const input = make(isLong ? 'textarea' : 'input', { spellcheck: name === 'note', autocomplete: 'off', maxLength: name === 'note' ? 2000 : 200, ...(isLong ? { rows: 1 } : {}) });
    input.id = `m${i}-${name}`;
    input.setAttribute('aria-label', `${name} of move ${i + 1}`);
    const as = make('p', { className: 'as', id: input.id + '-as' });
    input.setAttribute('aria-describedby', as.id);
    const lock = words.includes(name) ? make('button', { type: 'button', className: 'lock', tabIndex: -1 }, padlockSign()) : null;
    lock?.addEventListener('click', () => padlock(i, name));
    input.addEventListener('focus', () => choose(i, stretching));
    input.addEventListener('input', () => { if (name !== 'note' && /[\r\n]/.test(input.value)) input.value = input.value.replace(/\s*[\r\n]+\s*/g, ' '); attempt(i, name); });
    input.addEventListener('change', () => write(i, name));
    input.addEventListener('keydown', e => pressed(e, i, name));
    cells[name] = { input, as, lock };
    if (none) input.placeholder = none;
    (none === undefined ? line : further).append(make('div', { className: 'cell ' + name }, make('span', { className: 'label', textContent: label, ariaHidden: 'true' }), make('div', { className: 'box' }, input, lock), as));
  }
  const tools = make('div', { className: 'row-tools' });
  for (const [text, label, act] of [
    ['↑', 'move up', () => swap(i, -1)], ['↓', 'move down', () => swap(i, 1)], ['', 'padlock on the move, or off', () => padlock(i, null)],
    ['+', 'an open move below', () => insert(i + 1)], ['×', 'take out', () => remove(i)], ['…', 'more of it', () => open(i)]]) {
    const button = make('button', { type: 'button', title: label }, text || padlockSign());
    button.setAttribute('aria-label', `${label}: move ${i + 1}`);
    button.addEventListener('click', act);
    tools.append(button);
  }
  tools.lastElementChild.setAttribute('aria-controls', further.id);
  tools.lastElementChild.setAttribute('aria-expanded', 'false');
  const found = make('div', { className: 'found' });
  const brief = make('button', { type: 'button', className: 'brief' });
  brief.addEventListener('click', () => focus(i, 'technique'));
  const also = make('p', { className: 'also' });
  row.append(make('div', { className: 'top' }, number, brief, line, tools), also, further, found);
  return { row, cells, found, tools, further, also, brief, values: {}, waiting: new Set() };
}

/** Shows what few moves say, to be written; or only what is said of it. */
function open(i, shown = drawn[i].further.hidden) {
  drawn[i].further.hidden = !shown;
  drawn[i].tools.lastElementChild.setAttribute('aria-expanded', String(shown));
  if (shown) focus(i, 'from'); else focus(i, 'technique');
}

/** On a phone the move that is chosen is a card, and the others are a line each. */
function look(d, i) {
  d.row.classList.toggle('chosen', isChosen(i));
  d.row.classList.toggle('now', chosen().at === i);
}

function fill(d, row, i) {
  d.row.classList.toggle('gap', row.gap);
  look(d, i);
  for (const [name, label, none] of all) {
    const { input, as, lock } = d.cells[name];
    const typing = d.waiting.has(name) || (document.activeElement === input && input.value !== d.values[name]);
    if (!typing) {
      input.value = row[name];
      as.textContent = heard(row, name);
      as.className = 'as';
      input.removeAttribute('aria-invalid');
    }
    d.values[name] = row[name].replace(/\r\n?/g, '\n');
    const needless = row.none.includes(name);
    if (none === undefined) input.placeholder = row.gap && name === 'technique' ? '' : needless ? 'none' : 'open';
    input.parentElement.classList.toggle('is-open', none === undefined && row[name] === '' && !row.gap && !needless);
    input.parentElement.classList.toggle('is-none', row[name] === '-');
    if (lock) {
      const on = row.locked.includes(name);
      lock.hidden = row[name] === '' || row[name] === '-';
      lock.classList.toggle('on', on);
      lock.setAttribute('aria-pressed', String(on));
      lock.setAttribute('aria-label', `padlock on the ${label.toLowerCase()} of move ${i + 1}`);
    }
  }
  d.also.textContent = details.filter(([name]) => row[name]).map(([name, label]) => name === 'note' ? row.note : `${label.replace(', counts', '').toLowerCase()} ${row[name]}`).join('; ');
  const short = [row.count || 'open', isAlone(row) ? `${row.by || state.hero} alone` : row.attacker, row.gap ? row.technique : row.technique === '-' ? `${row.attack}, lands` : row.technique || 'open'];
  d.brief.replaceChildren(...short.flatMap(s => [make('span', { textContent: s }), ' ']));
  d.row.classList.toggle('locked', row.sayings > 0 && row.locked.length === row.sayings);
}

const plain = text => text.toLowerCase().replace(/[^a-z0-9]+/g, ' ').split(' ').sort().join(' ').trim();

/** Nobody else has anything to do with the move. */
const isAlone = row => row.none.includes('attacker');

/** What the words were taken for, where that is not what they say already. */
function heard(row, name) {
  if (name === 'attack' && row.attack === '-') return isAlone(row) ? 'none' : 'goes on';
  if (name === 'technique' && row.technique === '-') return 'it lands';
  const as = row.as[name];
  return as && plain(as) !== plain(row[name]) ? as : '';
}

/** Asks what words would mean and do while they are typed; late answers are dropped. */
async function attempt(move, column) {
  const { input, as } = drawn[move].cells[column];
  const mine = ++trying;
  try {
    const said = await call('try', { move, column, text: input.value });
    if (mine !== trying) return;
    input.toggleAttribute('aria-invalid', Boolean(said.problem));
    as.className = said.problem ? 'as wrong' : 'as';
    as.textContent = said.problem ? `${said.problem} ${said.maybe}` : (said.as ?? '') + (said.unread ? `; unread: ${said.unread}` : '');
    if (!said.problem) { findings(said.found, true); hooks.verdict(said.found); }
  } catch (fault) { hooks.fault(fault); }
}

async function write(move, column) {
  const { input, as } = drawn[move].cells[column];
  if (input.value === drawn[move].values[column]) return true;
  trying++;
  try {
    const [text, { waiting }] = [input.value, drawn[move]];
    waiting.add(column);
    return await inTurn(async () => {
      try {
        if (text === drawn[move]?.values[column]) return true;
        const said = await call('type', { revision: state.revision, move, column, text });
        waiting.delete(column);
        if (drawn[move]) drawn[move].values[column] = text;
        hooks.changed(said);
        return true;
      } finally { waiting.delete(column); }
    });
  } catch (fault) {
    if (fault.status !== 400) { hooks.fault(fault); return false; }
    input.setAttribute('aria-invalid', 'true');
    as.className = 'as wrong';
    as.textContent = `${fault.problem} ${fault.maybe}`;
    return false;
  }
}

async function edit(name, message) {
  try { await inTurn(async () => hooks.changed(await call(name, { revision: state.revision, ...message }))); } catch (fault) { hooks.fault(fault); }
}

/** To the technique of a move, from wherever else the keys are. */
export const enter = move => focus(move, 'technique');

function focus(move, column) {
  const to = Math.max(0, Math.min(drawn.length - 1, move));
  if (!drawn[to]) return;
  // What is not chosen may be a line only, in which nothing can be typed.
  choose(to, stretching);
  drawn[to].cells[column].input.focus();
}

async function swap(move, by) {
  const first = by < 0 ? move - 1 : move;
  if (first < 0 || first + 1 >= drawn.length) return;
  await edit('swap', { move: first });
}

function padlock(move, column) {
  const row = state.rows[move];
  const on = column ? row.locked.includes(column) : row.locked.length === row.sayings;
  return edit('lock', { move, column, locked: !on });
}

export const insert = before => edit('insert', { before });
const remove = move => edit('delete', { move });

async function pressed(e, move, column) {
  const input = e.target;
  if (e.key === 'Escape') {
    input.value = drawn[move].values[column];
    fill(drawn[move], state.rows[move], move);
    findings(state.found);
    hooks.verdict(state.found);
    return;
  }
  if (e.key === 'Enter' && !e.altKey) {
    e.preventDefault();
    if (await write(move, column)) focus(move + 1, column);
    return;
  }
  if (!e.altKey && (e.key === 'ArrowUp' || e.key === 'ArrowDown')) {
    e.preventDefault();
    stretching = e.shiftKey;
    focus((e.shiftKey ? chosen().at : move) + (e.key === 'ArrowUp' ? -1 : 1), column);
    stretching = false;
    return;
  }
  if (!e.altKey) return;
  const acts = {
    ArrowUp: async () => { await swap(move, -1); focus(move - 1, column); },
    ArrowDown: async () => { await swap(move, 1); focus(move + 1, column); },
    ArrowLeft: () => edit('shift', { move, by: -1 }),
    ArrowRight: () => edit('shift', { move, by: 1 }),
    l: () => words.includes(column) && padlock(move, column),
    m: () => drawn[move].found.querySelector('.mender')?.click(),
    n: () => open(move),
    Enter: async () => { await insert(move + 1); focus(move + 1, 'attacker'); },
    Delete: async () => { await remove(move); focus(move, column); },
  };
  const act = acts[e.key] ?? acts[letter(e)];
  if (!act) return;
  e.preventDefault();
  if (await write(move, column)) await act();
}
