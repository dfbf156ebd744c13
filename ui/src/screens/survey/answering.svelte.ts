import type { Graded } from '../../backend/types';
import { nothingRead, type Found, type InPlace } from './walk';

/** What a person answers of one place, until it is kept. */
export class Answering {
  found: Found | null = $state(null);
  findings: readonly Graded[] | null = $state.raw(null);
  read: InPlace = $state(nothingRead());
  words = $state('');
}
