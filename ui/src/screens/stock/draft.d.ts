import type { Dn, Gender, Bar, Role, Verdict, EventRef, TagCode, MachineId, PlaceId, Spec, HoseRef, PaperSize, PaperKind, FileMade, JsonValue } from '../../backend/types';
import type { Question } from '../../backend';
type MakeQuestion = import('../../backend/types').Commands['make']['input'];
type Side = { family: string; size: string; gender: Gender | null };
export type Thing =
  | { kind: 'hose'; standard: string; type: string; dn: Dn }
  | { kind: 'end'; family: string; size: string; gender: Gender | null; form: string | null; dn: Dn; series: string | null }
  | { kind: 'ferrule'; name: string; dn: Dn | null }
  | { kind: 'adapter'; name: string; hose_side: Side | null; machine_side: Side | null; rating_bar: Bar | null }
  | { kind: 'sleeve'; name: string; dn: Dn | null }
  | { kind: 'seal'; name: string };
export type Item = Thing | string;
type PieceSort = 'reel' | 'offcut';
type Said = { code: string; words: string };
type StockUnit = 'pieces' | 'millimetres';
type StockKind = 'hose' | 'end' | 'ferrule' | 'adapter' | 'sleeve' | 'seal' | 'other';
type Money = { minor: number; currency: string; text: string };
type StockDo =
  | { do: 'load'; store: string; item: Item; count: number; bin: string | null }
  | { do: 'load-hose'; store: string; hose: { standard: string; type: string; dn: Dn }; sort: PieceSort; length_mm: number; pieces: number | null; made: string | null; label: string | null; bin: string | null }
  | { do: 'correct'; store: string; item: Item; to: number }
  | { do: 'correct-piece'; piece: string; to_mm: number }
  | { do: 'scrap'; store: string; item: Item; count: number }
  | { do: 'scrap-piece'; piece: string }
  | { do: 'move'; item: Item; from: string; to: string; count: number; bin: string | null }
  | { do: 'move-piece'; piece: string; to: string; bin: string | null }
  | { do: 'keep'; store: string; item: Item; bin: string | null; low: number | null }
  | { do: 'price'; item: Item; price: string | null };
type NeedLine = { part: 'hose' | 'end' | 'ferrule' | 'adapter' | 'sleeve' | 'seal'; role: Role | null; name: string; wanted: number; unit: StockUnit; state: 'there' | 'short' | 'not-kept' | 'not-known'; quantity: number; bins: string[]; doubtful: string[]; elsewhere: { store: string; quantity: number }[] };
type CutFrom = { piece: string; sort: PieceSort; bin: string; length_mm: number; cut_mm: number; kerf_mm: number | null; left_mm: number; useful: boolean | null; label: string; made: string | null };
type Used = { store: string; pieces: { piece: string; length_mm: number; scrap_rest: boolean | null }[]; items: { item: Item; count: number }[] };
type BatchHose = { name: string; make: MakeQuestion; count: number | null };
type BatchQ = { hoses: BatchHose[]; store: string | null };
type CutStep = { piece: string; sort: PieceSort; bin: string; label: string; length_mm: number; pieces: { name: string; length_mm: number }[]; left_mm: number; kept: boolean };
type Cuts = { hose: string; plan: CutStep[]; unmade: { name: string; length_mm: number }[]; reel_mm: number; scrap_mm: number; proved: boolean; least_reel_mm: number };
type QuoteQ = { hoses: BatchHose[] | null; codes: TagCode[] | null; store: string | null };
declare module '../../backend/types' {
  interface Commands {
    'stock.list': { input: { store: string | null; bin: string | null; text: string | null; kind: StockKind | null; low: boolean | null; all: boolean | null };
      output: { stores: { store: string; pieces: number; items: number; low: number }[];
       hoses: { hose: HoseRef; name: string; store: string; total_mm: number; low_mark_mm: number | null; low: boolean; price: Money | null;
                pieces: { piece: string; sort: PieceSort; bin: string; length_mm: number; made: string | null; label: string; useful: boolean | null; negative: boolean; version: EventRef }[] }[];
       items: { item: Item; kind: StockKind; name: string; store: string; bin: string; quantity: number; low_mark: number | null; low: boolean; negative: boolean; price: Money | null }[];
       said: Said[] } };
    'stock.change': { input: { changes: StockDo[] }; output: { written: EventRef[]; pieces: string[]; said: Said[] } };
    'stock.take': { input: { store: string; bin: string | null; items: { item: Item; counted: number }[]; pieces: { piece: string; length_mm: number | null }[]; save: boolean };
      output: { rows: { name: string; item: Item | null; piece: string | null; known: number; counted: number; difference: number; unit: StockUnit }[]; not_counted: { name: string; item: Item | null; piece: string | null; known: number; unit: StockUnit }[]; saved: boolean; written: EventRef[]; said: Said[] } };
    'stock.need': { input: { make: MakeQuestion; store: string | null; count: number | null };
      output: { store: string; verdict: Verdict; lines: NeedLine[]; cut: CutFrom | null; substitutes: { hose: HoseRef; name: string; verdict: Verdict; reasons: string[]; piece: string; bin: string; length_mm: number }[]; adapters: { role: Role; end: Thing; adapters: Thing[]; names: string[]; verdict: Verdict; assembly_pressure_bar: Bar | null; spec: Spec }[]; said: Said[]; used: Used | null } };
    'bench.undo': { input: { code: TagCode; reason: string; give_back: boolean | null }; output: { written: EventRef; given_back: boolean; items: { name: string; quantity: number; unit: StockUnit }[] } };
    batch: { input: BatchQ; output: { store: string; hoses: { name: string; count: number; verdict: Verdict; cut_length_mm: number | null; hose: string; stops: string[] }[]; cuts: Cuts[]; parts: NeedLine[]; presses: { die_set: string | null; hose: string[]; crimps: { name: string; role: Role; diameter_mm: number | null }[] }[]; rule: string; die_changes: number; said: Said[] } };
    'batch.paper': { input: { batch: BatchQ; subject: string | null; paper: PaperSize; as: PaperKind }; output: FileMade };
    quote: { input: QuoteQ; output: { currency: string; lines: { name: string; kind: 'part' | 'labour'; quantity: string; price: Money | null; amount: Money | null }[]; sum: Money; not_priced: string[]; tax_hundredths: number | null; tax: Money | null; total: Money | null; said: Said[] } };
    'quote.paper': { input: { quote: QuoteQ; subject: string | null; paper: PaperSize; as: PaperKind }; output: FileMade };
    round: { input: { on: string | null; machines: MachineId[] | null; places: PlaceId[] | null; within_days: number | null; store: string | null };
      output: { on: string; store: string; visits: { site: string; machine: string; machine_id: MachineId; places: { place: PlaceId; name: string; code: TagCode | null; hose: string | null; verdict: Verdict | null; why_not: string | null }[] }[]; parts: NeedLine[]; load: { name: string; wanted: number; there: number; missing: number; unit: StockUnit; from: { store: string; quantity: number }[] }[]; cuts: Cuts[]; said: Said[] } };
  }
}
