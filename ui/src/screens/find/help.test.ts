import { cleanup, render, screen } from '@testing-library/svelte';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import App from '../../App.svelte';
import { fake } from '../../backend/fake';
import type { Found } from '../../backend/types';
import { emptyJob, type JobDoc } from '../../state/job-doc';
import { languages } from '../../words/language.svelte';
import { speak } from '../../words/words';
import { flangeKeys, hoseKeys, threadKeys, type Key } from './keys';
import { howOf, keyName, keyTask, toolOf } from './say';

const keys: readonly Key[] = [...hoseKeys, ...threadKeys, ...flangeKeys];
const found: Found = {
  hose: [],
  ends: [],
  unknown: { hose: 0 },
  settled: { hose: false, A: false, B: false },
  enough: { hose: false, A: false, B: false },
  odd_ends: false,
  contradictions: [],
  next: [],
};

/** The screen that asks for one reading. */
function asked(key: Key): void {
  const part = (hoseKeys as readonly Key[]).includes(key) ? 'hose' : 'A';
  const job: JobDoc = { ...emptyJob(), finding: { ...emptyJob().finding, part, asked: key } };
  const content = JSON.parse(JSON.stringify(job)) as never;
  const backend = fake({
    'job.list': () => ({ jobs: [{ job: 'j', version: 'v', kept: '', content }] }),
    'job.keep': () => ({ job: 'j' }),
    find: () => found,
  });
  render(App, { backend });
}

beforeEach(() => void Object.assign(Element.prototype, { scrollIntoView: () => {} }));
afterEach(async () => {
  cleanup();
  await speak('en');
});

describe.each(languages)('in %s', (language) => {
  it('every reading has its name, its task and, whichever half it is of, how it is taken', async () => {
    await speak(language);
    const lacks = keys.flatMap((key) =>
      ['', 'male', 'female'].flatMap((gender) => [
        ...(keyName(key, gender) === key ? [`${key}: no name`] : []),
        ...(keyTask(key) === keyName(key) ? [`${key}: no task`] : []),
        ...(/[.!?]$/.test(howOf(key, gender)) ? [] : [`${key} ${gender}: not how it is taken`]),
        ...(toolOf(key, gender) || key === 'print' ? [] : [`${key} ${gender}: not where the tool goes`]),
      ]),
    );
    expect(lacks).toEqual([]);
  });
});

it.each(keys)('%s: how it is taken stands on the screen that asks for it', async (key) => {
  asked(key);
  expect(await screen.findByText(howOf(key))).toBeTruthy();
  if (key !== 'print') expect(document.querySelector('main .part svg')).toBeTruthy();
});
