#include "model/geometry/skeleton.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "model/geometry/vector_math.h"
#include "model/geometry/wavefront.h"

namespace model {
namespace {

std::vector<WaveLine> linesOf(const Polygon& outline, const std::vector<bool>& gable) {
  std::vector<WaveLine> lines;
  for (size_t i = 0, n = outline.size(); i < n; ++i) {
    const Vec2 d = outline[(i + 1) % n] - outline[i];
    WaveLine line;
    line.from = outline[i];
    line.direction = d / length(d);
    line.inward = {-line.direction.y, line.direction.x};
    line.speed = gable[i] ? 0 : 1;
    lines.push_back(line);
  }
  return lines;
}

struct Step {
  size_t from, to;  // nodes
};

// The steps of one face, chained from its eaves round to where they began; empty when they do not
// make one ring.
std::vector<size_t> chained(const std::vector<Step>& steps, size_t start, size_t second) {
  std::vector<size_t> nodes{start};
  size_t at = second;
  while (at != start) {
    nodes.push_back(at);
    const auto next =
        std::find_if(steps.begin(), steps.end(), [&](const Step& s) { return s.from == at; });
    if (next == steps.end() || nodes.size() > steps.size() + 1) return {};
    at = next->to;
  }
  return nodes.size() == steps.size() + 1 ? nodes : std::vector<size_t>{};
}

// Nothing when the lines do not make faces that cover the outline.
std::optional<std::vector<RoofFace>> facesOf(const Polygon& outline,
                                             const std::vector<WaveLine>& lines,
                                             const WaveResult& wave) {
  std::vector<std::vector<Step>> steps(lines.size());
  for (const RoofArc& arc : wave.arcs) {
    if (arc.from == arc.to) continue;
    steps[arc.ahead].push_back({arc.from, arc.to});
    steps[arc.back].push_back({arc.to, arc.from});
  }
  std::vector<RoofFace> faces;
  double covered = 0;
  for (size_t i = 0; i < lines.size(); ++i) {
    if (lines[i].speed == 0) continue;
    RoofFace face;
    face.edge = i;
    for (const size_t node : chained(steps[i], i, (i + 1) % lines.size())) {
      face.plan.push_back(wave.nodes[node].at);
      face.run.push_back(wave.nodes[node].run);
    }
    if (face.plan.size() < 3) return std::nullopt;
    covered += signedArea(face.plan);
    faces.push_back(std::move(face));
  }
  const double whole = signedArea(outline);
  if (std::abs(covered - whole) > 1e-6 * (1 + whole)) return std::nullopt;
  return faces;
}

// Slopes that come from nearly opposite sides (within 30 degrees) meet in a ridge, though it may
// rise; a level line is one always.
RoofLineKind kindBetween(const WaveLine& a, const WaveLine& b, bool level) {
  if (level || dot(a.direction, b.direction) < -0.866) return RoofLineKind::Ridge;
  return cross(a.direction, b.direction) > 0 ? RoofLineKind::Hip : RoofLineKind::Valley;
}

bool coplanar(const WaveLine& a, const WaveLine& b) {
  return std::abs(cross(a.direction, b.direction)) < kParallel && dot(a.direction, b.direction) > 0;
}

std::vector<RoofLine> roofLines(const Polygon& outline, const std::vector<WaveLine>& lines,
                                const WaveResult& wave) {
  std::vector<RoofLine> result;
  for (size_t i = 0; i < lines.size(); ++i)
    if (lines[i].speed > 0)
      result.push_back(
          {RoofLineKind::Eaves, outline[i], outline[(i + 1) % lines.size()], 0, 0, i, i});
  for (const RoofArc& arc : wave.arcs) {
    const RoofNode &from = wave.nodes[arc.from], &to = wave.nodes[arc.to];
    const WaveLine &a = lines[arc.ahead], &b = lines[arc.back];
    if (from.at == to.at || (a.speed == 0 && b.speed == 0)) continue;
    RoofLine line{RoofLineKind::Verge, from.at, to.at, from.run, to.run, arc.ahead, arc.back};
    if (a.speed == 0) line.faceA = arc.back;
    if (b.speed == 0) line.faceB = arc.ahead;
    if (a.speed > 0 && b.speed > 0) {
      if (coplanar(a, b)) continue;
      line.kind = kindBetween(a, b, std::abs(from.run - to.run) < kMet);
    }
    result.push_back(line);
  }
  return result;
}

}  // namespace

SkeletonResult roofSkeleton(const Polygon& outline, const std::vector<bool>& gable) {
  assert(outline.size() >= 3 && gable.size() == outline.size());
  SkeletonResult result;
  const std::vector<WaveLine> lines = linesOf(outline, gable);
  WaveResult wave = runWavefront(outline, lines);
  result.refusal = std::move(wave.refusal);
  result.edges = std::move(wave.edges);
  if (!result.refusal.empty()) return result;
  auto faces = facesOf(outline, lines, wave);
  if (!faces) {
    result.refusal = "the slopes over this outline could not be worked out";
    return result;
  }
  result.skeleton = Skeleton{std::move(*faces), roofLines(outline, lines, wave)};
  return result;
}

}  // namespace model
