// What the demo's technician read and set (demo/burst-readings.json, demo/settings.json), by the words the screens ask with.

/** What was read of the demo's burst hose (demo/burst-readings.json), by part and by the name that the screen asks with. */
const READ = {
  Hose: {
    'Print on the cover': { print: '??N 853 2S? DN 1?' },
    'What carries the pressure': { pick: /^Wire braid/ },
    Layers: { pick: /^2\b/ },
    'Bore of the hose': { mm: '15.9' },
    'Ø over the cover': { mm: '25.2' },
    'Ø over the reinforcement': { mm: '23' },
    'Overall length': { mm: '1240' },
  },
  'End A': {
    'What kind of end': { pick: /^Loose nut/ },
    'What seals': { pick: /^Cone/ },
    'Thread Ø': { inch: ['1', '3', '/16'] },
    'Thread gauge': { gauge: /^14\b/ },
    'Flank angle': { pick: /^60°/ },
    'Seat angle': { pick: /^74°/ },
    'Shape of the seat': { pick: /^Hollow/ },
    'Hex of the nut': { mm: '25.4' },
    'How the end leaves the hose': { pick: /^Elbow 45/ },
  },
  'End B': {
    'What kind of end': { pick: /^Loose nut/ },
    'What seals': { pick: /^O-ring in face/ },
    'Thread Ø': { mm: '23.55' },
    'Thread gauge': { gauge: /^14\b/ },
    'Flank angle': { pick: /^60°/ },
    'Hex of the nut': { mm: '30' },
    'How the end leaves the hose': { pick: /^Elbow 90/ },
  },
  'Machine’s half of A': {
    'What kind of end': { pick: /^Male/ },
    'What seals': { pick: /^Cone/ },
    'Thread Ø': { mm: '22.1' },
    'Thread gauge': { gauge: /^14\b/ },
    'Seat angle': { pick: /^74°/ },
    'Shape of the seat': { pick: /^Raised/ },
  },
  'Machine’s half of B': {
    'What kind of end': { pick: /^Male/ },
    'What seals': { pick: /^O-ring in face/ },
    'Thread Ø': { mm: '25.3' },
    'Thread gauge': { gauge: /^14\b/ },
  },
};

/** What was read of a question; undefined for what is not in the readings and can not be told. */
export const readOf = ({ part, reading }) => READ[part][reading.replace(/, (out|in)side$/, '')];

/** More questions than this and Find does not come to an end. */
export const MOST = 60;

/** Every reading by the name that the screen asks with; a longer name stands before one that it begins with. */
const NAMES = [
  ...['Print on the cover', 'What carries the pressure', 'Layers', 'Bore of the hose', 'Bore of the male'],
  ...[
    'Ø over the cover',
    'Ø over the reinforcement',
    'Kind of cover',
    'Overall length',
    'What kind of end',
    'Which half',
  ],
  ...['What seals', 'Thread Ø, outside', 'Thread Ø, inside', 'Thread Ø', 'Thread gauge', 'Taper', 'Seat angle'],
  ...['Shape of the seat', 'Flank angle', 'Hex of the nut', 'Tube Ø', 'Second thread Ø', 'Threads between'],
  ...['How the end leaves the hose', 'Bolt spacing, long', 'Bolt spacing, short', 'Head Ø', 'Head thickness'],
];
export const QUESTION = new RegExp(`(Hose|End [AB]|Machine’s half of [AB])[\\n ](${NAMES.join('|')})`);

/** Service and shape of the new hose (demo/replacement.json), by the words that ask for them. */
export const REPLACEMENT = {
  working: { number: '185' },
  relief: { number: '204' },
  surge: { number: '205' },
  fluid: { pick: /^HM\b/ },
  'oil, coldest': { minus: '20' },
  'oil, hottest': { number: '88' },
  'air, hottest': { number: '45' },
  flow: { number: '60' },
  line: { pick: /^Cylinder/ },
  bend: { number: '230' },
  'A: drop': { number: '22' },
  'B: drop': { number: '38' },
  turn: { pick: /^90/ },
};

/** The demo's own settings of an end (demo/settings.json, demo/replacement.json), by the words that ask for them. */
export const SETTINGS = {
  'Insertion depth': { mm: '34' },
  Skive: { pick: 'none' },
  Ferrule: { text: 'demo ferrule 16' },
  Lubricant: { text: 'demo oil' },
  'Die set': { text: 'demo die 28' },
  'Crimp diameter': { mm: '28.5' },
  'Crimp tolerance': { mm: '0.1' },
  Source: { text: 'invented for the demo' },
};
export const CRIMP = '28.5';
/** What a new end of each is measured as, from its sealing point to its hose stop. */
export const CUTOFFS = { A: '41', B: '44' };
/** The finished hose. */
export const FINISHED = {
  'Measure the finished length': '1242',
  'Measure the turn': '90',
};

/** Whatever arrow of the bench stands at the thumb. */
export const ARROW =
  /^(Tick: |Measure (the cut-off of|on: |the finished length|the turn)|Enter: |Read (the crimp|on) at|Prove at|Write down|Make the tag)/;
