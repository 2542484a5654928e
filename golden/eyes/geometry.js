// Geometry of what is drawn, in the picture's own units. Runs in the page.

// outlineOf gives the strokes of a shape as a list of open lines, each a list of
// [x, y]; a circle and a curve become short straight stretches.
function outlineOf(node) {
  const at = (name) => Number(node.getAttribute(name) ?? 0);
  switch (node.nodeName) {
    case 'rect': {
      const [l, t] = [at('x'), at('y')];
      const [r, b] = [l + at('width'), t + at('height')];
      return [[[l, t], [r, t], [r, b], [l, b], [l, t]]];
    }
    case 'line':
      return [[[at('x1'), at('y1')], [at('x2'), at('y2')]]];
    case 'circle': {
      const points = [];
      for (let i = 0; i <= 32; i++) {
        const angle = (i * Math.PI) / 16;
        points.push([at('cx') + at('r') * Math.cos(angle), at('cy') + at('r') * Math.sin(angle)]);
      }
      return [points];
    }
    case 'path':
      return outlineOfPath(node.getAttribute('d'));
  }
  throw new Error(`a shape that was not expected: ${node.nodeName}`);
}

// arc gives points along a part of a circle (SVG 2, appendix B.2.4).
function arc([x1, y1], r, large, sweep, [x2, y2]) {
  const [dx, dy] = [(x1 - x2) / 2, (y1 - y2) / 2];
  const half = dx * dx + dy * dy;
  const k = Math.sqrt(Math.max(0, (r * r - half) / half)) * (large === sweep ? -1 : 1);
  const [cx, cy] = [(x1 + x2) / 2 + k * dy, (y1 + y2) / 2 - k * dx];
  const from = Math.atan2(y1 - cy, x1 - cx);
  let turn = Math.atan2(y2 - cy, x2 - cx) - from;
  if (sweep && turn < 0) turn += 2 * Math.PI;
  if (!sweep && turn > 0) turn -= 2 * Math.PI;
  const points = [];
  for (let n = 1; n < 24; n++) {
    const angle = from + (turn * n) / 24;
    points.push([cx + r * Math.cos(angle), cy + r * Math.sin(angle)]);
  }
  return [...points, [x2, y2]];
}

// outlineOfPath reads the commands that the pictures use and throws on any other.
function outlineOfPath(d) {
  const lines = [];
  let line = null;
  let [x, y] = [0, 0];
  const words = d.match(/[A-Za-z]|-?[0-9.]+/g);
  let i = 0;
  let command = '';
  const next = () => Number(words[i++]);
  const to = (nx, ny) => {
    [x, y] = [nx, ny];
    line.push([x, y]);
  };
  while (i < words.length) {
    if (/[A-Za-z]/.test(words[i])) command = words[i++];
    switch (command) {
      case 'M': line = [[x = next(), y = next()]]; lines.push(line); break;
      case 'm': line = [[x += next(), y += next()]]; lines.push(line); break;
      case 'L': to(next(), next()); break;
      case 'l': to(x + next(), y + next()); break;
      case 'H': to(next(), y); break;
      case 'h': to(x + next(), y); break;
      case 'V': to(x, next()); break;
      case 'v': to(x, y + next()); break;
      case 'Z': case 'z': to(...line[0]); break;
      case 'C': {
        const p = [x, y];
        const [a, b, c] = [[next(), next()], [next(), next()], [next(), next()]];
        for (let n = 1; n <= 24; n++) {
          const [t, u] = [n / 24, 1 - n / 24];
          const on = (k) => u * u * u * p[k] + 3 * u * u * t * a[k] + 3 * u * t * t * b[k] + t * t * t * c[k];
          to(on(0), on(1));
        }
        break;
      }
      case 'A': {
        const [from, r] = [[x, y], next()];
        i += 2; // as high as it is wide, and not turned
        const [large, sweep] = [next(), next()];
        for (const p of arc(from, r, large, sweep, [next(), next()])) to(...p);
        break;
      }
      default: throw new Error(`a path command that was not expected: ${command}`);
    }
  }
  return lines;
}

const around = (points) => {
  const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (const [x, y] of points) {
    box.left = Math.min(box.left, x);
    box.right = Math.max(box.right, x);
    box.top = Math.min(box.top, y);
    box.bottom = Math.max(box.bottom, y);
  }
  return box;
};

const union = (a, b) => ({
  left: Math.min(a.left, b.left), top: Math.min(a.top, b.top),
  right: Math.max(a.right, b.right), bottom: Math.max(a.bottom, b.bottom),
});

const grown = (a, by) => ({ left: a.left - by, top: a.top - by, right: a.right + by, bottom: a.bottom + by });

const overlap = (a, b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

const holds = (a, b) => a.left <= b.left && a.top <= b.top && b.right <= a.right && b.bottom <= a.bottom;

// passes reports whether a straight stretch has a point inside a box: the stretch
// is cut by the four sides in turn (Liang and Barsky, 1984) and something is left.
function passes([x1, y1], [x2, y2], box) {
  let [from, until] = [0, 1];
  for (const [step, room] of [
    [x1 - x2, x1 - box.left], [x2 - x1, box.right - x1],
    [y1 - y2, y1 - box.top], [y2 - y1, box.bottom - y1],
  ]) {
    if (step === 0) {
      if (room <= 0) return false;
    } else if (step < 0) from = Math.max(from, room / step);
    else until = Math.min(until, room / step);
  }
  return from < until;
}

// inside reports whether a point lies inside a closed line: a ray from it to the
// right crosses the line an odd number of times.
function inside([x, y], line) {
  let odd = false;
  for (let i = 1; i < line.length; i++) {
    const [[ax, ay], [bx, by]] = [line[i - 1], line[i]];
    if (ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay)) odd = !odd;
  }
  return odd;
}
