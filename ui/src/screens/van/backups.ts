// When and where this device's register was last backed up. Not a record: it is about this device alone.

export interface Backup {
  /** As the clock stood, in ISO 8601. */
  when: string;
  where: string;
  bytes: number;
}

const KEY = 'hosewright-backup';

/** The last backup that this device was told of; null for none. */
export function lastBackup(): Backup | null {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? 'null') as Backup | null;
  } catch {
    return null;
  }
}

export function keepBackup(backup: Backup): void {
  localStorage.setItem(KEY, JSON.stringify(backup));
}

/** A name that tells backups of different minutes apart and sorts by time. */
export function backupName(name: string, when: string): string {
  const minute = when.slice(0, 'yyyy-mm-ddThh:mm'.length).replace('T', '-').replace(':', '');
  const dot = name.lastIndexOf('.');
  return `${name.slice(0, dot)}-${minute}${name.slice(dot)}`;
}
