import type { DemoFile } from './demo-file.ts';

/** The lines below `ready`: the first person of each role in each academy. */
export function signInLines({ academies }: DemoFile): string[] {
  return academies.flatMap((academy) => {
    const people = (['manager', 'coach', 'student'] as const).flatMap(
      (role) => academy.people.find((person) => person.role === role) ?? [],
    );
    return [
      `${academy.name} (invented):`,
      ...people.map((person) => `  ${person.role.padEnd(8)} ${person.email}  ${person.password}`),
    ];
  });
}
