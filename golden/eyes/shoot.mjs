// Draws pictures in a real browser and gives the pixels back.
//
// Standard input: {"browser": path, "pictures": [{"name", "svg"}]}
// Standard output: one PNG in base64 for each picture, as a JSON array
import { request, withPage } from './browser.mjs';

const { browser, pictures } = await request();
const shots = await withPage(browser, async (page) => {
  const shots = [];
  for (const { svg } of pictures) {
    await page.setContent('<!DOCTYPE html><html lang="en"><body style="margin:0"></body></html>');
    // As an image, which is how other pages show it.
    await page.evaluate(async (svg) => {
      const img = new Image();
      img.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
      document.body.append(img);
      await img.decode();
    }, svg);
    shots.push((await page.locator('img').screenshot()).toString('base64'));
  }
  return shots;
});
process.stdout.write(JSON.stringify(shots) + '\n');
