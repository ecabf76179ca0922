// A browser library loads each file and plays it: in the middle of every stage exactly those things
// must be seen which the model says stand at its end, and they must be where the model has them.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import test, { after, before } from 'node:test';
import { chromium } from 'playwright-core';
import { folder, shared } from './share_file.mjs';

const here = new URL('.', import.meta.url).pathname;
const types = { '.html': 'text/html', '.js': 'text/javascript', '.glb': 'model/gltf-binary' };
const roots = { three: join(here, 'node_modules/three'), glb: folder };
let server, browser, page;

function serve(request, response) {
  const path = decodeURIComponent(new URL(request.url, 'http://localhost').pathname);
  const [, top, ...rest] = path.split('/');
  const file = path === '/' ? join(here, 'page.html') : join(roots[top] ?? '', ...rest);
  try {
    const body = readFileSync(file);
    response.writeHead(200, { 'content-type': types[extname(file)] ?? 'text/plain' }).end(body);
  } catch {
    response.writeHead(404).end();
  }
}

before(async () => {
  server = createServer(serve);
  await new Promise((done) => server.listen(0, '127.0.0.1', done));
  browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
  });
  page = await browser.newPage();
  page.on('pageerror', (error) => console.error(String(error)));
  await page.goto(`http://127.0.0.1:${server.address().port}/`);
  await page.waitForFunction('window.ready === true');
});

after(async () => {
  if (process.env.STRINGCOURSE_PICTURE) await page?.screenshot({ path: process.env.STRINGCOURSE_PICTURE, fullPage: true });
  await browser?.close();
  server?.close();
});

// glTF's x east, y up, z south, back to the model's axes and origin.
function toModel([x, y, z], extras) {
  return [x + extras.originEast, -z + extras.originNorth, y + extras.originLevel];
}

function assertSame(seen, expected, extras, moment) {
  assert.deepEqual([...seen.ids].sort(), [...expected.standing].sort(), moment);
  const a = toModel(seen.low, extras);
  const b = toModel(seen.high, extras);
  for (let axis = 0; axis < 3; ++axis) {
    // North and south change places with the sign.
    const low = Math.min(a[axis], b[axis]);
    const high = Math.max(a[axis], b[axis]);
    assert.ok(Math.abs(low - expected.low[axis]) < 0.001, `${moment}: low end of axis ${axis}`);
    assert.ok(Math.abs(high - expected.high[axis]) < 0.001, `${moment}: high end of axis ${axis}`);
  }
}

for (const { name, document, expected } of shared) {
  test(`${name}: plays in a browser as the model says`, { timeout: 120000 }, async () => {
    const glb = `/glb/${name.replace('.toml', '.glb')}`;
    const result = await page.evaluate((url) => window.play(url), glb);
    const extras = document.asset.extras;
    assert.equal(result.animations, 1);
    assert.equal(result.moments.length, expected.length);
    assertSame(result.atRest, expected.at(-1), extras, 'at rest');
    result.moments.forEach((moment, i) => {
      assertSame(moment, expected[i], extras, expected[i].name ?? 'before work starts');
      assert.ok(moment.drawn > 960 * 540 * 0.01, `moment ${i} draws something`);
    });
    assert.equal(result.restUnlikeEnd, 0);
    assert.ok(result.startUnlikeEnd > 960 * 540 * 0.01, `${result.startUnlikeEnd} pixels changed`);
  });
}
