process.stderr.write("The commands are not written yet.\n");
process.exitCode = 1;

export {};
