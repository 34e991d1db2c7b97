/** Throws away everything that was kept of the program, so that the next load comes from the network; no site is touched. */
export async function retireReleases(): Promise<void> {
  if ('serviceWorker' in navigator) {
    const registrations = await navigator.serviceWorker.getRegistrations();
    await Promise.all(registrations.map((registration) => registration.unregister()));
  }
  if ('caches' in window) {
    const names = await caches.keys();
    await Promise.all(
      names.filter((name) => name.startsWith('kerfline-')).map((name) => caches.delete(name))
    );
  }
}
