import type { CareRule, DueLine } from '../backend/types';

/** The guide of service life. */
export const guide: CareRule = {
  whose: 'guide',
  scope: null,
  of: {},
  id: 'L055',
  source: 'DIN 20066',
  basis: 'published',
  stop: false,
  why: '',
};

/** A hose whose service life ends by its guide; what a test is about is given. */
export const dueRow = (over: Partial<DueLine>): DueLine => ({
  code: 'AAAAA-AAAAA-0',
  at: null,
  what: 'service',
  hose: null,
  since: null,
  counted_from: 'assembled',
  years: 6,
  rule: guide,
  due: null,
  by: 'calendar',
  stop_from: null,
  verdict: 'caution',
  calendar: null,
  hours: null,
  guide_day: null,
  finding: null,
  seen: null,
  asked: null,
  risk: null,
  ...over,
});
