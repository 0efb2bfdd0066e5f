// Opens the built page, served with the real policy and the stand-in's data, in Chromium: pictures, axe, console,
// sideways scrolling, how long a change takes to show. Ends with 1 when something is wrong.
import { existsSync, mkdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { preview } from 'vite';

const ui = fileURLToPath(new URL('..', import.meta.url));
const pictures = `${ui}target/look`;
mkdirSync(pictures, { recursive: true });
const wrong = [];

const server = process.argv[2] ? null : await preview({ root: ui, preview: { port: 4519, host: '127.0.0.1' } });
const address = process.argv[2] ?? 'http://127.0.0.1:4519/';
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find(existsSync),
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
    '--disable-component-update', '--disable-sync'],
});

const SCREENS = [
  { name: 'wide', width: 1280, height: 900, colorScheme: 'light' },
  { name: 'wide-dark', width: 1280, height: 900, colorScheme: 'dark' },
  { name: 'tablet', width: 820, height: 1100, colorScheme: 'light' },
  { name: 'phone', width: 390, height: 844, colorScheme: 'light' },
  { name: 'small-phone', width: 360, height: 740, colorScheme: 'dark' },
];

for (const { name, width, height, colorScheme } of SCREENS) {
  const context = await browser.newContext({ viewport: { width, height }, colorScheme, bypassCSP: false });
  const page = await context.newPage();
  page.on('console', (line) => line.type() === 'error' && wrong.push(`${name}: console: ${line.text()}`));
  page.on('pageerror', (error) => wrong.push(`${name}: ${error.message}`));
  await page.goto(address);
  await page.waitForSelector('.verdict');
  await page.screenshot({ path: `${pictures}/${name}.png` });
  await page.evaluate(() => document.querySelectorAll('details').forEach((one) => one.setAttribute('open', '')));
  await page.waitForTimeout(200);
  await page.screenshot({ path: `${pictures}/${name}-whole.png`, fullPage: true });
  await axe(page, name);
  const overhang = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  if (overhang > 0) {
    wrong.push(`${name}: ${overhang} px of sideways scrolling`);
  }
  await smallTargets(page, name);
  await context.close();
}
await useIt();
await browser.close();
await server?.close();
for (const line of wrong) {
  console.log(line);
}
console.log(wrong.length === 0 ? 'Nothing wrong.' : `${wrong.length} things wrong.`);
process.exit(wrong.length === 0 ? 0 : 1);

async function axe(page, name) {
  // Evaluated through the debugger, which the policy does not stop.
  await page.evaluate((await import('node:fs')).readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8'));
  const result = await page.evaluate(() => window.axe.run());
  for (const found of result.violations) {
    wrong.push(`${name}: axe ${found.impact} ${found.id}: ${found.nodes.map((node) => node.target).slice(0, 4).join(' | ')}`);
  }
}

async function smallTargets(page, name) {
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('button, select, summary, input:not([type=checkbox])')]
      .map((one) => ({ text: (one.getAttribute('aria-label') ?? one.textContent ?? one.id).trim().slice(0, 40), h: one.getBoundingClientRect().height }))
      .filter(({ h }) => h > 0 && h < 43.5),
  );
  if (small.length > 0) {
    wrong.push(`${name}: small targets: ${small.map((one) => `${one.text} ${Math.round(one.h)}`).join(', ')}`);
  }
}

/** Runs in the page: clicks the first stepper that can go up and waits until its value is on screen. */
async function step() {
  const button = [...document.querySelectorAll('.stepper button:last-of-type')].find((one) => one.ariaDisabled !== 'true');
  button.focus();
  const start = performance.now();
  button.click();
  await new Promise((done) => {
    setTimeout(done, 2000);
    new MutationObserver(done).observe(button.parentElement.querySelector('output'), { characterData: true, subtree: true, childList: true });
  });
  await new Promise((done) => requestAnimationFrame(done));
  return { ms: performance.now() - start, kept: document.activeElement === button };
}

async function useIt() {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  await page.goto(address);
  await page.waitForSelector('.stepper button');
  const before = await page.textContent('.card-value');
  const steps = [];
  for (let i = 0; i < 5; i++) {
    steps.push(await page.evaluate(step));
  }
  const took = { ms: Math.min(...steps.map(({ ms }) => ms)), kept: steps.every(({ kept }) => kept) };
  console.log(`The quickest of five steps took ${Math.round(took.ms)} ms to show; first card ${before} -> ${await page.textContent('.card-value')}`);
  if (took.ms > 100 || !took.kept) {
    wrong.push(`use: ${Math.round(took.ms)} ms, focus ${took.kept ? 'kept' : 'lost'}`);
  }
  await page.click('.card .quiet');
  await page.waitForSelector('dialog[open]');
  await page.screenshot({ path: `${pictures}/working.png` });
  await axe(page, 'working');
  await page.keyboard.press('Escape');
}
