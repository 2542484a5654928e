// Looks at every page for what shuts people out: axe-core's rules of WCAG 2.2 AA, a
// page that is wider than a small window, small targets, and what of a page can't be
// reached by keyboard. And has a validator read the HTML.
import { readFileSync } from 'node:fs';
import { expect, open, require, site, withBrowser } from './site.mjs';

const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const { HtmlValidate } = require('html-validate');

const pages = ['/', '/lesson?problem=402-178', '/lesson?problem=3/4=5/8&step=2', '/lesson?problem=7x8&answer=hidden&theme=ink',
  '/lesson?problem=23+ducks', '/claim', '/claim?problem=3/4=5/8', '/claim?problem=3/4=5/8&think=same&look=2', '/pictures', '/tools'];

// These are no other pages in a small dark window than those they are like.
const alike = ['/lesson?problem=7x8&answer=hidden&theme=ink', '/claim', '/pictures'];

const validator = new HtmlValidate({
  extends: ['html-validate:recommended'],
  rules: {
    // The written style is ours: void elements are not closed, and long titles are the problem's.
    'void-style': ['error', { style: 'omit' }], 'long-title': 'off', 'doctype-style': 'off', 'no-trailing-whitespace': 'off',
    // MathML is checked where it is written.
    'element-permitted-content': 'error', 'no-unknown-elements': 'error',
  },
});

await withBrowser(async (browser) => {
  for (const path of pages) {
    const html = await (await fetch(site + path)).text();
    const report = await validator.validateString(html);
    for (const file of report.results) {
      for (const m of file.messages) expect(false, `${path}:${m.line}: ${m.ruleId}: ${m.message}`);
    }
  }
  for (const [width, colorScheme] of [[1280, 'light'], [320, 'dark']]) {
    await open(browser, { viewport: { width, height: 800 }, colorScheme, reducedMotion: 'reduce', bypassCSP: true }, async (page) => {
      for (const path of pages) {
        if (width === 320 && alike.includes(path)) continue;
        await page.goto(site + path, { waitUntil: 'domcontentloaded' });
        await page.evaluate(() => document.querySelectorAll('details').forEach((d) => { d.open = true; }));
        await page.evaluate(axe);
        const found = await page.evaluate(() => window.axe.run(document, { resultTypes: ['violations'], runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }));
        for (const v of found.violations) {
          expect(false, `${path} at ${width}, ${colorScheme}: ${v.id}: ${v.help}: ${v.nodes.slice(0, 3).map((n) => n.html.slice(0, 160)).join(' | ')}`);
        }
        for (const [size, name] of [['', ''], ['200%', ' with text twice as large']]) {
          if (size && width === 320) continue; // WCAG asks for one or the other
          const over = await page.evaluate((size) => {
            document.documentElement.style.fontSize = size;
            return document.documentElement.scrollWidth - document.documentElement.clientWidth;
          }, size);
          expect(over <= 0, `${path} at ${width}${name} is ${over} pixels too wide`);
        }
      }
    });
  }
});
