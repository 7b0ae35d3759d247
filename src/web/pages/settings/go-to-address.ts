/** An address such as settings#back-squat is drawn after the browser looked for it, and what it names is folded. */
export const goToAddress = (): void => {
  const named = document.getElementById(addressed());
  if (named instanceof HTMLDetailsElement) named.open = true;
  named?.scrollIntoView();
};

/** What the address names, whether it is on the page or not. */
export const addressed = (): string => decodeURIComponent(location.hash.slice(1));
