// What the numbers of the routing are called and how they are written.
import type { Routing } from '../../state/job-doc';
import { angle, inches, number, withUnit } from '../../words/number';
import { say } from '../../words/words';
import type { Units } from '../check/fields';
import { taped, type LengthUnit } from '../make/lengths';
import { aboutRoute, routeNumber, standFieldOf, type RouteField } from './ports';

/** `Open: across`; while nobody said that a port moves, plainly of B. */
export function routeLabel(field: RouteField, moves: boolean): string {
  const label = say(aboutRoute(field).label);
  const [of] = field.split('.');
  if (standFieldOf(field))
    return say(!moves ? 'routing-of-b' : of === 'open' ? 'routing-of-open' : 'routing-of-closed', { label });
  return of === 'A' || of === 'B' ? say('check-of-end', { end: of, label }) : label;
}

/** The number with the way it goes; null is not known. */
export function routeWritten(routing: Routing, field: RouteField, units: Units): string | null {
  const value = routeNumber(routing, field);
  if (value === null) return null;
  const { ways, quantity } = aboutRoute(field);
  const size = Math.abs(value);
  const text = quantity === 'length' ? taped(size, units.length === 'in' ? 'inch' : 'mm') : angle(size, 1);
  // As it is drawn, across goes to the right: the other way is said.
  const plain = !ways || value === 0 || (value > 0 && standFieldOf(field) === 'gap_mm');
  return plain ? text : say('routing-way', { value: text, way: say(ways[value < 0 ? 1 : 0]) });
}

/** A radius in whole mm, or to a 64th; never more than it is. */
export function radiusFigure(mm: number, unit: LengthUnit): string {
  return unit === 'inch' ? inches(Math.floor(mm)) : number(Math.floor(mm), 0);
}

export const radiusWritten = (mm: number, unit: LengthUnit): string =>
  withUnit(radiusFigure(mm, unit), unit === 'inch' ? 'in' : 'mm');
