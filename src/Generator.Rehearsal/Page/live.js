// The live page: one state of the program, shown by every view; every change is asked of the program and comes back as the next state.
import { call, inTurn, listen } from './talk.js';
import { at, make, button, letter } from './make.js';
import { chosen, named, watch, within } from './chosen.js';
import * as grid from './grid.js';
import * as floor from './floor.js';
import * as time from './time.js';
import * as player from './player.js';
import * as cards from './cards.js';
import * as cast from './cast.js';
import * as compare from './compare.js';

// What is offered comes first: floor and time line ask for no offer that is gone.
const views = [cards, compare, grid, floor, time, player, cast];
let state = null;

const hooks = {
  changed: show, fault: tell, verdict, ask, padlock: grid.padlockSign, recast: cast.recast, moment: time.mark, whole: floor.setWhole,
  back: () => grid.enter(Math.max(0, chosen().at)),
  preview(subject, timeOnly = false) { if (!timeOnly) floor.preview(subject); time.preview(subject); },
};
for (const view of views) view.start(hooks);
watch(stretch);

function show(next) {
  if (state && next.instance === state.instance && next.revision < state.revision) return;
  state = next;
  document.title = `${next.title} – Rehearse`;
  at('title').textContent = next.title;
  at('file').textContent = next.saved ? `${next.file}, saved` : `${next.file}, not saved yet; kept in the working copy`;
  name('undo', 'Undo', next.undo);
  name('redo', 'Redo', next.redo);
  at('save').disabled = next.saved && !next.outside;
  within(next.rows.length);
  for (const view of views) view.show(next);
  verdict(next.found);
  stretch();
  if (next.outside) remark(`${next.file} was changed by another program. Saving does not overwrite it.`, 'outside',
    button('Read it anew', () => ask('reread', { revision: state.revision }), 'read the file anew, which can be undone'), button('Save over it', () => ask('save', { over: true }), 'save over it; what it says now stays as a version'));
  else if (at('remark').dataset.kind !== 'fault') at('remark').hidden = true;
}

function name(id, word, what) {
  at(id).disabled = what === null;
  at(id).textContent = what === null ? word : `${word}: ${what}`;
}

function verdict(found) {
  time.findings(found, found !== state?.found);
  const grave = found.findings.filter(f => f.severity === 'unsafe' || f.severity === 'broken').length;
  const line = found.moves === 0 ? 'Nothing is written yet. Write a first move below.'
    : found.open === 1 ? 'Something of move 1 is still open, so nothing can be judged yet.'
    : (grave ? `${grave} unsafe or broken` : 'Nothing unsafe or broken') + (found.open ? ` up to move ${found.open}, where something is still open.` : `, ${found.points} ${found.points === 1 ? 'point' : 'points'}.`);
  if (at('verdict').textContent !== line) at('verdict').textContent = line;
  at('verdict').className = grave ? 'grave' : 'good';
  const works = Boolean(state?.offers?.running);
  at('fill').disabled = found.open === null || works;
  at('mend-all').hidden = grave === 0 || found.open !== null;
  at('mend-all').disabled = at('fold').disabled = works;
  at('fold').hidden = grave < 2 || found.open !== null || Boolean(state?.offers?.causes.length && state.offers.isPresent);
  const whole = found.findings.map((f, i) => ({ ...f, at: i })).filter(f => f.move === 0);
  at('whole').hidden = !whole.length;
  at('whole-found').replaceChildren(...whole.map(f => make('li', {}, ...grid.told([f]))));
}

/** What can be done with the moves that are chosen. */
function stretch() {
  const now = chosen();
  at('stretch').hidden = !state || now.at < 0 || now.last >= state.rows.length;
  if (at('stretch').hidden) return;
  at('stretch-name').textContent = named(now);
  at('stretch-ways').disabled = Boolean(state.offers?.running);
  const said = state.rows.slice(now.first, now.last + 1).filter(r => r.sayings > 0);
  at('stretch-lock').setAttribute('aria-pressed', String(said.length > 0 && said.every(r => r.locked.length === r.sayings)));
}

function remark(text, kind, ...buttons) {
  if (at('remark').dataset.kind === kind && at('remark').dataset.text === text && !at('remark').hidden) return;
  at('remark').replaceChildren(make('p', { textContent: text }), ...buttons);
  at('remark').dataset.text = text;
  at('remark').dataset.kind = kind;
  at('remark').hidden = false;
}

function tell(fault) {
  remark(`${fault.problem} ${fault.maybe ?? ''}`, 'fault');
  if (fault.status === 409) refresh();
}

async function refresh() {
  try { show(await call('state')); } catch (fault) { tell(fault); }
}

async function ask(what, message = {}) {
  at('remark').dataset.kind = '';
  const own = 'revision' in message ? () => ({ ...message, revision: state.revision }) : () => message;
  try { await inTurn(async () => show(await call(what, own()))); return true; } catch (fault) { tell(fault); return false; }
}

const onStretch = (what, more = () => ({})) => () => { const { first, last } = chosen(); if (first >= 0) ask(what, { revision: state.revision, move: first, last, ...more() }); };
const acts = {
  'stretch-ways': onStretch('ways'), 'stretch-lock': onStretch('lock', () => ({ locked: at('stretch-lock').getAttribute('aria-pressed') !== 'true' })),
  'stretch-clear': onStretch('clear'), 'stretch-out': onStretch('delete'),
  undo: () => ask('undo', { revision: state.revision }), redo: () => ask('redo', { revision: state.revision }),
  save: () => ask('save'), fill: () => ask('fill'), 'mend-all': () => ask('mend-all'), fold: () => ask('fold'),
};
for (const [id, act] of Object.entries(acts)) at(id).addEventListener('click', act);

at('notes').addEventListener('submit', async e => {
  e.preventDefault();
  const line = at('line');
  try {
    const text = line.value;
    await inTurn(async () => show(await call('note', { revision: state.revision, before: state.rows.length, text })));
    if (line.value === text) line.value = '';
    at('line-answer').textContent = '';
    at('grid').lastElementChild?.scrollIntoView({ block: 'nearest' });
  } catch (fault) {
    if (fault.status === 400) at('line-answer').textContent = `${fault.problem} ${fault.maybe}`;
    else tell(fault);
  }
});

addEventListener('keydown', e => {
  if (e.altKey && !e.ctrlKey && letter(e) === 'o') { e.preventDefault(); cards.go(); return; }
  if (e.altKey && !e.ctrlKey && letter(e) === 'w' && !at('stretch').hidden) { e.preventDefault(); acts['stretch-ways'](); return; }
  if (!(e.ctrlKey || e.metaKey)) return;
  // While words are being typed, undoing is the cell's own.
  const typing = grid.isTyping(e.target) || (e.target.id === 'line' && e.target.value !== '');
  if (e.key === 's') { e.preventDefault(); document.activeElement?.blur(); setTimeout(() => ask('save'), 50); }
  if (!typing && (e.key === 'z' || e.key === 'y')) {
    e.preventDefault();
    acts[e.key === 'z' && !e.shiftKey ? 'undo' : 'redo']();
  }
});

listen(refresh, () => remark('The program does not answer. What was written is in the working copy beside the file.', 'fault'));
refresh();
