/** The command without a process of its own, and what it wrote. */
import { runReport } from '#cli/run';

interface Ran {
  readonly code: number;
  readonly out: Buffer;
  readonly err: string;
}

export async function report(...words: string[]): Promise<Ran> {
  const [out, err]: [Buffer[], Buffer[]] = [[], []];
  const into = (list: Buffer[]) => ({
    write: (content: string | Uint8Array) => list.push(Buffer.from(content as Uint8Array))
  });
  const code = await runReport(words, { out: into(out), err: into(err) });
  return { code, out: Buffer.concat(out), err: Buffer.concat(err).toString() };
}
