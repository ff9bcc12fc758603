// The playback of the printed page, on the fight as it is; it stays at its count when the fight changes.
import { call } from './talk.js';
import { at, make, drawn } from './make.js';
import { chosen, choose, watch } from './chosen.js';

const calm = 400;
let state;
let hooks;
let player = null;
let moment = null;
let shown = null;
let late = 0;
let leads = false;

/** Half counts from count 1 at which the playback is; null where it is not shown. */
export const playing = () => at('play-part').open ? moment : null;

export function start(given) {
  hooks = given;
  at('play-part').addEventListener('toggle', () => { load(); hooks.moment(); });
  watch(({ at: head }) => { if (!leads && player && at('play-part').open && player.moves[head]) player.go(player.moves[head][0]); });
}

export function show(next) {
  state = next;
  clearTimeout(late);
  late = setTimeout(load, player ? calm : 0);
}

async function load() {
  if (!at('play-part').open || !state || shown === `${state.instance} ${state.revision}`) return;
  shown = `${state.instance} ${state.revision}`;
  try {
    const said = await call('player');
    if (said.cannot) { at('play-here').replaceChildren(make('p', { className: 'hint', textContent: said.cannot })); player = null; return; }
    const { playback } = await import('/playback.js');
    const was = moment;
    at('play-here').replaceChildren(...drawn(said.html));
    at('player').addEventListener('moment', heard);
    player = playback();
    player.go(was ?? player.moves[Math.max(0, chosen().at)]?.[0] ?? 0);
  } catch (fault) { hooks.fault(fault.problem ? fault : { problem: 'The playback cannot be shown.', maybe: String(fault), status: 0 }); }
}

/** The move that is being played is the one that is chosen. */
function heard(e) {
  moment = e.detail;
  hooks.moment();
  const move = player?.moves.findLastIndex(m => m[0] <= moment) ?? -1;
  if (!player || move < 0 || move === chosen().at) return;
  leads = true;
  choose(move);
  leads = false;
}
