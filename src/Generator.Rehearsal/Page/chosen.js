// What is chosen: a stretch of moves, or none for the opening. Every view shows the same.
const watchers = [];
let [anchor, head] = [-1, -1];

export const chosen = () => ({ first: Math.min(anchor, head), last: Math.max(anchor, head), at: head });

export const isChosen = move => head >= 0 && move >= Math.min(anchor, head) && move <= Math.max(anchor, head);

export const watch = told => watchers.push(told);

/** Chooses a move, or stretches what is chosen to it. */
export function choose(move, stretch = false) {
  const next = [stretch && anchor >= 0 ? anchor : move, move];
  if (next[0] === anchor && next[1] === head) return;
  [anchor, head] = next;
  watchers.forEach(w => w(chosen()));
}

/** Keeps it within so many moves. */
export function within(moves) {
  if (Math.max(anchor, head) >= moves) choose(moves ? Math.min(head, moves - 1) : -1);
}

export const named = ({ first, last }) => first === last ? `Move ${first + 1}` : `Moves ${first + 1} to ${last + 1}`;
