// Every screen and what it can be opened to, and how one gets there in any language: a button is named by the id of its words.
import { demo, file } from './support.mjs';

const { spec, service } = demo('replacement.json');
const checked = { spec, service: { duties: [], ...service } };
/** All that the bench asks before a tag, without a rig. */
export const made = {
  settings: demo('settings.json'),
  crimps: { A: Array(12).fill(28.5), B: Array(12).fill(28.5) },
  crimpedBy: { A: 'micrometer', B: 'micrometer' },
  finished: { cut_mm: 1155, length_mm: 1242, turn_deg: 90 },
  proof: { state: 'no-rig' },
  proving: { rig: false, pressure_bar: null, hold_s: null, gauge: '', calibrated: null },
};
const reading = (part, asked) => ({ step: 'find', readings: demo('burst-readings.json'), finding: { part, asked, forms: {}, chosen: [] } });
const stand = { gap_mm: 560, rise_mm: null, offset_mm: null, angle_deg: null, roll_deg: null, a_looks_deg: null, b_looks_deg: null };
const points = { points: 'towards', rigid_mm: 75 };
const routed = {
  spec: { ...spec, overall_length_mm: 1900, ends: spec.ends.map((end) => ({ ...end, form: 'straight', drop_mm: null })) },
  service: { duties: [], ...service, bend_radius_mm: null },
};
const route = { facing: 'u', closed: stand, open: { ...stand, gap_mm: 600, rise_mm: 80 }, fixed: false, ends: { A: points, B: points }, hose_od_mm: null, pose: null };

/** Taps the first row of a list that has that name; without a name, of the first list. */
export const row = (list) => ({ row: list });
/** A list of hoses as an office keeps it. */
const LIST = {
  name: "yard.csv",
  mimeType: "text/csv",
  buffer: Buffer.from("Machine;Place;Hose;Length;Fitted\nDozer 9;Ripper;EN 853 2SN DN16;1240;03/04/2023\n"),
};

/** A picture that somebody adds. */
const PICTURE = file("demo/pictures/make.png");

const van = (part, ...taps) => ({ at: { at: 'van', part }, taps });

/**
 * A name, and either a screen (`at`) or a job (`job`) with what is tapped there. `fleet` is what the register holds: the
 * machine, place and hose that are looked at.
 */
export const states = ({ machine, place, hose, hoses }) => ({
  'no job in hand': { job: null },
  'find, nothing read': { job: { step: 'find' } },
  'find, the print': { job: reading('hose', 'print') },
  'find, a bore': { job: reading('hose', 'id_mm') },
  'find, threads': { job: reading('A', 'tpi') },
  'find, a seat': { job: reading('A', 'seat_angle') },
  'find, a thread’s width': { job: reading('B', 'thread_diameter_mm') },
  'check, nothing known': { job: { step: 'check' } },
  'check, passed': { job: { step: 'check', ...checked } },
  'check, stopped': { job: { step: 'check', spec, service: { ...checked.service, flow_l_min: 250, relief_bar: 400 } } },
  'route, how the ports face': { job: { step: 'check', beside: 'route', ...routed } },
  route: { job: { step: 'check', beside: 'route', ...routed, route } },
  'oil, too fast': { job: { step: 'check', beside: 'oil', spec, service: { ...checked.service, flow_l_min: 150 } } },
  'oil, no flow': { job: { step: 'check', beside: 'oil', spec, service: { ...checked.service, flow_l_min: null } } },
  make: { job: { step: 'make', ...checked } },
  'make, a supplier’s row': { job: { step: 'make', ...checked }, taps: ['make-row-enter'] },
  'make, all read': { job: { step: 'make', ...checked, ...made } },
  tag: { job: { step: 'tag', ...checked, ...made } },
  'fit, where': { job: { step: 'fit', ...checked, ...made } },
  'the end of a job': { at: { at: 'done', code: hose, off: null, tightened: null } },
  'papers of the job': { job: { step: 'make', ...checked, ...made }, at: { at: 'papers' } },

  scan: { at: { at: 'scan' } },
  'scan, a code typed': { at: { at: 'scan' }, taps: ['scan-type'] },
  'scans so far': { at: { at: 'scan', part: 'log' } },

  machines: { at: { at: 'machines' } },
  'machines, a site': { at: { at: 'machines' }, taps: ['machines-add-site'] },
  'machines, another machine': { at: { at: 'machines' }, taps: ['machines-add-machine'] },
  machine: { at: { at: 'machine', machine } },
  'machine, changed': { at: { at: 'machine', machine }, taps: ['machines-change'] },
  'machine, a circuit': { at: { at: 'machine', machine }, taps: ['machines-circuit-add'] },
  'machine, a place': { at: { at: 'machine', machine }, taps: ['machines-place-add'] },
  place: { at: { at: 'place', place } },
  'place, inspected': { at: { at: 'place', place }, taps: ['hose-inspect'] },
  'place, what a failure does': { at: { at: 'place', place }, taps: ['stakes-title'] },
  'place, a photo added': { at: { at: 'place', place }, file: ['photos-add', PICTURE] },
  'place, a photo looked at': { at: { at: 'place', place }, taps: ['photos-alt'] },
  'place, a photo to be taken back': { at: { at: 'place', place }, taps: ['photos-alt', 'photos-back'] },
  hose: { at: { at: 'hose', code: hose } },
  'hose, inspected': { at: { at: 'hose', code: hose }, taps: ['hose-inspect'] },
  'hose, why it failed': { at: { at: 'hose', code: hose }, taps: ['fit-cause'] },
  'hose, came off': { at: { at: 'hose', code: hose }, taps: ['off-title'] },
  'a code that is on no record': { at: { at: 'hose', code: '0AAKG-EWXTN-P' } },
  'label again': { at: { at: 'label', code: hose } },
  'labels of a machine': { at: { at: 'labels', machine } },
  'labels of what is due': { at: { at: 'labels' } },
  'all hoses': { at: { at: 'hoses' } },
  'look it over': { at: { at: 'survey', machine } },
  'look it over, a place': { at: { at: 'survey', machine }, taps: [{ footer: true }] },
  'papers of a hose': { at: { at: 'papers', code: hose } },
  'quote of a hose': { at: { at: 'quote', codes: [hose] } },

  due: { at: { at: 'due' } },
  'due, inspections': { at: { at: 'due' }, taps: ['due-view-inspection'] },
  'due, by risk': { at: { at: 'due' }, taps: ['due-by-risk'] },
  lives: { at: { at: 'due', part: 'lives' } },
  'limits of age': { at: { at: 'policies' } },
  'limits of age, a rule': { at: { at: 'policies' }, taps: ['policies-new'] },
  'tables that changed': { at: { at: 'affected' } },
  'the round': { at: { at: 'round' } },

  van: { at: { at: 'van' } },
  'van, prices': van('prices'),
  'van, units': van('units'),
  'van, labels': van('labels'),
  'van, instruments': van('instruments'),
  'van, suppliers': van('suppliers'),
  'van, a supplier’s row': van('suppliers', 'van-row-go-on'),
  'van, press': van('press'),
  'van, people': van('people'),
  'van, fleet': van('fleet'),
  'van, joining a fleet': van('fleet', 'van-fleet-join-own'),
  'van, other vans': van('exchange'),
  'van, backup': van('backup'),
  'van, records': van('records'),
  'van, a list of hoses': { ...van('records'), file: ['van-list-pick', LIST] },
  'van, about': van('about'),
  stock: { at: { at: 'stock' } },
  'stock, what comes in': { at: { at: 'stock' }, taps: ['shelf-load'] },
  'stock, a thing': { at: { at: 'stock' }, taps: [row()] },
  'stock, counted': { at: { at: 'stock', take: true } },
  'stock, all of it counted': { at: { at: 'stock', take: true }, taps: ['take-all'] },
  batch: { at: { at: 'batch' } },
  'batch, what is added': { at: { at: 'batch' }, taps: ['several-add'] },
  'quote of the batch': { at: { at: 'quote' } },
  'quote of several': { at: { at: 'quote', codes: hoses } },
});
