// The faces of one thing that a plane cuts; the geometry shader makes the outline or the
// fill of them.
layout(location = 0) in vec3 aPosition;
uniform vec4 uPlane;
out vec4 vAt;  // position, height over the plane

void main() { vAt = vec4(aPosition, dot(uPlane, vec4(aPosition, 1.0))); }
