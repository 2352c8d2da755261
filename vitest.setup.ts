import fc from 'fast-check';

// One seed for every run, so that what passed here passes there; FC_SEED looks elsewhere.
fc.configureGlobal({ seed: Number(process.env.FC_SEED ?? 20261125) });
