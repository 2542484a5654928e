// Draws pictures in a real browser and with resvg and gives the pixels back.
//
// Standard input, a line each: {"browser": path}, then {"name", "svg"} for every
// picture. Standard output: an array of {"chromium", "resvg"}, PNGs in base64.
import { Resvg } from '@resvg/resvg-js';
import { values, withPage } from './browser.mjs';

const input = values();
const { value: order } = await input.next();
const shots = await withPage(order.browser, async (page) => {
  const shots = [];
  for await (const { svg } of input) {
    // As an image, which is how other pages show it.
    const [width, height] = await page.evaluate(async (svg) => {
      const img = new Image();
      img.style.display = 'block';
      img.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
      await img.decode();
      document.body.replaceChildren(img);
      return [img.width, img.height];
    }, svg);
    const chromium = await page.screenshot({ clip: { x: 0, y: 0, width, height }, fullPage: height > 1200 });
    const resvg = new Resvg(svg, { font: { loadSystemFonts: false } }).render().asPng();
    shots.push({ chromium: chromium.toString('base64'), resvg: resvg.toString('base64') });
  }
  return shots;
});
process.stdout.write(JSON.stringify(shots) + '\n');
