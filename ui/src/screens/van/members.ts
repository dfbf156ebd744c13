// The devices of a fleet in words.
import type { Device, MemberStanding, Shared } from '../../backend/types';
import { say } from '../../words/words';

/** What people call it; the start of its id where it has no name. */
export const deviceName = (device: Device): string => device.name ?? device.device.slice(0, 8);

/** How a device stands in its fleet. */
export const standingWords = (standing: MemberStanding): string => say(`members-standing-${standing}`);

/** How many of a device's records do not count. */
export function leftOutOf({ left_out }: Shared, device: string): number {
  return left_out.filter((one) => one.device === device).reduce((sum, one) => sum + one.count, 0);
}
