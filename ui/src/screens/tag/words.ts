// A stock of labels, and how a label lies, in words.
import type { LabelDrawn, LabelForm, LabelMaterial, LabelStock } from '../../backend/types';
import { length, number } from '../../words/number';
import type { WordId } from '../../words/ids';
import { say } from '../../words/words';

export const FORMS = {
  flag: 'label-form-flag',
  wrap: 'label-form-wrap',
  plate: 'label-form-plate',
} as const satisfies Record<LabelForm, WordId>;

export const MATERIALS = {
  polyester: 'label-material-polyester',
  polypropylene: 'label-material-polypropylene',
  vinyl: 'label-material-vinyl',
  paper: 'label-material-paper',
  metal: 'label-material-metal',
  other: 'label-material-other',
} as const satisfies Record<LabelMaterial, WordId>;

/** `60 × 40 mm, flag` */
export function stockWords({ width_mm, height_mm, form }: LabelStock): string {
  return say('label-stock', {
    width: number(width_mm, 1),
    height: length(height_mm, 1),
    form: say(FORMS[form]),
  });
}

/** What a camera sees of a label that goes round its hose. */
export function curveWords(curve: NonNullable<LabelDrawn['curve']>, codeMm: number): string {
  return say('tag-curve', {
    od: length(curve.cover_od_mm, 1),
    from: curve.od_from,
    seen: length(curve.seen_mm, 1),
    code: length(codeMm, 1),
    direction: curve.direction,
  });
}
