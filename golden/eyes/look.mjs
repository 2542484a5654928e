// Looks at pictures in a real browser: which texts touch, which leave the paper,
// which are too small to read on a phone.
//
// Standard input: {"browser": path, "widths": [320], "pictures": [{"name", "svg"}]}
// Standard output: {"looked": n, "texts": n, "faults": [{"name", "width", "what"}]}
import { request, withPage } from './browser.mjs';

const smallest = 10; // pixels high, on a phone
const slack = 0.5; // pixels; less than this is rounding

// Runs in the page. Lays the pictures out at a width, one below another, and
// measures the ink of every text with the font that the browser chose.
function inspect({ pictures, width, smallest, slack }) {
  const faults = [];
  let texts = 0;
  const brush = document.createElement('canvas').getContext('2d');

  const inkOf = (node) => {
    const style = getComputedStyle(node);
    const cell = node.getBBox(); // its width is the pen's way, in the picture's units
    brush.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const ink = brush.measureText(node.textContent);
    const base = Number(node.getAttribute('y'));
    const m = node.getScreenCTM();
    return {
      words: node.textContent,
      left: cell.x * m.a + m.e,
      right: (cell.x + cell.width) * m.a + m.e,
      top: (base - ink.actualBoundingBoxAscent) * m.d + m.f,
      bottom: (base + ink.actualBoundingBoxDescent) * m.d + m.f,
      size: parseFloat(style.fontSize) * m.a,
    };
  };

  for (const { name, svg } of pictures) {
    const say = (what) => faults.push({ name, width, what });
    const root = document.importNode(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true);
    if (root.nodeName !== 'svg') {
      say('the browser cannot read it');
      continue;
    }
    const [, , w, h] = root.getAttribute('viewBox').split(' ').map(Number);
    root.setAttribute('width', width);
    root.setAttribute('height', (h * width) / w);
    document.body.replaceChildren(root);
    const paper = root.getBoundingClientRect();
    const inks = [...root.querySelectorAll('text')].map(inkOf);
    texts += inks.length;
    for (const [i, a] of inks.entries()) {
      if (a.left < paper.left - slack || a.right > paper.right + slack || a.top < paper.top - slack || a.bottom > paper.bottom + slack) {
        say(`"${a.words}" leaves the paper`);
      }
      if (a.size < smallest) say(`"${a.words}" is ${a.size.toFixed(1)} pixels high`);
      for (const b of inks.slice(i + 1)) {
        const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
        const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
        if (across > slack && down > slack) say(`"${a.words}" and "${b.words}" touch`);
      }
    }
  }
  return { faults, texts };
}

const { browser, widths, pictures } = await request();
const report = await withPage(browser, async (page) => {
  const report = { looked: 0, texts: 0, faults: [] };
  for (const width of widths) {
    for (let i = 0; i < pictures.length; i += 200) {
      const batch = pictures.slice(i, i + 200);
      const { faults, texts } = await page.evaluate(inspect, { pictures: batch, width, smallest, slack });
      report.looked += batch.length;
      report.texts += texts;
      report.faults.push(...faults);
    }
  }
  return report;
});
process.stdout.write(JSON.stringify(report) + '\n');
