import fc from "fast-check";

// On a build machine the same cases every time, so that a red build is about the change; at a desk other ones each time.
if (process.env.CI) fc.configureGlobal({ seed: 20261125 });
