// How oil runs in a bore: the shape of its speed across it, and how its pressure stands when it is stopped.
import type { Regime } from '../backend/types';
import type { Point } from './geometry';

/** Speed at a share of the radius, as a share of the greatest: Poiseuille's parabola, or the one-seventh power law. */
export function speedAt(regime: Regime, share: number): number {
  const r = Math.min(1, Math.abs(share));
  return regime === 'laminar' ? 1 - r * r : (1 - r) ** (1 / 7);
}

/** The tips of the arrows of speed across a bore, from wall to wall. */
export function profile(regime: Regime | null, from: number, middle: number, radius: number, reach: number): Point[] {
  const steps = 24;
  return Array.from({ length: steps + 1 }, (_, index): Point => {
    const share = (index / steps) * 2 - 1;
    // How it runs is not known: all at one speed, drawn broken.
    const speed = regime === null ? (Math.abs(share) === 1 ? 0 : 1) : speedAt(regime, share);
    return [from + reach * speed, middle + share * radius];
  });
}

/** The pressure as a valve shuts: level, up while it shuts, and down as the wave comes and goes. */
export function trace(from: Point, width: number, rise: number): Point[] {
  const [x, y] = from;
  const at = (share: number, up: number): Point => [x + share * width, y - up * rise];
  const ringing = Array.from({ length: 41 }, (_, index): Point => {
    const t = index / 40;
    return at(0.42 + 0.58 * t, Math.exp(-2.6 * t) * Math.cos(t * 6 * Math.PI));
  });
  return [at(0, 0), at(0.3, 0), at(0.4, 1), ...ringing];
}
