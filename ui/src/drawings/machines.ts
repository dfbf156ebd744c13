// Machines as plain line drawings, so that a numbered place can point at the right part of one. Own shapes,
// nobody's product. Each is drawn in a field of 340 by 150 with the ground at 144.

export type MachineKind =
  | 'excavator'
  | 'loader'
  | 'forwarder'
  | 'crane'
  | 'press'
  | 'drill'
  | 'harvester'
  | 'tractor'
  | 'truck-mounted'
  | 'other';

/** A line of a machine: the class of its weight, and its path. `hatch` fills it as a counterweight is. */
export interface Shape {
  line: 'of' | 'o' | 'l' | 'lf' | 'h' | 'hatch';
  d: string;
}

export const FIELD = { width: 340, height: 150, ground: 144 } as const;

const n = (value: number): number => Math.round(value * 10) / 10;
const of = (d: string): Shape => ({ line: 'of', d });
const o = (d: string): Shape => ({ line: 'o', d });
const l = (d: string): Shape => ({ line: 'l', d });
const lf = (d: string): Shape => ({ line: 'lf', d });
const h = (d: string): Shape => ({ line: 'h', d });
const hatch = (d: string): Shape => ({ line: 'hatch', d });

const circle = (x: number, y: number, r: number): string =>
  `M${n(x - r)} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
const box = (x: number, y: number, w: number, t: number): string => `M${x} ${y}h${w}v${t}h${-w}Z`;
const pin = (x: number, y: number, r = 2.6): Shape => lf(circle(x, y, r));

/** A bar of that width from one point to another. */
function bar(x1: number, y1: number, x2: number, y2: number, width: number): string {
  const far = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [dx, dy] = [(-(y2 - y1) / far) * (width / 2), ((x2 - x1) / far) * (width / 2)];
  return `M${n(x1 + dx)} ${n(y1 + dy)}L${n(x2 + dx)} ${n(y2 + dy)}L${n(x2 - dx)} ${n(y2 - dy)}L${n(x1 - dx)} ${n(y1 - dy)}Z`;
}

/** A hydraulic cylinder from its foot to its rod's eye. */
function cylinder(x1: number, y1: number, x2: number, y2: number, width = 9): Shape[] {
  const [mx, my] = [x1 + (x2 - x1) * 0.58, y1 + (y2 - y1) * 0.58];
  return [of(bar(mx, my, x2, y2, width * 0.36)), of(bar(x1, y1, mx, my, width)), pin(x1, y1), pin(x2, y2)];
}

/** A wheel on the ground. */
function wheel(x: number, r: number): Shape[] {
  const y = FIELD.ground - r;
  return [of(circle(x, y, r)), l(circle(x, y, r * 0.56)), h(circle(x, y, r * 0.2))];
}

/** A crawler track. */
function track(x: number, width: number, tall = 27): Shape[] {
  const y = FIELD.ground - tall;
  const [r, s] = [tall / 2, tall / 2 - 5.5];
  const rounded = (left: number, top: number, w: number, t: number, q: number) =>
    `M${left + q} ${top}h${w - 2 * q}a${q} ${q} 0 0 1 0 ${t}h${-(w - 2 * q)}a${q} ${q} 0 0 1 0 ${-t}Z`;
  return [
    of(rounded(x, y, width, tall, r)),
    l(rounded(x + 5.5, y + 5.5, width - 11, tall - 11, s)),
    l(circle(x + r, y + r, s * 0.7)),
    l(circle(x + width - r, y + r, s * 0.7)),
    ...[0.32, 0.44, 0.56, 0.68].map((part) => h(circle(n(x + width * part), y + r + 4, 2.6))),
  ];
}

const excavator: Shape[] = [
  ...track(30, 116),
  of(box(65, 109, 48, 8)),
  of('M27 72L42 67H100V109H34L27 98Z'),
  hatch('M27 72L42 67H45V109H34L27 98Z'),
  h('M54 76H91M54 81.5H91M54 87H91'),
  of('M121 98L128 109L143 96L194 39L211 36L262 60L270 50L266 43L213 15H194L183 23L130 85Z'),
  of('M99 48H126L139 72L141 109H99Z'),
  l('M104 54H123L134 74V83H104Z'),
  of('M255 45L264 34L275 39L279 60L296 126L288 131L281 128L259 69Z'),
  lf(circle(266, 54, 3.6)),
  ...cylinder(205, 12, 264, 37, 10),
  ...cylinder(132, 107, 185, 48, 10),
  ...cylinder(280, 48, 305, 107, 8),
  of('M288 126L305 107L312 120C314 146 286 155 268 142L262 146L268 135Z'),
  pin(290, 126, 3),
];

const loader: Shape[] = [
  of('M44 88L52 66H112V112H58Z'),
  h('M60 76H86M60 82H86M60 88H86'),
  of('M112 112V96H190L204 112Z'),
  of('M108 30H146L156 62V100H108Z'),
  l('M114 36H142L150 63V74H114Z'),
  of(bar(168, 62, 262, 112, 12)),
  lf(circle(168, 62, 4)),
  ...cylinder(176, 104, 218, 86, 9),
  ...cylinder(172, 48, 244, 72, 8),
  of(bar(240, 62, 262, 112, 7)),
  of('M256 90L262 128L318 140L322 134L276 122L272 88Z'),
  pin(262, 112, 3),
  pin(244, 72),
  ...wheel(78, 32),
  ...wheel(194, 32),
];

const forwarder: Shape[] = [
  of('M30 92H128V112H30Z'),
  of('M36 40H78L86 62V92H36Z'),
  l('M42 46H74L80 63V72H42Z'),
  of('M86 68H124L130 92H86Z'),
  h('M94 76H118M94 82H118'),
  of(box(134, 98, 176, 12)),
  lf(circle(131, 103, 5)),
  ...[150, 196, 242, 288].map((x) => of(box(x, 52, 5, 46))),
  ...[
    [172, 88],
    [186, 88],
    [179, 77],
    [218, 88],
    [232, 88],
    [225, 77],
    [264, 88],
    [278, 88],
    [271, 77],
  ].map(([x = 0, y = 0]) => l(circle(x, y, 7))),
  of(box(138, 62, 10, 36)),
  of(bar(143, 62, 176, 20, 9)),
  of(bar(176, 20, 262, 26, 8)),
  ...cylinder(146, 78, 163, 42, 7),
  ...cylinder(160, 30, 206, 20, 6),
  pin(176, 20, 3),
  of('M256 26h12v10h-12Z'),
  of('M262 36L248 50L256 62L262 50L268 62L276 50Z'),
  ...wheel(54, 21),
  ...wheel(102, 21),
  ...wheel(226, 21),
  ...wheel(274, 21),
];

const crane: Shape[] = [
  of(box(110, 126, 110, 12)),
  of('M110 130L62 138V144H82L118 138Z'),
  of('M220 130L268 138V144H248L212 138Z'),
  of('M150 126L154 60H180L184 126Z'),
  of(box(148, 50, 38, 12)),
  of(bar(166, 48, 232, 18, 12)),
  of(bar(232, 18, 312, 40, 10)),
  of(bar(270, 29, 326, 44, 6)),
  ...cylinder(178, 92, 204, 34, 10),
  ...cylinder(206, 22, 262, 18, 7),
  pin(166, 48, 3.4),
  pin(232, 18, 3.4),
  l('M326 46V66'),
  o('M326 66c8 0 9 12 0 12c-5 0 -6 -3 -6 -6'),
  of(box(92, 92, 40, 34)),
  h('M98 102H126M98 110H126'),
  l('M132 104H150'),
];

const press: Shape[] = [
  of(box(92, 128, 132, 16)),
  of(box(100, 22, 16, 106)),
  of(box(200, 22, 16, 106)),
  of(box(92, 14, 132, 18)),
  of(box(140, 4, 36, 44)),
  of(box(150, 48, 16, 24)),
  of(box(122, 72, 72, 14)),
  of(box(128, 116, 60, 12)),
  h('M122 79H194'),
  l('M140 12H130V58H140'),
  of(box(246, 92, 66, 52)),
  of(circle(268, 80, 12)),
  of(box(280, 70, 26, 20)),
  h('M254 104H304M254 112H304'),
  l('M292 70V40H176'),
  l('M300 70V20H176'),
];

const drill: Shape[] = [
  ...track(96, 120),
  of(box(128, 108, 60, 9)),
  of('M118 74H200V108H118Z'),
  h('M126 84H156M126 91H156M126 98H156'),
  of('M168 44H196L204 74V108H168Z'),
  l('M174 50H192L198 74H174Z'),
  of(bar(214, 92, 252, 66, 10)),
  ...cylinder(206, 104, 244, 84, 7),
  of(bar(252, 6, 252, 140, 14)),
  h('M252 10V136'),
  of(box(258, 34, 22, 26)),
  h('M262 40H276M262 46H276M262 52H276'),
  o('M269 60V144'),
  l('M264 76L274 70M264 88L274 82M264 100L274 94M264 112L274 106M264 124L274 118M264 136L274 130'),
  of(box(258, 126, 22, 8)),
  pin(252, 66, 3),
];

const harvester: Shape[] = [
  of('M34 78H106V108H34Z'),
  hatch('M34 78H44V108H34Z'),
  h('M52 86H96M52 92H96'),
  of('M106 34H148L158 60V104H106Z'),
  l('M112 40H144L152 61V72H112Z'),
  of(box(154, 94, 52, 14)),
  of(bar(168, 94, 198, 34, 11)),
  of(bar(198, 34, 276, 40, 9)),
  ...cylinder(182, 94, 204, 46, 8),
  ...cylinder(180, 44, 232, 30, 7),
  pin(198, 34, 3.2),
  of(box(270, 40, 12, 16)),
  of('M262 56H294V108H262Z'),
  lf(circle(271, 70, 6)),
  lf(circle(285, 70, 6)),
  of('M262 92C246 98 246 116 262 120V108ZM294 92C310 98 310 116 294 120V108Z'),
  l('M262 108H294V114H262Z'),
  ...wheel(66, 26),
  ...wheel(156, 20),
  ...wheel(200, 20),
];

const tractor: Shape[] = [
  of('M150 62H226L240 76V108H150Z'),
  h('M162 72H206M162 80H206M162 88H206'),
  l('M196 62V30H202V62'),
  of('M84 20H144L156 62V100H92Z'),
  l('M92 27H138L149 62H96Z'),
  of('M52 100C56 66 110 58 128 96L120 104Z'),
  of(bar(44, 112, 84, 104, 6)),
  ...cylinder(48, 76, 60, 110, 6),
  of(bar(46, 74, 92, 84, 5)),
  l('M44 112V126M38 126H50'),
  of(box(146, 100, 74, 10)),
  ...wheel(92, 38),
  ...wheel(216, 25),
  of(bar(176, 52, 268, 74, 9)),
  of(bar(268, 74, 284, 112, 8)),
  ...cylinder(190, 84, 240, 72, 7),
  pin(176, 52, 3),
  pin(268, 74, 3),
  of('M278 106L286 134L322 138V132L296 128L292 104Z'),
];

const truckMounted: Shape[] = [
  of('M262 52H296L314 84V122H262Z'),
  l('M270 58H292L304 82H270Z'),
  of(box(40, 112, 222, 10)),
  of('M40 74H218V110H40Z'),
  h('M76 74V110M112 74V110M148 74V110M184 74V110'),
  of(box(232, 62, 16, 50)),
  of(bar(240, 62, 212, 18, 10)),
  of(bar(212, 18, 110, 30, 9)),
  of(bar(140, 27, 70, 35, 6)),
  ...cylinder(238, 84, 220, 34, 8),
  ...cylinder(226, 22, 170, 16, 6),
  pin(240, 62, 3.2),
  pin(212, 18, 3.2),
  l('M70 36V50'),
  o('M70 50c7 0 8 10 0 10c-4 0 -5 -2 -5 -5'),
  of(box(224, 122, 12, 14)),
  of(box(216, 136, 28, 8)),
  ...wheel(80, 20),
  ...wheel(126, 20),
  ...wheel(284, 20),
];

const other: Shape[] = [
  of(box(40, 84, 116, 60)),
  h('M40 98H156'),
  of(circle(70, 70, 14)),
  of(box(84, 58, 44, 24)),
  h('M92 58V82M100 58V82M108 58V82M116 58V82'),
  lf(box(136, 74, 12, 10)),
  of(box(176, 96, 44, 34)),
  ...[184, 198, 212].map((x) => lf(circle(x, 113, 4))),
  l('M70 56V40H198V96'),
  l('M156 120H176'),
  l('M220 104H246V78M220 122H300V78'),
  of(box(234, 54, 66, 24)),
  of(box(300, 62, 30, 8)),
  pin(234, 66, 3),
  pin(330, 66, 3),
];

/** The lines of each kind of machine. */
export const machines: Record<MachineKind, readonly Shape[]> = {
  excavator,
  loader,
  forwarder,
  crane,
  press,
  drill,
  harvester,
  tractor,
  'truck-mounted': truckMounted,
  other,
};
