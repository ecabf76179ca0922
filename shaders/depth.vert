// The same faces as surface.vert, for depth alone: as the eye, the sun or the sky sees them.
layout(location = 0) in vec3 aPosition;
layout(location = 2) in vec2 aTimes;
invariant gl_Position;

void main() {
  gl_Position = uViewProjection * vec4(aPosition, 1.0);
  clipAt(aPosition, aTimes);
}
