import { saidOf, type Found, type Said } from './match';

/** The columns of a sheet as the core read them, of whatever kind it is. */
interface Read {
  header_row: number;
  columns: Found[];
  missing: string[];
}

/** A sheet on its way into the register: what a person says of it, and the questions that carry it. */
export class Taking<C extends string, R extends Read> {
  /** As its columns were read; null before that. */
  match: R | null = $state.raw(null);
  /** What stands in no column: said once for all rows. */
  fixed: Record<string, string> = $state({});
  leaveOut: number[] = $state([]);

  /** What no row can be without and no column has. */
  readonly open = $derived(this.match?.missing ?? []);
  readonly blank = $derived(this.open.find((key) => !this.fixed[key]?.trim()));

  /** Its columns, as the person matched them. */
  get columns(): Said<C>[] {
    return saidOf<C>(this.match?.columns ?? []);
  }

  /** Asks what its columns are, in that row or in the one that looks like headings, or as the person matched them. */
  looking(name: string, row?: number, columns?: Said<C>[]) {
    this.leaveOut = [];
    return { name, ...(row !== undefined && { header_row: row }), ...(columns && { columns }) };
  }

  /** Asks to take it in as it is said now. */
  taking(name: string, dry: boolean) {
    return {
      name,
      dry_run: dry,
      header_row: this.match?.header_row ?? null,
      columns: this.columns,
      fixed: Object.fromEntries(this.open.map((key) => [key, this.fixed[key]?.trim() ?? ''])),
      leave_out: this.leaveOut,
    };
  }
}
