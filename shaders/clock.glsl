// What stands: the programme's clock and the section. One uniform moves when time is scrubbed.
uniform float uTime;
uniform vec4 uSection;  // off: (0, 0, 0, -1)

bool cutAway(vec3 p) { return dot(uSection, vec4(p, 1.0)) > 0.0; }
