// Bodies in space: turns and places, the poses that the page has packed, and where every joint is at a moment.
const bodiesInSpace = data => {
  "use strict";
  const bytes = text => Uint8Array.from(atob(text), c => c.charCodeAt(0));

  /* turns: x, y, z, w */
  const unpack = packed => {
    const greatest = packed >>> 30, parts = [0, 0, 0, 0];
    let rest = 1;
    [3, 2, 1, 0].filter(i => i !== greatest).forEach((i, n) => {
      parts[i] = (((packed >>> (10 * n)) & 1023) / 1023 - 0.5) / Math.SQRT1_2;
      rest -= parts[i] * parts[i];
    });
    parts[greatest] = Math.sqrt(Math.max(0, rest));
    return parts;
  };
  const turned = ([x, y, z, w], [a, b, c]) => {
    const [p, q, r] = [2 * (y * c - z * b), 2 * (z * a - x * c), 2 * (x * b - y * a)];
    return [a + w * p + y * r - z * q, b + w * q + z * p - x * r, c + w * r + x * q - y * p];
  };
  const after = ([x, y, z, w], [a, b, c, d]) => [w * a + x * d + y * c - z * b, w * b - x * c + y * d + z * a, w * c + x * b - y * a + z * d, w * d - x * a - y * b - z * c];
  const blended = (p, q, share) => {
    const other = p[0] * q[0] + p[1] * q[1] + p[2] * q[2] + p[3] * q[3] < 0 ? -share : share;
    const sum = p.map((v, i) => v * (1 - share) + q[i] * other), long = Math.hypot(...sum) || 1;
    return sum.map(v => v / long);
  };
  const plus = (a, b, by = 1) => [a[0] + b[0] * by, a[1] + b[1] * by, a[2] + b[2] * by];
  const minus = (a, b) => plus(a, b, -1);
  const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  const cross = (a, b) => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
  const unit = a => { const long = Math.hypot(...a) || 1; return a.map(v => v / long); };

  /* what was packed */
  const joints = data.rig.length - 1;
  const poseBytes = new DataView(bytes(data.poses).buffer);
  const poses = Array.from({ length: poseBytes.byteLength / (4 * joints) }, (_, p) => Array.from({ length: joints }, (_, j) => unpack(poseBytes.getUint32(4 * (p * joints + j), true))));
  const people = data.performers.map(([stature, keys]) => {
    const view = new DataView(bytes(keys).buffer);
    return { stature, keys: Array.from({ length: view.byteLength / 15 }, (_, k) => {
      const at = i => view.getInt16(15 * k + i, true);
      return { time: at(0) / 4, pose: poses[view.getUint16(15 * k + 2, true)], hips: [at(4) / 100, at(6) / 100, at(8) / 100], turn: unpack(view.getUint32(15 * k + 10, true)) };
    }) };
  });

  /** Where every joint of somebody is at a moment, and how it is turned. */
  function bodyAt({ stature, keys }, time) {
    let i = keys.length - 1;
    while (i > 0 && keys[i].time > time) i--;
    const [a, b] = [keys[i], keys[Math.min(i + 1, keys.length - 1)]];
    const share = b.time > a.time ? clamp((time - a.time) / (b.time - a.time), 0, 1) : 0;
    const body = [{ at: plus(a.hips, minus(b.hips, a.hips), share), turn: blended(a.turn, b.turn, share) }];
    for (let j = 1; j <= joints; j++) {
      const [parent, offset] = data.rig[j];
      const from = body[parent];
      body.push({ at: plus(from.at, turned(from.turn, offset), stature), turn: after(from.turn, blended(a.pose[j - 1], b.pose[j - 1], share)) });
    }
    return body;
  }

  return { clamp, turned, plus, minus, dot, cross, unit, people, bodyAt };
};
