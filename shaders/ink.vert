// Edges as ink lines of a steady width. One instance an edge.
layout(location = 0) in vec3 aFrom;
layout(location = 1) in vec2 aFromTimes;
layout(location = 2) in uint aElement;
layout(location = 3) in vec4 aNormalA;
layout(location = 4) in vec4 aNormalB;
layout(location = 5) in vec3 aTo;
layout(location = 6) in vec2 aToTimes;

uniform samplerBuffer uElements;  // as in surface.vert
uniform float uWidth;             // pixels
uniform int uSelected;
uniform float uStage;
uniform float uFaint;  // 1: what is coming, whatever the clock says

out vec3 vPosition;
out vec2 vTimes;
out float vAcross;
flat out vec3 vLine;  // half width in pixels, strength, selected

void main() {
  bool a = dot(aNormalA.xyz, towardsEye(aFrom)) > 0.0;
  bool b = dot(aNormalB.xyz, towardsEye(aFrom)) > 0.0;
  bool selected = int(aElement) == uSelected;
  // The far side's lines are hidden by the thing itself.
  bool hidden = !a && !b && uFaint < 0.5;
  float width = uWidth * (selected ? 1.7 : a != b ? 1.15 : 0.7);
  // Poles and battens that are few pixels thick would be all ink: their lines get finer.
  float thick = texelFetch(uElements, int(aElement) * 2 + 1).w / pixelAt(aFrom);
  width *= clamp(thick * 0.12, 0.45, 1.0);
  float halfWidth = width * 0.5 + 0.5;  // and a feather
  vec2 corner = vec2(float(gl_VertexID >> 1), float(gl_VertexID & 1) * 2.0 - 1.0);
  float lift = pixelAt((aFrom + aTo) * 0.5) * 1.1;
  vec3 from = aFrom + towardsEye(aFrom) * lift;
  vec3 to = aTo + towardsEye(aTo) * lift;
  gl_Position = thickLine(uViewProjection * vec4(from, 1.0), uViewProjection * vec4(to, 1.0),
                          corner, halfWidth);
  if (hidden) gl_Position = vec4(2.0, 2.0, 2.0, 1.0);
  vPosition = mix(aFrom, aTo, corner.x);
  vTimes = mix(aFromTimes, aToTimes, corner.x);
  vAcross = corner.y * halfWidth * gl_Position.w;
  bool now = aFromTimes.x >= uStage;
  vLine = vec3(width * 0.5, now ? 1.0 : 0.72, selected ? 1.0 : 0.0);
}
