import './sources.css';
import { useEffect, useState } from 'react';
import { Disclosure } from '../../kit/index.ts';

/** Written by the build from what it put in, and kept on the device with the rest of the app. */
const ADDRESS = '/notices.txt';

const fetched = async (): Promise<string> => {
  const response = await fetch(ADDRESS);
  // Where there is no such file, the page itself may be answered.
  if (response.headers.get('content-type')?.startsWith('text/plain') !== true)
    throw new Error(`${ADDRESS} is no text`);
  return response.text();
};

/** The licences of everything that the app is made of. */
const Licences = () => {
  const [text, setText] = useState('');
  useEffect(() => {
    fetched().then(setText, () =>
      setText('The licences could not be read. They come with the app: load this page again.'),
    );
  }, []);
  return (
    <Disclosure title="Licences of what is inside">
      <pre className="df-licence">{text}</pre>
    </Disclosure>
  );
};
export default Licences;
