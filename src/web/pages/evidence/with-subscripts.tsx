/** "n_eff" as n with a small eff under the line: the way a formula is printed. */
export function WithSubscripts({ text }: { readonly text: string }) {
  return text.split(/(_[A-Za-z0-9]+)/).map((part, place) => {
    if (part === '') return null;
    return part.startsWith('_') ? <sub key={place}>{part.slice(1)}</sub> : <span key={place}>{part}</span>;
  });
}
