// What the scripts share: the browser, and saying what does not hold.
import { createRequire } from 'node:module';

// The libraries are installed for golden/eyes.
export const require = createRequire(new URL('../../golden/eyes/package.json', import.meta.url));
const { chromium } = require('playwright-core');

const [, , executablePath, ...addresses] = process.argv;
export const [site, elsewhere] = addresses;

const troubles = [];

// Notes what does not hold.
export function expect(holds, what) {
  if (!holds) troubles.push(what);
}

// Starts the browser, has it worked with, and prints the troubles as JSON.
export async function withBrowser(work) {
  const browser = await chromium.launch({
    executablePath,
    args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
      '--disable-background-networking', '--disable-component-update', '--disable-sync', '--force-color-profile=srgb'],
  });
  try {
    await work(browser);
  } catch (error) {
    troubles.push(String(error.stack || error));
  } finally {
    await browser.close();
  }
  process.stdout.write(JSON.stringify(troubles) + '\n');
}

// Opens a page in a window of its own. What the page asks of any other place, and
// what it logs as an error, is noted.
export async function open(browser, options, work) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  page.on('request', (request) => {
    if (!request.url().startsWith(site) && !(elsewhere && request.url().startsWith(elsewhere)) && !request.url().startsWith('data:')) {
      expect(false, `${page.url()} asks for ${request.url()}`);
    }
  });
  page.on('pageerror', (error) => expect(false, `${page.url()}: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error' && !message.text().startsWith('Failed to load resource')) expect(false, `${page.url()}: ${message.text()}`);
  });
  try {
    await work(page);
    if (options.javaScriptEnabled === false) return;
    const kept = await page.evaluate(() => [document.cookie, localStorage.length, sessionStorage.length].join());
    expect(kept === ',0,0', `${page.url()} keeps something: ${kept}`);
  } finally {
    await context.close();
  }
}
