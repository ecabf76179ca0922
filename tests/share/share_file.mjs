// A job's GLB as the program writes it, its document, and what the model says should be in it.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, resolve } from 'node:path';

const source = resolve(import.meta.dirname ?? new URL('.', import.meta.url).pathname, '../..');
const build = resolve(process.env.STRINGCOURSE_BUILD ?? join(source, 'build'));
const jobs = join(source, 'assets/jobs');
const folder = mkdtempSync(join(tmpdir(), 'stringcourse-share-'));

function share(job) {
  const path = join(folder, `${basename(job, '.toml')}.glb`);
  execFileSync(join(build, 'stringcourse'), ['share', job, '--out', path], { stdio: 'pipe' });
  const bytes = readFileSync(path);
  const jsonLength = bytes.readUInt32LE(12);
  return {
    name: basename(job),
    path,
    bytes,
    document: JSON.parse(bytes.subarray(20, 20 + jsonLength).toString('utf8')),
    expected: JSON.parse(
      execFileSync(join(build, 'stages_expected'), [job], { maxBuffer: 1 << 28 }).toString(),
    ),
  };
}

export const shared = readdirSync(jobs)
  .filter((name) => name.endsWith('.toml'))
  .map((name) => share(join(jobs, name)));
export { folder };
