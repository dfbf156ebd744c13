import type { Backend } from '../../backend';

/** The causes of failure and the signs of an inspection by their code, read from the tables once. */
export class Causes {
  static #of = new WeakMap<Backend, Causes>();
  #names: ReadonlyMap<string, string> = $state.raw(new Map());

  private constructor(backend: Backend) {
    void backend.call('tables', {}).then((reply) => {
      if (reply.ok) {
        const { causes, signs } = reply.value;
        this.#names = new Map([...causes, ...signs].map(({ code, name }) => [code, name]));
      } else Causes.#of.delete(backend);
    });
  }

  static of(backend: Backend): Causes {
    const known = Causes.#of.get(backend) ?? new Causes(backend);
    Causes.#of.set(backend, known);
    return known;
  }

  /** What people call a cause or a sign; its code until the tables are read. */
  name(code: string): string {
    return this.#names.get(code) ?? code;
  }
}
