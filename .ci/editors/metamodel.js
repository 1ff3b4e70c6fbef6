// Holds messages to the published meta-model of the protocol: every required property is there, each
// has its type, and none is unknown.
const fs = require('fs');

module.exports = function metamodel(file) {
  const model = JSON.parse(fs.readFileSync(file, 'utf8'));
  const named = {};
  for (const kind of ['structures', 'enumerations', 'typeAliases']) {
    for (const one of model[kind]) named[one.name] = { kind, ...one };
  }
  const methods = {};
  for (const one of [...model.requests, ...model.notifications]) methods[one.method] = one;

  const isInteger = (v) => Number.isInteger(v) && v >= -(2 ** 31) && v < 2 ** 31;
  const bases = {
    string: (v) => typeof v === 'string', URI: (v) => typeof v === 'string',
    DocumentUri: (v) => typeof v === 'string', RegExp: (v) => typeof v === 'string',
    boolean: (v) => typeof v === 'boolean', null: (v) => v === null,
    integer: isInteger, uinteger: (v) => isInteger(v) && v >= 0, decimal: (v) => typeof v === 'number',
  };

  // All properties of a structure, with those that it extends and mixes in.
  const propertiesOf = (s) => [...(s.properties || []),
    ...[...(s.extends || []), ...(s.mixins || [])].flatMap((t) => propertiesOf(named[t.name]))];

  const object = (v, properties, at) => {
    if (v === null || typeof v !== 'object' || Array.isArray(v)) return `${at} is no object`;
    const known = {};
    for (const p of properties) if (!(p.name in known)) known[p.name] = p;
    for (const key of Object.keys(v)) if (!known[key]) return `${at}.${key} is not in the meta-model`;
    for (const p of Object.values(known)) {
      if (!(p.name in v)) {
        if (!p.optional) return `${at}.${p.name} is missing`;
        continue;
      }
      const wrong = check(v[p.name], p.type, `${at}.${p.name}`);
      if (wrong) return wrong;
    }
    return '';
  };

  // check gives what is wrong with a value, '' for nothing.
  const check = (v, type, at) => {
    switch (type.kind) {
      case 'base': return bases[type.name](v) ? '' : `${at} is no ${type.name}: ${JSON.stringify(v)}`;
      case 'stringLiteral': return v === type.value ? '' : `${at} is not "${type.value}"`;
      case 'literal': return object(v, type.value.properties, at);
      case 'array':
        if (!Array.isArray(v)) return `${at} is no array`;
        return v.map((one, i) => check(one, type.element, `${at}[${i}]`)).find(Boolean) || '';
      case 'map':
        if (v === null || typeof v !== 'object') return `${at} is no map`;
        return Object.keys(v).map((k) => check(v[k], type.value, `${at}[${k}]`)).find(Boolean) || '';
      case 'or': {
        const wrong = type.items.map((t) => check(v, t, at));
        return wrong.includes('') ? '' : wrong[0];
      }
      case 'and': return type.items.map((t) => check(v, t, at)).find(Boolean) || '';
      case 'tuple':
        if (!Array.isArray(v) || v.length !== type.items.length) return `${at} is no tuple`;
        return type.items.map((t, i) => check(v[i], t, `${at}[${i}]`)).find(Boolean) || '';
      case 'reference': {
        if (/^LSP(Any|Object|Array)$/.test(type.name)) return '';
        const of = named[type.name];
        if (of.kind === 'structures') return object(v, propertiesOf(of), at);
        if (of.kind === 'typeAliases') return check(v, of.type, at);
        if (of.supportsCustomValues) return check(v, of.type, at);
        return of.values.some((e) => e.value === v) ? '' : `${at} is no ${type.name}: ${JSON.stringify(v)}`;
      }
    }
    return `${at}: unknown kind ${type.kind}`;
  };

  const asked = {}; // the method of each request, by its id
  const count = {};
  return {
    count,
    // holds gives what is wrong with a message of either side, '' for nothing.
    holds(message) {
      if (message.jsonrpc !== '2.0') return 'jsonrpc is not 2.0';
      if (message.method !== undefined) {
        const of = methods[message.method];
        if (!of) return `${message.method} is not in the meta-model`;
        if (message.id !== undefined) asked[message.id] = of;
        count[message.method] = (count[message.method] || 0) + 1;
        if (!of.params) return message.params == null ? '' : `${message.method} has parameters`;
        return check(message.params, of.params, message.method);
      }
      const of = asked[message.id];
      if (!of) return `an answer to nothing: ${message.id}`;
      count[of.method + ' answered'] = (count[of.method + ' answered'] || 0) + 1;
      if (message.error) {
        return isInteger(message.error.code) && typeof message.error.message === 'string' ? '' : 'a wrong error';
      }
      return check(message.result, of.result, of.method);
    },
  };
};
