import type { Due } from '../backend/types';

/** A hose whose service life ends by its guide; what a test is about is given. */
export const dueRow = (over: Partial<Due>): Due => ({
  code: 'AAAAA-AAAAA-0',
  at: null,
  what: 'service',
  hose: null,
  since: null,
  counted_from: 'assembled',
  years: 6,
  limit: 'guide',
  due: null,
  verdict: 'caution',
  by: 'calendar',
  rule: {
    whose: 'guide',
    scope: null,
    of: null,
    source: 'DIN 20066',
    basis: 'published',
    stop: false,
    why: '',
  },
  calendar: null,
  hours: null,
  guide_day: null,
  finding: null,
  risk: null,
  ...over,
});
