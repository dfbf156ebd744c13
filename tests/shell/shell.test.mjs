// The program as a person has it: its own window, its own data, ended without warning.

import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { test } from 'node:test';
import { device, files, until } from './driver.mjs';

test('it opens at the size of a phone and its screens reach the use cases', async (t) => {
  const program = await device(t).open();
  const size = await program.run(() => [innerWidth, innerHeight]);
  assert.deepEqual(size, [390, 844]);
  await program.find('button', 'Scan or type the tag');
  await program.find('button', 'Measure');

  const tables = await program.call('tables');
  assert.ok(tables.ends.length > 300, `${tables.ends.length} ends`);
  const refused = await program.call('flow', { flow_l_min: -3, bore_mm: 12 }).catch((error) => error);
  assert.deepEqual([refused.code, refused.field], ['input', 'flow_l_min']);
});

test('bytes go in and come out as bytes', async (t) => {
  const program = await device(t).open();
  const history = 'time,failed\n100,1\n200,1\n300,1\n400,0\n';
  const life = await program.send('call', { name: 'life', input: {} }, history);
  assert.equal(life.failures, 3, JSON.stringify(life).slice(0, 300));
  const bundle = await program.call('register.bundle');
  assert.ok(bundle.bytes > 50, JSON.stringify(bundle));
  assert.match(bundle.name, /\S/);
});

test('what was answered is there after the program was killed', async (t) => {
  const own = device(t);
  const first = await own.open();
  const { person } = await first.call('people.add', { name: 'A. Fitter' });
  await first.kill();

  const second = await own.open();
  assert.notEqual(second.pid, first.pid);
  const { people } = await second.call('people.list');
  assert.deepEqual(
    people.map(({ id, name }) => [id, name]),
    [[person, 'A. Fitter']],
  );
  assert.deepEqual((await second.call('register.verify')).faults, []);
});

test('a job that was begun on the screens is there after the program was killed', async (t) => {
  const own = device(t);
  const first = await own.open();
  await first.click('button', 'Measure');
  const kept = await until('the job is kept', async () => (await first.call('job.list')).jobs[0]);
  await first.kill();

  const second = await own.open();
  await second.text('What was it?');
  assert.equal((await second.call('job.list')).jobs[0].job, kept.job);
});

test('a file is left among the downloads, beside one of its name and never outside', async (t) => {
  const own = device(t);
  const program = await own.open();
  const folder = join(own.downloads, 'hosewright');
  assert.equal(await program.send('save', { name: 'list.csv' }, 'one'), join(folder, 'list.csv'));
  assert.equal(await program.send('save', { name: 'list.csv' }, 'two'), join(folder, 'list 2.csv'));
  for (const name of ['../list.csv', '/tmp/list.csv', '']) {
    const refused = await program.send('save', { name }, 'three').catch((error) => error);
    assert.deepEqual([refused.code, refused.field], ['input', 'name'], name);
  }
  assert.deepEqual(files(folder), ['list 2.csv', 'list.csv']);
  assert.deepEqual(files(own.downloads), ['hosewright']);
});

test('a register that can not be opened is said, and the screens come up', async (t) => {
  const own = device(t);
  writeFileSync(own.register, 'some other file');
  const program = await own.open();
  await program.find('button', 'Measure');
  const refused = await program.call('register.overview').catch((error) => error);
  assert.equal(refused.code, 'file');
  assert.match(refused.message, /is not a register/);
});

test('the screens run no text as program and reach nothing outside', async (t) => {
  let asked = 0;
  const server = createServer((_, answer) => answer.end(String(++asked)));
  await new Promise((listening) => server.listen(0, '127.0.0.1', listening));
  t.after(() => server.close());
  const outside = `http://127.0.0.1:${server.address().port}/`;

  const program = await device(t).open();
  const reached = await program.later(
    (url) =>
      fetch(url, { mode: 'no-cors' }).then(
        () => 'reached',
        () => 'refused',
      ),
    outside,
  );
  assert.equal(reached, 'refused');
  const ran = await program.later(async () => {
    const script = document.createElement('script');
    script.textContent = 'window.ranInline = true';
    document.head.append(script);
    return window.ranInline === true;
  });
  assert.equal(ran, false, 'an inline script does not run');
  const global = await program.run(() => '__TAURI__' in window);
  assert.equal(global, false, 'nothing of the shell is handed out');
  await program.run((url) => void (location.href = url), outside);
  await new Promise((passed) => setTimeout(passed, 1000));
  await program.find('button', 'Measure');
  assert.equal(asked, 0, 'the window stays on its own screens');
});

test('a link to a tag opens its hose, and one with a wrong code says so', async (t) => {
  const own = device(t);
  const first = await own.open();
  const fleet = readFileSync(new URL('../../demo/fleet.csv', import.meta.url), 'utf8');
  await first.send('call', { name: 'register.import', input: { name: 'fleet.csv', dry_run: false } }, fleet);
  const { hits } = await first.call('register.search', { words: 'stick rod' });
  const { code } = hits.find((hit) => hit.what === 'hose');
  await first.kill();

  const second = await own.open(`hosewright:${code}`);
  await second.text('EN 853 2SN DN16');
  await second.text(code);
  await second.kill();

  const other = code.slice(0, -1) + (code.endsWith('0') ? '1' : '0');
  const third = await own.open(`hosewright:${other}`);
  await third.text('does not check');
});
