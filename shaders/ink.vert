// The ends of an edge; ink.geom draws the line between them.
layout(location = 0) in vec3 aPosition;
layout(location = 1) in vec2 aTimes;
layout(location = 2) in uint aElement;
layout(location = 3) in vec4 aNormalA;
layout(location = 4) in vec4 aNormalB;

uniform samplerBuffer uElements;  // as in surface.vert
uniform int uSelected;
uniform float uStage;
uniform float uFaint;  // 1: what is coming, whatever the clock says; 2: what has gone

out vec4 vClip;  // lifted a little off the faces that meet here
out vec3 vAt;
out vec2 vMoments;
out vec4 vPen;  // width in parts of the usual, strength, selected, 1 when it can be seen

void main() {
  vec3 eye = towardsEye(aPosition);
  bool a = dot(aNormalA.xyz, eye) > 0.0;
  bool b = dot(aNormalB.xyz, eye) > 0.0;
  float pixel = pixelAt(aPosition);
  bool selected = int(aElement) == uSelected;
  // Silhouettes are heavier. Poles and battens that are few pixels thick would be all ink: their
  // lines get finer.
  float thick = texelFetch(uElements, int(aElement) * 2 + 1).w / pixel;
  float width = (selected ? 1.7 : a != b ? 1.15 : 0.7) * clamp(thick * 0.12, 0.45, 1.0);
  // The far side's lines are hidden by the thing itself.
  bool seen = a || b || uFaint == 1.0;
  // Built in this stage, or taken away in it.
  bool now = aTimes.x >= uStage || aTimes.y < uStage + 1.0;
  vPen = vec4(width, now ? 1.0 : 0.6, selected ? 1.0 : 0.0, seen ? 1.0 : 0.0);
  vClip = uViewProjection * vec4(aPosition + eye * (pixel * 1.1), 1.0);
  vAt = aPosition;
  vMoments = aTimes;
}
