// What the scripts share: reading the request and starting the browser.
import { createInterface } from 'node:readline';
import { chromium } from 'playwright-core';

// The lines of standard input, each a JSON value. They are read as they are
// needed, so that whoever writes them can go on making more.
export async function* values() {
  for await (const line of createInterface({ input: process.stdin })) yield JSON.parse(line);
}

// Opens an empty page, has it worked on, and closes the browser whatever happens.
export async function withPage(executablePath, work) {
  const browser = await chromium.launch({
    executablePath,
    args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
      '--disable-background-networking', '--disable-component-update', '--disable-sync',
      '--force-color-profile=srgb', '--hide-scrollbars'],
  });
  try {
    const page = await browser.newPage({ viewport: { width: 1700, height: 1200 } });
    await page.setContent('<!DOCTYPE html><html lang="en"><body style="margin:0"></body></html>');
    return await work(page);
  } finally {
    await browser.close();
  }
}
