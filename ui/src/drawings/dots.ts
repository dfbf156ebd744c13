// One mark a hose, stacked by age.

/** A hose: its age in years, and whether it must not run on. */
export interface Dot {
  age: number;
  stop: boolean;
}

export interface Mark {
  x: number;
  /** Height of the mark's middle over the base line. */
  y: number;
  over: boolean;
  stop: boolean;
}

/** Stacks ages into columns. Marks shrink until the highest column fits; none is ever left out. */
export function stack(
  dots: readonly Dot[],
  field: { end: number; limit: number; width: number; height: number },
): { marks: Mark[]; radius: number; over: number } {
  for (let radius = 4.5; ; radius -= 0.5) {
    const step = radius * 2 + 1.5;
    // Columns are cut at the limit, so that no column holds hoses of both sides.
    const columns = Math.max(1, Math.floor(((field.limit / field.end) * field.width) / step));
    const years = field.limit / columns;
    const counts = new Map<number, number>();
    const marks = dots
      .toSorted((one, other) => one.age - other.age)
      .map(({ age, stop }): Mark => {
        const over = age > field.limit;
        const column = over
          ? columns + Math.floor((Math.min(age, field.end) - field.limit) / years)
          : Math.min(columns - 1, Math.floor(age / years));
        const below = counts.get(column) ?? 0;
        counts.set(column, below + 1);
        const x = Math.min(((column + 0.5) * years * field.width) / field.end, field.width - radius) - (over ? 0 : 1.5);
        return { x, y: radius + 1 + below * step, over, stop };
      });
    const highest = Math.max(0, ...counts.values()) * step;
    if (highest <= field.height || radius <= 1.5) {
      return { marks, radius, over: marks.filter((mark) => mark.over).length };
    }
  }
}
