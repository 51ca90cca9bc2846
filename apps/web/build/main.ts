import { buildApp } from "./buildApp.ts";

buildApp();
