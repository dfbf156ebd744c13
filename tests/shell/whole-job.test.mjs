// The main job in the real window, on the program's own keypad, with the program killed on the way.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { device, files, until } from './driver.mjs';
import { asked, check, find, fit, keep, make, makeKilled, typeNumber } from './technician.mjs';

const demo = (name) => readFileSync(new URL(`../../demo/${name}`, import.meta.url), 'utf8');
const fleet = demo('fleet.csv');

test('a burst hose is found, made, tagged, fitted and found by its label, though the program is killed three times', async (t) => {
  const own = device(t);
  let program = await own.open();
  const restart = async () => {
    await program.kill();
    program = await own.open();
  };
  const jobs = async () => (await program.call('job.list')).jobs;
  await program.send('call', { name: 'register.import', input: { name: 'fleet.csv', dry_run: false } }, fleet);
  await program.click('button', 'Measure');

  const threadOfB = ({ part, reading }) => part === 'End B' && reading.startsWith('Thread Ø');
  const halfRead = await find(program, threadOfB);
  assert.ok(halfRead, 'the thread of end B is asked');
  await typeNumber(program, '23.5', 'mm');
  const half = await until('half a number is kept', async () => {
    const [{ job, content }] = await jobs();
    return (
      JSON.stringify(content.typing ?? null).includes('23.5') && {
        job,
        content,
      }
    );
  });
  await restart();
  assert.deepEqual(await asked(program), halfRead);
  await typeNumber(program, '5');
  await program.find('button', /^Keep 23.55 mm/);
  await keep(program, halfRead);
  await find(program);

  const spec = await until('the spec is kept', async () => {
    const [{ job, content }] = await jobs();
    return content.step === 'check' && { job, content };
  });
  assert.equal(spec.job, half.job, 'it is still the same job');
  const { hose, ends } = spec.content.spec;
  assert.deepEqual([hose.standard, hose.type, hose.dn], ['EN 853', '2SN', 16]);
  assert.deepEqual(
    ends.map(({ role, family, size, form }) => [role, family, size, form]),
    [
      ['A', 'JIC 37 flare', '-10', 'elbow45'],
      ['B', 'ORFS', '-10', 'elbow90'],
    ],
  );
  await restart();
  await program.text('May it be made?');
  assert.deepEqual((await jobs())[0].content.spec, spec.content.spec);

  await check(program);
  await make(program);
  await program.click('button', 'Save the label and keep the hose');
  const code = await until('the hose is kept', async () => {
    const [{ content }] = await jobs();
    return content.step === 'fit' && content.code;
  });
  const labels = files(join(own.downloads, 'hosewright'));
  assert.equal(labels.length, 1, labels.join(', '));
  assert.match(labels[0], /\.png$/);
  await fit(program, {
    machine: /^Excavator 3/,
    place: /^14 Stick/,
    hours: '6813',
    cause: /^abrasion/,
  });
  await until('the job is done', async () => (await jobs()).length === 0);

  await restart();
  await program.click('button', 'Scan or type the tag');
  await program.type('', join(own.downloads, 'hosewright', labels[0]), 'file');
  await program.text(code);
  await until('the hose is open', () => program.run(() => !document.body.innerText.includes('Scan a tag')));
  const { status, stays } = await program.call('register.show', { code });
  assert.equal(status.state, 'fitted');
  assert.equal(stays[0].at.place_name, 'Stick cylinder, rod side');
});

test('a hose is built from the first part to its tag, though the program is killed before every step', async (t) => {
  const own = device(t);
  let program = await own.open();
  const { spec, service } = JSON.parse(demo('replacement.json'));
  const ends = spec.ends.map(({ cutoff_mm: _, ...end }) => end);
  const content = {
    step: 'make',
    spec: { ...spec, ends },
    service: { duties: [], ...service },
  };
  await program.call('job.keep', { job: null, content });
  await program.kill();
  program = await own.open();
  const built = await makeKilled(program, async () => {
    await program.text('Kept');
    await program.kill();
    program = await own.open();
    return program;
  });
  assert.ok(built.killed > 25, `killed ${built.killed} times`);
  await built.program.text('Save the label and keep the hose');
  const [job] = (await built.program.call('job.list')).jobs;
  assert.deepEqual([job.content.crimps.A.length, job.content.crimps.B.length], [12, 12]);
  assert.deepEqual(job.content.finished, {
    cut_mm: 1155,
    length_mm: 1242,
    turn_deg: 90,
  });
  assert.deepEqual(
    job.content.spec.ends.map((end) => end.cutoff_mm),
    [41, 44],
  );
});
