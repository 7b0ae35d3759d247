#!/usr/bin/env node
import { inProject } from './project.mjs';
import { requireNode } from './require-node.mjs';
import { runBuilt } from './run-built.mjs';

requireNode();
await runBuilt(inProject('dist', 'main', 'command.js'));
