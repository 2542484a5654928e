// Looks at the pictures in the page and says what is wrong with them. Runs in the
// page, after geometry.js. Lengths are in the picture's units; a picture is 800
// units wide, and one unit is one pixel at its intended size.

const brush = document.createElement('canvas').getContext('2d');
const finer = 10; // ink is measured so many times larger, since it comes in whole pixels
const inks = new Map(); // how far the ink of a text reaches above and below its baseline

function reach(text, font) {
  const key = `${font}\n${text}`;
  if (!inks.has(key)) {
    brush.font = font;
    const m = brush.measureText(text);
    inks.set(key, [m.actualBoundingBoxAscent / finer, m.actualBoundingBoxDescent / finer]);
  }
  return inks.get(key);
}

const pens = new Map(); // how far a text reaches to the left and right of its x

// boxOf is the room that a text takes: sideways the pen's way, which the browser
// lays out, and up and down its ink. In the picture's own family (null) every text
// is laid out where it stands; in another one, the first of those that are alike
// in words, size, weight and anchor, since where it stands moves no letter.
function boxOf({ root, scale }, node, family) {
  const look = (name) => node.getAttribute(name) ?? node.parentNode.getAttribute(name);
  const [size, weight, x, y] = [Number(look('font-size')), look('font-weight') ?? '400', Number(look('x')), Number(look('y'))];
  const [up, down] = reach(node.textContent, `${weight} ${size * finer}px ${family ?? root.getAttribute('font-family')}`);
  const key = [family, scale, weight, size, look('text-anchor'), node.textContent].join('\n');
  if (!family || !pens.has(key)) {
    const own = root.getAttribute('font-family');
    if (family) root.setAttribute('font-family', family);
    const cell = node.getBBox();
    pens.set(key, [cell.x - x, cell.x + cell.width - x]);
    if (family) root.setAttribute('font-family', own);
  }
  const [left, right] = pens.get(key);
  return { left: x + left, right: x + right, top: y - up, bottom: y + down, size };
}

// shapesOf are the shapes in the order in which they are painted.
function shapesOf(root, say) {
  const shapes = [];
  const elements = [...root.querySelectorAll('rect, line, circle, path')];
  for (const node of elements) {
    const look = (name) => node.getAttribute(name) ?? node.parentNode.getAttribute(name);
    const lines = outlineOf(node);
    const box = around(lines.flat());
    const real = node.getBBox();
    const off = Math.max(Math.abs(real.x - box.left), Math.abs(real.y - box.top),
      Math.abs(real.x + real.width - box.right), Math.abs(real.y + real.height - box.bottom));
    if (off > 1) say(`the browser sees a ${node.nodeName} elsewhere than it was read`);
    const edge = look('stroke');
    shapes.push({
      node, lines, box,
      filled: node.nodeName !== 'line' && (look('fill') ?? '#000000') !== 'none',
      round: look('stroke-linecap') === 'round',
      half: edge && edge !== 'none' ? Number(look('stroke-width') ?? 1) / 2 : 0,
    });
  }
  return shapes;
}

// crossed reports whether the edge of a shape, as wide as it is drawn, runs
// through a room. A line that only ends beside a text does not.
function crossed(shape, room) {
  if (!overlap(shape.box, grown(room, shape.half))) return false;
  return shape.lines.some((line) => line.some((q, i) => {
    if (i === 0) return false;
    const p = line[i - 1];
    const half = shape.half / (Math.hypot(q[0] - p[0], q[1] - p[1]) || 1);
    const [x, y] = shape.round ? [shape.half, shape.half] : [half * Math.abs(q[1] - p[1]), half * Math.abs(q[0] - p[0])];
    return passes(p, q, { left: room.left - x, right: room.right + x, top: room.top - y, bottom: room.bottom + y });
  }));
}

// judge says what is wrong with the texts of one picture, given the room that
// each takes.
function judge({ texts, rooms, shapes, paper, struck, slack, say }) {
  const order = (a, b) => a.compareDocumentPosition(b) & Node.DOCUMENT_POSITION_FOLLOWING;
  const tight = rooms.map((room) => grown(room, -slack));
  texts.forEach((text, i) => {
    const words = text.textContent;
    if (!holds(paper, tight[i])) say(`"${words}" leaves the paper`);
    for (let j = i + 1; j < texts.length; j++) {
      if (overlap(tight[i], rooms[j])) say(`"${words}" and "${texts[j].textContent}" touch`);
    }
    const plates = shapes.filter((s) => s.filled && s.node.nodeName !== 'path' && holds(s.box, tight[i]) && order(s.node, text));
    for (const shape of shapes) {
      if (order(text, shape.node)) {
        const middle = [(rooms[i].left + rooms[i].right) / 2, (rooms[i].top + rooms[i].bottom) / 2];
        if (shape.filled && shape.lines.some((line) => inside(middle, line))) say(`"${words}" is covered by a ${shape.node.nodeName}`);
      } else if (plates.some((plate) => order(shape.node, plate.node))) continue; // it is hidden under the text's plate
      if (!crossed(shape, grown(rooms[i], -Math.max(slack, 1)))) continue; // what only brushes it is not seen to cross it
      const { left, top, right, bottom } = shape.box;
      if (struck.some((s) => s[0] === left && s[1] === top && s[2] === right && s[3] === bottom)) continue; // it strikes the text out
      say(`"${words}" is crossed by a ${shape.node.nodeName} at ${left} ${top}`);
    }
  });
  for (const s of shapes) {
    if (!holds(paper, grown(s.box, s.half))) say(`a ${s.node.nodeName} leaves the paper`);
  }
}

// inspect looks at pictures at one width, in several font families at once: a
// text takes the room that it needs in the widest.
function inspect({ pictures, width, families, smallest, slack }) {
  const faults = [];
  let count = 0;
  const seen = pictures.map((picture) => {
    const say = (what) => faults.push({ name: picture.name, width, what });
    const root = document.importNode(new DOMParser().parseFromString(picture.svg, 'image/svg+xml').documentElement, true);
    if (root.nodeName !== 'svg') {
      say('the browser cannot read it');
      return null;
    }
    const [, , w, h] = root.getAttribute('viewBox').split(' ').map(Number);
    root.setAttribute('width', width);
    root.setAttribute('height', (h * width) / w);
    return { ...picture, root, say, scale: width / w, paper: { left: 0, top: 0, right: w, bottom: h }, texts: [...root.querySelectorAll('text')], rooms: [] };
  }).filter((p) => p);
  document.body.replaceChildren(...seen.map((p) => p.root));
  for (const family of families) {
    for (const p of seen) {
      p.texts.forEach((text, i) => {
        const box = boxOf(p, text, family);
        p.rooms[i] = p.rooms[i] ? { ...p.rooms[i], ...union(p.rooms[i], box) } : box;
      });
    }
  }
  for (const p of seen) {
    count += p.texts.length;
    if (p.root.querySelector('[transform]')) p.say('something is moved by a transform, which this reader does not follow');
    p.texts.forEach((text, i) => {
      const high = p.rooms[i].size * p.scale;
      if (high < smallest) p.say(`"${text.textContent}" is ${high.toFixed(1)} pixels high`);
    });
    const rounding = p.scale < 1 ? 1 / p.scale : slack; // letters of a small picture stand on whole pixels
    reserved(p, rounding);
    judge({ ...p, shapes: shapesOf(p.root, p.say), slack: rounding });
  }
  return { faults, texts: count };
}

// reserved checks that texts stay in the boxes that the layout keeps for them.
// Each box is [left, top, right, bottom, how many texts it holds], in the order
// of painting.
function reserved({ texts, rooms, boxes, say }, slack) {
  if (!boxes) return;
  let i = 0;
  for (const [left, top, right, bottom, n] of boxes) {
    for (const end = i + n; i < end && i < texts.length; i++) {
      if (!holds({ left, top, right, bottom }, grown(rooms[i], -Math.max(slack, 1)))) { // a letter may lean out of its room by a hair
        say(`"${texts[i].textContent}" needs ${Object.values(rooms[i]).slice(0, 4).map((v) => v.toFixed(1))} and has ${[left, right, top, bottom]}`);
      }
    }
  }
  if (i !== texts.length) say(`${texts.length} texts are drawn and room is kept for ${i}`);
}
