#!/usr/bin/env node
// The sources are TypeScript; tsx strips the types as they are loaded.
import { register } from "tsx/esm/api";

register();
await import("../src/main.ts");
