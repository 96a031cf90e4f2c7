import styles from './cautions.module.css';

/** The sentences of safety, always open to see; the first is about pain. */
export function Cautions({
  title,
  cautions,
  level = 2,
}: {
  title: string;
  cautions: readonly string[];
  level?: 2 | 3;
}) {
  const Heading = level === 2 ? 'h2' : 'h3';
  return (
    <section className={`stack tight ${styles.cautions}`} aria-label={title}>
      <Heading>{title}</Heading>
      <ul className="stack tight">
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  );
}
