import { say } from '../../words/words';

/** What people call a device; of one without a name the beginning of its id, so that two of them are told apart. */
export const deviceName = (name: string | null, id: string): string =>
  name ?? say('van-device-unnamed', { id: id.slice(0, 8) });
