// Goes the ways of those the pages are for: a parent, a child, the maker of a tool.
import { expect, open, site, elsewhere, withBrowser } from './site.mjs';

const shown = (page) => page.evaluate(() => Array.from(document.querySelectorAll('.move')).flatMap((m, i) => (m.hidden ? [] : [i + 1])).join());
const loaded = (page, selector) => page.waitForFunction((s) => {
  const all = Array.from(document.querySelectorAll(s)).filter((i) => i.getClientRects().length);
  return all.length > 0 && all.every((i) => i.complete && i.naturalWidth > 0);
}, selector);

// Asks with the keys on the page, mends a misreading, walks through the moves, looks at
// the answer, prints.
async function parent(page) {
  await page.goto(site + '/');
  await page.fill('#problem', '56');
  await page.click('.keys button:text-is("÷")');
  await page.keyboard.type('8');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/lesson?problem=*');
  expect((await page.textContent('h1')).includes('56 ÷ 8'), 'the keys do not write 56 ÷ 8');
  expect((await page.textContent('.read')).includes('shared'), '56 ÷ 8 is not read as sharing');
  await page.click('.also a');
  expect((await page.textContent('.read')).includes('in groups of 8'), 'the other reading is not one tap away');

  await page.goto(site + '/lesson?problem=402-178');
  await loaded(page, '.move .picture img');
  expect(!await page.isVisible('.answer .result'), 'the answer is not covered');
  await page.click('.answer summary');
  expect((await page.textContent('.answer .result')).includes('224'), 'the answer is not 224');
  await page.click('.views a:has-text("One move")');
  expect(await shown(page) === '1', 'not the first move alone');
  const box = await page.locator('.move:not([hidden]) .picture').boundingBox();
  const on = await page.locator('.walk .on').boundingBox();
  await page.mouse.click(on.x + on.width / 2, on.y + on.height / 2);
  await page.keyboard.press('ArrowRight');
  expect(await shown(page) === '3', `after two steps on move ${await shown(page)} is shown`);
  expect(page.url().endsWith('&step=3'), `the address does not follow: ${page.url()}`);
  expect((await page.textContent('#now')).includes('Move 3 of 7: Trade 1 ten'), 'the step is not said');
  const later = await page.locator('.move:not([hidden]) .picture').boundingBox();
  expect(Math.abs(box.x - later.x) < 1 && Math.abs(box.y - later.y) < 1 && Math.abs(box.width - later.width) < 1, `the picture does not stay in its place: ${JSON.stringify([box, later])}`);
  await page.reload();
  expect(await shown(page) === '3', 'the address of a step is no bookmark');
  await page.click('.stations a >> nth=6');
  expect(await page.isVisible('#story'), 'the whole story does not come with the last move');
  expect(!await page.isVisible('.walk .on'), 'there is a way on after the last move');

  // Pointing at a number lights its blocks, and the other way round.
  await page.click('.views a:has-text("All")');
  await page.hover('#move-1 .hands b.first');
  await page.waitForSelector('#move-1 svg [data-role=first]');
  expect(await page.getAttribute('#move-1', 'data-lit') === 'first', 'pointing at 402 lights nothing');
  await page.hover('#move-2 .picture');
  await page.waitForSelector('#move-2 svg rect');
  await page.hover('#move-2 svg [data-role=moved] rect >> nth=0', { force: true });
  expect(await page.getAttribute('#move-2', 'data-lit') === 'moved', 'pointing at a block lights nothing');
  expect((await page.getAttribute('#move-2 svg', 'aria-label')).startsWith('402 − 178'), 'the picture lost its words');

  await page.evaluate(() => { window.print = () => { window.printed = true; }; });
  await page.click('button.print');
  expect(await page.evaluate(() => window.printed), 'the button does not print');
  await page.click('.after a:has-text("for the child")');
  expect(!(await page.textContent('main')).includes('224'), "the child's page has the answer");
}

// The same by touch, and without any script at all.
async function phone(page) {
  await page.goto(site + '/lesson?problem=3/4=6/8&step=1');
  await page.evaluate(() => {
    const target = document.querySelector('.move:not([hidden]) .picture');
    const at = (x) => [new Touch({ identifier: 1, target, clientX: x, clientY: 300 })];
    target.dispatchEvent(new TouchEvent('touchstart', { touches: at(250), changedTouches: at(250), bubbles: true }));
    target.dispatchEvent(new TouchEvent('touchend', { touches: [], changedTouches: at(100), bubbles: true }));
  });
  expect(await shown(page) === '2', 'a swipe does not lead on');
}

async function plain(page) {
  await page.goto(site + '/');
  await page.fill('#problem', '7 x 8');
  await page.press('#problem', 'Enter');
  expect((await page.textContent('h1')).includes('7 × 8'), 'the field does not work without script');
  await page.click('.views a:has-text("One move")');
  const seen = [];
  for (let i = 0; i < 20; i++) {
    seen.push(await page.textContent('.move:not([hidden]) h3'));
    const on = page.locator('.walk .on[href]');
    if (!await on.count()) break;
    await on.click();
  }
  expect(seen.length > 2 && new Set(seen).size === seen.length, `the moves one by one without script: ${seen.join(', ')}`);
}

// Makes a claim, guesses, and sees.
async function child(page) {
  await page.goto(site + '/claim');
  await page.fill('#problem', '5/8 > 2/3');
  await page.press('#problem', 'Enter');
  expect(await page.locator('main img').count() === 0, 'the picture comes before the guess');
  await page.click('.choices a >> nth=0');
  let pictures = 0;
  for (; pictures < 20; pictures++) {
    await loaded(page, '.picture img');
    if (!await page.locator('a[rel=next]').count()) break;
    await page.keyboard.press('ArrowRight');
    await page.waitForFunction((n) => location.search.includes('look=' + n), pictures + 2);
  }
  expect(pictures > 1, 'the way through the claim is too short');
  expect((await page.textContent('[role=status]')).includes('is not true'), '5/8 > 2/3 is not refuted');
}

// Copies an embed from the page of pictures, pastes it in a page of another place and
// sees the picture, also of a problem that cannot be read.
async function maker(page, context) {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(site + '/pictures');
  const first = page.locator('.exhibits li').first();
  await first.locator('.copy button:text-is("HTML")').click();
  await page.waitForFunction(() => document.getElementById('copied').textContent.includes('HTML'));
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(/^<img src="http[^"]+" alt="402 − 178 = 224[^"]+" width="800" height="\d+">$/.test(copied), `what is copied is ${copied}`);
  await first.locator('.copy button:text-is("Markdown")').click();
  expect((await first.locator('textarea').inputValue()).startsWith('![402 − 178 = 224'), 'there is no Markdown to copy');

  await page.goto(elsewhere + '/');
  await page.evaluate((html) => {
    document.body.innerHTML = html + html.replace('problem=402-178', 'problem=23+ducks');
  }, copied);
  await loaded(page, 'img');
  const wide = await page.evaluate(() => Array.from(document.images).map((i) => i.naturalWidth).join());
  expect(wide === '800,800', `the pasted pictures are ${wide} pixels wide`);
  await page.evaluate((home) => new Promise((resolve, reject) => {
    document.body.innerHTML = '<modeler-picture problem="3/4 = 6/8"></modeler-picture>';
    const script = document.createElement('script');
    script.type = 'module';
    script.src = home + '/modeler-picture.js';
    script.onload = resolve;
    script.onerror = reject;
    document.head.append(script);
  }), site);
  await page.waitForFunction(() => (document.querySelector('modeler-picture img') || {}).alt?.includes('is true'));
}

// Prints: a lesson on one page of either paper, and nothing wider than the paper.
async function paper(page) {
  for (const [path, pages] of [['/lesson?problem=402-178', 1], ['/lesson?problem=3/4=6/8&theme=ink', 1], ['/lesson?problem=7x8&step=2', 1],
    ['/lesson?problem=402-178&answer=hidden&theme=ink', 1], ['/lesson?problem=3000-1456', 2], ['/claim?problem=3/4=5/8&think=same&look=5', 1]]) {
    await page.goto(site + path);
    for (const [format, width] of [['A4', 718], ['Letter', 740]]) { // pixels between the margins
      const pdf = (await page.pdf({ format })).toString('latin1');
      const count = (pdf.match(/\/Type\s*\/Page\b/g) || []).length;
      expect(count === pages, `${path} takes ${count} pages of ${format}`);
      await page.emulateMedia({ media: 'print' });
      await page.setViewportSize({ width, height: 1000 });
      const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      expect(over <= 0, `${path} is ${over} pixels wider than ${format}`);
      await page.emulateMedia({ media: null });
    }
  }
}

await withBrowser(async (browser) => {
  await open(browser, {}, parent);
  await open(browser, { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true }, phone);
  await open(browser, { javaScriptEnabled: false }, plain);
  await open(browser, { viewport: { width: 360, height: 740 }, colorScheme: 'dark' }, child);
  await open(browser, { colorScheme: 'dark' }, paper);
  await open(browser, {}, (page) => maker(page, page.context()));
});
