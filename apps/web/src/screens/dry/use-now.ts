import { useEffect, useState } from 'react';

/** The time, ms since 1970, renewed every half minute. */
export const useNow = (): number => {
  const [now, setNow] = useState(Date.now);
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 30_000);
    return () => clearInterval(timer);
  }, []);
  return now;
};
