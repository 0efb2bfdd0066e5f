export function Cautions({ sentences }: { sentences: string[] }) {
  return (
    <footer class="cautions" aria-labelledby="cautions-title">
      <h2 id="cautions-title">Before you work or drive</h2>
      <ul>
        {sentences.map((sentence, i) => (
          <li key={i}>{sentence}</li>
        ))}
      </ul>
    </footer>
  );
}
