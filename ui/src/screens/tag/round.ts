// A label round a hose, sighted along the hose's axis.
import type { LabelDrawn, LabelStock } from '../../backend/types';

/** How much of the turn the label goes round the hose and how much of it is seen in one look, in degrees. */
export function spans(
  { width_mm, height_mm }: Pick<LabelStock, 'width_mm' | 'height_mm'>,
  { cover_od_mm, seen_mm, direction }: NonNullable<LabelDrawn['curve']>,
): { label: number; seen: number } {
  const degrees = (mm: number) => Math.min(360, (mm / (Math.PI * cover_od_mm)) * 360);
  return { label: degrees(direction === 'along' ? height_mm : width_mm), seen: degrees(seen_mm) };
}

/** An arc of so many degrees about the top of a circle, as a path; `rays` adds a line in from each of its ends. */
export function arc(x: number, y: number, radius: number, degrees: number, rays = false): string {
  // A whole turn would begin where it ends, and nothing would be drawn.
  const half = (Math.min(degrees, 359.9) / 360) * Math.PI;
  const at = (angle: number, r: number) =>
    `${(x + r * Math.sin(angle)).toFixed(2)} ${(y - r * Math.cos(angle)).toFixed(2)}`;
  const large = degrees > 180 ? 1 : 0;
  const along = `M${at(-half, radius)}A${radius} ${radius} 0 ${large} 1 ${at(half, radius)}`;
  return rays
    ? `${along}M${at(-half, radius)}L${at(-half, radius / 2)}M${at(half, radius)}L${at(half, radius / 2)}`
    : along;
}
