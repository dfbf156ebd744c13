import { describe, expect, it } from 'vitest';
import type { Assembly, Checked, Circuit, Finding, Place, Verdict } from '../../backend/types';
import { farOut } from './service';
import { askedOf, contradictions, sitsUnder } from './sits';
import type { Ground } from './start-job';

type Asked = Partial<Pick<Finding, 'rule' | 'asked_by' | 'open'>>;
const finding = (verdict: Verdict, code: string, asked: Asked = {}): Finding =>
  ({
    rule: code,
    case: code,
    asked_by: 'line',
    open: false,
    verdict,
    why: `why ${code}`,
    names: {},
    ...asked,
  }) as unknown as Finding;
const checked = (...findings: Finding[]) => ({ findings }) as unknown as Checked;
const spec = { hose: { standard: 'EN 853', type: '2SN', dn: 16 }, ends: [] };
const ground = (over: Partial<Ground> = {}): Ground => ({
  at: null,
  replaces: 'AAAAA-AAAAA-0',
  place: { service: { duties: [] } } as unknown as Place,
  circuit: null,
  assembly: { spec, service: { relief_bar: 204, duties: [] } } as unknown as Assembly,
  again: null,
  ...over,
});

describe('what the check says of a hose that sits', () => {
  it('is what is asked too much of it, and nothing of what making one would need', () => {
    const over = finding('stop', 'pressure-above-rating');
    const ofMaking = finding('caution', 'cutoff-missing', { asked_by: 'making', open: true });
    const sits = sitsUnder(checked(finding('caution', 'adapters-stacked', { asked_by: 'making' }), over, ofMaking));
    expect(sits).toEqual({ sign: 'stop', over: [over], open: [], why: 'why pressure-above-rating' });
  });

  it('is never a pass while something is not known: it is named', () => {
    const sits = sitsUnder(
      checked(finding('pass', 'pressure-ok'), finding('caution', 'surge-missing', { open: true })),
    );
    expect([sits.sign, sits.why, sits.open.length]).toEqual(['caution', null, 1]);
  });

  it('is not asked too much by an estimate: that is named as not known', () => {
    const sits = sitsUnder(checked(finding('caution', 'surge-estimated-above', { open: true })));
    expect([sits.sign, sits.over, sits.open.length]).toEqual(['caution', [], 1]);
  });

  it('is not settled where a stop is for want of knowing', () => {
    expect(sitsUnder(checked(finding('stop', 'hose-missing', { asked_by: 'making', open: true }))).sign).toBe(
      'unsettled',
    );
    expect(sitsUnder(checked(finding('stop', 'pressure-unknown', { open: true }))).sign).toBe('unsettled');
  });

  it('of an empty place tells only what can not both be right', () => {
    const two = finding('stop', 'relief-below-working', { rule: 'pressure-contradiction' });
    expect(contradictions(checked(finding('stop', 'hose-missing'), two))).toEqual([two]);
  });
});

describe('what is asked of the hose that sits', () => {
  it('is its own record with what the place asks now', () => {
    const place = { service: { relief_bar: 300, duties: [] } } as unknown as Place;
    expect(askedOf(ground({ place }))).toMatchObject({ spec, service: { relief_bar: 300 } });
  });

  it('takes a relief that was raised for the whole circuit over the one it was once checked for', () => {
    const circuit = { relief_bar: 300 } as unknown as Circuit;
    expect(askedOf(ground({ circuit })).service.relief_bar).toBe(300);
  });

  it('is what belongs there where nothing sits', () => {
    const place = { spec: { ends: [] }, service: { duties: [] } } as unknown as Place;
    expect(askedOf(ground({ place, replaces: null })).spec).toEqual({ ends: [] });
  });
});

it('a pressure far out of hydraulics is told from one that is high', () => {
  expect(farOut('working_pressure_bar', 180150)).toBe(true);
  expect(farOut('relief_bar', 700)).toBe(false);
  expect(farOut('flow_l_min', 900)).toBe(false);
});
