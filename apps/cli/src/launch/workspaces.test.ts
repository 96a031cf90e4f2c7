import { expect, it } from 'vitest';
import { closureFolders } from '../../launch/workspaces.mjs';

const member = (name: string, ...uses: string[]) => [name, { name, folder: `/${name}`, uses }] as const;

it('follows uses to the end, also in a circle', () => {
  const all = new Map([
    member('app', 'a', 'b'),
    member('a', 'c'),
    member('b'),
    member('c', 'a'),
    member('other'),
  ]);
  expect(closureFolders(all, 'app')).toEqual(['/a', '/app', '/b', '/c']);
});
