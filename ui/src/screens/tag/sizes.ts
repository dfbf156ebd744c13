import type { Settings } from '../../backend/types';
import type { Size } from './tagging.svelte';

/** Sizes that label stock is sold in (common practice), offered beside the device's own. */
const COMMON: readonly [width: number, height: number][] = [
  [60, 40],
  [50, 25],
  [100, 50],
];

/** The device's own size first, then others, each once. */
export function sizesFor(
  device: Pick<Settings, 'label_width_mm' | 'label_height_mm' | 'label_dpi'>,
): [Size, ...Size[]] {
  const of = (width_mm: number, height_mm: number): Size => ({ width_mm, height_mm, dpi: device.label_dpi });
  const others = COMMON.filter(
    ([width, height]) => width !== device.label_width_mm || height !== device.label_height_mm,
  );
  return [of(device.label_width_mm, device.label_height_mm), ...others.map(([width, height]) => of(width, height))];
}
