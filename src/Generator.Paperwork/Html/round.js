// The fight in the round: bodies as capsules on a canvas, seen from anywhere, from a camera or from above. Times are half counts, places metres: X towards 3 o'clock, Y up, Z towards 6.
const inTheRound = (data, canvas, told) => {
  "use strict";
  const ink = canvas.getContext("2d");
  const NEAR = 0.15, HIPS = 0.9;
  const { clamp, turned, plus, minus, dot, cross, unit, people, bodyAt } = bodiesInSpace(data);

  /* from where it is seen */
  const view = { name: "free", round: 0.6, over: 0.4, far: 8 };
  let eye = null;
  function lookFrom(at, to) {
    const ahead = unit(minus(to, at));
    const right = unit(Math.abs(ahead[1]) > 0.999 ? [1, 0, 0] : cross(ahead, [0, 1, 0]));
    eye = { at, ahead, right, up: cross(right, ahead), scale: canvas.height / 2 / Math.tan(data.lens * Math.PI / 360) };
  }
  function aim(middle) {
    if (view.name === "above") lookFrom([middle[0], view.far * 1.3, middle[2]], middle);
    else if (view.name.startsWith("lens")) lookFrom(data.lenses[Number(view.name.slice(4))], [middle[0], data.chest, middle[2]]);
    else {
      const flat = Math.cos(view.over) * view.far;
      lookFrom(plus(middle, [Math.sin(view.round) * flat, Math.sin(view.over) * view.far, Math.cos(view.round) * flat]), middle);
    }
  }
  const see = at => {
    const way = minus(at, eye.at), away = dot(way, eye.ahead), scale = eye.scale / Math.max(NEAR, away);
    return { x: canvas.width / 2 + dot(way, eye.right) * scale, y: canvas.height / 2 - dot(way, eye.up) * scale, away, scale };
  };

  /* what is drawn, the farthest first */
  let parts = [], texts = [];
  const put = (away, draw) => { if (away > NEAR) parts.push([away, draw]); };
  function shape(points, fill, line, width) {
    ink.beginPath();
    points.forEach((p, i) => i ? ink.lineTo(p.x, p.y) : ink.moveTo(p.x, p.y));
    if (fill) { ink.closePath(); ink.fillStyle = fill; ink.fill(); }
    if (line) { ink.strokeStyle = line; ink.lineWidth = width; ink.stroke(); }
  }
  function capsule(from, to, fromRadius, toRadius, fill, line, banded, band) {
    const [a, b] = [see(from), see(to)];
    const [r, s] = [fromRadius * a.scale, toRadius * b.scale];
    put((a.away + b.away) / 2, () => {
      const far = Math.hypot(b.x - a.x, b.y - a.y);
      ink.beginPath();
      if (far <= Math.abs(r - s) + 0.01) ink.arc(...(r > s ? [a.x, a.y, r] : [b.x, b.y, s]), 0, 2 * Math.PI);
      else {
        const heading = Math.atan2(b.y - a.y, b.x - a.x), open = Math.acos((r - s) / far);
        ink.arc(a.x, a.y, r, heading + open, heading - open);
        ink.arc(b.x, b.y, s, heading - open, heading + open);
      }
      ink.closePath();
      ink.fillStyle = fill;
      ink.fill();
      ink.strokeStyle = line;
      ink.lineWidth = Math.max(1, 0.012 * a.scale);
      ink.stroke();
      if (banded && far > 1) for (const share of [0.5, 0.72]) {
        const [x, y, half] = [a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share, r + (s - r) * share];
        const [dx, dy] = [(b.x - a.x) / far * half, (b.y - a.y) / far * half];
        shape([{ x: x - dy, y: y + dx }, { x: x + dy, y: y - dx }], null, band, Math.max(1, 0.022 * a.scale));
      }
    });
  }

  const colour = name => getComputedStyle(canvas).getPropertyValue(name).trim();
  let inks = null;
  /** Colours of the page, read again when its theme changes. */
  const paint = () => { inks = { ...Object.fromEntries(["--paper", "--raised", "--ink", "--soft", "--edge", "--faint", "--hero", "--other", "--outline", "--grave"].map(n => [n.slice(2), colour(n)])), own: people.map((_, p) => colour(`--p${p}`)) }; };

  function drawBody(body, stature, p) {
    const hero = p === 0;
    const [fill, line, band] = hero ? [inks.hero, inks.paper, inks.paper] : [inks.other, inks.outline, inks.outline];
    const part = ([bone, from, to, r, s, banded], fill) => {
      const { at, turn } = body[bone];
      capsule(plus(at, turned(turn, from), stature), plus(at, turned(turn, to), stature), r * stature, s * stature, fill, line, banded, band);
    };
    // The trunk of an attacker has their own colour, as on every other picture of the page.
    data.body.forEach((capsule, i) => part(capsule, !hero && (i === 1 || i === 2) ? inks.own[p] : fill));
    part(hero ? data.belt : data.cap, hero ? inks.paper : inks.own[p]);
  }

  function drawFloor() {
    const [left, back, right, front] = data.floor;
    const corner = (x, z) => [x, 0, z];
    polygon([corner(left, back), corner(right, back), corner(right, front), corner(left, front)], inks.raised, inks.ink, 2);
    for (let x = Math.ceil(left); x <= right; x++) line(corner(x, back), corner(x, front), inks.faint);
    for (let z = Math.ceil(back); z <= front; z++) line(corner(left, z), corner(right, z), inks.faint);
    line(corner(-0.15, 0), corner(0.15, 0), inks.ink);
    line(corner(0, -0.15), corner(0, 0.15), inks.ink);
    for (const [l, b, r, f] of data.mats) polygon([corner(l, b), corner(r, b), corner(r, f), corner(l, f)], inks.paper, inks.edge, 2);
    for (const [, [l, b, r, f]] of data.things) polygon([corner(l, b), corner(r, b), corner(r, f), corner(l, f)], inks.faint, inks.edge, 1);
  }
  /** A flat shape, cut where it comes behind the eye. */
  function polygon(corners, fill, stroke, width) {
    const kept = [];
    corners.forEach((a, i) => {
      const b = corners[(i + 1) % corners.length];
      const [da, db] = [a, b].map(c => dot(minus(c, eye.at), eye.ahead) - NEAR);
      if (da > 0) kept.push(see(a));
      if ((da > 0) !== (db > 0)) kept.push(see(plus(a, minus(b, a), da / (da - db))));
    });
    if (kept.length > 2) { shape(kept, fill, null); ink.closePath(); ink.strokeStyle = stroke; ink.lineWidth = width; ink.stroke(); }
  }
  function line(a, b, stroke) {
    const [da, db] = [a, b].map(c => dot(minus(c, eye.at), eye.ahead) - NEAR);
    if (da <= 0 && db <= 0) return;
    shape([see(da > 0 ? a : plus(b, minus(a, b), db / (db - da) * 0.999)), see(db > 0 ? b : plus(a, minus(b, a), da / (da - db) * 0.999))], null, stroke, 1);
  }

  /** Boxes through which one sees, so that nobody is lost behind them. */
  function drawThings() {
    for (const [name, [l, b, r, f], high] of data.things) {
      const c = (x, y, z) => [x, y, z];
      const faces = [[c(l, high, b), c(r, high, b), c(r, high, f), c(l, high, f)], [c(l, 0, b), c(r, 0, b), c(r, high, b), c(l, high, b)], [c(l, 0, f), c(r, 0, f), c(r, high, f), c(l, high, f)], [c(l, 0, b), c(l, 0, f), c(l, high, f), c(l, high, b)], [c(r, 0, b), c(r, 0, f), c(r, high, f), c(r, high, b)]];
      const middle = see([(l + r) / 2, high / 2, (b + f) / 2]);
      put(middle.away, () => {
        ink.globalAlpha = 0.28;
        for (const face of faces) polygon(face, inks.edge, inks.ink, 1);
        ink.globalAlpha = 1;
      });
      texts.push([see([(l + r) / 2, high, (b + f) / 2]), name]);
    }
  }

  /** A name over somebody; higher where another is in the way. */
  function label(at, text, fill, taken) {
    if (at.away <= NEAR) return;
    const size = Math.round(13 * canvas.width / canvas.clientWidth * clamp(canvas.clientWidth / 560, 0.75, 1.25));
    ink.font = `600 ${size}px system-ui, sans-serif`;
    const half = ink.measureText(text).width / 2;
    let y = at.y - 4;
    for (const other of taken) if (Math.abs(at.x - other.x) < half + other.half && Math.abs(y - other.y) < size) y = other.y - size;
    taken.push({ x: at.x, y, half });
    ink.textAlign = "center";
    ink.lineJoin = "round";
    ink.lineWidth = size / 4;
    ink.strokeStyle = inks.paper;
    ink.strokeText(text, at.x, y);
    ink.fillStyle = fill;
    ink.fillText(text, at.x, y);
  }

  /** What somebody holds or what lies there, from its outlines: white with a black line. */
  function drawProps(time, bodies, away) {
    for (const [name, length, drawn, stays] of data.props) {
      const stay = stays.find(([from, to]) => from <= time && (to < 0 || time < to));
      if (!stay || away[stay[2]]) continue;
      const [, , holder, side, ways, lies] = stay;
      let i = ways.length - 1;
      while (i > 0 && ways[i][0] > time) i--;
      const [a, b] = [ways[i], ways[Math.min(i + 1, ways.length - 1)]];
      const share = b[0] > a[0] ? clamp((time - a[0]) / (b[0] - a[0]), 0, 1) : 0;
      const way = unit(plus(a[1], minus(b[1], a[1]), share)).map(v => v * length);
      let [near, far] = [lies, way];
      if (holder >= 0) {
        const [bone, offset] = data.hands[side], { at, turn } = bodies[holder][bone];
        near = plus(at, turned(turn, offset), people[holder].stature);
        far = turned(turn, way);
      }
      const [from, to] = [see(near), see(plus(near, far))];
      put(Math.min(from.away, (from.away + to.away) / 2) - 0.06, () => {
        const [dx, dy, broad] = [to.x - from.x, to.y - from.y, length * from.scale];
        const seen = Math.hypot(dx, dy), [x, y] = seen < 1e-6 ? [0, -1] : [dx / seen, dy / seen];
        const outlines = drawn.length ? drawn : [[[-0.1, -0.03], [1, -0.03], [1, 0.03], [-0.1, 0.03]]];
        for (const [stroke, width] of [[inks.paper, 0.046], [inks.outline, 0.018]]) for (const outline of outlines) {
          ink.lineJoin = "round";
          shape(outline.map(([along, aside]) => ({ x: from.x + dx * along - y * broad * aside, y: from.y + dy * along + x * broad * aside })), outline.length > 2 ? "#fff" : null, null);
          if (outline.length > 2) ink.closePath();
          ink.strokeStyle = stroke;
          ink.lineWidth = Math.max(1.5, width * from.scale);
          ink.stroke();
        }
      });
      if (lies.length) texts.push([see(near), name]);
    }
  }
  /** The way of the hand, foot, elbow or knee that has struck, through the half count before it meets; broken where it is stopped. */
  function drawBlows({ time, blows }) {
    for (const [contact, doer, lands] of blows) {
      const meets = data.meetings.filter(m => m[0] === contact && m[1] !== 2);
      if (meets.length === 0) continue;
      const there = bodyAt(people[doer], contact), far = (joint, m) => Math.hypot(...minus(there[joint].at, m[2]));
      const [tip] = data.tips.map(t => [t, Math.min(...meets.map(m => far(t, m)))]).sort((a, b) => a[1] - b[1])[0];
      const way = Array.from({ length: 8 }, (_, i) => Math.min(time, contact) - 1 + i / 7).map(t => bodyAt(people[doer], t)[tip].at).filter(at => dot(minus(at, eye.at), eye.ahead) > NEAR).map(see);
      if (way.length < 2) continue;
      ink.lineCap = "round";
      ink.setLineDash(lands ? [] : [way[0].scale * 0.06, way[0].scale * 0.05]);
      shape(way, null, inks.grave, Math.max(2, 0.03 * way[0].scale));
      ink.setLineDash([]);
      ink.lineCap = "butt";
    }
  }

  /** Rays round a touch, rays farther off round a planned miss, a ring round a grip: as on the cards. */
  function drawMeetings(time) {
    for (const [at, kind, place] of data.meetings) {
      if (time < at || time >= at + 1) continue;
      const { x, y, away, scale } = see(place);
      if (away <= NEAR) continue;
      ink.strokeStyle = inks.grave;
      ink.lineWidth = Math.max(2, 0.02 * scale);
      ink.beginPath();
      if (kind === 2) ink.arc(x, y, 0.09 * scale, 0, 2 * Math.PI);
      else for (let i = 0; i < 8; i++) {
        const [dx, dy] = [Math.cos(i * Math.PI / 4) * scale, Math.sin(i * Math.PI / 4) * scale];
        const [from, to] = kind === 0 ? [0.1, 0.17] : [0.16, 0.2];
        ink.moveTo(x + dx * from, y + dy * from);
        ink.lineTo(x + dx * to, y + dy * to);
      }
      ink.stroke();
    }
  }

  /** Draws a moment; who is off the floor is left out, and whoever is not followed is faint. */
  function draw(moment) {
    told.last = moment;
    if (canvas.hidden) return;
    const dense = Math.min(2, window.devicePixelRatio || 1), [wide, high] = [Math.round(canvas.clientWidth * dense), Math.round((document.fullscreenElement ? canvas.clientHeight : canvas.clientWidth * 0.7) * dense)];
    if (canvas.width !== wide || canvas.height !== high) [canvas.width, canvas.height] = [wide, high];
    if (!inks) paint();
    const bodies = people.map(p => bodyAt(p, moment.time));
    aim([bodies[0][0].at[0], HIPS, bodies[0][0].at[2]]);
    ink.globalAlpha = 1;
    ink.fillStyle = inks.paper;
    ink.fillRect(0, 0, canvas.width, canvas.height);
    drawFloor();
    [parts, texts] = [[], []];
    drawThings();
    const order = [];
    bodies.forEach((body, p) => {
      if (moment.away[p]) return;
      const before = parts.length;
      drawBody(body, people[p].stature, p);
      const faint = moment.followed !== null && moment.followed !== p && p > 0;
      if (faint) for (const part of parts.slice(before)) { const whole = part[1]; part[1] = () => { ink.globalAlpha = 0.35; whole(); ink.globalAlpha = 1; }; }
      const top = see(plus(body[0].at, [0, Math.max(0.25, Math.max(...body.map(j => j.at[1])) - body[0].at[1] + 0.2), 0]));
      order.push([top, p]);
    });
    drawProps(moment.time, bodies, moment.away);
    parts.sort((a, b) => b[0] - a[0]);
    for (const [, drawn] of parts) drawn();
    drawBlows(moment);
    drawMeetings(moment.time);
    const taken = [];
    for (const [top, p] of order.sort((a, b) => b[0].y - a[0].y)) label(top, moment.names ? `${told.signs[p]} ${told.names[p]}` : told.signs[p], inks.own[p], taken);
    if (moment.names) for (const [at, name] of texts) label(at, name, inks.soft, taken);
  }

  const again = () => { if (told.last) draw(told.last); };
  function move(round, over, nearer) {
    if (view.name.startsWith("lens")) return;
    view.round += round;
    view.over = clamp(view.over + over, 0.02, 1.45);
    view.far = clamp(view.far * nearer, 2.5, 16);
    again();
  }
  function show(name) {
    canvas.hidden = name === "plan";
    if (name !== "plan") view.name = name;
    again();
  }
  let held = null;
  canvas.addEventListener("pointerdown", e => { held = [e.clientX, e.clientY]; canvas.setPointerCapture(e.pointerId); });
  canvas.addEventListener("pointermove", e => {
    if (!held) return;
    move((held[0] - e.clientX) * 0.008, (e.clientY - held[1]) * 0.006, 1);
    held = [e.clientX, e.clientY];
  });
  for (const end of ["pointerup", "pointercancel"]) canvas.addEventListener(end, () => { held = null; });
  new ResizeObserver(again).observe(canvas);
  const repaint = () => { inks = null; again(); };
  return { draw, show, move, repaint, places: time => people.map(p => bodyAt(p, time).map(j => j.at)) };
};
