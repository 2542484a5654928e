// Looks at pictures in a real browser: which texts touch or are crossed, which
// leave their room or the paper, which are too small to read on a phone.
//
// Standard input, a line each: {"browser": path, "widths": [320], "families": []},
// then {"name", "svg", "boxes", "struck", "widths"} for every picture. The widths
// of a picture are its own when it has some.
// Standard output: {"looked": n, "texts": n, "missing": [], "faults": [{"name", "width", "what"}]}
import { values, withPage } from './browser.mjs';

const smallest = 11; // pixels high, on a phone
const slack = 0.5; // units or pixels, the larger; less than this is rounding
const batch = 100; // pictures in the page at once

const input = values();
const { value: order } = await input.next();
const report = await withPage(order.browser, async (page) => {
  for (const path of ['geometry.js', 'inspect.js']) await page.addScriptTag({ path });
  const report = { looked: 0, texts: 0, missing: [], faults: [] };
  report.missing = await page.evaluate((families) => {
    const brush = document.createElement('canvas').getContext('2d');
    const wide = (font) => ((brush.font = `40px ${font}`), brush.measureText('Wide 0123').width);
    return families.filter((f) => f && wide(`${f}, monospace`) === wide('monospace'));
  }, order.families);
  const waiting = new Map(order.widths.map((width) => [width, []]));
  const look = async (width) => {
    const pictures = waiting.get(width).splice(0);
    if (pictures.length === 0) return;
    const { faults, texts } = await page.evaluate((o) => inspect(JSON.parse(o)), JSON.stringify({ pictures, width, families: order.families, smallest, slack }));
    report.looked += pictures.length;
    report.texts += texts;
    report.faults.push(...faults);
  };
  for await (const picture of input) {
    for (const width of picture.widths ?? order.widths) {
      waiting.get(width).push(picture);
      if (waiting.get(width).length === batch) await look(width);
    }
  }
  for (const width of order.widths) await look(width);
  return report;
});
process.stdout.write(JSON.stringify(report) + '\n');
