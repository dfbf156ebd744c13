// A backend for component tests: answers what it is given, refuses the rest.
import type { Answer, Backend, CommandName, Reply } from './backend';

type Answers = { [N in CommandName]?: (input: unknown) => Partial<Answer<N>> };

/** Answers by the functions given. What is not given is refused as a name that is no command. */
export function fake(answers: Answers = {}): Backend {
  return {
    async call<N extends CommandName>(name: N, input: unknown): Promise<Reply<Answer<N>>> {
      const answer = answers[name];
      return answer
        ? { ok: true, value: answer(input) as Answer<N>, bytes: new Uint8Array() }
        : { ok: false, error: { code: 'nothing', field: '', message: `${name} is not answered here` } };
    },
    save: (name) => Promise.resolve({ ok: true, value: name, bytes: new Uint8Array() }),
  };
}
