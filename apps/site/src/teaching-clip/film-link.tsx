import { faultsWords } from '../words/faults.ts';

/** A film at a web address of the academy's; the page it opens learns nothing of this one. */
export function FilmLink({ clip }: { clip: { readonly title: string; readonly url: string } }) {
  return (
    <a href={clip.url} target="_blank" rel="noopener noreferrer">
      {clip.title}
      <span className="unseen"> ({faultsWords.newTab})</span>
    </a>
  );
}
