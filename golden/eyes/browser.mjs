// What both scripts share: reading the request and starting the browser.
import { chromium } from 'playwright-core';

export async function request() {
  const chunks = [];
  for await (const chunk of process.stdin) chunks.push(chunk);
  return JSON.parse(Buffer.concat(chunks).toString('utf8'));
}

// Opens an empty page, has it worked on, and closes the browser whatever happens.
export async function withPage(executablePath, work) {
  const browser = await chromium.launch({
    executablePath,
    args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
      '--disable-background-networking', '--disable-component-update', '--disable-sync'],
  });
  try {
    const page = await browser.newPage({ viewport: { width: 1700, height: 1200 } });
    await page.setContent('<!DOCTYPE html><html lang="en"><body style="margin:0"></body></html>');
    return await work(page);
  } finally {
    await browser.close();
  }
}
