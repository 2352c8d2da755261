import { useEffect, useState } from 'react';

/** The time, ms since 1970, renewed every half minute, and whenever `news` is another. */
export const useNow = (news: unknown): number => {
  const [now, setNow] = useState(Date.now);
  const [seen, setSeen] = useState(news);
  if (seen !== news) {
    setSeen(news);
    setNow(Date.now());
  }
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 30_000);
    return () => clearInterval(timer);
  }, []);
  return now;
};
