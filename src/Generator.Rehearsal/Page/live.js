// The live page: one state of the program, shown by grid, floor and offers; every change is asked of the program and comes back as the next state.
import { call, listen } from './talk.js';
import * as grid from './grid.js';
import * as floor from './floor.js';

const at = id => document.getElementById(id);
let state = null;

const hooks = { changed: show, fault: tell, verdict, select: floor.select };
grid.start(hooks);
floor.start(hooks);

function show(next) {
  if (state && next.instance === state.instance && next.revision < state.revision) return;
  state = next;
  document.title = `${next.title} – Rehearse`;
  at('title').textContent = next.title;
  at('file').textContent = next.saved ? `${next.file}, saved` : `${next.file}, not saved yet; kept in the working copy`;
  button('undo', 'Undo', next.undo);
  button('redo', 'Redo', next.redo);
  at('save').disabled = next.saved && !next.outside;
  grid.show(next);
  floor.show(next);
  verdict(next.found);
  offer(next.fill);
  if (next.outside) remark(`${next.file} was changed by another program. Saving will not overwrite it.`, 'outside');
  else if (at('remark').dataset.kind !== 'fault') at('remark').hidden = true;
}

function button(id, word, what) {
  at(id).disabled = what === null;
  at(id).textContent = what === null ? word : `${word}: ${what}`;
}

function verdict(found) {
  const grave = found.findings.filter(f => f.severity === 'unsafe' || f.severity === 'broken').length;
  const line = found.moves === 0 ? 'Nothing is written yet. Write a first move below.'
    : found.open === 1 ? 'Something of move 1 is still open, so nothing can be judged yet.'
    : (grave ? `${grave} unsafe or broken` : 'Nothing unsafe or broken') + (found.open ? ` up to move ${found.open}, where something is still open.` : `, ${found.points} ${found.points === 1 ? 'point' : 'points'}.`);
  if (at('verdict').textContent !== line) at('verdict').textContent = line;
  at('verdict').className = grave ? 'grave' : 'good';
  at('fill').disabled = found.open === null || Boolean(state?.fill?.running);
  const whole = found.findings.filter(f => f.move === 0);
  at('whole').hidden = !whole.length;
  at('whole-found').replaceChildren(...whole.map(f => { const li = document.createElement('li'); li.append(...grid.told([f])); return li; }));
}

function offer(fill) {
  at('fill').textContent = fill?.running ? 'Filling …' : 'Fill what is open';
  at('offer').hidden = !fill;
  if (!fill) return;
  at('offer-head').textContent = fill.running ? 'Filling what is open' : fill.news ? 'An offer' : 'No offer';
  at('take').hidden = !fill.news || !fill.isPresent;
  at('leave').textContent = fill.running ? 'Stop' : 'Leave it';
  at('offer-words').textContent = fill.running ? 'Go on writing: this works on the fight as it was when it began.'
    : fill.trouble ?? (fill.isPresent ? 'What is new is marked. Nothing changes until it is taken.' : 'The fight has changed since; this can be read, no longer taken.');
  at('offer-rows').replaceChildren(...(fill.news ?? []).map(n => {
    const li = document.createElement('li');
    li.className = n.isNew ? 'new' : n.why !== undefined ? 'gave' : '';
    li.textContent = n.count === undefined ? `Move ${n.move}: ${n.text}. ${n.why ?? ''}` : `${n.count}  ${n.attacker} ${n.text}`;
    return li;
  }));
}

function remark(text, kind) {
  at('remark').textContent = text;
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

async function ask(name, message = {}) {
  at('remark').dataset.kind = '';
  try { show(await call(name, message)); return true; } catch (fault) { tell(fault); return false; }
}

at('undo').addEventListener('click', () => ask('undo', { revision: state.revision }));
at('redo').addEventListener('click', () => ask('redo', { revision: state.revision }));
at('save').addEventListener('click', () => ask('save'));
at('fill').addEventListener('click', () => ask('fill'));
at('take').addEventListener('click', () => ask('take', { revision: state.revision }));
at('leave').addEventListener('click', () => ask(state.fill?.running ? 'stop' : 'leave'));

at('notes').addEventListener('submit', async e => {
  e.preventDefault();
  const line = at('line');
  try {
    show(await call('note', { revision: state.revision, before: state.rows.length, text: line.value }));
    line.value = '';
    at('line-answer').textContent = '';
    at('grid').lastElementChild?.scrollIntoView({ block: 'nearest' });
  } catch (fault) {
    if (fault.status === 400) at('line-answer').textContent = `${fault.problem} ${fault.maybe}`;
    else tell(fault);
  }
});

addEventListener('keydown', e => {
  if (!(e.ctrlKey || e.metaKey)) return;
  // While words are being typed, undoing is the cell's own.
  const typing = grid.isTyping(e.target) || (e.target.id === 'line' && e.target.value !== '');
  if (e.key === 's') { e.preventDefault(); document.activeElement?.blur(); setTimeout(() => ask('save'), 50); }
  if (!typing && (e.key === 'z' || e.key === 'y')) {
    e.preventDefault();
    ask(e.key === 'z' && !e.shiftKey ? 'undo' : 'redo', { revision: state.revision });
  }
});

listen(refresh, () => remark('The program does not answer. What was written is in the working copy beside the file.', 'fault'));
refresh();
