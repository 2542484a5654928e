// Measures how soon a lesson's first picture is there on a slow phone, as a multiple of
// how soon a blank page from the same service is. It prints numbers and judges none:
// a clock is no test.
//
//	modeler serve &
//	node api/browser/speed.mjs /usr/bin/chromium http://127.0.0.1:8080
//
// The phone: 1.6 Mbit/s down, 150 ms there and back, a processor four times as slow.
import { require, site } from './site.mjs';

const { chromium } = require('playwright-core');
const [, , executablePath] = process.argv;
const turns = 5;
const pages = ['/', '/lesson?problem=402-178', '/lesson?problem=3/4=6/8&step=2', '/claim?problem=3/4=6/8&think=same&look=1', '/pictures'];

const browser = await chromium.launch({ executablePath, args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic'] });

// One load in a window of its own, with nothing kept. Milliseconds until the first
// picture in sight is drawn, or until the page is, where it has none; and the bytes.
async function load(path) {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, isMobile: true, hasTouch: true });
  const page = await context.newPage();
  const phone = await context.newCDPSession(page);
  await phone.send('Network.enable');
  await phone.send('Network.emulateNetworkConditions', { offline: false, latency: 150, downloadThroughput: 200_000, uploadThroughput: 90_000 });
  await phone.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  let bytes = 0;
  phone.on('Network.loadingFinished', (e) => { bytes += e.encodedDataLength; });
  await page.goto(site + path, { waitUntil: 'load' });
  const ready = await page.evaluate(() => {
    const image = Array.from(document.images).find((i) => i.getClientRects().length && i.complete && i.naturalWidth);
    const entry = image && performance.getEntriesByName(image.currentSrc).at(-1);
    return { picture: entry ? entry.responseEnd : 0, began: entry ? entry.requestStart : 0,
      html: performance.getEntriesByType('navigation')[0].responseEnd };
  });
  await context.close();
  return { ...ready, bytes };
}

const middle = (list) => list.sort((a, b) => a - b)[list.length >> 1];
const blank = [];
for (let i = 0; i < turns; i++) blank.push((await load('/healthz')).html);
const unit = middle(blank);
process.stdout.write(`a blank page: ${Math.round(unit)} ms\n`);
for (const path of pages) {
  const loads = [];
  for (let i = 0; i < turns; i++) loads.push(await load(path));
  const html = middle(loads.map((l) => l.html)), picture = middle(loads.map((l) => l.picture));
  process.stdout.write(`${path}: page ${(html / unit).toFixed(1)}, first picture ${picture ? (picture / unit).toFixed(1) : 'none in sight'} times a blank page; ${Math.round(middle(loads.map((l) => l.bytes)) / 1000)} kB\n`);
}
await browser.close();
