// Made by `cargo xtask types` from the Rust types. Do not edit.

/**
 * What a photo or a note is about.
 */
export type About = { "site": SiteId } | { "machine": MachineId } | { "place": PlaceId } | { "hose": TagCode };

/**
 * A part between hose end and machine, with its own rating.
 */
export type Adapter = { 
/**
 * What it is, in words.
 */
name: string, 
/**
 * The supplier's rating; unknown stops.
 */
rating_bar?: Bar | null, 
/**
 * Between which end and what of the machine; none where nobody said.
 */
between?: AdapterBetween | null, };

/**
 * Where an adapter sits: the machine sees its machine side and not the hose end.
 */
export type AdapterBetween = { 
/**
 * At which end.
 */
role: Role, 
/**
 * The side that the hose end screws on.
 */
hose_side: AdapterSide, 
/**
 * The side that the machine sees.
 */
machine_side: AdapterSide, };

/**
 * One side of an adapter.
 */
export type AdapterSide = { 
/**
 * Family by the tables' name.
 */
family: string, 
/**
 * Size within the family.
 */
size: string, 
/**
 * Which half; none for flanges.
 */
gender?: Gender | null, };

/**
 * Another end with an adapter on it.
 */
export type AdapterWay = { 
/**
 * At which end.
 */
role: Role, 
/**
 * The end that goes on the hose.
 */
end: Item, 
/**
 * The adapter between it and the machine.
 */
adapter: Item, 
/**
 * Both in words.
 */
names: Array<string>, 
/**
 * What the whole check says of it; never stop.
 */
verdict: Verdict, 
/**
 * Rating of the whole with the adapter in the chain.
 */
assembly_pressure_bar: Bar | null, 
/**
 * What would be made. Its length is to be measured anew: the adapter has one of its own.
 */
spec: Spec, };

/**
 * The hoses that rest on what has changed.
 */
export type Affected = { 
/**
 * The tables now.
 */
tables: string, 
/**
 * Rows that hoses rest on.
 */
checked: number, 
/**
 * Times that a hose rests on a row that has changed or is gone.
 */
hoses: number, 
/**
 * Hoses recorded by other tables without their rows: nobody knows what of theirs has changed.
 */
not_known: number, 
/**
 * The rows that have changed, those that are gone first, and last those that are not known.
 */
rows: Array<AffectedRow>, };

/**
 * A hose that rests on it.
 */
export type AffectedHose = { 
/**
 * Its code.
 */
code: TagCode, 
/**
 * Where it sits.
 */
at: PlaceAt | null, 
/**
 * The version of the tables it was recorded by.
 */
tables: string, };

/**
 * What is asked.
 */
export type AffectedQuestion = { 
/**
 * Of this hose alone.
 */
code?: TagCode, };

/**
 * A row that has changed.
 */
export type AffectedRow = { 
/**
 * Its table; none where the rows are not known.
 */
table: string | null, 
/**
 * What the row is called there.
 */
row: string, 
/**
 * How it stands now; none where it is not known.
 */
stands: RowStands | null, 
/**
 * How many hoses.
 */
count: number, 
/**
 * The first of them, those on machines first.
 */
hoses: Array<AffectedHose>, };

/**
 * The same again at a place.
 */
export type Again = { 
/**
 * The hose that sits there and comes off; the latest where more than one is said to sit there.
 */
replaces: TagCode | null, 
/**
 * That hose as it was made, or what belongs there; none where nobody knows the hose.
 */
spec: Spec | null, 
/**
 * What the new one has to stand.
 */
service: Service, 
/**
 * How its ends were crimped.
 */
settings: Array<EndSettings>, 
/**
 * Why it is not made without a look at the place, in words.
 */
why_not: string | null, };

/**
 * Hoses of one age in whole years.
 */
export type AgeCount = { 
/**
 * Whole years since it was assembled, made or, where neither is known, fitted.
 */
years: number, 
/**
 * How many hoses.
 */
count: number, };

/**
 * Another hose put through the same check.
 */
export type Alternative = { 
/**
 * Standard.
 */
standard: string, 
/**
 * Type.
 */
type: string, 
/**
 * Nominal diameter.
 */
dn: Dn, 
/**
 * Its verdict in the same service.
 */
verdict: Verdict, 
/**
 * For and against, in words; empty until the edge writes them.
 */
reasons: Array<string>, };

/**
 * An answer with the tables and the program it rests on.
 */
export type Answer<T> = { 
/**
 * Version of the tables: their hash.
 */
catalogue: string, 
/**
 * Version of the program.
 */
program: string, } & T;

/**
 * Who asks what a finding is about.
 */
export type AskedBy = "line" | "making";

/**
 * The day or the month of assembly, written `2026-11-25` or `2026-11`. Years 1900 to 9999.
 */
export type Assembled = string;

/**
 * A hose assembly under its tag: one we made, or one that was found and tagged.
 */
export type Assembly = { 
/**
 * The code on its tag.
 */
code: TagCode, 
/**
 * What it is.
 */
spec: Spec, 
/**
 * The service it was checked for.
 */
service: Service, 
/**
 * First day of the period printed on the hose (3Q24 is 2024-07-01).
 */
hose_made?: string | null, 
/**
 * When it was assembled; service life counts from here (DIN 20066). None is not known.
 */
assembled?: string | null, 
/**
 * Whether it was proved.
 */
proof: Proof, 
/**
 * What the check said; none for an assembly that was not checked here.
 */
verdict?: Verdict | null, 
/**
 * Working pressure of the assembly: its weakest part's. None is not known, never unlimited.
 */
pressure_bar?: Bar | null, 
/**
 * What was done at the bench; none where it was made elsewhere or nothing was written down.
 */
bench?: BenchRecord | null, 
/**
 * Version of the tables the check rested on.
 */
catalogue: string, 
/**
 * The rows of the tables that it rests on, as they were; none where it was recorded without them.
 */
rests_on?: Array<RowMark>, 
/**
 * Version of the program.
 */
program: string, 
/**
 * Whose word it is, where it was taken in from a tag; none where it was entered or made here.
 */
taken_in?: TakenIn | null, };

/**
 * A figure that nobody gave.
 */
export type Assumption = { 
/**
 * Which: `oil-usual-grade`, `oil-usual-index`, `oil-bulk-modulus`, `oil-density`, `rigid-wall`,
 * `sudden-closure`, `smooth-bore`.
 */
what: string, 
/**
 * It in words; empty until the edge writes it.
 */
words: string, 
/**
 * Its value; none where it is none, such as a closure at once.
 */
value: number | null, 
/**
 * Unit of the value.
 */
unit: string, 
/**
 * The publication, table or practice.
 */
source: string, 
/**
 * How it came to be known.
 */
basis: Basis, };

/**
 * One of them.
 */
export type Backup = { 
/**
 * Its file in the folder.
 */
name: string, 
/**
 * When it was made.
 */
made: string, 
/**
 * Its size in bytes.
 */
bytes: number, };

/**
 * The backups that stand beside the register, each proved by restoring it when it was made.
 */
export type Backups = { 
/**
 * Their folder.
 */
folder: string, 
/**
 * The newest first.
 */
backups: Array<Backup>, 
/**
 * The newest is old, or from the future: something keeps the next from being made.
 */
late: boolean, };

/**
 * A pressure in bar (gauge, unless the field's name says `abs`).
 */
export type Bar = number;

/**
 * How a value came to be known.
 */
export type Basis = "published" | "derived" | "reference-library" | "common-practice" | "lower-of-two" | "bounded" | "memory" | "proxy" | "none" | "yours";

/**
 * Pieces of one hose that are wanted, and the hose that is there.
 */
export type Batch = { 
/**
 * Cut lengths wanted.
 */
pieces_mm: Array<Millimetres>, 
/**
 * Hose that is there.
 */
stock: Array<Stock>, 
/**
 * What the saw takes at each cut.
 */
kerf_mm: Millimetres, 
/**
 * From which length a rest is worth keeping; the user's own.
 */
useful_mm: Millimetres, };

/**
 * The cut list of one hose.
 */
export type BatchCut = { 
/**
 * The hose.
 */
hose: string, 
/**
 * The pieces that are cut, each with what is cut from it.
 */
steps: Array<CutStep>, 
/**
 * What no piece can give.
 */
unmade: Array<CutLength>, 
/**
 * New hose taken off the reels, kerf included.
 */
reel_mm: Millimetres, 
/**
 * Rests of cut offcuts that are too short to keep.
 */
scrap_mm: Millimetres, 
/**
 * Nothing better exists: less left unmade, then less off the reels, then less scrap.
 */
proved: boolean, 
/**
 * No plan that leaves as little unmade takes less than this off the reels.
 */
least_reel_mm: Millimetres, };

/**
 * A hose of a batch.
 */
export type BatchHose = { 
/**
 * What it is called in the lists, such as its place.
 */
name: string, 
/**
 * What is to be made, by which settings.
 */
make: MakeQuestion, 
/**
 * How many; one without.
 */
count?: number, 
/**
 * Sleeves, seals and other things that each takes beside.
 */
more?: Array<ExtraPart>, };

/**
 * A hose of a batch as it was checked.
 */
export type BatchHoseSaid = { 
/**
 * What it is called.
 */
name: string, 
/**
 * What the check says of it.
 */
verdict: Verdict, 
/**
 * What stops it, in words.
 */
stops: Array<string>, 
/**
 * What whoever makes it has to know, in words.
 */
cautions: Array<string>, 
/**
 * Its hose; blank while that is not said.
 */
hose: string, 
/**
 * The length to cut; none while it is not known.
 */
cut_length_mm: Millimetres | null, };

/**
 * A label of a batch.
 */
export type BatchLabel = { 
/**
 * The hose.
 */
code: TagCode, 
/**
 * Where it sits.
 */
at: PlaceAt | null, 
/**
 * What its label holds; none where none is made.
 */
holds: LabelHolds | null, 
/**
 * Whether it says that the hose had a label before.
 */
reprint: boolean, 
/**
 * Where the diameter over the cover comes from; none where the label does not go round the hose.
 */
od_from: DiameterFrom | null, 
/**
 * Why none is made.
 */
refused: string | null, };

/**
 * A batch as a paper: cut list, parts, order of work.
 */
export type BatchPaper = { 
/**
 * The batch.
 */
batch: BatchQuestion, 
/**
 * What the sheet is for, such as the machine.
 */
subject: string, 
/**
 * Size of the paper.
 */
paper: PaperSize, 
/**
 * The kind of file.
 */
as: PaperKind, };

/**
 * A batch as it is worked.
 */
export type BatchPlan = { 
/**
 * From which van or shelf.
 */
store: string, 
/**
 * The hoses, as they were asked. One that the check stops is in no list below.
 */
hoses: Array<BatchHoseSaid>, 
/**
 * What is cut from what, hose by hose.
 */
cuts: Array<BatchCut>, 
/**
 * All parts together against what is there.
 */
parts: Array<NeedLine>, 
/**
 * What is crimped with which dies, in this order.
 */
presses: Array<PressSetup>, 
/**
 * How often the dies are changed once the first are in.
 */
die_changes: number, 
/**
 * By which rule that order is.
 */
rule: string, 
/**
 * The steps that all of them have in common, each with its cautions.
 */
steps: Array<SheetStep>, 
/**
 * What a person must see.
 */
said: Array<StockSaid>, };

/**
 * The hoses of a batch.
 */
export type BatchQuestion = { 
/**
 * In any order.
 */
hoses: Array<BatchHose>, 
/**
 * From which van or shelf; the one this device works from without.
 */
store?: string, };

/**
 * What can be left half done.
 */
export type Begun = "supplier-sheet" | "supplier-row";

/**
 * What was read, measured and proved of one assembly, as far as it has come.
 */
export type Bench = { 
/**
 * The readings of the crimps.
 */
crimps: Array<CrimpRead>, 
/**
 * Length of the hose as it was cut.
 */
cut_length_mm: Millimetres | null, 
/**
 * Length and turn of the finished assembly.
 */
finished: Finished, 
/**
 * The proof test.
 */
proof: Proving, 
/**
 * The steps that are ticked.
 */
steps: Array<StepDone>, };

/**
 * What was done at the bench, judged.
 */
export type BenchJudged = { 
/**
 * The crimps that were read, A first.
 */
crimps: Array<Crimped>, 
/**
 * Length and turn.
 */
finished: Array<FinishedCheck>, 
/**
 * The proof test.
 */
proof: ProofJudged, 
/**
 * Whether it may be tagged.
 */
tag: boolean, 
/**
 * Why not, by the words `bench-why-<code>`.
 */
why_not: Array<string>, };

/**
 * What was made, and what was read, measured and proved of it.
 */
export type BenchQuestion = { 
/**
 * What was to be made, by which settings.
 */
make: MakeQuestion, 
/**
 * What was done.
 */
bench: Bench, };

/**
 * What was done at the bench: by which settings, with which readings, by whom.
 */
export type BenchRecord = { 
/**
 * The settings that were worked to, each with its source.
 */
settings?: Array<EndSettings>, 
/**
 * Length of the hose as it was cut.
 */
cut_length_mm?: Millimetres | null, 
/**
 * Length and turn of the finished assembly as they were measured.
 */
finished: Finished, 
/**
 * The crimps as they were read.
 */
crimps?: Array<CrimpDone>, 
/**
 * The steps that were ticked.
 */
steps?: Array<StepDone>, };

/**
 * An assembly to be recorded with all that was done at the bench.
 */
export type BenchRecordQuestion = { 
/**
 * What was to be made, by which settings.
 */
make: MakeQuestion, 
/**
 * What was done.
 */
bench: Bench, 
/**
 * The code of its tag; a new one without.
 */
code?: TagCode | null, 
/**
 * When it was assembled; the present day without.
 */
assembled?: string | null, 
/**
 * First day of the period printed on the hose; that of the piece it was cut from without.
 */
hose_made?: string | null, 
/**
 * It has its label already: another one will say that it is a reprint.
 */
labelled: boolean, 
/**
 * What it used; nothing is taken from stock without.
 */
used?: StockUsed | null, };

/**
 * What was recorded.
 */
export type BenchRecorded = { 
/**
 * Its code.
 */
code: TagCode, 
/**
 * The event; it is on the disk.
 */
written: EventRef, 
/**
 * What stands on record.
 */
assembly: Assembly, 
/**
 * What a person must see of the stock.
 */
said: Array<StockSaid>, };

/**
 * A build that is undone.
 */
export type BenchUndo = { 
/**
 * The code of the hose.
 */
code: TagCode, 
/**
 * Why.
 */
reason: string, 
/**
 * Whether what it used comes back. Without: all of it, but nothing of a hose that failed its proof, which is scrap.
 */
give_back?: boolean, };

/**
 * What was undone.
 */
export type BenchUndone = { 
/**
 * The event; it is on the disk.
 */
written: EventRef, 
/**
 * What came back.
 */
given_back: Array<StockGivenBack>, };

/**
 * How a hose lies in one pose, at the length within its change under pressure where it bends most.
 */
export type Bend = { 
/**
 * Smallest radius of the centre line; none where the hose is straight.
 */
min_radius_mm: Millimetres | null, 
/**
 * The same at the inside of the bend; none also while the outside diameter is not known.
 */
min_inside_radius_mm: Millimetres | null, 
/**
 * Where that is, along the free hose from the near port's end.
 */
at_mm: Millimetres | null, 
/**
 * Half the integral of the curvature squared.
 */
bend_energy_per_mm: number, 
/**
 * Twist against the first pose at the fitted length: how far the far end has turned clockwise, seen along the
 * hose from the near port, against what the hose carries over from the near end.
 */
twist_deg: Degrees, 
/**
 * How exact the shape is, as a part of the length and of the greatest moment.
 */
residual: number, 
/**
 * Change of the length at which this shape is.
 */
length_change_pct: number, 
/**
 * Another stable shape has nearly the same energy (within 5 %): the hose may lie in either.
 */
near_rival: boolean, 
/**
 * Energy of that other shape.
 */
rival_energy_per_mm: number | null, 
/**
 * Smallest radius of that other shape.
 */
rival_min_radius_mm: Millimetres | null, 
/**
 * Course of the centre line between the rigid ends.
 */
points_mm: Array<[number, number, number]>, };

/**
 * What happened. Every body is written whole; a correction is a new body of the same kind in an
 * event that builds on the old one.
 */
export type Body = { "kind": "device-named" } & DeviceNamed | { "kind": "device-key" } & DeviceKeyTold | { "kind": "device-admitted" } & DeviceAdmitted | { "kind": "device-withdrawn" } & DeviceWithdrawn | { "kind": "site-named" } & Site | { "kind": "machine-set" } & Machine | { "kind": "hours-read" } & HoursRead | { "kind": "circuit-set" } & Circuit | { "kind": "place-set" } & Place | { "kind": "assembly-made" } & Assembly | { "kind": "fitted" } & Fitted | { "kind": "taken-off" } & TakenOff | { "kind": "inspected" } & Inspected | { "kind": "surveyed" } & Surveyed | { "kind": "policy-set" } & PolicySet | { "kind": "stock-changed" } & StockChanged | { "kind": "stock-moved" } & StockMoved | { "kind": "stock-placed" } & StockPlaced | { "kind": "price-set" } & PriceSet | { "kind": "piece-set" } & Piece | { "kind": "piece-changed" } & PieceChanged | { "kind": "overridden" } & Overridden | { "kind": "photo-added" } & PhotoAdded | { "kind": "labelled" } & Labelled | { "kind": "tag-withdrawn" } & TagWithdrawn | { "kind": "noted" } & Noted | { "kind": "voided" } & Voided;

/**
 * A part to fetch.
 */
export type BuildPart = { "what": "hose", 
/**
 * Its name.
 */
hose: HoseRef, 
/**
 * What its cover must be.
 */
cover: Cover | null, } | { "what": "end", 
/**
 * Which.
 */
end: EndSpec, } | { "what": "adapter", 
/**
 * Which.
 */
adapter: Adapter, };

/**
 * Everything that whoever makes the hose needs, in the order they need it.
 */
export type BuildSheet = { 
/**
 * The verdict it is made under: pass or caution.
 */
verdict: Verdict, 
/**
 * What the check cautions of: whoever makes it knows.
 */
cautions: Array<Finding>, 
/**
 * What to fetch.
 */
parts: Array<BuildPart>, 
/**
 * The cut.
 */
cut: Cut, 
/**
 * The turn, where both ends are bent.
 */
turn: Turn | null, 
/**
 * How each end goes on, A first: yours.
 */
settings: [EndSettings, EndSettings], 
/**
 * The ends whose settings are from a supplier's table of yours.
 */
filled: Array<Filled>, 
/**
 * What to get before the hose is cut.
 */
missing: Array<Missing>, 
/**
 * The steps.
 */
steps: Array<SheetStep>, 
/**
 * The proof test.
 */
proof: ProofDue, 
/**
 * How each end is tightened on the machine, A first.
 */
tighten: Array<Tighten>, 
/**
 * How clean the finished hose has to be, and how it is made so.
 */
cleanliness: Array<Cleanliness>, 
/**
 * The tables it rests on.
 */
catalogue: string, };

/**
 * A reading that can not be had: rust, a broken part, no gauge.
 */
export type CannotTell = { 
/**
 * What it would be taken of.
 */
of: Part, 
/**
 * Its key, such as `seal`.
 */
reading: string, };

/**
 * How a thing to be done at the press stands.
 */
export type CareDue = { 
/**
 * Crimps since it was done; all that are on record where nobody knows when.
 */
crimps_since: number, 
/**
 * The day it is due by months; none without, or where nobody knows when it was done.
 */
due_on: string | null, 
/**
 * `caution` where it is due or nobody knows; `pass` where not.
 */
verdict: Verdict, 
/**
 * What, such as `grease the die shoes`.
 */
name: string, 
/**
 * After how many crimps.
 */
every_crimps?: number | null, 
/**
 * After how many months.
 */
every_months?: number | null, 
/**
 * When it was done last; none is not known.
 */
last_done?: string | null, };

/**
 * A rule and where it comes from.
 */
export type CareRule = { 
/**
 * Whose.
 */
whose: Whose, 
/**
 * Where the owner's holds; none for a guide.
 */
scope: Scope | null, 
/**
 * For which hoses there.
 */
of: PolicyOf, 
/**
 * The guide's rule, such as `L055`; none for the owner's.
 */
id: string | null, 
/**
 * Where it comes from.
 */
source: string, 
/**
 * How sure that is.
 */
basis: Basis, 
/**
 * Whether crossing it is a stop; else a caution.
 */
stop: boolean, 
/**
 * In words, why it is this one; blank in the core.
 */
why: string, };

/**
 * How often hoses failed for one cause.
 */
export type CauseCount = { 
/**
 * By the code of the failure causes.
 */
cause: string, 
/**
 * What it is called.
 */
name: string, 
/**
 * How often.
 */
times: number, };

/**
 * A cause of failure.
 */
export type CauseEntry = { 
/**
 * Its code.
 */
code: string, 
/**
 * Its name.
 */
name: string, 
/**
 * What it looks like.
 */
seen: string, };

/**
 * A temperature in degrees Celsius.
 */
export type Celsius = number;

/**
 * A certificate or a report to be made.
 */
export type CertificateQuestion = { 
/**
 * The hose.
 */
code: TagCode, 
/**
 * Size of the paper.
 */
paper: PaperSize, 
/**
 * The kind of file.
 */
as: PaperKind, 
/**
 * Who signs it, as it was drawn on the screen.
 */
signature?: Signature | null, };

/**
 * Where chances come from.
 */
export type ChanceFrom = "life" | "age";

/**
 * Where chances of failing come from.
 */
export type ChancesSaid = { 
/**
 * From what.
 */
from: ChanceFrom, 
/**
 * How many days they look ahead.
 */
ahead_days: number, 
/**
 * Failures that are known of.
 */
failures: number, 
/**
 * How many it takes for the fleet's own lives to be used.
 */
needed: number, };

/**
 * What a cure changes.
 */
export type Change = "length" | "exit" | "form";

/**
 * One value of a control chart.
 */
export type ChartPoint = { 
/**
 * The value.
 */
value: number, 
/**
 * How far it lies from the one before; none of the first.
 */
range: number | null, 
/**
 * What it gives away.
 */
signals: Array<Signal>, };

/**
 * A control chart of values in the order they were taken.
 */
export type Charted = { 
/**
 * Mean of all: the centre line.
 */
centre: number, 
/**
 * Mean of the ranges between neighbours.
 */
moving_range: number, 
/**
 * Lower limit.
 */
lower: number, 
/**
 * Upper limit.
 */
upper: number, 
/**
 * Upper limit of a moving range.
 */
range_upper: number, 
/**
 * The values.
 */
points: Array<ChartPoint>, };

/**
 * The answer of a check.
 *
 * `pass` means that everything was looked at and is within its limit. What nobody said (the surge,
 * the bend, how hot it gets) is a finding of its own, so a pass is never had by leaving a field out.
 */
export type Checked = { 
/**
 * The gravest finding.
 */
verdict: Verdict, 
/**
 * Rating of the whole: its weakest part's. None while a part's is not known.
 */
assembly_pressure_bar: Bar | null, 
/**
 * Which part that is: `hose`, `A`, `B` or `adapter`.
 */
weakest: Weakest | null, 
/**
 * Length to cut, once both cut-offs are known.
 */
cut_length_mm: Millimetres | null, 
/**
 * Tolerance of the overall length: minus (negative) and plus.
 */
length_tolerance_mm: [number, number] | null, 
/**
 * By gravity, gravest first.
 */
findings: Array<Finding>, 
/**
 * Other hoses that were put through the same check.
 */
alternatives: Array<Alternative>, 
/**
 * What was not looked at, because nobody said or because the check never does. Same for same leaves most of
 * this out.
 */
not_checked: Array<NotChecked>, };

/**
 * A circuit of a machine.
 */
export type Circuit = { 
/**
 * Which.
 */
circuit: CircuitId, 
/**
 * Whose.
 */
machine: MachineId, 
/**
 * What people call it, such as `boom`.
 */
name: string, 
/**
 * Setting of its relief or port relief valve.
 */
relief_bar?: Bar | null, };

/**
 * A circuit of a machine, with one relief setting.
 */
export type CircuitId = string;

/**
 * A rule of cleanliness of the tables.
 */
export type Cleanliness = { 
/**
 * Its key among the limits, such as `cleanliness-general`.
 */
rule: string, 
/**
 * What it asks: a class, a method, or what to do.
 */
asks: string, 
/**
 * By which code the class is written; blank where it is none.
 */
code: string, 
/**
 * What it is for.
 */
applies_to: string, 
/**
 * Where it stands.
 */
source: string, 
/**
 * How sure that is.
 */
basis: Basis, };

/**
 * Shape of the sealing cone of the part measured.
 */
export type Cone = "convex" | "concave";

/**
 * What says how bad a failure would be.
 */
export type ConsequenceWhy = "someone-beside" | "load-held-up" | "hot-surface" | "remote" | "none" | "not-said" | "owner";

/**
 * What a print and the readings can differ in.
 */
export type Contradicted = "no-such-hose" | "reinforcement" | "layers" | "bore" | "reinforcement-od" | "cover-od" | "cover" | "pressure";

/**
 * A contradiction as a list names it: what it is about, and who told what.
 */
export type Contradiction = { 
/**
 * The hose, where it is about one.
 */
hose: TagCode | null, 
/**
 * The place, where it is about one.
 */
at: PlaceAt | null, 
/**
 * The machine, where it is about one or its hours.
 */
machine: MachineId | null, 
/**
 * What people call it, where neither hose nor place says it: a machine, site, circuit, device or store.
 */
name: string | null, 
/**
 * What was told, by time.
 */
told: Array<Told>, };

/**
 * What an age counts from.
 */
export type CountedFrom = "assembled" | "hose-made" | "fitted" | "inspected" | "unknown";

/**
 * A thing that was counted.
 */
export type CountedItem = { 
/**
 * What.
 */
item: Item, 
/**
 * How many are there.
 */
counted: number, 
/**
 * In which bin; the one that is counted without.
 */
bin?: string, 
/**
 * How many were known when it was counted. Where another number is known by now it is not written down.
 */
known?: number, };

/**
 * A piece that was looked for.
 */
export type CountedPiece = { 
/**
 * Which.
 */
piece: PieceId, 
/**
 * How long it is; none: it is not there.
 */
length_mm: Millimetres | null, 
/**
 * How long it was known to be when it was measured. Where another length is known by now it is not written down.
 */
known_mm?: Millimetres, };

/**
 * How much the register holds.
 */
export type Counts = { 
/**
 * Sites.
 */
sites: number, 
/**
 * Machines.
 */
machines: number, 
/**
 * Places.
 */
places: number, 
/**
 * Hoses that were made or tagged.
 */
hoses: number, 
/**
 * Hoses on a machine.
 */
in_service: number, 
/**
 * Jobs that are not done.
 */
drafts: number, 
/**
 * Things that two events contradict each other about.
 */
conflicts: number, 
/**
 * Events in the log.
 */
events: number, 
/**
 * Events that wait for earlier ones of their device.
 */
held: number, };

/**
 * A cover with a duty of its own.
 */
export type Cover = "plain" | "non-conductive" | "flame-resistant" | "antistatic";

/**
 * A crimp as it was read, with what it was held against.
 */
export type CrimpDone = { 
/**
 * Which end.
 */
role: Role, 
/**
 * The supplier's diameter.
 */
target_mm?: Millimetres | null, 
/**
 * How far either way it might be off.
 */
tolerance_mm?: Millimetres | null, 
/**
 * Diameters over the flats, four at each of three places.
 */
readings_mm: Array<Millimetres | null>, 
/**
 * Readings that were given up before these, in that order.
 */
given_up?: Array<GivenUp>, 
/**
 * What they were read with.
 */
instrument: Instrument, 
/**
 * What they said.
 */
verdict: Judged, };

/**
 * A tolerance, and what is accepted by it.
 */
export type CrimpLimits = { 
/**
 * Target less tolerance.
 */
low_mm: Millimetres, 
/**
 * Target and tolerance.
 */
high_mm: Millimetres, 
/**
 * The lower limit and the expanded uncertainty; none where the instrument leaves no room.
 */
accept_low_mm: Millimetres | null, 
/**
 * The upper limit less the expanded uncertainty.
 */
accept_high_mm: Millimetres | null, };

/**
 * One crimp of a die set.
 */
export type CrimpOf = { 
/**
 * The assembly.
 */
code: TagCode, 
/**
 * The end.
 */
role: Role, 
/**
 * When it was assembled.
 */
assembled: string | null, 
/**
 * Mean of the readings less target.
 */
deviation_mm: Millimetres, };

/**
 * One place along the ferrule.
 */
export type CrimpPlace = { 
/**
 * Its number, from 1 behind the mouth.
 */
place: number, 
/**
 * How many readings.
 */
count: number, 
/**
 * Their mean.
 */
mean_mm: Millimetres, 
/**
 * The smallest.
 */
min_mm: Millimetres, 
/**
 * The largest.
 */
max_mm: Millimetres, 
/**
 * Out of round: the largest less the smallest.
 */
oval_mm: Millimetres, };

/**
 * The diameters read over the flats of one ferrule, and what they shall be.
 */
export type CrimpQuestion = { 
/**
 * Which end.
 */
role?: Role | null, 
/**
 * The supplier's diameter.
 */
target_mm?: Millimetres | null, 
/**
 * How far either way it may be off.
 */
tolerance_mm?: Millimetres | null, 
/**
 * Four directions at the place behind the mouth of the ferrule, four in its middle, four before its end; none
 * was not read.
 */
readings_mm: Array<Millimetres | null>, 
/**
 * What they were read with.
 */
instrument: Instrument, };

/**
 * The readings of one crimp. What they are held against stands in the settings of that end.
 */
export type CrimpRead = { 
/**
 * Which end.
 */
role: Role, 
/**
 * Four directions at each of three places; none was not read.
 */
readings_mm: Array<Millimetres | null>, 
/**
 * Readings that were given up before these, in that order.
 */
given_up?: Array<GivenUp>, 
/**
 * What they were read with.
 */
instrument: Instrument, };

/**
 * One reading.
 */
export type CrimpReading = { 
/**
 * Its number, from 0.
 */
index: number, 
/**
 * The diameter.
 */
mm: Millimetres, 
/**
 * Where it lies; none without a tolerance.
 */
lies: Lies | null, };

/**
 * A crimp in the order of the work.
 */
export type CrimpTurn = { 
/**
 * The hose, as the batch calls it.
 */
name: string, 
/**
 * Which end.
 */
role: Role, 
/**
 * Diameter over the crimped ferrule; none is not known.
 */
diameter_mm: Millimetres | null, };

/**
 * What the readings of a crimp say, and what is done next.
 */
export type Crimped = { 
/**
 * Which end.
 */
role: Role | null, 
/**
 * May be ticked on `pass` alone.
 */
verdict: Judged, 
/**
 * The next thing to do: the first of the codes.
 */
do: string, 
/**
 * All that is to be done, by the words `bench-<code>`.
 */
codes: Array<string>, 
/**
 * The readings that were taken.
 */
readings: Array<CrimpReading>, 
/**
 * The places along the ferrule at which any was taken.
 */
places: Array<CrimpPlace>, 
/**
 * How many readings were taken.
 */
count: number, 
/**
 * How many are wanted.
 */
wanted: number, 
/**
 * The reading to be taken next, from 0; none once all are.
 */
next: number | null, 
/**
 * Mean of all.
 */
mean_mm: Millimetres | null, 
/**
 * The smallest.
 */
min_mm: Millimetres | null, 
/**
 * The largest.
 */
max_mm: Millimetres | null, 
/**
 * Standard deviation of all.
 */
spread_mm: Millimetres | null, 
/**
 * Out of round: from the smallest to the largest at one place, where that is most.
 */
oval_mm: Millimetres | null, 
/**
 * Mean of the last place less that of the first: negative where the ferrule narrows towards its end.
 */
taper_mm: Millimetres | null, 
/**
 * Mean less target: what the press is followed by.
 */
deviation_mm: Millimetres | null, 
/**
 * The tolerance and what is accepted by it; none where none was entered.
 */
limits: CrimpLimits | null, 
/**
 * What the instrument is for this tolerance; none where none was entered.
 */
instrument: InstrumentFit | null, 
/**
 * The decision rule.
 */
source: string, 
/**
 * How sure that is.
 */
basis: Basis, };

/**
 * One change that would better the verdict, routed before it is offered.
 */
export type Cure = { 
/**
 * What is changed.
 */
change: Change, 
/**
 * What it is, in words; empty until the edge writes it.
 */
what: string, 
/**
 * At which end; none where the length is changed.
 */
end: Role | null, 
/**
 * The end's form with the change.
 */
form: string | null, 
/**
 * Where its elbow points.
 */
points: Points | null, 
/**
 * The drop it was routed with.
 */
drop_mm: Millimetres | null, 
/**
 * The rigid length it was routed with.
 */
rigid_mm: Millimetres | null, 
/**
 * Drop and rigid length are in plain proportion to the hose and have to be measured on the real end.
 */
assumed: boolean, 
/**
 * The overall length that goes with it.
 */
overall_length_mm: Millimetres, 
/**
 * The turn between two bent ends that goes with it.
 */
turn_deg: Degrees | null, 
/**
 * Verdict of the whole with it.
 */
verdict: Verdict, 
/**
 * Tightest radius at the inside of the bend with it.
 */
min_inside_radius_mm: Millimetres | null, };

/**
 * From overall length to cut length.
 */
export type Cut = { 
/**
 * From sealing point to sealing point.
 */
overall_length_mm: Millimetres, 
/**
 * What end A takes off.
 */
cutoff_a_mm: Millimetres | null, 
/**
 * What end B takes off.
 */
cutoff_b_mm: Millimetres | null, 
/**
 * What is cut; none while a cut-off is missing.
 */
cut_length_mm: Millimetres | null, 
/**
 * How far either way the cut may be off. It is not the assembly's tolerance.
 */
aim: Figure, 
/**
 * How far from square it may be.
 */
out_of_square: Figure | null, 
/**
 * Tolerance of the finished overall length: minus (negative) and plus.
 */
length_tolerance_mm: [number, number] | null, 
/**
 * Where that tolerance is from.
 */
length_source: Provenance | null, 
/**
 * What the saw takes; none is not known.
 */
kerf_mm: Millimetres | null, 
/**
 * What the cut takes off the reel: its length and the kerf. None while either is not known.
 */
off_reel_mm: Millimetres | null, };

/**
 * A piece that is cut from.
 */
export type CutFrom = { 
/**
 * Which.
 */
piece: PieceId, 
/**
 * Reel or offcut.
 */
sort: StockSort, 
/**
 * Its bin; blank is not said.
 */
bin: string, 
/**
 * The supplier's name for it.
 */
label: string, 
/**
 * First day of the period printed on it; none is not known.
 */
made: string | null, 
/**
 * Its length before.
 */
length_mm: Millimetres, 
/**
 * The lengths that are cut from it.
 */
cuts_mm: Array<Millimetres>, 
/**
 * Its length after, the saw's kerf taken off.
 */
left_mm: Millimetres, 
/**
 * Whether the rest is kept; one of an offcut that is too short is scrap.
 */
kept: boolean, };

/**
 * A length to cut, and for which hose.
 */
export type CutLength = { 
/**
 * What the hose is called.
 */
name: string, 
/**
 * The length.
 */
length_mm: Millimetres, };

/**
 * Which piece is cut from what.
 */
export type CutPlan = { 
/**
 * The stocks that are cut, in the order they were given.
 */
cuts: Array<StockCut>, 
/**
 * Pieces that no stock can give, by their place in the question.
 */
unmade: Array<number>, 
/**
 * New hose taken off the reels, kerf included.
 */
reel_mm: Millimetres, 
/**
 * Rests of cut offcuts that are too short to keep.
 */
scrap_mm: Millimetres, 
/**
 * Nothing better exists: less left unmade, then less off the reels, then less scrap.
 */
proved: boolean, 
/**
 * No plan that leaves as little unmade takes less than this off the reels.
 */
least_reel_mm: Millimetres, };

/**
 * A piece and what is cut from it.
 */
export type CutStep = { 
/**
 * The piece.
 */
piece: PieceId, 
/**
 * Reel or offcut.
 */
sort: StockSort, 
/**
 * Its bin; blank is not said.
 */
bin: string, 
/**
 * The supplier's name for it.
 */
label: string, 
/**
 * Its length before.
 */
length_mm: Millimetres, 
/**
 * What is cut, longest first.
 */
cuts: Array<CutLength>, 
/**
 * Its length after.
 */
left_mm: Millimetres, 
/**
 * Whether the rest is kept; one of an offcut that is too short is scrap.
 */
kept: boolean, };

/**
 * The cut-off of one end.
 */
export type CutoffLearned = { 
/**
 * The robust mean.
 */
mm: Millimetres, 
/**
 * Robust standard deviation; none of fewer than three.
 */
spread_mm: Millimetres | null, 
/**
 * From how many hoses.
 */
n: number, 
/**
 * How it was parted from the other end's.
 */
how: HowLearned, };

/**
 * A cut-off that was measured.
 */
export type CutoffMeasured = { 
/**
 * The mean; none without a reading.
 */
cutoff_mm: Millimetres | null, 
/**
 * Standard deviation of the readings; none of a single one.
 */
spread_mm: Millimetres | null, 
/**
 * Expanded uncertainty of the mean, coverage factor 2: the spread of the mean and the instrument's error.
 */
expanded_mm: Millimetres | null, 
/**
 * How many readings.
 */
count: number, 
/**
 * Whether it may be taken: `pass` once three readings agree.
 */
verdict: Judged, 
/**
 * What is done next, by the words `bench-<code>`.
 */
do: string, 
/**
 * How it is measured, by the words `bench-<code>`.
 */
steps: Array<string>, };

/**
 * The readings of one new end.
 */
export type CutoffReadings = { 
/**
 * From sealing point to hose stop, the end taken up anew each time.
 */
readings_mm: Array<Millimetres>, 
/**
 * What they were read with.
 */
instrument: Instrument, };

/**
 * Both cut-offs of two ends together.
 */
export type CutoffSum = { 
/**
 * The robust mean.
 */
mm: Millimetres, 
/**
 * Robust standard deviation; none of fewer than three.
 */
spread_mm: Millimetres | null, 
/**
 * From how many hoses.
 */
n: number, };

/**
 * How grave a wrong pair is: the worst that the table says of it.
 */
export type Danger = "damages" | "leaks" | "blows-off";

/**
 * Which stands first where a day is written as numbers with strokes, such as 03/04/2024.
 */
export type DayOrder = "day-first" | "month-first";

/**
 * An angle in degrees. Seats are given by their included angle (37 degree flare = 74).
 */
export type Degrees = number;

/**
 * How hard a machine or place is on its hoses.
 */
export type Demand = "normal" | "harsh";

/**
 * Chosen hoses as a list.
 */
export type DeskExport = { 
/**
 * Which.
 */
codes: Array<TagCode>, 
/**
 * The kind of file; a calendar has no hoses.
 */
as: ListKind, };

/**
 * Which hoses, in which order, which page.
 */
export type DeskQuestion = { 
/**
 * As of that day; today without.
 */
on?: string, 
/**
 * Which hoses.
 */
filter?: HoseFilter, 
/**
 * In which order.
 */
sort?: HoseSort, 
/**
 * The other way round.
 */
descending?: boolean, 
/**
 * So many from the first are left out.
 */
offset?: number, 
/**
 * So many at most: 100 without, 500 at most; of codes 10 000.
 */
limit?: number, };

/**
 * A page of hoses.
 */
export type DeskTable = { 
/**
 * As of that day.
 */
on: string, 
/**
 * How many the filter has.
 */
total: number, 
/**
 * This page.
 */
rows: Array<HoseRow>, };

/**
 * A device that wrote.
 */
export type Device = { 
/**
 * Which.
 */
device: DeviceId, 
/**
 * What people call it.
 */
name: string | null, 
/**
 * The public key that it told, where it has.
 */
public_key: DevicePublic | null, 
/**
 * Events it wrote, as far as they have arrived.
 */
events: number, 
/**
 * Time of the latest, by its logical clock.
 */
latest: string, };

/**
 * A device is admitted to a fleet, or gets another role there.
 */
export type DeviceAdmitted = { 
/**
 * The founder of the fleet it is about.
 */
founder: DevicePublic, 
/**
 * Which device.
 */
device: DeviceId, 
/**
 * The public key that it told.
 */
public_key: DevicePublic, 
/**
 * As what.
 */
role: MemberRole, 
/**
 * What it wrote after this number is judged by that role.
 */
after: number, 
/**
 * Signature (Ed25519, in base 32) by the device that writes it, for its place in that device's series. The register
 * signs as it writes.
 */
signature: string, };

/**
 * A device that writes: one register file on one phone or desk computer.
 */
export type DeviceId = string;

/**
 * The public key of the device that writes it, by which others know whose signature they see.
 */
export type DeviceKeyTold = { 
/**
 * The key.
 */
public_key: DevicePublic, 
/**
 * Signature (Ed25519, in base 32) of the device's id with this key: whoever wrote it has the private half, and another
 * device's event does not pass for it.
 */
signature: string, };

/**
 * Another device that told its public key.
 */
export type DeviceKnown = { 
/**
 * Its id in the records.
 */
device: DeviceId, 
/**
 * What people call it, where it has a name.
 */
name: string | null, 
/**
 * Its public key.
 */
public_key: DevicePublic, 
/**
 * Ten characters of that, to be compared by eye.
 */
mark: string, 
/**
 * How it stands in the fleet.
 */
standing: MemberStanding, 
/**
 * The last number of its series that stays, where it was withdrawn.
 */
stays: number | null, 
/**
 * Whether this device's word on it would count.
 */
judged_here: boolean, };

/**
 * The name of the device that writes it, such as `Van 2`.
 */
export type DeviceNamed = { 
/**
 * What people call it.
 */
name: string, };

/**
 * A device's public key.
 */
export type DevicePublic = string;

/**
 * A device as others know it.
 */
export type DeviceShown = { 
/**
 * Its public key.
 */
public_key: DevicePublic, 
/**
 * Ten characters of that, to be compared by eye.
 */
mark: string, };

/**
 * A lost device belongs to the fleet no more. What it wrote before stays.
 */
export type DeviceWithdrawn = { 
/**
 * The founder of the fleet it is about.
 */
founder: DevicePublic, 
/**
 * Which device.
 */
device: DeviceId, 
/**
 * The last number of its series that stays.
 */
after: number, 
/**
 * Signature as of [`DeviceAdmitted::signature`].
 */
signature: string, };

/**
 * Where the diameter over the cover comes from.
 */
export type DiameterFrom = "given" | "tables" | "reckoned";

/**
 * The crimps of one die set in order.
 */
export type DieSet = { 
/**
 * Its name.
 */
die_set: string, 
/**
 * The crimps.
 */
crimps: Array<CrimpOf>, 
/**
 * Their deviations from target as a control chart, in mm; none of fewer than eight.
 */
chart: Charted | null, };

/**
 * A nominal diameter (DN), the size number of a hose: 12 for the half-inch hose, 6.3 in the
 * series that print fractions. Kept in tenths so that sizes compare exactly.
 */
export type Dn = number;

/**
 * A half-finished job as its screens left it.
 */
export type Draft = { 
/**
 * Which job.
 */
job: JobId, 
/**
 * When it was kept.
 */
kept: string, 
/**
 * Whatever the job needs to go on; nobody but the job reads it.
 */
content: JsonValue, };

/**
 * A rigid end as it is drawn.
 */
export type DrawnEnd = { 
/**
 * The way the port's face looks, of length 1.
 */
direction: [number, number, number], 
/**
 * The end's axis from the sealing point to the end of the ferrule; an elbow has its corner between.
 */
axis_mm: Array<[number, number, number]>, };

/**
 * A port where it was drawn.
 */
export type DrawnPort = { 
/**
 * Where: to the right, up, towards the viewer.
 */
position_mm: [Millimetres, Millimetres, Millimetres], 
/**
 * The way the port's face looks; of any length but none.
 */
direction: [number, number, number], };

/**
 * Both ends in one pose.
 */
export type DrawnPose = { 
/**
 * Share of the travel: 0 closed, 1 open.
 */
travel: number, 
/**
 * End A.
 */
a: DrawnEnd, 
/**
 * End B.
 */
b: DrawnEnd, };

/**
 * Which clock gave the day.
 */
export type DueClock = "calendar" | "hours" | "finding" | "asked";

/**
 * How much falls due.
 */
export type DueCounts = { 
/**
 * All.
 */
total: number, 
/**
 * The day has come.
 */
past: number, 
/**
 * No day is known.
 */
unknown: number, 
/**
 * Of the past, what must not run on.
 */
stopped: number, 
/**
 * Hoses of which something is past or stopped, each counted once.
 */
hoses: number, 
/**
 * In the next 30 days.
 */
within_30: number, 
/**
 * In the next 90 days.
 */
within_90: number, 
/**
 * In the next 365 days.
 */
within_365: number, };

/**
 * The question of `register.due` with the kind of file.
 */
export type DueExport = { 
/**
 * What is written.
 */
due?: DueQuestion, 
/**
 * The kind of file.
 */
as: ListKind, };

/**
 * What falls due.
 */
export type DueFor = "service" | "storage" | "inspection" | "finding" | "asked";

/**
 * What falls due at a glance, the page and the days of the question left aside.
 */
export type DueGlance = { 
/**
 * How much.
 */
counts: DueCounts, 
/**
 * Site by site.
 */
sites: Array<DueSite>, 
/**
 * Hoses in service by their age in whole years.
 */
ages: Array<AgeCount>, };

/**
 * Standard, type and size of a hose.
 */
export type DueHose = { 
/**
 * Standard.
 */
standard: string, 
/**
 * Type.
 */
type: string, 
/**
 * Size.
 */
dn: Dn, };

/**
 * One thing that falls due, and what it puts at risk.
 */
export type DueLine = { 
/**
 * What was seen, in words.
 */
seen: FindingSaid | null, 
/**
 * What its place asks too much, as the check says it.
 */
asked: Finding | null, 
/**
 * Chance times consequence, by risk; none where the age is not known.
 */
risk: Risk | null, 
/**
 * The hose.
 */
code: TagCode, 
/**
 * Where it sits; none for a hose that was never fitted.
 */
at: PlaceAt | null, 
/**
 * What it is; none where no record says.
 */
hose: DueHose | null, 
/**
 * What falls due.
 */
what: DueFor, 
/**
 * The day the age counts from; none where no day is known.
 */
since: string | null, 
/**
 * What that day is.
 */
counted_from: CountedFrom, 
/**
 * The limit of age in years; none for what was seen.
 */
years: number | null, 
/**
 * The rule that sets it; none for what was seen.
 */
rule: CareRule | null, 
/**
 * The day by the calendar alone.
 */
calendar: string | null, 
/**
 * Hours against their limit, where the owner set one.
 */
hours: HoursClock | null, 
/**
 * The guide's own day, where the owner's rule stands over it.
 */
guide_day: string | null, 
/**
 * What was seen.
 */
finding: Standing | null, 
/**
 * The day it falls due, the earlier of both clocks; none where no day is known to count from.
 */
due: string | null, 
/**
 * Which clock gave it.
 */
by: DueClock, 
/**
 * The first day on which it is a stop; none where it never is.
 */
stop_from: string | null, 
/**
 * A caution where a limit is crossed or the age is not known, a stop where the owner's policy or a finding says
 * so, else a pass.
 */
verdict: Verdict, };

/**
 * What falls due.
 */
export type DueList = { 
/**
 * As of that day.
 */
on: string, 
/**
 * Where the guide value of service life comes from, which holds without a policy of the owner's.
 */
guide: Provenance | null, 
/**
 * The owner's policies: a change of one writes all of it anew.
 */
policies: Array<PolicySet>, 
/**
 * This page of it.
 */
due: Array<DueLine>, 
/**
 * There is more after this page.
 */
more: boolean, 
/**
 * The whole at a glance, where it was asked for.
 */
glance: DueGlance | null, 
/**
 * Where the chances come from, by risk.
 */
chances: ChancesSaid | null, };

/**
 * In which order.
 */
export type DueOrder = "date" | "risk";

/**
 * Which of what falls due.
 */
export type DueQuestion = { 
/**
 * As of that day; today without.
 */
on?: string, 
/**
 * In which order; by day without.
 */
by?: DueOrder, 
/**
 * Of these kinds; all without.
 */
what?: Array<DueFor>, 
/**
 * On this site.
 */
site?: SiteId, 
/**
 * On this machine.
 */
machine?: MachineId, 
/**
 * At this place.
 */
place?: PlaceId, 
/**
 * Of this hose.
 */
code?: TagCode, 
/**
 * What must not run on alone.
 */
stopped?: boolean, 
/**
 * Whose day has come, is not known or comes within so many days; all without.
 */
within_days?: number, 
/**
 * How many days ahead the chance of failing looks; 90 without.
 */
ahead_days?: number, 
/**
 * So many from the first are left out.
 */
offset?: number, 
/**
 * So many at most; all without.
 */
limit?: number, 
/**
 * Tell the whole at a glance as well.
 */
glance?: boolean, };

/**
 * How much falls due on a site.
 */
export type DueSite = { 
/**
 * Which; none is no site that is known.
 */
site: SiteId | null, 
/**
 * What people call it.
 */
name: string, 
/**
 * The day has come.
 */
past: number, 
/**
 * Of the past, what must not run on.
 */
stopped: number, 
/**
 * No day is known.
 */
unknown: number, 
/**
 * In the next 90 days.
 */
within_90: number, };

/**
 * What a place asks of the hose beyond pressure.
 */
export type Duty = "non-conductive" | "flame-resistant" | "antistatic";

/**
 * An elbow in the line, in one of three ways.
 *
 * - `loss_coefficient` alone: the supplier's figure, for any fitting.
 * - `angle_deg` of 45 or 90 alone: a short elbow, forged or block.
 * - `angle_deg` and `radius_ratio`: a bent tube.
 *
 * The losses are those of turbulent flow. In laminar flow an elbow loses more than is reckoned here.
 */
export type Elbow = { 
/**
 * Angle through which it turns the flow.
 */
angle_deg: Degrees | null, 
/**
 * Radius of its centre line over its bore.
 */
radius_ratio: number | null, 
/**
 * Loss in velocity heads.
 */
loss_coefficient: number | null, };

/**
 * An end class: the rows that no reading can tell apart, named by the first of them.
 */
export type EndCandidate = { 
/**
 * Family.
 */
family: string, 
/**
 * Standard.
 */
standard: string, 
/**
 * Size.
 */
size: string, 
/**
 * Dash size.
 */
dash: number | null, 
/**
 * Thread as written.
 */
thread: string | null, 
/**
 * Which half; none for flanges.
 */
gender: Gender | null, 
/**
 * Between 0 and 1.
 */
probability: number, 
/**
 * The rest of the class.
 */
also: Array<EndName>, };

/**
 * One size of a family of ends.
 */
export type EndEntry = { 
/**
 * Family.
 */
family: string, 
/**
 * Standard.
 */
standard: string, 
/**
 * Size within the family.
 */
size: string, 
/**
 * Dash size.
 */
dash?: number, 
/**
 * Hose size it goes with in the standard.
 */
dn?: Dn, 
/**
 * Thread as written; none for plain ends.
 */
thread?: string, 
/**
 * Pitch.
 */
pitch_mm?: Millimetres, 
/**
 * Threads an inch, where the thread is named so.
 */
tpi?: number, 
/**
 * Taper thread (1 in 16).
 */
taper: boolean, 
/**
 * Flank angle of the thread.
 */
flank_angle_deg?: Degrees, 
/**
 * What seals; more than one where the family is used so.
 */
seals: Array<Seal>, 
/**
 * Included angle of the seat.
 */
seat_included_angle_deg?: Degrees, 
/**
 * The halves that can be measured.
 */
halves: Array<HalfEntry>, 
/**
 * The tube-fitting ceiling; missing is not known, never unlimited.
 */
max_pressure_bar?: Bar, 
/**
 * Basis of that pressure.
 */
pressure_basis: Basis, 
/**
 * Basis of the row.
 */
basis: Basis, };

/**
 * What one end can be.
 */
export type EndFound = { 
/**
 * Which end.
 */
role: Role, 
/**
 * Likeliest first.
 */
candidates: Array<EndCandidate>, 
/**
 * Ends that would screw together with a candidate and must not, while still undecided.
 */
lookalikes: Array<LookalikeFound>, 
/**
 * Probability that the end is none of the catalogue's.
 */
unknown: number, 
/**
 * Probability that the end was changed for another family since the machine was new.
 */
changed: number, 
/**
 * What the machine's half says, where it was read.
 */
mate?: MateFound | null, };

/**
 * What one half of an end is at a glance.
 */
export type EndKind = "male" | "nut" | "stud" | "socket" | "banjo" | "tube" | "flange" | "coupling" | "staple" | "test-point";

/**
 * What is known of one end.
 */
export type EndKnown = { 
/**
 * Which.
 */
role: Role, 
/**
 * The rows of all suppliers that fit.
 */
rows: Array<SupplierKept>, 
/**
 * How it was done last time for the same hose and end.
 */
last: LastTime | null, 
/**
 * Its cut-off, learned from finished lengths.
 */
cutoff: CutoffLearned | null, };

/**
 * An end by name.
 */
export type EndName = { 
/**
 * Family.
 */
family: string, 
/**
 * Size.
 */
size: string, };

/**
 * What can be read off one half of a connection.
 */
export type EndReadings = { 
/**
 * Which end.
 */
role: Role, 
/**
 * What it is at a glance: a nut, a male thread, a plain tube and so on.
 */
kind?: EndKind | null, 
/**
 * Which half was measured.
 */
gender?: Gender | null, 
/**
 * Outside diameter of a male, inside diameter of a female.
 */
thread_diameter_mm?: Reading | null, 
/**
 * Threads an inch by the gauge.
 */
tpi?: number | null, 
/**
 * Pitch by the gauge.
 */
pitch_mm?: Reading | null, 
/**
 * Whether the thread is taper.
 */
taper?: boolean | null, 
/**
 * Flank angle by the gauge.
 */
flank_angle_deg?: Degrees | null, 
/**
 * A second diameter, read some threads nearer the body.
 */
second_thread_diameter_mm?: Reading | null, 
/**
 * How many threads apart the two diameters were read.
 */
threads_apart?: number | null, 
/**
 * What lies at a stud's shoulder or a port's mouth.
 */
shoulder?: Shoulder | null, 
/**
 * What seals.
 */
seal?: Seal | null, 
/**
 * Included angle of the seat by the gauge (37 degree flare = 74).
 */
seat_included_angle_deg?: Degrees | null, 
/**
 * Shape of the seat of the part that was measured.
 */
cone?: SeatShape | null, 
/**
 * Outside diameter of the tube, or the bore at the root of the cone.
 */
tube_od_mm?: Reading | null, 
/**
 * Through bore of the male.
 */
male_bore_mm?: Reading | null, 
/**
 * Across the flats of the swivel nut.
 */
swivel_hex_mm?: Reading | null, 
/**
 * Diameter of a flange head.
 */
head_od_mm?: Reading | null, 
/**
 * Thickness of a flange head.
 */
head_thickness_mm?: Reading | null, 
/**
 * Bolt spacing, long side, centre to centre.
 */
bolt_long_mm?: Reading | null, 
/**
 * Bolt spacing, short side.
 */
bolt_short_mm?: Reading | null, };

/**
 * How one end goes on, by the user's supplier. What is not given is listed as missing.
 */
export type EndSettings = { 
/**
 * Which end.
 */
role: Role, 
/**
 * The table, sheet or measurement the figures are from.
 */
source?: string | null, 
/**
 * Series of the fitting, by the supplier's name.
 */
series?: string | null, 
/**
 * How far the hose goes on.
 */
insertion_mm?: Millimetres | null, 
/**
 * Whether cover or tube is taken off first.
 */
skive?: Skive | null, 
/**
 * The ferrule, by the supplier's name.
 */
ferrule?: string | null, 
/**
 * What the hose is pushed on with.
 */
lubricant?: string | null, 
/**
 * The die set, by the press's name.
 */
die_set?: string | null, 
/**
 * Diameter over the crimped ferrule.
 */
crimp_diameter_mm?: Millimetres | null, 
/**
 * How far either way it may be off.
 */
crimp_tolerance_mm?: Millimetres | null, 
/**
 * Where the end's cut-off is from: a table, or measured on a new end.
 */
cutoff_source?: string | null, };

/**
 * One end of an assembly.
 */
export type EndSpec = { 
/**
 * A or B.
 */
role: Role, 
/**
 * Family by the catalogue's name, such as `JIC 37 flare` or `flange 62`.
 */
family: string, 
/**
 * Size within the family, such as `-10`, `L15`, `3/4`.
 */
size: string, 
/**
 * Which half; none for flanges.
 */
gender?: Gender | null, 
/**
 * `straight`, `elbow45`, `elbow90`, `compact90`, `standpipe`, `banjo` and the like.
 */
form?: string | null, 
/**
 * Drop of an elbow.
 */
drop_mm?: Millimetres | null, 
/**
 * From sealing point to hose stop: the supplier's or measured, never from a table of ours.
 */
cutoff_mm?: Millimetres | null, 
/**
 * The user's own rating, from their supplier; stands over the table's.
 */
rating_bar?: Bar | null, };

/**
 * What the figure of an instrument's error is.
 */
export type ErrorIs = "standard" | "limits" | "expanded";

/**
 * Figures of the service as they were worked out. While the service gives that very figure it counts as an
 * estimate; one that is measured in its place does not.
 */
export type Estimated = { 
/**
 * Tightest bend, as it was routed.
 */
bend_radius_mm: Millimetres | null, 
/**
 * Highest peak, as it was reckoned from flow and closing time.
 */
surge_pressure_bar: Bar | null, };

/**
 * An event by its device and its number there, written `device/number`.
 */
export type EventRef = string;

/**
 * What is known of the original hose: `find`'s answer, and what was printed or recorded.
 */
export type Evidence = { 
/**
 * Hose candidates.
 */
hose: Array<HoseCandidate>, 
/**
 * End candidates.
 */
ends: Array<EndFound>, 
/**
 * Probability of an unknown hose.
 */
unknown: UnknownHose, 
/**
 * Whether each part is settled; without it no part that was read is.
 */
settled: Settled | null, 
/**
 * Not used here; accepted because `find`'s answer has it.
 */
next: Array<NextReading>, 
/**
 * Not used here: a contradiction about what the hose is leaves it unsettled.
 */
contradictions: Array<PrintContradiction>, 
/**
 * Not used here: a part with a stray reading is not settled.
 */
strays?: Array<Stray>, 
/**
 * Not used here; accepted because `find`'s answer has it.
 */
enough: Settled, 
/**
 * Not used here; accepted because `find`'s answer has it.
 */
odd_ends: boolean, 
/**
 * Working pressure printed on the old hose or recorded for it.
 */
printed_pressure_bar: Bar | null, 
/**
 * Year of manufacture printed on the old hose or recorded for it.
 */
printed_year: number | null, 
/**
 * The catalogue `find` answered from.
 */
catalogue: string | null, 
/**
 * The program that answered.
 */
program: string | null, };

/**
 * What was seen at one of many against what was to be expected there.
 */
export type Excess = { 
/**
 * Failures.
 */
seen: number, 
/**
 * Failures that hoses of these ages have elsewhere.
 */
expected: number, 
/**
 * The first over the second.
 */
ratio: number, 
/**
 * Its exact 95 % bounds, by Poisson's law.
 */
ratio_ci95: [number, number], 
/**
 * The chance that any of those looked at has as many by chance alone: what is left when one picks the worst of many.
 */
by_chance: number, };

/**
 * How an exchange went. What came and went before it was cut off stays.
 */
export type Exchanged = { 
/**
 * When.
 */
at: string, 
/**
 * Events that were new here.
 */
came: number, 
/**
 * Own events that went out.
 */
went: number, 
/**
 * The last own event that the storage has, all before it included.
 */
sent: number, 
/**
 * Segments that were refused, and why.
 */
refused: Array<SegmentRefused>, 
/**
 * Devices whose later events wait for earlier ones that nobody has brought yet.
 */
waiting_for: Array<DeviceId>, 
/**
 * What became of photos.
 */
photos: PhotosExchanged, 
/**
 * Why it was cut off; none where it was whole.
 */
cut_off: string | null, };

/**
 * Failures to expect in a span to come.
 */
export type Expected = { 
/**
 * The mean.
 */
failures: number, 
/**
 * Bounds that hold the count with a chance of at least 95 %: how little is known of the law is in them, and chance.
 */
ci95: [number, number], };

/**
 * A candidate against a rival, reading by reading.
 */
export type Explained = { 
/**
 * The candidate's name, as `find` gives it.
 */
candidate: string, 
/**
 * The rival's; none where it is "none of these".
 */
rival: string | null, 
/**
 * What each reading says, the most telling first.
 */
readings: Array<Said>, 
/**
 * What is left: how common both are, the sizes of the other parts, and the machine's origin.
 */
together_bits: number, 
/**
 * All of it: the logarithm (base 2) of the odds.
 */
odds_bits: number, 
/**
 * Readings that would have to be wrong for the rival to be right.
 */
must_be_wrong: Array<string>, 
/**
 * Where the candidate's row comes from.
 */
candidate_from: Provenance, 
/**
 * Where the rival's row comes from.
 */
rival_from: Provenance | null, };

/**
 * What is to be written out.
 */
export type Export = { 
/**
 * The kind of file.
 */
as: ExportKind, };

/**
 * Kinds of files.
 */
export type ExportKind = "csv" | "xlsx" | "zip" | "json" | "ics";

/**
 * Something that a hose takes beside hose, ends and ferrules.
 */
export type ExtraPart = { 
/**
 * What.
 */
item: Item, 
/**
 * How many for each hose.
 */
count: number, };

/**
 * How the ports face each other. End A is always left in the drawing: x runs to the right, y up, z towards the
 * viewer, and A's port is the origin.
 */
export type Facing = "u" | "facing" | "right-angle" | "offset" | "away" | "free";

/**
 * What failed at a place.
 */
export type Failures = { 
/**
 * How often.
 */
times: number, 
/**
 * Why, the commonest first.
 */
causes: Array<CauseCount>, 
/**
 * How the next job there is gone about.
 */
way: Way, };

/**
 * The half that takes the other in.
 */
export type FemalePart = "nut" | "port" | "body" | "socket" | "halves";

/**
 * What of an end the spec does not say.
 */
export type FieldEnd = { 
/**
 * Length that can not bend: along the hose's axis from the sealing point to the end of the ferrule. A tape
 * on the old hose gives it.
 */
rigid_mm: Millimetres | null, 
/**
 * Where an elbow points.
 */
points: Points, };

/**
 * The ports in one pose of the machine. A is the origin but where both are `free`.
 */
export type FieldPose = { 
/**
 * How far B is to the right of A.
 */
gap_mm: Millimetres | null, 
/**
 * How far B is above A in the drawing; 0 unless given, but for `right-angle` and `offset`, which need it.
 */
rise_mm: Millimetres | null, 
/**
 * How far B stands out of the plane of the drawing, towards the viewer; 0 unless given.
 */
offset_mm: Millimetres | null, 
/**
 * How far B's port is swung in the plane of the drawing from how it faces, anticlockwise; 0 unless given.
 */
angle_deg: Degrees | null, 
/**
 * How far B's port is turned about its own axis, clockwise seen from outside onto its face; 0 unless given.
 */
roll_deg: Degrees | null, 
/**
 * A's port, where the ports are `free`.
 */
a: DrawnPort | null, 
/**
 * B's port, where the ports are `free`.
 */
b: DrawnPort | null, };

/**
 * A routing as it can be said in the field.
 */
export type FieldQuestion = { 
/**
 * The hose with its ends' forms and drops, overall length and turn. Without a length the recommended one
 * is taken.
 */
spec: Spec, 
/**
 * Outside diameter as measured; stands over the table's.
 */
hose_od_mm?: Millimetres | null, 
/**
 * How the length changes under pressure, least and greatest in percent, from the user's supplier; stands
 * over the table's.
 */
length_change_pct?: [number, number] | null, 
/**
 * How the ports face each other.
 */
facing: Facing, 
/**
 * The machine's closed pose, in which the hose is fitted.
 */
closed: FieldPose, 
/**
 * Its open pose.
 */
open?: FieldPose | null, 
/**
 * Neither port moves. Without an open pose and without this, the travel is not known.
 */
fixed: boolean, 
/**
 * Only how the hose lies at the length that is given: no other length and no cure is sought, as while a port
 * is being dragged.
 */
shape_only: boolean, 
/**
 * End A, beside what the spec says.
 */
a: FieldEnd, 
/**
 * End B, beside what the spec says.
 */
b: FieldEnd, };

/**
 * How a hose lies between ports as they were said, whether it may, and what would cure it.
 */
export type FieldRouted = { 
/**
 * The gravest finding.
 */
verdict: Verdict, 
/**
 * Gravest first.
 */
findings: Array<Finding>, 
/**
 * The ports as `route` takes them, from the closed pose to the open one.
 */
layout: Layout, 
/**
 * How the hose lies, pose by pose; none where it does not reach or no length would do.
 */
routed: Routed | null, 
/**
 * The rigid ends in every pose, in the same order: drawn even where the hose does not reach.
 */
poses: Array<DrawnPose>, 
/**
 * The pose that bends tightest, by its number.
 */
worst_pose: number | null, 
/**
 * Outside diameter reckoned with.
 */
hose_od_mm: HoseFigure, 
/**
 * Least radius at the inside of the bend.
 */
min_bend_radius_mm: HoseFigure, 
/**
 * Change of the length under pressure reckoned with, least and greatest in percent.
 */
length_change_pct: LengthChange, 
/**
 * Overall length that this is for: the given one, or the recommended one.
 */
overall_length_mm: Millimetres | null, 
/**
 * The shortest overall length that keeps the least radius in every pose and change of length, and the
 * straight length behind each ferrule.
 */
shortest_overall_length_mm: Millimetres | null, 
/**
 * The length to make: see [`Recommended`].
 */
recommended: Recommended | null, 
/**
 * The turn between two bent ends that these ports ask for, and that the hose is to be made with.
 */
turn_deg: Degrees | null, 
/**
 * Single changes that would better the verdict, each routed over the whole travel; simplest first.
 */
cures: Array<Cure>, };

/**
 * A figure of the tables.
 */
export type Figure = { 
/**
 * The figure.
 */
value: number, 
/**
 * Its unit.
 */
unit: string, 
/**
 * Where it stands.
 */
source: string, 
/**
 * How sure that is.
 */
basis: Basis, };

/**
 * A file that a command leaves. Its bytes go beside the document, never inside it.
 */
export type FileMade = { 
/**
 * A name to save it under.
 */
name: string, 
/**
 * Its MIME type.
 */
mime: string, };

/**
 * An end whose settings are from a supplier's table of the user's own.
 */
export type Filled = { 
/**
 * Which end.
 */
role: Role, 
/**
 * Whose figures they are.
 */
supplier: string, 
/**
 * Where they stand.
 */
from: string, 
/**
 * Whether the cut-off is theirs too.
 */
cutoff: boolean, };

/**
 * One thing looked at, with its limit and where the limit comes from.
 */
export type Finding = { 
/**
 * The rule's name, such as `pressure` or `end-unsettled`; the key of its words.
 */
rule: string, 
/**
 * How grave.
 */
verdict: Verdict, 
/**
 * What it is.
 */
value: number | null, 
/**
 * What it may be.
 */
limit: number | null, 
/**
 * Unit of both.
 */
unit: string, 
/**
 * Why, in words; empty until the edge writes it.
 */
why: string, 
/**
 * What to do about it, in words; empty until the edge writes it, and for a pass.
 */
cure: string, 
/**
 * Where the limit comes from.
 */
source: string, 
/**
 * How sure the limit is.
 */
basis: Basis, 
/**
 * Whether it is a limit of prudence, which a person may take on with a name and a reason.
 */
prudence: boolean, 
/**
 * Names put into the words, such as the `part` or `end` it is about.
 */
names: { [key in string]: string }, 
/**
 * The key of its words, such as `pressure-above-rating`: `why-<key>` and, where it is no pass, `cure-<key>`. One
 * that passes ends in `-ok`.
 */
case: string, 
/**
 * Who asks it.
 */
asked_by: AskedBy, 
/**
 * Whether nothing is known to be over its limit: something is not known, or not for sure.
 */
open: boolean, };

/**
 * What was seen on a hose.
 */
export type FindingSaid = { 
/**
 * The sign, by its code.
 */
sign: string, 
/**
 * What it is called.
 */
name: string, 
/**
 * How grave.
 */
grade: Verdict, 
/**
 * When.
 */
seen_on: string, };

/**
 * Length and turn of a finished assembly as they were measured.
 */
export type Finished = { 
/**
 * From sealing point to sealing point.
 */
length_mm: Millimetres | null, 
/**
 * Standard error of the tape.
 */
length_error_mm: Millimetres | null, 
/**
 * Looking along the hose from A to B with A's elbow up: clockwise to B's elbow.
 */
turn_deg: Degrees | null, 
/**
 * Standard error of what the turn was measured with.
 */
turn_error_deg: Degrees | null, };

/**
 * A measure of the finished assembly and what it is held against.
 */
export type FinishedCheck = { 
/**
 * `length` or `turn`.
 */
code: string, 
/**
 * May be ticked on `pass` alone.
 */
verdict: Judged, 
/**
 * What is done, by the words `bench-<code>`.
 */
do: string, 
/**
 * What was measured; none was not.
 */
value: number | null, 
/**
 * Lower limit; none where the practice has no tolerance.
 */
low: number | null, 
/**
 * Upper limit.
 */
high: number | null, 
/**
 * Lowest that is accepted, by the instrument's error; none where it leaves no room.
 */
accept_low: number | null, 
/**
 * Highest that is accepted.
 */
accept_high: number | null, 
/**
 * Unit of all.
 */
unit: string, 
/**
 * Where the tolerance is from.
 */
source: string, 
/**
 * How sure that is.
 */
basis: Basis, };

/**
 * What an instrument is for a tolerance.
 */
export type Fit = "good" | "narrow" | "too-coarse";

/**
 * A hose put on a place.
 */
export type Fitted = { 
/**
 * Which hose.
 */
code: TagCode, 
/**
 * Where.
 */
place: PlaceId, 
/**
 * When; where `already_there`, the day it was found.
 */
date: string, 
/**
 * It was found in place on that day, fitted at some earlier time that nobody knows.
 */
already_there: boolean, 
/**
 * Hours on the machine's meter.
 */
hours?: number | null, };

/**
 * A point of the fitted curve.
 */
export type FittedPoint = { 
/**
 * Time.
 */
time: number, 
/**
 * The part still in service.
 */
survival: number, 
/**
 * Its 95 % bounds, for that time alone.
 */
ci95: [number, number], };

/**
 * A four-bolt flange.
 */
export type FlangeEntry = { 
/**
 * Family, such as `flange 61`.
 */
family: string, 
/**
 * Standard.
 */
standard: string, 
/**
 * Size as written.
 */
size: string, 
/**
 * Dash size.
 */
dash?: number, 
/**
 * Hose size.
 */
dn?: Dn, 
/**
 * Metric bolt.
 */
bolt_metric?: string, 
/**
 * Inch bolt.
 */
bolt_inch?: string, 
/**
 * Its dimensions.
 */
dimensions: { [key in string]: Limits }, 
/**
 * Rating; missing is not known, never unlimited.
 */
max_pressure_bar?: Bar, 
/**
 * Basis of that pressure.
 */
pressure_basis: Basis, 
/**
 * Basis of the row.
 */
basis: Basis, };

/**
 * A fleet, without its key.
 */
export type Fleet = { 
/**
 * The mark that stands in its seals.
 */
mark: FleetMark, 
/**
 * What its people call it.
 */
name: string, 
/**
 * Since when this device has its key.
 */
since: string, 
/**
 * Mark of the device that handed it on; none where it was begun here.
 */
from: string | null, };

/**
 * A device to be admitted, or to get another role.
 */
export type FleetAdmit = { 
/**
 * Which.
 */
device: DeviceId, 
/**
 * As what.
 */
role: MemberRole, };

/**
 * A fleet to be begun.
 */
export type FleetBegin = { 
/**
 * What its people call it.
 */
name: string, };

/**
 * A fleet's key, to be read off this screen by another device.
 */
export type FleetHandOn = { 
/**
 * The text. It holds the key.
 */
text: string, 
/**
 * The same as a QR code.
 */
svg: string, 
/**
 * Until when it is read; later it is to be shown anew.
 */
until: string, 
/**
 * What to mind while it is shown.
 */
caution: string, };

/**
 * A fleet to be joined, once its key was looked at and compared.
 */
export type FleetJoin = { 
/**
 * The text; none where a picture goes with the question.
 */
text?: string | null, 
/**
 * The picture is a frame of a live camera of that size; a file without.
 */
frame?: FrameSize | null, 
/**
 * Mark of the device that hands it on, as a person compared it with that device's own screen.
 */
from: string, 
/**
 * As what.
 */
as: FleetRole, };

/**
 * A fleet to be left.
 */
export type FleetLeave = { 
/**
 * Its mark.
 */
mark: FleetMark, };

/**
 * A fleet's key to be looked at: its text, or a picture of its QR code.
 */
export type FleetLook = { 
/**
 * The text; none where a picture goes with the question.
 */
text: string | null, 
/**
 * The picture is a frame of a live camera of that size; a file without.
 */
frame: FrameSize | null, };

/**
 * Five characters by which a fleet's key is told from others'. They say nothing of the key itself. Two of a million
 * fleets that meet may have the same; their seals differ all the same.
 */
export type FleetMark = string;

/**
 * What a fleet is to this device.
 */
export type FleetRole = "own" | "partner";

/**
 * A fleet's key as it was read, without the key. Whoever made the text put all of it there: two people compare it with
 * what stands on the other device's screen.
 */
export type FleetSeen = { 
/**
 * What its people call it.
 */
name: string, 
/**
 * The fleet's mark.
 */
mark: FleetMark, 
/**
 * Mark of the device that hands it on.
 */
from: string, 
/**
 * What people call that device, where its key came with its records.
 */
from_name: string | null, 
/**
 * Mark of the device that founded the fleet; none where it is open.
 */
founder: string | null, };

/**
 * A lost device to be withdrawn.
 */
export type FleetWithdraw = { 
/**
 * Which.
 */
device: DeviceId, 
/**
 * The last number of its series that stays; without it, all that has come here does.
 */
after?: number | null, };

/**
 * This device and the fleets whose key it has.
 */
export type Fleets = { 
/**
 * This device.
 */
device: DeviceShown, 
/**
 * The fleet it makes tags for.
 */
own: Fleet | null, 
/**
 * How this device stands in that fleet.
 */
standing: MemberStanding, 
/**
 * Mark of the device that founded the fleet; none where it is open, so that every device of it counts.
 */
founder: string | null, 
/**
 * Fleets whose tags it knows.
 */
partners: Array<Fleet>, 
/**
 * The others whose public key came with their records.
 */
others: Array<DeviceKnown>, 
/**
 * Where the keys are, and what is not to be had.
 */
kept: string, };

/**
 * What the flow does. What can not be known from what was given is none.
 */
export type FlowAnswer = { 
/**
 * Mean velocity.
 */
velocity_m_s: number, 
/**
 * Reynolds number.
 */
reynolds: number | null, 
/**
 * How it runs.
 */
regime: Regime | null, 
/**
 * Darcy friction factor.
 */
friction_factor: number | null, 
/**
 * Pressure lost in line and elbows.
 */
pressure_drop_bar: Bar | null, 
/**
 * Viscosity that was reckoned with.
 */
kinematic_viscosity_mm2_s: number | null, 
/**
 * Density that was reckoned with.
 */
density_kg_m3: number | null, };

/**
 * A flow through a line. Flow and bore give the velocity; with the fluid follows the friction,
 * with the length the pressure drop.
 */
export type FlowQuestion = { 
/**
 * Volume flow.
 */
flow_l_min: LitresPerMinute, 
/**
 * Inside diameter.
 */
bore_mm: Millimetres, 
/**
 * Length of the straight line.
 */
length_m?: Metres | null, 
/**
 * What flows.
 */
fluid?: Fluid | null, 
/**
 * How warm it is; needed where the viscosity follows from the grade.
 */
temp_c?: Celsius | null, 
/**
 * Roughness of the bore; none for a hose, whose lining is smooth (common practice).
 */
roughness_mm?: Millimetres | null, 
/**
 * Elbows in the line.
 */
elbows?: Array<Elbow>, };

/**
 * A fluid, by grade and viscosity index or by its viscosity at the temperature of the line.
 */
export type Fluid = { 
/**
 * ISO viscosity grade, such as 46.
 */
iso_vg: number | null, 
/**
 * Viscosity index, such as 95; belongs to the grade.
 */
viscosity_index: number | null, 
/**
 * Kinematic viscosity at the temperature of the line, in place of grade and index.
 */
kinematic_viscosity_mm2_s: number | null, 
/**
 * Density; that of mineral oil where only a grade is given.
 */
density_kg_m3: number | null, };

/**
 * A class of fluid.
 */
export type FluidEntry = { 
/**
 * Its class.
 */
class: string, 
/**
 * What it is.
 */
name: string, 
/**
 * What kind of fluid.
 */
group: FluidGroup, };

/**
 * A kind of fluid.
 */
export type FluidGroup = "oil" | "water-based" | "water" | "synthetic" | "biodegradable" | "fuel" | "gas" | "other";

/**
 * Ranked candidates for the hose and each end. The probabilities of one list and its `unknown`
 * add to one.
 */
export type Found = { 
/**
 * Hose types and sizes, likeliest first.
 */
hose: Array<HoseCandidate>, 
/**
 * Each end that was read.
 */
ends: Array<EndFound>, 
/**
 * Probability that the hose is none of the catalogue's.
 */
unknown: UnknownHose, 
/**
 * Whether each part is settled.
 */
settled: Settled, 
/**
 * Whether each part is known well enough to build: settled, or whatever is still possible asks the
 * same of a new hose.
 */
enough: Settled, 
/**
 * Whether the families of the two ends go so badly together that one of them may have been changed
 * since the machine was new.
 */
odd_ends: boolean, 
/**
 * What to read next: the best reading of each part that is open, the part in the hand before one
 * nobody has touched where they are comparable, then the second best of each, and so on.
 */
next: Array<NextReading>, 
/**
 * Where the print and the readings of the hose say different things.
 */
contradictions: Array<PrintContradiction>, 
/**
 * Readings that go with the likeliest answer of their part only as strays; such a part is not settled.
 */
strays?: Array<Stray>, 
/**
 * Working pressure printed on the hose, as far as its print can be read.
 */
printed_pressure_bar?: Bar | null, 
/**
 * Year of manufacture printed on the hose; none where it can be read in two ways.
 */
printed_year?: number | null, };

/**
 * Says that the bytes are no file but a frame of a live camera: the light of each pixel, 0 to 255, row by row.
 */
export type FrameSize = { 
/**
 * Pixels in a row.
 */
width: number, 
/**
 * Rows.
 */
height: number, };

/**
 * Which half of a connection a part is, by its thread.
 */
export type Gender = "male" | "female";

/**
 * A reading of a crimp that was given up. A crimp that was read until it pleased looks like any other else.
 */
export type GivenUp = { 
/**
 * What was read, whether it can be or is a slip of the finger.
 */
mm: Millimetres, 
/**
 * What it was read with.
 */
instrument: Instrument, 
/**
 * Why it counts no more.
 */
why: WhyGivenUp, };

/**
 * Hoses at a glance.
 */
export type Glance = { 
/**
 * As of that day.
 */
on: string, 
/**
 * Why hoses failed in the last 12 months, the commonest first.
 */
causes: Array<GlanceCause>, 
/**
 * The service limit of the fleet, in years.
 */
limit_years: number | null, 
/**
 * All of the filter.
 */
hoses: number, 
/**
 * On a machine.
 */
in_service: number, 
/**
 * Whose soonest day has come.
 */
past: number, 
/**
 * Whose soonest day is not known.
 */
unknown: number, 
/**
 * That must not run on.
 */
stopped: number, 
/**
 * That fall due in the next 30 days.
 */
within_30: number, 
/**
 * That fall due in the next 90 days.
 */
within_90: number, 
/**
 * Failures at places of the filter's site and machine in the last 12 months.
 */
failures_12_months: number, 
/**
 * Of those in service, how many are how old.
 */
ages: Array<AgeCount>, };

/**
 * How often hoses failed for one cause.
 */
export type GlanceCause = { 
/**
 * By its code.
 */
cause: string, 
/**
 * What it is called.
 */
name: string, 
/**
 * How often.
 */
count: number, };

/**
 * Which hoses, at a glance.
 */
export type GlanceQuestion = { 
/**
 * As of that day; today without.
 */
on?: string, 
/**
 * Which hoses.
 */
filter?: HoseFilter, };

/**
 * One thing seen, and how grave it is.
 */
export type Graded = { 
/**
 * What: a code of the signs, such as `ABR-WIRE`. One that the tables do not have counts by its grade.
 */
sign: string, 
/**
 * How grave. A lighter grade than that of the tables does not count.
 */
grade: Verdict, };

/**
 * Hoses that are put together.
 */
export type Group = { "by": "hose", 
/**
 * Its standard.
 */
standard: string, 
/**
 * Its type.
 */
type: string, } | { "by": "line", 
/**
 * Which.
 */
line: Line, } | { "by": "load", 
/**
 * How much.
 */
load: Load, } | { "by": "machine", 
/**
 * Which, as it is written there.
 */
kind: string, } | { "by": "place", 
/**
 * The machines' kind.
 */
kind: string, 
/**
 * What people call the place.
 */
name: string, } | { "by": "not-known" };

/**
 * A guide of the tables.
 */
export type GuideRule = { 
/**
 * What it limits.
 */
what: DueFor, 
/**
 * Where it is so hard on hoses; none is anywhere.
 */
demand: Demand | null, 
/**
 * The limit.
 */
years: number, 
/**
 * The rule, such as `L055`.
 */
id: string, 
/**
 * Where it comes from.
 */
source: string, 
/**
 * How sure that is.
 */
basis: Basis, 
/**
 * Remarks.
 */
note: string, };

/**
 * One half of a connection.
 */
export type HalfEntry = { 
/**
 * Which; none for ends without a thread.
 */
gender?: Gender, 
/**
 * Shape of its cone.
 */
cone?: Cone, 
/**
 * Its dimensions.
 */
dimensions: { [key in string]: Limits }, };

/**
 * A SHA-256 (FIPS 180-4): of an event or of a photo's bytes.
 */
export type Hash = string;

/**
 * One thing found.
 */
export type Hit = { "what": "hose", 
/**
 * Its code.
 */
code: TagCode, 
/**
 * Where it sits, if it is fitted.
 */
at: PlaceAt | null, 
/**
 * What is on record of it contradicts itself.
 */
unsettled: boolean, } | { "what": "place", 
/**
 * Where it is.
 */
at: PlaceAt, 
/**
 * How many hoses failed there.
 */
failed: number, } | { "what": "machine", 
/**
 * Which.
 */
machine: MachineId, 
/**
 * What people call it.
 */
name: string, 
/**
 * What people call its site.
 */
site_name: string | null, 
/**
 * What is on record of it contradicts itself.
 */
unsettled: boolean, } | { "what": "site", 
/**
 * Which.
 */
site: SiteId, 
/**
 * What people call it.
 */
name: string, };

/**
 * What was found.
 */
export type Hits = { 
/**
 * Hoses, places, machines, sites; in each what was recorded last first.
 */
hits: Array<Hit>, };

/**
 * A hose class: the rows that no reading can tell apart, named by the first of them.
 */
export type HoseCandidate = { 
/**
 * Standard.
 */
standard: string, 
/**
 * Type.
 */
type: string, 
/**
 * Nominal diameter.
 */
dn: Dn, 
/**
 * Dash size.
 */
dash: number | null, 
/**
 * Between 0 and 1.
 */
probability: number, 
/**
 * The rest of the class.
 */
also: Array<HoseName>, };

/**
 * One clock.
 */
export type HoseClock = { 
/**
 * The day it runs from; none is not known.
 */
day: string | null, 
/**
 * Years since then.
 */
years: number | null, 
/**
 * It has run longer: the hose was found in place on that day.
 */
at_least: boolean, };

/**
 * The three clocks of a hose.
 */
export type HoseClocks = { 
/**
 * Since the hose itself was made.
 */
hose_made: HoseClock, 
/**
 * Since it was made into an assembly.
 */
assembled: HoseClock, 
/**
 * Since it was fitted where it sits.
 */
fitted: HoseClock, };

/**
 * Codes of hoses.
 */
export type HoseCodes = { 
/**
 * In the order of the table.
 */
codes: Array<TagCode>, 
/**
 * There are more.
 */
more: boolean, };

/**
 * A hose type.
 */
export type HoseEntry = { 
/**
 * Standard, such as `EN 853`.
 */
standard: string, 
/**
 * Type, such as `2SN`.
 */
type: string, 
/**
 * What carries the pressure; missing where the standard leaves it open.
 */
reinforcement?: Reinforcement, 
/**
 * Fewest layers of it.
 */
layers_min: number, 
/**
 * Most layers of it.
 */
layers_max: number, 
/**
 * Cover, in the table's words.
 */
cover: string, 
/**
 * Classes of fluid it is made for.
 */
fluids: Array<string>, 
/**
 * What took its place.
 */
superseded_by?: string, 
/**
 * Its sizes, smallest first.
 */
sizes: Array<HoseSize>, };

/**
 * A length that the routing rests on, with where it comes from.
 */
export type HoseFigure = { 
/**
 * The length; none is not known.
 */
value: Millimetres | null, 
/**
 * The publication, table or practice.
 */
source: string, 
/**
 * How it came to be known.
 */
basis: Basis, };

/**
 * Which hoses.
 */
export type HoseFilter = { 
/**
 * With words that begin so.
 */
words?: string, 
/**
 * On this site.
 */
site?: SiteId, 
/**
 * On this machine.
 */
machine?: MachineId, 
/**
 * On such a line.
 */
line?: Line, 
/**
 * Standing so in their life; all without.
 */
state?: HoseState, 
/**
 * Of this standard.
 */
standard?: string, 
/**
 * Of this type.
 */
type?: string, 
/**
 * Due before that day.
 */
due_before?: string, 
/**
 * Whose day has come, or not.
 */
past?: boolean, };

/**
 * One inspection.
 */
export type HoseInspection = { 
/**
 * The event that stands.
 */
version: EventRef, 
/**
 * When.
 */
date: string, 
/**
 * What was seen.
 */
findings: Array<Graded>, 
/**
 * Its ends were opened; else it was looked at in place.
 */
opened: boolean, };

/**
 * Hose that comes, as pieces of one length each.
 */
export type HoseLoaded = { 
/**
 * To which van or shelf.
 */
store: string, 
/**
 * What hose.
 */
hose: Thing, 
/**
 * Reel or offcut.
 */
sort: StockSort, 
/**
 * Length of each piece.
 */
length_mm: Millimetres, 
/**
 * How many pieces; one without.
 */
pieces?: number, 
/**
 * First day of the period printed on it.
 */
made?: string, 
/**
 * The supplier's name for it.
 */
label?: string, 
/**
 * Into which bin.
 */
bin?: string, };

/**
 * A hose row by name.
 */
export type HoseName = { 
/**
 * Standard.
 */
standard: string, 
/**
 * Type.
 */
type: string, 
/**
 * Nominal diameter.
 */
dn: Dn, 
/**
 * Dash size.
 */
dash: number | null, };

/**
 * A remark.
 */
export type HoseNote = { 
/**
 * The event that stands.
 */
version: EventRef, 
/**
 * The remark.
 */
text: string, };

/**
 * A limit of prudence that was taken on.
 */
export type HoseOverride = { 
/**
 * The event that stands.
 */
version: EventRef, 
/**
 * The finding's rule.
 */
rule: string, 
/**
 * Why.
 */
reason: string, 
/**
 * Who.
 */
person: PersonId, 
/**
 * The person's name, unless it was erased or has not arrived.
 */
name: string | null, };

/**
 * A photo.
 */
export type HosePhoto = { 
/**
 * The event that stands.
 */
version: EventRef, 
/**
 * Hash of its bytes.
 */
sha256: Hash, 
/**
 * Media type.
 */
mime: string, 
/**
 * Length in bytes.
 */
length: number, };

/**
 * What can be read off a hose that is cut back from the squeezed part.
 */
export type HoseReadings = { 
/**
 * Bore.
 */
id_mm: Reading | null, 
/**
 * Over the cover.
 */
cover_od_mm: Reading | null, 
/**
 * Over the reinforcement.
 */
reinforcement_od_mm: Reading | null, 
/**
 * What carries the pressure.
 */
reinforcement: Reinforcement | null, 
/**
 * Layers of it, counted.
 */
layers: number | null, 
/**
 * What the cover is.
 */
cover: Cover | null, 
/**
 * What can still be read on the cover; `?` or `.` for one worn letter, `*` or `...` for any number.
 */
print: string | null, };

/**
 * A hose by its standard's names, as in the catalogue.
 */
export type HoseRef = { 
/**
 * The standard, such as `EN 853`.
 */
standard: string, 
/**
 * The type within it, such as `2SN`.
 */
type: string, 
/**
 * Nominal diameter.
 */
dn: Dn, 
/**
 * The user's own minimum bend radius at the inside of the bend, from their supplier; stands over the table's.
 */
min_bend_radius_mm?: Millimetres | null, 
/**
 * The user's own lowest absolute pressure inside, in kPa, from their supplier; stands over the table's.
 */
vacuum_kpa_abs?: number | null, };

/**
 * A hose in the table.
 */
export type HoseRow = { 
/**
 * Its code.
 */
code: TagCode, 
/**
 * Where it stands in its life, by its name.
 */
state: string, 
/**
 * Where it sits.
 */
at: PlaceAt | null, 
/**
 * Standard.
 */
standard: string | null, 
/**
 * Type.
 */
type: string | null, 
/**
 * Size.
 */
dn: Dn | null, 
/**
 * Overall length.
 */
length_mm: Millimetres | null, 
/**
 * What the line does.
 */
line: Line | null, 
/**
 * When the hose was made.
 */
hose_made: string | null, 
/**
 * When it was assembled.
 */
assembled: string | null, 
/**
 * When it was fitted where it sits.
 */
fitted: string | null, 
/**
 * Its age in years by the clock that its service life counts by; none where no day is known.
 */
age_years: number | null, 
/**
 * It is older than that: it was found in place.
 */
at_least: boolean, 
/**
 * The limit of service or storage that holds for it, in years.
 */
limit_years: number | null, 
/**
 * The soonest day it falls due.
 */
due: string | null, 
/**
 * What falls due then.
 */
due_what: DueFor | null, 
/**
 * The gravest of all that falls due; none where nothing does.
 */
verdict: Verdict | null, 
/**
 * How many hoses failed at its place.
 */
failures: number, 
/**
 * The gravest that its last inspection found; none where it was never inspected.
 */
grade: Verdict | null, };

/**
 * A hose with all that is recorded of it, its three clocks, and what falls due.
 */
export type HoseShown = { 
/**
 * Hose made, assembled, fitted.
 */
clocks: HoseClocks, 
/**
 * What falls due of it.
 */
due: Array<DueLine>, 
/**
 * Its code.
 */
code: TagCode, 
/**
 * Where it stands in its life.
 */
status: Status, 
/**
 * The assembly; none while another device's record of its making has not arrived.
 */
assembly: Versioned<Assembly> | null, 
/**
 * Where it sat and sits, by date.
 */
stays: Array<Stay>, 
/**
 * Inspections, by date.
 */
inspections: Array<HoseInspection>, 
/**
 * Whether a label of it was printed, or seen on it.
 */
labelled: boolean, 
/**
 * Limits of prudence that were taken on for it.
 */
overrides: Array<HoseOverride>, 
/**
 * Photos of it.
 */
photos: Array<HosePhoto>, 
/**
 * Remarks on it.
 */
notes: Array<HoseNote>, 
/**
 * Events about it that contradict each other, for a person to settle.
 */
conflicts: Array<EventRef>, 
/**
 * Every event about it, by time.
 */
history: Array<Written>, };

/**
 * One size of a hose type.
 */
export type HoseSize = { 
/**
 * Nominal diameter.
 */
dn: Dn, 
/**
 * Dash size as printed.
 */
dash?: number, 
/**
 * Its dimensions.
 */
dimensions: { [key in string]: Limits }, 
/**
 * Maximum working pressure; missing is not known, never unlimited.
 */
max_working_pressure_bar?: Bar, 
/**
 * Basis of that pressure.
 */
pressure_basis: Basis, 
/**
 * Minimum bend radius, at the inside of the bend.
 */
min_bend_radius_mm?: Millimetres, 
/**
 * Coldest fluid and hottest oil.
 */
temperatures_c: [Celsius, Celsius], };

/**
 * What the table is sorted by.
 */
export type HoseSort = "due" | "age" | "machine" | "type" | "code" | "fitted" | "failures";

/**
 * Where a hose stands in its life.
 */
export type HoseState = "made" | "fitted" | "taken-off" | "failed-proof" | "withdrawn";

/**
 * One kind of hose in a store.
 */
export type HoseStock = { 
/**
 * The van or shelf.
 */
store: string, 
/**
 * What hose.
 */
hose: Thing, 
/**
 * It in words.
 */
name: string, 
/**
 * All its pieces together.
 */
total_mm: Millimetres, 
/**
 * At or below which length it is low; none is not said.
 */
low_mark_mm: Millimetres | null, 
/**
 * Whether it is low.
 */
low: boolean, 
/**
 * What a metre costs; none is not priced.
 */
price: MoneyShown | null, 
/**
 * Its pieces, longest first.
 */
pieces: Array<PieceStock>, };

/**
 * Another hose that may be made in its place.
 */
export type HoseSubstitute = { 
/**
 * Which.
 */
hose: Thing, 
/**
 * It in words.
 */
name: string, 
/**
 * What the whole check says of it; never stop.
 */
verdict: Verdict, 
/**
 * For and against, in words.
 */
reasons: Array<string>, 
/**
 * The longest piece.
 */
piece: PieceId, 
/**
 * Its bin.
 */
bin: string, 
/**
 * Its length.
 */
length_mm: Millimetres, };

/**
 * Hours of the machine against their limit.
 */
export type HoursClock = { 
/**
 * The limit.
 */
limit: number, 
/**
 * The rule that sets it.
 */
rule: CareRule, 
/**
 * Hours run when the meter was read last; none is not known.
 */
run: number | null, 
/**
 * When it was read.
 */
read_on: string | null, 
/**
 * The machine's own rate of use, which turns hours to a day.
 */
per_day: number | null, 
/**
 * The day the limit is reached at that rate.
 */
due: string | null, 
/**
 * Why something of this is not known.
 */
why_not: HoursUnknown | null, };

/**
 * A reading of a machine's hour meter.
 */
export type HoursRead = { 
/**
 * Whose.
 */
machine: MachineId, 
/**
 * Hours on the meter.
 */
hours: number, 
/**
 * When it was read.
 */
date: string, };

/**
 * Why an age in hours is not known.
 */
export type HoursUnknown = "no-reading" | "no-hours-at-fitting" | "meter-set-back" | "no-rate";

/**
 * How the cut-off of one end was parted from the other's.
 */
export type HowLearned = "same-ends" | "less-other";

/**
 * An id for a new site, machine, circuit, place, job or person.
 */
export type Id = { 
/**
 * 32 hexadecimal digits that no two devices give alike.
 */
id: string, };

/**
 * A list to be taken in.
 */
export type Import = { 
/**
 * The file's name, for messages.
 */
name: string, 
/**
 * Say what would be made and refused; change nothing.
 */
dry_run: boolean, 
/**
 * The row of its headings, from 1; found by itself without.
 */
header_row?: number | null, 
/**
 * What the columns are; as their headings propose without. A heading that nothing proposes is an error then.
 */
columns?: Array<SheetMatched<ListColumn>> | null, 
/**
 * What stands in no column and holds for every row, such as the site.
 */
fixed?: Partial<Record<ListColumn, string>>, 
/**
 * Rows that are left out, as a spreadsheet numbers them.
 */
leave_out?: Array<number>, };

/**
 * What was, or would be, made of a list.
 */
export type Imported = { 
/**
 * Nothing was changed.
 */
dry_run: boolean, 
/**
 * Rows of the list.
 */
rows: number, 
/**
 * Sites that were new. Like the counts below, of the rows that are not refused: while one is, a dry run tells what
 * they would make without it, and nothing is taken in.
 */
sites: number, 
/**
 * Machines that were new.
 */
machines: number, 
/**
 * Places that were new.
 */
places: number, 
/**
 * Hoses that were new.
 */
hoses: number, 
/**
 * Hoses that the register has on a machine and the list off it: taken off.
 */
changed: number, 
/**
 * Rows whose hose the register has already, by its code or, without one, by its place, the day it was
 * fitted and its spec: left as it is.
 */
known: number, 
/**
 * Rows that can not be taken in, with the reason. Unless this is a dry run there are none.
 */
refused: Array<RowRefused>, 
/**
 * Every row that is not blank, in their order, with what becomes of it.
 */
told: Array<RowTold>, };

/**
 * What was seen and what is done about it.
 */
export type InspectSaid = { 
/**
 * The sign, by its code.
 */
code: string, 
/**
 * How grave it counts.
 */
grade: Verdict, 
/**
 * What it is and what to do, in words.
 */
words: string, };

/**
 * What it would do.
 */
export type InspectTried = { 
/**
 * The gravest of it.
 */
grade: Verdict, 
/**
 * The soonest day the hose falls due now; none is not known, or nothing falls due.
 */
due_before: string | null, 
/**
 * And with it.
 */
due_after: string | null, 
/**
 * What is seen stops the machine.
 */
machine_stopped: boolean, 
/**
 * The machine.
 */
machine: MachineNamed | null, 
/**
 * Each thing that was seen, and what is done about it.
 */
said: Array<InspectSaid>, };

/**
 * An inspection as it would be written down.
 */
export type InspectTry = { 
/**
 * Which hose.
 */
code: TagCode, 
/**
 * When.
 */
date: string, 
/**
 * What was seen.
 */
findings: Array<Graded>, 
/**
 * Whether its ends were opened, which changes nothing of what it does.
 */
opened?: boolean, };

/**
 * A hose looked at.
 */
export type Inspected = { 
/**
 * Which hose.
 */
code: TagCode, 
/**
 * When.
 */
date: string, 
/**
 * What was seen, each with its gravity. Empty: nothing was found.
 */
findings: Array<Graded>, 
/**
 * Its ends were opened; else it was looked at in place, and what can not be seen there was not.
 */
opened?: boolean, };

/**
 * What the diameter or length was read with.
 */
export type Instrument = { 
/**
 * Its name or number, as it stands on it.
 */
name: string, 
/**
 * Its error.
 */
error_mm: Millimetres, 
/**
 * What that figure is.
 */
error_is: ErrorIs, };

/**
 * What an instrument is for a tolerance.
 */
export type InstrumentFit = { 
/**
 * Expanded uncertainty of one reading, coverage factor 2.
 */
expanded_mm: Millimetres, 
/**
 * Tolerance over expanded uncertainty (measurement capability index).
 */
capability: number, 
/**
 * What that makes it.
 */
fit: Fit, 
/**
 * The coarsest instrument that would be good for it.
 */
would_do_mm: Millimetres, };

/**
 * Names or numbers of the instruments in use, as they stand on them; blank where there is none.
 */
export type Instruments = { 
/**
 * The caliper.
 */
caliper: string, 
/**
 * The thread gauge.
 */
thread_gauge: string, 
/**
 * The seat gauge.
 */
seat_gauge: string, 
/**
 * The tape.
 */
tape: string, 
/**
 * The micrometer.
 */
micrometer: string, };

/**
 * A thing that is kept, or anything else by what people call it, such as `assembly oil 1 l`.
 */
export type Item = Thing | string;

/**
 * A counted thing in one bin of a store.
 */
export type ItemStock = { 
/**
 * The van or shelf.
 */
store: string, 
/**
 * What.
 */
item: Item, 
/**
 * Which kind.
 */
kind: StockKind, 
/**
 * It in words.
 */
name: string, 
/**
 * Its bin; blank is not said.
 */
bin: string, 
/**
 * How many lie there; below zero when more went than was ever entered.
 */
quantity: number, 
/**
 * How many lie in all bins of the store.
 */
in_store: number, 
/**
 * Counted in.
 */
unit: StockUnit, 
/**
 * At or below how many in all bins it is low; none is not said.
 */
low_mark: number | null, 
/**
 * Whether it is low.
 */
low: boolean, 
/**
 * Whether more went than was ever entered.
 */
negative: boolean, 
/**
 * What one costs; none is not priced.
 */
price: MoneyShown | null, };

/**
 * Which job.
 */
export type Job = { 
/**
 * Its id.
 */
job: JobId, };

/**
 * A job: one visit's work on one hose, from finding to fitting.
 */
export type JobId = string;

/**
 * Jobs that are not done.
 */
export type Jobs = { 
/**
 * The latest first.
 */
jobs: Array<Draft>, };

export type JsonValue = number | string | boolean | Array<JsonValue> | { [key in string]: JsonValue } | null;

/**
 * What a measurement says of a limit. Ordered: the gravest of several is that of the whole.
 */
export type Judged = "pass" | "unsettled" | "stop";

/**
 * A job as it stands.
 */
export type Keep = { 
/**
 * Which; a new one without.
 */
job?: JobId | null, 
/**
 * All that the screens need to go on with it.
 */
content: JsonValue, };

/**
 * The labels of a batch.
 */
export type LabelBatch = { 
/**
 * Each hose and what becomes of its label, in their order on paper.
 */
labels: Array<BatchLabel>, 
/**
 * How many are made.
 */
made: number, 
/**
 * How many say that the hose had a label before.
 */
reprints: number, 
/**
 * Pages that they take.
 */
pages: number, };

/**
 * Of which hoses labels are made.
 */
export type LabelBatchOf = { "machine": MachineId } | { "due": string } | { "codes": Array<TagCode> };

/**
 * Labels to be made.
 */
export type LabelBatchQuestion = { 
/**
 * Of which hoses.
 */
of: LabelBatchOf, 
/**
 * What they are printed on.
 */
stock: LabelStock, 
/**
 * How they lie on paper.
 */
paper: LabelPaper, };

/**
 * How a label lies on a hose.
 */
export type LabelCurve = { 
/**
 * Diameter over the cover.
 */
cover_od_mm: Millimetres, 
/**
 * Where that comes from.
 */
od_from: DiameterFrom, 
/**
 * What is not sure of it, in words; none where it was measured.
 */
doubt: string | null, 
/**
 * How wide a code may be round the hose for a camera to read it.
 */
seen_mm: Millimetres, 
/**
 * Which way the label lies.
 */
direction: LabelDirection, };

/**
 * Which way a label lies that is stuck round a hose.
 */
export type LabelDirection = "along" | "around";

/**
 * A label as it will print.
 */
export type LabelDrawn = { 
/**
 * The label, sized in mm.
 */
svg: string, 
/**
 * What it holds.
 */
holds: LabelHolds, 
/**
 * What its QR code says when read.
 */
text: string, 
/**
 * Side of a module.
 */
module_mm: number, 
/**
 * Printer dots a module.
 */
module_dots: number, 
/**
 * Version of the QR code, 1 to 40.
 */
version: number, 
/**
 * Error correction level of the QR code: `L`, `M`, `Q` or `H`.
 */
level: string, 
/**
 * Side of the QR code without its quiet zone.
 */
code_mm: number, 
/**
 * From how far a camera reads it, by a rule of thumb of print guides: ten times its side for a code of 25 modules, and
 * less as there are more.
 */
reads_from_mm: number, 
/**
 * How many facts had no room in words.
 */
left_off: number, 
/**
 * How it lies on the hose, where it is stuck round it.
 */
curve: LabelCurve | null, 
/**
 * Whether it says that the hose had a label before.
 */
reprint: boolean, 
/**
 * Whether it carries the seal of this device's fleet. A QR code that holds the code alone has no seal.
 */
sealed: boolean, };

/**
 * How a label is fixed to a hose.
 */
export type LabelForm = "flag" | "wrap" | "plate";

/**
 * What a label holds.
 */
export type LabelHolds = "full-text" | "code-alone" | "code-only";

/**
 * Kinds of label files.
 */
export type LabelKind = "png" | "svg" | "pdf";

/**
 * What a label is made of.
 */
export type LabelMaterial = "polyester" | "polypropylene" | "vinyl" | "paper" | "metal" | "other";

/**
 * How labels lie on paper.
 */
export type LabelPaper = "one-each" | "a4" | "letter";

/**
 * How a label comes out, or why there is none: one of the two.
 */
export type LabelPreview = { 
/**
 * The label.
 */
label: LabelDrawn | null, 
/**
 * Why it can not be made on that stock.
 */
refused: LabelRefused | null, };

/**
 * A label to be made.
 */
export type LabelQuestion = { 
/**
 * What it says. Of a hose on record the label is that of the record; any other keeps the seal it was made with.
 */
tag: TagContent, 
/**
 * What it is printed on.
 */
stock: LabelStock, 
/**
 * Diameter over the hose's cover, as it was measured; that of the tables without. Only a label that is stuck round
 * the hose asks for it.
 */
cover_od_mm?: Millimetres | null, 
/**
 * The kind of file.
 */
as: LabelKind, };

/**
 * Kinds of reasons why a label can not be made.
 */
export type LabelRefusal = "stock" | "too-small" | "no-diameter" | "curved";

/**
 * Why a label can not be made on a stock, and what would do.
 */
export type LabelRefused = { 
/**
 * What kind of reason.
 */
case: LabelRefusal, 
/**
 * Why, and what would do.
 */
why: string, 
/**
 * What is not sure of the diameter that it was refused by, in words; none where that was measured or is no reason.
 */
doubt: string | null, 
/**
 * The user's other stocks that would do, in words; empty where none would.
 */
instead: string, 
/**
 * The names of these stocks.
 */
would_do: Array<string>, 
/**
 * The height that would do at that width, where there is one.
 */
needed_height_mm: number | null, };

/**
 * A stock of labels.
 */
export type LabelStock = { 
/**
 * What the user calls it.
 */
name: string, 
/**
 * Width of what is printed, in the direction of the words.
 */
width_mm: number, 
/**
 * Height of what is printed.
 */
height_mm: number, 
/**
 * Dots an inch of the printer it is in, commonly 203, 300 or 600.
 */
dpi: number, 
/**
 * What it is made of.
 */
material: LabelMaterial, 
/**
 * How it is fixed to the hose.
 */
form: LabelForm, };

/**
 * A hose got a label here, or was found with one.
 */
export type Labelled = { 
/**
 * Which hose.
 */
code: TagCode, 
/**
 * How that is known.
 */
how: LabelledHow, };

/**
 * How it is known that a hose has a label.
 */
export type LabelledHow = "printed" | "seen";

/**
 * A part of the work and its time.
 */
export type Labour = { 
/**
 * What is done, such as `crimp and prove` or `travel`.
 */
name: string, 
/**
 * What it is done for.
 */
per: LabourPer, 
/**
 * Minutes.
 */
minutes: number, };

/**
 * What a part of the work is done for.
 */
export type LabourPer = "hose" | "job";

/**
 * A language that there are words in.
 */
export type LanguageTag = "en" | "de" | "es";

/**
 * How an end was put on last time.
 */
export type LastTime = { 
/**
 * In which assembly.
 */
code: TagCode, 
/**
 * When it was assembled.
 */
assembled: string | null, 
/**
 * By which settings, for the end that is asked.
 */
settings: EndSettings, 
/**
 * With which cut-off.
 */
cutoff_mm: Millimetres | null, 
/**
 * By whom, where anyone said so and the name stands.
 */
by: string | null, };

/**
 * A hose between two ports of a machine that may move.
 */
export type Layout = { 
/**
 * The near port as the hose is fitted. Poses that do not name theirs have this one.
 */
a: Port | null, 
/**
 * The far port as the hose is fitted.
 */
b: Port | null, 
/**
 * Length of hose that is free to bend, between the rigid ends. Without it the shortest is sought.
 */
free_length_mm: Millimetres | null, 
/**
 * Outside diameter of the hose.
 */
hose_od_mm: Millimetres | null, 
/**
 * Least radius at the inside of the bend.
 */
min_bend_radius_mm: Millimetres | null, 
/**
 * The machine's other poses, in the order of its travel.
 */
poses: Array<Pose>, 
/**
 * How much the length may change under pressure, least and greatest, in percent. 0 unless given.
 */
length_change_pct: [number, number] | null, };

/**
 * When it costs least to replace, and what other ages cost.
 */
export type LeastCost = { 
/**
 * What a failure costs, in planned replacements. It is the user's.
 */
ratio: number, 
/**
 * The age; none where no age costs less than to wait for the failure.
 */
age: number | null, 
/**
 * Where the age would lie at either bound of the shape, the earlier first; none is: waiting would cost least.
 */
age_ci95: [number | null, number | null], 
/**
 * Cost at the age over that of waiting for failures.
 */
cost: number, 
/**
 * The ages between which the cost is within 5 % of the least; the later is none where waiting is within it.
 */
near: [number | null, number | null] | null, 
/**
 * Age and cost over that of waiting for failures.
 */
curve: Array<[number, number]>, };

/**
 * Why an event does not count.
 */
export type LeftOut = "waits" | "role" | "withdrawn" | "forged" | "senior";

/**
 * What does not count.
 */
export type LeftOutList = { 
/**
 * The latest first, 200 at most.
 */
events: Array<Unheard>, };

/**
 * How much of a device does not count, for one reason.
 */
export type LeftOutOf = { 
/**
 * Which.
 */
device: DeviceId, 
/**
 * What people call it.
 */
name: string | null, 
/**
 * Why.
 */
why: LeftOut, 
/**
 * How many of its events.
 */
count: number, };

/**
 * Whose.
 */
export type LeftOutQuestion = { 
/**
 * The device that wrote it.
 */
device: DeviceId, };

/**
 * How the length changes under pressure, with where that comes from.
 */
export type LengthChange = { 
/**
 * Least and greatest, in percent.
 */
value: [number, number], 
/**
 * The publication, table or practice.
 */
source: string, 
/**
 * How it came to be known.
 */
basis: Basis, };

/**
 * Whose length tolerances are worked to.
 */
export type LengthPractice = "din-20066" | "american";

/**
 * Units of length.
 */
export type LengthUnit = "mm" | "inch";

/**
 * Where a reading lies.
 */
export type Lies = "inside" | "doubtful-low" | "doubtful-high" | "low" | "high";

/**
 * How long such hoses last. Times are in the history's unit; an infinite life or bound is none.
 */
export type Life = { 
/**
 * Hoses in the history.
 */
n: number, 
/**
 * Those that failed.
 */
failures: number, 
/**
 * Of these, those found failed since nobody knows when.
 */
between: number, 
/**
 * What it would take to tell whether such hoses wear out.
 */
to_tell: ToTell, 
/**
 * Why shape, scale and what follows from them are none, where they are.
 */
unfitted: Unfitted | null, 
/**
 * Weibull shape.
 */
shape: number | null, 
/**
 * What its bounds say of wear.
 */
wear: Wear, 
/**
 * Weibull scale: 63.2 % have failed by it.
 */
scale: number | null, 
/**
 * 95 % bounds of the shape by profile likelihood.
 */
shape_ci95: [number | null, number | null], 
/**
 * 95 % bounds of the scale by profile likelihood.
 */
scale_ci95: [number | null, number | null], 
/**
 * Log likelihood of the fit.
 */
log_likelihood: number | null, 
/**
 * Time by which one in ten has failed.
 */
b10: number | null, 
/**
 * Its 95 % bounds by the delta method on the log scale.
 */
b10_ci95: [number | null, number | null], 
/**
 * Mean life.
 */
mean: number | null, 
/**
 * How the part still in service was reckoned.
 */
survival_by: SurvivalBy, 
/**
 * For each time by which some failed, the part still in service just after it.
 */
survival: Array<[number, number]>, 
/**
 * 95 % bounds of each of them, for that time alone; none where nothing is left in service, and by Turnbull's way, which
 * gives none.
 */
survival_ci95: Array<[number, number] | null>, 
/**
 * The fitted curve with its bounds, up to the longest that any was watched; empty where there is no fit.
 */
fitted: Array<FittedPoint>, };

/**
 * Smallest and largest of a new part. Where the table gives a nominal size alone, both are that size;
 * where it gives one limit, the other is none.
 */
export type Limits = [number | null, number | null];

/**
 * What the line does.
 */
export type Line = "pressure" | "return" | "suction" | "case-drain" | "pilot" | "cylinder";

/**
 * What a column of a hose list is.
 */
export type ListColumn = "site" | "machine" | "kind" | "machine_hours" | "place" | "place_name" | "line" | "relief_bar" | "working_pressure_bar" | "fluid" | "code" | "hose" | "standard" | "type" | "dn" | "cover" | "a_family" | "a_size" | "a_gender" | "a_form" | "b_family" | "b_size" | "b_gender" | "b_form" | "length_mm" | "turn_deg" | "hose_made" | "assembled" | "fitted" | "fitted_hours" | "removed" | "removed_hours" | "cause" | "note";

/**
 * Kinds of files.
 */
export type ListKind = "ics" | "csv" | "xlsx";

/**
 * A list to be looked at.
 */
export type ListMatchQuestion = { 
/**
 * The file's name, for messages.
 */
name: string, 
/**
 * The row of its headings, from 1; found by itself without.
 */
header_row?: number | null, 
/**
 * What a person says they are, to see what is missing and asked then.
 */
columns?: Array<SheetMatched<ListColumn>> | null, };

/**
 * What the columns of a list seem to be: a proposal.
 */
export type ListMatches = { 
/**
 * Everything that a column can be.
 */
choices: Array<ListColumn>, 
/**
 * The row they stand in, from 1 as a spreadsheet shows it.
 */
header_row: number, 
/**
 * Rows beneath it that are not blank.
 */
rows: number, 
/**
 * The columns, blank ones left out.
 */
columns: Array<SheetHeading<ListColumn>>, 
/**
 * What no row can be without and no column is: a column is chosen for it, or one value given for all rows.
 */
missing: Array<ListColumn>, };

/**
 * A volume flow in litres a minute.
 */
export type LitresPerMinute = number;

/**
 * How long the hoses of this register last, in years since they were fitted.
 */
export type Lives = { 
/**
 * As of that day.
 */
on: string, 
/**
 * Since that day every failure is taken to be on record.
 */
since: string | null, 
/**
 * The groups, the one with most failures first.
 */
groups: Array<LivesOf>, 
/**
 * Failures to expect in the next quarter of a year, of all groups of which something can be told; none where of none.
 */
expected: Expected | null, 
/**
 * Hoses on machines that are in no expectation: their group has too few failures.
 */
not_expected: number, 
/**
 * The places with most failures against what was to be expected, the most unlikely first.
 */
places: Array<PlaceLives>, 
/**
 * Places that were looked at for it: of so many some are bad by chance.
 */
places_looked_at: number, 
/**
 * Stays that say nothing of a life and are in no group: nobody knows when that hose was fitted, or its days contradict.
 */
left_out: number, 
/**
 * Stays that ended before `since` and are in no group.
 */
ended_before: number, };

/**
 * What hoses are put together by.
 */
export type LivesBy = "hose" | "line" | "load" | "machine" | "place";

/**
 * The lives of one group.
 */
export type LivesOf = { 
/**
 * Which hoses.
 */
of: Group, 
/**
 * The longest that any was watched, in years: nothing is known beyond it.
 */
longest: number, 
/**
 * Hoses on machines now.
 */
in_service: number, 
/**
 * What it says, in years.
 */
life: Life, 
/**
 * Failures to expect in the next quarter of a year; none where too few have failed.
 */
expected: Expected | null, 
/**
 * When it costs least to replace; none where too few have failed or the costs were not given.
 */
least_cost: LeastCost | null, 
/**
 * Years until as many have failed as it takes to tell, if they go on failing as they did; none where none has.
 */
years_to_tell: number | null, };

/**
 * The lives of hoses on paper.
 */
export type LivesPaper = { 
/**
 * What is asked of them.
 */
lives: LivesQuestion, 
/**
 * Size of the paper.
 */
paper: PaperSize, 
/**
 * Kind of file.
 */
kind: PaperKind, };

/**
 * What is asked of the lives of hoses.
 */
export type LivesQuestion = { 
/**
 * What is put together.
 */
by: LivesBy, 
/**
 * As of which day; today without.
 */
on: string | null, 
/**
 * Since which day every failure is on record: what failed earlier is not known, and hoses that were on by then are
 * counted from their age on that day. Without it, every hose is counted from the day it was fitted.
 */
since: string | null, 
/**
 * What a failure costs, with all that comes of it, in the user's money.
 */
failure_cost: number | null, 
/**
 * What a planned replacement costs, in the same money.
 */
planned_cost: number | null, };

/**
 * How much of what the hose may carry its place asks: working pressure or relief, whichever is higher, over its rating.
 */
export type Load = "half" | "three-quarters" | "full" | "above";

/**
 * Something that the van lacks.
 */
export type LoadLine = { 
/**
 * It in words.
 */
name: string, 
/**
 * How much is wanted, is there, and is missing, in words with its unit.
 */
wanted: string, 
/**
 * How much the van has.
 */
there: string, 
/**
 * What is missing.
 */
missing: string, 
/**
 * Counted in.
 */
unit: StockUnit, 
/**
 * Who has some.
 */
from: Array<StockElsewhere>, 
/**
 * Whether it is known to be missing: what was never kept or is not known well enough is to be looked at.
 */
state: Stands, };

/**
 * A dangerous partner that is still possible.
 */
export type LookalikeFound = { 
/**
 * Family.
 */
family: string, 
/**
 * Size.
 */
size: string, 
/**
 * Which half starts on which, and what happens, from the table; empty until the edge writes it where
 * the pair was worked out.
 */
danger: string, 
/**
 * The reading that parts the two, likewise.
 */
separates: string, 
/**
 * The pair in codes.
 */
pair?: PairFound, };

/**
 * A machine, whole: a change writes all of it anew.
 */
export type Machine = { 
/**
 * Which.
 */
machine: MachineId, 
/**
 * Where it works.
 */
site?: SiteId | null, 
/**
 * What people call it, such as `Excavator 3`.
 */
name: string, 
/**
 * What it is: `excavator`, `loader`, `forwarder`, `crane`, `press` and the like.
 */
sort: string, 
/**
 * How hard it is on its hoses; none is not said and counts as normal.
 */
demand?: Demand, };

/**
 * A machine.
 */
export type MachineId = string;

/**
 * A machine and its name.
 */
export type MachineNamed = { 
/**
 * Which.
 */
machine: MachineId, 
/**
 * What people call it.
 */
name: string, };

/**
 * Which machine.
 */
export type MachineQuestion = { 
/**
 * Its id.
 */
machine: MachineId, };

/**
 * A machine in the list.
 */
export type MachineRow = { 
/**
 * Which.
 */
machine: MachineId, 
/**
 * The event that stands.
 */
version: EventRef, 
/**
 * What people call it.
 */
name: string, 
/**
 * What it is.
 */
sort: string, 
/**
 * Where it works.
 */
site: SiteId | null, 
/**
 * What people call the site.
 */
site_name: string | null, 
/**
 * Its places.
 */
places: number, 
/**
 * Hoses on it.
 */
hoses: number, };

/**
 * A machine, and what stops it.
 */
export type MachineSaid = { 
/**
 * What must not run on there: by what was seen, by a rule of the owner's, by what a place asks.
 */
stopped_by: Array<DueLine>, 
/**
 * What was written of it twice and not alike, for a person to settle.
 */
conflicts: Array<Written>, 
/**
 * The machine.
 */
machine: Versioned<Machine>, 
/**
 * Where it works.
 */
site: Versioned<Site> | null, 
/**
 * Latest reading of its hour meter, those noted with a hose included.
 */
hours: HoursRead | null, 
/**
 * Its circuits, by name.
 */
circuits: Array<Versioned<Circuit>>, 
/**
 * Its places, by number.
 */
places: Array<PlaceRow>, };

/**
 * When a hose was made, as far as its print says.
 */
export type Made = { 
/**
 * Year.
 */
year: number, 
/**
 * Quarter, 1 to 4.
 */
quarter: number | null, 
/**
 * Month, 1 to 12.
 */
month: number | null, 
/**
 * Week, 1 to 53.
 */
week: number | null, };

/**
 * What is to be made, and the user's own settings for its ends.
 */
export type MakeQuestion = { 
/**
 * What `check` is asked.
 */
question: Question, 
/**
 * Insertion, ferrule, die set and crimp diameter of each end, from the user's supplier.
 */
settings?: Array<EndSettings>, 
/**
 * Whose table of the open register fills ends without settings; without, the one that fits where no other does.
 */
supplier?: string | null, 
/**
 * What the saw takes; without, what the settings of this device say.
 */
kerf_mm?: Millimetres | null, };

/**
 * What the machine's half is by its own readings, and whether it belongs to the end.
 */
export type MateFound = { 
/**
 * Probability that it is the other half of the end's own row.
 */
belongs: number, 
/**
 * Whether it rather belongs to another end.
 */
is_another: boolean, 
/**
 * Likeliest family by its own readings.
 */
family: string, 
/**
 * Likeliest size.
 */
size: string, 
/**
 * Which half that is.
 */
gender: Gender | null, 
/**
 * Probability of that, by its own readings.
 */
probability: number, };

/**
 * What happens to a wrong pair.
 */
export type Mechanism = "strips-and-blows-off" | "few-threads-caught" | "binds-and-leaks" | "wedges-and-splits" | "weeps-along-thread" | "leaks-at-seat" | "no-seal" | "ring-extrudes" | "pulls-out" | "screws-bend" | "half-locks" | "fits-both";

/**
 * What a member may do. Each may do what those before it may.
 */
export type MemberRole = "reader" | "technician" | "planner";

/**
 * How a device stands in a fleet.
 */
export type MemberStanding = "open" | "waits" | "reader" | "technician" | "planner" | "founder" | "withdrawn";

/**
 * What a merge did.
 */
export type Merged = { 
/**
 * Events that were new.
 */
added: number, 
/**
 * Events that were there already.
 */
had: number, 
/**
 * Events that wait for earlier ones of their device.
 */
held: number, 
/**
 * Series that do not fit.
 */
refused: Array<RefusedSeries>, };

/**
 * A length in metres, for lines: a text with no unit is metres too.
 */
export type Metres = number;

/**
 * A length in millimetres.
 */
export type Millimetres = number;

/**
 * A figure the sheet can't give, so that it is got before the hose is cut.
 */
export type Missing = { 
/**
 * What: the words `missing-<code>` say how to get it.
 */
code: string, 
/**
 * Of which end; none for the whole.
 */
role: Role | null, };

/**
 * An amount of money.
 */
export type MoneyShown = { 
/**
 * In the currency's smallest unit.
 */
minor: number, 
/**
 * The currency by its letters.
 */
currency: string, 
/**
 * As it is shown.
 */
text: string, };

/**
 * What is needed, what is there, and what may stand in.
 */
export type Need = { 
/**
 * Of which van or shelf.
 */
store: string, 
/**
 * What the check says of it. Nothing is cut or used while it says stop.
 */
verdict: Verdict, 
/**
 * What is needed against what is there.
 */
lines: Array<NeedLine>, 
/**
 * What is cut from what.
 */
cuts: Array<CutFrom>, 
/**
 * Other hoses of this store that are long enough and may be made, each by the whole check.
 */
substitutes: Array<HoseSubstitute>, 
/**
 * For an end that is short: another end with an adapter on it, by the whole check.
 */
adapters: Array<AdapterWay>, 
/**
 * What the record of each build may be told that it used, without what was never kept here; none while something is
 * short or not known.
 */
used: Array<StockUsed>, 
/**
 * What a person must see.
 */
said: Array<StockSaid>, };

/**
 * What is wanted, and what is there of it.
 */
export type NeedLine = { 
/**
 * What kind of thing.
 */
part: StockKind, 
/**
 * What; none where it is not known well enough to be named.
 */
item: Item | null, 
/**
 * For which ends.
 */
roles: Array<Role>, 
/**
 * It in words.
 */
name: string, 
/**
 * How much is wanted.
 */
wanted: number, 
/**
 * Counted in.
 */
unit: StockUnit, 
/**
 * Whether it is there.
 */
state: Stands, 
/**
 * How much is there.
 */
quantity: number, 
/**
 * Where it lies.
 */
bins: Array<string>, 
/**
 * What may be it, where half, form or series is not written down.
 */
doubtful: Array<string>, 
/**
 * Where else there is some.
 */
elsewhere: Array<StockElsewhere>, };

/**
 * What is to be made.
 */
export type NeedQuestion = { 
/**
 * What is to be made, by which settings.
 */
make: MakeQuestion, 
/**
 * From which van or shelf; the one this device works from without.
 */
store?: string, 
/**
 * How many such hoses; one without.
 */
count?: number, 
/**
 * Sleeves, seals and other things that each hose takes beside.
 */
more?: Array<ExtraPart>, };

/**
 * A person to be entered.
 */
export type NewPerson = { 
/**
 * As the record shows it.
 */
name: string, };

/**
 * A reading worth taking.
 */
export type NextReading = { 
/**
 * What it is taken of.
 */
of: Part, 
/**
 * The key of the reading, such as `seat_included_angle_deg`.
 */
reading: string, 
/**
 * Expected gain of information.
 */
gain_bits: number, 
/**
 * What it costs to take, in readings by caliper of a part in the hand.
 */
effort: number, 
/**
 * Where the jaws go, in words; empty until the edge writes it.
 */
how: string, };

/**
 * Something that a check did not look at.
 */
export type NotChecked = { 
/**
 * What, such as `flow` or `route`.
 */
what: string, 
/**
 * It in words; empty until the edge writes it.
 */
words: string, };

/**
 * Something that was not counted.
 */
export type NotCounted = { 
/**
 * It in words.
 */
name: string, 
/**
 * The thing; none for a piece of hose.
 */
item: Item | null, 
/**
 * The piece; none for a counted thing.
 */
piece: PieceId | null, 
/**
 * The bin; blank is not said.
 */
bin: string, 
/**
 * How much is known: a number, of a piece millimetres.
 */
known: number, 
/**
 * Counted in.
 */
unit: StockUnit, };

/**
 * Why an assembly was not proved.
 */
export type NotProved = "no-rig" | "made-elsewhere";

/**
 * A remark. It stays in the log for good: names of people do not belong in it.
 */
export type Noted = { 
/**
 * About what.
 */
about: About, 
/**
 * The remark.
 */
text: string, };

/**
 * A question with nothing in it.
 */
export type Nothing = Record<symbol, never>;

/**
 * What the oil does in the hose. What can not be known from what was given is none.
 */
export type OilAnswer = { 
/**
 * Bore that was reckoned with: the hose's nominal one.
 */
bore_mm: Millimetres, 
/**
 * At the hottest that was given, or where only a viscosity was.
 */
warm: FlowAnswer, 
/**
 * At the coldest that was given: a cold start.
 */
cold: FlowAnswer | null, 
/**
 * The speed that is usual in such a line; none while nobody said what the line does.
 */
usual: UsualSpeed | null, 
/**
 * Whether the speed is within it: a caution above, and while it is not known.
 */
verdict: Verdict, 
/**
 * The sizes of this type from the smallest in which the oil runs no faster than usual.
 */
sizes: Array<SizeTried>, 
/**
 * When the oil is stopped.
 */
surge: Stopped | null, 
/**
 * What nobody gave and was taken instead.
 */
assumed: Array<Assumption>, };

/**
 * What flow and surge need of a line beside its service.
 */
export type OilLine = { 
/**
 * Length of the line, where it is more than the hose.
 */
length_mm: Millimetres | null, 
/**
 * Elbows of 45 degrees beside those of the ends.
 */
elbows_45: number | null, 
/**
 * Elbows of 90 degrees beside those of the ends.
 */
elbows_90: number | null, 
/**
 * Viscosity grade of the oil (ISO 3448).
 */
iso_vg: number | null, 
/**
 * In how many milliseconds a valve shuts.
 */
closing_ms: number | null, };

/**
 * A hose and its service, as the check takes them, and what only the oil asks for.
 */
export type OilQuestion = { 
/**
 * The hose and, for the length, its overall length.
 */
spec: Spec, 
/**
 * Flow, line, fluid, its hottest and coldest, working pressure.
 */
service: Service, 
/**
 * Length of the whole line, where it is not the hose alone.
 */
length_m: Metres | null, 
/**
 * Elbows and fittings in it.
 */
elbows: Array<Elbow>, 
/**
 * The fluid's grade or viscosity and density, where they are known.
 */
fluid: Fluid | null, 
/**
 * How long the valve takes to close; at once unless given.
 */
closure_time_s: number | null, 
/**
 * Bulk modulus of the fluid, from its supplier.
 */
bulk_modulus_pa: number | null, 
/**
 * Volumetric expansion of the hose (ISO 6801), from its supplier. Without it the wall is taken as rigid.
 */
volumetric_expansion_cm3_m_mpa: number | null, };

/**
 * A tag that was typed or pasted: just one of the two.
 */
export type OpenQuestion = { 
/**
 * The code that stands beside the QR code.
 */
code: TagCode | null, 
/**
 * A tag's whole text.
 */
text: string | null, 
/**
 * The place at which the person stands.
 */
place: PlaceId | null, };

/**
 * Where a machine was made.
 */
export type Origin = "north-america" | "europe" | "east-asia" | "unknown";

/**
 * Hoses that are to be replaced by now, each counted once: past their age, stored too long, found wanting, asked too much
 * of, or stopped by whatever it is. One of no known age has no day that could have come: it is not among them.
 */
export type Overdue = { 
/**
 * All of them.
 */
hoses: number, 
/**
 * Those of each machine that has any.
 */
machines: { [key in MachineId]: number }, 
/**
 * Those that stop their machine, of each machine that is stopped.
 */
stopped: { [key in MachineId]: number }, };

/**
 * A person took a limit of prudence on.
 */
export type Overridden = { 
/**
 * For which hose.
 */
code: TagCode, 
/**
 * The finding's rule.
 */
rule: string, 
/**
 * Why.
 */
reason: string, 
/**
 * Who.
 */
by: PersonId, };

/**
 * A person takes a limit of prudence on. Never pressure, end family, fluid or conductivity.
 */
export type Override = { 
/**
 * The finding's rule.
 */
rule: string, 
/**
 * Who.
 */
by: string, 
/**
 * Why.
 */
reason: string, };

/**
 * The register at a glance.
 */
export type Overview = { 
/**
 * Who writes in it.
 */
device: DeviceId, 
/**
 * What people call that device, where it has a name.
 */
device_name: string | null, 
/**
 * How much there is.
 */
counts: Counts, 
/**
 * Sites by name.
 */
sites: Array<SiteRow>, 
/**
 * Machines by site and name.
 */
machines: Array<MachineRow>, 
/**
 * Hoses that are to be replaced by now, and the machines that are stopped.
 */
overdue: Overdue, 
/**
 * What contradicts itself, for a person to settle.
 */
contradictions: Array<Contradiction>, };

/**
 * A dangerous pair: which half starts on which, what happens and what parts the two.
 */
export type PairFound = { 
/**
 * The end with the nut, port, body, socket or clamp halves.
 */
female: EndName, 
/**
 * What its half is.
 */
female_part: FemalePart, 
/**
 * The end whose male, tube, nose or flange head it starts on.
 */
male: EndName, 
/**
 * What happens.
 */
mechanism: Mechanism, 
/**
 * How grave that is.
 */
grade: Danger, 
/**
 * Keys of the readings that part the two.
 */
separating_readings: Array<string>, 
/**
 * How the threads meet, where the pair was worked out of them.
 */
fit?: ThreadFit, };

/**
 * Kinds of paper files.
 */
export type PaperKind = "pdf" | "text" | "json" | "svg";

/**
 * A build sheet as a paper.
 */
export type PaperQuestion = { 
/**
 * What is to be made.
 */
make: MakeQuestion, 
/**
 * What the sheet is about, such as the tag's code or the place.
 */
subject: string, 
/**
 * Size of the paper.
 */
paper: PaperSize, 
/**
 * The kind of file.
 */
as: PaperKind, };

/**
 * Sizes of paper.
 */
export type PaperSize = "a4" | "letter";

/**
 * What a reading is taken of.
 */
export type Part = "hose" | "A" | "B";

/**
 * Everyone with a name.
 */
export type People = { 
/**
 * By name.
 */
people: Array<Person>, };

/**
 * A person, whom the log knows by id only.
 */
export type Person = { 
/**
 * Who.
 */
id: PersonId, 
/**
 * The name; none once it was erased.
 */
name: string | null, 
/**
 * When the name was entered, in milliseconds since 1970 UTC.
 */
ms: number, };

/**
 * Who was entered.
 */
export type PersonAdded = { 
/**
 * The id by which the record names them.
 */
person: PersonId, };

/**
 * Whose name is erased.
 */
export type PersonErased = { 
/**
 * Their id.
 */
person: PersonId, };

/**
 * A person, whose name stands beside the log and can be erased.
 */
export type PersonId = string;

/**
 * What a photo is of. Its bytes come beside the question.
 */
export type PhotoAdd = { 
/**
 * The thing in the picture.
 */
about: About, };

/**
 * A photo, by the hash of its bytes; the bytes are kept beside the register.
 */
export type PhotoAdded = { 
/**
 * Of what.
 */
about: About, 
/**
 * Hash of its bytes.
 */
sha256: Hash, 
/**
 * Media type, such as `image/jpeg`.
 */
mime: string, 
/**
 * Length in bytes.
 */
length: number, };

/**
 * A photo as it stands on record.
 */
export type PhotoKept = { 
/**
 * The events that name it there: more than one where two devices added the same. To take it back is to strike out
 * all of them.
 */
versions: Array<EventRef>, 
/**
 * Of what.
 */
about: About, 
/**
 * Hash of its bytes.
 */
sha256: Hash, 
/**
 * Length in bytes.
 */
length: number, 
/**
 * When it was added, by the clock of the device that did.
 */
time: string, 
/**
 * The name of that device, where it has one.
 */
by: string | null, 
/**
 * Whether its bytes are here.
 */
state: PhotoState, };

/**
 * A photo that is on record.
 */
export type PhotoOnRecord = { 
/**
 * Hash of its bytes as they are kept.
 */
sha256: Hash, 
/**
 * Their length.
 */
length: number, 
/**
 * The same picture was on record of the same thing already: nothing was written.
 */
known: boolean, };

/**
 * Whose photos.
 */
export type PhotoQuestion = { 
/**
 * Of this thing alone; all without.
 */
about?: About, };

/**
 * Which photo.
 */
export type PhotoRead = { 
/**
 * Hash of its bytes.
 */
sha256: Hash, };

/**
 * Whether the bytes of a photo are here.
 */
export type PhotoState = "here" | "missing" | "damaged";

/**
 * Photos on record.
 */
export type Photos = { 
/**
 * The newest first.
 */
photos: Array<PhotoKept>, };

/**
 * What became of photos in an exchange.
 */
export type PhotosExchanged = { 
/**
 * Pictures that came.
 */
came: number, 
/**
 * Pictures that went.
 */
went: number, 
/**
 * On record, and still not here.
 */
to_come: number, 
/**
 * Here, and still not in the storage; none is not known, because it was cut off before.
 */
to_go: number | null, 
/**
 * What lies in the storage under these is not what it was.
 */
refused: Array<Hash>, };

/**
 * Photos on record, and how many of them are on this device.
 */
export type PhotosHere = { 
/**
 * On record.
 */
named: number, 
/**
 * Those whose pictures are here.
 */
here: number, };

/**
 * A piece of hose with all of it but its length. Written whole.
 */
export type Piece = { 
/**
 * Which piece.
 */
piece: PieceId, 
/**
 * Where it is.
 */
store: string, 
/**
 * Its bin; blank is not said.
 */
bin: string, 
/**
 * What hose it is.
 */
hose: Thing, 
/**
 * New hose on a reel, or what was left of a cut.
 */
sort: StockSort, 
/**
 * First day of the period printed on it; none is not known.
 */
made?: string | null, 
/**
 * The supplier's name for it; blank is not said.
 */
label: string, };

/**
 * The length of a piece, as a difference.
 */
export type PieceChanged = { 
/**
 * Which piece.
 */
piece: PieceId, 
/**
 * How many tenths of a millimetre came (positive) or went (negative), kerf included.
 */
tenths_mm: number, 
/**
 * Why.
 */
why: StockWhy, 
/**
 * The hose it went into.
 */
hose?: TagCode | null, 
/**
 * Of a measuring, what its device had heard of the piece; the register fills it in. None in the records of older
 * programs.
 */
seen?: Array<EventRef> | null, };

/**
 * A piece of hose on a van or shelf.
 */
export type PieceId = string;

/**
 * A piece of hose.
 */
export type PieceStock = { 
/**
 * Which.
 */
piece: PieceId, 
/**
 * The event that stands for all of it but its length.
 */
version: EventRef, 
/**
 * Reel or offcut.
 */
sort: StockSort, 
/**
 * Its bin; blank is not said.
 */
bin: string, 
/**
 * How much is left; below zero when more was cut than there was.
 */
length_mm: Millimetres, 
/**
 * First day of the period printed on it; none is not known.
 */
made: string | null, 
/**
 * The supplier's name for it.
 */
label: string, 
/**
 * Whether it is long enough to be kept; none where nobody said how long that is.
 */
useful: boolean | null, 
/**
 * Whether more was cut than there was.
 */
negative: boolean, };

/**
 * A place on a machine where a hose sits, and what belongs there.
 */
export type Place = { 
/**
 * Which.
 */
place: PlaceId, 
/**
 * On which machine.
 */
machine: MachineId, 
/**
 * Its number on the machine's drawing.
 */
number: number, 
/**
 * What people call it, such as `Stick cylinder, rod side`.
 */
name: string, 
/**
 * What the line does.
 */
line?: Line | null, 
/**
 * The circuit it belongs to.
 */
circuit?: CircuitId | null, 
/**
 * The hose that belongs there, as far as it is known.
 */
spec?: Spec | null, 
/**
 * What it has to stand there.
 */
service: Service, 
/**
 * How its ports stand.
 */
ports?: Ports | null, 
/**
 * What is known of the line and its oil.
 */
oil?: OilLine | null, 
/**
 * How hard it is on hoses there; none is as hard as the machine.
 */
demand?: Demand, 
/**
 * What a failure there would put at risk. None: nobody has said; empty: looked at, none of them.
 */
stakes?: Array<Stake>, 
/**
 * The owner's own word on how bad a failure there would be, from 1 to 5; it stands over what the stakes say.
 */
consequence?: number, };

/**
 * Where a place is. What another device has not handed over yet is not known.
 */
export type PlaceAt = { 
/**
 * The place.
 */
place: PlaceId, 
/**
 * Its number on the machine's drawing.
 */
number: number | null, 
/**
 * What people call it.
 */
place_name: string | null, 
/**
 * Its machine.
 */
machine: MachineId | null, 
/**
 * What people call the machine.
 */
machine_name: string | null, 
/**
 * The machine's site.
 */
site: SiteId | null, 
/**
 * What people call the site.
 */
site_name: string | null, };

/**
 * The soonest that falls due at a place.
 */
export type PlaceDue = { 
/**
 * The day; none is not known.
 */
day: string | null, 
/**
 * What falls due.
 */
what: DueFor, };

/**
 * A place on a machine where a hose sits.
 */
export type PlaceId = string;

/**
 * The last inspection of the hose that sits at a place.
 */
export type PlaceInspected = { 
/**
 * When.
 */
date: string, 
/**
 * The gravest that was found.
 */
grade: Verdict, 
/**
 * What was seen and stands.
 */
standing: Array<Standing>, };

/**
 * A place against what was to be expected there.
 */
export type PlaceLives = { 
/**
 * Which.
 */
at: PlaceAt, 
/**
 * Failures there against those that hoses of their types and ages have in the whole register.
 */
excess: Excess, 
/**
 * So many are not to be had by chance, even by the worst of all places that were looked at (5 %).
 */
stands_out: boolean, };

/**
 * Which place.
 */
export type PlaceQuestion = { 
/**
 * Its id.
 */
place: PlaceId, 
/**
 * A hose that is to go there; without it the one that sits there is held against what belongs there.
 */
hose?: TagCode, };

/**
 * A place of a machine and what sits there.
 */
export type PlaceRow = { 
/**
 * The place and what belongs there.
 */
place: Versioned<Place>, 
/**
 * What sits there: none is no hose that is known, more than one is a conflict.
 */
hoses: Array<Stay>, 
/**
 * The stay that ended last there; none where no hose has come off.
 */
last_off: Stay | null, 
/**
 * The last inspection of the hose that sits there; none where it was never inspected.
 */
inspected: PlaceInspected | null, 
/**
 * The last survey of the place.
 */
surveyed: Versioned<Surveyed> | null, 
/**
 * The soonest that falls due there.
 */
due: PlaceDue | null, };

/**
 * A place, and what it says before the next hose is made for it.
 */
export type PlaceSaid = { 
/**
 * What failed there, and which way the next job goes.
 */
failures: Failures, 
/**
 * Failures, the hose beside what belongs there, and the hoses of the same circuit beside it; gravest first.
 */
findings: Array<Finding>, 
/**
 * What is made where the same is made again.
 */
again: Again, 
/**
 * What must not run on there.
 */
stopped_by: Array<DueLine>, 
/**
 * The place and what belongs there.
 */
place: Versioned<Place>, 
/**
 * Where it is.
 */
at: PlaceAt, 
/**
 * What sat and sits there, by date. More than one that has not come off is a conflict.
 */
stays: Array<Stay>, 
/**
 * The circuit it is on, where that is known.
 */
circuit: Versioned<Circuit> | null, 
/**
 * The other places of that circuit, by number, and what sits there.
 */
sisters: Array<Sister>, };

/**
 * Where an elbow on a port points, in the closed pose.
 */
export type Points = "towards" | "away" | "front" | "back";

/**
 * The guides of the tables and the owner's rules over them.
 */
export type Policies = { 
/**
 * The guides.
 */
rules: Array<GuideRule>, 
/**
 * The owner's.
 */
policies: Array<PolicyKept>, };

/**
 * What holds there.
 */
export type PolicyAt = { 
/**
 * For hoses in service.
 */
service: RuleAt, 
/**
 * For hoses in store.
 */
storage: RuleAt, 
/**
 * Between inspections.
 */
inspection: RuleAt, };

/**
 * Where rules are asked for.
 */
export type PolicyAtQuestion = { 
/**
 * At this place.
 */
place?: PlaceId, 
/**
 * On this machine.
 */
machine?: MachineId, 
/**
 * On this site.
 */
site?: SiteId, 
/**
 * For such a line; a place has its own.
 */
line?: Line, 
/**
 * For such a demand; a place or machine has its own.
 */
demand?: Demand, };

/**
 * Dates of a scope.
 */
export type PolicyCounts = { 
/**
 * Whose day has come.
 */
past: number, 
/**
 * That stop.
 */
stopped: number, 
/**
 * That come within the days that are looked at.
 */
within: number, };

/**
 * A rule of the owner's.
 */
export type PolicyKept = { 
/**
 * The rule.
 */
policy: PolicySet, 
/**
 * The event that stands.
 */
version: EventRef, 
/**
 * Where it holds and for which hoses, in words.
 */
name: string, };

/**
 * A date that would be another.
 */
export type PolicyMove = { 
/**
 * The hose.
 */
code: TagCode, 
/**
 * Where it sits.
 */
at: PlaceAt | null, 
/**
 * What falls due.
 */
what: DueFor, 
/**
 * The day as it is.
 */
due_before: string | null, 
/**
 * And as it would be.
 */
due_after: string | null, 
/**
 * The verdict as it is.
 */
verdict_before: Verdict, 
/**
 * And as it would be.
 */
verdict_after: Verdict, };

/**
 * Which hoses of a scope. One that says both holds before one that says the line, that before one that says
 * the demand, and that before one that says neither.
 */
export type PolicyOf = { 
/**
 * Those on such a line; none is any.
 */
line?: Line, 
/**
 * Those where it is so hard on them; none is any.
 */
demand?: Demand, };

/**
 * The owner's limits for a scope, whole: a change writes all of them anew. None says nothing and
 * leaves it to the wider scope, and at last to the guide of the tables.
 */
export type PolicySet = { 
/**
 * Where it holds.
 */
scope: Scope, 
/**
 * Which hoses there; every one without.
 */
of?: PolicyOf, 
/**
 * Years from assembly to replacement, storage included.
 */
service_years?: number | null, 
/**
 * Hours of the machine from fitting to replacement.
 */
service_hours?: number, 
/**
 * Years an assembly may lie before it is fitted.
 */
storage_years?: number | null, 
/**
 * Years between inspections.
 */
inspection_years?: number | null, 
/**
 * Hours of the machine between inspections.
 */
inspection_hours?: number, 
/**
 * Whether crossing these limits is a stop; else a caution.
 */
stop: boolean, };

/**
 * What a change of a rule would do.
 */
export type PolicyTried = { 
/**
 * Where it holds and for which hoses, in words.
 */
name: string, 
/**
 * Hoses in its scope that fall due at all.
 */
hoses: number, 
/**
 * As it is.
 */
before: PolicyCounts, 
/**
 * As it would be.
 */
after: PolicyCounts, 
/**
 * What the rule speaks of, now or as it stands; what is counted is of these alone.
 */
what: Array<DueFor>, 
/**
 * How many dates would be others.
 */
moved: number, 
/**
 * How many dates or verdicts would be others.
 */
changed: number, 
/**
 * The first of them, the gravest and soonest first.
 */
rows: Array<PolicyMove>, 
/**
 * How many dates would lie past that of the guide, which they do not now.
 */
past_guide: number, 
/**
 * How many dates have come that would come later.
 */
put_off: number, 
/**
 * Machines with a hose that would stop and does not now.
 */
machines_stopped: number, };

/**
 * A rule as it would be written down.
 */
export type PolicyTry = { 
/**
 * The rule.
 */
policy: PolicySet, 
/**
 * As of that day; today without.
 */
on?: string, 
/**
 * How many days ahead are looked at; 365 without.
 */
within_days?: number, };

/**
 * A port: where, and which way the hose leaves it.
 */
export type Port = { 
/**
 * Position.
 */
position_mm: [Millimetres, Millimetres, Millimetres], 
/**
 * The way the hose leaves; of any length but none.
 */
direction: [number, number, number], 
/**
 * A mark on the port, across the direction, that turns with it. Without it the port is taken to turn
 * as little as possible from the first pose.
 */
up?: [number, number, number] | null, 
/**
 * Straight and stiff length from the port to where the hose can bend; none unless given.
 */
rigid_mm?: Millimetres | null, };

/**
 * The ports of a place; each value as in [`crate::route::field::FieldQuestion`].
 */
export type Ports = { 
/**
 * How they face each other.
 */
facing: Facing, 
/**
 * The machine's closed pose.
 */
closed: FieldPose, 
/**
 * Its open pose.
 */
open?: FieldPose | null, 
/**
 * Neither port moves.
 */
fixed: boolean, 
/**
 * End A.
 */
a: FieldEnd, 
/**
 * End B.
 */
b: FieldEnd, };

/**
 * Where both ports are at one moment.
 */
export type Pose = { 
/**
 * The near port; the fitted one unless given.
 */
a: Port | null, 
/**
 * The far port; the fitted one unless given.
 */
b: Port | null, };

/**
 * The press as the register shows it.
 */
export type Press = { 
/**
 * As of that day.
 */
on: string, 
/**
 * The die sets by name.
 */
dies: Array<DieSet>, 
/**
 * Crimps that are in none: no die set, target or reading was written down.
 */
left_out: number, 
/**
 * What is done at the press by the user's own schedule.
 */
care: Array<CareDue>, };

/**
 * A thing that is done at the press every so many crimps or months, whichever comes first.
 */
export type PressCare = { 
/**
 * What, such as `grease the die shoes`.
 */
name: string, 
/**
 * After how many crimps.
 */
every_crimps?: number | null, 
/**
 * After how many months.
 */
every_months?: number | null, 
/**
 * When it was done last; none is not known.
 */
last_done?: string | null, };

/**
 * What is asked of the press.
 */
export type PressQuestion = { 
/**
 * Of this die set; of all without.
 */
die_set: string | null, 
/**
 * As of which day; today without.
 */
on: string | null, };

/**
 * What is crimped with one set of dies.
 */
export type PressSetup = { 
/**
 * The die set; none while it is not known.
 */
die_set: string | null, 
/**
 * The crimps in order.
 */
crimps: Array<CrimpTurn>, };

/**
 * Units of pressure.
 */
export type PressureUnit = "bar" | "psi";

/**
 * What the user asks for a thing: for one piece, of hose for a metre.
 */
export type PriceSet = { 
/**
 * What.
 */
item: Item, 
/**
 * In the currency's smallest unit. None takes the price away: not priced, never nothing.
 */
minor?: number, 
/**
 * By the letters of ISO 4217.
 */
currency: string, };

/**
 * How a job is priced; all of it the user's own.
 */
export type Pricing = { 
/**
 * The currency by its letters, such as `EUR`; blank is not said, and nothing is priced then.
 */
currency: string, 
/**
 * Tax in hundredths of a percent: 1900 is 19 %. None is not said; no tax is 0.
 */
tax_hundredths: number | null, 
/**
 * What an hour costs, as it is typed, such as `72.50`; none is not priced.
 */
labour_rate: string | null, 
/**
 * How long each part of the work takes.
 */
labour: Array<Labour>, };

/**
 * A hose that a print can mean.
 */
export type PrintCandidate = { 
/**
 * Standard.
 */
standard: string, 
/**
 * Type.
 */
type: string, 
/**
 * Nominal diameter.
 */
dn: Dn, 
/**
 * Dash size.
 */
dash: number | null, 
/**
 * The table's working pressure, which may differ from the printed one.
 */
pressure_bar: Bar | null, };

/**
 * One thing that the print and the readings say differently. Candidates come from both together all
 * the same: either can be wrong.
 */
export type PrintContradiction = { 
/**
 * What is contradicted.
 */
code: Contradicted, 
/**
 * Which part.
 */
of: Part, 
/**
 * What the print names, such as `EN 853 2SN DN 16`; for a pressure, the hose whose rating it is not.
 */
named: string, 
/**
 * What the print says, or the limit or rating nearest to what was read.
 */
printed: Stated | null, 
/**
 * What was read; for a pressure, the rating of the table.
 */
measured: Stated | null, 
/**
 * Both in words, and what to do; empty until the edge writes it.
 */
words: string, };

/**
 * What stands on the cover.
 */
export type PrintQuestion = { 
/**
 * As it reads; `?` or `.` for one worn letter, `*` or `...` for any number.
 */
text: string, };

/**
 * What a print says, as far as it can be read. A field is empty where the print does not say it, or
 * leaves more than one reading; `candidates` has every hose it can be. Where any letter is worn, a
 * field is stated only if every hose that the rest leaves possible agrees on it.
 */
export type Printed = { 
/**
 * Standard; the first of several. A type alone is given the standard whose own sizes it has.
 */
standard: string | null, 
/**
 * Type.
 */
type: string | null, 
/**
 * Nominal diameter, by the table's name for it.
 */
dn: Dn | null, 
/**
 * Dash size.
 */
dash: number | null, 
/**
 * Working pressure as printed; burst figures are never taken for it.
 */
pressure_bar: Bar | null, 
/**
 * When it was made. Of several readings of a date (12/24 is December or week 12) the customary one.
 */
made: Made | null, 
/**
 * The other readings of that date.
 */
made_or: Array<Made>, 
/**
 * A cover with a duty of its own.
 */
cover: Cover | null, 
/**
 * Words that said nothing known.
 */
unread: string, 
/**
 * Every row of the tables that the print can mean, in their order.
 */
candidates: Array<PrintCandidate>, };

/**
 * State of the proof test.
 */
export type Proof = { "state": "proved", 
/**
 * Pressure it was held at.
 */
pressure_bar: Bar, 
/**
 * How long, in seconds.
 */
hold_s: number, 
/**
 * The gauge, by its number or mark.
 */
gauge: string, 
/**
 * When the gauge was last calibrated; none is not known.
 */
gauge_calibrated?: string | null, } | { "state": "failed", 
/**
 * What happened.
 */
what: ProofFailure, 
/**
 * Pressure it came to; none is not known.
 */
pressure_bar?: Bar | null, 
/**
 * How long it held, in seconds.
 */
hold_s?: number | null, 
/**
 * The gauge, by its number or mark.
 */
gauge: string, 
/**
 * When the gauge was last calibrated; none is not known.
 */
gauge_calibrated?: string | null, } | { "state": "not-proved", 
/**
 * Why.
 */
why: NotProved, };

/**
 * The proof test.
 */
export type ProofDue = { 
/**
 * Working pressure of the assembly: its weakest part's rating.
 */
working_pressure_bar: Bar, 
/**
 * Proof pressure.
 */
proof_pressure_bar: Bar, 
/**
 * The one over the other.
 */
ratio: Figure, 
/**
 * Shortest hold.
 */
hold_from: Figure, 
/**
 * Longest hold.
 */
hold_to: Figure, };

/**
 * How an assembly failed its proof.
 */
export type ProofFailure = "leak" | "end-moved" | "burst";

/**
 * Who says whether a hose was proved.
 */
export type ProofFrom = "given" | "record";

/**
 * What a proof test says.
 */
export type ProofJudged = { 
/**
 * What it is by now.
 */
state: ProofState, 
/**
 * What is done, by the words `bench-<code>`.
 */
do: string, 
/**
 * What a person should know of it: `gauge-undated`, `gauge-overdue`.
 */
cautions: Array<string>, 
/**
 * The pressure it is to be held at.
 */
pressure_bar: Bar, 
/**
 * Shortest hold, in seconds.
 */
hold_from_s: number, 
/**
 * Longest hold.
 */
hold_to_s: number, };

/**
 * What a proof test is by now.
 */
export type ProofState = "proved" | "no-rig" | "failed" | "open";

/**
 * The source of a value and its basis.
 */
export type Provenance = { 
/**
 * The publication, table or practice.
 */
source: string, 
/**
 * How it came to be known.
 */
basis: Basis, };

/**
 * A proof test as far as it has come.
 */
export type Proving = { 
/**
 * Whether there is a rig; none while nobody said.
 */
rig: boolean | null, 
/**
 * How it failed, where it did.
 */
failed: ProofFailure | null, 
/**
 * Pressure it was held at.
 */
pressure_bar: Bar | null, 
/**
 * How long, in seconds.
 */
hold_s: number | null, 
/**
 * The gauge, by its number or mark.
 */
gauge: string, 
/**
 * When it was last calibrated; none is not known.
 */
gauge_calibrated: string | null, };

/**
 * What a check is asked: a spec, its service and what is known of the original.
 */
export type Question = { 
/**
 * The assembly to be made.
 */
spec: Spec, 
/**
 * What it will have to stand.
 */
service: Service, 
/**
 * What the original was, as `find` gives it.
 */
found: Evidence | null, 
/**
 * Limits of prudence that a person takes on.
 */
overrides: Array<Override>, 
/**
 * Whose length tolerances are worked to.
 */
length_practice: LengthPractice, };

/**
 * What it costs.
 */
export type Quote = { 
/**
 * The currency by its letters; blank is not said.
 */
currency: string, 
/**
 * Parts, then work.
 */
lines: Array<QuoteLine>, 
/**
 * All lines that are priced together.
 */
sum: MoneyShown, 
/**
 * What has no price, in words. While anything has none there is no total.
 */
not_priced: Array<string>, 
/**
 * Tax in hundredths of a percent; none is not said.
 */
tax_hundredths: number | null, 
/**
 * The tax on the sum, rounded once; none where it is not said.
 */
tax: MoneyShown | null, 
/**
 * Sum and tax; none while anything is not priced or the tax is not said.
 */
total: MoneyShown | null, 
/**
 * What a person must see.
 */
said: Array<StockSaid>, };

/**
 * What a line is.
 */
export type QuoteKind = "part" | "labour";

/**
 * A line of a quote.
 */
export type QuoteLine = { 
/**
 * Part or work.
 */
kind: QuoteKind, 
/**
 * It in words.
 */
name: string, 
/**
 * How much, in words.
 */
quantity: string, 
/**
 * What one, or of hose a metre and of work an hour, costs; none is not priced.
 */
price: MoneyShown | null, 
/**
 * What the line costs, rounded once; none is not priced.
 */
amount: MoneyShown | null, };

/**
 * A quote as a paper.
 */
export type QuotePaper = { 
/**
 * What is priced.
 */
quote: QuoteQuestion, 
/**
 * What the sheet is for, such as the machine.
 */
subject: string, 
/**
 * Size of the paper.
 */
paper: PaperSize, 
/**
 * The kind of file.
 */
as: PaperKind, };

/**
 * What is to be priced.
 */
export type QuoteQuestion = { 
/**
 * Hoses that are to be made, by what they need.
 */
hoses?: Array<BatchHose>, 
/**
 * Hoses on record, by what was taken from stock for them.
 */
codes?: Array<TagCode>, };

/**
 * How far a hose is taken apart. Ordered: what can be read in place can be read of a hose that is off.
 */
export type Reach = "in-place" | "off" | "cut";

/**
 * How a picture is read.
 */
export type ReadQuestion = { 
/**
 * The text of any code, ours or not.
 */
raw: boolean, 
/**
 * The place at which the person stands.
 */
place: PlaceId | null, 
/**
 * The bytes are a frame of a live camera of that size; a file without.
 */
frame: FrameSize | null, };

/**
 * A reading of a length: the value and, where known, its standard error.
 *
 * On input a number, the trade's writing, or `{"value":..,"error":..}`. Writing in fractions of an
 * inch carries half its step as error: `13/16 in` is 20.6375 mm with an error of 1/32 in.
 */
export type Reading = number | string | { value: number | string, error?: number | string };

/**
 * All readings of one job. Every key is optional: a missing reading says nothing.
 */
export type Readings = { 
/**
 * Readings of the hose.
 */
hose: HoseReadings | null, 
/**
 * Readings of the ends.
 */
ends: Array<EndReadings>, 
/**
 * The same readings taken on the machine's half of each end.
 */
mates: Array<EndReadings>, 
/**
 * From sealing point to sealing point.
 */
overall_length_mm: Reading | null, 
/**
 * Standard error of the caliper; 0.1 mm unless given.
 */
caliper_error_mm: Millimetres | null, 
/**
 * Where the machine was made: a hint, never a proof.
 */
origin: Origin | null, 
/**
 * How far the hose is taken apart, and so what can be read; everything, unless it is given.
 */
reach: Reach | null, 
/**
 * Readings that were tried and can not be had.
 */
cannot_tell?: Array<CannotTell>, };

/**
 * What keeps a routing from a pass.
 */
export type Reason = "below-limit" | "near-limit" | "rival-too-tight" | "twist" | "no-limit" | "no-diameter";

/**
 * The length to make. It keeps the least radius by a tenth more at its shortest: made at the short end of the
 * length tolerance and shortened by pressure; rounded up to 10 mm, and routed again.
 */
export type Recommended = { 
/**
 * Overall length.
 */
overall_length_mm: Millimetres, 
/**
 * How much the length may come out short, from the tolerance of overall lengths.
 */
short_by_mm: Millimetres, 
/**
 * Tightest radius at the inside of the bend with that length.
 */
min_inside_radius_mm: Millimetres | null, 
/**
 * The publication, table or practice.
 */
source: string, 
/**
 * How it came to be known.
 */
basis: Basis, };

/**
 * One event to be written.
 */
export type RecordEvent = { 
/**
 * What happened.
 */
body: Body, 
/**
 * The events it builds on; the register's present state without.
 */
builds_on?: Array<EventRef> | null, };

/**
 * What is to be written, all or none.
 */
export type RecordQuestion = { 
/**
 * In order.
 */
events: Array<RecordEvent>, };

/**
 * What was written.
 */
export type Recorded = { 
/**
 * The events' names; they are on the disk.
 */
written: Array<EventRef>, };

/**
 * A series that was refused.
 */
export type RefusedSeries = { 
/**
 * Whose.
 */
device: DeviceId, 
/**
 * From which number on.
 */
from: number, 
/**
 * `fork` or `broken-chain`.
 */
why: string, };

/**
 * How the oil runs.
 */
export type Regime = "laminar" | "transitional" | "turbulent";

/**
 * What carries the pressure, as it can be seen.
 */
export type Reinforcement = "wire-braid" | "wire-spiral" | "textile-braid" | "thermoplastic-textile" | "ptfe-steel-braid" | "suction-helix";

/**
 * Which backup is put in place.
 */
export type RestoreQuestion = { 
/**
 * One of those beside the register, by its name; without it the bytes of a file.
 */
kept?: string, };

/**
 * Chance times consequence of one hose.
 */
export type Risk = { 
/**
 * From 0 to 1.
 */
chance: number, 
/**
 * What that is.
 */
from: ChanceFrom, 
/**
 * From 1 to 5.
 */
consequence: number, 
/**
 * What says so.
 */
why: Array<ConsequenceWhy>, 
/**
 * Chance times consequence.
 */
product: number, };

/**
 * Which end of the assembly. End A is the one the turn is sighted from.
 */
export type Role = "A" | "B";

/**
 * The round of a day.
 */
export type Round = { 
/**
 * The day.
 */
on: string, 
/**
 * The van.
 */
store: string, 
/**
 * Machine by machine, by site and name.
 */
visits: Array<RoundVisit>, 
/**
 * What all of it takes against the van.
 */
parts: Array<NeedLine>, 
/**
 * What the van lacks.
 */
load: Array<LoadLine>, 
/**
 * What would be cut from what, of hoses whose length to cut is known.
 */
cuts: Array<BatchCut>, 
/**
 * What a person must see.
 */
said: Array<StockSaid>, };

/**
 * A round on paper.
 */
export type RoundPaper = { 
/**
 * The round.
 */
round: RoundQuestion, 
/**
 * Size of the paper.
 */
paper: PaperSize, 
/**
 * The kind of file.
 */
kind: PaperKind, 
/**
 * Whether each hose's code stands on it to be scanned.
 */
tags: boolean, };

/**
 * Where the day goes.
 */
export type RoundQuestion = { 
/**
 * The day; today without.
 */
on?: string, 
/**
 * Machines that are visited, for what is due on them.
 */
machines?: Array<MachineId>, 
/**
 * How many days ahead counts as due on those machines; none without.
 */
within_days?: number, 
/**
 * Places whose hose is replaced, due or not.
 */
places?: Array<PlaceId>, 
/**
 * Hoses beside those, such as of jobs that are begun.
 */
hoses?: Array<BatchHose>, 
/**
 * The van; the one this device works from without.
 */
store?: string, };

/**
 * A machine that is visited.
 */
export type RoundVisit = { 
/**
 * Where it works; blank is not said.
 */
site: string, 
/**
 * Its name; blank is not said.
 */
machine: string, 
/**
 * Which.
 */
machine_id: MachineId | null, 
/**
 * What is replaced on it.
 */
places: Array<VisitPlace>, };

/**
 * How a hose lies between its ports. An estimate: a hose without weight that bends equally easily all ways.
 */
export type Routed = { 
/**
 * Each pose, the fitted one first.
 */
poses: Array<Bend>, 
/**
 * Smallest radius of the centre line in any pose; none where the hose is straight in all.
 */
min_radius_mm: Millimetres | null, 
/**
 * The same at the inside of the bend; none also while the outside diameter is not known.
 */
min_inside_radius_mm: Millimetres | null, 
/**
 * Free length that this is for.
 */
free_length_mm: Millimetres, 
/**
 * The shortest free length that keeps the least bend radius in every pose, where it was sought. Not every
 * longer hose keeps it.
 */
shortest_free_length_mm: Millimetres | null, 
/**
 * Least and greatest twist over the poses.
 */
twist_range_deg: [Degrees, Degrees], 
/**
 * How far clockwise B's `up` stands of A's in the first pose, seen along the hose from A, 0 to 359; none while
 * either port has no `up` there. Two elbows are made with this turn.
 */
turn_deg: Degrees | null, 
/**
 * May it be routed so.
 */
verdict: Verdict, 
/**
 * What keeps it from a pass, gravest first.
 */
reasons: Array<Reason>, 
/**
 * Always true: hose stiffness, weight, set and clamps are not in the model.
 */
estimate: boolean, };

/**
 * What becomes of a row.
 */
export type RowIs = "made" | "changed" | "known" | "refused" | "left-out";

/**
 * A row of the tables as it was when something was made by it.
 */
export type RowMark = { 
/**
 * Its table, such as `hoses`.
 */
table: string, 
/**
 * What the row is called there.
 */
row: string, 
/**
 * The first 16 hexadecimal digits of the hash over its cells; remarks do not count.
 */
digest: string, };

/**
 * A row that can not be taken in.
 */
export type RowRefused = { 
/**
 * Its number as a spreadsheet shows it.
 */
row: number, 
/**
 * Why, and what would be right; begins with the column, as the list calls it, where one is wrong.
 */
why: string, };

/**
 * How a marked row stands now.
 */
export type RowStands = "same" | "changed" | "gone";

/**
 * What becomes of a row.
 */
export type RowTold = { 
/**
 * Its number as a spreadsheet shows it.
 */
row: number, 
/**
 * What becomes of it.
 */
is: RowIs, 
/**
 * Site, machine and place as far as it could be read, or why it is refused.
 */
what: string, };

/**
 * What holds at a spot.
 */
export type RuleAt = { 
/**
 * The limit in years; none where the tables have no guide and nobody has said anything.
 */
years: RuleHeld | null, 
/**
 * The limit in hours of the machine; none where nobody set one.
 */
hours: RuleHeld | null, 
/**
 * The guide's own limit in years, where an owner's stands over it.
 */
guide: RuleHeld | null, 
/**
 * The owner's rules that a narrower one stands over, the narrowest first.
 */
over: Array<RuleHeld>, };

/**
 * A limit and the rule that sets it.
 */
export type RuleHeld = { 
/**
 * Years, or hours of the machine.
 */
limit: number, 
/**
 * The rule.
 */
rule: CareRule, };

/**
 * What one reading says for a candidate against a rival.
 */
export type Said = { 
/**
 * The key of the reading; `print` for the print, `mate` for all of the machine's half.
 */
reading: string, 
/**
 * Logarithm (base 2) of the ratio of its likelihoods: above nothing it speaks for the candidate.
 */
bits: number, };

/**
 * What is said: the words `stock-said-<code>`.
 */
export type SaidCode = "negative" | "negative-piece" | "untold-piece" | "conflict" | "counted-blind" | "kerf-not-known" | "cut-length-not-known" | "overall-taken" | "currency-not-said" | "other-currency" | "tax-not-said" | "hose-old" | "hose-age-not-known" | "too-many-pieces" | "nothing-used" | "no-labour-rate" | "adapter-not-reckoned";

/**
 * One code of a picture.
 */
export type Scan = { code: TagCode | null, text: string, problem: string | null, judged: TagJudged | null } & Partial<Omit<TagContent, 'code'>>;

/**
 * A scan as it was kept.
 */
export type ScanKept = { 
/**
 * Its number here.
 */
id: number, 
/**
 * When.
 */
time: string, 
/**
 * The device that scanned, by the id it writes under.
 */
device: DeviceId, 
/**
 * The code; none where it could not be read.
 */
code: TagCode | null, 
/**
 * How it came in.
 */
way: ScanWay, 
/**
 * What the tag was judged to be.
 */
standing: TagStanding, 
/**
 * The gravest thing that was said of it.
 */
verdict: Verdict, };

/**
 * What was scanned on this device.
 */
export type ScanList = { 
/**
 * Newest first.
 */
scans: Array<ScanKept>, };

/**
 * How many scans are asked for.
 */
export type ScanListQuestion = { 
/**
 * At most so many; 100 without.
 */
most: number | null, };

/**
 * How a code came in.
 */
export type ScanWay = "picture" | "typed";

/**
 * What stands in a picture.
 */
export type Scanned = { 
/**
 * Every code that was read.
 */
codes: Array<Scan>, };

/**
 * Where a policy holds. The narrowest that says anything wins.
 */
export type Scope = "fleet" | { "site": SiteId } | { "machine": MachineId } | { "place": PlaceId };

/**
 * What seals.
 */
export type Seal = "cone" | "o-ring-face" | "o-ring-shoulder" | "o-ring-cone" | "bonded-washer" | "thread" | "inverted-flare" | "flat-gasket";

/**
 * What is looked for.
 */
export type Search = { 
/**
 * Beginnings of words: code, machine, place, site, size.
 */
words: string, 
/**
 * So many at most; 100 without.
 */
limit?: number, };

/**
 * Shape of a seat as it is seen.
 */
export type SeatShape = "convex" | "concave" | "flat";

/**
 * A segment that was refused.
 */
export type SegmentRefused = { 
/**
 * Whose series.
 */
device: DeviceId, 
/**
 * Its first event.
 */
from: number, 
/**
 * Two programs wrote as that device.
 */
copied: boolean, 
/**
 * Why, in words.
 */
why: string, };

/**
 * What the assembly will have to stand.
 */
export type Service = { 
/**
 * Pressure of the circuit in work.
 */
working_pressure_bar: Bar | null, 
/**
 * Setting of the relief or port relief valve.
 */
relief_bar: Bar | null, 
/**
 * Highest peak, where known.
 */
surge_pressure_bar: Bar | null, 
/**
 * Fluid by its class (`HM`, `HFC`) or name.
 */
fluid: string | null, 
/**
 * Coldest the fluid gets.
 */
fluid_min_c: Celsius | null, 
/**
 * Hottest the fluid gets.
 */
fluid_max_c: Celsius | null, 
/**
 * Hottest air round the hose.
 */
ambient_max_c: Celsius | null, 
/**
 * Flow through the hose.
 */
flow_l_min: LitresPerMinute | null, 
/**
 * What the line does.
 */
line: Line | null, 
/**
 * Tightest bend at the inside of the hose.
 */
bend_radius_mm: Millimetres | null, 
/**
 * Lowest absolute pressure in the line, in kPa.
 */
vacuum_kpa_abs: number | null, 
/**
 * What the place asks beyond pressure.
 */
duties: Array<Duty>, 
/**
 * Which of these figures were worked out, and not measured.
 */
estimated: Estimated | null, };

/**
 * Settings of this device. What is left out is as it was on the first day.
 */
export type Settings = { 
/**
 * The language that everything is said and written in; none is that of the device.
 */
language: LanguageTag | null, 
/**
 * The unit that lengths are written in first.
 */
length_unit: LengthUnit, 
/**
 * The unit that pressures are written in first.
 */
pressure_unit: PressureUnit, 
/**
 * The paper in the printer.
 */
paper: PaperSize, 
/**
 * The labels there are, 1 to 30, each with a name of its own; the first is offered first.
 */
label_stocks: Array<LabelStock>, 
/**
 * Whose tolerances lengths are held to.
 */
length_practice: LengthPractice, 
/**
 * Standard error of the caliper.
 */
caliper_error_mm: Millimetres, 
/**
 * Standard error of the tape.
 */
tape_error_mm: Millimetres, 
/**
 * Standard error of the micrometer.
 */
micrometer_error_mm: Millimetres, 
/**
 * What the saw takes of a hose; none is not known.
 */
kerf_mm: Millimetres | null, 
/**
 * How many months a calibration of the proof gauge holds.
 */
gauge_months: number, 
/**
 * What is done at the press, and how often.
 */
press_care: Array<PressCare>, 
/**
 * The van or shelf that this device works from; blank is not said.
 */
store: string, 
/**
 * From which length a rest of hose is kept; none keeps every rest.
 */
offcut_mm: Millimetres | null, 
/**
 * Prices, tax and labour.
 */
pricing: Pricing, 
/**
 * The instruments in use.
 */
instruments: Instruments, 
/**
 * Who is working; none when nobody said so, or when the name was erased.
 */
person: PersonId | null, };

/**
 * Settings of this device as they were kept.
 */
export type SettingsRead = { 
/**
 * The names of those that were kept and can not be read: what stands on the first day holds for them.
 */
unreadable: Array<string>, 
/**
 * The language that everything is said and written in; none is that of the device.
 */
language: LanguageTag | null, 
/**
 * The unit that lengths are written in first.
 */
length_unit: LengthUnit, 
/**
 * The unit that pressures are written in first.
 */
pressure_unit: PressureUnit, 
/**
 * The paper in the printer.
 */
paper: PaperSize, 
/**
 * The labels there are, 1 to 30, each with a name of its own; the first is offered first.
 */
label_stocks: Array<LabelStock>, 
/**
 * Whose tolerances lengths are held to.
 */
length_practice: LengthPractice, 
/**
 * Standard error of the caliper.
 */
caliper_error_mm: Millimetres, 
/**
 * Standard error of the tape.
 */
tape_error_mm: Millimetres, 
/**
 * Standard error of the micrometer.
 */
micrometer_error_mm: Millimetres, 
/**
 * What the saw takes of a hose; none is not known.
 */
kerf_mm: Millimetres | null, 
/**
 * How many months a calibration of the proof gauge holds.
 */
gauge_months: number, 
/**
 * What is done at the press, and how often.
 */
press_care: Array<PressCare>, 
/**
 * The van or shelf that this device works from; blank is not said.
 */
store: string, 
/**
 * From which length a rest of hose is kept; none keeps every rest.
 */
offcut_mm: Millimetres | null, 
/**
 * Prices, tax and labour.
 */
pricing: Pricing, 
/**
 * The instruments in use.
 */
instruments: Instruments, 
/**
 * Who is working; none when nobody said so, or when the name was erased.
 */
person: PersonId | null, };

/**
 * Whether one class holds 99 % and no dangerous partner holds 0.1 % or more.
 */
export type Settled = { 
/**
 * The hose.
 */
hose: boolean, 
/**
 * End A.
 */
A: boolean, 
/**
 * End B.
 */
B: boolean, };

/**
 * Where a fleet's devices exchange what they wrote.
 */
export type ShareSet = { 
/**
 * `file:///folder`, `https://server/folder` for WebDAV, or `s3://bucket/folder`. Blank takes the storage away.
 */
url: string, 
/**
 * Address of an S3-compatible service.
 */
endpoint?: string | null, 
/**
 * Region of the bucket.
 */
region?: string | null, 
/**
 * Name of the account, or id of the key.
 */
user?: string | null, 
/**
 * Password, or the key itself. It is kept in the file of keys and never shown again.
 */
secret?: string | null, };

/**
 * What was exchanged, and what waits.
 */
export type Shared = { 
/**
 * Where; none before it was chosen.
 */
url: string | null, 
/**
 * Mark of the fleet to which it is encrypted; none where this device has no fleet yet.
 */
fleet: FleetMark | null, 
/**
 * Events that this device wrote.
 */
written: number, 
/**
 * Those of them that the storage had at the last exchange.
 */
sent: number, 
/**
 * The other devices, as far as what they wrote has come here.
 */
devices: Array<Device>, 
/**
 * How this device stands in its fleet.
 */
standing: MemberStanding, 
/**
 * Photos on record, and those whose pictures are here.
 */
photos: PhotosHere, 
/**
 * What came here and does not count, by device and reason.
 */
left_out: Array<LeftOutOf>, 
/**
 * What devices told in two ways, for a person to settle.
 */
not_settled: number, 
/**
 * The last exchange; none before the first.
 */
last: Exchanged | null, };

/**
 * What a person must say before a column can be read, because two readings are possible: it is never guessed.
 */
export type SheetAsks = "unit" | "days";

/**
 * A column of a sheet.
 */
export type SheetHeading<C> = { 
/**
 * Its number, from 0.
 */
column: number, 
/**
 * Its heading as it stands there.
 */
heading: string, 
/**
 * What it seems to be; none where nothing fits.
 */
is: C | null, 
/**
 * The units that its bare numbers can have; none of what is no length or pressure.
 */
units: Array<SheetUnit>, 
/**
 * The unit that was said, or stands in its heading.
 */
unit: SheetUnit | null, 
/**
 * Which stands first in its days: as was said, or where its own days can be read one way only.
 */
days: DayOrder | null, 
/**
 * What a person must still say before it can be read.
 */
asks: SheetAsks | null, 
/**
 * Its first cells.
 */
examples: Array<string>, };

/**
 * What a person says a column is.
 */
export type SheetMatched<C> = { 
/**
 * Its number, from 0.
 */
column: number, 
/**
 * What it is.
 */
is: C, 
/**
 * Unit of its bare numbers.
 */
unit?: SheetUnit | null, 
/**
 * Which stands first in its days.
 */
days?: DayOrder | null, };

/**
 * A row that can not be taken.
 */
export type SheetRefused<C> = { 
/**
 * Its number as a spreadsheet shows it.
 */
row: number, 
/**
 * The column that is wrong; none where it is the row.
 */
column: C | null, 
/**
 * Why, and what would be right.
 */
why: string, };

/**
 * A row that says just what an earlier one says.
 */
export type SheetRepeated = { 
/**
 * Its number.
 */
row: number, 
/**
 * The number of the earlier one.
 */
of: number, };

/**
 * One step of a build sheet.
 */
export type SheetStep = { 
/**
 * The part of the job it belongs to.
 */
step: Step, 
/**
 * What is done: the words `step-<code>`.
 */
code: string, 
/**
 * Which end; none for the whole.
 */
role: Role | null, 
/**
 * What to mind at this step and not before.
 */
cautions: Array<StepCaution>, };

/**
 * Unit of the bare numbers of a column.
 */
export type SheetUnit = "mm" | "in" | "bar" | "psi" | "mpa";

/**
 * What lies at the shoulder of a stud and at the mouth of its port.
 */
export type Shoulder = "chamfered" | "flat";

/**
 * Which hose.
 */
export type ShowQuestion = { 
/**
 * Its code, as it stands on the tag.
 */
code: TagCode, };

/**
 * Something seen at an inspection.
 */
export type SignEntry = { 
/**
 * Its code.
 */
code: string, 
/**
 * What kind of thing.
 */
group: SignGroup, 
/**
 * The cause of failure it leads to, by its code.
 */
cause: string, 
/**
 * What is seen.
 */
name: string, 
/**
 * What to do.
 */
act: string, 
/**
 * A stop stops the machine; a caution moves the day.
 */
grade: Verdict, 
/**
 * Due at most so many days after the inspection; none for a stop, which is due at once.
 */
within_days: number | null, 
/**
 * How long it stands.
 */
until: StandsUntil, 
/**
 * Where it comes from.
 */
source: string, 
/**
 * How sure that is.
 */
basis: Basis, };

/**
 * What kind of thing is seen.
 */
export type SignGroup = "cover" | "shape" | "leak" | "end" | "routing" | "marking" | "other";

/**
 * What a point gives away: the press is not what it was.
 */
export type Signal = "outside" | "jump" | "two-of-three" | "four-of-five" | "eight-on-one-side";

/**
 * A signature that was drawn on a screen. It goes on the paper and is not kept.
 */
export type Signature = { 
/**
 * Whose.
 */
name?: string | null, 
/**
 * Its strokes: points from 0 to 1 to the right and down, of a box four times as wide as high.
 */
strokes: Array<Array<[number, number]>>, };

/**
 * Another place of the same circuit.
 */
export type Sister = { 
/**
 * The place.
 */
place: PlaceId, 
/**
 * Its number on the machine's drawing.
 */
number: number, 
/**
 * What people call it.
 */
name: string, 
/**
 * The hose that sits there; none is none that is known.
 */
code: TagCode | null, 
/**
 * What that hose is, or without one what belongs there.
 */
spec: Spec | null, 
/**
 * What the hose carries, as it was recorded; none is not known.
 */
pressure_bar: Bar | null, };

/**
 * A site and its name.
 */
export type Site = { 
/**
 * Which.
 */
site: SiteId, 
/**
 * What people call it.
 */
name: string, };

/**
 * A site: yard, quarry, forest block.
 */
export type SiteId = string;

/**
 * A site in the list.
 */
export type SiteRow = { 
/**
 * Which.
 */
site: SiteId, 
/**
 * The event that stands.
 */
version: EventRef, 
/**
 * What people call it.
 */
name: string, 
/**
 * Machines there.
 */
machines: number, 
/**
 * Hoses on them.
 */
hoses: number, };

/**
 * Another size of the type, put through the whole check in the same service.
 */
export type SizeTried = { 
/**
 * Standard.
 */
standard: string, 
/**
 * Type.
 */
type: string, 
/**
 * Nominal diameter.
 */
dn: Dn, 
/**
 * Speed of the oil in it.
 */
velocity_m_s: number, 
/**
 * The gravest that the whole check says of it and not of the spec's own hose: what was left out of the question
 * speaks against both.
 */
verdict: Verdict, };

/**
 * What is taken off the hose before the end goes on.
 */
export type Skive = "none" | { "outer": { 
/**
 * Length from the cut.
 */
length_mm: Millimetres, } } | { "inner": { 
/**
 * Length from the cut.
 */
length_mm: Millimetres, } } | { "both": { 
/**
 * Length of cover from the cut.
 */
outer_mm: Millimetres, 
/**
 * Length of tube from the cut.
 */
inner_mm: Millimetres, } };

/**
 * A hose assembly, as far as it is known.
 */
export type Spec = { 
/**
 * The hose.
 */
hose?: HoseRef | null, 
/**
 * Both ends, in any order.
 */
ends: Array<EndSpec>, 
/**
 * Adapters in the line.
 */
adapters?: Array<Adapter>, 
/**
 * From sealing point to sealing point, nuts pushed back.
 */
overall_length_mm?: Millimetres | null, 
/**
 * Looking along the hose from A to B with A's elbow up: clockwise to B's elbow, 0 to 359.
 */
turn_deg?: Degrees | null, 
/**
 * What the cover is, such as `non-conductive`.
 */
cover?: Cover | null, };

/**
 * What a failure at a place puts at risk.
 */
export type Stake = "someone-beside" | "load-held-up" | "hot-surface" | "remote";

/**
 * What a failure puts at risk.
 */
export type StakeEntry = { 
/**
 * Its name in the contract; `none` and `not-said` besides.
 */
stake: string, 
/**
 * From 1, a nuisance, to 5, someone may be hurt.
 */
weight: number, 
/**
 * What it is called.
 */
name: string, 
/**
 * Where it comes from.
 */
source: string, 
/**
 * How sure that is.
 */
basis: Basis, };

/**
 * Something that was seen on a hose and stands.
 */
export type Standing = { 
/**
 * The sign, by its code.
 */
sign: string, 
/**
 * How grave: a stop stops the machine.
 */
grade: Verdict, 
/**
 * When.
 */
seen_on: string, 
/**
 * The day it is due for.
 */
due: string, };

/**
 * Whether what is wanted is there.
 */
export type Stands = "there" | "short" | "not-kept" | "not-known";

/**
 * How long something that was seen stands.
 */
export type StandsUntil = "off" | "next";

/**
 * A value of one side.
 */
export type Stated = number | Reinforcement | Cover;

/**
 * Where a hose stands in its life.
 */
export type Status = { "state": "made" } | { "state": "fitted" } | { "state": "taken-off" } | { "state": "failed-proof" } | { "state": "withdrawn", 
/**
 * Why.
 */
reason: string, };

/**
 * One stay of a hose at a place.
 */
export type Stay = { 
/**
 * The hose.
 */
code: TagCode, 
/**
 * The place.
 */
at: PlaceAt, 
/**
 * What it is; none where nobody knows.
 */
hose: HoseRef | null, 
/**
 * Its overall length.
 */
length_mm: Millimetres | null, 
/**
 * When the hose was assembled, where that is known.
 */
assembled: string | null, 
/**
 * The event that put it there; none where only its end is recorded.
 */
on: EventRef | null, 
/**
 * When it was fitted, or found there.
 */
on_date: string | null, 
/**
 * It was found there on that day, fitted at some earlier time.
 */
already_there: boolean, 
/**
 * The machine's hours then.
 */
on_hours: number | null, 
/**
 * The event that took it off; none while it sits there.
 */
off: EventRef | null, 
/**
 * When it came off.
 */
off_date: string | null, 
/**
 * The machine's hours then.
 */
off_hours: number | null, 
/**
 * Why it failed, by the code of the failure causes; none: it had not failed.
 */
cause: string | null, 
/**
 * What was seen.
 */
note: string | null, };

/**
 * The step of the job a caution belongs to.
 */
export type Step = "before" | "find" | "check" | "make" | "prove" | "tag" | "fit" | "keep";

/**
 * A caution at its step.
 */
export type StepCaution = { 
/**
 * Its number in the table.
 */
id: string, 
/**
 * What to do or not to do.
 */
caution: string, 
/**
 * What happens otherwise.
 */
why: string, 
/**
 * Where it stands.
 */
source: string, 
/**
 * How sure that is.
 */
basis: Basis, };

/**
 * A step that was ticked.
 */
export type StepDone = { 
/**
 * The step: the words `step-<code>`.
 */
code: string, 
/**
 * Of which end; none for the whole.
 */
role?: Role | null, 
/**
 * When.
 */
at: string, 
/**
 * By whom; none where nobody said.
 */
by?: PersonId | null, };

/**
 * A length of hose that can be cut from.
 */
export type Stock = { 
/**
 * Reel or offcut.
 */
sort: StockSort, 
/**
 * How much is left.
 */
length_mm: Millimetres, };

/**
 * What is to be done, all or none.
 */
export type StockChange = { 
/**
 * In order.
 */
changes: Array<StockDo>, };

/**
 * What was done.
 */
export type StockChangeAnswer = { 
/**
 * The events; they are on the disk.
 */
written: Array<EventRef>, 
/**
 * The ids of pieces that came, in order.
 */
pieces: Array<PieceId>, 
/**
 * What a person must see.
 */
said: Array<StockSaid>, };

/**
 * Counted stock of a van or shelf, as a difference.
 */
export type StockChanged = { 
/**
 * The van or shelf, by what people call it.
 */
store: string, 
/**
 * What.
 */
item: Item, 
/**
 * What is counted.
 */
unit: StockUnit, 
/**
 * How much came (positive) or went (negative).
 */
difference: number, 
/**
 * Why; none in the records of older programs.
 */
why?: StockWhy | null, 
/**
 * The hose it went into.
 */
hose?: TagCode | null, 
/**
 * In which bin; blank is the one that was set for the thing, if any was.
 */
bin?: string, 
/**
 * Of a count, what its device had heard of the thing; the register fills it in. None in the records of older programs.
 */
seen?: Array<EventRef> | null, };

/**
 * What is cut from one stock.
 */
export type StockCut = { 
/**
 * The stock, by its place in the question.
 */
stock: number, 
/**
 * The pieces, by their place in the question, longest first.
 */
pieces: Array<number>, 
/**
 * What is left of the stock.
 */
left_mm: Millimetres, 
/**
 * Whether the rest is kept; a shorter one of an offcut is scrap.
 */
kept: boolean, };

/**
 * One thing that is done with stock.
 */
export type StockDo = { "do": "load", 
/**
 * To which van or shelf.
 */
store: string, 
/**
 * What.
 */
item: Item, 
/**
 * How many.
 */
count: number, 
/**
 * Into which bin; where most of it lies without.
 */
bin?: string, } | { "do": "load-hose" } & HoseLoaded | { "do": "correct", 
/**
 * Where.
 */
store: string, 
/**
 * What.
 */
item: Item, 
/**
 * How many.
 */
to: number, 
/**
 * In which bin; needed where it lies in more than one.
 */
bin?: string, } | { "do": "correct-piece", 
/**
 * Which.
 */
piece: PieceId, 
/**
 * How long.
 */
to_mm: Millimetres, } | { "do": "scrap", 
/**
 * Where.
 */
store: string, 
/**
 * What.
 */
item: Item, 
/**
 * How many.
 */
count: number, 
/**
 * Out of which bin; out of those that have some without.
 */
bin?: string, } | { "do": "scrap-piece", 
/**
 * Which.
 */
piece: PieceId, } | { "do": "move", 
/**
 * What.
 */
item: Item, 
/**
 * From where.
 */
from: string, 
/**
 * To where.
 */
to: string, 
/**
 * How many.
 */
count: number, 
/**
 * Out of which bin; out of those that have some without.
 */
from_bin?: string, 
/**
 * Into which bin there; where most of it lies without.
 */
bin?: string, } | { "do": "move-piece", 
/**
 * Which.
 */
piece: PieceId, 
/**
 * To where.
 */
to: string, 
/**
 * Into which bin there; none without, or in the same store as it was.
 */
bin?: string, } | { "do": "keep", 
/**
 * Where.
 */
store: string, 
/**
 * What.
 */
item: Item, 
/**
 * Its bin.
 */
bin?: string, 
/**
 * At or below how much it is low.
 */
low?: number | null, } | { "do": "price", 
/**
 * What.
 */
item: Item, 
/**
 * As it is typed, such as `12.50`; none takes the price away.
 */
price?: string, };

/**
 * Another store that has some.
 */
export type StockElsewhere = { 
/**
 * The van or shelf.
 */
store: string, 
/**
 * How much is there.
 */
quantity: number, };

/**
 * Something that came back.
 */
export type StockGivenBack = { 
/**
 * It in words.
 */
name: string, 
/**
 * How much: a number, of hose millimetres.
 */
quantity: number, 
/**
 * Counted in.
 */
unit: StockUnit, };

/**
 * Kinds of things, for lists.
 */
export type StockKind = "hose" | "end" | "ferrule" | "adapter" | "sleeve" | "seal" | "other";

/**
 * What is on the vans and shelves.
 */
export type StockList = { 
/**
 * Every van and shelf, whatever was asked for.
 */
stores: Array<StoreSum>, 
/**
 * Hose by store and name, each with its pieces.
 */
hoses: Array<HoseStock>, 
/**
 * Counted things by store and name.
 */
items: Array<ItemStock>, 
/**
 * What a person must see.
 */
said: Array<StockSaid>, };

/**
 * Counted stock that went from one van, shelf or bin to another: one event, so that neither half can be had alone.
 */
export type StockMoved = { 
/**
 * What.
 */
item: Item, 
/**
 * What is counted.
 */
unit: StockUnit, 
/**
 * Where it was.
 */
from: string, 
/**
 * Where it is.
 */
to: string, 
/**
 * How much, above nothing.
 */
count: number, 
/**
 * Out of which bin; blank is the one that was set for the thing.
 */
from_bin?: string, 
/**
 * Into which bin; blank is the one that was set for the thing.
 */
to_bin?: string, };

/**
 * Where a thing lies on a van or shelf unless its count says otherwise, and when it runs low there. Written whole.
 */
export type StockPlaced = { 
/**
 * The van or shelf.
 */
store: string, 
/**
 * What.
 */
item: Item, 
/**
 * Its bin or drawer; blank is not said.
 */
bin: string, 
/**
 * At or below how much it is low: pieces, of hose millimetres. None is not said.
 */
low?: number, };

/**
 * Which stock is asked for; all of it without.
 */
export type StockQuestion = { 
/**
 * Of this van or shelf alone.
 */
store?: string, 
/**
 * In this bin alone.
 */
bin?: string, 
/**
 * With these words in its name, bin or supplier's name.
 */
text?: string, 
/**
 * Of this kind alone.
 */
kind?: StockKind, 
/**
 * What is low alone.
 */
low: boolean, 
/**
 * Also pieces that are used up and things of which none is left.
 */
all: boolean, };

/**
 * Something that a person must see: stock below nothing, a piece cut twice.
 */
export type StockSaid = { 
/**
 * What.
 */
code: SaidCode, 
/**
 * It in words.
 */
words: string, };

/**
 * What a stock is. A reel's rest stays on the reel, whatever its length.
 */
export type StockSort = "reel" | "offcut";

/**
 * What differs.
 */
export type StockTakeAnswer = { 
/**
 * What was counted otherwise than it was known.
 */
rows: Array<TakeRow>, 
/**
 * What changed since it was counted, such as by a hose that was made in between: it is not written down and has to be
 * counted again.
 */
changed: Array<TakeRow>, 
/**
 * What is known to be there and was not counted; it stays as it is.
 */
not_counted: Array<NotCounted>, 
/**
 * Whether the differences were written down.
 */
saved: boolean, 
/**
 * The events; they are on the disk.
 */
written: Array<EventRef>, 
/**
 * What a person must see.
 */
said: Array<StockSaid>, };

/**
 * What was counted. Ask first without saving, show what differs, then save.
 */
export type StockTakeQuestion = { 
/**
 * In which van or on which shelf.
 */
store: string, 
/**
 * In which bin; the whole store without.
 */
bin?: string, 
/**
 * Counted things.
 */
items: Array<CountedItem>, 
/**
 * Pieces of hose.
 */
pieces: Array<CountedPiece>, 
/**
 * Write the differences down; only tell them without.
 */
save: boolean, };

/**
 * What stock is counted in.
 */
export type StockUnit = "pieces" | "millimetres";

/**
 * What a build used.
 */
export type StockUsed = { 
/**
 * From which van or shelf the counted things are.
 */
store: string, 
/**
 * The hose.
 */
pieces?: Array<UsedPiece>, 
/**
 * Ends, ferrules and the rest.
 */
items?: Array<UsedItem>, };

/**
 * Why stock changed.
 */
export type StockWhy = "loaded" | "used" | "scrapped" | "counted";

/**
 * What the pressure does when the whole flow is stopped.
 */
export type Stopped = { 
/**
 * Working pressure and rise together; none while the working pressure is not known.
 */
peak_bar: Bar | null, 
/**
 * Bulk modulus of fluid, air and wall together.
 */
effective_bulk_modulus_pa: number, 
/**
 * Speed of the pressure wave.
 */
wave_speed_m_s: number | null, 
/**
 * Time in which the wave runs to the end and back; a faster closure is as bad as a sudden one.
 */
critical_time_s: number | null, 
/**
 * Rise above the pressure before.
 */
pressure_rise_bar: Bar | null, };

/**
 * A van or shelf at a glance.
 */
export type StoreSum = { 
/**
 * Its name.
 */
store: string, 
/**
 * Pieces of hose that something is left of.
 */
pieces: number, 
/**
 * Counted things that are there.
 */
items: number, 
/**
 * Things that are low.
 */
low: number, };

/**
 * A reading that goes with the likeliest answer only as a stray. Nothing is settled while it stands.
 */
export type Stray = { 
/**
 * Of which part.
 */
of: Part, 
/**
 * The key of the reading.
 */
reading: string, 
/**
 * What was read, in the unit of its key.
 */
read: number, 
/**
 * Least that would go with it; none where it has no such thing.
 */
least: number | null, 
/**
 * Most.
 */
most: number | null, 
/**
 * The likeliest answer it does not go with.
 */
named: string, 
/**
 * All that in words, and what to do; empty until the edge writes it.
 */
words: string, };

/**
 * What a column of a supplier's table is.
 */
export type SupplierColumn = "supplier" | "standard" | "type" | "dn" | "family" | "size" | "series" | "ferrule" | "insertion" | "skive" | "skive-inner" | "lubricant" | "die-set" | "crimp-diameter" | "crimp-tolerance" | "cutoff";

/**
 * Which row.
 */
export type SupplierId = { 
/**
 * Its number here.
 */
id: number, };

/**
 * A sheet to be taken in.
 */
export type SupplierImport = { 
/**
 * The file's name: the rows say that they are from it.
 */
name: string, 
/**
 * Say what would be taken and refused; change nothing.
 */
dry_run: boolean, 
/**
 * The row of its headings, from 1; found by itself without.
 */
header_row?: number | null, 
/**
 * What the columns are; as their headings propose without.
 */
columns?: Array<SheetMatched<SupplierColumn>> | null, 
/**
 * What stands in no column and holds for every row, such as the supplier.
 */
fixed?: Partial<Record<SupplierColumn, string>>, 
/**
 * Rows that are left out, as a spreadsheet numbers them.
 */
leave_out?: Array<number>, };

/**
 * What was, or would be, taken of a sheet. Every row that is not blank is in one of these.
 */
export type SupplierImported = { 
/**
 * Nothing was changed.
 */
dry_run: boolean, 
/**
 * Rows that are not blank.
 */
rows: number, 
/**
 * Rows that are taken.
 */
taken: number, 
/**
 * Of these, rows for what there was none for.
 */
new: number, 
/**
 * Rows that take the place of an earlier edition's.
 */
changed: number, 
/**
 * Rows that were there already.
 */
same: number, 
/**
 * Rows that say just what an earlier one of the sheet says.
 */
repeated: Array<SheetRepeated>, 
/**
 * Rows that the person left out.
 */
left_out: Array<number>, 
/**
 * Rows that can not be taken, with the reason. Unless this is a dry run there are none.
 */
refused: Array<SheetRefused<SupplierColumn>>, };

/**
 * A row of a supplier's table as it is kept.
 */
export type SupplierKept = { 
/**
 * Its number here.
 */
id: number, 
/**
 * The row.
 */
row: SupplierRow, 
/**
 * When it was kept.
 */
kept: string, };

/**
 * The suppliers and their rows.
 */
export type SupplierList = { 
/**
 * Every supplier.
 */
suppliers: Array<SupplierName>, 
/**
 * The rows asked for.
 */
rows: Array<SupplierKept>, };

/**
 * What is listed.
 */
export type SupplierListQuestion = { 
/**
 * Of this supplier; of all without.
 */
supplier: string | null, };

/**
 * What is known.
 */
export type SupplierLookup = { 
/**
 * Of each end, A first.
 */
ends: Array<EndKnown>, 
/**
 * Both cut-offs together, learned from finished lengths.
 */
cutoffs: CutoffSum | null, };

/**
 * What is to be made.
 */
export type SupplierLookupQuestion = { 
/**
 * Hose and ends.
 */
spec: Spec, 
/**
 * Settings as far as they are known: the series of an end parts its cut-offs from another's.
 */
settings?: Array<EndSettings>, };

/**
 * A sheet to be looked at.
 */
export type SupplierMatchQuestion = { 
/**
 * The file's name, for messages.
 */
name: string, 
/**
 * The row of its headings, from 1; found by itself without.
 */
header_row?: number | null, 
/**
 * What a person says they are, to see what is missing and asked then.
 */
columns?: Array<SheetMatched<SupplierColumn>> | null, };

/**
 * What the columns of a sheet seem to be: a proposal.
 */
export type SupplierMatches = { 
/**
 * Everything that a column can be.
 */
choices: Array<SupplierColumn>, 
/**
 * The row they stand in, from 1 as a spreadsheet shows it.
 */
header_row: number, 
/**
 * Rows beneath it that are not blank.
 */
rows: number, 
/**
 * The columns, blank ones left out.
 */
columns: Array<SheetHeading<SupplierColumn>>, 
/**
 * What no row can be without and no column is: a column is chosen for it, or one value given for all rows.
 */
missing: Array<SupplierColumn>, };

/**
 * A supplier and how many rows there are.
 */
export type SupplierName = { 
/**
 * Its name.
 */
supplier: string, 
/**
 * How many rows.
 */
rows: number, };

/**
 * What is taken away: a supplier with all rows, or one row.
 */
export type SupplierRemove = { 
/**
 * All rows of this supplier.
 */
supplier: string | null, 
/**
 * This row.
 */
id: number | null, };

/**
 * What was taken away.
 */
export type SupplierRemoved = { 
/**
 * How many rows.
 */
removed: number, };

/**
 * How an end goes on a hose, by one supplier.
 */
export type SupplierRow = { 
/**
 * Whose figures they are.
 */
supplier: string, 
/**
 * The hose's standard.
 */
standard: string, 
/**
 * Its type.
 */
type: string, 
/**
 * Its size.
 */
dn: Dn, 
/**
 * Family of the end; none is any of that series.
 */
family?: string | null, 
/**
 * Size of the end; none is any.
 */
size?: string | null, 
/**
 * Series of the fitting, by the supplier's name.
 */
series?: string | null, 
/**
 * The ferrule, by the supplier's name.
 */
ferrule?: string | null, 
/**
 * How far the hose goes on.
 */
insertion_mm?: Millimetres | null, 
/**
 * What is taken off first.
 */
skive?: Skive | null, 
/**
 * What the hose is pushed on with.
 */
lubricant?: string | null, 
/**
 * The die set.
 */
die_set?: string | null, 
/**
 * Diameter over the crimped ferrule.
 */
crimp_diameter_mm?: Millimetres | null, 
/**
 * How far either way it may be off.
 */
crimp_tolerance_mm?: Millimetres | null, 
/**
 * From sealing point to hose stop.
 */
cutoff_mm?: Millimetres | null, 
/**
 * Where it stands: the file and its row, or that it was entered by hand.
 */
from: string, };

/**
 * A row entered by hand.
 */
export type SupplierRowQuestion = { 
/**
 * The row.
 */
row: SupplierRow, };

/**
 * What the pressure does. What can not be known from what was given is none.
 */
export type SurgeAnswer = { 
/**
 * Bulk modulus of fluid, air and wall together.
 */
effective_bulk_modulus_pa: number, 
/**
 * Speed of the pressure wave.
 */
wave_speed_m_s: number | null, 
/**
 * Time in which the wave runs to the end and back; a faster closure is as bad as a sudden one.
 */
critical_time_s: number | null, 
/**
 * Rise above the pressure before.
 */
pressure_rise_bar: Bar | null, };

/**
 * A line in which the oil is stopped. Without a wall or a measured expansion it is rigid.
 */
export type SurgeQuestion = { 
/**
 * Bulk modulus of the fluid without air.
 */
bulk_modulus_pa: number, 
/**
 * Density of the fluid; gives the wave speed.
 */
density_kg_m3?: number | null, 
/**
 * Inside diameter.
 */
bore_mm?: Millimetres | null, 
/**
 * Thickness of the wall.
 */
wall_thickness_mm?: Millimetres | null, 
/**
 * Young's modulus of the wall.
 */
wall_modulus_pa?: number | null, 
/**
 * Poisson's ratio of the wall. With it the wall is reckoned as thick, without it as thin.
 */
poisson?: number | null, 
/**
 * Length of the line to where the wave turns back; gives the critical time.
 */
length_m?: Metres | null, 
/**
 * How much of its velocity the oil loses; gives the pressure rise.
 */
velocity_change_m_s?: number | null, 
/**
 * How long that takes; at once unless given.
 */
closure_time_s?: number | null, 
/**
 * Part of the volume that is free air, measured at atmospheric pressure.
 */
air_fraction?: number | null, 
/**
 * Pressure in the line before, gauge; needed with air.
 */
pressure_pa?: number | null, 
/**
 * Volumetric expansion of the hose as measured by ISO 6801, in place of a wall.
 */
volumetric_expansion_cm3_m_mpa?: number | null, };

/**
 * The places of a machine, and what was read of each in place.
 */
export type Survey = { 
/**
 * The machine.
 */
machine: MachineId, 
/**
 * What people call it.
 */
name: string, 
/**
 * Its places, by number.
 */
places: Array<SurveyPlace>, 
/**
 * Places that were looked at.
 */
done: number, 
/**
 * Places that were not, or could not be reached.
 */
left: number, };

/**
 * The likeliest hose and ends by what was read in place.
 */
export type SurveyFound = { 
/**
 * The hose.
 */
hose: string | null, 
/**
 * End A.
 */
A: string | null, 
/**
 * End B.
 */
B: string | null, };

/**
 * A place on the walk.
 */
export type SurveyPlace = { 
/**
 * Which.
 */
place: PlaceId, 
/**
 * Its number on the machine's drawing.
 */
number: number, 
/**
 * What people call it.
 */
name: string, 
/**
 * The hose that sits there, as far as the register knows.
 */
code: TagCode | null, 
/**
 * What belongs there.
 */
spec: Spec | null, 
/**
 * The last survey.
 */
last: Versioned<Surveyed> | null, 
/**
 * Whether what was read settles each part; what was not opened seldom does.
 */
settled: Settled | null, 
/**
 * The likeliest by what was read.
 */
found: SurveyFound, 
/**
 * What can still be read in place.
 */
next: Array<NextReading>, };

/**
 * Which machine.
 */
export type SurveyQuestion = { 
/**
 * Its id.
 */
machine: MachineId, };

/**
 * How far a place was looked into when it was surveyed.
 */
export type SurveyState = "not-opened" | "opened" | "not-reached" | "no-hose";

/**
 * A place looked at on a walk round the machine.
 */
export type Surveyed = { 
/**
 * Which.
 */
place: PlaceId, 
/**
 * When.
 */
date: string, 
/**
 * How far.
 */
state: SurveyState, 
/**
 * The tag that was seen there; none was seen without.
 */
code?: TagCode, 
/**
 * What was read.
 */
readings?: Readings, 
/**
 * What was seen besides.
 */
note?: string, };

/**
 * How the part still in service was reckoned, without any law of lives.
 */
export type SurvivalBy = "kaplan-meier" | "turnbull";

/**
 * What can be chosen and drawn.
 */
export type Tables = { 
/**
 * Threaded and plain ends.
 */
ends: Array<EndEntry>, 
/**
 * Four-bolt flanges.
 */
flanges: Array<FlangeEntry>, 
/**
 * Hose types with their sizes.
 */
hoses: Array<HoseEntry>, 
/**
 * Fluids.
 */
fluids: Array<FluidEntry>, 
/**
 * Forms of ends, as a spec names them; an elbow of another angle is named like these.
 */
forms: Array<string>, 
/**
 * Causes of failure.
 */
causes: Array<CauseEntry>, 
/**
 * What is seen at inspections, and what it does.
 */
signs: Array<SignEntry>, 
/**
 * What a failure puts at risk, and how bad that is.
 */
stakes: Array<StakeEntry>, 
/**
 * How hard a place can be on hoses.
 */
demands: Array<Demand>, 
/**
 * What a place can ask of the hose.
 */
duties: Array<Duty>, 
/**
 * What a line can do.
 */
lines: Array<Line>, 
/**
 * Keys of the readings of a hose, in the order they are taken.
 */
hose_readings: Array<string>, 
/**
 * Keys of the readings of an end, in the order they are taken.
 */
end_readings: Array<string>, };

/**
 * A tag to be taken in.
 */
export type TagAdopt = { 
/**
 * Its whole text, as it was read.
 */
text: string, };

/**
 * A hose that was taken in from its tag.
 */
export type TagAdopted = { 
/**
 * Its code.
 */
code: TagCode, 
/**
 * The events; they are on the disk.
 */
written: Array<EventRef>, 
/**
 * What stands on record.
 */
assembly: Assembly, };

/**
 * The code of one tag, unique by 50 random bits. Written `7KQ4M-2XR9D-D`, typed as one likes:
 * lower case, without dashes, `I` or `L` for 1 and `O` for 0.
 */
export type TagCode = string;

/**
 * All that a tag carries. Numbers must be finite: a tag with another is refused when read.
 */
export type TagContent = { 
/**
 * The tag's own code.
 */
code: TagCode, 
/**
 * The assembly.
 */
spec: Spec, 
/**
 * Pressure of the assembly, its weakest part's; none when that is not known.
 */
pressure_bar?: Bar | null, 
/**
 * What the line does.
 */
line?: Line | null, 
/**
 * Fluid by its class (`HM`, `HFC`) or name.
 */
fluid?: string | null, 
/**
 * What the place asks beyond pressure.
 */
duties?: Array<Duty>, 
/**
 * When the assembly was made.
 */
assembled?: Assembled | null, 
/**
 * Whether it was proved.
 */
proof: TagProof, 
/**
 * Version of the catalogue it was checked against.
 */
catalogue: string, 
/**
 * The seal of the fleet that made it; none where it was made by no fleet. Whether it is true, [`is_sealed_by`] says.
 */
seal?: TagSeal | null, };

/**
 * Something that is said of a tag.
 */
export type TagFinding = { 
/**
 * What.
 */
code: TagFindingCode, 
/**
 * How grave it is.
 */
verdict: Verdict, 
/**
 * What was found.
 */
why: string, 
/**
 * What to do.
 */
cure: string, };

/**
 * Something to be said of a tag.
 */
export type TagFindingCode = "altered" | "withdrawn" | "undone" | "failed-proof" | "failed-in-use" | "contradicted" | "fitted-elsewhere" | "other-seal" | "other-spec" | "higher-pressure" | "other-proof" | "other-figures" | "taken-off" | "not-known" | "merge-first" | "seal-missing" | "foreign-figures" | "newer" | "not-proved" | "age-not-known" | "sits";

/**
 * What a tag is worth.
 */
export type TagJudged = { 
/**
 * Who made it.
 */
standing: TagStanding, 
/**
 * The fleet's name, or its mark where its key is not known here; none without a seal.
 */
fleet: string | null, 
/**
 * The gravest thing that is said of it.
 */
verdict: Verdict, 
/**
 * What it is, in words.
 */
says: string, 
/**
 * What is to be said of it, gravest first.
 */
findings: Array<TagFinding>, 
/**
 * Whether the register has the hose of its code.
 */
known: boolean, 
/**
 * Where that hose sits.
 */
at: PlaceAt | null, 
/**
 * Whether it may be taken into the register as it is.
 */
adopt: boolean, 
/**
 * Its spec as it may be checked, rebuilt and taken in: without its maker's own figures, where no true seal vouches for
 * them. None where it says none.
 */
spec: Spec | null, };

/**
 * A tag, or why there is none.
 */
export type TagMade = { 
/**
 * The gravest of the check and of what the record says; with a stop there is no tag.
 */
verdict: Verdict, 
/**
 * Whether it was checked against a service; else the tag carries the rating of the parts alone.
 */
service_checked: boolean, 
/**
 * What the tag says.
 */
tag: TagContent | null, 
/**
 * Its text, as a phone shows it.
 */
text: string | null, 
/**
 * What stopped it.
 */
stops: Array<Finding>, 
/**
 * Who says whether it was proved.
 */
proof_from: ProofFrom, 
/**
 * What the record says otherwise than was asked.
 */
notices: Array<TagFinding>, };

/**
 * The tag of a hose on record.
 */
export type TagOf = { 
/**
 * What it says, from the record alone.
 */
tag: TagContent, 
/**
 * Its text, as a phone shows it.
 */
text: string, 
/**
 * Whether a label made of it now says that the hose had one before.
 */
reprint: boolean, };

/**
 * Which hose's tag.
 */
export type TagOfQuestion = { 
/**
 * The hose.
 */
code: TagCode, };

/**
 * Whether an assembly was proved.
 */
export type TagProof = { "state": "proved", 
/**
 * Proof pressure.
 */
pressure_bar: Bar, } | { "state": "not-proved" } | { "state": "no-rig" };

/**
 * What a tag is made for.
 */
export type TagQuestion = { 
/**
 * What `check` is asked: no tag is made of what must not be made.
 */
question: Question, 
/**
 * A code that the hose already has; a new one is made without. On record it is a hose of that very spec.
 */
code?: TagCode | null, 
/**
 * When it was assembled; the present day without. Of a hose on record the record says it.
 */
assembled?: Assembled | null, 
/**
 * Whether it was proved; not proved without. Of a hose on record the record says it.
 */
proof: TagProof, };

/**
 * A seal as it stands on a tag: `7KQ4M 0123456789ABCDEF`, the fleet's mark and sixteen characters.
 */
export type TagSeal = string;

/**
 * Who made a tag, as far as its text tells.
 */
export type TagStanding = "own" | "partner" | "foreign" | "unsealed" | "code-alone" | "altered" | "newer";

/**
 * A tag taken out of use: lost, doubled, unreadable, hose scrapped before it was fitted.
 */
export type TagWithdrawn = { 
/**
 * Which.
 */
code: TagCode, 
/**
 * Why.
 */
reason: string, };

/**
 * A difference.
 */
export type TakeRow = { 
/**
 * It in words.
 */
name: string, 
/**
 * The thing; none for a piece of hose.
 */
item: Item | null, 
/**
 * The piece; none for a counted thing.
 */
piece: PieceId | null, 
/**
 * The bin; blank is not said.
 */
bin: string, 
/**
 * How much is known: a number, of a piece millimetres.
 */
known: number, 
/**
 * How much there is.
 */
counted: number, 
/**
 * What that is more or less.
 */
difference: number, 
/**
 * Counted in.
 */
unit: StockUnit, };

/**
 * Whose word an assembly that was taken in from a tag is.
 */
export type TakenIn = "own" | "partner" | "unknown";

/**
 * A hose taken off a place.
 */
export type TakenOff = { 
/**
 * Which hose.
 */
code: TagCode, 
/**
 * From where.
 */
place: PlaceId, 
/**
 * When.
 */
date: string, 
/**
 * Hours on the machine's meter.
 */
hours?: number | null, 
/**
 * Why it failed, by the code of the failure causes; none: it had not failed.
 */
cause?: string | null, 
/**
 * What was seen.
 */
note?: string | null, };

/**
 * Something that is kept. Names are the tables' own where the tables have it, else the supplier's.
 */
export type Thing = { "kind": "hose", 
/**
 * The standard, such as `EN 853`.
 */
standard: string, 
/**
 * The type within it, such as `2SN`.
 */
type: string, 
/**
 * Nominal diameter.
 */
dn: Dn, } | { "kind": "end", 
/**
 * Family by the tables' name.
 */
family: string, 
/**
 * Size within the family.
 */
size: string, 
/**
 * Which half; none where nobody wrote it down, and for flanges.
 */
gender?: Gender | null, 
/**
 * `straight`, `elbow90` and so on; none where nobody wrote it down.
 */
form?: string | null, 
/**
 * Nominal diameter of the hose it goes on.
 */
dn: Dn, 
/**
 * Series of the fitting, by the supplier's name.
 */
series?: string | null, } | { "kind": "ferrule", 
/**
 * The supplier's name for it.
 */
name: string, 
/**
 * Nominal diameter of the hose it goes on.
 */
dn?: Dn | null, } | { "kind": "adapter", 
/**
 * What it is called.
 */
name: string, 
/**
 * The side that the hose end screws on.
 */
hose_side?: AdapterSide | null, 
/**
 * The side that the machine sees.
 */
machine_side?: AdapterSide | null, 
/**
 * The supplier's rating; unknown stops.
 */
rating_bar?: Bar | null, } | { "kind": "sleeve", 
/**
 * The supplier's name for it.
 */
name: string, 
/**
 * Nominal diameter of the hose it goes over.
 */
dn?: Dn | null, } | { "kind": "seal", 
/**
 * The supplier's name for it.
 */
name: string, };

/**
 * How the threads of a pair meet.
 */
export type ThreadFit = { 
/**
 * By which rule they start.
 */
rule: ThreadRule, 
/**
 * How much of the right thread's depth overlaps, percent.
 */
overlap_pct: number, 
/**
 * How much the male's diameter differs from that of the right male.
 */
diameter_difference_mm: number, 
/**
 * How much the pitches differ.
 */
pitch_difference_mm: number, 
/**
 * Turns until the pitch binds or the taper wedges; none where the female runs to the end.
 */
turns: number | null, };

/**
 * By which rule two threads start on each other.
 */
export type ThreadRule = "same-thread" | "near-thread" | "taper-in-parallel" | "parallel-in-taper" | "two-tapers";

/**
 * Every figure of the tables for one end. They differ by material and lubrication and are never
 * mixed; the maker's figure comes first.
 */
export type Tighten = { 
/**
 * Which end.
 */
role: Role, 
/**
 * All figures, each with its condition.
 */
values: Array<TorqueValue>, };

/**
 * How many failures it takes until the shape is known to [`FACTOR`] either way, at 95 %: until then nobody knows whether
 * such hoses wear out.
 */
export type ToTell = { 
/**
 * Failures in all.
 */
failures: number, 
/**
 * Of these still to come; 0: it can be told.
 */
more: number, 
/**
 * The factor.
 */
factor: number, };

/**
 * One side of a contradiction.
 */
export type Told = { 
/**
 * The kind of event.
 */
kind: string, 
/**
 * The device that wrote it.
 */
device: DeviceId, 
/**
 * Its name, where it has one.
 */
by: string | null, 
/**
 * The hose that it is about, where it is about one.
 */
hose: TagCode | null, 
/**
 * The name that was told, where a name was.
 */
says: string | null, };

/**
 * How an end is tightened.
 */
export type TorqueMethod = "torque" | "flats-from-finger-tight" | "angle";

/**
 * One figure.
 */
export type TorqueValue = { 
/**
 * What the figure is.
 */
method: TorqueMethod, 
/**
 * Lower value.
 */
min: number | null, 
/**
 * Upper value.
 */
max: number, 
/**
 * Unit of both.
 */
unit: string, 
/**
 * Material, lubrication, screw.
 */
condition: string, 
/**
 * Where it stands.
 */
source: string, 
/**
 * How sure that is.
 */
basis: Basis, 
/**
 * Remarks.
 */
note: string, };

/**
 * The turn of B's elbow against A's: looking along the hose from A to B with A's elbow up,
 * clockwise.
 */
export type Turn = { 
/**
 * 0 to 359.
 */
turn_deg: Degrees, 
/**
 * How far either way.
 */
tolerance: Figure | null, };

/**
 * It as its screen left it.
 */
export type Unfinished = { 
/**
 * When it was kept.
 */
kept: string, 
/**
 * Whatever the screen needs to go on; nobody but the screen reads it.
 */
content: JsonValue, };

/**
 * What was begun, as it stands.
 */
export type UnfinishedKeep = { 
/**
 * Which.
 */
what: Begun, 
/**
 * All that its screen needs to go on with it.
 */
content: JsonValue, };

/**
 * What was kept of it.
 */
export type UnfinishedRead = { 
/**
 * None where nothing was begun, or it is done.
 */
unfinished: Unfinished | null, };

/**
 * Which.
 */
export type UnfinishedWhat = { 
/**
 * Which.
 */
what: Begun, };

/**
 * Why there is no Weibull fit.
 */
export type Unfitted = "too-few-failures" | "no-maximum";

/**
 * An event that does not count.
 */
export type Unheard = { 
/**
 * Which.
 */
event: EventRef, 
/**
 * When it was written, by the writing device's logical clock.
 */
time: string, 
/**
 * Why.
 */
why: LeftOut, 
/**
 * What it is about.
 */
about: Contradiction, };

/**
 * The probability that a hose is none of the catalogue's.
 */
export type UnknownHose = { 
/**
 * Between 0 and 1.
 */
hose: number, };

/**
 * Counted things that were used.
 */
export type UsedItem = { 
/**
 * What.
 */
item: Item, 
/**
 * How many.
 */
count: number, 
/**
 * Out of which bin; out of those that have some without.
 */
bin?: string, };

/**
 * A length that was cut from a piece.
 */
export type UsedPiece = { 
/**
 * From which piece.
 */
piece: PieceId, 
/**
 * The length as it was cut; the saw's kerf comes to it.
 */
length_mm: Millimetres, 
/**
 * Whether what was left of the piece was thrown away.
 */
scrap_rest: boolean, };

/**
 * The speed of oil that is usual in a kind of line.
 */
export type UsualSpeed = { 
/**
 * Least.
 */
low_m_s: number, 
/**
 * Most.
 */
high_m_s: number, 
/**
 * The publication, table or practice.
 */
source: string, 
/**
 * How it came to be known.
 */
basis: Basis, };

/**
 * How grave. Ordered: the gravest finding is the verdict of the whole.
 */
export type Verdict = "pass" | "caution" | "stop";

/**
 * What a verification found.
 */
export type Verified = { 
/**
 * Events looked at.
 */
events: number, 
/**
 * Devices that wrote them.
 */
devices: number, 
/**
 * What is wrong; empty when all is well.
 */
faults: Array<string>, };

/**
 * A record and the event that stands for it: what a change that a person makes builds on.
 */
export type Versioned<T> = { 
/**
 * The event.
 */
version: EventRef, } & T;

/**
 * A place whose hose is replaced.
 */
export type VisitPlace = { 
/**
 * Which.
 */
place: PlaceId, 
/**
 * Its number and name.
 */
name: string, 
/**
 * What sits there; none is not known.
 */
code: TagCode | null, 
/**
 * The hose that would be made; none where nobody knows.
 */
hose: string | null, 
/**
 * The day it fell or falls due; none where it is replaced without, or no day is known.
 */
due: string | null, 
/**
 * What the check says of making the same again.
 */
verdict: Verdict | null, 
/**
 * Why nothing is loaded for it, in words.
 */
why_not: string | null, };

/**
 * Strikes out what was recorded in error.
 */
export type Voided = { 
/**
 * Why.
 */
reason: string, };

/**
 * How a job at a place is gone about.
 */
export type Way = "short" | "long";

/**
 * The part that sets the pressure.
 */
export type Weakest = "hose" | "A" | "B" | "adapter";

/**
 * Whether the chance to fail rises with age.
 */
export type Wear = "wears-out" | "fails-young" | "not-known";

/**
 * Whose a rule is.
 */
export type Whose = "guide" | "yours";

/**
 * Which candidate is to be explained.
 */
export type Why = { 
/**
 * The readings of the job.
 */
readings: Readings, 
/**
 * Which part.
 */
of: Part, 
/**
 * The candidate by its place in `find`'s list; 0 is the likeliest.
 */
candidate: number, 
/**
 * The rival by its place; unless it is given, the likeliest other. Past the end of the list stands
 * "none of these".
 */
rival?: number | null, };

/**
 * Why a reading of a crimp counts no more.
 */
export type WhyGivenUp = "read-again" | "struck" | "pressed-again";

/**
 * How far the work is.
 */
export type WorkDone = { 
/**
 * Steps that are done.
 */
done: number, 
/**
 * Steps in all; 0: nothing is going on.
 */
of: number, };

/**
 * An entry of the log.
 */
export type Written = { 
/**
 * Which event.
 */
event: EventRef, 
/**
 * When it was written, by the writing device's logical clock.
 */
time: string, 
/**
 * The writing device's name, where it has one.
 */
by: string | null, 
/**
 * What it builds on.
 */
builds_on: Array<EventRef>, 
/**
 * Struck out.
 */
void: boolean, 
/**
 * What it says.
 */
body: Body, };

/** Every command with its question and answer. */
export interface Commands {
  'tables': { input: Nothing; output: Answer<Tables> };
  'find': { input: Readings; output: Answer<Found> };
  'explain': { input: Why; output: Answer<Explained> };
  'print': { input: PrintQuestion; output: Answer<Printed> };
  'check': { input: Question; output: Answer<Checked> };
  'make': { input: MakeQuestion; output: Answer<BuildSheet> };
  'make.paper': { input: PaperQuestion; output: FileMade };
  'cut': { input: Batch; output: Answer<CutPlan> };
  'cutoff.measured': { input: CutoffReadings; output: Answer<CutoffMeasured> };
  'crimp': { input: CrimpQuestion; output: Answer<Crimped> };
  'bench.judge': { input: BenchQuestion; output: Answer<BenchJudged> };
  'bench.record': { input: BenchRecordQuestion; output: Answer<BenchRecorded> };
  'bench.undo': { input: BenchUndo; output: Answer<BenchUndone> };
  'stock.list': { input: StockQuestion; output: Answer<StockList> };
  'stock.change': { input: StockChange; output: Answer<StockChangeAnswer> };
  'stock.take': { input: StockTakeQuestion; output: Answer<StockTakeAnswer> };
  'stock.need': { input: NeedQuestion; output: Answer<Need> };
  'batch': { input: BatchQuestion; output: Answer<BatchPlan> };
  'batch.paper': { input: BatchPaper; output: FileMade };
  'quote': { input: QuoteQuestion; output: Answer<Quote> };
  'quote.paper': { input: QuotePaper; output: FileMade };
  'policy.list': { input: Nothing; output: Answer<Policies> };
  'policy.at': { input: PolicyAtQuestion; output: Answer<PolicyAt> };
  'policy.try': { input: PolicyTry; output: Answer<PolicyTried> };
  'inspect.try': { input: InspectTry; output: Answer<InspectTried> };
  'desk.hoses': { input: DeskQuestion; output: Answer<DeskTable> };
  'desk.codes': { input: DeskQuestion; output: Answer<HoseCodes> };
  'desk.glance': { input: GlanceQuestion; output: Answer<Glance> };
  'desk.export': { input: DeskExport; output: FileMade };
  'round': { input: RoundQuestion; output: Answer<Round> };
  'round.paper': { input: RoundPaper; output: FileMade };
  'certificate.paper': { input: CertificateQuestion; output: FileMade };
  'report.paper': { input: CertificateQuestion; output: FileMade };
  'press': { input: PressQuestion; output: Answer<Press> };
  'supplier.match': { input: SupplierMatchQuestion; output: Answer<SupplierMatches> };
  'supplier.import': { input: SupplierImport; output: Answer<SupplierImported> };
  'supplier.keep': { input: SupplierRowQuestion; output: Answer<SupplierId> };
  'supplier.list': { input: SupplierListQuestion; output: Answer<SupplierList> };
  'supplier.remove': { input: SupplierRemove; output: Answer<SupplierRemoved> };
  'supplier.lookup': { input: SupplierLookupQuestion; output: Answer<SupplierLookup> };
  'route': { input: Layout; output: Answer<Routed> };
  'route.field': { input: FieldQuestion; output: Answer<FieldRouted> };
  'flow': { input: FlowQuestion; output: Answer<FlowAnswer> };
  'surge': { input: SurgeQuestion; output: Answer<SurgeAnswer> };
  'oil': { input: OilQuestion; output: Answer<OilAnswer> };
  'life': { input: Nothing; output: Answer<Life> };
  'tag.make': { input: TagQuestion; output: Answer<TagMade> };
  'tag.of': { input: TagOfQuestion; output: Answer<TagOf> };
  'tag.preview': { input: LabelQuestion; output: Answer<LabelPreview> };
  'tag.label': { input: LabelQuestion; output: FileMade };
  'tag.read': { input: ReadQuestion; output: Answer<Scanned> };
  'tag.open': { input: OpenQuestion; output: Answer<Scan> };
  'tag.adopt': { input: TagAdopt; output: Answer<TagAdopted> };
  'tag.batch': { input: LabelBatchQuestion; output: Answer<LabelBatch> };
  'tag.batch.paper': { input: LabelBatchQuestion; output: FileMade };
  'scan.list': { input: ScanListQuestion; output: Answer<ScanList> };
  'fleet.show': { input: Nothing; output: Answer<Fleets> };
  'fleet.begin': { input: FleetBegin; output: Answer<Fleets> };
  'fleet.hand-on': { input: Nothing; output: Answer<FleetHandOn> };
  'fleet.look': { input: FleetLook; output: Answer<FleetSeen> };
  'fleet.join': { input: FleetJoin; output: Answer<Fleets> };
  'fleet.leave': { input: FleetLeave; output: Answer<Fleets> };
  'fleet.found': { input: Nothing; output: Answer<Fleets> };
  'fleet.admit': { input: FleetAdmit; output: Answer<Fleets> };
  'fleet.withdraw': { input: FleetWithdraw; output: Answer<Fleets> };
  'share.show': { input: Nothing; output: Answer<Shared> };
  'share.set': { input: ShareSet; output: Answer<Shared> };
  'share.exchange': { input: Nothing; output: Answer<Exchanged> };
  'share.left-out': { input: LeftOutQuestion; output: Answer<LeftOutList> };
  'job.keep': { input: Keep; output: Answer<Job> };
  'job.list': { input: Nothing; output: Answer<Jobs> };
  'job.close': { input: Job; output: Answer<Job> };
  'unfinished.keep': { input: UnfinishedKeep; output: Answer<Nothing> };
  'unfinished.read': { input: UnfinishedWhat; output: Answer<UnfinishedRead> };
  'unfinished.file': { input: UnfinishedWhat; output: FileMade };
  'unfinished.close': { input: UnfinishedWhat; output: Answer<Nothing> };
  'people.list': { input: Nothing; output: Answer<People> };
  'people.add': { input: NewPerson; output: Answer<PersonAdded> };
  'people.erase': { input: PersonErased; output: Answer<PersonErased> };
  'photo.add': { input: PhotoAdd; output: Answer<PhotoOnRecord> };
  'photo.list': { input: PhotoQuestion; output: Answer<Photos> };
  'photo.read': { input: PhotoRead; output: FileMade };
  'settings.read': { input: Nothing; output: Answer<SettingsRead> };
  'settings.write': { input: Settings; output: Answer<Settings> };
  'work.look': { input: Nothing; output: Answer<WorkDone> };
  'work.stop': { input: Nothing; output: Answer<WorkDone> };
  'register.overview': { input: Nothing; output: Answer<Overview> };
  'register.machine': { input: MachineQuestion; output: Answer<MachineSaid> };
  'register.place': { input: PlaceQuestion; output: Answer<PlaceSaid> };
  'register.show': { input: ShowQuestion; output: Answer<HoseShown> };
  'register.due': { input: DueQuestion; output: Answer<DueList> };
  'register.due.export': { input: DueExport; output: FileMade };
  'register.survey': { input: SurveyQuestion; output: Answer<Survey> };
  'register.affected': { input: AffectedQuestion; output: Answer<Affected> };
  'register.life': { input: LivesQuestion; output: Answer<Lives> };
  'register.life.paper': { input: LivesPaper; output: FileMade };
  'register.search': { input: Search; output: Answer<Hits> };
  'register.id': { input: Nothing; output: Answer<Id> };
  'register.record': { input: RecordQuestion; output: Answer<Recorded> };
  'register.match': { input: ListMatchQuestion; output: Answer<ListMatches> };
  'register.import': { input: Import; output: Answer<Imported> };
  'register.export': { input: Export; output: FileMade };
  'register.bundle': { input: Nothing; output: FileMade };
  'register.merge': { input: Nothing; output: Answer<Merged> };
  'register.verify': { input: Nothing; output: Answer<Verified> };
  'register.rebuild': { input: Nothing; output: Answer<Verified> };
  'register.backup': { input: Nothing; output: FileMade };
  'register.backups': { input: Nothing; output: Answer<Backups> };
  'register.backups.keep': { input: Nothing; output: Answer<Backups> };
  'diagnose': { input: Nothing; output: FileMade };
  'register.restore': { input: RestoreQuestion; output: Answer<Verified> };
}
