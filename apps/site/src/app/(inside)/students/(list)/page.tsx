import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../../http/read-me.ts';
import { readPage } from '../../../../http/read-page.ts';
import { studentsWords } from '../../../../words/students.ts';
import { Students } from './_components/students.tsx';
import { filterOf, pathOf, queryOf, type StudentsSearch } from './search-params.ts';

export const metadata = { title: studentsWords.title };

export default async function Page({ searchParams }: { searchParams: Promise<StudentsSearch> }) {
  const filter = filterOf(await searchParams);
  const path = pathOf(filter);
  await requireRole(path, ['coach', 'manager']);
  const page = await readPage(path, (api) =>
    answerOf(api.GET('/api/students', { params: { query: queryOf(filter) } })),
  );
  return (
    <main id="content" className="page wide">
      <div>
        <h1>{studentsWords.title}</h1>
        <p className="soft">{studentsWords.lead}</p>
      </div>
      <Students page={page} filter={filter} />
    </main>
  );
}
