// Talks with the program. The token comes behind the hash, leaves the address bar at once and lives as long as the tab.
const key = 'rehearsal';
if (location.hash.length > 1) {
  sessionStorage.setItem(key, location.hash.slice(1));
  history.replaceState(null, '', location.pathname);
}
const token = sessionStorage.getItem(key) ?? '';

/** One call. Whatever is refused throws { problem, maybe, status }. */
export async function call(name, message = {}) {
  let answer;
  try {
    answer = await fetch('/' + name, { method: 'POST', headers: { 'Rehearsal-Token': token, 'Content-Type': 'application/json' }, body: JSON.stringify(message) });
  } catch {
    throw { problem: 'The program does not answer.', maybe: 'Maybe it has been ended; what was written is in the working copy beside the file.', status: 0 };
  }
  const said = await answer.json();
  if (!answer.ok) throw { ...said, status: answer.status };
  return said;
}

let last = Promise.resolve();

/** Does one thing after the other: each knows the fight as the one before has left it, however quickly they are asked for. */
export function inTurn(act) {
  const next = last.then(act);
  last = next.catch(() => {});
  return next;
}

/** Tells of every change, made here or in another tab; tries again when the line breaks. */
export function listen(changed, lost) {
  const socket = new WebSocket(`ws://${location.host}/news`, 'rehearsal.' + token);
  socket.onopen = () => changed();
  socket.onmessage = () => changed();
  socket.onclose = () => { lost(); setTimeout(() => listen(changed, lost), 1500); };
}
