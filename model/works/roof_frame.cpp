#include "model/works/roof_frame.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include <glm/geometric.hpp>

namespace model {
namespace {

constexpr double kInLine = 1e-6;

bool takesBoard(RoofLineKind kind) {
  return kind == RoofLineKind::Ridge || kind == RoofLineKind::Hip || kind == RoofLineKind::Valley;
}

// The roof line along edge `k` of a face, which shares its end points exactly.
std::optional<size_t> boardLine(const Skeleton& roof, const RoofFace& face, size_t k) {
  const Vec2 &a = face.plan[k], &b = face.plan[(k + 1) % face.plan.size()];
  for (size_t i = 0; i < roof.lines.size(); ++i) {
    const RoofLine& line = roof.lines[i];
    if (!takesBoard(line.kind) || (line.faceA != face.edge && line.faceB != face.edge)) continue;
    if ((line.a == a && line.b == b) || (line.a == b && line.b == a)) return i;
  }
  return std::nullopt;
}

// The edges of a ring moved inward, each with its own ends: where two edges in line move by
// different amounts they part.
struct InsetEdge {
  Vec2 from{0, 0}, to{0, 0};
};

std::vector<InsetEdge> inset(const Polygon& ring, const std::vector<double>& inward) {
  const size_t n = ring.size();
  std::vector<InsetEdge> edges(n);
  for (size_t k = 0; k < n; ++k) {
    const Vec2 d = glm::normalize(ring[(k + 1) % n] - ring[k]);
    const Vec2 shift = Vec2{-d.y, d.x} * inward[k];
    edges[k] = {ring[k] + shift, ring[(k + 1) % n] + shift};
  }
  for (size_t k = 0; k < n; ++k) {
    const size_t next = (k + 1) % n;
    const Vec2 d1 = glm::normalize(ring[next] - ring[k]);
    const Vec2 d2 = glm::normalize(ring[(next + 1) % n] - ring[next]);
    const double turn = cross(d1, d2);
    if (std::abs(turn) < kInLine) continue;
    const double t = cross(edges[next].from - edges[k].to, d2) / turn;
    edges[k].to = edges[next].from = edges[k].to + d1 * t;
  }
  return edges;
}

// Still the same ring, every edge the same way round?
bool keepsShape(const Polygon& ring, const std::vector<InsetEdge>& edges, const Polygon& left) {
  for (size_t k = 0; k < edges.size(); ++k)
    if (glm::dot(edges[k].to - edges[k].from, ring[(k + 1) % ring.size()] - ring[k]) <= 0)
      return false;
  return left.size() > 2 && !crossingEdges(left);
}

Polygon ringOf(const std::vector<InsetEdge>& edges) {
  Polygon ring;
  for (const InsetEdge& edge : edges)
    for (const Vec2& p : {edge.from, edge.to})
      if (ring.empty() || glm::length(p - ring.back()) > 1e-9) ring.push_back(p);
  while (ring.size() > 1 && glm::length(ring.front() - ring.back()) <= 1e-9) ring.pop_back();
  return ring;
}

}  // namespace

double cosPitch(const SettingOut& settingOut) {
  return 1 / std::sqrt(1 + settingOut.tanPitch * settingOut.tanPitch);
}

Plane rafterTop(const Job& job, const SettingOut& settingOut, size_t face) {
  Plane plane = settingOut.rafterUnderside(face);
  plane.level += job.roof.rafterDepth / cosPitch(settingOut);
  return plane;
}

RoofFrame deriveRoofFrame(const Job& job, const SettingOut& settingOut) {
  RoofFrame frame;
  const Skeleton& roof = settingOut.roof;
  for (size_t f = 0; f < roof.faces.size(); ++f) {
    const RoofFace& face = roof.faces[f];
    std::vector<double> inward(face.plan.size(), 0.0);
    std::vector<std::optional<size_t>> lines;
    for (size_t k = 0; k < face.plan.size(); ++k) {
      lines.push_back(boardLine(roof, face, k));
      if (lines.back()) inward[k] = job.roof.rafterWidth / 2;
    }
    const std::vector<InsetEdge> edges = inset(face.plan, inward);
    Polygon left = ringOf(edges);
    if (!keepsShape(face.plan, edges, left)) {
      frame.clear.push_back(face.plan);
      continue;
    }
    frame.clear.push_back(std::move(left));
    for (size_t k = 0; k < lines.size(); ++k)
      if (lines[k])
        frame.boards.push_back({*lines[k], f, face.plan[k], face.plan[(k + 1) % lines.size()],
                                edges[k].from, edges[k].to});
  }
  return frame;
}

}  // namespace model
