// Cuts off what the clock or the section hides. Both change evenly over a triangle, so that the
// driver can cut it and no fragment needs to ask: with nothing to ask, what stands and what grows
// are drawn by the same program, which saves compiling another one before the first frame.
out float gl_ClipDistance[3];

void clipAt(vec3 p, vec2 times) {
  const float kMoment = 1e-5;  // what goes now is gone
  gl_ClipDistance[0] = uTime - times.x;
  gl_ClipDistance[1] = times.y - uTime - kMoment;
  gl_ClipDistance[2] = -dot(uSection, vec4(p, 1.0));
}
