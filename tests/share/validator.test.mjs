// The format's own validator, and the habits that it does not check.
import assert from 'node:assert/strict';
import test from 'node:test';
import validator from 'gltf-validator';
import { shared } from './share_file.mjs';

for (const { name, path, bytes, document } of shared) {
  test(`${name}: the validator finds no error and no warning`, async () => {
    const report = await validator.validateBytes(new Uint8Array(bytes), { uri: path, maxIssues: 0 });
    const serious = report.issues.messages.filter((m) => m.severity <= 1);
    assert.deepEqual(serious.slice(0, 5), []);
    assert.equal(report.issues.numErrors + report.issues.numWarnings, 0);
    // Nothing that this validator cannot judge, and nothing written that nobody uses.
    const doubtful = report.issues.messages.filter((m) =>
      ['UNSUPPORTED_EXTENSION', 'UNUSED_OBJECT'].includes(m.code),
    );
    assert.deepEqual(doubtful.slice(0, 5), []);
  });

  test(`${name}: plain glTF 2.0 that any reader may open`, () => {
    assert.equal(document.asset.version, '2.0');
    assert.equal(document.extensionsRequired, undefined);
    for (const used of document.extensionsUsed ?? []) assert.equal(used, 'KHR_materials_unlit');
    assert.equal(document.animations.length, 1);
    assert.equal(document.animations[0].name, 'Construction sequence');
    for (const sampler of document.animations[0].samplers) {
      assert.equal(sampler.interpolation, 'STEP');
    }
    for (const material of document.materials) {
      assert.equal(material.pbrMetallicRoughness.metallicFactor, 0, material.name);
    }
  });

  test(`${name}: names are unique, and every value says something`, () => {
    const named = [...document.scenes, ...document.nodes, ...document.meshes].map((o) => o.name);
    assert.equal(new Set(named).size, named.length);
    const walk = (value, where) => {
      assert.notEqual(value, null, where);
      if (typeof value !== 'object') return;
      // KHR_materials_unlit is an empty object by definition.
      if (!where.endsWith('KHR_materials_unlit')) assert.ok(Object.keys(value).length > 0, where);
      for (const [key, inner] of Object.entries(value)) walk(inner, `${where}/${key}`);
    };
    walk(document, '');
    for (const node of document.nodes.filter((n) => n.mesh !== undefined)) {
      for (const key of ['kind', 'stage']) assert.ok(node.extras[key], `${node.name}: ${key}`);
    }
  });
}
